package org.woodyield.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;

/**
 * The ways to come by the lumber of a job, like for like: what is sawn has to be dried, planed and, where nobody accepts it
 * ungraded, graded before it stands in for bought lumber.
 *
 * <p>A way needs its prices; where one is missing the way is left out by name. What a reader may have no need of (drying,
 * planing, a set-up) is not counted where nobody gave a price, and the way says so. Sawn lumber is counted as graded, by the
 * grader's visit and rate, and as ungraded lumber that serves only where no grade is asked for, at the loss of the difference in
 * price. Where none of the three is given, it is taken that the authority accepts it ungraded; where some are, each of the two
 * needs its own, and one that lacks any is left out by name.
 *
 * @param usable lumber of the job
 * @param ways those that have their prices, in the order of {@link SupplyWay.Kind}
 * @param leftOut ways that have not, each with what is missing
 */
public record SupplyWays(BoardFeet usable, List<SupplyWay> ways, List<LeftOut> leftOut) {

    /**
     * A way without its prices.
     *
     * @param kind which
     * @param finish how its lumber would be used, as in the name of the way, such as {@code ", graded"}; empty for the whole way
     * @param missing what nobody gave, in the order of {@link WorkInput}
     * @param unscaled whether it needs a scale of the logs and they have none
     */
    public record LeftOut(SupplyWay.Kind kind, String finish, Set<WorkInput> missing, boolean unscaled) {
        /** Keeps an immutable copy. */
        public LeftOut {
            EnumSet<WorkInput> copy = EnumSet.noneOf(WorkInput.class);
            copy.addAll(missing);
            missing = Collections.unmodifiableSet(copy);
        }
    }

    /**
     * Volumes at which two ways change places.
     *
     * @param one the way that is the cheaper below the first of these volumes, or at every volume where there is none
     * @param other another
     * @param volumes where they cost the same, rising; empty where they never change places
     */
    public record Crossing(SupplyWay one, SupplyWay other, List<BoardFeet> volumes) {
        /** Keeps an immutable copy. */
        public Crossing {
            volumes = List.copyOf(volumes);
        }
    }

    /** Keeps immutable copies. */
    public SupplyWays {
        ways = List.copyOf(ways);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * The ways of a job.
     *
     * @param inputs prices
     * @param currency the currency of the prices
     * @param cost what sawing it with the saw of the job costs
     * @param tally board feet sawn, by which a travelling sawyer is paid
     * @param scale International 1/4-inch scale of the logs that the lumber comes from, if they have one
     * @param ownWorkValued whether own hours count at the wage
     * @return the ways
     */
    public static SupplyWays of(
            WorkInputs inputs,
            String currency,
            JobCost cost,
            BoardFeet tally,
            Optional<BoardFeet> scale,
            boolean ownWorkValued) {
        return new Collector(inputs, currency, cost, ownWorkValued).collect(tally, scale);
    }

    /**
     * These ways and one more, another saw for instance.
     *
     * @param way in the same currency
     * @return a copy with the way at the end
     */
    public SupplyWays with(SupplyWay way) {
        List<SupplyWay> more = new ArrayList<>(ways);
        more.add(way);
        return new SupplyWays(usable, more, leftOut);
    }

    /**
     * The cheapest way at a volume.
     *
     * @param volume usable lumber, above zero
     * @return the way, the first of equals; empty where no way has its prices
     */
    public Optional<SupplyWay> cheapest(BoardFeet volume) {
        return ways.stream().min(Comparator.comparing(way -> way.cost(volume)));
    }

    /**
     * Each two ways beside each other.
     *
     * @return all pairs in the order of the ways, those too that never change places; of each pair the way first that is the
     *     cheaper of small volumes
     */
    public List<Crossing> crossings() {
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            for (int j = i + 1; j < ways.size(); j++) {
                SupplyWay one = ways.get(i);
                SupplyWay other = ways.get(j);
                List<BoardFeet> volumes = one.crossings(other);
                BoardFeet below = volumes.isEmpty()
                        ? usable
                        : BoardFeet.usable(volumes.get(0).value() / 2);
                boolean inOrder = one.cost(below).compareTo(other.cost(below)) <= 0;
                crossings.add(new Crossing(inOrder ? one : other, inOrder ? other : one, volumes));
            }
        }
        return List.copyOf(crossings);
    }

    /** What a sawn board foot needs before it is like a bought one, or what it is short of it. */
    private record Finish(String words, double fixed, double perBoardFoot, List<String> notCounted) {}

    private static final class Collector {
        private static final String GRADED = ", graded";
        private static final String UNGRADED = ", ungraded, where no grade is asked for";

        private final WorkInputs inputs;
        private final String currency;
        private final JobCost cost;
        private final boolean ownWorkValued;
        private final List<SupplyWay> ways = new ArrayList<>();
        private final List<LeftOut> leftOut = new ArrayList<>();

        Collector(WorkInputs inputs, String currency, JobCost cost, boolean ownWorkValued) {
            this.inputs = inputs;
            this.currency = currency;
            this.cost = cost;
            this.ownWorkValued = ownWorkValued;
        }

        SupplyWays collect(BoardFeet tally, Optional<BoardFeet> scale) {
            buy();
            ownSaw();
            hiredSawyer(tally);
            sellAndBuy(scale);
            return new SupplyWays(cost.usable(), ways, leftOut);
        }

        private Money money(double amount) {
            return new Money(amount, currency);
        }

        private double orNothing(WorkInput input) {
            return inputs.find(input).map(InputValue::value).orElse(0.0);
        }

        private List<String> absent(WorkInput... wanted) {
            return lacking(wanted).stream().map(WorkInput::label).toList();
        }

        private Set<WorkInput> lacking(WorkInput... wanted) {
            Set<WorkInput> lacking = EnumSet.noneOf(WorkInput.class);
            for (WorkInput input : wanted) {
                if (inputs.find(input).isEmpty()) {
                    lacking.add(input);
                }
            }
            return lacking;
        }

        private boolean lacks(SupplyWay.Kind kind, Set<WorkInput> missing) {
            return !complete(kind, "", missing);
        }

        private void add(
                SupplyWay.Kind kind,
                String name,
                double fixed,
                double perBoardFoot,
                double least,
                double rate,
                List<String> notCounted) {
            ways.add(new SupplyWay(
                    kind, name, money(fixed), money(perBoardFoot), money(least), money(rate), notCounted));
        }

        private void buy() {
            if (!lacks(SupplyWay.Kind.BUY, lacking(WorkInput.LUMBER_PRICE))) {
                add(SupplyWay.Kind.BUY, "buy the lumber", 0, inputs.get(WorkInput.LUMBER_PRICE), 0, 0, List.of());
            }
        }

        private void ownSaw() {
            Set<WorkInput> missing = lacking(WorkInput.PURCHASE);
            cost.leftOutOfRunning(ownWorkValued).values().forEach(missing::addAll);
            List<Finish> finishes = finishes(SupplyWay.Kind.OWN_SAW);
            if (lacks(SupplyWay.Kind.OWN_SAW, missing)) {
                return;
            }
            double outlay = Math.max(
                    0,
                    inputs.get(WorkInput.PURCHASE) + orNothing(WorkInput.OTHER_OUTLAY) - orNothing(WorkInput.RESALE));
            double running = cost.perBoardFoot(cost.running(ownWorkValued)).amount();
            for (Finish finish : finishes) {
                List<String> notCounted = new ArrayList<>(absent(WorkInput.OTHER_OUTLAY, WorkInput.RESALE));
                notCounted.addAll(finish.notCounted);
                add(
                        SupplyWay.Kind.OWN_SAW,
                        "buy the saw and saw" + finish.words,
                        outlay + finish.fixed,
                        running + finish.perBoardFoot,
                        0,
                        0,
                        notCounted);
            }
        }

        private void hiredSawyer(BoardFeet tally) {
            Set<WorkInput> missing = lacking(WorkInput.HIRE_RATE, WorkInput.LOG_PRICE);
            // A range that begins at nothing helps in the draws: what they need is missing from the first.
            boolean helps = inputs.find(WorkInput.HIRE_HELP)
                    .filter(hours -> hours.value() > 0 || hours.hasSpread())
                    .isPresent();
            if (ownWorkValued && helps) {
                missing.addAll(lacking(WorkInput.WAGE));
            }
            List<Finish> finishes = finishes(SupplyWay.Kind.HIRED_SAWYER);
            if (lacks(SupplyWay.Kind.HIRED_SAWYER, missing)) {
                return;
            }
            double perUsable = tally.value() / cost.usable().value();
            double help = ownWorkValued && helps
                    ? inputs.get(WorkInput.HIRE_HELP)
                            * inputs.get(WorkInput.WAGE)
                            / cost.usable().value()
                    : 0;
            double damage = orNothing(WorkInput.HIRE_STRIKES)
                    * orNothing(WorkInput.HIRE_DAMAGE)
                    / cost.usable().value();
            for (Finish finish : finishes) {
                List<String> notCounted = new ArrayList<>(absent(
                        WorkInput.HIRE_SET_UP,
                        WorkInput.HIRE_LEAST,
                        WorkInput.HIRE_DAMAGE,
                        WorkInput.HIRE_STRIKES,
                        WorkInput.HIRE_HELP));
                notCounted.addAll(finish.notCounted);
                add(
                        SupplyWay.Kind.HIRED_SAWYER,
                        "have it sawn by a travelling sawyer" + finish.words,
                        orNothing(WorkInput.HIRE_SET_UP) + finish.fixed,
                        inputs.get(WorkInput.LOG_PRICE) + help + damage + finish.perBoardFoot,
                        orNothing(WorkInput.HIRE_LEAST),
                        inputs.get(WorkInput.HIRE_RATE) * perUsable,
                        notCounted);
            }
        }

        private void sellAndBuy(Optional<BoardFeet> scale) {
            Set<WorkInput> missing = lacking(WorkInput.LOG_SALE, WorkInput.LUMBER_PRICE);
            if (scale.isEmpty() || !missing.isEmpty()) {
                leftOut.add(new LeftOut(SupplyWay.Kind.SELL_AND_BUY, "", missing, scale.isEmpty()));
                return;
            }
            double scaled = scale.get().value() / cost.usable().value();
            add(
                    SupplyWay.Kind.SELL_AND_BUY,
                    "sell the logs and buy the lumber",
                    0,
                    inputs.get(WorkInput.LUMBER_PRICE) - inputs.get(WorkInput.LOG_SALE) * scaled,
                    0,
                    0,
                    List.of());
        }

        /** Those that have their prices; the others are left out by name. */
        private List<Finish> finishes(SupplyWay.Kind kind) {
            List<String> notCounted = absent(WorkInput.DRYING_PRICE, WorkInput.PLANING_PRICE, WorkInput.BY_PRODUCTS);
            double each = orNothing(WorkInput.DRYING_PRICE)
                    + orNothing(WorkInput.PLANING_PRICE)
                    - orNothing(WorkInput.BY_PRODUCTS);
            WorkInput[] grading = {WorkInput.GRADER_VISIT, WorkInput.GRADER_RATE, WorkInput.LESSER_PRICE};
            if (lacking(grading).size() == grading.length) {
                List<String> taken = new ArrayList<>(notCounted);
                taken.add("grading: it is taken that the authority accepts ungraded lumber");
                return List.of(new Finish("", 0, each, taken));
            }
            List<Finish> finishes = new ArrayList<>();
            if (complete(kind, GRADED, lacking(WorkInput.GRADER_VISIT, WorkInput.GRADER_RATE))) {
                finishes.add(new Finish(
                        GRADED,
                        inputs.get(WorkInput.GRADER_VISIT),
                        each + inputs.get(WorkInput.GRADER_RATE),
                        notCounted));
            }
            if (complete(kind, UNGRADED, lacking(WorkInput.LUMBER_PRICE, WorkInput.LESSER_PRICE))) {
                double loss = inputs.get(WorkInput.LUMBER_PRICE) - inputs.get(WorkInput.LESSER_PRICE);
                finishes.add(new Finish(UNGRADED, 0, each + Math.max(0, loss), notCounted));
            }
            return finishes;
        }

        private boolean complete(SupplyWay.Kind kind, String finish, Set<WorkInput> missing) {
            if (!missing.isEmpty()) {
                leftOut.add(new LeftOut(kind, finish, missing, false));
            }
            return missing.isEmpty();
        }
    }
}
