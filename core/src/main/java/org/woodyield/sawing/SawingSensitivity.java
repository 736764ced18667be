package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

/**
 * How the best pattern of a log changes with one thing at a time: another kerf, another height of the first face, a thicker
 * log, one size more. Each is searched anew in its own space, so that a small change of one may change the whole pattern.
 *
 * @param base as given
 * @param changed each with its one change, in the order asked for
 */
public record SawingSensitivity(Outcome base, List<Outcome> changed) {

    /** One thing that is changed. */
    public sealed interface Change {

        /**
         * Another kerf. Sizes and settings stay.
         *
         * @param kerf the kerf
         */
        record Kerf(Length kerf) implements Change {}

        /**
         * The first face at a given height.
         *
         * @param height above the axis at mid-length, a whole multiple of the grid
         */
        record FirstHeight(Length height) implements Change {}

        /**
         * A log that is thicker all along.
         *
         * @param more added to its mean diameter, below zero for a thinner log
         */
        record Diameter(Length more) implements Change {}

        /**
         * One size more that may be sawn.
         *
         * @param option the size, with its worth
         */
        record OneMoreSize(PieceOption option) implements Change {}
    }

    /**
     * What comes of one search.
     *
     * @param what the change in words
     * @param plan the best pattern; empty where nothing is sawn
     */
    public record Outcome(String what, Optional<SawingPlan> plan) {

        /**
         * Worth of the pieces less the cost of the passes.
         *
         * @return zero where nothing is sawn
         */
        public double objective() {
            return plan.map(one -> one.proof().objective()).orElse(0.0);
        }

        /**
         * Volume of the pieces.
         *
         * @return in cubic metres, zero where nothing is sawn
         */
        public double lumberCubicMetres() {
            return plan.map(one -> one.balance().lumber().cubicMetres()).orElse(0.0);
        }

        /**
         * Volume that goes into kerfs.
         *
         * @return in cubic metres, zero where nothing is sawn
         */
        public double kerfCubicMetres() {
            return plan.map(one -> one.balance().kerf().cubicMetres()).orElse(0.0);
        }

        /**
         * How many pieces there are.
         *
         * @return zero where nothing is sawn
         */
        public int pieces() {
            return plan.map(one -> one.pieces().size()).orElse(0);
        }

        /**
         * How many passes there are.
         *
         * @return zero where nothing is sawn
         */
        public int passes() {
            return plan.map(one -> one.passes().size()).orElse(0);
        }
    }

    /** Keeps an immutable copy. */
    public SawingSensitivity {
        changed = List.copyOf(changed);
    }

    /**
     * Searches the pattern as given, and with each change by itself.
     *
     * @param solid the log
     * @param saw the saw
     * @param options the sizes that may be sawn
     * @param space the patterns that are tried
     * @param passCost what a pass costs with a saw, which may have another kerf
     * @param changes what is changed
     * @return the outcomes
     * @throws org.woodyield.measure.OutOfDomainException as {@link BestPattern#findAny}, if a first height is off the grid,
     *     or a log is made so thin that it is none
     */
    public static SawingSensitivity of(
            LogSolid solid,
            Saw saw,
            List<PieceOption> options,
            SearchSpace space,
            Function<Saw, PassCost> passCost,
            List<Change> changes) {
        Outcome base = new Outcome("as planned", BestPattern.findAny(solid, saw, options, space, passCost.apply(saw)));
        List<Outcome> changed = new ArrayList<>();
        for (Change change : changes) {
            changed.add(outcome(change, solid, saw, options, space, passCost));
        }
        return new SawingSensitivity(base, changed);
    }

    private static Outcome outcome(
            Change change,
            LogSolid solid,
            Saw saw,
            List<PieceOption> options,
            SearchSpace space,
            Function<Saw, PassCost> passCost) {
        PassCost cost = passCost.apply(saw);
        if (change instanceof Change.Kerf other) {
            Saw thinner = saw.withKerf(other.kerf());
            return new Outcome(
                    "kerf " + other.kerf(),
                    BestPattern.findAny(solid, thinner, options, space, passCost.apply(thinner)));
        }
        if (change instanceof Change.FirstHeight first) {
            return new Outcome(
                    "first face at " + first.height(),
                    BestPattern.findAny(solid, saw, options, space.withFirstFace(first.height()), cost));
        }
        if (change instanceof Change.Diameter diameter) {
            String how = diameter.more().isPositive() ? " thicker" : " thinner";
            Length by = Length.max(diameter.more(), Length.ZERO.minus(diameter.more()));
            return new Outcome(
                    "log " + by + how, BestPattern.findAny(thicker(solid, diameter.more()), saw, options, space, cost));
        }
        Change.OneMoreSize more = (Change.OneMoreSize) change;
        List<PieceOption> all = new ArrayList<>(options);
        all.add(more.option());
        return new Outcome("also " + more.option().id(), BestPattern.findAny(solid, saw, all, space, cost));
    }

    private static LogSolid thicker(LogSolid solid, Length more) {
        List<LogSolid.Station> stations = new ArrayList<>();
        for (int i = 0; i < solid.stationCount(); i++) {
            LogSolid.Station station = solid.station(i);
            stations.add(new LogSolid.Station(
                    station.zMetres(),
                    station.meanRadiusMetres() + more.toMetres() / 2,
                    station.centreXMetres(),
                    station.centreYMetres()));
        }
        LogSolid sound =
                LogSolid.of(stations, solid.axisRatio(), Length.ofMetres(solid.barkMetres(), Rounding.HALF_EVEN));
        return solid.rot().map(sound::withRot).orElse(sound);
    }
}
