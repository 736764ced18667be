package org.woodyield.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.sawing.FlatLoss;
import org.woodyield.sawing.FlatnessBudget;
import org.woodyield.sawing.FlatnessBudget.ForPiece;
import org.woodyield.sawing.FlatnessBudget.Guide;
import org.woodyield.sawing.GuideSupport;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawGuide;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;

/** What faults of the guide or of a pass cost the planed pieces, how true the guide has to be, and how it is held up. */
final class FlatnessSection {

    private final PlanWords words;
    private final JobPlan plan;
    private final SawGuide guide;
    private final Length allowance;
    private final List<Block> blocks = new ArrayList<>();
    private final List<String> points = new ArrayList<>();
    private final List<Derivation> workings = new ArrayList<>();

    private FlatnessSection(PlanWords words) {
        this.words = words;
        plan = words.plan();
        guide = plan.input().guide();
        allowance = plan.input().planing().times(2);
    }

    static Section of(PlanWords words) {
        return new FlatnessSection(words).section();
    }

    /** What each planed piece of a log loses by the measured guide; empty where that is not known. */
    static Optional<FlatnessBudget> budget(JobPlan plan, SawingPlan sawing) {
        boolean rides = sawing.saw().reference() == Saw.Reference.PREVIOUS_FACE;
        return plan.input()
                .guide()
                .measured()
                .filter(measured -> rides && covers(plan, sawing, measured))
                .map(measured -> FlatnessBudget.ofGuide(
                        sawing, measured, plan.input().planing().times(2), planed(plan)));
    }

    private static boolean covers(JobPlan plan, SawingPlan sawing, Guide measured) {
        return sawing.pieces().stream()
                .filter(planed(plan))
                .allMatch(piece -> piece.length().compareTo(measured.over()) <= 0);
    }

    private static Predicate<SawnPiece> planed(JobPlan plan) {
        return piece -> plan.input().isPlaned(piece.optionId());
    }

    private Section section() {
        if (!allowance.isPositive()) {
            blocks.add(new Prose("Nothing is planed off, as finish.planing says, so no piece can lose by it: every"
                    + " lack of flatness that the saw makes stays in the board."));
        } else if (plan.input().saw().reference() == Saw.Reference.PREVIOUS_FACE) {
            riding();
        } else {
            overBed();
        }
        if (!points.isEmpty()) {
            blocks.add(new Points(points));
        }
        if (!workings.isEmpty()) {
            blocks.add(new Workings("How the losses and the supports come about", workings));
        }
        return new Section("flatness", "How flat the lumber comes out", blocks);
    }

    private void riding() {
        blocks.add(
                new Prose(
                        "The saw rides the face before, so the face that the guide makes is copied into every board"
                                + " until a new face is opened with it. A board loses of its flat thickness: by wind, half of its width times"
                                + " the angle between its ends; by an even bend, the guide's dip times the square of the board's share of"
                                + " the guide's length. Planing takes " + size(allowance)
                                + " off the two faces; what is lost beyond that"
                                + " leaves the board under its target. Pieces that stay rough have no allowance and are not counted."));
        PlanTable.Builder table = PlanTable.of(
                        "flatness", "Planing allowance that the first cut takes, and the guide allowed")
                .text("Log", "log")
                .number("Planed pieces", "planed-pieces")
                .number("Under target", "under-target")
                .number(words.header("Most lost"), "most-lost-mm")
                .number("Of the allowance, %", "allowance-share-percent")
                .number("Guide measured over", "over-mm")
                .number(words.header("Dip allowed"), "dip-allowed-mm")
                .number("Wind allowed, deg", "wind-allowed-degrees")
                .text("Remark", "remark");
        long planed = 0;
        long under = 0;
        double worst = 0;
        for (LogPlan log : sawn()) {
            SawingPlan sawing = log.sawing().orElseThrow();
            List<SawnPiece> pieces =
                    sawing.pieces().stream().filter(planed(plan)).toList();
            Optional<FlatnessBudget> budget = budget(plan, sawing).filter(one -> !pieces.isEmpty());
            Length over = guide.measured()
                    .filter(measured -> covers(plan, sawing, measured))
                    .map(Guide::over)
                    .orElse(log.log().length());
            Optional<Guide> limits = pieces.isEmpty()
                    ? Optional.empty()
                    : Optional.of(FlatnessBudget.limits(sawing, over, allowance, guide.allowedShare(), planed(plan)));
            planed += pieces.size();
            under += budget.map(FlatnessBudget::underTarget).orElse(0L);
            worst = Math.max(worst, budget.map(FlatnessBudget::greatestShare).orElse(0.0));
            table.row(
                    Cell.text(log.log().id()),
                    Cell.whole(pieces.size()),
                    budget.map(one -> Cell.whole((int) one.underTarget())).orElse(Cell.NONE),
                    budget.map(one -> words.length(lost(one))).orElse(Cell.NONE),
                    budget.map(one -> Cell.number(100 * one.greatestShare(), 0, 2))
                            .orElse(Cell.NONE),
                    Cell.length(words.lengths().longways(over), over),
                    limits.map(one -> words.length(one.dip())).orElse(Cell.NONE),
                    limits.map(one -> Cell.number(one.windDegrees(), 2, 4)).orElse(Cell.NONE),
                    Cell.text(remark(pieces, budget)));
        }
        blocks.add(new Tabular(table.build()));
        if (!plan.input().naturalEdges().isEmpty()) {
            points.add(
                    "Boards with natural edges are reckoned at their least width; where they are wider, wind costs more.");
        }
        points.add(
                "Allowed is what takes no more than " + share() + " of the allowance from any planed piece, dip without"
                        + " wind or wind without dip; with half of each it is less still.");
        if (guide.measured().isPresent()) {
            Guide measured = guide.measured().get();
            points.add(under + " of " + planed + " planed pieces fall under their target with a guide that dips "
                    + size(measured.dip()) + " and is wound by " + NumberText.full(measured.windDegrees())
                    + " degrees over " + words.lengths().longways(measured.over()) + ". The worst loses "
                    + NumberText.fixed(100 * worst, 0) + " % of the allowance"
                    + (worst > guide.allowedShare()
                            ? ", more than the " + share()
                                    + " allowed: straighten the guide, or give finish.planing more."
                            : ", within the " + share() + " allowed."));
            worstPiece(measured);
        } else {
            points.add("How many pieces fall under their target is told when saw.guide-length, saw.guide-dip and"
                    + " saw.guide-wind say how the guide lies.");
        }
        supports();
        carriage();
    }

    private String remark(List<SawnPiece> pieces, Optional<FlatnessBudget> budget) {
        if (pieces.isEmpty()) {
            return "nothing is planed";
        }
        if (budget.isEmpty()) {
            return guide.measured().isEmpty() ? "" : "guide shorter than a piece";
        }
        return budget.get().underTarget() == 0 ? "all hold" : "some under target";
    }

    private Length lost(FlatnessBudget budget) {
        double most =
                budget.pieces().stream().mapToDouble(ForPiece::lossInches).max().orElse(0);
        return Length.ofInches(most, Rounding.HALF_UP);
    }

    private void worstPiece(Guide measured) {
        double most = -1;
        for (LogPlan log : sawn()) {
            SawingPlan sawing = log.sawing().orElseThrow();
            if (!covers(plan, sawing, measured)) {
                points.add("Log " + log.log().id() + ": a planed piece is longer than the "
                        + words.lengths().longways(measured.over())
                        + " over which the guide was measured; measure it over the whole piece.");
                continue;
            }
            Optional<ForPiece> worst = budget(plan, sawing).stream()
                    .flatMap(budget -> budget.pieces().stream())
                    .max(Comparator.comparingDouble(ForPiece::lossInches));
            if (worst.isPresent() && worst.get().lossInches() > most) {
                most = worst.get().lossInches();
                SawnPiece piece = sawing.pieces().get(worst.get().number() - 1);
                workings.clear();
                workings.addAll(derivations(log.log().id(), piece, measured));
            }
        }
    }

    private List<Derivation> derivations(String log, SawnPiece piece, Guide measured) {
        double width = piece.width().toInches();
        double over = measured.over().toInches();
        double length = piece.length().toInches();
        double share = measured.windDegrees() * (length / over);
        double wind = FlatLoss.windInches(width, share);
        double arc = FlatLoss.arcInches(measured.dip().toInches(), over, length);
        String which = "piece " + piece.number() + " of log " + log;
        return List.of(
                words.derivation("Wind of " + which, FlatLoss.windInchesWorking(width, share)),
                words.derivation(
                        "Bend of " + which,
                        FlatLoss.arcInchesWorking(measured.dip().toInches(), over, length)),
                words.derivation("Both in " + which, FlatLoss.bothInchesWorking(wind, arc)));
    }

    private void supports() {
        if (guide.stiffness().isEmpty()) {
            points.add("How far apart the guide's supports may stand is told when saw.guide-tested-span and"
                    + " saw.guide-tested-dip say how far it dips under the saw, and saw.carriage-base how long it has to"
                    + " be.");
            return;
        }
        double span = guide.stiffness().get().span().toInches();
        double dip = guide.stiffness().get().dip().toInches();
        double allowed = Math.min(dip, allowance.toInches() * guide.allowedShare());
        double spacing = GuideSupport.spacingInches(span, dip, allowed);
        workings.add(words.derivation(
                "Distance of the guide's supports", GuideSupport.spacingInchesWorking(span, dip, allowed)));
        if (spacing < 1) {
            points.add("No distance of supports keeps this guide from dipping more than " + share()
                    + " of the allowance under the saw: take a stiffer one.");
            return;
        }
        Length runOn = guide.carriageBase().orElse(Length.ZERO);
        PlanTable.Builder table = PlanTable.of("guide-supports", "The guide and its supports")
                .text("Log", "log")
                .number("Guide at least", "guide-mm")
                .number("Supports", "supports")
                .number(words.header("Apart"), "apart-mm")
                .number(words.header("Dip under the saw"), "dip-mm");
        for (LogPlan log : sawn()) {
            double length = GuideSupport.lengthInches(log.log().length().toInches(), runOn.toInches());
            double count = GuideSupport.supports(length, spacing);
            double apart = length / (count - 1);
            Length guideLength = Length.ofInches(length, Rounding.UP);
            Length between = Length.ofInches(apart, Rounding.DOWN);
            double sag = GuideSupport.sagInches(span, dip, apart);
            table.row(
                    Cell.text(log.log().id()),
                    Cell.length(words.lengths().longways(guideLength), guideLength),
                    Cell.whole((int) count),
                    words.near(between),
                    words.length(Length.ofInches(sag, Rounding.HALF_UP)));
        }
        blocks.add(new Tabular(table.build()));
        points.add("Supports stand evenly under the guide, one at each end, so that it dips no more under the saw than "
                + share() + " of the allowance" + (allowed == dip ? ", or than it was tested for" : "")
                + ". The dip of a beam grows with the cube of the span; only stiffness is in it, not strength."
                + (runOn.isPositive()
                        ? " The guide reaches beyond the log by the carriage's base at each end."
                        : " Give saw.carriage-base: the guide has to reach beyond the log by it at each end, which is not"
                                + " in these lengths."));
        sawn().stream().findFirst().ifPresent(log -> {
            double length = GuideSupport.lengthInches(log.log().length().toInches(), runOn.toInches());
            double apart = length / (GuideSupport.supports(length, spacing) - 1);
            String of = " of log " + log.log().id();
            workings.add(words.derivation(
                    "Guide" + of,
                    GuideSupport.lengthInchesWorking(log.log().length().toInches(), runOn.toInches())));
            workings.add(words.derivation("Supports" + of, GuideSupport.supportsWorking(length, spacing)));
            workings.add(
                    words.derivation("Dip between supports" + of, GuideSupport.sagInchesWorking(span, dip, apart)));
        });
        guide.measured().ifPresent(measured -> {
            List<String> shorter = sawn().stream()
                    .filter(log -> log.log().length().plus(runOn.times(2)).compareTo(measured.over()) > 0)
                    .map(log -> log.log().id())
                    .toList();
            if (!shorter.isEmpty()) {
                points.add("The guide of saw.guide-length, " + words.lengths().longways(measured.over())
                        + ", is too short for log " + String.join(", ", shorter) + ".");
            }
        });
    }

    private void carriage() {
        if (guide.carriageBase().isEmpty()) {
            points.add("What the carriage evens out of short hollows is told when saw.carriage-base is given.");
            return;
        }
        Length base = guide.carriageBase().get();
        Length reach = Length.ofInches(base.toInches() * StrictMath.sqrt(2), Rounding.DOWN);
        Length hollow = Length.ofInches(2 * allowance.toInches() * guide.allowedShare(), Rounding.DOWN);
        points.add("The carriage touches the guide at the two ends of its base of " + size(base)
                + ", the blade midway. Of a hollow c long and d deep in a straight guide the cut gets d (1 - (base / c)^2),"
                + " but never less than half: hollows up to " + words.lengths().near(reach)
                + " long may be " + size(hollow)
                + " deep, twice what a longer one may. A bend of the whole guide is not"
                + " evened out.");
        workings.add(words.derivation(
                "A hollow as long as the carriage's base",
                FlatLoss.bridgedInchesWorking(hollow.toInches(), base.toInches(), base.toInches())));
    }

    private void overBed() {
        blocks.add(
                new Prose("The saw runs over a fixed bed, so a pass that leaves its plane harms the pieces on its two"
                        + " sides and no others, each by as much as it wanders; a piece between two bad passes loses twice. Where the"
                        + " log lies badly on its bearing face the passes after it go wrong too, until it is turned. Planing takes "
                        + size(allowance)
                        + " off the two faces. Pieces that stay rough have no allowance and are not counted."));
        PlanTable.Builder table = PlanTable.of("flatness", "Planed pieces that one bad pass harms")
                .text("Log", "log")
                .number("Planed pieces", "planed-pieces")
                .number("Harmed by one pass at most", "harmed")
                .number("Under target", "under-target")
                .number("Harmed if it lies badly", "harmed-badly-laid")
                .number("Under target then", "under-target-badly-laid");
        Length wander = guide.wander().orElse(Length.ZERO);
        for (LogPlan log : sawn()) {
            SawingPlan sawing = log.sawing().orElseThrow();
            int harmed = 0;
            long under = 0;
            int harmedBadly = 0;
            long underBadly = 0;
            for (SawPass pass : sawing.passes()) {
                FlatnessBudget one =
                        FlatnessBudget.ofPass(sawing, pass.number(), wander, false, allowance, planed(plan));
                FlatnessBudget all =
                        FlatnessBudget.ofPass(sawing, pass.number(), wander, true, allowance, planed(plan));
                harmed = Math.max(harmed, one.pieces().size());
                under = Math.max(under, one.underTarget());
                harmedBadly = Math.max(harmedBadly, all.pieces().size());
                underBadly = Math.max(underBadly, all.underTarget());
            }
            boolean known = guide.wander().isPresent();
            table.row(
                    Cell.text(log.log().id()),
                    Cell.whole(
                            (int) sawing.pieces().stream().filter(planed(plan)).count()),
                    Cell.whole(harmed),
                    known ? Cell.whole((int) under) : Cell.NONE,
                    Cell.whole(harmedBadly),
                    known ? Cell.whole((int) underBadly) : Cell.NONE);
        }
        blocks.add(new Tabular(table.build()));
        Length allowed = Length.ofInches(allowance.toInches() * guide.allowedShare(), Rounding.DOWN);
        points.add(
                "A pass may wander by " + size(allowed) + ", " + share() + " of the allowance, from its highest to its"
                        + " lowest place; by half of that where two such passes meet in one piece.");
        points.add(
                guide.wander().isPresent()
                        ? "The saw's passes wander by " + size(wander) + ", "
                                + NumberText.fixed(100 * wander.toInches() / allowance.toInches(), 0)
                                + " % of the allowance."
                        : "How many pieces fall under their target is told when saw.wander says how far a pass leaves its"
                                + " plane.");
    }

    private List<LogPlan> sawn() {
        return plan.logs().stream().filter(log -> log.sawing().isPresent()).toList();
    }

    private String size(Length length) {
        return words.lengths().size(length);
    }

    private String share() {
        return NumberText.significant(100 * guide.allowedShare(), 3) + " %";
    }
}
