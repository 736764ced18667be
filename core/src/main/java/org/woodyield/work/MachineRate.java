package org.woodyield.work;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What a machine costs by the year and the hour, by the usual identities of forest operations: straight-line depreciation,
 * and interest on the average annual investment.
 */
public final class MachineRate {

    private static final Source IDENTITIES = Sources.get("machine-rate-fao");
    private static final Domain PRICE = Domain.notNegative("price", "money");
    private static final Domain LIFE = WorkInput.LIFE.domain();
    private static final Domain HOURS = WorkInput.HOURS_PER_YEAR.domain();

    private MachineRate() {}

    /**
     * The average annual investment: what on average is tied up in the machine over its life.
     *
     * @param price purchase price P
     * @param resale salvage value S at the end, no more than the price
     * @param years life N
     * @return {@code (P - S) (N + 1) / (2 N) + S}
     * @throws org.woodyield.measure.OutOfDomainException if a price is negative, the resale above the price, or the life not
     *     0.1 to 100 years
     */
    @Calculation("work.average-annual-investment")
    public static double averageAnnualInvestment(double price, double resale, double years) {
        require(price, resale, years);
        return (price - resale) * (years + 1) / (2 * years) + resale;
    }

    /**
     * How {@link #averageAnnualInvestment} comes about.
     *
     * @param price purchase price
     * @param resale salvage value at the end
     * @param years life
     * @return the working, with the same result
     */
    public static Working averageAnnualInvestmentWorking(double price, double resale, double years) {
        return prices("Average annual investment", price, resale, years)
                .step("A", "average annual investment", "(P - S) * (N + 1) / (2 * N) + S", "money", IDENTITIES)
                .build();
    }

    /**
     * Straight-line depreciation by the hour.
     *
     * @param price purchase price P
     * @param resale salvage value S at the end, no more than the price
     * @param years life N
     * @param hoursPerYear hours H in a year
     * @return {@code (P - S) / (N H)}
     * @throws org.woodyield.measure.OutOfDomainException if a price is negative, the resale above the price, or life or hours
     *     are outside the limits of {@link WorkInput}
     */
    @Calculation("work.depreciation")
    public static double depreciationPerHour(double price, double resale, double years, double hoursPerYear) {
        require(price, resale, years);
        HOURS.require(hoursPerYear);
        return (price - resale) / (years * hoursPerYear);
    }

    /**
     * How {@link #depreciationPerHour} comes about.
     *
     * @param price purchase price
     * @param resale salvage value at the end
     * @param years life
     * @param hoursPerYear hours in a year
     * @return the working, with the same result
     */
    public static Working depreciationPerHourWorking(double price, double resale, double years, double hoursPerYear) {
        HOURS.require(hoursPerYear);
        return prices("Depreciation by the hour", price, resale, years)
                .given("H", "hours in a year", hoursPerYear, "h")
                .step("D", "depreciation", "(P - S) / (N * H)", "money/h", IDENTITIES)
                .build();
    }

    /**
     * Interest, insurance and taxes by the hour.
     *
     * @param price purchase price P
     * @param resale salvage value S at the end, no more than the price
     * @param years life N
     * @param rate interest, insurance and taxes a year, as a share i of the average annual investment
     * @param hoursPerYear hours H in a year
     * @return {@code A i / H} with the average annual investment A
     * @throws org.woodyield.measure.OutOfDomainException if a price is negative, the resale above the price, or life, rate or
     *     hours are outside the limits of {@link WorkInput}
     */
    @Calculation("work.interest")
    public static double interestPerHour(double price, double resale, double years, double rate, double hoursPerYear) {
        WorkInput.INTEREST.domain().require(rate);
        HOURS.require(hoursPerYear);
        return averageAnnualInvestment(price, resale, years) * rate / hoursPerYear;
    }

    /**
     * How {@link #interestPerHour} comes about.
     *
     * @param price purchase price
     * @param resale salvage value at the end
     * @param years life
     * @param rate interest, insurance and taxes a year, as a share
     * @param hoursPerYear hours in a year
     * @return the working, with the same result
     */
    public static Working interestPerHourWorking(
            double price, double resale, double years, double rate, double hoursPerYear) {
        WorkInput.INTEREST.domain().require(rate);
        HOURS.require(hoursPerYear);
        return prices("Interest by the hour", price, resale, years)
                .given("i", "interest, insurance and taxes a year", rate, "1/year")
                .given("H", "hours in a year", hoursPerYear, "h")
                .step("A", "average annual investment", "(P - S) * (N + 1) / (2 * N) + S", "money", IDENTITIES)
                .step("I", "interest", "A * i / H", "money/h", IDENTITIES)
                .build();
    }

    /**
     * What a unit of output costs.
     *
     * @param perHour cost of an hour
     * @param unitsPerHour output of an hour, above 0
     * @return {@code perHour / unitsPerHour}
     * @throws org.woodyield.measure.OutOfDomainException if the cost is negative or the output not above 0
     */
    @Calculation("work.unit-cost")
    public static double unitCost(double perHour, double unitsPerHour) {
        PRICE.require(perHour);
        Domain.positive("output", "1/h").require(unitsPerHour);
        return perHour / unitsPerHour;
    }

    /**
     * How {@link #unitCost} comes about.
     *
     * @param perHour cost of an hour
     * @param unitsPerHour output of an hour, above 0
     * @return the working, with the same result
     */
    public static Working unitCostWorking(double perHour, double unitsPerHour) {
        PRICE.require(perHour);
        Domain.positive("output", "1/h").require(unitsPerHour);
        return Working.of("Cost of a unit of output")
                .given("C", "cost of an hour", perHour, "money/h")
                .given("Q", "output of an hour", unitsPerHour, "1/h")
                .step("U", "cost of a unit", "C / Q", "money", Sources.get("machine-rate-t0579e"))
                .build();
    }

    /**
     * Fuel by the hour from horsepower and a load factor, the rough way of forest operations; {@link SawingWork} goes by the
     * energy of the cut instead.
     *
     * @param kilogramsPerHorsepowerHour fuel per work
     * @param horsepower of the engine
     * @param loadFactor mean share of it in use
     * @param kilogramsPerLitre density of the fuel
     * @return {@code K P LF / density} in L/h
     * @throws org.woodyield.measure.OutOfDomainException if an argument is outside its limits
     */
    @Calculation("work.fuel-by-the-hour")
    public static double fuelLitresPerHour(
            double kilogramsPerHorsepowerHour, double horsepower, double loadFactor, double kilogramsPerLitre) {
        requireEngine(kilogramsPerHorsepowerHour, horsepower, loadFactor, kilogramsPerLitre);
        return kilogramsPerHorsepowerHour * horsepower * loadFactor / kilogramsPerLitre;
    }

    /**
     * How {@link #fuelLitresPerHour} comes about.
     *
     * @param kilogramsPerHorsepowerHour fuel per work
     * @param horsepower of the engine
     * @param loadFactor mean share of it in use
     * @param kilogramsPerLitre density of the fuel
     * @return the working, with the same result
     */
    public static Working fuelLitresPerHourWorking(
            double kilogramsPerHorsepowerHour, double horsepower, double loadFactor, double kilogramsPerLitre) {
        requireEngine(kilogramsPerHorsepowerHour, horsepower, loadFactor, kilogramsPerLitre);
        return Working.of("Fuel by the hour")
                .given("K", "fuel per work", kilogramsPerHorsepowerHour, "kg/(hp h)")
                .given("P", "power of the engine", horsepower, "hp")
                .given("f", "load factor", loadFactor, "")
                .given("r", "density of the fuel", kilogramsPerLitre, "kg/L")
                .step("B", "fuel", "K * P * f / r", "L/h", IDENTITIES)
                .build();
    }

    private static void requireEngine(double fuel, double horsepower, double load, double density) {
        Domain.of("fuel per work", "kg/(hp h)", Double.MIN_VALUE, 2).require(fuel);
        Domain.of("power", "hp", Double.MIN_VALUE, 2000).require(horsepower);
        Domain.of("load factor", "", 0, 1).require(load);
        WorkInput.FUEL_DENSITY.domain().require(density);
    }

    private static void require(double price, double resale, double years) {
        PRICE.require(price);
        new Domain("resale", "money", 0, price, "a saw is not sold for more than it cost here").require(resale);
        LIFE.require(years);
    }

    private static Working.Builder prices(String title, double price, double resale, double years) {
        require(price, resale, years);
        return Working.of(title)
                .given("P", "purchase price", price, "money")
                .given("S", "resale at the end", resale, "money")
                .given("N", "life", years, "years");
    }
}
