package org.woodyield.log;

import org.woodyield.measure.Domain;

/**
 * A diameter measured on a stem.
 *
 * @param heightFeet above ground
 * @param diameterInches inside bark
 */
public record StemPoint(double heightFeet, double diameterInches) {

    private static final Domain HEIGHT = Domain.of("height on the stem", "ft", 0, 400);
    private static final Domain DIAMETER = Domain.of("diameter on the stem", "in", 0, 400);

    /**
     * Refuses what cannot be measured.
     *
     * @throws org.woodyield.measure.OutOfDomainException if a value is out of reason or NaN
     */
    public StemPoint {
        HEIGHT.require(heightFeet);
        DIAMETER.require(diameterInches);
    }
}
