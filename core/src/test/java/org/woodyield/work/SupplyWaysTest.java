package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;
import org.woodyield.measure.OutOfDomainException;

class SupplyWaysTest {

    private static final WorkInputs PRICED = MoneyTest.PRICED.with(WorkInput.LOG_PRICE, 0.1);
    private static final WorkEstimate WORK = MoneyTest.WORK;

    private static SupplyWays ways(WorkInputs inputs, boolean ownWorkValued) {
        JobCost cost = JobCost.of(inputs, "USD", WORK, BoardFeet.usable(100));
        return SupplyWays.of(
                inputs, "USD", cost, BoardFeet.tally(125), Optional.of(BoardFeet.scale(80)), ownWorkValued);
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
                SupplyWay.Kind.OTHER_SAW, "a way", usd(fixed), usd(perFoot), usd(least), usd(rate), List.of());
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
        assertThat(way(ways, SupplyWay.Kind.OWN_SAW).notCounted()).contains(WorkInput.DRYING_PRICE.label());
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
                        SupplyWay.Kind.OWN_SAW, ", graded", Set.of(WorkInput.GRADER_RATE), false));
        assertThat(ways(graded.with(WorkInput.GRADER_RATE, 0), false).ways())
                .extracting(SupplyWay::name)
                .contains("buy the saw and saw, graded");
    }

    @Test
    void aUseWithoutItsPricesIsLeftOutByName() {
        SupplyWays noVisit = ways(PRICED.with(WorkInput.GRADER_RATE, 0.05).with(WorkInput.LESSER_PRICE, 0.9), false);
        assertThat(noVisit.leftOut())
                .filteredOn(out -> out.finish().equals(", graded"))
                .allSatisfy(out -> assertThat(out.missing()).containsExactly(WorkInput.GRADER_VISIT))
                .extracting(SupplyWays.LeftOut::kind)
                .containsExactly(SupplyWay.Kind.OWN_SAW, SupplyWay.Kind.HIRED_SAWYER);
        SupplyWays noLesser = ways(PRICED.with(WorkInput.GRADER_RATE, 0.05).with(WorkInput.GRADER_VISIT, 300), false);
        assertThat(noLesser.leftOut())
                .filteredOn(out -> out.finish().startsWith(", ungraded"))
                .hasSize(2)
                .allSatisfy(out -> assertThat(out.missing()).containsExactly(WorkInput.LESSER_PRICE));
    }

    @Test
    void sellingTheLogsIsCountedByTheirScale() {
        SupplyWay sell = way(ways(PRICED.with(WorkInput.LOG_SALE, 0.5), false), SupplyWay.Kind.SELL_AND_BUY);
        assertThat(sell.cost(BoardFeet.usable(100)).amount()).isCloseTo(150 - 40, within(1e-9));
    }

    @Test
    void theCheapestIsFoundAndAnotherSawCanBeAdded() {
        SupplyWays ways = ways(PRICED, false).with(line(10, 0.1, 0, 0));
        assertThat(ways.cheapest(BoardFeet.usable(100)).orElseThrow().kind()).isEqualTo(SupplyWay.Kind.OTHER_SAW);
        assertThat(ways.cheapest(BoardFeet.usable(1)).orElseThrow().kind()).isEqualTo(SupplyWay.Kind.BUY);
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
