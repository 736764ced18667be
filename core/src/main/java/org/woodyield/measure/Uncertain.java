package org.woodyield.measure;

/**
 * A value with its standard uncertainty.
 *
 * <p>Source: {@code gum-2008} in the register.
 *
 * @param value the estimate, finite
 * @param standardUncertainty one standard deviation of the estimate, zero or more, in the same unit
 */
public record Uncertain(double value, double standardUncertainty) {

    private static final Domain SPREAD = Domain.notNegative("standard uncertainty", "");

    /**
     * Refuses what is not a spread.
     *
     * @throws OutOfDomainException if the value is not finite, or the uncertainty negative or not finite
     */
    public Uncertain {
        if (!Double.isFinite(value)) {
            throw new OutOfDomainException("value", Double.toString(value), "", "finite numbers", "");
        }
        SPREAD.require(standardUncertainty);
    }

    /**
     * A value taken as exact.
     *
     * @param value finite
     * @return the value with no spread
     */
    public static Uncertain exact(double value) {
        return new Uncertain(value, 0);
    }

    /**
     * A value known only to lie in a range, every place in it alike: the middle, with half the width over the square root
     * of three (after the GUM, JCGM 100).
     *
     * @param least the lower end
     * @param greatest the upper end
     * @return the middle with its spread
     * @throws OutOfDomainException if the ends are crossed or not finite
     */
    public static Uncertain range(double least, double greatest) {
        if (!(least <= greatest)) {
            throw new OutOfDomainException(
                    "range", least + " to " + greatest, "", "the lesser end first", "exchange the ends");
        }
        return new Uncertain((least + greatest) / 2, (greatest - least) / 2 / StrictMath.sqrt(3));
    }
}
