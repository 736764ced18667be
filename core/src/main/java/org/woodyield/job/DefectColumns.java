package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.Defect;

/**
 * The defects of a log as the columns of its row give them. A cell holds several of its kind with a semicolon between
 * them; each may say behind it where it begins.
 */
final class DefectColumns {

    private static final String LENGTH_CUT = "length-cut";
    private static final String SECTOR = "sector";
    private static final String SQUARED = "squared-defect";
    private static final String INTERIOR = "interior-defect";
    private static final String PERIMETER = "sound-core";
    private static final String SWEEP = "sweep";
    private static final String CROOK = "crook";
    private static final String FROM = "defect-from";
    private static final char AND = ';';
    private static final String AT = " at ";

    static final List<Table.Column> COLUMNS = List.of(
            Table.Column.optional(LENGTH_CUT),
            Table.Column.optional(SECTOR),
            Table.Column.optional(SQUARED),
            Table.Column.optional(INTERIOR),
            Table.Column.optional(PERIMETER),
            Table.Column.optional(SWEEP),
            Table.Column.optional(CROOK),
            Table.Column.optional(FROM));

    /** What each column holds, for the help. */
    static final String WORDS =
            LENGTH_CUT + " (4 ft), " + SECTOR + " (8 ft x 90 degrees), " + SQUARED + " and " + INTERIOR
                    + " (width x height x length: 4 in x 5 in x 6 ft), " + PERIMETER
                    + " (diameter of what is sound within a rotten"
                    + " outside), " + SWEEP + " (3 in), " + CROOK + " (4 in x 6 ft), " + FROM
                    + " (how far from the small end they begin, for a log that is scaled in parts). Several of a kind: 8 ft"
                    + " x 90 degrees; 4 ft x 45 degrees; each with its own place behind it: 8 ft x 90 degrees at 12 ft."
                    + " In a log of parts sweep is shared out as an even bend";

    private static final String BLOCK = "width x height x length, such as 4 in x 5 in x 6 ft";
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Length WIDEST = Length.millimetres(3000);
    private static final Domain ANGLE = new Domain("", "degrees", 0, 360, "give the angle at the heart");

    /**
     * A defect of the row.
     *
     * @param begins how far from the small end, if that is said
     * @param allAlong whether it has no place, because it goes along the whole log
     */
    record Found(Defect defect, Optional<Length> begins, boolean allAlong) {}

    private final List<Found> defects = new ArrayList<>();
    private final Optional<Length> from;
    private final Length length;
    private boolean whole = true;

    private DefectColumns(Table.Row row, Length length) {
        this.length = length;
        Optional<Cell> begins = row.cellIfAny(FROM);
        from = begins.flatMap(this::place);
        whole &= begins.isPresent() == from.isPresent();
        take(
                row,
                LENGTH_CUT,
                1,
                "a length, such as 4 ft",
                parts -> length(parts.get(0)).map(Defect.LengthCut::new));
        take(
                row,
                SECTOR,
                2,
                "length x angle, such as 8 ft x 90 degrees",
                parts -> length(parts.get(0))
                        .flatMap(far -> parts.get(1)
                                .quantity(Units.DEGREES, ANGLE)
                                .map(degrees -> new Defect.Sector(far, degrees))));
        take(
                row,
                SQUARED,
                3,
                BLOCK,
                parts -> width(parts.get(0))
                        .flatMap(wide -> width(parts.get(1))
                                .flatMap(high ->
                                        length(parts.get(2)).map(far -> new Defect.SquaredDefect(wide, high, far)))));
        take(
                row,
                INTERIOR,
                3,
                BLOCK,
                parts -> width(parts.get(0))
                        .flatMap(wide -> width(parts.get(1))
                                .flatMap(high ->
                                        length(parts.get(2)).map(far -> new Defect.Interior(wide, high, far)))));
        take(
                row,
                PERIMETER,
                1,
                "a diameter, such as 10 in",
                parts -> width(parts.get(0)).map(Defect.Perimeter::new));
        take(
                row,
                SWEEP,
                1,
                "a distance, such as 3 in",
                parts -> width(parts.get(0)).map(Defect.Sweep::new));
        take(
                row,
                CROOK,
                2,
                "distance x length, such as 4 in x 6 ft",
                parts -> width(parts.get(0))
                        .flatMap(off -> length(parts.get(1)).map(far -> new Defect.Crook(off, far))));
    }

    /** The defects of a log of some length by its row; empty if something in these columns cannot be read. */
    static Optional<DefectColumns> read(Table.Row row, Length length) {
        DefectColumns found = new DefectColumns(row, length);
        return found.whole ? Optional.of(found) : Optional.empty();
    }

    List<Found> defects() {
        return List.copyOf(defects);
    }

    private Optional<Length> place(Cell cell) {
        return cell.length(
                Length.ZERO,
                length,
                "from the small end, no further than the log goes, " + length,
                "measure from the small end");
    }

    /** The defects of a cell, one behind another. */
    private void take(
            Table.Row row,
            String column,
            int count,
            String allowed,
            Function<List<Cell>, Optional<? extends Defect>> reader) {
        Optional<Cell> cell = row.cellIfAny(column);
        if (cell.isEmpty()) {
            return;
        }
        boolean allAlong = column.equals(PERIMETER) || column.equals(SWEEP);
        List<Cell> each = cell.get().split(AND);
        if (allAlong && each.size() > 1) {
            cell.get().refuse("one for a log", "it goes along the whole log; give the worse");
            whole = false;
            return;
        }
        for (Cell one : each) {
            whole &= take(one, count, allowed, allAlong, reader);
        }
    }

    private boolean take(
            Cell cell,
            int count,
            String allowed,
            boolean allAlong,
            Function<List<Cell>, Optional<? extends Defect>> reader) {
        int at = cell.text().lastIndexOf(AT);
        if (at >= 0 && allAlong) {
            cell.refuse(allowed, "it goes along the whole log; leave out where it begins");
            return false;
        }
        List<Cell> parts = (at < 0 ? cell : cell.part(cell.text().substring(0, at))).split('x');
        if (parts.size() != count) {
            cell.refuse(allowed, allAlong ? "" : "write several with ; between them, each with 'at 12 ft' behind it");
            return false;
        }
        Optional<Length> begins = at < 0 ? from : place(cell.part(cell.text().substring(at + AT.length())));
        if (at >= 0 && begins.isEmpty()) {
            return false;
        }
        try {
            Optional<? extends Defect> defect = reader.apply(parts);
            defect.ifPresent(found -> defects.add(new Found(found, begins, allAlong)));
            return defect.isPresent();
        } catch (OutOfDomainException e) {
            cell.refuse(e);
            return false;
        }
    }

    private static Optional<Length> length(Cell cell) {
        return cell.lengthUpTo(LONGEST, "give the length in this log");
    }

    private static Optional<Length> width(Cell cell) {
        return cell.lengthOrNoneUpTo(WIDEST, "check the unit");
    }
}
