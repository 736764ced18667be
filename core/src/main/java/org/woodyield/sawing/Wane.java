package org.woodyield.sawing;

import org.woodyield.lumber.WaneLimit;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

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

    /**
     * The wane that may be on a green piece which is to finish to a size. The limit is a share of the finished size; it is
     * not widened by what planing takes off the waned faces, so that a piece within it stays within it however it is
     * planed.
     *
     * @param limit what may be missing of the finished size
     * @param finishedThickness above zero
     * @param finishedWidth above zero
     * @param greenThickness as sawn, no less than finished
     * @param greenWidth as sawn, no less than finished
     * @return the wane as shares of the green size, {@code share * finished / green}
     * @throws OutOfDomainException if a size is not above zero or a green one is less than the finished one
     */
    public static Wane within(
            WaneLimit limit, Length finishedThickness, Length finishedWidth, Length greenThickness, Length greenWidth) {
        return new Wane(
                share("thickness", limit.thicknessShare(), finishedThickness, greenThickness),
                share("width", limit.widthShare(), finishedWidth, greenWidth));
    }

    private static double share(String what, double share, Length finished, Length green) {
        if (!finished.isPositive() || green.compareTo(finished) < 0) {
            throw new OutOfDomainException(
                    "green " + what,
                    green.toString(),
                    "",
                    "above zero and no less than finished, " + finished,
                    "change the two");
        }
        return share * (finished.toMetres() / green.toMetres());
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
