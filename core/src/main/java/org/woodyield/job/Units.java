package org.woodyield.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The units in which one kind of value may be written.
 *
 * @param factors each unit, as it is written, with its factor to the unit in which the job is computed; that one comes first
 */
record Units(Map<String, Double> factors) {

    /** Shares, in percent. */
    static final Units PERCENT = of(Map.entry("%", 1.0));

    /** Short durations, in seconds. */
    static final Units SECONDS = of(Map.entry("s", 1.0), Map.entry("min", 60.0), Map.entry("h", 3600.0));

    /** Durations, in minutes. */
    static final Units MINUTES = of(Map.entry("min", 1.0), Map.entry("s", 1.0 / 60), Map.entry("h", 60.0));

    /** Durations, in hours. */
    static final Units HOURS = of(Map.entry("h", 1.0), Map.entry("min", 1.0 / 60), Map.entry("s", 1.0 / 3600));

    /** Longer durations, in years. */
    static final Units YEARS = of(Map.entry("years", 1.0), Map.entry("year", 1.0));

    /** Power, in kilowatts. The horsepower is 550 foot-pounds a second, 0.745 699 871 582 27 kW. */
    static final Units POWER = of(Map.entry("kW", 1.0), Map.entry("W", 0.001), Map.entry("hp", 0.74569987158227));

    /** Liquids, in litres. The gallon is that of 231 cubic inches, exactly 3.785 411 784 L; the quart is its quarter. */
    static final Units LIQUID = of(
            Map.entry("L", 1.0),
            Map.entry("mL", 0.001),
            Map.entry("gal", 3.785411784),
            Map.entry("qt", 0.946352946),
            Map.entry("litre", 1.0),
            Map.entry("liter", 1.0),
            Map.entry("gallon", 3.785411784));

    /** Flows of a liquid, in litres an hour. */
    static final Units LIQUID_PER_HOUR =
            of(Map.entry("L/h", 1.0), Map.entry("mL/h", 0.001), Map.entry("gal/h", 3.785411784));

    /** Lumber, in board feet. */
    static final Units BOARD_FEET = of(Map.entry("bf", 1.0), Map.entry("mbf", 1000.0));

    /** Logs by a scale, in thousands of board feet. */
    static final Units THOUSAND_BOARD_FEET = of(Map.entry("mbf", 1.0), Map.entry("bf", 0.001));

    /** Solid wood, in cubic feet. The foot is 0.3048 m exactly. */
    static final Units CUBIC_FEET = of(Map.entry("ft3", 1.0), Map.entry("m3", 1 / 0.028316846592));

    /** Areas, in square metres. The foot is 0.3048 m exactly. */
    static final Units AREA = of(
            Map.entry("m2", 1.0), Map.entry("ft2", 0.09290304), Map.entry("sq m", 1.0), Map.entry("sq ft", 0.09290304));

    /** Speeds of feed, in metres a minute. */
    static final Units FEED = of(Map.entry("m/min", 1.0), Map.entry("ft/min", 0.3048));

    /** Speeds of chain or blade, in metres a second. */
    static final Units SPEED = of(Map.entry("m/s", 1.0), Map.entry("ft/s", 0.3048), Map.entry("ft/min", 0.3048 / 60));

    /** Weights, in kilograms. The pound is 0.453 592 37 kg exactly. */
    static final Units MASS = of(Map.entry("kg", 1.0), Map.entry("lb", 0.45359237), Map.entry("t", 1000.0));

    /** Directions, in degrees. */
    static final Units DEGREES = of(Map.entry("degrees", 1.0), Map.entry("deg", 1.0));

    /** Temperatures on the Fahrenheit scale. */
    static final Units FAHRENHEIT = of(Map.entry("°F", 1.0), Map.entry("F", 1.0));

    /** Temperatures on the Celsius scale. */
    static final Units CELSIUS = of(Map.entry("°C", 1.0), Map.entry("C", 1.0));

    @SafeVarargs
    private static Units of(Map.Entry<String, Double>... factors) {
        Map<String, Double> map = new LinkedHashMap<>();
        for (Map.Entry<String, Double> factor : factors) {
            map.put(factor.getKey(), factor.getValue());
        }
        return new Units(Collections.unmodifiableMap(map));
    }

    /** All units in words. */
    String words() {
        return String.join(", ", factors.keySet());
    }

    /** A unit by itself, for units of this library that have no others here, such as {@code g/kWh}. */
    static Units only(String unit) {
        return of(Map.entry(unit, 1.0));
    }

    /** The factor of a unit, in capitals or not. */
    Optional<Double> factor(String written) {
        return factors.entrySet().stream()
                .filter(unit -> unit.getKey().equalsIgnoreCase(written))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
