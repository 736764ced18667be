package org.woodyield.scaling;

import org.woodyield.measure.OutOfDomainException;

/**
 * Whole numbers among doubles, for tables that have no cells between: 2^52 + x has no fraction, so x is whole if taking
 * 2^52 away again gives x.
 */
final class WholeNumbers {

    private static final double SHIFT = 0x1p52;

    private WholeNumbers() {}

    /** Refuses a number that is not whole. */
    static void require(String parameter, double value, String unit, String allowed) {
        if (!isWhole(value)) {
            throw new OutOfDomainException(
                    parameter,
                    Double.toString(value),
                    unit,
                    allowed,
                    "take it by a scaling convention first; the table has no cells between");
        }
    }

    /** Whether a number of 0 to 2^52 is whole. */
    static boolean isWhole(double value) {
        return value + SHIFT - SHIFT == value;
    }
}
