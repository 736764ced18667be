package org.woodyield.checks.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.woodyield.sawing.SawingPlan;

/** The best pattern against a general solver; the profile {@code integer} brings the solver and this class. */
@Tag("integer")
class IntegerModelTest {

    private static final int PROBLEMS = 200;
    private static final int FEWER_PROBLEMS = 60;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @Test
    void sameValueAsTheIntegerProgram() {
        Map<String, Integer> counts = new TreeMap<>();
        for (long seed = 0; seed < PROBLEMS; seed++) {
            Problem problem = Problem.random(seed, true);
            compare(problem, seed)
                    .ifPresentOrElse(
                            plan -> problem.binding(plan, BruteForce.best(problem).equals())
                                    .forEach((what, binds) -> count(counts, what, binds)),
                            () -> count(counts, "nothing to saw", true));
        }
        print(PROBLEMS, counts);
    }

    @Test
    void sameValueForRottenLogs() {
        Map<String, Integer> counts = new TreeMap<>();
        for (long seed = 0; seed < FEWER_PROBLEMS; seed++) {
            Problem problem = Problem.random(seed, true).withRandomRot(seed);
            double value = compare(problem, seed)
                    .map(plan -> plan.proof().objective())
                    .orElse(0.0);
            count(counts, "rot", problem.withSolid(problem.sound()).value() > value);
        }
        print(FEWER_PROBLEMS, counts);
    }

    @Test
    void sameValueForFlitchesWithBarkEdges() {
        Map<String, Integer> counts = new TreeMap<>();
        for (long seed = 0; seed < FEWER_PROBLEMS; seed++) {
            Problem sound = Problem.random(seed, true).withRandomFlitch(seed);
            Problem problem = seed % 3 == 0 ? sound.withRandomRot(seed) : sound;
            double value = compare(problem, seed)
                    .map(plan -> plan.proof().objective())
                    .orElse(0.0);
            count(counts, "bark edge", problem.withoutFlitches().value() < value);
        }
        print(FEWER_PROBLEMS, counts);
    }

    private static Optional<SawingPlan> compare(Problem problem, long seed) {
        Optional<SawingPlan> plan = problem.plan();
        assertThat(plan.map(one -> one.proof().objective()).orElse(0.0))
                .as("seed %s", seed)
                .isEqualTo(IntegerModel.best(problem) / 1e6);
        return plan;
    }

    private static void count(Map<String, Integer> counts, String what, boolean binds) {
        counts.merge(what, binds ? 1 : 0, Integer::sum);
    }

    private static void print(int problems, Map<String, Integer> counts) {
        System.out.println("Integer program, " + problems + " problems, of these with what binds: " + counts);
        assertThat(counts.values()).allMatch(count -> count > 0);
    }
}
