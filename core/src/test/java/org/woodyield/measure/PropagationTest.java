package org.woodyield.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PropagationTest {

    @Property
    void inALinearModelTheSharesAreSensitivityTimesSpread(
            @ForAll @DoubleRange(min = -5, max = 5) double a, @ForAll @DoubleRange(min = -5, max = 5) double b) {
        Propagation propagation =
                Propagation.of(x -> a * x[0] + b * x[1] + 7, List.of(new Uncertain(2, 0.3), new Uncertain(3, 0.4)));
        assertThat(propagation.shares().get(0)).isCloseTo(a * 0.3, within(1e-9));
        assertThat(propagation.shares().get(1)).isCloseTo(b * 0.4, within(1e-9));
        assertThat(propagation.result().standardUncertainty()).isCloseTo(Math.hypot(a * 0.3, b * 0.4), within(1e-9));
        assertThat(propagation.result().value()).isCloseTo(2 * a + 3 * b + 7, within(1e-9));
    }

    @Test
    void drawingAgreesWithPropagationInTheLinearCase() {
        Distribution x = new Distribution.Normal(2, 0.3);
        Distribution y = new Distribution.Rectangular(1, 5);
        Distribution z = new Distribution.Triangular(0, 1, 4);
        Propagation propagation = Propagation.of(
                v -> 3 * v[0] - 2 * v[1] + v[2],
                List.of(
                        new Uncertain(x.mean(), x.standardDeviation()),
                        new Uncertain(y.mean(), y.standardDeviation()),
                        new Uncertain(z.mean(), z.standardDeviation())));
        int trials = 200_000;
        MonteCarlo drawn = MonteCarlo.run(draws -> 3 * x.draw(draws) - 2 * y.draw(draws) + z.draw(draws), 7, trials);
        double u = propagation.result().standardUncertainty();
        assertThat(drawn.result().value()).isCloseTo(propagation.result().value(), within(5 * u / Math.sqrt(trials)));
        assertThat(drawn.result().standardUncertainty()).isCloseTo(u, within(5 * u / Math.sqrt(trials)));
    }

    @Test
    void theIntervalOfTheNormalLawIsWhereItIsKnownToBe() {
        MonteCarlo drawn = MonteCarlo.run(Draws::nextNormal, 11, 400_000);
        MonteCarlo.Interval interval = drawn.interval(0.95);
        assertThat(interval.least()).isCloseTo(-1.95996, within(0.02));
        assertThat(interval.greatest()).isCloseTo(1.95996, within(0.02));
        assertThat(drawn.shareAbove(0)).isCloseTo(0.5, within(0.005));
        assertThat(drawn.shareAbove(1.2816)).isCloseTo(0.1, within(0.005));
    }

    @Test
    void theSameSeedGivesTheSameBits() {
        MonteCarlo one = MonteCarlo.run(Draws::nextNormal, 3, 1000);
        MonteCarlo other = MonteCarlo.run(Draws::nextNormal, 3, 1000);
        assertThat(one.result()).isEqualTo(other.result());
        assertThat(one.interval(0.9)).isEqualTo(other.interval(0.9));
        assertThat(MonteCarlo.run(Draws::nextNormal, 4, 1000).result()).isNotEqualTo(one.result());
    }

    @Test
    void sharesAboveCountWhatIsStrictlyAbove() {
        MonteCarlo drawn = MonteCarlo.run(draws -> Math.floor(draws.nextDouble() * 4), 5, 1000);
        assertThat(drawn.shareAbove(3)).isZero();
        assertThat(drawn.shareAbove(-1)).isEqualTo(1);
        assertThat(drawn.shareAbove(1)).isCloseTo(0.5, within(0.1));
    }

    @Test
    void aResultThatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> MonteCarlo.run(draws -> Double.NaN, 1, 100))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("trial 1");
    }

    /** The numbers 1 to 100: their mean is 50.5, the sum of squares 83325, over 99 and drawn 29.01; half lie from 26 to 76. */
    @Test
    void aHundredTrialsByHand() {
        int[] count = {0};
        MonteCarlo drawn = MonteCarlo.run(draws -> ++count[0], 1, 100);
        assertThat(drawn.trials()).isEqualTo(100);
        assertThat(drawn.result().value()).isEqualTo(50.5);
        assertThat(drawn.result().standardUncertainty()).isCloseTo(29.011492, within(5e-7));
        assertThat(drawn.interval(0.5)).isEqualTo(new MonteCarlo.Interval(26, 76, 0.5));
    }
}
