package org.woodyield.work;

import java.util.List;
import org.woodyield.wood.Species;

/**
 * The sawing of one log.
 *
 * @param id the log's name
 * @param species its wood
 * @param cuts the passes in order
 * @param turns how often it is turned and clamped, the first clamping counted
 */
public record LogWork(String id, Species species, List<Cut> cuts, int turns) {

    /**
     * Keeps an immutable copy.
     *
     * @throws IllegalArgumentException if turns is negative
     */
    public LogWork {
        cuts = List.copyOf(cuts);
        if (turns < 0) {
            throw new IllegalArgumentException("turns of " + id + " is " + turns + "; allowed: 0 or more");
        }
    }
}
