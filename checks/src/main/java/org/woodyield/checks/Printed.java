package org.woodyield.checks;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as it stands in print: its value, and the weight of its last digit. A fraction such as {@code 1 1/2} has no
 * last digit; it is taken as exact.
 *
 * @param text as printed
 * @param value its value
 * @param digit one unit of the last printed digit, zero for a fraction
 */
record Printed(String text, BigDecimal value, BigDecimal digit) {

    private static final Pattern FRACTION = Pattern.compile("(-?)(?:(\\d+)[ -])?(\\d+)/(\\d+)");

    static Printed of(String text) {
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.matches()) {
            BigDecimal below = new BigDecimal(fraction.group(4));
            if (below.signum() == 0) {
                throw new IllegalArgumentException("'" + text + "' divides by zero");
            }
            BigDecimal whole = fraction.group(2) == null ? BigDecimal.ZERO : new BigDecimal(fraction.group(2));
            BigDecimal value = whole.add(new BigDecimal(fraction.group(3)).divide(below, MathContext.DECIMAL128));
            return new Printed(text, fraction.group(1).isEmpty() ? value : value.negate(), BigDecimal.ZERO);
        }
        try {
            BigDecimal value = new BigDecimal(text);
            return new Printed(text, value, BigDecimal.ONE.scaleByPowerOfTen(-value.scale()));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + text + "' is not a number", e);
        }
    }

    /** A value as it would be printed with so many digits behind the point, an exact half up. */
    static String rounded(double value, int places) {
        // A part in 10^12 below a half is the noise of binary arithmetic.
        BigDecimal exact = new BigDecimal(Double.toString(value * (1 + 1e-12)));
        return exact.setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    BigDecimal halfDigit() {
        return digit.divide(BigDecimal.valueOf(2));
    }
}
