package org.woodyield.wood;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The moisture that wood comes to outdoors under a roof in the course of a year: for any place from the mean temperature and
 * humidity of each month, and for a few places as others have given it.
 *
 * @see org.woodyield.source.Sources sources emc-cities-memory and fpl-rn-268-quoted
 */
public final class OutdoorMoisture {

    /**
     * The mean air of a month.
     *
     * @param temperature in the unit of the equation that is asked
     * @param humidityPercent relative humidity
     */
    public record Air(double temperature, double humidityPercent) {}

    /**
     * A place with its moisture month by month.
     *
     * @param name the place
     * @param months twelve values, January first, percent
     */
    public record City(String name, List<Sourced> months) {
        /** Keeps an immutable copy. */
        public City {
            months = List.copyOf(months);
        }
    }

    /**
     * A place with the range of its moisture over a part of the year.
     *
     * @param name the place
     * @param period the part of the year
     * @param least percent
     * @param greatest percent
     */
    public record Range(String name, String period, Sourced least, Sourced greatest) {}

    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private OutdoorMoisture() {}

    /**
     * The equilibrium moisture of each month.
     *
     * @param equation with the coefficients for the unit of the temperatures
     * @param year the air of twelve months
     * @return twelve percentages, not rounded
     * @throws OutOfDomainException if there are not twelve months, or the equation does not hold for one; a month below the
     *     equation's least temperature is refused, not taken for that temperature
     */
    public static List<Double> monthly(EquilibriumMoisture equation, List<Air> year) {
        if (year.size() != MONTHS.size()) {
            throw new OutOfDomainException("months", Integer.toString(year.size()), "", "12", "give each month once");
        }
        List<Double> moistures = new ArrayList<>();
        for (int i = 0; i < year.size(); i++) {
            try {
                moistures.add(
                        equation.percent(year.get(i).temperature(), year.get(i).humidityPercent()));
            } catch (OutOfDomainException e) {
                throw new OutOfDomainException(
                        e.parameter() + " of month " + (i + 1),
                        e.value(),
                        e.unit(),
                        e.limits(),
                        "the equation was not made for frost; below it ask at its least temperature and say so");
            }
        }
        return List.copyOf(moistures);
    }

    /**
     * The mean of the twelve months, each counted alike.
     *
     * @param equation with the coefficients for the unit of the temperatures
     * @param year the air of twelve months
     * @return percent, not rounded
     * @throws OutOfDomainException as {@link #monthly}
     */
    @Calculation("wood.year-moisture")
    public static double meanPercent(EquilibriumMoisture equation, List<Air> year) {
        double sum = 0;
        for (double month : monthly(equation, year)) {
            sum = sum + month;
        }
        return sum / 12;
    }

    /**
     * How {@link #meanPercent} came about; the working of a month is that of {@link EquilibriumMoisture}.
     *
     * @param equation with the coefficients for the unit of the temperatures
     * @param year the air of twelve months
     * @return the working; its value equals the mean bit for bit
     * @throws OutOfDomainException as {@link #monthly}
     */
    public static Working meanWorking(EquilibriumMoisture equation, List<Air> year) {
        Source source = Sources.get("wood-handbook-emc");
        List<Double> moistures = monthly(equation, year);
        Working.Builder working = Working.of("Equilibrium moisture outdoors, mean of the year");
        for (int i = 0; i < moistures.size(); i++) {
            working.lookup(
                    MONTHS.get(i),
                    "equilibrium moisture",
                    year.get(i).temperature() + " " + equation.temperature().unit() + ", "
                            + year.get(i).humidityPercent() + " %",
                    moistures.get(i),
                    "%",
                    source);
        }
        return working.step("sum", "sum of the months", String.join(" + ", MONTHS), "%", Sources.get("definition"))
                .step("mean", "mean of the year", "sum / 12", "%", Sources.get("definition"))
                .note("Wood outdoors under a roof lags behind the month; sun and rain change it.")
                .build();
    }

    /**
     * Places with a value for each month; all from memory.
     *
     * @return the places in the order of the table
     */
    public static List<City> cities() {
        PublishedTable table = PublishedTable.read(OutdoorMoisture.class, "emc_cities_memory.csv");
        return table.rows().stream()
                .map(row -> new City(
                        row.text("city") + ", " + row.text("state"),
                        MONTHS.stream()
                                .map(month -> new Sourced(row.number(month), "%", table.source()))
                                .toList()))
                .toList();
    }

    /**
     * Places with a range for a part of the year, as somebody quotes them.
     *
     * @return the ranges in the order of the table
     */
    public static List<Range> ranges() {
        PublishedTable table = PublishedTable.read(OutdoorMoisture.class, "emc_ranges.csv");
        return table.rows().stream()
                .map(row -> new Range(
                        row.text("place"),
                        row.text("period"),
                        new Sourced(row.number("emc_low"), "%", table.source()),
                        new Sourced(row.number("emc_high"), "%", table.source())))
                .toList();
    }
}
