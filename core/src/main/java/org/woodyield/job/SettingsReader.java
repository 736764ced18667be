package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.woodyield.lumber.FallDown;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.DryingYard;
import org.woodyield.plan.JobInput.Assumption;
import org.woodyield.sawing.FlatnessBudget;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawGuide;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.source.Sources;
import org.woodyield.wood.DryingAir;
import org.woodyield.wood.Stacking;
import org.woodyield.work.InputValue;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/** Reads the single values of a job. What cannot be read has been noted as a problem and is empty here. */
final class SettingsReader {

    static final Domain UNDERSIZE = Domain.of("undersize", "%", 0.1, 50);
    private static final Domain TURN = Domain.of("turn", "degrees", -360, 360);
    /** Finer steps make a search of hours, and no saw is set so. */
    private static final Length FINEST_STEP = Length.nanometres(250_000);

    /** Each start is tried for each strip. */
    private static final Length FINEST_TRIM = Length.inches(1);

    private static final Domain WIND = Domain.of("wind of the guide", "degrees", 0, 10);
    private static final Domain FLAT_SHARE = Domain.of("share of the planing allowance", "%", 0.1, 100);
    private static final String CHECK = "check the unit";
    private static final List<Key> GUIDE_KEYS = List.of(
            Keys.SAW_GUIDE_LENGTH,
            Keys.SAW_GUIDE_DIP,
            Keys.SAW_GUIDE_WIND,
            Keys.SAW_GUIDE_SPAN,
            Keys.SAW_GUIDE_SAG,
            Keys.SAW_CARRIAGE);

    private static final int MOST_TURNS = 24;

    private final Settings settings;
    private final List<Assumption> assumptions = new ArrayList<>();

    SettingsReader(Settings settings) {
        this.settings = settings;
    }

    /** What was not given and was taken instead, so far. */
    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    /** Whether the format is one that is read here; what follows is not judged by the rules of another. */
    boolean formatIsKnown() {
        Optional<Cell> cell = settings.cell(Keys.FORMAT);
        if (cell.isPresent() && !cell.get().text().equals("1")) {
            cell.get().refuse("1", "this program reads format 1 only");
            return false;
        }
        return true;
    }

    Optional<String> title() {
        return given(Keys.TITLE, cell -> cell.words("what the job is called"));
    }

    Optional<String> currency() {
        return given(Keys.CURRENCY, cell -> {
            if (!cell.text().matches("\\p{L}{1,10}|\\p{Sc}")) {
                cell.refuse("a short name such as USD or EUR", "");
                return Optional.empty();
            }
            return Optional.of(cell.text());
        });
    }

    Optional<Length> kerf() {
        return given(Keys.SAW_KERF, cell -> cell.lengthUpTo(Saw.WIDEST_KERF, "give the width of the slot"));
    }

    /** Notes that the kerf takes all of a log. */
    void refuseKerf(String thinnestLog) {
        settings.cell(Keys.SAW_KERF)
                .ifPresent(cell -> cell.refuse("less than the thinnest log, " + thinnestLog, "check the unit"));
    }

    /** Notes that no faces can be laid out with the kerf. */
    void refuseLayout(OutOfDomainException why) {
        settings.cell(Keys.SAW_KERF).ifPresent(cell -> cell.refuse(why));
    }

    /** Notes that the kerf is wider than a board is thick. */
    void refuseKerfOver(String board, String thickness) {
        settings.cell(Keys.SAW_KERF)
                .ifPresent(cell -> cell.refuse(
                        "up to the thickness of what is wanted; " + board + " is " + thickness + " thick",
                        "check the unit, saw thicker, or leave " + board + " out"));
    }

    Optional<Saw> saw() {
        Optional<Length> kerf = kerf();
        Optional<Length> width = given(
                Keys.SAW_WIDTH, cell -> cell.lengthUpTo(Length.millimetres(5000), "give the widest cut, over bark"));
        Optional<Length> step = given(
                Keys.SAW_STEP,
                cell -> cell.length(
                        FINEST_STEP,
                        Length.inches(1),
                        "0.25 mm to 1 in",
                        "give the step by which you set the saw; a scale that reads finer is set to a multiple, such as"
                                + " 0.5 mm or 1/64 in, and a finer step only makes the search long"));
        Optional<Saw.Reference> rides = given(Keys.SAW_RIDES, cell -> cell.choice(Choices.RIDES));
        Optional<Length> variation = given(
                Keys.SAW_VARIATION, cell -> cell.lengthOrNoneUpTo(Length.inches(1, 2), "give a standard deviation"));
        Optional<Length> least = settings.cell(Keys.SAW_LEAST_HEIGHT)
                .map(cell -> cell.lengthOrNoneUpTo(Length.millimetres(1000), "give the lowest height over the bed"))
                .orElseGet(() -> Optional.of(assume("lowest height of the saw over the bed", "0 in", Length.ZERO)));
        Optional<String> kind = settings.cell(Keys.SAW_KIND).map(Cell::text);
        Optional<String> name = settings.cell(Keys.SAW_NAME)
                .map(cell -> cell.words("a name for the saw"))
                .orElse(kind.map(word -> word + " saw"));
        if (kerf.isEmpty()
                || width.isEmpty()
                || step.isEmpty()
                || rides.isEmpty()
                || variation.isEmpty()
                || least.isEmpty()
                || name.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Saw(name.get(), kerf.get(), width.get(), step.get(), rides.get(), least.get(), variation.get()));
    }

    /** How true the saw is led; each reference has keys of its own. */
    Optional<SawGuide> guide() {
        Optional<Length> length = read(Keys.SAW_GUIDE_LENGTH, cell -> cell.lengthUpTo(Length.feet(400), CHECK));
        Optional<Length> dip = read(Keys.SAW_GUIDE_DIP, cell -> cell.lengthOrNoneUpTo(Length.inches(100), CHECK));
        Optional<Double> wind = read(Keys.SAW_GUIDE_WIND, cell -> cell.quantity(Units.DEGREES, WIND));
        Optional<Length> span = read(Keys.SAW_GUIDE_SPAN, cell -> cell.lengthUpTo(Length.feet(300), CHECK));
        Optional<Length> sag = read(
                Keys.SAW_GUIDE_SAG,
                cell -> cell.lengthUpTo(
                        Length.inches(100), "lay the guide on two supports, set the saw down midway and measure"));
        Optional<Length> base = read(
                Keys.SAW_CARRIAGE,
                cell -> cell.lengthUpTo(Length.inches(400), "give what the carriage measures along the guide"));
        Optional<Length> wander = read(
                Keys.SAW_WANDER, cell -> cell.lengthOrNoneUpTo(Length.inches(4), "give what a straightedge shows"));
        Optional<Double> share = settings.cell(Keys.FINISH_FLAT_SHARE)
                .map(cell -> cell.quantity(Units.PERCENT, FLAT_SHARE))
                .orElseGet(() -> {
                    double usual = 100 * SawGuide.USUAL_SHARE;
                    assumptions.add(new Assumption(
                            "share of the planing allowance that the guide may take",
                            OutputTable.fixed(usual, 0) + " %, a choice of this program",
                            Sources.get("definition")));
                    return Optional.of(usual);
                });
        boolean whole = share.isPresent()
                && onlyRiding(Saw.Reference.PREVIOUS_FACE, GUIDE_KEYS)
                && onlyRiding(Saw.Reference.BED, List.of(Keys.SAW_WANDER))
                && together(Keys.SAW_GUIDE_LENGTH, Keys.SAW_GUIDE_DIP)
                && together(Keys.SAW_GUIDE_DIP, Keys.SAW_GUIDE_LENGTH)
                && together(Keys.SAW_GUIDE_WIND, Keys.SAW_GUIDE_DIP)
                && together(Keys.SAW_GUIDE_SPAN, Keys.SAW_GUIDE_SAG)
                && together(Keys.SAW_GUIDE_SAG, Keys.SAW_GUIDE_SPAN);
        if (!whole) {
            return Optional.empty();
        }
        if (dip.isPresent()
                && wind.isEmpty()
                && settings.cell(Keys.SAW_GUIDE_WIND).isEmpty()) {
            notCounted("wind of the guide", 0.0);
        }
        return Optional.of(new SawGuide(
                length.flatMap(over -> dip.map(most -> new FlatnessBudget.Guide(over, most, wind.orElse(0.0)))),
                span.flatMap(apart -> sag.map(most -> new SawGuide.Stiffness(apart, most))),
                base,
                wander,
                share.get() / 100));
    }

    /** A value that may be left out; one that cannot be read has been noted. */
    private <T> Optional<T> read(Key key, Function<Cell, Optional<T>> reading) {
        return settings.cell(key).flatMap(reading);
    }

    private boolean onlyRiding(Saw.Reference reference, List<Key> keys) {
        Optional<Saw.Reference> rides = settings.cell(Keys.SAW_RIDES)
                .map(cell -> Choices.RIDES.get(cell.text().toLowerCase(Locale.ROOT)));
        boolean fits = true;
        for (Key key : keys) {
            Optional<Cell> cell = settings.cell(key);
            if (cell.isPresent() && rides.isPresent() && rides.get() != reference) {
                cell.get()
                        .refuse(
                                "only for a saw that rides " + reference.words(),
                                reference == Saw.Reference.BED
                                        ? "take the key out; a guide has saw.guide-length, saw.guide-dip and saw.guide-wind"
                                        : "take the key out; over a bed saw.wander is given");
                fits = false;
            }
        }
        return fits;
    }

    private boolean together(Key key, Key needed) {
        Optional<Cell> cell = settings.cell(key);
        if (cell.isPresent() && settings.cell(needed).isEmpty()) {
            cell.get().refuse("only together with " + needed.text(), "give that too, such as " + needed.example());
            return false;
        }
        return true;
    }

    Optional<SearchSpace> space() {
        SearchSpace standard = SearchSpace.standard();
        Optional<List<Double>> turns = settings.cell(Keys.PATTERN_TURNS)
                .map(SettingsReader::turns)
                .orElseGet(() -> Optional.of(assume("turns tried for each log", "none", standard.turnsDegrees())));
        Optional<Boolean> cants = settings.cell(Keys.PATTERN_CANTS)
                .map(cell -> cell.choice(Choices.YES_NO))
                .orElseGet(() -> Optional.of(assume("cants tried", "yes", standard.cants())));
        Optional<Length> grid = settings.cell(Keys.PATTERN_GRID)
                .map(cell -> cell.lengthUpTo(Length.inches(1), "1/8 in serves well"))
                .orElseGet(() -> Optional.of(assume("grid of the first face", standard.grid() + "", standard.grid())));
        // Every plan of a log states its frames and starts of trims, so what is not given needs no line of its own.
        Optional<SearchSpace> framed = settings.cell(Keys.PATTERN_FRAMES)
                .map(cell -> FramesReader.read(cell, standard))
                .orElse(Optional.of(standard));
        Optional<Length> trim = settings.cell(Keys.PATTERN_TRIM_START)
                .map(cell -> cell.length(
                        FINEST_TRIM,
                        Length.feet(60),
                        "1 in to 60 ft",
                        "give the step along the log, such as 1 ft; without the key trims start at the ends only"))
                .orElse(Optional.of(standard.startStep()));
        Optional<Length> overThick = settings.cell(Keys.PATTERN_OVER_THICK)
                .map(cell -> cell.lengthOrNoneUpTo(
                        Length.inches(1),
                        "give how much thicker a piece may be, such as 1/4 in, or leave the line out"))
                .orElse(Optional.of(standard.overThick()));
        if (turns.isEmpty()
                || cants.isEmpty()
                || grid.isEmpty()
                || framed.isEmpty()
                || trim.isEmpty()
                || overThick.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(framed.get()
                .withTurns(turns.get())
                .withCants(cants.get())
                .withGrid(grid.get())
                .withStartStep(trim.get())
                .withOverThick(overThick.get()));
    }

    Optional<WorkInputs> work() {
        return work(Map.of());
    }

    /** Time, fuel and money of a saw, in a job that has some of its own. */
    Optional<WorkInputs> work(Map<WorkInput, InputValue> ofJob) {
        Optional<WorkInputs> defaults = given(Keys.SAW_KIND, cell -> cell.choice(Choices.SAW_KIND));
        WorkInputs inputs = defaults.orElseGet(WorkInputs::chainDefaults);
        for (Map.Entry<WorkInput, InputValue> each : ofJob.entrySet()) {
            if (!each.getKey().ofSaw()) {
                inputs = inputs.with(each.getKey(), each.getValue());
            }
        }
        boolean whole = defaults.isPresent();
        for (Map.Entry<WorkInput, Key> entry : Keys.WORK.entrySet()) {
            Optional<Cell> cell = settings.cell(entry.getValue());
            if (cell.isPresent()) {
                Optional<InputValue> value = WorkReader.readWithRange(cell.get(), entry.getKey());
                whole &= value.isPresent();
                if (value.isPresent()) {
                    inputs = inputs.with(entry.getKey(), value.get());
                }
            }
        }
        return whole && resaleIsSensible(inputs) ? Optional.of(inputs) : Optional.empty();
    }

    private boolean resaleIsSensible(WorkInputs inputs) {
        Optional<InputValue> purchase = inputs.find(WorkInput.PURCHASE);
        Optional<InputValue> resale = inputs.find(WorkInput.RESALE);
        if (purchase.isEmpty()
                || resale.isEmpty()
                || resale.get().spread().greatest() <= purchase.get().spread().least()) {
            return true;
        }
        settings.cell(Keys.work(WorkInput.RESALE))
                .ifPresent(cell -> cell.refuse(
                        "no more than the price of the saw, "
                                + amount(purchase.get().value()) + ", over the whole range of both",
                        resaleRemedy(purchase.get(), resale.get())));
        return false;
    }

    private static String resaleRemedy(InputValue purchase, InputValue resale) {
        String price = Keys.work(WorkInput.PURCHASE).text();
        if (resale.value() > purchase.value()) {
            return "write what the saw still fetches at the end of its life, or mend " + price;
        }
        double most = resale.spread().greatest();
        double least = purchase.spread().least();
        if (Double.isInfinite(most) || Double.isInfinite(least)) {
            List<String> endless = new ArrayList<>();
            if (Double.isInfinite(most)) {
                endless.add(Keys.work(WorkInput.RESALE).text());
            }
            if (Double.isInfinite(least)) {
                endless.add(price);
            }
            return "a figure with +- may lie anywhere; write " + String.join(" and ", endless)
                    + " with the ends of a range, such as " + WorkReader.exampleOfRange(WorkInput.RESALE);
        }
        return "the resale may be as much as " + amount(most) + " and the price as little as " + amount(least)
                + "; end the resale there or below, or mend " + price;
    }

    private static String amount(double value) {
        return OutputTable.fixed(value, 2);
    }

    Optional<Length> planing() {
        return given(
                Keys.FINISH_PLANING, cell -> cell.lengthOrNoneUpTo(Length.inches(1, 2), "give what one face loses"));
    }

    Optional<Double> undersize() {
        return given(Keys.FINISH_UNDERSIZE, cell -> cell.quantity(Units.PERCENT, UNDERSIZE));
    }

    /** What drying loses; what is not given is not counted, and the plan says so. */
    Optional<FallDown> fallDown() {
        Optional<Length> trim = settings.cell(Keys.FINISH_END_TRIM)
                .map(cell -> cell.lengthOrNoneUpTo(
                        Length.ofInches(FallDown.END_TRIM.greatest(), Rounding.DOWN), FallDown.END_TRIM.remedy()))
                .orElseGet(() -> Optional.of(notCounted("cut off each end for checks of drying", Length.ZERO)));
        Optional<Double> splits = lost(Keys.FINISH_SPLITS, "pieces that split or check beyond use in drying");
        Optional<Double> warp = lost(Keys.FINISH_WARP, "pieces that warp beyond use in drying");
        if (splits.isPresent()
                && warp.isPresent()
                && !FallDown.TOGETHER.holds(FallDown.together(splits.get(), warp.get()))) {
            settings.cell(Keys.FINISH_WARP)
                    .ifPresent(cell ->
                            cell.refuse("up to 90 % lost by splits and warp together", FallDown.TOGETHER.remedy()));
            return Optional.empty();
        }
        return trim.isPresent() && splits.isPresent() && warp.isPresent()
                ? Optional.of(new FallDown(trim.get(), splits.get(), warp.get()))
                : Optional.empty();
    }

    /** The yard with these losses; what no key asks for is left out of the plan. */
    Optional<DryingYard> yard(FallDown fallDown) {
        List<Key> keys =
                List.of(Keys.DRYING_STACK_WIDTH, Keys.DRYING_GAP, Keys.DRYING_STICKER, Keys.DRYING_STICKER_SPACING);
        boolean stacked = keys.stream().anyMatch(key -> settings.cell(key).isPresent());
        Optional<Stacking> stacking = StackingReader.read(
                settings.cell(keys.get(0)),
                settings.cell(keys.get(1)),
                settings.cell(keys.get(2)),
                settings.cell(keys.get(3)));
        Optional<DryingAir> air = AirReader.read(
                settings.cell(Keys.DRYING_PLACE),
                settings.cell(Keys.DRYING_TEMPERATURE),
                settings.cell(Keys.DRYING_HUMIDITY));
        List<Length> pith = settings.cell(Keys.DRYING_PITH_DISTANCE)
                .flatMap(cell -> cell.lengthsUpTo(Length.inches(60), "measure from the pith to the middle of a board"))
                .orElse(List.of());
        return stacking.map(one -> new DryingYard(fallDown, stacked ? Optional.of(one) : Optional.empty(), air, pith));
    }

    private Optional<Double> lost(Key key, String what) {
        return settings.cell(key)
                .map(cell -> cell.quantity(Units.PERCENT, FallDown.LOSS))
                .orElseGet(() -> Optional.of(notCounted(what, 0.0)));
    }

    private <T> T notCounted(String what, T nothing) {
        assumptions.add(new Assumption(what, "none counted", Sources.get("definition")));
        return nothing;
    }

    private static Optional<List<Double>> turns(Cell cell) {
        List<Double> turns = new ArrayList<>();
        List<Cell> parts = cell.list().orElse(List.of());
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        if (parts.size() > MOST_TURNS) {
            cell.refuse("up to " + MOST_TURNS + " turns", "give fewer");
            return Optional.empty();
        }
        for (Cell part : parts) {
            part.quantity(Units.DEGREES, TURN).ifPresent(turns::add);
        }
        return turns.size() == parts.size() ? Optional.of(turns) : Optional.empty();
    }

    /** A required value; its absence was noted when the file was read. */
    private <T> Optional<T> given(Key key, Function<Cell, Optional<T>> reading) {
        return settings.cell(key).flatMap(reading);
    }

    private <T> T assume(String what, String taken, T value) {
        assumptions.add(new Assumption(what, taken, Sources.get("trade")));
        return value;
    }
}
