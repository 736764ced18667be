package org.woodyield.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    private static final long LONGEST = 1L << 53;

    /** Expected values worked out from 25 400 000 nm to the inch and 304 800 000 nm to the foot. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12 ft 6 in      | 3810000000",
                "5 1/2 in        | 139700000",
                "5-1/2\"         | 139700000",
                "6' 2\"          | 1879600000",
                "6' 2 1/2\"      | 1892300000",
                "6'-2\"          | 1879600000",
                "6'-2 1/2''      | 1892300000",
                "6′ 2″           | 1879600000",
                "6’ 2”           | 1879600000",
                "12 ft 6 1/2 in  | 3822700000",
                "12ft6in         | 3810000000",
                "8 feet          | 2438400000",
                "1 foot 1 inch   | 330200000",
                "3 INCHES        | 76200000",
                "1/64 in         | 396875",
                "3/4\"           | 19050000",
                "0.001 in        | 25400",
                ".5 in           | 12700000",
                "2.4 m           | 2400000000",
                "38 mm           | 38000000",
                "0.1 mm          | 100000",
                "1 m 20 cm 5 mm  | 1205000000",
                "0 mm            | 0",
                "0.000001 mm     | 1",
            })
    void whatPeopleWriteIsReadExactly(String text, long nanometres) {
        assertThat(Length.parse(text).toNanometres()).isEqualTo(nanometres);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "5,5 mm         | write a decimal point, not a comma: 5.5 mm",
                "12 ft 6,5 in   | write a decimal point, not a comma: 12 ft 6.5 in",
                "5.5            | add the unit: in, ft, mm, cm or m",
                "5 1/2          | add the unit: in, ft, mm, cm or m",
                "-5             | add the unit: in, ft, mm, cm or m",
                "-5 in          | lengths are not negative",
                "5 yd           | the unit 'yd' is not known: in, ft, mm, cm and m are",
                "1e3 mm         | write the number out, without an exponent",
                "6 in 2 ft      | the larger unit comes first, each once",
                "6 in 2 in      | the larger unit comes first, each once",
                "1/0 in         | the divisor of a fraction is above 0, as in 3/4 in",
                "1/128 in       | write the nearest 1/64 in or 0.001 in",
                "1/3 in         | write the nearest 1/64 in or 0.001 in",
                "0.0000001 mm   | write the nearest 1/64 in or 0.001 in",
                "10000 m 1 mm m | allowed: a number and a unit",
                "9100000 m      | allowed: shorter than 9000 km",
            })
    void whatIsNoLengthIsRefusedWithTheFix(String text, String fix) {
        assertThatThrownBy(() -> Length.parse(text))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageStartingWith("length is '" + text + "'")
                .hasMessageContaining(fix);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  ",
                "in",
                "five in",
                "5.5.5 in",
                "5 in of wood",
                "12 ft -6 in",
                "NaN mm",
                "5//2 in",
                "+5 in"
            })
    void whatIsNoLengthIsRefusedWithTheWaysToWriteOne(String text) {
        assertThatThrownBy(() -> Length.parse(text))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("such as 12 ft 6 in, 5 1/2 in, 2.4 m or 38 mm");
    }

    /** 1/128 in is 198 437.5 nm, an exact half; a third of an inch is 8 466 666.67 nm. */
    @ParameterizedTest
    @CsvSource({
        "DOWN,198437,8466666",
        "UP,198438,8466667",
        "HALF_UP,198438,8466667",
        "HALF_DOWN,198437,8466667",
        "HALF_EVEN,198438,8466667",
    })
    void aRoundingByNameTakesWhatDoesNotFit(Rounding rounding, long half, long third) {
        assertThat(Length.parse("1/128 in", rounding).toNanometres()).isEqualTo(half);
        assertThat(Length.parse("1/3 in", rounding).toNanometres()).isEqualTo(third);
    }

    @Test
    void halfToEvenAlsoGoesDown() {
        assertThat(Length.parse("3/128 in", Rounding.HALF_EVEN).toNanometres()).isEqualTo(595312);
    }

    @ParameterizedTest
    @EnumSource(Rounding.class)
    void aLengthThatFitsIsTheSameUnderEveryRounding(Rounding rounding) {
        assertThat(Length.parse("12 ft 6 33/64 in", rounding)).isEqualTo(Length.parse("12 ft 6 33/64 in"));
    }

    @Property
    void aLengthReadsBackWhatItWrites(@ForAll @LongRange(min = 0, max = LONGEST - 1) long nanometres) {
        Length length = Length.nanometres(nanometres);
        assertThat(Length.parse(length.toString())).isEqualTo(length);
    }

    @Property
    void sixtyFourthsReadBackInInchesAndInFeet(@ForAll @IntRange(max = 1_000_000) int parts) {
        Length length = Length.inches(parts, 64);
        assertThat(length.toString()).endsWith("in");
        assertThat(Length.parse(length.toString())).isEqualTo(length);
        assertThat(Length.parse(length.inFeet(64, Rounding.DOWN))).isEqualTo(length);
    }

    @Test
    void fractionsAreWrittenInLowestTerms() {
        assertThat(Length.parse("5.5 in").inInches(64, Rounding.HALF_UP)).isEqualTo("5 1/2 in");
        assertThat(Length.parse("5.49 in").inInches(16, Rounding.HALF_UP)).isEqualTo("5 1/2 in");
        assertThat(Length.parse("5.49 in").inInches(16, Rounding.DOWN)).isEqualTo("5 7/16 in");
        assertThat(Length.parse("1/32 in").inInches(16, Rounding.HALF_UP)).isEqualTo("1/16 in");
        assertThat(Length.parse("1/32 in").inInches(16, Rounding.HALF_DOWN)).isEqualTo("0 in");
        assertThat(Length.ZERO.minus(Length.parse("3/4 in")).inInches(4, Rounding.DOWN))
                .isEqualTo("-3/4 in");
        assertThatThrownBy(() -> Length.ZERO.inInches(3, Rounding.DOWN)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void feetCarryOverAndTheSignStandsOnce() {
        assertThat(Length.parse("99 1/2 in").inFeet(2, Rounding.DOWN)).isEqualTo("8 ft 3 1/2 in");
        assertThat(Length.parse("11.99 in").inFeet(8, Rounding.HALF_UP)).isEqualTo("1 ft");
        assertThat(Length.parse("7 in").inFeet(8, Rounding.HALF_UP)).isEqualTo("7 in");
        assertThat(Length.ZERO.minus(Length.parse("6 ft 6 in")).inFeet(8, Rounding.DOWN))
                .isEqualTo("-6 ft 6 in");
    }

    @Test
    void millimetresKeepTheDecimalPointInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Length.parse("1.5 in").inMillimetres(1)).isEqualTo("38.1 mm");
            assertThat(Length.parse("38.05 mm").inMillimetres(1)).isEqualTo("38.1 mm");
            assertThat(Length.parse("38 mm")).hasToString("38 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void doublesAreTheNearest() {
        assertThat(Length.parse("1/64 in").toInches()).isEqualTo(0.015625);
        assertThat(Length.feet(16).toInches()).isEqualTo(192);
        assertThat(Length.inches(1).toFeet()).isEqualTo(1 / 12.0);
        assertThat(Length.parse("2.4 m").toMetres()).isEqualTo(2.4);
        assertThat(Length.parse("0.1 mm").toMillimetres()).isEqualTo(0.1);
    }

    @Test
    void doublesBecomeLengthsByANamedRounding() {
        assertThat(Length.ofInches(0.1, Rounding.HALF_UP)).isEqualTo(Length.parse("0.1 in"));
        assertThat(Length.ofFeet(16, Rounding.HALF_UP)).isEqualTo(Length.feet(16));
        assertThat(Length.ofMetres(2.4, Rounding.HALF_UP)).isEqualTo(Length.millimetres(2400));
        assertThat(Length.ofInches(1 / 3.0, Rounding.UP).toNanometres()).isEqualTo(8466667);
        for (double absurd : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 1e300}) {
            assertThatThrownBy(() -> Length.ofMetres(absurd, Rounding.DOWN)).isInstanceOf(OutOfDomainException.class);
        }
    }

    @Test
    void fractionsOfAnInchAreExactOrRefused() {
        assertThat(Length.inches(11, 2)).isEqualTo(Length.parse("5 1/2 in"));
        assertThat(Length.inches(-1, 64).toNanometres()).isEqualTo(-396875);
        assertThatThrownBy(() -> Length.inches(1, 128)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Length.inches(1, 3)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Length.inches(1, 0)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void overflowThrows() {
        assertThatThrownBy(() -> Length.nanometres(Long.MAX_VALUE).plus(Length.nanometres(1)))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.feet(Long.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.nanometres(Long.MIN_VALUE).minus(Length.nanometres(1)))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.inches(1).times(Long.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void stepsAndSharesAreCountedExactly() {
        Length quarter = Length.inches(1, 4);
        assertThat(Length.parse("5 7/8 in").steps(quarter, Rounding.DOWN)).isEqualTo(23);
        assertThat(Length.parse("5 7/8 in").steps(quarter, Rounding.HALF_UP)).isEqualTo(24);
        assertThat(Length.parse("5 7/8 in").steps(quarter, Rounding.HALF_DOWN)).isEqualTo(23);
        assertThat(Length.parse("5 7/8 in").roundedTo(quarter, Rounding.UP)).isEqualTo(Length.inches(6));
        assertThat(Length.inches(1).dividedBy(3, Rounding.UP).toNanometres()).isEqualTo(8466667);
        assertThatThrownBy(() -> Length.inches(1).dividedBy(0, Rounding.UP))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.inches(1).steps(Length.ZERO, Rounding.UP))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void lengthsAreEqualByTheirNanometres() {
        assertThat(Length.inches(1))
                .isEqualTo(Length.parse("25.4 mm"))
                .hasSameHashCodeAs(Length.parse("25.4 mm"))
                .isNotEqualTo(Length.millimetres(25))
                .doesNotHaveSameHashCodeAs(Length.millimetres(25));
        assertThat(Length.ZERO.isPositive()).isFalse();
        assertThat(Length.nanometres(1).isPositive()).isTrue();
    }

    @Test
    void theLimitsThemselvesAreTold() {
        assertThatThrownBy(() -> Length.ofMetres(9_000_000, Rounding.DOWN)).isInstanceOf(OutOfDomainException.class);
        assertThat(Length.ofMetres(8_999_999, Rounding.DOWN).toMetres()).isEqualTo(8_999_999);
        assertThat(Length.inches(1, 2).inInches(1, Rounding.UP)).isEqualTo("1 in");
        assertThatThrownBy(() -> Length.ZERO.inInches(0, Rounding.DOWN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Length.ZERO.inInches(128, Rounding.DOWN)).isInstanceOf(OutOfDomainException.class);
    }

    @Property
    void sumAndDifferenceAreInverse(
            @ForAll @LongRange(min = -LONGEST, max = LONGEST) long a,
            @ForAll @LongRange(min = -LONGEST, max = LONGEST) long b) {
        Length x = Length.nanometres(a);
        Length y = Length.nanometres(b);
        assertThat(x.plus(y).minus(y)).isEqualTo(x).hasSameHashCodeAs(x);
        assertThat(Length.max(x, y).plus(Length.min(x, y))).isEqualTo(x.plus(y));
        assertThat(Integer.signum(x.compareTo(y))).isEqualTo(Long.compare(a, b));
    }

    /** What is read by the short way and by the general one is the same length; the rounding parser knows the general only. */
    @Property(tries = 500)
    void aPlainDecimalReadsAsTheGeneralWayReadsIt(
            @ForAll @IntRange(min = 0, max = 99999) int whole, @ForAll @IntRange(min = 0, max = 999) int thousandths) {
        for (String unit : new String[] {"mm", "cm", "m", "in", "ft", "\"", "'"}) {
            for (String number : new String[] {"" + whole, whole + "." + thousandths, whole + ".500"}) {
                for (String text : new String[] {number + unit, number + "  " + unit}) {
                    assertThat(Length.parse(text)).as(text).isEqualTo(Length.parse(text, Rounding.DOWN));
                }
            }
        }
    }

    @Property(tries = 500)
    void termsOfTwoUnitsReadAsTheGeneralWayReadsThem(
            @ForAll @IntRange(min = 0, max = 9999) int first, @ForAll @IntRange(min = 0, max = 9999) int second) {
        for (String text : new String[] {
            first + " ft " + second + " in",
            first + "ft" + second + ".25in",
            first + "' " + second + "\"",
            first + ".5 m " + second + " mm",
            first + " m " + second + " ft 1.5 in",
        }) {
            assertThat(Length.parse(text)).as(text).isEqualTo(Length.parse(text, Rounding.DOWN));
        }
        for (String text : new String[] {
            first + " in " + second + " ft",
            first + " ft " + second + " ft",
            first + " ft " + second,
            first + " ft " + second + " yd"
        }) {
            assertThatThrownBy(() -> Length.parse(text)).as(text).isInstanceOf(OutOfDomainException.class);
        }
    }
}
