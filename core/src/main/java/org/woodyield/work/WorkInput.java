package org.woodyield.work;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;

/**
 * A figure that the time, fuel and money of sawing rest on. Each has a key for files, a unit and limits; what it is worth
 * in one job stands in {@link WorkInputs}.
 */
public enum WorkInput {
    /** Rated power of the engine. */
    RATED_POWER("rated power of the engine", "kW", Double.MIN_VALUE, 500),
    /** Share of the rated power that does cutting; the rest is held back by the sawyer or lost in chain, bar and belt. */
    SHARE_AT_CUT("share of the rated power that does cutting", "", Double.MIN_VALUE, 1),
    /** Height of the site above sea level. */
    ALTITUDE("height above the sea", "m", 0, 5000),
    /** Share of the power that an engine without a charger loses per 1000 m of height. */
    LOSS_PER_KILOMETRE("share of power lost per 1000 m of height", "1/km", 0, 0.19),
    /** Fastest feed that the saw's carriage or its sawyer can hold. */
    FEED_LIMIT("fastest feed", "m/min", Double.MIN_VALUE, 300),
    /** Deepest bite of a tooth. */
    BITE("deepest bite of a tooth", "mm", Double.MIN_VALUE, 20),
    /** Distance between teeth that cut the same width. */
    TOOTH_SPACING("distance between teeth that cut the same width", "mm", Double.MIN_VALUE, 500),
    /** Speed of chain or blade. */
    BLADE_SPEED("speed of chain or blade", "m/s", Double.MIN_VALUE, 100),
    /** Cutting energy of softwood with a fresh edge, for wood of specific gravity 1. */
    ENERGY_SOFTWOOD("cutting energy of softwood at specific gravity 1", "J/cm3", Double.MIN_VALUE, 5000),
    /** Cutting energy of hardwood with a fresh edge, for wood of specific gravity 1. */
    ENERGY_HARDWOOD("cutting energy of hardwood at specific gravity 1", "J/cm3", Double.MIN_VALUE, 5000),
    /** Specific gravity taken for a softwood whose own is not known. */
    GRAVITY_SOFTWOOD("specific gravity of a softwood where its own is not known", "", 0.1, 1.3),
    /** Specific gravity taken for a hardwood whose own is not known. */
    GRAVITY_HARDWOOD("specific gravity of a hardwood where its own is not known", "", 0.1, 1.3),
    /** Rise of the cutting energy from a fresh edge to one that is due for sharpening, as a share. */
    DULLING("rise of the cutting energy until the edge is sharpened, as a share", "", 0, 3),
    /** Moisture of the wood when it is sawn; from 30 % on it counts as green. */
    MOISTURE("moisture of the wood when it is sawn", "%", 0, 300),
    /** Rise of the cutting energy from green wood to wood of 12 % moisture. */
    DRY_RISE("rise of the cutting energy from green wood to 12 % moisture, as a share", "", 0, 3),
    /** Top-plate filing angle of a chain. */
    FILING_ANGLE("top-plate filing angle", "deg", 0, 45),
    /** Rise of the cutting energy for every 10 degrees of filing angle above 10 degrees. */
    FILING_RISE("rise of the cutting energy for 10 deg more than 10 deg of filing angle, as a share", "", 0, 1),
    /** Slowest feed at which sawing is worth while. */
    LEAST_FEED("slowest feed at which sawing is worth while", "m/min", Double.MIN_VALUE, 300),

    /** Fuel tank. */
    TANK("fuel tank", "L", Double.MIN_VALUE, 500),
    /** Specific fuel consumption of the engine. */
    SPECIFIC_FUEL("fuel per work of the engine", "g/kWh", Double.MIN_VALUE, 2000),
    /** Density of the fuel. */
    FUEL_DENSITY("density of the fuel", "kg/L", 0.5, 1.1),
    /** Fuel burnt while the engine idles. */
    IDLE_FUEL("fuel while idling", "L/h", 0, 50),
    /** Bar oil per fuel. */
    BAR_OIL("bar oil per fuel", "L/L", 0, 5),
    /** Two-stroke oil per fuel. */
    MIX_OIL("two-stroke oil per fuel", "L/L", 0, 0.2),

    /** Warm-up before every pass. */
    WARM_UP("warm-up before a pass", "min", 0, 120),
    /** Cool-down after every pass. */
    COOL_DOWN("cool-down after a pass", "min", 0, 120),
    /** Setting the saw for a pass, and the way back after it. */
    SETTING("setting for a pass, with the way back", "min", 0, 240),
    /** Laying the guide, a ladder or a board, for a face that no sawn face leads; once for each, beside the setting. */
    GUIDE("laying the guide for a face that it leads", "min", 0, 240),
    /** Carrying away what a pass sets free. */
    CARRYING("carrying away what a pass sets free", "min", 0, 240),
    /** Turning and clamping the log. */
    TURNING("turning and clamping the log", "min", 0, 480),
    /** Bringing a log to the saw, or the saw to a log. */
    LOADING("bringing log and saw together, per log", "min", 0, 1440),
    /** Filling the tank. */
    REFUELLING("filling the tank", "min", 0, 120),
    /** Face cut between two sharpenings. */
    SHARPENING_AREA("face cut between two sharpenings", "m2", Double.MIN_VALUE, 10_000),
    /** Sharpening or changing the edge. */
    SHARPENING("sharpening or changing the edge", "min", 0, 480),
    /** Productive share of the hours on site; the rest is rest, talk, repairs and weather. */
    UTILISATION("productive share of the hours on site", "", 0.01, 1),
    /** Hours on site in a day. */
    HOURS_PER_DAY("hours on site in a day", "h", 0.5, 24, "give the hours from coming to leaving, such as 6 h"),

    /** Slope of the skids on which logs are rolled up. */
    SKID_ANGLE("slope of the skids on which logs are rolled up", "deg", 0, 60),
    /** Rolling resistance of a log on skids. */
    ROLLING_RESISTANCE("rolling resistance of a log on skids, as a share of its weight across them", "", 0, 1),
    /** Slope over which logs are dragged, uphill above zero. */
    DRAG_SLOPE("slope over which logs are dragged, uphill above zero", "deg", -60, 60),
    /** Friction of a dragged log. */
    DRAG_FRICTION("friction of a dragged log, as a share of its weight across the slope", "", 0, 3),
    /** Most that one trip carries. */
    LOAD_LIMIT(
            "most that one trip carries",
            "kg",
            20,
            100_000,
            "give what a cart, a trailer or a person carries in one trip, or leave the line out"),
    /** Weight of the saw with all that goes with it to the logs. */
    KIT_WEIGHT("saw with all that goes with it to the logs", "kg", 0, 100_000),
    /** A trip between logs and saw and back. */
    ROUND_TRIP("trip there and back, loading and unloading counted", "min", 0, 1440),
    /** Places where the logs lie. */
    PLACES("places where the logs lie", "", 1, 10_000),
    /** Setting the saw up at a place. */
    SET_UP("setting the saw up at a place", "min", 0, 1440),
    /** Sound level at the ear. */
    SOUND_LEVEL("sound level at the ear while the engine runs", "dB(A)", 40, 140),
    /** Vibration at the hands. */
    VIBRATION("vibration total value at the hands while the engine runs", "m/s2", 0, 100),
    /** Carbon monoxide where the sawyer breathes. */
    CARBON_MONOXIDE("carbon monoxide where the sawyer breathes while the engine runs", "ppm", 0, 10_000),

    /** Price of the saw with all that comes with it. */
    PURCHASE("price of the saw", "money", 0, 1e9),
    /** Other outlay before the first board: guide, rails, tools. */
    OTHER_OUTLAY("other outlay before the first board", "money", 0, 1e9),
    /** What the saw fetches at the end of its life. */
    RESALE("resale at the end of its life", "money", 0, 1e9),
    /** Years of life. */
    LIFE("life of the saw", "years", 0.1, 100),
    /** Hours on site in a year. */
    HOURS_PER_YEAR("hours on site in a year", "h", 1, 8784),
    /** Interest, insurance and taxes a year, as a share of the average annual investment. */
    INTEREST("interest, insurance and taxes a year", "1/year", 0, 1),
    /** Repairs and maintenance as a share of depreciation. */
    REPAIRS("repairs as a share of depreciation", "", 0, 10),
    /** Price of fuel. */
    FUEL_PRICE("price of fuel", "money/L", 0, 1e6),
    /** Price of bar oil. */
    BAR_OIL_PRICE("price of bar oil", "money/L", 0, 1e6),
    /** Price of two-stroke oil. */
    MIX_OIL_PRICE("price of two-stroke oil", "money/L", 0, 1e6),
    /** Price of a chain or blade. */
    EDGE_PRICE("price of a chain or blade", "money", 0, 1e6),
    /** Sharpenings that a chain or blade lasts. */
    EDGE_LIFE("sharpenings that a chain or blade lasts", "", 1, 10_000),
    /** Wage of an hour on site, or what the own hour is held to be worth. */
    WAGE("wage, or worth of an own hour", "money/h", 0, 1e6),
    /** Price of the logs. */
    LOG_PRICE("price of the logs, per board foot of usable lumber", "money/bf", 0, 1e6),
    /** Price of the same lumber bought. */
    LUMBER_PRICE("price of the same lumber bought", "money/bf", 0, 1e6),
    /** Drying of sawn lumber to the moisture of the bought. */
    DRYING_PRICE("drying, per usable board foot", "money/bf", 0, 1e6),
    /** Planing of sawn lumber to the size of the bought. */
    PLANING_PRICE("planing, per usable board foot", "money/bf", 0, 1e6),
    /** A grader's visit. */
    GRADER_VISIT("visit of a grader", "money", 0, 1e6),
    /** Grading by the board foot, beside the visit. */
    GRADER_RATE("grading, per usable board foot", "money/bf", 0, 1e6),
    /** Price bought of lumber for uses in which nothing depends on a grade. */
    LESSER_PRICE("price bought of lumber for uses without a grade", "money/bf", 0, 1e6),
    /** What slabs, edgings and sawdust fetch. */
    BY_PRODUCTS("income from slabs and sawdust, per usable board foot", "money/bf", 0, 1e6),
    /** What a travelling sawyer takes by the board foot sawn. */
    HIRE_RATE("rate of a travelling sawyer, per board foot of tally", "money/bf", 0, 1e6),
    /** What a travelling sawyer takes for coming and setting up. */
    HIRE_SET_UP("set-up of a travelling sawyer", "money", 0, 1e6),
    /** The least that a travelling sawyer takes for sawing. */
    HIRE_LEAST("least charge of a travelling sawyer", "money", 0, 1e6),
    /** What a travelling sawyer takes for a blade ruined by metal in a log. */
    HIRE_DAMAGE("charge for a blade ruined by metal", "money", 0, 1e6),
    /** Blades expected to be ruined in the job. */
    HIRE_STRIKES("blades expected to be ruined by metal in the job", "", 0, 1000),
    /** Own hours beside a travelling sawyer. */
    HIRE_HELP("own hours beside a travelling sawyer, in the job", "h", 0, 100_000),
    /** What the logs fetch where they lie. */
    LOG_SALE("price that the logs fetch, per board foot of International 1/4-inch scale", "money/bf", 0, 1e6),
    /** Fuel and vehicle of a trip between logs and saw. */
    TRIP_PRICE("fuel and vehicle of a trip between logs and saw", "money", 0, 1e6);

    private static final Set<WorkInput> OF_THE_JOB = EnumSet.of(
            ALTITUDE,
            GRAVITY_SOFTWOOD,
            GRAVITY_HARDWOOD,
            MOISTURE,
            DRY_RISE,
            UTILISATION,
            HOURS_PER_DAY,
            SKID_ANGLE,
            ROLLING_RESISTANCE,
            DRAG_SLOPE,
            DRAG_FRICTION,
            LOAD_LIMIT,
            ROUND_TRIP,
            PLACES,
            CARBON_MONOXIDE,
            HOURS_PER_YEAR,
            INTEREST,
            FUEL_PRICE,
            BAR_OIL_PRICE,
            MIX_OIL_PRICE,
            WAGE,
            LOG_PRICE,
            LUMBER_PRICE,
            DRYING_PRICE,
            PLANING_PRICE,
            GRADER_VISIT,
            GRADER_RATE,
            LESSER_PRICE,
            BY_PRODUCTS,
            HIRE_RATE,
            HIRE_SET_UP,
            HIRE_LEAST,
            HIRE_DAMAGE,
            HIRE_STRIKES,
            HIRE_HELP,
            LOG_SALE,
            TRIP_PRICE);

    /** Of the wood, the fuel and the people, though a saw may have one of its own. */
    private static final Set<WorkInput> SHARED_WHERE_ALIKE = EnumSet.of(
            ENERGY_SOFTWOOD,
            ENERGY_HARDWOOD,
            LOSS_PER_KILOMETRE,
            FUEL_DENSITY,
            CARRYING,
            TURNING,
            LOADING,
            REFUELLING,
            SHARPENING);

    private final String label;
    private final String unit;
    private final double least;
    private final double greatest;
    private final String remedy;

    WorkInput(String label, String unit, double least, double greatest) {
        this(label, unit, least, greatest, "");
    }

    WorkInput(String label, String unit, double least, double greatest, String remedy) {
        this.label = label;
        this.unit = unit;
        this.least = least;
        this.greatest = greatest;
        this.remedy = remedy;
    }

    /**
     * The key in files, such as {@code rated-power}.
     *
     * @return lower case with hyphens
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The input with a key.
     *
     * @param key such as {@code rated-power}
     * @return the input, if there is one
     */
    public static Optional<WorkInput> ofKey(String key) {
        for (WorkInput input : values()) {
            if (input.key().equals(key)) {
                return Optional.of(input);
            }
        }
        return Optional.empty();
    }

    /**
     * The whole key in the file of a job, such as {@code work.rated-power}.
     *
     * @return the key with the part of the file that it belongs to
     */
    public String keyOfJob() {
        return (compareTo(PURCHASE) >= 0 ? "money." : "work.") + key();
    }

    /**
     * What it is, in words.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * Its unit; {@code money} stands for the currency of the job.
     *
     * @return the unit as written, empty for a plain number
     */
    public String unit() {
        return unit;
    }

    /**
     * The values it may have.
     *
     * @return the limits
     */
    public Domain domain() {
        return new Domain(label, unit, least, greatest, remedy);
    }

    /**
     * Whether only whole numbers make sense.
     *
     * @return true for what is counted
     */
    public boolean isCount() {
        return this == PLACES;
    }

    /**
     * Refuses what it cannot be.
     *
     * @param value in its unit
     * @return the value
     * @throws OutOfDomainException if the value is outside its limits, or a part of something that is counted
     */
    double require(double value) {
        domain().require(value);
        if (isCount() && value != StrictMath.rint(value)) {
            throw new OutOfDomainException(
                    label, Double.toString(value), unit, "whole numbers, " + domain().limits(), "count them");
        }
        return value;
    }

    /**
     * Whether it is a price or an outlay.
     *
     * @return true for money and for money per something
     */
    public boolean isMoney() {
        return unit.startsWith("money");
    }

    /**
     * Whether it belongs to the saw: it is another's with another saw. The rest belongs to the wood, the people and the prices of
     * the job.
     *
     * @return true for what changes with the saw
     */
    public boolean ofSaw() {
        return !OF_THE_JOB.contains(this);
    }

    /**
     * Whether two saws with the same value, range and source of it have it in common: an error in it is then the same for both.
     *
     * @return true for what belongs to the wood, the fuel, the air or the people, though a saw may have one of its own
     */
    boolean sharedWhereAlike() {
        return SHARED_WHERE_ALIKE.contains(this);
    }
}
