package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.source.Sources;

class SupplyChoiceTest {

    private static final BoardFeet USABLE = BoardFeet.usable(100);

    private static WorkInputs fixed() {
        WorkInputs fixed = MoneyTest.PRICED
                .with(WorkInput.LOG_PRICE, 0.1)
                .with(WorkInput.LUMBER_PRICE, 20)
                .with(WorkInput.DRYING_PRICE, 0)
                .with(WorkInput.PLANING_PRICE, 0)
                .with(WorkInput.HIRE_SET_UP, 0)
                .with(WorkInput.HIRE_LEAST, 0)
                .with(WorkInput.HIRE_STRIKES, 0)
                .with(WorkInput.HIRE_HELP, 0);
        for (WorkInput input : fixed.values().keySet()) {
            fixed = fixed.with(input, fixed.get(input));
        }
        return fixed;
    }

    private static WorkInputs ranged(WorkInputs inputs, WorkInput input, double least, double value, double greatest) {
        return inputs.with(input, InputValue.within(value, least, greatest, Sources.get("user")));
    }

    private static List<SupplyWays> model(WorkInputs some) {
        JobCost cost = JobCost.of(some, "USD", MoneyTest.WORK, USABLE);
        SupplyWays.Lumber lumber = SupplyWaysTest.lumber(1);
        return List.of(
                SupplyWays.of(some, "USD", cost, List.of(), lumber, false),
                SupplyWays.of(some, "USD", cost, List.of(), lumber, true));
    }

    private static SupplyChoice choice(WorkInputs inputs) {
        return choices(inputs, 2000).get(0);
    }

    private static List<SupplyChoice> choices(WorkInputs inputs, int trials) {
        return SupplyChoice.ofAll(SawDraws.of(List.of(inputs)), List.of("saw"), some -> model(some.get(0)), 1, trials);
    }

    private static int place(SupplyChoice choice, SupplyWay.Kind kind) {
        List<SupplyWay.Kind> kinds =
                choice.ways().ways().stream().map(SupplyWay::kind).toList();
        return kinds.indexOf(kind);
    }

    @Test
    void withoutARangeThereIsNeitherIntervalNorProbability() {
        SupplyChoice choice = choice(fixed());
        assertThat(choice.trials()).isEmpty();
        assertThat(choice.costs())
                .hasSizeGreaterThan(1)
                .allMatch(cost -> cost.drawn().isEmpty());
        assertThat(choice.cheapestShare(0)).isEmpty();
        assertThat(choice.crossings()).isNotEmpty().allMatch(Optional::isEmpty);
        assertThat(choice.cheapest()).isPresent();
    }

    /** Selling the logs is the cheaper by the same sum whatever lumber costs, though the intervals of the two overlap. */
    @Test
    void anErrorThatTwoWaysShareCancels() {
        WorkInputs inputs = ranged(
                fixed().with(WorkInput.LOG_SALE, 0.5).without(WorkInput.PURCHASE), WorkInput.LUMBER_PRICE, 10, 20, 30);
        SupplyChoice choice = choice(inputs);
        int buy = place(choice, SupplyWay.Kind.BUY);
        int sell = place(choice, SupplyWay.Kind.SELL_AND_BUY);
        assertThat(choice.ways().ways()).hasSize(2);
        assertThat(choice.costs().get(sell).drawn().orElseThrow().interval(0.95).greatest())
                .isGreaterThan(choice.costs()
                        .get(buy)
                        .drawn()
                        .orElseThrow()
                        .interval(0.95)
                        .least());
        assertThat(choice.leads().get(sell).value()).isCloseTo(40, within(1e-9));
        assertThat(choice.leads().get(sell).drawn()).as("40 in every draw").isEmpty();
        assertThat(choice.cheapest()).contains(sell);
    }

    @Test
    void sharesAddUpAndFollowTheRange() {
        // Buying and selling the logs first cost the same where the logs fetch nothing: the first of equals is the
        // cheapest.
        double running = model(fixed()).get(0).ways().stream()
                .filter(way -> way.kind() == SupplyWay.Kind.OWN_SAW)
                .mapToDouble(way -> way.cost(USABLE).amount() / USABLE.value())
                .findFirst()
                .orElseThrow();
        WorkInputs inputs =
                ranged(fixed().with(WorkInput.LOG_SALE, 0), WorkInput.LUMBER_PRICE, running - 5, running, running + 5);
        SupplyChoice choice = choice(inputs);
        double sum = 0;
        for (int i = 0; i < choice.ways().ways().size(); i++) {
            sum += choice.cheapestShare(i).orElseThrow();
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        assertThat(choice.cheapestShare(place(choice, SupplyWay.Kind.BUY)).orElseThrow())
                .isCloseTo(0.5, within(0.05));
        assertThat(choice.cheapestShare(place(choice, SupplyWay.Kind.SELL_AND_BUY)))
                .contains(0.0);
        assertThat(choice.trials()).contains(2000);
    }

    /** The volume from which the saw is cheaper falls with the price of lumber, so the ends are those of the price. */
    @Test
    void theIntervalOfACrossingIsThatOfThePriceTurnedRound() {
        WorkInputs inputs = ranged(fixed(), WorkInput.LUMBER_PRICE, 18, 20, 23);
        SupplyChoice choice = choice(inputs);
        JobCost cost = JobCost.of(inputs, "USD", MoneyTest.WORK, USABLE);
        double running = cost.perBoardFoot(cost.running(false)).amount();
        double perFoot = USABLE.value();
        Outlook buying = choice.costs().get(place(choice, SupplyWay.Kind.BUY));
        double low = buying.drawn().orElseThrow().interval(0.95).least() / perFoot;
        double high = buying.drawn().orElseThrow().interval(0.95).greatest() / perFoot;
        SupplyChoice.Volumes volumes = choice.crossings().get(0).orElseThrow();
        assertThat(volumes.least()).isCloseTo(BreakEven.volume(1600, running, high), within(0.5));
        assertThat(volumes.greatest().orElseThrow()).isCloseTo(BreakEven.volume(1600, running, low), within(0.5));
        WorkInputs sometimes = ranged(fixed(), WorkInput.LUMBER_PRICE, 0, 1.1 * running, 2 * running);
        assertThat(choice(sometimes).crossings().get(0).orElseThrow().greatest())
                .as("a price that often lies below the running cost")
                .isEmpty();
    }

    /** What the logs fetch is nothing at the least: at that value selling them is as good as buying, in every draw it is better. */
    @Test
    void theLeaderOfTheDrawsNeedNotBeTheCheapestAtTheValues() {
        SupplyChoice choice = choice(ranged(
                fixed().with(WorkInput.LUMBER_PRICE, 1).without(WorkInput.PURCHASE), WorkInput.LOG_SALE, 0, 0, 0.4));
        assertThat(choice.cheapest()).contains(place(choice, SupplyWay.Kind.BUY));
        assertThat(choice.leader()).contains(place(choice, SupplyWay.Kind.SELL_AND_BUY));
        assertThat(choice(fixed()).leader()).isEmpty();
    }

    @Test
    void theSameSeedGivesTheSameShares() {
        WorkInputs inputs = ranged(fixed(), WorkInput.LUMBER_PRICE, 10, 20, 30);
        SupplyChoice one = choice(inputs);
        SupplyChoice other = choice(inputs);
        int buy = place(one, SupplyWay.Kind.BUY);
        assertThat(one.cheapestShare(buy)).isEqualTo(other.cheapestShare(buy));
        assertThat(one.costs().get(buy).drawn().orElseThrow().interval(0.95))
                .isEqualTo(other.costs().get(buy).drawn().orElseThrow().interval(0.95));
    }

    /** Hours that may be none may also be some, and these want a wage. */
    @Test
    void helpThatMayBeNoneWantsAWage() {
        WorkInputs inputs =
                ranged(fixed().with(WorkInput.HIRE_RATE, 0.4).without(WorkInput.WAGE), WorkInput.HIRE_HELP, 0, 0, 8);
        List<SupplyChoice> both = choices(inputs, 100);
        assertThat(both.get(0).ways().ways()).extracting(SupplyWay::kind).contains(SupplyWay.Kind.HIRED_SAWYER);
        assertThat(both.get(1).ways().ways()).extracting(SupplyWay::kind).doesNotContain(SupplyWay.Kind.HIRED_SAWYER);
    }

    private static SupplyChoice choice(WorkInputs own, WorkInputs its) {
        return SupplyChoice.ofAll(
                        SawDraws.of(List.of(own, its)),
                        List.of("one", "two"),
                        some -> List.of(SupplyWays.of(
                                some.get(0),
                                "USD",
                                JobCost.of(some.get(0), "USD", MoneyTest.WORK, USABLE),
                                List.of(new OtherSaw(
                                        "two",
                                        some.get(1),
                                        JobCost.of(some.get(1), "USD", MoneyTest.WORK, USABLE),
                                        USABLE,
                                        SupplyWaysTest.things(USABLE.value(), 1),
                                        0,
                                        0)),
                                SupplyWaysTest.lumber(1),
                                true)),
                        1,
                        500)
                .get(0);
    }

    /** Two saws that differ in nothing but their name and a sum paid beside: what they share cancels in every draw. */
    @Test
    void anotherSawIsPricedFromTheSameDraws() {
        WorkInputs own = ranged(ranged(fixed(), WorkInput.WAGE, 5, 15, 25), WorkInput.FUEL_PRICE, 0.5, 1.2, 3);
        WorkInputs its = own.with(WorkInput.OTHER_OUTLAY, own.get(WorkInput.OTHER_OUTLAY) + 70);
        SupplyChoice choice = choice(own, its);
        Outlook one = choice.costs().get(place(choice, SupplyWay.Kind.OWN_SAW));
        Outlook two = choice.costs().get(place(choice, SupplyWay.Kind.OTHER_SAW));
        assertThat(two.value() - one.value()).isCloseTo(70, within(1e-9));
        MonteCarlo.Interval ofOne = one.drawn().orElseThrow().interval(0.95);
        MonteCarlo.Interval ofTwo = two.drawn().orElseThrow().interval(0.95);
        assertThat(ofTwo.least() - ofOne.least()).isCloseTo(70, within(1e-9));
        assertThat(ofTwo.greatest() - ofOne.greatest()).isCloseTo(70, within(1e-9));
        assertThat(one.movers()).extracting(Outlook.Mover::saw).containsOnly("");
    }

    /** A range that only one of two saws has is named with the saw. */
    @Test
    void aMoverOfOneSawNamesIt() {
        WorkInputs own = fixed();
        WorkInputs its = ranged(own, WorkInput.OTHER_OUTLAY, 100, 400, 900);
        SupplyChoice choice = choice(own, its);
        assertThat(choice.costs().get(place(choice, SupplyWay.Kind.OTHER_SAW)).movers())
                .singleElement()
                .satisfies(mover -> {
                    assertThat(mover.saw()).isEqualTo("two");
                    assertThat(mover.input()).isEqualTo(WorkInput.OTHER_OUTLAY);
                });
        assertThat(choice.costs().get(place(choice, SupplyWay.Kind.OWN_SAW)).movers())
                .isEmpty();
    }
}
