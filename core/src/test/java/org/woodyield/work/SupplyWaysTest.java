package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;
import org.woodyield.measure.OutOfDomainException;

class SupplyWaysTest {

    /** What costs nothing is said to cost nothing. */
    private static final WorkInputs PRICED = MoneyTest.PRICED
            .with(WorkInput.LOG_PRICE, 0.1)
            .with(WorkInput.DRYING_PRICE, 0)
            .with(WorkInput.PLANING_PRICE, 0)
            .with(WorkInput.HIRE_SET_UP, 0)
            .with(WorkInput.HIRE_LEAST, 0)
            .with(WorkInput.HIRE_STRIKES, 0)
            .with(WorkInput.HIRE_HELP, 0);

    private static final WorkInputs HIRED = PRICED.with(WorkInput.HIRE_RATE, 0.4)
            .with(WorkInput.HIRE_SET_UP, 60)
            .with(WorkInput.HIRE_LEAST, 30)
            .with(WorkInput.HIRE_STRIKES, 2)
            .with(WorkInput.HIRE_DAMAGE, 25)
            .with(WorkInput.HIRE_HELP, 4);
    private static final WorkEstimate WORK = MoneyTest.WORK;

    private static SupplyWays ways(WorkInputs inputs, boolean ownWorkValued) {
        JobCost cost = JobCost.of(inputs, "USD", WORK, BoardFeet.usable(100));
        return SupplyWays.of(inputs, "USD", cost, List.of(), lumber(1), ownWorkValued);
    }

    /** 100 usable board feet, a share of them planed, at the mean price. */
    static SupplyWays.Lumber lumber(double planed) {
        return new SupplyWays.Lumber(BoardFeet.tally(125), Optional.of(BoardFeet.scale(80)), things(100, planed));
    }

    static List<SupplyWays.Thing> things(double usable, double planed) {
        return Stream.of(
                        new SupplyWays.Thing(planed * usable, true, 1),
                        new SupplyWays.Thing((1 - planed) * usable, false, 1))
                .filter(thing -> thing.counted() > 0)
                .toList();
    }

    private static SupplyWay way(SupplyWays ways, SupplyWay.Kind kind) {
        return ways.ways().stream()
                .filter(way -> way.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static Money usd(double amount) {
        return new Money(amount, "USD");
    }

    private static SupplyWay line(double fixed, double perFoot, double least, double rate) {
        return new SupplyWay(
                SupplyWay.Kind.OTHER_SAW,
                SupplyWay.Use.AS_IT_IS,
                "",
                "a way",
                usd(fixed),
                usd(perFoot),
                usd(least),
                usd(rate),
                Set.of(),
                Set.of(),
                List.of());
    }

    @Test
    void buyingCrossesTheSawAtTheBreakEvenVolume() {
        for (boolean valued : new boolean[] {false, true}) {
            SupplyWays ways = ways(PRICED.with(WorkInput.LUMBER_PRICE, 20), valued);
            JobCost cost = JobCost.of(PRICED, "USD", WORK, BoardFeet.usable(100));
            double running = cost.perBoardFoot(cost.running(valued)).amount();
            assertThat(way(ways, SupplyWay.Kind.BUY).crossings(way(ways, SupplyWay.Kind.OWN_SAW)))
                    .singleElement()
                    .satisfies(volume ->
                            assertThat(volume.value()).isCloseTo(BreakEven.volume(1600, running, 20), within(1e-6)));
        }
    }

    @Test
    void whatIsMissingLeavesAWayOutByName() {
        SupplyWays ways = ways(PRICED.without(WorkInput.LUMBER_PRICE), true);
        assertThat(ways.ways()).extracting(SupplyWay::kind).containsExactly(SupplyWay.Kind.OWN_SAW);
        assertThat(ways.leftOut())
                .extracting(SupplyWays.LeftOut::kind)
                .containsExactly(SupplyWay.Kind.BUY, SupplyWay.Kind.HIRED_SAWYER, SupplyWay.Kind.SELL_AND_BUY);
        assertThat(ways.leftOut().get(1).missing()).containsExactly(WorkInput.HIRE_RATE);
        assertThat(way(ways, SupplyWay.Kind.OWN_SAW).incomeMissing()).containsExactly(WorkInput.BY_PRODUCTS);
    }

    /** What a way costs beside its prices: where one is not given the way costs more than is said and is not ranked. */
    @Property
    void aCostWithoutAPriceIsNeverTakenForNothing(
            @ForAll("costs") WorkInput cost, @ForAll boolean ownWorkValued, @ForAll boolean dear) {
        WorkInputs all = HIRED.with(WorkInput.LUMBER_PRICE, dear ? 40 : 1.5);
        SupplyWays without = ways(all.without(cost), ownWorkValued);
        SupplyWays nothing = ways(all.with(cost, 0), ownWorkValued);
        assertThat(without.ways()).allSatisfy(way -> assertThat(nothing.ways()).contains(way));
        assertThat(without.bounds()).allSatisfy(bound -> {
            assertThat(bound.costsMissing()).containsExactly(cost);
            SupplyWay same = way(nothing, bound.kind());
            assertThat(bound.cost(BoardFeet.usable(100))).isEqualTo(same.cost(BoardFeet.usable(100)));
        });
        boolean help = cost == WorkInput.HIRE_HELP;
        assertThat(without.bounds())
                .hasSize(
                        help && !ownWorkValued
                                ? 0
                                : cost == WorkInput.PLANING_PRICE || cost == WorkInput.DRYING_PRICE ? 2 : 1);
        assertThat(without.cheapest(BoardFeet.usable(1e6)).orElseThrow().costsMissing())
                .isEmpty();
    }

    @Provide
    Arbitrary<WorkInput> costs() {
        return Arbitraries.of(
                WorkInput.OTHER_OUTLAY,
                WorkInput.DRYING_PRICE,
                WorkInput.PLANING_PRICE,
                WorkInput.HIRE_SET_UP,
                WorkInput.HIRE_LEAST,
                WorkInput.HIRE_DAMAGE,
                WorkInput.HIRE_STRIKES,
                WorkInput.HIRE_HELP);
    }

    @Test
    void noStrikesNeedNoPriceOfDamage() {
        WorkInputs none = HIRED.with(WorkInput.HIRE_STRIKES, 0).without(WorkInput.HIRE_DAMAGE);
        assertThat(ways(none, false).bounds()).isEmpty();
        assertThat(ways(none.without(WorkInput.HIRE_STRIKES), false).bounds())
                .singleElement()
                .satisfies(way ->
                        assertThat(way.costsMissing()).containsExactly(WorkInput.HIRE_DAMAGE, WorkInput.HIRE_STRIKES));
    }

    private static OtherSaw other(WorkInputs inputs, double serves, double bought) {
        return new OtherSaw(
                "mill",
                inputs,
                JobCost.of(inputs, "USD", WORK, BoardFeet.usable(100)),
                BoardFeet.usable(serves),
                things(serves, 1),
                bought,
                0);
    }

    private static SupplyWays beside(WorkInputs inputs, OtherSaw other, boolean ownWorkValued) {
        return beside(inputs, other, 1, ownWorkValued);
    }

    private static SupplyWays beside(WorkInputs inputs, OtherSaw other, double planed, boolean ownWorkValued) {
        JobCost cost = JobCost.of(inputs, "USD", WORK, BoardFeet.usable(100));
        return SupplyWays.of(inputs, "USD", cost, List.of(other), lumber(planed), ownWorkValued);
    }

    /** The same saw under another name, with the same lumber, is the same way. */
    @Test
    void theSameSawAgainCostsTheSame() {
        for (boolean valued : new boolean[] {false, true}) {
            WorkInputs graded = HIRED.with(WorkInput.GRADER_VISIT, 300).with(WorkInput.GRADER_RATE, 0.05);
            SupplyWays ways = beside(graded, other(graded, 100, 0), valued);
            SupplyWay own = way(ways, SupplyWay.Kind.OWN_SAW);
            SupplyWay again = way(ways, SupplyWay.Kind.OTHER_SAW);
            assertThat(again.fixed()).isEqualTo(own.fixed());
            assertThat(again.perBoardFoot()).isEqualTo(own.perBoardFoot());
            assertThat(again.name()).isEqualTo("buy another saw, mill, and saw, graded");
            assertThat(ways.crossings())
                    .filteredOn(pair -> pair.one().kind() == SupplyWay.Kind.OWN_SAW
                            && pair.other().kind() == SupplyWay.Kind.OTHER_SAW)
                    .singleElement()
                    .satisfies(pair -> assertThat(pair.volumes()).isEmpty());
        }
    }

    /** 80 of 100 bf are sawn and planed; the 20 that lack are bought at 3, and need no planing. */
    @Test
    void whatAnotherSawLacksIsBoughtAndNeedsNoPlaning() {
        WorkInputs planed = HIRED.with(WorkInput.PLANING_PRICE, 0.25);
        WorkInputs its = planed.with(WorkInput.PURCHASE, 900)
                .with(WorkInput.OTHER_OUTLAY, 50)
                .with(WorkInput.RESALE, 150)
                .with(WorkInput.LUMBER_PRICE, 3);
        OtherSaw other = other(its, 80, 20);
        SupplyWay way = way(beside(planed, other, true), SupplyWay.Kind.OTHER_SAW);
        double running = other.cost().running(true).amount() / 100;
        assertThat(way.fixed().amount()).isEqualTo(900 + 50 - 150);
        assertThat(way.perBoardFoot().amount()).isCloseTo(running + 0.8 * 0.25 + 0.2 * 3, within(1e-12));
        SupplyWays unpriced = beside(planed, other(its.without(WorkInput.LUMBER_PRICE), 80, 20), true);
        assertThat(unpriced.leftOut())
                .filteredOn(out -> out.kind() == SupplyWay.Kind.OTHER_SAW)
                .singleElement()
                .satisfies(out -> assertThat(out.missing()).containsExactly(WorkInput.LUMBER_PRICE));
        assertThat(way(
                                beside(planed, other(its.without(WorkInput.LUMBER_PRICE), 100, 0), true),
                                SupplyWay.Kind.OTHER_SAW)
                        .isWhole())
                .as("where nothing lacks no price of lumber is needed")
                .isTrue();
    }

    /** 30 bf more of the job's mean price, 20: they are finished too and taken off; a rough half is not planed. */
    @Test
    void whatAnotherSawMakesMoreIsTakenOffAndRoughLumberIsNotPlaned() {
        WorkInputs planed = HIRED.with(WorkInput.PLANING_PRICE, 0.25).with(WorkInput.LUMBER_PRICE, 20);
        OtherSaw other = new OtherSaw(
                "mill",
                planed,
                JobCost.of(planed, "USD", WORK, BoardFeet.usable(100)),
                BoardFeet.usable(130),
                things(130, 0.5),
                0,
                30);
        SupplyWays ways = beside(planed, other, 0.5, true);
        double running = other.cost().running(true).amount() / 100;
        assertThat(way(ways, SupplyWay.Kind.OTHER_SAW).perBoardFoot().amount())
                .isCloseTo(running + 1.3 * 0.5 * 0.25 - 0.3 * 20, within(1e-12));
        assertThat(way(ways, SupplyWay.Kind.OWN_SAW).perBoardFoot().amount())
                .isCloseTo(running + 0.5 * 0.25, within(1e-12));
        OtherSaw rough = new OtherSaw(
                "mill", planed, other.cost(), other.usable(), things(130, 0), other.bought(), other.more());
        assertThat(beside(planed.without(WorkInput.PLANING_PRICE), rough, 0, true)
                        .bounds())
                .as("where nothing is planed no price of planing is needed")
                .isEmpty();
    }

    /** A sum that was added up in another order is no cheaper way. */
    @Test
    void ofWaysThatCostTheSameButForRoundingTheFirstIsTheCheapest() {
        SupplyWay first = line(0.1 + 0.2, 0, 0, 0);
        SupplyWay second = line(0.3, 0, 0, 0);
        assertThat(second.cost(BoardFeet.usable(1))).isLessThan(first.cost(BoardFeet.usable(1)));
        SupplyWays ways = new SupplyWays(BoardFeet.usable(1), List.of(first, second), List.of(), List.of());
        assertThat(ways.cheapest(BoardFeet.usable(1)).orElseThrow()).isSameAs(first);
    }

    /** Half the lumber is dear and half costs less than lesser lumber: only the dear half loses, by its own price. */
    @Test
    void theLossOfUngradedLumberIsThatOfEachThing() {
        WorkInputs inputs = PRICED.with(WorkInput.LUMBER_PRICE, 1)
                .with(WorkInput.LESSER_PRICE, 0.8)
                .with(WorkInput.PLANING_PRICE, 0)
                .with(WorkInput.DRYING_PRICE, 0);
        JobCost cost = JobCost.of(inputs, "USD", WORK, BoardFeet.usable(100));
        SupplyWays.Lumber lumber = new SupplyWays.Lumber(
                BoardFeet.tally(125),
                Optional.empty(),
                List.of(new SupplyWays.Thing(50, false, 1.5), new SupplyWays.Thing(40, false, 0.5)));
        SupplyWay ungraded = way(SupplyWays.of(inputs, "USD", cost, List.of(), lumber, false), SupplyWay.Kind.OWN_SAW);
        assertThat(ungraded.use()).isEqualTo(SupplyWay.Use.UNGRADED);
        assertThat(ungraded.perBoardFoot().amount())
                .isCloseTo(cost.running(false).amount() / 100 + 50 * (1.5 - 0.8) / 100, within(1e-12));
    }

    /** What a saw costs to buy, and what has to be bought beside its lumber, never makes it cheaper. */
    @Property
    void anotherSawCostsMoreTheMoreItIsPaidForAndTheLessItMakes(
            @ForAll @DoubleRange(min = 400, max = 5000) double outlay,
            @ForAll @DoubleRange(min = 0, max = 5000) double more,
            @ForAll @DoubleRange(min = 0, max = 100) double lacks) {
        BoardFeet job = BoardFeet.usable(100);
        WorkInputs cheap = HIRED.with(WorkInput.PURCHASE, outlay);
        WorkInputs dear = HIRED.with(WorkInput.PURCHASE, outlay + more);
        Money least = way(beside(HIRED, other(cheap, 100, 0), false), SupplyWay.Kind.OTHER_SAW)
                .cost(job);
        Money paid = way(beside(HIRED, other(dear, 100, 0), false), SupplyWay.Kind.OTHER_SAW)
                .cost(job);
        Money lacking = way(beside(HIRED, other(cheap, 100 - lacks, lacks), false), SupplyWay.Kind.OTHER_SAW)
                .cost(job);
        assertThat(paid).isGreaterThanOrEqualTo(least);
        assertThat(lacking.amount()).isGreaterThanOrEqualTo(least.amount() - 1e-9);
    }

    @Test
    void gradedLumberIsNotSetBesideUngradedOfAnotherWay() {
        WorkInputs both = HIRED.with(WorkInput.GRADER_VISIT, 300)
                .with(WorkInput.GRADER_RATE, 0.05)
                .with(WorkInput.LESSER_PRICE, 0.9);
        assertThat(ways(both, false).crossings())
                .isNotEmpty()
                .allSatisfy(pair -> assertThat(pair.one().kind() == pair.other().kind()
                                || pair.one().use() == pair.other().use()
                                || pair.one().use() == SupplyWay.Use.AS_IT_IS
                                || pair.other().use() == SupplyWay.Use.AS_IT_IS)
                        .isTrue())
                .anySatisfy(pair -> {
                    assertThat(pair.one().kind()).isEqualTo(pair.other().kind());
                    assertThat(pair.one().use()).isNotEqualTo(pair.other().use());
                });
    }

    @Property
    void theStretchesOfTheCheapestHoldAtEveryVolume(
            @ForAll @DoubleRange(min = 0, max = 2000) double setUp,
            @ForAll @DoubleRange(min = 0, max = 20) double price,
            @ForAll @DoubleRange(min = 0, max = 5) double rate,
            @ForAll @DoubleRange(min = 0.1, max = 1e5) double volume) {
        SupplyWays ways = ways(
                HIRED.with(WorkInput.HIRE_SET_UP, setUp)
                        .with(WorkInput.LUMBER_PRICE, price)
                        .with(WorkInput.HIRE_RATE, rate),
                true);
        List<SupplyWays.Stretch> stretches = ways.cheapestByVolume();
        SupplyWay within = stretches.stream()
                .filter(stretch ->
                        stretch.upTo().map(end -> volume <= end.value()).orElse(true))
                .findFirst()
                .orElseThrow()
                .way();
        BoardFeet usable = BoardFeet.usable(volume);
        double least = ways.cheapest(usable).orElseThrow().cost(usable).amount();
        assertThat(within.cost(usable).amount()).isCloseTo(least, within(1e-6 * Math.max(1, Math.abs(least))));
        assertThat(stretches.get(stretches.size() - 1).upTo()).isEmpty();
    }

    @Test
    void aTravellingSawyerIsPaidByTheTallyAndNoLessThanTheLeast() {
        WorkInputs inputs = PRICED.with(WorkInput.HIRE_RATE, 0.4)
                .with(WorkInput.HIRE_SET_UP, 60)
                .with(WorkInput.HIRE_LEAST, 200)
                .with(WorkInput.HIRE_STRIKES, 2)
                .with(WorkInput.HIRE_DAMAGE, 25)
                .with(WorkInput.HIRE_HELP, 4);
        SupplyWay hired = way(ways(inputs, false), SupplyWay.Kind.HIRED_SAWYER);
        // 125 bf of tally for 100 usable: 0.4 x 125 = 50 is less than the least.
        assertThat(hired.cost(BoardFeet.usable(100)).amount()).isCloseTo(60 + 200 + 10 + 50, within(1e-9));
        assertThat(hired.cost(BoardFeet.usable(1000)).amount()).isCloseTo(60 + 500 + 100 + 500, within(1e-9));
        SupplyWay valued = way(ways(inputs, true), SupplyWay.Kind.HIRED_SAWYER);
        assertThat(valued.cost(BoardFeet.usable(100)).amount()).isCloseTo(320 + 60, within(1e-9));
    }

    @Test
    void aGraderOrALesserUseStandsInForTheGrade() {
        WorkInputs graded = PRICED.with(WorkInput.GRADER_VISIT, 300).with(WorkInput.GRADER_RATE, 0.05);
        assertThat(way(ways(graded, false), SupplyWay.Kind.OWN_SAW).fixed().amount())
                .isEqualTo(1600 + 300);
        SupplyWays both = ways(graded.with(WorkInput.LESSER_PRICE, 0.9), false);
        assertThat(both.ways().stream().filter(way -> way.kind() == SupplyWay.Kind.OWN_SAW))
                .hasSize(2)
                .last()
                .satisfies(way -> assertThat(way.perBoardFoot().amount())
                        .isCloseTo(
                                way(ways(PRICED, false), SupplyWay.Kind.OWN_SAW)
                                                .perBoardFoot()
                                                .amount()
                                        + 0.6,
                                within(1e-9)));
    }

    @Test
    void aGradersRateThatNobodyGaveIsNotZero() {
        WorkInputs graded = PRICED.with(WorkInput.GRADER_VISIT, 300).with(WorkInput.LESSER_PRICE, 0.9);
        assertThat(ways(graded, false).ways())
                .extracting(SupplyWay::name)
                .contains("buy the saw and saw, ungraded, where no grade is asked for")
                .doesNotContain("buy the saw and saw, graded", "buy the saw and saw");
        assertThat(ways(graded, false).leftOut())
                .contains(new SupplyWays.LeftOut(
                        SupplyWay.Kind.OWN_SAW, SupplyWay.Use.GRADED, "", Set.of(WorkInput.GRADER_RATE), false));
        assertThat(ways(graded.with(WorkInput.GRADER_RATE, 0), false).ways())
                .extracting(SupplyWay::name)
                .contains("buy the saw and saw, graded");
    }

    @Test
    void aUseWithoutItsPricesIsLeftOutByName() {
        SupplyWays noVisit = ways(PRICED.with(WorkInput.GRADER_RATE, 0.05).with(WorkInput.LESSER_PRICE, 0.9), false);
        assertThat(noVisit.leftOut())
                .filteredOn(out -> out.use() == SupplyWay.Use.GRADED)
                .allSatisfy(out -> assertThat(out.missing()).containsExactly(WorkInput.GRADER_VISIT))
                .extracting(SupplyWays.LeftOut::kind)
                .containsExactly(SupplyWay.Kind.OWN_SAW, SupplyWay.Kind.HIRED_SAWYER);
        SupplyWays noLesser = ways(PRICED.with(WorkInput.GRADER_RATE, 0.05).with(WorkInput.GRADER_VISIT, 300), false);
        assertThat(noLesser.leftOut())
                .filteredOn(out -> out.use() == SupplyWay.Use.UNGRADED)
                .hasSize(2)
                .allSatisfy(out -> assertThat(out.missing()).containsExactly(WorkInput.LESSER_PRICE));
    }

    @Test
    void sellingTheLogsIsCountedByTheirScale() {
        SupplyWay sell = way(ways(PRICED.with(WorkInput.LOG_SALE, 0.5), false), SupplyWay.Kind.SELL_AND_BUY);
        assertThat(sell.cost(BoardFeet.usable(100)).amount()).isCloseTo(150 - 40, within(1e-9));
    }

    @Test
    void theCheapestIsFoundAmongAllAnotherSawIncluded() {
        WorkInputs dear = PRICED.with(WorkInput.LUMBER_PRICE, 20);
        SupplyWays ways = beside(dear, other(dear.with(WorkInput.OTHER_OUTLAY, 5), 100, 0), false);
        assertThat(ways.cheapest(BoardFeet.usable(1000)).orElseThrow().kind()).isEqualTo(SupplyWay.Kind.OTHER_SAW);
        int count = ways.ways().size();
        assertThat(ways.crossings())
                .hasSize(count * (count - 1) / 2)
                .anySatisfy(crossing -> assertThat(crossing.other().kind()).isEqualTo(SupplyWay.Kind.OTHER_SAW))
                .allSatisfy(crossing -> {
                    double first = crossing.volumes().isEmpty()
                            ? 1e6
                            : crossing.volumes().get(0).value();
                    BoardFeet below = BoardFeet.usable(first * 0.99);
                    assertThat(crossing.one().cost(below).amount())
                            .isLessThanOrEqualTo(crossing.other().cost(below).amount());
                });
    }

    @Test
    void noVolumeIsRefused() {
        SupplyWay buy = way(ways(PRICED, false), SupplyWay.Kind.BUY);
        for (double volume : new double[] {0, -1, Double.NaN}) {
            assertThatThrownBy(() -> buy.cost(BoardFeet.usable(volume))).isInstanceOf(OutOfDomainException.class);
        }
    }

    @Property(tries = 500)
    void theWorkingHasTheSameBits(
            @ForAll @DoubleRange(min = 0, max = 1e4) double fixed,
            @ForAll @DoubleRange(min = -5, max = 5) double perFoot,
            @ForAll @DoubleRange(min = 0, max = 1e3) double least,
            @ForAll @DoubleRange(min = 0, max = 5) double rate,
            @ForAll @DoubleRange(min = 0.1, max = 1e5) double volume) {
        SupplyWay way = line(fixed, perFoot, least, rate);
        BoardFeet usable = BoardFeet.usable(volume);
        assertThat(way.costWorking(usable).value()).isEqualTo(way.cost(usable).amount());
    }

    /** Between two crossings, and outside them, one way is the cheaper at every volume. */
    @Property(tries = 1000)
    void crossingsAreWhereTheSignChangesAndNowhereElse(
            @ForAll @DoubleRange(min = 0, max = 1000) double fixedA,
            @ForAll @DoubleRange(min = -2, max = 3) double perFootA,
            @ForAll @DoubleRange(min = 0, max = 500) double leastA,
            @ForAll @DoubleRange(min = 0, max = 3) double rateA,
            @ForAll @DoubleRange(min = 0, max = 1000) double fixedB,
            @ForAll @DoubleRange(min = -2, max = 3) double perFootB,
            @ForAll @DoubleRange(min = 0, max = 500) double leastB,
            @ForAll @DoubleRange(min = 0, max = 3) double rateB) {
        SupplyWay a = line(fixedA, perFootA, leastA, rateA);
        SupplyWay b = line(fixedB, perFootB, leastB, rateB);
        List<BoardFeet> crossings = a.crossings(b);
        assertThat(crossings).hasSizeLessThanOrEqualTo(3).isEqualTo(b.crossings(a));
        double before = 0;
        for (int i = 0; i <= 4000; i++) {
            double volume = StrictMath.exp(-3 + 18.0 * i / 4000);
            BoardFeet usable = BoardFeet.usable(volume);
            double difference = a.cost(usable).amount() - b.cost(usable).amount();
            if (Math.abs(difference) < 1e-6) {
                return;
            }
            double from = before;
            long between = crossings.stream()
                    .filter(at -> at.value() > from && at.value() <= volume)
                    .count();
            if (i > 0) {
                boolean turned = (a.cost(BoardFeet.usable(before)).amount()
                                        - b.cost(BoardFeet.usable(before)).amount())
                                * difference
                        < 0;
                assertThat(between % 2 == 1).isEqualTo(turned);
            }
            before = volume;
        }
    }
}
