package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
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

    private static Product piece(String id, Product.Size size, Product.Surface surface, double moisture, int quantity) {
        return new Product(
                id, size, Length.feet(8), quantity, Product.Wood.of(Product.Wood.Kind.ANY), surface, moisture);
    }

    private static Product.Size nominal(long thickness, long width) {
        return new Product.Size(true, Length.inches(thickness), Length.inches(width));
    }

    @Test
    void nominalTwoByFourCountsEightSquareInchesAndMeasuresFiveAndAQuarter() {
        Product stud = piece("stud", nominal(2, 4), Product.Surface.DRESSED_DRY, 15, 10);
        assertThat(stud.tallyPerPiece()).isEqualTo(BoardFeet.tally(8.0 * 8 / 12));
        Product.Section section = stud.finished();
        assertThat(section.thickness().toInches() * section.width().toInches()).isEqualTo(5.25);
        assertThat(stud.finishedVolume().cubicFeet()).isCloseTo(5.25 / 144 * 8, within(1e-12));
    }

    @Test
    void theSurfaceChoosesTheTable() {
        assertThat(nominal(2, 4).finished(Product.Surface.DRESSED_GREEN).thickness())
                .isEqualTo(Length.parse("1 9/16 in"));
        assertThat(nominal(2, 4).finished(Product.Surface.ROUGH).thickness()).isEqualTo(Length.parse("1 5/8 in"));
    }

    @Test
    void measuredPieceCountsWhatItMeasures() {
        Product.Size size = new Product.Size(false, Length.millimetres(20), Length.millimetres(200));
        Product plank = piece("plank", size, Product.Surface.ROUGH, 15, 1);
        assertThat(plank.tallyPerPiece().value()).isCloseTo(0.02 * 0.2 * 2.4384 / 0.002359737216, within(1e-9));
        assertThat(plank.finished()).isEqualTo(new Product.Section(size.thickness(), size.width()));
    }

    @Test
    void refusesAPieceThatCannotBe() {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> nominal(4, 2));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> piece("a", nominal(2, 4), Product.Surface.ROUGH, Double.NaN, 1));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> piece("a", nominal(2, 4), Product.Surface.ROUGH, 15, 0));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> piece(" ", nominal(2, 4), Product.Surface.ROUGH, 15, 1));
    }

    private static CoverArea wall(double squareMetres, int overlapMillimetres, Length... lengths) {
        return new CoverArea(
                "wall",
                squareMetres,
                false,
                Length.millimetres(19),
                Length.millimetres(100),
                Length.millimetres(250),
                Length.millimetres(overlapMillimetres),
                List.of(lengths),
                10,
                Product.Wood.of(Product.Wood.Kind.ANY),
                Product.Surface.ROUGH,
                15);
    }

    @Test
    void overlapDoesNotCover() {
        CoverArea wall = wall(20, 25, Length.millimetres(1000), Length.millimetres(4000));
        assertThat(wall.coveredBy(Length.millimetres(125), Length.millimetres(2000)))
                .isCloseTo(0.2, within(1e-12));
        assertThat(wall.accepts(Length.millimetres(99), Length.millimetres(2000)))
                .isFalse();
        assertThat(wall.accepts(Length.millimetres(100), Length.millimetres(4000)))
                .isTrue();
        assertThat(wall.accepts(Length.millimetres(100), Length.millimetres(900)))
                .isFalse();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> wall.coveredBy(Length.millimetres(25), Length.millimetres(2000)));
    }

    /** Boards whose covered widths add up to the area, counted one by one, hold the board feet that the formula gives. */
    @Property(tries = 200)
    void boardFeetForAnAreaAreThoseOfItsBoards(
            @ForAll @Size(min = 1, max = 30) List<@IntRange(min = 100, max = 250) Integer> widths,
            @ForAll @IntRange(min = 0, max = 60) int overlap) {
        Length length = Length.millimetres(3000);
        double covered = 0;
        double boardFeet = 0;
        long sum = 0;
        CoverArea any = wall(1, overlap, length);
        for (int width : widths) {
            covered += any.coveredBy(Length.millimetres(width), length);
            boardFeet += BoardMeasure.boardFeet(0.75, Length.millimetres(width).toInches(), length.toFeet());
            sum += width;
        }
        CoverArea area = wall(covered, overlap, length);
        Length mean = Length.millimetres(sum).dividedBy(widths.size(), Rounding.HALF_UP);
        assertThat(area.boardFeetFor(mean)).isCloseTo(boardFeet * 1.1, within(1e-4 * boardFeet));
        assertThat(area.boardFeetForWorking(mean).value()).isEqualTo(area.boardFeetFor(mean));
    }

    @Test
    void refusesAnAreaThatCannotBeCovered() {
        Length length = Length.millimetres(3000);
        for (double area : new double[] {0, -1, Double.NaN, 1e9}) {
            assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> wall(area, 25, length));
        }
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> wall(1, 100, length));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> wall(1, -1, length));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> wall(1, 25));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> wall(1, 25, length, Length.millimetres(2000)));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> wall(1, 25, length).boardFeetFor(Length.millimetres(99)));
    }
}
