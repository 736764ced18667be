package org.woodyield.wood;

import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How long red oak dries in a kiln at one temperature: the moisture above that of the air falls away as exp(-t / tau), tau =
 * L^1.52 / (0.0575 + 0.00142 p) days, L the thickness in inches and p the saturation pressure of water in mm of mercury.
 *
 * <p>It was made for kilns: outside 110 to 180 °F and 1 to 2 in it is refused, and air-drying is not asked of it.
 *
 * @see org.woodyield.source.Sources sources simpson-tschernitz, red-oak-range-memory and antoine-memory
 */
public final class RedOakKiln {

    /** Kiln temperatures, for which it was made. */
    public static final Domain TEMPERATURE = new Domain(
            "kiln temperature",
            "°F",
            110,
            180,
            "the equation was made for kilns; for the open air see the air-drying times");
    /** Thicknesses for which it was made. */
    public static final Domain THICKNESS =
            new Domain("thickness", "in", 1, 2, "the equation is for lumber of 4/4 to 8/4");

    private static final Domain START = new Domain(
            "moisture at the start", "%", 6, 100, "give the moisture on the oven-dry basis, water over dry wood");

    private RedOakKiln() {}

    /**
     * Whether the equation was made for this wood.
     *
     * @param species a species
     * @return true for those that are called red oak; other oaks of their group are not taken in
     */
    public static boolean isFor(Species species) {
        return species.commonName().endsWith("red oak");
    }

    /**
     * The pressure of saturated steam by Antoine's equation, 10^(8.07131 - 1730.63 / (233.426 + t)), t in degrees Celsius.
     *
     * @param fahrenheit 110 to 180 °F
     * @return millimetres of mercury, not rounded
     * @throws OutOfDomainException if the temperature is outside
     */
    @Calculation("wood.saturation-pressure")
    public static double saturationPressure(double fahrenheit) {
        double celsius = (TEMPERATURE.require(fahrenheit) - 32) / 1.8;
        return StrictMath.pow(10, 8.07131 - 1730.63 / (233.426 + celsius));
    }

    /**
     * How {@link #saturationPressure} came about.
     *
     * @param fahrenheit 110 to 180 °F
     * @return the working; its value equals the pressure bit for bit
     * @throws OutOfDomainException if the temperature is outside
     */
    public static Working saturationPressureWorking(double fahrenheit) {
        TEMPERATURE.require(fahrenheit);
        return pressure(Working.of("Pressure of saturated steam"), fahrenheit).build();
    }

    private static Working.Builder pressure(Working.Builder working, double fahrenheit) {
        return working.given("F", "kiln temperature", fahrenheit, "°F")
                .step("t_C", "the same in degrees Celsius", "(F - 32) / 1.8", "°C", Sources.get("definition"))
                .step(
                        "p",
                        "pressure of saturated steam",
                        "10 ^ (8.07131 - 1730.63 / (233.426 + t_C))",
                        "mmHg",
                        Sources.get("antoine-memory"));
    }

    /**
     * The time in which the moisture above that of the air falls to 1/e.
     *
     * @param thickness 1 to 2 in
     * @param fahrenheit 110 to 180 °F
     * @return days, not rounded
     * @throws OutOfDomainException if an argument is outside
     */
    @Calculation("wood.red-oak-time-constant")
    public static double timeConstant(Length thickness, double fahrenheit) {
        double inches = THICKNESS.require(thickness.toInches());
        return StrictMath.pow(inches, 1.52) / (0.0575 + 0.00142 * saturationPressure(fahrenheit));
    }

    /**
     * How {@link #timeConstant} came about.
     *
     * @param thickness 1 to 2 in
     * @param fahrenheit 110 to 180 °F
     * @return the working; its value equals the time bit for bit
     * @throws OutOfDomainException if an argument is outside
     */
    public static Working timeConstantWorking(Length thickness, double fahrenheit) {
        timeConstant(thickness, fahrenheit); // refuses what cannot be shown
        return constant(Working.of("Time constant of red oak in a kiln"), thickness, fahrenheit)
                .build();
    }

    private static Working.Builder constant(Working.Builder working, Length thickness, double fahrenheit) {
        return pressure(working, fahrenheit)
                .given("L", "thickness", thickness.toInches(), "in")
                .step(
                        "tau",
                        "time constant",
                        "L ^ 1.52 / (0.0575 + 0.00142 * p)",
                        "days",
                        Sources.get("simpson-tschernitz"))
                .note("Held to 110 to 180 °F and 1 to 2 in, a range that is recalled and not read.");
    }

    /**
     * The days from one moisture to another: -tau ln((M2 - E) / (M1 - E)).
     *
     * @param thickness 1 to 2 in
     * @param fahrenheit 110 to 180 °F
     * @param equilibriumPercent E, the equilibrium moisture of the kiln's air, 0 or more
     * @param fromPercent M1, up to 100 %
     * @param toPercent M2, above E, no more than M1
     * @return days, not rounded
     * @throws OutOfDomainException if an argument is outside
     */
    @Calculation("wood.red-oak-kiln-days")
    public static double days(
            Length thickness, double fahrenheit, double equilibriumPercent, double fromPercent, double toPercent) {
        requireMoistures(equilibriumPercent, fromPercent, toPercent);
        return -timeConstant(thickness, fahrenheit)
                * StrictMath.log((toPercent - equilibriumPercent) / (fromPercent - equilibriumPercent));
    }

    /**
     * How {@link #days} came about.
     *
     * @param thickness 1 to 2 in
     * @param fahrenheit 110 to 180 °F
     * @param equilibriumPercent the equilibrium moisture of the kiln's air
     * @param fromPercent moisture at the start
     * @param toPercent moisture at the end
     * @return the working; its value equals the days bit for bit
     * @throws OutOfDomainException as {@link #days}
     */
    public static Working daysWorking(
            Length thickness, double fahrenheit, double equilibriumPercent, double fromPercent, double toPercent) {
        days(thickness, fahrenheit, equilibriumPercent, fromPercent, toPercent); // refuses what cannot be shown
        return constant(Working.of("Days of red oak in a kiln"), thickness, fahrenheit)
                .given("E", "equilibrium moisture of the air", equilibriumPercent, "%")
                .given("M_1", "moisture at the start", fromPercent, "%")
                .given("M_2", "moisture at the end", toPercent, "%")
                .step(
                        "days",
                        "days from the first to the second",
                        "-tau * ln((M_2 - E) / (M_1 - E))",
                        "days",
                        Sources.get("simpson-tschernitz"))
                .note("At one temperature and humidity; oak dried green at kiln heat checks. It is no kiln schedule.")
                .build();
    }

    private static void requireMoistures(double equilibrium, double from, double to) {
        START.require(from);
        Domain.of("equilibrium moisture", "%", 0, 30).require(equilibrium);
        if (!(to > equilibrium && to <= from)) {
            throw new OutOfDomainException(
                    "moisture at the end",
                    Double.toString(to),
                    "%",
                    "above the equilibrium, " + equilibrium + ", up to the start, " + from,
                    "wood comes to the equilibrium of its air and never below it");
        }
    }
}
