package org.woodyield.wood;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What wood weighs at a moisture content, from its volume green and its gravity on green volume: the dry wood is all there
 * whatever it has shrunk to, so only the water changes.
 *
 * @see org.woodyield.source.Sources source wood-density
 */
public final class WoodWeight {

    /** Water by convention, kilograms in a cubic metre. */
    private static final double WATER = 1000;

    private static final Domain MOISTURE = Domain.of("moisture", "%", 0, 400);

    private static final Domain GRAVITY = Domain.of("specific gravity", "", Double.MIN_VALUE, 1.5);
    private static final Domain BARK = Domain.of("bark in percent of wood", "%", 0, 100);

    private WoodWeight() {}

    /**
     * The mass of a piece or log: 1000 G V (1 + M/100).
     *
     * @param species a species with green gravity G
     * @param greenVolume V, the volume green, as sawn and not as dried
     * @param moisturePercent M, oven-dry basis, 0 to 400 %
     * @return kilograms
     * @throws OutOfDomainException if the species has no gravity or the moisture is outside
     */
    @Calculation("wood.weight")
    public static double kilograms(Species species, Volume greenVolume, double moisturePercent) {
        double gravity = gravity(species).value();
        MOISTURE.require(moisturePercent);
        return gravity * WATER * greenVolume.cubicMetres() * (1 + moisturePercent / 100);
    }

    /**
     * How {@link #kilograms} came about.
     *
     * @param species a species with green gravity
     * @param greenVolume the volume green
     * @param moisturePercent oven-dry basis, 0 to 400 %
     * @return the working; its value equals the mass bit for bit
     * @throws OutOfDomainException as {@link #kilograms}
     */
    public static Working kilogramsWorking(Species species, Volume greenVolume, double moisturePercent) {
        MOISTURE.require(moisturePercent);
        return begin("Mass of wood", species, greenVolume)
                .given("M", "moisture", moisturePercent, "%")
                .step("mass", "mass", "G * water * V * (1 + M / 100)", "kg", source())
                .build();
    }

    /**
     * The mass of a piece or log as it was cut, with the species' own green moisture.
     *
     * @param species a species with green gravity and green moisture
     * @param greenVolume the volume green
     * @return kilograms
     * @throws OutOfDomainException if the species lacks either
     */
    @Calculation("wood.green-weight")
    public static double greenKilograms(Species species, Volume greenVolume) {
        return kilograms(species, greenVolume, greenMoisture(species).value());
    }

    /**
     * How {@link #greenKilograms} came about.
     *
     * @param species a species with green gravity and green moisture
     * @param greenVolume the volume green
     * @return the working; its value equals the mass bit for bit
     * @throws OutOfDomainException if the species lacks either
     */
    public static Working greenKilogramsWorking(Species species, Volume greenVolume) {
        Sourced moisture = greenMoisture(species);
        return begin("Mass of green wood", species, greenVolume)
                .lookup("M", "green moisture", species.commonName(), moisture.value(), "%", moisture.source())
                .step("mass", "mass", "G * water * V * (1 + M / 100)", "kg", source())
                .note("Heartwood and sapwood differ: in pines and firs a young log, mostly sapwood, weighs much more.")
                .build();
    }

    /**
     * The water that leaves a piece between two moisture contents: 1000 G V (M1 - M2)/100.
     *
     * @param species a species with green gravity
     * @param greenVolume the volume green
     * @param fromPercent M1, oven-dry basis, 0 to 400 %
     * @param toPercent M2, no more than M1
     * @return kilograms of water
     * @throws OutOfDomainException if the species has no gravity, a moisture is outside or the second is the larger
     */
    @Calculation("wood.water-lost")
    public static double waterLostKilograms(Species species, Volume greenVolume, double fromPercent, double toPercent) {
        double gravity = gravity(species).value();
        requireFalling(fromPercent, toPercent);
        return gravity * WATER * greenVolume.cubicMetres() * (fromPercent - toPercent) / 100;
    }

    /**
     * How {@link #waterLostKilograms} came about.
     *
     * @param species a species with green gravity
     * @param greenVolume the volume green
     * @param fromPercent moisture at the start
     * @param toPercent moisture at the end
     * @return the working; its value equals the mass bit for bit
     * @throws OutOfDomainException as {@link #waterLostKilograms}
     */
    public static Working waterLostWorking(Species species, Volume greenVolume, double fromPercent, double toPercent) {
        requireFalling(fromPercent, toPercent);
        return begin("Water lost in drying", species, greenVolume)
                .given("M_1", "moisture at the start", fromPercent, "%")
                .given("M_2", "moisture at the end", toPercent, "%")
                .step("lost", "water lost", "G * water * V * (M_1 - M_2) / 100", "kg", source())
                .build();
    }

    /**
     * Green mass of wood with its bark over its oven-dry mass: (Gw (1 + Mw/100) + b Gb (1 + Mb/100)) / (Gw + b Gb), b the
     * bark's volume as a share of the wood's.
     *
     * @param woodGravity oven-dry mass of wood over green volume
     * @param woodMoisturePercent moisture of the wood, oven-dry basis, 0 to 400 %
     * @param barkGravity oven-dry mass of bark over green volume
     * @param barkMoisturePercent moisture of the bark, oven-dry basis, 0 to 400 %
     * @param barkPercentOfWood bark volume in percent of wood volume, 0 to 100 %
     * @return the factor, 1 or more
     * @throws OutOfDomainException if an argument is outside
     */
    @Calculation("wood.dry-to-green-factor")
    public static double dryToGreenFactor(
            double woodGravity,
            double woodMoisturePercent,
            double barkGravity,
            double barkMoisturePercent,
            double barkPercentOfWood) {
        requireFactor(woodGravity, woodMoisturePercent, barkGravity, barkMoisturePercent, barkPercentOfWood);
        double bark = barkPercentOfWood / 100 * barkGravity;
        return (woodGravity * (1 + woodMoisturePercent / 100) + bark * (1 + barkMoisturePercent / 100))
                / (woodGravity + bark);
    }

    /**
     * How {@link #dryToGreenFactor} came about.
     *
     * @param woodGravity oven-dry mass of wood over green volume
     * @param woodMoisturePercent moisture of the wood
     * @param barkGravity oven-dry mass of bark over green volume
     * @param barkMoisturePercent moisture of the bark
     * @param barkPercentOfWood bark volume in percent of wood volume
     * @return the working; its value equals the factor bit for bit
     * @throws OutOfDomainException as {@link #dryToGreenFactor}
     */
    public static Working dryToGreenWorking(
            double woodGravity,
            double woodMoisturePercent,
            double barkGravity,
            double barkMoisturePercent,
            double barkPercentOfWood) {
        requireFactor(woodGravity, woodMoisturePercent, barkGravity, barkMoisturePercent, barkPercentOfWood);
        return Working.of("Green mass over oven-dry mass, wood with bark")
                .given("G_w", "gravity of the wood", woodGravity, "")
                .given("M_w", "moisture of the wood", woodMoisturePercent, "%")
                .given("G_b", "gravity of the bark", barkGravity, "")
                .given("M_b", "moisture of the bark", barkMoisturePercent, "%")
                .given("b", "bark volume in percent of wood volume", barkPercentOfWood, "%")
                .step("B", "dry bark for each volume of wood", "b / 100 * G_b", "", source())
                .step(
                        "factor",
                        "green over oven-dry",
                        "(G_w * (1 + M_w / 100) + B * (1 + M_b / 100)) / (G_w + B)",
                        "",
                        source())
                .build();
    }

    private static void requireFactor(
            double woodGravity, double woodMoisture, double barkGravity, double barkMoisture, double bark) {
        GRAVITY.require(woodGravity);
        GRAVITY.require(barkGravity);
        MOISTURE.require(woodMoisture);
        MOISTURE.require(barkMoisture);
        BARK.require(bark);
    }

    private static Working.Builder begin(String title, Species species, Volume greenVolume) {
        Sourced gravity = gravity(species);
        return Working.of(title + ", " + species.commonName())
                .given("V", "volume green", greenVolume.cubicMetres(), "m3")
                .lookup(
                        "G",
                        "oven-dry mass over green volume, relative to water",
                        species.commonName(),
                        gravity.value(),
                        "",
                        gravity.source())
                .constant("water", "water", WATER, "kg/m3", Sources.get("definition"));
    }

    private static Source source() {
        return Sources.get("wood-density");
    }

    private static Sourced gravity(Species species) {
        return species.specificGravityGreen().orElseThrow(() -> missing(species, "specific gravity on green volume"));
    }

    private static Sourced greenMoisture(Species species) {
        return species.greenMoisturePercent().orElseThrow(() -> missing(species, "green moisture"));
    }

    private static OutOfDomainException missing(Species species, String what) {
        return new OutOfDomainException(
                "species", species.commonName(), "", "species with " + what, "choose a species of like weight");
    }

    private static void requireFalling(double fromPercent, double toPercent) {
        MOISTURE.require(fromPercent);
        Domain.of("moisture at the end", "%", 0, fromPercent).require(toPercent);
    }
}
