package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

class GreenTargetSizeTest {

    private static final Length DRESSED = Length.parse("1 1/2 in");
    private static final Length PLANING = Length.parse("0.06 in");
    private static final Length SCATTER = Length.parse("0.025 in");

    @Test
    void greenFormGivesTheBulletinsExample() {
        GreenTargetSize size =
                GreenTargetSize.planedGreen(Length.parse("1.560 in"), PLANING, 2, Length.parse("0.030 in"));
        assertThat(size.criticalInches()).isCloseTo(1.62, within(1e-12));
        assertThat(size.targetInches()).isCloseTo(1.68, within(1e-12));
    }

    @Test
    void settingDoesNotStepUpForAnErrorOfTheLastBit() {
        GreenTargetSize size =
                GreenTargetSize.planedGreen(Length.parse("1.560 in"), PLANING, 2, Length.parse("0.030 in"));
        assertThat(size.setting(Length.parse("0.01 in"))).isEqualTo(Length.parse("1.68 in"));
        assertThat(size.setting(Length.parse("1/16 in"))).isEqualTo(Length.parse("1 11/16 in"));
    }

    @Test
    void dryFormDividesByOneLessTheShrinkage() {
        GreenTargetSize size = GreenTargetSize.planedDry(DRESSED, PLANING, 2.35, 1.65, SCATTER);
        assertThat(size.targetInches()).isCloseTo(1.6388, within(5e-5));
    }

    @Property
    void wayBackFromTheCriticalSizeIsTheFinishedSize(
            @ForAll @LongRange(min = 5_000_000, max = 300_000_000) long finished,
            @ForAll @LongRange(max = 8_000_000) long planing,
            @ForAll @DoubleRange(max = 15) double shrinkage) {
        GreenTargetSize size = GreenTargetSize.planedDry(
                Length.nanometres(finished), Length.nanometres(planing), shrinkage, 0, Length.ZERO);
        Length green = Length.ofInches(size.targetInches(), Rounding.HALF_UP);
        assertThat(size.planedInches(green) * 25.4e6).isCloseTo((double) finished, within(1.0));
        assertThat(size.dryInches(green) * 25.4e6).isCloseTo((double) (finished + planing), within(1.0));
    }

    @Property
    void workingsGiveTheSameBits(
            @ForAll @DoubleRange(max = 15) double shrinkage,
            @ForAll @DoubleRange(min = -2, max = 3) double z,
            @ForAll @LongRange(min = 20_000_000, max = 60_000_000) long green) {
        Length sawn = Length.nanometres(green);
        for (GreenTargetSize size : new GreenTargetSize[] {
            GreenTargetSize.planedDry(DRESSED, PLANING, shrinkage, z, SCATTER),
            GreenTargetSize.planedGreen(DRESSED, PLANING, z, SCATTER)
        }) {
            assertThat(size.criticalWorking().value()).isEqualTo(size.criticalInches());
            assertThat(size.targetWorking().value()).isEqualTo(size.targetInches());
            assertThat(size.dryWorking(sawn).value()).isEqualTo(size.dryInches(sawn));
            assertThat(size.planedWorking(sawn).value()).isEqualTo(size.planedInches(sawn));
            assertThat(size.scantWorking(sawn).value()).isEqualTo(size.scantShare(sawn));
            Length step = Length.inches(1, 16);
            assertThat(size.settingWorking(step).value())
                    .isEqualTo(size.setting(step).toInches());
        }
    }

    @Test
    void scantShareIsTheShareThatZWasChosenFor() {
        double z = UndersizeZ.exact(5);
        GreenTargetSize size = GreenTargetSize.planedDry(DRESSED, PLANING, 2.347, z, SCATTER);
        Length target = Length.ofInches(size.targetInches(), Rounding.HALF_UP);
        assertThat(size.scantShare(target)).isCloseTo(0.05, within(1e-6));
    }

    @Test
    void withoutScatterAllAreScantOrNone() {
        GreenTargetSize size = GreenTargetSize.planedGreen(DRESSED, PLANING, 0, Length.ZERO);
        assertThat(size.scantShare(Length.parse("1.55 in"))).isEqualTo(1);
        assertThat(size.scantShare(Length.parse("1.57 in"))).isZero();
    }

    @Test
    void refusesImpossibleValues() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GreenTargetSize.planedDry(Length.ZERO, PLANING, 3, 1, SCATTER));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GreenTargetSize.planedDry(DRESSED, PLANING, Double.NaN, 1, SCATTER));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GreenTargetSize.planedDry(DRESSED, Length.millimetres(-1), 3, 1, SCATTER));
    }

    @Test
    void normalLawGivesKnownValues() {
        // Tables of the normal distribution, ten figures.
        assertThat(NormalLaw.shareBelow(0)).isEqualTo(0.5);
        assertThat(NormalLaw.shareBelow(1)).isCloseTo(0.8413447461, within(5e-11));
        assertThat(NormalLaw.shareBelow(-1.96)).isCloseTo(0.0249978951, within(5e-11));
        assertThat(NormalLaw.shareBelow(-6)).isCloseTo(9.865876450e-10, within(5e-19));
        assertThat(NormalLaw.deviate(0.975)).isCloseTo(1.9599639845, within(5e-11));
    }

    @Property
    void normalLawIsSymmetricAndRises(
            @ForAll @DoubleRange(min = -8, max = 8) double a, @ForAll @DoubleRange(min = -8, max = 8) double b) {
        assertThat(NormalLaw.shareBelow(a) + NormalLaw.shareBelow(-a)).isCloseTo(1, within(1e-14));
        assertThat(NormalLaw.shareBelow(Math.max(a, b)))
                .isGreaterThanOrEqualTo(NormalLaw.shareBelow(Math.min(a, b)) - 1e-15);
    }

    @Property
    void deviateIsTheWayBack(@ForAll @DoubleRange(min = -20, max = -0.01) double logarithm) {
        double share = StrictMath.exp(logarithm);
        assertThat(NormalLaw.shareBelow(NormalLaw.deviate(share))).isCloseTo(share, within(share * 1e-12));
    }

    @Test
    void printedZIsNotTheNormalLawAtOnePercent() {
        assertThat(UndersizeZ.published(1)).isEqualTo(2.34);
        assertThat(UndersizeZ.exact(1)).isCloseTo(2.3263, within(5e-5));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> UndersizeZ.published(7));
    }

    @Test
    void aPieceOfExactlyTheLeastSizeIsNotScant() {
        GreenTargetSize size = GreenTargetSize.planedGreen(Length.inches(2), Length.ZERO, 0, Length.ZERO);
        assertThat(size.scantShare(Length.inches(2))).isZero();
        GreenTargetSize scattered = GreenTargetSize.planedGreen(Length.inches(2), Length.ZERO, 0, SCATTER);
        assertThat(scattered.scantShare(Length.inches(2))).isEqualTo(0.5);
    }

    @Test
    void aWorkingSaysWhetherItIsPlanedDryOrGreen() {
        GreenTargetSize dry = GreenTargetSize.planedDry(DRESSED, PLANING, 3, 1, SCATTER);
        GreenTargetSize green = GreenTargetSize.planedGreen(DRESSED, PLANING, 1, SCATTER);
        assertThat(dry.criticalWorking().title()).endsWith(", planed dry");
        assertThat(green.criticalWorking().title()).endsWith(", planed green");
        assertThat(dry.criticalWorking().lines())
                .anySatisfy(line -> assertThat(line.name()).isEqualTo("finished size, dry"))
                .anySatisfy(line -> assertThat(line.name()).isEqualTo("shrinkage from green"));
        assertThat(green.criticalWorking().lines())
                .anySatisfy(line -> assertThat(line.name()).isEqualTo("finished size, green"))
                .noneSatisfy(line -> assertThat(line.name()).isEqualTo("shrinkage from green"));
        assertThat(green.finished()).isEqualTo(DRESSED);
    }

    @Test
    void withoutScatterTheWorkingSaysSo() {
        GreenTargetSize exact = GreenTargetSize.planedGreen(DRESSED, PLANING, 0, Length.ZERO);
        assertThat(exact.scantWorking(Length.parse("1.55 in")).value()).isEqualTo(1);
        assertThat(exact.scantWorking(Length.parse("1.57 in")).value()).isZero();
        assertThat(exact.scantWorking(Length.parse("1.57 in")).lines())
                .noneSatisfy(line -> assertThat(line.name()).contains("standard deviation"));
    }

    @Test
    void aStepOrADeviationThatCannotBeIsRefused() {
        GreenTargetSize size = GreenTargetSize.planedDry(DRESSED, PLANING, 3, 1, SCATTER);
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> size.setting(Length.ZERO))
                .withMessageContaining("setting step");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> size.settingWorking(Length.ZERO))
                .withMessageContaining("setting step");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GreenTargetSize.planedDry(DRESSED, PLANING, 3, 1, Length.millimetres(-1)))
                .withMessageContaining("standard deviation of sawing")
                .withMessageContaining("0 or more");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GreenTargetSize.planedDry(Length.ZERO, PLANING, 3, 1, SCATTER))
                .withMessageContaining("above 0");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GreenTargetSize.planedDry(DRESSED, PLANING, 3, 8.1, SCATTER));
    }

    @Test
    void theNormalLawEndsWithNothingAndRefusesWhatIsNoShare() {
        assertThat(NormalLaw.shareBelow(-38)).isZero();
        assertThat(NormalLaw.shareBelow(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(NormalLaw.shareBelow(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(NormalLaw.shareBelow(-37)).isPositive();
        assertThat(NormalLaw.shareBelow(2.5)).isCloseTo(0.9937903347, within(5e-11));
        assertThatIllegalArgumentException().isThrownBy(() -> NormalLaw.shareBelow(Double.NaN));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> NormalLaw.deviate(0));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> NormalLaw.deviate(1));
    }

    /** Nine rows are printed; each z is the normal law's within a fiftieth but the first, which stands for nearly none. */
    @Test
    void printedUndersizesAreNearlyTheNormalLaw() {
        assertThat(UndersizeZ.published()).hasSize(9);
        for (UndersizeZ.Row row : UndersizeZ.published()) {
            if (row.undersizePercent() > 0) {
                assertThat(row.z()).isCloseTo(UndersizeZ.exact(row.undersizePercent()), within(0.02));
                assertThat(UndersizeZ.published(row.undersizePercent())).isEqualTo(row.z());
            }
        }
        assertThat(UndersizeZ.source().id()).isEqualTo("brown-em-8731");
    }
}
