package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.Stage;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.wood.Species;

class SawingWorkTest {

    static final Species OAK = new Species(
            "test-oak",
            "test oak",
            "",
            List.of(),
            true,
            Optional.of(new Sourced(0.6, "", Sources.get("user"))),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    private static final WorkInputs INPUTS = CuttingRateTest.CHAIN;
    private static final Length KERF = Length.millimetres(8);

    private static final LogWork LOG =
            new LogWork("1", OAK, List.of(new Cut(30, 36, 250), new Cut(40, 45, 250), new Cut(42, 47, 250)), 1);

    @Test
    void warmUpAndCoolDownComeAtEveryPass() {
        WorkEstimate estimate = WorkEstimate.of(INPUTS, KERF, List.of(LOG, LOG));
        assertThat(estimate.time().warmUp()).isEqualTo(6 * INPUTS.get(WorkInput.WARM_UP));
        assertThat(estimate.time().coolDown()).isEqualTo(6 * INPUTS.get(WorkInput.COOL_DOWN));
        assertThat(estimate.time().turning()).isEqualTo(2 * INPUTS.get(WorkInput.TURNING));
        assertThat(estimate.logs())
                .hasSize(2)
                .allSatisfy(log -> assertThat(log.passes()).isEqualTo(3));
    }

    @Test
    void thePartsOfTheLogsAddUpToTheWhole() {
        WorkEstimate estimate = WorkEstimate.of(INPUTS, KERF, List.of(LOG, LOG));
        double minutes =
                estimate.logs().stream().mapToDouble(log -> log.time().total()).sum();
        assertThat(estimate.time().total()).isCloseTo(minutes, within(1e-9));
        assertThat(estimate.time().productive() / estimate.time().total())
                .isCloseTo(INPUTS.get(WorkInput.UTILISATION), within(1e-12));
        assertThat(estimate.days()).isCloseTo(minutes / 60 / 6, within(1e-9));
    }

    @Property
    void oilGoesWithTheFuelAndEdgesWithTheFace(
            @ForAll @DoubleRange(min = 0, max = 100) double fuel,
            @ForAll @DoubleRange(min = 0, max = 300) double face) {
        SawingWork work = SawingWork.of(INPUTS);
        assertThat(work.barOilLitres(fuel)).isEqualTo(fuel * INPUTS.get(WorkInput.BAR_OIL));
        assertThat(work.mixOilLitres(fuel)).isEqualTo(fuel * INPUTS.get(WorkInput.MIX_OIL));
        assertThat(work.barOilWorking(fuel).value()).isEqualTo(work.barOilLitres(fuel));
        assertThat(work.mixOilWorking(fuel).value()).isEqualTo(work.mixOilLitres(fuel));
        assertThat(work.edgesWornWorking(face).value()).isEqualTo(work.edgesWorn(face));
    }

    @Test
    void theJobsOilAndWearAreThoseOfItsFuelAndFace() {
        WorkEstimate estimate = WorkEstimate.of(INPUTS, KERF, List.of(LOG, LOG));
        SawingWork work = SawingWork.of(INPUTS);
        double fuel = estimate.use().fuelLitres();
        assertThat(estimate.use().barOilLitres()).isCloseTo(work.barOilLitres(fuel), within(1e-12));
        assertThat(estimate.use().mixOilLitres()).isCloseTo(work.mixOilLitres(fuel), within(1e-12));
        assertThat(work.edgesWorn(estimate.areaSquareMetres()) * INPUTS.get(WorkInput.EDGE_LIFE))
                .isCloseTo(estimate.use().sharpenings(), within(1e-12));
        // 24 m2 at 3 m2 a sharpening are 8 sharpenings, one chain of 8.
        WorkInputs byHand = INPUTS.with(WorkInput.SHARPENING_AREA, 3).with(WorkInput.EDGE_LIFE, 8);
        assertThat(SawingWork.of(byHand).edgesWorn(24)).isEqualTo(1);
    }

    @Test
    void fuelAndFaceBelowZeroAreRefused() {
        SawingWork work = SawingWork.of(INPUTS);
        assertThatThrownBy(() -> work.barOilLitres(-1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> work.mixOilWorking(Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> work.edgesWorn(-0.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(
                        () -> SawingWork.of(INPUTS.without(WorkInput.EDGE_LIFE)).edgesWorn(1))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("edge-life");
    }

    @Test
    void fuelOfTheCutByHand() {
        WorkInputs inputs = INPUTS.with(WorkInput.DULLING, 0)
                .with(WorkInput.ENERGY_HARDWOOD, 200)
                .with(WorkInput.SHARE_AT_CUT, 0.5)
                .with(WorkInput.SPECIFIC_FUEL, 450)
                .with(WorkInput.FUEL_DENSITY, 0.75);
        // 120 J/cm3 x 0.8 cm x 30000 cm2 = 2.88 MJ = 0.8 kWh; 1.6 kWh at the engine x 0.45 kg = 0.72 kg = 0.96 L
        CuttingRate rate = CuttingRate.of(inputs, OAK, KERF);
        assertThat(SawingWork.of(inputs).cuttingLitres(rate, 3)).isCloseTo(0.96, within(1e-12));
    }

    @Property
    void theFuelWorkingAgreesBitForBit(@ForAll @DoubleRange(min = 0, max = 50) double area) {
        CuttingRate rate = CuttingRate.of(INPUTS, OAK, KERF);
        SawingWork work = SawingWork.of(INPUTS);
        assertThat(work.cuttingLitresWorking(rate, area).value()).isEqualTo(work.cuttingLitres(rate, area));
    }

    @Property
    void aPassCostsMoreTheWiderAndTheLongerItIs(
            @ForAll @DoubleRange(min = 0.05, max = 0.8) double width,
            @ForAll @DoubleRange(min = 0.5, max = 6) double length) {
        WorkInputs priced = INPUTS.with(WorkInput.WAGE, 20).with(WorkInput.FUEL_PRICE, 1.5);
        WorkCost cost = WorkCost.of(priced, CuttingRate.of(priced, OAK, KERF), true);
        double one = cost.of(Stage.LIVE, width, length);
        assertThat(cost.of(Stage.LIVE, width * 1.1, length)).isGreaterThan(one);
        assertThat(cost.of(Stage.LIVE, width, length * 1.1)).isGreaterThan(one);
        assertThat(cost.leftOut())
                .containsExactlyInAnyOrder(WorkInput.BAR_OIL_PRICE, WorkInput.MIX_OIL_PRICE, WorkInput.EDGE_PRICE);
    }

    @Test
    void aWiderKerfTakesLongerAndBurnsMore() {
        WorkEstimate thin = WorkEstimate.of(INPUTS, Length.millimetres(6), List.of(LOG));
        WorkEstimate wide = WorkEstimate.of(INPUTS, Length.millimetres(9), List.of(LOG));
        assertThat(wide.time().total()).isGreaterThan(thin.time().total());
        assertThat(wide.use().fuelLitres()).isGreaterThan(thin.use().fuelLitres());
    }
}
