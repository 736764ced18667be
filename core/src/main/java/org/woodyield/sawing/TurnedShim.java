package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

/**
 * What must be put under one end of a cant or flitch that is turned on its waney side, so that the axis of the log lies level
 * along the saw's travel as its passes are planned. It is {@link FirstCut#shimInches} of the turned piece without a lift: how
 * much further the bark reaches beyond the axis at one end than at the other, within the faces of the piece.
 *
 * @param firstPass the first pass of the turned piece
 * @param lastPass its last one; those between are its own too
 * @param height of the shim on level supports at the ends, above zero, to the tenth of a millimetre
 * @param underSmallEnd whether it goes under the small end
 */
public record TurnedShim(int firstPass, int lastPass, Length height, boolean underSmallEnd) {

    /**
     * The shims of a plan.
     *
     * @param plan how a log is sawn
     * @return in the order of sawing; pieces that lie level as they are, or on a sawn side, are not among them
     */
    public static List<TurnedShim> of(SawingPlan plan) {
        Lie lie = Lie.of(plan.solid(), plan.frame());
        Lie.Plane small = lie.overBark(0);
        Lie.Plane large = lie.overBark(plan.solid().lengthMetres());
        List<TurnedShim> shims = new ArrayList<>();
        List<SawPass> passes = plan.passes();
        for (int first = 0; first < passes.size(); first++) {
            SawPass pass = passes.get(first);
            // A level kerf after the turn belongs to a flitch of a cant, which lies on a sawn face of it.
            if (pass.stage() == Stage.LIVE || !upright(pass, plan.saw())) {
                continue;
            }
            int last = first;
            while (last + 1 < passes.size() && ofOnePiece(pass, passes.get(last + 1))) {
                last++;
            }
            double from = pass.kerf().bottom().toMetres();
            double to = pass.kerf().top().toMetres();
            Length shim = FirstCut.shim(beyondAxis(small, from, to), beyondAxis(large, from, to), Length.ZERO);
            if (!shim.equals(Length.ZERO)) {
                boolean underSmallEnd = shim.isPositive();
                shims.add(new TurnedShim(
                        pass.number(),
                        passes.get(last).number(),
                        underSmallEnd ? shim : Length.ZERO.minus(shim),
                        underSmallEnd));
            }
            first = last;
        }
        return List.copyOf(shims);
    }

    /** How far the bark reaches to the left of the axis, which is below it when the piece is turned. */
    private static Length beyondAxis(Lie.Plane end, double from, double to) {
        return Length.ofMetres(-end.leftmost(from, to), Rounding.HALF_EVEN);
    }

    private static boolean upright(SawPass pass, Saw saw) {
        return pass.kerf().right().minus(pass.kerf().left()).equals(saw.kerf());
    }

    private static boolean ofOnePiece(SawPass one, SawPass next) {
        return next.stage() == one.stage()
                && next.turnDegrees() == one.turnDegrees()
                && next.kerf().bottom().equals(one.kerf().bottom())
                && next.kerf().top().equals(one.kerf().top());
    }
}
