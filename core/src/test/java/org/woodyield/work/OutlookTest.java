package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Propagation;
import org.woodyield.measure.Uncertain;
import org.woodyield.source.Sources;

class OutlookTest {

    private static final LogWork LOG =
            new LogWork("1", SawingWorkTest.OAK, List.of(new Cut(30, 36, 250), new Cut(40, 45, 250)), 1);

    private static double hours(WorkInputs inputs) {
        return WorkEstimate.of(inputs, Length.millimetres(8), List.of(LOG))
                .time()
                .hours();
    }

    @Test
    void theMoversOfTheTimeStandInOrder() {
        Outlook outlook = Outlook.of(CuttingRateTest.CHAIN, OutlookTest::hours, 1, 500);
        assertThat(outlook.value()).isEqualTo(hours(CuttingRateTest.CHAIN));
        assertThat(outlook.movers()).hasSizeGreaterThan(3);
        for (int i = 1; i < outlook.movers().size(); i++) {
            assertThat(outlook.movers().get(i).swing())
                    .isLessThanOrEqualTo(outlook.movers().get(i - 1).swing());
        }
        assertThat(outlook.movers())
                .extracting(Outlook.Mover::input)
                .doesNotContain(WorkInput.INTEREST, WorkInput.ENERGY_SOFTWOOD);
        assertThat(outlook.drawn().orElseThrow().interval(0.9).least()).isLessThan(outlook.value());
        assertThat(outlook.drawn().orElseThrow().interval(0.9).greatest()).isGreaterThan(outlook.value());
    }

    /** Draws of a count would be parts of it, so a range is refused where it is given and not in the middle of the draws. */
    @Test
    void aRangeOfACountIsRefusedWhereItIsGiven() {
        InputValue ranged = InputValue.within(3, 2, 6, Sources.get("given"));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> CuttingRateTest.CHAIN.with(WorkInput.PLACES, ranged))
                .satisfies(refusal -> {
                    assertThat(refusal.parameter()).isEqualTo(WorkInput.PLACES.label());
                    assertThat(refusal.limits()).isEqualTo("a whole number without a range, 1 to 10000");
                    assertThat(refusal.remedy()).contains("count them");
                });
        WorkInputs counted = CuttingRateTest.CHAIN.with(WorkInput.PLACES, InputValue.of(3, ranged.source()));
        assertThat(Outlook.of(counted, OutlookTest::hours, 1, 100).value()).isPositive();
    }

    @Test
    void figuresOfOneModelShareTheirDrawsAndAreWhatEachIsAlone() {
        Outlook alone = Outlook.of(CuttingRateTest.CHAIN, OutlookTest::hours, 1, 500);
        List<Outlook> both = Outlook.ofAll(
                CuttingRateTest.CHAIN, OutlookTest::hours, List.of(hours -> -hours, hours -> hours), 1, 500);
        assertThat(both.get(1).value()).isEqualTo(alone.value());
        assertThat(both.get(1).movers()).isEqualTo(alone.movers());
        assertThat(both.get(1).drawn().orElseThrow().interval(0.95))
                .isEqualTo(alone.drawn().orElseThrow().interval(0.95));
        // Counts of draws: shares of them are not exact.
        long below =
                Math.round(500 * both.get(0).probabilityAbove(-alone.value()).orElseThrow());
        long above = Math.round(500 * alone.probabilityAbove(alone.value()).orElseThrow());
        assertThat(below + above).isEqualTo(500);
    }

    /** One standard deviation of this wage is 2, less than what lifts the charge over its least amount. */
    @Test
    void aLeastChargeThatOnlyWideDrawsExceedIsDrawnWithoutAMover() {
        WorkInputs ranged = CuttingRateTest.CHAIN.with(
                WorkInput.WAGE, new InputValue(15, new Distribution.Normal(15, 2), Sources.get("given")));
        Outlook outlook = Outlook.of(ranged, inputs -> Math.max(18, inputs.get(WorkInput.WAGE)), 1, 500);
        assertThat(outlook.movers()).isEmpty();
        assertThat(outlook.probabilityAbove(18).orElseThrow()).isBetween(0.03, 0.11);
        assertThat(outlook.drawn().orElseThrow().range().least()).isEqualTo(18);
    }

    @Test
    void whatVariesByRoundingAloneHasNoProbability() {
        Outlook outlook = Outlook.of(
                CuttingRateTest.CHAIN.with(
                        WorkInput.WAGE, new InputValue(15, new Distribution.Normal(15, 2), Sources.get("given"))),
                inputs -> (inputs.get(WorkInput.WAGE) + 0.1) - inputs.get(WorkInput.WAGE),
                1,
                500);
        assertThat(outlook.value()).isCloseTo(0.1, within(1e-9));
        assertThat(outlook.movers()).isEmpty();
        assertThat(outlook.drawn()).isEmpty();
    }

    @Test
    void aDifferenceOfEqualsComputedInTwoWaysIsNone() {
        assertThat(Outlook.difference(0.1 + 0.2, 0.3)).isZero();
        assertThat(Outlook.difference(1e9, 1e9 + 0.5)).isZero();
        assertThat(Outlook.difference(3, 2.9)).isCloseTo(0.1, within(1e-12));
        Outlook outlook = Outlook.of(
                CuttingRateTest.CHAIN.with(
                        WorkInput.WAGE, new InputValue(15, new Distribution.Rectangular(10, 20), Sources.get("given"))),
                inputs -> Outlook.difference((inputs.get(WorkInput.WAGE) + 0.1) - 0.1, inputs.get(WorkInput.WAGE)),
                1,
                500);
        assertThat(outlook.drawn()).isEmpty();
        assertThat(outlook.movers()).isEmpty();
    }

    @Test
    void whereNoRangeIsGivenThereIsNoProbability() {
        WorkInputs fixed = CuttingRateTest.CHAIN;
        for (WorkInput input : fixed.values().keySet()) {
            fixed = fixed.with(input, fixed.get(input));
        }
        Outlook outlook = Outlook.of(fixed, OutlookTest::hours, 1, 500);
        assertThat(outlook.drawn()).isEmpty();
        assertThat(outlook.probabilityAbove(1)).isEmpty();
        assertThat(outlook.movers()).isEmpty();
    }

    @Test
    void oneLinearInputSpreadsTheFigureByItsOwnSpread() {
        WorkInputs fixed = CuttingRateTest.CHAIN;
        for (WorkInput input : fixed.values().keySet()) {
            fixed = fixed.with(input, fixed.get(input));
        }
        WorkInputs one = fixed.with(WorkInput.LOADING, InputValue.within(20, 10, 30, Sources.get("user")));
        Outlook outlook = Outlook.of(one, inputs -> 3 * inputs.get(WorkInput.LOADING), 9, 50_000);
        assertThat(outlook.drawn().orElseThrow().result().standardUncertainty())
                .isCloseTo(3 * 10 / Math.sqrt(6), within(0.2));
        assertThat(outlook.movers().get(0).swing()).isCloseTo(3 * 10 / Math.sqrt(6), within(1e-9));
        assertThat(outlook.probabilityAbove(60).orElseThrow()).isCloseTo(0.5, within(0.02));
    }

    /** In the linear case the draws and the law of propagation give one spread: the fuel and oil of fixed passes by their prices. */
    @Test
    void theSpreadOfALinearCostIsThatOfPropagation() {
        WorkInputs fixed = MoneyTest.PRICED;
        for (WorkInput input : fixed.values().keySet()) {
            fixed = fixed.with(input, fixed.get(input));
        }
        WorkInputs open = fixed.with(WorkInput.FUEL_PRICE, InputValue.within(1.2, 1.0, 1.4, Sources.get("user")))
                .with(WorkInput.WAGE, InputValue.within(15, 10, 20, Sources.get("user")));
        BoardFeet usable = BoardFeet.usable(100);
        Outlook outlook = Outlook.of(
                open,
                inputs -> JobCost.of(inputs, "USD", MoneyTest.WORK, usable)
                        .full(true)
                        .amount(),
                4,
                50_000);
        double fuel = MoneyTest.WORK.use().fuelLitres();
        double hours = MoneyTest.WORK.time().hours();
        Propagation linear = Propagation.of(
                values -> values[0] * fuel + values[1] * hours,
                List.of(new Uncertain(1.2, 0.2 / Math.sqrt(6)), new Uncertain(15, 5 / Math.sqrt(6))));
        double spread = linear.result().standardUncertainty();
        assertThat(outlook.drawn().orElseThrow().result().standardUncertainty())
                .isCloseTo(spread, within(0.02 * spread));
        assertThat(outlook.drawn().orElseThrow().result().value())
                .isCloseTo(outlook.value(), within(5 * spread / Math.sqrt(50_000)));
    }
}
