package org.woodyield.wood;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.working.Working;

/**
 * How much a piece shrinks from green to a moisture content. Models differ in what they rest on and in where they hold, so
 * every result names its model.
 */
public interface ShrinkageModel {

    /**
     * The key of the model.
     *
     * @return lower case with hyphens
     */
    String id();

    /**
     * The model in words, as shown beside its results.
     *
     * @return a short phrase
     */
    String label();

    /**
     * The moisture contents for which the model holds, in percent of oven-dry mass.
     *
     * @return the range
     */
    Domain moisture();

    /**
     * Whether the model holds for a species and has the values that it needs.
     *
     * @param species the species
     * @return true if it can be asked
     */
    boolean appliesTo(Species species);

    /**
     * The shrinkage from green, in percent of the green dimension.
     *
     * @param species the species
     * @param face the dimension
     * @param ringAngleDegrees angle between the annual rings and the wide face: 0 flat-sawn, 90 quarter-sawn; a model for
     *     lumber of any cut does not use it
     * @param moisturePercent the final moisture, oven-dry basis
     * @return the percentage; never below zero
     * @throws OutOfDomainException if the model does not apply to the species, or an argument is outside its range
     */
    double percent(Species species, Face face, double ringAngleDegrees, double moisturePercent);

    /**
     * How {@link #percent} came about.
     *
     * @param species the species
     * @param face the dimension
     * @param ringAngleDegrees angle between the annual rings and the wide face
     * @param moisturePercent the final moisture, oven-dry basis
     * @return the working; its value equals the percentage bit for bit
     * @throws OutOfDomainException as {@link #percent}
     */
    Working working(Species species, Face face, double ringAngleDegrees, double moisturePercent);

    /**
     * The straight line from 30 % moisture to oven-dry, by the species' own radial and tangential shrinkage and the angle
     * of the rings.
     *
     * @return the model
     */
    static ShrinkageModel straightLine() {
        return StraightLineShrinkage.INSTANCE;
    }

    /**
     * The lumber equations of FPL-RP-489, one for widths and one for thicknesses, for softwood lumber but redwood and the
     * cedars.
     *
     * @return the model
     */
    static ShrinkageModel lumberEquation() {
        return LumberEquationShrinkage.INSTANCE;
    }
}
