package org.woodyield.sawing;

import org.woodyield.measure.Length;

/**
 * One pass of the saw.
 *
 * @param number from 1 in the order of sawing
 * @param stage what it is for
 * @param turnDegrees turn of the log (of the cant, a quarter more) for this pass
 * @param setting on the saw's scale: for a saw that rides the previous face the thickness it leaves on the piece; for one
 *     over a bed the height of the line over the bed
 * @param settingFrom what the setting is measured from, in words
 * @param faceHeight where the finished face stands above the axis (for a cant and an edge: to the right of the axis, or
 *     above it where the piece came from a cant); below zero on the other side
 * @param heightOverBed of the lower side of the kerf over the bed that carries the log, cant or flitch
 * @param kerf the slot in the end view, reaching beyond the bark where nothing bounds it
 * @param kerfSide on which side of the line the kerf lies
 * @param widthSmallEnd width of the cut over the bark at the small end
 * @param widthLargeEnd width of the cut over the bark at the large end
 * @param widest greatest width of the cut over the bark anywhere along the pass
 * @param length of the pass
 * @param areaSquareMetres area of the cut over the bark
 * @param cost by the pass costs of the search, laying the guide included where the guide leads it, turning and clamping
 *     before the first pass of log and cant, and loading before the first of the log
 * @param comesOff what comes off, in words
 * @param remains what remains, in words
 */
public record SawPass(
        int number,
        Stage stage,
        double turnDegrees,
        Length setting,
        String settingFrom,
        Length faceHeight,
        Length heightOverBed,
        Rectangle kerf,
        KerfSide kerfSide,
        Length widthSmallEnd,
        Length widthLargeEnd,
        Length widest,
        Length length,
        double areaSquareMetres,
        double cost,
        String comesOff,
        String remains) {

    static final String GUIDE = "the guide";

    /**
     * Whether the guide leads it and no face that was sawn before; the line of the guide stands at {@link #faceHeight}.
     *
     * @return false for a saw over a bed
     */
    public boolean byGuide() {
        return settingFrom.equals(GUIDE);
    }

    /** On which side of the line that is set the kerf lies, seen with the saw above. */
    public enum KerfSide {
        /** Above the line: the line is the face of what remains on the bed. */
        ABOVE,
        /** Below the line: the line is the lower face of what comes off. */
        BELOW
    }
}
