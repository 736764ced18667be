package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.lumber.HardwoodThickness.Surfaced;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Standing;

class HardwoodTest {

    private static final Rounding UP = Rounding.HALF_UP;
    private static final Rounding DOWN = Rounding.HALF_DOWN;

    @ParameterizedTest
    @CsvSource({"5/4,1 1/4 in,5/4", "4/4,1 in,4/4", "3/8,3/8 in,3/8", "24/4,6 in,24/4", "1 1/2 in,1 1/2 in,6/4"})
    void readsAndWritesQuarters(String text, String length, String shown) {
        Length thickness = HardwoodThickness.parse(text);
        assertThat(thickness).isEqualTo(Length.parse(length));
        assertThat(HardwoodThickness.quarters(thickness)).isEqualTo(shown);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "5/3", "0/4", "25/4", "1/4", "-5/4", "5/4/4", "NaN", "5,5/4", "100/4"})
    void refusesWhatIsNoThickness(String text) {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> HardwoodThickness.parse(text));
    }

    @Test
    void refusalsNameTheNearestSizes() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodThickness.quarters(Length.inches(11, 8)))
                .withMessageContaining("nearest: 5/4, 6/4");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodThickness.surfaced(Length.inches(5, 2), Surfaced.TWO_SIDES))
                .withMessageContaining("nearest: 2 in, 3 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodThickness.surfaced(Length.inches(7, 4), Surfaced.ONE_SIDE))
                .withMessageContaining("nearest: 1 1/2 in, 2 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodThickness.kilnDriedInches(1.875))
                .withMessageContaining("7/4, 8/4");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodThickness.variation(Length.inches(9, 4)))
                .withMessageContaining("nearest: 2 in, 2 1/2 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodGrade.named("No. 4 Common"))
                .withMessageContaining("No. 3B Common");
    }

    /** The table was not made by this rule, which holds for each of its rows: a mistyped cell would break it. */
    @Test
    void surfacingTakesTheSameOffThinAndThickLumber() {
        for (HardwoodThickness.Line line : HardwoodThickness.standard()) {
            boolean thin = line.nominal().compareTo(Length.inches(3, 2)) <= 0;
            assertThat(line.nominal().minus(line.twoSides()))
                    .isEqualTo(thin ? Length.inches(3, 16) : Length.inches(1, 4));
            line.oneSide()
                    .ifPresent(one -> assertThat(line.nominal().minus(one))
                            .isEqualTo(thin ? Length.inches(1, 8) : Length.inches(3, 16)));
            assertThat(HardwoodThickness.nominal(line.twoSides(), Surfaced.TWO_SIDES))
                    .contains(line.nominal());
            assertThat(HardwoodThickness.nearestNominal(line.twoSides(), Surfaced.TWO_SIDES))
                    .isEqualTo(line.nominal());
        }
        assertThat(HardwoodThickness.nearestNominal(Length.millimetres(21), Surfaced.TWO_SIDES))
                .isEqualTo(Length.inches(1));
        assertThat(HardwoodThickness.nominal(Length.inches(1), Surfaced.TWO_SIDES))
                .isEmpty();
    }

    @Test
    void aBoardIsMiscutWhereItIsThinOrVariesTooMuch() {
        Length nominal = Length.inches(1);
        assertThat(HardwoodThickness.miscut(nominal, nominal, Length.inches(5, 4)))
                .isFalse();
        assertThat(HardwoodThickness.miscut(nominal, nominal, Length.parse("1.251 in")))
                .isTrue();
        assertThat(HardwoodThickness.miscut(nominal, Length.parse("0.999 in"), nominal))
                .isTrue();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodThickness.miscut(nominal, Length.inches(2), nominal));
        Length before = Length.ZERO;
        for (String thickness : new String[] {"3/8", "4/4", "6/4", "8/4", "14/4", "24/4"}) {
            Length now = HardwoodThickness.variation(HardwoodThickness.parse(thickness));
            assertThat(now).isGreaterThan(before.minus(Length.inches(1, 64)));
            before = now;
        }
        assertThat(before).isEqualTo(Length.inches(5, 8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.375, 1, 1.25, 1.75, 2, 4, 6})
    void kilnDriedThicknessShowsItsWorking(double nominal) {
        assertThat(HardwoodThickness.kilnDriedInchesWorking(nominal).value())
                .isEqualTo(HardwoodThickness.kilnDriedInches(nominal));
        assertThat(nominal - HardwoodThickness.kilnDriedInches(nominal)).isEqualTo(nominal < 2 ? 0.0625 : 0.125);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, 0.37, 6.01, Double.POSITIVE_INFINITY})
    void kilnDriedThicknessIsRefusedOutside(double nominal) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodThickness.kilnDriedInches(nominal));
    }

    @Test
    void surfaceMeasureDropsTheFractionOfAFootAndRoundsHalvesAsTold() {
        assertThat(SurfaceMeasure.squareFeet(6.25, 8.99, UP)).isEqualTo(4);
        assertThat(SurfaceMeasure.squareFeet(5.25, 8.5, UP)).isEqualTo(4);
        assertThat(SurfaceMeasure.squareFeet(5.25, 8.5, DOWN)).isEqualTo(3);
        assertThat(SurfaceMeasure.exact(Length.parse("5 1/4 in"), Length.parse("8 ft 6 in")))
                .hasToString("3 1/2");
    }

    @Test
    void surfaceMeasureRefusesBadInput() {
        for (double bad : new double[] {Double.NaN, 0, -3, 61, Double.POSITIVE_INFINITY}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> SurfaceMeasure.squareFeet(bad, 8, UP));
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> SurfaceMeasure.squareFeet(6, bad, UP));
        }
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SurfaceMeasure.squareFeet(6, 8, Rounding.DOWN));
    }

    @Property(tries = 300)
    void surfaceMeasureKernelExactFractionAndWorkingAgree(
            @ForAll @IntRange(min = 1, max = 960) int sixteenths, @ForAll @DoubleRange(min = 1, max = 40) double feet) {
        double width = sixteenths / 16.0;
        Length length = Length.ofFeet(feet, Rounding.HALF_UP);
        for (Rounding half : new Rounding[] {UP, DOWN}) {
            double kernel = SurfaceMeasure.squareFeet(width, length.toFeet(), half);
            assertThat(kernel)
                    .isEqualTo(SurfaceMeasure.exact(Length.inches(sixteenths, 16), length)
                            .rounded(1, half));
            assertThat(SurfaceMeasure.squareFeetWorking(width, length.toFeet(), half)
                            .value())
                    .isEqualTo(kernel);
        }
    }

    private static HardwoodTally.Board board(String thickness, String width, String length) {
        return new HardwoodTally.Board(HardwoodThickness.parse(thickness), Length.parse(width), Length.parse(length));
    }

    @Test
    void exactHalvesGoUpAndDownAlternately() {
        HardwoodTally tally = new HardwoodTally(Collections.nCopies(3, board("4/4", "5 1/4 in", "8 ft")));
        assertThat(tally.surfaceMeasures(UP)).containsExactly(4L, 3L, 4L);
        assertThat(tally.surfaceMeasures(DOWN)).containsExactly(3L, 4L, 3L);
        assertThat(tally.blocks(UP)).isEqualTo(Map.of(Length.inches(1), Map.of(3L, 1, 4L, 2)));
        assertThat(tally.boardFeet(UP, UP)).isEqualTo(11);
        HardwoodTally ends = new HardwoodTally(Collections.nCopies(2, board("8/4", "5 1/2 in", "8 ft 6 in")));
        assertThat(ends.endTally(UP))
                .isEqualTo(BoardMeasure.exact(new NominalSize(Length.inches(2), Length.inches(11)), Length.feet(8)));
    }

    @Test
    void aBundleIsRoundedOnceAndThinLumberCountsAsAnInch() {
        HardwoodTally tally = new HardwoodTally(
                List.of(board("5/4", "6 in", "10 ft"), board("5/4", "7 in", "12 ft"), board("5/8", "6 in", "8 ft")));
        assertThat(tally.surfaceMeasures(UP)).containsExactly(5L, 7L, 4L);
        assertThat(tally.boardFeet(UP, UP)).isEqualTo(19);
        assertThat(new HardwoodTally(List.of()).boardFeet(UP, UP)).isZero();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new HardwoodTally(List.of()).boardFeetWorking(UP, UP));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> tally.boardFeet(UP, Rounding.UP));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> tally.endTally(Rounding.HALF_EVEN));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> board("4/4", "6 in", "11 in"));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> board("4/4", "0 in", "8 ft"));
    }

    @Provide
    Arbitrary<List<HardwoodTally.Board>> boards() {
        return Combinators.combine(
                        Arbitraries.of("3/4", "4/4", "5/4", "8/4").map(HardwoodThickness::parse),
                        Arbitraries.integers().between(6, 32).map(halves -> Length.inches(halves, 2)),
                        Arbitraries.integers().between(8, 32).map(halves -> Length.inches(6L * halves)))
                .as(HardwoodTally.Board::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(30);
    }

    @Property(tries = 300)
    void noTotalDependsOnTheOrderOfTheBoards(
            @ForAll("boards") List<HardwoodTally.Board> boards, @ForAll Random random) {
        List<HardwoodTally.Board> shuffled = new ArrayList<>(boards);
        Collections.shuffle(shuffled, random);
        HardwoodTally a = new HardwoodTally(boards);
        HardwoodTally b = new HardwoodTally(shuffled);
        assertThat(b.boardFeet(UP, UP)).isEqualTo(a.boardFeet(UP, UP));
        assertThat(b.endTally(DOWN)).isEqualTo(a.endTally(DOWN));
        assertThat(a.boardFeetWorking(DOWN, UP).value()).isEqualTo(a.boardFeet(DOWN, UP));
    }

    /** Alternating keeps the sum within half a foot of the sum before rounding the halves, thickness by thickness. */
    @Property(tries = 300)
    void alternatingHalvesFavourNobody(@ForAll("boards") List<HardwoodTally.Board> boards) {
        HardwoodTally tally = new HardwoodTally(boards);
        long up = tally.surfaceMeasures(UP).stream().mapToLong(Long::longValue).sum();
        long down =
                tally.surfaceMeasures(DOWN).stream().mapToLong(Long::longValue).sum();
        assertThat(up - down).isBetween(0L, 4L);
        int counted = tally.blocks(UP).values().stream()
                .flatMap(counts -> counts.values().stream())
                .mapToInt(Integer::intValue)
                .sum();
        assertThat(counted).isEqualTo(boards.size());
    }

    @Test
    void kilnNetIsAParameterWithASource() {
        assertThat(KilnNet.customs()).hasSize(3).allSatisfy(net -> {
            assertThat(net.source().standing()).isEqualTo(Standing.SECONDHAND);
            assertThat(net.netWorking(777).value()).isEqualTo(net.net(777));
            assertThat(net.net(100)).isCloseTo(100 - net.percent(), within(1e-9));
        });
        for (double bad : new double[] {Double.NaN, -1, 16}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() ->
                            new KilnNet("own", bad, KilnNet.customs().get(0).source()));
        }
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> KilnNet.customs().get(0).net(-1));
    }

    @Test
    void saysWhatAGradePromises() {
        HardwoodGrade fas = HardwoodGrade.named("fas");
        HardwoodGrade.Way usual = fas.waysFor(9).get(0);
        assertThat(usual.units(9)).isEqualTo(90);
        assertThat(usual.mostCuttings(9)).contains(2);
        HardwoodGrade.Way extra = fas.waysFor(9).get(1);
        assertThat(extra.units(9)).isEqualTo(99);
        assertThat(extra.mostCuttings(9)).contains(3);
        assertThat(fas.waysFor(9)).hasSize(3);
        assertThat(fas.waysFor(9).get(2).source().standing()).isEqualTo(Standing.SECONDHAND);
        assertThat(fas.waysFor(20))
                .singleElement()
                .satisfies(way -> assertThat(way.mostCuttings(20)).contains(4));
        assertThat(fas.waysFor(3)).isEmpty();
        assertThat(HardwoodGrade.named("No. 3A Common").waysFor(5).get(0).mostCuttings(5))
                .isEmpty();
        HardwoodGrade selects = HardwoodGrade.named("Selects");
        assertThat(selects.faces()).isEqualTo(Optional.of(new HardwoodGrade.Faces("FAS", "No. 1 Common")));
        assertThat(selects.waysFor(2)).hasSize(1);
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> selects.waysFor(8))
                .withMessageContaining("FAS and No. 1 Common");
        for (int bad : new int[] {0, -1, 101}) {
            assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> fas.waysFor(bad));
        }
    }

    @Test
    void everyRuleInWordsHasASource() {
        assertThat(HardwoodGrade.rules())
                .hasSize(11)
                .allSatisfy(rule -> assertThat(rule.statement()).endsWith("."));
        assertThat(HardwoodGrade.rules())
                .filteredOn(rule -> rule.source().standing() == Standing.SECONDHAND)
                .hasSize(2);
    }

    @Test
    void longBoardsMayHaveMoreCuttingsUpToSeven() {
        assertThat(HardwoodGrade.cuttingsInLongBoard(4, 20, Length.feet(18))).isEqualTo(5);
        assertThat(HardwoodGrade.cuttingsInLongBoard(4, 40, Length.feet(18))).isEqualTo(7);
        assertThat(HardwoodGrade.cuttingsInLongBoard(4, 20, Length.feet(17))).isEqualTo(4);
        assertThat(HardwoodGrade.cuttingsInLongBoard(4, 16, Length.feet(20))).isEqualTo(4);
    }

    /** A better grade never asks for less of the face; both least cuttings of one grade are about as large. */
    @Property(tries = 200)
    void gradesFallFromBestToWorst(@ForAll @IntRange(min = 1, max = 40) int squareFeet) {
        double before = 12;
        for (HardwoodGrade grade : HardwoodGrade.all()) {
            if (grade.faces().isPresent()) {
                continue;
            }
            HardwoodGrade.Way usual = grade.ways().get(0);
            assertThat(usual.unitsPerFoot()).isLessThan(before);
            before = usual.unitsPerFoot();
            for (HardwoodGrade.Way way : grade.waysFor(squareFeet)) {
                assertThat(way.units(squareFeet)).isBetween(usual.units(squareFeet), 12.0 * squareFeet);
            }
        }
    }

    @Property(tries = 200)
    void unitsAndSharesShowTheirWorking(
            @ForAll @DoubleRange(min = 0.25, max = 40) double a, @ForAll @DoubleRange(min = 0, max = 12) double u) {
        assertThat(HardwoodGrade.cuttingUnitsWorking(a, 3).value()).isEqualTo(HardwoodGrade.cuttingUnits(a, 3));
        assertThat(HardwoodGrade.clearPercentWorking(u).value()).isEqualTo(HardwoodGrade.clearPercent(u));
        assertThat(HardwoodGrade.clearPercent(u)).isBetween(0.0, 100.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, 12.1})
    void clearShareIsRefusedOutside(double units) {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> HardwoodGrade.clearPercent(units));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodGrade.cuttingUnits(Double.NaN, 3));
    }

    @Test
    void aWayToAGradeHoldsFromItsLeastToItsGreatestSurfaceMeasure() {
        HardwoodGrade.Way extra = HardwoodGrade.named("FAS").ways().get(1);
        assertThat(List.of(extra.holds(5), extra.holds(6), extra.holds(15), extra.holds(16)))
                .containsExactly(false, true, true, false);
        // Of FAS a cutting is allowed for each 4 ft: a board of 3 ft has none, one of 20 ft no more than four.
        HardwoodGrade.Way usual = HardwoodGrade.named("FAS").ways().get(0);
        assertThat(List.of(usual.holds(3), usual.holds(4))).containsExactly(false, true);
        assertThat(usual.mostCuttings(16)).contains(4);
        assertThat(usual.mostCuttings(100)).contains(4);
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> usual.units(101));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> usual.mostCuttings(0));
    }

    /** Of No. 1 Common (SM + 1) / 3 cuttings, at most five; one more from 3 to 10 ft at nine units for a foot. */
    @Test
    void theSecondGradeAddsOneBeforeItDivides() {
        HardwoodGrade one = HardwoodGrade.named("no. 1 common ");
        HardwoodGrade.CuttingCount count = one.ways().get(0).count().orElseThrow();
        assertThat(count).isEqualTo(new HardwoodGrade.CuttingCount(1, 3, 5, 0));
        assertThat(one.ways().get(0).mostCuttings(5)).contains(2);
        assertThat(one.ways().get(0).mostCuttings(20)).contains(5);
        assertThat(one.ways().get(1).mostCuttings(10)).contains(4);
        assertThat(one.ways().get(1).units(10)).isEqualTo(90);
        assertThat(one.ways().get(1).condition()).isEqualTo("one extra cutting");
        assertThat(one.cuttings()).containsExactly("4 in x 2 ft", "3 in x 3 ft");
        assertThat(one.leastWidth()).isEqualTo(Length.inches(3));
        assertThat(one.leastLength()).isEqualTo(Length.feet(4));
        assertThat(HardwoodGrade.named("F1F").cuttings()).isEmpty();
        assertThat(HardwoodGrade.named("FAS").faces()).isEmpty();
    }

    @Test
    void aCuttingIsRefusedOutsideItsMeasures() {
        assertThat(HardwoodGrade.cuttingUnits(4, 5)).isEqualTo(20);
        for (double[] wrong : new double[][] {{0.2, 3}, {61, 3}, {4, 0.2}, {4, 41}}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> HardwoodGrade.cuttingUnits(wrong[0], wrong[1]))
                    .withMessageContaining("of the cutting");
        }
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodGrade.cuttingsInLongBoard(4, 0, Length.feet(18)));
        assertThat(HardwoodGrade.cuttingsInLongBoard(4, 17, Length.feet(18))).isEqualTo(4);
    }

    @Test
    void aThicknessIsAcceptedFromThreeEighthsToSixInches() {
        assertThat(HardwoodThickness.parse("3/8 in")).isEqualTo(Length.inches(3, 8));
        assertThat(HardwoodThickness.parse("6 in")).isEqualTo(Length.inches(6));
        for (String beyond : new String[] {"23/64 in", "6 1/64 in"}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> HardwoodThickness.parse(beyond))
                    .withMessageContaining("3/8 to 6 in");
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> HardwoodThickness.quarters(Length.parse(beyond)));
        }
        assertThat(HardwoodThickness.quarters(Length.inches(63, 64))).isEqualTo("63/64");
    }

    @Test
    void surfacingOneSideIsFoundByItsOwnColumn() {
        assertThat(HardwoodThickness.surfaced(Length.inches(1), Surfaced.ONE_SIDE))
                .isEqualTo(Length.inches(7, 8));
        assertThat(HardwoodThickness.surfaced(Length.inches(1), Surfaced.TWO_SIDES))
                .isEqualTo(Length.inches(13, 16));
        assertThat(HardwoodThickness.nominal(Length.inches(7, 8), Surfaced.ONE_SIDE))
                .contains(Length.inches(1));
        assertThat(HardwoodThickness.nearestNominal(Length.inches(7, 8), Surfaced.ONE_SIDE))
                .isEqualTo(Length.inches(1));
    }

    @Test
    void scantAllowancesAreForThicknessEdgeAndWidth() {
        assertThat(HardwoodThickness.kilnDriedAllowances())
                .extracting(HardwoodThickness.Allowance::dimension)
                .containsExactly(
                        "thickness", "thickness", "thickness on one edge", "thickness on one edge", "width", "width");
        HardwoodThickness.Allowance thick =
                HardwoodThickness.kilnDriedAllowances().get(1);
        assertThat(thick.least()).contains(Length.inches(2));
        assertThat(thick.greatest()).isEmpty();
        assertThat(thick.scant()).isEqualTo(Length.inches(1, 8));
    }

    /** An end tally goes by whole inches of width and whole feet of length. */
    @Test
    void anEndTalliedBoardIsWholeInchesByWholeFeet() {
        HardwoodTally.Board board = board("5/4", "6 1/2 in", "9 ft 11 in");
        assertThat(HardwoodTally.asEndTallied(board, UP)).isEqualTo(board("5/4", "7 in", "9 ft"));
        assertThat(HardwoodTally.asEndTallied(board, DOWN)).isEqualTo(board("5/4", "6 in", "9 ft"));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> HardwoodTally.asEndTallied(board, Rounding.UP));
        // 7 in x 9 ft x 1 1/4 in over 12 is 6 9/16.
        assertThat(new HardwoodTally(List.of(board)).endTally(UP)).hasToString("6 9/16");
        assertThat(HardwoodTally.boardFeet(5, Length.inches(5, 4))).hasToString("6 1/4");
        assertThat(HardwoodTally.boardFeet(5, Length.inches(5, 8))).hasToString("5");
    }

    @Test
    void aBundleRefusesAnotherRoundingThanOfHalves() {
        HardwoodTally tally = new HardwoodTally(List.of(board("4/4", "6 in", "8 ft")));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> tally.surfaceMeasures(Rounding.DOWN))
                .withMessageContaining("rounding of an exact half");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> tally.boardFeetWorking(UP, Rounding.DOWN));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SurfaceMeasure.squareFeetWorking(6, 8, Rounding.DOWN));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> board("1/4", "6 in", "8 ft"));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SurfaceMeasure.exact(Length.inches(61), Length.feet(8)));
        assertThatThrownBy(() -> tally.blocks(UP).clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void theTablesHaveTheirRows() {
        assertThat(HardwoodGrade.all())
                .extracting(HardwoodGrade::name)
                .hasSize(7)
                .startsWith("FAS");
        assertThat(HardwoodThickness.standard())
                .extracting(HardwoodThickness.Line::nominal)
                .isSorted()
                .contains(Length.inches(3, 8), Length.inches(1), Length.inches(4));
        assertThat(HardwoodThickness.miscut(Length.inches(1), Length.inches(1), Length.inches(1)))
                .isFalse();
    }
}
