package org.woodyield.work;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Vibration of the hands over a day: {@code A(8) = sqrt(sum of a^2 T / 8)} over the tasks, with the vibration total value a
 * in m/s2 and the hours T with the hands on the machine (ISO 5349-1). Information only; it says nothing about anybody's
 * health.
 *
 * @param tasks the tasks of the day
 */
public record VibrationDay(List<Task> tasks) {

    private static final Domain VIBRATION = Domain.of("vibration", "m/s2", 0, 100);
    private static final Domain HOURS = Domain.of("hours", "h", 0, 24);
    private static final Source STANDARD = Sources.get("vibration-iso-5349");

    /** From this A(8) on an employer in the European Union has to act. */
    public static final Sourced ACTION_VALUE = new Sourced(2.5, "m/s2", Sources.get("vibration-directive-2002"));

    /** This A(8) must not be passed in the European Union. */
    public static final Sourced LIMIT_VALUE = new Sourced(5.0, "m/s2", Sources.get("vibration-directive-2002"));

    /**
     * One task.
     *
     * @param name what is done
     * @param metresPerSecondSquared vibration total value, 0 to 100
     * @param hours with the hands on the machine, 0 to 24
     */
    public record Task(String name, double metresPerSecondSquared, double hours) {
        /**
         * Checks the limits.
         *
         * @throws org.woodyield.measure.OutOfDomainException if vibration or hours are outside
         */
        public Task {
            VIBRATION.require(metresPerSecondSquared);
            HOURS.require(hours);
        }

        /**
         * The task's own share of the day.
         *
         * @return {@code a sqrt(T / 8)} in m/s2
         */
        public double partial() {
            return metresPerSecondSquared * StrictMath.sqrt(hours / 8);
        }
    }

    /**
     * Keeps an immutable copy.
     *
     * @throws org.woodyield.measure.OutOfDomainException if there is no task, or the tasks last more than 24 h
     */
    public VibrationDay {
        tasks = List.copyOf(tasks);
        Domain.of("tasks", "", 1, 1000).require(tasks.size());
        double sum = 0;
        for (Task task : tasks) {
            sum += task.hours;
        }
        Domain.of("hours of all tasks", "h", 0, 24).require(sum);
    }

    /**
     * The day's vibration.
     *
     * @return A(8) in m/s2
     */
    @Calculation("work.vibration")
    public double dailyExposure() {
        double sum = 0;
        for (Task task : tasks) {
            sum += task.metresPerSecondSquared * task.metresPerSecondSquared * task.hours / 8;
        }
        return StrictMath.sqrt(sum);
    }

    /**
     * How {@link #dailyExposure} comes about.
     *
     * @return the working, with the same result
     */
    public Working dailyExposureWorking() {
        Working.Builder working =
                Working.of("Hand-arm vibration of a day").constant("s0", "nothing yet", 0, "", STANDARD);
        for (int i = 0; i < tasks.size(); i++) {
            Task task = tasks.get(i);
            int n = i + 1;
            working.given("a" + n, task.name, task.metresPerSecondSquared, "m/s2")
                    .given("T" + n, "time of it", task.hours, "h")
                    .step(
                            "s" + n,
                            "sum so far",
                            "s" + i + " + a" + n + " * a" + n + " * T" + n + " / 8",
                            "m2/s4",
                            STANDARD);
        }
        return working.step("A8", "daily exposure", "sqrt(s" + tasks.size() + ")", "m/s2", STANDARD)
                .note("Information only; the action value is 2.5 and the limit 5.0 m/s2 in the European Union.")
                .build();
    }

    /**
     * The hours at a vibration until a daily value is reached.
     *
     * @param metresPerSecondSquared vibration, above 0
     * @param daily the daily value, such as {@link #ACTION_VALUE}
     * @return {@code 8 (A / a)^2} in hours; more than 24 means that a day does not reach it
     * @throws org.woodyield.measure.OutOfDomainException if an argument is outside its limits
     */
    @Calculation("work.vibration-time")
    public static double hoursUntil(double metresPerSecondSquared, double daily) {
        Domain.of("vibration", "m/s2", Double.MIN_VALUE, 100).require(metresPerSecondSquared);
        VIBRATION.require(daily);
        double ratio = daily / metresPerSecondSquared;
        return 8 * (ratio * ratio);
    }

    /**
     * How {@link #hoursUntil} comes about.
     *
     * @param metresPerSecondSquared vibration, above 0
     * @param daily the daily value
     * @return the working, with the same result
     */
    public static Working hoursUntilWorking(double metresPerSecondSquared, double daily) {
        Domain.of("vibration", "m/s2", Double.MIN_VALUE, 100).require(metresPerSecondSquared);
        VIBRATION.require(daily);
        return Working.of("Hours until a daily vibration value")
                .given("a", "vibration", metresPerSecondSquared, "m/s2")
                .given("A", "daily value", daily, "m/s2")
                .step("r", "ratio", "A / a", "", STANDARD)
                .step("T", "time until it is reached", "8 * r^2", "h", STANDARD)
                .build();
    }
}
