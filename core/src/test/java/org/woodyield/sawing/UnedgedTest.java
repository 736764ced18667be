package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.PieceOption.Edges;
import org.woodyield.sawing.Verifier.Fault;

class UnedgedTest {

    private static final SearchSpace SPACE = SearchSpace.standard().withGrid(Length.inches(1, 8));

    private static final List<Frame.Lay> LAYS = List.of(Frame.Lay.AXIS, Frame.Lay.BARK_ABOVE, Frame.Lay.BARK_BELOW);

    private static PieceOption slab(Edges edges, double worth) {
        return PieceOption.unedged(
                "table top",
                Length.inches(9, 4),
                Length.inches(8),
                Length.inches(30),
                Length.inches(1, 4),
                edges,
                List.of(new LengthWorth(Length.feet(8), worth), new LengthWorth(Length.feet(12), worth * 1.6)));
    }

    private static List<PieceOption> with(PieceOption slab) {
        List<PieceOption> options = new ArrayList<>(List.of(slab));
        options.addAll(BestPatternTest.sizes());
        return options;
    }

    private static SawingPlan plan(Edges edges) {
        return BestPattern.find(
                BestPatternTest.cone(16, 18, 12),
                BestPatternTest.saw(Saw.Reference.BED),
                with(slab(edges, 20_000)),
                SPACE,
                PassCost.each(20));
    }

    @ParameterizedTest
    @EnumSource(names = {"BARK_LEAST_WIDTH", "BARK_MEAN_WIDTH"})
    void dearTableTopsAreLeftUnedged(Edges edges) {
        SawingPlan plan = plan(edges);
        assertThat(Verifier.verify(plan)).isEmpty();
        assertThat(plan.pieces()).filteredOn(SawnPiece::unedged).isNotEmpty().allSatisfy(piece -> {
            assertThat(piece.width()).isBetween(Length.inches(8), Length.inches(18));
            assertThat(piece.fromCant()).isFalse();
        });
        double volume = plan.solid().volume().cubicMetres();
        assertThat(plan.balance().sum().cubicMetres()).isCloseTo(volume, within(volume * 1e-9));
        assertThat(plan.proof().objective())
                .isCloseTo(plan.proof().worth() - 20 * plan.passes().size(), within(1e-6));
        assertThat(plan.proof().searchSpace()).contains("bark edges");
    }

    @Test
    void cheapTableTopsAreEdged() {
        SawingPlan plan = BestPattern.find(
                BestPatternTest.cone(16, 18, 12),
                BestPatternTest.saw(Saw.Reference.BED),
                with(slab(Edges.BARK_LEAST_WIDTH, 1)),
                SPACE,
                PassCost.each(20));
        assertThat(plan.pieces()).noneMatch(SawnPiece::unedged);
    }

    @ParameterizedTest
    @EnumSource(names = {"BARK_LEAST_WIDTH", "BARK_MEAN_WIDTH"})
    void aFlitchSaidToBeWiderIsFound(Edges edges) {
        SawingPlan p = plan(edges);
        List<SawnPiece> pieces = p.pieces().stream()
                .map(piece -> piece.unedged()
                        ? new SawnPiece(
                                piece.number(),
                                piece.optionId(),
                                piece.thickness(),
                                piece.width().plus(Length.inches(1, 4)),
                                piece.length(),
                                piece.faces(),
                                piece.start(),
                                piece.end(),
                                false,
                                piece.worth(),
                                true)
                        : piece)
                .toList();
        SawingPlan wider = new SawingPlan(
                p.solid(), p.saw(), p.options(), p.frame(), pieces, p.passes(), p.offcuts(), p.balance(), p.proof());
        assertThat(Verifier.verify(wider)).extracting(Verifier.Finding::fault).contains(Fault.WRONG_SIZE);
    }

    @Test
    void aFlitchThatIsPassedOffAsEdgedIsFound() {
        SawingPlan p = plan(Edges.BARK_LEAST_WIDTH);
        List<SawnPiece> pieces = p.pieces().stream()
                .map(piece -> new SawnPiece(
                        piece.number(),
                        piece.optionId(),
                        piece.thickness(),
                        piece.width(),
                        piece.length(),
                        piece.faces(),
                        piece.start(),
                        piece.end(),
                        piece.fromCant(),
                        piece.worth()))
                .toList();
        SawingPlan edged = new SawingPlan(
                p.solid(), p.saw(), p.options(), p.frame(), pieces, p.passes(), p.offcuts(), p.balance(), p.proof());
        assertThat(Verifier.verify(edged)).extracting(Verifier.Finding::fault).contains(Fault.WRONG_SIZE);
    }

    @Test
    void sawnEdgesAreNoBarkEdges() {
        assertThatThrownBy(() -> slab(Edges.SAWN, 1))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("edges of table top");
    }

    /** Any log, boards and table tops together: sound, added up, and never worth less than the boards alone. */
    @Property(tries = 60)
    void whateverIsFoundIsSound(@ForAll long seed) {
        Random random = new Random(seed);
        double small = 0.12 + 0.1 * random.nextDouble();
        double sweep = random.nextBoolean() ? 0 : 0.03 * random.nextDouble();
        double length = 2.5 + 2 * random.nextDouble();
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            double t = i / 4.0;
            stations.add(new Station(t * length, small + 0.03 * t, 4 * sweep * t * (1 - t), sweep * t * (1 - t)));
        }
        LogSolid solid = LogSolid.of(stations, 0.8 + 0.2 * random.nextDouble(), Length.millimetres(random.nextInt(15)))
                .withRot(new Rot(
                        random.nextBoolean() ? 0 : 0.3 * small * random.nextDouble(),
                        random.nextBoolean() ? 0 : 0.6 * length,
                        length,
                        0.02 * random.nextDouble(),
                        0));
        List<PieceOption> boards = List.of(
                BestPatternTest.size(9, 33, 6, 8),
                BestPatternTest.size(14, 33, 4, 6, 8).withWane(new Wane(1, 1)));
        PieceOption top = PieceOption.unedged(
                "top",
                Length.inches(random.nextBoolean() ? 9 : 14, 8),
                Length.inches(6),
                Length.inches(10 + random.nextInt(10)),
                Length.inches(1, 1 << random.nextInt(4)),
                random.nextBoolean() ? Edges.BARK_LEAST_WIDTH : Edges.BARK_MEAN_WIDTH,
                List.of(new LengthWorth(Length.feet(6), 4000 * random.nextDouble())));
        List<PieceOption> both = List.of(top, boards.get(0), boards.get(1));
        SearchSpace space = SPACE.withTurns(List.of((double) random.nextInt(180)))
                .withStartStep(random.nextBoolean() ? Length.ZERO : Length.inches(20))
                .withLays(List.of(LAYS.get(random.nextInt(LAYS.size()))));
        Saw saw = BestPatternTest.saw(random.nextBoolean() ? Saw.Reference.BED : Saw.Reference.PREVIOUS_FACE);
        PassCost cost = PassCost.each(random.nextInt(30));
        Optional<SawingPlan> plan = BestPattern.findAny(solid, saw, both, space, cost);
        double alone = BestPattern.findAny(solid, saw, boards, space, cost)
                .map(p -> p.proof().objective())
                .orElse(0.0);
        assertThat(plan.map(p -> p.proof().objective()).orElse(0.0)).isGreaterThanOrEqualTo(alone - 1e-6);
        if (plan.isPresent()) {
            assertThat(Verifier.verify(plan.get())).isEmpty();
            double volume = solid.volume().cubicMetres();
            assertThat(plan.get().balance().sum().cubicMetres()).isCloseTo(volume, within(volume * 1e-9));
        }
    }

    /** A cylinder sawn to flitches alone, against every stack of flitches there is. */
    @Property(tries = 200)
    void flitchesOfACylinderAreTheBestStackOfAll(@ForAll long seed) {
        Random random = new Random(seed);
        int unit = 5;
        double radius = 0.06 + 0.09 * random.nextDouble();
        LogSolid solid =
                LogSolid.of(List.of(new Station(0, radius, 0, 0), new Station(2.6, radius, 0, 0)), 1, Length.ZERO);
        int[] thick = {2 + random.nextInt(4), 6 + random.nextInt(4)};
        double[] worth = {1 + random.nextInt(9), 1 + random.nextInt(20)};
        int least = 40;
        List<PieceOption> options = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            options.add(PieceOption.unedged(
                    "flitch " + i,
                    Length.millimetres((long) unit * thick[i]),
                    Length.millimetres(least),
                    Length.millimetres(900),
                    Length.millimetres(10),
                    Edges.BARK_LEAST_WIDTH,
                    List.of(new LengthWorth(Length.millimetres(2500), worth[i]))));
        }
        Saw saw = new Saw(
                "coarse",
                Length.millimetres(unit),
                Length.millimetres(900),
                Length.millimetres(unit),
                Saw.Reference.PREVIOUS_FACE,
                Length.ZERO,
                Length.ZERO);
        double each = random.nextInt(3);
        double found = BestPattern.findAny(
                        solid,
                        saw,
                        options,
                        SearchSpace.standard().withCants(false).withGrid(Length.millimetres(unit)),
                        PassCost.each(each))
                .map(plan -> plan.proof().objective())
                .orElse(0.0);
        double best = bestStack(radius, unit, thick, worth, least, each);
        assertThat(found).isCloseTo(best, within(1e-5));
    }

    /** Whether a kerf that stands on an index meets the cylinder, and not the bed that carries it. */
    private static boolean cuts(double radius, int unit, int index) {
        double nearest = index > 0 ? index : index + 1 < 0 ? index + 1 : 0;
        return Math.abs(nearest) * unit / 1000 < radius && index * unit / 1000.0 >= -radius;
    }

    /** From the bottom up: the best below each face that begins with a flitch, and the best that may begin with a slab. */
    private static double bestStack(double radius, int unit, int[] thick, double[] worth, int least, double each) {
        int half = (int) Math.floor(radius * 1000 / unit) + 2;
        double[] flitchFirst = new double[2 * half + 1];
        double[] any = new double[2 * half + 1];
        double best = 0;
        for (int face = -half; face <= half; face++) {
            double top = 0;
            for (int i = 0; i < 2; i++) {
                int bottom = face - thick[i];
                double far = Math.max(Math.abs(face), Math.abs(bottom)) * unit / 1000.0;
                if (far < radius && cuts(radius, unit, bottom - 1)) {
                    int width = (int) Math.floor(2000 * Math.sqrt(radius * radius - far * far) / 10) * 10;
                    double rest = any[bottom - 1 + half];
                    top = width < least ? top : Math.max(top, worth[i] * width / least - each + rest);
                }
            }
            flitchFirst[face + half] = top;
            for (int next = face - 2; next >= -half; next--) {
                if (cuts(radius, unit, next)) {
                    top = Math.max(top, flitchFirst[next + half] - each);
                }
            }
            any[face + half] = top;
            if (cuts(radius, unit, face)) {
                best = Math.max(best, top - each);
            }
        }
        return best;
    }

    /** The quick search against working out everything, with boards, table tops and rot. */
    @Property(tries = 12)
    void theQuickSearchFindsWhatWorkingOutEverythingFinds(@ForAll long seed) {
        Random random = new Random(seed);
        double small = 0.08 + 0.03 * random.nextDouble();
        LogSolid solid = LogSolid.of(
                        List.of(new Station(0, small, 0, 0), new Station(2, small + 0.01, 0.01, 0)), 0.9, Length.ZERO)
                .withRot(new Rot(
                        random.nextBoolean() ? 0 : 0.4 * small * random.nextDouble(),
                        random.nextBoolean() ? 0 : 1,
                        2,
                        0.01 * random.nextDouble(),
                        0));
        PieceOption top = PieceOption.unedged(
                "top",
                Length.inches(9, 8),
                Length.inches(4),
                Length.inches(12),
                Length.inches(1, 8),
                Edges.BARK_MEAN_WIDTH,
                List.of(new LengthWorth(Length.feet(6), 2500 * random.nextDouble())));
        List<PieceOption> sizes = List.of(
                top,
                BestPatternTest.size(9, 17, 4, 6),
                BestPatternTest.size(14, 25, 6).withWane(new Wane(0.25, 0.25)));
        SearchSpace space = SPACE.withCants(random.nextBoolean());
        Saw saw = BestPatternTest.saw(random.nextBoolean() ? Saw.Reference.BED : Saw.Reference.PREVIOUS_FACE);
        PassCost cost = PassCost.each(random.nextInt(3) * 25);
        double quick = BestPattern.findAny(solid, saw, sizes, space, cost)
                .map(plan -> plan.proof().objective())
                .orElse(0.0);
        double slow = BestPattern.findExhaustively(solid, saw, sizes, space, cost)
                .map(plan -> plan.proof().objective())
                .orElse(0.0);
        assertThat(quick).isEqualTo(slow);
    }
}
