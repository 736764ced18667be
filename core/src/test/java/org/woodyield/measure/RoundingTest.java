package org.woodyield.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RoundingTest {

    @ParameterizedTest
    @CsvSource({
        // value, half up, half down, half to even, down, up
        "2.5,3,2,2,2,3",
        "3.5,4,3,4,3,4",
        "-2.5,-2,-3,-2,-3,-2",
        "2.4,2,2,2,2,3",
        "2.6,3,3,3,2,3",
        "7,7,7,7,7,7",
        "0.49999999999999994,0,0,0,0,1",
        "-0.49999999999999994,0,0,0,-1,0",
        "0.5000000000000001,1,1,1,0,1",
        "4503599627370495.5,4503599627370496,4503599627370495,4503599627370496,4503599627370495,4503599627370496",
        "4503599627370497,4503599627370497,4503599627370497,4503599627370497,4503599627370497,4503599627370497",
    })
    void theNameSaysWhatAnExactHalfDoes(
            double value, double halfUp, double halfDown, double halfEven, double down, double up) {
        assertThat(Rounding.HALF_UP.toWhole(value)).isEqualTo(halfUp);
        assertThat(Rounding.HALF_DOWN.toWhole(value)).isEqualTo(halfDown);
        assertThat(Rounding.HALF_EVEN.toWhole(value)).isEqualTo(halfEven);
        assertThat(Rounding.DOWN.toWhole(value)).isEqualTo(down);
        assertThat(Rounding.UP.toWhole(value)).isEqualTo(up);
    }

    @ParameterizedTest
    @EnumSource(Rounding.class)
    void zeroHasNoSign(Rounding rounding) {
        for (double value : new double[] {-0.0, 0.0}) {
            assertThat(Double.doubleToRawLongBits(rounding.toWhole(value))).isZero();
        }
        assertThat(Double.doubleToRawLongBits(Rounding.UP.toWhole(-0.3))).isZero();
        assertThat(Double.doubleToRawLongBits(Rounding.HALF_EVEN.toWhole(-0.3))).isZero();
    }

    @Property
    void wholeNumbersAreThoseOfDecimalArithmetic(
            @ForAll Rounding rounding, @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        assertThat(rounding.toWhole(value))
                .isEqualTo(expected(rounding, new BigDecimal(value)).doubleValue());
    }

    @Property
    void halvesAreThoseOfDecimalArithmetic(
            @ForAll Rounding rounding, @ForAll @LongRange(min = -(1L << 52), max = 1L << 52) long halves) {
        double value = halves / 2.0;
        assertThat(rounding.toWhole(value))
                .isEqualTo(expected(rounding, new BigDecimal(value)).doubleValue());
    }

    @Property
    void quotientsAreExactWhereDoublesAreNot(
            @ForAll Rounding rounding, @ForAll long numerator, @ForAll @LongRange(min = 1) long denominator) {
        BigInteger[] parts = BigInteger.valueOf(numerator).divideAndRemainder(BigInteger.valueOf(denominator));
        BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
        BigInteger rest = BigInteger.valueOf(numerator).subtract(floor.multiply(BigInteger.valueOf(denominator)));
        int half = rest.shiftLeft(1).compareTo(BigInteger.valueOf(denominator));
        boolean up = switch (rounding) {
            case DOWN -> false;
            case UP -> rest.signum() > 0;
            case HALF_UP -> half >= 0;
            case HALF_DOWN -> half > 0;
            case HALF_EVEN -> half > 0 || (half == 0 && floor.testBit(0));
        };
        assertThat(BigInteger.valueOf(rounding.quotient(numerator, denominator)))
                .isEqualTo(up ? floor.add(BigInteger.ONE) : floor);
    }

    @Test
    void theExactQuotientSeparatesWhatADoubleCannot() {
        long justBelowHalf = (1L << 60) - 1;
        assertThat(Rounding.HALF_UP.quotient(justBelowHalf, 1L << 61)).isZero();
        assertThat(Rounding.HALF_UP.toWhole((double) justBelowHalf / (1L << 61)))
                .isEqualTo(1);
        assertThatThrownBy(() -> Rounding.DOWN.quotient(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Rounding.DOWN.quotient(1, -2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void eachRoundingHasWordsOfItsOwn() {
        assertThat(Rounding.values())
                .extracting(Rounding::label)
                .doesNotHaveDuplicates()
                .contains("nearest, half up", "down");
    }

    @Test
    void stepsAreMultiples() {
        assertThat(Rounding.HALF_UP.toStep(7.4, 5)).isEqualTo(5);
        assertThat(Rounding.HALF_UP.toStep(7.5, 5)).isEqualTo(10);
        assertThat(Rounding.DOWN.toStep(647, 10)).isEqualTo(640);
        assertThat(Rounding.HALF_UP.toStep(0.3, 0.25)).isEqualTo(0.25);
    }

    private static BigDecimal expected(Rounding rounding, BigDecimal value) {
        boolean negative = value.signum() < 0;
        return value.setScale(
                0,
                switch (rounding) {
                    case DOWN -> RoundingMode.FLOOR;
                    case UP -> RoundingMode.CEILING;
                    case HALF_UP -> negative ? RoundingMode.HALF_DOWN : RoundingMode.HALF_UP;
                    case HALF_DOWN -> negative ? RoundingMode.HALF_UP : RoundingMode.HALF_DOWN;
                    case HALF_EVEN -> RoundingMode.HALF_EVEN;
                });
    }
}
