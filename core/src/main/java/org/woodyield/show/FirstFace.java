package org.woodyield.show;

import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.SawingPlan;

/**
 * Where the first face of a plan stands, for a person with a tape at the ends of the log.
 *
 * @param height above the axis at mid-length
 * @param aboveAxisSmallEnd above the axis at the small end
 * @param aboveAxisLargeEnd above the axis at the large end
 * @param shim put under one end so that the log lies as planned on level supports, to the tenth of a millimetre
 * @param shimmedEnd which end
 */
record FirstFace(Length height, Length aboveAxisSmallEnd, Length aboveAxisLargeEnd, Length shim, String shimmedEnd) {

    static FirstFace of(SawingPlan plan) {
        Frame frame = plan.frame();
        Length height = plan.passes().get(0).faceHeight();
        Length half = frame.largeEndLift().dividedBy(2, Rounding.HALF_UP);
        double small = Outline.overBark(plan.solid(), frame, 0).bottom();
        double large = Outline.overBark(plan.solid(), frame, plan.solid().lengthMetres())
                .bottom();
        Length shim = Length.ofMetres(Math.abs(small - large), Rounding.HALF_UP)
                .roundedTo(Length.nanometres(100_000), Rounding.HALF_UP);
        return new FirstFace(
                height, height.plus(half), height.minus(half), shim, small >= large ? "small end" : "large end");
    }
}
