package org.woodyield.checks.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.woodyield.sawing.SawingPlan;

/** The best pattern against a general solver; the profile {@code integer} brings the solver and this class. */
@Tag("integer")
class IntegerModelTest {

    private static final int PROBLEMS = 200;

    @Test
    void sameValueAsTheIntegerProgram() {
        Loader.loadNativeLibraries();
        Map<String, Integer> counts = new TreeMap<>();
        for (long seed = 0; seed < PROBLEMS; seed++) {
            Problem problem = Problem.random(seed, true);
            Optional<SawingPlan> plan = problem.plan();
            assertThat(plan.map(one -> one.proof().objective()).orElse(0.0))
                    .as("seed %s", seed)
                    .isEqualTo(IntegerModel.best(problem) / 1e6);
            plan.ifPresentOrElse(
                    one -> problem.binding(one, BruteForce.best(problem).equals())
                            .forEach((what, binds) -> counts.merge(what, binds ? 1 : 0, Integer::sum)),
                    () -> counts.merge("nothing to saw", 1, Integer::sum));
        }
        System.out.println("Integer program, " + PROBLEMS + " problems, of these with what binds: " + counts);
        assertThat(counts.values()).allMatch(count -> count > 0);
    }
}
