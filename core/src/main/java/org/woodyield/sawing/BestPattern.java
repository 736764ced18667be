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
 * <p>Ties are broken by this rule: the first frame in the order of lays, offsets, then turns; in it a pattern without cants before one
 * with cants; the lowest first face; then from face to face downward: to stop rather than to go on, an item rather than a
 * slab, flitches in the order in which their thicknesses stand in the wanted list before cants from the highest to the lowest,
 * and of slabs the thinnest. The inside of a cant is chosen by the same rule from its first face. Which strips an item gives
 * among rows of one worth is the same each time but not part of the rule.
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
        refuseNoSize(options);
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
     * What no pattern exceeds whose first faces, of the log and of its cants, stand anywhere and not only on the space's grid.
     * It is the optimum of a problem that is at least as good: on every step of the search the room of a trim is the widest
     * that it has anywhere between this step and the next, and each pass the cheapest there; kerf, sizes and slabs are whole
     * steps, so that all faces of a pattern lie in their steps alike. Turns and frames are those of the space, and the log is
     * taken as free of rot.
     *
     * @param solid the log
     * @param saw the saw
     * @param options the sizes that may be sawn
     * @param space the patterns; of its grid only the fineness of the steps is used
     * @param passCost what a pass costs; it must not fall as the cut gets wider
     * @return an upper bound on worth less cost, in the unit of both; zero if nothing can be worth its passes
     * @throws OutOfDomainException as {@link #findAny}
     */
    public static double boundOffGrid(
            LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost passCost) {
        refuseNoSize(options);
        refuseWideKerf(solid, saw);
        Length length = length(solid);
        Lattice lattice = Lattice.anywhere(saw, options, space, length);
        long bound = 0;
        long cantsLeft = space.mostCantsOpened();
        if (lattice.lengths.isEmpty()) {
            return 0;
        }
        for (Frame frame : Lie.frames(solid, space)) {
            Search search = new Search(
                    Lie.of(solid, frame),
                    lattice,
                    options,
                    space,
                    saw,
                    passCost,
                    length,
                    saw.widthOfCut().toMetres());
            search.solve(bound, cantsLeft);
            cantsLeft -= search.cantsOpened();
            bound = Math.max(bound, search.bound());
        }
        return Lattice.amount(bound);
    }

    /**
     * A plan with {@link #boundOffGrid} in its proof.
     *
     * @param plan the best pattern of a log
     * @param space the space in which it was found
     * @param passCost the cost at which it was found
     * @return the same plan
     */
    public static SawingPlan withBoundOffGrid(SawingPlan plan, SearchSpace space, PassCost passCost) {
        double bound = boundOffGrid(plan.solid(), plan.saw(), plan.options(), space, passCost);
        return plan.withProof(plan.proof().withBoundOffGrid(bound));
    }

    /**
     * What the saw's setting step costs: the best pattern of a saw that can be set to every size exactly, less the best one of
     * this saw, which rounds sizes up. Faces after a slab stand on the finer step too; the grid of the first face stays.
     * It can come out below zero where a piece sawn thicker happens to save a pass.
     *
     * @param solid the log
     * @param saw the saw
     * @param options the sizes that may be sawn
     * @param space the patterns that are tried
     * @param passCost what a pass costs
     * @return the difference of two optima, zero if every size can be set exactly
     * @throws OutOfDomainException as {@link #findAny}; exact sizes may share too fine a measure
     */
    public static double costOfSettingStep(
            LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost passCost) {
        Length grid = Lattice.grid(saw, space);
        SearchSpace same = space.withGrid(grid);
        return optimum(solid, Lattice.exactlySet(saw, options), options, same, passCost)
                - optimum(solid, saw, options, same, passCost);
    }

    private static double optimum(
            LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost passCost) {
        return findAny(solid, saw, options, space, passCost)
                .map(plan -> plan.proof().objective())
                .orElse(0.0);
    }

    private static void refuseNoSize(List<PieceOption> options) {
        if (options.isEmpty()) {
            throw new OutOfDomainException("sizes", "none", "", "one or more", "name a size to saw");
        }
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

    /** Counts and the bound over all frames. */
    record Totals(int frames, long bound, long flitchesEdged, long cantsOpened, long cantsInAll) {
        Totals plus(Search search) {
            return new Totals(
                    frames + 1,
                    Math.max(bound, search.bound()),
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
        Totals totals = new Totals(0, 0, 0, 0, 0);
        Search bestSearch = null;
        Frame bestFrame = null;
        for (Frame frame : Lie.frames(solid, space)) {
            Search search =
                    new Search(Lie.of(solid, frame), lattice, options, space, saw, passCost, length, widestMetres);
            long value = exhaustively
                    ? search.solveExhaustively(incumbent)
                    : search.solve(incumbent, space.mostCantsOpened() - totals.cantsOpened());
            totals = totals.plus(search);
            if (value > incumbent) {
                incumbent = value;
                bestSearch = search;
                bestFrame = frame;
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
        if (!space.lays().contains(Frame.Lay.AXIS)
                && best(
                                solid,
                                saw,
                                lattice,
                                options,
                                space.withLays(List.of(Frame.Lay.AXIS)),
                                passCost,
                                length,
                                saw.widthOfCut().toMetres(),
                                false)
                        .isPresent()) {
            return new OutOfDomainException(
                    "frame",
                    space.frames(),
                    "",
                    "a frame in which a size can be sawn from this log, such as parallel to the axis",
                    "let it lie parallel to the axis too: axis among pattern.frames");
        }
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
