package org.woodyield.sawing;

import java.util.List;
import java.util.Optional;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

/**
 * The pattern that makes the most of one log: worth of the pieces less the cost of the passes, proven to be the greatest
 * within a stated {@link SearchSpace}.
 *
 * <p>Faces stand on a lattice whose unit divides the kerf, the saw's step, the grid and every size, so that a pattern adds up
 * exactly; worth and cost are whole millionths, so that ties are exact too. Sizes are rounded up to what the saw can be
 * set to. The stack of items is found by dynamic programming over the place of the last face; flitches and cants enter
 * with upper bounds and are worked out only where the best stack uses them. When it holds worked-out items alone, no other
 * stack's bound exceeds it, which proves it.
 *
 * <p>Ties are broken by this rule: the first frame in the order of lays, then turns; the lowest first face; from there
 * downward the fewest items, then items in the order of the wanted list with flitches before cants, then the thinnest slab.
 */
public final class BestPattern {

    private BestPattern() {}

    /**
     * Finds the best pattern.
     *
     * @param solid the log
     * @param saw the saw
     * @param options the sizes that may be sawn, in order of preference among equals
     * @param space the patterns that are tried
     * @param passCost what a pass costs
     * @return the plan, with proof
     * @throws OutOfDomainException if no option is given, the kerf is as wide as the log, no size fits the log, the saw is
     *     too narrow for every pattern that fits, or no pattern is worth its passes; the message says which and what to do
     */
    public static SawingPlan find(
            LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost passCost) {
        return findAny(solid, saw, options, space, passCost)
                .orElseThrow(() -> whyNone(solid, saw, options, space, passCost));
    }

    /**
     * Finds the best pattern, if there is one that is worth its passes.
     *
     * @param solid the log
     * @param saw the saw
     * @param options the sizes that may be sawn, in order of preference among equals
     * @param space the patterns that are tried
     * @param passCost what a pass costs
     * @return the plan, with proof; empty if no size fits the log, the saw is too narrow for every pattern that fits, or no
     *     pattern is worth its passes
     * @throws OutOfDomainException if no option is given, the kerf is as wide as the log, or sizes, kerf and steps share no
     *     measure that is coarse enough for the search
     */
    public static Optional<SawingPlan> findAny(
            LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost passCost) {
        return findAny(solid, saw, options, space, passCost, false);
    }

    /**
     * Finds the same by working out every flitch and every cant of the space. It takes a hundred times as long and leans
     * on no bound, so that the quick way can be held against it.
     *
     * @param solid the log
     * @param saw the saw
     * @param options the sizes that may be sawn, in order of preference among equals
     * @param space the patterns that are tried
     * @param passCost what a pass costs
     * @return the same plan as {@link #findAny}, with other counts in its proof
     * @throws OutOfDomainException as {@link #findAny} does
     */
    public static Optional<SawingPlan> findExhaustively(
            LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost passCost) {
        return findAny(solid, saw, options, space, passCost, true);
    }

    private static Optional<SawingPlan> findAny(
            LogSolid solid,
            Saw saw,
            List<PieceOption> options,
            SearchSpace space,
            PassCost passCost,
            boolean exhaustively) {
        if (options.isEmpty()) {
            throw new OutOfDomainException("sizes", "none", "", "one or more", "name a size to saw");
        }
        refuseWideKerf(solid, saw);
        Length length = length(solid);
        Lattice lattice = Lattice.of(saw, options, space, length);
        if (lattice.lengths.isEmpty()) {
            return Optional.empty();
        }
        return best(
                        solid,
                        saw,
                        lattice,
                        options,
                        space,
                        passCost,
                        length,
                        saw.widthOfCut().toMetres(),
                        exhaustively)
                .map(found -> new PlanWriter(found.search(), saw, options, found.frame(), space, length)
                        .plan(found.totals()));
    }

    /**
     * Why {@link #findAny} found nothing.
     *
     * @param solid the log
     * @param saw the saw
     * @param options the sizes that may be sawn
     * @param space the patterns that are tried
     * @param passCost what a pass costs
     * @return what is wrong and what to do
     */
    public static OutOfDomainException whyNone(
            LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost passCost) {
        Length length = length(solid);
        Lattice lattice = Lattice.of(saw, options, space, length);
        return lattice.lengths.isEmpty()
                ? noFit(solid, "none of its lengths is as short as the log, " + length)
                : refusal(solid, saw, lattice, options, space, passCost, length);
    }

    private static Length length(LogSolid solid) {
        return Length.ofMetres(solid.lengthMetres(), Rounding.HALF_EVEN);
    }

    /** Counts over all frames. */
    record Totals(int frames, long flitchesEdged, long cantsOpened, long cantsInAll) {
        Totals plus(Search search) {
            return new Totals(
                    frames + 1,
                    flitchesEdged + search.flitchesEdged(),
                    cantsOpened + search.cantsOpened(),
                    cantsInAll + search.cantsInAll());
        }
    }

    private record Found(Search search, Frame frame, Totals totals) {}

    private static Optional<Found> best(
            LogSolid solid,
            Saw saw,
            Lattice lattice,
            List<PieceOption> options,
            SearchSpace space,
            PassCost passCost,
            Length length,
            double widestMetres,
            boolean exhaustively) {
        long incumbent = 0;
        Totals totals = new Totals(0, 0, 0, 0);
        Search bestSearch = null;
        Frame bestFrame = null;
        for (Frame.Lay lay : space.lays()) {
            for (double turn : space.turnsDegrees()) {
                Frame frame = Lie.frame(solid, lay, turn, space.offset());
                Search search =
                        new Search(Lie.of(solid, frame), lattice, options, space, saw, passCost, length, widestMetres);
                long value = exhaustively ? search.solveExhaustively(incumbent) : search.solve(incumbent);
                totals = totals.plus(search);
                if (value > incumbent) {
                    incumbent = value;
                    bestSearch = search;
                    bestFrame = frame;
                }
            }
        }
        return bestSearch == null || bestFrame == null
                ? Optional.empty()
                : Optional.of(new Found(bestSearch, bestFrame, totals));
    }

    private static void refuseWideKerf(LogSolid solid, Saw saw) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < solid.stationCount(); i++) {
            LogSolid.Section s = solid.section(solid.station(i).zMetres());
            least = Math.min(least, 2 * s.halfShortMetres());
        }
        if (saw.kerf().toMetres() >= least) {
            throw new OutOfDomainException(
                    "kerf",
                    saw.kerf().toString(),
                    "",
                    "less than the log's least diameter, "
                            + Length.ofMetres(least, Rounding.DOWN).inMillimetres(0),
                    "check the unit of kerf and diameters");
        }
    }

    private static OutOfDomainException refusal(
            LogSolid solid,
            Saw saw,
            Lattice lattice,
            List<PieceOption> options,
            SearchSpace space,
            PassCost passCost,
            Length length) {
        Optional<Found> wider =
                best(solid, saw, lattice, options, space, passCost, length, Double.POSITIVE_INFINITY, false);
        if (wider.isPresent()) {
            return new PlanWriter(
                            wider.get().search(), saw, List.of(), wider.get().frame(), space, length)
                    .tooNarrow();
        }
        if (passCost != PassCost.free()
                && best(solid, saw, lattice, options, space, PassCost.free(), length, Double.POSITIVE_INFINITY, false)
                        .isPresent()) {
            return new OutOfDomainException(
                    "worth of the pieces",
                    "less than their passes cost in every pattern",
                    "",
                    "more than the cost of the passes",
                    "leave this log, or look at the prices");
        }
        return noFit(
                solid,
                "every one is wider, thicker or longer than the wood allows"
                        + (saw.leastHeight().isPositive() ? ", or lies below the least height over the bed" : ""));
    }

    private static OutOfDomainException noFit(LogSolid solid, String why) {
        LogSolid.Section small = solid.section(0);
        return new OutOfDomainException(
                "sizes",
                "none that fits a log of "
                        + Length.ofMetres(small.halfLongMetres() + small.halfShortMetres(), Rounding.DOWN)
                                .inMillimetres(0)
                        + " at the small end: " + why,
                "",
                "sizes and lengths that fit",
                "add a smaller or shorter size, or give the log to another use");
    }
}
