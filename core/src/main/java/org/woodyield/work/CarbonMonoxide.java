package org.woodyield.work;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Carbon monoxide in the breathing air over a day: published limits and measured values, and the mean over eight hours.
 * Information only: sawing bent over the exhaust in still air can pass the ceiling within minutes, and no formula here says
 * that a place is safe.
 */
public final class CarbonMonoxide {

    private static final Domain PPM = Domain.of("carbon monoxide", "ppm", 0, 10_000);
    private static final Domain HOURS = Domain.of("hours", "h", 0, 24);
    private static final Source DEFINITION = Sources.get("definition");

    /** Recommended mean over eight hours. */
    public static final Sourced NIOSH_EIGHT_HOURS = new Sourced(35, "ppm", Sources.get("carbon-monoxide-niosh-1972"));

    /** Recommended ceiling, not to be passed at any time. */
    public static final Sourced NIOSH_CEILING = new Sourced(200, "ppm", Sources.get("carbon-monoxide-niosh-1972"));

    /** Permissible mean over eight hours. */
    public static final Sourced OSHA_EIGHT_HOURS = new Sourced(50, "ppm", Sources.get("carbon-monoxide-osha"));

    /** Highest mean over a shift that was measured with chain saws in thinning. */
    public static final Sourced MEASURED_SHIFT = new Sourced(31, "ppm", Sources.get("carbon-monoxide-saws-2001"));

    /** Highest peak that was measured with chain saws in thinning, bent or kneeling. */
    public static final Sourced MEASURED_PEAK = new Sourced(1100, "ppm", Sources.get("carbon-monoxide-saws-2001"));

    private CarbonMonoxide() {}

    /**
     * A stretch of time at a concentration.
     *
     * @param ppm concentration, 0 to 10,000
     * @param hours 0 to 24
     */
    public record Stretch(double ppm, double hours) {
        /**
         * Checks the limits.
         *
         * @throws org.woodyield.measure.OutOfDomainException if concentration or hours are outside
         */
        public Stretch {
            PPM.require(ppm);
            HOURS.require(hours);
        }
    }

    /**
     * The mean over eight hours.
     *
     * @param stretches of the day; the rest of it counts as clean air
     * @return {@code (sum of c T) / 8} in ppm
     * @throws org.woodyield.measure.OutOfDomainException if the stretches last more than 24 h
     */
    @Calculation("work.carbon-monoxide")
    public static double eightHourMean(List<Stretch> stretches) {
        requireDay(stretches);
        double sum = 0;
        for (Stretch stretch : stretches) {
            sum = sum + stretch.ppm * stretch.hours;
        }
        return sum / 8;
    }

    /**
     * How {@link #eightHourMean} comes about.
     *
     * @param stretches of the day
     * @return the working, with the same result
     */
    public static Working eightHourMeanWorking(List<Stretch> stretches) {
        requireDay(stretches);
        Working.Builder working =
                Working.of("Carbon monoxide, mean over eight hours").constant("s0", "nothing yet", 0, "", DEFINITION);
        for (int i = 0; i < stretches.size(); i++) {
            int n = i + 1;
            working.given("c" + n, "concentration", stretches.get(i).ppm, "ppm")
                    .given("T" + n, "time of it", stretches.get(i).hours, "h")
                    .step("s" + n, "sum so far", "s" + i + " + c" + n + " * T" + n, "ppm h", DEFINITION);
        }
        return working.step("m", "mean over eight hours", "s" + stretches.size() + " / 8", "ppm", DEFINITION)
                .build();
    }

    private static void requireDay(List<Stretch> stretches) {
        double sum = 0;
        for (Stretch stretch : stretches) {
            sum += stretch.hours;
        }
        Domain.of("hours of all stretches", "h", 0, 24).require(sum);
    }
}
