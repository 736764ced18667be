package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.lumber.SoftwoodSizes.Condition;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Sourced;
import org.woodyield.source.Standing;

class SoftwoodSizesTest {

    @ParameterizedTest
    @CsvSource({
        "2x4,1 1/2,3 1/2,DRY",
        "2x4,1 9/16,3 9/16,GREEN",
        "2x8,1 1/2,7 1/4,DRY",
        "1x6,3/4,5 1/2,DRY",
        "1x6,25/32,5 5/8,GREEN",
        "1 1/4 x 8,1,7 1/4,DRY",
        "6x8,5 1/2,7 1/4,DRY",
        "6x6,5 1/2,5 1/2,GREEN",
        "16 x 16,15,15,DRY"
    })
    void givesTheDressedSizeOfANominalSize(String nominal, String thickness, String width, Condition condition) {
        SoftwoodSizes.Size size = SoftwoodSizes.dressed(NominalSize.parse(nominal), condition);
        assertThat(size.thickness()).isEqualTo(Length.parse(thickness + " in"));
        assertThat(size.width()).isEqualTo(Length.parse(width + " in"));
    }

    @Test
    void findsEveryNominalSizeAgainFromItsDressedSize() {
        for (SoftwoodSizes.Line t : SoftwoodSizes.boardsAndDimension()) {
            for (SoftwoodSizes.Line w : SoftwoodSizes.boardsAndDimension()) {
                boolean pair = t.face().equals("thickness")
                        && w.face().equals("width")
                        && t.lumberClass() == w.lumberClass()
                        && w.nominal().compareTo(t.nominal()) >= 0;
                if (!pair) {
                    continue;
                }
                NominalSize nominal = new NominalSize(t.nominal(), w.nominal());
                for (Condition condition : Condition.values()) {
                    SoftwoodSizes.Size size = SoftwoodSizes.dressed(nominal, condition);
                    assertThat(SoftwoodSizes.nominal(size.thickness(), size.width(), condition))
                            .contains(nominal);
                }
            }
        }
    }

    @Test
    void aRefusalNamesTheNearestSizes() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SoftwoodSizes.dressed(NominalSize.parse("2x13"), Condition.DRY))
                .withMessageContaining("nearest: 12 in, 14 in, 10 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SoftwoodSizes.dressed(NominalSize.parse("6 1/2 x 8"), Condition.DRY))
                .withMessageContaining("nearest: 6 in, 7 in, 5 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SoftwoodSizes.rough(NominalSize.parse("1x6"), Condition.DRY))
                .withMessageContaining("nearest: 2 in, 2 1/2 in, 3 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WorkedLumber.ofNominal("flooring", Length.inches(8)))
                .withMessageContaining("nearest: 6 in, 5 in, 4 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WorkedLumber.ofNominal("floring", Length.inches(4)))
                .withMessageContaining("flooring");
    }

    @Test
    void findsTheNominalSizesThatAreDressedNearly() {
        assertThat(SoftwoodSizes.nearest(Length.millimetres(38), Length.millimetres(89), Condition.DRY)
                        .get(0))
                .hasToString("2x4");
        assertThat(SoftwoodSizes.nearest(Length.inches(7), Length.inches(7), Condition.DRY)
                        .get(0))
                .hasToString("8x8");
    }

    @Test
    void findsTheNominalSizeOfARoughOne() {
        for (String text : new String[] {"2x4", "2x8", "4x4", "3 x 12", "4 1/2 x 16"}) {
            NominalSize nominal = NominalSize.parse(text);
            for (Condition condition : Condition.values()) {
                SoftwoodSizes.Size rough = SoftwoodSizes.rough(nominal, condition);
                assertThat(SoftwoodSizes.nominalOfRough(rough.thickness(), rough.width(), condition))
                        .contains(nominal);
                assertThat(SoftwoodSizes.nativeSurfaced(nominal, condition).width())
                        .isEqualTo(SoftwoodSizes.dressed(nominal, condition).width());
            }
        }
    }

    /** The millimetres are stored as printed; were one mistyped, it would not be the nearest to the inches. */
    @Test
    void printedMillimetresAreTheNearestToTheInches() {
        int found = 0;
        for (SoftwoodSizes.Line line : SoftwoodSizes.boardsAndDimension()) {
            Optional<Sourced> printed = SoftwoodSizes.millimetres(line.face(), line.nominal());
            if (printed.isPresent()) {
                found++;
                assertThat(line.dry()
                                .roundedTo(Length.millimetres(1), Rounding.HALF_UP)
                                .toMillimetres())
                        .isEqualTo(printed.get().value());
            }
        }
        assertThat(found).isEqualTo(18);
        assertThat(SoftwoodSizes.millimetres(SoftwoodSizes.WIDTH, Length.inches(4))
                        .orElseThrow()
                        .source()
                        .standing())
                .isEqualTo(Standing.PUBLISHED);
        assertThat(SoftwoodSizes.millimetres(SoftwoodSizes.WIDTH, Length.inches(6))
                        .orElseThrow()
                        .source()
                        .standing())
                .isEqualTo(Standing.MEMORY);
    }

    @Test
    void aTwoByFourBefore1970WasAnEighthThicker() {
        Length two = Length.inches(2);
        assertThat(SizeHistory.in("thickness", two, 1950))
                .isNotEmpty()
                .allSatisfy(fact -> assertThat(fact.dressed()).isEqualTo(Length.parse("1 5/8 in")));
        assertThat(SizeHistory.in("width", Length.inches(4), 1980))
                .singleElement()
                .satisfies(fact -> assertThat(fact.dressed()).isEqualTo(Length.parse("3 1/2 in")));
        assertThat(SizeHistory.ofDressed("thickness", Length.parse("25/32 in")))
                .singleElement()
                .satisfies(fact -> assertThat(fact.source().standing()).isEqualTo(Standing.MEMORY));
        assertThat(SizeHistory.nationalStandards().get(0).year()).isEqualTo(1924);
    }

    @Test
    void workedLumberIsRecalledAndSaysSo() {
        assertThat(WorkedLumber.all()).allSatisfy(line -> {
            assertThat(line.source().standing()).isEqualTo(Standing.MEMORY);
            assertThat(line.dry()).isLessThan(line.nominal());
            line.green().ifPresent(green -> assertThat(green).isGreaterThan(line.dry()));
            assertThat(WorkedLumber.ofNominal(line.pattern(), line.nominal())).isEqualTo(line);
            assertThat(WorkedLumber.nearest(line.pattern(), line.dry())).isEqualTo(line);
        });
        assertThat(WorkedLumber.patterns()).contains("flooring", "bevel siding");
    }

    /** Two tables that were not copied from each other: the recalled sizes lie in the ranges that were read. */
    @Test
    void recalledFinishAndFlooringLieInTheRangesThatWereRead() {
        for (WorkedLumber.Range range : WorkedLumber.southernPine().subList(0, 2)) {
            assertThat(WorkedLumber.all())
                    .filteredOn(line -> line.pattern().equals(range.product()))
                    .isNotEmpty()
                    .allSatisfy(line -> {
                        boolean thick = line.face().equals("thickness");
                        assertThat(line.nominal())
                                .isBetween(
                                        thick ? range.leastThickness() : range.leastWidth(),
                                        thick ? range.greatestThickness() : range.greatestWidth());
                    });
        }
    }

    @Test
    void findsNothingForASizeThatIsNotDressedTo() {
        assertThat(SoftwoodSizes.nominal(Length.inches(2), Length.inches(5), Condition.DRY))
                .isEmpty();
    }

    @Test
    void keepsTheDoubtOfADoubtfulCell() {
        NominalSize thin = NominalSize.parse("3/4 x 4");
        assertThat(SoftwoodSizes.dressed(thin, Condition.GREEN).doubts()).hasSize(1);
        assertThat(SoftwoodSizes.dressed(thin, Condition.DRY).doubts()).isEmpty();
        assertThat(SoftwoodSizes.dressed(NominalSize.parse("8x8"), Condition.GREEN)
                        .doubts())
                .isNotEmpty();
    }

    @Test
    void roughDrySizeIsAnEighthOverTheDressedSize() {
        NominalSize size = NominalSize.parse("2x6");
        SoftwoodSizes.Size rough = SoftwoodSizes.rough(size, Condition.DRY);
        SoftwoodSizes.Size dressed = SoftwoodSizes.dressed(size, Condition.DRY);
        assertThat(rough.thickness().minus(dressed.thickness())).isEqualTo(Length.inches(1, 8));
        assertThat(rough.width().minus(dressed.width())).isEqualTo(Length.inches(1, 8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2x13", "2 1/4 x 6", "1x15"})
    void refusesASizeThatTheStandardDoesNotHave(String nominal) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SoftwoodSizes.dressed(NominalSize.parse(nominal), Condition.DRY))
                .withMessageContaining("the sizes of PS 20");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2", "x4", "4x2", "2x", "2,5x4", "ax4", "40x50", "2x4x8", "1/0 x 4"})
    void refusesWhatIsNotASize(String text) {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> NominalSize.parse(text));
    }

    @ParameterizedTest
    @CsvSource({"2x4,2x4", "1 1/4 X 6,1 1/4 x 6", "6 × 8 in,6x8", "5/4 x 6,1 1/4 x 6"})
    void readsASizeAsPeopleWriteIt(String text, String shown) {
        assertThat(NominalSize.parse(text)).hasToString(shown);
    }

    @Test
    void aNarrowBoardIsAStrip() {
        assertThat(NominalSize.parse("1x4").isStrip()).isTrue();
        assertThat(NominalSize.parse("1x6").isStrip()).isFalse();
        assertThat(NominalSize.parse("2x4").isStrip()).isFalse();
    }

    @Test
    void namesTheClassByThickness() {
        assertThat(NominalSize.parse("1 1/2 x 4").lumberClass()).isEqualTo(NominalSize.LumberClass.BOARD);
        assertThat(NominalSize.parse("2x4").lumberClass()).isEqualTo(NominalSize.LumberClass.DIMENSION);
        assertThat(NominalSize.parse("5x5").lumberClass()).isEqualTo(NominalSize.LumberClass.TIMBER);
    }

    @ParameterizedTest
    @CsvSource({"3/8 x 3/8, 3/8 x 3/8", "24 x 30, 24x30", "24 x 24, 24x24"})
    void acceptsTheLeastAndTheGreatestNominalSize(String text, String shown) {
        assertThat(NominalSize.parse(text)).hasToString(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "11/32 x 4, 3/8 to 24 in",
        "24 1/64 x 30, 3/8 to 24 in",
        "24 x 30 1/64, to 30 in",
        "4 x 3 63/64, thickness first"
    })
    void refusesANominalSizeAStepBeyond(String text, String said) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> NominalSize.parse(text))
                .withMessageContaining(said);
    }

    @Test
    void timbersBeginAtFiveInches() {
        assertThat(NominalSize.parse("4 1/2 x 6").lumberClass()).isEqualTo(NominalSize.LumberClass.DIMENSION);
        assertThat(NominalSize.parse("5x6").lumberClass().label()).isEqualTo("timber");
        assertThat(NominalSize.parse("2x6").lumberClass().label()).isEqualTo("dimension");
        assertThat(NominalSize.parse("1x6").lumberClass().label()).isEqualTo("board");
        // The doubt of green timbers does not cling to dry ones.
        assertThat(SoftwoodSizes.dressed(NominalSize.parse("8x8"), Condition.DRY)
                        .doubts())
                .isEmpty();
    }

    @Test
    void aRoughGreenSizeIsASuggestionAndARoughDryOneIsNot() {
        NominalSize size = NominalSize.parse("2x6");
        assertThat(SoftwoodSizes.rough(size, Condition.GREEN).doubts())
                .singleElement()
                .asString()
                .contains("only suggests");
        assertThat(SoftwoodSizes.rough(size, Condition.DRY).doubts()).isEmpty();
        assertThat(SoftwoodSizes.rough(size, Condition.GREEN).thickness())
                .isGreaterThan(SoftwoodSizes.rough(size, Condition.DRY).thickness());
        assertThat(SoftwoodSizes.nativeSurfaced(size, Condition.GREEN).thickness())
                .isGreaterThan(SoftwoodSizes.nativeSurfaced(size, Condition.DRY).thickness());
        assertThat(SoftwoodSizes.nominalOfRough(Length.inches(3), Length.inches(3), Condition.DRY))
                .isEmpty();
    }

    @Test
    void threeNominalSizesAreOfferedNearestFirst() {
        assertThat(SoftwoodSizes.nearest(Length.parse("1 1/2 in"), Length.parse("3 1/2 in"), Condition.DRY))
                .extracting(NominalSize::toString)
                .hasSize(3)
                .startsWith("2x4");
    }

    /** Each row states from or until which year it was seen: both years count. */
    @Test
    void aSizeOfEarlierYearsHoldsFromItsFirstToItsLastYear() {
        assertThat(SizeHistory.in("thickness", Length.inches(1), 1910))
                .singleElement()
                .satisfies(fact -> assertThat(fact.dressed()).isEqualTo(Length.parse("13/16 in")));
        assertThat(SizeHistory.in("thickness", Length.inches(1), 1911)).isEmpty();
        assertThat(SizeHistory.in("thickness", Length.inches(1), 1923)).isEmpty();
        assertThat(SizeHistory.in("width", Length.inches(4), 1969))
                .singleElement()
                .satisfies(fact -> assertThat(fact.dressed()).isEqualTo(Length.parse("3 5/8 in")));
        assertThat(SizeHistory.in("width", Length.inches(4), 1970))
                .singleElement()
                .satisfies(fact -> assertThat(fact.dressed()).isEqualTo(Length.parse("3 1/2 in")));
        assertThat(SizeHistory.in("width", Length.inches(1), 1950)).isEmpty();
        assertThat(SizeHistory.ofDressed("width", Length.parse("3 1/2 in"))).hasSize(1);
        assertThat(SizeHistory.ofDressed("thickness", Length.parse("3 1/2 in"))).isEmpty();
        assertThat(SizeHistory.facts()).hasSize(10);
    }

    @Test
    void aCellWithoutDoubtHasNone() {
        assertThat(SoftwoodSizes.dressed(NominalSize.parse("2x4"), Condition.GREEN)
                        .doubts())
                .isEmpty();
    }
}
