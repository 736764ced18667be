package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.StemPoint;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.TimberTrees.Answer;
import org.woodyield.plan.TimberTrees.Tree;
import org.woodyield.sawing.SquaredTimber;
import org.woodyield.sawing.Wane;

/** Which trees give a timber. */
class TimberTreesTest {

    private static Tree tree(String id, double atGround) {
        return new Tree(id, new MeasuredStem(List.of(new StemPoint(0, atGround), new StemPoint(50, atGround - 5))));
    }

    private static TimberTrees wanted(Wane wane) {
        return new TimberTrees(
                new SquaredTimber(Length.inches(8), Length.inches(8), wane),
                Length.feet(12),
                Length.feet(1),
                Length.inches(3, 8));
    }

    @Test
    void eightByEightTwelveFeetLong() {
        // At 13 ft the stem is 1.3 in thinner than at the ground: 12.7 in there leave 11.4 in, sharp needs 11.31 in.
        List<Tree> trees = List.of(tree("thin", 12), tree("just", 12.7), tree("thick", 16));
        List<Answer> sharp = wanted(Wane.NONE).holding(trees);
        assertThat(sharp).extracting(answer -> answer.tree().id()).containsExactly("just", "thick");
        // 16 in: at 13, 25.03 and 37.06 ft 14.7, 13.5 and 12.3 in; at 49.09 ft 11.09 in are too thin.
        assertThat(sharp).extracting(Answer::timbers).containsExactly(1, 3);
        assertThat(sharp.get(0).spareInches()).isCloseTo(11.4 - Math.sqrt(128), within(1e-9));
        assertThat(wanted(new Wane(0.25, 0.25)).holding(trees)).hasSize(3);
    }

    @Test
    void theWorkingHasTheBitsOfTheAnswer() {
        for (double inches = 8; inches < 20; inches += 0.37) {
            Tree tree = tree("A", inches);
            assertThat(wanted(Wane.NONE).working(tree).value())
                    .isEqualTo(wanted(Wane.NONE).ask(tree).spareInches());
        }
    }

    @Test
    void aProfileThatDoesNotReachIsRefused() {
        Tree shortStem = new Tree("S", new MeasuredStem(List.of(new StemPoint(0, 14), new StemPoint(12, 13))));
        assertThatThrownBy(() -> wanted(Wane.NONE).ask(shortStem)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new TimberTrees(
                        new SquaredTimber(Length.inches(8), Length.inches(8), Wane.NONE),
                        Length.ZERO,
                        Length.ZERO,
                        Length.ZERO))
                .hasMessageContaining("log for a timber");
    }
}
