package org.woodyield.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Money;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Sawing against buying the same lumber: the outlay, what each usable board foot costs to saw, what it costs to buy, and the
 * volume from which the outlay is earned back.
 *
 * <p>Costs that are missing could only raise the cost of sawing. So where sawing loses without them, the verdict stands; where
 * it wins without them, nothing can be said. Where no resale is given the outlay counts in full.
 *
 * @param outlay price of the saw and other outlay less resale, if the price of the saw is known; what else of it has no price is
 *     not in it ({@link #outlayBound})
 * @param boughtPerBoardFoot price of the same lumber bought, if known
 * @param usable lumber of this job
 * @param workFree own work not valued
 * @param workValued own work valued at the wage
 * @param missing inputs that nobody gave and that a money figure would need
 */
public record BreakEven(
        Optional<Money> outlay,
        Optional<Money> boughtPerBoardFoot,
        BoardFeet usable,
        Side workFree,
        Side workValued,
        Set<WorkInput> missing) {

    private static final Source DEFINITION = Sources.get("definition");
    private static final Domain OUTLAY = Domain.notNegative("outlay", "money");
    private static final Domain RUNNING = Domain.notNegative("running cost", "money/bf");
    private static final Domain BOUGHT = Domain.notNegative("price bought", "money/bf");

    /**
     * The comparison with own work valued or not.
     *
     * @param runningPerBoardFoot running cost by the usable board foot, of the kinds that are known
     * @param complete whether no kind of running cost is left out
     * @param volume board feet from which it pays, if outlay and both prices are known and there is such a volume
     * @param saving what this job saves against buying, negative where it loses, if outlay and both prices are known
     * @param verdict for this job
     */
    public record Side(
            Money runningPerBoardFoot,
            boolean complete,
            Optional<BoardFeet> volume,
            Optional<Money> saving,
            Verdict verdict) {}

    /** Keeps an immutable copy. */
    public BreakEven {
        missing = Set.copyOf(missing);
    }

    /**
     * Compares sawing a job with buying its lumber.
     *
     * @param inputs prices
     * @param currency the currency of the prices
     * @param cost what the sawing costs
     * @return the comparison
     */
    public static BreakEven of(WorkInputs inputs, String currency, JobCost cost) {
        EnumSet<WorkInput> missing = EnumSet.noneOf(WorkInput.class);
        cost.leftOut().values().forEach(missing::addAll);
        for (WorkInput input :
                new WorkInput[] {WorkInput.PURCHASE, WorkInput.OTHER_OUTLAY, WorkInput.RESALE, WorkInput.LUMBER_PRICE
                }) {
            if (inputs.find(input).isEmpty()) {
                missing.add(input);
            }
        }
        Optional<Money> outlay = inputs.find(WorkInput.PURCHASE)
                .map(price -> new Money(
                        Math.max(
                                0,
                                price.value()
                                        + amount(inputs, WorkInput.OTHER_OUTLAY)
                                        - amount(inputs, WorkInput.RESALE)),
                        currency));
        Optional<Money> bought = inputs.find(WorkInput.LUMBER_PRICE).map(price -> new Money(price.value(), currency));
        return new BreakEven(
                outlay,
                bought,
                cost.usable(),
                side(cost, outlay, inputs, bought, false),
                side(cost, outlay, inputs, bought, true),
                missing);
    }

    /**
     * Costs of the outlay for which nobody gave a price.
     *
     * @return inputs, in their order
     */
    public Set<WorkInput> outlayCostsMissing() {
        return absent(WorkInput.PURCHASE, WorkInput.OTHER_OUTLAY);
    }

    /**
     * Income that would make the outlay less, and for which nobody gave a price.
     *
     * @return the resale of the saw, or nothing
     */
    public Set<WorkInput> outlayIncomeMissing() {
        return absent(WorkInput.RESALE);
    }

    private Set<WorkInput> absent(WorkInput... inputs) {
        EnumSet<WorkInput> absent = EnumSet.noneOf(WorkInput.class);
        for (WorkInput input : inputs) {
            if (missing.contains(input)) {
                absent.add(input);
            }
        }
        return Collections.unmodifiableSet(absent);
    }

    /**
     * What is known of the outlay, where the price of the saw is.
     *
     * @return how it stands to its amount
     */
    public Bound outlayBound() {
        return Bound.of(outlayCostsMissing(), outlayIncomeMissing());
    }

    /**
     * The outlay where none of its costs lacks a price; only then can the saw be said to be cheaper than another.
     *
     * @return it; without resale it counts in full
     */
    public Optional<Money> wholeOutlay() {
        return outlay.filter(any -> outlayCostsMissing().isEmpty());
    }

    private static double amount(WorkInputs inputs, WorkInput input) {
        return inputs.find(input).map(InputValue::value).orElse(0.0);
    }

    private static Side side(
            JobCost cost, Optional<Money> outlay, WorkInputs inputs, Optional<Money> bought, boolean ownWorkValued) {
        Money running = cost.perBoardFoot(cost.running(ownWorkValued));
        Map<CostKind, Set<WorkInput>> leftOut = cost.leftOutOfRunning(ownWorkValued);
        List<String> unknown = new ArrayList<>();
        if (outlay.isEmpty()) {
            unknown.add(WorkInput.PURCHASE.label());
        } else if (inputs.find(WorkInput.OTHER_OUTLAY).isEmpty()) {
            unknown.add(WorkInput.OTHER_OUTLAY.label());
        }
        leftOut.forEach((kind, absent) -> unknown.add(kind.label() + " (no "
                + String.join(", no ", absent.stream().map(WorkInput::label).toList()) + ")"));
        boolean complete = leftOut.isEmpty();
        if (bought.isEmpty()) {
            return new Side(
                    running,
                    complete,
                    Optional.empty(),
                    Optional.empty(),
                    new Verdict(
                            Verdict.Outcome.CANNOT_SAY, List.of("The price of the same lumber bought is not given.")));
        }
        Money price = bought.get();
        double gap = price.amount() - running.amount();
        Money known = outlay.orElse(new Money(0, price.currency()));
        Money saving = price.minus(running).times(cost.usable().value()).minus(known);
        List<String> reasons = new ArrayList<>();
        Verdict.Outcome outcome;
        if (saving.amount() < 0) {
            outcome = Verdict.Outcome.DOES_NOT_PAY;
            reasons.add(
                    gap > 0
                            ? "This job is too small to earn the outlay back."
                            : "Sawing a board foot costs no less than buying one.");
            if (outlay.isPresent() && inputs.find(WorkInput.RESALE).isEmpty()) {
                reasons.add("No resale of the saw is given; the outlay counts in full.");
            }
            if (!unknown.isEmpty()) {
                reasons.add("It does not even without what is left out: " + String.join("; ", unknown) + ".");
            }
        } else if (unknown.isEmpty()) {
            outcome = Verdict.Outcome.PAYS;
            reasons.add("This job earns the outlay back against buying the same lumber.");
        } else {
            outcome = Verdict.Outcome.CANNOT_SAY;
            reasons.add("What is left out could turn it: " + String.join("; ", unknown) + ".");
        }
        boolean whole = unknown.isEmpty();
        Optional<BoardFeet> volume = whole && gap > 0
                ? Optional.of(BoardFeet.usable(volume(known.amount(), running.amount(), price.amount())))
                : Optional.empty();
        return new Side(
                running,
                complete,
                volume,
                whole ? Optional.of(saving) : Optional.empty(),
                new Verdict(outcome, reasons));
    }

    /**
     * The volume from which sawing is cheaper than buying.
     *
     * @param outlay before the first board, less resale
     * @param runningPerBoardFoot running cost by the usable board foot
     * @param boughtPerBoardFoot price of the same lumber bought, above the running cost
     * @return {@code outlay / (bought - running)} in board feet
     * @throws org.woodyield.measure.OutOfDomainException if an amount is negative, or buying costs no more than sawing
     */
    @Calculation("work.break-even")
    public static double volume(double outlay, double runningPerBoardFoot, double boughtPerBoardFoot) {
        require(outlay, runningPerBoardFoot, boughtPerBoardFoot);
        return outlay / (boughtPerBoardFoot - runningPerBoardFoot);
    }

    /**
     * How {@link #volume} comes about.
     *
     * @param outlay before the first board, less resale
     * @param runningPerBoardFoot running cost by the usable board foot
     * @param boughtPerBoardFoot price of the same lumber bought, above the running cost
     * @return the working, with the same result
     */
    public static Working volumeWorking(double outlay, double runningPerBoardFoot, double boughtPerBoardFoot) {
        require(outlay, runningPerBoardFoot, boughtPerBoardFoot);
        return Working.of("Break-even volume")
                .given("O", "outlay less resale", outlay, "money")
                .given("r", "running cost", runningPerBoardFoot, "money/bf")
                .given("p", "price of the same lumber bought", boughtPerBoardFoot, "money/bf")
                .step("V", "break-even volume", "O / (p - r)", "bf", DEFINITION)
                .build();
    }

    private static void require(double outlay, double running, double bought) {
        OUTLAY.require(outlay);
        RUNNING.require(running);
        BOUGHT.require(bought);
        if (!(bought > running)) {
            throw new OutOfDomainException(
                    "price bought",
                    Double.toString(bought),
                    "money/bf",
                    "above the running cost, " + running,
                    "where buying costs no more than sawing there is no break-even volume");
        }
    }
}
