package org.woodyield.sawing;

import org.woodyield.measure.Volume;

/**
 * Where the wood of a log goes, inside bark. Each share is integrated over its own places in the log; none is a difference.
 * Rot counts by itself, wherever it goes; the other shares are sound wood.
 *
 * @param lumber the pieces
 * @param kerf the slots of all passes
 * @param slab slabs
 * @param edging edgings
 * @param trim what is cut off the ends of pieces
 * @param rot the rot in the heart
 */
public record WoodBalance(Volume lumber, Volume kerf, Volume slab, Volume edging, Volume trim, Volume rot) {

    /**
     * The sum of the six shares; equals the log's solid but for rounding.
     *
     * @return the sum
     */
    public Volume sum() {
        return lumber.plus(kerf).plus(slab).plus(edging).plus(trim).plus(rot);
    }
}
