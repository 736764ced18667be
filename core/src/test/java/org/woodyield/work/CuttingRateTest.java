package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;

class CuttingRateTest {

    static final WorkInputs CHAIN = WorkInputs.chainDefaults().with(WorkInput.RATED_POWER, 5);

    static CuttingRate rate(WorkInputs inputs, boolean hardwood, double gravity, Length kerf) {
        return CuttingRate.of(inputs, hardwood, new Sourced(gravity, "", Sources.get("user")), kerf);
    }

    private static final Length KERF = Length.millimetres(8);

    @Test
    void powerKerfAndWidthGiveTheFeedByHand() {
        WorkInputs inputs = CHAIN.with(WorkInput.SHARE_AT_CUT, 0.8)
                .with(WorkInput.ENERGY_HARDWOOD, 200)
                .with(WorkInput.DULLING, 0);
        CuttingRate rate = rate(inputs, true, 0.5, KERF);
        // 4000 W / (100 J/cm3 x 0.8 cm x 50 cm) = 1 cm/s
        assertThat(rate.feedCentimetresPerSecond(Length.millimetres(500))).isCloseTo(1, within(1e-12));
        assertThat(rate.powerForWatts(Length.millimetres(500), 1)).isCloseTo(4000, within(1e-9));
    }

    @Test
    void typicalSoftwoodRipsTwiceAsFastAsTypicalHardwood() {
        Length width = Length.millimetres(500);
        double softwood = rate(CHAIN, false, 0.45, KERF).feedCentimetresPerSecond(width);
        double hardwood = rate(CHAIN, true, 0.60, KERF).feedCentimetresPerSecond(width);
        assertThat(softwood / hardwood).isCloseTo(2, within(1e-12));
    }

    @Test
    void halfThePowerWithTwiceTheKerfGivesAQuarter() {
        Length width = Length.millimetres(600);
        double whole = rate(CHAIN, true, 0.6, KERF).feedCentimetresPerSecond(width);
        double quarter = rate(CHAIN.with(WorkInput.RATED_POWER, 2.5), true, 0.6, KERF.times(2))
                .feedCentimetresPerSecond(width);
        assertThat(quarter / whole).isCloseTo(0.25, within(1e-12));
    }

    @Property
    void whereThePowerLimitsTheRateIsInverseToKerfTimesWidth(
            @ForAll @IntRange(min = 400, max = 900) int width, @ForAll @IntRange(min = 4, max = 12) int kerf) {
        CuttingRate rate = rate(CHAIN, true, 0.6, Length.millimetres(kerf));
        double feed = rate.feedCentimetresPerSecond(Length.millimetres(width));
        assertThat(feed).isLessThan(rate.feedCapCentimetresPerSecond());
        double reference = rate(CHAIN, true, 0.6, KERF).feedCentimetresPerSecond(Length.millimetres(800));
        assertThat(feed * width * kerf).isCloseTo(reference * 800 * 8, within(1e-6));
    }

    @Test
    void theRateStopsRisingAtTheFeedLimitWhateverThePower() {
        CuttingRate strong = rate(CHAIN.with(WorkInput.RATED_POWER, 100), false, 0.4, KERF);
        CuttingRate stronger = rate(CHAIN.with(WorkInput.RATED_POWER, 200), false, 0.4, KERF);
        Length width = Length.millimetres(200);
        assertThat(strong.feedCentimetresPerSecond(width)).isEqualTo(5);
        assertThat(stronger.feedCentimetresPerSecond(width)).isEqualTo(5);
    }

    @Test
    void theBiteOfTheTeethCapsTheFeed() {
        WorkInputs teeth = CHAIN.with(WorkInput.RATED_POWER, 200)
                .with(WorkInput.BITE, 0.02)
                .with(WorkInput.BLADE_SPEED, 20)
                .with(WorkInput.TOOTH_SPACING, 40);
        assertThat(rate(teeth, false, 0.4, KERF).feedCapCentimetresPerSecond()).isCloseTo(1, within(1e-12));
    }

    @Property(tries = 300)
    void theTimeOfATaperedCutIsTheIntegralAlongIt(
            @ForAll @DoubleRange(min = 0, max = 80) double one,
            @ForAll @DoubleRange(min = 0, max = 80) double other,
            @ForAll @DoubleRange(min = 1, max = 60) double kilowatts) {
        CuttingRate rate = rate(CHAIN.with(WorkInput.RATED_POWER, kilowatts), true, 0.6, KERF);
        int steps = 4000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double width = one + (other - one) * (i + 0.5) / steps;
            double feed = Math.min(
                    rate.feedCapCentimetresPerSecond(),
                    rate.powerAtCutWatts() / (rate.energyJoulesPerCubicCentimetre() * rate.kerfCentimetres() * width));
            sum += 300.0 / steps / feed;
        }
        double seconds = rate.cuttingSeconds(new Cut(one, other, 300));
        assertThat(seconds).isCloseTo(sum, within(seconds * 1e-5));
    }

    @Property
    void theWorkingsAgreeBitForBit(
            @ForAll @DoubleRange(min = 0, max = 80) double one,
            @ForAll @DoubleRange(min = 0, max = 80) double other,
            @ForAll boolean hardwood,
            @ForAll boolean teeth) {
        WorkInputs inputs = CHAIN.with(WorkInput.ALTITUDE, 700);
        if (hardwood) {
            inputs = inputs.with(WorkInput.MOISTURE, 17).with(WorkInput.FILING_ANGLE, 27);
        }
        if (teeth) {
            inputs = inputs.with(WorkInput.BITE, 0.03)
                    .with(WorkInput.BLADE_SPEED, 19)
                    .with(WorkInput.TOOTH_SPACING, 38);
        }
        CuttingRate rate = rate(inputs, hardwood, 0.53, KERF);
        Cut cut = new Cut(one, other, 301.7);
        assertThat(rate.cuttingSecondsWorking(cut).value()).isEqualTo(rate.cuttingSeconds(cut));
        Length width = Length.ofMetres(0.001 + one / 100, Rounding.DOWN);
        assertThat(rate.feedWorking(width).value()).isEqualTo(rate.feedCentimetresPerSecond(width));
        assertThat(rate.feedWorking(width).value("P")).isEqualTo(rate.powerAtCutWatts());
        assertThat(rate.feedWorking(width).value("k")).isEqualTo(rate.energyJoulesPerCubicCentimetre());
        assertThat(rate.powerAtCutWorking().value()).isEqualTo(rate.powerAtCutWatts());
    }

    /** 4 kW, three quarters of it at the cut, a tenth lost for each 1000 m: at 1500 m 4000 x 0.75 x 0.85. */
    @Test
    void heightTakesItsShareOfThePowerByHand() {
        WorkInputs high = CHAIN.with(WorkInput.RATED_POWER, 4)
                .with(WorkInput.SHARE_AT_CUT, 0.75)
                .with(WorkInput.LOSS_PER_KILOMETRE, 0.1)
                .with(WorkInput.ALTITUDE, 1500);
        assertThat(rate(high, false, 0.4, KERF).powerAtCutWatts()).isCloseTo(2550, within(1e-9));
        double low = rate(high.with(WorkInput.ALTITUDE, 0), false, 0.4, KERF).powerAtCutWatts();
        assertThat(low).isCloseTo(3000, within(1e-9));
    }

    @Test
    void drynessAndASteepFilingAngleRaiseTheEnergyByHand() {
        WorkInputs plain = CHAIN.with(WorkInput.DULLING, 0).with(WorkInput.ENERGY_HARDWOOD, 200);
        WorkInputs changed = plain.with(WorkInput.MOISTURE, 12)
                .with(WorkInput.DRY_RISE, 0.3)
                .with(WorkInput.FILING_ANGLE, 30)
                .with(WorkInput.FILING_RISE, 0.05);
        assertThat(rate(plain, true, 0.5, KERF).energyJoulesPerCubicCentimetre())
                .isEqualTo(100);
        // 100 x 1.3 x 1.1
        assertThat(rate(changed, true, 0.5, KERF).energyJoulesPerCubicCentimetre())
                .isCloseTo(143, within(1e-9));
        assertThat(rate(plain.with(WorkInput.MOISTURE, 80).with(WorkInput.FILING_ANGLE, 5), true, 0.5, KERF)
                        .energyJoulesPerCubicCentimetre())
                .isEqualTo(100);
    }

    @Test
    void aMissingPowerIsRefusedByName() {
        assertThatThrownBy(() -> rate(WorkInputs.chainDefaults(), true, 0.6, KERF))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("rated power")
                .hasMessageContaining("give rated-power");
    }

    @Test
    void widthsThatAreNoWidthsAreRefused() {
        CuttingRate rate = rate(CHAIN, true, 0.6, KERF);
        assertThatThrownBy(() -> rate.cuttingSeconds(new Cut(Double.NaN, 10, 100)))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> rate.cuttingSeconds(new Cut(10, -1, 100))).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> rate.cuttingSeconds(new Cut(10, 10, 0))).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> rate.feedCentimetresPerSecond(Length.ZERO)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void everyDefaultNamesItsSourceAndLiesWithinItsRange() {
        for (WorkInputs defaults : new WorkInputs[] {WorkInputs.chainDefaults(), WorkInputs.bandDefaults()}) {
            assertThat(defaults.values()).isNotEmpty().allSatisfy((input, value) -> {
                assertThat(input.domain().holds(value.value())).isTrue();
                assertThat(input.isMoney()).as("no price has a default").isFalse();
                assertThat(value.source().title()).isNotBlank();
            });
            assertThat(defaults.find(WorkInput.RATED_POWER)).isEmpty();
        }
    }
}
