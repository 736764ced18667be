package org.woodyield.lumber;

import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The size to saw green for a wanted finished size, and the way back. One object is one dimension, thickness or width.
 *
 * <p>Planed dry: T = (F + P) / (1 - S/100) + Z s. Planed green: T = F + P + Z s, the form of Brown's bulletin, F then being
 * the green dressed size. F finished size, P planing of both faces together, S shrinkage from green in percent of green, Z
 * standard deviations of margin, s standard deviation of sawing.
 *
 * @see org.woodyield.source.Sources sources brown-em-8731 and brown-dry-form
 */
public final class GreenTargetSize {

    private static final Domain SHRINKAGE = Domain.of("shrinkage", "%", 0, 30);
    private static final Domain MARGIN = Domain.of("standard deviations of margin", "", -4, 8);

    private final Length finished;
    private final Length planing;
    private final double shrinkagePercent;
    private final double z;
    private final Length deviation;
    private final boolean dry;

    private GreenTargetSize(
            Length finished, Length planing, double shrinkagePercent, double z, Length deviation, boolean dry) {
        require("finished size", finished, false);
        require("planing", planing, true);
        require("standard deviation of sawing", deviation, true);
        this.finished = finished;
        this.planing = planing;
        this.shrinkagePercent = SHRINKAGE.require(shrinkagePercent);
        this.z = MARGIN.require(z);
        this.deviation = deviation;
        this.dry = dry;
    }

    /**
     * For lumber that is dried and then planed; with no planing, for lumber that is dried and used rough.
     *
     * @param finished the finished size at the final moisture, above 0
     * @param planing taken off both faces together, 0 or more
     * @param shrinkagePercent from green to the final moisture, percent of the green size, 0 to 30 %
     * @param z standard deviations of margin, -4 to 8
     * @param deviation standard deviation of sawn sizes, 0 or more
     * @return the size
     * @throws OutOfDomainException if an argument is outside
     */
    public static GreenTargetSize planedDry(
            Length finished, Length planing, double shrinkagePercent, double z, Length deviation) {
        return new GreenTargetSize(finished, planing, shrinkagePercent, z, deviation, true);
    }

    /**
     * For lumber that is planed green; its finished size is the green dressed size.
     *
     * @param finished the green dressed size, above 0
     * @param planing taken off both faces together, 0 or more
     * @param z standard deviations of margin, -4 to 8
     * @param deviation standard deviation of sawn sizes, 0 or more
     * @return the size
     * @throws OutOfDomainException if an argument is outside
     */
    public static GreenTargetSize planedGreen(Length finished, Length planing, double z, Length deviation) {
        return new GreenTargetSize(finished, planing, 0, z, deviation, false);
    }

    /**
     * The finished size that is wanted.
     *
     * @return as given
     */
    public Length finished() {
        return finished;
    }

    /**
     * The least green size from which the finished one can be made.
     *
     * @return inches, not rounded
     */
    @Calculation("lumber.critical-size")
    public double criticalInches() {
        double dryRough = finished.toInches() + planing.toInches();
        return dry ? dryRough / (1 - shrinkagePercent / 100) : dryRough;
    }

    /**
     * How {@link #criticalInches} came about.
     *
     * @return the working; its value equals the size bit for bit
     */
    public Working criticalWorking() {
        return critical("Least green size" + end(), Optional.empty()).build();
    }

    /**
     * The green size to aim at.
     *
     * @return inches, not rounded
     */
    @Calculation("lumber.green-target-size")
    public double targetInches() {
        return criticalInches() + z * deviation.toInches();
    }

    /**
     * How {@link #targetInches} came about.
     *
     * @return the working; its value equals the target bit for bit
     */
    public Working targetWorking() {
        return target("Green size to saw" + end(), Optional.empty()).build();
    }

    /**
     * The green size to set the saw to: the target up to a whole step. An excess of less than a millionth of a step is the
     * computer's own error and is not counted.
     *
     * @param step the saw's own setting step, above 0
     * @return a multiple of the step
     * @throws OutOfDomainException if the step is not above zero
     */
    @Calculation("lumber.saw-setting")
    public Length setting(Length step) {
        require("setting step", step, false);
        return step.times((long) Math.ceil(targetInches() / step.toInches() - 0.000001));
    }

    /**
     * The working of the setting: the target, then its rounding up to the saw's step.
     *
     * @param step the saw's own setting step, above 0
     * @return the working; its value is the setting in inches
     * @throws OutOfDomainException if the step is not above zero
     */
    public Working settingWorking(Length step) {
        return settingWorking(step, "Green size to set the saw to" + end(), Optional.empty());
    }

    /** The working of the setting, the shrinkage with its own. */
    Working settingWorking(Length step, String title, Optional<Working> shrinkage) {
        require("setting step", step, false);
        return target(title, shrinkage)
                .given("step", "setting step of the saw", step.toInches(), "in")
                .step("n", "whole steps, up", "ceil(T / step - 0.000001)", "", Sources.get("definition"))
                .step("setting", "on the saw's scale", "n * step", "in", Sources.get("definition"))
                .build();
    }

    /**
     * What a piece sawn green measures when it has dried, still rough.
     *
     * @param green the green size
     * @return inches: green times one less the shrinkage
     */
    @Calculation("lumber.dry-rough-size")
    public double dryInches(Length green) {
        return green.toInches() * (1 - shrinkagePercent / 100);
    }

    /**
     * How {@link #dryInches} came about.
     *
     * @param green the green size
     * @return the working; its value equals the size bit for bit
     */
    public Working dryWorking(Length green) {
        return Working.of("Size after drying, rough")
                .given("G", "green size", green.toInches(), "in")
                .given("S", "shrinkage from green", shrinkagePercent, "%")
                .step("dry", "dry size, rough", "G * (1 - S / 100)", "in", Sources.get("definition"))
                .build();
    }

    /**
     * What such a piece measures when the planing has been taken off as well.
     *
     * @param green the green size
     * @return inches: the dry size less the planing; may be under the finished size, the piece is then scant
     */
    @Calculation("lumber.dry-planed-size")
    public double planedInches(Length green) {
        return green.toInches() * (1 - shrinkagePercent / 100) - planing.toInches();
    }

    /**
     * How {@link #planedInches} came about.
     *
     * @param green the green size
     * @return the working; its value equals the size bit for bit
     */
    public Working planedWorking(Length green) {
        return planedWorking(green, "Size after drying and planing", Optional.empty());
    }

    /** The working of the planed size, the shrinkage with its own. */
    Working planedWorking(Length green, String title, Optional<Working> shrinkage) {
        return shrinkage(Working.of(title), shrinkage)
                .given("G", "green size", green.toInches(), "in")
                .given("P", "planing, both faces", planing.toInches(), "in")
                .step("size", "dry and planed", "G * (1 - S / 100) - P", "in", Sources.get("definition"))
                .build();
    }

    /**
     * The share of pieces that will be scant when the saw aims at a green size, its sizes scattering by the normal law.
     *
     * @param green the size aimed at
     * @return 0 to 1; with no deviation 0 or 1
     */
    @Calculation("lumber.scant-share")
    public double scantShare(Length green) {
        double margin = green.toInches() - criticalInches();
        if (!deviation.isPositive()) {
            return margin < 0 ? 1 : 0;
        }
        return NormalLaw.shareBelow(-(margin / deviation.toInches()));
    }

    /**
     * How {@link #scantShare} came about.
     *
     * @param green the size aimed at
     * @return the working; its value equals the share bit for bit
     */
    public Working scantWorking(Length green) {
        Working.Builder working = critical("Share of pieces that are scant" + end(), Optional.empty())
                .given("G", "green size aimed at", green.toInches(), "in")
                .step("margin", "margin over the least green size", "G - C", "in", Sources.get("definition"));
        if (deviation.isPositive()) {
            working.given("s", "standard deviation of sawing", deviation.toInches(), "in")
                    .step("z", "margin in standard deviations", "margin / s", "", Sources.get("definition"));
        }
        return working.lookup(
                        "share",
                        "share below the least green size",
                        deviation.isPositive() ? "standard normal law below -z" : "no scatter: all or none",
                        scantShare(green),
                        "",
                        Sources.get("normal-law"))
                .build();
    }

    private String end() {
        return dry ? ", planed dry" : ", planed green";
    }

    private Working.Builder shrinkage(Working.Builder working, Optional<Working> known) {
        return known.isPresent()
                ? working.include(known.get())
                : working.given("S", "shrinkage from green", shrinkagePercent, "%");
    }

    private Working.Builder target(String title, Optional<Working> shrinkage) {
        return critical(title, shrinkage)
                .given("Z", "standard deviations of margin", z, "")
                .given("s", "standard deviation of sawing", deviation.toInches(), "in")
                .step("T", "green target size", "C + Z * s", "in", Sources.get("brown-em-8731"));
    }

    private Working.Builder critical(String title, Optional<Working> shrinkage) {
        Working.Builder working = dry ? shrinkage(Working.of(title), shrinkage) : Working.of(title);
        working.given("F", dry ? "finished size, dry" : "finished size, green", finished.toInches(), "in")
                .given("P", "planing, both faces", planing.toInches(), "in");
        if (!dry) {
            return working.step("C", "least green size", "F + P", "in", Sources.get("brown-em-8731"));
        }
        Source form = Sources.get("brown-dry-form");
        return working.step("C", "least green size", "(F + P) / (1 - S / 100)", "in", form)
                .note("A form that multiplies by one plus the shrinkage is in circulation too; it comes out smaller.");
    }

    private static void require(String parameter, Length length, boolean zeroAllowed) {
        if (length.compareTo(Length.ZERO) < 0 || (!zeroAllowed && !length.isPositive())) {
            throw new OutOfDomainException(parameter, length.toString(), "", zeroAllowed ? "0 or more" : "above 0", "");
        }
    }
}
