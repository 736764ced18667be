package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

class BestPatternTest {

    private static final SearchSpace SPACE = SearchSpace.standard().withGrid(Length.inches(1, 8));

    static Saw saw(Saw.Reference reference) {
        return new Saw(
                "test saw",
                Length.inches(1, 4),
                Length.inches(40),
                Length.inches(1, 8),
                reference,
                Length.ZERO,
                Length.ZERO);
    }

    static LogSolid cone(double smallInches, double largeInches, double feet) {
        return LogSolid.of(
                List.of(
                        new Station(0, smallInches * 0.0127, 0, 0),
                        new Station(feet * 0.3048, largeInches * 0.0127, 0, 0)),
                1,
                Length.inches(1, 2));
    }

    static PieceOption size(int thicknessEighths, int widthEighths, long... feet) {
        List<LengthWorth> lengths = new ArrayList<>();
        for (long each : feet) {
            lengths.add(new LengthWorth(Length.feet(each), (double) thicknessEighths * widthEighths * each));
        }
        return PieceOption.fixed(
                thicknessEighths + "x" + widthEighths,
                Length.inches(thicknessEighths, 8),
                Length.inches(widthEighths, 8),
                lengths);
    }

    static List<PieceOption> sizes() {
        return List.of(size(9, 33, 8, 10, 12), size(9, 49, 8, 10, 12), size(14, 33, 8, 10, 12), size(14, 49, 8, 12));
    }

    /** A size of 30 in, and the log has 14. */
    @Test
    void aSizeThickerThanTheLogIsLeftOut() {
        List<PieceOption> more = new ArrayList<>(sizes());
        more.add(size(240, 240, 8));
        SawingPlan with = BestPattern.find(
                cone(12, 14, 12), saw(Saw.Reference.BED), more, SPACE.withCants(true), PassCost.each(20));
        SawingPlan without = BestPattern.find(
                cone(12, 14, 12), saw(Saw.Reference.BED), sizes(), SPACE.withCants(true), PassCost.each(20));
        assertThat(with.pieces()).isEqualTo(without.pieces());
    }

    @ParameterizedTest
    @EnumSource
    void theWoodAddsUpAndThePiecesLieInsideTheLog(Saw.Reference reference) {
        LogSolid solid = cone(12, 14, 12);
        SawingPlan plan = BestPattern.find(solid, saw(reference), sizes(), SPACE, PassCost.each(20));
        double volume = solid.volume().cubicMetres();
        assertThat(plan.balance().sum().cubicMetres()).isCloseTo(volume, within(volume * 1e-9));
        assertThat(plan.pieces()).isNotEmpty();
        for (SawnPiece piece : plan.pieces()) {
            for (Length u : List.of(piece.faces().left(), piece.faces().right())) {
                for (Length v : List.of(piece.faces().bottom(), piece.faces().top())) {
                    for (Length z : List.of(piece.start(), piece.end())) {
                        double grow = 1 - 1e-9;
                        assertThat(solid.contains(u.toMetres() * grow, v.toMetres() * grow, z.toMetres() * grow))
                                .as("%s at %s, %s, %s", piece.number(), u, v, z)
                                .isTrue();
                    }
                }
            }
        }
    }

    @Test
    void noTwoPiecesStandCloserThanAKerf() {
        SawingPlan plan = BestPattern.find(cone(12, 14, 12), saw(Saw.Reference.BED), sizes(), SPACE, PassCost.free());
        long kerf = plan.saw().kerf().toNanometres();
        for (SawnPiece a : plan.pieces()) {
            for (SawnPiece b : plan.pieces()) {
                if (a.number() < b.number()) {
                    long across = gap(
                            a.faces().left(),
                            a.faces().right(),
                            b.faces().left(),
                            b.faces().right());
                    long upright = gap(
                            a.faces().bottom(),
                            a.faces().top(),
                            b.faces().bottom(),
                            b.faces().top());
                    assertThat(Math.max(across, upright)).isGreaterThanOrEqualTo(kerf);
                }
            }
        }
    }

    private static long gap(Length from, Length to, Length otherFrom, Length otherTo) {
        return Math.max(otherFrom.minus(to).toNanometres(), from.minus(otherTo).toNanometres());
    }

    @Test
    void objectiveIsWorthLessPassesAndReachesTheBoundWhereProven() {
        SawingPlan plan = BestPattern.find(cone(12, 14, 12), saw(Saw.Reference.BED), sizes(), SPACE, PassCost.each(20));
        Proof proof = plan.proof();
        double worth = plan.pieces().stream().mapToDouble(SawnPiece::worth).sum();
        assertThat(worth).isCloseTo(proof.worth(), within(1e-6));
        assertThat(proof.passCost()).isCloseTo(20.0 * plan.passes().size(), within(1e-6));
        assertThat(proof.worth() - proof.passCost()).isCloseTo(proof.objective(), within(1e-6));
        assertThat(proof.verdict()).isEqualTo(Proof.Verdict.PROVEN_OPTIMAL);
        assertThat(proof.bound()).isCloseTo(proof.objective(), within(1e-6));
    }

    @Test
    void oneBoardThatFillsTheLogIsFound() {
        // The square in a 10 in circle has a side of 7.07 in; one of 7 in fits on the grid, one of 7 1/8 in does not.
        LogSolid solid = cone(10, 10, 8);
        SawingPlan plan =
                BestPattern.find(solid, saw(Saw.Reference.BED), List.of(size(56, 56, 8)), SPACE, PassCost.free());
        assertThat(plan.pieces()).hasSize(1);
        assertThatThrownBy(() -> BestPattern.find(
                        solid, saw(Saw.Reference.BED), List.of(size(57, 57, 8)), SPACE, PassCost.free()))
                .isInstanceOf(OutOfDomainException.class);
    }

    @ParameterizedTest
    @EnumSource
    void everyPassCutsWood(Saw.Reference reference) {
        for (PassCost cost : List.of(PassCost.free(), PassCost.each(20))) {
            SawingPlan plan = BestPattern.find(cone(12, 14, 12), saw(reference), sizes(), SPACE, cost);
            assertThat(plan.passes()).allMatch(pass -> pass.widest().isPositive());
        }
    }

    @Test
    void moreChoiceIsNeverWorthLess() {
        LogSolid solid = cone(11, 12, 10);
        double live = objective(solid, SPACE.withCants(false), sizes());
        assertThat(objective(solid, SPACE, sizes())).isGreaterThanOrEqualTo(live);
        assertThat(objective(solid, SPACE, sizes()))
                .isGreaterThanOrEqualTo(objective(solid, SPACE, sizes().subList(0, 2)));
    }

    private static double objective(LogSolid solid, SearchSpace space, List<PieceOption> options) {
        return BestPattern.find(solid, saw(Saw.Reference.BED), options, space, PassCost.each(10))
                .proof()
                .objective();
    }

    @Test
    void aSawTooNarrowIsRefusedByThePassThatItCannotMake() {
        Saw narrow = new Saw(
                "narrow",
                Length.inches(1, 4),
                Length.inches(3),
                Length.inches(1, 8),
                Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
        assertThatThrownBy(() ->
                        BestPattern.find(cone(20, 22, 8), narrow, List.of(size(14, 49, 8)), SPACE, PassCost.free()))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("width of cut");
    }

    @Test
    void moreWaneNeverDoesHarm() {
        LogSolid solid = cone(7, 7, 8);
        double before = 0;
        for (int tenths = 0; tenths <= 10; tenths++) {
            List<PieceOption> waned = List.of(size(40, 44, 8).withWane(new Wane(tenths / 10.0, tenths / 10.0)));
            double worth = BestPattern.findAny(solid, saw(Saw.Reference.BED), waned, SPACE, PassCost.free())
                    .map(plan -> plan.proof().worth())
                    .orElse(0.0);
            assertThat(worth).as("%s tenths", tenths).isGreaterThanOrEqualTo(before);
            before = worth;
        }
        assertThat(before).isPositive();
    }

    @Test
    void aFlitchThickerThanTheSawIsWideIsNotEdged() {
        Saw narrow = new Saw(
                "narrow",
                Length.inches(1, 4),
                Length.inches(6),
                Length.inches(1, 8),
                Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
        // Level passes 3 1/2 in off the axis are narrow enough; the edges between them are 7 in thick.
        assertThat(BestPattern.findAny(
                        cone(9, 9, 8), narrow, List.of(size(56, 32, 8)), SPACE.withCants(false), PassCost.free()))
                .isEmpty();
        assertThat(BestPattern.findAny(
                        cone(9, 9, 8),
                        saw(Saw.Reference.BED),
                        List.of(size(56, 32, 8)),
                        SPACE.withCants(false),
                        PassCost.free()))
                .isPresent();
    }
}
