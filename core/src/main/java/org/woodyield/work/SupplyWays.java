package org.woodyield.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;

/**
 * The ways to come by the lumber of a job, like for like: what is sawn has to be dried, planed and, where nobody accepts it
 * ungraded, graded before it stands in for bought lumber.
 *
 * <p>A way needs its prices; where one is missing the way is left out by name. Where only a cost beside them is missing that a
 * reader may have no need of (drying, planing, a set-up), a lower bound of what it costs is known: it is told, but the way is not
 * ranked among the others, since nobody said that it costs nothing. Income without a price (resale, slabs) is not counted, and the
 * way costs no more than is said. Sawn lumber is counted as graded, by the
 * grader's visit and rate, and as ungraded lumber that serves only where no grade is asked for, at the loss of the difference in
 * price, thing by thing: what costs no more bought than lesser lumber loses nothing. Lumber beyond the need is finished and loses
 * at the share at which it counts. Where none of the three is given, it is taken that the authority accepts it ungraded; where some are, each of the two
 * needs its own, and one that lacks any is left out by name.
 *
 * @param usable lumber of the job
 * @param ways those that have all their prices, in the order of {@link SupplyWay.Kind}
 * @param bounds those that lack a cost, in that order: each costs more than it says
 * @param leftOut ways that have not, each with what is missing
 */
public record SupplyWays(BoardFeet usable, List<SupplyWay> ways, List<SupplyWay> bounds, List<LeftOut> leftOut) {

    /**
     * A way without its prices.
     *
     * @param kind which
     * @param use how its lumber would be used; as it is for the whole way
     * @param otherSaw the name of the saw, for {@link SupplyWay.Kind#OTHER_SAW}; empty for all other ways
     * @param missing what nobody gave, in the order of {@link WorkInput}
     * @param unscaled whether it needs a scale of the logs and they have none
     */
    public record LeftOut(
            SupplyWay.Kind kind, SupplyWay.Use use, String otherSaw, Set<WorkInput> missing, boolean unscaled) {
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
        bounds = List.copyOf(bounds);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * What the ways need to know of the lumber of a job beside how much of it is usable.
     *
     * @param tally board feet sawn, by which a travelling sawyer is paid
     * @param scale International 1/4-inch scale of the logs that the lumber comes from, if they have one
     * @param things what is usable of it, thing by thing
     */
    public record Lumber(BoardFeet tally, Optional<BoardFeet> scale, List<Thing> things) {
        /** Keeps an immutable copy. */
        public Lumber {
            things = List.copyOf(things);
        }
    }

    /**
     * Usable lumber of one thing wanted. What is beyond the need counts at a share, in what it would cost bought as in what is
     * spent to finish it.
     *
     * @param counted board feet, those beyond the need at their share
     * @param planed whether it is planed; what stays rough costs no planing
     * @param price of a board foot of it bought, as a multiple of the mean price of a usable board foot of the job
     */
    public record Thing(double counted, boolean planed, double price) {}

    /**
     * The ways of a job, other saws among them. For the same lumber, what another saw makes less of a thing wanted is bought,
     * and what it makes more is taken off at its worth bought, as lumber beyond the need counts for the saw of the job.
     *
     * @param inputs prices
     * @param currency the currency of the prices
     * @param cost what sawing it with the saw of the job costs
     * @param others other saws on the same logs, each with a name of its own
     * @param lumber what is sawn
     * @param ownWorkValued whether own hours count at the wage
     * @return the ways
     */
    public static SupplyWays of(
            WorkInputs inputs,
            String currency,
            JobCost cost,
            List<OtherSaw> others,
            Lumber lumber,
            boolean ownWorkValued) {
        return new Collector(inputs, currency, cost, lumber, ownWorkValued).collect(others);
    }

    /**
     * The ways to saw it with one saw or another, for one use of the lumber.
     *
     * @param use how the lumber is used
     * @param volume usable lumber that is asked about, above zero
     * @return those of this saw and of the others, those too that lack a cost; none that were left out
     */
    public SupplyWays ofSaws(SupplyWay.Use use, BoardFeet volume) {
        return new SupplyWays(
                volume,
                ways.stream()
                        .filter(way -> way.kind().isSaw() && way.use() == use)
                        .toList(),
                bounds.stream()
                        .filter(way -> way.kind().isSaw() && way.use() == use)
                        .toList(),
                List.of());
    }

    /**
     * The cheapest way at a volume.
     *
     * @param volume usable lumber, above zero
     * @return the way, the first of those that cost the same but for rounding; empty where no way has its prices
     */
    public Optional<SupplyWay> cheapest(BoardFeet volume) {
        return ways.isEmpty() ? Optional.empty() : Optional.of(ways.get(cheapestIndex(volume)));
    }

    /** The place of the cheapest of one way or more, the first of those that cost the same but for rounding. */
    int cheapestIndex(BoardFeet volume) {
        int cheapest = 0;
        for (int i = 1; i < ways.size(); i++) {
            double gap = Outlook.difference(
                    ways.get(cheapest).cost(volume).amount(),
                    ways.get(i).cost(volume).amount());
            cheapest = gap > 0 ? i : cheapest;
        }
        return cheapest;
    }

    /**
     * Each two ways beside each other, for one use: graded lumber is not set beside ungraded of another way.
     *
     * @return all such pairs in the order of the ways, those too that never change places; of each pair the way first that is the
     *     cheaper of small volumes
     */
    public List<Crossing> crossings() {
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            for (int j = i + 1; j < ways.size(); j++) {
                SupplyWay one = ways.get(i);
                SupplyWay other = ways.get(j);
                if (!one.isComparedWith(other)) {
                    continue;
                }
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

    /**
     * A stretch of volumes in which one way is the cheapest.
     *
     * @param way which
     * @param upTo usable board feet at its end; empty for the last, which has none
     */
    public record Stretch(SupplyWay way, Optional<BoardFeet> upTo) {}

    /**
     * The cheapest way by volume, from nothing on.
     *
     * @return one stretch after the other, each of another way than the one before; empty where no way has its prices
     */
    public List<Stretch> cheapestByVolume() {
        List<Double> ends = new ArrayList<>();
        for (SupplyWay one : ways) {
            for (SupplyWay other : ways) {
                one.crossings(other).forEach(volume -> ends.add(volume.value()));
            }
        }
        List<Double> sorted = ends.stream().distinct().sorted().toList();
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i <= sorted.size() && !ways.isEmpty(); i++) {
            double from = i == 0 ? 0 : sorted.get(i - 1);
            boolean last = i == sorted.size();
            double within = last ? 2 * from + 1 : (from + sorted.get(i)) / 2;
            SupplyWay way = cheapest(BoardFeet.usable(within)).orElseThrow();
            Optional<BoardFeet> upTo = last ? Optional.empty() : Optional.of(BoardFeet.usable(sorted.get(i)));
            int before = stretches.size() - 1;
            if (before >= 0 && stretches.get(before).way().equals(way)) {
                stretches.set(before, new Stretch(way, upTo));
            } else {
                stretches.add(new Stretch(way, upTo));
            }
        }
        return List.copyOf(stretches);
    }

    /** What a sawn board foot needs before it is like a bought one, or what it is short of it. */
    private record Finish(SupplyWay.Use use, double fixed, double perBoardFoot, Lacks lacks) {}

    /** Prices that nobody gave, and what was taken instead. */
    private record Lacks(Set<WorkInput> costs, Set<WorkInput> income, List<String> taken) {
        Lacks and(Set<WorkInput> moreCosts, Set<WorkInput> moreIncome) {
            return new Lacks(union(costs, moreCosts), union(income, moreIncome), taken);
        }

        private static Set<WorkInput> union(Set<WorkInput> some, Set<WorkInput> others) {
            EnumSet<WorkInput> all = EnumSet.noneOf(WorkInput.class);
            all.addAll(some);
            all.addAll(others);
            return all;
        }
    }

    private static final class Collector {
        /** Where no other saw is meant. */
        private static final String NONE = "";

        private static final Lacks NOTHING = new Lacks(Set.of(), Set.of(), List.of());

        private final WorkInputs inputs;
        private final String currency;
        private final JobCost cost;
        private final Lumber lumber;
        private final boolean ownWorkValued;
        private final List<SupplyWay> ways = new ArrayList<>();
        private final List<LeftOut> leftOut = new ArrayList<>();

        Collector(WorkInputs inputs, String currency, JobCost cost, Lumber lumber, boolean ownWorkValued) {
            this.inputs = inputs;
            this.currency = currency;
            this.cost = cost;
            this.lumber = lumber;
            this.ownWorkValued = ownWorkValued;
        }

        SupplyWays collect(List<OtherSaw> others) {
            buy();
            ownSaw();
            others.forEach(this::otherSaw);
            hiredSawyer();
            sellAndBuy();
            return new SupplyWays(
                    cost.usable(),
                    ways.stream().filter(SupplyWay::isWhole).toList(),
                    ways.stream().filter(way -> !way.isWhole()).toList(),
                    leftOut);
        }

        private Money money(double amount) {
            return new Money(amount, currency);
        }

        /** Of a price whose want the way tells. */
        private static double known(WorkInputs some, WorkInput input) {
            return some.find(input).map(InputValue::value).orElse(0.0);
        }

        private Set<WorkInput> lacking(WorkInput... wanted) {
            return lacking(inputs, wanted);
        }

        private static Set<WorkInput> lacking(WorkInputs some, WorkInput... wanted) {
            Set<WorkInput> lacking = EnumSet.noneOf(WorkInput.class);
            for (WorkInput input : wanted) {
                if (some.find(input).isEmpty()) {
                    lacking.add(input);
                }
            }
            return lacking;
        }

        /** Whether a way lacks a price that it cannot do without; then what else it lacks is named with it. */
        private boolean lacks(SupplyWay.Kind kind, String otherSaw, Set<WorkInput> missing, Set<WorkInput> costs) {
            return !complete(
                    kind, SupplyWay.Use.AS_IT_IS, otherSaw, missing.isEmpty() ? missing : Lacks.union(missing, costs));
        }

        private void add(
                SupplyWay.Kind kind,
                SupplyWay.Use use,
                String otherSaw,
                String name,
                double fixed,
                double perBoardFoot,
                double least,
                double rate,
                Lacks lacks) {
            ways.add(new SupplyWay(
                    kind,
                    use,
                    otherSaw,
                    name + use.words(),
                    money(fixed),
                    money(perBoardFoot),
                    money(least),
                    money(rate),
                    lacks.costs,
                    lacks.income,
                    lacks.taken));
        }

        private void buy() {
            if (!lacks(SupplyWay.Kind.BUY, NONE, lacking(WorkInput.LUMBER_PRICE), Set.of())) {
                add(
                        SupplyWay.Kind.BUY,
                        SupplyWay.Use.AS_IT_IS,
                        NONE,
                        "buy the lumber",
                        0,
                        inputs.get(WorkInput.LUMBER_PRICE),
                        0,
                        0,
                        NOTHING);
            }
        }

        private void ownSaw() {
            saw(SupplyWay.Kind.OWN_SAW, NONE, "buy the saw and saw", inputs, cost, cost.usable(), lumber.things, 0, 0);
        }

        private void otherSaw(OtherSaw other) {
            saw(
                    SupplyWay.Kind.OTHER_SAW,
                    other.name(),
                    "buy another saw, " + other.name() + ", and saw"
                            + (other.bought() > 0 ? ", buying what lacks" : ""),
                    other.inputs(),
                    other.cost(),
                    other.usable(),
                    other.things(),
                    other.bought() / cost.usable().value(),
                    other.more() / cost.usable().value());
        }

        /**
         * Sawing with a saw that is bought.
         *
         * @param made all that it makes that is usable
         * @param things what that is
         * @param bought what has to be bought beside, as a share
         * @param more what it makes more, as a share at the mean price
         */
        private void saw(
                SupplyWay.Kind kind,
                String otherSaw,
                String name,
                WorkInputs its,
                JobCost itsCost,
                BoardFeet made,
                List<Thing> things,
                double bought,
                double more) {
            Set<WorkInput> missing = lacking(its, WorkInput.PURCHASE);
            itsCost.leftOutOfRunning(ownWorkValued).values().forEach(missing::addAll);
            if (bought > 0) {
                missing.addAll(lacking(its, WorkInput.LUMBER_PRICE));
            }
            if (more > 0) {
                missing.addAll(lacking(WorkInput.LUMBER_PRICE));
            }
            List<Finish> finishes = finishes(kind, otherSaw, made, things);
            Set<WorkInput> costs = lacking(its, WorkInput.OTHER_OUTLAY);
            if (lacks(kind, otherSaw, missing, Lacks.union(costs, finishing(things)))) {
                return;
            }
            double outlay = Math.max(
                    0, its.get(WorkInput.PURCHASE) + known(its, WorkInput.OTHER_OUTLAY) - known(its, WorkInput.RESALE));
            double running =
                    itsCost.perBoardFoot(itsCost.running(ownWorkValued)).amount();
            double beside = (bought > 0 ? bought * its.get(WorkInput.LUMBER_PRICE) : 0)
                    - (more > 0 ? more * inputs.get(WorkInput.LUMBER_PRICE) : 0);
            for (Finish finish : finishes) {
                add(
                        kind,
                        finish.use,
                        otherSaw,
                        name,
                        outlay + finish.fixed,
                        running + beside + finish.perBoardFoot,
                        0,
                        0,
                        finish.lacks.and(costs, lacking(its, WorkInput.RESALE)));
            }
        }

        private void hiredSawyer() {
            Set<WorkInput> missing = lacking(WorkInput.HIRE_RATE, WorkInput.LOG_PRICE);
            boolean helps = ownWorkValued && mayBeAny(WorkInput.HIRE_HELP);
            if (helps && inputs.find(WorkInput.HIRE_HELP).isPresent()) {
                missing.addAll(lacking(WorkInput.WAGE));
            }
            List<Finish> finishes = finishes(SupplyWay.Kind.HIRED_SAWYER, NONE, cost.usable(), lumber.things);
            Set<WorkInput> costs = lacking(WorkInput.HIRE_SET_UP, WorkInput.HIRE_LEAST);
            if (mayBeAny(WorkInput.HIRE_STRIKES) && mayBeAny(WorkInput.HIRE_DAMAGE)) {
                costs.addAll(lacking(WorkInput.HIRE_STRIKES, WorkInput.HIRE_DAMAGE));
            }
            if (helps) {
                costs.addAll(lacking(WorkInput.HIRE_HELP));
            }
            if (lacks(SupplyWay.Kind.HIRED_SAWYER, NONE, missing, Lacks.union(costs, finishing(lumber.things)))) {
                return;
            }
            double perUsable = lumber.tally.value() / cost.usable().value();
            double help = helps && inputs.find(WorkInput.HIRE_HELP).isPresent()
                    ? inputs.get(WorkInput.HIRE_HELP)
                            * inputs.get(WorkInput.WAGE)
                            / cost.usable().value()
                    : 0;
            double damage = known(inputs, WorkInput.HIRE_STRIKES)
                    * known(inputs, WorkInput.HIRE_DAMAGE)
                    / cost.usable().value();
            for (Finish finish : finishes) {
                add(
                        SupplyWay.Kind.HIRED_SAWYER,
                        finish.use,
                        NONE,
                        "have it sawn by a travelling sawyer",
                        known(inputs, WorkInput.HIRE_SET_UP) + finish.fixed,
                        inputs.get(WorkInput.LOG_PRICE) + help + damage + finish.perBoardFoot,
                        known(inputs, WorkInput.HIRE_LEAST),
                        inputs.get(WorkInput.HIRE_RATE) * perUsable,
                        finish.lacks.and(costs, Set.of()));
            }
        }

        /** Whether something is not said to be nothing. A range that begins at nothing may be some in a draw. */
        private boolean mayBeAny(WorkInput input) {
            return inputs.find(input)
                    .map(given -> given.value() > 0 || given.hasSpread())
                    .orElse(true);
        }

        private void sellAndBuy() {
            Optional<BoardFeet> scale = lumber.scale;
            Set<WorkInput> missing = lacking(WorkInput.LOG_SALE, WorkInput.LUMBER_PRICE);
            if (scale.isEmpty() || !missing.isEmpty()) {
                leftOut.add(new LeftOut(
                        SupplyWay.Kind.SELL_AND_BUY, SupplyWay.Use.AS_IT_IS, NONE, missing, scale.isEmpty()));
                return;
            }
            double scaled = scale.get().value() / cost.usable().value();
            add(
                    SupplyWay.Kind.SELL_AND_BUY,
                    SupplyWay.Use.AS_IT_IS,
                    NONE,
                    "sell the logs and buy the lumber",
                    0,
                    inputs.get(WorkInput.LUMBER_PRICE) - inputs.get(WorkInput.LOG_SALE) * scaled,
                    0,
                    0,
                    NOTHING);
        }

        /** What finishing costs beside grading, as far as it has no price. */
        private Set<WorkInput> finishing(List<Thing> things) {
            return things.stream().anyMatch(Thing::planed)
                    ? lacking(WorkInput.DRYING_PRICE, WorkInput.PLANING_PRICE)
                    : lacking(WorkInput.DRYING_PRICE);
        }

        /** A sum of something over things, by the usable board foot of the job. */
        private double perUsable(List<Thing> things, ToDoubleFunction<Thing> perBoardFoot) {
            double sum = 0;
            for (Thing thing : things) {
                sum += thing.counted * perBoardFoot.applyAsDouble(thing);
            }
            return sum / cost.usable().value();
        }

        /** Those that have their prices, by the usable board foot of the job; the others are left out by name. */
        private List<Finish> finishes(SupplyWay.Kind kind, String otherSaw, BoardFeet made, List<Thing> things) {
            Lacks lacks = NOTHING.and(finishing(things), lacking(WorkInput.BY_PRODUCTS));
            double drying = known(inputs, WorkInput.DRYING_PRICE);
            double planing = known(inputs, WorkInput.PLANING_PRICE);
            double each = perUsable(things, thing -> drying + (thing.planed ? planing : 0))
                    - known(inputs, WorkInput.BY_PRODUCTS)
                            * made.value()
                            / cost.usable().value();
            WorkInput[] grading = {WorkInput.GRADER_VISIT, WorkInput.GRADER_RATE, WorkInput.LESSER_PRICE};
            if (lacking(grading).size() == grading.length) {
                Lacks ungraded = new Lacks(
                        lacks.costs,
                        lacks.income,
                        List.of("grading: it is taken that the authority accepts ungraded lumber"));
                return List.of(new Finish(SupplyWay.Use.AS_IT_IS, 0, each, ungraded));
            }
            List<Finish> finishes = new ArrayList<>();
            if (complete(
                    kind, SupplyWay.Use.GRADED, otherSaw, lacking(WorkInput.GRADER_VISIT, WorkInput.GRADER_RATE))) {
                double rate = inputs.get(WorkInput.GRADER_RATE);
                finishes.add(new Finish(
                        SupplyWay.Use.GRADED,
                        inputs.get(WorkInput.GRADER_VISIT),
                        each + perUsable(things, thing -> rate),
                        lacks));
            }
            if (complete(
                    kind, SupplyWay.Use.UNGRADED, otherSaw, lacking(WorkInput.LUMBER_PRICE, WorkInput.LESSER_PRICE))) {
                double mean = inputs.get(WorkInput.LUMBER_PRICE);
                double lesser = inputs.get(WorkInput.LESSER_PRICE);
                finishes.add(new Finish(
                        SupplyWay.Use.UNGRADED,
                        0,
                        each + perUsable(things, thing -> Math.max(0, thing.price * mean - lesser)),
                        lacks));
            }
            return finishes;
        }

        private boolean complete(SupplyWay.Kind kind, SupplyWay.Use use, String otherSaw, Set<WorkInput> missing) {
            if (!missing.isEmpty()) {
                leftOut.add(new LeftOut(kind, use, otherSaw, missing, false));
            }
            return missing.isEmpty();
        }
    }
}
