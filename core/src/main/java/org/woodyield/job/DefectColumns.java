package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
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
                    + " (how far from the small end they begin; asked for where a log is scaled in parts). Several of a kind:"
                    + " 8 ft x 90 degrees; 4 ft x 45 degrees; each with its own place behind it: 8 ft x 90 degrees at 12 ft."
                    + " What overlaps is counted once where the places are given; without a place, defects are taken to lie"
                    + " apart, and sectors may be 360 degrees together. What lies in the trim counts nothing. Sweep counts in"
                    + " logs scaled as 8 to 16 ft, and in longer ones only by a law whose parts are of such lengths, shared out"
                    + " as an even bend; elsewhere there is no net: enter the log as logs of 8 to 16 ft, each with its own sweep, or"
                    + " give the sweep as a crook over the whole length, from which no allowance is taken, or as a length cut. Off a"
                    + " solid volume sweep and crook take nothing: the wood is there, and no deduction was read in print. Each"
                    + " deduction is rounded"
                    + " on its own, an exact half up, before they are added: the source says which way a fraction goes, not"
                    + " whether of each or of the sum";

    private static final Form CUT_FORM = new Form(List.of("length"), "4 ft");
    private static final Form SECTOR_FORM = new Form(List.of("length", "angle"), "8 ft x 90 degrees");
    private static final Form BLOCK = new Form(List.of("width", "height", "length"), "4 in x 5 in x 6 ft");
    private static final Form CORE_FORM = new Form(List.of("diameter"), "10 in");
    private static final Form SWEEP_FORM = new Form(List.of("distance"), "3 in");
    private static final Form CROOK_FORM = new Form(List.of("distance", "length"), "4 in x 6 ft");
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Length WIDEST = Length.millimetres(3000);
    private static final Domain ANGLE = new Domain("", "degrees", 0, 360, "give the angle at the heart");

    /**
     * A defect of the row.
     *
     * @param begins how far from the small end, if that is said
     * @param allAlong whether it has no place, because it goes along the whole log
     */
    record Found(Defect defect, Optional<Length> begins, boolean allAlong) {

        /** What is to be said of a defect that is longer than the log has left for it; without a place it is refused. */
        Optional<String> beyond(Length log) {
            return begins.filter(at -> !allAlong
                            && defect.stretch()
                                    .filter(far -> far.compareTo(log.minus(at)) > 0)
                                    .isPresent())
                    .map(at ->
                            defect.label() + " at " + feet(at) + " reaches beyond the end of the log: counted for the "
                                    + feet(log.minus(at)) + " that are left");
        }

        private static String feet(Length length) {
            return length.inFeet(64, Rounding.HALF_UP);
        }
    }

    /** What a defect is written with, in this order, and an example. */
    private record Form(List<String> parts, String example) {
        String allowed() {
            return String.join(" x ", parts) + ", such as " + example;
        }

        /** What to do about a defect with another number of parts. */
        String remedy(int given, boolean empty) {
            if (empty) {
                return "leave out a ; with nothing behind it";
            }
            return given > parts.size()
                    ? "write several with ; between them, each with 'at 12 ft' behind it"
                    : "add what is missing: " + String.join(" and ", parts.subList(given, parts.size()));
        }
    }

    private final List<Found> defects = new ArrayList<>();
    private final Optional<Length> from;
    private final Length length;
    private final String lengthAsGiven;
    private boolean whole = true;

    private DefectColumns(Table.Row row, Length length, String lengthAsGiven) {
        this.length = length;
        this.lengthAsGiven = lengthAsGiven;
        Optional<Cell> begins = row.cellIfAny(FROM);
        from = begins.flatMap(this::place);
        whole &= begins.isPresent() == from.isPresent();
        take(row, LENGTH_CUT, CUT_FORM, parts -> length(parts.get(0)).map(Defect.LengthCut::new));
        take(
                row,
                SECTOR,
                SECTOR_FORM,
                parts -> length(parts.get(0))
                        .flatMap(far -> parts.get(1)
                                .quantity(Units.DEGREES, ANGLE)
                                .map(degrees -> new Defect.Sector(far, degrees))));
        take(
                row,
                SQUARED,
                BLOCK,
                parts -> width(parts.get(0))
                        .flatMap(wide -> width(parts.get(1))
                                .flatMap(high ->
                                        length(parts.get(2)).map(far -> new Defect.SquaredDefect(wide, high, far)))));
        take(
                row,
                INTERIOR,
                BLOCK,
                parts -> width(parts.get(0))
                        .flatMap(wide -> width(parts.get(1))
                                .flatMap(high ->
                                        length(parts.get(2)).map(far -> new Defect.Interior(wide, high, far)))));
        take(row, PERIMETER, CORE_FORM, parts -> width(parts.get(0)).map(Defect.Perimeter::new));
        take(row, SWEEP, SWEEP_FORM, parts -> width(parts.get(0)).map(Defect.Sweep::new));
        take(
                row,
                CROOK,
                CROOK_FORM,
                parts -> width(parts.get(0))
                        .flatMap(off -> length(parts.get(1)).map(far -> new Defect.Crook(off, far))));
    }

    /**
     * The defects of a log by its row.
     *
     * @param length how long the log is
     * @param lengthAsGiven in the words of the row
     * @return empty if something in these columns cannot be read
     */
    static Optional<DefectColumns> read(Table.Row row, Length length, String lengthAsGiven) {
        DefectColumns found = new DefectColumns(row, length, lengthAsGiven);
        return found.whole ? Optional.of(found) : Optional.empty();
    }

    List<Found> defects() {
        return List.copyOf(defects);
    }

    private Optional<Length> place(Cell cell) {
        return cell.lengthWithin(
                length,
                "from the small end, no further than the log goes, " + lengthAsGiven,
                "measure from the small end");
    }

    /** The defects of a cell, one behind another. */
    private void take(
            Table.Row row, String column, Form form, Function<List<Cell>, Optional<? extends Defect>> reader) {
        Optional<Cell> cell = row.cellIfAny(column);
        if (cell.isEmpty()) {
            return;
        }
        boolean allAlong = column.equals(PERIMETER) || column.equals(SWEEP);
        List<Cell> each = cell.get().list().orElse(List.of());
        whole &= !each.isEmpty();
        if (allAlong && each.size() > 1) {
            cell.get().refuse("one for a log", "it goes along the whole log; give the worse");
            whole = false;
            return;
        }
        for (Cell one : each) {
            whole &= take(one, form, allAlong, reader);
        }
    }

    private boolean take(
            Cell cell, Form form, boolean allAlong, Function<List<Cell>, Optional<? extends Defect>> reader) {
        int at = cell.text().lastIndexOf(AT);
        if (at >= 0 && allAlong) {
            cell.refuse(form.allowed(), "it goes along the whole log; leave out where it begins");
            return false;
        }
        List<Cell> parts = (at < 0 ? cell : cell.part(cell.text().substring(0, at))).split('x');
        if (parts.size() != form.parts().size()) {
            String remedy = allAlong
                    ? ""
                    : form.remedy(parts.size(), parts.get(0).text().isEmpty());
            cell.refuse(form.allowed(), remedy);
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
