package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.SizeControl;
import org.woodyield.lumber.SizeControl.Convention;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.show.NumberText;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;

/**
 * Boards measured as they were sawn, and how far their sizes scatter.
 *
 * @param file the table that they stand in, without its folders
 * @param sizes the statistics
 */
record MeasuredBoards(String file, SizeControl sizes) {

    private static final String ID = "id";
    private static final String READINGS = "readings";
    private static final List<Table.Column> COLUMNS =
            List.of(Table.Column.optional(ID), Table.Column.required(READINGS));
    private static final Length THICKEST = Length.inches(30);

    /** Reads a table of boards; nothing, with a note of each problem, where it cannot be used. */
    static Optional<MeasuredBoards> read(String name, Cell option, Problems problems) throws IOException {
        List<List<Length>> boards = new ArrayList<>();
        Names names = new Names();
        for (Table.Row row : Sheets.rows(name, COLUMNS, READINGS, "a row for each board", problems)) {
            row.cellIfAny(ID).ifPresent(cell -> names.read(cell, "a name for the board"));
            row.cell(READINGS)
                    .lengthsUpTo(THICKEST, "write the readings of a board as 1.70 in; 1.73 in; 1.71 in")
                    .ifPresent(boards::add);
        }
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new MeasuredBoards(Sheets.file(name), SizeControl.of(boards)));
        } catch (OutOfDomainException e) {
            option.refuse(e.parameter() + ": " + e.limits(), e.remedy());
            return Optional.empty();
        }
    }

    /** The deviation that decides the target size, as the printed example takes it. */
    Length variation() {
        return Length.ofInches(sizes.totalInches(Convention.PLAIN), Rounding.HALF_UP);
    }

    /** What the statistics rest on. */
    Source source() {
        return new Source("measured-boards", Standing.GIVEN, "", "From the table " + file, "", "");
    }

    /** The deviations by both conventions, with their workings. */
    String text() {
        StringBuilder text = new StringBuilder("Boards measured: mean ")
                .append(NumberText.fixed(sizes.meanInches(), 4))
                .append(" in\n");
        for (Convention convention : Convention.values()) {
            text.append(convention == Convention.PLAIN ? "  plain deviations: " : "  components of variance: ")
                    .append("within boards ")
                    .append(NumberText.fixed(sizes.withinInches(), 4))
                    .append(" in, between ")
                    .append(NumberText.fixed(sizes.betweenInches(convention), 4))
                    .append(" in, in all ")
                    .append(NumberText.fixed(sizes.totalInches(convention), 4))
                    .append(" in\n");
        }
        text.append("  The plain deviation in all is taken for the variation; print and theory differ.\n");
        for (Convention convention : Convention.values()) {
            text.append('\n').append(WorkingText.plain(sizes.working(convention).givenBy(source())));
        }
        return text.append('\n').toString();
    }
}
