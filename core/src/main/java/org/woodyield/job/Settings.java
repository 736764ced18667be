package org.woodyield.job;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.woodyield.wood.NearestNames;

/** The properties file: one {@code key = value} a line; a line that begins with # is a comment. */
final class Settings {

    private final Map<String, Cell> cells;

    private Settings(Map<String, Cell> cells) {
        this.cells = cells;
    }

    /** Reads the lines; unknown, repeated and missing keys are noted. */
    static Settings read(String file, String text, Collection<Key> keys, Problems problems) {
        List<String> known = keys.stream().map(Key::text).toList();
        Map<String, Cell> cells = new LinkedHashMap<>();
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            String content = line.strip();
            if (content.isEmpty() || content.startsWith("#")) {
                continue;
            }
            int equals = content.indexOf('=');
            if (equals < 0) {
                problems.add(file, number, "", content, "key = value", "begin a comment with #");
                continue;
            }
            String name = content.substring(0, equals).strip();
            Cell cell = new Cell(file, number, name, content.substring(equals + 1), problems);
            if (!known.contains(name)) {
                String near = NearestNames.question(name, known);
                problems.add(
                        file,
                        number,
                        "",
                        name,
                        "keys of the format",
                        near.isEmpty() ? "remove the line, or begin it with #" : near);
                continue;
            }
            if (cell.isEmpty()) {
                refuseEmpty(
                        cell,
                        keys.stream().filter(key -> key.text().equals(name)).findFirst());
            }
            Cell earlier = cells.putIfAbsent(name, cell);
            if (earlier != null) {
                problems.add(
                        file,
                        number,
                        name,
                        cell.text(),
                        "each key once",
                        "it stands in line " + earlier.line() + " already; remove one of the two");
            }
        }
        for (Key key : keys) {
            if (key.required() && !cells.containsKey(key.text())) {
                problems.add(
                        file,
                        0,
                        key.text(),
                        "",
                        "a line " + key.text() + " = " + key.example(),
                        "the key is missing; add it");
            }
        }
        return new Settings(cells);
    }

    /** A key without a value is neither the value nor the absence of the key. */
    private static void refuseEmpty(Cell cell, Optional<Key> key) {
        String example = key.map(Key::example).orElse("");
        cell.missing(
                example.isEmpty() ? "a value" : "a value, such as " + example,
                "nothing stands here; write one"
                        + (key.map(Key::required).orElse(false) ? "" : ", or begin the line with #"));
    }

    /** What stands at a key; nothing where it is absent, or left empty, which is noted. */
    Optional<Cell> cell(Key key) {
        return Optional.ofNullable(cells.get(key.text())).filter(cell -> !cell.isEmpty());
    }
}
