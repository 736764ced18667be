package org.woodyield.wood;

import java.util.List;
import java.util.Optional;
import org.woodyield.source.Sourced;

/**
 * A species with what is known of its wood. What is missing stays missing.
 *
 * @param id stable key, for example {@code douglas-fir}
 * @param commonName as printed in its first source
 * @param scientificName possibly empty
 * @param aliases other names under which it is found
 * @param hardwood whether it is a hardwood (broad-leaved)
 * @param specificGravityGreen oven-dry mass over green volume
 * @param specificGravityAt12 oven-dry mass over the volume at 12 % moisture
 * @param greenMoisturePercent moisture of the green wood as a whole, oven-dry basis
 * @param heartwoodMoisturePercent moisture of the green heartwood
 * @param sapwoodMoisturePercent moisture of the green sapwood
 * @param barkPercentOfWood bark volume in percent of wood volume
 * @param radialPercent radial shrinkage from green to oven-dry, percent of the green dimension
 * @param tangentialPercent tangential shrinkage from green to oven-dry, percent of the green dimension
 * @param volumetricPercent volumetric shrinkage from green to oven-dry as printed, never computed
 */
public record Species(
        String id,
        String commonName,
        String scientificName,
        List<String> aliases,
        boolean hardwood,
        Optional<Sourced> specificGravityGreen,
        Optional<Sourced> specificGravityAt12,
        Optional<Sourced> greenMoisturePercent,
        Optional<Sourced> heartwoodMoisturePercent,
        Optional<Sourced> sapwoodMoisturePercent,
        Optional<Sourced> barkPercentOfWood,
        Optional<Sourced> radialPercent,
        Optional<Sourced> tangentialPercent,
        Optional<Sourced> volumetricPercent) {

    /** Keeps an immutable copy of the aliases. */
    public Species {
        aliases = List.copyOf(aliases);
    }
}
