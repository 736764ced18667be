package org.woodyield.sawing;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How long the guide of a first cut has to be, and how close its supports.
 *
 * <p>How stiff a guide is, its user finds out: it is laid on two supports, the saw is set down midway, and the dip there is
 * measured. Under a load midway the dip of a beam on two supports grows with the cube of the span. Under its own weight it
 * grows with the fourth power, so for a span shorter than the tested one the cube says too much rather than too little; a
 * longer one is refused. A guide that runs on over further supports dips less still. Strength is not in it.
 */
public final class GuideSupport {

    private static final Source BEAM = Sources.get("guide-beam");
    private static final Source GEOMETRY = Sources.get("definition");
    private static final Domain LOG = Domain.of("length of the log", "in", Double.MIN_VALUE, 4000);
    private static final Domain RUN_ON = new Domain(
            "run-on of the guide", "in", 0, 400, "give the length of the saw's carriage along the guide, or more");
    private static final Domain SPAN = Domain.of("tested span", "in", Double.MIN_VALUE, 4000);
    private static final Domain DIP = Domain.of("dip at the tested span", "in", Double.MIN_VALUE, 100);
    private static final Domain GUIDE = Domain.of("length of the guide", "in", Double.MIN_VALUE, 5000);

    private GuideSupport() {}

    /**
     * The length of the guide: the saw stands on it wholly before it enters the log and after it has left it.
     *
     * @param logInches length of the log, above 0, up to 4000 in
     * @param runOnInches what the guide reaches beyond the log at each end, 0 to 400 in
     * @return {@code L + 2 r} in inches
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.guide-length")
    public static double lengthInches(double logInches, double runOnInches) {
        LOG.require(logInches);
        RUN_ON.require(runOnInches);
        return logInches + 2 * runOnInches;
    }

    /**
     * How {@link #lengthInches} comes about.
     *
     * @param logInches length of the log
     * @param runOnInches what the guide reaches beyond it at each end
     * @return the working, with the same result
     */
    public static Working lengthInchesWorking(double logInches, double runOnInches) {
        LOG.require(logInches);
        RUN_ON.require(runOnInches);
        return Working.of("Length of the guide")
                .given("L", "length of the log", logInches, "in")
                .given("r", "run-on at each end", runOnInches, "in")
                .step("G", "length of the guide", "L + 2 * r", "in", GEOMETRY)
                .build();
    }

    /**
     * The greatest distance of two supports at which the guide dips no more than is allowed.
     *
     * @param testedSpanInches the span that was tested, above 0, up to 4000 in
     * @param testedDipInches the dip that was measured there with the saw midway, above 0, up to 100 in
     * @param allowedDipInches what is allowed, above 0, up to the measured dip
     * @return {@code s (a / d)^(1/3)} in inches, at most the tested span
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.support-spacing")
    public static double spacingInches(double testedSpanInches, double testedDipInches, double allowedDipInches) {
        requireTest(testedSpanInches, testedDipInches, allowedDipInches);
        return testedSpanInches * StrictMath.pow(allowedDipInches / testedDipInches, 1.0 / 3);
    }

    /**
     * How {@link #spacingInches} comes about.
     *
     * @param testedSpanInches the span that was tested
     * @param testedDipInches the dip that was measured there
     * @param allowedDipInches what is allowed
     * @return the working, with the same result
     */
    public static Working spacingInchesWorking(
            double testedSpanInches, double testedDipInches, double allowedDipInches) {
        requireTest(testedSpanInches, testedDipInches, allowedDipInches);
        return Working.of("Greatest distance of the guide's supports")
                .given("s", "tested span", testedSpanInches, "in")
                .given("d", "dip measured there with the saw midway", testedDipInches, "in")
                .given("a", "dip allowed", allowedDipInches, "in")
                .step("x", "distance of the supports", "s * (a / d)^(1 / 3)", "in", BEAM)
                .note("The dip of a beam on two supports, loaded midway, grows with the cube of the span.")
                .build();
    }

    /**
     * What the guide dips between two supports with the saw midway: {@link #spacingInches} the other way round.
     *
     * @param testedSpanInches the span that was tested, above 0, up to 4000 in
     * @param testedDipInches the dip that was measured there with the saw midway, above 0, up to 100 in
     * @param spacingInches distance of the supports, above 0, up to the tested span
     * @return {@code d (x / s)^3} in inches
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.support-sag")
    public static double sagInches(double testedSpanInches, double testedDipInches, double spacingInches) {
        requireSpan(testedSpanInches, testedDipInches, spacingInches);
        double share = spacingInches / testedSpanInches;
        return testedDipInches * (share * share * share);
    }

    /**
     * How {@link #sagInches} comes about.
     *
     * @param testedSpanInches the span that was tested
     * @param testedDipInches the dip that was measured there
     * @param spacingInches distance of the supports
     * @return the working, with the same result
     */
    public static Working sagInchesWorking(double testedSpanInches, double testedDipInches, double spacingInches) {
        requireSpan(testedSpanInches, testedDipInches, spacingInches);
        return Working.of("Dip of the guide between two supports")
                .given("s", "tested span", testedSpanInches, "in")
                .given("d", "dip measured there with the saw midway", testedDipInches, "in")
                .given("x", "distance of the supports", spacingInches, "in")
                .step("y", "dip with the saw midway", "d * (x / s)^3", "in", BEAM)
                .build();
    }

    private static void requireSpan(double span, double dip, double spacing) {
        SPAN.require(span);
        DIP.require(dip);
        new Domain("distance of the supports", "in", Double.MIN_VALUE, span, "test the guide at a longer span")
                .require(spacing);
    }

    private static void requireTest(double span, double dip, double allowed) {
        SPAN.require(span);
        DIP.require(dip);
        new Domain(
                        "dip allowed",
                        "in",
                        Double.MIN_VALUE,
                        dip,
                        "the tested span serves already; test a longer one to learn more")
                .require(allowed);
    }

    /**
     * How many supports the guide needs, its two ends among them.
     *
     * @param guideInches length of the guide, above 0, up to 5000 in
     * @param spacingInches greatest distance of two supports, from 1 in
     * @return {@code ceil(G / x) + 1}, 2 or more
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.supports")
    public static double supports(double guideInches, double spacingInches) {
        GUIDE.require(guideInches);
        spacing().require(spacingInches);
        return Math.ceil(guideInches / spacingInches) + 1;
    }

    /**
     * How {@link #supports} comes about.
     *
     * @param guideInches length of the guide
     * @param spacingInches greatest distance of two supports
     * @return the working, with the same result
     */
    public static Working supportsWorking(double guideInches, double spacingInches) {
        GUIDE.require(guideInches);
        spacing().require(spacingInches);
        return Working.of("Supports of the guide")
                .given("G", "length of the guide", guideInches, "in")
                .given("x", "greatest distance of two supports", spacingInches, "in")
                .step("n", "supports", "ceil(G / x) + 1", "", GEOMETRY)
                .build();
    }

    private static Domain spacing() {
        return new Domain("distance of the supports", "in", 1, 4000, "take a stiffer guide");
    }
}
