package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.log.Log;
import org.woodyield.log.ProfileStation;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What it takes to lift a log at one end, to roll it up skids with ropes and to drag it along a slope: rules of mechanics for
 * a body that moves slowly. Weights and pulls are in kilograms, as loads and tackle are marked; one kilogram of pull is
 * 9.80665 N.
 *
 * <p>A log that sticks, jerks or lands on a stone takes more, and no formula here chooses a rope: what tackle may carry, its
 * maker states.
 */
public final class LogMoving {

    private static final Domain WEIGHT = new Domain(
            "weight", "kg", Double.MIN_VALUE, 100_000, "give the weight of one log in kilograms, bark included");
    private static final Domain SKIDS = WorkInput.SKID_ANGLE.domain();
    private static final Domain ROLLING = WorkInput.ROLLING_RESISTANCE.domain();
    private static final Domain SLOPE = WorkInput.DRAG_SLOPE.domain();
    private static final Domain FRICTION = WorkInput.DRAG_FRICTION.domain();
    private static final Domain KERF = Domain.of("kerf", "m", 0, 0.05);
    private static final Source MECHANICS = Sources.get("moving-mechanics");
    private static final Source DEFINITION = Sources.get("definition");

    private LogMoving() {}

    /** The end of a log that is lifted; the other rests on the ground. */
    public enum End {
        /** The thin end. */
        SMALL("small"),
        /** The thick end. */
        LARGE("large");

        private final String label;

        End(String label) {
            this.label = label;
        }

        /**
         * In words.
         *
         * @return one word
         */
        public String label() {
            return label;
        }
    }

    /**
     * The lift that just raises one end of a log that lies level and rests on its other end: half the weight where it does
     * not taper, else what the moment of its weight about the resting end asks for. Between stations of the log's profile the
     * diameter runs straight; bark is taken to weigh in proportion to the wood.
     *
     * @param log its ends and length, or its profile
     * @param kilograms its weight, above 0, up to 100,000 kg
     * @param lifted the end that is lifted
     * @return {@code W x / L} in kilograms, with the distance x of the centre of mass from the resting end
     * @throws org.woodyield.measure.OutOfDomainException if the weight is outside
     */
    @Calculation("work.end-lift")
    public static double endLiftKilograms(Log log, double kilograms, End lifted) {
        WEIGHT.require(kilograms);
        List<ProfileStation> stations = stations(log);
        double volume = 0;
        double moment = 0;
        double before = 0;
        for (int i = 1; i < stations.size(); i++) {
            double a = diameter(stations, i - 1);
            double b = diameter(stations, i);
            double section = section(stations, i);
            double part = section * (a * a + a * b + b * b) / 3;
            moment = moment + part * before + section * section * (a * a + 2 * a * b + 3 * (b * b)) / 12;
            volume = volume + part;
            before = before + section;
        }
        double share = moment / (volume * before);
        return lifted == End.LARGE ? kilograms * share : kilograms * (1 - share);
    }

    /**
     * How {@link #endLiftKilograms} comes about.
     *
     * @param log its ends and length, or its profile
     * @param kilograms its weight
     * @param lifted the end that is lifted
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if the weight is outside
     */
    public static Working endLiftWorking(Log log, double kilograms, End lifted) {
        WEIGHT.require(kilograms);
        List<ProfileStation> stations = stations(log);
        int last = stations.size() - 1;
        Working.Builder working = Working.of("Lift at the " + lifted.label + " end of log " + log.id())
                .given("W", "weight of the log", kilograms, "kg")
                .given("d_0", "diameter at the small end", diameter(stations, 0), "m")
                .constant("V_0", "no volume yet", 0, "m3 over pi/4", DEFINITION)
                .constant("M_0", "no moment yet", 0, "m4 over pi/4", DEFINITION)
                .constant("x_0", "from the small end", 0, "m", DEFINITION);
        for (int i = 1; i <= last; i++) {
            int n = i - 1;
            String a = "d_" + n;
            String b = "d_" + i;
            givenSection(working, stations, i)
                    .step(
                            "v_" + i,
                            "volume of the section",
                            "l_" + i + " * (" + a + " * " + a + " + " + a + " * " + b + " + " + b + " * " + b + ") / 3",
                            "m3 over pi/4",
                            DEFINITION)
                    .step(
                            "M_" + i,
                            "moment about the small end",
                            "M_" + n + " + v_" + i + " * x_" + n + " + l_" + i + " * l_" + i + " * (" + a + " * " + a
                                    + " + 2 * " + a + " * " + b + " + 3 * (" + b + " * " + b + ")) / 12",
                            "m4 over pi/4",
                            MECHANICS)
                    .step("V_" + i, "volume so far", "V_" + n + " + v_" + i, "m3 over pi/4", DEFINITION)
                    .step("x_" + i, "length so far", "x_" + n + " + l_" + i, "m", DEFINITION);
        }
        working.step(
                "s",
                "centre of mass from the small end, as a share of the length",
                "M_" + last + " / (V_" + last + " * x_" + last + ")",
                "",
                MECHANICS);
        return working.step("F", "lift", lifted == End.LARGE ? "W * s" : "W * (1 - s)", "kg", MECHANICS)
                .note("The log lies level and rests on its other end; it goes up slowly.")
                .build();
    }

    /**
     * The weight of each half after a cut through the axis. The kerf is taken as a strip along the diameter, a rectangle at
     * every place: too wide by at most the square of kerf over diameter, a sixth of it. Between stations of the log's profile
     * the diameter runs straight; bark is taken to weigh in proportion to the wood.
     *
     * @param log its ends and length, or its profile
     * @param kilograms its weight, above 0, up to 100,000 kg
     * @param kerf of the cut, 0 to 50 mm
     * @return {@code W (1 - S / V) / 2} in kilograms, with the volume S of the kerf and V of the log; 0 where the kerf takes all
     * @throws org.woodyield.measure.OutOfDomainException if weight or kerf is outside
     */
    @Calculation("work.half-log")
    public static double halfLogKilograms(Log log, double kilograms, Length kerf) {
        WEIGHT.require(kilograms);
        double k = KERF.require(kerf.toMetres());
        List<ProfileStation> stations = stations(log);
        double volume = 0;
        double strip = 0;
        for (int i = 1; i < stations.size(); i++) {
            double a = diameter(stations, i - 1);
            double b = diameter(stations, i);
            double section = section(stations, i);
            volume = volume + StrictMath.PI / 4 * section * (a * a + a * b + b * b) / 3;
            strip = strip + k * section * (a + b) / 2;
        }
        return kilograms * Math.max(1 - strip / volume, 0) / 2;
    }

    /**
     * How {@link #halfLogKilograms} comes about.
     *
     * @param log its ends and length, or its profile
     * @param kilograms its weight
     * @param kerf of the cut
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if weight or kerf is outside
     */
    public static Working halfLogWorking(Log log, double kilograms, Length kerf) {
        WEIGHT.require(kilograms);
        KERF.require(kerf.toMetres());
        List<ProfileStation> stations = stations(log);
        int last = stations.size() - 1;
        Working.Builder working = Working.of("Each half of log " + log.id() + " cut through its axis")
                .given("W", "weight of the log", kilograms, "kg")
                .given("k", "kerf", kerf.toMetres(), "m")
                .constant("pi", "pi", StrictMath.PI, "", DEFINITION)
                .given("d_0", "diameter at the small end", diameter(stations, 0), "m")
                .constant("V_0", "no volume yet", 0, "m3", DEFINITION)
                .constant("S_0", "no kerf yet", 0, "m3", DEFINITION);
        for (int i = 1; i <= last; i++) {
            int n = i - 1;
            String a = "d_" + n;
            String b = "d_" + i;
            givenSection(working, stations, i)
                    .step(
                            "V_" + i,
                            "volume so far",
                            "V_" + n + " + pi / 4 * l_" + i + " * (" + a + " * " + a + " + " + a + " * " + b + " + " + b
                                    + " * " + b + ") / 3",
                            "m3",
                            DEFINITION)
                    .step(
                            "S_" + i,
                            "kerf so far",
                            "S_" + n + " + k * l_" + i + " * (" + a + " + " + b + ") / 2",
                            "m3",
                            DEFINITION);
        }
        return working.step("H", "each half", "W * max(1 - S_" + last + " / V_" + last + ", 0) / 2", "kg", DEFINITION)
                .note("The kerf as a strip along the diameter; of an oval log along the mean one.")
                .build();
    }

    private static double diameter(List<ProfileStation> stations, int i) {
        return stations.get(i).diameter().toMetres();
    }

    /** Length from the station before. */
    private static double section(List<ProfileStation> stations, int i) {
        return stations.get(i).distance().minus(stations.get(i - 1).distance()).toMetres();
    }

    private static Working.Builder givenSection(Working.Builder working, List<ProfileStation> stations, int i) {
        boolean last = i == stations.size() - 1;
        return working.given(
                        "d_" + i,
                        last ? "diameter at the large end" : "diameter at the next station",
                        diameter(stations, i),
                        "m")
                .given("l_" + i, "length of the section", section(stations, i), "m");
    }

    private static List<ProfileStation> stations(Log log) {
        return log.profile().isEmpty()
                ? List.of(
                        new ProfileStation(Length.ZERO, log.smallEndMean()),
                        new ProfileStation(log.length(), log.largeEndMean()))
                : new ArrayList<>(log.profile());
    }

    /**
     * The pull on the free ends of ropes that are made fast above, run under the log and come back over it (parbuckle), all
     * ropes together: the log is a rolling pulley, so it takes half of what pushing it up the skids would.
     *
     * @param kilograms weight of the log, above 0, up to 100,000 kg
     * @param skidDegrees slope of the skids, 0 to 60
     * @param rollingResistance as a share of the weight across the skids, 0 to 1
     * @return {@code W (sin a + c cos a) / 2} in kilograms
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    @Calculation("work.parbuckle")
    public static double parbuckleKilograms(double kilograms, double skidDegrees, double rollingResistance) {
        requireParbuckle(kilograms, skidDegrees, rollingResistance);
        double angle = skidDegrees * StrictMath.PI / 180;
        return kilograms * (StrictMath.sin(angle) + rollingResistance * StrictMath.cos(angle)) / 2;
    }

    /**
     * How {@link #parbuckleKilograms} comes about.
     *
     * @param kilograms weight of the log
     * @param skidDegrees slope of the skids
     * @param rollingResistance as a share of the weight across the skids
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    public static Working parbuckleWorking(double kilograms, double skidDegrees, double rollingResistance) {
        requireParbuckle(kilograms, skidDegrees, rollingResistance);
        return slope("Pull of the ropes that roll a log up skids", kilograms, skidDegrees)
                .given("c", "rolling resistance", rollingResistance, "")
                .step("F", "pull of all ropes", "W * (sin(a) + c * cos(a)) / 2", "kg", MECHANICS)
                .note("Two ropes share it; of a log that tapers the one near the large end pulls more.")
                .build();
    }

    /**
     * The pull along a slope that keeps a dragged log moving.
     *
     * @param kilograms weight of the log, above 0, up to 100,000 kg
     * @param slopeDegrees uphill above zero, downhill below, -60 to 60
     * @param friction as a share of the weight across the slope, 0 to 3
     * @return {@code W (sin a + mu cos a)} in kilograms; below zero the log slides by itself and has to be held
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    @Calculation("work.slope-pull")
    public static double slopePullKilograms(double kilograms, double slopeDegrees, double friction) {
        requireSlope(kilograms, slopeDegrees, friction);
        double angle = slopeDegrees * StrictMath.PI / 180;
        return kilograms * (StrictMath.sin(angle) + friction * StrictMath.cos(angle));
    }

    /**
     * How {@link #slopePullKilograms} comes about.
     *
     * @param kilograms weight of the log
     * @param slopeDegrees uphill above zero
     * @param friction as a share of the weight across the slope
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if a value is outside
     */
    public static Working slopePullWorking(double kilograms, double slopeDegrees, double friction) {
        requireSlope(kilograms, slopeDegrees, friction);
        return slope("Pull on a dragged log", kilograms, slopeDegrees)
                .given("mu", "friction", friction, "")
                .step("F", "pull", "W * (sin(a) + mu * cos(a))", "kg", MECHANICS)
                .note("Below zero the log slides by itself. Starting a log takes more than keeping it moving.")
                .build();
    }

    private static Working.Builder slope(String title, double kilograms, double degrees) {
        return Working.of(title)
                .given("W", "weight of the log", kilograms, "kg")
                .given("A", "slope", degrees, "deg")
                .constant("pi", "pi", StrictMath.PI, "", DEFINITION)
                .step("a", "slope in radians", "A * pi / 180", "", DEFINITION);
    }

    private static void requireParbuckle(double kilograms, double skidDegrees, double rollingResistance) {
        WEIGHT.require(kilograms);
        SKIDS.require(skidDegrees);
        ROLLING.require(rollingResistance);
    }

    private static void requireSlope(double kilograms, double slopeDegrees, double friction) {
        WEIGHT.require(kilograms);
        SLOPE.require(slopeDegrees);
        FRICTION.require(friction);
    }
}
