package org.woodyield.work;

/**
 * Where the time goes, in minutes. Refuelling and sharpening are averages by fuel and face cut, not whole stops, so that the
 * parts of logs add up.
 *
 * @param cutting the saw is in the wood
 * @param warmUp idling before passes
 * @param coolDown idling after passes
 * @param setting setting the saw, and the way back
 * @param guide laying the guide for the faces that it leads
 * @param carrying carrying away what passes set free
 * @param turning turning and clamping
 * @param loading bringing log and saw together
 * @param refuelling filling the tank
 * @param sharpening sharpening or changing the edge
 * @param rest hours on site that are none of these: rest, talk, repairs, weather
 */
public record TimeBreakdown(
        double cutting,
        double warmUp,
        double coolDown,
        double setting,
        double guide,
        double carrying,
        double turning,
        double loading,
        double refuelling,
        double sharpening,
        double rest) {

    /** No time at all. */
    public static final TimeBreakdown ZERO = new TimeBreakdown(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /**
     * The sum, part by part.
     *
     * @param other more time
     * @return both together
     */
    public TimeBreakdown plus(TimeBreakdown other) {
        return new TimeBreakdown(
                cutting + other.cutting,
                warmUp + other.warmUp,
                coolDown + other.coolDown,
                setting + other.setting,
                guide + other.guide,
                carrying + other.carrying,
                turning + other.turning,
                loading + other.loading,
                refuelling + other.refuelling,
                sharpening + other.sharpening,
                rest + other.rest);
    }

    /**
     * The minutes of work.
     *
     * @return all parts but the rest
     */
    public double productive() {
        return cutting + warmUp + coolDown + setting + guide + carrying + turning + loading + refuelling + sharpening;
    }

    /**
     * The minutes on site.
     *
     * @return all parts
     */
    public double total() {
        return productive() + rest;
    }

    /**
     * The hours on site.
     *
     * @return {@link #total} / 60
     */
    public double hours() {
        return total() / 60;
    }

    /**
     * The share of the time on site in which the saw really cuts.
     *
     * @return 0 to 1; 0 where there is no time
     */
    public double cuttingShare() {
        double total = total();
        return total > 0 ? cutting / total : 0;
    }

    /**
     * These minutes with the rest that goes with them.
     *
     * @param utilisation productive share of the time on site, above 0, up to 1
     * @return the same work; rest = work x (1 / utilisation - 1)
     */
    TimeBreakdown withRest(double utilisation) {
        return new TimeBreakdown(
                cutting,
                warmUp,
                coolDown,
                setting,
                guide,
                carrying,
                turning,
                loading,
                refuelling,
                sharpening,
                productive() * (1 / utilisation - 1));
    }
}
