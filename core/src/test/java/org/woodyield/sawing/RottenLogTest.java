package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Rot;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Verifier.Fault;

class RottenLogTest {

    private static final SearchSpace SPACE = SearchSpace.standard().withGrid(Length.inches(1, 8));
    private static final List<Frame.Lay> LAYS = List.of(Frame.Lay.AXIS, Frame.Lay.BARK_ABOVE, Frame.Lay.BARK_BELOW);
    private static final List<PieceOption> BOARDS = List.of(BestPatternTest.size(9, 33, 8, 12));

    private static LogSolid sound() {
        return BestPatternTest.cone(16, 18, 12);
    }

    /** Four inches of rot from end to end. */
    private static LogSolid rotten() {
        return sound().withRot(new Rot(0.0508, 0, sound().lengthMetres(), 0, 0));
    }

    private static SawingPlan plan(LogSolid solid, Saw.Reference reference) {
        return BestPattern.find(solid, BestPatternTest.saw(reference), BOARDS, SPACE, PassCost.each(20));
    }

    @ParameterizedTest
    @EnumSource
    void noPieceTouchesTheRotAndTheWoodAddsUp(Saw.Reference reference) {
        SawingPlan plan = plan(rotten(), reference);
        assertThat(Verifier.verify(plan)).isEmpty();
        double volume = plan.solid().volume().cubicMetres();
        assertThat(plan.balance().sum().cubicMetres()).isCloseTo(volume, within(volume * 1e-9));
        assertThat(plan.balance().rot().cubicMetres())
                .isCloseTo(StrictMath.PI * 0.0508 * 0.0508 * 12 * 0.3048, within(1e-12));
        assertThat(plan.proof().objective())
                .isLessThan(plan(sound(), reference).proof().objective());
    }

    @Test
    void aFlitchWithRotGivesARowOnEitherSide() {
        SawingPlan live = BestPattern.find(
                rotten(), BestPatternTest.saw(Saw.Reference.BED), BOARDS, SPACE.withCants(false), PassCost.each(20));
        assertThat(Verifier.verify(live)).isEmpty();
        List<SawnPiece> beside = live.pieces().stream()
                .filter(piece -> piece.faces().bottom().toMetres() < 0.03
                        && piece.faces().top().toMetres() > -0.03)
                .toList();
        assertThat(beside).anyMatch(piece -> piece.faces().left().isPositive());
        assertThat(beside).anyMatch(piece -> !piece.faces().right().isPositive());
        assertThat(live.proof().searchSpace()).contains("rot");
    }

    @ParameterizedTest
    @EnumSource
    void aPlanOfTheSoundLogHoldsRot(Saw.Reference reference) {
        SawingPlan p = plan(sound(), reference);
        SawingPlan moved = new SawingPlan(
                rotten(), p.saw(), p.options(), p.frame(), p.pieces(), p.passes(), p.offcuts(), p.balance(), p.proof());
        assertThat(Verifier.verify(moved))
                .extracting(Verifier.Finding::fault)
                .contains(Fault.IN_THE_ROT, Fault.WRONG_BALANCE);
    }

    @Test
    void rotAtOneEndLeavesShortBoardsThroughTheHeart() {
        LogSolid solid = sound().withRot(new Rot(0.0508, 3, sound().lengthMetres(), 0, 0));
        SawingPlan plan = plan(solid, Saw.Reference.BED);
        assertThat(Verifier.verify(plan)).isEmpty();
        assertThat(plan.pieces()).anyMatch(piece -> piece.length().equals(Length.feet(8)));
        assertThat(plan.proof().objective())
                .isGreaterThanOrEqualTo(
                        plan(rotten(), Saw.Reference.BED).proof().objective());
    }

    /** Any frame, sweep, oval, flare, rot and pith under either saw: sound, added up, and never better than without the rot. */
    @Property(tries = 80)
    void whateverIsFoundIsClearOfTheRot(@ForAll long seed) {
        Random random = new Random(seed);
        double small = 0.12 + 0.1 * random.nextDouble();
        double sweep = random.nextBoolean() ? 0 : 0.03 * random.nextDouble();
        double length = 2.5 + 2 * random.nextDouble();
        List<Station> stations = new ArrayList<>();
        double radius = small;
        for (int i = 0; i <= 4; i++) {
            double t = i / 4.0;
            stations.add(new Station(t * length, radius, 4 * sweep * t * (1 - t), 0));
            radius += 0.02 * random.nextDouble() * (i == 3 ? 3 : 1);
        }
        LogSolid sound = LogSolid.of(stations, 0.8 + 0.2 * random.nextDouble(), Length.millimetres(random.nextInt(15)));
        double from = random.nextBoolean() ? 0 : length * 0.5 * random.nextDouble();
        double to = random.nextBoolean() ? length : from + (length - from) * random.nextDouble();
        LogSolid rotten = sound.withRot(new Rot(
                0.4 * small * random.nextDouble(),
                from,
                to,
                0.3 * small * random.nextDouble(),
                0.3 * small * random.nextDouble()));
        List<PieceOption> sizes = List.of(
                BestPatternTest.size(9, 25, 4, 6, 8),
                BestPatternTest.size(14, 33, 6, 8).withWane(new Wane(0.25, 0.25)),
                BestPatternTest.size(14, 49, 8));
        SearchSpace space = SPACE.withTurns(List.of((double) random.nextInt(180)))
                .withLays(List.of(LAYS.get(random.nextInt(LAYS.size()))));
        Saw saw = BestPatternTest.saw(random.nextBoolean() ? Saw.Reference.BED : Saw.Reference.PREVIOUS_FACE);
        PassCost cost = PassCost.each(random.nextInt(30));
        Optional<SawingPlan> plan = BestPattern.findAny(rotten, saw, sizes, space, cost);
        double without = BestPattern.findAny(sound, saw, sizes, space, cost)
                .map(p -> p.proof().objective())
                .orElse(0.0);
        if (plan.isPresent()) {
            assertThat(Verifier.verify(plan.get())).isEmpty();
            double volume = sound.volume().cubicMetres();
            assertThat(plan.get().balance().sum().cubicMetres()).isCloseTo(volume, within(volume * 1e-9));
            Proof proof = plan.get().proof();
            assertThat(proof.objective()).isLessThanOrEqualTo(without + 1e-6);
            assertThat(proof.worth() - proof.passCost()).isCloseTo(proof.objective(), within(1e-6));
            for (SawPass pass : plan.get().passes()) {
                assertThat(pass.setting().roundedTo(saw.settingStep(), Rounding.DOWN))
                        .as("setting of %s", pass)
                        .isEqualTo(pass.setting());
            }
        }
    }

    /** What may be sawn from a log may be sawn from a larger one, or from one that has less rot. */
    @Property(tries = 40)
    void aPlanStaysSoundInAThickerLogWithLessRot(@ForAll long seed) {
        Random random = new Random(seed);
        SawingPlan p = plan(rotten(), random.nextBoolean() ? Saw.Reference.BED : Saw.Reference.PREVIOUS_FACE);
        double grow = 0.1 * random.nextDouble();
        LogSolid thicker = LogSolid.of(
                        List.of(
                                new Station(0, 8 * 0.0254 + grow, 0, 0),
                                new Station(12 * 0.3048, 9 * 0.0254 + grow, 0, 0)),
                        1,
                        Length.inches(1, 2))
                .withRot(new Rot(0.0508 * random.nextDouble(), 0, 12 * 0.3048, 0, 0));
        SawingPlan moved = new SawingPlan(
                thicker, p.saw(), p.options(), p.frame(), p.pieces(), p.passes(), p.offcuts(), p.balance(), p.proof());
        assertThat(Verifier.verify(moved))
                .extracting(Verifier.Finding::fault)
                .doesNotContain(Fault.OUTSIDE_THE_WOOD, Fault.IN_THE_ROT, Fault.WRONG_SIZE, Fault.WRONG_TRIM);
    }

    /** The row beside the rot against every row there is, on flitches so small that all can be tried. */
    @Property(tries = 300)
    void theBestRowBesideTheRotIsTheBestOfAll(@ForAll long seed) {
        Random random = new Random(seed);
        double radius = 0.06 + 0.03 * random.nextDouble();
        LogSolid solid = LogSolid.of(
                        List.of(new Station(0, radius, 0, 0), new Station(2.6, radius + 0.01, 0.004, 0)),
                        1,
                        Length.ZERO)
                .withRot(new Rot(
                        0.005 + 0.02 * random.nextDouble(),
                        random.nextBoolean() ? 0 : 1.3,
                        2.6,
                        0.02 * random.nextDouble(),
                        0.02 * random.nextDouble()));
        Saw saw = new Saw(
                "coarse",
                Length.millimetres(5),
                Length.millimetres(900),
                Length.millimetres(5),
                Saw.Reference.PREVIOUS_FACE,
                Length.ZERO,
                Length.ZERO);
        List<PieceOption> options = List.of(
                metric("wide", 20, 40, 1 + random.nextInt(20)),
                metric("narrow", 20, 15 + 5 * random.nextInt(4), 1 + random.nextInt(10)));
        SearchSpace space = SearchSpace.standard().withCants(false).withGrid(Length.millimetres(5));
        Length length = Length.millimetres(2600);
        Lattice lattice = Lattice.of(saw, options, space, length);
        Lie lie = new Lie(solid, 0, 0);
        Chords chords = new Chords(lie, lattice, space, length);
        RotRows rows = new RotRows(lattice, chords, chords.rot.orElseThrow());
        Lattice.Thickness thickness = lattice.thicknesses.get(0);
        long edge = Lattice.millionths(random.nextInt(3));
        int high = chords.centre + random.nextInt(2 * thickness.units());
        int low = high - thickness.units();
        long found = Math.max(0, rows.best(0, low, high, true, Rows.NO_CLIP, 0, edge, 0));
        assertThat(found).isEqualTo(Math.max(0, bestOfAll(solid, chords, lattice, thickness, low, high, edge)));
    }

    private static PieceOption metric(String id, int thickness, int width, int worth) {
        return PieceOption.fixed(
                id,
                Length.millimetres(thickness),
                Length.millimetres(width),
                List.of(
                        new LengthWorth(Length.millimetres(1200), worth * 0.4),
                        new LengthWorth(Length.millimetres(2600), worth)));
    }

    /** Every run of strips, and every pair of runs on either side of the rot. */
    private static long bestOfAll(
            LogSolid solid, Chords chords, Lattice lattice, Lattice.Thickness thickness, int low, int high, long edge) {
        int n = chords.count;
        Rot rot = solid.rot().orElseThrow();
        int[] side = new int[2];
        side[0] = Chords.EMPTY;
        side[1] = -Chords.EMPTY;
        for (int slice = 0; slice <= 2000; slice++) {
            double z = rot.fromMetres() + (rot.toMetres() - rot.fromMetres()) * slice / 2000;
            LogSolid.Section s = solid.rotSection(z).orElseThrow();
            double v = Math.min(
                    Math.max(s.centreYMetres(), lattice.metres(low - chords.centre)),
                    lattice.metres(high - chords.centre));
            double rest = s.halfLongMetres() * s.halfLongMetres() - (v - s.centreYMetres()) * (v - s.centreYMetres());
            if (rest > 0) {
                double half = Math.sqrt(rest);
                side[0] = Math.min(
                        side[0], chords.centre + (int) Math.floor((s.centreXMetres() - half) / lattice.metres(1)));
                side[1] = Math.max(
                        side[1], chords.centre + (int) Math.ceil((s.centreXMetres() + half) / lattice.metres(1)));
            }
        }
        long whole = run(solid, chords, lattice, thickness, low, high, edge, 0, n);
        if (side[0] > side[1]) {
            return whole;
        }
        long left = run(solid, chords, lattice, thickness, low, high, edge, 0, side[0]);
        long right = run(
                solid, chords, lattice, thickness, low, high, edge, Math.max(side[1], side[0] + 2 * lattice.kerf), n);
        return Math.max(whole, Math.max(0, left) + Math.max(0, right));
    }

    /** The best run of strips a kerf apart between two places, each strip judged by the solid alone. */
    private static long run(
            LogSolid solid,
            Chords chords,
            Lattice lattice,
            Lattice.Thickness thickness,
            int low,
            int high,
            long edge,
            int from,
            int to) {
        long[] best = new long[chords.count + lattice.kerf + 1];
        long top = 0;
        for (int x = chords.count - 1; x >= from; x--) {
            for (Lattice.Entry entry : thickness.entries()) {
                int end = x + entry.width();
                if (end > to) {
                    continue;
                }
                for (Chords.Trim trim : chords.trims) {
                    if (fits(solid, chords, lattice, x, end, low, high, trim)) {
                        long rest = end + lattice.kerf < chords.count ? best[end + lattice.kerf] : 0;
                        best[x] = Math.max(best[x], entry.worth(trim.length()) - edge + rest);
                    }
                }
            }
            top = Math.max(top, best[x] - edge);
        }
        return top;
    }

    private static boolean fits(
            LogSolid solid, Chords chords, Lattice lattice, int x, int end, int low, int high, Chords.Trim trim) {
        Rot rot = solid.rot().orElseThrow();
        double u1 = lattice.metres(x - chords.centre);
        double u2 = lattice.metres(end - chords.centre);
        double v1 = lattice.metres(low - chords.centre);
        double v2 = lattice.metres(high - chords.centre);
        double a = trim.start().toMetres();
        double b = trim.end().toMetres();
        for (double z : new double[] {a, b}) {
            for (double u : new double[] {u1, u2}) {
                if (!solid.contains(u, v1, z) || !solid.contains(u, v2, z)) {
                    return false;
                }
            }
        }
        for (int slice = 0; slice <= 400; slice++) {
            double z = Math.max(a, rot.fromMetres())
                    + (Math.min(b, rot.toMetres()) - Math.max(a, rot.fromMetres())) * slice / 400;
            if (Math.max(a, rot.fromMetres()) >= Math.min(b, rot.toMetres())) {
                break;
            }
            LogSolid.Section s = solid.rotSection(z).orElseThrow();
            double du = Math.max(0, Math.max(u1 - s.centreXMetres(), s.centreXMetres() - u2));
            double dv = Math.max(0, Math.max(v1 - s.centreYMetres(), s.centreYMetres() - v2));
            if (du * du + dv * dv < rot.radiusMetres() * rot.radiusMetres()) {
                return false;
            }
        }
        return true;
    }
}
