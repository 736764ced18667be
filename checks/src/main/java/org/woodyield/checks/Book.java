package org.woodyield.checks;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.working.Working;

/**
 * The check book: a folder of pages that need nothing beside them. Each calculation has a page with its statement, limits, a
 * worked example, its sources and every check row; others list symbols, sources, log rules, plots, and what is not checked.
 */
final class Book {

    private static final List<String> PACKAGES =
            List.of("measure", "wood", "log", "scaling", "lumber", "sawing", "work", "plan");

    /** A line of counts; lines are of different kinds and are not added up. */
    record Count(String kind, String standing, String verdict, int rows) {}

    /** A link with what follows it. */
    record Link(String href, String text, String words) {}

    /** A package and its calculations. */
    record Chapter(String name, String words, List<Link> calculations) {}

    /** A check row as shown. */
    record Row(
            String number,
            String given,
            String published,
            String computed,
            String difference,
            String allowance,
            String kind,
            String verdict,
            String remark) {}

    /** The rows that come from one published table and one source. */
    record Table(String id, Link source, String standing, List<Row> rows) {}

    /** A disagreement with its reason. */
    record Disagreement(Link calculation, String id, String given, String published, String computed, String reason) {}

    /** All that a calculation's page shows. */
    record Entry(
            String id,
            String title,
            String statement,
            boolean marked,
            String unverified,
            List<Count> counts,
            List<Examples.Limit> limits,
            String working,
            List<Link> sources,
            List<Disagreement> disagreements,
            List<Table> tables) {

        boolean hasWorking() {
            return !working.isEmpty();
        }

        boolean hasUnverified() {
            return !unverified.isEmpty();
        }

        boolean hasCounts() {
            return !counts.isEmpty();
        }

        boolean hasLimits() {
            return !limits.isEmpty();
        }

        boolean hasDisagreements() {
            return !disagreements.isEmpty();
        }

        boolean hasTables() {
            return !tables.isEmpty();
        }

        String href() {
            return id + ".html";
        }
    }

    /** A source as the register shows it. */
    record Register(
            String id,
            String author,
            String title,
            String edition,
            String place,
            String standing,
            String read,
            List<Link> used,
            List<Count> counts) {}

    /** A symbol of a working. */
    record Symbol(String symbol, String name, String unit, List<Link> used) {}

    /** A term that has to be told from its neighbours. */
    record Term(String term, String unit, String meaning) {}

    /** A log rule and how far it is checked. */
    record Rule(
            String id, String name, String standing, String limits, String rounding, long rows, String unverified) {}

    /** What became of a transcription. */
    record Reference(String file, List<Link> tables, String reason) {}

    private final Run run;
    private final Examples examples;
    private final Map<String, Account.Statement> statements = Account.statements();
    private final Map<String, String> unverified = Account.unverified();
    private final Map<String, String> datesRead = Account.datesRead();
    private final Map<String, List<Result>> results;
    private final Map<String, Working> workings = new TreeMap<>();
    private final Set<String> marked;
    private final Map<String, String> titles = new TreeMap<>();

    private Book(Run run, Examples examples) {
        this.run = run;
        this.examples = examples;
        this.marked = MarkedCalculations.ids();
        this.results = run.results().stream()
                .collect(
                        Collectors.groupingBy(result -> result.row().calculation(), TreeMap::new, Collectors.toList()));
        for (String id : marked) {
            examples.find(id).ifPresent(example -> workings.put(id, example.working()));
        }
        Set<String> ids = new TreeSet<>(marked);
        ids.addAll(results.keySet());
        for (String id : ids) {
            Account.Statement statement = statements.get(id);
            titles.put(id, statement == null ? named(id) : statement.name());
        }
    }

    /**
     * Writes the book, {@code checks.csv} and {@code counts.csv} into a folder, which is made if need be.
     *
     * @throws IOException if a file cannot be written
     */
    static void write(Run run, Path folder) throws IOException {
        Report.write(run, folder);
        for (var page : new Book(run, Examples.all()).pages().entrySet()) {
            Files.writeString(folder.resolve(page.getKey()), page.getValue());
        }
        for (Plot plot : Plots.all()) {
            try (CsvWriter csv = CsvWriter.builder().build(folder.resolve("plot-" + plot.id() + ".csv"))) {
                plot.table().forEach(csv::writeRecord);
            }
        }
    }

    /** The text of each file by its name. */
    private Map<String, String> pages() throws IOException {
        Pages pages = new Pages();
        Map<String, String> files = new LinkedHashMap<>();
        List<Entry> entries = titles.keySet().stream().map(this::entry).toList();
        List<Plot> plots = Plots.all();
        List<Link> plotLinks = plots.stream()
                .map(plot -> new Link("plot-" + plot.id() + ".html", plot.title(), plot.words()))
                .toList();
        files.put(
                "index.html",
                pages.page(
                        "index",
                        Map.of(
                                "title",
                                "The check book of woodyield",
                                "counts",
                                counts(run.results()),
                                "chapters",
                                chapters(entries))));
        for (Entry entry : entries) {
            files.put(entry.href(), pages.page("calculation", entry));
        }
        files.put(
                "symbols.html",
                pages.page(
                        "symbols",
                        Map.of("title", "Terms and symbols", "terms", Account.terms(), "symbols", symbols())));
        files.put("sources.html", pages.page("sources", Map.of("title", "Register of sources", "sources", register())));
        files.put("rules.html", pages.page("rules", Map.of("title", "Log rules", "rules", rules())));
        files.put(
                "open.html",
                pages.page(
                        "open",
                        Map.of(
                                "title",
                                "What is open",
                                "unverified",
                                unverified.entrySet().stream()
                                        .map(open -> new Link(
                                                open.getKey() + ".html",
                                                titles.getOrDefault(open.getKey(), open.getKey()),
                                                open.getValue()))
                                        .toList(),
                                "few",
                                Account.fewValues().entrySet().stream()
                                        .map(few -> new Link(
                                                few.getKey() + ".html",
                                                titles.getOrDefault(few.getKey(), few.getKey()),
                                                few.getValue().rows() + ": "
                                                        + few.getValue().reason()))
                                        .toList(),
                                "disagreements",
                                entries.stream()
                                        .flatMap(entry -> entry.disagreements().stream())
                                        .toList())));
        files.put(
                "references.html",
                pages.page("references", Map.of("title", "Publications that were read", "references", references())));
        files.put(
                "course.html",
                pages.page(
                        "course",
                        Map.of(
                                "title",
                                "Course sheet",
                                "sheet",
                                CourseSheet.read().html())));
        files.put(
                "time-studies.html",
                pages.page(
                        "time-studies",
                        Map.of("title", "Time studies", "predicted", studies(true), "others", studies(false))));
        files.put(
                "trade.html",
                pages.page("trade", Map.of("title", "Facts of the trade", "facts", Account.tradeFacts())));
        files.put("plots.html", pages.page("plots", Map.of("title", "Plots", "plots", plotLinks)));
        for (Plot plot : plots) {
            String svg = PlotDrawing.svg(plot);
            List<List<String>> table = plot.table();
            files.put(
                    "plot-" + plot.id() + ".html",
                    pages.page(
                            "plot",
                            Map.of(
                                    "title",
                                    plot.title(),
                                    "id",
                                    plot.id(),
                                    "words",
                                    plot.words(),
                                    "svg",
                                    svg,
                                    "header",
                                    table.get(0),
                                    "rows",
                                    table.subList(1, table.size()).stream()
                                            .map(row -> Map.of("head", row.get(0), "cells", row.subList(1, row.size())))
                                            .toList())));
            files.put("plot-" + plot.id() + ".svg", svg + "\n");
        }
        files.put("search-index.js", searchIndex(entries, plotLinks));
        for (String name : List.of("book.css", "search.js")) {
            try (InputStream in = Objects.requireNonNull(Book.class.getResourceAsStream("book/" + name))) {
                files.put(name, new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private static List<TimeStudies.Study> studies(boolean predicted) {
        return TimeStudies.read().studies().stream()
                .filter(study -> study.predicted().isPresent() == predicted)
                .toList();
    }

    /** The words of an id, for what only the check tables call. */
    private static String named(String id) {
        String words = id.substring(id.indexOf('.') + 1).replace('-', ' ');
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    private Entry entry(String id) {
        List<Result> rows = results.getOrDefault(id, List.of());
        Optional<Working> working = Optional.ofNullable(workings.get(id));
        return new Entry(
                id,
                titles.getOrDefault(id, id),
                Optional.ofNullable(statements.get(id))
                        .map(Account.Statement::statement)
                        .orElse(
                                "Checks of stored values or of several calculations together; there is no working of its own."),
                marked.contains(id),
                unverified.getOrDefault(id, ""),
                counts(rows),
                examples.find(id).map(example -> List.copyOf(example.limits())).orElse(List.of()),
                working.map(shown -> WorkingText.html(shown, 3)).orElse(""),
                Stream.concat(
                                working.stream()
                                        .flatMap(shown -> shown.lines().stream())
                                        .map(Working.Line::source),
                                rows.stream().map(result -> result.row().source()))
                        .distinct()
                        .map(Book::link)
                        .toList(),
                rows.stream()
                        .filter(result -> result.row().kind() == Kind.DISAGREEMENT)
                        .map(this::disagreement)
                        .toList(),
                tables(rows));
    }

    private static Link link(Source source) {
        return new Link("sources.html#" + source.id(), source.citation(), "");
    }

    private Link calculation(String id) {
        return new Link(id + ".html", titles.getOrDefault(id, id), id);
    }

    private Disagreement disagreement(Result result) {
        CheckTable.Row row = result.row();
        return new Disagreement(
                calculation(row.calculation()),
                row.id(),
                result.given(),
                row.published(),
                result.computed(),
                row.reason());
    }

    private static List<Table> tables(List<Result> rows) {
        Map<List<String>, List<Result>> grouped = new LinkedHashMap<>();
        for (Result result : rows) {
            String id = result.row().id();
            grouped.computeIfAbsent(
                            List.of(
                                    id.substring(0, id.indexOf('#')),
                                    result.row().source().id()),
                            key -> new ArrayList<>())
                    .add(result);
        }
        List<Table> tables = new ArrayList<>();
        grouped.forEach((key, group) -> {
            Source source = group.get(0).row().source();
            tables.add(new Table(
                    key.get(0),
                    link(source),
                    source.standing().label(),
                    group.stream().map(Book::row).toList()));
        });
        return tables;
    }

    private static Row row(Result result) {
        CheckTable.Row row = result.row();
        String remark = Stream.of(row.reason(), row.note(), result.why())
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining("; "));
        return new Row(
                row.id().substring(row.id().indexOf('#') + 1),
                result.given(),
                row.published(),
                result.computed(),
                result.difference(),
                result.allowance(),
                row.kind().label(),
                result.verdict().label(),
                remark);
    }

    private static List<Count> counts(List<Result> rows) {
        return Run.counts(rows).entrySet().stream()
                .map(count -> new Count(
                        count.getKey().kind().label(),
                        count.getKey().standing().label(),
                        count.getKey().verdict().label(),
                        count.getValue()))
                .toList();
    }

    private List<Chapter> chapters(List<Entry> entries) {
        return PACKAGES.stream()
                .map(name -> new Chapter(
                        name,
                        Account.packages().getOrDefault(name, ""),
                        entries.stream()
                                .filter(entry -> entry.id().startsWith(name + "."))
                                .map(entry -> new Link(entry.href(), entry.title(), status(entry)))
                                .toList()))
                .filter(chapter -> !chapter.calculations().isEmpty())
                .toList();
    }

    private static String status(Entry entry) {
        int verified = entry.counts().stream()
                .filter(count -> count.kind().equals(Kind.COMPUTED.label())
                        && count.standing().equals(Standing.PUBLISHED.label())
                        && count.verdict().equals(Verdict.AGREES.label()))
                .mapToInt(Count::rows)
                .sum();
        if (entry.hasUnverified()) {
            return "not verified: " + entry.unverified();
        }
        return verified == 1 ? "1 published value computed again" : verified + " published values computed again";
    }

    private List<Register> register() {
        Map<Source, Set<String>> used = new LinkedHashMap<>();
        workings.forEach((id, working) -> working.lines()
                .forEach(line -> used.computeIfAbsent(line.source(), key -> new TreeSet<>())
                        .add(id)));
        Map<Source, List<Result>> rows = new LinkedHashMap<>();
        for (Result result : run.results()) {
            Source source = result.row().source();
            rows.computeIfAbsent(source, key -> new ArrayList<>()).add(result);
            used.computeIfAbsent(source, key -> new TreeSet<>())
                    .add(result.row().calculation());
        }
        return Sources.all().stream()
                .map(source -> new Register(
                        source.id(),
                        source.author(),
                        source.title(),
                        source.edition(),
                        source.place(),
                        source.standing().label(),
                        read(source),
                        used.getOrDefault(source, Set.of()).stream()
                                .map(this::calculation)
                                .toList(),
                        counts(rows.getOrDefault(source, List.of()))))
                .toList();
    }

    private String read(Source source) {
        return switch (source.standing()) {
            case PUBLISHED, SECONDHAND -> datesRead.getOrDefault(source.id(), "not recorded");
            case MEMORY -> "not read";
            case COMMON_PRACTICE, DERIVED, GIVEN, INVENTED -> "nothing to read";
        };
    }

    private List<Symbol> symbols() {
        Map<List<String>, Set<String>> used = new TreeMap<>(java.util.Comparator.<List<String>, String>comparing(
                        key -> key.get(0).toLowerCase(java.util.Locale.ROOT))
                .thenComparing(Object::toString));
        workings.forEach((id, working) -> working.lines()
                .forEach(line -> used.computeIfAbsent(
                                List.of(line.symbol(), line.name(), line.unit()), key -> new LinkedHashSet<>())
                        .add(id)));
        return used.entrySet().stream()
                .map(symbol -> new Symbol(
                        symbol.getKey().get(0),
                        symbol.getKey().get(1),
                        symbol.getKey().get(2),
                        symbol.getValue().stream().map(this::calculation).toList()))
                .toList();
    }

    private List<Rule> rules() {
        Map<String, Long> rows = run.results().stream()
                .filter(result -> result.row().kind() == Kind.COMPUTED
                        && result.row().source().standing() == Standing.PUBLISHED
                        && result.verdict() == Verdict.AGREES)
                .filter(result -> result.row().calculation().startsWith("scaling.log-rule"))
                .collect(Collectors.groupingBy(
                        result -> result.row().inputs().getOrDefault("rule", ""), Collectors.counting()));
        Map<String, String> open = Account.unverifiedRules();
        return Stream.concat(LogRules.all().stream(), LogRules.onRequest().stream())
                .map((LogRule rule) -> new Rule(
                        rule.id(),
                        rule.name(),
                        rule.standing().label(),
                        rule.diameterInches().limits() + ", "
                                + rule.lengthFeet().limits(),
                        rule.rounding(),
                        rows.getOrDefault(rule.id(), 0L),
                        open.getOrDefault(rule.id(), "")))
                .toList();
    }

    private List<Reference> references() {
        Map<String, Set<String>> calculations = new TreeMap<>();
        for (Result result : run.results()) {
            String id = result.row().id();
            calculations
                    .computeIfAbsent(id.substring(0, id.indexOf('#')), key -> new TreeSet<>())
                    .add(result.row().calculation());
        }
        return Account.references().entrySet().stream()
                .map(use -> new Reference(
                        use.getKey(),
                        use.getValue().tables().stream()
                                .flatMap(table -> calculations.getOrDefault(table, Set.of()).stream()
                                        .map(id -> new Link(id + ".html", table, id)))
                                .toList(),
                        use.getValue().reason()))
                .toList();
    }

    private static String searchIndex(List<Entry> entries, List<Link> plots) {
        StringBuilder out = new StringBuilder("const BOOK = [\n");
        for (Entry entry : entries) {
            line(out, entry.href(), entry.title(), entry.id() + " " + entry.statement());
        }
        line(out, "course.html", "Course sheet", "exercises with answers to solve by hand");
        plots.forEach(plot -> line(out, plot.href(), plot.text(), plot.words()));
        Account.terms().forEach(term -> line(out, "symbols.html", term.term(), term.meaning()));
        Sources.all()
                .forEach(
                        source -> line(out, "sources.html#" + source.id(), source.citation(), "source " + source.id()));
        return out.append("];\n").toString();
    }

    private static void line(StringBuilder out, String... cells) {
        out.append(Stream.of(cells).map(Book::quoted).collect(Collectors.joining(",", "[", "],\n")));
    }

    /** A string of JavaScript; what is not plain is written as its number. */
    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < 0x20 || c == '"' || c == '\\' || c == '<' || c > 0x7E) {
                out.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
