package org.woodyield.lumber;

import java.util.List;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * Boards that keep their natural edges, for tables and benches: as wide as the log is, but no less than a least width at
 * the narrowest place of the narrower face. A wider one counts like one of the least width.
 *
 * @param id the user's name for them
 * @param thickness measured, at the final moisture
 * @param leastWidth inside bark, at the final moisture
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
        List<Length> lengths,
        int quantity,
        Wood wood,
        Surface surface,
        double moisturePercent) {

    private static final Length GREATEST = Length.millimetres(1000);

    /**
     * Keeps an immutable copy of the lengths.
     *
     * @throws OutOfDomainException if the id is blank, a measure, the quantity or the moisture is outside, the least width is
     *     less than the thickness, there is no length or they are not in order
     */
    public NaturalEdge {
        Product.requireName(id);
        Product.within("thickness of " + id, thickness, GREATEST);
        Product.within("least width of " + id, leastWidth, GREATEST);
        if (leastWidth.compareTo(thickness) < 0) {
            throw new OutOfDomainException(
                    "least width of " + id, leastWidth.toString(), "", "the thickness or more, " + thickness, "");
        }
        Domain.of("quantity", "", 1, 100_000).require(quantity);
        Product.requireMoisture(moisturePercent);
        lengths = Product.anyOf(id, lengths);
    }

    /**
     * Board feet of a board by its thickness, no less than an inch, and the least width, whatever its real one is.
     *
     * @param length trimmed length
     * @return a tally
     */
    public BoardFeet tally(Length length) {
        return BoardMeasure.tallyOfActualSize(Length.max(thickness, Length.inches(1)), leastWidth, length);
    }
}
