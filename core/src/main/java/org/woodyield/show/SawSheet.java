package org.woodyield.show;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.SawProspects;
import org.woodyield.plan.SawProspects.Figure;
import org.woodyield.plan.SawsOnJob;
import org.woodyield.plan.Supply;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Warning;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;
import org.woodyield.work.BreakEven;
import org.woodyield.work.FuelUse;
import org.woodyield.work.InputValue;
import org.woodyield.work.JobCost;
import org.woodyield.work.Outlook;
import org.woodyield.work.SawDraws;
import org.woodyield.work.SupplyChoice;
import org.woodyield.work.SupplyWay;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkInput;

/**
 * Two saws or more on one job: lumber and kerf, time and fuel, money, and where one becomes cheaper than the other. As plain text,
 * as a page of its own with a drawing, and as tables.
 */
public final class SawSheet {

    /** The names of the tables, in the order of {@link #tables}. */
    public static final List<String> TABLE_NAMES =
            List.of("lumber", "work", "money", "same-lumber", "crossings", "spread", "cheapest", "ranges", "inputs");

    private static final String TITLE_BEFORE = "Saws on one job: ";
    private static final double LEFT = 10;
    private static final double BARS = 250;
    private static final double LONGEST = 260;
    private static final double WIDE = 660;
    private static final double STEP = 20;
    private static final double SWATCH = 26;

    private final SawsOnJob saws;
    private final Source origin;
    private final SawProspects prospects;
    private final List<String> leftOut;

    private SawSheet(SawsOnJob saws, Source origin, List<String> leftOut) {
        this.saws = saws;
        this.leftOut = List.copyOf(leftOut);
        this.origin = origin;
        this.prospects = saws.prospects();
    }

    /**
     * The saws laid out.
     *
     * @param saws plans of one job
     * @param origin what the job rests on; if that is {@link Standing#INVENTED} the sheet says so at its head
     * @param leftOut saws that could not be planned, each with the reason
     * @return the sheet
     */
    public static SawSheet of(SawsOnJob saws, Source origin, List<String> leftOut) {
        return new SawSheet(saws, origin, leftOut);
    }

    private List<JobPlan> plans() {
        return saws.plans();
    }

    private String name(int index) {
        return name(plans().get(index));
    }

    private static String name(JobPlan plan) {
        return plan.input().saw().name();
    }

    private String currency() {
        return plans().get(0).input().currency();
    }

    /** Marked where a figure of any of the saws is from memory. */
    private String fromMemory(String title) {
        return plans().stream()
                .map(plan -> new PlanWords(plan).fromMemory(title))
                .filter(marked -> !marked.equals(title))
                .findFirst()
                .orElse(title);
    }

    private PlanTable lumber() {
        PlanTable.Builder table = PlanTable.of("lumber", "Lumber and kerf")
                .text("Saw", "saw")
                .number("Kerf, mm", "kerf-mm")
                .number("Logs sawn", "logs-sawn")
                .number("Wants met", "wants-met")
                .number("Tally, bf", "tally-bf")
                .number("Usable, bf", "usable-bf")
                .number("Beyond the need", "beyond-need-bf")
                .number("Recovery, %", "recovery-percent")
                .number("In kerfs, m3", "kerf-m3")
                .number("In kerfs, %", "kerf-percent");
        for (JobPlan plan : plans()) {
            double solid = plan.solid().cubicMetres();
            double lumber = plan.balance().lumber().cubicMetres();
            double kerf = plan.balance().kerf().cubicMetres();
            table.row(
                    Cell.text(name(plan)),
                    Cell.number(plan.input().saw().kerf().toMillimetres(), 1, 3),
                    Cell.whole((int) plan.logs().stream()
                            .filter(log -> log.sawing().isPresent())
                            .count()),
                    Cell.whole((int) plan.supply().stream().filter(Supply::met).count()),
                    Cell.number(plan.tally().value(), 0, 2),
                    Cell.number(plan.usable().value(), 0, 2),
                    Cell.number(
                            plan.surplus()
                                    .map(surplus -> surplus.usable().value())
                                    .orElse(0.0),
                            0,
                            2),
                    solid > 0 ? Cell.number(100 * lumber / solid, 1, 3) : Cell.NONE,
                    Cell.number(kerf, 3, 5),
                    solid > 0 ? Cell.number(100 * kerf / solid, 1, 3) : Cell.NONE);
        }
        return table.build();
    }

    private PlanTable work() {
        PlanTable.Builder table = PlanTable.of("work", fromMemory("Time and fuel"))
                .text("Saw", "saw")
                .number("Passes", "passes")
                .number("In the wood, h", "cutting-h")
                .number("On site, h", "on-site-h")
                .number("Days", "days")
                .number("Fuel, L", "fuel-l")
                .number("Bar oil, L", "bar-oil-l")
                .number("Sharpenings", "sharpenings")
                .text("Too weak for", "too-weak-for");
        for (JobPlan plan : plans()) {
            FuelUse use = plan.work().use();
            int passes =
                    plan.work().logs().stream().mapToInt(log -> log.passes()).sum();
            List<String> weak = tooWeak(plan);
            table.row(
                    Cell.text(name(plan)),
                    Cell.whole(passes),
                    Cell.number(plan.work().time().cutting() / 60, 1, 3),
                    Cell.number(plan.work().time().hours(), 1, 3),
                    Cell.number(plan.work().days(), 1, 3),
                    Cell.number(use.fuelLitres(), 1, 3),
                    Cell.number(use.barOilLitres(), 1, 3),
                    Cell.number(use.sharpenings(), 1, 3),
                    Cell.text(weak.isEmpty() ? "no log" : String.join(", ", weak)));
        }
        return table.build();
    }

    /** Logs whose widest pass the saw does not pull at a feed worth while. */
    private static List<String> tooWeak(JobPlan plan) {
        return plan.logs().stream()
                .filter(log -> log.widestCut().filter(cut -> !cut.pulls()).isPresent())
                .map(log -> log.log().id())
                .toList();
    }

    private PlanTable money() {
        PlanTable.Builder table = PlanTable.of("money", fromMemory("Money of each saw by itself, " + currency()))
                .text("Saw", "saw")
                .text("Own work", "own-work")
                .text("Outlay is", "outlay-bound")
                .number("Outlay less resale", "outlay")
                .number("Running, a usable bf", "running-per-usable-bf")
                .number("Saved against buying", "saving")
                .number("Pays from, bf", "pays-from-bf")
                .text("Left out for want of", "left-out");
        for (JobPlan plan : plans()) {
            for (boolean valued : new boolean[] {false, true}) {
                List<Cell> cells =
                        new ArrayList<>(List.of(Cell.text(name(plan)), Cell.text(valued ? "counted" : "not counted")));
                cells.addAll(money(plan, valued));
                table.row(cells);
            }
        }
        return table.build();
    }

    private static List<Cell> money(JobPlan plan, boolean valued) {
        if (plan.breakEven().isEmpty() || plan.cost().isEmpty()) {
            return List.of(Cell.text(""), Cell.NONE, Cell.NONE, Cell.NONE, Cell.NONE, Cell.text("nothing is sawn"));
        }
        BreakEven money = plan.breakEven().get();
        BreakEven.Side side = valued ? money.workValued() : money.workFree();
        String missing = Stream.concat(
                        costsMissing(money, plan.cost().get(), valued).stream(),
                        Stream.of(WorkInput.RESALE, WorkInput.LUMBER_PRICE).filter(money.missing()::contains))
                .map(MissingPrices::named)
                .distinct()
                .collect(Collectors.joining(", "));
        return List.of(
                Cell.text(money.outlay().isPresent() ? money.outlayBound().words() : ""),
                money.outlay().map(sum -> Cell.number(sum.amount(), 2)).orElse(Cell.NONE),
                side.complete() ? Cell.number(side.runningPerBoardFoot().amount(), 2, 4) : Cell.NONE,
                side.complete()
                        ? side.saving().map(sum -> Cell.number(sum.amount(), 2)).orElse(Cell.NONE)
                        : Cell.NONE,
                side.complete()
                        ? side.volume()
                                .map(feet -> Cell.number(feet.value(), 0, 2))
                                .orElse(Cell.NONE)
                        : Cell.NONE,
                Cell.text(missing));
    }

    /** The choices at the volume of the job, one for each use of the lumber. */
    private List<WaysSection.Side> sides() {
        return prospects.choices().stream()
                .filter(choice -> choice.jobs() == 1)
                .flatMap(choice -> WaysSection.Side.of(choice.free(), choice.valued()).stream())
                .toList();
    }

    /** A saw by its name, and how its lumber is used. */
    private String label(SupplyWay way) {
        return saw(way) + WaysSection.inBrackets(way.use());
    }

    private String saw(SupplyWay way) {
        return saw(way.kind(), way.otherSaw());
    }

    private String saw(SupplyWay.Kind kind, String otherSaw) {
        return kind == SupplyWay.Kind.OWN_SAW ? name(0) : otherSaw;
    }

    /** What the lumber of the first saw costs with each. */
    private PlanTable sameLumber() {
        PlanTable.Builder table = PlanTable.of(
                        "same-lumber",
                        fromMemory("What the lumber of " + name(0) + " costs with each saw, " + currency()))
                .text("Own work", "own-work")
                .text("Lumber", "use")
                .text("Saw", "saw");
        WaysSection.costColumns(table).text("Not counted for want of a price", "not-counted");
        for (WaysSection.Side side : sides()) {
            SupplyWays ways = side.choice().ways();
            for (int i = 0; i < ways.ways().size(); i++) {
                sameLumber(
                        table,
                        side,
                        ways.ways().get(i),
                        Optional.of(side.choice().costs().get(i)));
            }
            ways.bounds().forEach(way -> sameLumber(table, side, way, Optional.empty()));
        }
        return table.build();
    }

    private void sameLumber(PlanTable.Builder table, WaysSection.Side side, SupplyWay way, Optional<Outlook> drawn) {
        List<Cell> cells = new ArrayList<>(
                List.of(Cell.text(side.work()), Cell.text(WaysSection.use(way.use())), Cell.text(saw(way))));
        cells.addAll(WaysSection.costs(way, side.choice().ways().usable(), drawn));
        cells.add(WaysSection.notCounted(way, MissingPrices::named));
        table.row(cells);
    }

    private PlanTable crossings() {
        PlanTable.Builder table = WaysSection.crossings("Where two saws change places", this::fromMemory);
        sides().forEach(side -> WaysSection.crossings(table, side, this::label));
        return table.build();
    }

    /** The figures over the ranges, each saw by itself and what the others have more than the first. */
    private PlanTable spread(boolean movers) {
        PlanTable.Builder table = PlanTable.of("spread", fromMemory("The spread of the figures, 95 % of the draws"))
                .text("Figure", "figure")
                .text("Saw", "saw")
                .text("Unit", "unit")
                .number("Value", "value")
                .number("From", "from")
                .number("To", "to");
        if (movers) {
            table.text("Moved most by", "moved-most-by");
        }
        for (Figure figure : Figure.values()) {
            for (int i = 0; i < plans().size(); i++) {
                spread(table, figure, name(i), prospects.of(figure, i), movers);
            }
            for (int i = 1; i < plans().size(); i++) {
                spread(table, figure, name(i) + " less " + name(0), prospects.beside(figure, i), movers);
            }
        }
        return table.build();
    }

    private void spread(
            PlanTable.Builder table, Figure figure, String saw, Optional<SawDraws.Spread> spread, boolean movers) {
        spread.ifPresent(known -> {
            Optional<MonteCarlo.Interval> ends = interval(known);
            int decimals = decimals(figure);
            List<Cell> cells = new ArrayList<>(List.of(
                    Cell.text(words(figure)),
                    Cell.text(saw),
                    Cell.text(unit(figure)),
                    Cell.number(known.value(), decimals, 4),
                    ends.map(some -> Cell.number(some.least(), decimals, 4)).orElse(Cell.NONE),
                    ends.map(some -> Cell.number(some.greatest(), decimals, 4)).orElse(Cell.NONE)));
            if (movers) {
                cells.add(Cell.text(ends.isEmpty() ? "no input with a range" : movers(known)));
            }
            table.row(cells);
        });
    }

    private static Optional<MonteCarlo.Interval> interval(SawDraws.Spread spread) {
        return spread.drawn().map(drawn -> drawn.interval(SawProspects.COVERAGE));
    }

    private String movers(SawDraws.Spread spread) {
        return spread.movers().stream()
                .limit(WorkSections.MOVERS)
                .map(SawDraws.Mover::range)
                .map(range -> range.input().label() + (ofAll(range) ? "" : " (" + names(range.saws()) + ")"))
                .collect(Collectors.joining("; "));
    }

    private boolean ofAll(SawDraws.Range range) {
        return range.saws().size() == plans().size();
    }

    private String names(List<Integer> saws) {
        return saws.stream().map(this::name).collect(Collectors.joining(", "));
    }

    private static String words(Figure figure) {
        return switch (figure) {
            case HOURS -> "hours on site";
            case DAYS -> "days on site";
            case FUEL -> "fuel";
            case RUNNING_FREE -> "running cost, own work not counted";
            case RUNNING_VALUED -> "running cost, own work counted";
            case SAVING_FREE -> "saved against buying, own work not counted";
            case SAVING_VALUED -> "saved against buying, own work counted";
        };
    }

    private String unit(Figure figure) {
        return switch (figure) {
            case HOURS -> "h";
            case DAYS -> "days";
            case FUEL -> "L";
            case RUNNING_FREE, RUNNING_VALUED -> currency() + "/bf";
            case SAVING_FREE, SAVING_VALUED -> currency();
        };
    }

    private static int decimals(Figure figure) {
        return switch (figure) {
            case HOURS, DAYS, FUEL -> 1;
            case RUNNING_FREE, RUNNING_VALUED -> 2;
            case SAVING_FREE, SAVING_VALUED -> 0;
        };
    }

    private String unit(WorkInput input) {
        return input.isMoney() ? input.unit().replace("money", currency()) : input.unit();
    }

    /** Share of the draws in which each saw is the cheapest. */
    private PlanTable cheapest() {
        PlanTable.Builder table = PlanTable.of(
                        "cheapest", fromMemory("In how many of the draws each saw is the cheapest, by volume"))
                .text("Own work", "own-work")
                .text("Lumber", "use")
                .text("Saw", "saw")
                .number("Usable bf", "usable-bf")
                .text("As much as", "as-much-as")
                .number("Draws, %", "draws-percent");
        for (SawProspects.Choice choice : prospects.choices()) {
            for (WaysSection.Side side : WaysSection.Side.of(choice.free(), choice.valued())) {
                List<SupplyWay> ways = side.choice().ways().ways();
                for (int i = 0; i < ways.size() && ways.size() > 1; i++) {
                    Optional<Double> share = side.choice().cheapestShare(i);
                    if (share.isPresent()) {
                        table.row(
                                Cell.text(side.work()),
                                Cell.text(WaysSection.use(choice.use())),
                                Cell.text(saw(ways.get(i))),
                                Cell.number(side.choice().ways().usable().value(), 0, 2),
                                Cell.text(choice.jobs() == 1 ? "this job" : choice.jobs() + " such jobs"),
                                Cell.number(100 * share.get(), 1, 2));
                    }
                }
            }
        }
        return table.build();
    }

    /** The ranges of all inputs that move any of the figures, and for which saws each is drawn at once. */
    private PlanTable ranges(boolean whole) {
        PlanTable.Builder table =
                PlanTable.of("ranges", fromMemory("The ranges that were assumed for interval and probability"));
        if (whole) {
            table.text("Key", "key");
        }
        table.text("Input", "input")
                .text("Saw", "saw")
                .text("Taken", "taken")
                .text("Range", "range")
                .text("Unit", "unit");
        if (whole) {
            table.text("Law", "law");
        }
        table.text("Standing", "standing");
        Set<SawDraws.Range> moving = moving();
        for (SawDraws.Range range : prospects.draws().ranges()) {
            if (moving.contains(range)) {
                Map<InputValue, List<Integer>> alike = new LinkedHashMap<>();
                for (int saw : range.saws()) {
                    alike.computeIfAbsent(value(range, saw), value -> new ArrayList<>())
                            .add(saw);
                }
                alike.forEach((value, some) -> table.row(ofRange(range, value, some, whole)));
            }
        }
        return table.build();
    }

    private InputValue value(SawDraws.Range range, int saw) {
        return prospects.draws().inputs().get(saw).find(range.input()).orElseThrow();
    }

    private List<Cell> ofRange(SawDraws.Range range, InputValue value, List<Integer> saws, boolean whole) {
        List<Cell> cells = new ArrayList<>();
        if (whole) {
            cells.add(Cell.text(MissingPrices.key(range.input())));
        }
        String names = saws.size() == plans().size()
                ? "all, drawn once"
                : names(saws) + (range.saws().size() > saws.size() ? ", moves with the others" : "");
        cells.add(Cell.text(range.input().label()));
        cells.add(Cell.text(names));
        cells.add(Cell.text(PlanWords.ranged(value.value())));
        cells.add(Cell.text(PlanWords.range(value.spread())));
        cells.add(Cell.text(unit(range.input())));
        if (whole) {
            cells.add(Cell.text(WorkSections.law(value.spread())));
        }
        cells.add(Cell.text(value.source().standing().label()));
        return cells;
    }

    private Set<SawDraws.Range> moving() {
        Set<SawDraws.Range> moving = new HashSet<>();
        for (Figure figure : Figure.values()) {
            for (int i = 0; i < plans().size(); i++) {
                prospects.of(figure, i).ifPresent(known -> known.movers().forEach(mover -> moving.add(mover.range())));
            }
        }
        Set<WorkInput> ofChoice = prospects.choices().stream()
                .flatMap(choice -> Stream.of(choice.free(), choice.valued()))
                .flatMap(choice -> choice.costs().stream())
                .flatMap(cost -> cost.movers().stream())
                .map(Outlook.Mover::input)
                .collect(Collectors.toSet());
        prospects.draws().ranges().stream()
                .filter(range -> ofChoice.contains(range.input()))
                .forEach(moving::add);
        return moving;
    }

    private PlanTable inputs() {
        PlanTable.Builder table = PlanTable.of("inputs", "What was taken for each saw")
                .text("Key", "key")
                .text("Figure", "figure")
                .text("Unit", "unit")
                .text("Saw", "saw")
                .text("Value", "value")
                .text("Standing", "standing");
        for (WorkInput input : WorkInput.values()) {
            if (input.ofSaw()) {
                for (JobPlan plan : plans()) {
                    Optional<InputValue> value = plan.input().work().find(input);
                    table.row(
                            Cell.text(input.key()),
                            Cell.text(input.label()),
                            Cell.text(unit(input)),
                            Cell.text(name(plan)),
                            Cell.text(value.map(known -> PlanWords.value(known.value()))
                                    .orElse("not given")),
                            Cell.text(
                                    value.map(known -> known.source().standing().label())
                                            .orElse("")));
                }
            }
        }
        return table.build();
    }

    /**
     * The tables, for files.
     *
     * @return a table for each of {@link #TABLE_NAMES}
     */
    public List<PlanTable> tables() {
        return List.of(
                lumber(), work(), money(), sameLumber(), crossings(), spread(true), cheapest(), ranges(true), inputs());
    }

    private List<String> differences() {
        List<String> lines = new ArrayList<>();
        for (int i = 1; i < plans().size(); i++) {
            double feet = saws.moreUsableBoardFeet(i);
            double kerf = saws.moreKerfCubicMetres(i);
            StringBuilder line = new StringBuilder();
            line.append(name(i)).append(" beside ").append(name(0)).append(": ");
            line.append(moreOrLess(feet, 0, "bf usable")).append(", ");
            line.append(moreOrLess(kerf, 3, "m3 in kerfs"));
            leftWhole(i).ifPresent(line::append);
            lines.add(line.append('.').toString());
        }
        return lines;
    }

    /** Logs that the first saw saws and another does not. */
    private Optional<String> leftWhole(int other) {
        List<String> left = new ArrayList<>();
        for (int i = 0; i < plans().get(0).logs().size(); i++) {
            LogPlan log = plans().get(0).logs().get(i);
            if (log.sawing().isPresent()
                    && plans().get(other).logs().get(i).sawing().isEmpty()) {
                left.add(log.log().id());
            }
        }
        return left.isEmpty() ? Optional.empty() : Optional.of("; it leaves whole " + String.join(", ", left));
    }

    private static String moreOrLess(double value, int decimals, String unit) {
        return NumberText.fixed(Math.abs(value), decimals) + " " + unit + (value < 0 ? " less" : " more");
    }

    /** Which saw is the cheaper of the same lumber, and how sure that is. */
    private List<String> verdicts() {
        List<String> lines = new ArrayList<>();
        for (WaysSection.Side side : sides()) {
            WaysSection.byVolume(side, this::saw)
                    .ifPresent(text -> lines.add(side.lead()
                            + side.choice().ways().ways().stream()
                                    .map(way -> WaysSection.use(way.use()))
                                    .distinct()
                                    .filter(use -> !use.isEmpty())
                                    .map(use -> ", lumber " + use)
                                    .collect(Collectors.joining())
                            + ", the cheapest by volume: " + text + changes(side)));
        }
        return lines;
    }

    /** Where two saws change places over the draws, and which cost the same. */
    private String changes(WaysSection.Side side) {
        SupplyChoice choice = side.choice();
        BoardFeet job = choice.ways().usable();
        StringBuilder text = new StringBuilder();
        List<SupplyWays.Stretch> cheapest = choice.ways().cheapestByVolume();
        Set<List<SupplyWay>> stretches = new HashSet<>();
        for (int i = 1; i < cheapest.size(); i++) {
            stretches.add(List.of(cheapest.get(i - 1).way(), cheapest.get(i).way()));
        }
        List<SupplyWays.Crossing> pairs = choice.ways().crossings();
        for (int i = 0; i < pairs.size(); i++) {
            SupplyWays.Crossing pair = pairs.get(i);
            String which = pairs.size() == 1 ? "" : " of " + saw(pair.one()) + " and " + saw(pair.other());
            if (pair.volumes().isEmpty()
                    && Outlook.difference(
                                    pair.one().cost(job).amount(),
                                    pair.other().cost(job).amount())
                            == 0) {
                text.append(" ").append(saw(pair.one())).append(" and ").append(saw(pair.other()));
                text.append(" cost the same at every volume.");
            }
            if (stretches.contains(List.of(pair.one(), pair.other()))) {
                choice.crossings()
                        .get(i)
                        .filter(range -> WaysSection.changesPlaces(pair, Optional.of(range), WaysSection.far(side)))
                        .ifPresent(range -> text.append(" 95 % of the draws put the change")
                                .append(which)
                                .append(" at ")
                                .append(WaysSection.range(range, WaysSection.far(side)))
                                .append(range.greatest().isPresent() ? " bf." : "."));
            }
        }
        return text.toString();
    }

    /** At which lumber beyond the need counts. */
    private double share() {
        return plans().get(0).choice().surplusShare();
    }

    /** What keeps saws out of the comparison of cost, and what would make one cheaper than is said. */
    private List<String> lacking() {
        List<String> free = costsLacking(false);
        List<String> valued = costsLacking(true);
        List<String> lines = new ArrayList<>();
        for (String line : free) {
            lines.add((valued.contains(line) ? "" : "Own work not counted: ") + line);
        }
        for (String line : valued) {
            if (!free.contains(line)) {
                lines.add("Own work counted: " + line);
            }
        }
        Map<String, Set<WorkInput>> income = new LinkedHashMap<>();
        prospects
                .ways(false)
                .ifPresent(ways -> Stream.concat(ways.ways().stream(), ways.bounds().stream())
                        .filter(way -> way.kind().isSaw())
                        .forEach(way -> add(income, saw(way), way.incomeMissing())));
        // What the job lacks is lacking for all of them alike.
        income.values().forEach(missing -> missing.removeIf(input -> !input.ofSaw()));
        income.values().removeIf(Set::isEmpty);
        bySet(income)
                .forEach((missing, saws) -> lines.add(saws + ": not given: "
                        + MissingPrices.named(missing)
                        + ". That income is not counted; with it the saw may be the cheaper in more cases."));
        return lines;
    }

    /** Why saws are not ranked, with own work counted or not. */
    private List<String> costsLacking(boolean valued) {
        Map<String, Set<WorkInput>> costs = new LinkedHashMap<>();
        prospects.ways(valued).ifPresent(ways -> {
            ways.bounds().stream()
                    .filter(way -> way.kind().isSaw())
                    .forEach(way -> add(costs, saw(way), way.costsMissing()));
            ways.leftOut().stream()
                    .filter(out -> out.kind().isSaw())
                    .forEach(out -> add(
                            costs, saw(out.kind(), out.otherSaw()) + WaysSection.inBrackets(out.use()), out.missing()));
        });
        List<String> lines = new ArrayList<>();
        bySet(costs)
                .forEach((missing, saws) -> lines.add(saws + ": not ranked; not given: "
                        + MissingPrices.named(missing) + ". What lacks a cost may be dearer than is known."
                        + (missing.stream().anyMatch(MissingPrices::mayBeNothing)
                                ? " Write 0 for what costs nothing."
                                : "")));
        return lines;
    }

    /** Saws that lack the same, together. */
    private static Map<Set<WorkInput>, String> bySet(Map<String, Set<WorkInput>> bySaw) {
        Map<Set<WorkInput>, String> saws = new LinkedHashMap<>();
        bySaw.forEach((saw, missing) -> saws.merge(missing, saw, (some, one) -> some + ", " + one));
        return saws;
    }

    private static void add(Map<String, Set<WorkInput>> to, String saw, Set<WorkInput> inputs) {
        if (!inputs.isEmpty()) {
            to.computeIfAbsent(saw, any -> EnumSet.noneOf(WorkInput.class)).addAll(inputs);
        }
    }

    /** What owning the saw and running it lack. */
    private static List<WorkInput> costsMissing(BreakEven money, JobCost cost, boolean valued) {
        return Stream.concat(
                        money.outlayCostsMissing().stream(),
                        cost.leftOutOfRunning(valued).values().stream().flatMap(Set::stream))
                .distinct()
                .toList();
    }

    private List<Section> sections(boolean page) {
        List<Block> lumber = new ArrayList<>();
        if (page) {
            lumber.add(new Block.Figure(
                    svg(),
                    "The saws beside each other, each measure on a scale of its own. A line with two ends across a bar is"
                            + " where 95 % of the draws lie."));
        }
        lumber.add(new Tabular(lumber()));
        lumber.add(new Points(differences()));
        for (JobPlan plan : plans()) {
            if (!plan.choice().uncounted().isEmpty()) {
                lumber.add(new Prose("The cuts with " + name(plan)
                        + " were chosen without a price that a pass costs, for it is not given: "
                        + MissingPrices.named(plan.choice().uncounted()) + "."));
            }
        }
        List<Block> work = new ArrayList<>(List.of(new Tabular(work())));
        if (plans().get(0).input().work().values().values().stream()
                .anyMatch(value -> value.source().id().equals("timed-cuts"))) {
            work.add(new Prose("The timed cuts of the job were made with " + name(0)
                    + "; the other saws stand on their own figures."));
        }
        List<Section> sections = new ArrayList<>(List.of(
                new Section("lumber", "Lumber and kerf", lumber),
                new Section("work", "Time and fuel", work),
                new Section("money", "Money", money(page)),
                new Section("spread", "How sure this is", sureness(page))));
        if (page) {
            sections.add(new Section("inputs", "What was taken for each saw", List.of(new Tabular(inputs()))));
        }
        sections.add(
                new Section(
                        "cautions",
                        "Cautions",
                        List.of(
                                new Warning(
                                        "A saw that is fast enough is not thereby safe. Keep to its maker's limits and"
                                                + " protection; what may be built with lumber that no one has graded, the local authority says."))));
        return sections;
    }

    private List<Block> money(boolean page) {
        List<Block> money = new ArrayList<>(List.of(
                new Tabular(money()),
                new Prose("Each saw by itself: by its own usable board feet, against buying its own lumber, without"
                        + " drying, planing and grading."
                        + (plans().get(0)
                                        .input()
                                        .work()
                                        .find(WorkInput.LOG_PRICE)
                                        .filter(price -> price.value() > 0)
                                        .isPresent()
                                ? " The price of the logs is by the usable board foot too, so that a saw which makes more of"
                                        + " the same logs bears more for them here."
                                : "")
                        + (plans().stream().anyMatch(plan -> plan.surplus().isPresent())
                                ? " The volume from which a saw pays takes as great a share of its lumber beyond the need,"
                                        + " with its lesser worth, as in this job."
                                : ""))));
        PlanTable same = sameLumber();
        if (!same.rows().isEmpty()) {
            money.add(new Tabular(same));
        }
        List<String> lines = new ArrayList<>();
        for (int i = 1; i < plans().size() && plans().get(0).usable().value() > 0; i++) {
            lines.add(WaysSection.besideFirst(saws.beside(i), plans().get(0).usable(), "of " + name(0), share()));
        }
        lines.addAll(verdicts());
        lines.addAll(lacking());
        money.add(new Points(lines));
        PlanTable crossings = crossings();
        if (page && !crossings.rows().isEmpty()) {
            money.add(new Tabular(crossings));
        }
        if (!same.rows().isEmpty()) {
            money.add(new Prose("Like for like, as in the plan of a job: all volumes are board feet of the lumber of "
                    + name(0)
                    + ". What another saw makes less of a thing is bought, what it makes more is taken off at its"
                    + " worth; what is sawn bears drying and planing, and grading or the loss of serving only where no"
                    + " grade is asked for, each thing by its own price and what is beyond the need at "
                    + NumberText.fixed(100 * share(), 0)
                    + " %. No interval of a volume is given where no range moves it, or where two saws change places more"
                    + " than once, or the other way round, in some draws. Whether ungraded lumber is accepted, the local"
                    + " authority says."));
        }
        return money;
    }

    private List<Block> sureness(boolean page) {
        PlanTable ranges = ranges(page);
        if (ranges.rows().isEmpty()) {
            return List.of(new Prose(
                    "No input that moves these figures has a range, so there is no interval and no" + " probability."));
        }
        List<Block> blocks = new ArrayList<>(List.of(new Tabular(spread(page))));
        PlanTable cheapest = cheapest();
        blocks.add(
                cheapest.rows().isEmpty()
                        ? new Prose(
                                "No probability is given for the cheapest saw: a price is missing, or no range moves the"
                                        + " saws apart.")
                        : new Tabular(cheapest));
        blocks.add(
                new Prose("Each draw takes one value of every range below, all saws at once: what they share, the wood,"
                        + " wages and prices among it, is the same for all of them in one draw, so that an error in it cancels"
                        + " as far as it does them alike. What is named for one saw is drawn for that saw alone. In draws in"
                        + " which two saws cost the same the first counts as the cheapest. The cuts stay as planned, so lumber and kerf have no interval"
                        + " here; what has no range is taken as it stands, and none or all of the draws does not mean that it"
                        + " cannot be otherwise."));
        blocks.add(new Tabular(ranges));
        return blocks;
    }

    private List<Block> preface() {
        List<Block> blocks = new ArrayList<>();
        if (origin.standing() == Standing.INVENTED) {
            blocks.add(new Warning("Invented demonstration. " + origin.title()
                    + ": the logs, the saws, the prices and the building are made up; only the arithmetic and the"
                    + " sources are meant."));
        }
        blocks.add(new Prose(
                "The same logs, wants and prices with each saw; each has the best cuts that were found for it. "
                        + plans().get(0).supply().size() + " things wanted, "
                        + plans().get(0).logs().size() + " logs."));
        leftOut.forEach(reason -> blocks.add(new Warning("Left out: " + reason + ".")));
        blocks.add(new Prose("What a saw's file leaves out of the saw is the default of its kind or is missing; wages,"
                + " prices of fuel and lumber, and the wood come from the job."));
        return blocks;
    }

    private String title() {
        return TITLE_BEFORE + plans().get(0).input().title();
    }

    /**
     * As plain text.
     *
     * @return lines of no more than 100 characters unless a table cannot be narrower, each with its line end
     */
    public String text() {
        return PlanText.of(title(), preface(), sections(false));
    }

    /**
     * As a page that needs nothing beside itself.
     *
     * @return HTML that is well-formed XML as well
     */
    public String page() {
        return PlanPage.of(title(), preface(), sections(true));
    }

    /** What is drawn of each saw; a saw without the figure has no bar. */
    private record Measure(
            String name, String unit, int decimals, ToDoubleFunction<JobPlan> value, Optional<Figure> figure) {}

    private List<Measure> measures() {
        return List.of(
                new Measure("usable lumber", "bf", 0, plan -> plan.usable().value(), Optional.empty()),
                new Measure(
                        "wood in kerfs", "m3", 3, plan -> plan.balance().kerf().cubicMetres(), Optional.empty()),
                new Measure("days on site", "days", 1, plan -> plan.work().days(), Optional.of(Figure.DAYS)),
                new Measure(
                        "hours in the wood", "h", 1, plan -> plan.work().time().cutting() / 60, Optional.empty()),
                new Measure("fuel", "L", 1, plan -> plan.work().use().fuelLitres(), Optional.of(Figure.FUEL)),
                new Measure(
                        "outlay less resale",
                        currency(),
                        0,
                        plan -> plan.breakEven()
                                .flatMap(BreakEven::wholeOutlay)
                                .map(Money::amount)
                                .orElse(Double.NaN),
                        Optional.empty()),
                new Measure(
                        "running cost, own work counted",
                        currency() + "/bf",
                        2,
                        plan -> running(plan),
                        Optional.of(Figure.RUNNING_VALUED)));
    }

    private Optional<MonteCarlo.Interval> interval(Measure measure, int saw) {
        return measure.figure().flatMap(figure -> prospects.of(figure, saw)).flatMap(SawSheet::interval);
    }

    private static double running(JobPlan plan) {
        return plan.breakEven()
                .map(BreakEven::workValued)
                .filter(BreakEven.Side::complete)
                .map(side -> side.runningPerBoardFoot().amount())
                .orElse(Double.NaN);
    }

    /** Bars told apart by hatching and by place, never by colour. */
    private String svg() {
        List<Measure> measures = measures();
        int count = plans().size();
        double legend = 14 + STEP * count;
        double height = legend + measures.size() * (count * STEP + 14) + 10;
        String words = measures.stream()
                .map(measure -> measure.name() + ": "
                        + IntStream.range(0, count)
                                .mapToObj(saw -> name(saw) + " " + shown(measure, saw))
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
        Drawing drawing = new Drawing("saws", WIDE, height, "The saws beside each other", words + ".");
        Markup defs = drawing.out().open("defs");
        for (int i = 0; i < count; i++) {
            Hatching.define(defs, pattern(i), i);
        }
        defs.closeLine();
        for (int i = 0; i < count; i++) {
            double y = 14 + i * STEP;
            ShareBar.swatch(drawing, LEFT, y - 6, SWATCH, 12, pattern(i));
            drawing.text(LEFT + SWATCH + 8, y, "start", name(i));
        }
        double y = legend + 10;
        for (Measure measure : measures) {
            drawing.text(LEFT, y, "start", measure.name());
            double most = IntStream.range(0, count)
                    .mapToDouble(saw -> Math.max(
                            measure.value().applyAsDouble(plans().get(saw)),
                            interval(measure, saw)
                                    .map(MonteCarlo.Interval::greatest)
                                    .orElse(0.0)))
                    .filter(value -> value > 0)
                    .max()
                    .orElse(1);
            for (int i = 0; i < count; i++) {
                double value = measure.value().applyAsDouble(plans().get(i));
                double length = value > 0 ? value / most * LONGEST : 0;
                if (length > 0) {
                    ShareBar.swatch(drawing, BARS, y - 7, length, 14, pattern(i));
                }
                Optional<MonteCarlo.Interval> ends = interval(measure, i);
                if (ends.isPresent()) {
                    whisker(
                            drawing,
                            y,
                            ends.get().least() / most * LONGEST,
                            ends.get().greatest() / most * LONGEST);
                    length = Math.max(length, ends.get().greatest() / most * LONGEST);
                }
                drawing.text(BARS + length + 6, y, "start", shown(measure, i));
                y += STEP;
            }
            y += 14;
        }
        return drawing.finish();
    }

    private static void whisker(Drawing drawing, double y, double from, double to) {
        String least = Drawing.number(BARS + Math.max(0, from));
        String greatest = Drawing.number(BARS + Math.max(0, to));
        String top = Drawing.number(y - 4);
        String bottom = Drawing.number(y + 4);
        String middle = Drawing.number(y);
        drawing.leader("M" + least + " " + top + "V" + bottom + "M" + least + " " + middle + "H" + greatest + "M"
                + greatest + " " + top + "V" + bottom);
    }

    private String shown(Measure measure, int saw) {
        double value = measure.value().applyAsDouble(plans().get(saw));
        if (Double.isNaN(value)) {
            return "not known";
        }
        String ends = interval(measure, saw)
                .map(some -> " (" + NumberText.fixed(some.least(), measure.decimals()) + " to "
                        + NumberText.fixed(some.greatest(), measure.decimals()) + ")")
                .orElse("");
        return NumberText.fixed(value, measure.decimals()) + ends + " " + measure.unit();
    }

    private static String pattern(int index) {
        return "saws-" + index;
    }
}
