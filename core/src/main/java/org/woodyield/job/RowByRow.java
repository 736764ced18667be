package org.woodyield.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A table that is read row by row: a row that cannot be used is named and counted, the others go on. */
final class RowByRow {

    private static final int SHOWN = 20;

    private final List<Table.Row> rows;
    private final List<Problem> refused;
    private final int count;

    private RowByRow(List<Table.Row> rows, List<Problem> refused) {
        this.rows = rows;
        this.refused = new ArrayList<>(refused);
        count = rows.size() + refused.size();
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
        List<Table.Row> rows = Table.read(file, text, columns, ofTable);
        List<Problem> found = ofTable.inOrder();
        if (rows.isEmpty() && found.isEmpty()) {
            ofTable.add(file, 0, "", "", each + " below the header", "the table has none; " + add);
        }
        if (rows.isEmpty() || found.stream().anyMatch(problem -> !problem.ofOneRow())) {
            ofTable.stopIfAny();
        }
        return new RowByRow(rows, found);
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
            Problems ofRow = new Problems();
            Optional<T> one = meaning.apply(row.with(ofRow));
            if (one.isPresent() && ofRow.isEmpty()) {
                taker.take(one.get(), row.line());
            } else {
                refused.addAll(ofRow.inOrder());
            }
        }
        refused.sort(Comparator.comparingInt(Problem::line));
    }

    /** How many rows there are, good or bad. */
    int count() {
        return count;
    }

    /** What is wrong with the rows that were left out, in the order of the table. */
    List<Problem> refused() {
        return List.copyOf(refused);
    }

    /**
     * Names the first of the bad rows.
     *
     * @param where where all of them are written, if they are
     */
    void tell(Terminal terminal, Optional<String> where) {
        refused.stream().limit(SHOWN).forEach(problem -> terminal.say(problem.toString()));
        if (refused.size() > SHOWN) {
            terminal.say((refused.size() - SHOWN) + " more problems"
                    + where.map(file -> ", all in " + file).orElse("; --out FOLDER writes all of them"));
        }
    }

    /** The rows that were left out, as a file. */
    byte[] refusedTable() {
        OutputTable table = new OutputTable("line", "column", "value", "allowed", "remedy");
        for (Problem problem : refused) {
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
