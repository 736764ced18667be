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
        double full = RingAngle.turned(face, radial, tangential, ringAngleDegrees);
        return full * Math.max(FIBRE_SATURATION - moisturePercent, 0) / FIBRE_SATURATION;
    }

    @Override
    public Working working(Species species, Face face, double ringAngleDegrees, double moisturePercent) {
        require(species, ringAngleDegrees, moisturePercent);
        Sourced radial = species.radialPercent().orElseThrow();
        Sourced tangential = species.tangentialPercent().orElseThrow();
        Working.Builder working = Working.of("Shrinkage of the " + (face == Face.WIDTH ? "width" : "thickness") + ", "
                        + species.commonName() + ", " + label())
                .given("M", "final moisture", moisturePercent, "%");
        RingAngle.given(working, ringAngleDegrees)
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
                        Sources.get("shrinkage-line"));
        RingAngle.shares(working)
                .step(
                        "S_0",
                        "shrinkage to oven-dry in this direction",
                        RingAngle.formula(face, "S_R", "S_T"),
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
                    "species with radial and tangential shrinkage in the tables",
                    "choose a species that shrinks alike, or give the sizes to saw yourself");
        }
        RingAngle.DEGREES.require(ringAngleDegrees);
        MOISTURE.require(moisturePercent);
    }
}
