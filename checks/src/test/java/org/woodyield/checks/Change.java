package org.woodyield.checks;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One number of core, a unit of its last printed digit greater.
 *
 * @param sort whether it stands in a table or in a class
 * @param file below {@code org/woodyield}, such as {@code wood/species.csv}
 * @param column of a table; in a class the number as written
 * @param count which row of the table or which of the equal numbers of the class, from 1
 * @param line in the file
 * @param start where it stands in the file's text
 * @param from as written
 * @param to instead
 */
record Change(Sort sort, String file, String column, int count, int line, int start, String from, String to) {

    /** Where a number stands. */
    enum Sort {
        TABLE,
        CLASS
    }

    private static final Pattern FRACTION = Pattern.compile("((?:\\d+[ -])?)(\\d+)/(\\d+)");

    /** A unit of the last printed digit further from zero; of a fraction, one more in its numerator. */
    static String nudged(String number) {
        Matcher fraction = FRACTION.matcher(number);
        if (fraction.matches()) {
            return fraction.group(1) + (Integer.parseInt(fraction.group(2)) + 1) + "/" + fraction.group(3);
        }
        BigDecimal value = new BigDecimal(number);
        BigDecimal digit = BigDecimal.ONE.movePointLeft(value.scale());
        return (value.signum() < 0 ? value.subtract(digit) : value.add(digit)).toPlainString();
    }

    /** Changes that are listed together. */
    String group() {
        return file + "," + column;
    }
}
