package org.woodyield.checks;

import static org.woodyield.checks.Examples.inches;
import static org.woodyield.checks.Examples.pine;

import org.woodyield.measure.Volume;
import org.woodyield.source.Sourced;
import org.woodyield.wood.AirDrying;
import org.woodyield.wood.DimensionalChange;
import org.woodyield.wood.DimensionalChange.Direction;
import org.woodyield.wood.EquilibriumMoisture;
import org.woodyield.wood.Face;
import org.woodyield.wood.MoistureContent;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.wood.WoodWeight;

/** Examples of {@code org.woodyield.wood}: eastern white pine, dried from green to the moisture of a heated room. */
final class WoodExamples {

    private WoodExamples() {}

    static void list(Examples.Builder examples) {
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
                                DimensionalChange.coefficient(
                                                SpeciesCatalogue.published().find("white ash"), Direction.TANGENTIAL)
                                        .orElseThrow(),
                                x[1],
                                x[2]),
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

    private static Sourced tangential() {
        return pine().tangentialPercent().orElseThrow();
    }
}
