package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;

class SizeChangeTest {

    private static final Species FIR = SpeciesCatalogue.published().find("douglas-fir");
    private static final Species OAK = SpeciesCatalogue.published().find("white oak");
    private static final ShrinkageModel LINE = ShrinkageModel.straightLine();
    private static final ShrinkageModel LUMBER = ShrinkageModel.lumberEquation();

    @Test
    void allThreeModelsSpeakOfDrySoftwoodAndAreCompared() {
        SizeChange.Comparison all = SizeChange.compare(FIR, Face.WIDTH, 0, 10, "in", 14, 8);
        assertThat(all.results()).hasSize(3).allSatisfy(result -> {
            assertThat(result.size()).isBetween(9.7, 9.95);
            assertThat(result.working().value()).isEqualTo(result.size());
        });
        assertThat(all.leftOut()).isEmpty();
        assertThat(all.spread().orElseThrow()).isPositive();
    }

    @Test
    void aModelThatDoesNotApplySaysWhatItWouldNeed() {
        SizeChange.Comparison oak = SizeChange.compare(OAK, Face.WIDTH, 0, 10, "in", SizeChange.GREEN, 15);
        assertThat(oak.results()).extracting(SizeChange.Result::model).containsExactly(LINE.label());
        assertThat(oak.spread()).isEmpty();
        assertThat(oak.leftOut())
                .extracting(SizeChange.LeftOut::reason)
                .anySatisfy(reason -> assertThat(reason).contains("softwoods but redwood and cedars"));
        assertThat(oak.leftOut())
                .extracting(SizeChange.LeftOut::reason)
                .anySatisfy(reason -> assertThat(reason).contains("6 to 14 %"));
    }

    @Test
    void whatNoModelCouldAnswerIsRefused() {
        for (double moisture : new double[] {-1, 301, Double.NaN}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> SizeChange.compare(FIR, Face.WIDTH, 0, 10, "in", moisture, 8));
        }
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeChange.compare(FIR, Face.WIDTH, 91, 10, "in", 12, 8));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeChange.compare(FIR, Face.WIDTH, 0, Double.NaN, "in", 12, 8));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeChange.size(LUMBER, FIR, Face.WIDTH, 0, 10, 25, 15))
                .withMessageContaining("8 to 19 %");
    }

    @Property(tries = 300)
    void thereAndBackIsTheSameSize(
            @ForAll @DoubleRange(min = 8, max = 19) double from, @ForAll @DoubleRange(min = 8, max = 19) double to) {
        for (ShrinkageModel model : new ShrinkageModel[] {LINE, LUMBER}) {
            double there = SizeChange.size(model, FIR, Face.WIDTH, 30, 10, from, to);
            assertThat(SizeChange.size(model, FIR, Face.WIDTH, 30, there, to, from))
                    .isCloseTo(10, within(1e-12));
        }
    }

    @Property(tries = 300)
    void wetterIsNeverSmallerByAnyModel(
            @ForAll @DoubleRange(min = 8, max = 14) double a, @ForAll @DoubleRange(min = 8, max = 14) double b) {
        SizeChange.Comparison all =
                SizeChange.compare(FIR, Face.THICKNESS, 20, 2, "in", Math.min(a, b), Math.max(a, b));
        assertThat(all.results())
                .hasSize(3)
                .allSatisfy(r -> assertThat(r.size()).isGreaterThanOrEqualTo(2));
    }

    @Property(tries = 300)
    void coefficientsOfBothFacesAddUpToBothDirectionsAtEveryAngle(@ForAll @DoubleRange(max = 90) double angle) {
        double sum = SizeChange.byCoefficient(OAK, Face.WIDTH, angle, 1, 12, 8)
                + SizeChange.byCoefficient(OAK, Face.THICKNESS, angle, 1, 12, 8);
        double flat = SizeChange.byCoefficient(OAK, Face.WIDTH, 0, 1, 12, 8)
                + SizeChange.byCoefficient(OAK, Face.THICKNESS, 0, 1, 12, 8);
        assertThat(sum).isCloseTo(flat, within(1e-14));
    }

    @Property(tries = 300)
    void workingsGiveTheSameBits(
            @ForAll Face face,
            @ForAll @DoubleRange(max = 90) double angle,
            @ForAll @DoubleRange(min = 8, max = 14) double from,
            @ForAll @DoubleRange(min = 8, max = 14) double to) {
        for (Species species : new Species[] {FIR, OAK}) {
            assertThat(SizeChange.byCoefficientWorking(species, face, angle, 3.5, "in", from, to)
                            .value())
                    .isEqualTo(SizeChange.byCoefficient(species, face, angle, 3.5, from, to));
            assertThat(SizeChange.sizeWorking(LINE, species, face, angle, 3.5, "in", from, to)
                            .value())
                    .isEqualTo(SizeChange.size(LINE, species, face, angle, 3.5, from, to));
        }
    }

    @Test
    void aCoefficientThatWasNotReadFollowsFromShrinkageAndSaysSo() {
        assertThat(SizeChange.byCoefficientWorking(FIR, Face.WIDTH, 0, 10, "in", 12, 8)
                        .lines())
                .anySatisfy(line -> assertThat(line.name()).contains("not read in print"));
        assertThat(SizeChange.byCoefficientWorking(OAK, Face.WIDTH, 0, 10, "in", 12, 8)
                        .lines())
                .noneSatisfy(line -> assertThat(line.name()).contains("not read in print"));
    }

    /** A model that ends below 30 % still starts from green wood: 10 in less 2.806 % at 15 %, as the equation has it. */
    @Test
    void greenWoodHasNotShrunkByAnyModelFromThirtyPercentOn() {
        assertThat(SizeChange.size(LUMBER, FIR, Face.WIDTH, 0, 10, 30, 15)).isCloseTo(9.7194, within(5e-5));
        assertThat(SizeChange.sizeWorking(LUMBER, FIR, Face.WIDTH, 0, 10, "in", 30, 15)
                        .value())
                .isEqualTo(SizeChange.size(LUMBER, FIR, Face.WIDTH, 0, 10, 30, 15));
        assertThat(SizeChange.sizeWorking(LINE, FIR, Face.WIDTH, 0, 10, "in", 80, 15)
                        .lines())
                .anySatisfy(line -> assertThat(line.name()).contains("the wood is green"));
        assertThat(SizeChange.sizeWorking(LINE, FIR, Face.WIDTH, 0, 10, "in", 12, 8)
                        .lines())
                .noneSatisfy(line -> assertThat(line.name()).contains("the wood is green"));
    }

    @Test
    void aModelThatIsNotForTheSpeciesIsNotAskedEvenOfGreenWood() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeChange.size(LUMBER, OAK, Face.WIDTH, 0, 10, 80, 80));
    }

    /** Flat-sawn width moves along the rings: C = 7.6 / (3000 - 152) = 0.0026685, thickness 4.8 / (3000 - 96) = 0.0016529. */
    @Test
    void coefficientsThatFollowFromShrinkageKeepTheirDirection() {
        assertThat(SizeChange.byCoefficient(FIR, Face.WIDTH, 0, 10, 8, 12)).isCloseTo(10.10674, within(5e-6));
        assertThat(SizeChange.byCoefficient(FIR, Face.THICKNESS, 0, 10, 8, 12)).isCloseTo(10.06612, within(5e-6));
    }

    @Test
    void aWorkingNamesItsFace() {
        assertThat(SizeChange.sizeWorking(LINE, FIR, Face.WIDTH, 0, 10, "in", 12, 8)
                        .title())
                .contains("moisture, width");
        assertThat(SizeChange.byCoefficientWorking(FIR, Face.THICKNESS, 0, 10, "in", 12, 8)
                        .title())
                .contains("moisture, thickness");
    }

    @Test
    void twoModelsAreAsFarApartAsTheirSizes() {
        SizeChange.Comparison two = SizeChange.compare(FIR, Face.WIDTH, 0, 10, "in", SizeChange.GREEN, 15);
        assertThat(two.results()).hasSize(2);
        assertThat(two.spread().orElseThrow()).as("3.8 and 2.806 % of 10 in").isCloseTo(0.0994, within(5e-5));
    }
}
