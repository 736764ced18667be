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
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

class MoneyTest {

    static final WorkInputs PRICED = CuttingRateTest.CHAIN
            .with(WorkInput.PURCHASE, 1500)
            .with(WorkInput.OTHER_OUTLAY, 500)
            .with(WorkInput.RESALE, 400)
            .with(WorkInput.FUEL_PRICE, 1.2)
            .with(WorkInput.BAR_OIL_PRICE, 4)
            .with(WorkInput.MIX_OIL_PRICE, 10)
            .with(WorkInput.EDGE_PRICE, 40)
            .with(WorkInput.LOG_PRICE, 0)
            .with(WorkInput.WAGE, 15)
            .with(WorkInput.LUMBER_PRICE, 1.5);

    static final WorkEstimate WORK = WorkEstimate.of(
            PRICED,
            Length.millimetres(8),
            List.of(new LogWork("1", SawingWorkTest.OAK, List.of(new Cut(30, 36, 250), new Cut(40, 45, 250)), 1)));

    private static BreakEven compare(WorkInputs inputs, double usable) {
        JobCost cost = JobCost.of(inputs, "USD", WORK, BoardFeet.usable(usable));
        return BreakEven.of(inputs, "USD", cost);
    }

    @Test
    void everyKindIsQuantityTimesPrice() {
        JobCost cost = JobCost.of(PRICED, "USD", WORK, BoardFeet.usable(100));
        assertThat(cost.leftOut()).isEmpty();
        assertThat(cost.amount(CostKind.FUEL).orElseThrow().amount())
                .isEqualTo(WORK.use().fuelLitres() * 1.2);
        assertThat(cost.amount(CostKind.WORK).orElseThrow().amount())
                .isEqualTo(WORK.time().hours() * 15);
        double depreciation = WORK.time().hours() * 1100 / (5 * 200);
        assertThat(cost.amount(CostKind.DEPRECIATION).orElseThrow().amount()).isCloseTo(depreciation, within(1e-12));
        assertThat(cost.amount(CostKind.REPAIRS).orElseThrow().amount()).isCloseTo(0.6 * depreciation, within(1e-12));
        assertThat(cost.amount(CostKind.OTHER_OUTLAY).orElseThrow().amount())
                .isCloseTo(WORK.time().hours() * PRICED.get(WorkInput.OTHER_OUTLAY) / (5 * 200), within(1e-12));
        double sum = 0;
        for (CostKind kind : CostKind.values()) {
            sum += cost.amount(kind).orElseThrow().amount();
        }
        assertThat(cost.full(true).amount()).isCloseTo(sum, within(1e-12));
        assertThat(cost.full(true).amount() - cost.full(false).amount())
                .isCloseTo(WORK.time().hours() * 15, within(1e-9));
    }

    /** Whether a sum is spent on the saw or beside it makes no difference to owning, where the resale stays. */
    @Test
    void whatIsSpentBesideTheSawIsOwnedToo() {
        double other = PRICED.get(WorkInput.OTHER_OUTLAY);
        WorkInputs inputs = PRICED.with(WorkInput.REPAIRS, 0);
        JobCost beside = JobCost.of(inputs, "USD", WORK, BoardFeet.usable(100));
        JobCost inThePrice = JobCost.of(
                inputs.with(WorkInput.PURCHASE, inputs.get(WorkInput.PURCHASE) + other)
                        .with(WorkInput.OTHER_OUTLAY, 0),
                "USD",
                WORK,
                BoardFeet.usable(100));
        assertThat(other).isPositive();
        assertThat(beside.full(false).amount()).isCloseTo(inThePrice.full(false).amount(), within(1e-9));
        assertThat(beside.amount(CostKind.INTEREST)).isEqualTo(inThePrice.amount(CostKind.INTEREST));
        JobCost unknown = JobCost.of(inputs.without(WorkInput.OTHER_OUTLAY), "USD", WORK, BoardFeet.usable(100));
        assertThat(unknown.leftOut()).containsOnlyKeys(CostKind.OTHER_OUTLAY, CostKind.INTEREST);
        assertThat(unknown.leftOutOfRunning(true)).isEmpty();
    }

    @Test
    void aMissingPriceIsNamedAndIsNoZero() {
        JobCost cost = JobCost.of(PRICED.without(WorkInput.FUEL_PRICE), "USD", WORK, BoardFeet.usable(100));
        assertThat(cost.amount(CostKind.FUEL)).isEmpty();
        assertThat(cost.leftOut()).containsOnlyKeys(CostKind.FUEL);
        assertThat(cost.leftOut().get(CostKind.FUEL)).containsExactly(WorkInput.FUEL_PRICE);
    }

    @Test
    void aSmallJobDoesNotPayAndALargeOneDoes() {
        BreakEven small = compare(PRICED, 100);
        assertThat(small.workFree().verdict().outcome()).isEqualTo(Verdict.Outcome.DOES_NOT_PAY);
        BreakEven large = compare(PRICED, 5000);
        assertThat(large.workFree().verdict().outcome()).isEqualTo(Verdict.Outcome.PAYS);
        assertThat(large.outlay().orElseThrow().amount()).isEqualTo(1600);
    }

    @Test
    void aWinThatAMissingPriceCouldTurnCannotBeSaid() {
        BreakEven even = compare(PRICED.without(WorkInput.FUEL_PRICE), 5000);
        assertThat(even.workFree().verdict().outcome()).isEqualTo(Verdict.Outcome.CANNOT_SAY);
        assertThat(even.workFree().verdict().reasons().get(0)).contains("price of fuel");
        assertThat(even.workFree().volume()).isEmpty();
        assertThat(even.workFree().saving()).isEmpty();
        assertThat(even.missing()).containsExactly(WorkInput.FUEL_PRICE);
    }

    @Test
    void aLossStandsEvenWhereAPriceIsMissing() {
        BreakEven even = compare(PRICED.without(WorkInput.FUEL_PRICE), 100);
        assertThat(even.workFree().verdict().outcome()).isEqualTo(Verdict.Outcome.DOES_NOT_PAY);
        assertThat(even.workFree().verdict().reasons()).hasSize(2);
    }

    @Test
    void withoutThePriceOfLumberNothingCanBeSaid() {
        BreakEven even = compare(PRICED.without(WorkInput.LUMBER_PRICE), 5000);
        assertThat(even.workFree().verdict().outcome()).isEqualTo(Verdict.Outcome.CANNOT_SAY);
        assertThat(even.boughtPerBoardFoot()).isEmpty();
    }

    @Test
    void onlyTheSideThatValuesWorkNeedsTheWage() {
        BreakEven even = compare(PRICED.without(WorkInput.WAGE), 5000);
        assertThat(even.workFree().verdict().outcome()).isEqualTo(Verdict.Outcome.PAYS);
        assertThat(even.workValued().verdict().outcome()).isEqualTo(Verdict.Outcome.CANNOT_SAY);
    }

    @Property
    void theBreakEvenVolumeIsWhereTheTwoCostsCross(
            @ForAll @DoubleRange(min = 0, max = 50000) double outlay,
            @ForAll @DoubleRange(min = 0, max = 3) double running,
            @ForAll @DoubleRange(min = 3.01, max = 10) double bought) {
        double volume = BreakEven.volume(outlay, running, bought);
        assertThat(outlay + running * volume).isCloseTo(bought * volume, within(1e-9 * (1 + bought * volume)));
        assertThat(BreakEven.volumeWorking(outlay, running, bought).value()).isEqualTo(volume);
    }

    @Test
    void whereBuyingIsNoDearerThereIsNoBreakEven() {
        assertThatThrownBy(() -> BreakEven.volume(1000, 2, 2))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("no break-even volume");
    }

    @Property
    void theMachineRateWorkingsAgreeBitForBit(
            @ForAll @DoubleRange(min = 0, max = 100000) double price,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 1, max = 20) double years,
            @ForAll @DoubleRange(min = 10, max = 3000) double hours) {
        double resale = price * share;
        assertThat(MachineRate.averageAnnualInvestmentWorking(price, resale, years)
                        .value())
                .isEqualTo(MachineRate.averageAnnualInvestment(price, resale, years))
                .isBetween(resale * (1 - 1e-12), price * (1 + 1e-12));
        assertThat(MachineRate.depreciationPerHourWorking(price, resale, years, hours)
                        .value())
                .isEqualTo(MachineRate.depreciationPerHour(price, resale, years, hours));
        assertThat(MachineRate.interestPerHourWorking(price, resale, years, 0.07, hours)
                        .value())
                .isEqualTo(MachineRate.interestPerHour(price, resale, years, 0.07, hours));
    }

    @Property
    void costIsMonotoneInWageAndFuelPrice(
            @ForAll @DoubleRange(min = 0, max = 100) double wage, @ForAll @DoubleRange(min = 0, max = 5) double fuel) {
        BoardFeet usable = BoardFeet.usable(100);
        double cost = JobCost.of(
                        PRICED.with(WorkInput.WAGE, wage).with(WorkInput.FUEL_PRICE, fuel), "USD", WORK, usable)
                .full(true)
                .amount();
        double dearer = JobCost.of(
                        PRICED.with(WorkInput.WAGE, wage + 1).with(WorkInput.FUEL_PRICE, fuel + 1), "USD", WORK, usable)
                .full(true)
                .amount();
        assertThat(dearer).isGreaterThan(cost);
    }

    /** For a fixed plan, the same passes and pieces: dearer hours, dearer goods and a wider kerf never make it cheaper. */
    @Property
    void theCostOfAPieceIsMonotoneInWagePricesAndKerf(
            @ForAll @DoubleRange(min = 0, max = 100) double wage,
            @ForAll @DoubleRange(min = 0, max = 60) double price,
            @ForAll @DoubleRange(min = 0.1, max = 30) double more,
            @ForAll @IntRange(min = 1, max = 14) int kerf,
            @ForAll boolean valued) {
        double cost = piece(PRICED.with(WorkInput.WAGE, wage), kerf, valued);
        double dearerHours = piece(PRICED.with(WorkInput.WAGE, wage + more), kerf, valued);
        if (valued) {
            assertThat(dearerHours).isGreaterThan(cost);
        } else {
            assertThat(dearerHours).isEqualTo(cost);
        }
        for (WorkInput input : List.of(
                WorkInput.FUEL_PRICE,
                WorkInput.BAR_OIL_PRICE,
                WorkInput.MIX_OIL_PRICE,
                WorkInput.EDGE_PRICE,
                WorkInput.LOG_PRICE)) {
            assertThat(piece(PRICED.with(input, price + more), kerf, valued))
                    .as(input.label())
                    .isGreaterThan(piece(PRICED.with(input, price), kerf, valued));
        }
        assertThat(piece(PRICED.with(WorkInput.PURCHASE, 1500 + more), kerf, valued))
                .isGreaterThan(piece(PRICED, kerf, valued));
        assertThat(piece(PRICED.with(WorkInput.WAGE, wage), kerf + 1, valued)).isGreaterThan(cost);
    }

    private static double piece(WorkInputs inputs, int kerfMillimetres, boolean valued) {
        WorkEstimate work = WorkEstimate.of(
                inputs,
                Length.millimetres(kerfMillimetres),
                List.of(new LogWork("1", SawingWorkTest.OAK, List.of(new Cut(30, 36, 250), new Cut(40, 45, 250)), 1)));
        return JobCost.of(inputs, "USD", work, BoardFeet.usable(100)).pieceCost(5, valued);
    }

    @Property
    void piecesThatAreAllTheUsableLumberBearAllTheRunningCost(
            @ForAll @DoubleRange(min = 1, max = 5000) double usable,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll boolean valued) {
        JobCost cost = JobCost.of(PRICED, "USD", WORK, BoardFeet.usable(usable));
        double one = usable * (0.001 + 0.998 * share);
        double running = cost.running(valued).amount();
        assertThat(cost.pieceCost(one, valued) + cost.pieceCost(usable - one, valued))
                .isCloseTo(running, within(1e-9 * running));
        assertThat(cost.pieceCostWorking(one, valued).value()).isEqualTo(cost.pieceCost(one, valued));
    }

    @Test
    void aPieceHasBoardFeetAndEveryRunningCost() {
        JobCost cost = JobCost.of(PRICED.without(WorkInput.WAGE), "USD", WORK, BoardFeet.usable(100));
        assertThat(cost.pieceCost(5, false)).isPositive();
        assertThatThrownBy(() -> cost.pieceCost(5, true))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("worth of an own hour");
        assertThatThrownBy(() -> cost.pieceCost(0, false)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> cost.pieceCostWorking(Double.NaN, false)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void scaleIsNotUsableLumber() {
        assertThatThrownBy(() -> JobCost.of(PRICED, "USD", WORK, BoardFeet.scale(100)))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("usable");
    }
}
