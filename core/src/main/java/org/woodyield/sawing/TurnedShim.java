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
 * <p>A flitch near the bark of a log that tapers or lies aslant may run out before an end of the log. There is nothing to lay on a
 * support there; it rests where the sawn pieces in it begin or end.
 *
 * @param firstPass the first pass of the turned piece
 * @param lastPass its last one; those between are its own too
 * @param height of the shim on level supports at the ends, above zero, to the tenth of a millimetre
 * @param underSmallEnd whether it goes under the small end
 * @param supportedFrom where the piece rests toward the small end, from the small end of the log
 * @param supportedTo where it rests toward the large end, from the small end of the log
 */
public record TurnedShim(
        int firstPass, int lastPass, Length height, boolean underSmallEnd, Length supportedFrom, Length supportedTo) {

    /**
     * The shims of a plan.
     *
     * @param plan how a log is sawn
     * @return in the order of sawing; pieces that lie level as they are, or on a sawn side, are not among them
     */
    public static List<TurnedShim> of(SawingPlan plan) {
        Lie lie = Lie.of(plan.solid(), plan.frame());
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
            Length from = support(plan, lie, pass.kerf(), true);
            Length to = support(plan, lie, pass.kerf(), false);
            Length shim =
                    FirstCut.shim(beyondAxis(lie, pass.kerf(), from), beyondAxis(lie, pass.kerf(), to), Length.ZERO);
            if (!shim.equals(Length.ZERO)) {
                boolean underSmallEnd = shim.isPositive();
                shims.add(new TurnedShim(
                        pass.number(),
                        passes.get(last).number(),
                        underSmallEnd ? shim : Length.ZERO.minus(shim),
                        underSmallEnd,
                        from,
                        to));
            }
            first = last;
        }
        return List.copyOf(shims);
    }

    /** An end of the log if the wood between the faces reaches it, or else the first or last place of the pieces there. */
    private static Length support(SawingPlan plan, Lie lie, Rectangle kerf, boolean small) {
        Length end = small ? Length.ZERO : Length.ofMetres(plan.solid().lengthMetres(), Rounding.HALF_EVEN);
        if (Double.isFinite(leftmost(lie, kerf, end))) {
            return end;
        }
        return plan.pieces().stream()
                .filter(piece -> piece.faces().bottom().compareTo(kerf.bottom()) >= 0
                        && piece.faces().top().compareTo(kerf.top()) <= 0)
                .map(piece -> small ? piece.start() : piece.end())
                .reduce((one, other) -> (one.compareTo(other) < 0) == small ? one : other)
                .orElse(end);
    }

    /** How far the bark reaches to the left of the axis, which is below it when the piece is turned. */
    private static Length beyondAxis(Lie lie, Rectangle kerf, Length place) {
        return Length.ofMetres(-leftmost(lie, kerf, place), Rounding.HALF_EVEN);
    }

    private static double leftmost(Lie lie, Rectangle kerf, Length place) {
        Lie.Plane section = lie.overBark(Math.min(place.toMetres(), lie.solid().lengthMetres()));
        return section.leftmost(kerf.bottom().toMetres(), kerf.top().toMetres());
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
