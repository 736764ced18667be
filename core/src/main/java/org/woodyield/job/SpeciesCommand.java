package org.woodyield.job;

import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Lists the species by the names that a job may use. */
final class SpeciesCommand implements Subcommand {

    @Override
    public String name() {
        return "species";
    }

    @Override
    public CommandSpec spec() {
        return new Usage("Lists the species that logs and prices may name, one a line.").spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) {
        StringBuilder text = new StringBuilder();
        for (Species species : SpeciesCatalogue.published().all()) {
            text.append(species.commonName()).append(" (").append(species.id()).append(")\n");
        }
        return terminal.print("list", text.toString());
    }
}
