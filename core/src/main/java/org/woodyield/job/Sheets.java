package org.woodyield.job;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What the commands that read a table and may write a folder have in common. */
final class Sheets {

    private Sheets() {}

    static void outOptions(CommandSpec spec, String files) {
        spec.addOption(OptionSpec.builder("--out")
                .paramLabel("FOLDER")
                .type(String.class)
                .description("Write " + files + " to this folder too, which must be new or empty.")
                .build());
        spec.addOption(OptionSpec.builder("--replace")
                .type(boolean.class)
                .description(
                        "Replace an earlier result in that folder. A folder that holds anything else is left alone.")
                .build());
    }

    static Optional<PlanFolder> folder(ParseResult given, Set<String> files) {
        Optional<String> out = Optional.ofNullable(given.matchedOptionValue("--out", null));
        boolean replace = given.matchedOptionValue("--replace", false);
        if (replace && out.isEmpty()) {
            throw new BadInputException("--replace needs --out FOLDER; nothing is written without it");
        }
        return out.map(name -> PlanFolder.of(name, files, replace));
    }

    /** The rows of a table; none but a problem where it has no row. */
    static List<Table.Row> rows(String name, List<Table.Column> columns, String needed, String row, Problems problems)
            throws IOException {
        String file = ScaleCommand.file(name);
        List<Table.Row> rows = Table.read(file, ScaleCommand.text(name, needed), columns, problems);
        if (rows.isEmpty() && problems.isEmpty()) {
            problems.add(file, 0, "", "", row + " below the header", "the table has none; add it");
        }
        return rows;
    }
}
