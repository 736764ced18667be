package org.woodyield.lumber;

import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * An area to cover with boards of any width and length within limits: sheathing, siding, flooring. A board of finished width
 * w and length l covers (w - overlap) l; the overlap is what is lost to a tongue, a lap or the board beside it.
 *
 * @param id the user's name for it
 * @param label what is shown
 * @param thickness finished, at the final moisture
 * @param squareMetres the area to cover, above 0, up to 100 000
 * @param narrowest least finished width that is accepted, wider than the overlap
 * @param widest greatest finished width
 * @param shortest least length that is accepted
 * @param longest greatest length
 * @param overlap what does not show of each board's width, 0 or more
 * @param dressed whether the boards are planed
 * @param finalMoisturePercent moisture in use, oven-dry basis, 4 to 200 %
 */
public record CoverArea(
        String id,
        String label,
        Length thickness,
        double squareMetres,
        Length narrowest,
        Length widest,
        Length shortest,
        Length longest,
        Length overlap,
        boolean dressed,
        double finalMoisturePercent) {

    private static final Domain AREA =
            new Domain("area", "m2", Double.MIN_VALUE, 100_000, "check the unit of the area");
    private static final Domain MOISTURE = Domain.of("final moisture", "%", 4, 200);

    /**
     * Checks that this can be covered.
     *
     * @throws OutOfDomainException if the id is blank, a value is outside or a range is crossed
     */
    public CoverArea {
        if (id.isBlank()) {
            throw new OutOfDomainException("id", "empty", "", "a name for the area", "");
        }
        Product.within("thickness", thickness, 100);
        Product.within("widest board", widest, 800);
        Product.within("longest board", longest, 20_000);
        Product.within("shortest board", shortest, 20_000);
        AREA.require(squareMetres);
        MOISTURE.require(finalMoisturePercent);
        if (overlap.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("overlap", overlap.toString(), "", "0 or more", "");
        }
        ordered("narrowest board", narrowest, "wider than the overlap, " + overlap, narrowest.compareTo(overlap) > 0);
        ordered("widest board", widest, "no less than the narrowest, " + narrowest, widest.compareTo(narrowest) >= 0);
        ordered("longest board", longest, "no less than the shortest, " + shortest, longest.compareTo(shortest) >= 0);
    }

    /**
     * Whether a board may be used.
     *
     * @param finishedWidth its width as finished
     * @param length its length
     * @return true within the limits
     */
    public boolean accepts(Length finishedWidth, Length length) {
        return finishedWidth.compareTo(narrowest) >= 0
                && finishedWidth.compareTo(widest) <= 0
                && length.compareTo(shortest) >= 0
                && length.compareTo(longest) <= 0;
    }

    /**
     * What a board covers.
     *
     * @param finishedWidth its width as finished, wider than the overlap
     * @param length its length
     * @return square metres
     * @throws OutOfDomainException if the board is not wider than the overlap
     */
    public double coveredSquareMetres(Length finishedWidth, Length length) {
        ordered("width", finishedWidth, "wider than the overlap, " + overlap, finishedWidth.compareTo(overlap) > 0);
        return finishedWidth.minus(overlap).toMetres() * length.toMetres();
    }

    /**
     * Board feet of a board of this thickness by the size that it measures.
     *
     * @param finishedWidth its width as finished
     * @param length its length
     * @return a tally
     */
    public BoardFeet tallyPerPiece(Length finishedWidth, Length length) {
        return BoardMeasure.tallyOfActualSize(thickness, finishedWidth, length);
    }

    private static void ordered(String parameter, Length value, String limits, boolean holds) {
        if (!holds) {
            throw new OutOfDomainException(parameter, value.toString(), "", limits, "");
        }
    }
}
