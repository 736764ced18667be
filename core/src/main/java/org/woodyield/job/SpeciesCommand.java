package org.woodyield.job;

import java.util.Optional;
import org.woodyield.show.SpeciesSheet;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Lists the species by the names that a job may use, or tells what is known of one. */
final class SpeciesCommand implements Subcommand {

    @Override
    public String name() {
        return "species";
    }

    @Override
    public CommandSpec spec() {
        return new Usage(
                        "Lists the species that logs and prices may name, one a line, or tells what the tables know of one.")
                .argumentIfAny(
                        "NAME",
                        "Id, common, scientific or other name; softwood or hardwood lists those, and without it all are"
                                + " listed.")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) {
        Problems problems = new Problems();
        Cell name = new Arguments(name(), given, problems).argument(0, "NAME");
        boolean group = Woods.isGroup(name.text());
        if (!name.isEmpty() && !group) {
            Optional<Species> species = Woods.species(name);
            problems.stopIfAny();
            return terminal.print("species", SpeciesSheet.text(species.orElseThrow()));
        }
        StringBuilder text = new StringBuilder();
        for (Species species : SpeciesCatalogue.published().all()) {
            if (group && species.hardwood() != name.text().equalsIgnoreCase(Woods.HARDWOOD)) {
                continue;
            }
            text.append(species.commonName()).append(" (").append(species.id()).append(")\n");
        }
        return terminal.print("list", text.toString());
    }
}
