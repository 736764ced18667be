package org.woodyield.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Length;
import org.woodyield.measure.Money;
import org.woodyield.measure.Volume;
import org.woodyield.plan.GreenSize;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.Supply;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.Proof;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.WoodBalance;
import org.woodyield.scaling.Overrun;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Fact;
import org.woodyield.show.Block.Facts;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CostKind;
import org.woodyield.work.FuelUse;
import org.woodyield.work.InputValue;
import org.woodyield.work.JobCost;
import org.woodyield.work.TimeBreakdown;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.working.Working;

/** What a plan says, in the order in which it is shown: sections of text, tables, drawings and workings. */
final class PlanContent {

    private static final double POUND = 0.45359237;
    private static final String NOTHING = "Nothing is sawn, so there is nothing to show here.";

    private final JobPlan plan;
    private final LengthText lengths;
    private final Set<Source> sources = new LinkedHashSet<>();

    private PlanContent(JobPlan plan, Source origin) {
        this.plan = plan;
        this.lengths = LengthText.of(plan.input().saw());
        sources.add(origin);
    }

    static List<Section> of(JobPlan plan, Source origin) {
        return new PlanContent(plan, origin).sections();
    }

    private List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        sections.add(inShort());
        sections.add(wanted());
        sections.add(greenSizes());
        sections.add(logs());
        List<String> sizes = plan.supply().stream().map(Supply::wantedId).toList();
        int index = 0;
        for (LogPlan log : plan.logs()) {
            index++;
            sections.add(log(index, log, sizes));
        }
        sections.add(balance());
        sections.add(time());
        sections.add(weight());
        sections.add(money());
        sections.add(cautions());
        sections.add(assumptions());
        // Last, when every source that the plan rests on is known.
        sections.add(sources());
        return sections;
    }

    // The whole job.

    private Section inShort() {
        List<Block> blocks = new ArrayList<>();
        List<Fact> facts = new ArrayList<>();
        long met = plan.supply().stream().filter(Supply::met).count();
        facts.add(new Fact("Wanted", met + " of " + plan.supply().size() + " met", shortages()));
        facts.add(new Fact(
                "Lumber sawn",
                feet(plan.tally()),
                "by nominal tally; " + NumberText.fixed(plan.usable().value(), 0)
                        + " bf of it usable after drying and planing"));
        facts.add(new Fact(
                "Solid recovery",
                share(plan.balance().lumber(), plan.solid()),
                "green lumber of the solid volume of the logs that are sawn, " + cubic(plan.solid())));
        for (Fact overrun : overruns()) {
            facts.add(overrun);
        }
        WorkEstimate work = plan.work();
        facts.add(new Fact(
                fromMemory("Time on site"),
                NumberText.duration(work.time().total()),
                NumberText.fixed(work.days(), 1) + " days; the saw is in the wood for "
                        + NumberText.duration(work.time().cutting())));
        facts.add(new Fact(
                fromMemory("Fuel"),
                NumberText.fixed(work.use().fuelLitres(), 1) + " L",
                NumberText.fixed(work.use().barOilLitres(), 1) + " L of bar oil; "
                        + NumberText.fixed(work.use().sharpenings(), 1) + " sharpenings"));
        plan.breakEven().ifPresent(money -> {
            facts.add(new Fact(
                    fromMemory("Running cost"),
                    perFootInWords(money.workFree()),
                    "per usable board foot without own work; " + perFootInWords(money.workValued()) + " with it"));
            facts.add(new Fact(
                    "Same lumber bought",
                    money.boughtPerBoardFoot().map(NumberText::money).orElse("not known"),
                    "per board foot"));
        });
        blocks.add(new Facts(facts));
        plan.breakEven()
                .ifPresent(money -> blocks.add(new Points(List.of(
                        verdict("Own work not counted", money.workFree()),
                        verdict("Own work counted at its wage", money.workValued())))));
        return new Section("in-short", "In short", blocks);
    }

    /** A sum that lacks a kind of cost is no figure of its own. */
    private static String perFootInWords(BreakEven.Side side) {
        String known = NumberText.money(side.runningPerBoardFoot());
        if (side.complete()) {
            return known;
        }
        return side.runningPerBoardFoot().amount() > 0 ? "more than " + known : "not known";
    }

    private String shortages() {
        String lacking = plan.supply().stream()
                .filter(supply -> !supply.met())
                .map(supply -> supply.wantedId() + " " + amount(supply.shortage(), supply.unit()))
                .collect(Collectors.joining(", "));
        return lacking.isEmpty() ? "nothing is short" : "short: " + lacking;
    }

    private static String verdict(String side, BreakEven.Side money) {
        return side + ": it " + money.verdict().outcome().label() + ". "
                + String.join(" ", money.verdict().reasons());
    }

    /** Over the scale of those logs that are sawn and have a scale, so that both sides count the same logs. */
    private List<Fact> overruns() {
        List<Fact> facts = new ArrayList<>();
        for (LogPlan.Scaled rule : plan.logs().get(0).scales()) {
            double scale = 0;
            double tally = 0;
            int counted = 0;
            for (LogPlan log : plan.logs()) {
                Optional<BoardFeet> scaled = log.scales().stream()
                        .filter(one -> one.ruleId().equals(rule.ruleId()))
                        .findFirst()
                        .flatMap(LogPlan.Scaled::scale);
                if (log.sawing().isPresent() && scaled.isPresent()) {
                    scale += scaled.get().value();
                    tally += log.tally().value();
                    counted++;
                }
            }
            if (scale > 0) {
                double percent = Overrun.percent(BoardFeet.tally(tally), BoardFeet.scale(scale));
                facts.add(new Fact(
                        "Overrun over " + marked(rule.ruleName(), rule.standing()),
                        signed(percent) + " %",
                        "tally " + NumberText.fixed(tally, 0) + " bf over scale " + NumberText.fixed(scale, 0) + " bf, "
                                + counted + " logs"));
            }
        }
        return facts;
    }

    private Section wanted() {
        PlanTable.Builder table = PlanTable.of("wanted", "Needed, to be sawn, sawn")
                .text("Wanted", "wanted")
                .text("What it is", "description")
                .text("Unit", "unit")
                .number("Needed", "needed")
                .number("To saw", "to-saw")
                .number("Sawn", "sawn")
                .number("Short", "short")
                .number("Surplus", "surplus")
                .text("Verdict", "verdict");
        for (Supply supply : plan.supply()) {
            int decimals = supply.unit().equals("pieces") ? 0 : 2;
            table.row(
                    Cell.text(supply.wantedId()),
                    Cell.text(supply.label()),
                    Cell.text(supply.unit()),
                    Cell.number(supply.wanted(), decimals),
                    Cell.number(supply.toSaw(), decimals),
                    Cell.number(supply.sawn(), decimals),
                    Cell.number(supply.shortage(), decimals),
                    Cell.number(supply.surplus(), decimals),
                    Cell.text(supply.met() ? "met" : "SHORT"));
        }
        JobPlan.Choice choice = plan.choice();
        String better = "What is sawn from which log is worth " + NumberText.fixed(choice.worth(), 2) + " "
                + choice.unit()
                + " less its passes. No other way to saw these logs, among the patterns that were looked at, is"
                + " worth more than " + NumberText.fixed(choice.bound(), 2) + " " + choice.unit() + ".";
        return new Section("wanted", "What is wanted", List.of(new Tabular(table.build()), new Prose(better)));
    }

    private Section greenSizes() {
        PlanTable.Builder table = PlanTable.of("green-sizes", "Green target and setting, by thing wanted and wood")
                .text("Wanted", "wanted")
                .text("Wood", "species")
                .number(header("Finished thick"), "finished-thickness-mm")
                .number(header("Finished wide"), "finished-width-mm")
                .number("Green target thick, in", "target-thickness-in")
                .number("Green target wide, in", "target-width-in")
                .number(header("Saw thick"), "saw-thickness-mm")
                .number(header("Saw wide"), "saw-width-mm")
                .number("To spare after planing, in", "spare-thickness-in")
                .number("Too thin, %", "scant-percent");
        Map<String, Derivation> workings = new LinkedHashMap<>();
        Set<String> models = new LinkedHashSet<>();
        Length step = plan.input().saw().settingStep();
        for (GreenSize size : plan.greenSizes()) {
            size.shrinkageModel().ifPresent(models::add);
            table.row(
                    Cell.text(size.wantedId()),
                    Cell.text(wood(size)),
                    length(size.finishedThickness()),
                    length(size.finishedWidth()),
                    Cell.number(size.thickness().targetInches(), 3, 4),
                    Cell.number(size.width().targetInches(), 3, 4),
                    length(size.thicknessToSaw()),
                    length(size.widthToSaw()),
                    Cell.number(size.sparePlanedThicknessInches(), 3, 4),
                    Cell.number(100 * size.scantShare(), 1, 3));
            String of = size.wantedId() + " in " + size.species().commonName();
            size.shrinkageWorking().ifPresent(working -> once(of, working, workings));
            once(of + ", thickness", size.thickness().targetWorking(), workings);
            once(of + ", width", size.width().targetWorking(), workings);
            if (plan.input().saw().reference() == Saw.Reference.PREVIOUS_FACE) {
                once(of + ", thickness", size.thickness().settingWorking(step), workings);
            }
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose(
                "Planed dry: (finished + planing) / (1 - shrinkage) + Z x sawing variation. The saw's setting is"
                        + " the next step of its scale above the target; too thin is the share of pieces that the saw's scatter"
                        + " leaves under what planing clean needs."
                        + (models.isEmpty() ? "" : " Shrinkage: " + String.join("; ", models) + ".")));
        blocks.add(new Workings("How the green sizes come about", List.copyOf(workings.values())));
        return new Section("green-sizes", "Sizes to saw green", blocks);
    }

    /** Things that have the same working line for line share it; its title names them all. */
    private void once(String of, Working working, Map<String, Derivation> known) {
        String lines = WorkingText.plain(working);
        Derivation same = known.get(lines);
        known.put(lines, same == null ? derivation(working.title() + ": " + of, working) : same.alsoOf(of));
    }

    private Section logs() {
        PlanTable.Builder table = PlanTable.of("logs", "The logs: scale by each rule beside the solid volume")
                .text("Log", "log")
                .text("Species", "species")
                .number("Length", "length-mm")
                .number(header("Small end"), "small-end-mm")
                .number(header("Large end"), "large-end-mm");
        List<LogPlan.Scaled> rules = plan.logs().get(0).scales();
        rules.forEach(rule ->
                table.number(marked(rule.ruleName(), rule.standing()) + ", bf scale", rule.ruleId() + "-bf-scale"));
        table.number("Solid, ft3", "solid-ft3");
        PlanTable.Builder yield = PlanTable.of(
                        "yield", "What is sawn from them: overrun and solid recovery are two figures")
                .text("Log", "log")
                .number("Pieces", "pieces")
                .number("Passes", "passes")
                .number("Sawn, bf tally", "sawn-bf-tally");
        rules.forEach(rule -> yield.number(
                "Overrun over " + marked(rule.ruleName(), rule.standing()) + ", %",
                "overrun-" + rule.ruleId() + "-percent"));
        yield.number("Lumber, ft3 green", "lumber-ft3").number("Solid recovery, %", "solid-recovery-percent");
        yield.text("Left whole because", "left-whole");
        List<String> refusals = new ArrayList<>();
        for (LogPlan one : plan.logs()) {
            Log log = one.log();
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.text(log.id()),
                    Cell.text(log.species().commonName()),
                    Cell.length(lengths.longways(log.length()), log.length()),
                    Cell.length(diameters(log), log.smallEndMean()),
                    near(log.largeEndMean())));
            List<Cell> sawn = new ArrayList<>(List.of(
                    Cell.text(log.id()),
                    Cell.whole(one.sawing().map(s -> s.pieces().size()).orElse(0)),
                    Cell.whole(one.sawing().map(s -> s.passes().size()).orElse(0)),
                    Cell.number(one.tally().value(), 1, 3)));
            for (LogPlan.Scaled scale : one.scales()) {
                row.add(scale.scale()
                        .map(feet -> Cell.number(feet.value(), 0, 3))
                        .orElse(Cell.NONE));
                sawn.add(scale.overrunPercent()
                        .map(percent -> new Cell(signed(percent), Optional.of(percent), 3, false))
                        .orElse(Cell.NONE));
                if (!scale.refusal().isEmpty()) {
                    refusals.add("Log " + log.id() + ", " + scale.ruleName() + ": " + scale.refusal() + ".");
                }
            }
            row.add(Cell.number(one.solid().cubicFeet(), 2, 6));
            sawn.add(Cell.number(one.lumber().cubicFeet(), 2, 6));
            sawn.add(one.sawing().isPresent() ? Cell.number(one.solidRecoveryPercent(), 1, 4) : Cell.NONE);
            sawn.add(Cell.text(one.leftWhole()));
            table.row(row);
            yield.row(sawn);
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose(
                "A scale is what a rule estimates from the small end and the length. Small ends are inside bark,"
                        + " two diameters where they differ."));
        blocks.add(new Tabular(yield.build()));
        blocks.add(
                new Prose(
                        "Overrun is the nominal tally over the scale; a nominal size counts more wood than it measures."
                                + " Solid recovery is the green lumber's own volume over the log's. One does not follow from the other."));
        if (!refusals.isEmpty()) {
            blocks.add(new Points(refusals));
        }
        return new Section("logs", "The logs and what they give", blocks);
    }

    private String diameters(Log log) {
        String longer = lengths.bare(lengths.near(log.smallEndLong()));
        return log.smallEndLong().equals(log.smallEndShort())
                ? longer
                : longer + " / " + lengths.bare(lengths.near(log.smallEndShort()));
    }

    // One log.

    private Section log(int index, LogPlan one, List<String> sizes) {
        List<Block> blocks = new ArrayList<>();
        String id = one.log().id();
        if (one.sawing().isEmpty()) {
            blocks.add(new Prose("Left whole: " + one.leftWhole() + "."));
        } else {
            SawingPlan sawing = one.sawing().get();
            Frame frame = sawing.frame();
            String sweep = one.log().sweep().isPositive()
                    ? ", swept by " + lengths.near(one.log().sweep())
                    : "";
            blocks.add(new Prose(one.log().species().commonName() + sweep + ", "
                    + sawing.pieces().size() + " pieces in "
                    + sawing.passes().size() + " passes; the log lies "
                    + frame.lay().words() + ", turned "
                    + NumberText.significant(frame.turnDegrees(), 4)
                    + " degrees counter-clockwise seen from the small end. " + proof(sawing.proof())));
            LogDrawing drawing = LogDrawing.of(id, index, sawing, sizes);
            blocks.add(new Figure(
                    drawing.endView(),
                    "Log " + id + " from its small end, as it lies. Pieces are numbered on the wood."));
            drawing.sideView()
                    .ifPresent(svg -> blocks.add(new Figure(svg, "Log " + id + " from the side with its first cut.")));
            if (!sawing.passes().isEmpty()) {
                blocks.add(new Points(firstCut(sawing)));
            }
            blocks.add(new Tabular(schedule(id, sawing)));
            blocks.add(new Prose(scaleWords(sawing.saw())));
            blocks.add(new Tabular(pieces(id, sawing)));
            blocks.add(
                    new Prose("Of its " + cubic(one.solid()) + " falls: " + fallsOff(sawing.balance(), one.solid())));
        }
        List<Derivation> workings = one.scales().stream()
                .flatMap(scale -> scale.working().stream())
                .map(working -> derivation(working.title(), working))
                .toList();
        if (!workings.isEmpty()) {
            blocks.add(new Workings("How the scales of log " + id + " come about", workings));
        }
        return new Section("log-" + index, "Log " + id, blocks);
    }

    private String proof(Proof proof) {
        String gap = proof.verdict() == Proof.Verdict.PROVEN_OPTIMAL
                ? ""
                : ", bound " + NumberText.fixed(proof.bound(), 2) + " "
                        + plan.choice().unit();
        return "Worth less passes at the prices at which it was sawn: " + NumberText.fixed(proof.objective(), 2) + " "
                + plan.choice().unit() + gap + "; " + proof.verdict().words() + ". Search space: "
                + proof.searchSpace();
    }

    private List<String> firstCut(SawingPlan sawing) {
        FirstFace face = FirstFace.of(sawing);
        SawPass first = sawing.passes().get(0);
        List<String> lines = new ArrayList<>();
        lines.add("First cut: the first face stands " + lengths.size(face.aboveAxisSmallEnd())
                + " above the axis at the small end and " + lengths.size(face.aboveAxisLargeEnd())
                + " at the large end; the kerf lies "
                + (first.kerfSide() == SawPass.KerfSide.ABOVE ? "above" : "below") + " that line.");
        lines.add(
                face.shim().isPositive()
                        ? "On level supports at the ends, put " + lengths.near(face.shim()) + " under the "
                                + face.shimmedEnd() + "."
                        : "On level supports at the ends it lies as planned without a shim.");
        lines.add("The axis runs from the middle of one end to the middle of the other, bark left out.");
        return lines;
    }

    private static String scaleWords(Saw saw) {
        return saw.reference() == Saw.Reference.PREVIOUS_FACE
                ? "The saw rides " + saw.reference().words()
                        + ": the setting is the green thickness that it leaves, the kerf is not added to it."
                : "The saw runs over " + saw.reference().words()
                        + ": the setting is the height of the line over the bed and falls by thickness and kerf.";
    }

    private PlanTable schedule(String id, SawingPlan sawing) {
        PlanTable.Builder table = PlanTable.ofLog("passes", "Cut schedule of log " + id, id)
                .number("Pass", "pass")
                .number("Turn, deg", "turn-degrees")
                .number(header("Setting"), "setting-mm")
                .text("From", "setting-from")
                .text("Kerf lies", "kerf-side")
                .number(header("Cut wide, small end"), "width-small-end-mm")
                .number(header("Large end"), "width-large-end-mm")
                .text("What comes off", "comes-off")
                .text("What remains", "remains");
        for (SawPass pass : sawing.passes()) {
            table.row(
                    Cell.whole(pass.number()),
                    new Cell(NumberText.significant(pass.turnDegrees(), 4), Optional.of(pass.turnDegrees()), 2, false),
                    length(pass.setting()),
                    Cell.text(pass.settingFrom()),
                    Cell.text(pass.kerfSide() == SawPass.KerfSide.ABOVE ? "above" : "below"),
                    near(pass.widthSmallEnd()),
                    near(pass.widthLargeEnd()),
                    Cell.text(pass.comesOff()),
                    Cell.text(pass.remains()));
        }
        return table.build();
    }

    private PlanTable pieces(String id, SawingPlan sawing) {
        PlanTable.Builder table = PlanTable.ofLog("pieces", "Pieces of log " + id, id)
                .number("Piece", "piece")
                .text("For", "wanted")
                .number(header("Thick"), "thickness-mm")
                .number(header("Wide"), "width-mm")
                .number("Long", "length-mm")
                .number("From the small end", "start-mm")
                .text("Out of", "out-of");
        for (SawnPiece piece : sawing.pieces()) {
            table.row(
                    Cell.whole(piece.number()),
                    Cell.text(piece.optionId()),
                    length(piece.thickness()),
                    length(piece.width()),
                    Cell.length(lengths.longways(piece.length()), piece.length()),
                    Cell.length(lengths.longways(piece.start()), piece.start()),
                    Cell.text(piece.fromCant() ? "a cant" : "the log"));
        }
        return table.build();
    }

    private static String fallsOff(WoodBalance balance, Volume solid) {
        return "kerf " + share(balance.kerf(), solid) + ", slabs " + share(balance.slab(), solid) + ", edgings "
                + share(balance.edging(), solid) + ", trimmed ends " + share(balance.trim(), solid)
                + "; lumber is " + share(balance.lumber(), solid) + ".";
    }

    // The whole job again.

    private Section balance() {
        WoodBalance balance = plan.balance();
        if (balance.sum().cubicMetres() == 0) {
            return new Section("balance", "Where the wood goes", List.of(new Prose(NOTHING)));
        }
        PlanTable.Builder table = PlanTable.of("balance", "Balance of wood, inside bark")
                .text("Share", "share")
                .number("ft3", "volume-ft3")
                .number("m3", "volume-m3")
                .number("% of the solid", "percent");
        List<ShareBar.Part> parts = new ArrayList<>();
        Volume[] volumes = {balance.lumber(), balance.kerf(), balance.slab(), balance.edging(), balance.trim()};
        String[] names = {"lumber", "kerf", "slabs", "edgings", "trimmed ends"};
        for (int i = 0; i < names.length; i++) {
            parts.add(new ShareBar.Part(
                    names[i], volumes[i].cubicMetres(), cubic(volumes[i]) + ", " + share(volumes[i], plan.solid())));
            table.row(volume(names[i], volumes[i]));
        }
        table.row(volume("sum of the five", balance.sum()));
        table.row(volume("solid of the logs sawn", plan.solid()));
        double off = Math.abs(balance.sum().cubicMetres() - plan.solid().cubicMetres());
        double relative = off / plan.solid().cubicMetres();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Figure(
                ShareBar.svg("balance", "Where the wood of the logs goes", parts), "Where the wood of the logs goes."));
        blocks.add(new Tabular(table.build()));
        blocks.add(
                new Prose("Each share is integrated over its own places, none is a difference. Sum and solid differ by "
                        + NumberText.significant(relative, 2) + " of the solid."));
        return new Section("balance", "Where the wood goes", blocks);
    }

    private List<Cell> volume(String name, Volume volume) {
        return List.of(
                Cell.text(name),
                Cell.number(volume.cubicFeet(), 2, 6),
                Cell.number(volume.cubicMetres(), 4, 8),
                Cell.number(100 * volume.cubicMetres() / plan.solid().cubicMetres(), 1, 6));
    }

    private Section time() {
        WorkEstimate work = plan.work();
        TimeBreakdown all = work.time();
        if (work.logs().isEmpty()) {
            return new Section("time", "Time and fuel", List.of(new Prose(NOTHING)));
        }
        PlanTable.Builder table = PlanTable.of("time", fromMemory("Time and fuel by log, minutes and litres"))
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

    private Section weight() {
        List<Block> blocks = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        lines.add("Heaviest log: " + heavy(plan.heaviestLog()));
        plan.heaviestPiece().ifPresent(piece -> lines.add("Heaviest piece: " + heavy(piece)));
        blocks.add(new Points(lines));
        PlanTable.Builder logs = PlanTable.of(
                        "weights", "Weight of the logs as they lie, bark included where its share is known")
                .text("Log", "log")
                .text("Species", "species")
                .number("kg", "green-kg")
                .number("lb", "green-lb");
        for (LogPlan log : plan.logs()) {
            logs.row(
                    Cell.text(log.log().id()),
                    Cell.text(log.log().species().commonName()),
                    Cell.number(log.greenKilograms(), 0, 1),
                    Cell.number(log.greenKilograms() / POUND, 0, 1));
        }
        blocks.add(new Tabular(logs.build()));
        if (!plan.drying().isEmpty()) {
            PlanTable.Builder table = PlanTable.of("drying", "Air-drying to 20 % moisture")
                    .text("Species", "species")
                    .number("Green thickness, in", "thickness-in")
                    .number("Days at least", "days-least")
                    .number("Days at most", "days-most")
                    .text("Rests on", "source");
            for (JobPlan.Drying drying : plan.drying()) {
                drying.days().ifPresent(days -> sources.add(days.source()));
                table.row(
                        Cell.text(drying.species()),
                        Cell.number(drying.thickness(), 3, 4),
                        drying.days()
                                .map(days -> Cell.number(days.least(), 0, 2))
                                .orElse(Cell.NONE),
                        drying.days()
                                .map(days -> Cell.number(days.greatest(), 0, 2))
                                .orElse(Cell.NONE),
                        Cell.text(drying.days()
                                .map(days -> days.source().citation())
                                .orElse("no figure is known")));
            }
            blocks.add(new Tabular(table.build()));
        }
        PlanTable.Builder sizes = PlanTable.of("final-sizes", "Final size after drying and planing")
                .text("Wanted", "wanted")
                .text("Wood", "species")
                .number(header("Sawn thick"), "sawn-thickness-mm")
                .number("Dried and planed, at most, in", "planed-thickness-in")
                .number(header("Finished thick"), "finished-thickness-mm")
                .number(header("Sawn wide"), "sawn-width-mm")
                .number("Dried and planed, at most, in", "planed-width-in")
                .number(header("Finished wide"), "finished-width-mm");
        for (GreenSize size : plan.greenSizes()) {
            sizes.row(
                    Cell.text(size.wantedId()),
                    Cell.text(wood(size)),
                    length(size.thicknessToSaw()),
                    Cell.number(size.thickness().planedInches(size.thicknessToSaw()), 3, 4),
                    length(size.finishedThickness()),
                    length(size.widthToSaw()),
                    Cell.number(size.width().planedInches(size.widthToSaw()), 3, 4),
                    length(size.finishedWidth()));
        }
        blocks.add(new Tabular(sizes.build()));
        blocks.add(
                new Prose("The mean piece, dried and planed by no more than the allowance, would measure the figure in"
                        + " inches; planed to size it measures the finished one."));
        return new Section("weight", "Weight, drying and final size", blocks);
    }

    private static String heavy(JobPlan.Heavy heavy) {
        return heavy.what() + ", " + weight(heavy.greenKilograms()) + " green"
                + heavy.dryKilograms().map(dry -> ", " + weight(dry) + " dry").orElse("") + ".";
    }

    private static String weight(double kilograms) {
        return NumberText.fixed(kilograms, 0) + " kg (" + NumberText.fixed(kilograms / POUND, 0) + " lb)";
    }

    private Section money() {
        if (plan.cost().isEmpty() || plan.breakEven().isEmpty()) {
            return new Section("money", "Money", List.of(new Prose(NOTHING)));
        }
        JobCost cost = plan.cost().get();
        BreakEven money = plan.breakEven().get();
        String currency = plan.input().currency();
        PlanTable.Builder table = PlanTable.of("money", fromMemory("What the sawing costs"))
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
                    amount.map(PlanContent::money).orElse(Cell.NONE),
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

    private static Section cautions() {
        return new Section(
                "cautions",
                "Cautions",
                List.of(new Points(List.of(
                        "A plan is arithmetic. Shake, rot, knots, metal and tension in the wood show only in the log;"
                                + " look again after the first cut.",
                        "Lumber sawn here is not graded. Whether it may carry a building, and in what size, is for the"
                                + " local code and a licensed person to decide; nothing here is a design value.",
                        "A saw under load kicks, climbs and throws. Guards, chaps, helmet, gloves and eye protection;"
                                + " nobody in line with the chain or blade; somebody within call.",
                        "Milling with an engine means hours of noise and fumes: ear protection, wind from the side,"
                                + " never in a closed shed. Fine dust is a hazard to the lungs.",
                        "A green log can roll and weighs what the plan says: chock it on both sides, lift with levers"
                                + " and winch, keep feet and hands from under it.",
                        "Let the engine cool before the tank is filled; keep water or an extinguisher near."))));
    }

    private Section assumptions() {
        List<Block> blocks = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (JobPlan.Note note : plan.notes()) {
            sources.add(note.source());
            notes.add(
                    note.source().standing() == Standing.DERIVED
                            ? note.text()
                            : note.text() + " (" + note.source().citation() + ")");
        }
        blocks.add(new Points(notes));
        PlanTable.Builder table = PlanTable.of("assumptions", "What nobody gave and was taken instead")
                .text("What", "what")
                .text("Taken", "taken")
                .text("Range", "range")
                .text("Standing", "standing")
                .text("Rests on", "source");
        plan.input().assumptions().forEach(one -> {
            sources.add(one.source());
            table.row(
                    Cell.text(one.what()),
                    Cell.text(one.taken()),
                    Cell.text(""),
                    Cell.text(one.source().standing().label()),
                    Cell.text(title(one.source())));
        });
        for (Map.Entry<WorkInput, InputValue> entry :
                plan.input().work().values().entrySet()) {
            InputValue value = entry.getValue();
            sources.add(value.source());
            if (!value.source().id().equals("user")) {
                String unit = entry.getKey().unit();
                table.row(
                        Cell.text(entry.getKey().label()),
                        Cell.text((NumberText.full(value.value()) + " " + unit).strip()),
                        Cell.text(range(value.spread())),
                        Cell.text(value.source().standing().label()),
                        Cell.text(title(value.source())));
            }
        }
        blocks.add(new Tabular(table.build()));
        return new Section("models", "Models, and what was taken for granted", blocks);
    }

    private static String range(Distribution spread) {
        if (spread instanceof Distribution.Triangular triangle) {
            return NumberText.full(triangle.least()) + " to " + NumberText.full(triangle.greatest());
        }
        if (spread instanceof Distribution.Rectangular even) {
            return NumberText.full(even.least()) + " to " + NumberText.full(even.greatest());
        }
        return "";
    }

    private static String title(Source source) {
        return source.author().isBlank() ? source.title() : source.author() + ", " + source.title();
    }

    private Section sources() {
        PlanTable.Builder table = PlanTable.of("sources", "What the figures of this plan rest on")
                .text("Standing", "standing")
                .text("Author or agency", "author")
                .text("Title", "title")
                .text("Edition", "edition")
                .text("Place", "place")
                .text("Key", "key");
        for (Source source : sources) {
            table.row(
                    Cell.text(source.standing().label()),
                    Cell.text(source.author()),
                    Cell.text(source.title()),
                    Cell.text(source.edition()),
                    Cell.text(source.place()),
                    Cell.text(source.id()));
        }
        return new Section("sources", "Sources", List.of(new Tabular(table.build())));
    }

    // Words for figures.

    private Derivation derivation(String title, Working working) {
        working.lines().forEach(line -> sources.add(line.source()));
        return new Derivation(title, working);
    }

    private Cell length(Length length) {
        return Cell.length(lengths.bare(lengths.size(length)), length);
    }

    private Cell near(Length length) {
        return Cell.length(lengths.bare(lengths.near(length)), length);
    }

    private String header(String words) {
        return words + ", " + lengths.unit();
    }

    /** The wood of a green size, marked where its shrinkage is not published. */
    private static String wood(GreenSize size) {
        return size.shrinkageWorking()
                .map(working -> marked(size.species().commonName(), weakest(working)))
                .orElse(size.species().commonName());
    }

    private static Standing weakest(Working working) {
        return working.lines().stream().anyMatch(line -> line.source().standing() == Standing.MEMORY)
                ? Standing.MEMORY
                : Standing.PUBLISHED;
    }

    /** Time, fuel and what they cost rest on figures from memory until the job gives its own. */
    private String fromMemory(String name) {
        return plan.input().work().values().values().stream()
                        .anyMatch(value -> value.source().standing() == Standing.MEMORY)
                ? marked(name, Standing.MEMORY)
                : name;
    }

    private static String marked(String name, Standing standing) {
        return standing == Standing.PUBLISHED ? name : name + " [" + standing.label() + "]";
    }

    private static String feet(BoardFeet feet) {
        return NumberText.fixed(feet.value(), 0) + " bf " + feet.kind().label();
    }

    private static String cubic(Volume volume) {
        return NumberText.fixed(volume.cubicFeet(), 1) + " ft3 (" + NumberText.fixed(volume.cubicMetres(), 3) + " m3)";
    }

    private static String share(Volume part, Volume whole) {
        return whole.cubicMetres() > 0 ? NumberText.percent(part.cubicMetres() / whole.cubicMetres()) : "–";
    }

    private static String signed(double percent) {
        String text = NumberText.fixed(percent, 0);
        return percent > 0 && !text.equals("0") ? "+" + text : text;
    }

    private static String amount(double value, String unit) {
        return (unit.equals("pieces") ? NumberText.fixed(value, 0) : NumberText.fixed(value, 2)) + " " + unit;
    }
}
