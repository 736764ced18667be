package org.woodyield.lumber;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
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
    private static final Domain ACTUAL_THICKNESS = Domain.positive("measured thickness", "in");
    private static final Domain ACTUAL_WIDTH = Domain.positive("measured width", "in");
    private static final Domain ACTUAL_LENGTH = Domain.positive("measured length", "ft");
    private static final Domain PARTS = Domain.of("parts of a foot", "", 1, 1_000_000);
    private static final BigInteger CUBIC_INCHES_PER_BOARD_FOOT = BigInteger.valueOf(144);
    private static final Length METRE = Length.millimetres(1000);

    /**
     * An exact count of board feet, of square feet of surface, or of cubic metres.
     *
     * @param numerator of the fraction in lowest terms
     * @param denominator of the fraction in lowest terms, above zero
     */
    public record Exact(BigInteger numerator, BigInteger denominator) implements Comparable<Exact> {

        /** None at all. */
        public static final Exact ZERO = new Exact(BigInteger.ZERO, BigInteger.ONE);

        private static final int DOUBLE_BITS = 53;
        private static final int LONG_BITS = 62;

        /**
         * Brings the fraction to lowest terms.
         *
         * @throws IllegalArgumentException if the denominator is not above zero
         */
        public Exact {
            if (denominator.signum() <= 0) {
                throw new IllegalArgumentException("denominator is " + denominator + "; allowed: above 0");
            }
            if (!denominator.equals(BigInteger.ONE)) {
                BigInteger divisor = divisor(numerator, denominator);
                if (!divisor.equals(BigInteger.ONE)) {
                    numerator = numerator.divide(divisor);
                    denominator = denominator.divide(divisor);
                }
            }
        }

        /** The greatest common divisor; Euclid's way in longs where they hold both, which is some times faster. */
        private static BigInteger divisor(BigInteger one, BigInteger other) {
            if (one.bitLength() > LONG_BITS || other.bitLength() > LONG_BITS) {
                return one.gcd(other);
            }
            long a = Math.abs(one.longValue());
            long b = Math.abs(other.longValue());
            while (b != 0) {
                long rest = a % b;
                a = b;
                b = rest;
            }
            return BigInteger.valueOf(a);
        }

        /**
         * The sum.
         *
         * @param other a count
         * @return this and the other
         */
        public Exact plus(Exact other) {
            // The divisor of both denominators comes out first: long sums keep small terms.
            BigInteger common = divisor(denominator, other.denominator);
            BigInteger factor = other.denominator.divide(common);
            return new Exact(
                    numerator.multiply(factor).add(other.numerator.multiply(denominator.divide(common))),
                    denominator.multiply(factor));
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
         * Rounded to a part of a foot.
         *
         * @param parts how many steps in a foot: 1 for whole feet, 10 for tenths
         * @param rounding the rounding
         * @return board feet, or square feet
         * @throws OutOfDomainException if parts is not 1 to 1 000 000
         * @throws ArithmeticException if the count does not fit
         */
        public double rounded(int parts, Rounding rounding) {
            PARTS.require(parts);
            BigInteger scaled = numerator.multiply(BigInteger.valueOf(parts));
            return (double) rounding.quotient(scaled, denominator).longValueExact() / parts;
        }

        /**
         * How many of a size go into this.
         *
         * @param each the size of one, above zero
         * @param rounding what a rest does: {@link Rounding#UP} for the pieces to buy, {@link Rounding#DOWN} for those to have
         * @return a count
         * @throws OutOfDomainException if one has nothing
         * @throws ArithmeticException if the count does not fit
         */
        public long count(Exact each, Rounding rounding) {
            if (each.numerator.signum() <= 0) {
                throw new OutOfDomainException("size of one", each.toString(), "", "above 0", "");
            }
            return rounding.quotient(numerator.multiply(each.denominator), denominator.multiply(each.numerator))
                    .longValueExact();
        }

        /**
         * The nearest double.
         *
         * @return board feet, or square feet
         */
        public double value() {
            // Two whole numbers that a double holds divide to the nearest double.
            if (numerator.bitLength() <= DOUBLE_BITS && denominator.bitLength() <= DOUBLE_BITS) {
                return numerator.doubleValue() / denominator.doubleValue();
            }
            return new BigDecimal(numerator)
                    .divide(new BigDecimal(denominator), MathContext.DECIMAL128)
                    .doubleValue();
        }

        @Override
        public int compareTo(Exact other) {
            return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
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
        Length inch = Length.inches(1);
        Exact inches = product(Length.max(nominal.thickness(), inch), nominal.width(), length, inch);
        return new Exact(inches.numerator, inches.denominator.multiply(CUBIC_INCHES_PER_BOARD_FOOT));
    }

    /** The volume in cubes of a length; each factor in lowest terms first, so that few products outgrow a long. */
    private static Exact product(Length thickness, Length width, Length length, Length edge) {
        BigInteger numerator = BigInteger.ONE;
        BigInteger denominator = BigInteger.ONE;
        for (Length factor : List.of(thickness, width, length)) {
            Exact edges = new Exact(BigInteger.valueOf(factor.toNanometres()), BigInteger.valueOf(edge.toNanometres()));
            numerator = numerator.multiply(edges.numerator);
            denominator = denominator.multiply(edges.denominator);
        }
        return new Exact(numerator, denominator);
    }

    /**
     * The solid volume of a piece as an exact fraction.
     *
     * @param thickness as measured
     * @param width as measured
     * @param length as measured
     * @return cubic metres
     */
    public static Exact exactCubicMetres(Length thickness, Length width, Length length) {
        return product(thickness, width, length, METRE);
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

    /**
     * The board feet that a solid volume holds, nothing lost: the inverse of {@link #solid}.
     *
     * @param solid the volume
     * @return board feet
     */
    public static double ofSolid(Volume solid) {
        return solid.cubicMetres() / Volume.CUBIC_METRES_PER_CUBIC_INCH / 144;
    }

    /**
     * How many times the counted volume a piece really holds: {@code t * w * l / (T * W * L)}, measured over nominal. With it
     * the weight or the solid volume of a tally follows from its board feet.
     *
     * @param thicknessInches measured, above 0
     * @param nominalThicknessInches above 0
     * @param widthInches measured, above 0
     * @param nominalWidthInches above 0
     * @param lengthFeet measured, above 0
     * @param nominalLengthFeet above 0
     * @return the factor; 5.25 / 8 for a dressed 2x4
     * @throws OutOfDomainException if an argument is not above zero
     * @see org.woodyield.source.Sources source wengert-69
     */
    @Calculation("lumber.volume-factor")
    public static double volumeFactor(
            double thicknessInches,
            double nominalThicknessInches,
            double widthInches,
            double nominalWidthInches,
            double lengthFeet,
            double nominalLengthFeet) {
        ACTUAL_THICKNESS.require(thicknessInches);
        THICKNESS.require(nominalThicknessInches);
        ACTUAL_WIDTH.require(widthInches);
        WIDTH.require(nominalWidthInches);
        ACTUAL_LENGTH.require(lengthFeet);
        LENGTH.require(nominalLengthFeet);
        return thicknessInches
                / nominalThicknessInches
                * (widthInches / nominalWidthInches)
                * (lengthFeet / nominalLengthFeet);
    }

    /**
     * How {@link #volumeFactor} came about.
     *
     * @param thicknessInches measured, above 0
     * @param nominalThicknessInches above 0
     * @param widthInches measured, above 0
     * @param nominalWidthInches above 0
     * @param lengthFeet measured, above 0
     * @param nominalLengthFeet above 0
     * @return the working; its value equals the factor bit for bit
     * @throws OutOfDomainException if an argument is not above zero
     */
    public static Working volumeFactorWorking(
            double thicknessInches,
            double nominalThicknessInches,
            double widthInches,
            double nominalWidthInches,
            double lengthFeet,
            double nominalLengthFeet) {
        return Working.of("Measured volume over counted volume")
                .given("t", "measured thickness", ACTUAL_THICKNESS.require(thicknessInches), "in")
                .given("T", "nominal thickness", THICKNESS.require(nominalThicknessInches), "in")
                .given("w", "measured width", ACTUAL_WIDTH.require(widthInches), "in")
                .given("W", "nominal width", WIDTH.require(nominalWidthInches), "in")
                .given("l", "measured length", ACTUAL_LENGTH.require(lengthFeet), "ft")
                .given("L", "nominal length", LENGTH.require(nominalLengthFeet), "ft")
                .step("CF", "factor", "t / T * (w / W) * (l / L)", "", Sources.get("wengert-69"))
                .build();
    }
}
