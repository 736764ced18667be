package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Money;
import org.woodyield.measure.OutOfDomainException;

class CashFlowTest {

    private static Money usd(double amount) {
        return new Money(amount, "USD");
    }

    @Test
    void yearsAddUpFromTheOutlayToTheResale() {
        CashFlow flow = CashFlow.of(usd(1000), usd(400), usd(100), 3, 0);
        assertThat(flow.years()).extracting(CashFlow.Year::standing).containsExactly(usd(-600), usd(-200), usd(300));
        assertThat(flow.payback().orElseThrow()).isEqualTo(2.5);
        assertThat(flow.presentValue().amount()).isEqualTo(300);
    }

    @Test
    void aPartOfAYearCountsInPart() {
        CashFlow flow = CashFlow.of(usd(1000), usd(400), usd(0), 2.5, 0);
        assertThat(flow.years()).hasSize(3);
        assertThat(flow.years().get(2).part()).isEqualTo(0.5);
        assertThat(flow.years().get(2).standing().amount()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aSavingThatNeverPaysHasNoPayback() {
        assertThat(CashFlow.of(usd(1000), usd(100), usd(0), 5, 0.05).payback()).isEmpty();
        assertThat(CashFlow.of(usd(1000), usd(-100), usd(0), 5, 0.05).payback()).isEmpty();
    }

    @Test
    void whatIsNoRateLifeOrSavingIsRefused() {
        assertThatThrownBy(() -> CashFlow.of(usd(1), usd(1), usd(0), 0, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CashFlow.of(usd(-1), usd(1), usd(0), 1, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CashFlow.presentWorth(Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CashFlow.presentWorth(0.1, -1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CashFlow.payback(1, 0)).isInstanceOf(OutOfDomainException.class);
    }

    @Property(tries = 500)
    void workingsHaveTheSameBits(
            @ForAll @DoubleRange(min = 0, max = 1) double rate,
            @ForAll @DoubleRange(min = 0, max = 100) double years,
            @ForAll @DoubleRange(min = 0.01, max = 1e6) double saving) {
        assertThat(CashFlow.presentWorthWorking(rate, years).value()).isEqualTo(CashFlow.presentWorth(rate, years));
        assertThat(CashFlow.paybackWorking(years, saving).value()).isEqualTo(CashFlow.payback(years, saving));
    }

    /** The closed sum of a geometric series, added up the other way. */
    @Property(tries = 300)
    void presentValueIsThatOfAnAnnuity(
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double rate,
            @ForAll @DoubleRange(min = 1, max = 1e4) double saving) {
        int life = 7;
        double annuity = saving * (1 - Math.pow(1 + rate, -life)) / rate;
        assertThat(CashFlow.of(usd(500), usd(saving), usd(0), life, rate)
                        .presentValue()
                        .amount())
                .isCloseTo(annuity - 500, within(1e-6 * (annuity + 500)));
    }
}
