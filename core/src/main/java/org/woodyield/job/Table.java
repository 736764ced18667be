package org.woodyield.job;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.wood.NearestNames;

/** A table of the job folder: comma-separated, the names of the columns in the first line that is no comment. */
final class Table {

    /** A column that a table has. */
    record Column(String name, boolean required) {
        static Column required(String name) {
            return new Column(name, true);
        }

        static Column optional(String name) {
            return new Column(name, false);
        }
    }

    /** One row; a column that the file does not have reads as empty. */
    static final class Row {
        private final String file;
        private final int line;
        private final int headerLine;
        private final Map<String, Integer> places;
        private final List<String> cells;
        private final Problems problems;

        private Row(
                String file,
                int line,
                int headerLine,
                Map<String, Integer> places,
                List<String> cells,
                Problems problems) {
            this.file = file;
            this.line = line;
            this.headerLine = headerLine;
            this.places = places;
            this.cells = cells;
            this.problems = problems;
        }

        int line() {
            return line;
        }

        /** Whether the table has one of these columns. */
        boolean hasAny(List<Column> columns) {
            return columns.stream().anyMatch(column -> places.containsKey(column.name()));
        }

        /** This row with its problems noted elsewhere. */
        Row with(Problems elsewhere) {
            return new Row(file, line, headerLine, places, cells, elsewhere);
        }

        Cell cell(String column) {
            Integer place = places.get(column);
            return place == null
                    ? Cell.lacking(file, line, headerLine, column, problems)
                    : new Cell(file, line, column, cells.get(place), problems);
        }

        /** The cell, or nothing where it is empty. */
        Optional<Cell> cellIfAny(String column) {
            return Optional.of(cell(column)).filter(cell -> !cell.isEmpty());
        }
    }

    /** A row with too many or too few cells, of which no cell is known to stand in its column. */
    record Ragged(Map<String, Integer> places, List<String> cells) {
        /** What stands where the cell of a column would; nothing where that is empty or beyond the end. */
        Optional<String> cell(String column) {
            return Optional.ofNullable(places.get(column))
                    .filter(place -> place < cells.size())
                    .map(place -> cells.get(place).strip())
                    .filter(text -> !text.isEmpty());
        }
    }

    private static final Pattern AT_LINE = Pattern.compile("line (\\d{1,9})");

    private Table() {}

    /** The rows that have as many cells as the header; all else is noted. */
    static List<Row> read(String file, String text, List<Column> columns, Problems problems) {
        return read(file, text, columns, problems, ragged -> {});
    }

    /** The same; rows with too many or too few cells are given on besides. */
    static List<Row> read(
            String file, String text, List<Column> columns, Problems problems, Consumer<Ragged> ofOtherLength) {
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(text)) {
            reader.forEach(records::add);
        } catch (CsvParseException e) {
            problems.add(
                    file,
                    lineOf(e),
                    "",
                    "",
                    "cells separated by commas; a cell with a comma or a quote in quotes, a quote within doubled",
                    "close the quote, or double it");
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        if (records.isEmpty()) {
            if (problems.isEmpty()) {
                problems.add(
                        file,
                        0,
                        "",
                        "",
                        "a first line with the names of the columns",
                        "add the line " + names(columns));
            }
            return List.of();
        }
        List<String> header = header(file, records.get(0), columns, problems);
        if (header.isEmpty()) {
            return List.of();
        }
        // One for all rows.
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            places.putIfAbsent(header.get(i), i);
        }
        int headerLine = Math.toIntExact(records.get(0).getStartingLineNumber());
        List<Column> lacking = columns.stream()
                .filter(column -> column.required() && !header.contains(column.name()))
                .toList();
        List<Row> rows = new ArrayList<>();
        for (CsvRecord record : records.subList(1, records.size())) {
            int line = Math.toIntExact(record.getStartingLineNumber());
            List<String> cells = record.getFields();
            if (cells.stream().allMatch(String::isBlank)) {
                continue;
            }
            for (Column column : lacking) {
                problems.addRowInWant(file, column.name(), line);
            }
            if (cells.size() != header.size()) {
                problems.add(
                        file,
                        line,
                        "",
                        String.join(",", cells),
                        header.size() + Problem.CELLS,
                        "the line has " + cells.size() + "; a value with a comma needs quotes");
                ofOtherLength.accept(new Ragged(places, cells));
                continue;
            }
            // The first cell alone tells of nearly every row that it is none.
            if (cells.get(0).strip().equalsIgnoreCase(header.get(0))
                    && cells.stream().map(Table::name).toList().equals(header)) {
                problems.add(file, line, "", String.join(",", cells), Problem.HEADER_ONCE, "remove this line");
                continue;
            }
            rows.add(new Row(file, line, headerLine, places, cells, problems));
        }
        return List.copyOf(rows);
    }

    private static List<String> header(String file, CsvRecord record, List<Column> columns, Problems problems) {
        int line = Math.toIntExact(record.getStartingLineNumber());
        List<String> known = columns.stream().map(Column::name).toList();
        List<String> header = new ArrayList<>();
        for (String cell : record.getFields()) {
            String name = name(cell);
            if ((record.getFieldCount() == 1 && name.indexOf(';') >= 0) || name.indexOf('\t') >= 0) {
                problems.add(file, line, "", name, "cells separated by commas", "save the table with commas");
                return List.of();
            }
            if (!known.contains(name)) {
                String near = NearestNames.question(name, known);
                problems.add(
                        file,
                        line,
                        name.isEmpty() ? "column " + (header.size() + 1) : name,
                        cell,
                        "the columns " + String.join(", ", known),
                        near.isEmpty()
                                ? "rename it to one of these, or remove the column"
                                : near + " if not, remove the column");
            } else if (header.contains(name)) {
                problems.add(file, line, name, cell, "each column once", "remove one of the two");
            }
            header.add(name);
        }
        for (Column column : columns) {
            if (column.required() && !header.contains(column.name())) {
                problems.addLackingColumn(file, line, column.name(), "the columns " + names(columns), "");
            }
        }
        return header;
    }

    private static String name(String cell) {
        return cell.strip().toLowerCase(Locale.ROOT);
    }

    private static String names(List<Column> columns) {
        return String.join(",", columns.stream().map(Column::name).toList());
    }

    /** The line where the faulty record begins, read from the reader's message; 0 where it does not say. */
    private static int lineOf(CsvParseException fault) {
        Matcher matcher = AT_LINE.matcher(String.valueOf(fault.getMessage()));
        return matcher.find() ? Integer.parseInt(matcher.group(1)) : 0;
    }
}
