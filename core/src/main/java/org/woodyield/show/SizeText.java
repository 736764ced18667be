package org.woodyield.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.woodyield.lumber.SizeTable;
import org.woodyield.lumber.SizeTable.Entry;
import org.woodyield.lumber.SizeTable.Fact;
import org.woodyield.lumber.SizeTable.Measure;
import org.woodyield.lumber.SizeTable.Section;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;

/** Tables of sizes as plain text: all in a list, one in full, or what was found in one. */
public final class SizeText {

    private SizeText() {}

    /**
     * A list of tables.
     *
     * @param tables in the order in which they are shown
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String list(List<SizeTable> tables) {
        StringBuilder text = new StringBuilder();
        for (SizeTable table : tables) {
            text.append(table.key()).append('\n');
            String sizes = table.entries().isEmpty()
                    ? "no sizes"
                    : table.entries().size() + " sizes, "
                            + standings(
                                    table.entries().stream().map(Entry::source).toList());
            String facts = table.facts().isEmpty()
                    ? ""
                    : "; " + table.facts().size() + (table.facts().size() == 1 ? " other fact, " : " other facts, ")
                            + standings(table.facts().stream().map(Fact::source).toList());
            text.append(TextTable.paragraph("    ", "    ", table.title() + ": " + sizes + facts + "."));
        }
        return text.toString();
    }

    private static String standings(List<Source> sources) {
        return sources.stream()
                .map(Source::standing)
                .distinct()
                .sorted()
                .map(Standing::label)
                .collect(Collectors.joining(" and "));
    }

    /**
     * A table with all it holds and its sources.
     *
     * @param table the table
     * @return lines of no more than 100 characters unless a table cannot be narrower, each with its line end
     */
    public static String full(SizeTable table) {
        StringBuilder text = new StringBuilder(heading(table));
        groups(table, table.entries(), text);
        for (Fact fact : table.facts()) {
            text.append(point(fact.statement() + mark(fact.source())));
        }
        Set<Source> sources = new LinkedHashSet<>();
        table.entries().forEach(entry -> sources.add(entry.source()));
        table.facts().forEach(fact -> sources.add(fact.source()));
        return sources(sources, text);
    }

    /**
     * What was found of one face.
     *
     * @param table the table
     * @param entries the entries found
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String entries(SizeTable table, List<Entry> entries) {
        StringBuilder text = new StringBuilder(heading(table));
        Set<Source> sources = new LinkedHashSet<>();
        for (Entry entry : entries) {
            text.append(point(entry.kind() + ", " + entry.face() + " " + table.text(entry.nominal()) + " nominal"
                    + measured(table, entry) + note(entry) + mark(entry.source())));
            sources.add(entry.source());
        }
        return sources(sources, text);
    }

    /**
     * What was found of thickness and width.
     *
     * @param table the table
     * @param sections the sections found
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String sections(SizeTable table, List<Section> sections) {
        StringBuilder text = new StringBuilder(heading(table));
        Set<Source> sources = new LinkedHashSet<>();
        for (Section section : sections) {
            Entry thickness = section.thickness();
            Entry width = section.width();
            text.append(point(thickness.kind() + ": nominal " + table.text(thickness.nominal()) + " x "
                    + table.text(width.nominal()) + mark(thickness.source())));
            for (Measure thick : thickness.measures()) {
                width.measures().stream()
                        .filter(wide -> wide.state().equals(thick.state()))
                        .forEach(wide -> text.append(TextTable.paragraph(
                                "    ",
                                "    ",
                                thick.state() + ": " + table.text(thick.length()) + " x "
                                        + table.text(wide.length()))));
            }
            Set<Entry> faces = new LinkedHashSet<>(List.of(thickness, width));
            for (Entry face : faces) {
                if (!face.note().isEmpty()) {
                    text.append(TextTable.paragraph(
                            "    ", "    ", "doubtful, nominal " + table.text(face.nominal()) + ", " + face.note()));
                }
                sources.add(face.source());
            }
        }
        return sources(sources, text);
    }

    private static String heading(SizeTable table) {
        return TextTable.paragraph("", "", table.title() + " (" + table.key() + ")");
    }

    private static String point(String sentence) {
        return TextTable.paragraph("- ", "  ", sentence);
    }

    private static String measured(SizeTable table, Entry entry) {
        return entry.measures().isEmpty()
                ? ""
                : ": "
                        + entry.measures().stream()
                                .map(measure -> measure.state() + " " + table.text(measure.length()))
                                .collect(Collectors.joining(", "));
    }

    private static String note(Entry entry) {
        return entry.note().isEmpty() ? "" : "; doubtful, " + entry.note();
    }

    /** What is not published is marked where it stands. */
    private static String mark(Source source) {
        return source.standing() == Standing.PUBLISHED
                ? ""
                : " [" + source.standing().label() + "]";
    }

    private static String sources(Set<Source> sources, StringBuilder text) {
        text.append('\n');
        for (Source source : sources) {
            text.append(point("Source, " + source.standing().label() + ": " + source.citation()));
        }
        return text.toString();
    }

    /** The entries kind by kind; those without a measure of their own in one line. */
    private static void groups(SizeTable table, List<Entry> entries, StringBuilder text) {
        Map<String, List<Entry>> groups = new LinkedHashMap<>();
        for (Entry entry : entries) {
            groups.computeIfAbsent(entry.kind() + ", " + entry.face() + mark(entry.source()), key -> new ArrayList<>())
                    .add(entry);
        }
        groups.forEach((title, group) -> {
            if (group.stream().allMatch(entry -> entry.measures().isEmpty())) {
                text.append(point(title + ": "
                        + group.stream()
                                .map(entry -> table.text(entry.nominal()))
                                .collect(Collectors.joining(", "))));
                return;
            }
            text.append('\n').append(TextTable.paragraph("", "", title));
            Set<String> states = new LinkedHashSet<>();
            group.forEach(entry -> entry.measures().forEach(measure -> states.add(measure.state())));
            boolean doubts = group.stream().anyMatch(entry -> !entry.note().isEmpty());
            TextTable rows = new TextTable("  ").left("nominal");
            states.forEach(rows::left);
            if (doubts) {
                rows.left("doubt");
            }
            for (Entry entry : group) {
                List<String> cells = new ArrayList<>(List.of(table.text(entry.nominal())));
                for (String state : states) {
                    cells.add(entry.measures().stream()
                            .filter(measure -> measure.state().equals(state))
                            .map(measure -> table.text(measure.length()))
                            .findFirst()
                            .orElse(""));
                }
                if (doubts) {
                    cells.add(entry.note());
                }
                rows.row(cells);
            }
            text.append(rows.text());
        });
        if (!groups.isEmpty() && !table.facts().isEmpty()) {
            text.append('\n');
        }
    }
}
