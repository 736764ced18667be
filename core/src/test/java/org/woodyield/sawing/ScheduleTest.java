package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.SawPass.KerfSide;

/** The cut schedule as a sawyer reads it: what is set, on which side the kerf lies, and what each pass is for. */
class ScheduleTest {

    private static final SearchSpace SPACE = SearchSpace.standard().withGrid(Length.inches(1, 8));

    private static SawingPlan plan(Saw.Reference reference) {
        // A pass that costs something makes a cant worth its while.
        return BestPattern.find(
                BestPatternTest.cone(14, 16, 12),
                BestPatternTest.saw(reference),
                BestPatternTest.sizes(),
                SPACE,
                PassCost.each(60));
    }

    @Test
    void ridingTheFaceBeforeTheSettingIsTheThicknessAndTheKerfLiesBeyondIt() {
        SawingPlan plan = plan(Saw.Reference.PREVIOUS_FACE);
        Length kerf = plan.saw().kerf();
        SawPass before = plan.passes().get(0);
        assertThat(before.kerfSide()).isEqualTo(KerfSide.ABOVE);
        for (SawPass pass : live(plan).subList(1, live(plan).size())) {
            // The face before, less the setting, is the line; the kerf lies below it.
            Length rode = before.kerf().bottom();
            assertThat(pass.setting()).isEqualTo(rode.minus(pass.kerf().top()));
            assertThat(pass.kerfSide()).isEqualTo(KerfSide.BELOW);
            assertThat(pass.faceHeight()).isEqualTo(pass.kerf().top());
            assertThat(pass.kerf().height()).isEqualTo(kerf);
            before = pass;
        }
    }

    @Test
    void overABedHeightsFallByThicknessAndKerf() {
        SawingPlan plan = plan(Saw.Reference.BED);
        List<SawPass> live = live(plan);
        for (int i = 1; i < live.size(); i++) {
            Length fall = live.get(i - 1).setting().minus(live.get(i).setting());
            Length thickness =
                    live.get(i - 1).kerf().bottom().minus(live.get(i).kerf().top());
            assertThat(fall).isEqualTo(thickness.plus(plan.saw().kerf()));
            assertThat(live.get(i).kerfSide()).isEqualTo(KerfSide.ABOVE);
            assertThat(live.get(i).faceHeight()).isEqualTo(live.get(i).kerf().bottom());
        }
    }

    private static List<SawPass> live(SawingPlan plan) {
        return plan.passes().stream().filter(pass -> pass.stage() == Stage.LIVE).toList();
    }

    @ParameterizedTest
    @EnumSource
    void everyEdgingPassNamesItsFlitchAndEveryPieceIsNamed(Saw.Reference reference) {
        SawingPlan plan = plan(reference);
        List<String> freed = plan.passes().stream()
                .filter(pass -> pass.stage() != Stage.EDGE)
                .map(SawPass::comesOff)
                .toList();
        for (SawPass pass : plan.passes()) {
            if (pass.stage() == Stage.EDGE) {
                assertThat(pass.comesOff()).matches("(piece \\d+|an edging) of flitch \\d+");
                String flitch = pass.comesOff().substring(pass.comesOff().indexOf("flitch"));
                assertThat(freed).anyMatch(text -> text.startsWith(flitch + ", "));
            }
        }
        for (SawnPiece piece : plan.pieces()) {
            assertThat(freed).as("piece %s", piece.number()).anyMatch(text -> holds(text, piece.number()));
        }
        assertThat(plan.passes()).anyMatch(pass -> pass.stage() == Stage.EDGE);
    }

    /** Whether "with piece 3" or "with pieces 2 to 4" holds a number. */
    private static boolean holds(String text, int number) {
        Matcher held = Pattern.compile(", with pieces? (\\d+)(?: to (\\d+))?$").matcher(text);
        if (!held.find()) {
            return false;
        }
        int first = Integer.parseInt(held.group(1));
        int last = held.group(2) == null ? first : Integer.parseInt(held.group(2));
        return first <= number && number <= last;
    }

    @Test
    void aSawTooNarrowIsToldByPassAndRemedy() {
        Saw narrow = new Saw(
                "narrow",
                Length.inches(1, 4),
                Length.inches(3),
                Length.inches(1, 8),
                Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
        assertThatThrownBy(() -> BestPattern.find(
                        BestPatternTest.cone(20, 22, 8),
                        narrow,
                        List.of(BestPatternTest.size(14, 49, 8)),
                        SPACE,
                        PassCost.free()))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageMatching(
                        "(?s).*for this log no less than its pass \\d+ \\(.+\\) is wide over the bark at its widest, \\d+ mm.*")
                .hasMessageContaining("flatten the log from two sides first, quarter it, take off the bark");
    }

    @Test
    void aSizeThatFitsNoLogIsToldWithTheLog() {
        assertThatThrownBy(() -> BestPattern.find(
                        BestPatternTest.cone(6, 7, 8),
                        BestPatternTest.saw(Saw.Reference.BED),
                        List.of(BestPatternTest.size(64, 64, 8)),
                        SPACE,
                        PassCost.free()))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("none that fits a log of 152 mm at the small end")
                .hasMessageContaining("add a smaller or shorter size");
    }
}
