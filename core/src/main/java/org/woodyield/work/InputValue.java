package org.woodyield.work;

import org.woodyield.measure.Distribution;
import org.woodyield.source.Source;

/**
 * What an input is worth in one job.
 *
 * @param value the value that is computed with
 * @param spread how it may lie otherwise; {@link Distribution.Fixed} where no range was given
 * @param source what the value rests on
 */
public record InputValue(double value, Distribution spread, Source source) {

    /**
     * A value without a range.
     *
     * @param value the value
     * @param source what it rests on
     * @return the value, taken as fixed
     */
    public static InputValue of(double value, Source source) {
        return new InputValue(value, new Distribution.Fixed(value), source);
    }

    /**
     * A value with the range that it is held to lie in: a triangle with its peak at the value.
     *
     * @param value the value
     * @param least the lower end, no more than the value
     * @param greatest the upper end, no less than the value
     * @param source what it rests on
     * @return the value with its range
     */
    public static InputValue within(double value, double least, double greatest, Source source) {
        return new InputValue(value, new Distribution.Triangular(least, value, greatest), source);
    }

    /**
     * Whether a range or a standard uncertainty was given.
     *
     * @return false where the value is taken as fixed
     */
    public boolean hasSpread() {
        return spread.standardDeviation() > 0;
    }
}
