package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.JobInput;
import org.woodyield.sawing.FirstCut;
import org.woodyield.sawing.FlatnessBudget;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.TurnedShim;

/**
 * The first cut of a log in words: where the face stands, the shim, the guide and how straight it has to be.
 *
 * @param sawing how the log is sawn, with one pass at least
 * @param input the job
 */
record FirstCutWords(SawingPlan sawing, JobInput input) {

    List<String> lines() {
        LengthText lengths = LengthText.of(sawing.saw());
        FirstCut cut = FirstCut.of(sawing);
        SawPass first = sawing.passes().get(0);
        List<String> lines = new ArrayList<>();
        lines.add("First cut: the first face stands " + lengths.size(cut.aboveAxisSmallEnd())
                + " above the axis at the small end and " + lengths.size(cut.aboveAxisLargeEnd())
                + " at the large end; the kerf lies "
                + (first.kerfSide() == SawPass.KerfSide.ABOVE ? "above" : "below") + " that line.");
        lines.add(
                cut.shim().isPositive()
                        ? "On level supports at the ends, put " + lengths.near(cut.shim()) + " under the " + end(cut)
                                + "."
                        : "On level supports at the ends it lies as planned without a shim.");
        lines.add("The axis runs from the middle of one end to the middle of the other, bark left out.");
        if (sawing.saw().reference() == Saw.Reference.PREVIOUS_FACE) {
            guide(cut, lengths, lines);
        } else {
            lines.add("A pass that leaves its plane harms the pieces on its two sides only, as long as the log does not"
                    + " move and lies well on its bearing face.");
        }
        turned(lengths).ifPresent(lines::add);
        return lines;
    }

    private Optional<String> turned(LengthText lengths) {
        List<TurnedShim> shims = TurnedShim.of(sawing);
        if (shims.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                "What is turned on its waney side is planned with the axis of the log level. On level supports at its ends it"
                        + " then wants: "
                        + shims.stream()
                                .map(shim -> lengths.near(shim.height()) + " under the "
                                        + (shim.underSmallEnd() ? "small" : "large") + " end for "
                                        + (shim.firstPass() == shim.lastPass()
                                                ? "pass " + shim.firstPass()
                                                : "passes " + shim.firstPass() + " to " + shim.lastPass())
                                        + supports(shim, lengths))
                                .collect(Collectors.joining("; "))
                        + ".");
    }

    /** A flitch that runs out before an end of the log is supported further in. */
    private String supports(TurnedShim shim, LengthText lengths) {
        Length end = Length.ofMetres(sawing.solid().lengthMetres(), Rounding.HALF_EVEN);
        List<String> places = new ArrayList<>();
        if (!shim.supportedFrom().equals(Length.ZERO)) {
            places.add(lengths.longways(shim.supportedFrom()) + " from the small end of the log");
        }
        if (!shim.supportedTo().equals(end)) {
            places.add(lengths.longways(end.minus(shim.supportedTo())) + " from its large end");
        }
        return places.isEmpty() ? "" : " (supported " + String.join(" and ", places) + ", where its pieces end)";
    }

    private void guide(FirstCut cut, LengthText lengths, List<String> lines) {
        Length kerf = sawing.saw().kerf();
        Length depth = cut.leastDepth(kerf).roundedTo(sawing.saw().settingStep(), Rounding.UP);
        lines.add(
                "The guide's face lies above the first face by the kerf and the depth to which the saw is set below it."
                        + " A straight guide clears the bark from a depth of " + lengths.size(depth)
                        + " on; its face then stands " + lengths.size(cut.guideSmallEnd(kerf, depth))
                        + " above the axis at the small end and " + lengths.size(cut.guideLargeEnd(kerf, depth))
                        + " at the large end.");
        lines.add(
                "The guide reaches beyond the log at both ends, each time by the saw's own length on it or more; the log"
                        + " is "
                        + lengths.longways(Length.ofMetres(sawing.solid().lengthMetres(), Rounding.HALF_UP))
                        + " long.");
        Predicate<SawnPiece> planed = piece -> input.isPlaned(piece.optionId());
        if (input.planing().isPositive() && sawing.pieces().stream().anyMatch(planed)) {
            double share = input.guide().allowedShare();
            Length over = Length.ofMetres(sawing.solid().lengthMetres(), Rounding.HALF_UP);
            Length allowance = input.planing().times(2);
            FlatnessBudget.Guide limits = FlatnessBudget.limits(sawing, over, allowance, share, planed);
            lines.add(
                    "Every board down to the next face opened with the guide copies it. So that no planed piece loses more"
                            + " than " + NumberText.significant(100 * share, 3) + " % of the " + lengths.size(allowance)
                            + " that planing takes off its two faces, the guide may sag or rise evenly by "
                            + NumberText.significant(limits.dip().toInches(), 2) + " in ("
                            + NumberText.significant(limits.dip().toMillimetres(), 2)
                            + " mm) over the length of the log, or be twisted by "
                            + NumberText.significant(limits.windDegrees(), 2)
                            + " degrees over it; half of each where it does both.");
        }
    }

    static String end(FirstCut cut) {
        return cut.shimUnderSmallEnd() ? "small end" : "large end";
    }
}
