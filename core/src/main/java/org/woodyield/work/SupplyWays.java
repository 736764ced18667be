package org.woodyield.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;

/**
 * The ways to come by the lumber of a job, like for like: what is sawn has to be dried, planed and, where nobody accepts it
 * ungraded, graded before it stands in for bought lumber.
 *
 * <p>A way needs its prices; where one is missing the way is left out by name. What a reader may have no need of (drying,
 * planing, a grader, a set-up) is not counted where nobody gave a price, and the way says so. Where a grader's visit is given,
 * sawn lumber is counted as graded; where the price of lumber for uses without a grade is given, also as ungraded lumber that
 * serves only there, at the loss of the difference. Where neither is given, it is taken that the authority accepts it ungraded.
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
     * @param missing what nobody gave, in words
     */
    public record LeftOut(SupplyWay.Kind kind, List<String> missing) {
        /** Keeps an immutable copy. */
        public LeftOut {
            missing = List.copyOf(missing);
        }
    }

    /**
     * Volumes at which two ways change places.
     *
     * @param one a way
     * @param other another
     * @param volumes where they cost the same, rising
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
     * Where each two ways change places.
     *
     * @return all pairs that do, in the order of the ways
     */
    public List<Crossing> crossings() {
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            for (int j = i + 1; j < ways.size(); j++) {
                List<BoardFeet> volumes = ways.get(i).crossings(ways.get(j));
                if (!volumes.isEmpty()) {
                    crossings.add(new Crossing(ways.get(i), ways.get(j), volumes));
                }
            }
        }
        return List.copyOf(crossings);
    }

    /** What a sawn board foot needs before it is like a bought one, or what it is short of it. */
    private record Finish(String words, double fixed, double perBoardFoot, List<String> notCounted) {}

    private static final class Collector {
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
            List<String> absent = new ArrayList<>();
            for (WorkInput input : wanted) {
                if (inputs.find(input).isEmpty()) {
                    absent.add(input.label());
                }
            }
            return absent;
        }

        private boolean lacks(SupplyWay.Kind kind, List<String> missing) {
            if (!missing.isEmpty()) {
                leftOut.add(new LeftOut(kind, missing));
            }
            return !missing.isEmpty();
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
            if (!lacks(SupplyWay.Kind.BUY, absent(WorkInput.LUMBER_PRICE))) {
                add(SupplyWay.Kind.BUY, "buy the lumber", 0, inputs.get(WorkInput.LUMBER_PRICE), 0, 0, List.of());
            }
        }

        private void ownSaw() {
            List<String> missing = absent(WorkInput.PURCHASE);
            cost.leftOutOfRunning(ownWorkValued).keySet().forEach(kind -> missing.add(kind.label()));
            if (lacks(SupplyWay.Kind.OWN_SAW, missing)) {
                return;
            }
            double outlay = Math.max(
                    0,
                    inputs.get(WorkInput.PURCHASE) + orNothing(WorkInput.OTHER_OUTLAY) - orNothing(WorkInput.RESALE));
            double running = cost.perBoardFoot(cost.running(ownWorkValued)).amount();
            for (Finish finish : finishes()) {
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
            List<String> missing = absent(WorkInput.HIRE_RATE, WorkInput.LOG_PRICE);
            boolean helps = orNothing(WorkInput.HIRE_HELP) > 0;
            if (ownWorkValued && helps) {
                missing.addAll(absent(WorkInput.WAGE));
            }
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
            for (Finish finish : finishes()) {
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
            List<String> missing = absent(WorkInput.LOG_SALE, WorkInput.LUMBER_PRICE);
            if (scale.isEmpty()) {
                missing.add("scale of the logs");
            }
            if (!lacks(SupplyWay.Kind.SELL_AND_BUY, missing)) {
                double scaled = scale.orElseThrow().value() / cost.usable().value();
                add(
                        SupplyWay.Kind.SELL_AND_BUY,
                        "sell the logs and buy the lumber",
                        0,
                        inputs.get(WorkInput.LUMBER_PRICE) - inputs.get(WorkInput.LOG_SALE) * scaled,
                        0,
                        0,
                        List.of());
            }
        }

        private List<Finish> finishes() {
            List<String> notCounted = absent(WorkInput.DRYING_PRICE, WorkInput.PLANING_PRICE, WorkInput.BY_PRODUCTS);
            double each = orNothing(WorkInput.DRYING_PRICE)
                    + orNothing(WorkInput.PLANING_PRICE)
                    - orNothing(WorkInput.BY_PRODUCTS);
            List<Finish> finishes = new ArrayList<>();
            if (inputs.find(WorkInput.GRADER_VISIT).isPresent()) {
                finishes.add(new Finish(
                        ", graded",
                        inputs.get(WorkInput.GRADER_VISIT),
                        each + orNothing(WorkInput.GRADER_RATE),
                        notCounted));
            }
            Optional<InputValue> price = inputs.find(WorkInput.LUMBER_PRICE);
            Optional<InputValue> lesser = inputs.find(WorkInput.LESSER_PRICE);
            if (price.isPresent() && lesser.isPresent()) {
                finishes.add(new Finish(
                        ", ungraded, where no grade is asked for",
                        0,
                        each + Math.max(0, price.get().value() - lesser.get().value()),
                        notCounted));
            }
            if (finishes.isEmpty()) {
                List<String> taken = new ArrayList<>(notCounted);
                taken.add("grading: it is taken that the authority accepts ungraded lumber");
                finishes.add(new Finish("", 0, each, taken));
            }
            return finishes;
        }
    }
}
