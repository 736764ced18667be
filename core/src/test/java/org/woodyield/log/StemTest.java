package org.woodyield.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;

/** Form class, bark, taper and volume of stems. */
class StemTest {

    private static final MeasuredStem STEM =
            new MeasuredStem(List.of(new StemPoint(1, 20), new StemPoint(17.3, 16), new StemPoint(49.3, 8)));

    @Test
    void aMeasuredStemIsStraightBetweenItsPlaces() {
        assertThat(STEM.diameterInches(1)).isEqualTo(20);
        assertThat(STEM.diameterInches(17.3)).isEqualTo(16);
        assertThat(STEM.diameterInches(33.3)).isCloseTo(12, within(1e-12));
        assertThat(STEM.diameterInches(49.3)).isEqualTo(8);
    }

    @Test
    void nothingIsGuessedBeyondTheMeasuredPlaces() {
        for (double height : new double[] {0.99, 49.4, Double.NaN}) {
            assertThatThrownBy(() -> STEM.diameterInches(height))
                    .isInstanceOf(OutOfDomainException.class)
                    .hasMessageContaining("measure the stem there too");
            assertThatThrownBy(() -> STEM.working(height)).isInstanceOf(OutOfDomainException.class);
        }
    }

    @Test
    void withoutItsSwellingsAStemIsNoThickerThanBelow() {
        List<StemPoint> places = List.of(
                new StemPoint(1, 20),
                new StemPoint(5, 15),
                new StemPoint(9, 21),
                new StemPoint(12, 16),
                new StemPoint(20, 14));
        assertThat(MeasuredStem.withoutSwellings(places).points())
                .extracting(StemPoint::diameterInches)
                .containsExactly(20.0, 15.0, 15.0, 15.0, 14.0);
        assertThat(MeasuredStem.withoutSwellings(STEM.points())).isEqualTo(STEM);
        assertThatThrownBy(() -> MeasuredStem.withoutSwellings(List.of(new StemPoint(9, 20), new StemPoint(1, 19))))
                .hasMessageContaining("from the ground up");
        assertThatThrownBy(() -> MeasuredStem.withoutSwellings(
                        List.of(new StemPoint(0, 12), new StemPoint(10, 14), new StemPoint(20, 16))))
                .hasMessageContaining("16.0 in")
                .hasMessageContaining("no more than at its first place, 12.0 in")
                .hasMessageContaining("from the ground up");
    }

    @Test
    void placesOutOfOrderAreRefused() {
        assertThatThrownBy(() -> new MeasuredStem(List.of(new StemPoint(1, 20))))
                .hasMessageContaining("2 or more");
        assertThatThrownBy(() -> new MeasuredStem(List.of(new StemPoint(9, 20), new StemPoint(1, 19))))
                .hasMessageContaining("place 2");
        assertThatThrownBy(() -> new MeasuredStem(List.of(new StemPoint(1, 20), new StemPoint(9, 21))))
                .hasMessageContaining("no thicker than");
        assertThatThrownBy(() -> new StemPoint(Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
    }

    @Property(tries = 300)
    void aStemNeverGetsThickerUpward(
            @ForAll @DoubleRange(min = 1, max = 49.3) double one,
            @ForAll @DoubleRange(min = 1, max = 49.3) double two) {
        assertThat(STEM.diameterInches(Math.max(one, two)))
                .isLessThanOrEqualTo(STEM.diameterInches(Math.min(one, two)));
        assertThat(STEM.working(one).value()).isEqualTo(STEM.diameterInches(one));
    }

    /** The ranges keep the curve above nothing up to the tip. */
    @Property(tries = 200)
    void aFitGivesBackTheCurveThatThePlacesLieOn(
            @ForAll @DoubleRange(min = -5, max = -3.2) double b1,
            @ForAll @DoubleRange(min = 0.3, max = 1.1) double b2,
            @ForAll @DoubleRange(min = -0.6, max = 0) double b3,
            @ForAll @DoubleRange(min = 10, max = 60) double b4) {
        TaperCurve curve = new TaperCurve(16, 90, b1, b2, b3, b4, 0.75, 0.1);
        List<StemPoint> points = DoubleStream.iterate(0.5, h -> h < 90, h -> h + 4)
                .mapToObj(h -> new StemPoint(h, curve.diameterInches(h)))
                .toList();
        TaperCurve fit = TaperCurve.fit(16, 90, 0.75, 0.1, points);
        for (StemPoint point : points) {
            assertThat(fit.diameterInches(point.heightFeet()))
                    .isCloseTo(point.diameterInches(), within(1e-6))
                    .isEqualTo(fit.working(point.heightFeet()).value());
        }
    }

    @Test
    void aParabolaThroughItsOwnPlaces() {
        // d^2/D^2 = 1 - z^2: b1 = 0, b2 = -1.
        TaperCurve curve = TaperCurve.fitParabola(
                10, 100, List.of(new StemPoint(0, 10), new StemPoint(60, 8), new StemPoint(80, 6)));
        assertThat(curve.b1()).isCloseTo(0, within(1e-12));
        assertThat(curve.b2()).isCloseTo(-1, within(1e-12));
        assertThat(curve.diameterInches(100)).isZero();
        assertThatThrownBy(() -> curve.diameterInches(101)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> TaperCurve.fitParabola(10, 100, List.of(new StemPoint(10, 9))))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("at least 2");
        assertThatThrownBy(() -> TaperCurve.fitParabola(
                        10, 100, List.of(new StemPoint(10, 9), new StemPoint(10, 9), new StemPoint(10, 9))))
                .hasMessageContaining("too much alike");
        assertThatThrownBy(() -> new TaperCurve(10, 100, -1, 0, 0, 0, 0.1, 0.7)).hasMessageContaining("lower join");
        assertThatThrownBy(() -> new TaperCurve(10, 100, Double.NaN, 0, 0, 0, 0, 0))
                .isInstanceOf(OutOfDomainException.class);
    }

    @Property(tries = 300)
    void formClassThereAndBack(
            @ForAll @DoubleRange(min = 40, max = 100) double percent,
            @ForAll @DoubleRange(min = 5, max = 60) double dbh) {
        FormClass formClass = new FormClass(percent);
        assertThat(formClass.upperInches(dbh))
                .isEqualTo(formClass.upperInchesWorking(dbh).value());
        assertThat(Math.min(100, 100 * formClass.upperInches(dbh) / dbh)).isCloseTo(percent, within(1e-12));
    }

    @Test
    void formClassOfATree() {
        assertThat(FormClass.of(20, 15.6).percent()).isCloseTo(78, within(1e-12));
        assertThatThrownBy(() -> FormClass.of(20, 21)).hasMessageContaining("form class");
        assertThatThrownBy(() -> new FormClass(Double.NaN)).isInstanceOf(OutOfDomainException.class);
    }

    @Property(tries = 300)
    void barkByVolumeThereAndBack(@ForAll @DoubleRange(min = 0, max = 250) double percent) {
        BarkRatio ratio = BarkRatio.ofWoodPercent(percent);
        assertThat(ratio.percentOfWood())
                .isCloseTo(percent, within(1e-9))
                .isEqualTo(ratio.percentOfWoodWorking().value());
        assertThat(ratio.percentOfStem()).isEqualTo(ratio.percentOfStemWorking().value());
        // Bark b beside wood 1 is b / (1 + b) of the stem.
        assertThat(ratio.percentOfStem()).isCloseTo(100 * percent / (100 + percent), within(1e-9));
        assertThat(ratio.inside(12)).isEqualTo(ratio.insideWorking(12, "in").value());
    }

    @Test
    void barkRatioByHand() {
        assertThat(new BarkRatio(0.91).percentOfWood()).isCloseTo(20.76, within(0.005));
        assertThat(BarkRatio.fit(new double[] {10, 20}, new double[] {9, 18}).ratio())
                .isCloseTo(0.9, within(1e-15));
        assertThatThrownBy(() -> BarkRatio.fit(new double[0], new double[0])).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new BarkRatio(1.01)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new BarkRatio(0.9).inside(Double.NaN)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void theEquationOfTheCherryTreesAnswersAmongThemOnly() {
        List<MeasuredTree> trees = MeasuredTree.blackCherry();
        assertThat(trees).hasSize(31);
        StemVolumeEquation equation = StemVolumeEquation.fit(trees);
        for (MeasuredTree tree : trees) {
            double volume = equation.cubicFeet(tree.breastHeightInches(), tree.heightFeet());
            assertThat(volume)
                    .isEqualTo(equation.working(tree.breastHeightInches(), tree.heightFeet())
                            .value());
            assertThat(volume / tree.volumeCubicFeet()).isBetween(0.8, 1.2);
        }
        assertThatThrownBy(() -> equation.cubicFeet(21, 80)).hasMessageContaining("8.3 to 20.6 in");
        assertThatThrownBy(() -> equation.cubicFeet(12, Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> StemVolumeEquation.fit(trees.subList(0, 2))).hasMessageContaining("at least 3");
    }

    @Property(tries = 300)
    void aStemByFormClassFallsAllTheWayAndItsWorkingHasItsBits(
            @ForAll @DoubleRange(min = 6, max = 40) double breastHeight,
            @ForAll @IntRange(min = 40, max = 90) int percent,
            @ForAll @DoubleRange(min = 0, max = 1) double barkShare,
            @ForAll boolean barkKnown,
            @ForAll boolean taperKnown,
            @ForAll boolean heightKnown) {
        double spare = breastHeight * (1 - percent / 100.0) / 2;
        FormClassStem stem = new FormClassStem(
                breastHeight,
                new FormClass(percent),
                barkKnown ? OptionalDouble.of(barkShare * Math.max(0, spare - 2e-6)) : OptionalDouble.empty(),
                taperKnown && !heightKnown ? OptionalDouble.of(0.125) : OptionalDouble.empty(),
                heightKnown ? OptionalDouble.of(80) : OptionalDouble.empty());
        double before = Double.MAX_VALUE;
        for (double h = 0; h <= stem.heightFeet().greatest(); h += 0.85) {
            double d = stem.diameterInches(h);
            assertThat(d).isBetween(0.0, before);
            assertThat(stem.working(h).value()).isEqualTo(d);
            before = d;
        }
        if (heightKnown) {
            assertThat(stem.heightFeet().greatest()).isEqualTo(80);
            assertThat(stem.diameterInches(80)).isCloseTo(0, within(1e-9));
        }
        assertThat(stem.diameterInches(17.3)).isCloseTo(new FormClass(percent).upperInches(breastHeight), within(1e-9));
    }

    @Test
    void aStemByFormClassSaysNothingItDoesNotKnow() {
        FormClassStem bare = new FormClassStem(16, new FormClass(78), OptionalDouble.empty(), OptionalDouble.empty());
        assertThat(bare.diameterInches(0)).isEqualTo(12.48);
        assertThatThrownBy(() -> bare.diameterInches(17.4)).hasMessageContaining("taper above 17.3 ft");
        assertThatThrownBy(() -> bare.diameterInches(Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new FormClassStem(16, new FormClass(78), OptionalDouble.of(2), OptionalDouble.empty()))
                .hasMessageContaining("measure again");
        assertThatThrownBy(() -> new FormClassStem(16, new FormClass(78), OptionalDouble.empty(), OptionalDouble.of(0)))
                .hasMessageContaining("each foot of height");
        OptionalDouble none = OptionalDouble.empty();
        for (double height : new double[] {17.3, 23.4, 400.1, Double.NaN}) {
            assertThatThrownBy(() -> new FormClassStem(16, new FormClass(78), none, none, OptionalDouble.of(height)))
                    .hasMessageContaining("23.6 to 400 ft");
        }
        assertThatThrownBy(() ->
                        new FormClassStem(16, new FormClass(78), none, OptionalDouble.of(0.125), OptionalDouble.of(80)))
                .hasMessageContaining("not both");
    }
}
