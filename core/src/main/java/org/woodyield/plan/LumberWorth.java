package org.woodyield.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.woodyield.measure.Distribution;
import org.woodyield.source.Sources;
import org.woodyield.work.InputValue;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/**
 * What the usable lumber of a plan is worth bought, each thing wanted by itself: what is beyond the need counts at {@link
 * Planner#SURPLUS_SHARE} of its price.
 *
 * <p>The prices of the job move together: in a draw in which one is at the upper end of its range all are. So the mean price has
 * their law, with the sums of their ends or deviations as its own. That is exact for even and for normal ranges, and for triangles
 * of one shape; triangles of several shapes are taken for one between the sums of their ends.
 *
 * @param parts what is wanted, in its order
 */
record LumberWorth(List<Part> parts) {

    /**
     * A thing wanted.
     *
     * @param id of it
     * @param usable board feet
     * @param counted those of them that count in full, and their share of the others
     * @param price of a board foot bought; empty where a price of the job is missing
     */
    record Part(String id, double usable, double counted, Optional<JobInput.Price> price) {
        private double sum(ToDoubleFunction<JobInput.Price> ofPrice) {
            return price.map(one -> ofPrice.applyAsDouble(one) * counted).orElse(0.0);
        }
    }

    /** Keeps an immutable copy. */
    LumberWorth {
        parts = List.copyOf(parts);
    }

    /** What a plan's lumber is worth. */
    static LumberWorth of(JobInput input, List<Supply> supply, List<JobPlan.Lot> fallDown) {
        boolean priced = Planner.isPriced(input);
        List<Item> items = Planner.items(input);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Supply one = supply.get(i);
            double usable = 0;
            for (JobPlan.Lot lot : fallDown) {
                usable += lot.wantedId().equals(one.wantedId())
                        ? lot.stages().usable().value()
                        : 0;
            }
            double needed = Math.min(one.sawn(), one.toSaw());
            double counted = one.sawn() > 0 ? (needed + Planner.SURPLUS_SHARE * (one.sawn() - needed)) / one.sawn() : 0;
            parts.add(new Part(
                    one.wantedId(),
                    usable,
                    usable * counted,
                    priced ? lowestPrice(input, items.get(i)) : Optional.empty()));
        }
        return new LumberWorth(parts);
    }

    /** What a board foot costs at least, of the species that may give it; empty where none may. */
    static Optional<JobInput.Price> lowestPrice(JobInput input, Item item) {
        return input.logs().stream()
                .map(log -> log.species())
                .filter(item.wood()::accepts)
                .map(species -> input.price(item.priceSize(), species).orElseThrow())
                .min(Comparator.comparingDouble(JobInput.Price::perBoardFoot));
    }

    /**
     * What has to be finished, thing by thing.
     *
     * @param input the job
     * @param mean price of a usable board foot of the job, to which those of the things are told, where one is known
     */
    List<SupplyWays.Thing> things(JobInput input, Optional<Double> mean) {
        List<SupplyWays.Thing> things = new ArrayList<>();
        for (Part part : parts) {
            if (part.counted > 0) {
                double price = mean.filter(known -> known > 0)
                        .flatMap(known -> part.price.map(own -> own.perBoardFoot() / known))
                        .orElse(1.0);
                things.add(new SupplyWays.Thing(part.counted, input.isPlaned(part.id), price));
            }
        }
        return things;
    }

    /** Usable board feet beyond the need. */
    double beyondNeed() {
        double beyond = 0;
        for (Part part : parts) {
            beyond += (part.usable - part.counted) / (1 - Planner.SURPLUS_SHARE);
        }
        return beyond;
    }

    /** The mean price of a usable board foot where all of it counts in full, if every price is known. */
    Optional<Double> priceInFull() {
        if (!priced() || !(usable() > 0)) {
            return Optional.empty();
        }
        double sum = 0;
        for (Part part : parts) {
            sum += part.usable * part.price.map(JobInput.Price::perBoardFoot).orElse(0.0);
        }
        return Optional.of(sum / usable());
    }

    /** All usable board feet. */
    double usable() {
        double usable = 0;
        for (Part part : parts) {
            usable += part.usable();
        }
        return usable;
    }

    /**
     * Another plan's lumber beside this one.
     *
     * @param usable board feet that the other makes in all
     * @param serves board feet of it that stand in for as many of the first, thing by thing
     * @param lacking board feet that have to be bought to have as much of everything, counted as in the worth
     * @param price of a board foot of those, in the mean; empty where nothing lacks or a price of the job is missing
     * @param more board feet that the other makes more, thing by thing, counted as in the worth
     * @param worth of those bought; empty where a price of the job is missing
     */
    record Beside(
            double usable,
            double serves,
            double lacking,
            Optional<InputValue> price,
            double more,
            Optional<Double> worth) {}

    /**
     * What another plan of the same job makes of what this one makes. What it makes more of a thing than this one is told by
     * itself, and does not make up in board feet for what it makes less of another.
     */
    Beside beside(LumberWorth other) {
        double serves = 0;
        double lacking = 0;
        double more = 0;
        double worth = 0;
        List<Part> missing = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part own = parts.get(i);
            Part its = other.parts.get(i);
            serves += Math.min(own.usable, its.usable);
            double less = Math.max(0, own.counted - its.counted);
            lacking += less;
            double beyond = Math.max(0, its.counted - own.counted);
            more += beyond;
            worth += beyond * own.price.map(JobInput.Price::perBoardFoot).orElse(0.0);
            missing.add(new Part(own.id, less, less, own.price));
        }
        LumberWorth lack = new LumberWorth(missing);
        return new Beside(
                other.usable(),
                serves,
                lacking,
                lacking > 0 && priced() ? Optional.of(lack.meanPrice()) : Optional.empty(),
                more,
                priced() ? Optional.of(worth) : Optional.empty());
    }

    private boolean priced() {
        return parts.stream().anyMatch(part -> part.price().isPresent());
    }

    /** The inputs of work and money with what a usable board foot costs bought, where the prices of the job tell. */
    WorkInputs into(WorkInputs inputs) {
        return priced() && usable() > 0 && inputs.find(WorkInput.LUMBER_PRICE).isEmpty()
                ? inputs.with(WorkInput.LUMBER_PRICE, meanPrice())
                : inputs;
    }

    private InputValue meanPrice() {
        double value = mean(JobInput.Price::perBoardFoot);
        Optional<Distribution> ranged = parts.stream()
                .flatMap(part -> part.price().stream())
                .map(JobInput.Price::spread)
                .filter(spread -> spread.standardDeviation() > 0)
                .findFirst();
        if (ranged.isEmpty()) {
            return InputValue.of(value, Sources.get("given"));
        }
        // Rounding must not put the value beside its own range.
        double least = Math.min(value, mean(price -> least(price.spread())));
        double greatest = Math.max(value, mean(price -> greatest(price.spread())));
        Distribution spread = ranged.get() instanceof Distribution.Normal
                ? new Distribution.Normal(value, mean(price -> price.spread().standardDeviation()))
                : ranged.get() instanceof Distribution.Rectangular
                        ? new Distribution.Rectangular(least, greatest)
                        : new Distribution.Triangular(least, value, greatest);
        return new InputValue(value, spread, Sources.get("user"));
    }

    private static double least(Distribution spread) {
        return spread instanceof Distribution.Normal ? spread.mean() : spread.least();
    }

    private static double greatest(Distribution spread) {
        return spread instanceof Distribution.Normal ? spread.mean() : spread.greatest();
    }

    private double mean(ToDoubleFunction<JobInput.Price> ofPrice) {
        double sum = 0;
        for (Part part : parts) {
            sum += part.sum(ofPrice);
        }
        return sum / usable();
    }
}
