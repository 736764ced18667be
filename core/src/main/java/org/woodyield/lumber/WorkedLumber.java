package org.woodyield.lumber;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;

/**
 * Worked softwood: finish, flooring, shiplap, tongued and grooved boards and bevel siding, by nominal size. The sizes are
 * recalled and not read, and say so through their source; the ranges in which southern pine is worked were read.
 *
 * @see org.woodyield.source.Sources sources ps-20-worked-memory and southern-pine-patterns
 */
public final class WorkedLumber {

    private static final List<Line> LINES = lines();
    private static final List<Range> RANGES = ranges();

    private WorkedLumber() {}

    /**
     * One size of one pattern.
     *
     * @param pattern for example {@code flooring} or {@code shiplap 3/8 lap}
     * @param face {@code thickness}, {@code width}, or {@code face width}: what shows when it is put up
     * @param nominal the nominal size of the face
     * @param dry what it measures dry
     * @param green what it measures green; empty where it is not known
     * @param source the table
     */
    public record Line(
            String pattern, String face, Length nominal, Length dry, Optional<Length> green, Source source) {}

    /**
     * The nominal sizes in which a product is made.
     *
     * @param product its name
     * @param leastThickness nominal
     * @param greatestThickness nominal
     * @param leastWidth nominal
     * @param greatestWidth nominal
     * @param source the table
     */
    public record Range(
            String product,
            Length leastThickness,
            Length greatestThickness,
            Length leastWidth,
            Length greatestWidth,
            Source source) {}

    /**
     * All sizes in the order of the table.
     *
     * @return an immutable list
     */
    public static List<Line> all() {
        return LINES;
    }

    /**
     * The names of the patterns.
     *
     * @return an immutable list, each once
     */
    public static List<String> patterns() {
        return LINES.stream().map(Line::pattern).distinct().toList();
    }

    /**
     * The ranges in which southern pine is worked.
     *
     * @return an immutable list
     */
    public static List<Range> southernPine() {
        return RANGES;
    }

    /**
     * The size of a pattern by its nominal size.
     *
     * @param pattern one of {@link #patterns}
     * @param nominal the nominal size of the face that the table lists
     * @return the line
     * @throws OutOfDomainException if there is no such pattern or size; the remedy gives the patterns or the nearest sizes
     */
    public static Line ofNominal(String pattern, Length nominal) {
        List<Line> lines = of(pattern);
        return lines.stream()
                .filter(line -> line.nominal().equals(nominal))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "nominal size of " + pattern,
                        nominal.toString(),
                        "",
                        "the sizes of the table",
                        NearestLengths.words(
                                nominal, lines.stream().map(Line::nominal).toList())));
    }

    /**
     * The size of a pattern whose dry measure is nearest to a length.
     *
     * @param pattern one of {@link #patterns}
     * @param dry what the face measures dry
     * @return the line; of two as near the lesser
     * @throws OutOfDomainException if there is no such pattern
     */
    public static Line nearest(String pattern, Length dry) {
        List<Line> lines = of(pattern);
        Length near =
                NearestLengths.to(dry, lines.stream().map(Line::dry).toList()).get(0);
        return lines.stream()
                .filter(line -> line.dry().equals(near))
                .findFirst()
                .orElseThrow();
    }

    private static List<Line> of(String pattern) {
        List<Line> lines =
                LINES.stream().filter(line -> line.pattern().equals(pattern)).toList();
        if (lines.isEmpty()) {
            throw new OutOfDomainException("pattern", "'" + pattern + "'", "", String.join("; ", patterns()), "");
        }
        return lines;
    }

    private static List<Line> lines() {
        PublishedTable table = PublishedTable.read(WorkedLumber.class, "ps20_worked_memory.csv");
        return table.rows().stream()
                .map(row -> new Line(
                        row.text("item"),
                        row.text("face"),
                        SoftwoodSizes.cell(row, "nominal_in"),
                        SoftwoodSizes.cell(row, "dry_in"),
                        row.text("green_in").isEmpty()
                                ? Optional.empty()
                                : Optional.of(SoftwoodSizes.cell(row, "green_in")),
                        table.source()))
                .toList();
    }

    private static List<Range> ranges() {
        PublishedTable table = PublishedTable.read(WorkedLumber.class, "southern_pine_ranges.csv");
        return table.rows().stream()
                .map(row -> new Range(
                        row.text("product"),
                        SoftwoodSizes.cell(row, "least_thickness"),
                        SoftwoodSizes.cell(row, "greatest_thickness"),
                        SoftwoodSizes.cell(row, "least_width"),
                        SoftwoodSizes.cell(row, "greatest_width"),
                        table.source()))
                .toList();
    }
}
