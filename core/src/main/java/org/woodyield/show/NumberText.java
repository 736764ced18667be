package org.woodyield.show;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.woodyield.measure.Money;

/**
 * How numbers are written, in one place: a decimal point, no grouping, no exponent for values between a billionth and 10
 * to the 15th, the same characters on every Java version and in every locale.
 *
 * <p>Rounding for show is to the nearest on the shortest decimal that reads back to the same double, an exact half away
 * from zero; so 0.125 to two decimals is 0.13. It never enters a calculation.
 */
public final class NumberText {

    private static final double PLAIN_BELOW = 1e15;
    private static final double PLAIN_FROM = 1e-9;

    /** Up to here the steps are known to a thousandth. */
    private static final double MOST_STEPS = 1e12;

    /** Where the cents of an amount say nothing any more. */
    private static final double UNCERTAIN_FROM = 5;

    /** A lesser share would be written as none with one decimal, or nearly. */
    private static final double LEAST_PERCENT = 0.1;

    /** The last digit of a share beside an end. */
    private static final double FINEST_PERCENT = 0.01;

    private static final int MOST_DECIMALS = 9;
    private static final double UNSURE = 0.001;

    private NumberText() {}

    /**
     * Every digit that tells this value from its neighbours: the shortest decimal that reads back to the same double.
     *
     * @param value any value
     * @return for example {@code 0.1} or {@code 113.09733552923255}
     */
    public static String full(double value) {
        if (!Double.isFinite(value)) {
            return notFinite(value);
        }
        double size = Math.abs(value);
        BigDecimal shortest = shortest(value);
        boolean plain = size == 0 || (size >= PLAIN_FROM && size < PLAIN_BELOW);
        return plain ? shortest.toPlainString() : shortest.toString();
    }

    /** As {@link #full} without an exponent at any size, for text that is read as a formula again. */
    static String plain(double value) {
        return Double.isFinite(value) ? shortest(value).toPlainString() : notFinite(value);
    }

    /**
     * With a fixed count of decimals.
     *
     * @param value any value
     * @param decimals zero or more
     * @return for example {@code 12.50}; never {@code -0.00}
     */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return notFinite(value);
        }
        BigDecimal rounded = rounded(value, decimals);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals).toPlainString() : rounded.toPlainString();
    }

    /** The shortest decimal, which lies within the last bit of the double, is asked only where that bit may decide. */
    private static BigDecimal rounded(double value, int decimals) {
        double steps = Math.abs(value) * BigDecimal.ONE.movePointRight(decimals).doubleValue();
        double whole = Math.floor(steps);
        if (decimals > MOST_DECIMALS || steps > MOST_STEPS || Math.abs(steps - whole - 0.5) < UNSURE) {
            return shortest(value).setScale(decimals, RoundingMode.HALF_UP);
        }
        long count = (long) whole + (steps - whole > 0.5 ? 1 : 0);
        return BigDecimal.valueOf(value < 0 ? -count : count, decimals);
    }

    /**
     * To a count of significant digits; digits before the point are never dropped and zeros at the end are not written.
     *
     * @param value any value
     * @param digits one or more
     * @return for example {@code 113.1} for 113.0973 to four digits, {@code 12345} for 12345.2 to four
     */
    public static String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return notFinite(value);
        }
        BigDecimal shortest = shortest(value);
        if (shortest.signum() == 0) {
            return "0";
        }
        int before = shortest.precision() - shortest.scale();
        BigDecimal rounded = before >= digits
                ? shortest.setScale(0, RoundingMode.HALF_UP)
                : shortest.round(new MathContext(digits, RoundingMode.HALF_UP));
        BigDecimal bare = rounded.stripTrailingZeros();
        return Math.abs(value) < PLAIN_FROM ? bare.toString() : bare.toPlainString();
    }

    /**
     * A share as a percentage with one decimal.
     *
     * @param share 0.25 for a quarter
     * @return for example {@code 25.0 %}
     */
    public static String percent(double share) {
        return fixed(share * 100, 1) + " %";
    }

    /**
     * A share that is neither none nor all, and is not written as one of them: {@link #percent} where one decimal does, two beside
     * an end, and what lies nearer to it by that.
     *
     * @param share above 0 and below 1
     * @return for example {@code 25.0 %}, {@code 99.95 %} or {@code less than 0.01 %}
     */
    static String partOf(double share) {
        double percent = share * 100;
        if (percent < FINEST_PERCENT) {
            return "less than " + fixed(FINEST_PERCENT, 2) + " %";
        }
        if (percent > 100 - FINEST_PERCENT) {
            return "more than " + fixed(100 - FINEST_PERCENT, 2) + " %";
        }
        return percent < LEAST_PERCENT || percent > 100 - LEAST_PERCENT ? fixed(percent, 2) + " %" : percent(share);
    }

    /**
     * An amount whose spread is known: to two digits of its standard uncertainty where these are whole, else with two decimals.
     * What would then read as nothing is written to the whole unit, and where that is nothing too with two decimals.
     *
     * @param money the amount
     * @param uncertainty its standard uncertainty; zero where it has none
     * @return for example {@code 1190 USD} for 1185.44 with 220, or {@code 1185 USD} with 22
     */
    static String money(Money money, double uncertainty) {
        if (!(uncertainty >= UNCERTAIN_FROM)) {
            return money(money);
        }
        int dropped = Math.max(0, (int) StrictMath.floor(StrictMath.log10(uncertainty)) - 1);
        BigDecimal rounded = shortest(money.amount()).setScale(-dropped, RoundingMode.HALF_UP);
        BigDecimal shown = rounded.signum() == 0 ? rounded(money.amount(), 0) : rounded.setScale(0);
        return shown.signum() == 0 ? money(money) : shown.toPlainString() + " " + money.currency();
    }

    /**
     * An amount with two decimals and its currency.
     *
     * @param money the amount
     * @return for example {@code 12.50 USD}
     */
    public static String money(Money money) {
        return fixed(money.amount(), 2) + " " + money.currency();
    }

    /**
     * A time in hours and minutes, rounded to the minute.
     *
     * @param minutes zero or more
     * @return for example {@code 7 h 05 min} or {@code 12 min}
     */
    public static String duration(double minutes) {
        if (!Double.isFinite(minutes)) {
            return notFinite(minutes);
        }
        long whole = shortest(minutes).setScale(0, RoundingMode.HALF_UP).longValueExact();
        if (whole < 60) {
            return whole + " min";
        }
        long rest = whole % 60;
        return whole / 60 + " h " + (rest < 10 ? "0" : "") + rest + " min";
    }

    private static String notFinite(double value) {
        return Double.isNaN(value) ? "not a number" : value > 0 ? "without limit" : "below any limit";
    }

    /** Double.toString gives other digits before Java 19 than since; this does not. */
    private static BigDecimal shortest(double value) {
        if (value == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < 17; digits++) {
            BigDecimal candidate = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (candidate.doubleValue() == value) {
                return whole(candidate.stripTrailingZeros());
            }
        }
        return whole(exact.round(new MathContext(17, RoundingMode.HALF_EVEN)).stripTrailingZeros());
    }

    private static BigDecimal whole(BigDecimal value) {
        return value.scale() < 0 && value.precision() - value.scale() <= 15 ? value.setScale(0) : value;
    }
}
