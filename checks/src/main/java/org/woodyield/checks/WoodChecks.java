package org.woodyield.checks;

import java.util.Optional;
import org.woodyield.measure.Volume;
import org.woodyield.source.Sourced;
import org.woodyield.wood.DimensionalChange;
import org.woodyield.wood.EquilibriumMoisture;
import org.woodyield.wood.Face;
import org.woodyield.wood.MoistureContent;
import org.woodyield.wood.RedOakKiln;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.SizeChange;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.wood.WoodWeight;

/** What the check tables call in {@code org.woodyield.wood}. */
final class WoodChecks {

    private WoodChecks() {}

    static void list(Catalogue.Builder catalogue) {
        catalogue
                .number("wood.equilibrium-moisture", WoodChecks::equilibriumMoisture)
                .number(
                        "wood.coefficient-from-shrinkage",
                        given -> DimensionalChange.coefficientFromShrinkage(given.number("shrinkage_percent")))
                .number(
                        "wood.dimensional-change",
                        given -> DimensionalChange.change(
                                given.number("size_in"),
                                given.number("coefficient"),
                                given.number("from_percent"),
                                given.number("to_percent")))
                .number(
                        "wood.dry-to-green-factor",
                        given -> WoodWeight.dryToGreenFactor(
                                given.number("wood_gravity"),
                                given.number("wood_moisture_percent"),
                                given.number("bark_gravity"),
                                given.number("bark_moisture_percent"),
                                given.number("bark_percent")))
                .number(
                        "wood.tangential-shrinkage",
                        given -> SpeciesCatalogue.published()
                                .find(given.text("species"))
                                .tangentialPercent()
                                .orElseThrow()
                                .value())
                .number(
                        "wood.shrinkage-lumber-equation",
                        given -> lumberEquation(
                                given.text("face").equals("width") ? Face.WIDTH : Face.THICKNESS,
                                given.number("moisture_percent")))
                .number("wood.size-change", WoodChecks::sizeChange)
                .number(
                        "wood.size-by-coefficient",
                        given -> SizeChange.byCoefficient(
                                species(given),
                                Face.WIDTH,
                                0,
                                given.number("size_in"),
                                given.number("from_percent"),
                                given.number("to_percent")))
                .number("wood.water-lost", WoodChecks::weightLostPercent)
                .number(
                        "wood.saturation-pressure",
                        given -> RedOakKiln.saturationPressure(given.number("temperature_F")))
                .number("wood.green-gravity", given -> value(species(given).specificGravityGreen()))
                .number("wood.gravity-at-12", given -> value(species(given).specificGravityAt12()))
                .number(
                        "wood.moisture-from-masses",
                        given -> MoistureContent.fromMasses(given.number("wet"), given.number("dry")))
                .number(
                        "wood.moisture-wet-basis",
                        given -> MoistureContent.wetBasis(given.number("dry_basis_percent")));
    }

    private static double equilibriumMoisture(Given given) {
        double fahrenheit = given.number("temperature_F");
        double humidity = given.number("humidity_percent");
        return given.text("form").equals("celsius")
                ? EquilibriumMoisture.celsius().percent((fahrenheit - 32) / 1.8, humidity)
                : EquilibriumMoisture.fahrenheit().percent(fahrenheit, humidity);
    }

    /** Of the green weight, from the species' own green moisture. */
    private static double weightLostPercent(Given given) {
        Species species = species(given);
        Volume volume = new Volume(1);
        double from = value(species.greenMoisturePercent());
        return 100
                * WoodWeight.waterLostKilograms(species, volume, from, given.number("to_percent"))
                / WoodWeight.greenKilograms(species, volume);
    }

    private static double sizeChange(Given given) {
        return SizeChange.size(
                ShrinkageModel.lumberEquation(),
                softwood(),
                Face.WIDTH,
                0,
                given.number("size_in"),
                given.number("from_percent"),
                given.number("to_percent"));
    }

    /** Any softwood but redwood and the cedars; the lumber equation treats them alike. */
    private static Species softwood() {
        return SpeciesCatalogue.published().find("douglas-fir");
    }

    private static Species species(Given given) {
        return SpeciesCatalogue.published().find(given.text("species"));
    }

    private static double value(Optional<Sourced> sourced) {
        return sourced.orElseThrow().value();
    }

    private static double lumberEquation(Face face, double moisturePercent) {
        return ShrinkageModel.lumberEquation().percent(softwood(), face, 0, moisturePercent);
    }
}
