package org.woodyield.work;

import org.woodyield.measure.Domain;
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
    private static final Domain FUEL = Domain.notNegative("fuel", "L");
    private static final Domain FACE = Domain.notNegative("face of the kerf", "m2");

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
                        0,
                        inputs.get(WorkInput.CARRYING),
                        0,
                        0,
                        tanks * inputs.get(WorkInput.REFUELLING),
                        sharpenings * inputs.get(WorkInput.SHARPENING),
                        0)
                .withRest(utilisation);
        FuelUse use = new FuelUse(inCut, idling, barOilLitres(fuel), mixOilLitres(fuel), tanks, sharpenings);
        return new PassWork(area, time, use);
    }

    WorkEstimate.ForLog log(CuttingRate rate, LogWork log) {
        TimeBreakdown time = new TimeBreakdown(
                        0,
                        0,
                        0,
                        0,
                        log.guidesBefore().isEmpty() ? 0 : log.guidesBefore().size() * inputs.get(WorkInput.GUIDE),
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

    /**
     * The bar oil that goes with some fuel.
     *
     * @param fuelLitres 0 or more
     * @return fuel x bar oil per fuel, in litres
     * @throws org.woodyield.measure.OutOfDomainException if the fuel is negative or an input is missing
     */
    @Calculation("work.bar-oil")
    public double barOilLitres(double fuelLitres) {
        return FUEL.require(fuelLitres) * inputs.get(WorkInput.BAR_OIL);
    }

    /**
     * How {@link #barOilLitres} comes about.
     *
     * @param fuelLitres 0 or more
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if the fuel is negative or an input is missing
     */
    public Working barOilWorking(double fuelLitres) {
        return oil("Bar oil", WorkInput.BAR_OIL, fuelLitres);
    }

    /**
     * The two-stroke oil in some fuel.
     *
     * @param fuelLitres 0 or more
     * @return fuel x two-stroke oil per fuel, in litres
     * @throws org.woodyield.measure.OutOfDomainException if the fuel is negative or an input is missing
     */
    @Calculation("work.mix-oil")
    public double mixOilLitres(double fuelLitres) {
        return FUEL.require(fuelLitres) * inputs.get(WorkInput.MIX_OIL);
    }

    /**
     * How {@link #mixOilLitres} comes about.
     *
     * @param fuelLitres 0 or more
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if the fuel is negative or an input is missing
     */
    public Working mixOilWorking(double fuelLitres) {
        return oil("Two-stroke oil", WorkInput.MIX_OIL, fuelLitres);
    }

    private Working oil(String title, WorkInput perFuel, double fuelLitres) {
        FUEL.require(fuelLitres);
        Working.Builder working = Working.of(title).given("B", "fuel", fuelLitres, "L");
        inputs.show(working, "o", perFuel);
        return working.step("O", "oil", "B * o", "L", DEFINITION).build();
    }

    /**
     * The chains or blades that a face of kerf wears out.
     *
     * @param areaSquareMetres face of the kerf, one side, 0 or more
     * @return face / face between two sharpenings / sharpenings that an edge lasts, not rounded
     * @throws org.woodyield.measure.OutOfDomainException if the face is negative or an input is missing
     */
    @Calculation("work.edges-worn")
    public double edgesWorn(double areaSquareMetres) {
        return FACE.require(areaSquareMetres) / inputs.get(WorkInput.SHARPENING_AREA) / inputs.get(WorkInput.EDGE_LIFE);
    }

    /**
     * How {@link #edgesWorn} comes about.
     *
     * @param areaSquareMetres face of the kerf, one side, 0 or more
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if the face is negative or an input is missing
     */
    public Working edgesWornWorking(double areaSquareMetres) {
        FACE.require(areaSquareMetres);
        Working.Builder working =
                Working.of("Chains or blades worn out").given("A", "face of the kerf", areaSquareMetres, "m2");
        inputs.show(working, "a", WorkInput.SHARPENING_AREA);
        inputs.show(working, "l", WorkInput.EDGE_LIFE);
        return working.step("n", "sharpenings", "A / a", "", DEFINITION)
                .step("e", "chains or blades", "n / l", "", DEFINITION)
                .build();
    }
}
