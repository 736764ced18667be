package org.woodyield.sawing;

import org.woodyield.measure.Length;

/**
 * A rectangle in the end view of a log in its frame, seen from the small end: horizontal positions grow to the right,
 * heights upward, both from the axis at mid-length.
 *
 * @param left left side
 * @param right right side, beyond the left one
 * @param bottom lower side
 * @param top upper side, above the lower one
 */
public record Rectangle(Length left, Length right, Length bottom, Length top) {

    /**
     * Refuses crossed sides.
     *
     * @throws IllegalArgumentException if a side is not beyond the opposite one
     */
    public Rectangle {
        if (left.compareTo(right) >= 0 || bottom.compareTo(top) >= 0) {
            throw new IllegalArgumentException(
                    "crossed sides: " + left + " to " + right + ", " + bottom + " to " + top);
        }
    }

    /**
     * From left to right.
     *
     * @return above zero
     */
    public Length width() {
        return right.minus(left);
    }

    /**
     * From bottom to top.
     *
     * @return above zero
     */
    public Length height() {
        return top.minus(bottom);
    }
}
