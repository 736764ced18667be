package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Money;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The money of a saw year by year: the outlay before the first board, what each year's sawing saves against buying, and the
 * resale at the end of its life.
 *
 * @param outlay before the first year
 * @param years in order; the last is a part of a year where the life is
 * @param payback years until the savings have paid the outlay, without interest; empty where they never do within the life,
 *     the resale left out
 * @param presentValue of all at the rate, outlay included
 */
public record CashFlow(Money outlay, List<Year> years, Optional<Double> payback, Money presentValue) {

    private static final Source DEFINITION = Sources.get("definition");
    private static final Domain OUTLAY = Domain.notNegative("outlay", "money");
    private static final Domain RATE = Domain.of("rate of interest", "1/year", 0, 1);
    private static final Domain SAVING = Domain.positive("saving of a year", "money");

    /**
     * A year.
     *
     * @param number from 1
     * @param part how much of it lies within the life, 0 to 1
     * @param net saved in it, the resale included in the last
     * @param standing sum from the outlay to the end of the year
     */
    public record Year(int number, double part, Money net, Money standing) {}

    /** Keeps an immutable copy. */
    public CashFlow {
        years = List.copyOf(years);
    }

    /**
     * Lays out the years of a saw.
     *
     * @param outlay spent before the first year, zero or more
     * @param savingPerYear saved in a whole year against buying, negative where sawing costs more
     * @param resale fetched at the end, zero or more
     * @param life years, within the limits of {@link WorkInput#LIFE}
     * @param rate interest a year that money would bring elsewhere, 0 to 1
     * @return the years
     * @throws OutOfDomainException if a value is outside
     * @throws IllegalArgumentException if the currencies differ
     */
    public static CashFlow of(Money outlay, Money savingPerYear, Money resale, double life, double rate) {
        OUTLAY.require(outlay.amount());
        OUTLAY.require(resale.amount());
        WorkInput.LIFE.domain().require(life);
        RATE.require(rate);
        List<Year> years = new ArrayList<>();
        Money standing = outlay.times(-1);
        Money present = standing;
        int last = (int) Math.ceil(life);
        for (int number = 1; number <= last; number++) {
            double part = Math.min(1, life - (number - 1));
            Money net = savingPerYear.times(part);
            if (number == last) {
                net = net.plus(resale);
            }
            standing = standing.plus(net);
            present = present.plus(net.times(presentWorth(rate, Math.min(number, life))));
            years.add(new Year(number, part, net, standing));
        }
        Optional<Double> payback = savingPerYear.amount() > 0
                ? Optional.of(payback(outlay.amount(), savingPerYear.amount())).filter(time -> time <= life)
                : Optional.empty();
        return new CashFlow(outlay, years, payback, present);
    }

    /**
     * What one unit of money after some years is worth now.
     *
     * @param rate interest a year, 0 to 1
     * @param years from now, zero or more
     * @return {@code exp(-n ln(1 + i))}, which is 1 / (1 + i)^n for any n
     * @throws OutOfDomainException if a value is outside
     */
    @Calculation("work.present-worth")
    public static double presentWorth(double rate, double years) {
        RATE.require(rate);
        Domain.notNegative("time", "years").require(years);
        return StrictMath.exp(0 - years * StrictMath.log(1 + rate));
    }

    /**
     * How {@link #presentWorth} comes about.
     *
     * @param rate interest a year, 0 to 1
     * @param years from now, zero or more
     * @return the working, with the same result
     * @throws OutOfDomainException if a value is outside
     */
    public static Working presentWorthWorking(double rate, double years) {
        RATE.require(rate);
        Domain.notNegative("time", "years").require(years);
        return Working.of("Present worth of one unit of money")
                .given("i", "interest a year", rate, "1/year")
                .given("n", "years from now", years, "years")
                .step("W", "present worth", "exp(0 - n * ln(1 + i))", "", DEFINITION)
                .build();
    }

    /**
     * The years until savings have paid an outlay, without interest.
     *
     * @param outlay zero or more
     * @param savingPerYear above zero
     * @return {@code outlay / saving}
     * @throws OutOfDomainException if a value is outside
     */
    @Calculation("work.payback")
    public static double payback(double outlay, double savingPerYear) {
        OUTLAY.require(outlay);
        SAVING.require(savingPerYear);
        return outlay / savingPerYear;
    }

    /**
     * How {@link #payback} comes about.
     *
     * @param outlay zero or more
     * @param savingPerYear above zero
     * @return the working, with the same result
     * @throws OutOfDomainException if a value is outside
     */
    public static Working paybackWorking(double outlay, double savingPerYear) {
        OUTLAY.require(outlay);
        SAVING.require(savingPerYear);
        return Working.of("Payback")
                .given("O", "outlay", outlay, "money")
                .given("s", "saving of a year", savingPerYear, "money/year")
                .step("T", "payback", "O / s", "years", DEFINITION)
                .build();
    }
}
