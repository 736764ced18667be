package org.woodyield.lumber;

import java.util.Optional;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;

/**
 * A piece that is wanted: its finished size, how it is finished, and how many.
 *
 * @param id the user's name for it
 * @param label what is shown, for example {@code 2x4 8 ft, dressed}
 * @param thickness finished, at the final moisture
 * @param width finished, at the final moisture, no less than the thickness
 * @param length finished
 * @param nominal the nominal size under which it is counted, if it has one
 * @param dressed whether it is planed; a piece that is not stays rough from the saw
 * @param finalMoisturePercent moisture in use, oven-dry basis, 4 to 200 %
 * @param quantity how many, 1 to 100 000
 */
public record Product(
        String id,
        String label,
        Length thickness,
        Length width,
        Length length,
        Optional<NominalSize> nominal,
        boolean dressed,
        double finalMoisturePercent,
        int quantity) {

    /** Moisture above which PS 20 calls lumber green. */
    public static final double DRY_LIMIT_PERCENT = 19;

    private static final Domain MOISTURE = Domain.of("final moisture", "%", 4, 200);
    private static final Domain QUANTITY = Domain.of("quantity", "", 1, 100_000);

    /**
     * Checks that this can be a piece.
     *
     * @throws OutOfDomainException if the id is blank, a dimension, the moisture or the quantity is outside, or thickness
     *     and width are crossed
     */
    public Product {
        if (id.isBlank()) {
            throw new OutOfDomainException("id", "empty", "", "a name for the piece", "");
        }
        within("thickness", thickness, 600);
        within("width", width, 800);
        within("length", length, 20_000);
        if (width.compareTo(thickness) < 0) {
            throw new OutOfDomainException(
                    "width", width.toString(), "", "no less than the thickness, " + thickness, "change the two");
        }
        MOISTURE.require(finalMoisturePercent);
        QUANTITY.require(quantity);
    }

    /**
     * A piece by nominal size. Dressed, it has the size of PS 20, dry up to 19 % moisture and green above. Rough, it has the
     * rough size of Tennessee's rule in the same state.
     *
     * @param id the user's name for it
     * @param nominal the nominal size
     * @param length the length
     * @param dressed whether it is planed
     * @param finalMoisturePercent moisture in use, oven-dry basis
     * @param quantity how many
     * @return the piece
     * @throws OutOfDomainException if the tables have no such size, or as the constructor
     */
    public static Product ofNominal(
            String id, NominalSize nominal, Length length, boolean dressed, double finalMoisturePercent, int quantity) {
        SoftwoodSizes.Condition condition = MOISTURE.require(finalMoisturePercent) <= DRY_LIMIT_PERCENT
                ? SoftwoodSizes.Condition.DRY
                : SoftwoodSizes.Condition.GREEN;
        SoftwoodSizes.Size size =
                dressed ? SoftwoodSizes.dressed(nominal, condition) : SoftwoodSizes.rough(nominal, condition);
        String label = nominal + ", " + length + (dressed ? ", dressed" : ", rough");
        return new Product(
                id,
                label,
                size.thickness(),
                size.width(),
                length,
                Optional.of(nominal),
                dressed,
                finalMoisturePercent,
                quantity);
    }

    /**
     * A piece by exact finished size.
     *
     * @param id the user's name for it
     * @param thickness finished
     * @param width finished
     * @param length finished
     * @param dressed whether it is planed
     * @param finalMoisturePercent moisture in use, oven-dry basis
     * @param quantity how many
     * @return the piece
     * @throws OutOfDomainException as the constructor
     */
    public static Product ofExact(
            String id,
            Length thickness,
            Length width,
            Length length,
            boolean dressed,
            double finalMoisturePercent,
            int quantity) {
        String label = thickness + " x " + width + ", " + length + (dressed ? ", dressed" : ", rough");
        return new Product(
                id, label, thickness, width, length, Optional.empty(), dressed, finalMoisturePercent, quantity);
    }

    /**
     * Board feet of one piece: by its nominal size if it has one, otherwise by the size that it measures.
     *
     * @return a tally
     */
    public BoardFeet tallyPerPiece() {
        return nominal.map(size -> BoardMeasure.tally(size, length))
                .orElseGet(() -> BoardMeasure.tallyOfActualSize(thickness, width, length));
    }

    /**
     * The solid volume of one piece as finished.
     *
     * @return the volume
     */
    public Volume finishedVolume() {
        return Volume.ofPiece(thickness, width, length);
    }

    static void within(String parameter, Length value, long greatestMillimetres) {
        Length greatest = Length.millimetres(greatestMillimetres);
        if (!value.isPositive() || value.compareTo(greatest) > 0) {
            throw new OutOfDomainException(
                    parameter, value.toString(), "", "above 0, up to " + greatest.inMillimetres(0), "check the unit");
        }
    }
}
