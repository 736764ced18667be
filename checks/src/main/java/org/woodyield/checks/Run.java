package org.woodyield.checks;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.woodyield.source.Standing;

/**
 * One run of all check rows: the results, and what is wrong with the tables themselves.
 *
 * <p>The allowance is half a unit of the published value's last printed digit. Where the source truncates, the computed
 * value may exceed the printed one by less than a whole unit, and not fall short of it. A wider one stands in the row with
 * its reason. Fractions such as {@code 1 1/2} are exact. One part in 10^12 is added for binary arithmetic.
 */
final class Run {

    private static final BigDecimal NOISE = new BigDecimal("1e-12");
    private static final int MOST_ROUNDED_INPUTS = 6;

    private final List<Result> results;
    private final List<String> problems;

    private Run(List<Result> results, List<String> problems) {
        this.results = List.copyOf(results);
        this.problems = List.copyOf(problems);
    }

    /**
     * Runs every row of every table.
     *
     * @param catalogue what the tables call
     * @param tables the text of each table by its id
     */
    static Run of(Catalogue catalogue, Map<String, String> tables) {
        List<Result> results = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        Set<String> called = new LinkedHashSet<>();
        tables.forEach((id, text) -> {
            CheckTable table;
            try {
                table = CheckTable.parse(id, text);
            } catch (RuntimeException e) {
                problems.add(String.valueOf(e.getMessage()));
                return;
            }
            Set<String> read = new LinkedHashSet<>();
            for (CheckTable.Row row : table.rows()) {
                called.add(row.calculation());
                results.add(result(catalogue, table, row, read));
            }
            Set<String> unread =
                    new LinkedHashSet<>(table.rows().get(0).inputs().keySet());
            unread.removeAll(read);
            if (!unread.isEmpty()) {
                problems.add(id + ": no calculation reads the columns " + unread);
            }
        });
        for (String calculation : catalogue.calculations()) {
            if (!called.contains(calculation)) {
                problems.add("no table calls " + calculation);
            }
        }
        return new Run(results, problems);
    }

    List<Result> results() {
        return results;
    }

    /** What is wrong beside the rows: broken tables, columns that nothing reads, calculations that no table calls. */
    List<String> problems() {
        return problems;
    }

    boolean passes() {
        return problems.isEmpty() && !results.isEmpty() && results.stream().noneMatch(Result::fails);
    }

    /** What is counted together. */
    record Sort(Kind kind, Standing standing, Verdict verdict) implements Comparable<Sort> {
        private static final Comparator<Sort> ORDER =
                Comparator.comparing(Sort::kind).thenComparing(Sort::standing).thenComparing(Sort::verdict);

        @Override
        public int compareTo(Sort other) {
            return ORDER.compare(this, other);
        }
    }

    /** Rows by kind, standing and verdict; never added up. */
    SortedMap<Sort, Integer> counts() {
        return counts(results);
    }

    static SortedMap<Sort, Integer> counts(List<Result> results) {
        SortedMap<Sort, Integer> counts = new TreeMap<>();
        for (Result result : results) {
            CheckTable.Row row = result.row();
            counts.merge(new Sort(row.kind(), row.source().standing(), result.verdict()), 1, Integer::sum);
        }
        return counts;
    }

    /** One row; a table of core that does not load fails it like anything else. */
    static Result result(Catalogue catalogue, CheckTable table, CheckTable.Row row, Set<String> read) {
        Given given = new Given(row.inputs(), Map.of(), read);
        Catalogue.Entry entry = catalogue.find(row.calculation()).orElse(null);
        if (entry == null) {
            return new Result(
                    row, given.toString(), "", "", "", Verdict.FAILS, "the catalogue has no " + row.calculation());
        }
        try {
            return entry instanceof Catalogue.NumberEntry number
                    ? number(number, table, row, given, read)
                    : text((Catalogue.TextEntry) entry, row, given);
        } catch (RuntimeException | LinkageError e) {
            return new Result(row, given.toString(), "", "", "", Verdict.FAILS, e.toString());
        }
    }

    private static Result text(Catalogue.TextEntry entry, CheckTable.Row row, Given given) {
        String computed = entry.compute().apply(given);
        boolean same = computed.equals(row.published());
        boolean asWritten = row.expected().map(computed::equals).orElse(true);
        return verdict(row, given, computed, "", "the same text", same, asWritten);
    }

    private static Result number(
            Catalogue.NumberEntry entry, CheckTable table, CheckTable.Row row, Given given, Set<String> read) {
        double computed = finite(entry.compute().applyAsDouble(given));
        double least = computed;
        double greatest = computed;
        for (Map<String, Double> ends : ends(table, row)) {
            double end = finite(entry.compute().applyAsDouble(new Given(row.inputs(), ends, read)));
            least = Math.min(least, end);
            greatest = Math.max(greatest, end);
        }
        Printed published = Printed.of(row.published());
        Allowance allowance = row.allowance()
                .map(Allowance::wider)
                .orElseGet(() -> table.truncates() ? Allowance.truncated(published) : Allowance.rounded(published));
        boolean same = allowance.admits(published, least, greatest);
        boolean asWritten = row.expected()
                .map(Printed::of)
                .map(expected -> Allowance.rounded(expected).admits(expected, computed, computed))
                .orElse(true);
        String difference = plain(new BigDecimal(Double.toString(computed)).subtract(published.value()));
        String shown = least < greatest
                ? allowance.words() + ", inputs at both ends: " + plain(least) + " to " + plain(greatest)
                : allowance.words();
        return verdict(row, given, plain(computed), difference, shown, same, asWritten);
    }

    private static Result verdict(
            CheckTable.Row row,
            Given given,
            String computed,
            String difference,
            String allowance,
            boolean same,
            boolean asWritten) {
        Verdict verdict;
        String why = "";
        if (row.kind() != Kind.DISAGREEMENT) {
            verdict = same ? Verdict.AGREES : Verdict.FAILS;
            why = same ? "" : "not within the allowance";
        } else if (same) {
            verdict = Verdict.FAILS;
            why = "the disagreement has vanished";
        } else {
            verdict = asWritten ? Verdict.KNOWN : Verdict.FAILS;
            why = asWritten ? "" : "expected " + row.expected().orElse("");
        }
        return new Result(row, given.toString(), computed, difference, allowance, verdict, why);
    }

    /** All corners of the box that the rounded inputs span. */
    private static List<Map<String, Double>> ends(CheckTable table, CheckTable.Row row) {
        List<String> columns = table.roundedInputs().stream()
                .filter(column -> !row.inputs().getOrDefault(column, "").isEmpty())
                .toList();
        if (columns.size() > MOST_ROUNDED_INPUTS) {
            throw new IllegalStateException("more than " + MOST_ROUNDED_INPUTS + " rounded inputs");
        }
        List<Map<String, Double>> corners = new ArrayList<>();
        for (int corner = 0; !columns.isEmpty() && corner < 1 << columns.size(); corner++) {
            Map<String, Double> ends = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                Printed cell = Printed.of(row.inputs().getOrDefault(columns.get(i), ""));
                BigDecimal end = (corner >> i & 1) == 0
                        ? cell.value().subtract(cell.halfDigit())
                        : cell.value().add(cell.halfDigit());
                ends.put(columns.get(i), end.doubleValue());
            }
            corners.add(ends);
        }
        return corners;
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException("the computed value is " + value);
        }
        return value;
    }

    private static String plain(double value) {
        return plain(new BigDecimal(Double.toString(value)));
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /**
     * How far below and above the published value a computed one may lie.
     *
     * @param below how far below, zero or more
     * @param above how far above, zero or more
     * @param words as shown
     */
    private record Allowance(BigDecimal below, BigDecimal above, String words) {

        static Allowance rounded(Printed published) {
            BigDecimal half = published.halfDigit();
            return new Allowance(half, half, half.signum() == 0 ? "exact" : "±" + plain(half));
        }

        static Allowance truncated(Printed published) {
            BigDecimal digit = published.digit();
            String words = "truncated to " + plain(digit);
            return published.value().signum() < 0
                    ? new Allowance(digit, BigDecimal.ZERO, words)
                    : new Allowance(BigDecimal.ZERO, digit, words);
        }

        static Allowance wider(String text) {
            BigDecimal stated = Printed.of(text).value();
            if (stated.signum() <= 0) {
                throw new IllegalArgumentException("allowance is " + text + "; allowed: above 0");
            }
            return new Allowance(stated, stated, "±" + plain(stated));
        }

        boolean admits(Printed published, double least, double greatest) {
            BigDecimal noise = published.value().abs().multiply(NOISE);
            BigDecimal lower = published.value().subtract(below).subtract(noise);
            BigDecimal upper = published.value().add(above).add(noise);
            return new BigDecimal(greatest).compareTo(lower) >= 0 && new BigDecimal(least).compareTo(upper) <= 0;
        }
    }
}
