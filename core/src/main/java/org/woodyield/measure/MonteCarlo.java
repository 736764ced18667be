package org.woodyield.measure;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Propagation of distributions by drawing (after Supplement 1 to the GUM, JCGM 101). The same seed gives the same result on every
 * platform.
 */
public final class MonteCarlo {

    private static final Domain TRIALS = Domain.of("trials", "", 100, 10_000_000);
    private static final Domain COVERAGE = Domain.of("coverage", "", 0.01, 0.999);

    private final double[] sorted;
    private final double mean;
    private final double deviation;

    private MonteCarlo(double[] drawn) {
        double sum = 0;
        for (double value : drawn) {
            sum += value;
        }
        mean = sum / drawn.length;
        double squares = 0;
        for (double value : drawn) {
            squares += (value - mean) * (value - mean);
        }
        deviation = StrictMath.sqrt(squares / (drawn.length - 1));
        sorted = drawn;
        Arrays.sort(sorted);
    }

    /**
     * Draws a model's result again and again.
     *
     * @param trial draws the inputs from the generator and computes the result
     * @param seed of the generator
     * @param trials how often, 100 to 10 million
     * @return the results
     * @throws OutOfDomainException if trials is outside, or a result is not finite
     */
    public static MonteCarlo run(ToDoubleFunction<Draws> trial, long seed, int trials) {
        return runAll(draws -> new double[] {trial.applyAsDouble(draws)}, 1, seed, trials)
                .get(0);
    }

    /**
     * Draws several results of one model from the same inputs, again and again.
     *
     * @param trial draws the inputs from the generator and computes the results, as many as are stated
     * @param results how many there are of each trial
     * @param seed of the generator
     * @param trials how often, 100 to 10 million
     * @return each result over all trials, in the order of the trial
     * @throws OutOfDomainException if trials is outside, or a result is not finite
     * @throws IllegalArgumentException if a trial gives more or fewer results
     */
    public static List<MonteCarlo> runAll(Function<Draws, double[]> trial, int results, long seed, int trials) {
        TRIALS.require(trials);
        Draws draws = Draws.seeded(seed);
        double[][] drawn = new double[results][trials];
        for (int i = 0; i < trials; i++) {
            double[] values = trial.apply(draws);
            if (values.length != results) {
                throw new IllegalArgumentException(values.length + " results of a trial that was to give " + results);
            }
            for (int result = 0; result < results; result++) {
                if (!Double.isFinite(values[result])) {
                    throw new OutOfDomainException(
                            "result of trial " + (i + 1),
                            Double.toString(values[result]),
                            "",
                            "finite numbers",
                            "narrow the ranges");
                }
                drawn[result][i] = values[result];
            }
        }
        return Stream.of(drawn).map(MonteCarlo::new).toList();
    }

    /**
     * The estimate and its standard uncertainty (7.6).
     *
     * @return mean and standard deviation of the results, the latter with one less than the trials below
     */
    public Uncertain result() {
        return new Uncertain(mean, deviation);
    }

    /**
     * How many trials were made.
     *
     * @return the count
     */
    public int trials() {
        return sorted.length;
    }

    /**
     * An interval with as many results below as above it, to within one (7.7).
     *
     * @param coverage share of the results in it, 0.01 to 0.999
     * @return its ends
     * @throws OutOfDomainException if the coverage is outside
     */
    public Interval interval(double coverage) {
        COVERAGE.require(coverage);
        int within = (int) Math.floor(coverage * sorted.length + 0.5);
        int below = (sorted.length - within) / 2;
        return new Interval(sorted[below], sorted[Math.min(below + within, sorted.length - 1)], coverage);
    }

    /**
     * All results.
     *
     * @return the least and the greatest of them, with a coverage of 1
     */
    public Interval range() {
        return new Interval(sorted[0], sorted[sorted.length - 1], 1);
    }

    /**
     * An interval that holds a share of the results.
     *
     * @param least its lower end
     * @param greatest its upper end
     * @param coverage the share
     */
    public record Interval(double least, double greatest, double coverage) {}

    /**
     * The share of results above a value.
     *
     * @param threshold the value
     * @return 0 to 1
     */
    public double shareAbove(double threshold) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] > threshold) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return (double) (sorted.length - low) / sorted.length;
    }
}
