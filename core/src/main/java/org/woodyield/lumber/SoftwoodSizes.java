package org.woodyield.lumber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;

/**
 * What softwood lumber measures by its nominal size: the minimum dressed sizes of PS 20, dry and green, and the rough sizes
 * of Tennessee's rule for native lumber. They are tables, not one percentage: the shrinkage that they imply runs from 1.5 to
 * 4 percent, and to 9 in one doubtful cell.
 *
 * @see org.woodyield.source.Sources sources ps-20 and tennessee-0080-07-07
 */
public final class SoftwoodSizes {

    /** The state in which lumber is measured. */
    public enum Condition {
        /** At 19 % moisture or less. */
        DRY,
        /** Above 19 % moisture. */
        GREEN
    }

    /**
     * What a piece measures.
     *
     * @param thickness the thickness
     * @param width the width
     * @param source the table
     * @param doubts what is doubtful in the cells used, possibly nothing
     */
    public record Size(Length thickness, Length width, Source source, List<String> doubts) {
        /** Keeps an immutable copy. */
        public Size {
            doubts = List.copyOf(doubts);
        }
    }

    /**
     * One line of a size table.
     *
     * @param lumberClass the class that the line is for
     * @param face {@code thickness} or {@code width}
     * @param nominal the nominal size of that face
     * @param dry what it measures dressed and dry
     * @param green what it measures dressed and green
     * @param doubt why the green cell is doubtful; empty where it is not
     */
    public record Line(
            NominalSize.LumberClass lumberClass, String face, Length nominal, Length dry, Length green, String doubt) {
        Length in(Condition condition) {
            return condition == Condition.DRY ? dry : green;
        }
    }

    /** The face that is the lesser of the two. */
    public static final String THICKNESS = "thickness";

    /** The face that is the greater of the two. */
    public static final String WIDTH = "width";

    private static final PublishedTable TABLE = PublishedTable.read(SoftwoodSizes.class, "ps20_sizes.csv");
    private static final PublishedTable TIMBERS = PublishedTable.read(SoftwoodSizes.class, "ps20_timbers.csv");
    private static final PublishedTable TENNESSEE = PublishedTable.read(SoftwoodSizes.class, "tennessee_sizes.csv");
    private static final PublishedTable MILLIMETRES = PublishedTable.read(SoftwoodSizes.class, "ps20_millimetres.csv");
    private static final PublishedTable MILLIMETRES_RECALLED =
            PublishedTable.read(SoftwoodSizes.class, "ps20_millimetres_memory.csv");
    private static final List<Line> LINES = lines();
    private static final Map<String, PublishedTable.Row> ROUGH = rough();

    private SoftwoodSizes() {}

    /**
     * The lines of PS 20 for boards and dimension in the order of the table.
     *
     * @return an immutable list
     */
    public static List<Line> boardsAndDimension() {
        return LINES;
    }

    /**
     * The minimum dressed size of a nominal size.
     *
     * @param nominal the nominal size
     * @param condition dry or green
     * @return what it measures
     * @throws OutOfDomainException if PS 20 has no such size; the remedy gives those that it has
     */
    public static Size dressed(NominalSize nominal, Condition condition) {
        List<String> doubts = new ArrayList<>();
        Length thickness = face(nominal, THICKNESS, nominal.thickness(), condition, doubts);
        Length width = face(nominal, WIDTH, nominal.width(), condition, doubts);
        return new Size(thickness, width, TABLE.source(), doubts);
    }

    /**
     * The nominal size that is dressed to a size. A 3/4 in board of 1 in nominal and a size of a timber are both found; a
     * size that two classes share is that of the thinner class.
     *
     * @param thickness the dressed thickness
     * @param width the dressed width
     * @param condition dry or green
     * @return the nominal size; empty where PS 20 dresses nothing to it
     */
    public static Optional<NominalSize> nominal(Length thickness, Length width, Condition condition) {
        return all().stream()
                .filter(candidate -> {
                    Size size = dressed(candidate, condition);
                    return size.thickness().equals(thickness) && size.width().equals(width);
                })
                .findFirst();
    }

    /**
     * The nominal sizes that are dressed to nearly a size.
     *
     * @param thickness as measured
     * @param width as measured
     * @param condition dry or green
     * @return three, nearest first by the sum of both differences; of those as near the thinner first
     */
    public static List<NominalSize> nearest(Length thickness, Length width, Condition condition) {
        return all().stream()
                .sorted(Comparator.comparingLong(candidate -> {
                    Size size = dressed(candidate, condition);
                    return NearestLengths.distance(size.thickness(), thickness)
                            + NearestLengths.distance(size.width(), width);
                }))
                .limit(3)
                .toList();
    }

    /** Every nominal size that PS 20 dresses, thinnest class first. */
    private static List<NominalSize> all() {
        List<NominalSize> all = new ArrayList<>();
        for (NominalSize.LumberClass lumberClass : NominalSize.LumberClass.values()) {
            for (Length t : nominals(lumberClass, THICKNESS)) {
                for (Length w : nominals(lumberClass, WIDTH)) {
                    if (w.compareTo(t) >= 0) {
                        all.add(new NominalSize(t, w));
                    }
                }
            }
        }
        return all;
    }

    /**
     * The millimetres printed for a dressed and dry face: a fact of its own beside the inches, to the nearest millimetre as far as
     * it was seen.
     *
     * @param face {@code thickness} or {@code width}
     * @param nominal the nominal size of that face
     * @return the millimetres with their source; empty where none was read or recalled
     */
    public static Optional<Sourced> millimetres(String face, Length nominal) {
        return Stream.concat(millimetres(MILLIMETRES, face, nominal), millimetres(MILLIMETRES_RECALLED, face, nominal))
                .findFirst();
    }

    private static Stream<Sourced> millimetres(PublishedTable table, String face, Length nominal) {
        return table.rows().stream()
                .filter(row ->
                        row.text("face").equals(face) && cell(row, "nominal_in").equals(nominal))
                .map(row -> new Sourced(row.number("mm"), "mm", Sources.get(row.text("source"))));
    }

    /**
     * The surfaced size of dimension lumber by Tennessee's rule for native species; it equals that of PS 20.
     *
     * @param nominal a size of dimension lumber
     * @param condition dry or green
     * @return what it measures surfaced
     * @throws OutOfDomainException if the rule has no such size
     */
    public static Size nativeSurfaced(NominalSize nominal, Condition condition) {
        return tennessee(nominal, condition == Condition.DRY ? "surfaced_dry" : "surfaced_green", List.of());
    }

    /**
     * The rough size of dimension lumber by Tennessee's rule: the dry one is the surfaced dry size and 1/8 in, the green one
     * is a suggestion of the rule.
     *
     * @param nominal a size of dimension lumber
     * @param condition dry or green
     * @return what it measures rough
     * @throws OutOfDomainException if the rule has no such size
     */
    public static Size rough(NominalSize nominal, Condition condition) {
        return condition == Condition.DRY
                ? tennessee(nominal, "rough_dry", List.of())
                : tennessee(nominal, "rough_green_suggested", List.of("the rule only suggests green rough sizes"));
    }

    /**
     * The nominal size whose rough size is this one.
     *
     * @param thickness the rough thickness
     * @param width the rough width
     * @param condition dry or green
     * @return the nominal size; empty where Tennessee's rule has none
     */
    public static Optional<NominalSize> nominalOfRough(Length thickness, Length width, Condition condition) {
        return roughNominals(THICKNESS).stream()
                .flatMap(t -> roughNominals(WIDTH).stream()
                        .filter(w -> w.compareTo(t) >= 0)
                        .map(w -> new NominalSize(t, w)))
                .filter(candidate -> {
                    Size size = rough(candidate, condition);
                    return size.thickness().equals(thickness) && size.width().equals(width);
                })
                .findFirst();
    }

    private static Size tennessee(NominalSize nominal, String column, List<String> doubts) {
        return new Size(
                roughFace(THICKNESS, nominal.thickness(), column),
                roughFace(WIDTH, nominal.width(), column),
                TENNESSEE.source(),
                doubts);
    }

    private static Length roughFace(String face, Length nominal, String column) {
        PublishedTable.Row row = ROUGH.get(face + nominal);
        if (row == null) {
            throw new OutOfDomainException(
                    "nominal " + face,
                    nominal.toString(),
                    "",
                    "a " + face + " of Tennessee's table: " + NearestLengths.all(roughNominals(face)),
                    "give the exact rough size; " + NearestLengths.words(nominal, roughNominals(face)));
        }
        return cell(row, column);
    }

    private static List<Length> roughNominals(String face) {
        return TENNESSEE.rows().stream()
                .filter(row -> row.text("face").equals(face))
                .map(row -> cell(row, "nominal"))
                .toList();
    }

    private static Length face(
            NominalSize size, String face, Length nominal, Condition condition, List<String> doubts) {
        if (size.lumberClass() == NominalSize.LumberClass.TIMBER) {
            List<String> ofTimber = new ArrayList<>();
            Length length = timber(face, nominal, condition, ofTimber);
            ofTimber.forEach(doubt -> doubts.add("nominal " + nominal + ": " + doubt));
            return length;
        }
        for (Line line : LINES) {
            if (line.lumberClass() == size.lumberClass()
                    && line.face().equals(face)
                    && line.nominal().equals(nominal)) {
                if (condition == Condition.GREEN && !line.doubt().isEmpty()) {
                    doubts.add("nominal " + nominal + ": " + line.doubt());
                }
                return line.in(condition);
            }
        }
        throw new OutOfDomainException(
                "nominal " + face,
                nominal.toString(),
                "",
                "the sizes of PS 20: " + NearestLengths.all(nominals(size.lumberClass(), face)),
                NearestLengths.words(nominal, nominals(size.lumberClass(), face)) + " in a "
                        + size.lumberClass().label()
                        + "; or give the size itself with its unit, such as 1 3/4 in x 6 in");
    }

    /** Why the green size of a timber is doubtful; empty where it is not. */
    static String timberDoubt(Length nominal) {
        List<String> doubts = new ArrayList<>();
        timber(THICKNESS, nominal, Condition.GREEN, doubts);
        return String.join("; ", doubts);
    }

    private static Length timber(String face, Length nominal, Condition condition, List<String> doubts) {
        for (PublishedTable.Row row : TIMBERS.rows()) {
            boolean above = nominal.compareTo(cell(row, "least_in")) >= 0;
            boolean below = row.text("greatest_in").isEmpty() || nominal.compareTo(cell(row, "greatest_in")) <= 0;
            if (above && below && nominal.equals(whole(nominal))) {
                if (condition == Condition.GREEN && !row.text("doubt").isEmpty()) {
                    doubts.add(row.text("doubt"));
                }
                return nominal.minus(cell(row, condition == Condition.DRY ? "dry_off_in" : "green_off_in"));
            }
        }
        throw new OutOfDomainException(
                "nominal " + face,
                nominal.toString(),
                "",
                "whole inches from 5 in for timbers",
                NearestLengths.words(nominal, nominals(NominalSize.LumberClass.TIMBER, face))
                        + "; or give the size itself with its unit, such as 1 3/4 in x 6 in");
    }

    private static Length whole(Length length) {
        return length.roundedTo(Length.inches(1), Rounding.DOWN);
    }

    private static List<Length> nominals(NominalSize.LumberClass lumberClass, String face) {
        if (lumberClass == NominalSize.LumberClass.TIMBER) {
            List<Length> all = new ArrayList<>();
            for (int inches = 5; inches <= 24; inches++) {
                all.add(Length.inches(inches));
            }
            return all;
        }
        return LINES.stream()
                .filter(line -> line.lumberClass() == lumberClass && line.face().equals(face))
                .map(Line::nominal)
                .toList();
    }

    private static List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (PublishedTable.Row row : TABLE.rows()) {
            lines.add(new Line(
                    row.text("class").equals("board")
                            ? NominalSize.LumberClass.BOARD
                            : NominalSize.LumberClass.DIMENSION,
                    row.text("face"),
                    cell(row, "nominal_in"),
                    cell(row, "dry_in"),
                    cell(row, "green_in"),
                    row.text("doubt")));
        }
        return List.copyOf(lines);
    }

    private static Map<String, PublishedTable.Row> rough() {
        Map<String, PublishedTable.Row> rows = new LinkedHashMap<>();
        for (PublishedTable.Row row : TENNESSEE.rows()) {
            rows.put(row.text("face") + cell(row, "nominal"), row);
        }
        return rows;
    }

    static Length cell(PublishedTable.Row row, String column) {
        return Length.parse(row.text(column) + " in");
    }
}
