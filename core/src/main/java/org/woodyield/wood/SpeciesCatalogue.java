package org.woodyield.wood;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;

/**
 * The species that the library knows, by name.
 *
 * <p>Green gravity, green moisture and bark share are those of the FIA table; shrinkage is that of Wood Handbook Table 4-3,
 * part of it read and part recalled, and for imported woods of Table 4-4; moisture of heartwood and sapwood that of Table
 * 4-1; gravity at 12 % that of Table 5-3, or of an older manual where that was not read. Which row of one table belongs to which row of another is written down in {@code
 * species.csv}, matched by hand; nothing is matched by likeness when the library runs. Each value keeps its own source.
 *
 * @see org.woodyield.source.Sources sources fia-ref-species, species-join, tm-5-852-4 and those that begin with
 *     wood-handbook-
 */
public final class SpeciesCatalogue {

    private static final SpeciesCatalogue PUBLISHED = read();
    private static final int NAMES_OFFERED = 3;
    private static final int HOLDING_OFFERED = 12;

    private final Map<String, Species> byId;
    private final Map<String, Species> byName;

    private SpeciesCatalogue(Collection<Species> all) {
        Map<String, Species> ids = new LinkedHashMap<>();
        Map<String, Species> names = new TreeMap<>();
        for (Species species : all) {
            if (ids.putIfAbsent(species.id(), species) != null) {
                throw new IllegalStateException("two species " + species.id());
            }
            for (String name : names(species)) {
                Species other = names.putIfAbsent(name, species);
                if (other != null && !other.equals(species)) {
                    throw new IllegalStateException(name + " names " + other.id() + " and " + species.id());
                }
            }
        }
        // A scientific name is a second way in only where it is not shared, as by the types of Douglas-fir.
        for (Species species : all) {
            names.putIfAbsent(NearestNames.normal(species.scientificName()), species);
        }
        this.byId = Collections.unmodifiableMap(ids);
        this.byName = Collections.unmodifiableMap(names);
    }

    private static Collection<String> names(Species species) {
        Collection<String> names = new TreeSet<>();
        names.add(NearestNames.normal(species.id()));
        names.add(NearestNames.normal(species.commonName()));
        species.aliases().forEach(alias -> names.add(NearestNames.normal(alias)));
        return names;
    }

    /**
     * The species of the published tables.
     *
     * @return the catalogue
     */
    public static SpeciesCatalogue published() {
        return PUBLISHED;
    }

    /**
     * Finds a species by its id, common name, scientific name or alias. Case, hyphens, commas and doubled spaces do not
     * matter; anything else does.
     *
     * @param name for example {@code douglas-fir}, {@code Eastern white pine}, {@code Pine, eastern white} or {@code Quercus
     *     alba}
     * @return the species
     * @throws OutOfDomainException if there is none of that name; the remedy gives those that hold the words written, or the nearest, and is
     *     empty where none is near
     */
    public Species find(String name) {
        Species found = name.isBlank() ? null : byName.get(NearestNames.normal(name));
        if (found == null) {
            throw new OutOfDomainException(
                    "species",
                    name.isBlank() ? "empty" : "'" + name.strip() + "'",
                    "",
                    "the id, common, scientific or other name of one of " + byId.size() + " species",
                    offer(name));
        }
        return found;
    }

    /**
     * All species in the order of the tables.
     *
     * @return an unmodifiable collection
     */
    public Collection<Species> all() {
        return byId.values();
    }

    /** Names that hold all the words that were written; where none does, the nearest by spelling, if any is near. */
    private String offer(String name) {
        List<String> words = List.of(NearestNames.normal(name).split(" ", -1));
        List<Species> holding = byId.values().stream()
                .filter(species -> List.of(
                                NearestNames.normal(species.commonName()).split(" ", -1))
                        .containsAll(words))
                .sorted(Comparator.comparingInt(SpeciesCatalogue::known).reversed())
                .toList();
        if (holding.isEmpty()) {
            List<String> near = nearest(name);
            return near.isEmpty() ? "" : "nearest: " + String.join(", ", near);
        }
        int more = holding.size() - HOLDING_OFFERED;
        return "write the name in full: "
                + holding.stream()
                        .limit(HOLDING_OFFERED)
                        .map(Species::commonName)
                        .collect(Collectors.joining(", "))
                + (more > 0 ? ", or one of " + more + " more" : "");
    }

    /** How much the tables tell of a species: those most asked for stand in most of them. */
    private static int known(Species species) {
        return (int) Stream.of(
                        species.specificGravityGreen(),
                        species.specificGravityAt12(),
                        species.heartwoodMoisturePercent(),
                        species.radialPercent(),
                        species.volumetricPercent(),
                        AirDrying.ofInchLumber(species))
                .filter(Optional::isPresent)
                .count();
    }

    /** Beyond one wrong letter in three a name is another word. */
    private List<String> nearest(String name) {
        String wanted = NearestNames.normal(name);
        int farthest = Math.max(1, wanted.length() / 3);
        Map<String, Integer> distances = new LinkedHashMap<>();
        byName.forEach((known, species) -> distances.merge(species.id(), NearestNames.edits(wanted, known), Math::min));
        return distances.entrySet().stream()
                .filter(entry -> entry.getValue() <= farthest)
                .sorted(Comparator.comparingInt(Map.Entry<String, Integer>::getValue)
                        .thenComparing(Map.Entry::getKey))
                .limit(NAMES_OFFERED)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static SpeciesCatalogue read() {
        SpeciesTables.Joined fia = SpeciesTables.Joined.of("fia_spcd", "spcd", "fia_wood_bark.csv");
        SpeciesTables.Joined moisture = SpeciesTables.Joined.of(
                "table_4_1", "species", "green_moisture_4_1.csv", "green_moisture_4_1_memory.csv");
        SpeciesTables.Joined shrinkage =
                SpeciesTables.Joined.of("table_4_3", "species", "shrinkage_4_3.csv", "shrinkage_4_3_memory.csv");
        SpeciesTables.Joined imported = SpeciesTables.Joined.of("table_4_4", "species", "shrinkage_4_4.csv");
        SpeciesTables.Joined gravity = SpeciesTables.Joined.of("table_5_3", "species", "gravity_5_3.csv");
        SpeciesTables.Joined olderGravity = SpeciesTables.Joined.of("tm_5_852_4", "species", "gravity_tm_5_852_4.csv");
        List<Species> all = new ArrayList<>();
        for (PublishedTable.Row row :
                PublishedTable.read(SpeciesCatalogue.class, "species.csv").rows()) {
            List<String> aliases = new ArrayList<>();
            if (!row.text("aliases").isEmpty()) {
                aliases.addAll(List.of(row.text("aliases").split("\\|", -1)));
            }
            for (String table : List.of("table_4_3", "table_4_4")) {
                if (!row.text(table).isEmpty()) {
                    aliases.add(row.text(table));
                }
            }
            SpeciesTables.Joined shrink = row.text("table_4_3").isEmpty() ? imported : shrinkage;
            all.add(new Species(
                    row.text("id"),
                    row.text("common_name"),
                    row.text("scientific_name"),
                    aliases,
                    row.text("class").equals("hardwood"),
                    fia.cell(row, "wood_sg_green", ""),
                    gravity.cell(row, "sg_12pct", "").or(() -> olderGravity.cell(row, "sg_12pct", "")),
                    fia.cell(row, "mc_green_wood_pct", "%"),
                    moisture.cell(row, "heartwood_pct", "%"),
                    moisture.cell(row, "sapwood_pct", "%"),
                    fia.cell(row, "bark_vol_pct_of_wood", "%"),
                    shrink.cell(row, "radial_pct", "%"),
                    shrink.cell(row, "tangential_pct", "%"),
                    shrink.cell(row, "volumetric_pct", "%")));
        }
        return new SpeciesCatalogue(all);
    }
}
