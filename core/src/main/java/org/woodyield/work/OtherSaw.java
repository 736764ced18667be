package org.woodyield.work;

import java.util.List;
import org.woodyield.measure.BoardFeet;

/**
 * Another saw that saws the logs of a job for the same lumber.
 *
 * @param name of the saw
 * @param inputs work and prices with it; the price of lumber is that of a board foot of what has to be bought beside
 * @param cost what sawing the logs with it costs, spread over the usable lumber of the job
 * @param usable board feet of all its lumber
 * @param things what that lumber is
 * @param bought board feet that have to be bought beside, zero or more
 * @param more what it makes beyond the lumber of the job, as board feet of the mean price of that, zero or more
 */
public record OtherSaw(
        String name,
        WorkInputs inputs,
        JobCost cost,
        BoardFeet usable,
        List<SupplyWays.Thing> things,
        double bought,
        double more) {
    /** Keeps an immutable copy. */
    public OtherSaw {
        things = List.copyOf(things);
    }
}
