package org.woodyield.wood;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The moisture that wood comes to in air of a given temperature and humidity, by the Hailwood-Horrobin equation of the Wood
 * Handbook:
 *
 * <p>EMC = 1800/W (Kh/(1 - Kh) + (K1 K h + 2 K1 K2 K² h²)/(1 + K1 K h + K1 K2 K² h²)), h the relative humidity as a share.
 *
 * <p>W, K, K1, K2 are quadratics of temperature, printed once for degrees Fahrenheit and once for Celsius. The two sets were
 * rounded apart and differ by up to 0.05 %, so both stand here and each result says which it used. The coefficients are from
 * memory; Table 4-2 of the handbook, which was read, is the check on them.
 *
 * @see org.woodyield.source.Sources source wood-handbook-emc
 */
public final class EquilibriumMoisture {

    /** A quadratic of temperature: a + b T + c T². */
    private record Quadratic(double a, double b, double c) {
        double at(double t) {
            return a + b * t + c * t * t;
        }
    }

    private static final EquilibriumMoisture FAHRENHEIT = new EquilibriumMoisture(
            "°F",
            30,
            270,
            new Quadratic(330, 0.452, 0.00415),
            new Quadratic(0.791, 0.000463, -0.000000844),
            new Quadratic(6.34, 0.000775, -0.0000935),
            new Quadratic(1.09, 0.0284, -0.0000904));

    private static final EquilibriumMoisture CELSIUS = new EquilibriumMoisture(
            "°C",
            -1.2,
            132.3,
            new Quadratic(349, 1.29, 0.0135),
            new Quadratic(0.805, 0.000736, -0.00000273),
            new Quadratic(6.27, -0.00938, -0.000303),
            new Quadratic(1.91, 0.0407, -0.000293));

    /** The humidities for which the equation holds. */
    public static final Domain HUMIDITY = new Domain(
            "relative humidity", "%", 0, 98, "near saturation the equation does not hold; give 98 % or less");

    private final String unit;
    private final Domain temperature;
    private final Quadratic w;
    private final Quadratic k;
    private final Quadratic k1;
    private final Quadratic k2;

    private EquilibriumMoisture(
            String unit, double least, double greatest, Quadratic w, Quadratic k, Quadratic k1, Quadratic k2) {
        this.unit = unit;
        this.temperature = new Domain("temperature", unit, least, greatest, "check the unit of the temperature");
        this.w = w;
        this.k = k;
        this.k1 = k1;
        this.k2 = k2;
    }

    /**
     * The equation with the coefficients for degrees Fahrenheit, 30 to 270 °F.
     *
     * @return the equation
     */
    public static EquilibriumMoisture fahrenheit() {
        return FAHRENHEIT;
    }

    /**
     * The equation with the coefficients for degrees Celsius, -1.2 to 132.3 °C.
     *
     * @return the equation
     */
    public static EquilibriumMoisture celsius() {
        return CELSIUS;
    }

    /**
     * The temperatures for which the coefficients hold.
     *
     * @return the range in this set's own unit
     */
    public Domain temperature() {
        return temperature;
    }

    /**
     * The equation with the other set of coefficients.
     *
     * @return that for Celsius of the one for Fahrenheit, and the other way round
     */
    public EquilibriumMoisture other() {
        return equals(FAHRENHEIT) ? CELSIUS : FAHRENHEIT;
    }

    /**
     * A temperature in the unit of the other set.
     *
     * @param temperature in this set's own unit
     * @return (F - 32) / 1.8, or 1.8 C + 32; not rounded
     */
    public double toOther(double temperature) {
        return equals(FAHRENHEIT) ? (temperature - 32) / 1.8 : temperature * 1.8 + 32;
    }

    /**
     * The equilibrium moisture.
     *
     * @param temperature in this set's own unit
     * @param humidityPercent relative humidity, 0 to 98 %
     * @return percent of oven-dry mass, not rounded
     * @throws OutOfDomainException if temperature or humidity is outside
     */
    @Calculation("wood.equilibrium-moisture")
    public double percent(double temperature, double humidityPercent) {
        this.temperature.require(temperature);
        HUMIDITY.require(humidityPercent);
        double h = humidityPercent / 100;
        double mass = w.at(temperature);
        double first = k.at(temperature);
        double second = k1.at(temperature);
        double third = k2.at(temperature);
        double x = first * h;
        double primary = second * x;
        double secondary = second * third * x * x;
        return 1800 / mass * (x / (1 - x) + (primary + 2 * secondary) / (1 + primary + secondary));
    }

    /**
     * How {@link #percent} came about.
     *
     * @param temperature in this set's own unit
     * @param humidityPercent relative humidity, 0 to 98 %
     * @return the working; its value equals the percentage bit for bit
     * @throws OutOfDomainException if temperature or humidity is outside
     */
    public Working working(double temperature, double humidityPercent) {
        this.temperature.require(temperature);
        HUMIDITY.require(humidityPercent);
        Source source = Sources.get("wood-handbook-emc");
        Working.Builder working = Working.of("Equilibrium moisture, Hailwood-Horrobin, coefficients for " + unit)
                .given("T", "temperature", temperature, unit)
                .given("H", "relative humidity", humidityPercent, "%")
                .step("h", "relative humidity as a share", "H / 100", "", Sources.get("definition"));
        quadratic(working, "W", "molar mass of wood for a site of sorption", w, source);
        quadratic(working, "K", "ratio of dissolved water to free water", k, source);
        quadratic(working, "K1", "ratio of the first layer", k1, source);
        quadratic(working, "K2", "ratio of the second layer", k2, source);
        return working.step("x", "K h", "K * h", "", source)
                .step("p", "first term", "K1 * x", "", source)
                .step("q", "second term", "K1 * K2 * x * x", "", source)
                .step(
                        "EMC",
                        "equilibrium moisture",
                        "1800 / W * (x / (1 - x) + (p + 2 * q) / (1 + p + q))",
                        "%",
                        source)
                .note("An average of species for wood that gains or loses water slowly; single boards differ.")
                .build();
    }

    private static void quadratic(Working.Builder working, String symbol, String name, Quadratic f, Source source) {
        working.constant(symbol + "_a", "constant of " + symbol, f.a(), "", source)
                .constant(symbol + "_b", "factor of T in " + symbol, f.b(), "", source)
                .constant(symbol + "_c", "factor of T squared in " + symbol, f.c(), "", source)
                .step(symbol, name, symbol + "_a + " + symbol + "_b * T + " + symbol + "_c * T * T", "", source);
    }
}
