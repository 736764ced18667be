package org.woodyield.sawing;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The largest rectangle in the section of a log, centred and with sides along its axes. In a circle it is a square; an
 * ellipse is a circle drawn out along one axis, and areas are drawn out alike, so that each side takes the same share of
 * its own axis.
 */
public final class CentredCant {

    private static final Source GEOMETRY = Sources.get("definition");
    private static final Domain AXIS = Domain.of("axis of the section", "in", Double.MIN_VALUE, 400);

    private CentredCant() {}

    /**
     * A side of the cant.
     *
     * @param axisInches the axis of the section that the side lies along, above 0, up to 400 in; the diameter of a circle
     * @return {@code D sqrt(1 / 2)} in inches, not rounded
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.centred-cant")
    public static double sideInches(double axisInches) {
        AXIS.require(axisInches);
        return axisInches * StrictMath.sqrt(1.0 / 2);
    }

    /**
     * How {@link #sideInches} comes about.
     *
     * @param axisInches the axis that the side lies along
     * @return the working, with the same result
     */
    public static Working sideInchesWorking(double axisInches) {
        AXIS.require(axisInches);
        return Working.of("Side of the largest centred cant")
                .given("D", "axis along it", axisInches, "in")
                .step("s", "side", "D * sqrt(1 / 2)", "in", GEOMETRY)
                .build();
    }

    /**
     * The slab beside the cant at its thickest.
     *
     * @param axisInches the axis at right angles to the slab, above 0, up to 400 in
     * @return {@code (D - s) / 2} with the side s along that axis, in inches, not rounded
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.centred-cant-slab")
    public static double slabInches(double axisInches) {
        return (axisInches - sideInches(axisInches)) / 2;
    }

    /**
     * How {@link #slabInches} comes about.
     *
     * @param axisInches the axis at right angles to the slab
     * @return the working, with the same result
     */
    public static Working slabInchesWorking(double axisInches) {
        return Working.of("Slab beside the largest centred cant")
                .include(sideInchesWorking(axisInches))
                .step("b", "slab at its thickest", "(D - s) / 2", "in", GEOMETRY)
                .build();
    }
}
