package org.woodyield.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An exact length, held as a whole count of nanometres.
 *
 * <p>The inch is 25.4 mm exactly, so 1/64 in is 396 875 nm and 0.001 in is 25 400 nm, both whole; so is 0.1 mm. Sizes,
 * kerfs, saw settings and limits of log rules therefore compare without rounding errors. A length that does not fit, such
 * as 1/128 in or a third of an inch, is refused unless a {@link Rounding} is named.
 *
 * <p>Source: {@code international-inch} in the register.
 */
public final class Length implements Comparable<Length> {

    private static final long PER_MILLIMETRE = 1_000_000L;
    private static final long PER_INCH = 25_400_000L;
    private static final long PER_FOOT = 12 * PER_INCH;
    private static final long PER_METRE = 1000 * PER_MILLIMETRE;

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    private static final Map<String, Long> UNITS = Map.ofEntries(
            Map.entry("mm", PER_MILLIMETRE),
            Map.entry("cm", 10 * PER_MILLIMETRE),
            Map.entry("m", PER_METRE),
            Map.entry("in", PER_INCH),
            Map.entry("inch", PER_INCH),
            Map.entry("inches", PER_INCH),
            Map.entry("\"", PER_INCH),
            Map.entry("ft", PER_FOOT),
            Map.entry("foot", PER_FOOT),
            Map.entry("feet", PER_FOOT),
            Map.entry("'", PER_FOOT));

    private static final Pattern TERM = Pattern.compile(
            "\\s*(?:(\\d{1,9})[ -]+)?(\\d{1,9})/(\\d{1,9})\\s*([a-z]+|\"|')|\\s*(\\d{1,12}(?:\\.\\d{1,12})?|\\.\\d{1,12})\\s*([a-z]+|\"|')");

    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d,\\d");
    private static final Pattern EXPONENT = Pattern.compile("\\de[-+]?\\d");
    private static final Pattern NO_UNIT = Pattern.compile("[-+]?[0-9./ -]+");

    private static final String WAYS_TO_WRITE = "a number and a unit, such as 12 ft 6 in, 5 1/2 in, 2.4 m or 38 mm";

    private final long nanometres;

    private Length(long nanometres) {
        this.nanometres = nanometres;
    }

    /**
     * A length by its count of nanometres.
     *
     * @param count any whole number
     * @return the length
     */
    public static Length nanometres(long count) {
        return count == 0 ? ZERO : new Length(count);
    }

    /**
     * Whole inches.
     *
     * @param count any whole number
     * @return the length
     * @throws ArithmeticException if it does not fit
     */
    public static Length inches(long count) {
        return nanometres(Math.multiplyExact(count, PER_INCH));
    }

    /**
     * A fraction of inches, exactly.
     *
     * @param numerator any whole number
     * @param denominator above zero
     * @return the length
     * @throws OutOfDomainException if the fraction is not a whole count of nanometres
     */
    public static Length inches(long numerator, long denominator) {
        long product = Math.multiplyExact(numerator, PER_INCH);
        if (denominator <= 0 || product % denominator != 0) {
            throw new OutOfDomainException(
                    "length",
                    numerator + "/" + denominator,
                    "in",
                    "fractions that are whole nanometres, down to 1/64 in",
                    "name a rounding");
        }
        return nanometres(product / denominator);
    }

    /**
     * The length nearest to a count of inches.
     *
     * @param inches finite
     * @param rounding how the last nanometre is rounded
     * @return the length
     * @throws OutOfDomainException if the value is not finite or longer than 9000 km
     */
    public static Length ofInches(double inches, Rounding rounding) {
        return ofUnits(inches, PER_INCH, "in", rounding);
    }

    /**
     * The length nearest to a count of feet.
     *
     * @param feet finite
     * @param rounding how the last nanometre is rounded
     * @return the length
     * @throws OutOfDomainException if the value is not finite or longer than 9000 km
     */
    public static Length ofFeet(double feet, Rounding rounding) {
        return ofUnits(feet, PER_FOOT, "ft", rounding);
    }

    /**
     * The length nearest to a count of metres.
     *
     * @param metres finite
     * @param rounding how the last nanometre is rounded
     * @return the length
     * @throws OutOfDomainException if the value is not finite or longer than 9000 km
     */
    public static Length ofMetres(double metres, Rounding rounding) {
        return ofUnits(metres, PER_METRE, "m", rounding);
    }

    private static Length ofUnits(double count, long nanometresEach, String unit, Rounding rounding) {
        double product = count * nanometresEach;
        if (!(Math.abs(product) < 9e15)) {
            throw new OutOfDomainException("length", Double.toString(count), unit, "shorter than 9000 km", "");
        }
        return nanometres((long) rounding.toWhole(product));
    }

    /**
     * Whole feet.
     *
     * @param count any whole number
     * @return the length
     * @throws ArithmeticException if it does not fit
     */
    public static Length feet(long count) {
        return nanometres(Math.multiplyExact(count, PER_FOOT));
    }

    /**
     * Whole millimetres.
     *
     * @param count any whole number
     * @return the length
     * @throws ArithmeticException if it does not fit
     */
    public static Length millimetres(long count) {
        return nanometres(Math.multiplyExact(count, PER_MILLIMETRE));
    }

    /**
     * Reads what people write: {@code 12 ft 6 in}, {@code 5 1/2 in}, {@code 5-1/2"}, {@code 6' 2"}, {@code 6'-2 1/2''},
     * {@code 2.4 m}, {@code 38 mm}; typographic primes and quotes too.
     *
     * @param text one or more numbers, each with its unit, largest unit first
     * @return the length, exactly
     * @throws OutOfDomainException if the text is not a length, has no unit, has a decimal comma, or is not a whole count
     *     of nanometres
     */
    public static Length parse(String text) {
        long plain = decimalNanometres(text);
        if (plain >= 0) {
            return nanometres(plain);
        }
        Fraction total = sum(text);
        BigInteger[] parts = total.numerator.divideAndRemainder(total.denominator);
        if (parts[1].signum() != 0) {
            throw new OutOfDomainException(
                    "length",
                    "'" + text + "'",
                    "",
                    "whole nanometres: inch fractions down to 1/64, decimals down to 0.00001 in",
                    "write the nearest 1/64 in or 0.001 in");
        }
        return fitting(text, parts[0]);
    }

    /**
     * As {@link #parse(String)}, rounding what does not fit to the nanometre.
     *
     * @param text one or more numbers, each with its unit
     * @param rounding how the last nanometre is rounded
     * @return the length
     * @throws OutOfDomainException if the text is not a length
     */
    public static Length parse(String text, Rounding rounding) {
        Fraction total = sum(text);
        return fitting(text, rounding.quotient(total.numerator, total.denominator));
    }

    private static Length fitting(String text, BigInteger count) {
        if (count.bitLength() > 53) {
            throw new OutOfDomainException("length", "'" + text + "'", "", "shorter than 9000 km", "");
        }
        return nanometres(count.longValue());
    }

    /**
     * The commonest form, decimals of few digits each with its unit, without the general way's cost. The same number where
     * each fits whole nanometres.
     *
     * @return -1 for any other form
     */
    private static long decimalNanometres(String text) {
        long total = 0;
        long unitBefore = Long.MAX_VALUE;
        int at = 0;
        do {
            int digits = 0;
            long number = 0;
            long divisor = 1;
            boolean point = false;
            while (at < text.length() && digits <= 8) {
                char c = text.charAt(at);
                if (c >= '0' && c <= '9') {
                    number = 10 * number + (c - '0');
                    divisor = point ? 10 * divisor : divisor;
                    digits++;
                } else if (c == '.' && !point && digits > 0) {
                    point = true;
                } else {
                    break;
                }
                at++;
            }
            if (digits == 0 || digits > 8 || (point && divisor == 1)) {
                return -1;
            }
            int begin = afterSpaces(text, at);
            at = afterUnit(text, begin);
            Long unit = UNITS.get(text.substring(begin, at));
            if (unit == null || unit >= unitBefore || number * unit % divisor != 0) {
                return -1;
            }
            unitBefore = unit;
            total += number * unit / divisor;
            at = afterSpaces(text, at);
        } while (at < text.length());
        return total < 1L << 53 ? total : -1;
    }

    private static int afterSpaces(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    /** Behind the letters, or the one mark, that stand at an index. */
    private static int afterUnit(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= 'a' && text.charAt(at) <= 'z') {
            at++;
        }
        boolean mark = at == from && at < text.length() && (text.charAt(at) == '\'' || text.charAt(at) == '"');
        return mark ? at + 1 : at;
    }

    /** A sum of terms as an exact fraction of nanometres. */
    private record Fraction(BigInteger numerator, BigInteger denominator) {
        Fraction plus(BigInteger otherNumerator, BigInteger otherDenominator) {
            return new Fraction(
                    numerator.multiply(otherDenominator).add(otherNumerator.multiply(denominator)),
                    denominator.multiply(otherDenominator));
        }
    }

    private static Fraction sum(String text) {
        String plain = text.strip()
                .toLowerCase(Locale.ROOT)
                .replace('′', '\'')
                .replace('″', '"')
                .replace('’', '\'')
                .replace('”', '"')
                .replace("''", "\"")
                .replace("'-", "' ");
        if (DECIMAL_COMMA.matcher(plain).find()) {
            throw new OutOfDomainException(
                    "length",
                    "'" + text + "'",
                    "",
                    WAYS_TO_WRITE,
                    "write a decimal point, not a comma: " + plain.replace(',', '.'));
        }
        if (NO_UNIT.matcher(plain).matches()) {
            throw new OutOfDomainException(
                    "length", "'" + text + "'", "", WAYS_TO_WRITE, "add the unit: in, ft, mm, cm or m");
        }
        if (EXPONENT.matcher(plain).find()) {
            throw new OutOfDomainException(
                    "length", "'" + text + "'", "", WAYS_TO_WRITE, "write the number out, without an exponent");
        }
        if (plain.startsWith("-")) {
            throw new OutOfDomainException("length", "'" + text + "'", "", WAYS_TO_WRITE, "lengths are not negative");
        }
        Matcher matcher = TERM.matcher(plain);
        Fraction total = new Fraction(BigInteger.ZERO, BigInteger.ONE);
        long unitBefore = Long.MAX_VALUE;
        int at = 0;
        while (at < plain.length()) {
            if (!matcher.region(at, plain.length()).lookingAt()) {
                throw new OutOfDomainException("length", "'" + text + "'", "", WAYS_TO_WRITE, "");
            }
            boolean fraction = matcher.group(3) != null;
            String unitText = fraction ? matcher.group(4) : matcher.group(6);
            Long unit = UNITS.get(unitText);
            if (unit == null) {
                throw new OutOfDomainException(
                        "length",
                        "'" + text + "'",
                        "",
                        WAYS_TO_WRITE,
                        "the unit '" + unitText + "' is not known: in, ft, mm, cm and m are");
            }
            if (unit >= unitBefore) {
                throw new OutOfDomainException(
                        "length", "'" + text + "'", "", WAYS_TO_WRITE, "the larger unit comes first, each once");
            }
            unitBefore = unit;
            if (fraction) {
                BigInteger denominator = new BigInteger(matcher.group(3));
                if (denominator.signum() == 0) {
                    throw new OutOfDomainException(
                            "length",
                            "'" + text + "'",
                            "",
                            WAYS_TO_WRITE,
                            "the divisor of a fraction is above 0, as in 3/4 in");
                }
                BigInteger whole = matcher.group(1) == null ? BigInteger.ZERO : new BigInteger(matcher.group(1));
                BigInteger numerator = whole.multiply(denominator).add(new BigInteger(matcher.group(2)));
                total = total.plus(numerator.multiply(BigInteger.valueOf(unit)), denominator);
            } else {
                BigDecimal number = new BigDecimal(matcher.group(5));
                total = total.plus(
                        number.unscaledValue().multiply(BigInteger.valueOf(unit)), BigInteger.TEN.pow(number.scale()));
            }
            at = matcher.end();
        }
        if (unitBefore == Long.MAX_VALUE) {
            throw new OutOfDomainException("length", "'" + text + "'", "", WAYS_TO_WRITE, "");
        }
        return total;
    }

    /**
     * The count of nanometres.
     *
     * @return any whole number
     */
    public long toNanometres() {
        return nanometres;
    }

    /**
     * In inches.
     *
     * @return the nearest double
     */
    public double toInches() {
        return (double) nanometres / PER_INCH;
    }

    /**
     * In feet.
     *
     * @return the nearest double
     */
    public double toFeet() {
        return (double) nanometres / PER_FOOT;
    }

    /**
     * In millimetres.
     *
     * @return the nearest double
     */
    public double toMillimetres() {
        return (double) nanometres / PER_MILLIMETRE;
    }

    /**
     * In metres.
     *
     * @return the nearest double
     */
    public double toMetres() {
        return (double) nanometres / PER_METRE;
    }

    /**
     * The sum.
     *
     * @param other a length
     * @return this and the other
     * @throws ArithmeticException if it does not fit
     */
    public Length plus(Length other) {
        return nanometres(Math.addExact(nanometres, other.nanometres));
    }

    /**
     * The difference, possibly below zero.
     *
     * @param other a length
     * @return this less the other
     * @throws ArithmeticException if it does not fit
     */
    public Length minus(Length other) {
        return nanometres(Math.subtractExact(nanometres, other.nanometres));
    }

    /**
     * A multiple.
     *
     * @param factor any whole number
     * @return so many times this
     * @throws ArithmeticException if it does not fit
     */
    public Length times(long factor) {
        return nanometres(Math.multiplyExact(nanometres, factor));
    }

    /**
     * A share of this length.
     *
     * @param divisor above zero
     * @param rounding how the last nanometre is rounded
     * @return the quotient
     * @throws IllegalArgumentException if the divisor is not above zero
     */
    public Length dividedBy(long divisor, Rounding rounding) {
        return nanometres(rounding.quotient(nanometres, divisor));
    }

    /**
     * How many whole steps fit.
     *
     * @param step above zero
     * @param rounding what a part of a step does
     * @return the count
     * @throws IllegalArgumentException if the step is not above zero
     */
    public long steps(Length step, Rounding rounding) {
        return rounding.quotient(nanometres, step.nanometres);
    }

    /**
     * The nearest multiple of a step.
     *
     * @param step above zero
     * @param rounding which multiple
     * @return the multiple
     * @throws IllegalArgumentException if the step is not above zero
     */
    public Length roundedTo(Length step, Rounding rounding) {
        return step.times(steps(step, rounding));
    }

    /**
     * Whether this is above zero.
     *
     * @return true above zero
     */
    public boolean isPositive() {
        return nanometres > 0;
    }

    /**
     * The larger of two.
     *
     * @param a a length
     * @param b a length
     * @return the larger
     */
    public static Length max(Length a, Length b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /**
     * The smaller of two.
     *
     * @param a a length
     * @param b a length
     * @return the smaller
     */
    public static Length min(Length a, Length b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    /**
     * In inches as a carpenter writes it, for example {@code 5 1/2 in}.
     *
     * @param denominator the finest fraction, a power of two up to 64
     * @param rounding to that fraction
     * @return the text, lowest terms
     */
    public String inInches(int denominator, Rounding rounding) {
        if (denominator < 1 || denominator > 64 || Integer.bitCount(denominator) != 1) {
            throw new OutOfDomainException(
                    "denominator", Integer.toString(denominator), "", "1, 2, 4, 8, 16, 32 or 64", "");
        }
        long parts = steps(inches(1, denominator), rounding);
        String sign = parts < 0 ? "-" : "";
        parts = Math.abs(parts);
        long whole = parts / denominator;
        long rest = parts % denominator;
        if (rest == 0) {
            return sign + whole + " in";
        }
        long divisor = denominator;
        while ((rest & 1) == 0) {
            rest >>= 1;
            divisor >>= 1;
        }
        return sign + (whole == 0 ? "" : whole + " ") + rest + "/" + divisor + " in";
    }

    /**
     * In feet and inches, for example {@code 8 ft 3 1/2 in}.
     *
     * @param denominator the finest fraction of an inch
     * @param rounding to that fraction
     * @return the text; whole feet stand alone
     */
    public String inFeet(int denominator, Rounding rounding) {
        Length rounded = roundedTo(inches(1, denominator), rounding);
        if (rounded.nanometres < 0) {
            return "-" + nanometres(-rounded.nanometres).inFeet(denominator, rounding);
        }
        long feet = rounded.nanometres / PER_FOOT;
        Length rest = nanometres(rounded.nanometres % PER_FOOT);
        if (feet == 0) {
            return rest.inInches(denominator, rounding);
        }
        return feet + " ft" + (rest.nanometres == 0 ? "" : " " + rest.inInches(denominator, rounding));
    }

    /**
     * In millimetres with a fixed count of decimals, for example {@code 38.0 mm}.
     *
     * @param decimals 0 to 6
     * @return the text, an exact half rounded up
     */
    public String inMillimetres(int decimals) {
        return BigDecimal.valueOf(nanometres, 6)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString()
                + " mm";
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Length length && length.nanometres == nanometres;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(nanometres);
    }

    /**
     * In inches if that is a fraction down to 1/64, otherwise in millimetres; exact either way and, unless below zero,
     * read back by {@link #parse(String)}.
     *
     * @return for example {@code 5 1/2 in} or {@code 38.1 mm}
     */
    @Override
    public String toString() {
        if (nanometres % (PER_INCH / 64) == 0) {
            return inInches(64, Rounding.DOWN);
        }
        return BigDecimal.valueOf(nanometres, 6).stripTrailingZeros().toPlainString() + " mm";
    }
}
