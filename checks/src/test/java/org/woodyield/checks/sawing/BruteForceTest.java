package org.woodyield.checks.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.Stage;
import org.woodyield.sawing.Verifier;

/** The best pattern against the list of all patterns, on logs of a few saw steps. */
class BruteForceTest {

    @Property(tries = 3000)
    void liveSawing(@ForAll long seed) {
        compareAndCount(Problem.random(seed, false));
    }

    @Property(tries = 1000)
    void liveSawingAndCants(@ForAll long seed) {
        compareAndCount(Problem.random(seed, true));
    }

    /** Rot somewhere near the middle of the log, over a part of its length or all of it. */
    @Property(tries = 600)
    void rottenLogs(@ForAll long seed) {
        compareAndCountRot(Problem.random(seed, false).withRandomRot(seed));
    }

    @Property(tries = 150)
    void rottenLogsAndCants(@ForAll long seed) {
        compareAndCountRot(Problem.random(seed, true).withRandomRot(seed));
    }

    /** Flitches that may keep their bark edges, in sound logs and rotten ones. */
    @Property(tries = 1000)
    void flitchesWithBarkEdges(@ForAll long seed) {
        compareAndCountFlitches(Problem.random(seed, false).withRandomFlitch(seed));
    }

    @Property(tries = 300)
    void flitchesWithBarkEdgesAndCants(@ForAll long seed) {
        compareAndCountFlitches(Problem.random(seed, true).withRandomFlitch(seed));
    }

    @Property(tries = 300)
    void flitchesWithBarkEdgesOfRottenLogs(@ForAll long seed) {
        compareAndCountFlitches(Problem.random(seed, false).withRandomRot(seed).withRandomFlitch(seed));
    }

    private static void compareAndCountFlitches(Problem problem) {
        compare(problem);
        problem.plan().ifPresent(plan -> {
            count("bark edge", problem.withoutFlitches().value() < plan.proof().objective());
        });
    }

    private static void compareAndCountRot(Problem problem) {
        BruteForce.Best best = compare(problem);
        count("rot", problem.withSolid(problem.sound()).value() > best.value() / 1e6);
    }

    /** Corners that lie on the outline exactly: 3, 4 and 5. */
    @Test
    void aFaceThatOnlyTouchesTheWood() {
        for (int kerf = 1; kerf <= 4; kerf++) {
            compare(MonotoneTest.cylinder(5, kerf, 1, 0, false, 4, 6));
            compare(MonotoneTest.cylinder(5, kerf, 1, 0, false, 2, 5));
        }
    }

    private static BruteForce.Best compare(Problem problem) {
        BruteForce.Best best = BruteForce.best(problem);
        Optional<SawingPlan> found = problem.plan();
        assertThat(found.map(plan -> plan.proof().objective()).orElse(0.0)).isEqualTo(best.value() / 1e6);
        if (found.isPresent()) {
            SawingPlan plan = found.get();
            assertThat(Verifier.verify(plan)).isEmpty();
            if (!problem.space().cants()) {
                // Among equals the one that the rule names.
                assertThat(levelPasses(plan)).isEqualTo(best.heights());
            }
        }
        return best;
    }

    private static void compareAndCount(Problem problem) {
        BruteForce.Best best = compare(problem);
        problem.plan().ifPresent(plan -> problem.binding(plan, best.equals()).forEach(BruteForceTest::count));
    }

    /** Counts the cases, which are printed, and asks for a share that the random problems exceed by far. */
    private static void count(String what, boolean binds) {
        Statistics.label(what + " binds")
                .collect(binds)
                .coverage(cases -> cases.check(true).percentage(share -> share > 1));
    }

    private static List<Length> levelPasses(SawingPlan plan) {
        return plan.passes().stream()
                .filter(pass -> pass.stage() == Stage.LIVE)
                .map(pass -> pass.kerf().bottom())
                .toList();
    }
}
