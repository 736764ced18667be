package org.woodyield.sawing;

import java.util.List;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;

/**
 * How one log is sawn: the pieces in their places, the passes in order, where the wood goes, and how good that is.
 *
 * <p>Pieces, kerfs of passes and offcuts together fill the end view without overlap.
 *
 * @param solid the log
 * @param saw the saw
 * @param options the sizes that were wanted
 * @param frame how the log lies
 * @param pieces in the order in which they come free
 * @param passes in the order of sawing
 * @param offcuts slabs and edgings
 * @param balance where the wood goes
 * @param proof how good the plan is
 */
public record SawingPlan(
        LogSolid solid,
        Saw saw,
        List<PieceOption> options,
        Frame frame,
        List<SawnPiece> pieces,
        List<SawPass> passes,
        List<Offcut> offcuts,
        WoodBalance balance,
        Proof proof) {

    /** Keeps immutable copies. */
    public SawingPlan {
        options = List.copyOf(options);
        pieces = List.copyOf(pieces);
        passes = List.copyOf(passes);
        offcuts = List.copyOf(offcuts);
    }

    /**
     * The greatest level width of the log over its bark as it lies, at its stations and half-way between them: a saw that cuts
     * less wide makes no level pass through its middle.
     *
     * @return rounded up
     */
    public Length widestOverBark() {
        double widest = 0;
        for (Lie.Plane plane : Lie.of(solid, frame).measuringPlanes()) {
            widest = Math.max(widest, 2 * Math.sqrt(plane.suu));
        }
        return Length.ofMetres(widest, Rounding.UP);
    }

    /**
     * The sound wood of an offcut, integrated along the log as in {@link #balance}.
     *
     * @param offcut of this plan
     * @return inside the bark, rot left out
     */
    public Volume wood(Offcut offcut) {
        return Balance.wood(Lie.of(solid, frame), pieces, offcut);
    }

    /**
     * The wood of a piece between its trimmed ends, integrated along the log as in {@link #balance}: less than its size where it
     * has wane, more than the width that counts where it keeps its natural edges.
     *
     * @param piece of this plan
     * @return inside the bark, rot left out
     */
    public Volume wood(SawnPiece piece) {
        return Balance.wood(Lie.of(solid, frame), pieces, piece);
    }

    /**
     * The same plan with another proof.
     *
     * @param other what is known of it
     * @return a new plan
     */
    public SawingPlan withProof(Proof other) {
        return new SawingPlan(solid, saw, options, frame, pieces, passes, offcuts, balance, other);
    }
}
