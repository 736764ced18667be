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
        examples.example("sawing.wood-needed", x -> KerfStack.woodNeededInchesWorking(10, x[0], x[1]), 1.125, 0.25);
        examples.example("sawing.timber-end", x -> timber(x[0], x[1]).smallestEndInchesWorking(), 8, 8)
                .example(
                        "plan.timber-trees",
                        x -> new TimberTrees(timber(8, 8), feet(x[0]), Length.feet(1), Length.inches(3, 8))
                                .working(new TimberTrees.Tree("A", stem(x[1]))),
                        12,
                        16)
                .example("plan.bucking", x -> bucking(x[0]), 20);
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
