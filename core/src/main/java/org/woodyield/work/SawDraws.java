package org.woodyield.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.woodyield.measure.Draws;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.measure.OutOfDomainException;

/**
 * The inputs of several saws on one job, drawn together: what they share is the same in one draw, so that an error in it cancels
 * as far as it does both alike.
 *
 * <p>Shared are the inputs of the job ({@link WorkInput#ofSaw} is false). Those of the wood, the fuel and the people that a saw
 * may have of its own are shared by the saws for which they have the same value, range and source. All others are drawn for each
 * saw apart. A shared input whose range differs from saw to saw has the same rank in each, where its laws
 * are of one kind and no draw beyond a limit was made again.
 *
 * @param inputs of each saw
 * @param ranges what is drawn, in the order of {@link WorkInput}
 */
public record SawDraws(List<WorkInputs> inputs, List<Range> ranges) {

    /**
     * An input with a range, drawn once.
     *
     * @param input which
     * @param saws whose it is, by index from 0, rising; more than one where they share it
     */
    public record Range(WorkInput input, List<Integer> saws) {
        /** Keeps an immutable copy. */
        public Range {
            saws = List.copyOf(saws);
        }
    }

    /**
     * An input that moves a figure.
     *
     * @param range which, and whose
     * @param lower the figure with the input one standard deviation lower, though not outside its range
     * @param upper the figure with the input one standard deviation higher, though not outside its range
     */
    public record Mover(Range range, double lower, double upper) {
        /**
         * How far the input moves the figure.
         *
         * @return half the distance of the two figures
         */
        public double swing() {
            return Math.abs(upper - lower) / 2;
        }
    }

    /**
     * A figure and what the ranges do to it.
     *
     * @param value the figure at the values of the inputs
     * @param drawn the figure over the ranges; empty where no range moves it
     * @param movers inputs that move it by themselves within one standard deviation, the one that moves it most first
     */
    public record Spread(double value, Optional<MonteCarlo> drawn, List<Mover> movers) {
        /** Keeps an immutable copy. */
        public Spread {
            movers = List.copyOf(movers);
        }
    }

    /** Keeps immutable copies. */
    public SawDraws {
        inputs = List.copyOf(inputs);
        ranges = List.copyOf(ranges);
    }

    /**
     * The draws of some saws.
     *
     * @param inputs of each saw, in the order in which figures name them
     * @return what is drawn once and what apart
     */
    public static SawDraws of(List<WorkInputs> inputs) {
        List<Range> ranges = new ArrayList<>();
        for (WorkInput input : WorkInput.values()) {
            List<Integer> open = IntStream.range(0, inputs.size())
                    .filter(saw -> inputs.get(saw)
                            .find(input)
                            .filter(InputValue::hasSpread)
                            .isPresent())
                    .boxed()
                    .toList();
            List<Integer> left = new ArrayList<>(open);
            while (!left.isEmpty()) {
                int first = left.get(0);
                List<Integer> together = left.stream()
                        .filter(saw -> saw == first || shared(input, inputs.get(first), inputs.get(saw)))
                        .toList();
                ranges.add(new Range(input, together));
                left.removeAll(together);
            }
        }
        return new SawDraws(inputs, ranges);
    }

    private static boolean shared(WorkInput input, WorkInputs one, WorkInputs other) {
        return !input.ofSaw()
                || (input.sharedWhereAlike() && one.required(input).equals(other.required(input)));
    }

    /**
     * Looks at several figures over the ranges, with the same draws for all.
     *
     * @param <T> what is computed of one saw
     * @param model computes it from the index and the inputs of a saw
     * @param figures take a figure each from what was computed of all saws
     * @param seed of the draws
     * @param trials how many draws, 100 or more
     * @return a spread for each figure, in the same order
     * @throws OutOfDomainException if a figure is not finite, trials is below 100, or a range hardly meets the limits of its
     *     input
     */
    public <T> List<Spread> spreads(
            BiFunction<Integer, WorkInputs, T> model, List<ToDoubleFunction<List<T>>> figures, long seed, int trials) {
        return spreads(model, Function.identity(), figures, seed, trials);
    }

    /**
     * Looks at several figures over the ranges, with the same draws for all, of something that is computed from all saws
     * together.
     *
     * @param <T> what is computed of one saw
     * @param <U> what is computed of them all
     * @param model computes it from the index and the inputs of a saw
     * @param together computes something from that of all saws, once for all figures
     * @param figures take a figure each from it
     * @param seed of the draws
     * @param trials how many draws, 100 or more
     * @return a spread for each figure, in the same order
     * @throws OutOfDomainException if a figure is not finite, trials is below 100, or a range hardly meets the limits of its
     *     input
     */
    public <T, U> List<Spread> spreads(
            BiFunction<Integer, WorkInputs, T> model,
            Function<List<T>, U> together,
            List<ToDoubleFunction<U>> figures,
            long seed,
            int trials) {
        List<T> asGiven = computed(model, inputs);
        Function<List<T>, double[]> all = results -> {
            U joint = together.apply(results);
            return figures.stream()
                    .mapToDouble(figure -> figure.applyAsDouble(joint))
                    .toArray();
        };
        double[] values = all.apply(asGiven);
        List<List<Mover>> movers = new ArrayList<>();
        figures.forEach(figure -> movers.add(new ArrayList<>()));
        for (Range range : ranges) {
            double[] lower = all.apply(moved(model, asGiven, range, false));
            double[] upper = all.apply(moved(model, asGiven, range, true));
            for (int i = 0; i < values.length; i++) {
                if (Outlook.differ(lower[i], upper[i])) {
                    movers.get(i).add(new Mover(range, lower[i], upper[i]));
                }
            }
        }
        List<MonteCarlo> drawn = ranges.isEmpty()
                ? List.of()
                : MonteCarlo.runAll(draws -> all.apply(computed(model, draw(draws))), values.length, seed, trials);
        List<Spread> spreads = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            List<Mover> some = movers.get(i);
            some.sort(Comparator.comparingDouble(Mover::swing)
                    .reversed()
                    .thenComparing(mover -> mover.range().input()));
            spreads.add(
                    new Spread(values[i], drawn.isEmpty() ? Optional.empty() : Outlook.varying(drawn.get(i)), some));
        }
        return spreads;
    }

    private static <T> List<T> computed(BiFunction<Integer, WorkInputs, T> model, List<WorkInputs> some) {
        List<T> results = new ArrayList<>();
        for (int saw = 0; saw < some.size(); saw++) {
            results.add(model.apply(saw, some.get(saw)));
        }
        return results;
    }

    /** What is computed of each saw with one input a standard deviation higher or lower; the saws without it stay. */
    private <T> List<T> moved(BiFunction<Integer, WorkInputs, T> model, List<T> asGiven, Range range, boolean higher) {
        List<T> results = new ArrayList<>(asGiven);
        for (int saw : range.saws()) {
            InputValue given = inputs.get(saw).required(range.input());
            double value = higher ? Outlook.higher(range.input(), given) : Outlook.lower(range.input(), given);
            WorkInputs changed = inputs.get(saw).with(range.input(), InputValue.of(value, given.source()));
            results.set(saw, model.apply(saw, changed));
        }
        return results;
    }

    /** Every range has draws of its own, begun anew for each saw that shares it: alike ranges give the same value. */
    private List<WorkInputs> draw(Draws draws) {
        List<Map<WorkInput, InputValue>> drawn = new ArrayList<>();
        inputs.forEach(some -> drawn.add(new EnumMap<>(WorkInput.class)));
        for (Range range : ranges) {
            long seed = draws.nextLong();
            for (int saw : range.saws()) {
                InputValue given = inputs.get(saw).required(range.input());
                double value = Outlook.draw(range.input(), given, Draws.seeded(seed));
                drawn.get(saw).put(range.input(), InputValue.of(value, given.source()));
            }
        }
        List<WorkInputs> changed = new ArrayList<>();
        for (int saw = 0; saw < drawn.size(); saw++) {
            changed.add(inputs.get(saw).withAll(drawn.get(saw)));
        }
        return changed;
    }
}
