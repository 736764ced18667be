package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

class ProductTest {

    @ParameterizedTest
    @CsvSource({"2x4,14,9 1/3", "2x4,8,5 1/3", "1x16,10,13 1/3", "1/2 x 6,8,4", "1 1/4 x 6,10,6 1/4", "2x6,12,12"})
    void tallyIsAnExactFractionOfNominalSizes(String nominal, long feet, String expected) {
        NominalSize size = NominalSize.parse(nominal);
        assertThat(BoardMeasure.exact(size, Length.feet(feet))).hasToString(expected);
        BoardMeasure.Exact exact = BoardMeasure.exact(size, Length.feet(feet));
        assertThat(BoardMeasure.tally(size, Length.feet(feet)).value())
                .isCloseTo(exact.numerator().doubleValue() / exact.denominator().doubleValue(), within(1e-12));
    }

    @Test
    void exactTallyIsRoundedOnlyByName() {
        BoardMeasure.Exact three = BoardMeasure.exact(NominalSize.parse("2x4"), Length.feet(7));
        assertThat(three.rounded(10, Rounding.HALF_UP)).isEqualTo(4.7);
        assertThat(three.times(3)).hasToString("14");
        assertThat(three.plus(three).plus(three)).isEqualTo(three.times(3));
    }

    @Property
    void boardMeasureWorkingGivesTheSameBits(
            @ForAll @DoubleRange(min = 0.25, max = 12) double t,
            @ForAll @DoubleRange(min = 1, max = 24) double w,
            @ForAll @IntRange(min = 1, max = 40) int feet) {
        assertThat(BoardMeasure.working(t, w, feet).value()).isEqualTo(BoardMeasure.boardFeet(t, w, feet));
    }

    @Test
    void nominalPieceCountsEightSquareInchesAndMeasuresFiveAndAQuarter() {
        Product stud = Product.ofNominal("stud", NominalSize.parse("2x4"), Length.feet(8), true, 15, 10);
        assertThat(stud.tallyPerPiece()).isEqualTo(BoardFeet.tally(8.0 * 8 / 12));
        assertThat(stud.thickness().toInches() * stud.width().toInches()).isEqualTo(5.25);
    }

    @Test
    void nominalPieceUsedGreenHasTheGreenSize() {
        Product green = Product.ofNominal("stud", NominalSize.parse("2x4"), Length.feet(8), true, 30, 1);
        assertThat(green.thickness()).isEqualTo(Length.parse("1 9/16 in"));
    }

    @Test
    void exactPieceCountsWhatItMeasures() {
        Product plank = Product.ofExact(
                "plank", Length.millimetres(20), Length.millimetres(200), Length.millimetres(3000), false, 15, 1);
        assertThat(plank.tallyPerPiece().value()).isCloseTo(0.02 * 0.2 * 3 / 0.002359737216, within(1e-9));
    }

    @Test
    void refusesAPieceThatCannotBe() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(
                        () -> Product.ofExact("a", Length.inches(4), Length.inches(2), Length.feet(8), true, 15, 1));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() ->
                        Product.ofExact("a", Length.inches(2), Length.inches(4), Length.feet(8), true, Double.NaN, 1));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(
                        () -> Product.ofExact("a", Length.inches(2), Length.inches(4), Length.feet(8), true, 15, 0));
    }

    @Test
    void overlapDoesNotCover() {
        CoverArea wall = new CoverArea(
                "wall",
                "siding",
                Length.millimetres(19),
                20,
                Length.millimetres(100),
                Length.millimetres(250),
                Length.millimetres(1000),
                Length.millimetres(4000),
                Length.millimetres(25),
                true,
                15);
        assertThat(wall.coveredSquareMetres(Length.millimetres(125), Length.millimetres(2000)))
                .isCloseTo(0.2, within(1e-12));
        assertThat(wall.accepts(Length.millimetres(99), Length.millimetres(2000)))
                .isFalse();
        assertThat(wall.accepts(Length.millimetres(100), Length.millimetres(4000)))
                .isTrue();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> wall.coveredSquareMetres(Length.millimetres(25), Length.millimetres(2000)));
    }
}
