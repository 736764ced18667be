package org.woodyield.show;

import static org.woodyield.show.PlanWords.NOTHING;
import static org.woodyield.show.PlanWords.feet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Money;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.Supply;
import org.woodyield.sawing.SawPass;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.work.Bound;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CashFlow;
import org.woodyield.work.CostKind;
import org.woodyield.work.CuttingRate;
import org.woodyield.work.FuelUse;
import org.woodyield.work.InputValue;
import org.woodyield.work.JobCost;
import org.woodyield.work.Outlook;
import org.woodyield.work.SawingWork;
import org.woodyield.work.Suitability;
import org.woodyield.work.TimeBreakdown;
import org.woodyield.work.TimeLine;
import org.woodyield.work.TimeLine.Activity;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;
import org.woodyield.working.Working;

/** What a plan says of time, fuel and money. */
final class WorkSections {

    static final int MOVERS = 3;

    private static final double COVERAGE = 0.95;

    private final PlanWords words;
    private final JobPlan plan;

    WorkSections(PlanWords words) {
        this.words = words;
        plan = words.plan();
    }

    Section time() {
        WorkEstimate work = plan.work();
        TimeBreakdown all = work.time();
        if (work.logs().isEmpty()) {
            return new Section("time", "Time and fuel", List.of(new Prose(NOTHING)));
        }
        PlanTable.Builder table = PlanTable.of("time", words.fromMemory("Time and fuel by log, minutes and litres"))
                .text("Log", "log")
                .number("Passes", "passes")
                .number("Face cut, m2", "face-cut-m2")
                .number("Cutting", "cutting-min")
                .number("Warm, cool", "warm-up-cool-down-min")
                .number("Handling", "handling-min")
                .number("Tank filled", "refuelling-min")
                .number("Sharpen", "sharpening-min")
                .number("Rest", "rest-min")
                .number("On site", "on-site-min")
                .number("Fuel", "fuel-l")
                .number("Bar oil", "bar-oil-l");
        int passes = 0;
        for (WorkEstimate.ForLog log : work.logs()) {
            passes += log.passes();
            table.row(time(log.id(), log.passes(), log.areaSquareMetres(), log.time(), log.use()));
        }
        table.row(time("all", passes, work.areaSquareMetres(), all, work.use()));
        List<ShareBar.Part> parts = new ArrayList<>();
        parts.add(part("cutting", all.cutting(), all));
        parts.add(part("warm-up and cool-down", all.warmUp() + all.coolDown(), all));
        parts.add(part("setting and the way back", all.setting(), all));
        parts.add(part("laying the guide", all.guide(), all));
        parts.add(part("carrying away", all.carrying(), all));
        parts.add(part("turning and clamping", all.turning(), all));
        parts.add(part("log to saw", all.loading(), all));
        parts.add(part("refuelling", all.refuelling(), all));
        parts.add(part("sharpening", all.sharpening(), all));
        parts.add(part("rest and all else on site", all.rest(), all));
        FuelUse use = work.use();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Figure(
                ShareBar.svg("hours", "Where the hours on site go", parts),
                "Where the " + NumberText.duration(all.total()) + " on site go."));
        blocks.add(new Tabular(table.build()));
        spread(blocks);
        blocks.add(new Prose(NumberText.fixed(work.days(), 1) + " days on site. Fuel: "
                + NumberText.fixed(use.cuttingLitres(), 1) + " L in the cut and "
                + NumberText.fixed(use.idlingLitres(), 1) + " L idling, " + NumberText.fixed(use.tanks(), 1)
                + " tanks; " + NumberText.fixed(use.barOilLitres(), 1) + " L of bar oil and "
                + NumberText.fixed(use.mixOilLitres(), 2) + " L of two-stroke oil; "
                + NumberText.fixed(use.sharpenings(), 1) + " sharpenings"
                + plan.input()
                        .work()
                        .find(WorkInput.EDGE_LIFE)
                        .map(life -> ", or "
                                + NumberText.fixed(
                                        SawingWork.of(plan.input().work()).edgesWorn(work.areaSquareMetres()), 1)
                                + " chains or blades worn out")
                        .orElse("")
                + "." + oilOfFelling() + guide()));
        days(blocks);
        widestCuts(blocks);
        blocks.add(new Workings("How power, fuel, oil and wear come about", ofFuelAndWear()));
        return new Section("time", "Time and fuel", blocks);
    }

    /** What the ranges of the inputs make of the figures; where none has a range, no interval is shown. */
    private void spread(List<Block> blocks) {
        JobPlan.Prospects prospects = plan.prospects();
        String perFoot = plan.input().currency() + "/bf";
        PlanTable.Builder table = PlanTable.of(
                        "spread", words.fromMemory("The spread of the figures, 95 % of the draws"))
                .text("Figure", "figure")
                .text("Unit", "unit")
                .number("Value", "value")
                .number("From", "from")
                .number("To", "to")
                .text("Moved most by", "moved-most-by");
        boolean any = spread(table, "hours on site", "h", 1, prospects.hours());
        any |= spread(table, "days on site", "days", 1, prospects.days());
        any |= spread(table, "fuel", "L", 1, prospects.fuelLitres());
        any |= spread(table, "running cost, own work not counted", perFoot, 2, prospects.runningFree());
        any |= spread(table, "running cost, own work counted", perFoot, 2, prospects.runningValued());
        if (any) {
            blocks.add(new Tabular(table.build()));
        } else {
            blocks.add(new Prose(
                    "No input that moves them has a range, so time, fuel and cost are shown without a spread."));
        }
    }

    private static boolean spread(
            PlanTable.Builder table, String figure, String unit, int decimals, Optional<Outlook> outlook) {
        Optional<MonteCarlo.Interval> interval = interval(outlook);
        interval.ifPresent(ends -> table.row(
                Cell.text(figure),
                Cell.text(unit),
                Cell.number(outlook.orElseThrow().value(), decimals, 4),
                Cell.number(ends.least(), decimals, 4),
                Cell.number(ends.greatest(), decimals, 4),
                Cell.text(outlook.orElseThrow().movers().stream()
                        .limit(MOVERS)
                        .map(mover -> mover.input().label())
                        .collect(Collectors.joining("; ")))));
        return interval.isPresent();
    }

    static Optional<MonteCarlo.Interval> interval(Optional<Outlook> outlook) {
        return outlook.flatMap(Outlook::drawn).map(drawn -> drawn.interval(COVERAGE));
    }

    /** One end of what a number of things costs, by the interval of one. */
    private static Cell end(
            Optional<MonteCarlo.Interval> ofOne, ToDoubleFunction<MonteCarlo.Interval> end, double number) {
        return ofOne.map(found -> Cell.number(end.applyAsDouble(found) * number, 2, 4))
                .orElse(Cell.NONE);
    }

    /** Both ends, to stand behind a figure; empty where it has no range. */
    static String ends(Optional<Outlook> outlook, int decimals, String unit) {
        return interval(outlook)
                .map(ends -> "; 95 % of the draws " + NumberText.fixed(ends.least(), decimals) + " to "
                        + NumberText.fixed(ends.greatest(), decimals) + " " + unit)
                .orElse("");
    }

    /** What handling holds beside the passes that come without a guide. */
    private String guide() {
        long led = plan.logs().stream()
                .flatMap(log -> log.sawing().stream())
                .flatMap(sawing -> sawing.passes().stream())
                .filter(SawPass::byGuide)
                .count();
        return plan.input()
                .work()
                .find(WorkInput.GUIDE)
                .filter(each -> led > 0)
                .map(each -> " Handling holds setting, carrying, turning, bringing log and saw together, and laying the"
                        + " guide for each face that it leads: " + led + " times "
                        + PlanWords.value(each.value()) + " min ("
                        + each.source().standing().label()
                        + "), which the choice of patterns does not count.")
                .orElse("");
    }

    /** The published ratio is of another kind of work. */
    private String oilOfFelling() {
        return plan.input()
                .work()
                .find(WorkInput.BAR_OIL)
                .filter(value -> value.source().id().equals("felling-fuel-2023"))
                .map(value -> " The ratios of oil to fuel were measured in felling; none was found for ripping.")
                .orElse("");
    }

    private List<Derivation> ofFuelAndWear() {
        WorkInputs inputs = plan.input().work();
        SawingWork work = SawingWork.of(inputs);
        WorkEstimate all = plan.work();
        List<Derivation> workings = new ArrayList<>();
        WorkEstimate.ForLog first = all.logs().get(0);
        plan.logs().stream()
                .filter(log -> log.log().id().equals(first.id()))
                .findFirst()
                .ifPresent(log -> {
                    CuttingRate rate = CuttingRate.of(
                            inputs, log.log().species(), plan.input().saw().kerf());
                    workings.add(words.derivation("Power at the cut", rate.powerAtCutWorking()));
                    workings.add(words.derivation(
                            "Fuel in the cut, log " + first.id(),
                            work.cuttingLitresWorking(rate, first.areaSquareMetres())));
                });
        double fuel = all.use().fuelLitres();
        workings.add(words.derivation("Bar oil, all logs", work.barOilWorking(fuel)));
        workings.add(words.derivation("Two-stroke oil, all logs", work.mixOilWorking(fuel)));
        if (inputs.find(WorkInput.EDGE_LIFE).isPresent()) {
            workings.add(words.derivation(
                    "Chains or blades worn out, all logs", work.edgesWornWorking(all.areaSquareMetres())));
        }
        return workings;
    }

    private void days(List<Block> blocks) {
        TimeLine line = plan.timeLine();
        String perDay = NumberText.fixed(plan.work().logsPerDay(), 1) + " logs a day; the saw really cuts in "
                + NumberText.percent(plan.work().time().cuttingShare()) + " of the time on site.";
        blocks.add(new Figure(DayBars.svg("days", "The work day by day", line), "The work day by day. " + perDay));
        PlanTable.Builder table = PlanTable.of("days", words.fromMemory("Day by day, minutes"))
                .number("Day", "day")
                .text("Logs finished", "logs-finished")
                .number("Passes", "passes")
                .number("Cutting", "cutting-min")
                .number("Warm, cool", "warm-up-cool-down-min")
                .number("Handling", "handling-min")
                .number("Tank filled", "refuelling-min")
                .number("Sharpen", "sharpening-min")
                .number("Rest", "rest-min")
                .number("On site", "on-site-min")
                .number("Cutting, %", "cutting-percent");
        for (int i = 0; i < line.days().size(); i++) {
            TimeLine.Day day = line.days().get(i);
            double handling = day.minutes(Activity.SETTING)
                    + day.minutes(Activity.GUIDE)
                    + day.minutes(Activity.CARRYING)
                    + day.minutes(Activity.TURNING)
                    + day.minutes(Activity.LOADING);
            table.row(
                    Cell.whole(i + 1),
                    Cell.text(day.finished().isEmpty() ? "none" : String.join(", ", day.finished())),
                    Cell.whole(day.passes()),
                    Cell.number(day.minutes(Activity.CUTTING), 0, 2),
                    Cell.number(day.minutes(Activity.WARM_UP) + day.minutes(Activity.COOL_DOWN), 0, 2),
                    Cell.number(handling, 0, 2),
                    Cell.number(day.minutes(Activity.REFUELLING), 0, 2),
                    Cell.number(day.minutes(Activity.SHARPENING), 0, 2),
                    Cell.number(day.minutes(Activity.REST), 0, 2),
                    Cell.number(day.minutes(), 0, 2),
                    Cell.number(100 * day.cuttingShare(), 0, 2));
        }
        blocks.add(new Tabular(table.build()));
        blocks.add(
                new Prose(perDay + " Day by day, tanks and sharpenings are whole stops, so the sums differ from those"
                        + " above by parts of a stop; a pass is begun only if it fits into the day."));
    }

    private void widestCuts(List<Block> blocks) {
        PlanTable.Builder table = PlanTable.of(
                        "widest-cuts", words.fromMemory("Whether the saw pulls the widest pass of each log"))
                .text("Log", "log")
                .text("Wood", "species")
                .number(words.header("Widest"), "widest-mm")
                .number("Feed, m/min", "feed-m-per-min")
                .text("Held back by", "limited-by")
                .number("Power over least", "margin")
                .number("Least kW", "least-kw")
                .number("No faster beyond kW", "greatest-kw")
                .text("Verdict", "verdict");
        Optional<Derivation> working = Optional.empty();
        double narrowest = Double.POSITIVE_INFINITY;
        for (LogPlan log : plan.logs()) {
            if (log.widestCut().isPresent()) {
                Suitability cut = log.widestCut().get();
                table.row(
                        Cell.text(log.log().id()),
                        Cell.text(log.log().species().commonName()),
                        words.near(cut.width()),
                        Cell.number(cut.feedMetresPerMinute(), 2, 4),
                        Cell.text(cut.feedLimited() ? "feed limit" : "power"),
                        Cell.number(cut.margin(), 1, 3),
                        Cell.number(cut.leastKilowatts(), 2, 4),
                        Cell.number(cut.greatestKilowatts(), 1, 3),
                        Cell.text(cut.pulls() ? "pulls it" : "TOO WEAK"));
                if (cut.margin() < narrowest) {
                    narrowest = cut.margin();
                    working = Optional.of(words.derivation(
                            "Least power for the widest pass of log "
                                    + log.log().id(),
                            cut.working()));
                }
            }
        }
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose("The least power holds "
                + PlanWords.value(plan.input().work().get(WorkInput.LEAST_FEED))
                + " m/min, the slowest feed taken to be worth while; slower, an edge rubs more than it cuts. All of it"
                + " rests on the cutting energy; timed cuts of your own replace that."));
        working.ifPresent(one -> blocks.add(new Workings("How the least power came about", List.of(one))));
    }

    private static ShareBar.Part part(String name, double minutes, TimeBreakdown all) {
        String share = all.total() > 0 ? ", " + NumberText.percent(minutes / all.total()) : "";
        return new ShareBar.Part(name, minutes, NumberText.duration(minutes) + share);
    }

    private static List<Cell> time(String name, int passes, double area, TimeBreakdown time, FuelUse use) {
        double handling = time.setting() + time.guide() + time.carrying() + time.turning() + time.loading();
        return List.of(
                Cell.text(name),
                Cell.whole(passes),
                Cell.number(area, 2, 4),
                Cell.number(time.cutting(), 0, 2),
                Cell.number(time.warmUp() + time.coolDown(), 0, 2),
                Cell.number(handling, 0, 2),
                Cell.number(time.refuelling(), 0, 2),
                Cell.number(time.sharpening(), 0, 2),
                Cell.number(time.rest(), 0, 2),
                Cell.number(time.total(), 0, 2),
                Cell.number(use.fuelLitres(), 2, 4),
                Cell.number(use.barOilLitres(), 2, 4));
    }

    Section money() {
        if (plan.cost().isEmpty() || plan.breakEven().isEmpty()) {
            return new Section("money", "Money", List.of(new Prose(NOTHING)));
        }
        JobCost cost = plan.cost().get();
        BreakEven money = plan.breakEven().get();
        String currency = plan.input().currency();
        PlanTable.Builder table = PlanTable.of("money", words.fromMemory("What the sawing costs"))
                .text("Kind", "kind")
                .text("Counted as", "counted-as")
                .number(currency, "amount")
                .number(currency + " per usable bf", "per-usable-bf")
                .text("Left out for want of", "left-out");
        for (CostKind kind : CostKind.values()) {
            Optional<Money> amount = cost.amount(kind);
            Set<WorkInput> missing = cost.leftOut().getOrDefault(kind, Set.of());
            table.row(
                    Cell.text(kind.label()),
                    Cell.text(kind.running() ? "running cost" : "cost of owning"),
                    amount.map(WorkSections::money).orElse(Cell.NONE),
                    amount.map(sum -> perFoot(cost.perBoardFoot(sum))).orElse(Cell.NONE),
                    Cell.text(
                            writtenOff(kind, amount)
                                    ? "no " + MissingPrices.named(WorkInput.RESALE) + ": the saw is written off in full"
                                    : missing.stream()
                                            .map(MissingPrices::named)
                                            .sorted()
                                            .collect(Collectors.joining(", "))));
        }
        for (boolean owning : new boolean[] {false, true}) {
            for (boolean valued : new boolean[] {false, true}) {
                table.row(sum(cost, owning, valued));
            }
        }
        List<String> lines = new ArrayList<>();
        lines.add("Outlay before the first board, less resale: "
                + money.outlay()
                        .map(outlay -> outlay(money.outlayBound(), outlay) + withoutPrice(money))
                        .orElse("not known")
                + ".");
        lines.add("The same lumber bought: "
                + money.boughtPerBoardFoot()
                        .map(each -> NumberText.money(each) + " per board foot")
                        .orElse("not known")
                + plan.boughtPrice()
                        .map(all -> ", " + NumberText.money(all) + " for what is usable here")
                        .orElse("")
                + ".");
        lines.add(side("Own work not counted", money, money.workFree()));
        lines.add(side("Own work counted at its wage", money, money.workValued()));
        plan.surplus().ifPresent(surplus -> lines.add(beyondNeed(surplus, money)));
        List<Block> blocks = new ArrayList<>();
        MissingPrices.of(plan).flatMap(MissingPrices::table).ifPresent(missing -> {
            blocks.add(new Tabular(missing));
            blocks.add(
                    new Prose("No figure was put in the place of any of these. Put your own for AMOUNT and NUMBER; an"
                            + " amount of 0 is a price too, and says that it costs nothing."));
        });
        blocks.add(new Tabular(table.build()));
        pieceCosts(blocks, cost);
        blocks.add(new Points(lines));
        prospects(blocks);
        plan.ways().ifPresent(ways -> new WaysSection(words, ways).addTo(blocks));
        ranges(blocks);
        cashFlow(blocks);
        return new Section("money", "Money", blocks);
    }

    /** Without a resale what hangs on the loss of worth is reckoned as if the saw fetched nothing. */
    private boolean writtenOff(CostKind kind, Optional<Money> amount) {
        return amount.isPresent()
                && (kind == CostKind.DEPRECIATION || kind == CostKind.REPAIRS || kind == CostKind.INTEREST)
                && plan.input().work().find(WorkInput.RESALE).isEmpty();
    }

    static String outlay(Bound bound, Money outlay) {
        return (bound.words() + " " + NumberText.money(outlay)).strip();
    }

    private static String withoutPrice(BreakEven money) {
        List<String> without = Stream.concat(money.outlayCostsMissing().stream(), money.outlayIncomeMissing().stream())
                .map(MissingPrices::named)
                .toList();
        return without.isEmpty() ? "" : ", for there is no " + String.join(", no ", without);
    }

    /** How lumber beyond the need is counted, and from which volume the saw pays where all of it is needed. */
    private String beyondNeed(JobPlan.Surplus surplus, BreakEven money) {
        StringBuilder text = new StringBuilder("Of the " + feet(plan.usable()) + " "
                + NumberText.fixed(surplus.usable().value(), 0)
                + " bf are beyond the need and count at " + NumberText.fixed(100 * surplus.share(), 0) + " %"
                + " of their price in what the same lumber costs bought");
        surplus.inFull().ifPresent(each -> {
            text.append("; in full that would be " + NumberText.money(each) + " per board foot, "
                    + NumberText.money(each.times(plan.usable().value()))
                    + ". The volumes from which it pays, here and below, take as great a share beyond the need at"
                    + " every volume");
            List<String> needed = new ArrayList<>();
            inFull("own work not counted", money.workFree(), money, each).ifPresent(needed::add);
            inFull("own work counted", money.workValued(), money, each).ifPresent(needed::add);
            if (!needed.isEmpty()) {
                text.append("; where all of it is needed it ").append(String.join(", and ", needed));
            }
        });
        return text.append('.').toString();
    }

    private static Optional<String> inFull(String work, BreakEven.Side side, BreakEven money, Money price) {
        if (money.outlay().isEmpty() || !money.outlayCostsMissing().isEmpty() || !side.complete()) {
            return Optional.empty();
        }
        double outlay = money.outlay().get().amount();
        double running = side.runningPerBoardFoot().amount();
        return Optional.of(
                price.amount() > running
                        ? "pays from " + feet(BoardFeet.usable(BreakEven.volume(outlay, running, price.amount())))
                                + " on, " + work
                        : "pays at no volume, " + work);
    }

    /** A piece that is used bears its share of the lost ones; a running cost that lacks a kind is no figure of its own. */
    private void pieceCosts(List<Block> blocks, JobCost cost) {
        PlanTable.Builder table = PlanTable.of(
                        "piece-costs", words.fromMemory("What one piece that can be used costs to saw"))
                .text("Wanted", "wanted")
                .text("What it is", "description")
                .number("Pieces sawn", "pieces-sawn")
                .number("Board feet of one", "piece-bf")
                .number("Own work not counted", "work-not-counted")
                .number("From", "work-not-counted-from")
                .number("To", "work-not-counted-to")
                .number("Own work counted", "work-counted")
                .number("From", "work-counted-from")
                .number("To", "work-counted-to");
        Optional<MonteCarlo.Interval> free = interval(plan.prospects().runningFree());
        Optional<MonteCarlo.Interval> counted = interval(plan.prospects().runningValued());
        List<Derivation> workings = new ArrayList<>();
        for (Supply supply : plan.supply()) {
            if (supply.pieces() > 0) {
                double feet = supply.tally().value() / supply.pieces();
                table.row(
                        Cell.text(supply.wantedId()),
                        Cell.text(supply.label()),
                        Cell.whole(supply.pieces()),
                        Cell.number(feet, 2, 4),
                        ofPiece(cost, feet, false),
                        end(free, MonteCarlo.Interval::least, feet),
                        end(free, MonteCarlo.Interval::greatest, feet),
                        ofPiece(cost, feet, true),
                        end(counted, MonteCarlo.Interval::least, feet),
                        end(counted, MonteCarlo.Interval::greatest, feet));
                if (workings.isEmpty()) {
                    for (boolean valued : new boolean[] {false, true}) {
                        if (cost.leftOutOfRunning(valued).isEmpty()) {
                            Working working = cost.pieceCostWorking(feet, valued);
                            workings.add(words.derivation(working.title() + ": " + supply.wantedId(), working));
                        }
                    }
                }
            }
        }
        if (cost.leftOutOfRunning(false).isEmpty()
                || cost.leftOutOfRunning(true).isEmpty()) {
            blocks.add(new Tabular(table.build()));
            blocks.add(new Prose("Its board feet at the running cost of a usable board foot, in "
                    + plan.input().currency()
                    + ": the pieces lost on the way are borne by those that are used. Boards of an area are a mean of their widths."
                    + (free.isPresent() || counted.isPresent()
                            ? " From and to hold 95 % of the draws of that cost."
                            : "")));
        }
        for (boolean valued : new boolean[] {false, true}) {
            if (!cost.leftOutOfRunning(valued).isEmpty()) {
                blocks.add(new Prose("Own work " + (valued ? "counted" : "not counted")
                        + ": no piece is given a cost, for this is left out of the running cost: "
                        + leftOutOfRunning(valued) + "."));
            }
        }
        if (!workings.isEmpty()) {
            blocks.add(new Workings("How the cost of a piece comes about", workings));
        }
    }

    /** Each cost that is left out, with the inputs that nobody gave. */
    private String leftOutOfRunning(boolean ownWorkValued) {
        return plan.cost().orElseThrow().leftOutOfRunning(ownWorkValued).entrySet().stream()
                .map(left -> left.getKey().label() + ", no " + MissingPrices.named(left.getValue()))
                .collect(Collectors.joining("; "));
    }

    private Cell ofPiece(JobCost cost, double feet, boolean ownWorkValued) {
        return cost.leftOutOfRunning(ownWorkValued).isEmpty()
                ? money(new Money(
                        cost.pieceCost(feet, ownWorkValued), plan.input().currency()))
                : Cell.NONE;
    }

    // What the ranges of the inputs do to the verdict.

    private void prospects(List<Block> blocks) {
        PlanTable.Builder table = PlanTable.of(
                        "movers", words.fromMemory("What moves the saving of this job most, each input by itself"))
                .text("Own work", "own-work")
                .text("Input", "input")
                .text("Range", "range")
                .text("Standing", "standing")
                .number("Saving, input lower", "saving-lower")
                .number("Saving, input higher", "saving-higher");
        boolean any = false;
        List<String> lines = new ArrayList<>();
        for (boolean valued : new boolean[] {false, true}) {
            Optional<Outlook> outlook =
                    valued ? plan.prospects().workValued() : plan.prospects().workFree();
            String work = valued ? "counted" : "not counted";
            outlook.ifPresent(one -> lines.add("Own work " + work + ": " + prospect(one) + "."));
            for (Outlook.Mover mover : outlook.map(Outlook::movers).orElse(List.of()).stream()
                    .limit(MOVERS)
                    .toList()) {
                any = true;
                table.row(words.moved(mover, Cell.text(work)));
            }
        }
        if (!lines.isEmpty()) {
            blocks.add(new Points(lines));
        }
        if (any) {
            blocks.add(new Tabular(table.build()));
            blocks.add(new Prose(
                    "Lower and higher: by one standard deviation of the range, not beyond its ends. The interval and"
                            + " the probability come from seeded draws of all ranges together, taken as independent; what has no"
                            + " range is taken as it stands, and the cuts stay as planned. None or all of the draws does not mean"
                            + " that it cannot be otherwise: the prices have no range unless the job gives them one."));
        }
    }

    /** What it saves or loses against buying, and what the ranges make of that; no probability where there is no range. */
    String prospect(Outlook outlook) {
        double uncertainty = outlook.drawn()
                .map(drawn -> drawn.result().standardUncertainty())
                .orElse(0.0);
        return "against buying the lumber this job costs " + difference(outlook.value(), uncertainty)
                + outlook.drawn()
                        .map(drawn -> {
                            MonteCarlo.Interval interval = drawn.interval(COVERAGE);
                            boolean leastFirst = Math.abs(interval.least()) <= Math.abs(interval.greatest());
                            return "; 95 % of " + drawn.trials() + " draws lie between "
                                    + difference(leastFirst ? interval.least() : interval.greatest(), uncertainty)
                                    + " and "
                                    + difference(leastFirst ? interval.greatest() : interval.least(), uncertainty)
                                    + "; it pays in " + share(drawn.shareAbove(0)) + " of them";
                        })
                        .orElse("; no input has a range, so there is no interval and no probability");
    }

    private String difference(double saving, double uncertainty) {
        return NumberText.money(new Money(Math.abs(saving), plan.input().currency()), uncertainty)
                + (saving < 0 ? " more" : " less");
    }

    /** A share of draws that is none or all says nothing of what cannot happen. */
    static String share(double share) {
        if (share == 0) {
            return "none";
        }
        return share == 1 ? "all" : NumberText.partOf(share);
    }

    /** What is taken for an input, with its range and what that rests on. */
    String taken(Outlook.Mover mover) {
        String unit = words.unit(mover.input());
        return mover.input().label() + " (taken: "
                + (PlanWords.ranged(mover.value().value()) + " " + unit).strip() + ", range "
                + PlanWords.range(mover.value().spread()) + "; "
                + mover.value().source().standing().label() + ")";
    }

    /** All ranges that the draws are made from. */
    private void ranges(List<Block> blocks) {
        Map<WorkInput, Map<InputValue, Set<String>>> moving = new EnumMap<>(WorkInput.class);
        Stream.concat(
                        Stream.of(
                                        plan.prospects().workFree(),
                                        plan.prospects().workValued(),
                                        plan.prospects().runningFree(),
                                        plan.prospects().runningValued())
                                .flatMap(Optional::stream),
                        plan.ways().stream()
                                .flatMap(ways -> Stream.of(ways.free(), ways.valued()))
                                .flatMap(choice -> choice.costs().stream()))
                .flatMap(outlook -> outlook.movers().stream())
                .forEach(mover -> moving.computeIfAbsent(mover.input(), input -> new LinkedHashMap<>())
                        .computeIfAbsent(mover.value(), value -> new TreeSet<>())
                        .add(mover.saw()));
        if (moving.isEmpty()) {
            return;
        }
        PlanTable.Builder table = PlanTable.of(
                        "ranges", words.fromMemory("The ranges that were assumed for interval and probability"))
                .text("Key", "key")
                .text("Input", "input")
                .text("Taken", "taken")
                .text("Range", "range")
                .text("Unit", "unit")
                .text("Law", "law")
                .text("Standing", "standing")
                .text("Rests on", "source");
        moving.forEach((input, values) -> values.forEach((value, saws) -> table.row(
                Cell.text(MissingPrices.key(input)),
                Cell.text(input.label()
                        + saws.stream()
                                .filter(saw -> !saw.isEmpty())
                                .map(saw -> " (" + saw + ")")
                                .collect(Collectors.joining())),
                Cell.text(PlanWords.ranged(value.value())),
                Cell.text(PlanWords.range(value.spread())),
                Cell.text(words.unit(input)),
                Cell.text(law(value.spread())),
                Cell.text(value.source().standing().label()),
                Cell.text(PlanWords.title(value.source())))));
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose(
                "Triangle: likeliest at the value taken, falling to nothing at both ends. Even: every value of"
                        + " the range alike. Normal: the value taken and one standard deviation to either side; values beyond"
                        + " it happen, but a draw outside the limits of the input is made again."
                        + " A range of your own is written behind the value, such as 3 min (2 min to 5 min)."
                        + (moving.containsKey(WorkInput.LUMBER_PRICE)
                                ? " The prices of lumber move together: where one is at the upper end of its range, all"
                                        + " are. Triangles of several shapes are taken for one between the sums of their"
                                        + " ends."
                                : "")));
    }

    static String law(Distribution spread) {
        if (spread instanceof Distribution.Triangular) {
            return "triangle";
        }
        return spread instanceof Distribution.Normal ? "normal" : "even";
    }

    // The saw year by year.

    private void cashFlow(List<Block> blocks) {
        List<String> lines = new ArrayList<>();
        PlanTable.Builder table = PlanTable.of("years", words.fromMemory("The saw year by year"))
                .text("Own work", "own-work")
                .number("Year", "year")
                .number("Net", "net")
                .number("Standing at its end", "standing");
        boolean any = false;
        for (boolean valued : new boolean[] {false, true}) {
            Optional<CashFlow> years =
                    valued ? plan.cashFlow().workValued() : plan.cashFlow().workFree();
            String work = valued ? "counted" : "not counted";
            any |= years.isPresent();
            years.ifPresentOrElse(
                    flow -> {
                        years(table, work, flow);
                        JobPlan.Prospects all = plan.prospects();
                        lines.add("Own work " + work + ": "
                                + worth(
                                        flow,
                                        valued ? all.worthValued() : all.worthFree(),
                                        valued ? all.paidValued() : all.paidFree()));
                    },
                    () -> MissingPrices.of(plan)
                            .ifPresent(
                                    missing -> lines.add("Own work " + work + ": the saw year by year is left out, no "
                                            + MissingPrices.named(missing.ofYears(valued)) + ".")));
        }
        if (any) {
            blocks.add(new Tabular(table.build()));
            blocks.add(
                    new Prose("If it worked all the hours that are given for a year, and each gave as much lumber as in"
                            + " this job."));
        }
        blocks.add(new Points(lines));
    }

    private static void years(PlanTable.Builder table, String work, CashFlow flow) {
        Money outlay = flow.outlay().times(-1);
        table.row(Cell.text(work), Cell.whole(0), money(outlay), money(outlay));
        for (CashFlow.Year year : flow.years()) {
            table.row(Cell.text(work), Cell.whole(year.number()), money(year.net()), money(year.standing()));
        }
    }

    private String worth(CashFlow flow, Optional<Outlook> worth, Optional<Outlook> paid) {
        return flow.payback()
                        .map(years -> "the savings pay the outlay in " + NumberText.fixed(years, 1) + " years")
                        .orElse("the savings do not pay the outlay within its life")
                + paid.flatMap(Outlook::drawn).map(WorkSections::paidWithin).orElse("")
                + "; at the rate of interest all of it is worth " + NumberText.money(flow.presentValue())
                + " at the start" + ends(worth, 0, plan.input().currency()) + ".";
    }

    /** The years n are drawn as 1 / (1 + n), and nothing where the outlay is never paid within the life. */
    static String paidWithin(MonteCarlo drawn) {
        MonteCarlo.Interval ends = drawn.interval(COVERAGE);
        double never = 1 - drawn.shareAbove(0);
        return ends.greatest() == 0
                ? " (never in " + share(never) + " of the draws)"
                : " (95 % of the draws: " + NumberText.fixed(1 / ends.greatest() - 1, 1) + " to "
                        + (ends.least() > 0 ? NumberText.fixed(1 / ends.least() - 1, 1) : "never")
                        + (never > 0 ? "; never in " + share(never) + " of them" : "")
                        + ")";
    }

    private static String side(String name, BreakEven money, BreakEven.Side side) {
        boolean exact = money.outlayIncomeMissing().isEmpty();
        return verdict(name, side)
                + side.volume()
                        .map(feet -> " It pays from " + (exact ? "" : "no more than ") + feet(feet) + " on.")
                        .orElse("")
                + side.saving()
                        .map(saved -> " This job "
                                + (saved.amount() < 0
                                        ? "costs " + (exact ? "" : "no more than ")
                                        : "saves " + (exact ? "" : "at least "))
                                + NumberText.money(new Money(Math.abs(saved.amount()), saved.currency()))
                                + (saved.amount() < 0 ? " more than buying." : " against buying."))
                        .orElse("");
    }

    /** A sum that counts nothing of what it is named for is no sum. */
    private static List<Cell> sum(JobCost cost, boolean owning, boolean valued) {
        Money sum = owning ? cost.full(valued) : cost.running(valued);
        Set<CostKind> left = cost.leftOut().keySet();
        String lacking = left.stream()
                .filter(kind -> (owning || kind.running()) && (valued || kind != CostKind.WORK))
                .sorted()
                .map(CostKind::label)
                .collect(Collectors.joining(", "));
        boolean known = sum.amount() > 0
                && !(valued && left.contains(CostKind.WORK))
                && !(owning && left.contains(CostKind.DEPRECIATION) && left.contains(CostKind.INTEREST));
        return List.of(
                Cell.text((owning ? "with owning" : "running") + ", own work " + (valued ? "counted" : "not counted")
                        + (lacking.isEmpty() || !known ? "" : ", known costs only")),
                Cell.text("sum"),
                known ? money(sum) : Cell.NONE,
                known ? perFoot(cost.perBoardFoot(sum)) : Cell.NONE,
                Cell.text(lacking));
    }

    private static Cell money(Money money) {
        return Cell.number(money.amount(), 2, 4);
    }

    private static Cell perFoot(Money money) {
        return Cell.number(money.amount(), 3, 6);
    }

    /** A sum that lacks a kind of cost is no figure of its own. */
    static String perFootInWords(BreakEven.Side side) {
        String known = NumberText.money(side.runningPerBoardFoot());
        if (side.complete()) {
            return known;
        }
        return side.runningPerBoardFoot().amount() > 0 ? "more than " + known : "not known";
    }

    static String verdict(String side, BreakEven.Side money) {
        return side + ": it " + money.verdict().outcome().label() + ". "
                + String.join(" ", money.verdict().reasons());
    }
}
