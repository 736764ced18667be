package org.woodyield.lumber;

import java.util.List;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * Boards that keep their natural edges, for tables and benches: as wide as the log is, but no less than a least width. A wider one
 * counts by its width, up to a greatest one.
 *
 * @param id the user's name for them
 * @param thickness measured, at the final moisture
 * @param leastWidth inside bark, at the final moisture
 * @param greatestWidth what is wider counts like one so wide; the least width again if all count alike
 * @param counts where its width is measured
 * @param lengths trimmed lengths that will do, at least one, shortest first
 * @param quantity how many, 1 to 100 000
 * @param wood which wood will do
 * @param surface how the faces are finished
 * @param moisturePercent final moisture, oven-dry basis, 0 to 200 %
 */
public record NaturalEdge(
        String id,
        Length thickness,
        Length leastWidth,
        Length greatestWidth,
        Counts counts,
        List<Length> lengths,
        int quantity,
        Wood wood,
        Surface surface,
        double moisturePercent) {

    /** Which of its widths counts. */
    public enum Counts {
        /** That of the narrowest place of the narrower face. */
        NARROWEST,
        /** The mean along the board of both faces. */
        MEAN
    }

    private static final Length GREATEST = Length.millimetres(1000);

    /**
     * Keeps an immutable copy of the lengths.
     *
     * @throws OutOfDomainException if the id is blank, a measure, the quantity or the moisture is outside, the least width is
     *     less than the thickness or more than the greatest, there is no length or they are not in order
     */
    public NaturalEdge {
        Product.requireName(id);
        Product.within("thickness of " + id, thickness, GREATEST);
        Product.within("least width of " + id, leastWidth, GREATEST);
        if (leastWidth.compareTo(thickness) < 0) {
            throw new OutOfDomainException(
                    "least width of " + id, leastWidth.toString(), "", "the thickness or more, " + thickness, "");
        }
        Product.within("greatest width of " + id, greatestWidth, GREATEST);
        if (greatestWidth.compareTo(leastWidth) < 0) {
            throw new OutOfDomainException(
                    "greatest width of " + id,
                    greatestWidth.toString(),
                    "",
                    "the least width or more, " + leastWidth,
                    "");
        }
        Domain.of("quantity", "", 1, 100_000).require(quantity);
        Product.requireMoisture(moisturePercent);
        lengths = Product.anyOf(id, lengths);
    }

    /**
     * Boards of which a wider one counts no more than one of the least width, at its narrowest place.
     *
     * @param id the user's name for them
     * @param thickness measured, at the final moisture
     * @param leastWidth inside bark, at the final moisture
     * @param lengths trimmed lengths that will do, at least one, shortest first
     * @param quantity how many, 1 to 100 000
     * @param wood which wood will do
     * @param surface how the faces are finished
     * @param moisturePercent final moisture, oven-dry basis, 0 to 200 %
     * @throws OutOfDomainException if there can be no such boards
     */
    public NaturalEdge(
            String id,
            Length thickness,
            Length leastWidth,
            List<Length> lengths,
            int quantity,
            Wood wood,
            Surface surface,
            double moisturePercent) {
        this(
                id,
                thickness,
                leastWidth,
                leastWidth,
                Counts.NARROWEST,
                lengths,
                quantity,
                wood,
                surface,
                moisturePercent);
    }

    /**
     * The width of a board that counts.
     *
     * @param width as it counts, at the final moisture
     * @return no less than the least width and no more than the greatest
     */
    public Length counted(Length width) {
        return Length.max(leastWidth, Length.min(greatestWidth, width));
    }

    /**
     * Board feet of a board by its thickness, no less than an inch, and the width that counts.
     *
     * @param width as it counts, at the final moisture
     * @param length trimmed length
     * @return a tally
     */
    public BoardFeet tally(Length width, Length length) {
        return BoardMeasure.tallyOfActualSize(Length.max(thickness, Length.inches(1)), counted(width), length);
    }
}
