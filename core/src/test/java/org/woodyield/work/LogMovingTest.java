package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.log.Log;
import org.woodyield.log.ProfileStation;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.work.LogMoving.End;

class LogMovingTest {

    private static Log log(int small, int large, int length) {
        return new Log(
                "1",
                SawingWorkTest.OAK,
                Length.millimetres(length),
                Length.millimetres(small),
                Length.millimetres(small),
                Length.millimetres(large),
                Length.ZERO,
                Length.ZERO,
                0,
                false);
    }

    @Test
    void aLogWithoutTaperTakesHalfItsWeightAtEitherEnd() {
        assertThat(LogMoving.endLiftKilograms(log(300, 300, 4000), 250, End.SMALL))
                .isEqualTo(125);
        assertThat(LogMoving.endLiftKilograms(log(300, 300, 4000), 250, End.LARGE))
                .isEqualTo(125);
    }

    /** By hand: of a frustum 1 to 2 the centre of mass lies (1 + 4 + 12) / (4 (1 + 2 + 4)) = 17/28 of the length from the small end. */
    @Test
    void aTaperedLogByHand() {
        assertThat(LogMoving.endLiftKilograms(log(200, 400, 3000), 280, End.LARGE))
                .isCloseTo(170, within(1e-9));
        assertThat(LogMoving.endLiftKilograms(log(200, 400, 3000), 280, End.SMALL))
                .isCloseTo(110, within(1e-9));
    }

    @Property
    void theTwoLiftsBearTheLogAndTheLargeEndIsTheHeavier(
            @ForAll @IntRange(min = 80, max = 1500) int small,
            @ForAll @IntRange(min = 0, max = 900) int more,
            @ForAll @IntRange(min = 500, max = 9000) int length,
            @ForAll @DoubleRange(min = 1, max = 9000) double weight) {
        Log log = log(small, small + more, length);
        double atSmall = LogMoving.endLiftKilograms(log, weight, End.SMALL);
        double atLarge = LogMoving.endLiftKilograms(log, weight, End.LARGE);
        assertThat(atSmall + atLarge).isCloseTo(weight, within(1e-9 * weight));
        assertThat(atLarge).isBetween(weight / 2 * (1 - 1e-12), weight * 0.75);
        assertThat(LogMoving.endLiftWorking(log, weight, End.SMALL).value()).isEqualTo(atSmall);
        assertThat(LogMoving.endLiftWorking(log, weight, End.LARGE).value()).isEqualTo(atLarge);
    }

    @Property
    void aStationOnTheStraightTaperChangesNothing(
            @ForAll @IntRange(min = 100, max = 600) int small, @ForAll @IntRange(min = 0, max = 300) int half) {
        Log plain = log(small, small + 2 * half, 4000);
        Log measured = plain.withProfile(List.of(
                new ProfileStation(Length.ZERO, Length.millimetres(small)),
                new ProfileStation(Length.millimetres(2000), Length.millimetres(small + half)),
                new ProfileStation(Length.millimetres(4000), Length.millimetres(small + 2 * half))));
        assertThat(LogMoving.endLiftKilograms(measured, 500, End.LARGE))
                .isCloseTo(LogMoving.endLiftKilograms(plain, 500, End.LARGE), within(1e-9));
        assertThat(LogMoving.endLiftWorking(measured, 500, End.LARGE).value())
                .isEqualTo(LogMoving.endLiftKilograms(measured, 500, End.LARGE));
    }

    @Test
    void aFlaredButtDrawsTheWeightToIt() {
        Log flared = log(300, 320, 4000)
                .withProfile(List.of(
                        new ProfileStation(Length.ZERO, Length.millimetres(300)),
                        new ProfileStation(Length.millimetres(3400), Length.millimetres(320)),
                        new ProfileStation(Length.millimetres(4000), Length.millimetres(500))));
        assertThat(LogMoving.endLiftKilograms(flared, 300, End.LARGE))
                .isGreaterThan(LogMoving.endLiftKilograms(log(300, 320, 4000), 300, End.LARGE));
    }

    @Test
    void pullsByHand() {
        assertThat(LogMoving.parbuckleKilograms(400, 30, 0)).isCloseTo(100, within(1e-9));
        assertThat(LogMoving.parbuckleKilograms(400, 0, 0.05)).isCloseTo(10, within(1e-9));
        assertThat(LogMoving.slopePullKilograms(400, 0, 0.5)).isCloseTo(200, within(1e-9));
        assertThat(LogMoving.slopePullKilograms(400, 30, 0)).isCloseTo(200, within(1e-9));
        assertThat(LogMoving.slopePullKilograms(400, -45, 1)).isCloseTo(0, within(1e-9));
        assertThat(LogMoving.slopePullKilograms(400, -30, 0.1)).isNegative();
    }

    @Property
    void rollingTakesHalfOfDraggingAtTheSameResistance(
            @ForAll @DoubleRange(min = 1, max = 9000) double weight,
            @ForAll @DoubleRange(min = 0, max = 60) double slope,
            @ForAll @DoubleRange(min = 0, max = 1) double resistance) {
        double rolled = LogMoving.parbuckleKilograms(weight, slope, resistance);
        double dragged = LogMoving.slopePullKilograms(weight, slope, resistance);
        assertThat(2 * rolled).isCloseTo(dragged, within(1e-9 * weight));
        assertThat(LogMoving.parbuckleWorking(weight, slope, resistance).value())
                .isEqualTo(rolled);
        assertThat(LogMoving.slopePullWorking(weight, slope, resistance).value())
                .isEqualTo(dragged);
        if (slope < 59 && resistance < 0.5) {
            assertThat(LogMoving.slopePullKilograms(weight, slope + 1, resistance))
                    .isGreaterThan(dragged);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 100_001, Double.NaN, Double.POSITIVE_INFINITY})
    void aWeightThatNoLogHasIsRefused(double kilograms) {
        assertThatThrownBy(() -> LogMoving.endLiftKilograms(log(300, 300, 4000), kilograms, End.SMALL))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("weight");
        assertThatThrownBy(() -> LogMoving.parbuckleKilograms(kilograms, 10, 0))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogMoving.slopePullKilograms(kilograms, 10, 0))
                .isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void slopesAndFrictionHaveLimits() {
        assertThatThrownBy(() -> LogMoving.parbuckleKilograms(100, -1, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogMoving.parbuckleKilograms(100, 61, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogMoving.parbuckleWorking(100, 10, 1.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogMoving.slopePullKilograms(100, 61, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogMoving.slopePullWorking(100, 10, Double.NaN))
                .isInstanceOf(OutOfDomainException.class);
        assertThat(LogMoving.slopePullKilograms(100, -60, 3)).isPositive();
    }

    /** Thin slices with the strip as a circle really bounds it, which shares nothing with the formula. */
    @Property(tries = 200)
    void twoHalvesAndTheKerfAreTheWhole(
            @ForAll @IntRange(min = 150, max = 900) int small,
            @ForAll @IntRange(min = 0, max = 400) int more,
            @ForAll @IntRange(min = 0, max = 12) int kerf) {
        Log log = log(small, small + more, 4000);
        int slices = 2000;
        double whole = 0;
        double strip = 0;
        for (int i = 0; i < slices; i++) {
            double r = (small + more * (i + 0.5) / slices) / 2000;
            double h = kerf / 2000.0;
            whole += Math.PI * r * r;
            strip += 2 * (r * r * Math.asin(h / r) + h * Math.sqrt(r * r - h * h));
        }
        double half = LogMoving.halfLogKilograms(log, 100, Length.millimetres(kerf));
        assertThat(2 * half + 100 * strip / whole).isCloseTo(100, within(0.02));
        assertThat(LogMoving.halfLogWorking(log, 100, Length.millimetres(kerf)).value())
                .isEqualTo(half);
    }

    @Test
    void aKerfThatTakesAllLeavesNoHalf() {
        assertThat(LogMoving.halfLogKilograms(log(20, 20, 1000), 1, Length.millimetres(50)))
                .isZero();
    }

    @Test
    void aKerfOrWeightOutsideHasNoHalf() {
        Log log = log(300, 300, 4000);
        assertThatThrownBy(() -> LogMoving.halfLogKilograms(log, 0, Length.millimetres(8)))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogMoving.halfLogKilograms(log, 100, Length.millimetres(51)))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogMoving.halfLogWorking(log, 100, Length.millimetres(-1)))
                .isInstanceOf(OutOfDomainException.class);
    }
}
