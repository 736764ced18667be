package org.woodyield.sawing;

import java.util.List;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Where the first face of a log stands, for a person with a tape at its two ends.
 *
 * <p>The axis runs from the middle of one end to the middle of the other, bark left out. Heights are above it, below zero
 * underneath.
 *
 * @param frame how the log lies
 * @param height of the first face above the axis at mid-length
 * @param aboveAxisSmallEnd above the axis at the small end
 * @param aboveAxisLargeEnd above the axis at the large end
 * @param barkBelowSmallEnd how far the bark reaches below the axis at the small end
 * @param barkBelowLargeEnd how far the bark reaches below the axis at the large end
 * @param shim put under one end so that the log lies as planned on level supports at its ends, to the tenth of a
 *     millimetre; zero or more
 * @param shimUnderSmallEnd which end; of no meaning where there is no shim
 * @param barkAboveFace how far the bark reaches above the first face where it reaches highest, zero or more
 */
public record FirstCut(
        Frame frame,
        Length height,
        Length aboveAxisSmallEnd,
        Length aboveAxisLargeEnd,
        Length barkBelowSmallEnd,
        Length barkBelowLargeEnd,
        Length shim,
        boolean shimUnderSmallEnd,
        Length barkAboveFace) {

    private static final Source GEOMETRY = Sources.get("definition");
    private static final Length TENTH_OF_A_MILLIMETRE = Length.nanometres(100_000);
    private static final Domain HEIGHT = Domain.of("height of the first face", "in", -200, 200);
    private static final Domain LIFT = Domain.of("lift of the large end", "in", -200, 200);
    private static final Domain SHARE = Domain.of("share of the length from the small end", "", 0, 1);
    private static final Domain BELOW = Domain.of("bark below the axis", "in", -200, 200);

    /**
     * The first cut of a plan.
     *
     * @param plan how a log is sawn, with one pass at least
     * @return its first cut
     */
    public static FirstCut of(SawingPlan plan) {
        return of(plan.solid(), plan.frame(), plan.passes().get(0).faceHeight());
    }

    /**
     * The first cut of a log in a frame of a kind.
     *
     * @param solid the log
     * @param lay what is parallel to the saw's travel
     * @param turnDegrees turn of the log, -360 to 360
     * @param offset lift of the large end for {@link Frame.Lay#OFFSET}; otherwise not used
     * @param height of the first face above the axis at mid-length
     * @return the first cut
     */
    public static FirstCut of(LogSolid solid, Frame.Lay lay, double turnDegrees, Length offset, Length height) {
        return of(solid, Lie.frame(solid, lay, turnDegrees, offset), height);
    }

    private static FirstCut of(LogSolid solid, Frame frame, Length height) {
        Lie lie = Lie.of(solid, frame);
        Length half = frame.largeEndLift().dividedBy(2, Rounding.HALF_UP);
        // The axis lies half the lift below mid-height at the small end, and as much above it at the large end.
        Length belowSmall = Length.ZERO.minus(half).minus(bottom(lie.overBark(0)));
        Length belowLarge = half.minus(bottom(lie.overBark(solid.lengthMetres())));
        Length shim = shim(belowSmall, belowLarge, frame.largeEndLift());
        double highest = 0;
        for (Lie.Plane plane : lie.measuringPlanes()) {
            highest = Math.max(highest, plane.cv + Math.sqrt(plane.svv) - height.toMetres());
        }
        return new FirstCut(
                frame,
                height,
                height.plus(half),
                height.minus(half),
                belowSmall,
                belowLarge,
                Length.max(shim, Length.ZERO.minus(shim)),
                shim.compareTo(Length.ZERO) >= 0,
                Length.ofMetres(highest, Rounding.UP));
    }

    /** {@link #shimInches} to the tenth of a millimetre; below zero: so much under the large end. */
    static Length shim(Length belowSmall, Length belowLarge, Length lift) {
        return Length.ofInches(
                        shimInches(belowSmall.toInches(), belowLarge.toInches(), lift.toInches()), Rounding.HALF_EVEN)
                .roundedTo(TENTH_OF_A_MILLIMETRE, Rounding.HALF_UP);
    }

    private static Length bottom(Lie.Plane plane) {
        return Length.ofMetres(plane.cv - Math.sqrt(plane.svv), Rounding.HALF_EVEN);
    }

    /**
     * How the heights and the shim come about.
     *
     * @return the heights at the small and at the large end, and the shim
     */
    public List<Working> workings() {
        double middle = height.toInches();
        double lift = frame.largeEndLift().toInches();
        return List.of(
                heightInchesWorking(middle, lift, 0),
                heightInchesWorking(middle, lift, 1),
                shimInchesWorking(barkBelowSmallEnd.toInches(), barkBelowLargeEnd.toInches(), lift));
    }

    /**
     * The height of the face that the saw rides, above the axis at the small end: beyond the first face lie the kerf and
     * the depth to which the saw is set.
     *
     * @param kerf of the saw
     * @param depth from the face that the saw rides to its kerf
     * @return the guide's height at the small end
     */
    public Length guideSmallEnd(Length kerf, Length depth) {
        return aboveAxisSmallEnd.plus(kerf).plus(depth);
    }

    /**
     * The height of the face that the saw rides, above the axis at the large end.
     *
     * @param kerf of the saw
     * @param depth from the face that the saw rides to its kerf
     * @return the guide's height at the large end
     */
    public Length guideLargeEnd(Length kerf, Length depth) {
        return aboveAxisLargeEnd.plus(kerf).plus(depth);
    }

    /**
     * The least depth of the saw below the guide at which a straight guide lies clear of the bark.
     *
     * @param kerf of the saw
     * @return zero or more
     */
    public Length leastDepth(Length kerf) {
        return Length.max(Length.ZERO, barkAboveFace.minus(kerf));
    }

    /**
     * The height of the first face above the axis at a place along the log. The face is parallel to the travel, the axis
     * rises by the lift from end to end.
     *
     * @param heightInches height at mid-length, -200 to 200 in
     * @param liftInches how much higher the axis stands at the large end than at the small end, -200 to 200 in
     * @param share the place, 0 at the small end to 1 at the large end
     * @return {@code h - e (x - 1/2)} in inches, not rounded
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.guide-height")
    public static double heightInches(double heightInches, double liftInches, double share) {
        HEIGHT.require(heightInches);
        LIFT.require(liftInches);
        SHARE.require(share);
        return heightInches - liftInches * (share - 0.5);
    }

    /**
     * How {@link #heightInches} comes about.
     *
     * @param heightInches height at mid-length
     * @param liftInches lift of the large end
     * @param share the place
     * @return the working, with the same result
     */
    public static Working heightInchesWorking(double heightInches, double liftInches, double share) {
        HEIGHT.require(heightInches);
        LIFT.require(liftInches);
        SHARE.require(share);
        return Working.of("Height of the first face above the axis")
                .given("h", "height at mid-length", heightInches, "in")
                .given("e", "lift of the large end", liftInches, "in")
                .given("x", "share of the length from the small end", share, "")
                .step("g", "height there", "h - e * (x - 0.5)", "in", GEOMETRY)
                .build();
    }

    /**
     * What has to lie under the small end on level supports at the two ends. Parallel to the axis of a round log it is half
     * the taper of its diameter; parallel to the bark above, the whole taper; parallel to the bark below, nothing.
     *
     * @param belowSmallInches how far the bark lies below the axis at the small end, -200 to 200 in
     * @param belowLargeInches how far the bark lies below the axis at the large end, -200 to 200 in
     * @param liftInches how much higher the axis is wanted at the large end, -200 to 200 in
     * @return {@code b2 - b1 - e} in inches, not rounded; below zero: so much under the large end
     * @throws org.woodyield.measure.OutOfDomainException outside these limits
     */
    @Calculation("sawing.shim")
    public static double shimInches(double belowSmallInches, double belowLargeInches, double liftInches) {
        BELOW.require(belowSmallInches);
        BELOW.require(belowLargeInches);
        LIFT.require(liftInches);
        return belowLargeInches - belowSmallInches - liftInches;
    }

    /**
     * How {@link #shimInches} comes about.
     *
     * @param belowSmallInches bark below the axis at the small end
     * @param belowLargeInches bark below the axis at the large end
     * @param liftInches lift of the large end
     * @return the working, with the same result
     */
    public static Working shimInchesWorking(double belowSmallInches, double belowLargeInches, double liftInches) {
        BELOW.require(belowSmallInches);
        BELOW.require(belowLargeInches);
        LIFT.require(liftInches);
        return Working.of("Shim under the small end")
                .given("b1", "bark below the axis at the small end", belowSmallInches, "in")
                .given("b2", "bark below the axis at the large end", belowLargeInches, "in")
                .given("e", "lift of the large end", liftInches, "in")
                .step("s", "shim", "b2 - b1 - e", "in", GEOMETRY)
                .build();
    }
}
