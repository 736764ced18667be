package org.woodyield.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.Money;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CashFlow;
import org.woodyield.work.JobCost;
import org.woodyield.work.LogWork;
import org.woodyield.work.Outlook;
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

    /** What the job saves against buying, over the ranges; a side is empty where a price is missing. */
    JobPlan.Prospects prospects() {
        BreakEven asGiven = breakEven(inputs);
        List<ToDoubleFunction<BreakEven>> savings = new ArrayList<>();
        boolean free = asGiven.workFree().saving().isPresent();
        boolean valued = asGiven.workValued().saving().isPresent();
        if (free) {
            savings.add(drawn -> saving(drawn.workFree()));
        }
        if (valued) {
            savings.add(drawn -> saving(drawn.workValued()));
        }
        if (savings.isEmpty()) {
            return new JobPlan.Prospects(Optional.empty(), Optional.empty());
        }
        List<Outlook> outlooks = Outlook.ofAll(inputs, this::breakEven, savings, SEED, TRIALS);
        return new JobPlan.Prospects(
                free ? Optional.of(outlooks.get(0)) : Optional.empty(),
                valued ? Optional.of(outlooks.get(outlooks.size() - 1)) : Optional.empty());
    }

    private static double saving(BreakEven.Side side) {
        return side.saving().orElseThrow().amount();
    }

    private BreakEven breakEven(WorkInputs drawn) {
        WorkEstimate work = WorkEstimate.of(drawn, kerf, works);
        return BreakEven.of(drawn, currency, JobCost.of(drawn, currency, work, usable));
    }

    JobPlan.Ways ways(JobCost cost, BoardFeet tally, Optional<BoardFeet> scale) {
        return new JobPlan.Ways(
                SupplyWays.of(inputs, currency, cost, tally, scale, false),
                SupplyWays.of(inputs, currency, cost, tally, scale, true));
    }

    /** The saw's years, each with as many hours on site as are given and as much lumber an hour as in this job. */
    JobPlan.Years cashFlow(BreakEven money, WorkEstimate work) {
        return new JobPlan.Years(cashFlow(money, money.workFree(), work), cashFlow(money, money.workValued(), work));
    }

    private Optional<CashFlow> cashFlow(BreakEven money, BreakEven.Side side, WorkEstimate work) {
        if (side.saving().isEmpty()
                || inputs.find(WorkInput.RESALE).isEmpty()
                || inputs.find(WorkInput.LIFE).isEmpty()
                || inputs.find(WorkInput.HOURS_PER_YEAR).isEmpty()
                || inputs.find(WorkInput.INTEREST).isEmpty()) {
            return Optional.empty();
        }
        double feetPerYear = usable.value() / work.time().hours() * inputs.get(WorkInput.HOURS_PER_YEAR);
        Money saving = money.boughtPerBoardFoot()
                .orElseThrow()
                .minus(side.runningPerBoardFoot())
                .times(feetPerYear);
        Money resale = new Money(inputs.get(WorkInput.RESALE), currency);
        return Optional.of(CashFlow.of(
                money.outlay().orElseThrow().plus(resale),
                saving,
                resale,
                inputs.get(WorkInput.LIFE),
                inputs.get(WorkInput.INTEREST)));
    }
}
