package org.woodyield.work;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Fuel and bar oil of felling and bucking by the published lines of two plots of beech and fir, {@code a - b x} in millilitres
 * per cubic metre of wood with the breast-height diameter x in cm. Sawing lumber is not in them. The extract that was seen
 * does not say which plot was cut with which saws, nor the range of diameters; 20 to 60 cm is held to.
 */
public enum FellingFuel {
    /** Sample plot 1. */
    PLOT_1(305.77, 1.36, 155.63, 0.90),
    /** Sample plot 2. */
    PLOT_2(252.57, 1.68, 98.77, 0.59);

    private static final Source STUDY = Sources.get("felling-fuel-2023");

    private final double fuel;
    private final double fuelSlope;
    private final double oil;
    private final double oilSlope;

    FellingFuel(double fuel, double fuelSlope, double oil, double oilSlope) {
        this.fuel = fuel;
        this.fuelSlope = fuelSlope;
        this.oil = oil;
        this.oilSlope = oilSlope;
    }

    private static double require(double centimetres) {
        return Domain.of("breast-height diameter", "cm", 20, 60).require(centimetres);
    }

    /**
     * Fuel for a cubic metre.
     *
     * @param breastHeightCentimetres diameter at breast height, 20 to 60 cm
     * @return mL/m3
     * @throws org.woodyield.measure.OutOfDomainException if the diameter is outside
     */
    @Calculation("work.felling-fuel")
    public double fuelMillilitres(double breastHeightCentimetres) {
        return fuel - fuelSlope * require(breastHeightCentimetres);
    }

    /**
     * How {@link #fuelMillilitres} comes about.
     *
     * @param breastHeightCentimetres diameter at breast height, 20 to 60 cm
     * @return the working, with the same result
     */
    public Working fuelMillilitresWorking(double breastHeightCentimetres) {
        return line("Fuel of felling and bucking", fuel, fuelSlope, breastHeightCentimetres);
    }

    /**
     * Bar oil for a cubic metre.
     *
     * @param breastHeightCentimetres diameter at breast height, 20 to 60 cm
     * @return mL/m3
     * @throws org.woodyield.measure.OutOfDomainException if the diameter is outside
     */
    @Calculation("work.felling-oil")
    public double oilMillilitres(double breastHeightCentimetres) {
        return oil - oilSlope * require(breastHeightCentimetres);
    }

    /**
     * How {@link #oilMillilitres} comes about.
     *
     * @param breastHeightCentimetres diameter at breast height, 20 to 60 cm
     * @return the working, with the same result
     */
    public Working oilMillilitresWorking(double breastHeightCentimetres) {
        return line("Bar oil of felling and bucking", oil, oilSlope, breastHeightCentimetres);
    }

    private static Working line(String title, double constant, double slope, double diameter) {
        return Working.of(title)
                .constant("a", "constant", constant, "mL/m3", STUDY)
                .constant("b", "slope", slope, "mL/m3 per cm", STUDY)
                .given("x", "diameter at breast height", require(diameter), "cm")
                .step("y", "volume for a cubic metre", "a - b * x", "mL/m3", STUDY)
                .build();
    }
}
