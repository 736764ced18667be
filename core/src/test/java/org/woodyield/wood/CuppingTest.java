package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

class CuppingTest {

    private static Cupping board(double angle, double radius, double radial, double tangential) {
        return new Cupping(
                Length.inches(8),
                Length.inches(1),
                angle,
                Length.ofInches(radius, org.woodyield.measure.Rounding.HALF_UP),
                radial,
                tangential);
    }

    @Test
    void aFlatSawnBoardHollowsOnItsBarkSideAndRisesOnThePithSide() {
        Cupping board = Cupping.of(
                SpeciesCatalogue.published().find("white oak"),
                8,
                Length.inches(8),
                Length.inches(1),
                0,
                Length.inches(5));
        assertThat(board.depthInches(Cupping.Side.BARK)).isPositive();
        assertThat(board.depthInches(Cupping.Side.PITH)).isPositive();
        // As drawn: round from the pith side, the middle of either face lies nearer to the pith than its edges.
        List<Cupping.Point> dry = board.outline(2, true);
        assertThat(dry.get(1).toBark())
                .isLessThan(Math.min(dry.get(0).toBark(), dry.get(2).toBark()));
        assertThat(dry.get(4).toBark())
                .isLessThan(Math.min(dry.get(3).toBark(), dry.get(5).toBark()));
    }

    /** To second order of w / h: (1 - R) (1 - k^2) / 2 times w^2 / (4 h), h from the pith, k = (1 - T) / (1 - R). */
    @Test
    void aNarrowBoardHollowsAsTheSecondOrderSays() {
        Cupping board = new Cupping(Length.inches(1), Length.parse("0.1 in"), 0, Length.inches(20), 4, 8);
        assertThat(board.depthInches(Cupping.Side.BARK))
                .isCloseTo((0.96 - 0.92 * 0.92 / 0.96) / 2 / (4 * 20.05), within(5e-7));
    }

    @Test
    void aQuarterSawnBoardStaysFlat() {
        assertThat(board(90, 9, 4, 8).depthInches(Cupping.Side.BARK)).isCloseTo(0, within(0.005));
    }

    @Property(tries = 200)
    void equalShrinkageBothWaysLeavesTheShapeAlone(
            @ForAll @DoubleRange(max = 90) double angle, @ForAll @DoubleRange(max = 15) double shrinkage) {
        Cupping board = board(angle, 6, shrinkage, shrinkage);
        assertThat(board.depthInches(Cupping.Side.BARK)).isCloseTo(0, within(1e-12));
        List<Cupping.Point> dry = board.outline(1, true);
        List<Cupping.Point> green = board.outline(1, false);
        for (int i = 0; i < dry.size(); i++) {
            double left = 1 - shrinkage / 100;
            assertThat(dry.get(i).along()).isCloseTo(green.get(i).along() * left, within(1e-12));
            assertThat(dry.get(i).toBark()).isCloseTo(green.get(i).toBark() * left, within(1e-12));
        }
    }

    @Property(tries = 200)
    void moreTangentialShrinkageCupsMoreAndWorkingsGiveTheSameBits(
            @ForAll @DoubleRange(max = 90) double angle,
            @ForAll @DoubleRange(min = 5, max = 30) double radius,
            @ForAll @DoubleRange(min = 4, max = 12) double tangential) {
        Cupping board = board(angle, radius, 4, tangential);
        for (Cupping.Side side : Cupping.Side.values()) {
            assertThat(board.depthWorking(side).value()).isEqualTo(board.depthInches(side));
        }
        assertThat(board(0, radius, 4, tangential + 1).depthInches(Cupping.Side.BARK))
                .isGreaterThan(board(0, radius, 4, tangential).depthInches(Cupping.Side.BARK));
    }

    @Test
    void aBoardThatReachesThePithIsRefused() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> board(90, 4, 4, 8))
                .withMessageContaining("above 4.0 in");
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> board(91, 9, 4, 8));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> board(0, 9, Double.NaN, 8));
    }

    /** At 45 degrees a board of 8 by 1 in reaches (4 + 1/2) / sqrt 2 = 3.182 in towards the pith. */
    @Test
    void aSlantedBoardReachesAsFarAsItsCorner() {
        assertThat(board(45, 3.2, 4, 8).ringRadius()).isEqualTo(Length.parse("3.2 in"));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> board(45, 3.18, 4, 8))
                .withMessageContaining("above 3.182 in");
    }

    @Test
    void theWorkingSaysWhichFaceAndWhetherItIsHollowOrRaised() {
        Cupping board = board(0, 5, 4, 8);
        assertThat(board.depthWorking(Cupping.Side.BARK).title()).endsWith("towards the bark");
        assertThat(board.depthWorking(Cupping.Side.BARK).result().name()).isEqualTo("hollow of the face");
        assertThat(board.depthWorking(Cupping.Side.PITH).title()).endsWith("towards the pith");
        assertThat(board.depthWorking(Cupping.Side.PITH).result().name()).isEqualTo("rise of the face");
    }

    /** From the pith side's first edge along it, then back along the bark side; three steps show where the points lie. */
    @Test
    void theGreenOutlineGoesRoundTheEndInEqualSteps() {
        Cupping board = new Cupping(Length.inches(6), Length.inches(2), 0, Length.inches(5), 4, 8);
        assertThat(board.outline(3, false))
                .containsExactly(
                        new Cupping.Point(-3, -1),
                        new Cupping.Point(-1, -1),
                        new Cupping.Point(1, -1),
                        new Cupping.Point(3, -1),
                        new Cupping.Point(3, 1),
                        new Cupping.Point(1, 1),
                        new Cupping.Point(-1, 1),
                        new Cupping.Point(-3, 1));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> board.outline(0, true));
    }
}
