package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.woodyield.source.PublishedTable;

/**
 * Each number of core's tables and formulas a unit of its last printed digit greater: does a check turn red? What no check
 * notices must be listed in {@code not-held.csv} with the reason, and nothing else may be.
 *
 * <p>The report is written to {@code target/perturbation.csv}, a summary to {@code target/perturbation.txt}, and the list as
 * it would have to be to {@code target/not-held.csv}.
 */
@Tag("perturbation")
class PerturbationTest {

    private static final List<String> PACKAGES = List.of("wood", "log", "scaling", "lumber", "sawing", "work");

    private static final Map<String, String> TABLES = CheckTables.all();

    /** What noticed a change first, of the strongest kind. */
    private record Outcome(Change change, Holder holder, String by, int red) {}

    @Test
    void aChangedNumberTurnsACheckRed() throws IOException {
        assertThat(red(Map.of(), TABLES)).as("red without any change").isEmpty();
        List<Change> changes = new ArrayList<>(TableCells.all(Path.of("../core/src/main/resources")));
        for (String pack : PACKAGES) {
            changes.addAll(SourceNumbers.of(Path.of("../core/src/main/java"), pack));
        }
        String only = System.getProperty("perturbation.only", "");
        changes.removeIf(change -> !change.file().startsWith(only));
        Map<String, List<Change>> byFile =
                changes.stream().collect(Collectors.groupingBy(Change::file, TreeMap::new, Collectors.toList()));
        List<Outcome> outcomes = new ArrayList<>();
        for (List<Change> ofFile : byFile.values()) {
            outcomes.addAll(outcomes(ofFile));
        }
        Map<String, Listed> listed = listed();
        Map<String, Map<Integer, Holder>> found = new TreeMap<>();
        Map<String, Set<Integer>> all = new HashMap<>();
        for (Outcome outcome : outcomes) {
            Change change = outcome.change();
            all.computeIfAbsent(change.group(), any -> new TreeSet<>()).add(change.count());
            if (!outcome.holder().holds()) {
                found.computeIfAbsent(change.group(), any -> new TreeMap<>()).put(change.count(), outcome.holder());
            }
        }
        write(outcomes);
        String summary = summary(outcomes);
        Files.writeString(Path.of("target/perturbation.txt"), summary);
        System.out.print(summary);
        Map<String, String> found2 = new TreeMap<>();
        found.forEach(
                (group, counts) -> found2.put(group, counts(counts.keySet(), Objects.requireNonNull(all.get(group)))));
        writeList(found2, listed);
        Map<String, String> expected = new TreeMap<>();
        listed.forEach((group, one) -> {
            if (group.startsWith(only)) {
                expected.put(group, one.counts());
                assertThat(one.reason()).as(group).isNotBlank();
            }
        });
        assertThat(expected)
                .as("not-held.csv must list exactly the numbers that no check notices; target/not-held.csv has them")
                .containsExactlyInAnyOrderEntriesOf(found2);
    }

    /**
     * The changes of one file. Where rows seldom notice, many cells are changed at once: if no row is red then, none notices
     * any of them.
     */
    private static List<Outcome> outcomes(List<Change> changes) throws IOException {
        String file = changes.get(0).file();
        boolean table = changes.get(0).sort() == Change.Sort.TABLE;
        String text = Files.readString(Path.of(
                table ? "../core/src/main/resources/org/woodyield" : "../core/src/main/java/org/woodyield", file));
        if (table) {
            // Cells of one column tend to fare alike.
            changes.sort(Comparator.comparing(Change::column).thenComparingInt(Change::start));
        }
        Map<String, String> readers = readers(table ? file : file.replaceFirst("java$", "class"));
        List<Outcome> outcomes = new ArrayList<>();
        int many = table ? 16 : 1;
        for (int from = 0; from < changes.size(); ) {
            List<Change> some = changes.subList(from, Math.min(changes.size(), from + many));
            from += some.size();
            if (table
                    && (readers.isEmpty()
                            || (some.size() > 1 && rows(some, text, readers).isEmpty()))) {
                some.forEach(change -> outcomes.add(outcome(change, within(change, text))));
                many = Math.min(64, 2 * many);
            } else {
                int held = 0;
                for (Change change : some) {
                    Map<String, Holder> red = rows(List.of(change), text, readers);
                    held += red.isEmpty() ? 0 : 1;
                    outcomes.add(outcome(change, red.isEmpty() && table ? within(change, text) : red));
                }
                many = table ? Math.max(1, 2 * held > some.size() ? many / 4 : many / 2) : 1;
            }
        }
        return outcomes;
    }

    private static Map<String, Holder> rows(List<Change> changes, String text, Map<String, String> readers) {
        Map<String, byte[]> overlay = overlay(changes, text);
        return overlay.isEmpty() ? Map.of("the compiler", Holder.REFUSED) : red(overlay, readers);
    }

    /** What no row notices: does it break what holds within the table, or the sum of its column? */
    private static Map<String, Holder> within(Change change, String text) {
        List<PrintedRelation> relations = PrintedRelation.of(change.file());
        if (!relations.isEmpty()) {
            PublishedTable changed = changed(change, text);
            for (PrintedRelation relation : relations) {
                if (!relation.breaches(changed).isEmpty()) {
                    return Map.of(relation.statement(), Holder.RELATION);
                }
            }
        }
        return ControlTotal.all().stream()
                        .anyMatch(total -> total.file().equals(change.file())
                                && total.column().equals(change.column()))
                ? Map.of("control total", Holder.CONTROL_TOTAL)
                : Map.of();
    }

    /** The changed table, read beside a class that finds it in its own loader. */
    private static PublishedTable changed(Change change, String text) {
        try {
            Class<?> beside = new OverlayLoader(overlay(List.of(change), text))
                    .loadClass(PrintedRelation.beside(change.file()).getName());
            return PublishedTable.read(
                    beside, change.file().substring(change.file().indexOf('/') + 1));
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Outcome outcome(Change change, Map<String, Holder> red) {
        Optional<Map.Entry<String, Holder>> first =
                red.entrySet().stream().min(Comparator.comparing(Map.Entry::getValue));
        return new Outcome(
                change,
                first.map(Map.Entry::getValue).orElse(Holder.NOTHING),
                first.map(Map.Entry::getKey).orElse(""),
                red.size());
    }

    private static Map<String, byte[]> overlay(List<Change> changes, String text) {
        StringBuilder changed = new StringBuilder(text);
        List<Change> fromTheEnd = new ArrayList<>(changes);
        fromTheEnd.sort(Comparator.comparingInt(Change::start).reversed());
        for (Change change : fromTheEnd) {
            changed.replace(change.start(), change.start() + change.from().length(), change.to());
        }
        String file = changes.get(0).file();
        return changes.get(0).sort() == Change.Sort.TABLE
                ? Map.of("org/woodyield/" + file, changed.toString().getBytes(StandardCharsets.UTF_8))
                : SourceNumbers.compiled(file, changed.toString());
    }

    /** The check tables with a row that needs a table or a class of core: those that turn red when it is not there. */
    private static Map<String, String> readers(String file) {
        Map<String, String> readers = new LinkedHashMap<>(TABLES);
        try {
            Set<String> ids = red(Map.of("org/woodyield/" + file, new byte[0]), TABLES).keySet().stream()
                    .map(row -> row.replaceFirst("#.*", ""))
                    .collect(Collectors.toSet());
            readers.keySet().retainAll(ids);
        } catch (LinkageError e) {
            // Not even the list of calculations can do without it: every row is run.
            return readers;
        }
        return readers;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Holder> red(Map<String, byte[]> overlay, Map<String, String> tables) {
        Map<String, Holder> red = new LinkedHashMap<>();
        try {
            var probe = (UnaryOperator<Map<String, String>>) new OverlayLoader(overlay)
                    .loadClass(RowVerdicts.class.getName())
                    .getConstructor()
                    .newInstance();
            probe.apply(tables).forEach((id, holder) -> red.put(id, Holder.valueOf(holder)));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
        return red;
    }

    private static void write(List<Outcome> outcomes) throws IOException {
        try (CsvWriter csv = CsvWriter.builder().build(Path.of("target/perturbation.csv"))) {
            csv.writeRecord("where", "file", "column", "count", "line", "from", "to", "held by", "check", "red");
            for (Outcome outcome : outcomes) {
                Change change = outcome.change();
                csv.writeRecord(
                        change.sort().name().toLowerCase(java.util.Locale.ROOT),
                        change.file(),
                        change.column(),
                        Integer.toString(change.count()),
                        Integer.toString(change.line()),
                        change.from(),
                        change.to(),
                        outcome.holder().label(),
                        outcome.by(),
                        Integer.toString(outcome.red()));
            }
        }
    }

    private static String summary(List<Outcome> outcomes) {
        StringBuilder text = new StringBuilder();
        for (Change.Sort sort : Change.Sort.values()) {
            Map<Holder, Long> counts = outcomes.stream()
                    .filter(outcome -> outcome.change().sort() == sort)
                    .collect(Collectors.groupingBy(
                            Outcome::holder, () -> new EnumMap<>(Holder.class), Collectors.counting()));
            long changed = counts.values().stream().mapToLong(Long::longValue).sum();
            text.append(sort == Change.Sort.TABLE ? "cells of tables" : "numbers in classes")
                    .append(" changed: ")
                    .append(changed)
                    .append('\n');
            counts.forEach((holder, count) -> text.append("  ")
                    .append(holder.label())
                    .append(": ")
                    .append(count)
                    .append('\n'));
        }
        return text.toString();
    }

    private record Listed(String counts, String reason) {}

    private static Map<String, Listed> listed() throws IOException {
        Map<String, Listed> listed = new TreeMap<>();
        try (InputStream in = Objects.requireNonNull(PerturbationTest.class.getResourceAsStream("not-held.csv"));
                CsvReader<NamedCsvRecord> csv =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (NamedCsvRecord row : csv) {
                listed.put(
                        row.getField("file") + "," + row.getField("column"),
                        new Listed(row.getField("counts"), row.getField("reason")));
            }
        }
        return listed;
    }

    private static void writeList(Map<String, String> found, Map<String, Listed> listed) throws IOException {
        try (CsvWriter csv = CsvWriter.builder().build(Path.of("target/not-held.csv"))) {
            csv.writeRecord("file", "column", "counts", "reason");
            found.forEach((group, counts) -> csv.writeRecord(
                    group.substring(0, group.indexOf(',')),
                    group.substring(group.indexOf(',') + 1),
                    counts,
                    Optional.ofNullable(listed.get(group)).map(Listed::reason).orElse("")));
        }
    }

    /** {@code all}, or counts and ranges of them such as {@code 1 3-7}; a range passes over what was not changed. */
    private static String counts(Set<Integer> some, Set<Integer> all) {
        if (some.equals(all)) {
            return "all";
        }
        List<String> ranges = new ArrayList<>();
        List<Integer> run = new ArrayList<>();
        for (int count : all) {
            if (some.contains(count)) {
                run.add(count);
            } else {
                close(run, ranges);
            }
        }
        close(run, ranges);
        return String.join(" ", ranges);
    }

    private static void close(List<Integer> run, List<String> ranges) {
        if (!run.isEmpty()) {
            int last = run.get(run.size() - 1);
            ranges.add(run.size() == 1 ? Integer.toString(last) : run.get(0) + "-" + last);
            run.clear();
        }
    }
}
