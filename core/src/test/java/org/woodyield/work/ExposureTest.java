package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;

class ExposureTest {

    @Property
    void vibrationWorkingsAgreeBitForBit(
            @ForAll @DoubleRange(min = 0.1, max = 20) double a, @ForAll @DoubleRange(min = 0, max = 8) double hours) {
        VibrationDay day = new VibrationDay(
                List.of(new VibrationDay.Task("saw", a, hours), new VibrationDay.Task("brush saw", 4.6, 2)));
        assertThat(day.dailyExposureWorking().value()).isEqualTo(day.dailyExposure());
        assertThat(VibrationDay.hoursUntilWorking(a, 2.5).value()).isEqualTo(VibrationDay.hoursUntil(a, 2.5));
    }

    @Property
    void workingUntilTheActionValueGivesTheActionValue(@ForAll @DoubleRange(min = 2.6, max = 30) double a) {
        VibrationDay day = new VibrationDay(List.of(new VibrationDay.Task("saw", a, VibrationDay.hoursUntil(a, 2.5))));
        assertThat(day.dailyExposure()).isCloseTo(2.5, within(1e-12));
    }

    @Property
    void noiseWorkingsAgreeBitForBit(@ForAll @DoubleRange(min = 60, max = 130) double level) {
        for (NoiseLimit limit : List.of(NoiseLimit.NIOSH, NoiseLimit.OSHA)) {
            assertThat(limit.allowedHoursWorking(level).value()).isEqualTo(limit.allowedHours(level));
            assertThat(limit.allowedHours(level + limit.exchangeRate()))
                    .isCloseTo(limit.allowedHours(level) / 2, within(1e-9));
        }
    }

    @Property
    void theDoseWorkingAgreesBitForBitAndDosesOfADayAddUp(
            @ForAll @DoubleRange(min = 60, max = 130) double level,
            @ForAll @DoubleRange(min = 0, max = 12) double hours) {
        for (NoiseLimit limit : List.of(NoiseLimit.NIOSH, NoiseLimit.OSHA)) {
            double dose = limit.dosePercent(level, hours);
            assertThat(limit.doseWorking(level, hours).value()).isEqualTo(dose);
            assertThat(limit.dosePercent(level, hours / 2) + limit.dosePercent(level, hours - hours / 2))
                    .isCloseTo(dose, within(1e-9 * (1 + dose)));
        }
    }

    @Test
    void noDoseWithoutALevelAndHoursThatCanBe() {
        assertThatThrownBy(() -> NoiseLimit.OSHA.dosePercent(141, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> NoiseLimit.OSHA.dosePercent(Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> NoiseLimit.OSHA.doseWorking(100, 24.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> NoiseLimit.OSHA.doseWorking(100, -1)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void eightHoursAtTheLimitAreAFullDose() {
        assertThat(NoiseLimit.NIOSH.dosePercent(85, 8)).isEqualTo(100);
        assertThat(NoiseLimit.OSHA.dosePercent(90, 8)).isEqualTo(100);
    }

    @Test
    void carbonMonoxideIsTheMeanOverEightHours() {
        List<CarbonMonoxide.Stretch> day =
                List.of(new CarbonMonoxide.Stretch(100, 2), new CarbonMonoxide.Stretch(20, 4));
        assertThat(CarbonMonoxide.eightHourMean(day)).isEqualTo(35);
        assertThat(CarbonMonoxide.eightHourMeanWorking(day).value()).isEqualTo(35);
    }

    @Test
    void aDayHasTwentyFourHours() {
        assertThatThrownBy(() -> new VibrationDay(
                        List.of(new VibrationDay.Task("saw", 5, 20), new VibrationDay.Task("saw", 5, 5))))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new VibrationDay.Task("saw", Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
    }
}
