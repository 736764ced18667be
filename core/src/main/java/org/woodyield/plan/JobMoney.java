package org.woodyield.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.Money;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CashFlow;
import org.woodyield.work.InputValue;
import org.woodyield.work.JobCost;
import org.woodyield.work.LogWork;
import org.woodyield.work.OtherSaw;
import org.woodyield.work.Outlook;
import org.woodyield.work.SawDraws;
import org.woodyield.work.SupplyChoice;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/**
 * The money of a job whose cuts are settled: over the ranges of its inputs, beside other ways, and year by year.
 *
 * @param inputs work and prices, what the lumber costs bought included where it is known
 * @param currency of the prices
 * @param kerf of the saw
 * @param works the passes of each log
 * @param usable lumber of the job
 */
record JobMoney(WorkInputs inputs, String currency, Length kerf, List<LogWork> works, BoardFeet usable) {

    /** Enough for two digits of a probability, and few enough to wait for. */
    static final int TRIALS = 2000;

    private static final long SEED = 1;

    /** Work and money of one draw. */
    private record Drawn(WorkEstimate work, BreakEven money, JobPlan.Years years) {}

    /** The figures of the job over the ranges; those are empty for which a price is missing. */
    JobPlan.Prospects prospects() {
        Drawn given = drawn(inputs);
        BreakEven asGiven = given.money();
        List<ToDoubleFunction<Drawn>> figures = new ArrayList<>();
        int hours = add(figures, true, drawn -> drawn.work().time().hours());
        int days = add(figures, true, drawn -> drawn.work().days());
        int fuel = add(figures, true, drawn -> drawn.work().use().fuelLitres());
        int free = add(
                figures,
                asGiven.workFree().saving().isPresent(),
                drawn -> saving(drawn.money().workFree()));
        int valued = add(
                figures,
                asGiven.workValued().saving().isPresent(),
                drawn -> saving(drawn.money().workValued()));
        int runningFree = add(
                figures,
                asGiven.workFree().complete(),
                drawn -> running(drawn.money().workFree()));
        int runningValued = add(
                figures,
                asGiven.workValued().complete(),
                drawn -> running(drawn.money().workValued()));
        boolean yearsFree = given.years().workFree().isPresent();
        boolean yearsValued = given.years().workValued().isPresent();
        int worthFree = add(figures, yearsFree, drawn -> worth(drawn.years().workFree()));
        int worthValued = add(figures, yearsValued, drawn -> worth(drawn.years().workValued()));
        int paidFree = add(figures, yearsFree, drawn -> paid(drawn.years().workFree()));
        int paidValued = add(figures, yearsValued, drawn -> paid(drawn.years().workValued()));
        List<Outlook> outlooks = Outlook.ofAll(inputs, this::drawn, figures, SEED, TRIALS);
        return new JobPlan.Prospects(
                at(outlooks, free),
                at(outlooks, valued),
                at(outlooks, hours),
                at(outlooks, days),
                at(outlooks, fuel),
                at(outlooks, runningFree),
                at(outlooks, runningValued),
                at(outlooks, worthFree),
                at(outlooks, worthValued),
                at(outlooks, paidFree),
                at(outlooks, paidValued));
    }

    /** The place of a figure in the list, below zero where it is not wanted. */
    private static int add(List<ToDoubleFunction<Drawn>> figures, boolean wanted, ToDoubleFunction<Drawn> figure) {
        if (wanted) {
            figures.add(figure);
        }
        return wanted ? figures.size() - 1 : -1;
    }

    private static Optional<Outlook> at(List<Outlook> outlooks, int place) {
        return place < 0 ? Optional.empty() : Optional.of(outlooks.get(place));
    }

    private static double saving(BreakEven.Side side) {
        return side.saving().orElseThrow().amount();
    }

    private static double running(BreakEven.Side side) {
        return side.runningPerBoardFoot().amount();
    }

    private static double worth(Optional<CashFlow> years) {
        return years.orElseThrow().presentValue().amount();
    }

    /** Falls with the years, and is finite for all: 1 for nothing to pay, 0 for never. */
    private static double paid(Optional<CashFlow> years) {
        return years.orElseThrow().payback().map(time -> 1 / (1 + time)).orElse(0.0);
    }

    private Drawn drawn(WorkInputs some) {
        WorkEstimate work = WorkEstimate.of(some, kerf, works);
        BreakEven money = BreakEven.of(some, currency, JobCost.of(some, currency, work, usable));
        return new Drawn(work, money, cashFlow(some, money, work));
    }

    /** The ways to come by the lumber, all priced from the same draws. */
    JobPlan.Ways ways(SupplyWays.Lumber lumber, String saw, Optional<OtherSawWork> other) {
        List<SupplyChoice> choices =
                choices(lumber, saw, other.stream().toList(), sides -> List.of(sides.free, sides.valued));
        return new JobPlan.Ways(choices.get(0), choices.get(1), other.map(its -> its.told(currency)));
    }

    /** The ways with own work not counted and counted. */
    record Sides(SupplyWays free, SupplyWays valued) {}

    /** The ways at the values of the inputs. */
    Sides sides(SupplyWays.Lumber lumber, List<OtherSawWork> others) {
        return sides(lumber, others, sawInputs(others));
    }

    /**
     * Choices between ways to come by the lumber, all priced from the same draws.
     *
     * @param lumber of the job
     * @param saw the name of its saw
     * @param others other saws on the same logs
     * @param among takes the choices from the ways
     */
    List<SupplyChoice> choices(
            SupplyWays.Lumber lumber, String saw, List<OtherSawWork> others, Function<Sides, List<SupplyWays>> among) {
        List<String> saws = new ArrayList<>(List.of(saw));
        others.forEach(other -> saws.add(other.name()));
        return SupplyChoice.ofAll(
                SawDraws.of(sawInputs(others)), saws, some -> among.apply(sides(lumber, others, some)), SEED, TRIALS);
    }

    private List<WorkInputs> sawInputs(List<OtherSawWork> others) {
        List<WorkInputs> sawInputs = new ArrayList<>(List.of(inputs));
        others.forEach(other -> sawInputs.add(other.inputs()));
        return sawInputs;
    }

    private Sides sides(SupplyWays.Lumber lumber, List<OtherSawWork> others, List<WorkInputs> some) {
        Optional<Double> price = inputs.find(WorkInput.LUMBER_PRICE).map(InputValue::value);
        WorkInputs own = some.get(0);
        JobCost cost = JobCost.of(own, currency, WorkEstimate.of(own, kerf, works), usable);
        List<OtherSaw> drawn = new ArrayList<>();
        for (int i = 0; i < others.size(); i++) {
            drawn.add(others.get(i).drawn(some.get(i + 1), currency, usable, price));
        }
        return new Sides(
                SupplyWays.of(own, currency, cost, drawn, lumber, false),
                SupplyWays.of(own, currency, cost, drawn, lumber, true));
    }

    /** The saw's years, each with as many hours on site as are given and as much lumber an hour as in this job. */
    JobPlan.Years cashFlow(BreakEven money, WorkEstimate work) {
        return cashFlow(inputs, money, work);
    }

    private JobPlan.Years cashFlow(WorkInputs some, BreakEven money, WorkEstimate work) {
        return new JobPlan.Years(
                cashFlow(some, money, money.workFree(), work), cashFlow(some, money, money.workValued(), work));
    }

    private Optional<CashFlow> cashFlow(WorkInputs some, BreakEven money, BreakEven.Side side, WorkEstimate work) {
        if (side.saving().isEmpty()
                || some.find(WorkInput.RESALE).isEmpty()
                || some.find(WorkInput.LIFE).isEmpty()
                || some.find(WorkInput.HOURS_PER_YEAR).isEmpty()
                || some.find(WorkInput.INTEREST).isEmpty()) {
            return Optional.empty();
        }
        double feetPerYear = usable.value() / work.time().hours() * some.get(WorkInput.HOURS_PER_YEAR);
        Money saving = money.boughtPerBoardFoot()
                .orElseThrow()
                .minus(side.runningPerBoardFoot())
                .times(feetPerYear);
        Money resale = new Money(some.get(WorkInput.RESALE), currency);
        return Optional.of(CashFlow.of(
                money.outlay().orElseThrow().plus(resale),
                saving,
                resale,
                some.get(WorkInput.LIFE),
                some.get(WorkInput.INTEREST)));
    }
}
