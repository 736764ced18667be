package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.lumber.SoftwoodSizes.Condition;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

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
    void namesTheClassByThickness() {
        assertThat(NominalSize.parse("1 1/2 x 4").lumberClass()).isEqualTo(NominalSize.LumberClass.BOARD);
        assertThat(NominalSize.parse("2x4").lumberClass()).isEqualTo(NominalSize.LumberClass.DIMENSION);
        assertThat(NominalSize.parse("5x5").lumberClass()).isEqualTo(NominalSize.LumberClass.TIMBER);
    }
}
