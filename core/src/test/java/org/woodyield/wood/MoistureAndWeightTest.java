package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;

class MoistureAndWeightTest {

    private static final Species FIR = SpeciesCatalogue.published().find("douglas-fir");
    private static final Species PINE = SpeciesCatalogue.published().find("eastern-white-pine");

    @Test
    void equilibriumMoistureIsNearTheHandbooksTable() {
        assertThat(EquilibriumMoisture.fahrenheit().percent(70, 65)).isCloseTo(12.0, within(0.07));
        assertThat(EquilibriumMoisture.celsius().percent(21.1, 65)).isCloseTo(12.0, within(0.06));
    }

    @Property
    void equilibriumMoistureRisesWithHumidity(
            @ForAll @DoubleRange(min = 30, max = 270) double t,
            @ForAll @DoubleRange(max = 98) double a,
            @ForAll @DoubleRange(max = 98) double b) {
        EquilibriumMoisture f = EquilibriumMoisture.fahrenheit();
        assertThat(f.percent(t, Math.max(a, b))).isGreaterThanOrEqualTo(f.percent(t, Math.min(a, b)));
        assertThat(f.percent(t, 0)).isZero();
    }

    @Property
    void equilibriumMoistureWorkingsGiveTheSameBits(
            @ForAll @DoubleRange(min = 30, max = 130) double t, @ForAll @DoubleRange(max = 98) double h) {
        assertThat(EquilibriumMoisture.fahrenheit().working(t, h).value())
                .isEqualTo(EquilibriumMoisture.fahrenheit().percent(t, h));
        assertThat(EquilibriumMoisture.celsius().working(t, h).value())
                .isEqualTo(EquilibriumMoisture.celsius().percent(t, h));
    }

    @Test
    void equilibriumMoistureRefusesWhatTheEquationDoesNotCover() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> EquilibriumMoisture.celsius().percent(200, 50));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> EquilibriumMoisture.fahrenheit().percent(70, 99));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> EquilibriumMoisture.fahrenheit().percent(Double.NaN, 50));
    }

    @Test
    void wetBasisIsNotDryBasis() {
        assertThat(MoistureContent.fromMasses(8.5, 7.5)).isCloseTo(13.33, within(0.005));
        assertThat(MoistureContent.wetBasis(MoistureContent.fromMasses(8.5, 7.5)))
                .isCloseTo(11.76, within(0.005));
    }

    @Property
    void basesConvertBothWays(@ForAll @DoubleRange(max = 300) double moisture) {
        assertThat(MoistureContent.dryBasis(MoistureContent.wetBasis(moisture))).isCloseTo(moisture, within(1e-10));
        assertThat(MoistureContent.wetBasisWorking(moisture).value()).isEqualTo(MoistureContent.wetBasis(moisture));
        double wet = MoistureContent.wetBasis(moisture);
        assertThat(MoistureContent.dryBasisWorking(wet).value()).isEqualTo(MoistureContent.dryBasis(wet));
        assertThat(MoistureContent.fromMassesWorking(100 + moisture, 100, "g").value())
                .isEqualTo(MoistureContent.fromMasses(100 + moisture, 100));
    }

    @Test
    void dryMassMustNotExceedWetMass() {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> MoistureContent.fromMasses(7, 8));
    }

    @Test
    void weightCountsDryWoodOnGreenVolume() {
        assertThat(WoodWeight.kilograms(FIR, new Volume(2), 0)).isEqualTo(900);
        assertThat(WoodWeight.kilograms(FIR, new Volume(2), 20)).isCloseTo(1080, within(1e-9));
    }

    @Property
    void weightFallsByTheWaterLost(
            @ForAll @DoubleRange(max = 200) double from, @ForAll @DoubleRange(max = 1) double share) {
        double to = from * share;
        Volume volume = new Volume(0.7);
        double lost = WoodWeight.waterLostKilograms(FIR, volume, from, to);
        assertThat(WoodWeight.kilograms(FIR, volume, from) - lost)
                .isCloseTo(WoodWeight.kilograms(FIR, volume, to), within(1e-9));
        assertThat(WoodWeight.waterLostWorking(FIR, volume, from, to).value()).isEqualTo(lost);
        assertThat(WoodWeight.kilogramsWorking(FIR, volume, from).value())
                .isEqualTo(WoodWeight.kilograms(FIR, volume, from));
        assertThat(WoodWeight.greenKilogramsWorking(FIR, volume).value())
                .isEqualTo(WoodWeight.greenKilograms(FIR, volume));
    }

    @Property
    void dryToGreenFactorWorkingGivesTheSameBits(
            @ForAll @DoubleRange(max = 200) double wood, @ForAll @DoubleRange(max = 200) double bark) {
        assertThat(WoodWeight.dryToGreenWorking(0.45, wood, 0.4, bark, 12).value())
                .isEqualTo(WoodWeight.dryToGreenFactor(0.45, wood, 0.4, bark, 12));
        assertThat(WoodWeight.dryToGreenFactor(0.45, wood, 0.4, wood, 12)).isCloseTo(1 + wood / 100, within(1e-12));
    }

    @Test
    void weightRefusesASpeciesWithoutGravity() {
        Species magnolia = SpeciesCatalogue.published().find("southern magnolia");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WoodWeight.kilograms(magnolia, new Volume(1), 12))
                .withMessageContaining("specific gravity");
    }

    @Test
    void airDryingGrowsWithThicknessByTheStatedExponent() {
        AirDrying.Days inch = AirDrying.ofInchLumber(PINE).orElseThrow();
        assertThat(inch.least()).isEqualTo(60);
        assertThat(inch.source().standing()).isEqualTo(Standing.SECONDHAND);
        AirDrying.ThicknessExponent exponent = AirDrying.ThicknessExponent.DOUBLE_THICKNESS;
        AirDrying.Days two = AirDrying.days(PINE, Length.inches(2), exponent);
        assertThat(two.least() / inch.least()).isCloseTo(2.5, within(0.005));
        assertThat(AirDrying.daysWorking(PINE, Length.inches(2), exponent).value("least"))
                .isEqualTo(two.least());
        assertThat(AirDrying.daysWorking(PINE, Length.inches(2), exponent).value("greatest"))
                .isEqualTo(two.greatest());
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> AirDrying.days(PINE, Length.inches(6), exponent));
    }

    @Test
    void dimensionalChangeHoldsFromSixToFourteenPercent() {
        Species alder = SpeciesCatalogue.published().find("red alder");
        Sourced c = DimensionalChange.coefficient(alder, DimensionalChange.Direction.TANGENTIAL)
                .orElseThrow();
        assertThat(c.value()).isEqualTo(0.00256);
        assertThat(DimensionalChange.change(8, c.value(), 6, 12)).isCloseTo(0.1229, within(5e-5));
        assertThat(DimensionalChange.changeWorking(8, "in", c, 6, 12).value())
                .isEqualTo(DimensionalChange.change(8, c.value(), 6, 12));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> DimensionalChange.change(8, c.value(), 6, 15))
                .withMessageContaining("6 to 14 %");
        assertThat(DimensionalChange.coefficient(FIR, DimensionalChange.Direction.RADIAL))
                .isEmpty();
    }

    @Test
    void coefficientFollowsFromShrinkage() {
        Sourced shrinkage = new Sourced(7.3, "%", Sources.get("wood-handbook-4-3"));
        assertThat(DimensionalChange.coefficientFromShrinkage(7.3)).isCloseTo(0.00256, within(5e-6));
        assertThat(DimensionalChange.coefficientFromShrinkageWorking(shrinkage).value())
                .isEqualTo(DimensionalChange.coefficientFromShrinkage(7.3));
    }

    @Test
    void eachEquationKnowsTheOtherAndItsTemperature() {
        EquilibriumMoisture f = EquilibriumMoisture.fahrenheit();
        EquilibriumMoisture c = EquilibriumMoisture.celsius();
        assertThat(f.other()).isSameAs(c);
        assertThat(c.other()).isSameAs(f);
        assertThat(f.toOther(212)).isCloseTo(100, within(1e-12));
        assertThat(c.toOther(100)).isCloseTo(212, within(1e-12));
        assertThat(f.toOther(-40)).isCloseTo(-40, within(1e-12));
    }

    @Test
    void aWorkingRefusesWhatItsFigureRefuses() {
        Volume cubicMetre = new Volume(1);
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MoistureContent.fromMassesWorking(7, 8, "g"))
                .withMessageContaining("no more than the wet mass, 7.0");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WoodWeight.waterLostKilograms(FIR, cubicMetre, 12, 13))
                .withMessageContaining("0 to 12 %");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WoodWeight.waterLostWorking(FIR, cubicMetre, 12, 13))
                .withMessageContaining("0 to 12 %");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WoodWeight.dryToGreenFactor(0.45, 80, 0.4, 50, 101))
                .withMessageContaining("0 to 100 %");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> WoodWeight.dryToGreenWorking(0.45, 80, 0.4, 50, 101))
                .withMessageContaining("0 to 100 %");
        Sourced c = new Sourced(0.00256, "per %", Sources.get("wood-handbook-13-5"));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> DimensionalChange.changeWorking(8, "in", c, 5.9, 12))
                .withMessageContaining("6 to 14 %");
    }

    @Test
    void anUndriedPieceHasLostNoWater() {
        assertThat(MoistureContent.fromMasses(7.5, 7.5)).isZero();
        assertThat(WoodWeight.waterLostKilograms(FIR, new Volume(1), 80, 80)).isZero();
    }
}
