package org.woodyield.checks;

import static org.woodyield.checks.Examples.feet;
import static org.woodyield.checks.Examples.inches;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Wane;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.show.NumberText;

/**
 * What the best pattern gives beside what others found by drawing and by simulation. They sawed by other rules, so nothing
 * here is a check and nothing fails.
 */
final class SawingPlots {

    private static final String NO_CHECK =
            " Reported for comparison; it is no check, since others sawed by other rules.";
    private static final Length KERF = inches(0.25);
    private static final double SWEPT_FEET = 12;
    private static final double SWEPT_INCHES = 14;

    private SawingPlots() {}

    static List<Plot> all() {
        return List.of(diagram(), sweep(), taper());
    }

    private static Plot diagram() {
        LogRule rule = LogRules.byId("scribner-diagram");
        List<Integer> diameters = Stream.iterate(12, d -> d + 2).limit(10).toList();
        List<Double> table = new ArrayList<>();
        List<Double> best = new ArrayList<>();
        for (int d : diameters) {
            table.add(rule.boardFeet(d, 16));
            best.add(live(LogExamples.log(16, d, d), List.of(16), Frame.Lay.AXIS, List.of(0.0)));
        }
        Map<String, List<Double>> series = new LinkedHashMap<>();
        series.put(rule.name() + " [" + rule.standing().label() + "]", table);
        series.put("best live pattern", best);
        return new Plot(
                "diagram",
                "Boards by the best pattern and by diagram",
                "Cylinders of 16 ft sawn live into boards 1 in thick and 4 in wide or wider in steps of 1/2 in, kerf 1/4 in,"
                        + " beside the diagram table for the same small ends, which is from MEMORY and allows no taper either."
                        + NO_CHECK,
                "small-end diameter, in",
                "board feet",
                diameters.stream().map(String::valueOf).toList(),
                false,
                series);
    }

    private static Plot sweep() {
        List<Integer> tenths = List.of(0, 1, 2, 3, 4);
        Map<String, List<Double>> series = new LinkedHashMap<>();
        series.put(
                "5 % a tenth (Todoroki) [SECONDHAND]",
                tenths.stream().map(t -> 5.0 * t).toList());
        series.put("best pattern, all boards 12 ft", lost(tenths, List.of(12)));
        series.put("best pattern, boards of 6 to 12 ft", lost(tenths, List.of(12, 10, 8, 6)));
        return new Plot(
                "sweep",
                "What sweep costs",
                "Loss of board feet against the straight log, by sweep in tenths of the small-end diameter: logs of 12 ft,"
                        + " 14 in at the small end and 15.5 in at the large, turned so that the sweep lies level, upright or"
                        + " between, live into boards 1 in thick, all as long as the log or also of 10, 8 and 6 ft, kerf 1/4 in. The published figure was read in a list of findings, not in"
                        + " its publication." + NO_CHECK,
                "sweep over small-end diameter",
                "loss of board feet, %",
                tenths.stream().map(t -> NumberText.full(t / 10.0)).toList(),
                false,
                series);
    }

    private static List<Double> lost(List<Integer> tenths, List<Integer> lengths) {
        List<Double> turns = List.of(0.0, 45.0, 90.0);
        double straight = live(swept(0), lengths, Frame.Lay.AXIS, turns);
        return tenths.stream()
                .map(t -> 100 * (1 - live(swept(t), lengths, Frame.Lay.AXIS, turns) / straight))
                .toList();
    }

    private static Log swept(int tenths) {
        return new Log(
                "A",
                Examples.pine(),
                feet(SWEPT_FEET),
                inches(SWEPT_INCHES),
                inches(SWEPT_INCHES),
                inches(SWEPT_INCHES + 1.5),
                Length.ZERO,
                inches(SWEPT_INCHES).times(tenths).dividedBy(10, Rounding.HALF_UP),
                0,
                false);
    }

    private static Plot taper() {
        List<Integer> diameters = Stream.iterate(8, d -> d + 2).limit(7).toList();
        Map<Frame.Lay, String> lays = new LinkedHashMap<>();
        lays.put(Frame.Lay.AXIS, "half taper: along the axis");
        lays.put(Frame.Lay.BARK_ABOVE, "full taper: along the bark above");
        lays.put(Frame.Lay.OFFSET, "offset: large end lifted 3/4 in");
        Map<String, List<Double>> series = new LinkedHashMap<>();
        lays.forEach((lay, name) -> series.put(
                name,
                diameters.stream()
                        .map(d -> {
                            Log log = LogExamples.log(12, d, d + 3);
                            return 100
                                    * live(log, List.of(12, 10, 8, 6), lay, List.of(0.0))
                                    / 12
                                    / LogSolid.of(log).volume().cubicFeet();
                        })
                        .toList()));
        return new Plot(
                "taper",
                "How the log lies to the cut",
                "Share of the wood of a straight log of 12 ft with 1/4 in of taper to the foot that becomes boards 1 in thick of"
                        + " 12, 10, 8 and 6 ft, sawn live, kerf 1/4 in. A published finding (Todoroki, read in a list of"
                        + " findings, SECONDHAND) is that half taper gives as much as an offset or more at every turn."
                        + NO_CHECK,
                "small-end diameter, in",
                "lumber in the solid volume, %",
                diameters.stream().map(String::valueOf).toList(),
                false,
                series);
    }

    /** Board feet of the best live pattern into boards of 1 in, from 4 in wide. */
    private static double live(Log log, List<Integer> feetLong, Frame.Lay lay, List<Double> turns) {
        PieceOption option = new PieceOption(
                "board",
                Length.inches(1),
                Length.inches(4),
                Length.inches(32),
                Length.inches(1, 2),
                feetLong.stream()
                        .map(l -> new LengthWorth(feet(l), 4 * l / 12.0))
                        .toList(),
                Wane.NONE);
        Saw saw = new Saw(
                "saw", KERF, Length.inches(60), Length.inches(1, 16), Saw.Reference.BED, Length.ZERO, Length.ZERO);
        SearchSpace space = SearchSpace.standard()
                .withTurns(turns)
                .withCants(false)
                .withLays(List.of(lay))
                .withOffset(inches(0.75));
        return boardFeet(log, saw, option, space);
    }

    /** Board feet of what the best pattern gives, by the sizes sawn. */
    static double boardFeet(Log log, Saw saw, PieceOption option, SearchSpace space) {
        return BestPattern.findAny(LogSolid.of(log), saw, List.of(option), space, PassCost.free())
                .map(SawingPlots::boardFeet)
                .orElse(0.0);
    }

    private static double boardFeet(SawingPlan plan) {
        return plan.pieces().stream()
                .mapToDouble(piece -> piece.thickness().toInches()
                        * piece.width().toInches()
                        * piece.length().toFeet()
                        / 12)
                .sum();
    }
}
