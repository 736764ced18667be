package org.woodyield.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Draws;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.measure.OutOfDomainException;

/**
 * A figure of a job and what the ranges of its inputs do to it.
 *
 * <p>The inputs are taken as independent. A draw outside the limits of an input is drawn again.
 *
 * @param value the figure at the values of the inputs
 * @param drawn the figure over the ranges; empty where no range moves it, and then there is no interval and no probability
 * @param movers inputs that move the figure by themselves within one standard deviation, the one that moves it most first; it
 *     may be drawn without any, where a least charge holds until several move together
 */
public record Outlook(double value, Optional<MonteCarlo> drawn, List<Mover> movers) {

    /** A difference of less than this share of a figure is one of rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * An input that moves the figure.
     *
     * @param input which
     * @param saw whose it is, by name; empty where there is one saw, or all share it
     * @param value its value and range
     * @param lower the figure with the input one standard deviation lower, though not outside its range
     * @param upper the figure with the input one standard deviation higher, though not outside its range
     */
    public record Mover(WorkInput input, String saw, InputValue value, double lower, double upper) {
        /**
         * How far the input moves the figure.
         *
         * @return half the distance of the two figures
         */
        public double swing() {
            return Math.abs(upper - lower) / 2;
        }
    }

    /** Keeps an immutable copy. */
    public Outlook {
        movers = List.copyOf(movers);
    }

    /**
     * Looks at a figure over the ranges of its inputs.
     *
     * @param inputs values and ranges
     * @param figure computes the figure
     * @param seed of the draws
     * @param trials how many draws, 100 or more
     * @return the figure, its draws and its movers
     * @throws OutOfDomainException if the figure is not finite, trials is below 100, or a range hardly meets the limits of its
     *     input
     */
    public static Outlook of(WorkInputs inputs, ToDoubleFunction<WorkInputs> figure, long seed, int trials) {
        return ofAll(inputs, Function.identity(), List.of(figure), seed, trials).get(0);
    }

    /**
     * Looks at several figures of one model over the ranges of its inputs, with the same draws for all.
     *
     * @param <T> the result of the model
     * @param inputs values and ranges
     * @param model computes what the figures are taken from
     * @param figures take a figure each
     * @param seed of the draws
     * @param trials how many draws, 100 or more
     * @return an outlook for each figure, in the same order
     * @throws OutOfDomainException as {@link #of}
     */
    public static <T> List<Outlook> ofAll(
            WorkInputs inputs,
            Function<WorkInputs, T> model,
            List<ToDoubleFunction<T>> figures,
            long seed,
            int trials) {
        List<Map.Entry<WorkInput, InputValue>> open = inputs.values().entrySet().stream()
                .filter(entry -> entry.getValue().hasSpread())
                .toList();
        Function<WorkInputs, double[]> all = changed -> {
            T result = model.apply(changed);
            return figures.stream()
                    .mapToDouble(figure -> figure.applyAsDouble(result))
                    .toArray();
        };
        double[] values = all.apply(inputs);
        List<List<Mover>> movers = new ArrayList<>();
        figures.forEach(figure -> movers.add(new ArrayList<>()));
        for (Map.Entry<WorkInput, InputValue> entry : open) {
            WorkInput input = entry.getKey();
            InputValue given = entry.getValue();
            double low = lower(input, given);
            double high = higher(input, given);
            double[] lower = all.apply(inputs.with(input, InputValue.of(low, given.source())));
            double[] upper = all.apply(inputs.with(input, InputValue.of(high, given.source())));
            for (int i = 0; i < values.length; i++) {
                if (differ(lower[i], upper[i])) {
                    movers.get(i).add(new Mover(input, "", given, lower[i], upper[i]));
                }
            }
        }
        List<MonteCarlo> drawn = open.isEmpty()
                ? List.of()
                : MonteCarlo.runAll(draws -> all.apply(draw(inputs, open, draws)), values.length, seed, trials);
        List<Outlook> outlooks = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            List<Mover> some = movers.get(i);
            some.sort(Comparator.comparingDouble(Mover::swing).reversed().thenComparing(Mover::input));
            outlooks.add(new Outlook(values[i], drawn.isEmpty() ? Optional.empty() : varying(drawn.get(i)), some));
        }
        return outlooks;
    }

    /** Whether two figures differ by more than rounding. */
    static boolean differ(double one, double other) {
        return Math.abs(one - other) > ROUNDING * Math.max(Math.abs(one), Math.abs(other));
    }

    /**
     * A difference that is zero where its terms are the same but for rounding, so that equals that were computed in two ways
     * show no draws and no probability.
     *
     * @param one a figure
     * @param other what is taken from it
     * @return one less other; zero where they differ by no more than 1e-9 of the greater
     */
    public static double difference(double one, double other) {
        return differ(one, other) ? one - other : 0;
    }

    /** The draws of a figure; empty where all are the same. */
    static Optional<MonteCarlo> varying(MonteCarlo drawn) {
        MonteCarlo.Interval all = drawn.range();
        return differ(all.least(), all.greatest()) ? Optional.of(drawn) : Optional.empty();
    }

    private static double least(WorkInput input) {
        double least = input.domain().least();
        return least > 0 ? least : 0;
    }

    /** One standard deviation lower, though not outside the range or the limits. */
    static double lower(WorkInput input, InputValue given) {
        double low = given.value() - given.spread().standardDeviation();
        return Math.max(low, Math.max(given.spread().least(), least(input)));
    }

    /** One standard deviation higher, though not outside the range or the limits. */
    static double higher(WorkInput input, InputValue given) {
        double high = given.value() + given.spread().standardDeviation();
        return Math.min(high, Math.min(given.spread().greatest(), input.domain().greatest()));
    }

    private static WorkInputs draw(WorkInputs inputs, List<Map.Entry<WorkInput, InputValue>> open, Draws draws) {
        EnumMap<WorkInput, InputValue> drawn = new EnumMap<>(WorkInput.class);
        for (Map.Entry<WorkInput, InputValue> entry : open) {
            InputValue given = entry.getValue();
            double value = draw(entry.getKey(), given, draws);
            drawn.put(entry.getKey(), InputValue.of(value, given.source()));
        }
        return inputs.withAll(drawn);
    }

    /** A value of the range that the input accepts. */
    static double draw(WorkInput input, InputValue given, Draws draws) {
        Domain domain = input.domain();
        int tries = 0;
        double value = given.spread().draw(draws);
        while (!domain.holds(value)) {
            if (++tries > 1000) {
                throw new OutOfDomainException(
                        "range of " + input.label(),
                        given.spread().toString(),
                        domain.unit(),
                        domain.limits(),
                        "give a range within the limits");
            }
            value = given.spread().draw(draws);
        }
        return value;
    }

    /**
     * How probable it is that the figure is above a value.
     *
     * @param threshold the value
     * @return share of the draws above it; empty where no range was given
     */
    public Optional<Double> probabilityAbove(double threshold) {
        return drawn.map(results -> results.shareAbove(threshold));
    }
}
