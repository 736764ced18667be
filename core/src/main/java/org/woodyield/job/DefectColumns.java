package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.Defect;

/** The defects of a log as the columns of its row give them; a log has at most one of each kind. */
final class DefectColumns {

    private static final String LENGTH_CUT = "length-cut";
    private static final String SECTOR = "sector";
    private static final String SQUARED = "squared-defect";
    private static final String INTERIOR = "interior-defect";
    private static final String PERIMETER = "sound-core";
    private static final String SWEEP = "sweep";
    private static final String CROOK = "crook";
    private static final String FROM = "defect-from";

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
                    + " (how far from the small end they begin, for a log that is scaled in parts)";

    private static final String BLOCK = "width x height x length, such as 4 in x 5 in x 6 ft";
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Length WIDEST = Length.millimetres(3000);
    private static final Domain ANGLE = new Domain("", "degrees", 0, 360, "give the angle at the heart");

    private final List<Defect> defects = new ArrayList<>();
    private final Optional<Length> from;
    private boolean whole = true;

    private DefectColumns(Table.Row row) {
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
        Optional<Cell> begins = row.cellIfAny(FROM);
        from = begins.flatMap(cell -> cell.lengthOrNoneUpTo(LONGEST, "measure from the small end"));
        whole &= begins.isPresent() == from.isPresent();
    }

    /** The defects of a row; empty if something in these columns cannot be read. */
    static Optional<DefectColumns> read(Table.Row row) {
        DefectColumns found = new DefectColumns(row);
        return found.whole ? Optional.of(found) : Optional.empty();
    }

    List<Defect> defects() {
        return List.copyOf(defects);
    }

    /** How far from the small end they begin, if that is said. */
    Optional<Length> from() {
        return from;
    }

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
        List<Cell> parts = cell.get().split('x');
        Optional<? extends Defect> defect = Optional.empty();
        if (parts.size() == count) {
            try {
                defect = reader.apply(parts);
            } catch (OutOfDomainException e) {
                cell.get().refuse(e);
            }
        } else {
            cell.get().refuse(allowed, "");
        }
        defect.ifPresent(defects::add);
        whole &= defect.isPresent();
    }

    private static Optional<Length> length(Cell cell) {
        return cell.lengthUpTo(LONGEST, "give the length in this log");
    }

    private static Optional<Length> width(Cell cell) {
        return cell.lengthOrNoneUpTo(WIDEST, "check the unit");
    }
}
