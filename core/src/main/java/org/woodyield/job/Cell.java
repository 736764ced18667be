package org.woodyield.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.wood.NearestNames;

/**
 * A value as somebody wrote it, and where. Reading it as something it is not adds a problem and gives nothing; reading goes
 * on, so that all problems are found at once.
 */
final class Cell {

    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d{1,15}(?:\\.\\d{1,15})?|\\.\\d{1,15})");
    private static final Pattern QUANTITY =
            Pattern.compile("(" + NUMBER.pattern() + "|[-+]?(?i:nan|inf(?:inity)?))\\s*([^\\d\\s].*)?");
    private static final Pattern RATE = Pattern.compile("(.*\\S)\\s+(?i:per)\\s+(\\S.*)");

    /** Behind a unit, so that no decimal comma is taken for one. */
    private static final Pattern COMMA_BETWEEN = Pattern.compile("([^\\d\\s,])\\s*,\\s*");

    private static final Pattern FIRST_UNIT = Pattern.compile("\\p{L}+|['\"\u2032\u2033\u2019\u201d]+");
    private static final Pattern EXPONENT = Pattern.compile("\\d[eE][-+]?\\d");
    private static final Pattern BARE = Pattern.compile("[0-9 ./-]+");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

    private static final BigDecimal INCH = BigDecimal.valueOf(25_400_000);
    private static final BigDecimal FOOT = BigDecimal.valueOf(304_800_000);
    private static final int LIMIT_DIGITS = 5;

    private static final Length LEAST = Length.nanometres(1);

    private final String file;
    private final int line;
    private final String column;
    private final String text;
    private final Problems problems;

    /** Where the names of the columns stand, if this one is not among them; else 0. */
    private final int lackingFrom;

    Cell(String file, int line, String column, String text, Problems problems) {
        this(file, line, column, text, problems, 0);
    }

    private Cell(String file, int line, String column, String text, Problems problems, int lackingFrom) {
        this.file = file;
        this.line = line;
        this.column = column;
        this.text = text.strip();
        this.problems = problems;
        this.lackingFrom = lackingFrom;
    }

    /** The empty cell of a row whose table has no such column; with 0 for the header the row tells of it by itself. */
    static Cell lacking(String file, int line, int headerLine, String column, Problems problems) {
        return new Cell(file, line, column, "", problems, headerLine);
    }

    boolean isEmpty() {
        return text.isEmpty();
    }

    /** What stands here, read; nothing where nothing stands. */
    <T> Optional<T> ifAny(Function<Cell, Optional<T>> reading) {
        return isEmpty() ? Optional.empty() : reading.apply(this);
    }

    /** Whether something stands here of which nothing came. */
    boolean isUnread(Optional<?> value) {
        return !isEmpty() && value.isEmpty();
    }

    String text() {
        return text;
    }

    int line() {
        return line;
    }

    /** Where it stands, in words. */
    String place() {
        return file + ", line " + line;
    }

    /** A part of what is written here, at this place. */
    Cell part(String words) {
        return new Cell(file, line, column, words, problems);
    }

    /** The same value, a bare number with a unit behind it. */
    Cell withUnit(String unit) {
        return BARE.matcher(text).matches() ? part(text + " " + unit) : this;
    }

    /** The parts of a list, each at this place. */
    List<Cell> split(char separator) {
        List<Cell> parts = new ArrayList<>();
        int from = 0;
        for (int to = text.indexOf(separator); to >= 0; to = text.indexOf(separator, from)) {
            parts.add(part(text.substring(from, to)));
            from = to + 1;
        }
        parts.add(part(text.substring(from)));
        return List.copyOf(parts);
    }

    /** The parts of a list with semicolons, each at this place; nothing, with a note, where commas stand between them. */
    Optional<List<Cell>> list() {
        if (COMMA_BETWEEN.matcher(text).find()) {
            refuse(
                    "several with semicolons between them",
                    "write semicolons, not commas: "
                            + COMMA_BETWEEN.matcher(text).replaceAll("$1; "));
            return Optional.empty();
        }
        return Optional.of(split(';'));
    }

    /** Notes that this value cannot be used. */
    void refuse(String allowed, String remedy) {
        problems.add(file, line, column, text, allowed, remedy);
    }

    /** Notes what a calculation refused, at this place. */
    void refuse(OutOfDomainException refusal) {
        refuse(refusal.limits(), refusal.remedy());
    }

    /** Some text, required. */
    Optional<String> words(String allowed) {
        if (text.isEmpty()) {
            return missing(allowed, "");
        }
        if (text.codePoints().anyMatch(Character::isISOControl)) {
            refuse(allowed + ", on one line, without control characters", "");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** A length within limits. */
    Optional<Length> length(Length least, Length greatest, String limits, String remedy) {
        return length(least, greatest, () -> limits, () -> range(least, greatest), remedy);
    }

    /** A length up to a greatest that is told in words of its own. */
    Optional<Length> lengthWithin(Length greatest, String limits, String remedy) {
        return length(Length.ZERO, greatest, () -> limits, () -> limits, remedy);
    }

    /** The limits are put into words only where they are told. */
    private Optional<Length> length(
            Length least, Length greatest, Supplier<String> limits, Supplier<String> asWritten, String remedy) {
        if (text.isEmpty()) {
            return missing("a length, " + limits.get(), "write a number and a unit, such as 12 ft 6 in or 38 mm");
        }
        Length length;
        try {
            length = Length.parse(text);
        } catch (OutOfDomainException e) {
            refuse(e);
            return Optional.empty();
        }
        if (length.compareTo(least) < 0 || length.compareTo(greatest) > 0) {
            refuse(asWritten.get(), remedy);
            return Optional.empty();
        }
        return Optional.of(length);
    }

    /** The limits in the unit of the length that stands here, none beyond what they are. */
    private String range(Length least, Length greatest) {
        String from = least.equals(LEAST)
                ? "above 0, up to "
                : (least.equals(Length.ZERO) ? "0" : asWritten(least, Rounding.UP)) + " to ";
        return from + asWritten(greatest, Rounding.DOWN);
    }

    private String asWritten(Length limit, Rounding rounding) {
        BigDecimal nanometres = BigDecimal.valueOf(limit.toNanometres());
        Matcher unit = FIRST_UNIT.matcher(text.toLowerCase(Locale.ROOT));
        return switch (unit.find() ? unit.group() : "") {
            case "mm" -> decimal(nanometres, BigDecimal.ONE.movePointRight(6), "mm", rounding);
            case "cm" -> decimal(nanometres, BigDecimal.ONE.movePointRight(7), "cm", rounding);
            case "m" -> decimal(nanometres, BigDecimal.ONE.movePointRight(9), "m", rounding);
            case "ft", "foot", "feet", "'", "\u2032", "\u2019" ->
                isFraction(limit) ? limit.inFeet(64, rounding) : decimal(nanometres, FOOT, "ft", rounding);
            default -> isFraction(limit) ? limit.inInches(64, rounding) : decimal(nanometres, INCH, "in", rounding);
        };
    }

    private static boolean isFraction(Length limit) {
        return limit.roundedTo(Length.inches(1, 64), Rounding.DOWN).equals(limit);
    }

    private static String decimal(BigDecimal nanometres, BigDecimal each, String unit, Rounding rounding) {
        RoundingMode inward = rounding == Rounding.UP ? RoundingMode.CEILING : RoundingMode.FLOOR;
        return plain(nanometres.divide(each, 3, inward)) + " " + unit;
    }

    /** A length above zero, up to a greatest. */
    Optional<Length> lengthUpTo(Length greatest, String remedy) {
        return length(LEAST, greatest, () -> "above 0, up to " + greatest, () -> range(LEAST, greatest), remedy);
    }

    /** A length, zero included, up to a greatest. */
    Optional<Length> lengthOrNoneUpTo(Length greatest, String remedy) {
        return length(Length.ZERO, greatest, () -> "0 to " + greatest, () -> range(Length.ZERO, greatest), remedy);
    }

    /** A length, below zero too with a minus before it, up to a greatest either way. */
    Optional<Length> lengthEitherWay(Length greatest, String remedy) {
        boolean below = text.startsWith("-");
        Length length;
        try {
            length = Length.parse(below || text.startsWith("+") ? text.substring(1) : text);
        } catch (OutOfDomainException e) {
            refuse(e);
            return Optional.empty();
        }
        if (length.compareTo(greatest) > 0) {
            String limit = asWritten(greatest, Rounding.DOWN);
            refuse("-" + limit + " to " + limit, remedy);
            return Optional.empty();
        }
        return Optional.of(below ? Length.ZERO.minus(length) : length);
    }

    /** One or more lengths above zero, with semicolons between, up to a greatest; as they stand. */
    Optional<List<Length>> lengthsUpTo(Length greatest, String remedy) {
        Optional<List<Cell>> parts = list();
        List<Length> lengths = parts.stream()
                .flatMap(List::stream)
                .flatMap(part -> part.lengthUpTo(greatest, remedy).stream())
                .toList();
        return parts.filter(all -> all.size() == lengths.size()).map(all -> lengths);
    }

    /** A number without a unit. */
    Optional<Double> number(Domain domain) {
        return number(text, domain);
    }

    /** A whole number. */
    Optional<Integer> count(int least, int greatest) {
        if (WHOLE.matcher(text).matches()) {
            int count = Integer.parseInt(text);
            if (count >= least && count <= greatest) {
                return Optional.of(count);
            }
        }
        String allowed = "whole numbers, " + least + " to " + greatest;
        if (text.isEmpty()) {
            return missing(allowed, "");
        }
        refuse(allowed, remedyFor(text));
        return Optional.empty();
    }

    /** A number with a unit; the value is in the unit in which the job is computed. */
    Optional<Double> quantity(Units units, Domain domain) {
        String ways = domain.limits() + "; written with its unit: " + units.words();
        if (text.isEmpty()) {
            return missing(ways, "");
        }
        Matcher matcher = QUANTITY.matcher(text);
        if (!matcher.matches()) {
            refuse(ways, remedyFor(text));
            return Optional.empty();
        }
        String unit = matcher.group(2);
        if (unit == null) {
            refuse(ways, "add the unit");
            return Optional.empty();
        }
        Optional<Double> factor = units.factor(unit.strip());
        if (factor.isEmpty()) {
            refuse(
                    ways,
                    remedyFor(text).isEmpty() ? "the unit '" + unit.strip() + "' is not known here" : remedyFor(text));
            return Optional.empty();
        }
        if (!NUMBER.matcher(matcher.group(1)).matches()) {
            refuse("a number, " + ways, remedyFor(text));
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1)) * factor.get();
        if (!domain.holds(value)) {
            refuse(factor.get() == 1 ? domain.limits() : in(domain, factor.get(), unit.strip()), domain.remedy());
            return Optional.empty();
        }
        return Optional.of(value);
    }

    /** A number for each unit, such as {@code 18 per h}; the value is for one unit in which the job is computed. */
    Optional<Double> rate(Units units, Domain domain) {
        String ways = domain.limits() + "; written as a number and the unit, such as 18 per "
                + units.factors().keySet().iterator().next() + "; units: "
                + units.words();
        if (text.isEmpty()) {
            return missing(ways, "");
        }
        // Nothing is nothing in any unit.
        if (text.equals("0") && domain.holds(0)) {
            return Optional.of(0.0);
        }
        Matcher matcher = RATE.matcher(text);
        if (!matcher.matches()) {
            refuse(ways, remedyFor(text));
            return Optional.empty();
        }
        Optional<Double> factor = units.factor(matcher.group(2));
        if (factor.isEmpty()) {
            refuse(ways, "the unit '" + matcher.group(2) + "' is not known here");
            return Optional.empty();
        }
        if (!NUMBER.matcher(matcher.group(1)).matches()) {
            refuse("a number, " + ways, remedyFor(text));
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1)) / factor.get();
        if (!domain.holds(value)) {
            refuse(
                    factor.get() == 1 ? domain.limits() : in(domain, 1 / factor.get(), "per " + matcher.group(2)),
                    domain.remedy());
            return Optional.empty();
        }
        return Optional.of(value);
    }

    /** A length for each length, such as {@code 1/8 in per ft}, as a pure ratio. */
    Optional<Double> slope(double greatest) {
        String ways = "a length for each length, 0 to " + plain(BigDecimal.valueOf(greatest * 100))
                + " %; such as 1/8 in per ft or 1 cm per m";
        Matcher matcher = RATE.matcher(text.toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            refuse(ways, remedyFor(text));
            return Optional.empty();
        }
        try {
            Length rise = Length.parse(matcher.group(1));
            String run = matcher.group(2);
            Length along = Length.parse(Character.isDigit(run.charAt(0)) ? run : "1 " + run);
            if (along.isPositive() && rise.toMetres() / along.toMetres() <= greatest) {
                return Optional.of(rise.toMetres() / along.toMetres());
            }
            refuse(ways, "");
        } catch (OutOfDomainException e) {
            refuse(ways, e.remedy());
        }
        return Optional.empty();
    }

    /** One of several words. */
    <T> Optional<T> choice(Map<String, T> choices) {
        String allowed = String.join(", ", choices.keySet());
        if (text.isEmpty()) {
            return missing(allowed, "");
        }
        String word = text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        T choice = choices.get(word);
        if (choice == null) {
            refuse(allowed, NearestNames.question(word, choices.keySet()));
        }
        return Optional.ofNullable(choice);
    }

    /** Notes that nothing stands here though something must. */
    <T> Optional<T> missing(String allowed, String remedy) {
        if (lackingFrom > 0) {
            problems.addLackingColumn(file, lackingFrom, column, allowed, remedy);
            problems.addRowInWant(file, column, line);
        } else {
            problems.add(file, line, column, "", allowed, remedy.isEmpty() ? "nothing stands here; write one" : remedy);
        }
        return Optional.empty();
    }

    /** The limits in another unit, of which so many are one; none beyond what they are. */
    private static String in(Domain domain, double factor, String unit) {
        boolean open = domain.least() == Double.MIN_VALUE || domain.least() <= -Double.MAX_VALUE;
        double least = open ? domain.least() : inward(domain.least() / factor, RoundingMode.CEILING);
        double greatest = domain.greatest() >= Double.MAX_VALUE
                ? domain.greatest()
                : inward(domain.greatest() / factor, RoundingMode.FLOOR);
        return new Domain("", unit, least, greatest, "").limits();
    }

    private static double inward(double limit, RoundingMode mode) {
        return BigDecimal.valueOf(limit)
                .round(new MathContext(LIMIT_DIGITS, mode))
                .doubleValue();
    }

    private Optional<Double> number(String digits, Domain domain) {
        if (digits.isEmpty()) {
            return missing(domain.limits(), "");
        }
        if (!NUMBER.matcher(digits).matches()) {
            refuse("a number, " + domain.limits(), remedyFor(digits));
            return Optional.empty();
        }
        double value = Double.parseDouble(digits);
        if (!domain.holds(value)) {
            refuse(domain.limits(), domain.remedy());
            return Optional.empty();
        }
        return Optional.of(value);
    }

    /** What to do with a number in a form that is not read; empty where nothing is known. */
    private static String remedyFor(String text) {
        if (text.matches(".*\\d,\\d.*")) {
            return "write a decimal point, not a comma, and no mark for thousands";
        }
        return EXPONENT.matcher(text).find() ? "write the number out, without an exponent" : "";
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
