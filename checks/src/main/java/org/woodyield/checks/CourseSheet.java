package org.woodyield.checks;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.woodyield.measure.Draws;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * Exercises to solve by hand, with their answers: rounded at each step, and rounded once at the end. The first come from
 * publications; variants with drawn numbers follow.
 */
final class CourseSheet {

    private static final long SEED = 1;

    /**
     * One exercise.
     *
     * @param id its name
     * @param task what is asked
     * @param symbols what is given, by symbol: number and unit as written
     * @param ranges by symbol: between which whole numbers variants are drawn; empty where it stays
     * @param calculation id of the calculation that solves it
     * @param call inputs of the calculation, by column; a symbol stands for its number
     * @param steps how it is worked by hand
     * @param answer the result, rounded once at the end
     * @param unit its unit
     * @param printed the result in print, empty if there is none
     * @param source where the numbers and the printed result stand
     * @param remark where printed and worked results part
     */
    record Exercise(
            String id,
            String task,
            Map<String, String> symbols,
            Map<String, String> ranges,
            String calculation,
            Map<String, String> call,
            List<Step> steps,
            String answer,
            String unit,
            String printed,
            Optional<Source> source,
            String remark) {

        /** The task with its numbers. */
        String asked() {
            String asked = task;
            for (Map.Entry<String, String> symbol : symbols.entrySet()) {
                asked = asked.replace("{" + symbol.getKey() + "}", number(symbol.getValue()));
            }
            return asked;
        }

        /** The numbers by symbol. */
        Map<String, Double> values() {
            Map<String, Double> values = new LinkedHashMap<>();
            symbols.forEach((symbol, text) -> values.put(symbol, Double.valueOf(number(text))));
            return values;
        }

        /** What the library is asked. */
        Given given() {
            Map<String, String> cells = new LinkedHashMap<>();
            call.forEach((column, cell) -> {
                String first = number(cell);
                cells.put(
                        column,
                        symbols.containsKey(first)
                                ? number(symbols.getOrDefault(first, "")) + cell.substring(first.length())
                                : cell);
            });
            return new Given(cells, Map.of(), new TreeSet<>());
        }

        /** The same task with numbers drawn from the ranges, and without answers. */
        Exercise drawn(Draws draws, int count) {
            Map<String, String> drawn = new LinkedHashMap<>(symbols);
            ranges.forEach((symbol, range) -> {
                String[] ends = range.split("\\.\\.", -1);
                // Ranges are written with the digits that a drawn number has.
                String[] digits = ends[0].split("\\.", -1);
                double unit = digits.length == 1 ? 1 : 0.5;
                double least = Double.parseDouble(ends[0]);
                long places = StrictMath.round((Double.parseDouble(ends[1]) - least) / unit) + 1;
                double value = least + unit * StrictMath.floor(draws.nextDouble() * places);
                String written = digits.length == 1 ? Long.toString((long) value) : Double.toString(value);
                String unitText = symbols.getOrDefault(symbol, "")
                        .substring(number(symbols.getOrDefault(symbol, "")).length());
                drawn.put(symbol, written + unitText);
            });
            return new Exercise(
                    id + "-" + count,
                    task,
                    drawn,
                    Map.of(),
                    calculation,
                    call,
                    steps,
                    "",
                    unit,
                    "",
                    Optional.empty(),
                    "");
        }

        /** Number of digits behind the point in which the result is told. */
        int places() {
            return decimals(steps.get(steps.size() - 1).rounded());
        }
    }

    /**
     * One line of a working by hand.
     *
     * @param symbol what comes out
     * @param formula how
     * @param rounded its value, rounded as written, from the rounded values of the lines before
     */
    record Step(String symbol, String formula, String rounded) {}

    private final List<Exercise> exercises;

    private CourseSheet(List<Exercise> exercises) {
        this.exercises = List.copyOf(exercises);
    }

    /** The sheet as it lies beside this class. */
    static CourseSheet read() {
        List<Exercise> exercises = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(CourseSheet.class.getResourceAsStream("course.csv"));
                CsvReader<NamedCsvRecord> csv =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (NamedCsvRecord row : csv) {
                exercises.add(new Exercise(
                        row.getField("id"),
                        row.getField("task"),
                        pairs(row.getField("symbols")),
                        pairs(row.getField("ranges")),
                        row.getField("calculation"),
                        pairs(row.getField("call")),
                        steps(row.getField("steps")),
                        row.getField("answer"),
                        row.getField("unit"),
                        row.getField("printed"),
                        Optional.of(row.getField("source"))
                                .filter(id -> !id.isEmpty())
                                .map(Sources::get),
                        row.getField("remark")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new CourseSheet(exercises);
    }

    private static Map<String, String> pairs(String cell) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : cell.split("; ?", -1)) {
            int equal = pair.indexOf('=');
            if (equal > 0) {
                pairs.put(pair.substring(0, equal), pair.substring(equal + 1));
            }
        }
        return pairs;
    }

    private static List<Step> steps(String cell) {
        List<Step> steps = new ArrayList<>();
        for (String line : cell.split(" \\| ", -1)) {
            int equal = line.indexOf(" = ");
            int arrow = line.indexOf(" -> ");
            steps.add(new Step(line.substring(0, equal), line.substring(equal + 3, arrow), line.substring(arrow + 4)));
        }
        return steps;
    }

    private static String number(String text) {
        int end = text.indexOf(' ');
        return end < 0 ? text : text.substring(0, end);
    }

    /** How many digits stand behind the point. */
    static int decimals(String number) {
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }

    /** The exercises with stated answers. */
    List<Exercise> exercises() {
        return exercises;
    }

    /** Two variants of each exercise that has ranges; the same every time. */
    List<Exercise> variants() {
        Draws draws = Draws.seeded(SEED);
        List<Exercise> variants = new ArrayList<>();
        for (Exercise exercise : exercises) {
            if (!exercise.ranges().isEmpty()) {
                variants.add(exercise.drawn(draws, 1));
                variants.add(exercise.drawn(draws, 2));
            }
        }
        return variants;
    }

    /** The library's answer, for variants. */
    static double solved(Exercise exercise) {
        return Catalogue.all()
                .find(exercise.calculation())
                .map(entry -> ((Catalogue.NumberEntry) entry).compute().applyAsDouble(exercise.given()))
                .orElseThrow(() -> new IllegalArgumentException("the catalogue has no " + exercise.calculation()));
    }

    /** The sheet as Markdown: tasks first, then the answers. */
    String markdown() {
        StringBuilder sheet = new StringBuilder("# Course sheet\n\n");
        for (String line : intro()) {
            sheet.append(line).append("\n\n");
        }
        sheet.append("## Exercises\n\n");
        numbered(exercises, 1).forEach(line -> sheet.append(line).append('\n'));
        sheet.append("\n## Variants\n\n");
        numbered(variants(), exercises.size() + 1)
                .forEach(line -> sheet.append(line).append('\n'));
        sheet.append("\n## Answers\n\n");
        for (int i = 0; i < exercises.size(); i++) {
            sheet.append(i + 1)
                    .append(". ")
                    .append(answer(exercises.get(i), "`"))
                    .append('\n');
        }
        sheet.append("\n## Answers of the variants\n\n");
        List<Exercise> variants = variants();
        for (int i = 0; i < variants.size(); i++) {
            sheet.append(exercises.size() + i + 1)
                    .append(". ")
                    .append(variantAnswer(variants.get(i)))
                    .append('\n');
        }
        return sheet.toString();
    }

    /** The sheet as parts of an HTML page: headings of second rank, paragraphs and ordered lists. */
    String html() {
        StringBuilder page = new StringBuilder();
        for (String line : intro()) {
            page.append("<p>").append(escaped(line)).append("</p>\n");
        }
        List<Exercise> variants = variants();
        int next = exercises.size() + 1;
        list(page, "Exercises", 1, exercises.stream().map(Exercise::asked).toList());
        list(page, "Variants", next, variants.stream().map(Exercise::asked).toList());
        list(page, "Answers", 1, exercises.stream().map(one -> answer(one, "")).toList());
        list(
                page,
                "Answers of the variants",
                next,
                variants.stream().map(CourseSheet::variantAnswer).toList());
        return page.toString();
    }

    private static void list(StringBuilder page, String heading, int start, List<String> items) {
        page.append("<h2>").append(escaped(heading)).append("</h2>\n<ol start=\"");
        page.append(start).append("\">\n");
        items.forEach(item -> page.append("<li>").append(escaped(item)).append("</li>\n"));
        page.append("</ol>\n");
    }

    private static List<String> intro() {
        return List.of(
                "Solve each by hand with the formulas, symbols and sources of the check book. Each answer stands twice: as it"
                        + " comes out when every step is rounded as shown, and rounded once at the end. Where the two differ,"
                        + " say which a buyer and a seller would like.",
                "A printed result is the publication's own, with its standing where it was not read in the publication."
                        + " The variants have drawn numbers; their answers are the library's.");
    }

    private static List<String> numbered(List<Exercise> asked, int first) {
        List<String> lines = new ArrayList<>();
        for (Exercise exercise : asked) {
            lines.add(first + lines.size() + ". " + exercise.asked());
        }
        return lines;
    }

    private static String answer(Exercise exercise, String quote) {
        StringBuilder line = new StringBuilder("With ");
        line.append(exercise.symbols().entrySet().stream()
                .map(symbol -> symbol.getKey() + " = " + symbol.getValue())
                .collect(Collectors.joining(", ")));
        line.append(": ");
        for (Step step : exercise.steps()) {
            line.append(quote)
                    .append(step.symbol())
                    .append(" = ")
                    .append(step.formula())
                    .append(quote);
            line.append(" = ").append(step.rounded()).append("; ");
        }
        String unit = exercise.unit().isEmpty() ? "" : " " + exercise.unit();
        line.append("step by step ")
                .append(exercise.steps().get(exercise.steps().size() - 1).rounded());
        line.append(unit)
                .append(", rounded at the end ")
                .append(exercise.answer())
                .append(unit)
                .append('.');
        exercise.source()
                .ifPresent(source -> line.append(" Printed: ")
                        .append(exercise.printed())
                        .append(" (")
                        .append(source.citation())
                        .append(")."));
        if (exercise.source().isEmpty()) {
            line.append(" Worked by hand; no printed result.");
        }
        if (!exercise.remark().isEmpty()) {
            line.append(' ').append(exercise.remark());
        }
        return line.append(" (").append(exercise.calculation()).append(')').toString();
    }

    private static String variantAnswer(Exercise exercise) {
        String unit = exercise.unit().isEmpty() ? "" : " " + exercise.unit();
        return Printed.rounded(solved(exercise), exercise.places()) + unit;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
