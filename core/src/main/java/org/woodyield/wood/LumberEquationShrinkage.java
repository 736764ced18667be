package org.woodyield.wood;

import java.util.Set;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Shrinkage of softwood lumber from green, whatever its rings: width 6.031 - 0.215 M, thickness 5.062 - 0.181 M percent,
 * M from 8 to 19 % (FPL-RP-489). Measured on lumber as sawn, so it needs no species and no ring angle.
 */
@Calculation("wood.shrinkage-lumber-equation")
final class LumberEquationShrinkage implements ShrinkageModel {

    static final LumberEquationShrinkage INSTANCE = new LumberEquationShrinkage();

    private static final Domain MOISTURE =
            new Domain("final moisture", "%", 8, 19, "use the straight line by species outside this range");

    /** Redwood, and the genera that the trade calls cedar; juniper is sold as red cedar. */
    private static final Set<String> OTHER_GENERA =
            Set.of("Sequoia", "Sequoiadendron", "Thuja", "Chamaecyparis", "Calocedrus", "Juniperus");

    private LumberEquationShrinkage() {}

    @Override
    public String id() {
        return "lumber-equation";
    }

    @Override
    public String label() {
        return "lumber equation of FPL-RP-489";
    }

    @Override
    public Domain moisture() {
        return MOISTURE;
    }

    @Override
    public boolean appliesTo(Species species) {
        String genus = species.scientificName().split(" ", 2)[0];
        return !species.hardwood() && !OTHER_GENERA.contains(genus);
    }

    @Override
    public double percent(Species species, Face face, double ringAngleDegrees, double moisturePercent) {
        require(species, moisturePercent);
        return intercept(face) - slope(face) * moisturePercent;
    }

    @Override
    public Working working(Species species, Face face, double ringAngleDegrees, double moisturePercent) {
        require(species, moisturePercent);
        Source source = Sources.get("fpl-rp-489");
        String name = face == Face.WIDTH ? "width" : "thickness";
        return Working.of("Shrinkage of the " + name + ", " + species.commonName() + ", " + label())
                .given("M", "final moisture", moisturePercent, "%")
                .constant("a", "intercept for " + name, intercept(face), "%", source)
                .constant("b", "slope for " + name, slope(face), "", source)
                .step("S", "shrinkage from green", "a - b * M", "%", source)
                .note(
                        "Percent of the green dimension; lumber of mixed ring angles, any softwood but redwood and cedars.")
                .build();
    }

    private static double intercept(Face face) {
        return face == Face.WIDTH ? 6.031 : 5.062;
    }

    private static double slope(Face face) {
        return face == Face.WIDTH ? 0.215 : 0.181;
    }

    private void require(Species species, double moisturePercent) {
        if (!appliesTo(species)) {
            throw new OutOfDomainException(
                    "species",
                    species.commonName(),
                    "",
                    "softwoods but redwood and cedars",
                    "use the straight line by species");
        }
        MOISTURE.require(moisturePercent);
    }
}
