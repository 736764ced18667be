package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.SawsOnJob;
import org.woodyield.plan.Supply;
import org.woodyield.show.Block.Figure;
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
import org.woodyield.work.SupplyWay;
import org.woodyield.work.WorkInput;

/**
 * Two saws or more on one job: lumber and kerf, time and fuel, money, and where one becomes cheaper than the other. As plain text,
 * as a page of its own with a drawing, and as tables.
 */
public final class SawSheet {

    /** The names of the tables, in the order of {@link #tables}. */
    public static final List<String> TABLE_NAMES = List.of("lumber", "work", "money", "crossings", "inputs");

    private static final String TITLE_BEFORE = "Saws on one job: ";
    private static final double LEFT = 10;
    private static final double BARS = 250;
    private static final double LONGEST = 260;
    private static final double WIDE = 660;
    private static final double STEP = 20;
    private static final double SWATCH = 26;

    private final SawsOnJob saws;
    private final Source origin;

    private SawSheet(SawsOnJob saws, Source origin) {
        this.saws = saws;
        this.origin = origin;
    }

    /**
     * The saws laid out.
     *
     * @param saws plans of one job
     * @param origin what the job rests on; if that is {@link Standing#INVENTED} the sheet says so at its head
     * @return the sheet
     */
    public static SawSheet of(SawsOnJob saws, Source origin) {
        return new SawSheet(saws, origin);
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
        PlanTable.Builder table = PlanTable.of("money", fromMemory("Money, " + currency()))
                .text("Saw", "saw")
                .text("Own work", "own-work")
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
            return List.of(Cell.NONE, Cell.NONE, Cell.NONE, Cell.NONE, Cell.text("nothing is sawn"));
        }
        BreakEven money = plan.breakEven().get();
        BreakEven.Side side = valued ? money.workValued() : money.workFree();
        String missing = Stream.concat(
                        Stream.of(WorkInput.PURCHASE, WorkInput.OTHER_OUTLAY, WorkInput.RESALE, WorkInput.LUMBER_PRICE)
                                .filter(money.missing()::contains),
                        plan.cost().get().leftOutOfRunning(valued).values().stream()
                                .flatMap(inputs -> inputs.stream()))
                .map(MissingPrices::named)
                .distinct()
                .collect(Collectors.joining(", "));
        return List.of(
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

    private PlanTable crossings() {
        PlanTable.Builder table = PlanTable.of("crossings", fromMemory("Where a saw and the first change places"))
                .text("Saw", "saw")
                .text("Own work", "own-work")
                .text("Beside", "beside")
                .number("At usable bf", "at-usable-bf");
        for (int i = 1; i < plans().size(); i++) {
            for (boolean valued : new boolean[] {false, true}) {
                for (BoardFeet volume : saws.crossings(i, valued).orElse(List.of())) {
                    table.row(
                            Cell.text(name(i)),
                            Cell.text(valued ? "counted" : "not counted"),
                            Cell.text(name(0)),
                            Cell.number(volume.value(), 0, 2));
                }
            }
        }
        return table.build();
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
                            Cell.text(input.isMoney() ? input.unit().replace("money", currency()) : input.unit()),
                            Cell.text(name(plan)),
                            Cell.text(value.map(known -> NumberText.full(known.value()))
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
        return List.of(lumber(), work(), money(), crossings(), inputs());
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
            Optional<Money> first = plans().get(0).boughtPrice();
            Optional<Money> other = plans().get(i).boughtPrice();
            if (first.isPresent() && other.isPresent()) {
                double more = other.get().minus(first.get()).amount();
                line.append("; bought, what can be used would cost ")
                        .append(NumberText.money(new Money(Math.abs(more), currency())))
                        .append(more < 0 ? " less, " : " more, ")
                        .append(NumberText.money(other.get()))
                        .append(" against ")
                        .append(NumberText.money(first.get()))
                        .append(", each by the price of its own mix");
            }
            lines.add(line.append('.').toString());
        }
        return lines;
    }

    private static String moreOrLess(double value, int decimals, String unit) {
        return NumberText.fixed(Math.abs(value), decimals) + " " + unit + (value < 0 ? " less" : " more");
    }

    private List<String> verdicts() {
        List<String> lines = new ArrayList<>();
        for (int i = 1; i < plans().size(); i++) {
            for (boolean valued : new boolean[] {false, true}) {
                lines.add("Own work " + (valued ? "counted" : "not counted") + ": " + verdict(i, valued));
            }
        }
        return lines;
    }

    private String verdict(int i, boolean valued) {
        Optional<SupplyWay> first = saws.way(0, valued);
        Optional<SupplyWay> other = saws.way(i, valued);
        if (first.isEmpty() || other.isEmpty()) {
            return "nothing is said of " + name(i) + " beside " + name(0)
                    + ", since a price is missing or nothing is sawn.";
        }
        List<BoardFeet> at = first.get().crossings(other.get());
        double low = at.isEmpty() ? 1 : at.get(0).value() / 2;
        boolean firstBelow =
                first.get().cost(BoardFeet.usable(low)).compareTo(other.get().cost(BoardFeet.usable(low))) <= 0;
        String below = firstBelow ? name(0) : name(i);
        String beyond = firstBelow ? name(i) : name(0);
        if (at.isEmpty()) {
            return below + " is the cheaper of the two at every volume, beside " + beyond + ".";
        }
        return below + " is the cheaper up to " + NumberText.fixed(at.get(0).value(), 0) + " bf of usable lumber, "
                + beyond + " beyond.";
    }

    private List<Section> sections(boolean page) {
        List<Block> lumber = new ArrayList<>();
        if (page) {
            lumber.add(new Figure(svg(), "The saws beside each other, each measure on a scale of its own."));
        }
        lumber.add(new Tabular(lumber()));
        lumber.add(new Points(differences()));
        List<Block> work = new ArrayList<>(List.of(new Tabular(work())));
        if (plans().get(0).input().work().values().values().stream()
                .anyMatch(value -> value.source().id().equals("timed-cuts"))) {
            work.add(new Prose("The timed cuts of the job were made with " + name(0)
                    + "; the other saws stand on their own figures."));
        }
        PlanTable crossings = crossings();
        List<Block> money = new ArrayList<>(List.of(new Tabular(money()), new Points(verdicts())));
        if (page && !crossings.rows().isEmpty()) {
            money.add(new Tabular(crossings));
        }
        money.add(new Prose("A volume is reckoned with the outlay and the running cost of a usable board foot in this"
                + " job. Drying, planing and grading, which the lumber of each saw needs alike, are left aside."));
        List<Section> sections = new ArrayList<>(List.of(
                new Section("lumber", "Lumber and kerf", lumber),
                new Section("work", "Time and fuel", work),
                new Section("money", "Money", money)));
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
    private record Measure(String name, String unit, int decimals, ToDoubleFunction<JobPlan> value) {}

    private List<Measure> measures() {
        return List.of(
                new Measure("usable lumber", "bf", 0, plan -> plan.usable().value()),
                new Measure(
                        "wood in kerfs", "m3", 3, plan -> plan.balance().kerf().cubicMetres()),
                new Measure("days on site", "days", 1, plan -> plan.work().days()),
                new Measure(
                        "hours in the wood", "h", 1, plan -> plan.work().time().cutting() / 60),
                new Measure("fuel", "L", 1, plan -> plan.work().use().fuelLitres()),
                new Measure(
                        "outlay less resale",
                        currency(),
                        0,
                        plan -> plan.breakEven()
                                .flatMap(BreakEven::outlay)
                                .map(Money::amount)
                                .orElse(Double.NaN)),
                new Measure("running cost, own work counted", currency() + "/bf", 2, plan -> running(plan)));
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
                        + plans().stream()
                                .map(plan -> name(plan) + " " + shown(measure, plan))
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
            double most = plans().stream()
                    .mapToDouble(measure.value())
                    .filter(value -> value > 0)
                    .max()
                    .orElse(1);
            for (int i = 0; i < count; i++) {
                double value = measure.value().applyAsDouble(plans().get(i));
                double length = value > 0 ? value / most * LONGEST : 0;
                if (length > 0) {
                    ShareBar.swatch(drawing, BARS, y - 7, length, 14, pattern(i));
                }
                drawing.text(BARS + length + 6, y, "start", shown(measure, plans().get(i)));
                y += STEP;
            }
            y += 14;
        }
        return drawing.finish();
    }

    private static String shown(Measure measure, JobPlan plan) {
        double value = measure.value().applyAsDouble(plan);
        return Double.isNaN(value) ? "not known" : NumberText.fixed(value, measure.decimals()) + " " + measure.unit();
    }

    private static String pattern(int index) {
        return "saws-" + index;
    }
}
