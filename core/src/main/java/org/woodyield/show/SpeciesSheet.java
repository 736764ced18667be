package org.woodyield.show;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.wood.AirDrying;
import org.woodyield.wood.DimensionalChange;
import org.woodyield.wood.DimensionalChange.Direction;
import org.woodyield.wood.Species;

/** What is known of a species, each value with its standing and source, and what is not. */
public final class SpeciesSheet {

    private final Species species;
    private final Set<Source> sources = new LinkedHashSet<>();
    private final List<String> missing = new ArrayList<>();
    private final PlanTable.Builder values = PlanTable.of("values", "Values")
            .text("What", "what")
            .number("Value", "value")
            .text("Unit", "unit")
            .text("Rests on", "source");

    private SpeciesSheet(Species species) {
        this.species = species;
    }

    /**
     * Lays out what is known of a species.
     *
     * @param species a species
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String text(Species species) {
        return new SpeciesSheet(species).text();
    }

    private String text() {
        add("specific gravity, oven-dry mass over green volume", species.specificGravityGreen());
        add("specific gravity, oven-dry mass over volume at 12 %", species.specificGravityAt12());
        add("green moisture", species.greenMoisturePercent());
        add("green moisture of heartwood", species.heartwoodMoisturePercent());
        add("green moisture of sapwood", species.sapwoodMoisturePercent());
        add("bark volume, of the wood's", species.barkPercentOfWood());
        add("radial shrinkage, green to oven-dry", species.radialPercent());
        add("tangential shrinkage, green to oven-dry", species.tangentialPercent());
        add("volumetric shrinkage, as printed", species.volumetricPercent());
        for (Direction direction : Direction.values()) {
            add(
                    "dimensional change, " + direction.name().toLowerCase(Locale.ROOT) + ", for each percent",
                    DimensionalChange.coefficient(species, direction));
        }
        String days = "days to dry 1 in to 20 % in the open";
        Optional<AirDrying.Days> range = AirDrying.ofInchLumber(species);
        range.ifPresentOrElse(
                found -> {
                    row(days + ", at least", found.least(), "", found.source());
                    row(days + ", at most", found.greatest(), "", found.source());
                },
                () -> missing.add(days));
        List<Section> sections = new ArrayList<>();
        List<String> names = new ArrayList<>();
        names.add("Id: " + species.id() + "; " + (species.hardwood() ? "hardwood" : "softwood") + ".");
        if (!species.scientificName().isEmpty()) {
            names.add("Scientific name: " + species.scientificName() + ".");
        }
        if (!species.aliases().isEmpty()) {
            names.add("Also found as: " + String.join("; ", species.aliases()) + ".");
        }
        sections.add(new Section("names", "Names", List.of(new Points(names))));
        if (!sources.isEmpty()) {
            sections.add(new Section("values", "What is known", List.of(new Tabular(values.build()))));
        }
        if (!missing.isEmpty()) {
            sections.add(new Section(
                    "missing",
                    "What the tables do not have",
                    List.of(new Points(missing.stream().map(what -> what + ".").toList()))));
        }
        if (!sources.isEmpty()) {
            sections.add(new Section("sources", "Sources", List.of(new Tabular(PlanTable.ofSources(sources)))));
        }
        return PlanText.of(species.commonName(), List.of(), sections);
    }

    private void add(String what, Optional<Sourced> value) {
        value.ifPresentOrElse(found -> row(what, found.value(), found.unit(), found.source()), () -> missing.add(what));
    }

    private void row(String what, double value, String unit, Source source) {
        sources.add(source);
        values.row(
                Cell.text(what),
                new Cell(NumberText.full(value), Optional.of(value), 6, false),
                Cell.text(unit),
                Cell.text(source.standing().label() + ": " + source.id()));
    }
}
