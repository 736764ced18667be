package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * Where the pith lies in the section, the same along the whole log.
 *
 * @param offset from the middle of the section, zero or more
 * @param directionDegrees from the long axis of the section, seen from the small end, counter-clockwise
 */
public record Pith(Length offset, double directionDegrees) {

    private static final Domain DIRECTION = Domain.of("direction of the pith", "degrees", -360, 360);

    /** In the middle of the section. */
    public static final Pith CENTRED = new Pith(Length.ZERO, 0);

    /**
     * Refuses what is no place.
     *
     * @throws OutOfDomainException if the offset is below zero or the direction not from -360 to 360 degrees
     */
    public Pith {
        DIRECTION.require(directionDegrees);
        if (offset.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("pith offset", offset.toString(), "", "0 or more", "turn the direction");
        }
    }

    double xMetres() {
        return offset.toMetres() * StrictMath.cos(StrictMath.toRadians(directionDegrees));
    }

    double yMetres() {
        return offset.toMetres() * StrictMath.sin(StrictMath.toRadians(directionDegrees));
    }
}
