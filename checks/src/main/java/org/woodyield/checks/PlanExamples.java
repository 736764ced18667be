package org.woodyield.checks;

import static org.woodyield.checks.Examples.feet;
import static org.woodyield.checks.Examples.inches;

import java.util.List;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.StemPoint;
import org.woodyield.measure.Length;
import org.woodyield.plan.Bucking;
import org.woodyield.plan.LogPrices;
import org.woodyield.plan.LogPrices.PriceClass;
import org.woodyield.plan.TimberTrees;
import org.woodyield.sawing.CentredCant;
import org.woodyield.sawing.FirstCut;
import org.woodyield.sawing.FlatLoss;
import org.woodyield.sawing.GuideSupport;
import org.woodyield.sawing.KerfStack;
import org.woodyield.sawing.SquaredTimber;
import org.woodyield.sawing.Wane;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.working.Working;

/** Examples of {@code org.woodyield.sawing} and {@code org.woodyield.plan}; trees and prices are made up. */
final class PlanExamples {

    private PlanExamples() {}

    static void list(Examples.Builder examples) {
        cants(examples);
        firstCut(examples);
        guide(examples);
        examples.example("sawing.timber-end", x -> timber(x[0], x[1]).smallestEndInchesWorking(), 8, 8)
                .example(
                        "plan.timber-trees",
                        x -> new TimberTrees(timber(8, 8), feet(x[0]), Length.feet(1), Length.inches(3, 8))
                                .working(new TimberTrees.Tree("A", stem(x[1]))),
                        12,
                        16)
                .example("plan.bucking", x -> bucking(x[0]), 20);
    }

    private static void cants(Examples.Builder examples) {
        examples.example("sawing.wood-needed", x -> KerfStack.woodNeededInchesWorking(10, x[0], x[1]), 1.125, 0.25)
                .example(
                        "sawing.boards-in-cant",
                        x -> KerfStack.boardsWorking(x[0], x[1], x[2], KerfStack.Last.IS_THE_REST),
                        10,
                        1.125,
                        0.25)
                .example("sawing.stack-yield", x -> KerfStack.yieldPercentWorking(7, x[0], x[1]), 1.125, 0.25)
                .example("sawing.kerf-wood", x -> KerfStack.kerfSolidBoardFeetWorking(x[0], x[1]), 40, 0.25)
                .example("sawing.centred-cant", x -> CentredCant.sideInchesWorking(x[0]), 16)
                .example("sawing.centred-cant-slab", x -> CentredCant.slabInchesWorking(x[0]), 16);
    }

    /** A log of 12 ft, 14 in and 18 in over bark at its ends, and the guide beside it. */
    private static void firstCut(Examples.Builder examples) {
        examples.example("sawing.guide-height", x -> FirstCut.heightInchesWorking(x[0], x[1], x[2]), 5, 1, 0)
                .example("sawing.shim", x -> FirstCut.shimInchesWorking(x[0], x[1], x[2]), 7, 9, 1)
                .example("sawing.guide-length", x -> GuideSupport.lengthInchesWorking(x[0], x[1]), 144, 20)
                .example(
                        "sawing.support-spacing",
                        x -> GuideSupport.spacingInchesWorking(x[0], x[1], x[2]),
                        96,
                        0.25,
                        0.03125)
                .example("sawing.support-sag", x -> GuideSupport.sagInchesWorking(x[0], x[1], x[2]), 96, 0.25, 46)
                .example("sawing.supports", x -> GuideSupport.supportsWorking(x[0], x[1]), 184, 48);
    }

    /** Boards of 12 in, 8 ft long, from a bent and twisted guide that was measured over 12 ft. */
    private static void guide(Examples.Builder examples) {
        examples.example("sawing.wind-loss", x -> FlatLoss.windInchesWorking(x[0], x[1]), 12, 0.5)
                .example("sawing.arc-loss", x -> FlatLoss.arcInchesWorking(x[0], x[1], x[2]), 0.18, 144, 96)
                .example("sawing.flat-loss", x -> FlatLoss.bothInchesWorking(x[0], x[1]), 0.06, 0.08)
                .example("sawing.bridged-dip", x -> FlatLoss.bridgedInchesWorking(x[0], x[1], x[2]), 0.1, 40, 20)
                .example("sawing.wave-share", x -> FlatLoss.waveShareWorking(x[0], x[1]), 60, 20)
                .example("sawing.greatest-wind", x -> FlatLoss.greatestWindDegreesWorking(x[0], x[1]), 0.0625, 12)
                .example(
                        "sawing.greatest-dip",
                        x -> FlatLoss.greatestDipInchesWorking(x[0], x[1], x[2]),
                        0.0625,
                        144,
                        96);
    }

    private static SquaredTimber timber(double widthInches, double heightInches) {
        return new SquaredTimber(inches(widthInches), inches(heightInches), Wane.NONE);
    }

    /** Tapers by 1 in in 10 ft. */
    private static MeasuredStem stem(double atGroundInches) {
        return new MeasuredStem(List.of(new StemPoint(0, atGroundInches), new StemPoint(50, atGroundInches - 5)));
    }

    private static Working bucking(double atGroundInches) {
        LogPrices prices = new LogPrices(
                "USD",
                List.of("clear", "common"),
                List.of(new PriceClass("clear", 14, 900), new PriceClass("common", 8, 300)));
        Bucking bucking = new Bucking(
                List.of(Length.feet(8), Length.feet(16)),
                List.of(),
                Length.inches(4),
                Length.inches(3, 8),
                LogRules.byId("doyle"),
                ScalingConvention.plain(),
                prices);
        Bucking.Stem stem = new Bucking.Stem(
                "T", Examples.pine(), stem(atGroundInches), Length.feet(1), Length.feet(40), List.of());
        return bucking.working(bucking.best(stem));
    }
}
