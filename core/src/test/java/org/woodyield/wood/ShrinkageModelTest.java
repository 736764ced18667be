package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.measure.OutOfDomainException;

class ShrinkageModelTest {

    private static final Species FIR = SpeciesCatalogue.published().find("douglas-fir");
    private static final ShrinkageModel LINE = ShrinkageModel.straightLine();
    private static final ShrinkageModel LUMBER = ShrinkageModel.lumberEquation();

    @Test
    void flatSawnWidthIsTangentialAndThicknessRadial() {
        assertThat(LINE.percent(FIR, Face.WIDTH, 0, 15)).isEqualTo(7.6 * 15 / 30);
        assertThat(LINE.percent(FIR, Face.THICKNESS, 0, 15)).isEqualTo(4.8 * 15 / 30);
    }

    @Test
    void quarterSawnTurnsTheTwoRound() {
        assertThat(LINE.percent(FIR, Face.WIDTH, 90, 15)).isCloseTo(2.4, within(1e-12));
        assertThat(LINE.percent(FIR, Face.THICKNESS, 90, 15)).isCloseTo(3.8, within(1e-12));
    }

    @Property
    void widthAndThicknessSumToRadialAndTangentialAtEveryAngle(
            @ForAll @DoubleRange(max = 90) double angle, @ForAll @DoubleRange(max = 30) double moisture) {
        double sum =
                LINE.percent(FIR, Face.WIDTH, angle, moisture) + LINE.percent(FIR, Face.THICKNESS, angle, moisture);
        assertThat(sum).isCloseTo((7.6 + 4.8) * (30 - moisture) / 30, within(1e-12));
    }

    @Property
    void drierIsNeverLarger(@ForAll @DoubleRange(max = 40) double a, @ForAll @DoubleRange(max = 40) double b) {
        double drier = Math.min(a, b);
        double wetter = Math.max(a, b);
        assertThat(LINE.percent(FIR, Face.WIDTH, 30, drier))
                .isGreaterThanOrEqualTo(LINE.percent(FIR, Face.WIDTH, 30, wetter));
    }

    @Property
    void workingsGiveTheSameBits(
            @ForAll Face face,
            @ForAll @DoubleRange(max = 90) double angle,
            @ForAll @DoubleRange(max = 200) double moisture) {
        assertThat(LINE.working(FIR, face, angle, moisture).value())
                .isEqualTo(LINE.percent(FIR, face, angle, moisture));
        double dry = 8 + moisture * 11 / 200;
        assertThat(LUMBER.working(FIR, face, angle, dry).value()).isEqualTo(LUMBER.percent(FIR, face, angle, dry));
    }

    @Test
    void startsAtThirtyPercentMoisture() {
        assertThat(LINE.percent(FIR, Face.WIDTH, 0, 30)).isZero();
        assertThat(LINE.percent(FIR, Face.WIDTH, 0, 80)).isZero();
        assertThat(LINE.percent(FIR, Face.WIDTH, 0, 29)).isPositive();
    }

    @Property
    void lumberEquationFallsWithMoistureAndIsTheSameAtEveryAngle(
            @ForAll Face face,
            @ForAll @DoubleRange(max = 90) double angle,
            @ForAll @DoubleRange(min = 8, max = 19) double a,
            @ForAll @DoubleRange(min = 8, max = 19) double b) {
        double drier = LUMBER.percent(FIR, face, angle, Math.min(a, b));
        double wetter = LUMBER.percent(FIR, face, angle, Math.max(a, b));
        assertThat(drier).isGreaterThanOrEqualTo(wetter);
        assertThat(wetter).isPositive();
        assertThat(LUMBER.percent(FIR, face, angle, a)).isEqualTo(LUMBER.percent(FIR, face, 0, a));
    }

    /** By hand: 6.031 / 0.215 = 28.05 % and 5.062 / 0.181 = 27.97 %, both short of the straight line's 30 %. */
    @Test
    void eachModelEndsAtItsOwnMoisture() {
        assertThat(endOfLumberEquation(Face.WIDTH)).isCloseTo(28.05, within(0.005));
        assertThat(endOfLumberEquation(Face.THICKNESS)).isCloseTo(27.97, within(0.005));
        assertThat(LINE.percent(FIR, Face.WIDTH, 0, 28.05)).isPositive();
        assertThat(LINE.percent(FIR, Face.WIDTH, 0, 30)).isZero();
    }

    /** Where the line through both ends of the equation's range comes to nothing. */
    private static double endOfLumberEquation(Face face) {
        double dry = LUMBER.percent(FIR, face, 0, 8);
        double wet = LUMBER.percent(FIR, face, 0, 19);
        return 19 + wet * 11 / (dry - wet);
    }

    @Provide
    Arbitrary<Species> species() {
        return Arbitraries.of(SpeciesCatalogue.published().all().stream()
                .filter(LINE::appliesTo)
                .toList());
    }

    @Property
    void inEverySpeciesShrinkageFallsWithMoistureAndEndsAtThirtyAndItsSumKeepsAtEveryAngle(
            @ForAll("species") Species species,
            @ForAll @DoubleRange(max = 90) double angle,
            @ForAll @DoubleRange(max = 60) double a,
            @ForAll @DoubleRange(max = 60) double b) {
        double both = 0;
        for (Face face : Face.values()) {
            double drier = LINE.percent(species, face, angle, Math.min(a, b));
            double wetter = LINE.percent(species, face, angle, Math.max(a, b));
            assertThat(drier).isGreaterThanOrEqualTo(wetter);
            assertThat(wetter == 0).isEqualTo(Math.max(a, b) >= 30);
            both += drier;
        }
        double along = LINE.percent(species, Face.WIDTH, 0, Math.min(a, b));
        double across = LINE.percent(species, Face.THICKNESS, 0, Math.min(a, b));
        assertThat(both).isCloseTo(along + across, within(1e-12));
    }

    @Property
    void whatTheLumberEquationTakesItShrinksLessTheWetterItStays(
            @ForAll("species") Species species,
            @ForAll Face face,
            @ForAll @DoubleRange(min = 8, max = 19) double a,
            @ForAll @DoubleRange(min = 8, max = 19) double b) {
        if (LUMBER.appliesTo(species)) {
            assertThat(LUMBER.percent(species, face, 0, Math.min(a, b)))
                    .isGreaterThanOrEqualTo(LUMBER.percent(species, face, 0, Math.max(a, b)));
        } else {
            assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> LUMBER.percent(species, face, 0, a));
        }
    }

    @Test
    void lumberEquationGivesThePublishedPairAtFifteenPercent() {
        assertThat(LUMBER.percent(FIR, Face.WIDTH, 0, 15)).isCloseTo(2.806, within(5e-4));
        assertThat(LUMBER.percent(FIR, Face.THICKNESS, 0, 15)).isCloseTo(2.347, within(5e-4));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "white-oak",
                "redwood",
                "redwood-old-growth",
                "western-redcedar",
                "eastern-redcedar",
                "incense-cedar",
                "alaska-yellow-cedar",
                "port-orford-cedar",
                "atlantic-white-cedar",
                "northern-white-cedar"
            })
    void lumberEquationRefusesHardwoodsRedwoodAndCedars(String id) {
        Species species = SpeciesCatalogue.published().find(id);
        assertThat(LUMBER.appliesTo(species)).isFalse();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> LUMBER.percent(species, Face.WIDTH, 0, 15))
                .withMessageContaining("redwood and cedars");
    }

    @ParameterizedTest
    @ValueSource(doubles = {7.9, 19.1, Double.NaN})
    void lumberEquationRefusesMoistureOutsideEightToNineteen(double moisture) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> LUMBER.percent(FIR, Face.WIDTH, 0, moisture))
                .withMessageContaining("8 to 19 %");
    }

    @Test
    void straightLineRefusesASpeciesWithoutTangentialShrinkage() {
        Species birch = SpeciesCatalogue.published().find("gray birch");
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> LINE.percent(birch, Face.WIDTH, 0, 15));
    }

    @Test
    void modelsHaveNamesOfTheirOwn() {
        assertThat(LINE.id()).isEqualTo("straight-line");
        assertThat(LUMBER.id()).isEqualTo("lumber-equation");
        assertThat(LINE.label()).isNotEmpty().isNotEqualTo(LUMBER.label());
        assertThat(LUMBER.label()).as("names its publication").contains("FPL-RP-489");
    }

    @Test
    void aWorkingNamesItsFaceAndRefusesWhatItsFigureRefuses() {
        for (ShrinkageModel model : new ShrinkageModel[] {LINE, LUMBER}) {
            assertThat(model.working(FIR, Face.WIDTH, 0, 12).title()).startsWith("Shrinkage of the width");
            assertThat(model.working(FIR, Face.THICKNESS, 0, 12).title()).startsWith("Shrinkage of the thickness");
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> model.working(FIR, Face.WIDTH, 0, -1))
                    .withMessageContaining("final moisture");
        }
    }
}
