package org.woodyield.checks;

import static org.woodyield.checks.Examples.feet;
import static org.woodyield.checks.Examples.inches;
import static org.woodyield.checks.LogExamples.log;

import java.util.List;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Volume;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.Defect;
import org.woodyield.scaling.Firmwood;
import org.woodyield.scaling.KerfRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.MeasurementError;
import org.woodyield.scaling.NetScale;
import org.woodyield.scaling.NetVolume;
import org.woodyield.scaling.Overrun;
import org.woodyield.scaling.Scale;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.scaling.StackedWood;
import org.woodyield.scaling.SwedishMeasure;
import org.woodyield.scaling.TreeVolumeTable;

/** Examples of {@code org.woodyield.scaling}: a log 14 in at its small end and 16 ft long, or near it. */
final class ScalingExamples {

    private static final double DIAMETER = 14;
    private static final double LENGTH = 16;

    private ScalingExamples() {}

    static void list(Examples.Builder examples) {
        rules(examples);
        defects(examples);
        examples.example(
                        "scaling.overrun",
                        x -> Overrun.percentWorking(BoardFeet.tally(x[0]), BoardFeet.scale(x[1])),
                        120,
                        100)
                .example(
                        "scaling.lumber-recovery-factor",
                        x -> Overrun.lumberRecoveryFactorWorking(BoardFeet.tally(x[0]), Volume.ofCubicFeet(x[1])),
                        120,
                        20)
                .example(
                        "scaling.cubic-recovery",
                        x -> Overrun.cubicPercentWorking(Volume.ofCubicFeet(x[0]), Volume.ofCubicFeet(x[1])),
                        9,
                        20)
                .example("scaling.cubic-rule", x -> CubicRule.JAPAN.working(x[0], x[1]), 24, 4)
                .example("scaling.firmwood", x -> Firmwood.cubicMetresWorking(x[0], x[1], x[2]), 15, 18, 5)
                .example(
                        "scaling.stacked-wood",
                        x -> StackedWood.solidCubicMetresWorking(x[0], StackedWood.Unit.CORD, x[1]),
                        3,
                        0.6)
                .example(
                        "scaling.green-cord-weight",
                        x -> StackedWood.greenPoundsWorking(x[0], StackedWood.GreenCord.OAK_APPALACHIAN),
                        3)
                .example(
                        "scaling.swedish-measure",
                        x -> SwedishMeasure.SOLID_OVER_BARK.toWorking(x[0], SwedishMeasure.SOLID_UNDER_BARK),
                        10)
                .example(
                        "scaling.tree-volume",
                        x -> TreeVolumeTable.scribnerFormClass78().boardFeetWorking(x[0], x[1]),
                        16,
                        2)
                .example(
                        "scaling.tree-volume-between",
                        x -> TreeVolumeTable.scribnerFormClass78().betweenWorking(x[0], x[1]),
                        16,
                        2.5);
    }

    private static void rules(Examples.Builder examples) {
        examples.example(
                        "scaling.log-rule",
                        x -> LogRules.byId("international-quarter").working(x[0], x[1]),
                        DIAMETER,
                        LENGTH)
                .example(
                        "scaling.kerf-rule",
                        x -> KerfRule.likeInternational(x[0]).working(x[1], x[2]),
                        0.375,
                        DIAMETER,
                        LENGTH)
                .example(
                        "scaling.kerf-constant",
                        x -> KerfRule.likeInternational(x[0]).kerfConstantWorking(KerfRule.likeInternational(x[1])),
                        0.25,
                        0.125)
                .example(
                        "scaling.square-coefficient",
                        x -> KerfRule.likeInternational(x[0]).squareCoefficientWorking(),
                        0.125)
                .example(
                        "scaling.measurement-error",
                        x -> MeasurementError.of(LogRules.byId("doyle"), x[0], x[1])
                                .inchMoreWorking(),
                        DIAMETER,
                        LENGTH)
                .example(
                        "scaling.diameter",
                        x -> ScalingConvention.plain().scalingDiameterInchesWorking(log(LENGTH, x[0], x[0] + 2)),
                        14.25)
                .example(
                        "scaling.scale",
                        x -> Scale.of(log(x[0], x[1], x[1] + 2), LogRules.byId("doyle"), ScalingConvention.plain())
                                .working(),
                        LENGTH,
                        14.25);
    }

    private static void defects(Examples.Builder examples) {
        examples.example("scaling.defect", x -> rot(x[0]).boardFeetWorking(x[1], x[2], x[3]), 4, 114, DIAMETER, LENGTH)
                .example("scaling.net-scale", x -> net(x[0], x[1]).working(), DIAMETER, LENGTH)
                .example("scaling.sound-share", x -> net(x[0], x[1]).soundShareWorking(), DIAMETER, LENGTH)
                .example(
                        "scaling.net-volume",
                        x -> new NetVolume(Volume.ofCubicFeet(x[0]), inches(x[1]), feet(x[2]), List.of(rot(4)))
                                .working(),
                        20,
                        DIAMETER,
                        LENGTH);
    }

    private static NetScale net(double diameterInches, double lengthFeet) {
        return NetScale.of(LogRules.byId("doyle"), diameterInches, lengthFeet, List.of(rot(4)));
    }

    /** Rot of 4 in square in the middle. */
    private static Defect rot(double affectedFeet) {
        return new Defect.Interior(inches(4), inches(4), feet(affectedFeet));
    }
}
