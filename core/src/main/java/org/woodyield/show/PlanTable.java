package org.woodyield.show;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.woodyield.measure.Length;
import org.woodyield.source.Source;

/**
 * A table of a plan: what a reader sees in a cell, and beside it the bare number for a spreadsheet.
 *
 * @param name short and stable, letters and hyphens, for a file
 * @param title what it shows, for people
 * @param log the log that it is about; empty for all
 * @param columns from left to right
 * @param rows each with a cell for every column
 */
public record PlanTable(String name, String title, Optional<String> log, List<Column> columns, List<List<Cell>> rows) {

    /** A text with more characters needs a wide column, or its row becomes very high on a narrow screen. */
    private static final int LONG = 60;

    /** At the head of a row a text with more characters is broken, for it is no wider than a part of the page. */
    private static final int LONG_HEAD = 30;

    /**
     * Keeps immutable copies.
     *
     * @throws IllegalArgumentException if a row is longer or shorter than the columns
     */
    public PlanTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        name + ": " + row.size() + " cells for " + columns.size() + " columns");
            }
        }
    }

    /**
     * A column.
     *
     * @param header for people, with the unit
     * @param key for files, with the unit: lower case and hyphens
     * @param number whether its cells are numbers
     */
    public record Column(String header, String key, boolean number) {}

    /**
     * A cell.
     *
     * @param shown what a reader sees
     * @param value the bare number in the unit of the column's key; empty for a text or where there is none
     * @param decimals with how many decimals the number is written to a file
     * @param text whether it is a text
     */
    public record Cell(String shown, Optional<Double> value, int decimals, boolean text) {

        /** Nothing is known here. */
        static final Cell NONE = new Cell("–", Optional.empty(), 0, false);

        static Cell text(String text) {
            return new Cell(text, Optional.empty(), 0, true);
        }

        static Cell number(double value, int decimals) {
            return new Cell(NumberText.fixed(value, decimals), Optional.of(value), decimals, false);
        }

        /** A number of which files keep more digits than people want to see. */
        static Cell number(double value, int decimals, int decimalsInFiles) {
            return new Cell(NumberText.fixed(value, decimals), Optional.of(value), decimalsInFiles, false);
        }

        static Cell whole(int value) {
            return number(value, 0);
        }

        /** Shown as people write it, in files as millimetres. */
        static Cell length(String shown, Length length) {
            return new Cell(shown, Optional.of(length.toMetres() * 1000), 3, false);
        }
    }

    /** Builds a table row by row. */
    static final class Builder {
        private final String name;
        private final String title;
        private final Optional<String> log;
        private final List<Column> columns = new ArrayList<>();
        private final List<List<Cell>> rows = new ArrayList<>();

        Builder(String name, String title, Optional<String> log) {
            this.name = name;
            this.title = title;
            this.log = log;
        }

        Builder text(String header, String key) {
            columns.add(new Column(header, key, false));
            return this;
        }

        Builder number(String header, String key) {
            columns.add(new Column(header, key, true));
            return this;
        }

        Builder row(Cell... cells) {
            return row(List.of(cells));
        }

        Builder row(List<Cell> cells) {
            rows.add(List.copyOf(cells));
            return this;
        }

        PlanTable build() {
            return new PlanTable(name, title, log, columns, rows);
        }
    }

    static Builder of(String name, String title) {
        return new Builder(name, title, Optional.empty());
    }

    static Builder ofLog(String name, String title, String log) {
        return new Builder(name, title, Optional.of(log));
    }

    /** What the figures of a sheet rest on. */
    static PlanTable ofSources(Collection<Source> sources) {
        Builder table = of("sources", "What the figures rest on")
                .text("Standing", "standing")
                .text("Source", "source")
                .text("Key", "key");
        for (Source source : sources) {
            table.row(Cell.text(source.standing().label()), Cell.text(source.citation()), Cell.text(source.id()));
        }
        return table.build();
    }

    /** The same rows with the log in a column of its own. */
    PlanTable withLogColumn() {
        List<Column> wider = new ArrayList<>(columns);
        wider.add(0, new Column("Log", "log", false));
        List<List<Cell>> longer = new ArrayList<>();
        for (List<Cell> row : rows) {
            List<Cell> cells = new ArrayList<>(row);
            cells.add(0, Cell.text(log.orElseThrow()));
            longer.add(cells);
        }
        return new PlanTable(name, title, log, wider, longer);
    }

    /** These rows and then those of a table with the same columns. */
    PlanTable followedBy(PlanTable other, String titleOfBoth) {
        List<List<Cell>> both = new ArrayList<>(rows);
        both.addAll(other.rows);
        return new PlanTable(name, titleOfBoth, Optional.empty(), columns, both);
    }

    /** Without columns of text in which nothing stands; files keep them. */
    private PlanTable forReaders() {
        List<Integer> kept = IntStream.range(0, columns.size())
                .filter(i -> rows.isEmpty()
                        || columns.get(i).number()
                        || rows.stream().anyMatch(row -> !row.get(i).shown().isEmpty()))
                .boxed()
                .toList();
        return new PlanTable(
                name,
                title,
                log,
                kept.stream().map(columns::get).toList(),
                rows.stream().map(row -> kept.stream().map(row::get).toList()).toList());
    }

    String plain(String indent) {
        return forReaders().text(indent);
    }

    private String text(String indent) {
        TextTable table = new TextTable(indent);
        for (Column column : columns) {
            if (column.number()) {
                table.right(column.header());
            } else {
                table.left(column.header());
            }
        }
        rows.forEach(row -> table.row(row.stream().map(Cell::shown).toList()));
        return table.text();
    }

    Markup html() {
        return forReaders().markup();
    }

    private Markup markup() {
        Markup out = new Markup();
        out.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", title);
        out.open("table")
                .open("caption")
                .element("span", title)
                .close()
                .line()
                .open("thead")
                .open("tr");
        for (Column column : columns) {
            out.element("th", column.header(), "scope", "col", "class", column.number() ? "number" : "");
        }
        out.close().close().line().open("tbody").line();
        for (List<Cell> row : rows) {
            out.open("tr");
            for (int i = 0; i < row.size(); i++) {
                String kind = columns.get(i).number() ? "number" : "";
                if (i == 0) {
                    out.element(
                            "th",
                            row.get(i).shown(),
                            "scope",
                            "row",
                            "class",
                            row.get(i).shown().length() > LONG_HEAD ? "long" : kind);
                } else {
                    out.element(
                            "td",
                            row.get(i).shown(),
                            "class",
                            row.get(i).shown().length() > LONG ? "long" : kind);
                }
            }
            out.closeLine();
        }
        return out.close().close().closeLine();
    }
}
