package org.woodyield.job;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Writes out the demonstration job. */
final class NewJobCommand implements Subcommand {

    @Override
    public String name() {
        return "new-job";
    }

    @Override
    public CommandSpec spec() {
        return new Usage("Writes the files of the invented demonstration job, to be edited into your own.")
                .argument("FOLDER", "Folder to write to; must be new or empty.")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Path written = PlanFolder.of(given.matchedPositionalValue(0, ""), Set.of(), false)
                .write(new JobFiles.Demo().all());
        return terminal.print(
                "message",
                "The invented demonstration job stands in " + written + "; edit it, then give that folder.\n");
    }
}
