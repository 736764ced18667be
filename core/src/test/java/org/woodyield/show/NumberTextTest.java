package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Money;

class NumberTextTest {

    @Property
    void fullDigitsReadBackToTheSameDouble(@ForAll double value) {
        assertThat(Double.parseDouble(NumberText.full(value))).isEqualTo(value == 0 ? 0.0 : value);
        assertThat(Double.parseDouble(NumberText.plain(value))).isEqualTo(value == 0 ? 0.0 : value);
        assertThat(NumberText.plain(value)).doesNotContain("E");
    }

    /** The quick way of rounding and that on the shortest decimal are one. */
    @Property(tries = 3000)
    void fixedRoundsTheShortestDecimal(
            @ForAll @DoubleRange(min = -2e6, max = 2e6) double value, @ForAll @IntRange(max = 11) int decimals) {
        double coarse = Math.rint(value * 2000) / 2000;
        for (double one : new double[] {value, value / 1e9, value * 1e9, coarse, coarse / 100, Math.rint(value)}) {
            BigDecimal rounded = new BigDecimal(NumberText.full(one)).setScale(decimals, RoundingMode.HALF_UP);
            assertThat(NumberText.fixed(one, decimals))
                    .isEqualTo(
                            rounded.signum() == 0
                                    ? BigDecimal.ZERO.setScale(decimals).toPlainString()
                                    : rounded.toPlainString());
        }
    }

    @Test
    void anAmountIsWrittenToTheDigitsThatItsUncertaintyLeaves() {
        Money amount = new Money(1185.44, "USD");
        assertThat(NumberText.money(amount, 0)).isEqualTo("1185.44 USD");
        assertThat(NumberText.money(amount, 4.9)).isEqualTo("1185.44 USD");
        assertThat(NumberText.money(amount, 5)).isEqualTo("1185 USD");
        assertThat(NumberText.money(amount, 99.9)).isEqualTo("1185 USD");
        assertThat(NumberText.money(amount, 100)).isEqualTo("1190 USD");
        assertThat(NumberText.money(amount, 2300)).isEqualTo("1200 USD");
        assertThat(NumberText.money(new Money(-3.4, "USD"), 400))
                .as("not nothing")
                .isEqualTo("-3 USD");
        assertThat(NumberText.money(new Money(0.3, "USD"), 400)).isEqualTo("0.30 USD");
        assertThat(NumberText.money(new Money(0, "USD"), 400)).isEqualTo("0.00 USD");
        assertThat(NumberText.money(new Money(-995, "USD"), 400)).isEqualTo("-1000 USD");
    }

    @Test
    void aPartIsNeverWrittenAsNoneOrAll() {
        assertThat(NumberText.partOf(0.25)).isEqualTo("25.0 %");
        assertThat(NumberText.partOf(0.001)).isEqualTo("0.1 %");
        assertThat(NumberText.partOf(0.0005)).isEqualTo("0.05 %");
        assertThat(NumberText.partOf(0.9995)).isEqualTo("99.95 %");
        assertThat(NumberText.partOf(0.00004)).isEqualTo("less than 0.01 %");
        assertThat(NumberText.partOf(0.99996)).isEqualTo("more than 99.99 %");
    }

    @Test
    void fullIsTheShortestThatReadsBack() {
        assertThat(NumberText.full(0.1)).isEqualTo("0.1");
        assertThat(NumberText.full(0.1 + 0.2)).isEqualTo("0.30000000000000004");
        assertThat(NumberText.full(144)).isEqualTo("144");
        assertThat(NumberText.full(1200)).isEqualTo("1200");
        assertThat(NumberText.full(-0.0)).isEqualTo("0");
        assertThat(NumberText.full(2.0e-3)).isEqualTo("0.002");
        assertThat(NumberText.full(1e22 * 3)).isEqualTo("3E+22");
    }

    @Test
    void halvesGoAwayFromZeroOnTheDecimalThatIsSeen() {
        assertThat(NumberText.fixed(0.125, 2)).isEqualTo("0.13");
        assertThat(NumberText.fixed(1.005, 2)).isEqualTo("1.01");
        assertThat(NumberText.fixed(-0.125, 2)).isEqualTo("-0.13");
        assertThat(NumberText.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(NumberText.fixed(12.5, 0)).isEqualTo("13");
    }

    @Test
    void significantDigitsNeverDropDigitsBeforeThePoint() {
        assertThat(NumberText.significant(113.09733552923255, 4)).isEqualTo("113.1");
        assertThat(NumberText.significant(12345.678, 3)).isEqualTo("12346");
        assertThat(NumberText.significant(0.000123456, 3)).isEqualTo("0.000123");
        assertThat(NumberText.significant(9.9996, 4)).isEqualTo("10");
        assertThat(NumberText.significant(99.996, 2)).isEqualTo("100");
        assertThat(NumberText.significant(0, 3)).isEqualTo("0");
        assertThat(NumberText.significant(-2.5, 1)).isEqualTo("-3");
    }

    @Test
    void unitsAndNamesFollowTheNumber() {
        assertThat(NumberText.percent(0.4567)).isEqualTo("45.7 %");
        assertThat(NumberText.money(new Money(12.5, "USD"))).isEqualTo("12.50 USD");
        assertThat(NumberText.duration(424.6)).isEqualTo("7 h 05 min");
        assertThat(NumberText.duration(59.4)).isEqualTo("59 min");
        assertThat(NumberText.duration(59.5)).isEqualTo("1 h 00 min");
        assertThat(NumberText.fixed(Double.POSITIVE_INFINITY, 1)).isEqualTo("without limit");
        assertThat(NumberText.full(Double.NaN)).isEqualTo("not a number");
    }

    @Test
    void noLocaleChangesTheText() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(NumberText.fixed(1234.5, 2)).isEqualTo("1234.50");
            assertThat(NumberText.duration(61)).isEqualTo("1 h 01 min");
        } finally {
            Locale.setDefault(before);
        }
    }
}
