package org.woodyield.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * @param drawn the figure over the ranges; empty where no input has a range, and then there is no interval and no probability
 * @param movers inputs with a range, the one that moves the figure most first
 */
public record Outlook(double value, Optional<MonteCarlo> drawn, List<Mover> movers) {

    /**
     * An input that moves the figure.
     *
     * @param input which
     * @param value its value and range
     * @param lower the figure with the input one standard deviation lower, though not outside its range
     * @param upper the figure with the input one standard deviation higher, though not outside its range
     */
    public record Mover(WorkInput input, InputValue value, double lower, double upper) {
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
        double value = figure.applyAsDouble(inputs);
        List<Map.Entry<WorkInput, InputValue>> open = inputs.values().entrySet().stream()
                .filter(entry -> entry.getValue().hasSpread())
                .toList();
        List<Mover> movers = new ArrayList<>();
        for (Map.Entry<WorkInput, InputValue> entry : open) {
            WorkInput input = entry.getKey();
            InputValue given = entry.getValue();
            double step = given.spread().standardDeviation();
            double low = Math.max(given.value() - step, Math.max(given.spread().least(), least(input)));
            double high = Math.min(
                    given.value() + step,
                    Math.min(given.spread().greatest(), input.domain().greatest()));
            double lower = figure.applyAsDouble(inputs.with(input, InputValue.of(low, given.source())));
            double upper = figure.applyAsDouble(inputs.with(input, InputValue.of(high, given.source())));
            if (lower != upper) {
                movers.add(new Mover(input, given, lower, upper));
            }
        }
        movers.sort(Comparator.comparingDouble(Mover::swing).reversed().thenComparing(Mover::input));
        Optional<MonteCarlo> drawn = movers.isEmpty()
                ? Optional.empty()
                : Optional.of(MonteCarlo.run(draws -> figure.applyAsDouble(draw(inputs, open, draws)), seed, trials));
        return new Outlook(value, drawn, movers);
    }

    private static double least(WorkInput input) {
        double least = input.domain().least();
        return least > 0 ? least : 0;
    }

    private static WorkInputs draw(WorkInputs inputs, List<Map.Entry<WorkInput, InputValue>> open, Draws draws) {
        EnumMap<WorkInput, InputValue> drawn = new EnumMap<>(WorkInput.class);
        for (Map.Entry<WorkInput, InputValue> entry : open) {
            Domain domain = entry.getKey().domain();
            InputValue given = entry.getValue();
            int tries = 0;
            double value = given.spread().draw(draws);
            while (!domain.holds(value)) {
                if (++tries > 1000) {
                    throw new OutOfDomainException(
                            "range of " + entry.getKey().label(),
                            given.spread().toString(),
                            domain.unit(),
                            domain.limits(),
                            "give a range within the limits");
                }
                value = given.spread().draw(draws);
            }
            drawn.put(entry.getKey(), InputValue.of(value, given.source()));
        }
        return inputs.withAll(drawn);
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
