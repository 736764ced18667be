package org.woodyield.job;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;

/**
 * A table that the plan writes: UTF-8, lines ended by a line feed, cells quoted as RFC 4180 says. A text that a spreadsheet
 * would run as a formula gets an apostrophe before it; numbers stay numbers.
 */
final class OutputTable {

    /** Up to this the product of a value with a power of ten errs by less than a millionth. */
    private static final double MOST_QUICK = 1e6;

    private final int columns;
    private final StringBuilder out = new StringBuilder();
    private Row last;

    OutputTable(String... columns) {
        this.columns = columns.length;
        last = new Row();
        for (String column : columns) {
            last.cell(column);
        }
    }

    /** Begins a row; the one before it counts once it has a cell for each column, and takes no more. */
    Row row() {
        last.end();
        last = new Row();
        return last;
    }

    /** A row that is being filled from the left. */
    final class Row {
        private int cells;

        Row text(String text) {
            return cell(harmless(text));
        }

        Row number(double value, int decimals) {
            return cell(fixed(value, decimals));
        }

        Row number(long value) {
            begin();
            out.append(value);
            return this;
        }

        Row empty() {
            begin();
            return this;
        }

        private void begin() {
            if (last != this) {
                throw new IllegalStateException("a row is filled after the next has begun");
            }
            if (cells > 0) {
                out.append(',');
            }
            cells++;
        }

        private Row cell(String text) {
            begin();
            if (isPlain(text) && !(cells == 1 && text.startsWith("#"))) {
                out.append(text);
            } else {
                out.append('"').append(text.replace("\"", "\"\"")).append('"');
            }
            return this;
        }

        private void end() {
            if (cells != columns) {
                throw new IllegalStateException(cells + " cells for " + columns + " columns");
            }
            out.append('\n');
            cells++;
        }
    }

    /** Whether a reader takes the text as it stands, without quotes. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ',' || c == '"' || c == '\n' || c == '\r') {
                return false;
            }
        }
        return true;
    }

    /** The whole table; no row can be added any more. */
    byte[] bytes() {
        last.end();
        return out.toString().getBytes(StandardCharsets.UTF_8);
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
