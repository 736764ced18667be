package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.working.Working;

class FallDownTest {

    private static FallDown losses(double splits, double warp) {
        return new FallDown(Length.parse("1 1/2 in"), splits, warp);
    }

    @Test
    void sparesAreWholePiecesByHand() {
        // 24 / (0.98 x 0.96) = 25.51; 19 / 0.95 is 20 and no more; nothing lost, nothing spare.
        assertThat(losses(2, 4).piecesToSaw(24)).isEqualTo(26);
        assertThat(losses(5, 0).piecesToSaw(19)).isEqualTo(20);
        assertThat(losses(0, 5).piecesToSaw(95)).isEqualTo(100);
        assertThat(losses(0, 0).piecesToSaw(7)).isEqualTo(7);
        assertThat(losses(2, 4).piecesToSaw(0)).isZero();
    }

    @Property(tries = 500)
    void sparesAreJustEnoughInTheMean(
            @ForAll @DoubleRange(max = 60) double splits,
            @ForAll @DoubleRange(max = 60) double warp,
            @ForAll @IntRange(min = 1, max = 5000) int needed) {
        FallDown losses = losses(splits, warp);
        int sawn = losses.piecesToSaw(needed);
        assertThat(sawn).isGreaterThanOrEqualTo(needed);
        assertThat(sawn * losses.keptShare()).isGreaterThan(needed - 0.00001);
        assertThat((sawn - 1) * losses.keptShare()).isLessThan(needed);
        assertThat(losses.amountToSaw(needed)).isLessThanOrEqualTo(sawn + 0.000001);
    }

    @Property(tries = 300)
    void moreLossNeverLeavesMoreNorAsksForLess(
            @ForAll @DoubleRange(max = 55) double splits,
            @ForAll @DoubleRange(max = 55) double warp,
            @ForAll @DoubleRange(max = 10) double more,
            @ForAll @IntRange(max = 5000) int needed) {
        FallDown less = losses(splits, warp);
        for (FallDown worse : new FallDown[] {losses(splits + more, warp), losses(splits, warp + more)}) {
            assertThat(worse.piecesToSaw(needed)).isGreaterThanOrEqualTo(less.piecesToSaw(needed));
            assertThat(worse.stages(needed, 3, 0.01).usable().value())
                    .isLessThanOrEqualTo(less.stages(needed, 3, 0.01).usable().value());
        }
    }

    @Property(tries = 300)
    void stagesOnlyFallAndTheWorkingGivesTheSameBits(
            @ForAll @DoubleRange(max = 60) double splits,
            @ForAll @DoubleRange(max = 60) double warp,
            @ForAll @DoubleRange(max = 1) double scant,
            @ForAll @DoubleRange(max = 5000) double tally,
            @ForAll @IntRange(max = 500) int needed) {
        FallDown losses = losses(splits, warp);
        double ends = losses.endBoardFeet(tally, Length.feet(8));
        FallDown.Stages stages = losses.stages(tally, ends, scant);
        assertThat(stages.sawn().value()).isGreaterThanOrEqualTo(tally);
        assertThat(stages.dried().value()).isLessThanOrEqualTo(stages.sawn().value());
        assertThat(stages.planed().value()).isLessThanOrEqualTo(stages.dried().value());
        assertThat(stages.usable().value()).isLessThanOrEqualTo(stages.planed().value());
        Working working = losses.stagesWorking(tally, ends, scant);
        assertThat(working.value("sawn")).isEqualTo(stages.sawn().value());
        assertThat(working.value("dried")).isEqualTo(stages.dried().value());
        assertThat(working.value("planed")).isEqualTo(stages.planed().value());
        assertThat(working.value()).isEqualTo(stages.usable().value());
        assertThat(losses.piecesToSawWorking(needed).value()).isEqualTo(losses.piecesToSaw(needed));
    }

    @Test
    void stagesByHand() {
        FallDown.Stages stages = losses(10, 20).stages(100, 3, 0.5);
        assertThat(stages.sawn()).isEqualTo(BoardFeet.tally(103));
        assertThat(stages.dried()).isEqualTo(BoardFeet.tally(90));
        assertThat(stages.planed()).isEqualTo(BoardFeet.tally(45));
        assertThat(stages.usable()).isEqualTo(BoardFeet.usable(36));
        assertThat(stages.plus(stages).usable()).isEqualTo(BoardFeet.usable(72));
    }

    @Test
    void lengthsAreExactAndTheEndsAreCountedByTheirShare() {
        FallDown losses = losses(0, 0);
        assertThat(losses.lengthToSaw(Length.feet(8))).isEqualTo(Length.parse("8 ft 3 in"));
        assertThat(losses.lengthKept(Length.parse("8 ft 3 in"))).isEqualTo(Length.feet(8));
        assertThat(losses.endBoardFeet(16, Length.feet(8))).isCloseTo(16 * 3 / 96.0, within(1e-12));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> losses.lengthKept(Length.inches(3)));
    }

    @Test
    void lumberFinishedGreenLosesNothingInDrying() {
        assertThat(losses(2, 4).of(Surface.DRESSED_GREEN)).isEqualTo(FallDown.NONE);
        assertThat(losses(2, 4).of(Surface.DRESSED_DRY)).isEqualTo(losses(2, 4));
        assertThat(losses(2, 4).of(Surface.ROUGH)).isEqualTo(losses(2, 4));
        FallDown.Stages none = FallDown.NONE.stages(50, 0, 0);
        assertThat(none.usable().value()).isEqualTo(none.sawn().value()).isEqualTo(50);
    }

    @Test
    void refusesLossesAndAmountsThatCannotBe() {
        for (double bad : new double[] {-0.1, 90.1, Double.NaN}) {
            refused(() -> losses(bad, 0));
            refused(() -> losses(0, bad));
        }
        // 90 % of what 90 % leave is 99 %: each share alone would pass.
        refused(() -> losses(90, 90));
        refused(() -> losses(70, 67));
        assertThat(losses(90, 0).keptShare()).isCloseTo(0.1, within(1e-12));
        assertThat(losses(0, 90).keptShare()).isCloseTo(0.1, within(1e-12));
        assertThat(losses(50, 80).keptShare()).isCloseTo(0.1, within(1e-12));
        assertThat(FallDown.together(70, 67)).isCloseTo(90.1, within(1e-9));
        refused(() -> new FallDown(Length.parse("25 in"), 0, 0));
        refused(() -> new FallDown(Length.ZERO.minus(Length.inches(1)), 0, 0));
        refused(() -> losses(2, 4).piecesToSaw(-1));
        refused(() -> losses(2, 4).amountToSaw(Double.NaN));
        refused(() -> losses(2, 4).stages(Double.NaN, 0, 0));
        refused(() -> losses(2, 4).stages(1, -1, 0));
        refused(() -> losses(2, 4).stagesWorking(1, 0, 1.5));
        refused(() -> losses(2, 4).stages(1, 0, Double.NaN));
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(call);
    }

    @Test
    void endTrimIsAcceptedUpToTwoFeetAndWorkingsRefuseAlike() {
        assertThat(new FallDown(Length.inches(24), 0, 0).endTrim()).isEqualTo(Length.inches(24));
        assertThat(losses(0, 0).piecesToSaw(1_000_000)).isEqualTo(1_000_000);
        refused(() -> losses(0, 0).piecesToSaw(1_000_001));
        refused(() -> losses(2, 4).piecesToSawWorking(-1));
        refused(() -> losses(2, 4).endBoardFeet(-1, Length.feet(8)));
        assertThat(losses(2, 4).amountToSaw(94.08)).isCloseTo(100, within(1e-9));
        assertThat(losses(0, 0).lengthKept(Length.parse("3 1/64 in"))).isEqualTo(Length.inches(1, 64));
    }
}
