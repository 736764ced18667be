package org.woodyield.wood;

import java.util.Map;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Movement of dry wood by the dimensional-change coefficients of Wood Handbook Table 13-5: change = D C (M2 - M1), D the
 * size at M1, both moistures 6 to 14 %. The coefficient is a share of the size at 10 % moisture, so it is a number of
 * another base than the shrinkage from green and the two are not mixed.
 *
 * @see org.woodyield.source.Sources sources wood-handbook-13-2 and wood-handbook-13-5
 */
public final class DimensionalChange {

    /** The two directions across the grain. */
    public enum Direction {
        /** Across the rings. */
        RADIAL,
        /** Along the rings. */
        TANGENTIAL
    }

    private static final Domain MOISTURE = new Domain(
            "moisture", "%", 6, 14, "the coefficients hold in this range only; use shrinkage from green outside it");
    private static final Domain SIZE = Domain.positive("size", "");
    private static final PublishedTable TABLE = PublishedTable.read(DimensionalChange.class, "coefficients_13_5.csv");
    private static final Map<String, PublishedTable.Row> ROWS = SpeciesTables.byId(TABLE, "table_13_5");

    private DimensionalChange() {}

    /**
     * The printed coefficient of a species.
     *
     * @param species the species
     * @param direction across or along the rings
     * @return change for each percent of moisture as a share of the size; empty where Table 13-5 was not read
     */
    public static Optional<Sourced> coefficient(Species species, Direction direction) {
        return Optional.ofNullable(ROWS.get(species.id()))
                .map(row ->
                        new Sourced(row.number(direction == Direction.RADIAL ? "CR" : "CT"), "per %", TABLE.source()));
    }

    /**
     * The coefficient that follows from shrinkage to oven-dry on the straight line from 30 %: C = S / (3000 - 20 S).
     *
     * @param shrinkagePercent shrinkage from green to oven-dry, percent of the green size
     * @return change for each percent of moisture as a share of the size at 10 %
     * @throws OutOfDomainException if the shrinkage is not 0 to 30 %
     */
    @Calculation("wood.coefficient-from-shrinkage")
    public static double coefficientFromShrinkage(double shrinkagePercent) {
        Domain.of("shrinkage to oven-dry", "%", 0, 30).require(shrinkagePercent);
        return shrinkagePercent / (3000 - 20 * shrinkagePercent);
    }

    /**
     * How {@link #coefficientFromShrinkage} came about.
     *
     * @param shrinkage shrinkage from green to oven-dry with its source
     * @return the working; its value equals the coefficient bit for bit
     * @throws OutOfDomainException if the shrinkage is not 0 to 30 %
     */
    public static Working coefficientFromShrinkageWorking(Sourced shrinkage) {
        Domain.of("shrinkage to oven-dry", "%", 0, 30).require(shrinkage.value());
        return Working.of("Dimensional-change coefficient from shrinkage to oven-dry")
                .constant("S", "shrinkage from green to oven-dry", shrinkage.value(), "%", shrinkage.source())
                .step(
                        "C",
                        "change for each percent, base 10 %",
                        "S / (3000 - 20 * S)",
                        "per %",
                        Sources.get("definition"))
                .note("The straight line from 30 % moisture, seen from 10 %: the size there is 1 - 2 S / 300 of green.")
                .build();
    }

    /**
     * The change of a size between two moisture contents.
     *
     * @param size the size at the first moisture, in any unit
     * @param coefficient change for each percent, as from {@link #coefficient}
     * @param fromPercent moisture at which the size was taken, 6 to 14 %
     * @param toPercent moisture that it comes to, 6 to 14 %
     * @return {@code size * coefficient * (to - from)} in the unit of the size; above zero when it swells
     * @throws OutOfDomainException if a moisture is outside 6 to 14 %, or the size or the coefficient is not above zero
     */
    @Calculation("wood.dimensional-change")
    public static double change(double size, double coefficient, double fromPercent, double toPercent) {
        require(size, coefficient, fromPercent, toPercent);
        return size * (coefficient * (toPercent - fromPercent));
    }

    /**
     * How {@link #change} came about.
     *
     * @param size the size at the first moisture
     * @param unit the unit of the size
     * @param coefficient change for each percent, with its source
     * @param fromPercent moisture at which the size was taken, 6 to 14 %
     * @param toPercent moisture that it comes to, 6 to 14 %
     * @return the working; its value equals the change bit for bit
     * @throws OutOfDomainException as {@link #change}
     */
    public static Working changeWorking(
            double size, String unit, Sourced coefficient, double fromPercent, double toPercent) {
        require(size, coefficient.value(), fromPercent, toPercent);
        Source source = Sources.get("wood-handbook-13-2");
        return Working.of("Movement between two moisture contents by dimensional-change coefficient")
                .given("D", "size at the first moisture", size, unit)
                .given("M_1", "first moisture", fromPercent, "%")
                .given("M_2", "second moisture", toPercent, "%")
                .constant("C", "change for each percent", coefficient.value(), "per %", coefficient.source())
                .step("change", "change of the size", "D * (C * (M_2 - M_1))", unit, source)
                .note("Based on the size at 10 % moisture; the handbook says the true change is about 5 % more.")
                .build();
    }

    private static void require(double size, double coefficient, double fromPercent, double toPercent) {
        SIZE.require(size);
        Domain.of("coefficient", "per %", Double.MIN_VALUE, 0.01).require(coefficient);
        MOISTURE.require(fromPercent);
        MOISTURE.require(toPercent);
    }
}
