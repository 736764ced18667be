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

    /** Up to this the product of a value with a power of ten errs by less than a millionth. */
    private static final double MOST_QUICK = 1e6;

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
        if (decimals <= 3 && Math.abs(value) < MOST_QUICK) {
            double scaled = Math.abs(value) * tens(decimals);
            long below = (long) scaled;
            // Away from a half by far more than the product can err, the shortest decimal rounds as the product does.
            if (Math.abs(scaled - below - 0.5) > 1e-3) {
                return quick(value < 0, scaled - below < 0.5 ? below : below + 1, decimals);
            }
        }
        return new BigDecimal(Double.toString(value))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static double tens(int decimals) {
        return switch (decimals) {
            case 0 -> 1;
            case 1 -> 10;
            case 2 -> 100;
            default -> 1000;
        };
    }

    private static String quick(boolean negative, long scaled, int decimals) {
        if (decimals == 0) {
            return Long.toString(negative ? -scaled : scaled);
        }
        String digits = Long.toString(scaled);
        StringBuilder text = new StringBuilder(digits.length() + 3);
        text.append(negative && scaled != 0 ? "-" : "");
        text.append("0".repeat(Math.max(0, decimals + 1 - digits.length()))).append(digits);
        return text.insert(text.length() - decimals, '.').toString();
    }
}
