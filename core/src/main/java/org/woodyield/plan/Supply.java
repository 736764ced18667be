package org.woodyield.plan;

import org.woodyield.measure.BoardFeet;

/**
 * What is wanted beside what the logs give.
 *
 * @param wantedId what is wanted
 * @param label what it is in words
 * @param unit {@code pieces} or {@code m2}
 * @param wanted how much the job needs in the end
 * @param toSaw how much has to be sawn, waste of an area included
 * @param sawn how much the plan saws
 * @param pieces how many pieces that is, which an area does not tell
 * @param tally board feet of them by tally
 */
public record Supply(
        String wantedId,
        String label,
        String unit,
        double wanted,
        double toSaw,
        double sawn,
        int pieces,
        BoardFeet tally) {

    /**
     * What is lacking.
     *
     * @return zero where enough is sawn
     */
    public double shortage() {
        return Math.max(0, toSaw - sawn);
    }

    /**
     * What is sawn beyond the need.
     *
     * @return zero where nothing is
     */
    public double surplus() {
        return Math.max(0, sawn - toSaw);
    }

    /**
     * Whether enough is sawn.
     *
     * @return true if so
     */
    public boolean met() {
        return sawn >= toSaw;
    }
}
