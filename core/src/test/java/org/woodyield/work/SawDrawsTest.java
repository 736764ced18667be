package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

class SawDrawsTest {

    private static final Source USER = Sources.get("user");
    private static final WorkInputs FIXED = fixed();

    private static WorkInputs fixed() {
        WorkInputs fixed = CuttingRateTest.CHAIN;
        for (WorkInput input : fixed.values().keySet()) {
            fixed = fixed.with(input, fixed.get(input));
        }
        return fixed;
    }

    private static WorkInputs with(WorkInput input, double least, double value, double greatest) {
        return FIXED.with(input, InputValue.within(value, least, greatest, USER));
    }

    private static SawDraws.Spread spread(
            List<WorkInputs> saws, WorkInput input, ToDoubleFunction<List<Double>> figure, int trials) {
        return SawDraws.of(saws)
                .spreads((saw, inputs) -> inputs.get(input), List.of(figure), 5, trials)
                .get(0);
    }

    private static double difference(List<Double> values) {
        return values.get(1) - values.get(0);
    }

    @Test
    void whatTheJobGivesIsTheSameForAllSawsInOneDraw() {
        WorkInputs dear = with(WorkInput.WAGE, 10, 15, 20);
        SawDraws draws = SawDraws.of(List.of(dear, dear));
        assertThat(draws.ranges()).containsExactly(new SawDraws.Range(WorkInput.WAGE, List.of(0, 1)));
        SawDraws.Spread none = spread(List.of(dear, dear), WorkInput.WAGE, SawDrawsTest::difference, 500);
        assertThat(none.value()).isZero();
        assertThat(none.movers()).isEmpty();
        assertThat(none.drawn()).as("nothing moves the two apart").isEmpty();
        // 30 h with one saw and 10 h with the other: the wage moves the difference by 20 h of it.
        SawDraws.Spread some =
                spread(List.of(dear, dear), WorkInput.WAGE, wages -> 30 * wages.get(0) - 10 * wages.get(1), 50_000);
        assertThat(some.drawn().orElseThrow().result().standardUncertainty())
                .isCloseTo(20 * 5 / Math.sqrt(6), within(0.5));
        assertThat(some.movers().get(0).swing()).isCloseTo(20 * 5 / Math.sqrt(6), within(1e-9));
    }

    @Test
    void whatASawHasOfItsOwnIsDrawnApart() {
        WorkInputs saw = with(WorkInput.SETTING, 2, 3, 4);
        List<WorkInputs> saws = List.of(saw, saw);
        assertThat(SawDraws.of(saws).ranges())
                .containsExactly(
                        new SawDraws.Range(WorkInput.SETTING, List.of(0)),
                        new SawDraws.Range(WorkInput.SETTING, List.of(1)));
        SawDraws.Spread apart = spread(saws, WorkInput.SETTING, SawDrawsTest::difference, 50_000);
        double one = 1 / Math.sqrt(6);
        assertThat(apart.drawn().orElseThrow().result().standardUncertainty())
                .as("two independent spreads by their squares")
                .isCloseTo(one * Math.sqrt(2), within(0.01));
        assertThat(apart.movers()).hasSize(2);
    }

    @Test
    void theWoodIsSharedOnlyWhereBothSawsTakeItAlike() {
        WorkInputs hard = with(WorkInput.ENERGY_HARDWOOD, 100, 200, 300);
        WorkInputs harder = with(WorkInput.ENERGY_HARDWOOD, 100, 210, 300);
        assertThat(SawDraws.of(List.of(hard, harder, hard)).ranges())
                .containsExactly(
                        new SawDraws.Range(WorkInput.ENERGY_HARDWOOD, List.of(0, 2)),
                        new SawDraws.Range(WorkInput.ENERGY_HARDWOOD, List.of(1)));
        assertThat(SawDraws.of(List.of(hard, FIXED)).ranges())
                .containsExactly(new SawDraws.Range(WorkInput.ENERGY_HARDWOOD, List.of(0)));
    }

    /** The mix of one saw's lumber may cost more than that of the other: both prices stand at the same place of their ranges. */
    @Test
    void aSharedInputOfTwoRangesHasTheSameRankInBoth() {
        List<WorkInputs> saws =
                List.of(with(WorkInput.LUMBER_PRICE, 0.8, 1, 1.4), with(WorkInput.LUMBER_PRICE, 1.6, 2, 2.8));
        assertThat(SawDraws.of(saws).ranges())
                .containsExactly(new SawDraws.Range(WorkInput.LUMBER_PRICE, List.of(0, 1)));
        SawDraws.Spread ratio = spread(saws, WorkInput.LUMBER_PRICE, prices -> prices.get(1) / prices.get(0), 1000);
        assertThat(ratio.value()).isEqualTo(2);
        assertThat(ratio.drawn()).as("twice as much in every draw").isEmpty();
    }

    @Test
    void aFigureIsTheSameAloneAndAmongOthers() {
        List<WorkInputs> saws = List.of(with(WorkInput.SETTING, 2, 3, 4), with(WorkInput.WAGE, 10, 15, 20));
        SawDraws.Spread alone = spread(saws, WorkInput.SETTING, SawDrawsTest::difference, 500);
        List<SawDraws.Spread> both = SawDraws.of(saws)
                .spreads(
                        (saw, inputs) -> inputs.get(WorkInput.SETTING),
                        List.of(values -> values.get(0), SawDrawsTest::difference),
                        5,
                        500);
        assertThat(both.get(1).movers()).isEqualTo(alone.movers());
        assertThat(both.get(1).drawn().orElseThrow().interval(0.95))
                .isEqualTo(alone.drawn().orElseThrow().interval(0.95));
    }
}
