package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;

/** The quick search finds the same plan as working out every flitch and every cant. */
class QuickSearchTest {

    private static final List<Frame.Lay> LAYS = List.of(Frame.Lay.values());

    @Property(tries = 60)
    void findsWhatWorkingOutEverythingFinds(@ForAll long seed) {
        Random random = new Random(seed);
        LogSolid solid = solid(random);
        Saw saw = new Saw(
                "any saw",
                Length.inches(1 + random.nextInt(3), 8),
                random.nextInt(4) == 0 ? Length.inches(3 + random.nextInt(3)) : Length.inches(60),
                Length.inches(1, 8),
                random.nextBoolean() ? Saw.Reference.BED : Saw.Reference.PREVIOUS_FACE,
                random.nextInt(4) == 0 ? Length.inches(random.nextInt(3)) : Length.ZERO,
                Length.ZERO);
        List<PieceOption> sizes = sizes(random);
        SearchSpace space = space(random);
        PassCost plain = random.nextBoolean() ? cost(random) : cost(random).withGuide(random.nextDouble() * 4);
        PassCost cost = random.nextBoolean()
                ? plain
                : plain.withTurning(random.nextDouble() * 4).withLoading(random.nextDouble() * 8);
        Optional<SawingPlan> quick = BestPattern.findAny(solid, saw, sizes, space, cost);
        Optional<SawingPlan> slow = BestPattern.findExhaustively(solid, saw, sizes, space, cost);
        Statistics.label("what is found")
                .collect(quick.map(plan ->
                                plan.passes().stream().anyMatch(pass -> pass.stage() == Stage.CANT) ? "cants" : "live")
                        .orElse("nothing"));
        quick.ifPresent(QuickSearchTest::passCostIsOfItsPasses);
        assertThat(quick.map(QuickSearchTest::withoutCounts)).isEqualTo(slow.map(QuickSearchTest::withoutCounts));
    }

    /** Worth less the cost of the passes, each with the guide that it needs, is what the search maximised. */
    private static void passCostIsOfItsPasses(SawingPlan plan) {
        Proof proof = plan.proof();
        assertThat(proof.worth() - proof.passCost()).isCloseTo(proof.objective(), within(1e-6));
        assertThat(Verifier.verify(plan)).isEmpty();
    }

    private static SawingPlan withoutCounts(SawingPlan p) {
        Proof q = p.proof();
        Proof proof = new Proof(
                q.verdict(),
                q.worth(),
                q.passCost(),
                q.objective(),
                q.bound(),
                q.boundOffGrid(),
                q.searchSpace(),
                0,
                0,
                0,
                0);
        return new SawingPlan(
                p.solid(), p.saw(), p.options(), p.frame(), p.pieces(), p.passes(), p.offcuts(), p.balance(), proof);
    }

    private static LogSolid solid(Random random) {
        double length = (4 + random.nextInt(3)) * 0.3048 * (1 + random.nextInt(3) * 0.01);
        double radius = (4 + random.nextInt(24) / 8.0) * 0.0127;
        double taper = random.nextInt(3) == 0 ? 0 : random.nextInt(12) / 8.0 * 0.0127;
        double sweep = random.nextBoolean() ? 0 : random.nextDouble() * 0.05;
        double direction = random.nextDouble() * 2 * Math.PI;
        int stretches = sweep == 0 ? 1 : 4;
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= stretches; i++) {
            double share = (double) i / stretches;
            double offset = 4 * sweep * share * (1 - share);
            stations.add(new Station(
                    length * share,
                    radius + taper * share,
                    offset * Math.cos(direction),
                    offset * Math.sin(direction)));
        }
        double ratio = random.nextBoolean() ? 1 : 0.7 + 0.3 * random.nextDouble();
        return LogSolid.of(stations, ratio, Length.inches(random.nextInt(4), 8));
    }

    private static List<PieceOption> sizes(Random random) {
        List<PieceOption> sizes = new ArrayList<>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            int thickness = 4 + 5 * random.nextInt(2);
            int width = thickness + 2 + random.nextInt(20);
            boolean even = random.nextBoolean();
            List<LengthWorth> lengths = new ArrayList<>();
            for (int feet = 3 - random.nextInt(2); feet <= 4; feet++) {
                double odd = random.nextInt(5) == 0 ? 0.5 + random.nextDouble() : 1;
                double worth = thickness * width * feet / 64.0 * odd;
                lengths.add(new LengthWorth(Length.feet(feet), even ? Math.rint(worth) : worth));
            }
            Wane wane = random.nextInt(3) == 0 ? new Wane(random.nextDouble(), random.nextDouble() * 0.4) : Wane.NONE;
            Length least = Length.inches(width, 8);
            Length most = random.nextInt(4) == 0 ? least.plus(Length.inches(1)) : least;
            sizes.add(new PieceOption(
                    "size " + i, Length.inches(thickness, 8), least, most, Length.inches(1, 2), lengths, wane));
        }
        return sizes;
    }

    private static SearchSpace space(Random random) {
        SearchSpace space = SearchSpace.standard()
                .withGrid(Length.inches(1, random.nextBoolean() ? 8 : 4))
                .withStartStep(random.nextInt(4) == 0 ? Length.feet(1) : Length.ZERO)
                .withOverThick(random.nextInt(5) == 0 ? Length.inches(1, 8) : Length.ZERO);
        space = random.nextInt(3) == 0 ? space.withTurns(List.of(0.0, 147.0)) : space;
        return random.nextInt(3) == 0
                ? space.withLays(List.of(LAYS.get(random.nextInt(LAYS.size()))))
                        .withOffset(Length.inches(random.nextInt(5) - 2, 2))
                : space;
    }

    private static PassCost cost(Random random) {
        double fixed = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 6;
        double perArea = random.nextDouble() * 20;
        return switch (random.nextInt(4)) {
            case 0 -> PassCost.free();
            case 1 -> PassCost.each(fixed);
            case 2 -> (stage, width, length) -> fixed + perArea * width * length;
            // A cost that falls with width is odd, but nothing forbids it.
            default -> (stage, width, length) -> stage == Stage.EDGE ? fixed : fixed / (0.1 + width);
        };
    }
}
