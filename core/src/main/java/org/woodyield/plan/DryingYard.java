package org.woodyield.plan;

import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.FallDown;
import org.woodyield.measure.Length;
import org.woodyield.wood.DryingAir;
import org.woodyield.wood.Stacking;

/**
 * How the lumber is dried. What is not known of the yard is left out of a plan.
 *
 * @param fallDown what is lost on the way from the saw to use
 * @param stacking how boards are stacked; empty where no stacks are planned
 * @param air of the place; empty where it is not known
 * @param pithDistances from the pith to the middle of a board, for cupping; none where it is not asked
 */
public record DryingYard(
        FallDown fallDown, Optional<Stacking> stacking, Optional<DryingAir> air, List<Length> pithDistances) {

    /** Keeps an immutable copy. */
    public DryingYard {
        pithDistances = List.copyOf(pithDistances);
    }

    /**
     * A yard of which only the losses are known.
     *
     * @param fallDown what is lost on the way from the saw to use
     */
    public DryingYard(FallDown fallDown) {
        this(fallDown, Optional.empty(), Optional.empty(), List.of());
    }

    /**
     * Nothing known of the losses.
     *
     * @return a yard without losses
     */
    public static DryingYard usual() {
        return new DryingYard(FallDown.NONE);
    }
}
