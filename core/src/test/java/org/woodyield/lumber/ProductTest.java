package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
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
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

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

    @Test
    void aPieceOfTheGreatestMeasuresIsAcceptedAndAStepMoreIsRefused() {
        Product.Size widest = new Product.Size(false, Length.millimetres(50), Length.millimetres(1000));
        Product.Wood any = Product.Wood.of(Product.Wood.Kind.ANY);
        Product greatest =
                new Product("beam", widest, Length.millimetres(30_000), 100_000, any, Product.Surface.ROUGH, 200);
        assertThat(greatest.quantity()).isEqualTo(100_000);
        Product.Size wider = new Product.Size(false, Length.millimetres(50), Length.millimetres(1001));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> piece("beam", wider, Product.Surface.ROUGH, 15, 1))
                .withMessageContaining("width of beam is 1001 mm")
                .withMessageContaining("up to 1000 mm");
        for (Length length : new Length[] {Length.ZERO, Length.millimetres(30_001)}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> new Product("beam", widest, length, 1, any, Product.Surface.ROUGH, 15))
                    .withMessageContaining("length of beam");
        }
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> piece("beam", widest, Product.Surface.ROUGH, 15, 100_001))
                .withMessageContaining("1 to 100000");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> piece("beam", widest, Product.Surface.ROUGH, 200.1, 1))
                .withMessageContaining("0 to 200 %");
    }

    @Test
    void aSizeIsWrittenAsItWasWantedAndMayBeSquare() {
        assertThat(nominal(2, 4).words()).isEqualTo("2x4");
        assertThat(new Product.Size(true, Length.inches(5, 4), Length.inches(6)).words())
                .isEqualTo("5/4x6");
        assertThat(new Product.Size(false, Length.millimetres(45), Length.millimetres(45)).words())
                .isEqualTo("45 mm x 45 mm");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new Product.Size(false, Length.ZERO, Length.inches(4)))
                .withMessageContaining("a thickness above 0");
    }

    /** 3, 4 and 5: 30 by 40 mm are 50 mm from corner to corner. A quarter of wane on both edges leaves 15 of 30 and 20 of 40 mm. */
    @Test
    void theLeastLogIsTheDiagonalAndLessWithWane() {
        Product.Size size = new Product.Size(false, Length.millimetres(30), Length.millimetres(40));
        Product square = piece("batten", size, Product.Surface.ROUGH, 15, 1);
        assertThat(square.leastDiameterMillimetres()).isEqualTo(50);
        assertThat(square.finished().diagonalMillimetres()).isEqualTo(50);
        Product waney = new Product(
                "batten",
                size,
                Length.feet(8),
                1,
                square.wood(),
                Product.Surface.ROUGH,
                15,
                Optional.of(WaneLimit.of("no.1")));
        // The greater of sqrt(20^2 + 30^2) and sqrt(40^2 + 15^2).
        assertThat(waney.leastDiameterMillimetres()).isCloseTo(42.720, within(5e-4));
        assertThat(waney.named("rail"))
                .isEqualTo(new Product(
                        "rail", size, Length.feet(8), 1, square.wood(), Product.Surface.ROUGH, 15, waney.wane()));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> waney.named(""));
    }

    @Test
    void waneIsGivenByGradeOrUpToHalfAFace() {
        WaneLimit stud = WaneLimit.of(" Stud ");
        assertThat(stud.thicknessShare()).isCloseTo(1.0 / 3, within(1e-15));
        assertThat(stud.widthShare()).isEqualTo(0.5);
        assertThat(WaneLimit.all()).hasSize(8);
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WaneLimit.of("Prime"))
                .withMessageContaining("Select Structural, No.1");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new WaneLimit("own", 0.51, 0, stud.source()));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new WaneLimit("own", 0, 0.51, stud.source()));
    }

    @Test
    void aWoodTakesItsOwnSpeciesOnly() {
        Species oak = SpeciesCatalogue.published().find("white oak");
        Species fir = SpeciesCatalogue.published().find("douglas-fir");
        Product.Wood any = Product.Wood.of(Product.Wood.Kind.ANY);
        Product.Wood soft = Product.Wood.of(Product.Wood.Kind.SOFTWOOD);
        Product.Wood hard = Product.Wood.of(Product.Wood.Kind.HARDWOOD);
        Product.Wood onlyOak = Product.Wood.of(oak);
        assertThat(List.of(any.accepts(oak), soft.accepts(oak), hard.accepts(oak), onlyOak.accepts(oak)))
                .containsExactly(true, false, true, true);
        assertThat(List.of(any.accepts(fir), soft.accepts(fir), hard.accepts(fir), onlyOak.accepts(fir)))
                .containsExactly(true, true, false, false);
        assertThat(List.of(any.words(), soft.words(), hard.words(), onlyOak.words()))
                .containsExactly("any wood", "softwood", "hardwood", "white oak");
        assertThatThrownBy(() -> Product.Wood.of(Product.Wood.Kind.SPECIES))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Product.Wood(Product.Wood.Kind.ANY, Optional.of(oak)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void surfacesAreTwoWordsOrOne() {
        assertThat(Product.Surface.ROUGH.words()).isEqualTo("rough");
        assertThat(Product.Surface.DRESSED_DRY.words()).isEqualTo("dressed dry");
        assertThat(Product.Surface.DRESSED_GREEN.words()).isEqualTo("dressed green");
    }

    private static NaturalEdge slab(String thickness, String width, Length... lengths) {
        return new NaturalEdge(
                "slab",
                Length.parse(thickness),
                Length.parse(width),
                List.of(lengths),
                1,
                Product.Wood.of(Product.Wood.Kind.ANY),
                Product.Surface.ROUGH,
                12);
    }

    /** 2 x 10 in x 12 ft over 12 is 20; half an inch counts as an inch, so 10 in x 12 ft is 10. */
    @Test
    void aNaturalEdgedBoardCountsItsLeastWidthAndAtLeastAnInch() {
        assertThat(slab("2 in", "10 in", Length.feet(12)).tally(Length.feet(12)).value())
                .isCloseTo(20, within(1e-12));
        assertThat(slab("1/2 in", "10 in", Length.feet(12))
                        .tally(Length.feet(12))
                        .value())
                .isCloseTo(10, within(1e-12));
        assertThat(slab("2 in", "2 in", Length.feet(8), Length.feet(12)).lengths())
                .containsExactly(Length.feet(8), Length.feet(12));
    }

    @Test
    void aNaturalEdgedBoardThatCannotBeIsRefused() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab("2 in", "1.9 in", Length.feet(12)))
                .withMessageContaining("the thickness or more, 2 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab("0 in", "1 in", Length.feet(12)))
                .withMessageContaining("thickness of slab");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab("1 in", "1001 mm", Length.feet(12)))
                .withMessageContaining("least width of slab");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab("1 in", "10 in", Length.feet(12), Length.feet(12)))
                .withMessageContaining("shortest first, each once");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab("slab", 0, 12))
                .withMessageContaining("quantity");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab("slab", 1, 201))
                .withMessageContaining("final moisture");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab(" ", 1, 12))
                .withMessageContaining("id");
    }

    private static NaturalEdge slab(String id, int quantity, double moisture) {
        return new NaturalEdge(
                id,
                Length.inches(1),
                Length.inches(9),
                List.of(Length.feet(8)),
                quantity,
                Product.Wood.of(Product.Wood.Kind.ANY),
                Product.Surface.ROUGH,
                moisture);
    }

    private static CoverArea boards(
            boolean nominal, String thickness, int overlapMillimetres, Product.Surface surface) {
        return new CoverArea(
                "floor",
                0.09290304,
                nominal,
                Length.parse(thickness),
                Length.millimetres(127),
                Length.millimetres(254),
                Length.millimetres(overlapMillimetres),
                List.of(Length.feet(8)),
                10,
                Product.Wood.of(Product.Wood.Kind.ANY),
                surface,
                12);
    }

    /** One square foot and a tenth for waste, of boards of 5 in that show 4: 1.1 x 5/4 x 2 in thick is 2.75. */
    @Test
    void boardFeetToCoverByHand() {
        CoverArea twoInches = new CoverArea(
                "roof",
                0.09290304,
                false,
                Length.inches(2),
                Length.inches(5),
                Length.inches(10),
                Length.inches(1),
                List.of(Length.feet(8)),
                10,
                Product.Wood.of(Product.Wood.Kind.ANY),
                Product.Surface.ROUGH,
                12);
        assertThat(twoInches.boardFeetFor(Length.inches(5))).isCloseTo(2.75, within(1e-12));
        assertThat(twoInches.boardFeetFor(Length.inches(10))).isCloseTo(1.1 * 10 / 9 * 2, within(1e-12));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> twoInches.boardFeetFor(Length.parse("10.1 in")))
                .withMessageContaining("5 in to 10 in");
    }

    @Test
    void aNominalBoardIsCountedByItsNameAndCoversWithWhatItMeasures() {
        CoverArea nominal = boards(true, "1 in", 0, Product.Surface.DRESSED_DRY);
        assertThat(nominal.finishedThickness()).isEqualTo(Length.inches(3, 4));
        assertThat(nominal.tallyThickness()).isEqualTo(Length.inches(1));
        assertThat(boards(false, "19 mm", 0, Product.Surface.ROUGH).finishedThickness())
                .isEqualTo(Length.millimetres(19));
        assertThat(boards(false, "19 mm", 0, Product.Surface.ROUGH).tallyThickness())
                .isEqualTo(Length.inches(1));
        assertThat(boards(true, "3/4 in", 0, Product.Surface.DRESSED_DRY).tallyThickness())
                .isEqualTo(Length.inches(3, 4));
    }

    @Test
    void aCoverTakesBoardsUpToItsGreatestWidth() {
        CoverArea floor = boards(false, "19 mm", 126, Product.Surface.ROUGH);
        assertThat(floor.accepts(Length.millimetres(254), Length.feet(8))).isTrue();
        assertThat(floor.accepts(Length.millimetres(255), Length.feet(8))).isFalse();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> boards(false, "19 mm", 127, Product.Surface.ROUGH))
                .withMessageContaining("less than 5 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> floor.coveredBy(Length.millimetres(126), Length.feet(8)))
                .withMessageContaining("more than the overlap, 126 mm");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> floor.coveredBy(Length.millimetres(200), Length.millimetres(30_001)))
                .withMessageContaining("length");
    }

    @Test
    void anAreaWithoutANameThicknessOrMoistureIsRefused() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> boards(false, "0 in", 0, Product.Surface.ROUGH))
                .withMessageContaining("thickness of floor");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> boards(false, "1001 mm", 0, Product.Surface.ROUGH))
                .withMessageContaining("thickness of floor");
        for (double[] wrong : new double[][] {{101, 12}, {-1, 12}, {10, 201}, {10, Double.NaN}}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> new CoverArea(
                            "floor",
                            1,
                            false,
                            Length.inches(1),
                            Length.inches(5),
                            Length.inches(5),
                            Length.ZERO,
                            List.of(Length.feet(8)),
                            wrong[0],
                            Product.Wood.of(Product.Wood.Kind.ANY),
                            Product.Surface.ROUGH,
                            wrong[1]));
        }
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new CoverArea(
                        "floor",
                        1,
                        false,
                        Length.inches(1),
                        Length.inches(6),
                        Length.inches(5),
                        Length.ZERO,
                        List.of(Length.feet(8)),
                        0,
                        Product.Wood.of(Product.Wood.Kind.ANY),
                        Product.Surface.ROUGH,
                        12))
                .withMessageContaining("6 in or more");
    }

    @Test
    void aVolumeFactorIsOfMeasuredOverNominal() {
        assertThat(BoardMeasure.volumeFactor(1.5, 2, 3.5, 4, 8, 8)).isCloseTo(5.25 / 8, within(1e-15));
        assertThat(BoardMeasure.volumeFactor(2, 2, 4, 4, 8.5, 8)).isCloseTo(8.5 / 8, within(1e-15));
        assertThat(BoardMeasure.volumeFactorWorking(1.5, 2, 3.5, 4, 8.5, 8).value())
                .isEqualTo(BoardMeasure.volumeFactor(1.5, 2, 3.5, 4, 8.5, 8));
        for (int i = 0; i < 6; i++) {
            double[] v = {1, 1, 1, 1, 1, 1};
            v[i] = 0;
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> BoardMeasure.volumeFactor(v[0], v[1], v[2], v[3], v[4], v[5]))
                    .withMessageContaining("above 0");
        }
    }

    @Test
    void boardMeasureAndItsWorkingRefuseNothingByNothing() {
        for (double[] wrong : new double[][] {{0, 4, 8}, {2, 0, 8}, {2, 4, 0}, {2, 4, Double.NaN}}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> BoardMeasure.boardFeet(wrong[0], wrong[1], wrong[2]));
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> BoardMeasure.working(wrong[0], wrong[1], wrong[2]));
        }
    }

    @Test
    void anExactCountComparesAndIsWrittenAsAFraction() {
        BoardMeasure.Exact third = new BoardMeasure.Exact(BigInteger.TWO, BigInteger.valueOf(6));
        BoardMeasure.Exact half = new BoardMeasure.Exact(BigInteger.ONE, BigInteger.TWO);
        assertThat(third).hasToString("1/3").isLessThan(half);
        assertThat(third.value()).isEqualTo(1.0 / 3);
        assertThat(half.compareTo(third)).isPositive();
        assertThatThrownBy(() -> new BoardMeasure.Exact(BigInteger.ONE, BigInteger.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> half.rounded(0, Rounding.HALF_UP));
        // 10 by 20 by 1000 mm is a five-thousandth of a cubic metre.
        assertThat(BoardMeasure.exactCubicMetres(
                        Length.millimetres(10), Length.millimetres(20), Length.millimetres(1000)))
                .hasToString("1/5000");
    }

    /** A square of 40 mm with a tenth of wane on its width and half on its thickness: 32 and 40 mm are the longer way. */
    @Test
    void waneOfTheWidthShortensOneDiagonalOnly() {
        WaneLimit own = new WaneLimit("own", 0.5, 0.1, WaneLimit.of("Stud").source());
        Product post = new Product(
                "post",
                new Product.Size(false, Length.millimetres(40), Length.millimetres(40)),
                Length.feet(8),
                1,
                Product.Wood.of(Product.Wood.Kind.ANY),
                Product.Surface.ROUGH,
                15,
                Optional.of(own));
        assertThat(post.leastDiameterMillimetres()).isCloseTo(51.225, within(5e-4));
    }

    @Test
    void aBoardOfAnyOfSeveralLengthsIsOfNoneThatIsTooLong() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> slab("1 in", "10 in", Length.feet(12), Length.millimetres(30_001)))
                .withMessageContaining("length of slab");
    }

    private static CoverArea strips(String id, Length least, Length greatest) {
        return new CoverArea(
                id,
                1,
                false,
                Length.inches(1),
                least,
                greatest,
                Length.ZERO,
                List.of(Length.feet(8)),
                0,
                Product.Wood.of(Product.Wood.Kind.ANY),
                Product.Surface.ROUGH,
                12);
    }

    @Test
    void aCoverMayBeOfOneWidthAndHasANameAndALimit() {
        Length width = Length.inches(5);
        assertThat(strips("floor", width, width).accepts(width, Length.feet(8))).isTrue();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> strips(" ", width, width))
                .withMessageContaining("id");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> strips("floor", width, Length.millimetres(1001)))
                .withMessageContaining("greatest width of floor");
    }
}
