package org.woodyield.sawing;

import org.woodyield.measure.Domain;

/**
 * Wane allowed along an edge of a piece: the corner may be missing up to a share of the thickness and of the width at
 * once. Every edge may have it, so the wane of two corners meets in the middle of a face: a share above one half counts as
 * one half.
 *
 * @param thicknessShare of the thickness, 0 to 1
 * @param widthShare of the width, 0 to 1
 */
public record Wane(double thicknessShare, double widthShare) {

    private static final Domain THICKNESS = Domain.of("wane, share of the thickness", "", 0, 1);
    private static final Domain WIDTH = Domain.of("wane, share of the width", "", 0, 1);

    /** Square edges only. */
    public static final Wane NONE = new Wane(0, 0);

    /**
     * Refuses what is not a share.
     *
     * @throws org.woodyield.measure.OutOfDomainException if a share is below 0, above 1 or not a number
     */
    public Wane {
        THICKNESS.require(thicknessShare);
        WIDTH.require(widthShare);
    }

    /** The share of the thickness at which the narrow face must be wood. */
    double thicknessInset() {
        return Math.min(thicknessShare, 0.5);
    }

    /** The share of the width at which the wide face must be wood. */
    double widthInset() {
        return Math.min(widthShare, 0.5);
    }
}
