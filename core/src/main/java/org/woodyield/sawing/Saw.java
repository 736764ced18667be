package org.woodyield.sawing;

import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

/**
 * A saw as far as geometry goes.
 *
 * @param name the user's name for it
 * @param kerf width of the slot it cuts, above zero
 * @param widthOfCut widest cut it can make, over the bark
 * @param settingStep finest step of its scale, above zero
 * @param reference what it takes its setting from
 * @param leastHeight lowest height over the bed (or over the dogs) at which it can cut, zero or more
 * @param sawingVariation standard deviation of thickness, zero or more; it is part of the green target size already and
 *     stands here for the record
 */
public record Saw(
        String name,
        Length kerf,
        Length widthOfCut,
        Length settingStep,
        Reference reference,
        Length leastHeight,
        Length sawingVariation) {

    /** The widest kerf. */
    public static final Length WIDEST_KERF = Length.millimetres(50);

    /** What a saw takes its setting from. */
    public enum Reference {
        /**
         * It rides the face that it cut before. The setting is the green thickness; the kerf lies beyond it. Twist and
         * bow of the first face are copied into every board.
         */
        PREVIOUS_FACE("the face cut before"),
        /**
         * It runs over a fixed bed. Heights fall by thickness and kerf; the kerf lies above the line. An error stays in
         * the board in which it is made unless the log moves.
         */
        BED("a fixed bed");

        private final String words;

        Reference(String words) {
            this.words = words;
        }

        /**
         * The reference in words.
         *
         * @return a short phrase
         */
        public String words() {
            return words;
        }
    }

    /**
     * Checks that this can be a saw.
     *
     * @throws OutOfDomainException if kerf, width of cut or step is not above zero, the kerf is wider than 50 mm, the step
     *     is wider than 25.4 mm, or a length is below zero
     */
    public Saw {
        above("kerf", kerf, WIDEST_KERF);
        above("width of cut", widthOfCut, Length.millimetres(5000));
        above("setting step", settingStep, Length.inches(1));
        notBelow("least height", leastHeight);
        notBelow("sawing variation", sawingVariation);
    }

    private static void above(String parameter, Length value, Length greatest) {
        if (!value.isPositive() || value.compareTo(greatest) > 0) {
            throw new OutOfDomainException(
                    parameter, value.toString(), "", "above 0, up to " + greatest.inMillimetres(0), "check the unit");
        }
    }

    private static void notBelow(String parameter, Length value) {
        if (value.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException(parameter, value.toString(), "", "0 or more", "");
        }
    }

    /**
     * The least size not below a wanted one that the saw leaves. Riding the previous face it is a whole number of setting
     * steps; over a bed the size and the kerf together are, since the lines stand on the step.
     *
     * @param wanted a green size
     * @return the size as sawn
     */
    public Length settable(Length wanted) {
        return reference == Reference.PREVIOUS_FACE
                ? wanted.roundedTo(settingStep, Rounding.UP)
                : wanted.plus(kerf).roundedTo(settingStep, Rounding.UP).minus(kerf);
    }

    /**
     * The same saw with another kerf.
     *
     * @param other the kerf
     * @return a new saw
     */
    public Saw withKerf(Length other) {
        return new Saw(name, other, widthOfCut, settingStep, reference, leastHeight, sawingVariation);
    }
}
