package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;

/**
 * A table in plain text: columns aligned by spaces, a ruled header, no line over the given width. When it is too wide, text
 * and headers are wrapped where that adds few lines; numbers never are.
 */
final class TextTable {

    static final int WIDTH = 100;

    private static final String GAP = "  ";

    private record Column(String header, boolean right) {}

    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final String indent;

    TextTable(String indent) {
        this.indent = indent;
    }

    TextTable left(String header) {
        columns.add(new Column(header, false));
        return this;
    }

    TextTable right(String header) {
        columns.add(new Column(header, true));
        return this;
    }

    TextTable row(String... cells) {
        return row(List.of(cells));
    }

    TextTable row(List<String> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns.size() + " columns");
        }
        rows.add(cells.stream().map(TextTable::oneLine).toList());
        return this;
    }

    /** Characters that move a terminal's cursor have no place in a cell. */
    static String oneLine(String cell) {
        StringBuilder out = new StringBuilder(cell.length());
        cell.codePoints().forEach(c -> {
            boolean control = c < 0x20 || (c >= 0x7F && c < 0xA0) || (c >= 0xD800 && c <= 0xDFFF);
            out.appendCodePoint(control ? (c == '\n' || c == '\t' ? ' ' : 0xFFFD) : c);
        });
        return out.toString();
    }

    String text() {
        int[] widths = widths();
        StringBuilder out = new StringBuilder();
        boolean headed = columns.stream().anyMatch(column -> !column.header.isEmpty());
        if (headed) {
            write(columns.stream().map(Column::header).toList(), widths, out);
            out.append(indent);
            for (int i = 0; i < widths.length; i++) {
                out.append(i == 0 ? "" : GAP).append("-".repeat(widths[i]));
            }
            out.append('\n');
        }
        rows.forEach(row -> write(row, widths, out));
        return out.toString();
    }

    private int[] widths() {
        List<ColumnWidth> widths = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            widths.add(ColumnWidth.of(
                    columns.get(i).header,
                    rows.stream().map(row -> row.get(column)).toList(),
                    columns.get(i).right));
        }
        return ColumnWidth.fit(widths, WIDTH - indent.length() - GAP.length() * (columns.size() - 1));
    }

    private void write(List<String> cells, int[] widths, StringBuilder out) {
        List<List<String>> wrapped = new ArrayList<>();
        int height = 1;
        for (int i = 0; i < widths.length; i++) {
            List<String> lines = wrap(cells.get(i), widths[i]);
            wrapped.add(lines);
            height = Math.max(height, lines.size());
        }
        for (int line = 0; line < height; line++) {
            StringBuilder text = new StringBuilder(indent);
            for (int i = 0; i < widths.length; i++) {
                List<String> lines = wrapped.get(i);
                String cell = line < lines.size() ? lines.get(line) : "";
                String fill = " ".repeat(Math.max(0, widths[i] - cell.length()));
                text.append(i == 0 ? "" : GAP);
                text.append(columns.get(i).right ? fill + cell : cell + fill);
            }
            out.append(text.toString().stripTrailing()).append('\n');
        }
    }

    /** Breaks at spaces and keeps the first line's indent; a word longer than the width is cut, behind a mark if it has one. */
    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        String stripped = text.stripLeading();
        StringBuilder line = new StringBuilder(" ".repeat(text.length() - stripped.length()));
        boolean first = true;
        for (String word : stripped.split(" ", -1)) {
            String rest = word;
            if (!first && !line.isEmpty() && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                int end = cut(rest, width);
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(first || line.isEmpty() ? "" : " ").append(rest);
            first = false;
        }
        lines.add(line.toString());
        return lines;
    }

    private static int cut(String word, int width) {
        for (int end = width; end > width / 2; end--) {
            if ("-./_".indexOf(word.charAt(end - 1)) >= 0) {
                return end;
            }
        }
        return width;
    }

    /** A paragraph within the width, first line and the others with their own indent. */
    static String paragraph(String first, String others, String text) {
        StringBuilder out = new StringBuilder();
        int width = WIDTH - Math.max(first.length(), others.length());
        for (String line : wrap(oneLine(text), width)) {
            out.append(out.isEmpty() ? first : others).append(line).append('\n');
        }
        return out.toString();
    }
}
