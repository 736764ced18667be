package org.woodyield.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * Reads the library's own tables: UTF-8, comma, quotes within one line, comment lines first. It is not for files of a
 * user; those are read in {@code org.woodyield.job}.
 */
final class CsvText {

    /** One line of cells. */
    record Row(int line, List<String> cells) {
        String cell(int column) {
            return cells.get(column);
        }
    }

    private final String name;
    private final List<String> comments;
    private final List<String> header;
    private final List<Row> rows;

    private CsvText(String name, List<String> comments, List<String> header, List<Row> rows) {
        this.name = name;
        this.comments = List.copyOf(comments);
        this.header = header;
        this.rows = List.copyOf(rows);
    }

    static CsvText read(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no table " + name + " beside " + beside.getName());
            }
            return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    static CsvText parse(String name, String text) {
        List<String> comments = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        List<String> header = List.of();
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.startsWith("#") && header.isEmpty()) {
                comments.add(line.substring(1).strip());
            } else if (line.startsWith("#") || line.isBlank()) {
                throw new IllegalStateException(
                        name + " line " + number + ": comments stand before the header, and no line is blank");
            } else {
                List<String> cells = cells(name, number, line);
                if (header.isEmpty()) {
                    if (cells.contains("") || new HashSet<>(cells).size() != cells.size()) {
                        throw new IllegalStateException(
                                name + " line " + number + ": each column needs a name of its own: " + cells);
                    }
                    header = cells;
                } else if (cells.size() != header.size()) {
                    throw new IllegalStateException(
                            name + " line " + number + ": " + cells.size() + " cells, " + header.size() + " columns");
                } else {
                    rows.add(new Row(number, cells));
                }
            }
        }
        if (header.isEmpty() || rows.isEmpty()) {
            throw new IllegalStateException(name + " has no rows");
        }
        return new CsvText(name, comments, header, rows);
    }

    private static List<String> cells(String name, int number, String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        boolean closed = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (quoted && c == '"') {
                quoted = false;
                closed = true;
            } else if (quoted) {
                cell.append(c);
            } else if (c == ',') {
                cells.add(cell.toString());
                cell.setLength(0);
                closed = false;
            } else if (c == '"' && cell.isEmpty() && !closed) {
                quoted = true;
            } else if (c == '"' || closed) {
                throw new IllegalStateException(name + " line " + number
                        + ": a quote stands inside a cell; quote the whole cell and double it");
            } else {
                cell.append(c);
            }
        }
        if (quoted) {
            throw new IllegalStateException(name + " line " + number + ": a quote is not closed");
        }
        cells.add(cell.toString());
        return List.copyOf(cells);
    }

    void requireHeader(String... expected) {
        if (!header.equals(List.of(expected))) {
            throw new IllegalStateException(name + " has the columns " + header + ", expected " + List.of(expected));
        }
    }

    List<String> comments() {
        return comments;
    }

    List<String> header() {
        return header;
    }

    List<Row> rows() {
        return rows;
    }
}
