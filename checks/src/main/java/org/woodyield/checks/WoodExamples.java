package org.woodyield.checks;

import static org.woodyield.checks.Examples.inches;
import static org.woodyield.checks.Examples.pine;

import java.util.Collections;
import org.woodyield.measure.Volume;
import org.woodyield.source.Sourced;
import org.woodyield.wood.AirDrying;
import org.woodyield.wood.Cupping;
import org.woodyield.wood.DimensionalChange;
import org.woodyield.wood.DimensionalChange.Direction;
import org.woodyield.wood.EquilibriumMoisture;
import org.woodyield.wood.Face;
import org.woodyield.wood.LumberStack;
import org.woodyield.wood.MoistureContent;
import org.woodyield.wood.OutdoorMoisture;
import org.woodyield.wood.RedOakKiln;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.SizeChange;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.wood.WoodWeight;

/** Examples of {@code org.woodyield.wood}: eastern white pine, dried from green to the moisture of a heated room. */
final class WoodExamples {

    private WoodExamples() {}

    static void list(Examples.Builder examples) {
        drying(examples);
        examples.example("wood.moisture-from-masses", x -> MoistureContent.fromMassesWorking(x[0], x[1], "g"), 214, 176)
                .example("wood.moisture-dry-basis", x -> MoistureContent.dryBasisWorking(x[0]), 20)
                .example("wood.moisture-wet-basis", x -> MoistureContent.wetBasisWorking(x[0]), 25)
                .example(
                        "wood.equilibrium-moisture",
                        x -> EquilibriumMoisture.fahrenheit().working(x[0], x[1]),
                        70,
                        50)
                .example(
                        "wood.shrinkage-straight-line",
                        x -> ShrinkageModel.straightLine().working(pine(), Face.WIDTH, x[0], x[1]),
                        30,
                        12)
                .example(
                        "wood.shrinkage-lumber-equation",
                        x -> ShrinkageModel.lumberEquation().working(pine(), Face.WIDTH, x[0], x[1]),
                        0,
                        12)
                .example(
                        "wood.coefficient-from-shrinkage",
                        x -> DimensionalChange.coefficientFromShrinkageWorking(tangential()))
                .example(
                        "wood.dimensional-change",
                        x -> DimensionalChange.changeWorking(
                                x[0],
                                "in",
                                DimensionalChange.coefficient(whiteAsh(), Direction.TANGENTIAL)
                                        .orElseThrow(),
                                x[1],
                                x[2]),
                        8,
                        14,
                        8)
                .example(
                        "wood.size-change",
                        x -> SizeChange.sizeWorking(
                                ShrinkageModel.straightLine(), pine(), Face.WIDTH, x[0], x[1], "in", x[2], x[3]),
                        0,
                        8,
                        14,
                        8)
                .example(
                        "wood.size-by-coefficient",
                        x -> SizeChange.byCoefficientWorking(whiteAsh(), Face.WIDTH, x[0], x[1], "in", x[2], x[3]),
                        30,
                        8,
                        14,
                        8)
                .example(
                        "wood.air-drying",
                        x -> AirDrying.daysWorking(pine(), inches(x[0]), AirDrying.ThicknessExponent.DOUBLE_THICKNESS),
                        2)
                .example("wood.weight", x -> WoodWeight.kilogramsWorking(pine(), new Volume(x[0]), x[1]), 0.5, 15)
                .example("wood.green-weight", x -> WoodWeight.greenKilogramsWorking(pine(), new Volume(x[0])), 0.5)
                .example(
                        "wood.water-lost",
                        x -> WoodWeight.waterLostWorking(pine(), new Volume(x[0]), x[1], x[2]),
                        0.5,
                        80,
                        15)
                .example(
                        "wood.dry-to-green-factor",
                        x -> WoodWeight.dryToGreenWorking(x[0], x[1], x[2], x[3], x[4]),
                        0.4,
                        90,
                        0.5,
                        80,
                        15);
    }

    private static void drying(Examples.Builder examples) {
        examples.example("wood.saturation-pressure", x -> RedOakKiln.saturationPressureWorking(x[0]), 130)
                .example(
                        "wood.red-oak-time-constant",
                        x -> RedOakKiln.timeConstantWorking(inches(x[0]), x[1]),
                        1.25,
                        130)
                .example(
                        "wood.red-oak-kiln-days",
                        x -> RedOakKiln.daysWorking(inches(x[0]), x[1], x[2], x[3], x[4]),
                        1.25,
                        130,
                        5,
                        25,
                        8)
                .example("wood.stack-height", x -> stack((int) x[0]).heightWorking(), 100)
                .example(
                        "wood.year-moisture",
                        x -> OutdoorMoisture.meanWorking(
                                EquilibriumMoisture.fahrenheit(),
                                Collections.nCopies(12, new OutdoorMoisture.Air(x[0], x[1]))),
                        55,
                        70)
                .example(
                        "wood.cup-depth",
                        x -> Cupping.of(pine(), x[0], inches(8), inches(1), x[1], inches(x[2]))
                                .depthWorking(Cupping.Side.BARK),
                        12,
                        0,
                        5);
    }

    private static LumberStack stack(int boards) {
        return new LumberStack(
                boards, inches(1), inches(6), inches(96), inches(48), inches(1), inches(0.75), inches(16));
    }

    private static Species whiteAsh() {
        return SpeciesCatalogue.published().find("white ash");
    }

    private static Sourced tangential() {
        return pine().tangentialPercent().orElseThrow();
    }
}
