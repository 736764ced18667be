package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Domain;
import org.woodyield.plan.JobPlan;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Sourced;
import org.woodyield.work.CarbonMonoxide;
import org.woodyield.work.InputValue;
import org.woodyield.work.NoiseLimit;
import org.woodyield.work.TimeLine;
import org.woodyield.work.TimeLine.Activity;
import org.woodyield.work.VibrationDay;
import org.woodyield.work.WorkInput;

/** What a plan says of noise, vibration and exhaust on the day in which the engine runs longest; information, no claim. */
final class ExposureSection {

    private static final double LONGEST_HOURS = 24;

    private final PlanWords words;
    private final double hours;
    private final PlanTable.Builder table = PlanTable.of(
                    "exposure", "Noise, vibration and exhaust of the day in which the engine runs longest")
            .text("What", "what")
            .number("Level", "level")
            .text("Unit", "unit")
            .number("Hours", "hours")
            .number("Comes to", "comes-to")
            .text("Of what", "of-what")
            .text("Beside", "beside")
            .text("Over its range", "over-range");
    private final List<Derivation> workings = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();

    private ExposureSection(PlanWords words, double hours) {
        this.words = words;
        this.hours = hours;
    }

    static Optional<Section> of(PlanWords words) {
        JobPlan plan = words.plan();
        return plan.timeLine().days().stream()
                .map(ExposureSection::engineMinutes)
                .max(Double::compare)
                .map(minutes -> new ExposureSection(words, Math.min(minutes / 60, LONGEST_HOURS)).section());
    }

    private static double engineMinutes(TimeLine.Day day) {
        return day.minutes(Activity.CUTTING) + day.minutes(Activity.WARM_UP) + day.minutes(Activity.COOL_DOWN);
    }

    private Section section() {
        Optional<InputValue> sound = find(WorkInput.SOUND_LEVEL);
        Optional<InputValue> vibration = find(WorkInput.VIBRATION);
        Optional<InputValue> monoxide = find(WorkInput.CARBON_MONOXIDE);
        sound.ifPresent(level -> {
            noise(NoiseLimit.NIOSH, level);
            noise(NoiseLimit.OSHA, level);
        });
        vibration.ifPresent(this::vibration);
        monoxide.ifPresent(this::monoxide);
        if (sound.isEmpty()) {
            lines.add("Noise: left out, no " + WorkInput.SOUND_LEVEL.label()
                    + " (work.sound-level; the saw's instructions state one).");
        }
        if (vibration.isEmpty()) {
            lines.add("Vibration: left out, no " + WorkInput.VIBRATION.label()
                    + " (work.vibration; the saw's instructions state one).");
        }
        if (monoxide.isEmpty()) {
            lines.add("Carbon monoxide: no measured value is given (work.carbon-monoxide), so there is no mean. "
                    + measured());
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose("The engine runs for " + NumberText.duration(60 * hours)
                + " on that day: cutting, warm-up and cool-down, taken with the hands on the saw for all of it."));
        if (sound.isPresent() || vibration.isPresent() || monoxide.isPresent()) {
            blocks.add(new Tabular(table.build()));
        }
        if (!lines.isEmpty()) {
            blocks.add(new Points(lines));
        }
        blocks.add(new Prose(
                "Arithmetic on published formulas and limits, for information: nothing here says that a level is safe, nor"
                        + " what it does to anybody. What counts is the level at the ear, at the hands and in the air that is"
                        + " breathed, measured there; what else the day brings comes on top. Limits differ by country: ask the"
                        + " authority, and a doctor about health."));
        if (!workings.isEmpty()) {
            blocks.add(new Workings("How these figures come about", workings));
        }
        return new Section("exposure", "Noise, vibration, exhaust", blocks);
    }

    private Optional<InputValue> find(WorkInput input) {
        return words.plan().input().work().find(input);
    }

    /**
     * What a level comes to at both ends of its range; a standard uncertainty is taken twice to either side. More of it never
     * comes to less, so the ends are the ends of the interval.
     */
    private static Cell overRange(WorkInput input, InputValue level, DoubleFunction<String> comesTo) {
        if (!level.hasSpread()) {
            return Cell.text("no range given");
        }
        Domain domain = input.domain();
        double twice = 2 * level.spread().standardDeviation();
        boolean normal = level.spread() instanceof Distribution.Normal;
        double least = Math.max(normal ? level.value() - twice : level.spread().least(), domain.least());
        double greatest =
                Math.min(normal ? level.value() + twice : level.spread().greatest(), domain.greatest());
        return Cell.text(NumberText.full(least) + " to " + NumberText.full(greatest) + " " + input.unit()
                + (normal ? ", two standard uncertainties to either side" : "") + ": "
                + comesTo.apply(least) + " to " + comesTo.apply(greatest));
    }

    private void noise(NoiseLimit limit, InputValue given) {
        double level = given.value();
        table.row(
                Cell.text("noise, " + limit.name()),
                Cell.number(level, 1, 2),
                Cell.text("dB(A)"),
                Cell.number(hours, 2, 4),
                Cell.number(limit.dosePercent(level, hours), 0, 1),
                Cell.text("% of a day's dose"),
                Cell.text(reached(limit.allowedHours(level)) + ", without ear protection"),
                overRange(
                        WorkInput.SOUND_LEVEL,
                        given,
                        each -> NumberText.fixed(limit.dosePercent(each, hours), 0) + " % ("
                                + reached(limit.allowedHours(each)) + ")"));
        workings.add(words.derivation("Noise dose, " + limit.name(), limit.doseWorking(level, hours)));
    }

    private static String reached(double allowed) {
        return allowed > LONGEST_HOURS
                ? "100 % is not reached within a day"
                : "reaches 100 % in " + NumberText.duration(60 * allowed);
    }

    private void vibration(InputValue given) {
        double level = given.value();
        VibrationDay day = vibrationDay(level);
        words.sources().add(VibrationDay.ACTION_VALUE.source());
        words.sources().add(VibrationDay.LIMIT_VALUE.source());
        table.row(
                Cell.text("vibration"),
                Cell.number(level, 1, 2),
                Cell.text("m/s2"),
                Cell.number(hours, 2, 4),
                Cell.number(day.dailyExposure(), 2, 4),
                Cell.text("m/s2, A(8)"),
                Cell.text("European action value " + NumberText.full(VibrationDay.ACTION_VALUE.value())
                        + until(level, VibrationDay.ACTION_VALUE)
                        + ", limit " + NumberText.full(VibrationDay.LIMIT_VALUE.value())
                        + until(level, VibrationDay.LIMIT_VALUE)),
                overRange(
                        WorkInput.VIBRATION,
                        given,
                        each -> "A(8) " + NumberText.fixed(vibrationDay(each).dailyExposure(), 2)));
        workings.add(words.derivation("Vibration of the day", day.dailyExposureWorking()));
        if (level > 0) {
            workings.add(words.derivation(
                    "Hours until the action value",
                    VibrationDay.hoursUntilWorking(level, VibrationDay.ACTION_VALUE.value())));
        }
    }

    private VibrationDay vibrationDay(double level) {
        return new VibrationDay(List.of(new VibrationDay.Task("the saw", level, hours)));
    }

    private static String until(double level, Sourced value) {
        if (!(level > 0)) {
            return "";
        }
        double until = VibrationDay.hoursUntil(level, value.value());
        return until > LONGEST_HOURS ? " (not within a day)" : " (after " + NumberText.duration(60 * until) + ")";
    }

    private void monoxide(InputValue given) {
        double level = given.value();
        List<CarbonMonoxide.Stretch> day = monoxideDay(level);
        table.row(
                Cell.text("carbon monoxide"),
                Cell.number(level, 0, 2),
                Cell.text("ppm"),
                Cell.number(hours, 2, 4),
                Cell.number(CarbonMonoxide.eightHourMean(day), 1, 3),
                Cell.text("ppm over 8 h"),
                Cell.text(limits()),
                overRange(
                        WorkInput.CARBON_MONOXIDE,
                        given,
                        each -> NumberText.fixed(CarbonMonoxide.eightHourMean(monoxideDay(each)), 1)
                                + " ppm over 8 h"));
        workings.add(words.derivation("Carbon monoxide of the day", CarbonMonoxide.eightHourMeanWorking(day)));
        lines.add("Carbon monoxide: " + measured());
    }

    private List<CarbonMonoxide.Stretch> monoxideDay(double level) {
        return List.of(new CarbonMonoxide.Stretch(level, hours));
    }

    private String limits() {
        return "NIOSH " + amount(CarbonMonoxide.NIOSH_EIGHT_HOURS) + " over 8 h and "
                + amount(CarbonMonoxide.NIOSH_CEILING) + " at any time; OSHA "
                + amount(CarbonMonoxide.OSHA_EIGHT_HOURS) + " over 8 h";
    }

    private String measured() {
        return "Limits are " + limits() + ". Measured with chain saws in thinning: up to "
                + amount(CarbonMonoxide.MEASURED_SHIFT) + " over a shift, peaks up to "
                + amount(CarbonMonoxide.MEASURED_PEAK) + " bent or kneeling.";
    }

    private String amount(Sourced value) {
        words.sources().add(value.source());
        return PlanWords.marked(
                NumberText.full(value.value()) + " " + value.unit(),
                value.source().standing());
    }
}
