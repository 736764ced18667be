package org.woodyield.scaling;

import org.woodyield.measure.Domain;
import org.woodyield.measure.Volume;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Wood in stacks: the space of a stack, the solid wood in it, and what a green cord weighs. How much of a stack is wood
 * depends on diameter, length, straightness and bark, so the share is the user's; one published figure is {@link
 * #MIDSOUTH_PINE_SHARE}.
 */
public final class StackedWood {

    /** Solid pine in a cord of the Midsouth, 1950: 75 of 128 cubic feet; source {@code sref-weight-volume}. */
    public static final double MIDSOUTH_PINE_SHARE = 75.0 / 128;

    private static final Domain COUNT = Domain.notNegative("number of stacks", "");
    private static final Domain SHARE = new Domain(
            "share of solid wood",
            "",
            0.2,
            1,
            "give the solid wood in a unit of space; 75 of 128 cubic feet were found in cords of pine");

    /** A unit of stacked wood, bark and air included. */
    public enum Unit {
        /** 4 by 4 by 8 ft. */
        CORD("cord", 4 * 4 * 8, "ft3"),
        /** 4 by 4 by 1 ft. */
        CORD_FOOT("cord foot", 4 * 4, "ft3"),
        /** 3 by 3 by 12 ft, of the United Kingdom. */
        STACK("stack (UK)", 3 * 3 * 12, "ft3"),
        /** One cubic metre. */
        STERE("stere", 1, "m3");

        private final String label;
        private final double size;
        private final String unit;

        Unit(String label, double size, String unit) {
            this.label = label;
            this.size = size;
            this.unit = unit;
        }

        /**
         * The name as shown.
         *
         * @return a short phrase
         */
        public String label() {
            return label;
        }

        /**
         * The space of one unit.
         *
         * @return wood, bark and air
         */
        public Volume space() {
            return new Volume(size * cubicMetresEach());
        }

        private double cubicMetresEach() {
            return unit.equals("m3") ? 1 : Volume.CUBIC_METRES_PER_CUBIC_FOOT;
        }
    }

    /** Wood of which the weight of a green cord of 128 cubic feet is known. */
    public enum GreenCord {
        /** Loblolly and shortleaf pine, Texas to west Louisiana. */
        PINE_WEST("loblolly and shortleaf pine, Texas to west Louisiana", 4700, "sref-weight-volume"),
        /** Loblolly and shortleaf pine, central Louisiana through the Southeast. */
        PINE_EAST("loblolly and shortleaf pine, central Louisiana to the Southeast", 5200, "sref-weight-volume"),
        /** Longleaf and slash pine. */
        PINE_LONGLEAF_SLASH("longleaf and slash pine", 5550, "sref-weight-volume"),
        /** Oak of the Appalachians. */
        OAK_APPALACHIAN("Appalachian oak", 5760, "handbook-605-quoted");

        private final String label;
        private final double pounds;
        private final String source;

        GreenCord(String label, double pounds, String source) {
            this.label = label;
            this.pounds = pounds;
            this.source = source;
        }

        /**
         * The wood and its region.
         *
         * @return a short phrase
         */
        public String label() {
            return label;
        }

        /**
         * What the weight rests on.
         *
         * @return the source
         */
        public Source source() {
            return Sources.get(source);
        }
    }

    private StackedWood() {}

    /**
     * The solid wood in stacks: count times space times share.
     *
     * @param count how many units, zero or more
     * @param unit the unit
     * @param solidShare solid wood in a unit of space, 0.2 to 1
     * @return in cubic metres
     * @throws org.woodyield.measure.OutOfDomainException if the count is below zero, the share out of reason, or for NaN
     */
    @Calculation("scaling.stacked-wood")
    public static double solidCubicMetres(double count, Unit unit, double solidShare) {
        return COUNT.require(count) * unit.size * unit.cubicMetresEach() * SHARE.require(solidShare);
    }

    /**
     * The working of {@link #solidCubicMetres}.
     *
     * @param count how many units, zero or more
     * @param unit the unit
     * @param solidShare solid wood in a unit of space, 0.2 to 1
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException if the count is below zero, the share out of reason, or for NaN
     */
    public static Working solidCubicMetresWorking(double count, Unit unit, double solidShare) {
        return Working.of("Solid wood in stacks")
                .given("n", "number of units, " + unit.label, COUNT.require(count), "")
                .constant("u", "space of one " + unit.label, unit.size, unit.unit, Sources.get("definition"))
                .constant(
                        "k",
                        "cubic metres in one " + unit.unit,
                        unit.cubicMetresEach(),
                        "m3",
                        Sources.get("definition"))
                .given("s", "share of solid wood", SHARE.require(solidShare), "")
                .step("V", "solid wood", "n * u * k * s", "m3", Sources.get("definition"))
                .build();
    }

    /**
     * The weight of green cords.
     *
     * @param cords zero or more
     * @param wood which wood
     * @return in pounds
     * @throws org.woodyield.measure.OutOfDomainException if the count is below zero, or for NaN
     */
    @Calculation("scaling.green-cord-weight")
    public static double greenPounds(double cords, GreenCord wood) {
        return COUNT.require(cords) * wood.pounds;
    }

    /**
     * The working of {@link #greenPounds}.
     *
     * @param cords zero or more
     * @param wood which wood
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException if the count is below zero, or for NaN
     */
    public static Working greenPoundsWorking(double cords, GreenCord wood) {
        return Working.of("Weight of green cords")
                .given("n", "cords", COUNT.require(cords), "")
                .constant("w", "weight of a cord, " + wood.label, wood.pounds, "lb", wood.source())
                .step("W", "weight", "n * w", "lb", Sources.get("definition"))
                .note("Weight varies with season, storage and size of the wood; mind the limit of trailer and axle.")
                .build();
    }
}
