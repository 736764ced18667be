package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;

/**
 * The same logs sawn for the same sizes by two saws or more, each by its own best pattern.
 *
 * @param saws what each saw makes of the logs, in the order given; the first is the one that the others are compared with
 */
public record SawComparison(List<ForSaw> saws) {

    /**
     * What one saw makes of the logs.
     *
     * @param saw the saw
     * @param logsSawn logs from which something is sawn; one that the saw cannot saw, or that is not worth its passes, is
     *     left whole
     * @param pieces all pieces
     * @param passes all passes
     * @param lumber volume of the pieces
     * @param kerf volume that goes into kerfs
     * @param worth of the pieces
     * @param passCost of the passes
     */
    public record ForSaw(
            Saw saw, int logsSawn, int pieces, int passes, Volume lumber, Volume kerf, double worth, double passCost) {

        /**
         * What is left of the worth after the passes.
         *
         * @return worth less pass cost
         */
        public double objective() {
            return worth - passCost;
        }
    }

    /** Keeps an immutable copy. */
    public SawComparison {
        saws = List.copyOf(saws);
    }

    /**
     * Saws the logs by each saw.
     *
     * @param logs one or more
     * @param saws two or more
     * @param options the sizes that may be sawn, with their worth
     * @param space the patterns that are tried
     * @param passCost what a pass costs with a saw
     * @return what each saw makes of them
     * @throws OutOfDomainException if there is no log or less than two saws, or as {@link BestPattern#findAny}
     */
    public static SawComparison of(
            List<LogSolid> logs,
            List<Saw> saws,
            List<PieceOption> options,
            SearchSpace space,
            Function<Saw, PassCost> passCost) {
        if (logs.isEmpty()) {
            throw new OutOfDomainException("logs", "none", "", "one or more", "");
        }
        if (saws.size() < 2) {
            throw new OutOfDomainException("saws", Integer.toString(saws.size()), "", "two or more", "name another");
        }
        List<ForSaw> made = new ArrayList<>();
        for (Saw saw : saws) {
            PassCost cost = passCost.apply(saw);
            List<SawingPlan> plans = logs.stream()
                    .map(log -> BestPattern.findAny(log, saw, options, space, cost))
                    .flatMap(Optional::stream)
                    .toList();
            made.add(sum(saw, plans));
        }
        return new SawComparison(made);
    }

    private static ForSaw sum(Saw saw, List<SawingPlan> plans) {
        int pieces = 0;
        int passes = 0;
        Volume lumber = Volume.ZERO;
        Volume kerf = Volume.ZERO;
        double worth = 0;
        double passCost = 0;
        for (SawingPlan plan : plans) {
            pieces += plan.pieces().size();
            passes += plan.passes().size();
            lumber = lumber.plus(plan.balance().lumber());
            kerf = kerf.plus(plan.balance().kerf());
            worth += plan.proof().worth();
            passCost += plan.proof().passCost();
        }
        return new ForSaw(saw, plans.size(), pieces, passes, lumber, kerf, worth, passCost);
    }

    /**
     * How much more lumber a saw makes than the first one.
     *
     * @param index of the saw, from 0
     * @return in cubic metres, below zero where it makes less
     */
    public double moreLumberCubicMetres(int index) {
        return saws.get(index).lumber().cubicMetres() - saws.get(0).lumber().cubicMetres();
    }

    /**
     * How much more wood goes into kerfs than with the first saw.
     *
     * @param index of the saw, from 0
     * @return in cubic metres, below zero where less does
     */
    public double moreKerfCubicMetres(int index) {
        return saws.get(index).kerf().cubicMetres() - saws.get(0).kerf().cubicMetres();
    }

    /**
     * How much more is left of the worth after the passes than with the first saw.
     *
     * @param index of the saw, from 0
     * @return in the unit of the worth, below zero where less is
     */
    public double moreObjective(int index) {
        return saws.get(index).objective() - saws.get(0).objective();
    }
}
