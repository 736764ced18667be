package org.woodyield.checks.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PieceOption;

/** What rounding sizes up to the saw's step costs. */
class SettingStepTest {

    private static double cost(Problem problem) {
        return BestPattern.costOfSettingStep(
                problem.solid(), problem.saw(), problem.options(), problem.space(), problem.cost());
    }

    @Test
    void sizesThatCanBeSetCostNothing() {
        assertThat(cost(MonotoneTest.cylinder(6.3, 1, 1, 0, false, 2, 4))).isZero();
    }

    /** A square of 34 mm fits a cylinder of 50 mm across, one of 36 mm does not. */
    @Test
    void aSizeThatFitsOnlyAsItIsCostsItsWholeWorth() {
        Length side = Length.millimetres(34);
        Problem problem = MonotoneTest.cylinder(6.25, 1, 1, 0, false, 2, 4)
                .withOptions(List.of(
                        PieceOption.fixed("post", side, side, List.of(new LengthWorth(Length.millimetres(3000), 7)))));
        assertThat(problem.plan()).isEmpty();
        assertThat(cost(problem.withSpace(problem.space().withGrid(Length.millimetres(1)))))
                .isEqualTo(7);
    }
}
