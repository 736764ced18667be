package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.FlatnessBudget.ForPiece;
import org.woodyield.sawing.FlatnessBudget.Guide;

class FlatnessBudgetTest {

    private static final SearchSpace SPACE = SearchSpace.standard().withGrid(Length.inches(1, 8));
    private static final Length ALLOWANCE = Length.inches(1, 8);
    private static final Length LOG = Length.feet(12);

    private static final SawingPlan RIDING = plan(Saw.Reference.PREVIOUS_FACE);
    private static final SawingPlan OVER_BED = plan(Saw.Reference.BED);

    private static SawingPlan plan(Saw.Reference reference) {
        return BestPattern.find(
                BestPatternTest.cone(14, 16, 12),
                BestPatternTest.saw(reference),
                BestPatternTest.sizes(),
                SPACE,
                PassCost.each(20));
    }

    @Test
    void ridingTheFaceBeforeEveryPieceCarriesTheErrorOfTheGuide() {
        FlatnessBudget budget = FlatnessBudget.ofGuide(RIDING, new Guide(LOG, Length.inches(1, 8), 1), ALLOWANCE);
        assertThat(budget.pieces()).hasSameSizeAs(RIDING.pieces());
        ForPiece first = budget.pieces().get(0);
        SawnPiece piece = RIDING.pieces().get(0);
        double share = piece.length().toInches() / 144;
        double wind = piece.width().toInches() * Math.PI / 180 * share / 2;
        double arc = 0.125 * share * share;
        assertThat(first.lossInches()).isCloseTo(FlatLoss.bothInches(wind, arc), within(1e-12));
        assertThat(first.allowanceShare()).isCloseTo(first.lossInches() / 0.125, within(1e-12));
        assertThat(budget.underTarget())
                .isEqualTo(budget.pieces().stream()
                        .filter(one -> one.lossInches() > 0.125)
                        .count());
    }

    @Test
    void aTrueGuideCostsNothing() {
        FlatnessBudget budget = FlatnessBudget.ofGuide(RIDING, new Guide(LOG, Length.ZERO, 0), Length.ZERO);
        assertThat(budget.underTarget()).isZero();
        assertThat(budget.greatestShare()).isZero();
    }

    @Property(tries = 100)
    void withinTheLimitsNoPieceLosesMoreThanTheShare(@ForAll @DoubleRange(min = 0.05, max = 1) double share) {
        Guide limits = FlatnessBudget.limits(RIDING, LOG, ALLOWANCE, share);
        assertThat(greatest(new Guide(LOG, limits.dip(), 0))).isCloseTo(share, within(1e-6));
        assertThat(greatest(new Guide(LOG, Length.ZERO, limits.windDegrees()))).isCloseTo(share, within(1e-9));
        Length half = limits.dip().dividedBy(2, Rounding.DOWN);
        assertThat(greatest(new Guide(LOG, half, limits.windDegrees() / 2))).isLessThanOrEqualTo(share * (1 + 1e-9));
    }

    private static double greatest(Guide guide) {
        return FlatnessBudget.ofGuide(RIDING, guide, ALLOWANCE).greatestShare();
    }

    @Test
    void aWorseGuideLeavesNoFewerUnderTarget() {
        long before = 0;
        for (int eighths = 0; eighths < 20; eighths++) {
            long now = FlatnessBudget.ofGuide(RIDING, new Guide(LOG, Length.inches(eighths, 8), 0), ALLOWANCE)
                    .underTarget();
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isEqualTo(RIDING.pieces().size());
    }

    @Test
    void overABedAnErrorStaysBesideItsPass() {
        List<SawPass> live = OVER_BED.passes().stream()
                .filter(pass -> pass.stage() == Stage.LIVE)
                .toList();
        for (SawPass pass : live) {
            FlatnessBudget one = FlatnessBudget.ofPass(OVER_BED, pass.number(), Length.inches(1, 16), false, ALLOWANCE);
            List<Integer> beside = OVER_BED.pieces().stream()
                    .filter(piece -> !piece.fromCant())
                    .filter(piece -> piece.faces().top().equals(pass.kerf().bottom())
                            || piece.faces().bottom().equals(pass.kerf().top()))
                    .map(SawnPiece::number)
                    .toList();
            assertThat(one.pieces().stream().map(ForPiece::number)).isEqualTo(beside);
            assertThat(one.pieces()).allMatch(piece -> piece.lossInches() == 0.0625 && !piece.underTarget());
        }
    }

    @Test
    void onABadBearingThePassesAfterItGoWrongTooAndSoDoBothFaces() {
        FlatnessBudget one = FlatnessBudget.ofPass(OVER_BED, 1, Length.parse("0.1 in"), false, ALLOWANCE);
        FlatnessBudget all = FlatnessBudget.ofPass(OVER_BED, 1, Length.parse("0.1 in"), true, ALLOWANCE);
        assertThat(all.pieces().size()).isGreaterThan(one.pieces().size());
        assertThat(all.underTarget()).isPositive();
        assertThat(all.pieces()).anyMatch(piece -> Math.abs(piece.lossInches() - 0.2) < 1e-12);
    }

    @Test
    void whatDoesNotFitIsRefused() {
        Guide guide = new Guide(LOG, Length.ZERO, 0);
        assertThatThrownBy(() -> FlatnessBudget.ofGuide(OVER_BED, guide, ALLOWANCE))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("saw's reference");
        assertThatThrownBy(() -> FlatnessBudget.ofPass(RIDING, 1, Length.ZERO, false, ALLOWANCE))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatnessBudget.ofPass(OVER_BED, 999, Length.ZERO, false, ALLOWANCE))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("number of the pass is 999");
        Guide shorter = new Guide(Length.feet(6), Length.ZERO, 0);
        assertThatThrownBy(() -> FlatnessBudget.ofGuide(RIDING, shorter, ALLOWANCE))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Guide(LOG, Length.ZERO, Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Guide(Length.ZERO, Length.ZERO, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatnessBudget.limits(RIDING, LOG, Length.ZERO, 0.5))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FlatnessBudget.limits(RIDING, LOG, ALLOWANCE, Double.NaN))
                .isInstanceOf(OutOfDomainException.class);
    }
}
