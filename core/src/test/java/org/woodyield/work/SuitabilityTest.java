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

class SuitabilityTest {

    private static final Length KERF = Length.millimetres(8);

    private static CuttingRate rate(double kilowatts) {
        return CuttingRateTest.rate(CuttingRateTest.CHAIN.with(WorkInput.RATED_POWER, kilowatts), true, 0.6, KERF);
    }

    @Property(tries = 300)
    void theLeastPowerJustHoldsTheSlowestFeedAndTheGreatestTheFastest(
            @ForAll @IntRange(min = 50, max = 1200) int millimetres,
            @ForAll @DoubleRange(min = 0.5, max = 20) double kilowatts) {
        Length width = Length.millimetres(millimetres);
        Suitability asked = Suitability.of(rate(kilowatts), width);
        double least = CuttingRateTest.CHAIN.get(WorkInput.LEAST_FEED);
        assertThat(Suitability.of(rate(asked.leastKilowatts()), width).feedMetresPerMinute())
                .isCloseTo(least, within(1e-9));
        Suitability more = Suitability.of(rate(asked.greatestKilowatts() * 1.5), width);
        assertThat(more.feedMetresPerMinute()).isCloseTo(3, within(1e-9));
        assertThat(more.feedLimited()).isTrue();
        assertThat(asked.margin()).isCloseTo(kilowatts / asked.leastKilowatts(), within(1e-9));
        assertThat(asked.working().value()).isEqualTo(asked.leastKilowatts());
        assertThat(asked.pulls()).isEqualTo(asked.margin() >= 1);
    }

    @Property(tries = 300)
    void aWiderCutNeedsMorePower(@ForAll @IntRange(min = 50, max = 1200) int millimetres) {
        CuttingRate rate = rate(4);
        assertThat(rate.ratedKilowatts(Length.millimetres(millimetres + 10), 0.5))
                .isGreaterThan(rate.ratedKilowatts(Length.millimetres(millimetres), 0.5));
    }

    @Test
    void thePowerByHand() {
        WorkInputs inputs = CuttingRateTest.CHAIN
                .with(WorkInput.SHARE_AT_CUT, 0.8)
                .with(WorkInput.ENERGY_HARDWOOD, 200)
                .with(WorkInput.DULLING, 0);
        // 100 J/cm3 x 0.8 cm x 50 cm x 1 cm/s = 4 kW at the cut, 5 kW rated
        CuttingRate rate = CuttingRateTest.rate(inputs, true, 0.5, KERF);
        assertThat(rate.ratedKilowatts(Length.millimetres(500), 0.6)).isCloseTo(5, within(1e-12));
    }

    @Test
    void aFeedThatIsNoFeedAndAMissingSlowestFeedAreRefused() {
        assertThatThrownBy(() -> rate(4).ratedKilowatts(Length.millimetres(500), Double.NaN))
                .isInstanceOf(OutOfDomainException.class);
        CuttingRate without =
                CuttingRateTest.rate(CuttingRateTest.CHAIN.without(WorkInput.LEAST_FEED), true, 0.6, KERF);
        assertThatThrownBy(() -> Suitability.of(without, Length.millimetres(500)))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("least-feed");
    }
}
