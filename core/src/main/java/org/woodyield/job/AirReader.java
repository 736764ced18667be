package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.wood.DryingAir;
import org.woodyield.wood.EquilibriumMoisture;
import org.woodyield.wood.OutdoorMoisture;

/**
 * Reads the air in which lumber dries: a place of the tables, or temperature and humidity, one of each or twelve with
 * semicolons, January first.
 */
final class AirReader {

    private static final int MONTHS = 12;
    private static final String ONE_OR_TWELVE = "one value, or twelve with semicolons, January first";

    private static final Domain COLDEST_F = new Domain("temperature", "°F", -80, 270, "check the unit");
    private static final Domain COLDEST_C = new Domain("temperature", "°C", -62, 132.3, "check the unit");

    private AirReader() {}

    /** The air, or nothing where none is given or it cannot be read; the latter is noted. */
    static Optional<DryingAir> read(Optional<Cell> place, Optional<Cell> temperature, Optional<Cell> humidity) {
        if (place.isPresent()) {
            temperature
                    .or(() -> humidity)
                    .ifPresent(cell -> cell.refuse("a place, or temperature and humidity", "give one of the two"));
            return place(place.get());
        }
        if (temperature.isEmpty() && humidity.isEmpty()) {
            return Optional.empty();
        }
        if (temperature.isEmpty() || humidity.isEmpty()) {
            temperature
                    .or(() -> humidity)
                    .ifPresent(cell -> cell.refuse(
                            "temperature and humidity together",
                            temperature.isPresent() ? "give the humidity as well" : "give the temperature as well"));
            return Optional.empty();
        }
        return given(temperature.get(), humidity.get());
    }

    private static Optional<DryingAir> place(Cell cell) {
        try {
            return Optional.of(DryingAir.ofPlace(cell.text()));
        } catch (OutOfDomainException e) {
            cell.refuse(e);
            return Optional.empty();
        }
    }

    private static Optional<DryingAir> given(Cell temperature, Cell humidity) {
        Optional<List<Cell>> ofTemperature = temperature.list();
        Optional<List<Cell>> ofHumidity = humidity.list();
        if (ofTemperature.isEmpty() || ofHumidity.isEmpty()) {
            return Optional.empty();
        }
        List<Cell> temperatures = ofTemperature.get();
        List<Cell> humidities = ofHumidity.get();
        boolean months = oneOrTwelve(temperature, temperatures);
        boolean counts = oneOrTwelve(humidity, humidities) && months;
        if (counts && temperatures.size() != humidities.size()) {
            humidity.refuse("as many values as there are temperatures, " + temperatures.size(), "");
            counts = false;
        }
        boolean fahrenheit = temperatures.get(0).text().toLowerCase(Locale.ROOT).endsWith("f");
        EquilibriumMoisture equation = fahrenheit ? EquilibriumMoisture.fahrenheit() : EquilibriumMoisture.celsius();
        boolean steady = temperatures.size() == 1;
        Domain domain = steady ? equation.temperature() : fahrenheit ? COLDEST_F : COLDEST_C;
        List<Double> degrees = new ArrayList<>();
        List<Double> percents = new ArrayList<>();
        for (Cell cell : temperatures) {
            String text = cell.text().toLowerCase(Locale.ROOT);
            if (!text.endsWith("c") && !text.endsWith("f")) {
                cell.refuse(
                        "a temperature with its unit, °F or °C",
                        text.matches("-?[0-9.]+")
                                ? "write " + text + " °F or " + text + " °C"
                                : "such as 70 °F or 21 °C");
            } else if (text.endsWith(fahrenheit ? "c" : "f")) {
                cell.refuse("one unit for all months", "write all in °F or all in °C");
            } else {
                cell.quantity(fahrenheit ? Units.FAHRENHEIT : Units.CELSIUS, domain)
                        .ifPresent(degrees::add);
            }
        }
        for (Cell cell : humidities) {
            cell.quantity(Units.PERCENT, EquilibriumMoisture.HUMIDITY).ifPresent(percents::add);
        }
        if (!counts || degrees.size() != temperatures.size() || percents.size() != humidities.size()) {
            return Optional.empty();
        }
        List<OutdoorMoisture.Air> airs = new ArrayList<>();
        for (int i = 0; i < degrees.size(); i++) {
            airs.add(new OutdoorMoisture.Air(degrees.get(i), percents.get(i)));
        }
        return Optional.of(steady ? new DryingAir.Steady(equation, airs.get(0)) : new DryingAir.Year(equation, airs));
    }

    private static boolean oneOrTwelve(Cell cell, List<Cell> parts) {
        if (parts.size() == 1 || parts.size() == MONTHS) {
            return true;
        }
        cell.refuse(ONE_OR_TWELVE, "there are " + parts.size());
        return false;
    }
}
