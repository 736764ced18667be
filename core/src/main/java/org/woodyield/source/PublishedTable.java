package org.woodyield.source;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table as printed, read from a CSV resource that lies beside the class that uses it.
 *
 * <p>The file begins with comment lines; {@code # source: id} names its entry in {@link Sources} and {@code # rows: n}
 * declares how many rows follow, so that a lost line is a failure and not a shorter table. Cells are kept as text.
 * Fractions such as {@code 1 1/2} are read by {@link Row#number}.
 */
public final class PublishedTable {

    private final String name;
    private final Source source;
    private final CsvText text;

    private PublishedTable(String name, Source source, CsvText text) {
        this.name = name;
        this.source = source;
        this.text = text;
    }

    /**
     * Reads a table.
     *
     * @param beside the class in whose package the resource lies
     * @param name the resource's file name
     * @return the table
     * @throws IllegalStateException if the file is missing, a row has too many or too few cells, the source is unknown,
     *     or the count of rows is not the declared one; the message gives file and line
     */
    public static PublishedTable read(Class<?> beside, String name) {
        return of(name, CsvText.read(beside, name));
    }

    static PublishedTable of(String name, CsvText text) {
        String sourceId = comment(name, text, "source:");
        String rows = comment(name, text, "rows:");
        if (!rows.equals(Integer.toString(text.rows().size()))) {
            throw new IllegalStateException(
                    name + " declares " + rows + " rows and has " + text.rows().size());
        }
        Source source;
        try {
            source = Sources.get(sourceId);
        } catch (IllegalArgumentException e) {
            throw new IllegalStateException(name + ": " + e.getMessage(), e);
        }
        return new PublishedTable(name, source, text);
    }

    private static String comment(String name, CsvText text, String key) {
        List<String> found = text.comments().stream()
                .filter(line -> line.startsWith(key))
                .map(line -> line.substring(key.length()).strip())
                .toList();
        if (found.size() != 1) {
            throw new IllegalStateException(name + " needs one line '# " + key + " …', has " + found.size());
        }
        return found.get(0);
    }

    /**
     * The resource's file name.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * What the table as a whole rests on.
     *
     * @return its source
     */
    public Source source() {
        return source;
    }

    /**
     * The column names in order.
     *
     * @return an immutable list
     */
    public List<String> columns() {
        return text.header();
    }

    /**
     * The rows in the order of the file.
     *
     * @return an immutable list
     */
    public List<Row> rows() {
        return text.rows().stream()
                .map(row -> new Row(name, text.header(), row.line(), row.cells()))
                .toList();
    }

    /** One row of a {@link PublishedTable}. */
    public static final class Row {
        // Double.parseDouble alone would also take NaN, 1d and blanks.
        private static final Pattern DECIMAL = Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");
        private static final Pattern FRACTION = Pattern.compile("(-?)(?:(\\d{1,9})[ -])?(\\d{1,9})/(\\d{1,9})");

        private final String table;
        private final List<String> columns;
        private final int line;
        private final List<String> cells;

        private Row(String table, List<String> columns, int line, List<String> cells) {
            this.table = table;
            this.columns = columns;
            this.line = line;
            this.cells = cells;
        }

        /**
         * Where the row stands in its file, from 1, comments counted.
         *
         * @return the line number
         */
        public int line() {
            return line;
        }

        /**
         * A cell as printed.
         *
         * @param column the column's name
         * @return the text, possibly empty
         * @throws IllegalStateException if there is no such column
         */
        public String text(String column) {
            int index = columns.indexOf(column);
            if (index < 0) {
                throw new IllegalStateException(table + " has no column " + column + "; it has " + columns);
            }
            return cells.get(index);
        }

        /**
         * A cell as a number; {@code 3/4} and {@code 1 1/2} are understood.
         *
         * @param column the column's name
         * @return the value
         * @throws IllegalStateException if there is no such column or the cell is not a number; names file, line, text
         */
        public double number(String column) {
            String cell = text(column);
            Matcher fraction = FRACTION.matcher(cell);
            if (fraction.matches() && Integer.parseInt(fraction.group(4)) != 0) {
                double whole = fraction.group(2) == null ? 0 : Integer.parseInt(fraction.group(2));
                double value =
                        whole + (double) Integer.parseInt(fraction.group(3)) / Integer.parseInt(fraction.group(4));
                return fraction.group(1).isEmpty() ? value : -value;
            }
            if (DECIMAL.matcher(cell).matches()) {
                double value = Double.parseDouble(cell);
                if (Double.isFinite(value)) {
                    return value;
                }
            }
            throw new IllegalStateException(
                    table + " line " + line + ", column " + column + ": '" + cell + "' is not a number");
        }

        /**
         * A cell as a number, or nothing where the cell is empty.
         *
         * @param column the column's name
         * @return the value if there is one
         * @throws IllegalStateException as {@link #number}
         */
        public Optional<Double> numberIfPrinted(String column) {
            return text(column).isEmpty() ? Optional.empty() : Optional.of(number(column));
        }
    }
}
