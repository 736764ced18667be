package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Bringing saw and logs together: the logs to the saw, or the saw to the logs and the lumber home. Counts trips; a trip
 * carries up to the load limit.
 */
public final class Hauling {

    private static final Domain GOODS = Domain.of("weight to carry", "kg", 0, 10_000_000);
    private static final Domain LIMIT = WorkInput.LOAD_LIMIT.domain();
    private static final Domain PLACES = WorkInput.PLACES.domain();
    private static final Domain SET_UP = WorkInput.SET_UP.domain();
    private static final Domain TRIPS = Domain.of("trips", "", 0, 100_000_000);
    private static final Domain TRIP = WorkInput.ROUND_TRIP.domain();
    private static final Domain HOURS = Domain.notNegative("time", "min");
    private static final Domain WAGE = WorkInput.WAGE.domain();
    private static final Domain PRICE = WorkInput.TRIP_PRICE.domain();
    private static final Source DEFINITION = Sources.get("definition");

    private Hauling() {}

    /**
     * The trips for goods that can be parted at will, lumber or the parts of a saw.
     *
     * @param kilograms all of it, 0 to 10,000,000
     * @param loadLimit most that one trip carries, 20 to 100,000
     * @return {@code ceil(m / C)}
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    @Calculation("work.haul-trips")
    public static double trips(double kilograms, double loadLimit) {
        GOODS.require(kilograms);
        LIMIT.require(loadLimit);
        return Math.ceil(kilograms / loadLimit);
    }

    /**
     * How {@link #trips} comes about.
     *
     * @param kilograms all of it
     * @param loadLimit most that one trip carries
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    public static Working tripsWorking(double kilograms, double loadLimit) {
        GOODS.require(kilograms);
        LIMIT.require(loadLimit);
        return Working.of("Trips for goods that can be parted")
                .given("m", "weight to carry", kilograms, "kg")
                .given("C", "most that a trip carries", loadLimit, "kg")
                .step("n", "trips", "ceil(m / C)", "", DEFINITION)
                .build();
    }

    /**
     * The trips for logs, which are not parted: taken in the order given, a trip ends where the next log no longer goes on.
     *
     * @param kilograms weight of each log
     * @param loadLimit most that one trip carries, 20 to 100,000
     * @return the count
     * @throws org.woodyield.measure.OutOfDomainException if a log weighs more than a trip carries
     */
    @Calculation("work.haul-log-trips")
    public static double tripsOfLogs(List<Double> kilograms, double loadLimit) {
        return loads(kilograms, loadLimit).size();
    }

    /**
     * How {@link #tripsOfLogs} comes about.
     *
     * @param kilograms weight of each log, at least one
     * @param loadLimit most that one trip carries
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if a log weighs more than a trip carries
     */
    public static Working tripsOfLogsWorking(List<Double> kilograms, double loadLimit) {
        List<List<Double>> loads = loads(kilograms, loadLimit);
        Working.Builder working = Working.of("Trips for logs").given("C", "most that a trip carries", loadLimit, "kg");
        StringJoiner trips = new StringJoiner(" + ");
        int log = 0;
        for (int trip = 1; trip <= loads.size(); trip++) {
            StringJoiner load = new StringJoiner(" + ");
            for (double one : loads.get(trip - 1)) {
                log++;
                working.given("m_" + log, "weight of the next log", one, "kg");
                load.add("m_" + log);
            }
            working.step("L_" + trip, "load of a trip", load.toString(), "kg", DEFINITION);
            trips.add("ceil(L_" + trip + " / C)");
        }
        return working.step("n", "trips", trips.toString(), "", DEFINITION)
                .note("In the order given; a trip ends where the next log would bring it above C.")
                .build();
    }

    private static List<List<Double>> loads(List<Double> kilograms, double loadLimit) {
        LIMIT.require(loadLimit);
        Domain log = new Domain(
                "weight of a log",
                "kg",
                Double.MIN_VALUE,
                loadLimit,
                "buck it shorter, halve it where it lies, or take what carries more");
        List<List<Double>> loads = new ArrayList<>();
        double loaded = 0;
        for (double one : kilograms) {
            log.require(one);
            if (loads.isEmpty() || loaded + one > loadLimit) {
                loads.add(new ArrayList<>());
                loaded = 0;
            }
            loads.get(loads.size() - 1).add(one);
            loaded += one;
        }
        return loads;
    }

    /**
     * The time that some trips and set-ups take.
     *
     * @param places where the saw is set up, 1 or more; a mean need not be whole
     * @param setUpMinutes at each place
     * @param trips 0 to 100,000,000
     * @param minutesPerTrip there and back, loading and unloading counted
     * @return {@code P s + n t} in minutes
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    @Calculation("work.haul-time")
    public static double minutes(double places, double setUpMinutes, double trips, double minutesPerTrip) {
        requireTime(places, setUpMinutes, trips, minutesPerTrip);
        return places * setUpMinutes + trips * minutesPerTrip;
    }

    /**
     * How {@link #minutes} comes about.
     *
     * @param places where the saw is set up
     * @param setUpMinutes at each place
     * @param trips how many
     * @param minutesPerTrip there and back
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    public static Working minutesWorking(double places, double setUpMinutes, double trips, double minutesPerTrip) {
        requireTime(places, setUpMinutes, trips, minutesPerTrip);
        return Working.of("Time of trips and set-ups")
                .given("P", "places where the saw is set up", places, "")
                .given("s", "set-up at a place", setUpMinutes, "min")
                .given("n", "trips", trips, "")
                .given("t", "a trip there and back", minutesPerTrip, "min")
                .step("T", "time", "P * s + n * t", "min", DEFINITION)
                .build();
    }

    private static void requireTime(double places, double setUpMinutes, double trips, double minutesPerTrip) {
        PLACES.require(places);
        SET_UP.require(setUpMinutes);
        TRIPS.require(trips);
        TRIP.require(minutesPerTrip);
    }

    /**
     * What the hours and the trips cost.
     *
     * @param minutes hours of work in minutes, 0 or more
     * @param wage of an hour
     * @param trips 0 to 100,000,000
     * @param tripPrice fuel and vehicle of a trip
     * @return {@code T / 60 w + n p}
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    @Calculation("work.haul-cost")
    public static double cost(double minutes, double wage, double trips, double tripPrice) {
        requireCost(minutes, wage, trips, tripPrice);
        return minutes / 60 * wage + trips * tripPrice;
    }

    /**
     * How {@link #cost} comes about.
     *
     * @param minutes hours of work in minutes
     * @param wage of an hour
     * @param trips how many
     * @param tripPrice fuel and vehicle of a trip
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    public static Working costWorking(double minutes, double wage, double trips, double tripPrice) {
        requireCost(minutes, wage, trips, tripPrice);
        return Working.of("Cost of trips and set-ups")
                .given("T", "time", minutes, "min")
                .given("w", "wage, or worth of an own hour", wage, "money/h")
                .given("n", "trips", trips, "")
                .given("p", "fuel and vehicle of a trip", tripPrice, "money")
                .step("C", "cost", "T / 60 * w + n * p", "money", DEFINITION)
                .build();
    }

    private static void requireCost(double minutes, double wage, double trips, double tripPrice) {
        HOURS.require(minutes);
        WAGE.require(wage);
        TRIPS.require(trips);
        PRICE.require(tripPrice);
    }
}
