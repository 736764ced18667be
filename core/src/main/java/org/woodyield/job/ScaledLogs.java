package org.woodyield.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.woodyield.log.Log;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.DiameterAt;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.Scale;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

/** Logs of a table with their scales by some rules, and the rows that could not be scaled. */
final class ScaledLogs {

    private static final String ID = "id";
    private static final String SMALL = "small-end";
    private static final String ACROSS = "small-end-across";
    private static final String LARGE = "large-end";
    private static final String LENGTH = "length";
    private static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(ID),
            Table.Column.required(SMALL),
            Table.Column.optional(ACROSS),
            Table.Column.optional(LARGE),
            Table.Column.required(LENGTH));
    private static final Length WIDEST = Length.millimetres(3000);
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final ScalingConvention CONVENTION = ScalingConvention.plain();

    /** A log's scales, empty where the rule takes no such log; then why is said. */
    private record Scaled(String id, List<Optional<Double>> boardFeet, String notScaled, String caution) {}

    private final List<LogRule> rules;
    private final List<Scaled> scaled = new ArrayList<>();
    private final List<Problem> refused;
    private final double[] sums;
    private final int[] counts;
    private final int read;
    private int inPart;
    private int repeated;
    private final Map<String, Integer> firstLines = new HashMap<>();

    private ScaledLogs(String file, String text, List<LogRule> rules) {
        this.rules = rules;
        sums = new double[rules.size()];
        counts = new int[rules.size()];
        Problems ofTable = new Problems();
        List<Table.Row> rows = Table.read(file, text, COLUMNS, ofTable);
        List<Problem> found = ofTable.inOrder();
        // A row with too many or too few cells is one bad row; any other fault of the table makes all of it doubtful.
        if (rows.isEmpty() && found.isEmpty()) {
            ofTable.add(file, 0, "", "", "a row for each log below the header", "the table has none; add the logs");
        }
        if (rows.isEmpty() || found.stream().anyMatch(problem -> !problem.ofOneRow())) {
            ofTable.stopIfAny();
        }
        refused = new ArrayList<>(found);
        read = rows.size() + found.size();
        // No rule asks what wood it is.
        Species any = SpeciesCatalogue.published().all().iterator().next();
        for (Table.Row row : rows) {
            Problems ofRow = new Problems();
            Optional<Log> log = log(row, any, ofRow);
            if (log.isPresent()) {
                scale(log.get(), row.line());
            } else {
                refused.addAll(ofRow.inOrder());
            }
        }
        refused.sort(Comparator.comparingInt(Problem::line));
    }

    static ScaledLogs of(String file, String text, List<LogRule> rules) {
        return new ScaledLogs(file, text, rules);
    }

    private static Optional<Log> log(Table.Row ofTable, Species species, Problems problems) {
        Table.Row row = ofTable.with(problems);
        Optional<String> id = row.cell(ID).words("a name for the log");
        Optional<Length> small = diameter(row.cell(SMALL));
        Optional<Length> length = row.cell(LENGTH).lengthUpTo(LONGEST, "give the length of one log, not of the stem");
        Optional<Length> across =
                row.cellIfAny(ACROSS).map(ScaledLogs::diameter).orElse(small);
        if (id.isEmpty() || small.isEmpty() || length.isEmpty() || across.isEmpty()) {
            return Optional.empty();
        }
        boolean longer = small.get().compareTo(across.get()) > 0;
        Length widest = longer ? small.get() : across.get();
        Length narrowest = longer ? across.get() : small.get();
        Optional<Length> large = row.cellIfAny(LARGE).map(ScaledLogs::diameter).orElse(Optional.of(widest));
        if (large.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Log(
                    id.get(),
                    species,
                    length.get(),
                    widest,
                    narrowest,
                    large.get(),
                    Length.ZERO,
                    Length.ZERO,
                    0,
                    false));
        } catch (OutOfDomainException e) {
            row.cell(LARGE).refuse(e);
            return Optional.empty();
        }
    }

    private static Optional<Length> diameter(Cell cell) {
        return cell.lengthUpTo(WIDEST, "check the unit");
    }

    private void scale(Log log, int line) {
        List<Optional<Double>> feet = new ArrayList<>();
        StringBuilder why = new StringBuilder();
        StringBuilder caution = new StringBuilder();
        Integer first = firstLines.putIfAbsent(log.id(), line);
        if (first != null) {
            repeated++;
            caution.append("line ").append(first).append(" has this id too; both count");
        }
        // Rules that take the diameter at the same place share the segments.
        Map<DiameterAt, List<ScalingConvention.Segment>> segments = new EnumMap<>(DiameterAt.class);
        for (int i = 0; i < rules.size(); i++) {
            LogRule rule = rules.get(i);
            try {
                Scale scale = new Scale(
                        log,
                        rule,
                        CONVENTION,
                        segments.computeIfAbsent(rule.diameterAt(), where -> CONVENTION.segments(log, where)));
                double value = scale.boardFeet().value();
                scale.caution().ifPresent(words -> join(caution, words));
                sums[i] += value;
                counts[i]++;
                feet.add(Optional.of(value));
            } catch (OutOfDomainException e) {
                feet.add(Optional.empty());
                join(why, rule.id() + ": " + e.getMessage());
            }
        }
        inPart += why.isEmpty() ? 0 : 1;
        scaled.add(new Scaled(log.id(), feet, why.toString(), caution.toString()));
    }

    private static void join(StringBuilder all, String words) {
        all.append(all.isEmpty() ? "" : "; ").append(words);
    }

    private static String logs(int count) {
        return count == 1 ? "1 log" : count + " logs";
    }

    /** What is wrong with the rows that were not scaled, in the order of the table. */
    List<Problem> refused() {
        return List.copyOf(refused);
    }

    /** How many rows went where; none is lost. */
    String count() {
        return (read == 1 ? "1 row: " : read + " rows: ") + scaled.size() + " scaled, " + inPart
                + " of them not by every rule; " + (read - scaled.size()) + " refused"
                + (repeated == 0 ? "" : "; " + repeated + " with an id that stands before, counted all the same");
    }

    /** The logs and a row of sums. */
    byte[] table() {
        List<String> columns = new ArrayList<>(List.of("row", "id"));
        rules.forEach(rule -> columns.add(rule.id() + "-bf-scale"));
        columns.add("not-scaled");
        columns.add("caution");
        OutputTable table = new OutputTable(columns.toArray(String[]::new));
        for (Scaled log : scaled) {
            OutputTable.Row row = table.row().text("log").text(log.id());
            for (Optional<Double> feet : log.boardFeet()) {
                if (feet.isPresent()) {
                    feet(row, feet.get());
                } else {
                    row.empty();
                }
            }
            row.text(log.notScaled()).text(log.caution());
        }
        OutputTable.Row total = table.row().text("total").text(logs(scaled.size()));
        for (double sum : sums) {
            feet(total, sum);
        }
        total.text(inPart == 0 ? "" : inPart == 1 ? "1 log is not in every sum" : inPart + " logs are not in every sum")
                .text(repeated == 0 ? "" : repeated == 1 ? "1 id stands twice" : repeated + " ids stand again");
        return table.bytes();
    }

    private static void feet(OutputTable.Row row, double value) {
        if (value == Math.rint(value) && value < 1e15) {
            row.number((long) value);
        } else {
            row.number(value, 3);
        }
    }

    /** The rows that were refused. */
    byte[] refusedTable() {
        OutputTable table = new OutputTable("line", "column", "value", "allowed", "remedy");
        for (Problem problem : refused) {
            table.row()
                    .number(problem.line())
                    .text(problem.column())
                    .text(problem.value())
                    .text(problem.allowed())
                    .text(problem.remedy());
        }
        return table.bytes();
    }

    /** The sums for the terminal. */
    String totals() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rules.size(); i++) {
            LogRule rule = rules.get(i);
            text.append(rule.name())
                    .append(" [")
                    .append(rule.standing().label())
                    .append("]: ")
                    .append(OutputTable.fixed(sums[i], sums[i] == Math.rint(sums[i]) ? 0 : 3))
                    .append(" bf scale of ")
                    .append(logs(counts[i]))
                    .append('\n');
        }
        return text.toString();
    }
}
