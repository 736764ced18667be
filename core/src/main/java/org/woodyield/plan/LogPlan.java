package org.woodyield.plan;

import java.util.List;
import java.util.Optional;
import org.woodyield.log.Log;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Volume;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.source.Standing;
import org.woodyield.work.Suitability;
import org.woodyield.working.Working;

/**
 * One log of a plan.
 *
 * @param log the log
 * @param scales what each log rule makes of it
 * @param solid its solid volume inside bark
 * @param sawing how it is sawn; empty where nothing is
 * @param space the patterns among which it was sought, at the prices of the search that found it
 * @param leftWhole why nothing is sawn from it; empty where something is
 * @param tally board feet of the lumber sawn
 * @param bought what the lumber sawn would cost bought, before what drying loses, all of it counted in full; empty where nothing
 *     is sawn or a price of the job is missing
 * @param lumber solid volume of the lumber sawn, green
 * @param widestCut whether the saw pulls the widest pass; empty where nothing is sawn
 * @param greenKilograms weight as it lies, bark included where its share is known
 */
public record LogPlan(
        Log log,
        List<Scaled> scales,
        Volume solid,
        Optional<SawingPlan> sawing,
        SearchSpace space,
        String leftWhole,
        BoardFeet tally,
        Optional<Double> bought,
        Volume lumber,
        Optional<Suitability> widestCut,
        double greenKilograms) {

    /** Keeps an immutable copy. */
    public LogPlan {
        scales = List.copyOf(scales);
    }

    /**
     * What a log rule makes of the log.
     *
     * @param ruleId the rule's key
     * @param ruleName its name
     * @param standing how far its figures can be trusted
     * @param scale its board feet; empty where the log is outside its domain
     * @param refusal why it gives none; empty where it does
     * @param caution what to know of the figure; empty for most logs
     * @param overrunPercent what is sawn over what it says, by nominal tally; empty where it says nothing
     * @param working how the scale came about
     */
    public record Scaled(
            String ruleId,
            String ruleName,
            Standing standing,
            Optional<BoardFeet> scale,
            String refusal,
            Optional<String> caution,
            Optional<Double> overrunPercent,
            Optional<Working> working) {}

    /**
     * The green lumber's share of the log's solid.
     *
     * @return in percent
     */
    public double solidRecoveryPercent() {
        return 100 * lumber.cubicMetres() / solid.cubicMetres();
    }
}
