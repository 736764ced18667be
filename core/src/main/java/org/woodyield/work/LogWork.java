package org.woodyield.work;

import java.util.List;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.Stage;
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
     * The work of a sawing plan. The log is turned where a pass asks for another turn than the one before, edges apart: a
     * flitch is set on edge within the time of setting.
     *
     * @param id the log's name
     * @param species its wood
     * @param plan how it is sawn
     * @return its passes and turns
     */
    public static LogWork of(String id, Species species, SawingPlan plan) {
        int turns = 0;
        double lying = Double.NaN;
        for (SawPass pass : plan.passes()) {
            if (pass.stage() != Stage.EDGE && pass.turnDegrees() != lying) {
                turns++;
                lying = pass.turnDegrees();
            }
        }
        return new LogWork(id, species, plan.passes().stream().map(Cut::of).toList(), turns);
    }

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
