package org.woodyield.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.woodyield.log.Log;
import org.woodyield.measure.Money;
import org.woodyield.measure.Volume;
import org.woodyield.sawing.Offcut;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.source.Sources;
import org.woodyield.wood.WoodWeight;
import org.woodyield.work.Hauling;
import org.woodyield.work.LogMoving;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;
import org.woodyield.working.Working;

/**
 * What moving the logs of a plan takes: weights of log, half log and first slab, lift at one end, pull up skids and along a
 * slope, and whether the logs go to the saw or the saw to the logs. What the job does not give is left out by name.
 *
 * @param loads each log in the order of the plan
 * @param ways of bringing saw and logs together; empty where the job does not give what they need
 * @param tooHeavy logs to saw that one trip does not carry; where there are any, no logs go to the saw
 * @param leftOut what has no figure for want of an input, and of which
 */
public record MovingPlan(List<Load> loads, List<Way> ways, List<Load> tooHeavy, List<String> leftOut) {

    /** Keeps immutable copies. */
    public MovingPlan {
        loads = List.copyOf(loads);
        ways = List.copyOf(ways);
        tooHeavy = List.copyOf(tooHeavy);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * One log to move, weights and pulls in kilograms.
     *
     * @param log the log
     * @param kilograms its weight green, bark in proportion
     * @param liftSmallEnd lift of its small end, the large one on the ground
     * @param liftLargeEnd lift of its large end, the small one on the ground
     * @param halfLog weight of each half after a cut through its axis
     * @param firstSlab weight of the slab that the first pass takes off; empty where nothing is sawn
     * @param parbuckle pull of all ropes together; empty where the skids are not given
     * @param slopePull pull along the slope; empty where slope or friction are not given
     * @param workings how these come about
     */
    public record Load(
            Log log,
            double kilograms,
            double liftSmallEnd,
            double liftLargeEnd,
            double halfLog,
            Optional<Double> firstSlab,
            Optional<Double> parbuckle,
            Optional<Double> slopePull,
            List<Working> workings) {
        /** Keeps an immutable copy. */
        public Load {
            workings = List.copyOf(workings);
        }
    }

    /**
     * A way of bringing saw and logs together.
     *
     * @param name in words
     * @param trips there and back
     * @param minutes for trips and set-ups
     * @param cost of hours and trips; empty where a price is missing
     * @param workings how these come about
     */
    public record Way(String name, double trips, double minutes, Optional<Money> cost, List<Working> workings) {
        /** Keeps an immutable copy. */
        public Way {
            workings = List.copyOf(workings);
        }
    }

    /**
     * What moving the logs of a plan takes.
     *
     * @param plan a plan
     * @return its loads and ways
     */
    public static MovingPlan of(JobPlan plan) {
        List<String> leftOut = new ArrayList<>();
        WorkInputs inputs = plan.input().work();
        boolean rolled = given(inputs, "Rolling up skids", leftOut, WorkInput.SKID_ANGLE, WorkInput.ROLLING_RESISTANCE);
        boolean dragged =
                given(inputs, "Dragging along a slope", leftOut, WorkInput.DRAG_SLOPE, WorkInput.DRAG_FRICTION);
        List<Load> loads = new ArrayList<>();
        for (LogPlan log : plan.logs()) {
            loads.add(load(plan, log, rolled, dragged));
        }
        String what = "Logs to the saw, or saw to the logs";
        if (!given(
                inputs,
                what,
                leftOut,
                WorkInput.LOAD_LIMIT,
                WorkInput.KIT_WEIGHT,
                WorkInput.ROUND_TRIP,
                WorkInput.PLACES,
                WorkInput.SET_UP)) {
            return new MovingPlan(loads, List.of(), List.of(), leftOut);
        }
        boolean priced = given(
                inputs, "Cost of " + what.toLowerCase(Locale.ROOT), leftOut, WorkInput.WAGE, WorkInput.TRIP_PRICE);
        List<Load> sawn = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            if (plan.logs().get(i).sawing().isPresent()) {
                sawn.add(loads.get(i));
            }
        }
        double limit = inputs.get(WorkInput.LOAD_LIMIT);
        List<Load> tooHeavy =
                sawn.stream().filter(load -> load.kilograms() > limit).toList();
        return new MovingPlan(loads, ways(plan, priced, sawn, tooHeavy.isEmpty()), tooHeavy, leftOut);
    }

    private static boolean given(WorkInputs inputs, String what, List<String> leftOut, WorkInput... needed) {
        if (inputs.has(Set.of(needed))) {
            return true;
        }
        List<String> absent = new ArrayList<>();
        for (WorkInput input : needed) {
            if (inputs.find(input).isEmpty()) {
                absent.add(input.label() + " (" + input.keyOfJob() + ")");
            }
        }
        leftOut.add(what + ": left out. Not given: " + String.join("; ", absent) + ".");
        return false;
    }

    private static Load load(JobPlan plan, LogPlan planned, boolean rolled, boolean dragged) {
        Log log = planned.log();
        WorkInputs inputs = plan.input().work();
        double kilograms = planned.greenKilograms();
        List<Working> workings = new ArrayList<>();
        workings.add(LogMoving.endLiftWorking(log, kilograms, LogMoving.End.SMALL));
        workings.add(LogMoving.endLiftWorking(log, kilograms, LogMoving.End.LARGE));
        workings.add(LogMoving.halfLogWorking(log, kilograms, plan.input().saw().kerf()));
        Optional<Working> firstSlab =
                planned.sawing().flatMap(MovingPlan::firstSlab).map(wood -> slabWorking(planned, wood));
        firstSlab.ifPresent(workings::add);
        Optional<Double> parbuckle = Optional.empty();
        if (rolled) {
            double skids = inputs.get(WorkInput.SKID_ANGLE);
            double resistance = inputs.get(WorkInput.ROLLING_RESISTANCE);
            parbuckle = Optional.of(LogMoving.parbuckleKilograms(kilograms, skids, resistance));
            workings.add(LogMoving.parbuckleWorking(kilograms, skids, resistance));
        }
        Optional<Double> slopePull = Optional.empty();
        if (dragged) {
            double slope = inputs.get(WorkInput.DRAG_SLOPE);
            double friction = inputs.get(WorkInput.DRAG_FRICTION);
            slopePull = Optional.of(LogMoving.slopePullKilograms(kilograms, slope, friction));
            workings.add(LogMoving.slopePullWorking(kilograms, slope, friction));
        }
        return new Load(
                log,
                kilograms,
                LogMoving.endLiftKilograms(log, kilograms, LogMoving.End.SMALL),
                LogMoving.endLiftKilograms(log, kilograms, LogMoving.End.LARGE),
                LogMoving.halfLogKilograms(log, kilograms, plan.input().saw().kerf()),
                firstSlab.map(Working::value),
                parbuckle,
                slopePull,
                workings);
    }

    /** What lies above the kerf of the first pass. */
    private static Optional<Volume> firstSlab(SawingPlan plan) {
        return plan.passes().stream()
                .findFirst()
                .flatMap(pass -> plan.offcuts().stream()
                        .filter(offcut -> offcut.kind() == Offcut.Kind.SLAB
                                && offcut.place().bottom().equals(pass.kerf().top()))
                        .findFirst())
                .map(plan::wood);
    }

    private static Working slabWorking(LogPlan planned, Volume slab) {
        return Working.of("First slab of log " + planned.log().id())
                .given("W", "weight of the log", planned.greenKilograms(), "kg")
                .given("v", "wood of the slab, integrated along the log", slab.cubicMetres(), "m3")
                .given("V", "wood of the log", planned.solid().cubicMetres(), "m3")
                .step("F", "weight of the slab", "W * v / V", "kg", Sources.get("definition"))
                .build();
    }

    private static List<Way> ways(JobPlan plan, boolean priced, List<Load> sawn, boolean carried) {
        if (sawn.isEmpty()) {
            return List.of();
        }
        WorkInputs inputs = plan.input().work();
        double limit = inputs.get(WorkInput.LOAD_LIMIT);
        double lumber = 0;
        for (LogPlan log : plan.logs()) {
            if (log.sawing().isPresent()) {
                lumber += WoodWeight.greenKilograms(
                        log.log().species(), log.sawing().get().balance().lumber());
            }
        }
        List<Way> ways = new ArrayList<>();
        if (carried) {
            List<Double> logs = sawn.stream().map(Load::kilograms).toList();
            ways.add(way(
                    plan,
                    priced,
                    "logs to the saw",
                    1,
                    Hauling.tripsOfLogs(logs, limit),
                    List.of(Hauling.tripsOfLogsWorking(logs, limit))));
        }
        double places = inputs.get(WorkInput.PLACES);
        double kit = inputs.get(WorkInput.KIT_WEIGHT);
        double trips = places * Hauling.trips(kit, limit) + Hauling.trips(lumber, limit);
        ways.add(way(
                plan,
                priced,
                "saw to the logs, lumber home",
                places,
                trips,
                List.of(Hauling.tripsWorking(kit, limit), Hauling.tripsWorking(lumber, limit))));
        return ways;
    }

    private static Way way(
            JobPlan plan, boolean priced, String name, double places, double trips, List<Working> workings) {
        WorkInputs inputs = plan.input().work();
        double setUp = inputs.get(WorkInput.SET_UP);
        double trip = inputs.get(WorkInput.ROUND_TRIP);
        double minutes = Hauling.minutes(places, setUp, trips, trip);
        List<Working> all = new ArrayList<>(workings);
        all.add(Hauling.minutesWorking(places, setUp, trips, trip));
        Optional<Money> cost = Optional.empty();
        if (priced) {
            double wage = inputs.get(WorkInput.WAGE);
            double price = inputs.get(WorkInput.TRIP_PRICE);
            cost = Optional.of(new Money(
                    Hauling.cost(minutes, wage, trips, price), plan.input().currency()));
            all.add(Hauling.costWorking(minutes, wage, trips, price));
        }
        return new Way(name, trips, minutes, cost, all);
    }
}
