package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;

/** Formulas of flatness against a board that is laid on its guide, and a carriage that is run over it, point by point. */
class FlatLossTest {

    /** The angle stands for its tangent, which is up to 1 % more, and points stand a 24th apart. */
    private static Offset<Double> near(double value) {
        return within(Math.abs(value) * 0.012 + 1e-6);
    }

    /** Height of a guide of the length L: sags by the dip at mid-length and is turned evenly from end to end. */
    private static double guide(double x, double y, double length, double dip, double windDegrees) {
        double share = x / length;
        return -4 * dip * share * (1 - share) + y * StrictMath.tan(StrictMath.toRadians(windDegrees)) * share;
    }

    /**
     * Both faces of the board copy the guide. The two planes between which it is flat are tilted as suits it best; what it
     * loses is the spread of heights about that plane.
     */
    private static double lossOnGuide(
            double width, double from, double piece, double length, double dip, double windDegrees) {
        int steps = 24;
        double[] z = new double[(steps + 1) * (steps + 1)];
        double[] u = new double[z.length];
        double[] v = new double[z.length];
        for (int i = 0; i <= steps; i++) {
            for (int j = 0; j <= steps; j++) {
                int at = i * (steps + 1) + j;
                u[at] = 2.0 * i / steps - 1;
                v[at] = 2.0 * j / steps - 1;
                z[at] = guide(from + piece * (u[at] + 1) / 2, width / 2 * v[at], length, dip, windDegrees);
            }
        }
        // The spread is convex in the two tilts, so a descent by shrinking steps finds its least value.
        double p = 0;
        double q = 0;
        double step = dip + width;
        double least = spread(z, u, v, p, q);
        while (step > 1e-9) {
            boolean better = false;
            for (double[] move :
                    new double[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}}) {
                double tried = spread(z, u, v, p + move[0] * step, q + move[1] * step);
                if (tried < least - 1e-15) {
                    least = tried;
                    p += move[0] * step;
                    q += move[1] * step;
                    better = true;
                    break;
                }
            }
            if (!better) {
                step /= 2;
            }
        }
        return least;
    }

    private static double spread(double[] z, double[] u, double[] v, double p, double q) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < z.length; i++) {
            double rest = z[i] - p * u[i] - q * v[i];
            low = Math.min(low, rest);
            high = Math.max(high, rest);
        }
        return high - low;
    }

    @Property(tries = 60)
    void aBoardOnATwistedGuideLosesWhatTheFormulaSays(
            @ForAll @DoubleRange(min = 1, max = 20) double width,
            @ForAll @DoubleRange(min = 0.1, max = 10) double wind,
            @ForAll @DoubleRange(min = 0.2, max = 1) double share,
            @ForAll @DoubleRange(min = 0, max = 1) double place) {
        double length = 144;
        double piece = length * share;
        double from = (length - piece) * place;
        double formula = FlatLoss.windInches(width, wind * share);
        assertThat(lossOnGuide(width, from, piece, length, 0, wind)).isCloseTo(formula, near(formula));
    }

    @Property(tries = 60)
    void aBoardOnAnArchedGuideLosesWhatTheFormulaSaysWhereverItLies(
            @ForAll @DoubleRange(min = 0.01, max = 2) double dip,
            @ForAll @DoubleRange(min = 0.2, max = 1) double share,
            @ForAll @DoubleRange(min = 0, max = 1) double place) {
        double length = 144;
        double piece = length * share;
        double formula = FlatLoss.arcInches(dip, length, piece);
        assertThat(lossOnGuide(8, (length - piece) * place, piece, length, dip, 0))
                .isCloseTo(formula, near(formula));
    }

    @Property(tries = 60)
    void windAndArcTogetherLoseWhatTheFormulaSays(
            @ForAll @DoubleRange(min = 1, max = 20) double width,
            @ForAll @DoubleRange(min = 0, max = 3) double wind,
            @ForAll @DoubleRange(min = 0, max = 1) double dip) {
        double formula = FlatLoss.bothInches(FlatLoss.windInches(width, wind), FlatLoss.arcInches(dip, 144, 144));
        assertThat(lossOnGuide(width, 0, 144, 144, dip, wind)).isCloseTo(formula, near(formula));
    }

    @Property
    void togetherTheyCostNoLessThanEitherAndNoMoreThanTheirSum(
            @ForAll @DoubleRange(min = 0, max = 5) double wind,
            @ForAll @DoubleRange(min = 0, max = 5) double arc,
            @ForAll @DoubleRange(min = 0, max = 1) double more) {
        double both = FlatLoss.bothInches(wind, arc);
        assertThat(both).isBetween(Math.max(wind, arc) * (1 - 1e-12), (wind + arc) * (1 + 1e-12));
        assertThat(FlatLoss.bothInches(wind + more, arc)).isGreaterThanOrEqualTo(both * (1 - 1e-12));
        assertThat(FlatLoss.bothInches(wind, arc + more)).isGreaterThanOrEqualTo(both * (1 - 1e-12));
    }

    /** Lowest point of the blade, midway between two contacts that follow the guide. */
    private static double deepest(DoubleUnaryOperator guide, double base, double from, double to) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 4000; i++) {
            double x = from + (to - from) * i / 4000;
            lowest = Math.min(lowest, (guide.applyAsDouble(x - base / 2) + guide.applyAsDouble(x + base / 2)) / 2);
        }
        return -lowest;
    }

    @Property(tries = 100)
    void aCarriageOverAHollowGoesAsDeepAsTheFormulaSays(
            @ForAll @DoubleRange(min = 2, max = 60) double hollow,
            @ForAll @DoubleRange(min = 2, max = 60) double base,
            @ForAll @DoubleRange(min = 0.01, max = 1) double dip) {
        DoubleUnaryOperator guide = x -> {
            double t = 2 * x / hollow;
            return Math.abs(t) < 1 ? -dip * (1 - t * t) : 0;
        };
        double formula = FlatLoss.bridgedInches(dip, hollow, base);
        assertThat(deepest(guide, base, -70, 70)).isCloseTo(formula, within(dip * 0.002));
    }

    @Property(tries = 100)
    void aCarriageOnAWaveFollowsTheShareThatTheFormulaSays(
            @ForAll @DoubleRange(min = 5, max = 100) double wave, @ForAll @DoubleRange(min = 1, max = 60) double base) {
        double deepest = deepest(x -> StrictMath.cos(2 * StrictMath.PI * x / wave), base, 0, wave);
        assertThat(deepest).isCloseTo(FlatLoss.waveShare(wave, base), within(1e-5));
    }

    @Test
    void aCarriageOnAnArcOfTheWholeGuideIsNotHelpedByItsBase() {
        double length = 150;
        DoubleUnaryOperator guide = x -> guide(x, 0, length, 0.5, 0);
        DoubleUnaryOperator path = x -> (guide.applyAsDouble(x - 10) + guide.applyAsDouble(x + 10)) / 2;
        // Sagitta of the path over 96 in, and of the formula.
        double sagitta = (path.applyAsDouble(20) + path.applyAsDouble(116)) / 2 - path.applyAsDouble(68);
        assertThat(sagitta).isCloseTo(FlatLoss.arcInches(0.5, length, 96), within(1e-12));
    }

    @Test
    void figuresByHand() {
        // 12 in wide, 1 degree: 12 x 0.0174533 / 2.
        assertThat(FlatLoss.windInches(12, 1)).isCloseTo(0.104720, within(1e-6));
        // A quarter of the dip in a piece of half the length.
        assertThat(FlatLoss.arcInches(0.5, 144, 72)).isEqualTo(0.125);
        // A base of half the hollow leaves three quarters; a long base leaves half.
        assertThat(FlatLoss.bridgedInches(0.2, 20, 10)).isCloseTo(0.15, within(1e-15));
        assertThat(FlatLoss.bridgedInches(0.2, 20, 60)).isEqualTo(0.1);
        assertThat(FlatLoss.waveShare(20, 10)).isCloseTo(0, within(1e-15));
        assertThat(FlatLoss.waveShare(20, 20)).isEqualTo(1);
        assertThat(FlatLoss.bothInches(0.2, 0)).isEqualTo(0.2);
        assertThat(FlatLoss.bothInches(0, 0.3)).isEqualTo(0.3);
    }

    @Property
    void theLimitsAreTheLossesTurnedRound(
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double loss,
            @ForAll @DoubleRange(min = 6, max = 30) double width,
            @ForAll @DoubleRange(min = 0.1, max = 1) double share) {
        double wind = FlatLoss.greatestWindDegrees(loss, width);
        assertThat(FlatLoss.windInches(width, wind)).isCloseTo(loss, within(loss * 1e-12));
        double dip = FlatLoss.greatestDipInches(loss, 144, 144 * share);
        assertThat(FlatLoss.arcInches(dip, 144, 144 * share)).isCloseTo(loss, within(loss * 1e-12));
    }

    @Property
    void theWorkingsAgreeBitForBit(
            @ForAll @DoubleRange(min = 0.1, max = 30) double width,
            @ForAll @DoubleRange(min = 0, max = 10) double wind,
            @ForAll @DoubleRange(min = 0, max = 3) double dip,
            @ForAll @DoubleRange(min = 1, max = 200) double length) {
        assertThat(FlatLoss.windInchesWorking(width, wind).value()).isEqualTo(FlatLoss.windInches(width, wind));
        assertThat(FlatLoss.arcInchesWorking(dip, 200, length).value()).isEqualTo(FlatLoss.arcInches(dip, 200, length));
        assertThat(FlatLoss.bothInchesWorking(wind, dip).value()).isEqualTo(FlatLoss.bothInches(wind, dip));
        assertThat(FlatLoss.bothInchesWorking(wind, 0).value()).isEqualTo(FlatLoss.bothInches(wind, 0));
        assertThat(FlatLoss.bridgedInchesWorking(dip, length, width).value())
                .isEqualTo(FlatLoss.bridgedInches(dip, length, width));
        assertThat(FlatLoss.waveShareWorking(length, width).value()).isEqualTo(FlatLoss.waveShare(length, width));
        assertThat(FlatLoss.greatestWindDegreesWorking(dip, width).value())
                .isEqualTo(FlatLoss.greatestWindDegrees(dip, width));
        assertThat(FlatLoss.greatestDipInchesWorking(dip, 200, length).value())
                .isEqualTo(FlatLoss.greatestDipInches(dip, 200, length));
    }

    @Test
    void whatIsNoGuideIsRefused() {
        assertThatThrownBy(() -> FlatLoss.windInches(8, 11))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("wind is 11 degrees");
        assertThatThrownBy(() -> FlatLoss.windInches(0, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatLoss.windInches(8, Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatLoss.arcInches(0.5, 96, 97))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("measure the guide over the whole of the board");
        assertThatThrownBy(() -> FlatLoss.arcInches(Double.NaN, 96, 90)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatLoss.bothInches(-0.1, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatLoss.bridgedInches(0.1, 0, 5)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatLoss.waveShare(Double.NaN, 5)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatLoss.greatestWindDegrees(0.1, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatLoss.greatestDipInches(0.1, 96, Double.NaN))
                .isInstanceOf(OutOfDomainException.class);
    }
}
