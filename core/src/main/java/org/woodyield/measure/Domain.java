package org.woodyield.measure;

import java.math.BigDecimal;

/**
 * The range in which a parameter is accepted, both ends included.
 *
 * @param parameter the parameter's name as shown to a user
 * @param unit its unit, possibly empty
 * @param least the least value accepted
 * @param greatest the greatest value accepted, possibly infinite
 * @param remedy what to do with a value outside, possibly empty
 */
public record Domain(String parameter, String unit, double least, double greatest, String remedy) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException if least is above greatest or either is not a number
     */
    public Domain {
        if (!(least <= greatest)) {
            throw new IllegalArgumentException(parameter + ": least " + least + " is above greatest " + greatest);
        }
    }

    /**
     * A domain without a remedy of its own.
     *
     * @param parameter the parameter's name
     * @param unit its unit, possibly empty
     * @param least the least value accepted
     * @param greatest the greatest value accepted
     * @return the domain
     */
    public static Domain of(String parameter, String unit, double least, double greatest) {
        return new Domain(parameter, unit, least, greatest, "");
    }

    /**
     * A finite value above zero.
     *
     * @param parameter the parameter's name
     * @param unit its unit, possibly empty
     * @return the domain
     */
    public static Domain positive(String parameter, String unit) {
        return of(parameter, unit, Double.MIN_VALUE, Double.MAX_VALUE);
    }

    /**
     * A finite value, zero or more.
     *
     * @param parameter the parameter's name
     * @param unit its unit, possibly empty
     * @return the domain
     */
    public static Domain notNegative(String parameter, String unit) {
        return of(parameter, unit, 0, Double.MAX_VALUE);
    }

    /**
     * Whether a value is accepted; never for NaN.
     *
     * @param value the value
     * @return true inside
     */
    public boolean holds(double value) {
        return value >= least && value <= greatest;
    }

    /**
     * The value itself, if it is accepted.
     *
     * @param value the value
     * @return the same value
     * @throws OutOfDomainException outside, or for NaN
     */
    public double require(double value) {
        if (!holds(value)) {
            throw new OutOfDomainException(parameter, plain(value), unit, limits(), remedy);
        }
        return value;
    }

    /**
     * The limits in words, for example {@code 8 to 19 %} or {@code above 0 in}.
     *
     * @return the words
     */
    public String limits() {
        String tail = unit.isEmpty() ? "" : " " + unit;
        boolean open = greatest >= Double.MAX_VALUE;
        if (least <= -Double.MAX_VALUE) {
            return (open ? "any number" : "up to " + plain(greatest)) + tail;
        }
        if (least == Double.MIN_VALUE) {
            return (open ? "above 0" : "above 0, up to " + plain(greatest)) + tail;
        }
        return (open ? plain(least) + " or more" : plain(least) + " to " + plain(greatest)) + tail;
    }

    private static String plain(double value) {
        double size = Math.abs(value);
        return size == 0 || (size >= 1e-9 && size < 1e15)
                ? new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString()
                : Double.toString(value);
    }
}
