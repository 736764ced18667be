package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Volume;

/** Shares of the wood against the same with far more sections. */
class BalanceTest {

    private static final int FINER = 24;

    /** The same solid: between two stations it runs straight, with stations there or without. */
    private static LogSolid solid(List<LogSolid.Station> stations, double ratio, int parts) {
        List<LogSolid.Station> all = new ArrayList<>(List.of(stations.get(0)));
        for (int i = 1; i < stations.size(); i++) {
            LogSolid.Station a = stations.get(i - 1);
            LogSolid.Station b = stations.get(i);
            for (int part = 1; part <= parts; part++) {
                double share = (double) part / parts;
                all.add(new LogSolid.Station(
                        a.zMetres() + share * (b.zMetres() - a.zMetres()),
                        a.meanRadiusMetres() + share * (b.meanRadiusMetres() - a.meanRadiusMetres()),
                        a.centreXMetres() + share * (b.centreXMetres() - a.centreXMetres()),
                        a.centreYMetres() + share * (b.centreYMetres() - a.centreYMetres())));
            }
        }
        return LogSolid.of(all, ratio, Length.inches(1, 4));
    }

    private static List<LogSolid.Station> stations(Random random) {
        double length = 1.3 + 4 * random.nextDouble();
        double radius = 0.07 + 0.2 * random.nextDouble();
        double taper = 0.04 * random.nextDouble();
        double sweep = random.nextInt(4) == 0 ? 0 : 0.09 * random.nextDouble();
        int stretches = sweep == 0 ? 1 : 1 + random.nextInt(6);
        List<LogSolid.Station> stations = new ArrayList<>();
        for (int i = 0; i <= stretches; i++) {
            double t = (double) i / stretches;
            double bow = 4 * sweep * t * (1 - t);
            stations.add(new LogSolid.Station(length * t, radius + taper * t, 0.6 * bow, 0.8 * bow));
        }
        return stations;
    }

    @Test
    void sharesLieWithinTheStatedBoundOfWhatMoreSectionsGive() {
        Random random = new Random(20261127);
        Saw saw = new Saw(
                "s",
                Length.inches(1, 4),
                Length.inches(60),
                Length.inches(1, 8),
                Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
        List<PieceOption> sizes = new ArrayList<>();
        for (long width : new long[] {33, 49, 65}) {
            List<LengthWorth> lengths = new ArrayList<>();
            for (long feet = 2; feet <= 16; feet += 2) {
                lengths.add(new LengthWorth(Length.feet(feet), width * feet));
            }
            sizes.add(PieceOption.fixed("w" + width, Length.inches(14, 8), Length.inches(width, 8), lengths));
        }
        SearchSpace base = SearchSpace.standard().withGrid(Length.inches(1, 8)).withTurns(List.of(37.0));
        for (int i = 0; i < 200; i++) {
            SearchSpace space = base.withCants(i % 2 == 0);
            List<LogSolid.Station> stations = stations(random);
            double ratio = random.nextBoolean() ? 1 : 0.8 + 0.2 * random.nextDouble();
            SawingPlan plan = BestPattern.find(solid(stations, ratio, 1), saw, sizes, space, PassCost.each(5));
            SawingPlan fine = BestPattern.find(solid(stations, ratio, FINER), saw, sizes, space, PassCost.each(5));
            assertThat(fine.pieces()).as("log %s", i).isEqualTo(plan.pieces());
            double whole = plan.solid().volume().cubicMetres();
            List<Volume> shares = shares(plan.balance());
            List<Volume> finer = shares(fine.balance());
            for (int share = 0; share < shares.size(); share++) {
                assertThat(shares.get(share).cubicMetres())
                        .as("log %s, share %s", i, share)
                        .isCloseTo(finer.get(share).cubicMetres(), within(2e-5 * whole));
            }
        }
    }

    private static List<Volume> shares(WoodBalance balance) {
        return List.of(balance.lumber(), balance.kerf(), balance.slab(), balance.edging(), balance.trim());
    }
}
