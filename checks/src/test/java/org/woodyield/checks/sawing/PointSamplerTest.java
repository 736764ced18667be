package org.woodyield.checks.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Rectangle;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Stage;
import org.woodyield.sawing.WoodBalance;

/**
 * The balance of wood against points thrown into the log. Each point in the wood is told by pieces and passes alone: in a
 * piece, beyond its trimmed ends, in a kerf, or by the passes around it in a slab or an edging. Rot is rot wherever it lies.
 *
 * <p>Of independent shares one in 370 lies beyond three standard errors though nothing is wrong. So the shares of all plans
 * together must lie within three, of the single ones no more may lie beyond three than chance brings, and none beyond five.
 */
class PointSamplerTest {

    private static final int PLANS = 80;
    private static final int POINTS = 20_000;
    private static final String[] SHARES = {"lumber", "kerf", "slab", "edging", "trim", "rot"};

    @Test
    void sharesOfTheWoodAgreeWithPointsThrownIn() {
        agree(new Random(20261125), false);
    }

    /** Logs that flare toward the butt and whose heart is rotten over a part of their length. */
    @Test
    void theyAgreeInFlaredLogsWithRot() {
        agree(new Random(20261127), true);
    }

    private static void agree(Random random, boolean flaredAndRotten) {
        double[] difference = new double[SHARES.length];
        double[] variance = new double[SHARES.length];
        int beyondThree = 0;
        int seen = 0;
        int waste = 0;
        for (int n = 0; n < PLANS; n++) {
            SawingPlan plan = plan(random, flaredAndRotten);
            WoodBalance balance = plan.balance();
            double[] stated = {
                balance.lumber().cubicMetres(),
                balance.kerf().cubicMetres(),
                balance.slab().cubicMetres(),
                balance.edging().cubicMetres(),
                balance.trim().cubicMetres(),
                balance.rot().cubicMetres()
            };
            double box = box(plan.solid());
            int[] hits = throwPoints(plan, random);
            for (int i = 0; i < SHARES.length; i++) {
                double share = stated[i] / box;
                double error = box * Math.sqrt(share * (1 - share) / POINTS);
                double off = box * hits[i] / POINTS - stated[i];
                difference[i] += off;
                variance[i] += error * error;
                seen += stated[i] > 0 ? 1 : 0;
                waste += (i == 3 || i == 4) && stated[i] > 0 ? 1 : 0;
                beyondThree += Math.abs(off) > 3 * error ? 1 : 0;
                assertThat(Math.abs(off)).as("%s of plan %s", SHARES[i], n).isLessThanOrEqualTo(5 * error);
            }
        }
        for (int i = 0; i < SHARES.length; i++) {
            assertThat(Math.abs(difference[i])).as(SHARES[i]).isLessThanOrEqualTo(3 * Math.sqrt(variance[i]));
        }
        // 400 shares, 480 with rot: 1.1 and 1.3 expected; more than 5 come by chance once in 400 runs, and the seed is
        // fixed.
        assertThat(beyondThree).isLessThanOrEqualTo(5);
        assertThat(seen).isGreaterThan(4 * PLANS);
        assertThat(waste).isGreaterThan(PLANS);
    }

    private static SawingPlan plan(Random random, boolean flaredAndRotten) {
        double small = 0.11 + 0.08 * random.nextDouble();
        double large = small * (1 + 0.25 * random.nextDouble());
        double sweep = random.nextBoolean() ? 0 : 0.03 * random.nextDouble();
        double toward = 2 * StrictMath.PI * random.nextDouble();
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= 6; i++) {
            double t = i / 6.0;
            double bow = 4 * sweep * t * (1 - t);
            double flare = flaredAndRotten && i == 6 ? 0.25 * small : 0;
            stations.add(new Station(
                    3.6 * t,
                    small + (large - small) * t + flare,
                    bow * StrictMath.cos(toward),
                    bow * StrictMath.sin(toward)));
        }
        LogSolid solid =
                LogSolid.of(stations, 0.75 + 0.25 * random.nextDouble(), Length.millimetres(random.nextInt(12)));
        if (flaredAndRotten) {
            double from = 2 * random.nextDouble();
            solid = solid.withRot(new LogSolid.Rot(
                    0.01 + 0.025 * random.nextDouble(),
                    from,
                    from + (3.6 - from) * random.nextDouble(),
                    0.02 * random.nextDouble() - 0.01,
                    0.02 * random.nextDouble() - 0.01));
        }
        Saw saw = new Saw(
                "saw",
                Length.millimetres(2L * (1 + random.nextInt(5))),
                Length.millimetres(900),
                Length.millimetres(2),
                random.nextBoolean() ? Saw.Reference.BED : Saw.Reference.PREVIOUS_FACE,
                Length.ZERO,
                Length.ZERO);
        List<PieceOption> sizes = List.of(size(26, 104), size(40, 80), size(54, 130));
        Frame.Lay lay = List.of(Frame.Lay.AXIS, Frame.Lay.BARK_ABOVE, Frame.Lay.BARK_BELOW)
                .get(random.nextInt(3));
        SearchSpace space = SearchSpace.standard()
                .withGrid(Length.millimetres(4))
                .withTurns(List.of((double) random.nextInt(180)))
                .withLays(List.of(lay))
                .withCants(random.nextBoolean());
        return BestPattern.find(solid, saw, sizes, space, PassCost.each(random.nextInt(3)));
    }

    private static PieceOption size(int thickness, int width) {
        List<LengthWorth> lengths = new ArrayList<>();
        for (int millimetres : new int[] {3600, 3000, 2400, 1800}) {
            lengths.add(new LengthWorth(Length.millimetres(millimetres), 1e-6 * thickness * width * millimetres));
        }
        return PieceOption.fixed(
                thickness + " by " + width, Length.millimetres(thickness), Length.millimetres(width), lengths);
    }

    private static double reach(LogSolid solid) {
        double reach = 0;
        for (int i = 0; i < solid.stationCount(); i++) {
            LogSolid.Section s = solid.section(solid.station(i).zMetres());
            reach = Math.max(
                    reach, s.halfLongMetres() + Math.max(Math.abs(s.centreXMetres()), Math.abs(s.centreYMetres())));
        }
        return reach;
    }

    private static double box(LogSolid solid) {
        double side = 2 * reach(solid);
        return side * side * solid.lengthMetres();
    }

    private static int[] throwPoints(SawingPlan plan, Random random) {
        LogSolid solid = plan.solid();
        double reach = reach(solid);
        double turn = StrictMath.toRadians(plan.frame().turnDegrees());
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double lift = plan.frame().largeEndLift().toMetres();
        int[] hits = new int[SHARES.length];
        for (int i = 0; i < POINTS; i++) {
            double x = reach * (2 * random.nextDouble() - 1);
            double y = reach * (2 * random.nextDouble() - 1);
            double z = solid.lengthMetres() * random.nextDouble();
            if (solid.rotSection(z).map(rot -> rot.contains(x, y)).orElse(false)) {
                hits[5]++;
            } else if (solid.contains(x, y, z)) {
                double u = x * cos - y * sin;
                double v = x * sin + y * cos + lift * (z / solid.lengthMetres() - 0.5);
                hits[share(plan, u, v, z)]++;
            }
        }
        return hits;
    }

    private static boolean in(Rectangle r, double u, double v) {
        return u >= r.left().toMetres()
                && u <= r.right().toMetres()
                && v >= r.bottom().toMetres()
                && v <= r.top().toMetres();
    }

    /** Index of the share to which a point of the wood belongs. */
    private static int share(SawingPlan plan, double u, double v, double z) {
        for (SawnPiece piece : plan.pieces()) {
            if (in(piece.faces(), u, v)) {
                return z >= piece.start().toMetres() && z <= piece.end().toMetres() ? 0 : 4;
            }
        }
        if (plan.passes().stream().anyMatch(pass -> in(pass.kerf(), u, v))) {
            return 1;
        }
        List<Rectangle> level = kerfs(plan, Stage.LIVE, -1e3, 1e3);
        Rectangle below = last(level, Rectangle::top, v);
        Rectangle above = first(level, Rectangle::bottom, v);
        if (below == null || above == null) {
            return 2;
        }
        double low = below.top().toMetres();
        double high = above.bottom().toMetres();
        List<Rectangle> upright = kerfs(plan, Stage.CANT, low, high);
        if (upright.isEmpty()) {
            return pieceBetween(plan, -1e3, 1e3, low, high) ? 3 : 2;
        }
        Rectangle left = last(upright, Rectangle::right, u);
        Rectangle right = first(upright, Rectangle::left, u);
        if (left == null || right == null) {
            return 2;
        }
        return pieceBetween(plan, left.right().toMetres(), right.left().toMetres(), low, high) ? 3 : 2;
    }

    private static List<Rectangle> kerfs(SawingPlan plan, Stage stage, double low, double high) {
        return plan.passes().stream()
                .filter(pass -> pass.stage() == stage)
                .map(SawPass::kerf)
                .filter(kerf -> kerf.top().toMetres() > low && kerf.bottom().toMetres() < high)
                .toList();
    }

    private static boolean pieceBetween(SawingPlan plan, double left, double right, double low, double high) {
        return plan.pieces().stream()
                .map(SawnPiece::faces)
                .anyMatch(f -> f.left().toMetres() >= left
                        && f.right().toMetres() <= right
                        && f.bottom().toMetres() >= low
                        && f.top().toMetres() <= high);
    }

    private interface Side {
        Length of(Rectangle r);
    }

    private static Rectangle last(List<Rectangle> kerfs, Side side, double at) {
        return kerfs.stream()
                .filter(kerf -> side.of(kerf).toMetres() <= at)
                .max(Comparator.comparing(side::of))
                .orElse(null);
    }

    private static Rectangle first(List<Rectangle> kerfs, Side side, double at) {
        return kerfs.stream()
                .filter(kerf -> side.of(kerf).toMetres() >= at)
                .min(Comparator.comparing(side::of))
                .orElse(null);
    }
}
