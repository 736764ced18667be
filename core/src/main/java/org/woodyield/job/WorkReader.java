package org.woodyield.job;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.work.InputValue;
import org.woodyield.work.WorkInput;

/** Reads a figure of work or money as people write it into the unit in which it is computed. */
final class WorkReader {

    private static final Pattern ENDS = Pattern.compile("(.*\\S)\\s+to\\s+(\\S.*)");
    private static final Pattern UNIT = Pattern.compile("[-+0-9./\\s]*(.*)");
    private static final Pattern UNIT_BEHIND = Pattern.compile(
            "([-+0-9./\\s]*\\d)\\s*\\(([-+0-9./\\s]*\\d)\\s+to\\s+([-+0-9./\\s]*\\d)\\s*\\)\\s*([^\\d\\s()]\\S*(?:\\s+[^\\d\\s]\\S*)*)");
    private static final Pattern SPREAD = Pattern.compile("(.*\\S)\\s*(?:\\+-|±)\\s*(\\S.*)");

    private static final Pattern SHARE_BEFORE_UNIT = Pattern.compile("[-+0-9./\\s]*%\\s*[^\\s%].*");
    /** Not feet and inches. */
    private static final Pattern ONE_UNIT = Pattern.compile("(?!.*\\s\\d)\\D.*");

    private static final Domain RELATIVE = new Domain(
            "standard uncertainty as a share of the amount",
            "",
            Double.MIN_VALUE,
            0.5,
            "write one standard deviation, such as 5 %, or leave it out with its +-");

    private WorkReader() {}

    /**
     * A figure alone, with a range ({@code 3 min (2 min to 5 min)}, {@code 3 min (2 to 5)} or {@code 3 (2 to 5) min}), as a range ({@code 2 to 5 min}, the
     * middle taken) or with a standard uncertainty ({@code 3 min +- 20 s}; of an amount of money also {@code 14 per h +- 5 %}, a
     * share of it). A deviation alone, {@code 14 per h +- 2}, has the unit of the value.
     */
    static Optional<InputValue> readWithRange(Cell cell, WorkInput input) {
        Source user = Sources.get("user");
        if (input.isCount()) {
            return count(cell, input).map(value -> InputValue.of(value, user));
        }
        String text = cell.text();
        Matcher behind = UNIT_BEHIND.matcher(text);
        if (behind.matches()) {
            String unit = " " + behind.group(4);
            return range(
                    cell, input, Optional.of(behind.group(1) + unit), behind.group(2) + unit, behind.group(3) + unit);
        }
        int open = openingOfLast(text);
        if (open > 0) {
            Matcher ends = ENDS.matcher(text.substring(open + 1, text.length() - 1));
            if (ends.matches()) {
                return rangeOfValue(cell, input, text.substring(0, open).strip(), ends.group(1), ends.group(2));
            }
        }
        Matcher ends = ENDS.matcher(text);
        if (ends.matches()) {
            if (opened(ends.group(1))) {
                return refuseRange(cell, input);
            }
            return range(cell, input, Optional.empty(), ends.group(1), ends.group(2));
        }
        Matcher spread = SPREAD.matcher(cell.text());
        if (spread.matches()) {
            if (input.isMoney() && SHARE_BEFORE_UNIT.matcher(spread.group(2)).matches()) {
                cell.refuse(
                        "the unit behind the amount, its share alone behind the +-",
                        "such as " + exampleOfShare(input));
                return Optional.empty();
            }
            Cell middle = cell.part(spread.group(1));
            boolean share = spread.group(2).endsWith("%");
            Optional<Double> value = read(share ? middle : middle.withUnit(unit(spread.group(2))), input);
            Optional<Double> deviation = deviation(deviation(cell, input, spread), input, value);
            return value.isEmpty() || deviation.isEmpty() || !isNormal(cell, input, value.get(), deviation.get())
                    ? Optional.empty()
                    : Optional.of(
                            new InputValue(value.get(), new Distribution.Normal(value.get(), deviation.get()), user));
        }
        return read(cell, input).map(value -> InputValue.of(value, user));
    }

    /** A deviation without a unit has that of its value, where this is one unit and no percentage. */
    private static Cell deviation(Cell cell, WorkInput input, Matcher spread) {
        Cell deviation = cell.part(spread.group(2));
        String unit = unit(spread.group(1));
        return needsUnit(input) && !isPercent(input) && ONE_UNIT.matcher(unit).matches()
                ? deviation.withUnit(unit)
                : deviation;
    }

    private static String exampleOfShare(WorkInput input) {
        return "6 "
                + input.unit().replace("money/", "per ").replace("money", "").strip() + " +- 5 %";
    }

    private static Optional<Double> deviation(Cell cell, WorkInput input, Optional<Double> value) {
        if (input.isMoney() && cell.text().endsWith("%")) {
            return percent(cell, RELATIVE).flatMap(share -> value.map(amount -> share * amount));
        }
        return read(cell, input, deviation(input.domain()));
    }

    /**
     * Whether a normal law suits a value with limits: where two deviations go beyond one of them, more than 2 % of the draws would
     * have to be made again, and what is drawn would have neither the value nor the deviation that was stated.
     */
    private static boolean isNormal(Cell cell, WorkInput input, double value, double deviation) {
        Domain domain = input.domain();
        double room = Math.min(value - domain.least(), domain.greatest() - value);
        if (2 * deviation <= room) {
            return true;
        }
        cell.refuse(
                "a standard uncertainty up to half the distance of the value from its limits, "
                        + inCurrency(domain).limits(),
                "give a lesser one, or write from where to where it may lie, such as " + exampleOfRange(input));
        return false;
    }

    /** How far a value may lie from what is given: no farther than its limits from each other. */
    private static Domain deviation(Domain value) {
        double least = value.least() == Double.MIN_VALUE ? 0 : value.least();
        return new Domain(
                "standard uncertainty of " + value.parameter(),
                value.unit(),
                Double.MIN_VALUE,
                BigDecimal.valueOf(value.greatest())
                        .subtract(BigDecimal.valueOf(least))
                        .doubleValue(),
                "write one standard deviation, or leave it out with its +-");
    }

    /** Whether a bracket opens that does not close. */
    private static boolean opened(String text) {
        return text.chars().filter(c -> c == '(').count()
                > text.chars().filter(c -> c == ')').count();
    }

    /** A value with its range as it may be written for an input, of numbers that it accepts. */
    static String exampleOfRange(WorkInput input) {
        Domain domain = input.domain();
        boolean percent = isPercent(input);
        int[] powers = {0, -1, -2, 1};
        for (int power : powers) {
            BigDecimal step = BigDecimal.ONE.scaleByPowerOfTen(power);
            double scale = step.doubleValue() / (percent ? 100 : 1);
            if (domain.holds(5 * scale) && domain.holds(7 * scale)) {
                String unit =
                        percent ? "%" : input.unit().replace("money/", "per ").replace("money", "");
                String behind = unit.isEmpty() || !needsUnit(input) ? "" : " " + unit;
                return number(6, step) + behind + " (" + number(5, step) + behind + " to " + number(7, step) + behind
                        + ")";
            }
        }
        throw new IllegalStateException("no example of " + input);
    }

    private static String number(int count, BigDecimal step) {
        return step.multiply(BigDecimal.valueOf(count)).toPlainString();
    }

    private static Optional<InputValue> refuseRange(Cell cell, WorkInput input) {
        cell.refuse("a value with its range in brackets behind it", "such as " + exampleOfRange(input));
        return Optional.empty();
    }

    /** What stands behind a number. */
    private static String unit(String text) {
        Matcher unit = UNIT.matcher(text);
        return unit.matches() ? unit.group(1) : "";
    }

    private static boolean needsUnit(WorkInput input) {
        return !input.unit().isEmpty() && !input.unit().equals("L/L");
    }

    private static boolean isPercent(WorkInput input) {
        return input.unit().equals("1/year") || input.unit().equals("1/km");
    }

    /** Where the bracket opens that the last character closes; units have brackets too. Below zero where there is none. */
    private static int openingOfLast(String text) {
        int depth = 0;
        for (int i = text.length() - 1; i >= 0 && text.endsWith(")"); i--) {
            char c = text.charAt(i);
            if (c == ')') {
                depth++;
            } else if (c == '(' && --depth == 0) {
                return i;
            }
        }
        return -1;
    }

    /** A value with its range behind it; one unit, of the value or of the range, holds for all three, as with a deviation. */
    private static Optional<InputValue> rangeOfValue(
            Cell cell, WorkInput input, String likeliest, String lesser, String greater) {
        String ofValue = unit(likeliest);
        // A share without a sign is a number by itself, so that a sign of the ends is not one of the value.
        if (!needsUnit(input) && !ofValue.equals("%")) {
            return range(cell, input, Optional.of(likeliest), lesser, greater);
        }
        String ofRange = unit(greater);
        if (!ofValue.isEmpty() && ofRange.isEmpty() && unit(lesser).isEmpty()) {
            if (!ONE_UNIT.matcher(ofValue).matches()) {
                return refuseRange(cell, input);
            }
            return range(
                    cell,
                    input,
                    Optional.of(likeliest),
                    cell.part(lesser).withUnit(ofValue).text(),
                    cell.part(greater).withUnit(ofValue).text());
        }
        String value = ofValue.isEmpty() && ONE_UNIT.matcher(ofRange).matches()
                ? cell.part(likeliest).withUnit(ofRange).text()
                : likeliest;
        return range(cell, input, Optional.of(value), lesser, greater);
    }

    /** A range whose lesser end may leave its unit to the greater. */
    private static Optional<InputValue> range(
            Cell cell, WorkInput input, Optional<String> likeliest, String first, String second) {
        Source user = Sources.get("user");
        Cell lesser = cell.part(first).withUnit(unit(second));
        Cell greater = cell.part(second);
        Optional<Double> least = read(lesser, input);
        Optional<Double> greatest = read(greater, input);
        Optional<Double> value = likeliest.isPresent()
                ? read(cell.part(likeliest.get()), input)
                : least.flatMap(low -> greatest.map(high -> (low + high) / 2));
        if (value.isEmpty() || least.isEmpty() || greatest.isEmpty()) {
            return Optional.empty();
        }
        boolean swapped = least.get() > greatest.get();
        double low = Math.min(least.get(), greatest.get());
        double high = Math.max(least.get(), greatest.get());
        String ends = swapped ? greater.text() + " to " + lesser.text() : lesser.text() + " to " + greater.text();
        if (!(low <= value.get() && value.get() <= high)) {
            cell.refuse(
                    "a range that holds the value",
                    likeliest.orElse("") + " lies " + (value.get() < low ? "below " : "above ") + ends
                            + "; mend the value or widen the range");
            return Optional.empty();
        }
        if (swapped) {
            cell.refuse(
                    "a range with the lesser end first",
                    "the ends are exchanged; write "
                            + likeliest.map(words -> words + " (" + ends + ")").orElse(ends));
            return Optional.empty();
        }
        return Optional.of(
                likeliest.isPresent()
                        ? InputValue.within(value.get(), least.get(), greatest.get(), user)
                        : new InputValue(value.get(), new Distribution.Rectangular(least.get(), greatest.get()), user));
    }

    private static Optional<Double> count(Cell cell, WorkInput input) {
        Domain domain = input.domain();
        if (cell.text().matches("\\d{1,9}") && domain.holds(Integer.parseInt(cell.text()))) {
            return Optional.of((double) Integer.parseInt(cell.text()));
        }
        cell.refuse("a whole number, " + domain.limits(), "write a count such as 2 or 3, without a range");
        return Optional.empty();
    }

    static Optional<Double> read(Cell cell, WorkInput input) {
        return read(cell, input, input.domain());
    }

    /** A figure in the unit of an input, within limits that may be others than those of the input. */
    private static Optional<Double> read(Cell cell, WorkInput input, Domain limits) {
        Domain domain = inCurrency(limits);
        return switch (input.unit()) {
            case "" -> plainOrPercent(cell, domain);
            case "L/L" -> plainOrPercent(cell, domain);
            case "1/year", "1/km" -> percent(cell, domain);
            case "money" -> cell.number(domain);
            case "money/h" -> cell.rate(Units.HOURS, domain);
            case "money/L" -> cell.rate(Units.LIQUID, domain);
            case "money/bf" -> cell.rate(Units.BOARD_FEET, domain);
            case "kW" -> cell.quantity(Units.POWER, domain);
            case "min" -> cell.quantity(Units.MINUTES, domain);
            case "h" -> cell.quantity(Units.HOURS, domain);
            case "years" -> cell.quantity(Units.YEARS, domain);
            case "L" -> cell.quantity(Units.LIQUID, domain);
            case "L/h" -> cell.quantity(Units.LIQUID_PER_HOUR, domain);
            case "kg" -> cell.quantity(Units.MASS, domain);
            case "deg" -> cell.quantity(Units.DEGREES, domain);
            case "m2" -> cell.quantity(Units.AREA, domain);
            case "m/min" -> cell.quantity(Units.FEED, domain);
            case "m/s" -> cell.quantity(Units.SPEED, domain);
            case "m" -> length(cell, domain, 1).map(Length::toMetres).filter(value -> holds(cell, domain, value));
            case "mm" ->
                length(cell, domain, 1000).map(Length::toMillimetres).filter(value -> holds(cell, domain, value));
            default -> cell.quantity(Units.only(input.unit()), domain);
        };
    }

    /** The limits of an amount in words that a reader knows: the job has one currency, of whatever name. */
    private static Domain inCurrency(Domain domain) {
        if (!domain.unit().startsWith("money")) {
            return domain;
        }
        String unit = domain.unit().replace("money", "in the job's currency").replace("/", " per ");
        return new Domain(domain.parameter(), unit, domain.least(), domain.greatest(), domain.remedy());
    }

    private static Optional<Length> length(Cell cell, Domain domain, double toTheMetre) {
        Length least = domain.least() == Double.MIN_VALUE
                ? Length.nanometres(1)
                : Length.ofMetres(domain.least() / toTheMetre, Rounding.UP);
        return cell.length(
                least,
                Length.ofMetres(domain.greatest() / toTheMetre, Rounding.DOWN),
                domain.limits(),
                domain.remedy());
    }

    private static boolean holds(Cell cell, Domain domain, double value) {
        if (!domain.holds(value)) {
            cell.refuse(domain.limits(), domain.remedy());
            return false;
        }
        return true;
    }

    /** A share may be written as 0.7 or as 70 %. */
    private static Optional<Double> plainOrPercent(Cell cell, Domain domain) {
        return cell.text().endsWith("%") ? percent(cell, domain) : cell.number(domain);
    }

    private static Optional<Double> percent(Cell cell, Domain domain) {
        double least = domain.least() == Double.MIN_VALUE ? Double.MIN_VALUE : domain.least() * 100;
        Domain inPercent = new Domain(
                domain.parameter(), "%", least, Math.min(domain.greatest() * 100, Double.MAX_VALUE), domain.remedy());
        return cell.quantity(Units.PERCENT, inPercent).map(value -> value / 100);
    }
}
