package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.SawComparison.ForSaw;
import org.woodyield.sawing.SawingSensitivity.Change;
import org.woodyield.sawing.SawingSensitivity.Outcome;

/** One log with one thing otherwise, and two saws on the same logs. */
class WhatIfOfALogTest {

    private static final Length GRID = Length.inches(1, 8);
    private static final SearchSpace SPACE = SearchSpace.standard().withGrid(GRID);
    private static final LogSolid LOG = BestPatternTest.cone(10, 12, 12);
    private static final Saw SAW = BestPatternTest.saw(Saw.Reference.PREVIOUS_FACE);

    private static SawingSensitivity ask(List<Change> changes) {
        return SawingSensitivity.of(LOG, SAW, BestPatternTest.sizes(), SPACE, saw -> PassCost.each(20), changes);
    }

    @Test
    void theBestOfAllFirstHeightsIsTheBestOfTheLog() {
        List<Change> heights = new ArrayList<>();
        for (int eighths = -52; eighths <= 52; eighths++) {
            heights.add(new Change.FirstHeight(Length.inches(eighths, 8)));
        }
        SawingSensitivity answers = ask(heights);
        double best = 0;
        for (int i = 0; i < heights.size(); i++) {
            Outcome one = answers.changed().get(i);
            best = Math.max(best, one.objective());
            Length height = Length.inches(i - 52, 8);
            one.plan().ifPresent(plan -> {
                assertThat(FirstCut.of(plan).height()).isEqualTo(height);
                assertThat(Verifier.verify(plan)).isEmpty();
                assertThat(plan.proof().searchSpace()).contains("first face at ");
            });
        }
        assertThat(answers.base().objective()).isPositive().isCloseTo(best, within(1e-9));
        assertThat(answers.changed().get(0).objective()).isLessThan(best);
    }

    @Test
    void anotherKerfAnInchMoreAndOneSizeMore() {
        SawingSensitivity answers = ask(List.of(
                new Change.Kerf(Length.inches(1, 8)),
                new Change.Kerf(Length.inches(1, 2)),
                new Change.Diameter(Length.inches(1)),
                new Change.Diameter(Length.inches(-1)),
                new Change.OneMoreSize(BestPatternTest.size(8, 25, 8, 10, 12))));
        List<Outcome> changed = answers.changed();
        double base = answers.base().objective();
        assertThat(changed.get(0).objective()).isGreaterThan(base);
        assertThat(changed.get(1).objective()).isLessThan(base);
        // A log that holds the old one, and a list that holds the old one, are never worth less.
        assertThat(changed.get(2).objective()).isGreaterThan(base);
        assertThat(changed.get(3).objective()).isLessThan(base);
        assertThat(changed.get(4).objective()).isGreaterThanOrEqualTo(base);
        assertThat(changed.get(1).plan().orElseThrow().saw().kerf()).isEqualTo(Length.inches(1, 2));
        assertThat(changed.get(2).plan().orElseThrow().solid().section(0).halfLongMetres())
                .isCloseTo(5.5 * 0.0254, within(1e-12));
        assertThat(changed)
                .allSatisfy(one ->
                        assertThat(Verifier.verify(one.plan().orElseThrow())).isEmpty());
        assertThat(changed.get(0).what()).isEqualTo("kerf " + Length.inches(1, 8));
    }

    @Test
    void aFirstHeightOffTheGridIsRefused() {
        assertThatThrownBy(() -> ask(List.of(new Change.FirstHeight(Length.parse("3 1/16 in")))))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("height of the first face");
    }

    @Test
    void overABedAFirstHeightOffTheSawsStepIsRefused() {
        SearchSpace fine = SPACE.withGrid(Length.inches(1, 16)).withFirstFace(Length.parse("3 1/16 in"));
        assertThatThrownBy(() -> BestPattern.find(
                        LOG, BestPatternTest.saw(Saw.Reference.BED), BestPatternTest.sizes(), fine, PassCost.free()))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("stands on the saw's step");
    }

    @Test
    void twoSawsOnTheSameLogs() {
        List<LogSolid> logs = List.of(LOG, BestPatternTest.cone(13, 14, 10));
        Saw thin = SAW.withKerf(Length.inches(1, 8));
        SawComparison two =
                SawComparison.of(logs, List.of(SAW, thin), BestPatternTest.sizes(), SPACE, saw -> PassCost.each(20));
        ForSaw first = two.saws().get(0);
        double worth = 0;
        double kerf = 0;
        int pieces = 0;
        for (LogSolid log : logs) {
            SawingPlan plan = BestPattern.find(log, SAW, BestPatternTest.sizes(), SPACE, PassCost.each(20));
            worth += plan.proof().objective();
            kerf += plan.balance().kerf().cubicMetres();
            pieces += plan.pieces().size();
        }
        assertThat(first.objective()).isCloseTo(worth, within(1e-6));
        assertThat(first.kerf().cubicMetres()).isCloseTo(kerf, within(1e-12));
        assertThat(first.pieces()).isEqualTo(pieces);
        assertThat(first.logsSawn()).isEqualTo(2);
        assertThat(two.moreObjective(0)).isZero();
        assertThat(two.moreObjective(1)).isPositive();
        assertThat(two.moreKerfCubicMetres(1)).isNegative();
        assertThat(two.moreLumberCubicMetres(1))
                .isEqualTo(two.saws().get(1).lumber().cubicMetres()
                        - first.lumber().cubicMetres());
    }

    @Test
    void aSawThatCannotSawALogLeavesItWhole() {
        Saw narrow = new Saw("narrow", SAW.kerf(), Length.inches(1), GRID, SAW.reference(), Length.ZERO, Length.ZERO);
        SawComparison two = SawComparison.of(
                List.of(LOG), List.of(SAW, narrow), BestPatternTest.sizes(), SPACE, saw -> PassCost.free());
        assertThat(two.saws().get(1).logsSawn()).isZero();
        assertThat(two.moreObjective(1)).isNegative();
        assertThatThrownBy(() -> SawComparison.of(
                        List.of(LOG), List.of(SAW), BestPatternTest.sizes(), SPACE, saw -> PassCost.free()))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("saws is 1");
        assertThatThrownBy(() -> SawComparison.of(
                        List.of(), List.of(SAW, narrow), BestPatternTest.sizes(), SPACE, saw -> PassCost.free()))
                .isInstanceOf(OutOfDomainException.class);
    }
}
