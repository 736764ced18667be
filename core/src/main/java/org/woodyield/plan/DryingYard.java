package org.woodyield.plan;

import org.woodyield.lumber.FallDown;

/**
 * How the lumber is dried.
 *
 * @param fallDown what is lost on the way from the saw to use
 */
public record DryingYard(FallDown fallDown) {

    /**
     * Nothing known of the losses.
     *
     * @return a yard without losses
     */
    public static DryingYard usual() {
        return new DryingYard(FallDown.NONE);
    }
}
