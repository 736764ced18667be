package org.woodyield.lumber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Sizes of sawn and planed timber where it is named in millimetres: Europe, Russia, Australia, Japan. A metric size is what the
 * piece measures at the moisture that its standard states, no nominal name.
 *
 * @see org.woodyield.source.Sources sources building-handbook-8, gost-24454 and planing-reductions-memory
 */
public final class MetricSizes {

    /** What planed timber is for; it decides how much is taken off. */
    public enum Use {
        /** Structural timber. */
        CONSTRUCTION("construction"),
        /** Joinery and cabinet work. */
        JOINERY("joinery");

        private final String label;

        Use(String label) {
            this.label = label;
        }
    }

    /**
     * The usual sizes of one face.
     *
     * @param table the key of the {@link SizeTable} to which it belongs
     * @param name for example {@code Australian dressed hardwood}
     * @param face {@code thickness} or {@code width}
     * @param sizes lesser first
     * @param source who says so
     */
    public record Series(String table, String name, String face, List<Length> sizes, Source source) {
        /** Keeps an immutable copy. */
        public Series {
            sizes = List.copyOf(sizes);
        }
    }

    /**
     * Stock lengths.
     *
     * @param table the key of the {@link SizeTable} to which they belong
     * @param name for example {@code Finland}
     * @param least the shortest; empty where it is not stated
     * @param greatest the longest; empty where it is not stated
     * @param step from one to the next
     * @param source who says so
     */
    public record Lengths(
            String table, String name, Optional<Length> least, Optional<Length> greatest, Length step, Source source) {}

    /**
     * The moisture at which a size or a term holds.
     *
     * @param table the key of the {@link SizeTable} to which it belongs
     * @param rule for example {@code Sweden}
     * @param what for example {@code sawn size}
     * @param leastPercent oven-dry basis
     * @param greatestPercent the same where one value is stated
     * @param source who says so
     */
    public record Moisture(
            String table, String rule, String what, double leastPercent, double greatestPercent, Source source) {}

    private static final Domain SAWN = Domain.of("sawn size", "mm", 15, 500);
    private static final PublishedTable GOST = PublishedTable.read(MetricSizes.class, "gost_24454.csv");
    private static final PublishedTable EN_336 = PublishedTable.read(MetricSizes.class, "en336_series.csv");
    private static final PublishedTable PLANING =
            PublishedTable.read(MetricSizes.class, "planing_reductions_memory.csv");
    private static final List<NarrowFace> NARROW_FACES = List.of(
            new NarrowFace(Length.millimetres(16), Length.millimetres(50), Optional.of(Length.millimetres(50))),
            new NarrowFace(Length.millimetres(60), Length.millimetres(100), Optional.of(Length.millimetres(60))),
            new NarrowFace(Length.millimetres(125), Length.millimetres(300), Optional.empty()));
    private static final int NARROW_SHARE = 3;
    private static final int NARROW_PARTS = 5;
    private static final List<Series> SERIES = allSeries();
    private static final List<Lengths> LENGTHS = allLengths();
    private static final List<Moisture> MOISTURES = moistures();

    private MetricSizes() {}

    /**
     * The usual sizes of countries.
     *
     * @return an immutable list
     */
    public static List<Series> series() {
        return SERIES;
    }

    /**
     * The stock lengths of countries.
     *
     * @return an immutable list
     */
    public static List<Lengths> lengths() {
        return LENGTHS;
    }

    /**
     * The moistures at which sizes and terms hold.
     *
     * @return an immutable list
     */
    public static List<Moisture> referenceMoistures() {
        return MOISTURES;
    }

    /**
     * The thicknesses of GOST 24454-80.
     *
     * @return lesser first
     */
    public static List<Length> gostThicknesses() {
        return GOST.rows().stream().map(row -> millimetres(row, "thickness_mm")).toList();
    }

    /**
     * The widths in which GOST 24454-80 has a thickness.
     *
     * @param thickness one of {@link #gostThicknesses}
     * @return lesser first
     * @throws OutOfDomainException if the standard has no such thickness; the remedy gives the nearest
     */
    public static List<Length> gostWidths(Length thickness) {
        return GOST.rows().stream()
                .filter(row -> millimetres(row, "thickness_mm").equals(thickness))
                .findFirst()
                .map(row -> each(row.text("widths_mm")))
                .orElseThrow(() -> unknown("thickness", thickness, "the sizes of GOST 24454-80", gostThicknesses()));
    }

    /**
     * The least narrow face that an unedged board may have by GOST 24454-80: 50 mm to a thickness of 50 mm, 60 mm to 100 mm, and
     * six tenths of the thickness above.
     *
     * @param thickness 16 to 300 mm
     * @return the width of the narrower face
     * @throws OutOfDomainException if the thickness is outside, or between 50 and 60 or 100 and 125 mm, for which the standard
     *     prints none
     * @see org.woodyield.source.Sources source gost-24454
     */
    public static Length gostLeastNarrowFace(Length thickness) {
        for (NarrowFace face : NARROW_FACES) {
            if (thickness.compareTo(face.from()) >= 0 && thickness.compareTo(face.upTo()) <= 0) {
                return face.least()
                        .orElseGet(() -> thickness.times(NARROW_SHARE).dividedBy(NARROW_PARTS, Rounding.HALF_UP));
            }
        }
        throw unknown(
                "thickness",
                thickness,
                NARROW_FACES.stream().map(NarrowFace::thicknesses).collect(Collectors.joining("; ")),
                gostThicknesses());
    }

    /** The same in a sentence. */
    static String gostNarrowFaces() {
        return "The narrow face of an unedged board is no less than "
                + NARROW_FACES.stream()
                        .map(face -> face.least()
                                        .map(least -> least.inMillimetres(0))
                                        .orElse(NARROW_SHARE + "/" + NARROW_PARTS + " of the thickness")
                                + " at " + face.thicknesses() + " thick")
                        .collect(Collectors.joining(", "))
                + ".";
    }

    /** The least narrow face of boards of some thicknesses; the share of the thickness where no length is printed. */
    private record NarrowFace(Length from, Length upTo, Optional<Length> least) {
        String thicknesses() {
            return from.inMillimetres(0).replace(" mm", "") + " to " + upTo.inMillimetres(0);
        }
    }

    /**
     * The target sizes of EN 336 as one handbook prints them.
     *
     * @param planed whether the planed ones are meant, otherwise the sawn
     * @return lesser first
     */
    public static List<Length> en336(boolean planed) {
        return EN_336.rows().stream()
                .map(row -> millimetres(row, planed ? "planed_mm" : "sawn_mm"))
                .toList();
    }

    /**
     * The planed target size that stands beside a sawn one.
     *
     * @param sawn a sawn target size
     * @return the planed one
     * @throws OutOfDomainException if the series has no such size; the remedy gives the nearest
     */
    public static Length en336Planed(Length sawn) {
        return beside(sawn, "sawn_mm", "planed_mm", false);
    }

    /**
     * The sawn target size that stands beside a planed one.
     *
     * @param planed a planed target size
     * @return the sawn one
     * @throws OutOfDomainException if the series has no such size; the remedy gives the nearest
     */
    public static Length en336Sawn(Length planed) {
        return beside(planed, "planed_mm", "sawn_mm", true);
    }

    private static Length beside(Length size, String from, String to, boolean planed) {
        return EN_336.rows().stream()
                .filter(row -> millimetres(row, from).equals(size))
                .map(row -> millimetres(row, to))
                .findFirst()
                .orElseThrow(() -> unknown("size", size, "the target sizes of EN 336", en336(planed)));
    }

    /**
     * What a sawn size measures when two opposite faces are planed by the recalled British reductions: {@code s - r}. The target
     * sizes printed for EN 336 take 1 mm less off above 150 mm.
     *
     * @param sawnMillimetres 15 to 500 mm
     * @param use what it is for
     * @return millimetres
     * @throws OutOfDomainException if the size is outside
     */
    @Calculation("lumber.planed-metric")
    public static double planedMillimetres(double sawnMillimetres, Use use) {
        return sawnMillimetres - reduction(sawnMillimetres, use).number("off_mm");
    }

    /**
     * How {@link #planedMillimetres} came about.
     *
     * @param sawnMillimetres as there
     * @param use as there
     * @return the working; its value equals the size bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working planedMillimetresWorking(double sawnMillimetres, Use use) {
        PublishedTable.Row row = reduction(sawnMillimetres, use);
        return Working.of("Size after planing two opposite faces")
                .given("s", "sawn size", sawnMillimetres, "mm")
                .lookup(
                        "r",
                        "taken off both faces together",
                        use.label + ", from " + row.text("from_mm") + " mm",
                        row.number("off_mm"),
                        "mm",
                        PLANING.source())
                .step("p", "planed size", "s - r", "mm", PLANING.source())
                .build();
    }

    /** The row of the greatest lower end that is not above the size: 100.5 mm counts as 100. */
    private static PublishedTable.Row reduction(double sawnMillimetres, Use use) {
        SAWN.require(sawnMillimetres);
        return PLANING.rows().stream()
                .filter(row -> row.text("use").equals(use.label) && sawnMillimetres >= row.number("from_mm"))
                .reduce((earlier, later) -> later)
                .orElseThrow();
    }

    static OutOfDomainException unknown(String parameter, Length value, String limits, List<Length> known) {
        return new OutOfDomainException(
                parameter, value.inMillimetres(1), "", limits, NearestLengths.words(value, known));
    }

    static Length millimetres(PublishedTable.Row row, String column) {
        return Length.parse(row.text(column) + " mm");
    }

    private static List<Length> each(String sizes) {
        return Stream.of(sizes.split(" ", -1))
                .map(size -> Length.parse(size + " mm"))
                .toList();
    }

    private static Source source(PublishedTable.Row row) {
        return Sources.get(row.text("source"));
    }

    private static List<Series> allSeries() {
        List<Series> all = new ArrayList<>();
        for (String name : List.of("metric_series.csv", "metric_series_memory.csv")) {
            for (PublishedTable.Row row :
                    PublishedTable.read(MetricSizes.class, name).rows()) {
                all.add(new Series(
                        row.text("table"),
                        row.text("series"),
                        row.text("face"),
                        each(row.text("sizes_mm")),
                        source(row)));
            }
        }
        return List.copyOf(all);
    }

    private static List<Lengths> allLengths() {
        return PublishedTable.read(MetricSizes.class, "metric_lengths.csv").rows().stream()
                .map(row -> new Lengths(
                        row.text("table"),
                        row.text("series"),
                        metres(row, "least_m"),
                        metres(row, "greatest_m"),
                        metres(row, "step_m").orElseThrow(),
                        source(row)))
                .toList();
    }

    private static Optional<Length> metres(PublishedTable.Row row, String column) {
        return row.text(column).isEmpty() ? Optional.empty() : Optional.of(Length.parse(row.text(column) + " m"));
    }

    private static List<Moisture> moistures() {
        return PublishedTable.read(MetricSizes.class, "metric_moisture.csv").rows().stream()
                .map(row -> new Moisture(
                        row.text("table"),
                        row.text("rule"),
                        row.text("what"),
                        row.number("least_pct"),
                        row.number("greatest_pct"),
                        source(row)))
                .toList();
    }
}
