package org.woodyield.wood;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Moisture content. The library means water over oven-dry wood throughout, which passes 100 % in green wood; the trade in
 * chips and firewood means water over wet wood, which cannot.
 *
 * @see org.woodyield.source.Sources source moisture-definition
 */
public final class MoistureContent {

    private static final Domain DRY_BASIS = Domain.of("moisture on the oven-dry basis", "%", 0, 400);
    private static final Domain WET_BASIS = new Domain(
            "moisture on the wet basis",
            "%",
            0,
            80,
            "water over wet wood stays below 100 %; is this the oven-dry basis?");
    private static final Domain MASS = Domain.positive("mass", "");

    private MoistureContent() {}

    /**
     * From two weighings: 100 (wet - dry) / dry.
     *
     * @param wetMass mass as it is, in any unit
     * @param ovenDryMass mass after the oven, in the same unit
     * @return percent of oven-dry mass
     * @throws OutOfDomainException if a mass is not above zero, or the dry one is the larger
     */
    @Calculation("wood.moisture-from-masses")
    public static double fromMasses(double wetMass, double ovenDryMass) {
        requireMasses(wetMass, ovenDryMass);
        return 100 * (wetMass - ovenDryMass) / ovenDryMass;
    }

    /**
     * How {@link #fromMasses} came about.
     *
     * @param wetMass mass as it is
     * @param ovenDryMass mass after the oven
     * @param unit the unit of both
     * @return the working; its value equals the percentage bit for bit
     * @throws OutOfDomainException as {@link #fromMasses}
     */
    public static Working fromMassesWorking(double wetMass, double ovenDryMass, String unit) {
        requireMasses(wetMass, ovenDryMass);
        return Working.of("Moisture content, oven-dry basis")
                .given("wet", "mass as it is", wetMass, unit)
                .given("dry", "oven-dry mass", ovenDryMass, unit)
                .step("M", "moisture content", "100 * (wet - dry) / dry", "%", source())
                .build();
    }

    /**
     * From the wet basis to the oven-dry basis: 100 w / (100 - w).
     *
     * @param wetBasisPercent water over wet wood
     * @return water over oven-dry wood, percent
     * @throws OutOfDomainException if not 0 to 80 %
     */
    @Calculation("wood.moisture-dry-basis")
    public static double dryBasis(double wetBasisPercent) {
        WET_BASIS.require(wetBasisPercent);
        return 100 * wetBasisPercent / (100 - wetBasisPercent);
    }

    /**
     * How {@link #dryBasis} came about.
     *
     * @param wetBasisPercent water over wet wood
     * @return the working; its value equals the percentage bit for bit
     * @throws OutOfDomainException if not 0 to 80 %
     */
    public static Working dryBasisWorking(double wetBasisPercent) {
        WET_BASIS.require(wetBasisPercent);
        return Working.of("Moisture from the wet basis to the oven-dry basis")
                .given("w", "water over wet wood", wetBasisPercent, "%")
                .step("M", "water over oven-dry wood", "100 * w / (100 - w)", "%", source())
                .build();
    }

    /**
     * From the oven-dry basis to the wet basis: 100 M / (100 + M).
     *
     * @param dryBasisPercent water over oven-dry wood
     * @return water over wet wood, percent
     * @throws OutOfDomainException if not 0 to 400 %
     */
    @Calculation("wood.moisture-wet-basis")
    public static double wetBasis(double dryBasisPercent) {
        DRY_BASIS.require(dryBasisPercent);
        return 100 * dryBasisPercent / (100 + dryBasisPercent);
    }

    /**
     * How {@link #wetBasis} came about.
     *
     * @param dryBasisPercent water over oven-dry wood
     * @return the working; its value equals the percentage bit for bit
     * @throws OutOfDomainException if not 0 to 400 %
     */
    public static Working wetBasisWorking(double dryBasisPercent) {
        DRY_BASIS.require(dryBasisPercent);
        return Working.of("Moisture from the oven-dry basis to the wet basis")
                .given("M", "water over oven-dry wood", dryBasisPercent, "%")
                .step("w", "water over wet wood", "100 * M / (100 + M)", "%", source())
                .build();
    }

    private static Source source() {
        return Sources.get("moisture-definition");
    }

    private static void requireMasses(double wetMass, double ovenDryMass) {
        MASS.require(wetMass);
        MASS.require(ovenDryMass);
        if (ovenDryMass > wetMass) {
            throw new OutOfDomainException(
                    "oven-dry mass",
                    Double.toString(ovenDryMass),
                    "",
                    "no more than the wet mass, " + wetMass,
                    "change the two");
        }
    }
}
