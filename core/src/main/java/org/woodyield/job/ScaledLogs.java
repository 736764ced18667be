package org.woodyield.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.log.Log;
import org.woodyield.log.ProfileStation;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

/** Logs of a table with their scales by some rules, and the rows that could not be scaled. */
final class ScaledLogs {

    private static final String ID = "id";
    private static final String SMALL = "small-end";
    private static final String ACROSS = "small-end-across";
    private static final String MIDDLE = "middle";
    private static final String LARGE = "large-end";
    private static final String LENGTH = "length";
    private static final List<Table.Column> COLUMNS = Stream.concat(
                    Stream.of(
                            Table.Column.required(ID),
                            Table.Column.required(SMALL),
                            Table.Column.optional(ACROSS),
                            Table.Column.optional(MIDDLE),
                            Table.Column.optional(LARGE),
                            Table.Column.required(LENGTH)),
                    DefectColumns.COLUMNS.stream())
            .toList();
    private static final Length WIDEST = Length.millimetres(3000);
    private static final Length LONGEST = Length.millimetres(30_000);

    /** What the logs give by one rule. */
    private static final class Sum {
        private double gross;
        private double net;
        private int logs;
        private int netLogs;
        private int merchantable;

        /** Why it refused logs so far: a refusal costs far more than a scale, and many logs are alike. */
        private final Map<Scaling.Alike, String> refused = new HashMap<>();
    }

    private final List<Scaling> scalings;
    private final double leastSound;
    private final RowByRow table;
    private final boolean net;
    private final OutputTable scales;
    private final List<Sum> sums = new ArrayList<>();
    private int scaled;
    private int inPart;
    private int repeated;
    private int beyond;
    private int bent;
    private final Map<String, Integer> firstLines = new HashMap<>();

    private ScaledLogs(String file, String text, List<Scaling> scalings, double leastSound) {
        this.scalings = List.copyOf(scalings);
        this.leastSound = leastSound;
        scalings.forEach(one -> sums.add(new Sum()));
        table = RowByRow.of(file, text, COLUMNS, "a row for each log", "add the logs");
        net = table.hasAny(DefectColumns.COLUMNS);
        // No rule asks what wood it is.
        Species any = SpeciesCatalogue.published().all().iterator().next();
        scales = new OutputTable(columns());
        table.read(row -> log(row, any), this::scale);
    }

    /**
     * Scales the logs of a table.
     *
     * @param leastSound the share of sound wood that makes a log merchantable
     */
    static ScaledLogs of(String file, String text, List<Scaling> scalings, double leastSound) {
        return new ScaledLogs(file, text, scalings, leastSound);
    }

    private Optional<Scaling.Measured> log(Table.Row row, Species species) {
        Optional<String> id = row.cell(ID).words("a name for the log");
        Optional<Length> small = diameter(row.cell(SMALL));
        Optional<Length> length = row.cell(LENGTH).lengthUpTo(LONGEST, "give the length of one log, not of the stem");
        Optional<Length> across =
                row.cellIfAny(ACROSS).map(ScaledLogs::diameter).orElse(small);
        Optional<DefectColumns> defects = net
                ? DefectColumns.read(
                        row,
                        length.orElse(LONGEST),
                        length.isPresent() ? row.cell(LENGTH).text() : LONGEST.toString())
                : Optional.empty();
        if (id.isEmpty() || small.isEmpty() || length.isEmpty() || across.isEmpty() || net != defects.isPresent()) {
            return Optional.empty();
        }
        boolean longer = small.get().compareTo(across.get()) > 0;
        Length widest = longer ? small.get() : across.get();
        Length narrowest = longer ? across.get() : small.get();
        Optional<Cell> largeCell = row.cellIfAny(LARGE);
        Optional<Length> large = largeCell.map(ScaledLogs::diameter).orElse(Optional.of(widest));
        if (large.isEmpty()) {
            return Optional.empty();
        }
        Log log;
        try {
            log = new Log(
                    id.get(),
                    species,
                    length.get(),
                    widest,
                    narrowest,
                    large.get(),
                    Length.ZERO,
                    Length.ZERO,
                    0,
                    false);
        } catch (OutOfDomainException e) {
            row.cell(LARGE).refuse(e);
            return Optional.empty();
        }
        Optional<Cell> middle = row.cellIfAny(MIDDLE);
        return (middle.isEmpty() ? Optional.of(log) : withMiddle(log, middle.get(), largeCell.isPresent()))
                .map(whole -> Scaling.Measured.of(
                        whole,
                        largeCell.isPresent(),
                        net,
                        defects.map(DefectColumns::defects).orElse(List.of())));
    }

    /** The log with a station half way along. */
    private static Optional<Log> withMiddle(Log log, Cell cell, boolean largeEndGiven) {
        if (!largeEndGiven) {
            cell.refuse("empty where there is no " + LARGE, "give the large end too");
            return Optional.empty();
        }
        Optional<Length> middle = diameter(cell);
        if (middle.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(log.withProfile(List.of(
                    new ProfileStation(Length.ZERO, log.smallEndMean()),
                    new ProfileStation(log.length().dividedBy(2, Rounding.DOWN), middle.get()),
                    new ProfileStation(log.length(), log.largeEndMean()))));
        } catch (OutOfDomainException e) {
            cell.refuse(e);
            return Optional.empty();
        }
    }

    private static Optional<Length> diameter(Cell cell) {
        return cell.lengthUpTo(WIDEST, "check the unit");
    }

    private void scale(Scaling.Measured log, int line) {
        OutputTable.Row row = scales.row().text("log").text(log.log().id());
        StringBuilder why = new StringBuilder();
        StringBuilder caution = new StringBuilder();
        Map<String, String> notNet = new LinkedHashMap<>();
        Map<String, String> bends = net ? new LinkedHashMap<>() : Map.of();
        Integer first = firstLines.putIfAbsent(log.log().id(), line);
        if (first != null) {
            repeated++;
            join(caution, "line " + first + " has this id too; both count");
        }
        List<String> clipped = log.defects().stream()
                .flatMap(found -> found.beyond(log.log().length()).stream())
                .toList();
        clipped.forEach(words -> join(caution, words));
        beyond += clipped.isEmpty() ? 0 : 1;
        for (int i = 0; i < scalings.size(); i++) {
            Scaling one = scalings.get(i);
            Sum sum = sums.get(i);
            Optional<Scaling.Alike> alike = Optional.empty();
            try {
                alike = one.alike(log);
                Optional<String> refused = sum.refused.isEmpty() ? Optional.empty() : alike.map(sum.refused::get);
                if (refused.isPresent()) {
                    nothing(row);
                    join(why, refused.get());
                    continue;
                }
                Scaling.Figure figure = one.figure(log);
                figure(row, figure);
                sum.logs++;
                sum.gross += figure.gross();
                figure.caution().ifPresent(words -> join(caution, words));
                if (!net) {
                    continue;
                }
                if (!figure.notNet().isEmpty()) {
                    notNet.merge(figure.notNet(), one.key(), (keys, key) -> keys + ", " + key);
                }
                if (!figure.bends().isEmpty()) {
                    bends.merge(figure.bends(), one.key(), (keys, key) -> keys + ", " + key);
                }
                if (figure.net().isPresent()) {
                    sum.net += figure.net().getAsDouble();
                    sum.netLogs++;
                    sum.merchantable += merchantable(figure) ? 1 : 0;
                }
            } catch (OutOfDomainException e) {
                String refused = one.key() + ": " + e.getMessage();
                alike.ifPresent(seen -> sum.refused.put(seen, refused));
                nothing(row);
                join(why, refused);
            }
        }
        // What is amiss with a defect is amiss by most rules alike.
        notNet.forEach((words, keys) -> join(why, keys + ", net: " + words));
        bends.forEach((words, keys) -> join(
                caution,
                keys + ", net: " + words
                        + " is not deducted: a solid volume keeps its wood, and no deduction was read in print"));
        bent += bends.isEmpty() ? 0 : 1;
        inPart += why.isEmpty() ? 0 : 1;
        row.text(why.toString()).text(caution.toString());
        scaled++;
    }

    private boolean merchantable(Scaling.Figure figure) {
        OptionalDouble share = figure.soundShare();
        return share.isPresent() && share.getAsDouble() >= leastSound;
    }

    private static void join(StringBuilder all, String words) {
        all.append(all.isEmpty() ? "" : "; ").append(words);
    }

    private static String logs(int count) {
        return count == 1 ? "1 log" : count + " logs";
    }

    /** The table of the logs, with the rows that were not scaled. */
    RowByRow read() {
        return table;
    }

    /** Whether no row at all could be read. */
    boolean none() {
        return scaled == 0;
    }

    /** How many rows went where; none is lost. */
    String count() {
        int read = table.count();
        return (read == 1 ? "1 row: " : read + " rows: ") + scaled + " scaled, " + inPart
                + " of them not by every rule; " + (read - scaled) + " refused"
                + (repeated == 0 ? "" : "; " + repeated + " with an id that stands before, counted all the same")
                + (beyond == 0 ? "" : "; " + beyond + " with a defect that reaches beyond the log, counted to its end")
                + (bent == 0 ? "" : "; " + bent + " with sweep or crook that is not deducted from a solid volume");
    }

    private String[] columns() {
        List<String> columns = new ArrayList<>(List.of("row", "id"));
        for (Scaling one : scalings) {
            columns.add(one.key() + "-" + one.unit() + "-scale");
            if (net) {
                columns.add(one.key() + "-" + one.unit() + "-net");
                columns.add(one.key() + "-merchantable");
            }
        }
        columns.add("not-scaled");
        columns.add("caution");
        return columns.toArray(String[]::new);
    }

    /** The logs, a row of sums, and what each column rests on; given once. */
    byte[] table() {
        OutputTable.Row total = scales.row().text("total").text(logs(scaled));
        for (Sum sum : sums) {
            number(total, sum.gross);
            if (net) {
                number(total, sum.net);
                total.text(sum.merchantable + " of " + sum.netLogs);
            }
        }
        total.text(inPart == 0 ? "" : inPart == 1 ? "1 log is not in every sum" : inPart + " logs are not in every sum")
                .text(Stream.of(
                                repeated == 0
                                        ? ""
                                        : repeated == 1 ? "1 id stands twice" : repeated + " ids stand again",
                                bent == 0
                                        ? ""
                                        : "sweep or crook of " + logs(bent) + " is not deducted from solid volumes")
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining("; ")));
        OutputTable.Row source = scales.row().text("source").empty();
        for (Scaling one : scalings) {
            source.text("[" + one.standing().label() + "] " + one.citation());
            if (net) {
                source.empty().empty();
            }
        }
        source.empty().empty();
        return scales.bytes();
    }

    private void nothing(OutputTable.Row row) {
        row.empty();
        if (net) {
            row.empty().empty();
        }
    }

    private void figure(OutputTable.Row row, Scaling.Figure figure) {
        number(row, figure.gross());
        if (!net) {
            return;
        }
        if (figure.net().isPresent()) {
            number(row, figure.net().getAsDouble());
        } else {
            row.empty();
        }
        row.text(figure.soundShare().isEmpty() ? "" : merchantable(figure) ? "yes" : "no");
    }

    private static void number(OutputTable.Row row, double value) {
        if (value == Math.rint(value) && value < 1e15) {
            row.number((long) value);
        } else {
            row.number(value, 3);
        }
    }

    /** The sums for the terminal. */
    String totals() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < scalings.size(); i++) {
            Scaling one = scalings.get(i);
            Sum sum = sums.get(i);
            text.append(one.name())
                    .append(" [")
                    .append(one.standing().label())
                    .append("]: ")
                    .append(amount(sum.gross))
                    .append(' ')
                    .append(one.unitName())
                    .append(" scale of ")
                    .append(logs(sum.logs));
            if (net) {
                text.append(", net ")
                        .append(amount(sum.net))
                        .append(' ')
                        .append(one.unitName())
                        .append(" of ")
                        .append(logs(sum.netLogs))
                        .append(", ")
                        .append(sum.merchantable)
                        .append(" of them merchantable");
            }
            text.append("\n  ").append(one.citation()).append('\n');
        }
        return text.toString();
    }

    private static String amount(double sum) {
        return OutputTable.fixed(sum, sum == Math.rint(sum) ? 0 : 3);
    }
}
