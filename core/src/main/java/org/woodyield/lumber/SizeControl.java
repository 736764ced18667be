package org.woodyield.lumber;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How much sawn sizes scatter, from boards measured at several places each: within a board, between boards, and in all.
 *
 * <p>Print and theory differ. What Brown's bulletin prints fits the plain deviation of the board means and of all readings;
 * the analysis of variance takes the scatter within boards out of that between them, and adds the two. Both are given and
 * named by {@link Convention}.
 *
 * @see org.woodyield.source.Sources sources brown-em-8731 and brown-scatter
 */
public final class SizeControl {

    /** Which arithmetic is used for the scatter between boards and in all. */
    public enum Convention {
        /** Between: deviation of the board means; in all: deviation of all readings. What the printed example fits. */
        PLAIN,
        /** Between: less the part that scatter within boards adds to the means; in all: root of the sum of squares. */
        COMPONENTS
    }

    private final List<double[]> boards;
    private final int places;

    private SizeControl(List<double[]> boards, int places) {
        this.boards = boards;
        this.places = places;
    }

    /**
     * From measured boards.
     *
     * @param boards two or more boards, each with the same count of readings, two or more
     * @return the statistics
     * @throws OutOfDomainException if there are fewer, the counts differ or a reading is not above zero
     */
    public static SizeControl of(List<List<Length>> boards) {
        if (boards.size() < 2) {
            throw new OutOfDomainException("boards", Integer.toString(boards.size()), "", "2 or more", "measure more");
        }
        int places = boards.get(0).size();
        List<double[]> inches = new ArrayList<>();
        for (List<Length> board : boards) {
            if (board.size() != places || places < 2) {
                throw new OutOfDomainException(
                        "readings of a board",
                        Integer.toString(board.size()),
                        "",
                        "the same count for every board, 2 or more",
                        "measure each board at the same places");
            }
            double[] readings = new double[places];
            for (int i = 0; i < places; i++) {
                if (!board.get(i).isPositive()) {
                    throw new OutOfDomainException("reading", board.get(i).toString(), "", "above 0", "");
                }
                readings[i] = board.get(i).toInches();
            }
            inches.add(readings);
        }
        return new SizeControl(inches, places);
    }

    /**
     * The mean of all readings.
     *
     * @return inches
     */
    @Calculation("lumber.size-mean")
    public double meanInches() {
        return mean(all());
    }

    /**
     * The deviation within boards: the root of the mean of the boards' variances.
     *
     * @return inches
     */
    @Calculation("lumber.size-within")
    public double withinInches() {
        double sum = 0;
        for (double[] board : boards) {
            sum += variance(board);
        }
        return StrictMath.sqrt(sum / boards.size());
    }

    /**
     * The deviation between boards.
     *
     * @param convention which arithmetic
     * @return inches; zero where the components leave nothing
     */
    @Calculation("lumber.size-between")
    public double betweenInches(Convention convention) {
        double ofMeans = variance(means());
        if (convention == Convention.PLAIN) {
            return StrictMath.sqrt(ofMeans);
        }
        double within = withinInches();
        return StrictMath.sqrt(Math.max(ofMeans - within * within / places, 0));
    }

    /**
     * The deviation in all, which decides the target size.
     *
     * @param convention which arithmetic
     * @return inches
     */
    @Calculation("lumber.size-total")
    public double totalInches(Convention convention) {
        if (convention == Convention.PLAIN) {
            return StrictMath.sqrt(variance(all()));
        }
        double within = withinInches();
        double between = betweenInches(Convention.COMPONENTS);
        return StrictMath.sqrt(within * within + between * between);
    }

    /**
     * How mean and deviations came about.
     *
     * @param convention which arithmetic
     * @return the working; its symbols {@code mean}, {@code SW}, {@code SB} and, last, {@code ST} equal the methods bit for
     *     bit
     */
    public Working working(Convention convention) {
        Source form = Sources.get("brown-scatter");
        double withinVariance = 0;
        for (double[] board : boards) {
            withinVariance += variance(board);
        }
        Working.Builder working = Working.of("Scatter of sawn sizes, "
                        + (convention == Convention.PLAIN ? "plain deviations" : "components of variance"))
                .given("k", "boards", boards.size(), "")
                .given("m", "readings a board", places, "")
                .given("mean", "mean of all readings", meanInches(), "in")
                .given("Q", "sum of the boards' variances", withinVariance, "in2")
                .given("V", "variance of the board means", variance(means()), "in2")
                .given("A", "variance of all readings", variance(all()), "in2")
                .step("SW", "deviation within boards", "sqrt(Q / k)", "in", form);
        return convention == Convention.PLAIN
                ? working.step("SB", "deviation between boards", "sqrt(V)", "in", form)
                        .step("ST", "deviation in all", "sqrt(A)", "in", form)
                        .build()
                : working.step("SB", "deviation between boards", "sqrt(max(V - SW * SW / m, 0))", "in", form)
                        .step("ST", "deviation in all", "sqrt(SW * SW + SB * SB)", "in", form)
                        .build();
    }

    private double[] means() {
        double[] means = new double[boards.size()];
        for (int i = 0; i < means.length; i++) {
            means[i] = mean(boards.get(i));
        }
        return means;
    }

    private double[] all() {
        double[] all = new double[boards.size() * places];
        for (int i = 0; i < boards.size(); i++) {
            System.arraycopy(boards.get(i), 0, all, i * places, places);
        }
        return all;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Sum of squares about the mean over one less than the count. */
    private static double variance(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return sum / (values.length - 1);
    }
}
