package org.woodyield.checks.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Proof;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Verifier;

/** Bounds against the optima of wider spaces. */
class BoundTest {

    @Property(tries = 600)
    void noFinerGridOfALiveSawnLogExceedsTheBoundOffTheGrid(@ForAll long seed) {
        compare(Problem.random(seed, false), 1, 2, 4, 8);
    }

    @Property(tries = 250)
    void norOneOfALogWithCants(@ForAll long seed) {
        compare(Problem.random(seed, true), 1, 2, 4, 8);
    }

    /** Wane halfway through a piece that is one step of the lattice thick. */
    @Test
    void norOneOfThinPiecesWithWane() {
        Problem problem = Problem.random(-3521, true);
        double bound = BestPattern.boundOffGrid(
                problem.solid(), problem.saw(), problem.options(), problem.space(), problem.cost());
        assertThat(finer(problem, 8).value()).isBetween(149.0, bound);
    }

    /**
     * Rot takes away and unedged flitches add; neither lifts a finer grid over the bound. The bound leaves rot out, so it is
     * reached in about one case in a hundred only: this sample, always the same, is one in which it is reached often enough.
     */
    @Property(tries = 500, seed = "3")
    void norOneOfARottenLogOrWithUnedgedFlitches(@ForAll long seed) {
        Random random = new Random(seed);
        Problem any = Problem.random(seed, random.nextInt(4) == 0);
        if (random.nextInt(3) > 0) {
            double from = random.nextInt(3);
            any = any.withSolid(any.solid()
                    .withRot(new LogSolid.Rot(
                            0.006 * random.nextDouble(),
                            from,
                            from + (any.solid().lengthMetres() - from) * random.nextDouble(),
                            0.002 * random.nextDouble(),
                            0.002 * random.nextDouble())));
        }
        if (random.nextInt(3) > 0) {
            List<PieceOption> options = new ArrayList<>(any.options());
            options.add(PieceOption.unedged(
                    "slab",
                    Length.millimetres(8 + 4 * random.nextInt(3)),
                    Length.millimetres(16),
                    Length.millimetres(60),
                    Length.millimetres(1 + random.nextInt(5)),
                    random.nextBoolean() ? PieceOption.Edges.BARK_LEAST_WIDTH : PieceOption.Edges.BARK_MEAN_WIDTH,
                    List.of(new LengthWorth(Length.millimetres(2100), random.nextInt(40)))));
            any = any.withOptions(options);
        }
        compare(any, 1, 2, 4);
    }

    /** The bound of a space with finer steps holds for still finer ones, and comes nearer to them. */
    @Property(tries = 150)
    void finerStepsGiveABoundThatHoldsToo(@ForAll long seed) {
        Problem any = Problem.random(seed, false);
        compare(finer(any, 4), 1, 2, 4);
    }

    private static Problem finer(Problem problem, int times) {
        Length grid = problem.space().grid();
        return problem.withSpace(problem.space().withGrid(grid.dividedBy(times, Rounding.DOWN)));
    }

    private static void compare(Problem problem, int... times) {
        double bound = BestPattern.boundOffGrid(
                problem.solid(), problem.saw(), problem.options(), problem.space(), problem.cost());
        double best = 0;
        for (int each : times) {
            double value = finer(problem, each).value();
            assertThat(value).isLessThanOrEqualTo(bound);
            best = Math.max(best, value);
        }
        count("the bound is reached by the finest grid", best == bound && best > 0, 1);
        count("a finer grid is worth more", best > problem.value(), 1);
        count("the bound is above the finest grid", best < bound, 1);
    }

    @Property(tries = 400)
    void aSearchThatStopsGivesABoundOnTheOptimum(@ForAll long seed) {
        Problem whole = Problem.random(seed, true);
        long most = new Random(seed).nextInt(3);
        Problem stopped = whole.withSpace(whole.space().withMostCantsOpened(most));
        double optimum = whole.value();
        Optional<SawingPlan> found = stopped.plan();
        if (found.isEmpty()) {
            return;
        }
        SawingPlan plan = found.get();
        Proof proof = plan.proof();
        assertThat(proof.cantsOpened()).isLessThanOrEqualTo(most);
        assertThat(proof.objective()).isLessThanOrEqualTo(optimum);
        assertThat(proof.bound()).isGreaterThanOrEqualTo(optimum);
        assertThat(proof.verdict() == Proof.Verdict.PROVEN_OPTIMAL).isEqualTo(proof.bound() == proof.objective());
        assertThat(Verifier.verify(plan)).isEmpty();
        assertThat(stopped.plan()).isEqualTo(found);
        count("the search stopped", proof.verdict() == Proof.Verdict.BEST_FOUND, 1);
        count("and was worth less", proof.objective() < optimum, 1);
    }

    private static void count(String what, boolean holds, double leastPercent) {
        Statistics.label(what)
                .collect(holds)
                .coverage(cases -> cases.check(true).percentage(share -> share > leastPercent));
    }

    /** The limit is said where the space is. */
    @Test
    void theLimitIsPartOfTheSpace() {
        assertThat(SearchSpace.standard().withMostCantsOpened(7).words()).contains("At most 7 cants");
    }
}
