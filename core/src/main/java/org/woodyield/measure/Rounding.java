package org.woodyield.measure;

import java.math.BigInteger;

/**
 * A named rounding; the name says what an exact half does. "Up" is always toward the larger number, also below zero.
 *
 * <p>Doubles are compared on their exact fraction, so 0.49999999999999994 never becomes 1.
 */
public enum Rounding {
    /** To the nearest step, an exact half to the larger. */
    HALF_UP("nearest, half up"),
    /** To the nearest step, an exact half to the smaller. */
    HALF_DOWN("nearest, half down"),
    /** To the nearest step, an exact half to the even step. */
    HALF_EVEN("nearest, half to even"),
    /** The fraction is dropped: to the step below. */
    DOWN("down"),
    /** To the step above. */
    UP("up");

    private final String label;

    Rounding(String label) {
        this.label = label;
    }

    /**
     * The words in which this rounding is shown.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * Rounds to a whole number.
     *
     * @param value any finite value
     * @return the whole number, never a negative zero
     */
    public double toWhole(double value) {
        double below = Math.floor(value);
        if (below == value) {
            return value + 0.0;
        }
        // Not whole, so below 2^52 in size, where the middle between two whole numbers is a double. The fraction
        // value - below is not always one: -0.49999999999999994 would pass for an exact half.
        double middle = below + 0.5;
        double whole = switch (this) {
            case DOWN -> below;
            case UP -> below + 1;
            case HALF_UP -> value >= middle ? below + 1 : below;
            case HALF_DOWN -> value > middle ? below + 1 : below;
            case HALF_EVEN -> Math.rint(value);
        };
        return whole + 0.0;
    }

    /**
     * Rounds to a multiple of a step.
     *
     * @param value any finite value
     * @param step the step, above zero
     * @return {@code toWhole(value / step) * step}
     */
    public double toStep(double value, double step) {
        return toWhole(value / step) * step;
    }

    /**
     * Rounds an exact quotient.
     *
     * @param numerator any number
     * @param denominator above zero
     * @return the whole quotient
     * @throws IllegalArgumentException if the denominator is not above zero
     */
    public long quotient(long numerator, long denominator) {
        if (denominator <= 0) {
            throw new IllegalArgumentException("denominator is " + denominator + "; allowed: above 0");
        }
        long below = Math.floorDiv(numerator, denominator);
        long rest = Math.floorMod(numerator, denominator);
        long other = denominator - rest;
        boolean up = switch (this) {
            case DOWN -> false;
            case UP -> rest > 0;
            case HALF_UP -> rest >= other;
            case HALF_DOWN -> rest > other;
            case HALF_EVEN -> rest > other || (rest == other && (below & 1) == 1);
        };
        return up ? below + 1 : below;
    }

    /**
     * Rounds an exact quotient of any size.
     *
     * @param numerator any number
     * @param denominator above zero
     * @return the whole quotient
     * @throws IllegalArgumentException if the denominator is not above zero
     */
    public BigInteger quotient(BigInteger numerator, BigInteger denominator) {
        if (denominator.signum() <= 0) {
            throw new IllegalArgumentException("denominator is " + denominator + "; allowed: above 0");
        }
        BigInteger rest = numerator.mod(denominator);
        BigInteger below = numerator.subtract(rest).divide(denominator);
        int half = rest.shiftLeft(1).compareTo(denominator);
        boolean up = switch (this) {
            case DOWN -> false;
            case UP -> rest.signum() > 0;
            case HALF_UP -> half >= 0;
            case HALF_DOWN -> half > 0;
            case HALF_EVEN -> half > 0 || (half == 0 && below.testBit(0));
        };
        return up ? below.add(BigInteger.ONE) : below;
    }
}
