package org.woodyield.wood;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Shrinkage on a straight line: none at 30 % moisture and above, all at 0 %. Between flat-sawn and quarter-sawn the radial
 * and tangential shrinkage are turned with the rings, as strains are.
 */
@Calculation("wood.shrinkage-straight-line")
final class StraightLineShrinkage implements ShrinkageModel {

    static final StraightLineShrinkage INSTANCE = new StraightLineShrinkage();

    private static final double FIBRE_SATURATION = 30;
    private static final Domain MOISTURE =
            new Domain("final moisture", "%", 0, 300, "give the moisture on the oven-dry basis, water over dry wood");
    private static final Domain ANGLE =
            new Domain("ring angle", "degrees", 0, 90, "give 0 for flat-sawn, 90 for quarter-sawn");

    private StraightLineShrinkage() {}

    @Override
    public String id() {
        return "straight-line";
    }

    @Override
    public String label() {
        return "straight line from 30 % by species and ring angle";
    }

    @Override
    public Domain moisture() {
        return MOISTURE;
    }

    @Override
    public boolean appliesTo(Species species) {
        return species.radialPercent().isPresent()
                && species.tangentialPercent().isPresent();
    }

    @Override
    public double percent(Species species, Face face, double ringAngleDegrees, double moisturePercent) {
        require(species, ringAngleDegrees, moisturePercent);
        double radial = species.radialPercent().orElseThrow().value();
        double tangential = species.tangentialPercent().orElseThrow().value();
        double angle = ringAngleDegrees * Math.PI / 180;
        double along = StrictMath.cos(angle) * StrictMath.cos(angle);
        double across = StrictMath.sin(angle) * StrictMath.sin(angle);
        double full = face == Face.WIDTH ? tangential * along + radial * across : tangential * across + radial * along;
        return full * Math.max(FIBRE_SATURATION - moisturePercent, 0) / FIBRE_SATURATION;
    }

    @Override
    public Working working(Species species, Face face, double ringAngleDegrees, double moisturePercent) {
        require(species, ringAngleDegrees, moisturePercent);
        Sourced radial = species.radialPercent().orElseThrow();
        Sourced tangential = species.tangentialPercent().orElseThrow();
        boolean width = face == Face.WIDTH;
        Working.Builder working = Working.of("Shrinkage of the " + (width ? "width" : "thickness") + ", "
                        + species.commonName() + ", " + label())
                .given("M", "final moisture", moisturePercent, "%")
                .given("angle", "angle between rings and wide face", ringAngleDegrees, "degrees")
                .lookup(
                        "S_R",
                        "radial shrinkage to oven-dry",
                        species.commonName(),
                        radial.value(),
                        "%",
                        radial.source())
                .lookup(
                        "S_T",
                        "tangential shrinkage to oven-dry",
                        species.commonName(),
                        tangential.value(),
                        "%",
                        tangential.source())
                .constant("pi", "pi", Math.PI, "", Sources.get("definition"))
                .constant(
                        "M_f",
                        "moisture at which shrinkage begins",
                        FIBRE_SATURATION,
                        "%",
                        Sources.get("shrinkage-line"))
                .step("t", "the angle in radians", "angle * pi / 180", "", Sources.get("definition"))
                .step("c", "share along the face", "cos(t) * cos(t)", "", Sources.get("ring-angle"))
                .step("s", "share across the face", "sin(t) * sin(t)", "", Sources.get("ring-angle"))
                .step(
                        "S_0",
                        "shrinkage to oven-dry in this direction",
                        width ? "S_T * c + S_R * s" : "S_T * s + S_R * c",
                        "%",
                        Sources.get("ring-angle"))
                .step("S", "shrinkage from green", "S_0 * max(M_f - M, 0) / M_f", "%", Sources.get("shrinkage-line"));
        return working.note("Percent of the green dimension. Reaction wood and wood near the pith move otherwise.")
                .build();
    }

    private void require(Species species, double ringAngleDegrees, double moisturePercent) {
        if (!appliesTo(species)) {
            throw new OutOfDomainException(
                    "species",
                    species.commonName(),
                    "",
                    "species with radial and tangential shrinkage in Table 4-3",
                    "choose a species that shrinks alike, or give the sizes to saw yourself");
        }
        ANGLE.require(ringAngleDegrees);
        MOISTURE.require(moisturePercent);
    }
}
