package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Length;

/**
 * Time, fuel and wear of the sawing of some logs.
 *
 * @param logs each log by itself
 * @param time all minutes
 * @param use all fuel, oil and wear
 * @param areaSquareMetres all faces cut, one side
 * @param days days on site
 */
public record WorkEstimate(List<ForLog> logs, TimeBreakdown time, FuelUse use, double areaSquareMetres, double days) {

    /**
     * One log.
     *
     * @param id its name
     * @param passes count of passes
     * @param areaSquareMetres faces cut, one side
     * @param time its minutes
     * @param use its fuel, oil and wear
     */
    public record ForLog(String id, int passes, double areaSquareMetres, TimeBreakdown time, FuelUse use) {}

    /** Keeps an immutable copy. */
    public WorkEstimate {
        logs = List.copyOf(logs);
    }

    /**
     * Adds up the work of some logs.
     *
     * @param inputs power, fuel and habits
     * @param kerf the saw's kerf
     * @param logs the passes of each log
     * @return each log and the sums
     * @throws org.woodyield.measure.OutOfDomainException if an input is missing or a cut is outside the limits of {@link
     *     CuttingRate}
     */
    public static WorkEstimate of(WorkInputs inputs, Length kerf, List<LogWork> logs) {
        SawingWork work = SawingWork.of(inputs);
        List<ForLog> each = new ArrayList<>();
        TimeBreakdown time = TimeBreakdown.ZERO;
        FuelUse use = FuelUse.ZERO;
        double area = 0;
        for (LogWork log : logs) {
            ForLog one = work.log(CuttingRate.of(inputs, log.species(), kerf), log);
            each.add(one);
            time = time.plus(one.time());
            use = use.plus(one.use());
            area += one.areaSquareMetres();
        }
        return new WorkEstimate(each, time, use, area, time.hours() / inputs.get(WorkInput.HOURS_PER_DAY));
    }

    /**
     * How many such logs a day takes.
     *
     * @return logs over days; 0 where there are no days
     */
    public double logsPerDay() {
        return days > 0 ? logs.size() / days : 0;
    }
}
