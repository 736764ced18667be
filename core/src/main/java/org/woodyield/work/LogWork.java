package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * @param turnsBefore for each turning and clamping, the first included, the index of the pass that it comes before; rising
 * @param guidesBefore for each laying of the guide, the index of the pass that it leads; rising
 */
public record LogWork(
        String id, Species species, List<Cut> cuts, List<Integer> turnsBefore, List<Integer> guidesBefore) {

    /**
     * A log none of whose passes is led by a guide.
     *
     * @param id the log's name
     * @param species its wood
     * @param cuts the passes in order
     * @param turnsBefore for each turning and clamping, the first included, the index of the pass that it comes before; rising
     */
    public LogWork(String id, Species species, List<Cut> cuts, List<Integer> turnsBefore) {
        this(id, species, cuts, turnsBefore, List.of());
    }

    /**
     * A log of which only the count of turns is known; they are taken to come evenly spread over the passes.
     *
     * @param id the log's name
     * @param species its wood
     * @param cuts the passes in order
     * @param turns how often it is turned and clamped, the first clamping counted
     * @throws IllegalArgumentException if turns is negative
     */
    public LogWork(String id, Species species, List<Cut> cuts, int turns) {
        this(id, species, cuts, spread(id, cuts.size(), turns));
    }

    private static List<Integer> spread(String id, int passes, int turns) {
        if (turns < 0) {
            throw new IllegalArgumentException("turns of " + id + " is " + turns + "; allowed: 0 or more");
        }
        List<Integer> before = new ArrayList<>();
        for (int turn = 0; turn < turns; turn++) {
            before.add((int) ((long) turn * passes / turns));
        }
        return before;
    }

    /**
     * The work of a sawing plan. The log is clamped before its first pass, and each cant is turned and clamped before its own
     * first; a flitch is set on edge within the time of setting. The guide is laid anew for each pass that it leads.
     *
     * @param id the log's name
     * @param species its wood
     * @param plan how it is sawn
     * @return its passes and turns
     */
    public static LogWork of(String id, Species species, SawingPlan plan) {
        List<Integer> turns = new ArrayList<>();
        List<Integer> guides = new ArrayList<>();
        Optional<SawPass> before = Optional.empty();
        for (int i = 0; i < plan.passes().size(); i++) {
            SawPass pass = plan.passes().get(i);
            if (pass.stage() != Stage.EDGE) {
                if (!before.map(one -> ofOneBody(one, pass)).orElse(false)) {
                    turns.add(i);
                }
                before = Optional.of(pass);
            }
            if (pass.byGuide()) {
                guides.add(i);
            }
        }
        return new LogWork(id, species, plan.passes().stream().map(Cut::of).toList(), turns, guides);
    }

    /** Whether both go through the log, or through one cant: its faces bound the kerf. */
    private static boolean ofOneBody(SawPass one, SawPass other) {
        return one.stage() == other.stage()
                && (one.stage() == Stage.LIVE
                        || (one.kerf().bottom().equals(other.kerf().bottom())
                                && one.kerf().top().equals(other.kerf().top())));
    }

    /**
     * Keeps immutable copies.
     *
     * @throws IllegalArgumentException if a turn comes before a pass that is not there, or the guide leads one that is not there
     */
    public LogWork {
        cuts = List.copyOf(cuts);
        turnsBefore = List.copyOf(turnsBefore);
        guidesBefore = List.copyOf(guidesBefore);
        for (int index : guidesBefore) {
            if (index < 0 || index >= cuts.size()) {
                throw new IllegalArgumentException(
                        "the guide of " + id + " leads passes " + guidesBefore + "; there are " + cuts.size());
            }
        }
        int least = 0;
        for (int index : turnsBefore) {
            if (index < least || index > Math.max(cuts.size() - 1, 0)) {
                throw new IllegalArgumentException(
                        "turns of " + id + " come before passes " + turnsBefore + "; there are " + cuts.size());
            }
            least = index;
        }
    }

    /**
     * How often the log is turned and clamped.
     *
     * @return the count, the first clamping included
     */
    public int turns() {
        return turnsBefore.size();
    }
}
