package org.woodyield.job;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A table that the plan writes: UTF-8, lines ended by a line feed, cells quoted as RFC 4180 says. A text that a spreadsheet
 * would run as a formula gets an apostrophe before it; numbers stay numbers.
 */
final class OutputTable {

    private final List<String> columns;
    private final List<List<String>> rows = new ArrayList<>();

    OutputTable(String... columns) {
        this.columns = List.of(columns);
    }

    /** Begins a row; it counts once it has a cell for each column. */
    Row row() {
        List<String> cells = new ArrayList<>();
        rows.add(cells);
        return new Row(cells);
    }

    /** A row that is being filled from the left. */
    static final class Row {
        private final List<String> cells;

        private Row(List<String> cells) {
            this.cells = cells;
        }

        Row text(String text) {
            cells.add(harmless(text));
            return this;
        }

        Row number(double value, int decimals) {
            cells.add(fixed(value, decimals));
            return this;
        }

        Row number(long value) {
            cells.add(Long.toString(value));
            return this;
        }

        Row empty() {
            cells.add("");
            return this;
        }
    }

    byte[] bytes() {
        StringWriter text = new StringWriter();
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            writer.writeRecord(columns);
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalStateException(row.size() + " cells for " + columns.size() + " columns");
                }
                writer.writeRecord(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The text with an apostrophe before it where a spreadsheet would take it for a formula. */
    static String harmless(String text) {
        if (text.isEmpty()) {
            return text;
        }
        return switch (text.charAt(0)) {
            // The last four are the full-width forms, which some spreadsheets read alike.
            case '=', '+', '-', '@', '\t', '\r', '\n', '\uff1d', '\uff0b', '\uff0d', '\uff20' -> "'" + text;
            default -> text;
        };
    }

    /** A number with a fixed count of decimals, an exact half away from zero; never minus zero. */
    static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("a table of the plan would hold " + value);
        }
        return new BigDecimal(Double.toString(value))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
