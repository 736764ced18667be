package org.woodyield.checks;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Wane;
import org.woodyield.show.NumberText;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.work.LogWork;
import org.woodyield.work.Outlook;
import org.woodyield.work.TimeBreakdown;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/**
 * Measured times and fuel of sawing beside what the library predicts. The studies print little of what a prediction needs; the
 * rest was chosen before the first run and stands in the file. Nothing passes or fails here.
 */
final class TimeStudies {

    static final String FILE = "time-studies.csv";

    /** Why predictions miss, written after the run; it changes none of them. */
    static final String CAUSES = "time-study-causes.csv";

    private static final int TRIALS = 400;
    private static final long SEED = 1;
    private static final double COVERAGE = 0.95;
    private static final Length STEP = Length.ofMetres(0.0005, Rounding.HALF_UP);
    private static final Length GRID = Length.millimetres(5);
    private static final Length TRIM = Length.millimetres(50);

    /**
     * A prediction.
     *
     * @param value the figure at the defaults
     * @param least lower end of the draws' interval
     * @param greatest upper end of it
     * @param cutAlone the figure if nothing but the cut took time and fuel; empty where there is no cut in it
     * @param hours where the predicted time goes; empty where there is none
     */
    record Predicted(
            double value, double least, double greatest, Optional<Double> cutAlone, Optional<TimeBreakdown> hours) {}

    /**
     * Why a prediction misses.
     *
     * @param kind the class of the cause
     * @param why what it is here
     */
    record Cause(String kind, String why) {}

    /**
     * One figure of a study.
     *
     * @param id its name
     * @param study what was studied
     * @param quantity what was measured
     * @param observed as printed, one or two ends; empty where it is given in words
     * @param unit of it
     * @param source with its standing
     * @param predicted by the library, if it is
     * @param taken what was chosen
     * @param whyNot why it is not predicted
     * @param cause why it misses, if it is predicted
     */
    record Study(
            String id,
            String study,
            String quantity,
            List<Double> observed,
            String unit,
            String source,
            Optional<Predicted> predicted,
            String taken,
            String whyNot,
            Optional<Cause> cause) {

        /** The observed figure as shown. */
        String observedWords() {
            return observed.isEmpty()
                    ? "–"
                    : String.join(
                            " to ",
                            observed.stream().distinct().map(NumberText::full).toList());
        }

        /** The prediction as shown. */
        String predictedWords() {
            return predicted
                    .map(figure -> NumberText.significant(figure.value, 3))
                    .orElse("–");
        }

        /** The interval of the draws as shown. */
        String rangeWords() {
            return predicted
                    .map(figure -> NumberText.significant(figure.least, 3) + " to "
                            + NumberText.significant(figure.greatest, 3))
                    .orElse("–");
        }

        /** The figure of the cut alone as shown. */
        String cutAloneWords() {
            return predicted
                    .flatMap(Predicted::cutAlone)
                    .map(figure -> NumberText.significant(figure, 3))
                    .orElse("–");
        }

        /** Predicted over observed, at each end. */
        String ratioWords() {
            return predicted.map(figure -> over(figure.value)).orElse("–");
        }

        /** The figure of the cut alone over observed, at each end. */
        String cutAloneRatioWords() {
            return predicted.flatMap(Predicted::cutAlone).map(this::over).orElse("–");
        }

        private String over(double figure) {
            return String.join(
                    "; ",
                    observed.stream()
                            .distinct()
                            .map(each -> NumberText.significant(figure / each, 2))
                            .toList());
        }

        /** Where the predicted time goes, in minutes and as shares. */
        String hoursWords() {
            return predicted
                    .flatMap(Predicted::hours)
                    .map(time -> Stream.of(
                                    part("cut", time.cutting(), time),
                                    part("warm-up and cool-down", time.warmUp() + time.coolDown(), time),
                                    part("setting and carrying", time.setting() + time.carrying(), time),
                                    part("laying the guide", time.guide(), time),
                                    part("turning", time.turning(), time),
                                    part("log to saw", time.loading(), time),
                                    part("tank and edge", time.refuelling() + time.sharpening(), time),
                                    part("rest", time.rest(), time))
                            .flatMap(Optional::stream)
                            .collect(Collectors.joining("; ")))
                    .orElse("–");
        }

        private static Optional<String> part(String name, double minutes, TimeBreakdown all) {
            return minutes > 0
                    ? Optional.of(name + " " + NumberText.fixed(minutes, 1) + " min, "
                            + NumberText.percent(minutes / all.total()))
                    : Optional.empty();
        }

        /** The class of the cause as shown. */
        String causeWords() {
            return cause.map(Cause::kind).orElse("–");
        }

        /** What the cause is, as shown. */
        String whyWords() {
            return cause.map(Cause::why).orElse("–");
        }
    }

    private final List<Study> studies;

    private TimeStudies(List<Study> studies) {
        this.studies = Collections.unmodifiableList(studies);
    }

    static TimeStudies read() {
        Map<String, Cause> causes = new LinkedHashMap<>();
        for (NamedCsvRecord row : rows(CAUSES)) {
            causes.put(row.getField("id"), new Cause(row.getField("cause"), row.getField("why")));
        }
        List<Study> studies = new ArrayList<>();
        for (NamedCsvRecord row : rows(FILE)) {
            studies.add(study(row, Optional.ofNullable(causes.remove(row.getField("id")))));
        }
        if (!causes.isEmpty()) {
            throw new IllegalStateException(CAUSES + ": no study " + causes.keySet());
        }
        return new TimeStudies(studies);
    }

    private static List<NamedCsvRecord> rows(String file) {
        try (InputStream in = Objects.requireNonNull(TimeStudies.class.getResourceAsStream(file));
                CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return csv.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<Study> studies() {
        return studies;
    }

    private static Study study(NamedCsvRecord row, Optional<Cause> cause) {
        List<Double> observed = new ArrayList<>();
        for (String column : List.of("observed_least", "observed_greatest")) {
            number(row, column).ifPresent(observed::add);
        }
        String figure = row.getField("figure");
        return new Study(
                row.getField("id"),
                row.getField("study"),
                row.getField("quantity"),
                List.copyOf(observed),
                row.getField("unit"),
                row.getField("source") + " [" + row.getField("standing") + "]",
                figure.isEmpty() ? Optional.empty() : Optional.of(predicted(row, figure)),
                inputs(row) + row.getField("taken"),
                row.getField("why_not"),
                cause);
    }

    /** The numbers that were chosen, for the page. */
    private static String inputs(NamedCsvRecord row) {
        if (row.getField("power_kw").isEmpty()) {
            return "";
        }
        String share = row.getField("utilisation");
        return row.getField("saw") + " saw of " + row.getField("power_kw") + " kW, kerf " + row.getField("kerf_mm")
                + " mm; " + row.getField("species") + ", " + row.getField("logs") + " x " + row.getField("small_mm")
                + "/" + row.getField("large_mm") + " mm by " + row.getField("length_mm") + " mm; boards of "
                + row.getField("thickness_mm") + " x " + row.getField("width_mm") + " mm; people "
                + row.getField("people") + (share.isEmpty() ? "" : "; utilisation " + share) + ": ";
    }

    private static Optional<Double> number(NamedCsvRecord row, String column) {
        String cell = row.getField(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(cell));
    }

    private static double needed(NamedCsvRecord row, String column) {
        return number(row, column).orElseThrow(() -> new IllegalStateException(row.getField("id") + ": no " + column));
    }

    private static Length millimetres(NamedCsvRecord row, String column) {
        return Length.parse(row.getField(column) + " mm");
    }

    private static Predicted predicted(NamedCsvRecord row, String figure) {
        WorkInputs inputs =
                row.getField("saw").equals("chain") ? WorkInputs.chainDefaults() : WorkInputs.bandDefaults();
        if (figure.equals("utilisation")) {
            return predicted(inputs, drawn -> drawn.get(WorkInput.UTILISATION), Optional.empty(), Optional.empty());
        }
        WorkInputs given = inputs.with(WorkInput.RATED_POWER, needed(row, "power_kw"));
        WorkInputs work = number(row, "utilisation")
                .map(share -> given.with(WorkInput.UTILISATION, share))
                .orElse(given);
        Species species = SpeciesCatalogue.published().find(row.getField("species"));
        SawingPlan plan = plan(row, species);
        int count = (int) needed(row, "logs");
        LogWork log = LogWork.of("1", species, plan);
        double lumber = count * plan.balance().lumber().cubicMetres();
        double logs = count * plan.solid().volume().cubicMetres();
        Length kerf = plan.saw().kerf();
        List<LogWork> all = Collections.nCopies(count, log);
        boolean fuel = figure.equals("fuel-per-lumber");
        double volume = figure.equals("logs-per-hour") ? logs : lumber;
        double people = figure.equals("lumber-per-man-hour") ? needed(row, "people") : 1;
        boolean hours = figure.equals("hours-for-logs");
        if (!fuel && !hours && !figure.startsWith("lumber-per") && !figure.equals("logs-per-hour")) {
            throw new IllegalStateException(row.getField("id") + ": no figure " + figure);
        }
        WorkEstimate estimate = WorkEstimate.of(work, kerf, all);
        double cut = estimate.time().cutting() / 60;
        double cutAlone;
        if (fuel) {
            cutAlone = estimate.use().cuttingLitres() / lumber;
        } else {
            cutAlone = hours ? cut : volume / (cut * people);
        }
        return predicted(
                work,
                drawn -> {
                    WorkEstimate one = WorkEstimate.of(drawn, kerf, all);
                    if (fuel) {
                        return one.use().fuelLitres() / lumber;
                    }
                    double time = one.time().hours();
                    return hours ? time : volume / (time * people);
                },
                Optional.of(cutAlone),
                fuel ? Optional.empty() : Optional.of(estimate.time()));
    }

    private static Predicted predicted(
            WorkInputs inputs,
            ToDoubleFunction<WorkInputs> figure,
            Optional<Double> cutAlone,
            Optional<TimeBreakdown> hours) {
        Outlook outlook = Outlook.of(inputs, figure, SEED, TRIALS);
        MonteCarlo.Interval interval = outlook.drawn().orElseThrow().interval(COVERAGE);
        return new Predicted(outlook.value(), interval.least(), interval.greatest(), cutAlone, hours);
    }

    /** As many boards of the one size as the log gives, a pass costing nothing in the choice. */
    private static SawingPlan plan(NamedCsvRecord row, Species species) {
        Length length = millimetres(row, "length_mm");
        Length small = millimetres(row, "small_mm");
        Log log = new Log(
                row.getField("id"),
                species,
                length,
                small,
                small,
                millimetres(row, "large_mm"),
                Length.ZERO,
                Length.ZERO,
                0,
                false);
        Length width = millimetres(row, "width_mm");
        PieceOption board = new PieceOption(
                "board",
                millimetres(row, "thickness_mm"),
                width,
                width,
                Length.millimetres(1),
                List.of(new LengthWorth(length.minus(TRIM), 1)),
                Wane.NONE);
        Saw saw = new Saw(
                row.getField("saw"),
                millimetres(row, "kerf_mm"),
                Length.millimetres(1500),
                STEP,
                row.getField("saw").equals("chain") ? Saw.Reference.PREVIOUS_FACE : Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
        return BestPattern.findAny(
                        LogSolid.of(log),
                        saw,
                        List.of(board),
                        SearchSpace.standard().withGrid(GRID),
                        PassCost.free())
                .orElseThrow(() -> new OutOfDomainException(
                        row.getField("id"), "nothing sawn", "", "a log that gives a board", ""));
    }
}
