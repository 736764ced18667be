package org.woodyield.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.wood.NearestNames;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

/** Reads which wood is meant, and how dry. */
final class Woods {

    static final String SOFTWOOD = "softwood";
    static final String HARDWOOD = "hardwood";

    /** Above this the cell walls are full of water, and nothing has shrunk yet. */
    private static final double GREEN = 30;

    static final Domain MOISTURE =
            new Domain("moisture", "%", 4, GREEN, "give water over oven-dry wood; write green for wood used as sawn");

    private static final List<String> GROUPS = List.of(SOFTWOOD, HARDWOOD);

    private Woods() {}

    static Optional<Species> species(Cell cell) {
        if (cell.isEmpty()) {
            return cell.missing("the name of a species", "");
        }
        List<String> groups = NearestNames.to(cell.text(), GROUPS);
        return species(
                cell,
                "",
                groups.isEmpty()
                        ? ""
                        : groups.get(0) + " is a group; name one of its species, 'species " + groups.get(0)
                                + "' lists them");
    }

    private static Optional<Species> species(Cell cell, String more, String remedy) {
        try {
            return Optional.of(SpeciesCatalogue.published().find(cell.text()));
        } catch (OutOfDomainException e) {
            String near = e.remedy().isEmpty() && remedy.isEmpty() ? "the command species lists them" : e.remedy();
            cell.refuse(more + e.limits(), remedy + (remedy.isEmpty() || near.isEmpty() ? "" : "; ") + near);
            return Optional.empty();
        }
    }

    /** The names of the two groups of species. */
    static boolean isGroup(String name) {
        return GROUPS.contains(name.toLowerCase(Locale.ROOT));
    }

    /** A species, softwood, hardwood or any. */
    static Optional<Wood> read(Cell cell) {
        return switch (cell.text().toLowerCase(Locale.ROOT)) {
            case "" -> cell.missing("any, softwood, hardwood, or the name of a species", "");
            case "any" -> Optional.of(Wood.of(Wood.Kind.ANY));
            case SOFTWOOD -> Optional.of(Wood.of(Wood.Kind.SOFTWOOD));
            case HARDWOOD -> Optional.of(Wood.of(Wood.Kind.HARDWOOD));
            default ->
                species(cell, "any, softwood, hardwood, or ", NearestNames.question(cell.text(), GROUPS))
                        .map(Wood::of);
        };
    }

    /** The final moisture of what has a surface; what is dressed dry is not green. */
    static Optional<Double> moisture(Cell cell, Optional<Surface> surface) {
        Optional<Double> moisture =
                cell.text().equalsIgnoreCase("green") ? Optional.of(GREEN) : cell.quantity(Units.PERCENT, MOISTURE);
        if (moisture.isPresent() && moisture.get() >= GREEN && surface.equals(Optional.of(Surface.DRESSED_DRY))) {
            cell.refuse(
                    "4 to less than 30 % for what is dressed dry",
                    "write the moisture at which it is planed, such as 15 %, or dressed green as its surface");
            return Optional.empty();
        }
        return moisture;
    }
}
