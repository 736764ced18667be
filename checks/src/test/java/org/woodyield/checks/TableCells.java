package org.woodyield.checks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every number in the tables of core: cells that are a number, a fraction or a list of them. */
final class TableCells {

    /** The register of sources holds no measure, and the demo job is invented. */
    private static final Set<String> LEFT_OUT = Set.of("source", "job");

    /** A column that says its sizes in words. */
    private static final Set<String> IN_WORDS = Set.of("cuttings");

    private static final Pattern CELL = Pattern.compile("(\"(?:[^\"]|\"\")*\"|[^,]*)(?:,|$)");
    private static final Pattern ONE = Pattern.compile("-?(?:\\d+ )?\\d+/\\d+|-?\\d+(?:\\.\\d+)?");
    private static final Pattern ITEM = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final Pattern LIST = Pattern.compile(ITEM + "(?: " + ITEM + ")+");

    private TableCells() {}

    static List<Change> all(Path resources) throws IOException {
        List<Change> changes = new ArrayList<>();
        Path root = resources.resolve("org/woodyield");
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                String name = root.relativize(file).toString().replace('\\', '/');
                if (name.endsWith(".csv") && !LEFT_OUT.contains(name.substring(0, name.indexOf('/')))) {
                    add(name, Files.readString(file), changes);
                }
            }
        }
        return changes;
    }

    private static void add(String name, String text, List<Change> changes) {
        List<String> header = List.of();
        int row = 0;
        int line = 0;
        int start = 0;
        for (String content : text.split("\n", -1)) {
            line++;
            if (!content.startsWith("#") && header.isEmpty()) {
                header = List.of(content.split(",", -1));
            } else if (!content.startsWith("#")) {
                row++;
                Matcher cell = CELL.matcher(content);
                for (String column : header) {
                    if (!cell.find()) {
                        break;
                    }
                    Matcher number = numbers(column, cell.group(1)).matcher(cell.group(1));
                    while (number.find()) {
                        String from = number.group();
                        int place = start + cell.start(1) + number.start();
                        changes.add(new Change(
                                Change.Sort.TABLE, name, column, row, line, place, from, Change.nudged(from)));
                    }
                }
            }
            start += content.length() + 1;
        }
    }

    /** What is a number in a cell; nothing matches in a text. */
    static Pattern numbers(String column, String cell) {
        if (ONE.matcher(cell).matches()) {
            return ONE;
        }
        return LIST.matcher(cell).matches() || IN_WORDS.contains(column) ? ITEM : Pattern.compile("(?!)");
    }
}
