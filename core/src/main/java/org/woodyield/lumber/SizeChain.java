package org.woodyield.lumber;

import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.wood.Face;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.Species;
import org.woodyield.working.Working;

/**
 * From a finished section at a moisture to the section to saw green, and back: shrinkage of the species in the direction of
 * each face, planing, and a margin for the scatter of the saw, in one working.
 *
 * @param species the wood
 * @param finishedThickness thickness planed, at the final moisture
 * @param finishedWidth width planed, at the final moisture
 * @param moisturePercent the final moisture, oven-dry basis, where the model holds
 * @param ringAngleDegrees angle between the annual rings and the wide face: 0 flat-sawn, 90 quarter-sawn
 * @param model the model of shrinkage
 * @param planing taken off both faces together, 0 or more
 * @param z standard deviations of margin, as from {@link UndersizeZ}
 * @param deviation standard deviation of sawn sizes, 0 or more
 */
public record SizeChain(
        Species species,
        Length finishedThickness,
        Length finishedWidth,
        double moisturePercent,
        double ringAngleDegrees,
        ShrinkageModel model,
        Length planing,
        double z,
        Length deviation) {

    /**
     * Asks the model once, so that what it refuses is refused here.
     *
     * @throws OutOfDomainException if the model does not apply, or a value is outside its limits
     */
    public SizeChain {
        for (Face face : Face.values()) {
            GreenTargetSize.planedDry(
                    face == Face.WIDTH ? finishedWidth : finishedThickness,
                    planing,
                    model.percent(species, face, ringAngleDegrees, moisturePercent),
                    z,
                    deviation);
        }
    }

    /**
     * The chain of one dimension.
     *
     * @param face thickness or width
     * @return its green target size
     */
    public GreenTargetSize green(Face face) {
        return GreenTargetSize.planedDry(
                face == Face.WIDTH ? finishedWidth : finishedThickness,
                planing,
                model.percent(species, face, ringAngleDegrees, moisturePercent),
                z,
                deviation);
    }

    /**
     * How the saw's setting for a dimension came about, from the shrinkage of the species to the step of the scale.
     *
     * @param face thickness or width
     * @param step the saw's setting step, above 0
     * @return the working; its value is {@link GreenTargetSize#setting} in inches bit for bit
     * @throws OutOfDomainException if the step is not above zero
     */
    public Working settingWorking(Face face, Length step) {
        return green(face)
                .settingWorking(
                        step, title(face, "green, to finish " + finished(face) + " planed at "), shrinkage(face));
    }

    /**
     * How it came about what a board of a green size measures dry and planed.
     *
     * @param face thickness or width
     * @param greenSize the size sawn
     * @return the working; its value is {@link GreenTargetSize#planedInches} bit for bit
     */
    public Working planedWorking(Face face, Length greenSize) {
        return green(face)
                .planedWorking(
                        greenSize,
                        title(face, "dry and planed, sawn " + plain(greenSize.toInches()) + " in, at "),
                        shrinkage(face));
    }

    private Optional<Working> shrinkage(Face face) {
        return Optional.of(model.working(species, face, ringAngleDegrees, moisturePercent));
    }

    private String title(Face face, String what) {
        return species.commonName() + ", " + cut() + ", " + (face == Face.WIDTH ? "width " : "thickness ") + what
                + plain(moisturePercent) + " % moisture";
    }

    /**
     * How the rings lie, in the words of the trade.
     *
     * @return flat-sawn, quarter-sawn or the angle
     */
    public String cut() {
        if (ringAngleDegrees == 0) {
            return "flat-sawn";
        }
        return ringAngleDegrees == 90 ? "quarter-sawn" : "rings at " + plain(ringAngleDegrees) + " degrees";
    }

    private Length finished(Face face) {
        return face == Face.WIDTH ? finishedWidth : finishedThickness;
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
