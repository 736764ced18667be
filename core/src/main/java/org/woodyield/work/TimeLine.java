package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Length;

/**
 * The work of some logs one thing after the other, day by day.
 *
 * <p>A log is brought, and then sawn pass by pass: turn if need be, lay the guide if it leads the pass, set, warm up, cut, cool down, carry away. Whole stops
 * are made before the pass in which the tank would run dry or the edge would fall due; they replace the averages of {@link
 * WorkEstimate}, from which they differ by less than one stop each. Rest is owed in the measure of the work, and is taken when a
 * quarter of an hour is owed and at the end of a day. A pass is begun only if it and the rest fit into the day, except as the
 * first thing in it; so a day may end early.
 *
 * @param days in order
 */
public record TimeLine(List<Day> days) {

    private static final double BREAK_MINUTES = 15;
    private static final double SLACK_MINUTES = 1e-9;

    /** What is being done. */
    public enum Activity {
        /** Bringing log and saw together. */
        LOADING("log to saw"),
        /** Turning and clamping. */
        TURNING("turning and clamping"),
        /** Laying the guide for a face that it leads. */
        GUIDE("laying the guide"),
        /** Filling the tank. */
        REFUELLING("refuelling"),
        /** Sharpening or changing the edge. */
        SHARPENING("sharpening"),
        /** Setting the saw, with the way back. */
        SETTING("setting and the way back"),
        /** Idling before a pass. */
        WARM_UP("warm-up"),
        /** The saw is in the wood. */
        CUTTING("cutting"),
        /** Idling after a pass. */
        COOL_DOWN("cool-down"),
        /** Carrying away what a pass sets free. */
        CARRYING("carrying away"),
        /** Rest, talk, repairs, weather. */
        REST("rest and all else on site");

        private final String label;

        Activity(String label) {
            this.label = label;
        }

        /**
         * In words.
         *
         * @return a short phrase
         */
        public String label() {
            return label;
        }
    }

    /**
     * One thing that is done without a break.
     *
     * @param activity what
     * @param logId the log at hand
     * @param start minutes from the beginning of the day
     * @param minutes how long
     */
    public record Stretch(Activity activity, String logId, double start, double minutes) {}

    /**
     * A day on site.
     *
     * @param stretches one after the other, without a gap
     * @param passes passes made
     * @param finished names of the logs whose last pass was made
     */
    public record Day(List<Stretch> stretches, int passes, List<String> finished) {
        /** Keeps immutable copies. */
        public Day {
            stretches = List.copyOf(stretches);
            finished = List.copyOf(finished);
        }

        /**
         * The time of one thing.
         *
         * @param activity what
         * @return minutes
         */
        public double minutes(Activity activity) {
            double sum = 0;
            for (Stretch stretch : stretches) {
                if (stretch.activity == activity) {
                    sum += stretch.minutes;
                }
            }
            return sum;
        }

        /**
         * The time on site.
         *
         * @return minutes
         */
        public double minutes() {
            return stretches.isEmpty()
                    ? 0
                    : stretches.get(stretches.size() - 1).start + stretches.get(stretches.size() - 1).minutes;
        }

        /**
         * The share of the day in which the saw really cuts.
         *
         * @return 0 to 1
         */
        public double cuttingShare() {
            return minutes() > 0 ? minutes(Activity.CUTTING) / minutes() : 0;
        }
    }

    /** Keeps an immutable copy. */
    public TimeLine {
        days = List.copyOf(days);
    }

    /**
     * Lays out the work of some logs.
     *
     * @param inputs power, fuel and habits
     * @param kerf of the saw
     * @param logs the passes of each log, in the order in which they are sawn
     * @return the days; none where there is no log
     * @throws org.woodyield.measure.OutOfDomainException if an input is missing or a cut is outside the limits of {@link
     *     CuttingRate}
     */
    public static TimeLine of(WorkInputs inputs, Length kerf, List<LogWork> logs) {
        return new Schedule(inputs).lay(kerf, logs);
    }

    /**
     * The time of one thing over all days.
     *
     * @param activity what
     * @return minutes
     */
    public double minutes(Activity activity) {
        return days.stream().mapToDouble(day -> day.minutes(activity)).sum();
    }

    /** What is done in one go. */
    private record Task(Activity activity, double minutes) {}

    private static final class Schedule {
        private final WorkInputs inputs;
        private final double restPerMinute;
        private final double dayMinutes;
        private final List<Day> days = new ArrayList<>();
        private List<Stretch> stretches = new ArrayList<>();
        private List<String> finished = new ArrayList<>();
        private int passes;
        private double clock;
        private double owed;

        Schedule(WorkInputs inputs) {
            this.inputs = inputs;
            this.restPerMinute = 1 / inputs.get(WorkInput.UTILISATION) - 1;
            this.dayMinutes = inputs.get(WorkInput.HOURS_PER_DAY) * 60;
        }

        TimeLine lay(Length kerf, List<LogWork> logs) {
            SawingWork work = SawingWork.of(inputs);
            double tanks = 0;
            double edges = 0;
            for (LogWork log : logs) {
                CuttingRate rate = CuttingRate.of(inputs, log.species(), kerf);
                List<Task> first = new ArrayList<>();
                first.add(task(Activity.LOADING, WorkInput.LOADING));
                if (log.cuts().isEmpty()) {
                    log.turnsBefore().forEach(turn -> first.add(task(Activity.TURNING, WorkInput.TURNING)));
                }
                round(log.id(), first);
                for (int i = 0; i < log.cuts().size(); i++) {
                    PassWork pass = work.pass(rate, log.cuts().get(i));
                    List<Task> tasks = new ArrayList<>();
                    int index = i;
                    log.turnsBefore().stream()
                            .filter(before -> before == index)
                            .forEach(before -> tasks.add(task(Activity.TURNING, WorkInput.TURNING)));
                    if (log.guidesBefore().contains(i)) {
                        tasks.add(task(Activity.GUIDE, WorkInput.GUIDE));
                    }
                    double tanksAfter = tanks + pass.use().tanks();
                    stops(tasks, tanks, tanksAfter, task(Activity.REFUELLING, WorkInput.REFUELLING));
                    tanks = tanksAfter;
                    double edgesAfter = edges + pass.use().sharpenings();
                    stops(tasks, edges, edgesAfter, task(Activity.SHARPENING, WorkInput.SHARPENING));
                    edges = edgesAfter;
                    tasks.add(task(Activity.SETTING, WorkInput.SETTING));
                    tasks.add(task(Activity.WARM_UP, WorkInput.WARM_UP));
                    tasks.add(new Task(Activity.CUTTING, pass.time().cutting()));
                    tasks.add(task(Activity.COOL_DOWN, WorkInput.COOL_DOWN));
                    tasks.add(task(Activity.CARRYING, WorkInput.CARRYING));
                    round(log.id(), tasks);
                    passes++;
                }
                finished.add(log.id());
            }
            if (!stretches.isEmpty() || !finished.isEmpty()) {
                endDay();
            }
            return new TimeLine(days);
        }

        private Task task(Activity activity, WorkInput input) {
            return new Task(activity, inputs.get(input));
        }

        private static void stops(List<Task> tasks, double before, double after, Task stop) {
            for (double due = Math.floor(before) + 1; due <= after; due++) {
                tasks.add(stop);
            }
        }

        private void round(String log, List<Task> tasks) {
            double work = tasks.stream().mapToDouble(Task::minutes).sum();
            double rest = work * restPerMinute;
            if (!stretches.isEmpty() && clock + owed + work + rest > dayMinutes + SLACK_MINUTES) {
                endDay();
            }
            if (owed >= BREAK_MINUTES) {
                rest(log);
            }
            for (Task task : tasks) {
                add(task.activity, log, task.minutes);
            }
            owed += rest;
        }

        private void rest(String log) {
            add(Activity.REST, log, owed);
            owed = 0;
        }

        private void add(Activity activity, String log, double minutes) {
            if (minutes > 0) {
                stretches.add(new Stretch(activity, log, clock, minutes));
                clock += minutes;
            }
        }

        private void endDay() {
            rest(stretches.isEmpty() ? "" : stretches.get(stretches.size() - 1).logId);
            days.add(new Day(stretches, passes, finished));
            stretches = new ArrayList<>();
            finished = new ArrayList<>();
            passes = 0;
            clock = 0;
        }
    }
}
