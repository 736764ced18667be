package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.OutOfDomainException;

/** Stacks, Swedish measures and firm wood. */
class StackedWoodTest {

    @Property(tries = 200)
    void workingsHaveTheBitsOfTheirValues(
            @ForAll @DoubleRange(min = 0, max = 500) double count,
            @ForAll @DoubleRange(min = 0.2, max = 1) double share) {
        for (StackedWood.Unit unit : StackedWood.Unit.values()) {
            assertThat(StackedWood.solidCubicMetresWorking(count, unit, share).value())
                    .isEqualTo(StackedWood.solidCubicMetres(count, unit, share));
        }
        for (StackedWood.GreenCord wood : StackedWood.GreenCord.values()) {
            assertThat(StackedWood.greenPoundsWorking(count, wood).value())
                    .isEqualTo(StackedWood.greenPounds(count, wood));
        }
        for (SwedishMeasure from : SwedishMeasure.values()) {
            for (SwedishMeasure to : SwedishMeasure.values()) {
                assertThat(from.toWorking(count, to).value()).isEqualTo(from.to(count, to));
            }
        }
    }

    @Test
    void stacksAreTheirSpaceTimesTheShareOfWood() {
        assertThat(StackedWood.Unit.CORD.space().cubicFeet()).isCloseTo(128, within(1e-12));
        assertThat(StackedWood.Unit.STERE.space().cubicMetres()).isEqualTo(1);
        assertThat(StackedWood.solidCubicMetres(2, StackedWood.Unit.STERE, 0.5)).isEqualTo(1);
        assertThat(StackedWood.greenPounds(2.5, StackedWood.GreenCord.PINE_EAST))
                .isEqualTo(13_000);
    }

    @Test
    void aSwedishMeasureIsOneOfItselfAndTheWayBackIsNearly() {
        for (SwedishMeasure from : SwedishMeasure.values()) {
            assertThat(from.factorTo(from)).isEqualTo(1);
            for (SwedishMeasure to : SwedishMeasure.values()) {
                double back = from.factorTo(to) * to.factorTo(from);
                assertThat(back).as("%s to %s and back", from, to).isCloseTo(1, within(0.02));
            }
        }
    }

    @Property(tries = 200)
    void firmwoodIsSmalianByRadii(
            @ForAll @DoubleRange(min = 2, max = 60) double top,
            @ForAll @DoubleRange(min = 1, max = 2) double ratio,
            @ForAll @DoubleRange(min = 0.5, max = 20) double length) {
        double volume = Firmwood.cubicMetres(top, top * ratio, length);
        double smalian = SolidVolume.SMALIAN.volume(top / 50, 1, top * ratio / 50, length);
        assertThat(volume).isCloseTo(smalian, within(smalian * 1e-13));
        assertThat(Firmwood.cubicMetresWorking(top, top * ratio, length).value())
                .isEqualTo(volume);
    }

    @Test
    void whatIsOutOfReasonIsRefused() {
        assertThatThrownBy(() -> StackedWood.solidCubicMetres(-1, StackedWood.Unit.CORD, 0.6))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> StackedWood.solidCubicMetres(1, StackedWood.Unit.CORD, 60))
                .hasMessageContaining("share");
        assertThatThrownBy(() -> StackedWood.greenPounds(Double.NaN, StackedWood.GreenCord.PINE_EAST))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SwedishMeasure.TOP.to(Double.NaN, SwedishMeasure.STEM))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Firmwood.cubicMetres(20, 19, 4)).hasMessageContaining("butt");
        assertThatThrownBy(() -> Firmwood.cubicMetres(20, Double.NaN, 4)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void unitsHaveTheirSpaceAndNames() {
        assertThat(StackedWood.Unit.CORD_FOOT.space().cubicFeet()).isCloseTo(16, within(1e-12));
        assertThat(StackedWood.Unit.STACK.space().cubicFeet()).isCloseTo(108, within(1e-12));
        assertThat(StackedWood.Unit.STACK.label()).isEqualTo("stack (UK)");
        assertThat(StackedWood.solidCubicMetres(1, StackedWood.Unit.CORD, 0.2))
                .as("25.6 cubic feet of 0.028316846592 m3")
                .isCloseTo(0.72491, within(5e-6));
        assertThat(StackedWood.GreenCord.OAK_APPALACHIAN.label()).isEqualTo("Appalachian oak");
        assertThat(StackedWood.GreenCord.OAK_APPALACHIAN.source().id()).isEqualTo("handbook-605-quoted");
        assertThat(SwedishMeasure.SOLID_UNDER_BARK.symbol()).isEqualTo("m3fub");
        assertThat(SwedishMeasure.SOLID_UNDER_BARK.label()).isEqualTo("solid volume under bark");
    }

    @Test
    void workingsRefuseWhatTheirFiguresRefuse() {
        assertThatThrownBy(() -> StackedWood.solidCubicMetresWorking(-1, StackedWood.Unit.CORD, 0.6))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> StackedWood.solidCubicMetresWorking(1, StackedWood.Unit.CORD, 0.19))
                .hasMessageContaining("0.2 to 1");
        assertThatThrownBy(() -> StackedWood.greenPoundsWorking(-1, StackedWood.GreenCord.PINE_EAST))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SwedishMeasure.TOP.toWorking(-1, SwedishMeasure.STEM))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Firmwood.cubicMetresWorking(20, 19, 4)).hasMessageContaining("butt");
    }

    /** By hand: pi (10^2 + 20^2)/2 x 4 / 10000 is 0.1 pi. */
    @Test
    void firmwoodByHandAndToItsLimits() {
        assertThat(Firmwood.cubicMetres(10, 20, 4)).isCloseTo(0.1 * Math.PI, within(1e-15));
        assertThat(Firmwood.cubicMetres(2, 2, 0.5)).isPositive();
        assertThat(Firmwood.cubicMetres(150, 200, 30)).isPositive();
        for (double[] wrong :
                new double[][] {{1.9, 20, 4}, {151, 200, 4}, {20, 200.1, 4}, {20, 25, 0.4}, {20, 25, 31}}) {
            assertThatThrownBy(() -> Firmwood.cubicMetres(wrong[0], wrong[1], wrong[2]))
                    .isInstanceOf(OutOfDomainException.class);
        }
    }

    @Test
    void aBatchOfFirmwoodStopsWhereTheSingleCallDoes() {
        double[] tops = {10, 12, 14};
        double[] butts = {20, 200, 14};
        double[] lengths = {4, 5, 6};
        double[] out = new double[3];
        Firmwood.cubicMetres(tops, butts, lengths, out);
        for (int i = 0; i < 3; i++) {
            assertThat(out[i]).isEqualTo(Firmwood.cubicMetres(tops[i], butts[i], lengths[i]));
        }
        for (double bad : new double[] {13.9, 200.1, Double.NaN, -20}) {
            double[] some = {-7, -7, -7};
            assertThatThrownBy(() -> Firmwood.cubicMetres(tops, new double[] {20, 30, bad}, lengths, some))
                    .hasMessageContaining("butt");
            assertThat(some).startsWith(out[0], Firmwood.cubicMetres(12, 30, 5));
        }
        double[] some = {-7, -7, -7};
        assertThatThrownBy(() -> Firmwood.cubicMetres(new double[] {10, 1, 14}, butts, lengths, some))
                .hasMessageContaining("top end");
        assertThat(some).startsWith(out[0]);
        double[] two = {20, 20};
        assertThatThrownBy(() -> Firmwood.cubicMetres(tops, two, lengths, out))
                .hasMessageContaining("three arrays of one length");
        assertThatThrownBy(() -> Firmwood.cubicMetres(two, butts, lengths, out))
                .hasMessageContaining("three arrays of one length");
    }

    /** One measure of many is moved to an end of its range, beyond it by the least there is, or far beyond. */
    @Property
    void oneLogOutsideIsFoundAmongMany(
            @ForAll @IntRange(min = 0, max = 2999) int place,
            @ForAll @IntRange(min = 0, max = 2) int which,
            @ForAll("measures") double measure,
            @ForAll boolean inPlace) {
        double[][] logs = new double[3][3000];
        for (int i = 0; i < 3000; i++) {
            logs[0][i] = 5 + i % 31;
            logs[1][i] = logs[0][i] + i % 7;
            logs[2][i] = 2 + 0.1 * (i % 60);
        }
        logs[which][place] = measure;
        double[][] given = {logs[0].clone(), logs[1].clone(), logs[2].clone()};
        double[] out = inPlace ? logs[which] : new double[3000];
        Throwable refusal = catchThrowable(() -> Firmwood.cubicMetres(logs[0], logs[1], logs[2], out));
        Throwable alone = catchThrowable(() -> Firmwood.cubicMetres(given[0][place], given[1][place], given[2][place]));
        if (alone == null) {
            assertThat(refusal).isNull();
        } else {
            assertThat(refusal).hasMessage(alone.getMessage());
        }
        for (int i = 0; i < (alone == null ? 3000 : place); i++) {
            assertThat(out[i]).isEqualTo(Firmwood.cubicMetres(given[0][i], given[1][i], given[2][i]));
        }
    }

    @Provide
    Arbitrary<Double> measures() {
        List<Double> some = new ArrayList<>(List.of(
                0.0,
                -0.0,
                -1e-300,
                Double.MIN_VALUE,
                -1e200,
                1e154,
                1e200,
                Double.MAX_VALUE,
                Double.NaN,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY));
        for (double end : new double[] {0.5, 2, 30, 150, 200}) {
            some.addAll(List.of(Math.nextDown(end), end, Math.nextUp(end)));
        }
        return Arbitraries.of(some);
    }
}
