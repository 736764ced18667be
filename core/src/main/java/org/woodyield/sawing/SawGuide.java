package org.woodyield.sawing;

import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * How true a saw is led, as far as its user has measured it.
 *
 * @param measured how far the guide of the first cut is from straight and true, lying as it is used
 * @param stiffness how far the guide dips under the saw
 * @param carriageBase distance of the two ends of the saw's carriage on the guide, above zero
 * @param wander how far a pass over a bed leaves its plane, from its highest to its lowest place, zero or more
 * @param allowedShare share of the planing allowance that a fault of the guide or of a pass may take, above 0, up to 1
 */
public record SawGuide(
        Optional<FlatnessBudget.Guide> measured,
        Optional<Stiffness> stiffness,
        Optional<Length> carriageBase,
        Optional<Length> wander,
        double allowedShare) {

    /** The share that is allowed where nobody chose another. */
    public static final double USUAL_SHARE = 0.25;

    private static final Domain SHARE = Domain.of("share of the planing allowance", "", Double.MIN_VALUE, 1);

    /**
     * Checks the lengths and the share.
     *
     * @throws OutOfDomainException if the base is not above zero, the wander is below zero or the share is outside its limits
     */
    public SawGuide {
        SHARE.require(allowedShare);
        carriageBase.ifPresent(base -> {
            if (!base.isPositive()) {
                throw new OutOfDomainException("base of the carriage", base.toString(), "", "above 0", "");
            }
        });
        wander.ifPresent(most -> {
            if (most.compareTo(Length.ZERO) < 0) {
                throw new OutOfDomainException("wander of a pass", most.toString(), "", "0 or more", "");
            }
        });
    }

    /**
     * A guide of which nothing is known.
     *
     * @return it, with the usual share
     */
    public static SawGuide unknown() {
        return new SawGuide(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), USUAL_SHARE);
    }

    /**
     * How far the guide dips where it lies on two supports and the saw stands midway.
     *
     * @param span distance of the two supports, above zero
     * @param dip what was measured midway, above zero
     */
    public record Stiffness(Length span, Length dip) {

        /**
         * Checks the two.
         *
         * @throws OutOfDomainException if one of them is not above zero
         */
        public Stiffness {
            if (!span.isPositive()) {
                throw new OutOfDomainException("tested span", span.toString(), "", "above 0", "");
            }
            if (!dip.isPositive()) {
                throw new OutOfDomainException("dip at the tested span", dip.toString(), "", "above 0", "");
            }
        }
    }
}
