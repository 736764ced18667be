package org.woodyield.lumber;

import java.util.List;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * An area to be covered with boards of random widths and of any of some lengths.
 *
 * @param id the user's name for it
 * @param squareMetres to be covered
 * @param nominalThickness whether the thickness is a nominal one
 * @param thickness of the boards, nominal or measured at the final moisture
 * @param leastWidth of a board at the final moisture, overlap included
 * @param greatestWidth of a board at the final moisture, overlap included
 * @param overlap the part of each board's width that the next one covers; less than the least width
 * @param lengths trimmed lengths that will do, at least one, shortest first
 * @param wastePercent added for what is cut off and thrown away when the boards are put up
 * @param wood which wood will do
 * @param surface how they are finished
 * @param moisturePercent final moisture, oven-dry basis
 */
public record CoverArea(
        String id,
        double squareMetres,
        boolean nominalThickness,
        Length thickness,
        Length leastWidth,
        Length greatestWidth,
        Length overlap,
        List<Length> lengths,
        double wastePercent,
        Wood wood,
        Surface surface,
        double moisturePercent) {

    private static final Length THICKEST = Length.millimetres(1000);
    private static final double SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

    /**
     * Keeps an immutable copy of the lengths.
     *
     * @throws OutOfDomainException if the id is blank, the area is not above zero, a length, the waste or the moisture is
     *     outside, there is no length or they are not in order, the widths are crossed, or the overlap is below zero or
     *     takes the whole of the least width
     */
    public CoverArea {
        Product.requireName(id);
        Domain.of("area of " + id, "m2", Double.MIN_VALUE, 100_000).require(squareMetres);
        Domain.of("waste of " + id, "%", 0, 100).require(wastePercent);
        Product.requireMoisture(moisturePercent);
        Product.within("thickness of " + id, thickness, THICKEST);
        Product.within("greatest width of " + id, greatestWidth, THICKEST);
        lengths = Product.anyOf(id, lengths);
        if (overlap.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("overlap of " + id, overlap.toString(), "", "0 or more", "");
        }
        if (greatestWidth.compareTo(leastWidth) < 0) {
            throw new OutOfDomainException(
                    "greatest width of " + id, greatestWidth.toString(), "", leastWidth + " or more", "");
        }
        if (overlap.compareTo(leastWidth) >= 0) {
            throw new OutOfDomainException("overlap of " + id, overlap.toString(), "", "less than " + leastWidth, "");
        }
    }

    /**
     * What the boards measure in thickness when they are finished.
     *
     * @return the thickness
     * @throws OutOfDomainException if it is a nominal one that the tables do not have
     */
    public Length finishedThickness() {
        // Any width does: only the thickness is looked up.
        Length width = Length.max(thickness, Length.inches(6));
        return new Product.Size(nominalThickness, thickness, width)
                .finished(surface)
                .thickness();
    }

    /**
     * The thickness under which the boards are counted: the nominal one, or what they measure, but no less than an inch.
     *
     * @return the thickness
     */
    public Length tallyThickness() {
        return nominalThickness ? thickness : Length.max(thickness, Length.inches(1));
    }

    /**
     * Whether a board may be used.
     *
     * @param width its width at the final moisture
     * @param length its length
     * @return true if the width is within the limits and one of the lengths can be cut from the board
     */
    public boolean accepts(Length width, Length length) {
        return width.compareTo(leastWidth) >= 0
                && width.compareTo(greatestWidth) <= 0
                && length.compareTo(lengths.get(0)) >= 0;
    }

    /**
     * The area that a board covers: its width less the overlap, times its length.
     *
     * @param width a width at the final moisture, more than the overlap
     * @param length its length
     * @return square metres
     * @throws OutOfDomainException if the board is not wider than the overlap or has no length
     */
    public double coveredBy(Length width, Length length) {
        if (width.compareTo(overlap) <= 0) {
            throw new OutOfDomainException("width", width.toString(), "", "more than the overlap, " + overlap, "");
        }
        Product.within("length", length, Product.LONGEST);
        return width.minus(overlap).toMetres() * length.toMetres();
    }

    /**
     * The board feet to have for the whole area, waste included: {@code A * (1 + p / 100) * w / (w - o) * T}, with A in
     * square feet and the widths in inches. With boards of many widths it is exact for the mean width of equally long
     * boards, as each board loses the same overlap.
     *
     * @param meanWidth the mean width of the boards, from the least to the greatest width
     * @return board feet by the {@link #tallyThickness}
     * @throws OutOfDomainException if the mean width is outside
     */
    @Calculation("lumber.cover-board-feet")
    public double boardFeetFor(Length meanWidth) {
        double area = squareMetres / SQUARE_METRES_PER_SQUARE_FOOT;
        double width = meanWidth(meanWidth);
        return area
                * (1 + wastePercent / 100)
                * width
                / (width - overlap.toInches())
                * tallyThickness().toInches();
    }

    /**
     * How {@link #boardFeetFor} came about.
     *
     * @param meanWidth the mean width of the boards, from the least to the greatest width
     * @return the working; its value equals the board feet bit for bit
     * @throws OutOfDomainException if the mean width is outside
     */
    public Working boardFeetForWorking(Length meanWidth) {
        Source definition = Sources.get("definition");
        return Working.of("Board feet to cover an area")
                .given("S", "area", squareMetres, "m2")
                .given("p", "waste", wastePercent, "%")
                .given("w", "mean width of the boards", meanWidth(meanWidth), "in")
                .given("o", "overlap", overlap.toInches(), "in")
                .given("T", "thickness counted", tallyThickness().toInches(), "in")
                .step("A", "area", "S / 0.09290304", "ft2", Sources.get("international-inch"))
                .step("bf", "board feet", "A * (1 + p / 100) * w / (w - o) * T", "bf", definition)
                .note("Each board loses the overlap once, so narrow boards take more board feet than wide ones.")
                .build();
    }

    private double meanWidth(Length meanWidth) {
        if (meanWidth.compareTo(leastWidth) < 0 || meanWidth.compareTo(greatestWidth) > 0) {
            throw new OutOfDomainException(
                    "mean width", meanWidth.toString(), "", leastWidth + " to " + greatestWidth, "");
        }
        return meanWidth.toInches();
    }
}
