package org.woodyield.measure;

/**
 * A solid volume; board feet of any kind are a {@link BoardFeet}.
 *
 * @param cubicMetres zero or more, finite
 */
public record Volume(double cubicMetres) implements Comparable<Volume> {

    /** One cubic foot in cubic metres: 0.3048 cubed, exactly 0.028316846592. */
    public static final double CUBIC_METRES_PER_CUBIC_FOOT = 0.028316846592;

    /** One cubic inch in cubic metres: 0.0254 cubed, exactly 0.000016387064. */
    public static final double CUBIC_METRES_PER_CUBIC_INCH = 0.000016387064;

    // Before ZERO, whose constructor reads it.
    private static final Domain DOMAIN = Domain.notNegative("volume", "m3");

    /** No volume. */
    public static final Volume ZERO = new Volume(0);

    /**
     * Refuses what is not a volume.
     *
     * @throws OutOfDomainException if negative or not finite
     */
    public Volume {
        DOMAIN.require(cubicMetres);
    }

    /**
     * From cubic feet.
     *
     * @param cubicFeet zero or more
     * @return the volume
     * @throws OutOfDomainException if negative or not finite
     */
    public static Volume ofCubicFeet(double cubicFeet) {
        return new Volume(cubicFeet * CUBIC_METRES_PER_CUBIC_FOOT);
    }

    /**
     * From cubic inches.
     *
     * @param cubicInches zero or more
     * @return the volume
     * @throws OutOfDomainException if negative or not finite
     */
    public static Volume ofCubicInches(double cubicInches) {
        return new Volume(cubicInches * CUBIC_METRES_PER_CUBIC_INCH);
    }

    /**
     * A rectangular piece.
     *
     * @param thickness zero or more
     * @param width zero or more
     * @param length zero or more
     * @return the volume
     */
    public static Volume ofPiece(Length thickness, Length width, Length length) {
        return new Volume(thickness.toMetres() * width.toMetres() * length.toMetres());
    }

    /**
     * In cubic feet.
     *
     * @return the volume in cubic feet
     */
    public double cubicFeet() {
        return cubicMetres / CUBIC_METRES_PER_CUBIC_FOOT;
    }

    /**
     * The sum.
     *
     * @param other a volume
     * @return this and the other
     */
    public Volume plus(Volume other) {
        return new Volume(cubicMetres + other.cubicMetres);
    }

    /**
     * A multiple.
     *
     * @param factor zero or more
     * @return so many times this
     */
    public Volume times(double factor) {
        return new Volume(cubicMetres * factor);
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }
}
