package org.woodyield.sawing;

import org.woodyield.measure.Length;

/**
 * How the log lies under the saw.
 *
 * <p>The log is turned about its axis and then tipped: seen along the saw's travel, the axis stands at height 0 at
 * mid-length and rises or falls toward the large end. Sections are taken as standing at right angles to the travel; for
 * the slopes of logs (about 1 in 100) that moves a corner by less than the square of the slope, 1 in 10 000.
 *
 * @param lay what is parallel to the saw's travel
 * @param turnDegrees turn of the log, counter-clockwise seen from the small end; at 0 the long axis of the section lies
 *     level
 * @param largeEndLift how much higher the axis stands at the large end than at the small end; below zero if lower
 */
public record Frame(Lay lay, double turnDegrees, Length largeEndLift) {

    /** What is parallel to the saw's travel. */
    public enum Lay {
        /** The axis: the small end is shimmed by half the taper on level bunks. */
        AXIS("parallel to the axis"),
        /** The bark on the upper face: full taper goes to the lower one. */
        BARK_ABOVE("parallel to the bark on the upper face"),
        /** The bark on the lower face: the log lies on level bunks without a shim. */
        BARK_BELOW("parallel to the bark on the lower face"),
        /** A given lift of the large end. */
        OFFSET("offset by a given distance");

        private final String words;

        Lay(String words) {
            this.words = words;
        }

        /**
         * The lay in words.
         *
         * @return a short phrase
         */
        public String words() {
            return words;
        }
    }

    /**
     * Refuses a turn that is not a number.
     *
     * @throws org.woodyield.measure.OutOfDomainException if the turn is not from -360 to 360 degrees
     */
    public Frame {
        org.woodyield.measure.Domain.of("turn", "degrees", -360, 360).require(turnDegrees);
    }
}
