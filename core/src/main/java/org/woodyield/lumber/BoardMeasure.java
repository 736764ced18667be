package org.woodyield.lumber;

import java.math.BigInteger;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Board measure: thickness in inches times width in inches times length in feet over 12, by nominal sizes. A thickness under
 * one inch counts as one. Nothing is rounded until it is shown; the exact count is at hand as a fraction.
 *
 * @see org.woodyield.source.Sources source navy-lumber
 */
public final class BoardMeasure {

    private static final Domain THICKNESS = Domain.positive("nominal thickness", "in");
    private static final Domain WIDTH = Domain.positive("nominal width", "in");
    private static final Domain LENGTH = Domain.positive("length", "ft");
    private static final BigInteger PER_BOARD_FOOT =
            BigInteger.valueOf(Length.inches(1).toNanometres()).pow(3).multiply(BigInteger.valueOf(144));

    /**
     * An exact count of board feet.
     *
     * @param numerator of the fraction in lowest terms
     * @param denominator of the fraction in lowest terms, above zero
     */
    public record Exact(BigInteger numerator, BigInteger denominator) {
        /**
         * Brings the fraction to lowest terms.
         *
         * @throws IllegalArgumentException if the denominator is not above zero
         */
        public Exact {
            if (denominator.signum() <= 0) {
                throw new IllegalArgumentException("denominator is " + denominator + "; allowed: above 0");
            }
            BigInteger divisor = numerator.gcd(denominator);
            numerator = numerator.divide(divisor);
            denominator = denominator.divide(divisor);
        }

        /**
         * The sum.
         *
         * @param other a count
         * @return this and the other
         */
        public Exact plus(Exact other) {
            return new Exact(
                    numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                    denominator.multiply(other.denominator));
        }

        /**
         * A multiple.
         *
         * @param count how many
         * @return so many times this
         */
        public Exact times(long count) {
            return new Exact(numerator.multiply(BigInteger.valueOf(count)), denominator);
        }

        /**
         * Rounded to a part of a board foot.
         *
         * @param parts how many steps in a board foot: 1 for whole feet, 10 for tenths
         * @param rounding the rounding
         * @return board feet
         * @throws ArithmeticException if the count does not fit
         */
        public double rounded(int parts, Rounding rounding) {
            BigInteger scaled = numerator.multiply(BigInteger.valueOf(parts));
            return (double) rounding.quotient(scaled.longValueExact(), denominator.longValueExact()) / parts;
        }

        /**
         * As a whole number and a fraction.
         *
         * @return for example {@code 5 1/3}
         */
        @Override
        public String toString() {
            BigInteger[] parts = numerator.divideAndRemainder(denominator);
            if (parts[1].signum() == 0) {
                return parts[0].toString();
            }
            return (parts[0].signum() == 0 ? "" : parts[0] + " ") + parts[1] + "/" + denominator;
        }
    }

    private BoardMeasure() {}

    /**
     * Board feet by nominal size.
     *
     * @param thicknessInches nominal, above 0; under 1 counts as 1
     * @param widthInches nominal, above 0
     * @param lengthFeet above 0
     * @return {@code max(T, 1) * W * L / 12}
     * @throws OutOfDomainException if an argument is not above zero
     */
    @Calculation("lumber.board-measure")
    public static double boardFeet(double thicknessInches, double widthInches, double lengthFeet) {
        THICKNESS.require(thicknessInches);
        WIDTH.require(widthInches);
        LENGTH.require(lengthFeet);
        return Math.max(thicknessInches, 1) * widthInches * lengthFeet / 12;
    }

    /**
     * How {@link #boardFeet} came about.
     *
     * @param thicknessInches nominal, above 0
     * @param widthInches nominal, above 0
     * @param lengthFeet above 0
     * @return the working; its value equals the count bit for bit
     * @throws OutOfDomainException if an argument is not above zero
     */
    public static Working working(double thicknessInches, double widthInches, double lengthFeet) {
        THICKNESS.require(thicknessInches);
        WIDTH.require(widthInches);
        LENGTH.require(lengthFeet);
        Source source = Sources.get("navy-lumber");
        return Working.of("Board feet by nominal size")
                .given("T", "nominal thickness", thicknessInches, "in")
                .given("W", "nominal width", widthInches, "in")
                .given("L", "length", lengthFeet, "ft")
                .step("bf", "board feet", "max(T, 1) * W * L / 12", "bf", source)
                .note("A tally: the nominal size counts, not what the piece measures. Under 1 in thick counts as 1 in.")
                .build();
    }

    /**
     * The tally of one piece.
     *
     * @param nominal its nominal size
     * @param length its length
     * @return board feet of the tally
     */
    public static BoardFeet tally(NominalSize nominal, Length length) {
        return BoardFeet.tally(
                boardFeet(nominal.thickness().toInches(), nominal.width().toInches(), length.toFeet()));
    }

    /**
     * The tally of one piece as an exact fraction.
     *
     * @param nominal its nominal size
     * @param length its length
     * @return board feet
     */
    public static Exact exact(NominalSize nominal, Length length) {
        Length thickness = Length.max(nominal.thickness(), Length.inches(1));
        return new Exact(
                BigInteger.valueOf(thickness.toNanometres())
                        .multiply(BigInteger.valueOf(nominal.width().toNanometres()))
                        .multiply(BigInteger.valueOf(length.toNanometres())),
                PER_BOARD_FOOT);
    }

    /**
     * Board feet of a piece that has no nominal size: its own volume over 144 cubic inches, thin or thick.
     *
     * @param thickness as measured
     * @param width as measured
     * @param length as measured
     * @return board feet of the tally
     */
    public static BoardFeet tallyOfActualSize(Length thickness, Length width, Length length) {
        return BoardFeet.tally(thickness.toInches() * width.toInches() * length.toFeet() / 12);
    }

    /**
     * The solid volume of so many board feet of full size: one board foot is 144 cubic inches.
     *
     * @param boardFeet zero or more
     * @return the volume
     */
    public static Volume solid(double boardFeet) {
        return Volume.ofCubicInches(boardFeet * 144);
    }
}
