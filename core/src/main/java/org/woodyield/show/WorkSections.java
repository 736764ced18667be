package org.woodyield.show;

import static org.woodyield.show.PlanWords.NOTHING;
import static org.woodyield.show.PlanWords.feet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.woodyield.measure.Money;
import org.woodyield.plan.JobPlan;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CostKind;
import org.woodyield.work.FuelUse;
import org.woodyield.work.JobCost;
import org.woodyield.work.TimeBreakdown;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;

/** What a plan says of time, fuel and money. */
final class WorkSections {

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
        blocks.add(new Prose(NumberText.fixed(work.days(), 1) + " days on site. Fuel: "
                + NumberText.fixed(use.cuttingLitres(), 1) + " L in the cut and "
                + NumberText.fixed(use.idlingLitres(), 1) + " L idling, " + NumberText.fixed(use.tanks(), 1)
                + " tanks; " + NumberText.fixed(use.barOilLitres(), 1) + " L of bar oil and "
                + NumberText.fixed(use.mixOilLitres(), 2) + " L of two-stroke oil; "
                + NumberText.fixed(use.sharpenings(), 1) + " sharpenings."));
        return new Section("time", "Time and fuel", blocks);
    }

    private static ShareBar.Part part(String name, double minutes, TimeBreakdown all) {
        String share = all.total() > 0 ? ", " + NumberText.percent(minutes / all.total()) : "";
        return new ShareBar.Part(name, minutes, NumberText.duration(minutes) + share);
    }

    private static List<Cell> time(String name, int passes, double area, TimeBreakdown time, FuelUse use) {
        double handling = time.setting() + time.carrying() + time.turning() + time.loading();
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
                    Cell.text(missing.stream().map(WorkInput::label).sorted().collect(Collectors.joining(", "))));
        }
        table.row(sum("running, own work not counted", cost.running(false), cost));
        table.row(sum("running, own work counted", cost.running(true), cost));
        table.row(sum("with owning, own work not counted", cost.full(false), cost));
        table.row(sum("with owning, own work counted", cost.full(true), cost));
        List<String> lines = new ArrayList<>();
        lines.add("Outlay before the first board, less resale: "
                + money.outlay().map(NumberText::money).orElse("not known") + ".");
        lines.add("The same lumber bought: "
                + money.boughtPerBoardFoot().map(NumberText::money).orElse("no price known") + " per board foot"
                + plan.boughtPrice()
                        .map(all -> ", " + NumberText.money(all) + " for what is usable here")
                        .orElse("")
                + ".");
        lines.add(side("Own work not counted", money.workFree()));
        lines.add(side("Own work counted at its wage", money.workValued()));
        if (!money.missing().isEmpty()) {
            lines.add("Nobody gave: "
                    + money.missing().stream().map(WorkInput::label).sorted().collect(Collectors.joining(", "))
                    + ". No figure was put in its place.");
        }
        return new Section("money", "Money", List.of(new Tabular(table.build()), new Points(lines)));
    }

    private static String side(String name, BreakEven.Side side) {
        return verdict(name, side)
                + side.volume()
                        .map(feet -> " It pays from " + feet(feet) + " on.")
                        .orElse("")
                + side.saving()
                        .map(saved -> " This job " + (saved.amount() < 0 ? "costs " : "saves ")
                                + NumberText.money(new Money(Math.abs(saved.amount()), saved.currency()))
                                + (saved.amount() < 0 ? " more than buying." : " against buying."))
                        .orElse("");
    }

    private static List<Cell> sum(String name, Money sum, JobCost cost) {
        boolean known = sum.amount() > 0;
        return List.of(
                Cell.text(name + (cost.leftOut().isEmpty() ? "" : ", known costs only")),
                Cell.text("sum"),
                known ? money(sum) : Cell.NONE,
                known ? perFoot(cost.perBoardFoot(sum)) : Cell.NONE,
                Cell.text(""));
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
