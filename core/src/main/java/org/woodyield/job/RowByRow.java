package org.woodyield.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A table that is read row by row: a row that cannot be used is named and counted, the others go on. */
final class RowByRow {

    private static final int SHOWN = 20;

    private final String file;
    private final List<Table.Row> rows;
    private final List<Table.Ragged> ragged;
    private final Problems refused;
    private final int count;

    private RowByRow(String file, List<Table.Row> rows, List<Table.Ragged> ragged, Problems refused) {
        this.file = file;
        this.rows = rows;
        this.ragged = List.copyOf(ragged);
        this.refused = refused;
        count = rows.size() + refused.inOrder().size();
    }

    /**
     * Reads a table. A row with too many or too few cells is one bad row; any other fault of the table makes all of it doubtful.
     *
     * @param each what a row is for, as in "a row for each log"
     * @param add what to add where there is none
     * @throws BadInputException if the table as a whole cannot be used
     */
    static RowByRow of(String file, String text, List<Table.Column> columns, String each, String add) {
        Problems ofTable = new Problems();
        List<Table.Ragged> ragged = new ArrayList<>();
        List<Table.Row> rows = Table.read(file, text, columns, ofTable, ragged::add);
        List<Problem> found = ofTable.inOrder();
        if (rows.isEmpty() && found.isEmpty()) {
            ofTable.add(file, 0, "", "", each + " below the header", "the table has none; " + add);
        }
        if (rows.isEmpty() || found.stream().anyMatch(problem -> !problem.ofOneRow())) {
            ofTable.stopIfAny();
        }
        return new RowByRow(file, rows, ragged, ofTable);
    }

    /** Whether the table has one of these columns. */
    boolean hasAny(List<Table.Column> columns) {
        return rows.get(0).hasAny(columns);
    }

    /** Takes what a row says, and the line where it stands. */
    interface Taker<T> {
        void take(T value, int line);
    }

    /** Gives on what each row says, one after the other; those that cannot be used are left out. */
    <T> void read(Function<Table.Row, Optional<T>> meaning, Taker<? super T> taker) {
        for (Table.Row row : rows) {
            readAt(row, meaning).ifPresent(value -> taker.take(value, row.line()));
        }
    }

    /** Reads what a row says, alone or with others; what is wrong is told at this row. */
    <T> Optional<T> readAt(Table.Row row, Function<Table.Row, Optional<T>> meaning) {
        Problems ofRow = new Problems();
        Optional<T> one = meaning.apply(row.with(ofRow));
        refused.addAll(ofRow);
        return ofRow.isEmpty() ? one : Optional.empty();
    }

    /** The rows with too many or too few cells. */
    List<Table.Ragged> ragged() {
        return ragged;
    }

    /** How many rows there are, good or bad. */
    int count() {
        return count;
    }

    /** What is wrong with the rows that were left out, in the order of the table. */
    List<Problem> refused() {
        return refused.inOrder().stream()
                .sorted(Comparator.comparingInt(Problem::line))
                .toList();
    }

    /**
     * Names the first of the bad rows.
     *
     * @param where where all of them are written, if they are
     */
    void tell(Terminal terminal, Optional<String> where) {
        refused().stream().limit(SHOWN).forEach(problem -> terminal.say(problem.toString()));
        int all = refused().size();
        if (all > SHOWN) {
            terminal.say((all - SHOWN) + " more problems"
                    + where.map(file -> ", all in " + file).orElse("; --out FOLDER writes all of them"));
        }
    }

    /**
     * Names all of the bad rows.
     *
     * @param used how many rows the result rests on
     * @return how many rows were left out, in a sentence; nothing where all are used
     * @throws BadInputException if none is
     */
    Optional<String> tellAll(Terminal terminal, int used) {
        refused().forEach(problem -> terminal.say(problem.toString()));
        if (used == 0) {
            throw new BadInputException("no row of " + file + " can be used");
        }
        return used == count ? Optional.empty() : Optional.of(leftOut(used));
    }

    private String leftOut(int used) {
        int out = count - used;
        return out + " of " + count + " rows of " + file + " could not be used and " + (out == 1 ? "is" : "are")
                + " left out; the messages say why.";
    }

    /** The rows that were left out, as a file. */
    byte[] refusedTable() {
        OutputTable table = new OutputTable("line", "column", "value", "allowed", "remedy");
        for (Problem problem : refused()) {
            table.row()
                    .number(problem.line())
                    .text(problem.column())
                    .text(problem.value())
                    .text(problem.allowed())
                    .text(problem.remedy());
        }
        return table.bytes();
    }
}
