package org.woodyield.wood;

import java.util.Map;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How long lumber takes to dry in the open from green to about 20 % moisture: a range by species for 1-inch lumber, carried
 * to another thickness by a power of it.
 *
 * <p>The range is wide because the season decides: the short end is a stack made in spring, the long end one made in autumn.
 *
 * @see org.woodyield.source.Sources sources air-drying-memory and hoadley-8-2
 */
public final class AirDrying {

    /** Three published views of how drying time grows with thickness; the time is that of 1 inch times thickness^n. */
    public enum ThicknessExponent {
        /** One tenth thicker takes 15 % longer: n = ln 1.15 / ln 1.1, to two decimals 1.47. */
        TENTH_THICKER(1.47, "wengert-thickness"),
        /** Twice as thick takes 2.5 times as long: n = ln 2.5 / ln 2, to two decimals 1.32. */
        DOUBLE_THICKNESS(1.32, "wengert-thickness"),
        /** The exponent of the red-oak kiln equation: n = 1.52. */
        RED_OAK_KILN(1.52, "simpson-tschernitz");

        private final double value;
        private final String sourceId;

        ThicknessExponent(double value, String sourceId) {
            this.value = value;
            this.sourceId = sourceId;
        }

        /**
         * The exponent.
         *
         * @return n
         */
        public double value() {
            return value;
        }

        /**
         * What the exponent rests on.
         *
         * @return its source
         */
        public Source source() {
            return Sources.get(sourceId);
        }
    }

    /**
     * A range of days.
     *
     * @param least under good conditions
     * @param greatest under poor ones
     * @param source what it rests on
     */
    public record Days(double least, double greatest, Source source) {}

    /** Green thicknesses for which the ranges by species are held to hold. */
    public static final Domain THICKNESS =
            new Domain("thickness", "in", 0.5, 4, "the range by species holds for boards and planks");

    private static final Map<String, PublishedTable.Row> ROWS =
            SpeciesTables.byId(PublishedTable.read(AirDrying.class, "air_drying_days.csv"), "air_drying");

    private AirDrying() {}

    /**
     * The range of a species for 1-inch lumber as printed.
     *
     * @param species the species
     * @return the range; empty where the table has no row
     */
    public static Optional<Days> ofInchLumber(Species species) {
        return Optional.ofNullable(ROWS.get(species.id()))
                .map(row -> new Days(row.number("min_days"), row.number("max_days"), Sources.get(row.text("source"))));
    }

    /**
     * The range for a thickness: days for 1 inch times (thickness in inches)^n, both ends.
     *
     * @param species a species with a row
     * @param greenThickness 1/2 to 4 in
     * @param exponent which of the published exponents is used
     * @return the range, not rounded
     * @throws OutOfDomainException if the species has no row or the thickness is outside
     */
    @Calculation("wood.air-drying")
    public static Days days(Species species, Length greenThickness, ThicknessExponent exponent) {
        Days inch = inch(species);
        double thickness = THICKNESS.require(greenThickness.toInches());
        double factor = StrictMath.pow(thickness, exponent.value());
        return new Days(inch.least() * factor, inch.greatest() * factor, inch.source());
    }

    /**
     * How the end of {@link #days} came about.
     *
     * @param species a species with a row
     * @param greenThickness 1/2 to 4 in
     * @param exponent which of the published exponents is used
     * @return the working; its symbols {@code least} and {@code greatest} equal the range bit for bit
     * @throws OutOfDomainException as {@link #days}
     */
    public static Working daysWorking(Species species, Length greenThickness, ThicknessExponent exponent) {
        Days inch = inch(species);
        double thickness = THICKNESS.require(greenThickness.toInches());
        Source source = Sources.get("air-drying-memory");
        return Working.of("Air drying to 20 % moisture, " + species.commonName())
                .given("t", "thickness", thickness, "in")
                .constant("n", "exponent of thickness", exponent.value(), "", exponent.source())
                .lookup("a", "least days, 1 in", species.commonName(), inch.least(), "days", inch.source())
                .lookup("b", "most days, 1 in", species.commonName(), inch.greatest(), "days", inch.source())
                .step("f", "how much longer than 1 in", "t^n", "", exponent.source())
                .step("least", "least days", "a * f", "days", source)
                .step("greatest", "most days", "b * f", "days", source)
                .note(
                        "Season, place and stacking decide within the range; other published exponents are 1.32, 1.47, 1.52.")
                .build();
    }

    private static Days inch(Species species) {
        return ofInchLumber(species)
                .orElseThrow(() -> new OutOfDomainException(
                        "species",
                        species.commonName(),
                        "",
                        "species with an air-drying time in the table",
                        "choose a species of like weight"));
    }
}
