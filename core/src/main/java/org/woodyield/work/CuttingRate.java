package org.woodyield.work;

import java.util.Set;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.wood.Species;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How fast a saw rips one kind of wood.
 *
 * <p>The power at the cut pays for the wood that the kerf turns to dust: {@code P = k * q * w * v}, with the cutting
 * energy k in J/cm3, the kerf q and the width of cut w in cm, and the feed v in cm/s. So the feed is {@code P / (k q w)},
 * but never more than what carriage and sawyer can hold, nor than what the teeth can bite.
 *
 * <p>The cutting energy is taken as proportional to the specific gravity of the wood (oven-dry mass over green volume),
 * with one figure for softwoods and one for hardwoods. Density alone is a rough predictor, and no published ripping figure
 * stands behind the defaults: they come from memory with a range of a factor of two either way, and the ratio of the two
 * was chosen so that a softwood of specific gravity 0.45 rips twice as fast as a hardwood of 0.60, as sawyers say.
 * {@link EnergyFit} finds the figure from the user's own timed cuts; it then replaces the default.
 *
 * <p>Three things raise it. An edge dulls evenly with the face that it cuts, by the share d from one sharpening to the next;
 * the mean, 1 + d / 2, is computed with, and the loss for each square metre is d over the face between two sharpenings. Wood
 * drier than 30 % is harder, by a share that is given for 12 %, in a straight line. A chain filed steeper than 10 degrees,
 * the angle that sawyers use along the grain, takes more, in a straight line; no published comparison of ripping was found,
 * so that the default's range begins at nothing.
 */
public final class CuttingRate {

    private static final Domain WIDTH = Domain.of("width of cut", "cm", Double.MIN_VALUE, 400);
    private static final Domain END_WIDTH = Domain.of("width of cut at an end", "cm", 0, 400);
    private static final Domain LENGTH = Domain.of("length of cut", "cm", Double.MIN_VALUE, 3000);
    private static final Domain KERF = Domain.of("kerf", "cm", Double.MIN_VALUE, 5);
    private static final Domain FEED = Domain.positive("feed", "m/min");
    private static final Source DEFINITION = Sources.get("definition");

    private final WorkInputs inputs;
    private final boolean hardwood;
    private final Sourced gravity;
    private final double kerfCentimetres;
    private final double powerAtCutWatts;
    private final double energyJoulesPerCubicCentimetre;
    private final double feedCapCentimetresPerSecond;

    private CuttingRate(WorkInputs inputs, boolean hardwood, Sourced gravity, double kerfCentimetres) {
        this.inputs = inputs;
        this.hardwood = hardwood;
        this.gravity = gravity;
        this.kerfCentimetres = KERF.require(kerfCentimetres);
        this.powerAtCutWatts = inputs.get(WorkInput.RATED_POWER)
                * 1000
                * inputs.get(WorkInput.SHARE_AT_CUT)
                * (1 - inputs.get(WorkInput.LOSS_PER_KILOMETRE) * inputs.get(WorkInput.ALTITUDE) / 1000);
        this.energyJoulesPerCubicCentimetre = inputs.get(energyInput())
                * gravity.value()
                * (1 + inputs.get(WorkInput.DULLING) / 2)
                * dryness()
                * filing();
        double limit = inputs.get(WorkInput.FEED_LIMIT) * 100 / 60;
        this.feedCapCentimetresPerSecond = hasBite()
                ? Math.min(
                        limit,
                        inputs.get(WorkInput.BITE)
                                * inputs.get(WorkInput.BLADE_SPEED)
                                * 100
                                / inputs.get(WorkInput.TOOTH_SPACING))
                : limit;
    }

    /**
     * The rate for a species; where its specific gravity is not known, the input for such a wood stands in.
     *
     * @param inputs power, losses, cutting energy, limits of feed
     * @param species the wood
     * @param kerf width of the kerf
     * @return the rate
     * @throws org.woodyield.measure.OutOfDomainException if an input is missing or the kerf is not above 0, up to 50 mm
     */
    public static CuttingRate of(WorkInputs inputs, Species species, Length kerf) {
        return of(
                inputs,
                species.hardwood(),
                species.specificGravityGreen().orElseGet(() -> standIn(inputs, species.hardwood())),
                kerf);
    }

    /**
     * The rate for a kind of wood of which no more is known; the input for its specific gravity stands in.
     *
     * @param inputs power, losses, cutting energy, limits of feed
     * @param hardwood whether it is a hardwood
     * @param kerf width of the kerf
     * @return the rate
     * @throws org.woodyield.measure.OutOfDomainException if an input is missing or the kerf is not above 0, up to 50 mm
     */
    public static CuttingRate of(WorkInputs inputs, boolean hardwood, Length kerf) {
        return of(inputs, hardwood, standIn(inputs, hardwood), kerf);
    }

    private static Sourced standIn(WorkInputs inputs, boolean hardwood) {
        InputValue standIn = inputs.required(hardwood ? WorkInput.GRAVITY_HARDWOOD : WorkInput.GRAVITY_SOFTWOOD);
        return new Sourced(standIn.value(), "", standIn.source());
    }

    /**
     * The rate for a wood that is known by its specific gravity.
     *
     * @param inputs power, losses, cutting energy, limits of feed
     * @param hardwood whether it is a hardwood
     * @param gravity oven-dry mass over green volume, with its source
     * @param kerf width of the kerf
     * @return the rate
     * @throws org.woodyield.measure.OutOfDomainException if an input is missing, the specific gravity is not within 0.1 to
     *     1.3, or the kerf not above 0, up to 50 mm
     */
    public static CuttingRate of(WorkInputs inputs, boolean hardwood, Sourced gravity, Length kerf) {
        Domain.of("specific gravity", "", 0.1, 1.3).require(gravity.value());
        return new CuttingRate(inputs, hardwood, gravity, kerf.toMillimetres() / 10);
    }

    private WorkInput energyInput() {
        return energyInput(hardwood);
    }

    static WorkInput energyInput(boolean hardwood) {
        return hardwood ? WorkInput.ENERGY_HARDWOOD : WorkInput.ENERGY_SOFTWOOD;
    }

    private boolean hasMoisture() {
        return inputs.has(Set.of(WorkInput.MOISTURE, WorkInput.DRY_RISE));
    }

    private double dryness() {
        return hasMoisture()
                ? 1 + inputs.get(WorkInput.DRY_RISE) * Math.max(30 - inputs.get(WorkInput.MOISTURE), 0) / 18
                : 1;
    }

    private boolean hasFiling() {
        return inputs.has(Set.of(WorkInput.FILING_ANGLE, WorkInput.FILING_RISE));
    }

    private double filing() {
        return hasFiling()
                ? 1 + inputs.get(WorkInput.FILING_RISE) * Math.max(inputs.get(WorkInput.FILING_ANGLE) - 10, 0) / 10
                : 1;
    }

    private boolean hasBite() {
        return inputs.has(Set.of(WorkInput.BITE, WorkInput.BLADE_SPEED, WorkInput.TOOTH_SPACING));
    }

    /**
     * The power that does cutting.
     *
     * @return rated power x share at the cut, less what the height takes, in watts
     */
    @Calculation("work.power-at-cut")
    public double powerAtCutWatts() {
        return powerAtCutWatts;
    }

    /**
     * How {@link #powerAtCutWatts} comes about, the loss by height among it.
     *
     * @return the working, with the same result
     */
    public Working powerAtCutWorking() {
        return power(Working.of("Power at the cut")).build();
    }

    /**
     * The cutting energy of this wood, as a mean between two sharpenings.
     *
     * @return in J/cm3
     */
    public double energyJoulesPerCubicCentimetre() {
        return energyJoulesPerCubicCentimetre;
    }

    /**
     * What the cutting energy rests on.
     *
     * @return the source of the cutting energy of this kind of wood
     */
    public Source energySource() {
        return inputs.required(energyInput()).source();
    }

    /**
     * The cutting energy of this wood for each unit of the input of its kind.
     *
     * @return the mean between two sharpenings over the energy at specific gravity 1
     */
    double energyFactor() {
        return energyJoulesPerCubicCentimetre / inputs.get(energyInput());
    }

    WorkInputs inputs() {
        return inputs;
    }

    /**
     * The fastest feed that carriage, sawyer and teeth allow.
     *
     * @return in cm/s
     */
    public double feedCapCentimetresPerSecond() {
        return feedCapCentimetresPerSecond;
    }

    /**
     * The kerf.
     *
     * @return in cm
     */
    public double kerfCentimetres() {
        return kerfCentimetres;
    }

    /**
     * The width at and below which the feed no longer rises.
     *
     * @return {@code P / (k q v)} at the fastest feed, in cm
     */
    public double widthAtFeedCapCentimetres() {
        return powerAtCutWatts / (energyJoulesPerCubicCentimetre * kerfCentimetres * feedCapCentimetresPerSecond);
    }

    /**
     * The feed in a width of cut.
     *
     * @param width of the cut, bark included where the saw must pass it
     * @return {@code min(cap, P / (k q w))} in cm/s
     * @throws org.woodyield.measure.OutOfDomainException if the width is not above 0, up to 4 m
     */
    @Calculation("work.feed")
    public double feedCentimetresPerSecond(Length width) {
        double w = WIDTH.require(width.toMillimetres() / 10);
        return Math.min(
                feedCapCentimetresPerSecond, powerAtCutWatts / (energyJoulesPerCubicCentimetre * kerfCentimetres * w));
    }

    /**
     * How {@link #feedCentimetresPerSecond} comes about.
     *
     * @param width of the cut
     * @return the working, with the same result
     */
    public Working feedWorking(Length width) {
        double w = WIDTH.require(width.toMillimetres() / 10);
        return begin("Feed in a cut")
                .given("w", "width of cut", w, "cm")
                .step("v", "feed", "min(v_cap, P / (k * q * w))", "cm/s", DEFINITION)
                .build();
    }

    /**
     * The time of a cut whose width changes evenly from one end to the other: the integral of one over the feed along it.
     *
     * @param cut the cut
     * @return cutting time in seconds; the way back and all handling are not in it
     * @throws org.woodyield.measure.OutOfDomainException if a width is not 0 to 4 m, or the length not above 0, up to 30 m
     */
    @Calculation("work.cutting-time")
    public double cuttingSeconds(Cut cut) {
        double narrow = Math.min(END_WIDTH.require(cut.widthAtOneEnd()), END_WIDTH.require(cut.widthAtOther()));
        double wide = Math.max(cut.widthAtOneEnd(), cut.widthAtOther());
        double length = LENGTH.require(cut.length());
        double limit = widthAtFeedCapCentimetres();
        double above = Math.max(wide - limit, 0);
        double below = Math.max(narrow - limit, 0);
        double excess = wide > narrow ? (above * above - below * below) / (2 * (wide - narrow)) : above;
        return length / feedCapCentimetresPerSecond * (1 + excess / limit);
    }

    /**
     * How {@link #cuttingSeconds} comes about.
     *
     * @param cut the cut
     * @return the working, with the same result
     */
    public Working cuttingSecondsWorking(Cut cut) {
        double one = END_WIDTH.require(cut.widthAtOneEnd());
        double other = END_WIDTH.require(cut.widthAtOther());
        LENGTH.require(cut.length());
        Working.Builder working = begin("Time of a cut")
                .given("w_narrow", "width at the narrow end", Math.min(one, other), "cm")
                .given("w_wide", "width at the wide end", Math.max(one, other), "cm")
                .given("L", "length of cut", cut.length(), "cm")
                .step(
                        "w_cap",
                        "width at which the power just holds the fastest feed",
                        "P / (k * q * v_cap)",
                        "cm",
                        DEFINITION)
                .step("a", "wide end over that width", "max(w_wide - w_cap, 0)", "cm", DEFINITION)
                .step("b", "narrow end over that width", "max(w_narrow - w_cap, 0)", "cm", DEFINITION);
        if (one == other) {
            working.step("e", "mean excess of width", "a", "cm", DEFINITION);
        } else {
            working.step("e", "mean excess of width", "(a * a - b * b) / (2 * (w_wide - w_narrow))", "cm", DEFINITION);
        }
        return working.step("t", "cutting time", "L / v_cap * (1 + e / w_cap)", "s", DEFINITION)
                .build();
    }

    private Working.Builder begin(String title) {
        Working.Builder working = power(Working.of(title));
        input(working, "c", energyInput());
        working.constant("G", "specific gravity of the wood", gravity.value(), "", gravity.source());
        input(working, "d", WorkInput.DULLING);
        String formula = "c * G * (1 + d / 2)";
        if (hasMoisture()) {
            input(working, "M", WorkInput.MOISTURE);
            input(working, "h", WorkInput.DRY_RISE);
            working.step("m", "for dryness", "1 + h * max(30 - M, 0) / 18", "", DEFINITION);
            formula += " * m";
        }
        if (hasFiling()) {
            input(working, "F", WorkInput.FILING_ANGLE);
            input(working, "g", WorkInput.FILING_RISE);
            working.step("u", "for the filing angle", "1 + g * max(F - 10, 0) / 10", "", DEFINITION);
            formula += " * u";
        }
        working.step("k", "cutting energy, mean between sharpenings", formula, "J/cm3", DEFINITION);
        working.given("q", "kerf", kerfCentimetres, "cm");
        input(working, "V", WorkInput.FEED_LIMIT);
        if (hasBite()) {
            input(working, "b_t", WorkInput.BITE);
            input(working, "s_b", WorkInput.BLADE_SPEED);
            input(working, "p_t", WorkInput.TOOTH_SPACING);
            working.step("v_cap", "fastest feed", "min(V * 100 / 60, b_t * s_b * 100 / p_t)", "cm/s", DEFINITION);
        } else {
            working.step("v_cap", "fastest feed", "V * 100 / 60", "cm/s", DEFINITION);
        }
        return working;
    }

    private Working.Builder power(Working.Builder working) {
        input(working, "N", WorkInput.RATED_POWER);
        input(working, "s", WorkInput.SHARE_AT_CUT);
        input(working, "l", WorkInput.LOSS_PER_KILOMETRE);
        input(working, "H", WorkInput.ALTITUDE);
        return working.step("P", "power at the cut", "N * 1000 * s * (1 - l * H / 1000)", "W", DEFINITION);
    }

    private void input(Working.Builder working, String symbol, WorkInput input) {
        inputs.show(working, symbol, input);
    }

    /**
     * The power at the cut that a feed in a width takes.
     *
     * @param width of the cut
     * @param feedCentimetresPerSecond the feed
     * @return {@code k q w v} in watts
     * @throws org.woodyield.measure.OutOfDomainException if the width is not above 0, up to 4 m, or the feed is not above 0
     */
    public double powerForWatts(Length width, double feedCentimetresPerSecond) {
        double w = WIDTH.require(width.toMillimetres() / 10);
        Domain.positive("feed", "cm/s").require(feedCentimetresPerSecond);
        return energyJoulesPerCubicCentimetre * kerfCentimetres * w * feedCentimetresPerSecond;
    }

    /**
     * The rated power that a feed in a width takes.
     *
     * @param width of the cut
     * @param feedMetresPerMinute the feed
     * @return {@code k q w v} over the share of the rated power that does cutting and over what the height leaves of it, in kW
     * @throws org.woodyield.measure.OutOfDomainException if the width is not above 0, up to 4 m, or the feed is not above 0
     */
    @Calculation("work.rated-power-needed")
    public double ratedKilowatts(Length width, double feedMetresPerMinute) {
        double w = WIDTH.require(width.toMillimetres() / 10);
        FEED.require(feedMetresPerMinute);
        double power = energyJoulesPerCubicCentimetre * kerfCentimetres * w * (feedMetresPerMinute * 100 / 60);
        return power
                / (1000
                        * inputs.get(WorkInput.SHARE_AT_CUT)
                        * (1 - inputs.get(WorkInput.LOSS_PER_KILOMETRE) * inputs.get(WorkInput.ALTITUDE) / 1000));
    }

    /**
     * How {@link #ratedKilowatts} comes about.
     *
     * @param width of the cut
     * @param feedMetresPerMinute the feed
     * @return the working, with the same result
     */
    public Working ratedKilowattsWorking(Length width, double feedMetresPerMinute) {
        double w = WIDTH.require(width.toMillimetres() / 10);
        FEED.require(feedMetresPerMinute);
        return begin("Rated power for a feed")
                .given("w", "width of cut", w, "cm")
                .given("v", "feed", feedMetresPerMinute, "m/min")
                .step("P_v", "power at the cut", "k * q * w * (v * 100 / 60)", "W", DEFINITION)
                .step("N_v", "rated power", "P_v / (1000 * s * (1 - l * H / 1000))", "kW", DEFINITION)
                .build();
    }
}
