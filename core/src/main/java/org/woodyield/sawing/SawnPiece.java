package org.woodyield.sawing;

import org.woodyield.measure.Length;

/**
 * A piece of lumber in its place in the log.
 *
 * @param number from 1 in the order in which the pieces come free
 * @param optionId the size that it is
 * @param thickness as sawn: the green target, rounded up to what the saw can be set to
 * @param width as sawn, likewise
 * @param length as trimmed
 * @param faces its four faces in the end view
 * @param start its end nearer the small end, from the small end
 * @param end its other end, from the small end
 * @param fromCant whether it comes from a cant; its thickness is then horizontal in the end view
 * @param worth what it is worth
 * @param unedged whether it keeps its bark edges: its faces then reach beyond the bark to either side, and its width is
 *     the one that counts
 */
public record SawnPiece(
        int number,
        String optionId,
        Length thickness,
        Length width,
        Length length,
        Rectangle faces,
        Length start,
        Length end,
        boolean fromCant,
        double worth,
        boolean unedged) {

    /**
     * A piece with sawn edges.
     *
     * @param number from 1 in the order in which the pieces come free
     * @param optionId the size that it is
     * @param thickness as sawn
     * @param width as sawn
     * @param length as trimmed
     * @param faces its four faces in the end view
     * @param start its end nearer the small end, from the small end
     * @param end its other end, from the small end
     * @param fromCant whether it comes from a cant
     * @param worth what it is worth
     */
    public SawnPiece(
            int number,
            String optionId,
            Length thickness,
            Length width,
            Length length,
            Rectangle faces,
            Length start,
            Length end,
            boolean fromCant,
            double worth) {
        this(number, optionId, thickness, width, length, faces, start, end, fromCant, worth, false);
    }
}
