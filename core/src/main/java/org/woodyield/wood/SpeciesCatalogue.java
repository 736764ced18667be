package org.woodyield.wood;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;

/**
 * The species that the library knows, by name.
 *
 * <p>Green gravity, green moisture and bark share are those of the FIA table; shrinkage is that of Wood Handbook Table 4-3,
 * part of it read and part recalled. Which row of one table belongs to which row of another is written down in {@code
 * species.csv}, matched by hand; nothing is matched by likeness when the library runs. Each value keeps its own source.
 *
 * @see org.woodyield.source.Sources sources fia-ref-species, wood-handbook-4-3, wood-handbook-4-3-memory, species-join
 */
public final class SpeciesCatalogue {

    private static final SpeciesCatalogue PUBLISHED = read();
    private static final int NAMES_OFFERED = 3;

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
            names.putIfAbsent(normal(species.scientificName()), species);
        }
        this.byId = Collections.unmodifiableMap(ids);
        this.byName = Collections.unmodifiableMap(names);
    }

    private static Collection<String> names(Species species) {
        Collection<String> names = new TreeSet<>();
        names.add(normal(species.id()));
        names.add(normal(species.commonName()));
        species.aliases().forEach(alias -> names.add(normal(alias)));
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
     * @throws OutOfDomainException if there is none of that name; the remedy gives the nearest names
     */
    public Species find(String name) {
        Species found = name.isBlank() ? null : byName.get(normal(name));
        if (found == null) {
            throw new OutOfDomainException(
                    "species",
                    name.isBlank() ? "empty" : "'" + name.strip() + "'",
                    "",
                    "the id, common, scientific or other name of one of " + byId.size() + " species",
                    "nearest: " + String.join(", ", nearest(name)));
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

    private List<String> nearest(String name) {
        String wanted = normal(name);
        Map<String, Integer> distances = new LinkedHashMap<>();
        byName.forEach(
                (known, species) -> distances.merge(species.id(), EditDistance.between(wanted, known), Math::min));
        return distances.entrySet().stream()
                .sorted(Comparator.comparingInt(Map.Entry<String, Integer>::getValue)
                        .thenComparing(Map.Entry::getKey))
                .limit(NAMES_OFFERED)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static String normal(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    private static SpeciesCatalogue read() {
        PublishedTable fia = PublishedTable.read(SpeciesCatalogue.class, "fia_wood_bark.csv");
        Map<String, PublishedTable.Row> byCode = SpeciesTables.keyed(fia, "spcd");
        PublishedTable printed = PublishedTable.read(SpeciesCatalogue.class, "shrinkage_4_3.csv");
        Map<String, PublishedTable.Row> shrinkage = SpeciesTables.keyed(printed, "species");
        PublishedTable recalled = PublishedTable.read(SpeciesCatalogue.class, "shrinkage_4_3_memory.csv");
        Map<String, PublishedTable.Row> recalledShrinkage = SpeciesTables.keyed(recalled, "species");
        List<Species> all = new ArrayList<>();
        for (PublishedTable.Row row :
                PublishedTable.read(SpeciesCatalogue.class, "species.csv").rows()) {
            Optional<PublishedTable.Row> wood = SpeciesTables.joined(row, "fia_spcd", byCode);
            String shrinkageName = row.text("table_4_3");
            boolean isRecalled = recalledShrinkage.containsKey(shrinkageName);
            Optional<PublishedTable.Row> shrink =
                    SpeciesTables.joined(row, "table_4_3", isRecalled ? recalledShrinkage : shrinkage);
            Source source = isRecalled ? Sources.get(shrink.orElseThrow().text("source")) : printed.source();
            List<String> aliases = new ArrayList<>();
            if (!row.text("aliases").isEmpty()) {
                aliases.addAll(List.of(row.text("aliases").split("\\|", -1)));
            }
            if (!shrinkageName.isEmpty()) {
                aliases.add(shrinkageName);
            }
            all.add(new Species(
                    row.text("id"),
                    row.text("common_name"),
                    row.text("scientific_name"),
                    aliases,
                    row.text("class").equals("hardwood"),
                    cell(wood, "wood_sg_green", "", fia.source()),
                    cell(wood, "mc_green_wood_pct", "%", fia.source()),
                    cell(wood, "bark_vol_pct_of_wood", "%", fia.source()),
                    cell(shrink, "radial_pct", "%", source),
                    cell(shrink, "tangential_pct", "%", source),
                    cell(shrink, "volumetric_pct", "%", source)));
        }
        return new SpeciesCatalogue(all);
    }

    private static Optional<Sourced> cell(Optional<PublishedTable.Row> row, String column, String unit, Source source) {
        return row.flatMap(cells -> cells.numberIfPrinted(column)).map(value -> new Sourced(value, unit, source));
    }
}
