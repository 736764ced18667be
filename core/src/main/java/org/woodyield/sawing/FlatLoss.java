package org.woodyield.sawing;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What a guide that is bent or twisted costs a board in flat thickness.
 *
 * <p>A saw that rides the face before leaves a board of true thickness whose two faces are copies of the guide. The board is
 * planed flat without being forced straight: both planes lie at right angles to the thickness and touch the faces from
 * within, so that what is lost is the spread of heights of one face about the plane that suits it best. All lengths are in
 * inches; the formulas hold in any one unit.
 */
public final class FlatLoss {

    private static final Source GEOMETRY = Sources.get("definition");
    private static final Domain WIDTH = Domain.of("width of the board", "in", Double.MIN_VALUE, 200);
    private static final Domain WIND =
            new Domain("wind", "degrees", 0, 10, "a guide twisted more than that is no guide");
    private static final Domain DIP = Domain.of("dip", "in", 0, 100);
    private static final Domain LENGTH = Domain.of("length", "in", Double.MIN_VALUE, 4000);
    private static final Domain LOSS = Domain.of("loss of flat thickness", "in", 0, 100);
    private static final String ARC_FORMULA = "d * (l / L)^2";

    private FlatLoss() {}

    /**
     * The loss by wind: one end of the board is turned against the other. Its corners stand a quarter of width times angle
     * above and below the middle plane, so the face spreads over half of width times angle.
     *
     * @param widthInches width of the board, above 0, up to 200 in
     * @param windDegrees angle between its two ends, 0 to 10 degrees; the angle stands for its tangent, which is 1 % more
     *     at 10 degrees
     * @return {@code w a / 2} in inches, with the angle in radians; not rounded
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.wind-loss")
    public static double windInches(double widthInches, double windDegrees) {
        WIDTH.require(widthInches);
        WIND.require(windDegrees);
        double angle = windDegrees * StrictMath.PI / 180;
        return widthInches * angle / 2;
    }

    /**
     * How {@link #windInches} comes about.
     *
     * @param widthInches width of the board
     * @param windDegrees angle between its two ends
     * @return the working, with the same result
     */
    public static Working windInchesWorking(double widthInches, double windDegrees) {
        WIDTH.require(widthInches);
        WIND.require(windDegrees);
        return Working.of("Flat thickness lost by wind")
                .given("w", "width of the board", widthInches, "in")
                .given("g", "wind from end to end", windDegrees, "degrees")
                .constant("pi", "circle constant", StrictMath.PI, "", GEOMETRY)
                .step("a", "wind", "g * pi / 180", "rad", GEOMETRY)
                .step("f", "loss", "w * a / 2", "in", GEOMETRY)
                .build();
    }

    /**
     * The loss by an arc: the guide sags or rises evenly over its length, and the board has its share of the bend.
     *
     * @param dipInches greatest distance of the guide from the straight line between its ends, 0 to 100 in
     * @param guideInches the length over which the dip is measured, above 0, up to 4000 in
     * @param pieceInches length of the board, above 0, up to that of the guide
     * @return {@code d (l / L)^2} in inches, not rounded
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.arc-loss")
    public static double arcInches(double dipInches, double guideInches, double pieceInches) {
        requireArc(dipInches, guideInches, pieceInches);
        double share = pieceInches / guideInches;
        return dipInches * (share * share);
    }

    /**
     * How {@link #arcInches} comes about.
     *
     * @param dipInches dip of the guide
     * @param guideInches the length over which it is measured
     * @param pieceInches length of the board
     * @return the working, with the same result
     */
    public static Working arcInchesWorking(double dipInches, double guideInches, double pieceInches) {
        requireArc(dipInches, guideInches, pieceInches);
        return Working.of("Flat thickness lost by an arc of the guide")
                .given("d", "dip of the guide", dipInches, "in")
                .given("L", "length over which it is measured", guideInches, "in")
                .given("l", "length of the board", pieceInches, "in")
                .step("f", "loss", ARC_FORMULA, "in", GEOMETRY)
                .build();
    }

    private static void requireArc(double dip, double guide, double piece) {
        DIP.require(dip);
        LENGTH.require(guide);
        upToGuide(guide).require(piece);
    }

    private static Domain upToGuide(double guide) {
        return new Domain(
                "length of the board", "in", Double.MIN_VALUE, guide, "measure the guide over the whole of the board");
    }

    /**
     * The loss by wind and arc at once. The spread of heights of the face {@code z = arc + wind} has its top at a raised
     * corner and its bottom at the edge, at the share u of the way from the middle to the end.
     *
     * @param windLossInches loss by wind alone, 0 to 100 in
     * @param arcLossInches loss by the arc alone, 0 to 100 in
     * @return with {@code u = min(1, W / (4 D))}: {@code W / 2 + D (1 - u^2) + u W / 2}; never less than either loss, never
     *     more than their sum
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.flat-loss")
    public static double bothInches(double windLossInches, double arcLossInches) {
        LOSS.require(windLossInches);
        LOSS.require(arcLossInches);
        if (arcLossInches == 0) {
            return windLossInches;
        }
        double u = Math.min(1, windLossInches / (4 * arcLossInches));
        return windLossInches / 2 + arcLossInches * (1 - u * u) + u * windLossInches / 2;
    }

    /**
     * How {@link #bothInches} comes about.
     *
     * @param windLossInches loss by wind alone
     * @param arcLossInches loss by the arc alone
     * @return the working, with the same result
     */
    public static Working bothInchesWorking(double windLossInches, double arcLossInches) {
        LOSS.require(windLossInches);
        LOSS.require(arcLossInches);
        Working.Builder working = Working.of("Flat thickness lost by wind and arc at once")
                .given("W", "loss by wind alone", windLossInches, "in")
                .given("D", "loss by the arc alone", arcLossInches, "in");
        if (arcLossInches == 0) {
            return working.step("f", "loss", "W", "in", GEOMETRY).build();
        }
        return working.step("u", "where the edge is lowest, from middle to end", "min(1, W / (4 * D))", "", GEOMETRY)
                .step("f", "loss", "W / 2 + D * (1 - u^2) + u * W / 2", "in", GEOMETRY)
                .build();
    }

    /**
     * What is left in the path of the saw of one short hollow in an otherwise straight guide. The carriage touches the guide
     * at the two ends of its base and the blade stands midway between them, so that its path is the mean of the heights
     * under the two: with both in the hollow {@code d (1 - (b / c)^2)}, with one at its bottom and the other outside
     * {@code d / 2}. A long sole between the two ends only lifts the carriage, so this is the most that can be left.
     *
     * <p>It holds for a hollow of the shape of an arc. A dip that bends the whole guide is not bridged: the mean of two
     * points of a parabola runs parallel to it, see {@link #arcInches}.
     *
     * @param dipInches depth of the hollow, 0 to 100 in
     * @param hollowInches its length, above 0, up to 4000 in
     * @param baseInches length of the carriage's base along the guide, above 0, up to 4000 in
     * @return {@code d max(1 - (b / c)^2, 1/2)} in inches
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.bridged-dip")
    public static double bridgedInches(double dipInches, double hollowInches, double baseInches) {
        requireHollow(dipInches, hollowInches, baseInches);
        double share = baseInches / hollowInches;
        return dipInches * Math.max(1 - share * share, 0.5);
    }

    /**
     * How {@link #bridgedInches} comes about.
     *
     * @param dipInches depth of the hollow
     * @param hollowInches its length
     * @param baseInches length of the carriage's base
     * @return the working, with the same result
     */
    public static Working bridgedInchesWorking(double dipInches, double hollowInches, double baseInches) {
        requireHollow(dipInches, hollowInches, baseInches);
        return Working.of("What the carriage leaves of a short hollow")
                .given("d", "depth of the hollow", dipInches, "in")
                .given("c", "length of the hollow", hollowInches, "in")
                .given("b", "base of the carriage", baseInches, "in")
                .step("f", "in the path of the saw", "d * max(1 - (b / c)^2, 0.5)", "in", GEOMETRY)
                .note(
                        "The carriage touches the guide at the two ends of its base; a sole between them can only leave less.")
                .build();
    }

    private static void requireHollow(double dip, double hollow, double base) {
        DIP.require(dip);
        Domain.of("length of the hollow", "in", Double.MIN_VALUE, 4000).require(hollow);
        Domain.of("base of the carriage", "in", Double.MIN_VALUE, 4000).require(base);
    }

    /**
     * The share of a wave of the guide that goes into the path of the saw, for the same carriage: the mean of two points a
     * base apart is the wave itself, times this share. A base of half a wave evens it out; a base of a whole wave, both
     * ends in step, does not help at all.
     *
     * @param waveInches length of the wave, above 0, up to 4000 in
     * @param baseInches length of the carriage's base along the guide, above 0, up to 4000 in
     * @return {@code |cos(pi b / l)|}, 0 to 1
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.wave-share")
    public static double waveShare(double waveInches, double baseInches) {
        requireWave(waveInches, baseInches);
        return Math.abs(StrictMath.cos(StrictMath.PI * baseInches / waveInches));
    }

    /**
     * How {@link #waveShare} comes about.
     *
     * @param waveInches length of the wave
     * @param baseInches length of the carriage's base
     * @return the working, with the same result
     */
    public static Working waveShareWorking(double waveInches, double baseInches) {
        requireWave(waveInches, baseInches);
        return Working.of("Share of a wave that the carriage follows")
                .given("l", "length of the wave", waveInches, "in")
                .given("b", "base of the carriage", baseInches, "in")
                .constant("pi", "circle constant", StrictMath.PI, "", GEOMETRY)
                .step("s", "share", "abs(cos(pi * b / l))", "", GEOMETRY)
                .build();
    }

    private static void requireWave(double wave, double base) {
        Domain.of("length of the wave", "in", Double.MIN_VALUE, 4000).require(wave);
        Domain.of("base of the carriage", "in", Double.MIN_VALUE, 4000).require(base);
    }

    /**
     * The most wind that costs no more than a given loss: {@link #windInches} solved for the angle.
     *
     * @param lossInches what may be lost, 0 to 100 in
     * @param widthInches width of the board, above 0, up to 200 in
     * @return {@code 2 f / w} in degrees from end to end of the board; above 10 where nothing sensible can go wrong
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.greatest-wind")
    public static double greatestWindDegrees(double lossInches, double widthInches) {
        LOSS.require(lossInches);
        WIDTH.require(widthInches);
        return 2 * lossInches / widthInches * 180 / StrictMath.PI;
    }

    /**
     * How {@link #greatestWindDegrees} comes about.
     *
     * @param lossInches what may be lost
     * @param widthInches width of the board
     * @return the working, with the same result
     */
    public static Working greatestWindDegreesWorking(double lossInches, double widthInches) {
        LOSS.require(lossInches);
        WIDTH.require(widthInches);
        return Working.of("The most wind for a loss of flat thickness")
                .given("f", "what may be lost", lossInches, "in")
                .given("w", "width of the board", widthInches, "in")
                .constant("pi", "circle constant", StrictMath.PI, "", GEOMETRY)
                .step("g", "wind from end to end of the board", "2 * f / w * 180 / pi", "degrees", GEOMETRY)
                .build();
    }

    /**
     * The greatest dip of the guide that costs no more than a given loss: {@link #arcInches} solved for the dip.
     *
     * @param lossInches what may be lost, 0 to 100 in
     * @param guideInches the length over which the dip is measured, above 0, up to 4000 in
     * @param pieceInches length of the board, above 0, up to that of the guide
     * @return {@code f (L / l)^2} in inches
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.greatest-dip")
    public static double greatestDipInches(double lossInches, double guideInches, double pieceInches) {
        LOSS.require(lossInches);
        LENGTH.require(guideInches);
        upToGuide(guideInches).require(pieceInches);
        double share = guideInches / pieceInches;
        return lossInches * (share * share);
    }

    /**
     * How {@link #greatestDipInches} comes about.
     *
     * @param lossInches what may be lost
     * @param guideInches the length over which the dip is measured
     * @param pieceInches length of the board
     * @return the working, with the same result
     */
    public static Working greatestDipInchesWorking(double lossInches, double guideInches, double pieceInches) {
        LOSS.require(lossInches);
        LENGTH.require(guideInches);
        upToGuide(guideInches).require(pieceInches);
        return Working.of("The greatest dip for a loss of flat thickness")
                .given("f", "what may be lost", lossInches, "in")
                .given("L", "length over which the dip is measured", guideInches, "in")
                .given("l", "length of the board", pieceInches, "in")
                .step("d", "dip of the guide", "f * (L / l)^2", "in", GEOMETRY)
                .build();
    }
}
