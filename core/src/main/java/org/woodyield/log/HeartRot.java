package org.woodyield.log;

import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * Rot around the pith, taken as a cylinder that no piece may touch: its diameter is the greatest that is seen or expected.
 * A diameter of zero is no rot.
 *
 * @param diameter zero or more
 * @param from where it begins, from the small end
 * @param to where it ends, from the small end
 */
public record HeartRot(Length diameter, Length from, Length to) {

    /** Sound to the pith. */
    public static final HeartRot NONE = new HeartRot(Length.ZERO, Length.ZERO, Length.ZERO);

    /**
     * Refuses what is no cylinder.
     *
     * @throws OutOfDomainException if a length is below zero, or the end does not lie beyond the beginning
     */
    public HeartRot {
        notBelow("rot diameter", diameter);
        notBelow("beginning of the rot", from);
        if (diameter.isPositive() && to.compareTo(from) <= 0) {
            throw new OutOfDomainException(
                    "end of the rot",
                    to.toString(),
                    "",
                    "beyond its beginning, " + from,
                    "give both from the small end, the nearer one first");
        }
    }

    /**
     * Rot from end to end.
     *
     * @param diameter zero or more
     * @param length of the log
     * @return the rot
     */
    public static HeartRot throughout(Length diameter, Length length) {
        return new HeartRot(diameter, Length.ZERO, length);
    }

    private static void notBelow(String parameter, Length value) {
        if (value.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException(parameter, value.toString(), "", "0 or more", "");
        }
    }
}
