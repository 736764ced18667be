package org.woodyield.lumber;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Thickness of hardwood lumber: named in quarters of an inch rough ({@code 5/4}), less when surfaced, and with the tolerances of
 * the grading rules. What lies between two rows of a table is refused.
 *
 * @see org.woodyield.source.Sources sources nhla-thickness, nhla-2019-par-9 and nhla-kiln-dried-2023
 */
public final class HardwoodThickness {

    /** How many faces are planed. */
    public enum Surfaced {
        /** One face; by agreement of buyer and seller. */
        ONE_SIDE,
        /** Both faces; what the grading rules state. */
        TWO_SIDES
    }

    /**
     * One standard thickness.
     *
     * @param nominal rough
     * @param oneSide surfaced one side; empty where it is not printed
     * @param twoSides surfaced two sides
     * @param doubt what is doubtful in the row, possibly empty
     * @param source the table
     */
    public record Line(Length nominal, Optional<Length> oneSide, Length twoSides, String doubt, Source source) {
        Optional<Length> surfaced(Surfaced surfaced) {
            return surfaced == Surfaced.ONE_SIDE ? oneSide : Optional.of(twoSides);
        }
    }

    /**
     * How scant of its size kiln-dried lumber may be.
     *
     * @param dimension {@code thickness}, {@code thickness on one edge} or {@code width}
     * @param appliesTo which lumber
     * @param least the least nominal thickness, if the allowance goes by thickness
     * @param greatest the greatest nominal thickness, if there is one
     * @param scant how much less it may measure
     * @param source the table
     */
    public record Allowance(
            String dimension,
            String appliesTo,
            Optional<Length> least,
            Optional<Length> greatest,
            Length scant,
            Source source) {

        private boolean holds(Length nominal) {
            return least.map(length -> nominal.compareTo(length) >= 0).orElse(false)
                    && greatest.map(length -> nominal.compareTo(length) <= 0).orElse(true);
        }
    }

    private record Variation(Length least, Length greatest, Length over) {}

    private static final Length LEAST = Length.inches(3, 8);
    private static final Length GREATEST = Length.inches(6);
    private static final Length QUARTER = Length.inches(1, 4);
    private static final Pattern QUARTERS = Pattern.compile("\\s*(\\d{1,2})/(2|4|8)\\s*");
    private static final Domain NOMINAL = Domain.of("nominal thickness", "in", 0.375, 6);
    private static final String TABLE_SIZES = "the sizes of the table, 3/8 to 4 in";

    private static final List<Line> LINES = lines();
    private static final List<Variation> VARIATIONS = variations();
    private static final List<Allowance> ALLOWANCES = allowances();

    private HardwoodThickness() {}

    /**
     * The standard thicknesses, thinnest first.
     *
     * @return an immutable list
     */
    public static List<Line> standard() {
        return LINES;
    }

    /**
     * What kiln-dried lumber may be scant.
     *
     * @return an immutable list
     */
    public static List<Allowance> kilnDriedAllowances() {
        return ALLOWANCES;
    }

    /**
     * Reads a thickness in quarters, such as {@code 5/4} or {@code 3/8}, or as a length with its unit.
     *
     * @param text the text
     * @return the nominal thickness
     * @throws OutOfDomainException if it is neither, or not 3/8 to 6 in (24/4)
     */
    public static Length parse(String text) {
        Matcher quarters = QUARTERS.matcher(text);
        Length thickness;
        if (quarters.matches()) {
            thickness = Length.inches(Long.parseLong(quarters.group(1)), Long.parseLong(quarters.group(2)));
        } else {
            try {
                thickness = Length.parse(text);
            } catch (OutOfDomainException e) {
                throw new OutOfDomainException(
                        "thickness", "'" + text + "'", "", "quarters such as 5/4, or a length with its unit", "");
            }
        }
        return within(thickness);
    }

    static Length within(Length thickness) {
        if (thickness.compareTo(LEAST) < 0 || thickness.compareTo(GREATEST) > 0) {
            throw new OutOfDomainException("thickness", thickness.toString(), "", "3/8 to 6 in (24/4)", "");
        }
        return thickness;
    }

    /**
     * A thickness as the trade writes it.
     *
     * @param nominal 3/8 to 6 in
     * @return quarters from one inch up, {@code 5/4}; the fraction below, {@code 5/8}
     * @throws OutOfDomainException if it is outside, or from one inch up no whole number of quarters; the remedy gives the
     *     nearest
     */
    public static String quarters(Length nominal) {
        within(nominal);
        if (nominal.compareTo(Length.inches(1)) < 0) {
            return nominal.inInches(64, Rounding.HALF_UP).replace(" in", "");
        }
        long below = nominal.steps(QUARTER, Rounding.DOWN);
        if (!QUARTER.times(below).equals(nominal)) {
            throw new OutOfDomainException(
                    "nominal thickness",
                    nominal.toString(),
                    "",
                    "whole quarters of an inch",
                    "nearest: " + below + "/4, " + (below + 1) + "/4");
        }
        return below + "/4";
    }

    /**
     * What a rough thickness is surfaced to.
     *
     * @param nominal a standard thickness
     * @param surfaced one or two sides
     * @return the surfaced thickness
     * @throws OutOfDomainException if the table has no such thickness or does not print it; the remedy gives the nearest
     */
    public static Length surfaced(Length nominal, Surfaced surfaced) {
        return LINES.stream()
                .filter(line -> line.nominal().equals(nominal))
                .flatMap(line -> line.surfaced(surfaced).stream())
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "nominal thickness",
                        nominal.toString(),
                        "",
                        TABLE_SIZES,
                        NearestLengths.words(
                                nominal, printed(surfaced).map(Line::nominal).toList())));
    }

    /**
     * The rough thickness that is surfaced to a thickness.
     *
     * @param thickness as measured
     * @param surfaced one or two sides
     * @return the nominal thickness; empty where the table surfaces nothing to it
     */
    public static Optional<Length> nominal(Length thickness, Surfaced surfaced) {
        return printed(surfaced)
                .filter(line -> line.surfaced(surfaced).equals(Optional.of(thickness)))
                .map(Line::nominal)
                .findFirst();
    }

    /**
     * The rough thickness that is surfaced to the thickness nearest to one.
     *
     * @param thickness as measured
     * @param surfaced one or two sides
     * @return the nominal thickness; of two as near the lesser
     */
    public static Length nearestNominal(Length thickness, Surfaced surfaced) {
        List<Length> known = printed(surfaced)
                .flatMap(line -> line.surfaced(surfaced).stream())
                .toList();
        return nominal(NearestLengths.to(thickness, known).get(0), surfaced).orElseThrow();
    }

    private static Stream<Line> printed(Surfaced surfaced) {
        return LINES.stream().filter(line -> line.surfaced(surfaced).isPresent());
    }

    /**
     * How much thicker than at its thinnest cutting a board of a standard thickness may be. It may not be thinner at all.
     *
     * @param nominal a standard thickness
     * @return the variation that is allowed
     * @throws OutOfDomainException if the table has no such thickness; the remedy gives the nearest
     */
    public static Length variation(Length nominal) {
        return VARIATIONS.stream()
                .filter(row -> nominal.compareTo(row.least()) >= 0 && nominal.compareTo(row.greatest()) <= 0)
                .map(Variation::over)
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "standard thickness",
                        nominal.toString(),
                        "",
                        "the sizes of the table, 3/8 to 6 in (24/4)",
                        NearestLengths.words(
                                nominal,
                                VARIATIONS.stream().map(Variation::least).toList())));
    }

    /**
     * Whether a board counts as miscut: it is thinner than its standard thickness, or varies by more than is allowed over its
     * length.
     *
     * @param nominal a standard thickness
     * @param thinnest where it is thinnest, within the cuttings that make its grade
     * @param thickest where it is thickest
     * @return true if it is miscut
     * @throws OutOfDomainException if the table has no such thickness, or the two are crossed
     */
    public static boolean miscut(Length nominal, Length thinnest, Length thickest) {
        if (thickest.compareTo(thinnest) < 0) {
            throw new OutOfDomainException(
                    "thickest place",
                    thickest.toString(),
                    "",
                    "no less than the thinnest, " + thinnest,
                    "change the two");
        }
        return thinnest.compareTo(nominal) < 0 || thickest.minus(thinnest).compareTo(variation(nominal)) > 0;
    }

    /**
     * The least thickness that rough lumber may have after kiln drying: {@code T - a}, a from the table of the rules.
     *
     * @param nominalInches nominal thickness, 3/8 to 1 3/4 in, or 2 to 6 in
     * @return inches
     * @throws OutOfDomainException outside, or between 1 3/4 and 2 in
     */
    @Calculation("lumber.kiln-dried-thickness")
    public static double kilnDriedInches(double nominalInches) {
        return nominalInches - scant(nominalInches).scant().toInches();
    }

    /**
     * How {@link #kilnDriedInches} came about.
     *
     * @param nominalInches as there
     * @return the working; its value equals the thickness bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working kilnDriedInchesWorking(double nominalInches) {
        Allowance allowance = scant(nominalInches);
        return Working.of("Least thickness after kiln drying")
                .given("T", "nominal thickness", nominalInches, "in")
                .lookup(
                        "a",
                        "scant allowed",
                        allowance.appliesTo() + " from "
                                + allowance.least().map(Length::toString).orElse("0"),
                        allowance.scant().toInches(),
                        "in",
                        allowance.source())
                .step("t", "least thickness", "T - a", "in", allowance.source())
                .build();
    }

    private static Allowance scant(double nominalInches) {
        Length nominal = Length.ofInches(NOMINAL.require(nominalInches), Rounding.HALF_UP);
        return ALLOWANCES.stream()
                .filter(row -> row.dimension().equals("thickness") && row.holds(nominal))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "nominal thickness",
                        nominal.toString(),
                        "",
                        "3/8 to 1 3/4 in, or 2 in and thicker",
                        "nearest: 7/4, 8/4"));
    }

    private static List<Line> lines() {
        PublishedTable table = PublishedTable.read(HardwoodThickness.class, "hardwood_thickness.csv");
        return table.rows().stream()
                .map(row -> new Line(
                        SoftwoodSizes.cell(row, "nominal_in"),
                        ifPrinted(row, "one_side_in"),
                        SoftwoodSizes.cell(row, "two_sides_in"),
                        row.text("doubt"),
                        table.source()))
                .toList();
    }

    private static List<Variation> variations() {
        return PublishedTable.read(HardwoodThickness.class, "nhla_thickness_variation.csv").rows().stream()
                .map(row -> new Variation(
                        SoftwoodSizes.cell(row, "least_nominal_in"),
                        SoftwoodSizes.cell(row, "greatest_nominal_in"),
                        SoftwoodSizes.cell(row, "over_in")))
                .toList();
    }

    private static List<Allowance> allowances() {
        PublishedTable table = PublishedTable.read(HardwoodThickness.class, "nhla_kiln_dried.csv");
        return table.rows().stream()
                .map(row -> new Allowance(
                        row.text("dimension"),
                        row.text("applies_to"),
                        ifPrinted(row, "least_in"),
                        ifPrinted(row, "greatest_in"),
                        SoftwoodSizes.cell(row, "scant_in"),
                        table.source()))
                .toList();
    }

    private static Optional<Length> ifPrinted(PublishedTable.Row row, String column) {
        return row.text(column).isEmpty() ? Optional.empty() : Optional.of(SoftwoodSizes.cell(row, column));
    }
}
