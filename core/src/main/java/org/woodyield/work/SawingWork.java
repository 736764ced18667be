package org.woodyield.work;

import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The round of sawing work: idle the engine, cut, idle again, set, carry away, and by and by turn, refuel and sharpen.
 *
 * <p>Fuel in the cut is the energy of the kerf over the share of power that does cutting, times the engine's fuel per work,
 * which is held constant over load. Warm-up and cool-down come at every pass. Refuelling comes by the tank and sharpening by
 * the face cut, both spread evenly. The engine stands still while the sawyer sets, carries, turns and sharpens.
 */
public final class SawingWork {

    private static final Source DEFINITION = Sources.get("definition");

    private final WorkInputs inputs;
    private final double share;
    private final double specificFuel;
    private final double fuelDensity;
    private final double idleLitresPerHour;
    private final double warmUp;
    private final double coolDown;
    private final double utilisation;

    private SawingWork(WorkInputs inputs) {
        this.inputs = inputs;
        this.share = inputs.get(WorkInput.SHARE_AT_CUT);
        this.specificFuel = inputs.get(WorkInput.SPECIFIC_FUEL);
        this.fuelDensity = inputs.get(WorkInput.FUEL_DENSITY);
        this.idleLitresPerHour = inputs.get(WorkInput.IDLE_FUEL);
        this.warmUp = inputs.get(WorkInput.WARM_UP);
        this.coolDown = inputs.get(WorkInput.COOL_DOWN);
        this.utilisation = inputs.get(WorkInput.UTILISATION);
    }

    /**
     * The work of one saw and its people.
     *
     * @param inputs fuel and habits
     * @return the model
     * @throws org.woodyield.measure.OutOfDomainException if an input is missing
     */
    public static SawingWork of(WorkInputs inputs) {
        return new SawingWork(inputs);
    }

    /**
     * What a pass takes, with its share of refuelling, sharpening and rest.
     *
     * @param rate how fast this saw rips this wood
     * @param cut the pass
     * @return its face, minutes, fuel and wear
     * @throws org.woodyield.measure.OutOfDomainException if an input is missing or the cut is outside the limits of {@link
     *     CuttingRate}
     */
    public PassWork pass(CuttingRate rate, Cut cut) {
        double cutting = rate.cuttingSeconds(cut) / 60;
        double area = cut.areaSquareMetres();
        double inCut = cuttingLitres(rate, area);
        double idling = (warmUp + coolDown) / 60 * idleLitresPerHour;
        double fuel = inCut + idling;
        double tanks = fuel / inputs.get(WorkInput.TANK);
        double sharpenings = area / inputs.get(WorkInput.SHARPENING_AREA);
        TimeBreakdown time = new TimeBreakdown(
                        cutting,
                        warmUp,
                        coolDown,
                        inputs.get(WorkInput.SETTING),
                        inputs.get(WorkInput.CARRYING),
                        0,
                        0,
                        tanks * inputs.get(WorkInput.REFUELLING),
                        sharpenings * inputs.get(WorkInput.SHARPENING),
                        0)
                .withRest(utilisation);
        FuelUse use = new FuelUse(
                inCut,
                idling,
                fuel * inputs.get(WorkInput.BAR_OIL),
                fuel * inputs.get(WorkInput.MIX_OIL),
                tanks,
                sharpenings);
        return new PassWork(area, time, use);
    }

    WorkEstimate.ForLog log(CuttingRate rate, LogWork log) {
        TimeBreakdown time = new TimeBreakdown(
                        0,
                        0,
                        0,
                        0,
                        0,
                        log.turns() * inputs.get(WorkInput.TURNING),
                        inputs.get(WorkInput.LOADING),
                        0,
                        0,
                        0)
                .withRest(utilisation);
        FuelUse use = FuelUse.ZERO;
        double area = 0;
        for (Cut cut : log.cuts()) {
            PassWork pass = pass(rate, cut);
            time = time.plus(pass.time());
            use = use.plus(pass.use());
            area += pass.areaSquareMetres();
        }
        return new WorkEstimate.ForLog(log.id(), log.cuts().size(), area, time, use);
    }

    /**
     * The fuel that a face of kerf takes.
     *
     * @param rate kerf and cutting energy
     * @param areaSquareMetres face of the kerf, one side
     * @return {@code k q A / share} in kWh x fuel per work / density, in litres
     */
    @Calculation("work.cutting-fuel")
    public double cuttingLitres(CuttingRate rate, double areaSquareMetres) {
        double kilowattHours =
                rate.energyJoulesPerCubicCentimetre() * rate.kerfCentimetres() * areaSquareMetres * 10000 / 3600000;
        return kilowattHours / share * specificFuel / 1000 / fuelDensity;
    }

    /**
     * How {@link #cuttingLitres} comes about.
     *
     * @param rate kerf and cutting energy
     * @param areaSquareMetres face of the kerf, one side
     * @return the working, with the same result
     */
    public Working cuttingLitresWorking(CuttingRate rate, double areaSquareMetres) {
        Working.Builder working = Working.of("Fuel burnt in the cut")
                .constant("k", "cutting energy", rate.energyJoulesPerCubicCentimetre(), "J/cm3", rate.energySource())
                .given("q", "kerf", rate.kerfCentimetres(), "cm")
                .given("A", "face of the kerf", areaSquareMetres, "m2")
                .step("E", "energy of the cut", "k * q * A * 10000 / 3600000", "kWh", DEFINITION);
        inputs.show(working, "s", WorkInput.SHARE_AT_CUT);
        inputs.show(working, "f", WorkInput.SPECIFIC_FUEL);
        inputs.show(working, "r", WorkInput.FUEL_DENSITY);
        return working.step("B", "fuel", "E / s * f / 1000 / r", "L", DEFINITION)
                .note("Fuel per work is held constant over the load of the engine.")
                .build();
    }
}
