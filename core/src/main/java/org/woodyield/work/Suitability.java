package org.woodyield.work;

import org.woodyield.measure.Length;
import org.woodyield.working.Working;

/**
 * Whether a saw pulls a width of cut in a wood. It does where it holds the slowest feed at which sawing is worth while; slower, an
 * edge rubs more than it cuts.
 *
 * @param width of the cut
 * @param feedMetresPerMinute the feed that it holds
 * @param feedLimited whether carriage, sawyer or teeth hold the feed back, and not the power
 * @param margin rated power over the least that is needed; below 1 it does not pull the cut
 * @param leastKilowatts rated power for the slowest feed that is worth while
 * @param greatestKilowatts rated power beyond which the feed no longer rises in this width
 * @param working of the least power
 */
public record Suitability(
        Length width,
        double feedMetresPerMinute,
        boolean feedLimited,
        double margin,
        double leastKilowatts,
        double greatestKilowatts,
        Working working) {

    /**
     * Asks for one width.
     *
     * @param rate how fast the saw rips the wood
     * @param width of the cut, bark included where the saw must pass it
     * @return what the saw makes of it
     * @throws org.woodyield.measure.OutOfDomainException if the width is not above 0, up to 4 m, or no slowest feed is given
     */
    public static Suitability of(CuttingRate rate, Length width) {
        double least = rate.inputs().get(WorkInput.LEAST_FEED);
        double feed = rate.feedCentimetresPerSecond(width);
        double needed = rate.ratedKilowatts(width, least);
        return new Suitability(
                width,
                feed * 60 / 100,
                feed >= rate.feedCapCentimetresPerSecond(),
                rate.inputs().get(WorkInput.RATED_POWER) / needed,
                needed,
                rate.ratedKilowatts(width, rate.feedCapCentimetresPerSecond() * 60 / 100),
                rate.ratedKilowattsWorking(width, least));
    }

    /**
     * Whether the saw pulls the cut.
     *
     * @return true where the margin is 1 or more
     */
    public boolean pulls() {
        return margin >= 1;
    }
}
