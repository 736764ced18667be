package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.woodyield.plan.MovingPlan;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.work.WorkInput;

/** What a plan says of moving its logs; people with a saw in inches read pounds, others kilograms. */
final class MovingSection {

    private static final int LOGS_NAMED = 5;

    private final PlanWords words;
    private final boolean pounds;

    private MovingSection(PlanWords words) {
        this.words = words;
        pounds = words.lengths() == LengthText.INCHES;
    }

    static Section of(PlanWords words) {
        return new MovingSection(words).section();
    }

    private Section section() {
        MovingPlan moving = MovingPlan.of(words.plan());
        List<Block> blocks = new ArrayList<>();
        PlanTable.Builder table = PlanTable.of(
                        "moving", "What the logs weigh and what it takes to move them, " + (pounds ? "lb" : "kg"))
                .text("Log", "log")
                .number("Whole", "whole-kg")
                .number("Half log", "half-log-kg")
                .number("First slab", "first-slab-kg")
                .number("Lift small end", "lift-small-end-kg")
                .number("Lift large end", "lift-large-end-kg")
                .number("Roll up skids", "parbuckle-kg")
                .number("Drag", "drag-kg");
        List<Derivation> workings = new ArrayList<>();
        Optional<MovingPlan.Load> heaviest = Optional.empty();
        for (MovingPlan.Load load : moving.loads()) {
            table.row(
                    Cell.text(load.log().id()),
                    weight(load.kilograms()),
                    weight(load.halfLog()),
                    load.firstSlab().map(this::weight).orElse(Cell.NONE),
                    weight(load.liftSmallEnd()),
                    weight(load.liftLargeEnd()),
                    load.parbuckle().map(this::weight).orElse(Cell.NONE),
                    load.slopePull().map(this::weight).orElse(Cell.NONE));
            if (heaviest.map(most -> load.kilograms() > most.kilograms()).orElse(true)) {
                heaviest = Optional.of(load);
            }
        }
        heaviest.ifPresent(load -> load.workings()
                .forEach(working -> workings.add(words.derivation(
                        working.title() + ", heaviest log " + load.log().id(), working))));
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose(
                "Green, bark counted in proportion to the wood. Half log: cut through the axis, the kerf off both halves. First"
                        + " slab: its wood as in the wood balance, at the log's weight by volume. Lift: just raises that end of a log that lies"
                        + " level on the other. Roll: all ropes of a parbuckle together. Drag: keeps the log moving; below zero it"
                        + " slides by itself."));
        if (!moving.ways().isEmpty()) {
            ways(blocks, moving, workings);
        }
        List<String> leftOut = new ArrayList<>(moving.leftOut());
        if (!moving.tooHeavy().isEmpty()) {
            leftOut.add(tooHeavy(moving.tooHeavy()));
        }
        if (!leftOut.isEmpty()) {
            blocks.add(new Points(leftOut));
        }
        blocks.add(new Points(List.of(
                "A log that sticks, jerks or rolls takes more than these figures, and a log can weigh far more than its"
                        + " species' mean. What rope, hook, winch or jack may carry is marked on it by its maker; nothing here"
                        + " chooses tackle, nor says what a person may lift.",
                "Nobody stands below a log on a slope or skids, beside a rope under load, or over a log that is being turned."
                        + " Chock both sides before a rope is let go.")));
        if (!workings.isEmpty()) {
            blocks.add(new Workings("How lifts, pulls and trips come about", workings));
        }
        return new Section("moving", "Moving logs", blocks);
    }

    private void ways(List<Block> blocks, MovingPlan moving, List<Derivation> workings) {
        String currency = words.plan().input().currency();
        PlanTable.Builder table = PlanTable.of("hauling", "Logs to the saw, or the saw to the logs")
                .text("Way", "way")
                .number("Trips", "trips")
                .number("Time, min", "time-min")
                .number(currency, "cost");
        for (MovingPlan.Way way : moving.ways()) {
            table.row(
                    Cell.text(way.name()),
                    Cell.number(way.trips(), 0, 2),
                    Cell.number(way.minutes(), 0, 2),
                    way.cost().map(cost -> Cell.number(cost.amount(), 2, 4)).orElse(Cell.NONE));
            way.workings()
                    .forEach(working -> workings.add(words.derivation(working.title() + ": " + way.name(), working)));
        }
        blocks.add(new Tabular(table.build()));
        double perLog = words.plan().input().work().get(WorkInput.LOADING);
        blocks.add(new Prose(
                "Assumed: every hour, whoever works it, has the one wage, and every trip the one time and price. Logs are"
                        + " loaded in the order of the job, as many as a trip carries. With the saw at the logs, the kit goes out"
                        + " to each place by trips of its own that come home empty, the lumber of all places is loaded together,"
                        + " as if they lay side by side, and slabs stay there. This comparison stands by itself: the hours on site above count "
                        + NumberText.full(perLog)
                        + " min for bringing each log and the saw together (work.loading), whichever way is gone."));
    }

    private String tooHeavy(List<MovingPlan.Load> loads) {
        String each = loads.stream()
                .limit(LOGS_NAMED)
                .map(load -> "log " + load.log().id() + " weighs " + withUnit(load.kilograms()))
                .collect(Collectors.joining(", "));
        int more = loads.size() - LOGS_NAMED;
        String others = more > 0 ? ", and " + more + " more weigh too much" : "";
        return "Logs to the saw: left out. A trip carries up to "
                + withUnit(words.plan().input().work().get(WorkInput.LOAD_LIMIT)) + " ("
                + WorkInput.LOAD_LIMIT.keyOfJob() + "); " + each + others
                + ". Buck shorter, halve where the log lies, or take what carries more and give its load.";
    }

    private String withUnit(double kilograms) {
        return shown(kilograms) + (pounds ? " lb" : " kg");
    }

    private String shown(double kilograms) {
        return NumberText.fixed(pounds ? kilograms / DryingParts.POUND : kilograms, 0);
    }

    private Cell weight(double kilograms) {
        return new Cell(shown(kilograms), Optional.of(kilograms), 1, false);
    }
}
