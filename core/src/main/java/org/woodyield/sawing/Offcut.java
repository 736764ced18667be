package org.woodyield.sawing;

/**
 * A part of the end view that is no piece and no kerf, over the whole length of the log.
 *
 * @param kind what it is
 * @param place its place, reaching beyond the bark where nothing bounds it
 */
public record Offcut(Kind kind, Rectangle place) {

    /** What falls off beside the pieces. */
    public enum Kind {
        /** A slab: outside the first or the last face, or between two items that lie more than a kerf apart. */
        SLAB,
        /** An edging of a flitch. */
        EDGING
    }
}
