package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.KerfStack.Last;

class KerfStackTest {

    @Property
    void aBlockGivesTheBoardsThatItWasMadeFor(
            @ForAll @IntRange(min = 1, max = 60) int boards,
            @ForAll @DoubleRange(min = 0.2, max = 4) double thickness,
            @ForAll @DoubleRange(min = 0, max = 0.5) double kerf) {
        double wood = KerfStack.woodNeededInches(boards, thickness, kerf);
        assertThat(KerfStack.boards(wood, thickness, kerf, Last.IS_THE_REST)).isEqualTo(boards);
        assertThat(KerfStack.boards(wood - 0.001, thickness, kerf, Last.IS_THE_REST))
                .isEqualTo(boards - 1);
        assertThat(KerfStack.boards(wood + kerf, thickness, kerf, Last.IS_SAWN_OFF))
                .isEqualTo(boards);
        // Where the last one must be sawn off, a block that is just enough for them gives one less, unless kerfs take
        // nothing.
        assertThat(KerfStack.boards(wood, thickness, kerf, Last.IS_SAWN_OFF)).isBetween(boards - 1.0, (double) boards);
    }

    @Property
    void aThirtySecondOfThicknessCostsAsMuchAsOneOfKerf(
            @ForAll @DoubleRange(min = 2, max = 400) double block,
            @ForAll @DoubleRange(min = 0.5, max = 4) double thickness,
            @ForAll @DoubleRange(min = 0, max = 0.5) double kerf) {
        // Exactly so where every board is sawn off a rest.
        assertThat(KerfStack.boards(block, thickness + 0.03125, kerf, Last.IS_SAWN_OFF))
                .isEqualTo(KerfStack.boards(block, thickness, kerf + 0.03125, Last.IS_SAWN_OFF));
    }

    @Property
    void aWiderKerfNeverGivesMore(
            @ForAll @DoubleRange(min = 0, max = 60) double block,
            @ForAll @DoubleRange(min = 0.5, max = 4) double thickness,
            @ForAll @DoubleRange(min = 0, max = 0.5) double kerf,
            @ForAll @DoubleRange(min = 0, max = 0.5) double more,
            @ForAll Last last) {
        // A block below one board gives none by the kerf that it lacks.
        double high = Math.max(block, thickness);
        assertThat(KerfStack.boards(high, thickness, kerf + more, last))
                .isLessThanOrEqualTo(KerfStack.boards(high, thickness, kerf, last));
        assertThat(KerfStack.yieldPercent(7, thickness, kerf + more))
                .isLessThanOrEqualTo(KerfStack.yieldPercent(7, thickness, kerf))
                .isBetween(0.0, 100.0);
    }

    @Property
    void theWorkingsAgreeBitForBit(
            @ForAll @IntRange(min = 1, max = 60) int boards,
            @ForAll @DoubleRange(min = 0.1, max = 12) double thickness,
            @ForAll @DoubleRange(min = 0, max = 0.5) double kerf,
            @ForAll Last last) {
        assertThat(KerfStack.woodNeededInchesWorking(boards, thickness, kerf).value())
                .isEqualTo(KerfStack.woodNeededInches(boards, thickness, kerf));
        assertThat(KerfStack.boardsWorking(boards, thickness, kerf, last).value())
                .isEqualTo(KerfStack.boards(boards, thickness, kerf, last));
        assertThat(KerfStack.yieldPercentWorking(boards, thickness, kerf).value())
                .isEqualTo(KerfStack.yieldPercent(boards, thickness, kerf));
        assertThat(KerfStack.kerfSolidBoardFeetWorking(thickness, kerf).value())
                .isEqualTo(KerfStack.kerfSolidBoardFeet(thickness, kerf));
        assertThat(CentredCant.sideInchesWorking(thickness).value()).isEqualTo(CentredCant.sideInches(thickness));
        assertThat(CentredCant.slabInchesWorking(thickness).value()).isEqualTo(CentredCant.slabInches(thickness));
    }

    @Property(tries = 200)
    void noRectangleInTheSectionIsLargerThanTheCentredCant(
            @ForAll @DoubleRange(min = 4, max = 40) double across,
            @ForAll @DoubleRange(min = 4, max = 40) double upright,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        double side = across * share;
        double other = upright * Math.sqrt(1 - share * share);
        double largest = CentredCant.sideInches(across) * CentredCant.sideInches(upright);
        assertThat(side * other).isLessThanOrEqualTo(largest * (1 + 1e-12));
        assertThat(CentredCant.sideInches(across) + 2 * CentredCant.slabInches(across))
                .isCloseTo(across, within(1e-12));
    }

    @Test
    void byHand() {
        // 8 in: seven boards of 1 in and six kerfs of 1/8 in are 7.75 in; eight would be 8.875 in.
        assertThat(KerfStack.boards(8, 1, 0.125, Last.IS_THE_REST)).isEqualTo(7);
        assertThat(KerfStack.boards(7.75, 1, 0.125, Last.IS_THE_REST)).isEqualTo(7);
        assertThat(KerfStack.boards(7.75, 1, 0.125, Last.IS_SAWN_OFF)).isEqualTo(6);
        assertThat(KerfStack.kerfSolidBoardFeet(12, 0.25)).isEqualTo(3);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> KerfStack.boards(8, 0, 0.1, Last.IS_THE_REST))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> KerfStack.boards(Double.NaN, 1, 0.1, Last.IS_THE_REST))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> KerfStack.woodNeededInches(0, 1, 0.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> KerfStack.yieldPercent(1, 1, Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> KerfStack.kerfSolidBoardFeet(-1, 0.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CentredCant.sideInches(0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CentredCant.slabInches(Double.NaN)).isInstanceOf(OutOfDomainException.class);
    }
}
