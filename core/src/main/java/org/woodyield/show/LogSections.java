package org.woodyield.show;

import static org.woodyield.show.PlanWords.cubic;
import static org.woodyield.show.PlanWords.marked;
import static org.woodyield.show.PlanWords.share;
import static org.woodyield.show.PlanWords.signed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.plan.GreenSize;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.Planner;
import org.woodyield.sawing.FirstCut;
import org.woodyield.sawing.FlatnessBudget;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.Proof;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.WoodBalance;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;

/** What a plan says of the logs: all in one table, then each with its first cut, passes and pieces. */
final class LogSections {

    private final PlanWords words;
    private final JobPlan plan;

    LogSections(PlanWords words) {
        this.words = words;
        plan = words.plan();
    }

    Section logs() {
        PlanTable.Builder table = PlanTable.of("logs", "The logs: scale by each rule beside the solid volume")
                .text("Log", "log")
                .text("Species", "species")
                .number("Length", "length-mm")
                .number(words.header("Small end"), "small-end-mm")
                .number(words.header("Large end"), "large-end-mm");
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
        yield.text("Left whole", "left-whole");
        List<String> remarks = new ArrayList<>();
        for (LogPlan one : plan.logs()) {
            Log log = one.log();
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.text(log.id()),
                    Cell.text(log.species().commonName()),
                    Cell.length(words.lengths().longways(log.length()), log.length()),
                    Cell.length(diameters(log), log.smallEndMean()),
                    words.near(log.largeEndMean())));
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
                scale.caution()
                        .ifPresent(words ->
                                remarks.add("Log " + log.id() + ", " + scale.ruleName() + ", caution: " + words + "."));
                if (!scale.refusal().isEmpty()) {
                    remarks.add("Log " + log.id() + ", " + scale.ruleName() + ": " + scale.refusal() + ".");
                }
            }
            row.add(Cell.number(one.solid().cubicFeet(), 2, 6));
            sawn.add(Cell.number(one.lumber().cubicFeet(), 2, 6));
            sawn.add(one.sawing().isPresent() ? Cell.number(one.solidRecoveryPercent(), 1, 4) : Cell.NONE);
            sawn.add(Cell.text(one.leftWhole().isEmpty() ? "" : "yes"));
            if (!one.leftWhole().isEmpty()) {
                remarks.add("Log " + log.id() + " is left whole: " + one.leftWhole() + ".");
            }
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
        remarks.addAll(IdleOffsets.of(plan.input()));
        blocks.add(new Prose(points()));
        if (!remarks.isEmpty()) {
            blocks.add(new Points(remarks));
        }
        return new Section("logs", "The logs and what they give", blocks);
    }

    private String diameters(Log log) {
        String longer = words.lengths().bare(words.lengths().near(log.smallEndLong()));
        return log.smallEndLong().equals(log.smallEndShort())
                ? longer
                : longer + " / " + words.lengths().bare(words.lengths().near(log.smallEndShort()));
    }

    Section log(int index, LogPlan one, List<String> sizes) {
        List<Block> blocks = new ArrayList<>();
        String id = one.log().id();
        if (one.sawing().isEmpty()) {
            blocks.add(new Prose("Left whole: " + one.leftWhole() + "."));
        } else {
            SawingPlan sawing = one.sawing().get();
            Frame frame = sawing.frame();
            String sweep = one.log().sweep().isPositive()
                    ? ", swept by " + words.lengths().near(one.log().sweep())
                    : "";
            blocks.add(new Prose(one.log().species().commonName() + sweep + ", "
                    + sawing.pieces().size() + " pieces in "
                    + sawing.passes().size() + " passes; the log lies "
                    + lay(frame) + ", turned "
                    + NumberText.significant(frame.turnDegrees(), 4)
                    + " degrees counter-clockwise seen from the small end. " + bought(one) + proof(sawing.proof())
                    + ofALesserSpace(one)));
            if (limitedByWidthOfCut(sawing)) {
                blocks.add(new Prose("The saw cuts " + sawing.saw().widthOfCut() + " wide, and this log is up to "
                        + words.lengths().near(sawing.widestOverBark())
                        + " wide over the bark as it lies: no level pass goes through its middle, and patterns that need one are"
                        + " left out. More may come of it with other turns tried (pattern.turns = 0 deg; 90 deg), with cants"
                        + " (pattern.cants), with the bark off, or with a wider saw."));
            }
            LogDrawing drawing = LogDrawing.of(id, index, sawing, sizes);
            blocks.add(new Figure(
                    drawing.endView(),
                    "Log " + id + " from its small end, as it lies. Pieces are numbered on the wood."));
            drawing.sideView()
                    .ifPresent(svg -> blocks.add(new Figure(svg, "Log " + id + " from the side with its first cut.")));
            if (!sawing.passes().isEmpty()) {
                blocks.add(new Points(new FirstCutWords(sawing, plan.input()).lines()));
                blocks.add(new Workings(
                        "How the first cut of log " + id + " comes about",
                        FirstCut.of(sawing).workings().stream()
                                .map(working -> words.derivation(working.title(), working))
                                .toList()));
            }
            blocks.add(new Tabular(schedule(id, sawing)));
            blocks.add(new Prose(scaleWords(sawing.saw())));
            blocks.add(new Tabular(pieces(id, sawing)));
            blocks.add(new Prose("Of its " + cubic(one.solid()) + " falls: " + fallsOff(sawing.balance(), one.solid())
                    + costOfSettings(one, sawing)));
        }
        List<Derivation> workings = one.scales().stream()
                .flatMap(scale -> scale.working().stream())
                .map(working -> words.derivation(working.title(), working))
                .toList();
        if (!workings.isEmpty()) {
            blocks.add(new Workings("How the scales of log " + id + " come about", workings));
        }
        return new Section("log-" + index, "Log " + id, blocks);
    }

    private String lay(Frame frame) {
        if (frame.lay() != Frame.Lay.OFFSET || frame.largeEndLift().equals(Length.ZERO)) {
            return frame.lay().words();
        }
        boolean higher = frame.largeEndLift().isPositive();
        Length lift = higher ? frame.largeEndLift() : Length.ZERO.minus(frame.largeEndLift());
        return "with its axis " + words.lengths().near(lift) + (higher ? " higher" : " lower") + " at the large end";
    }

    private String bought(LogPlan one) {
        return one.bought()
                .map(price -> "Bought, its lumber would cost " + NumberText.fixed(price, 2) + " "
                        + plan.choice().unit() + " before what drying loses. ")
                .orElse("");
    }

    private String proof(Proof proof) {
        String gap = proof.verdict() == Proof.Verdict.PROVEN_OPTIMAL
                ? ""
                : ", bound " + NumberText.fixed(proof.bound(), 2) + " points";
        return "In the choice of its cuts it counts " + NumberText.fixed(proof.objective(), 2) + " points" + gap + "; "
                + proof.verdict().words() + ". "
                + (proof.boundOffGrid().isPresent() ? costOfGrid(proof) : "") + "Search space: "
                + proof.searchSpace();
    }

    /** What the points are by which each log's cuts are chosen. */
    private String points() {
        boolean priced = plan.choice().unit().equals(plan.input().currency());
        String less = NumberText.fixed(100 * plan.choice().surplusShare(), 0) + " %";
        return "Points, below with each log, are the measure by which its cuts were chosen, and no money. A piece counts "
                + (priced
                        ? "a point for each " + plan.choice().unit()
                                + " of its price bought where the logs together give" + " too little of its kind"
                        : "a point for each board foot where the logs together give too little of its kind")
                + "; where they give enough it counts less, down to " + less + " of that. "
                + (priced
                        ? "What sawing the log costs in the choice is taken off: fuel, oil, wear, and "
                                + NumberText.fixed(100 * Planner.OWN_HOURS_SHARE, 0) + " % of the wage for its hours."
                        : "The cost of sawing is left out, since a price is missing.");
    }

    /** Of a cut that was found where less was allowed. */
    private String ofALesserSpace(LogPlan one) {
        return one.space().equals(plan.choice().space())
                ? ""
                : " That is less than the job allows: this pattern was found in a search of less, and goes better with"
                        + " those of the other logs.";
    }

    private String costOfGrid(Proof proof) {
        double bound = proof.boundOffGrid().getAsDouble();
        return "With first faces anywhere instead of on the grid no pattern could count more than "
                + NumberText.fixed(bound, 2) + " points: the grid costs "
                + NumberText.fixed(100 * (bound - proof.objective()) / bound, 1) + " % of that at most. ";
    }

    /** What the lumber has only because sizes are taken up to the saw's step. */
    private String costOfSettings(LogPlan one, SawingPlan sawing) {
        double lumber = 0;
        double added = 0;
        for (SawnPiece piece : sawing.pieces()) {
            double volume = piece.thickness().toMetres()
                    * piece.width().toMetres()
                    * piece.length().toMetres();
            lumber += volume;
            for (GreenSize size : plan.greenSizes()) {
                if (size.wantedId().equals(piece.optionId())
                        && size.species().equals(one.log().species())) {
                    added += volume * size.settingShare(piece.width());
                }
            }
        }
        return " Taking green sizes up to the saw's setting step adds " + NumberText.fixed(100 * added / lumber, 1)
                + " % of it.";
    }

    /** Whether the log is too wide for the saw somewhere, so that patterns are left out. */
    static boolean limitedByWidthOfCut(SawingPlan sawing) {
        return sawing.widestOverBark().compareTo(sawing.saw().widthOfCut()) > 0;
    }

    private static String scaleWords(Saw saw) {
        return saw.reference() == Saw.Reference.PREVIOUS_FACE
                ? "The saw rides " + saw.reference().words()
                        + ": the setting is the green thickness that it leaves, the kerf is not added to it. Where no face is there yet"
                        + " the guide leads: the setting is then the height of its line above the axis of the log as it lies for that"
                        + " pass, with a minus below it."
                : "The saw runs over " + saw.reference().words()
                        + ": the setting is the height of the line over the bed and falls by thickness and kerf.";
    }

    private PlanTable schedule(String id, SawingPlan sawing) {
        PlanTable.Builder table = PlanTable.ofLog("passes", "Cut schedule of log " + id, id)
                .number("Pass", "pass")
                .number("Turn, deg", "turn-degrees")
                .number(words.header("Setting"), "setting-mm")
                .text("From", "setting-from")
                .text("Kerf lies", "kerf-side")
                .number(words.header("Cut wide, small end"), "width-small-end-mm")
                .number(words.header("Large end"), "width-large-end-mm")
                .text("What comes off", "comes-off")
                .text("What remains", "remains");
        for (SawPass pass : sawing.passes()) {
            boolean guided = pass.byGuide();
            table.row(
                    Cell.whole(pass.number()),
                    new Cell(NumberText.significant(pass.turnDegrees(), 4), Optional.of(pass.turnDegrees()), 2, false),
                    words.length(guided ? pass.faceHeight() : pass.setting()),
                    Cell.text(guided ? "the axis, by the guide" : pass.settingFrom()),
                    Cell.text(pass.kerfSide() == SawPass.KerfSide.ABOVE ? "above" : "below"),
                    words.near(pass.widthSmallEnd()),
                    words.near(pass.widthLargeEnd()),
                    Cell.text(pass.comesOff()),
                    Cell.text(pass.remains()));
        }
        return table.build();
    }

    private PlanTable pieces(String id, SawingPlan sawing) {
        PlanTable.Builder table = PlanTable.ofLog("pieces", "Pieces of log " + id, id)
                .number("Piece", "piece")
                .text("For", "wanted")
                .number(words.header("Thick"), "thickness-mm")
                .number(words.header("Wide"), "width-mm")
                .number("Long", "length-mm")
                .number("From the small end", "start-mm")
                .text("Out of", "out-of");
        boolean measured = plan.input().guide().measured().isPresent();
        if (measured) {
            table.number(words.header("Flat lost"), "flat-lost-mm").number("Of planing, %", "of-planing-percent");
        }
        Map<Integer, FlatnessBudget.ForPiece> flat = FlatnessSection.budget(plan, sawing).stream()
                .flatMap(budget -> budget.pieces().stream())
                .collect(Collectors.toMap(FlatnessBudget.ForPiece::number, one -> one));
        for (SawnPiece piece : sawing.pieces()) {
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.whole(piece.number()),
                    Cell.text(piece.optionId()),
                    words.length(piece.thickness()),
                    piece.unedged() ? words.near(narrowest(sawing, piece)) : words.length(piece.width()),
                    Cell.length(words.lengths().longways(piece.length()), piece.length()),
                    Cell.length(words.lengths().longways(piece.start()), piece.start()),
                    Cell.text(piece.fromCant() ? "a cant" : "the log")));
            if (measured) {
                Optional<FlatnessBudget.ForPiece> loss = Optional.ofNullable(flat.get(piece.number()));
                row.add(loss.map(one -> words.length(Length.ofInches(one.lossInches(), Rounding.HALF_UP)))
                        .orElse(Cell.NONE));
                row.add(loss.filter(one -> Double.isFinite(one.allowanceShare()))
                        .map(one -> Cell.number(100 * one.allowanceShare(), 0, 2))
                        .orElse(Cell.NONE));
            }
            table.row(row);
        }
        return table.build();
    }

    /** The narrowest place inside bark of the narrower face; between stations a face is narrowest at one of them. */
    private static Length narrowest(SawingPlan sawing, SawnPiece piece) {
        LogSolid solid = sawing.solid();
        double start = piece.start().toMetres();
        double end = Math.min(piece.end().toMetres(), solid.lengthMetres());
        List<Double> places = new ArrayList<>(List.of(start, end));
        for (int i = 0; i < solid.stationCount(); i++) {
            double z = solid.station(i).zMetres();
            if (z > start && z < end) {
                places.add(z);
            }
        }
        double least = Double.POSITIVE_INFINITY;
        for (double z : places) {
            Outline outline = Outline.insideBark(solid, sawing.frame(), z);
            double bottom = outline.chord(piece.faces().bottom().toMetres())[0];
            double top = outline.chord(piece.faces().top().toMetres())[0];
            least = Math.min(least, 2 * Math.min(bottom, top));
        }
        return Length.ofMetres(least, Rounding.DOWN);
    }

    private static String fallsOff(WoodBalance balance, Volume solid) {
        return "kerf " + share(balance.kerf(), solid) + ", slabs " + share(balance.slab(), solid) + ", edgings "
                + share(balance.edging(), solid) + ", trimmed ends " + share(balance.trim(), solid)
                + (balance.rot().cubicMetres() > 0 ? ", rot " + share(balance.rot(), solid) : "") + "; lumber is "
                + share(balance.lumber(), solid) + ".";
    }
}
