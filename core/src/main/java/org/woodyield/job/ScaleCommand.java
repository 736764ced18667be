package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.Domain;
import org.woodyield.scaling.NetScale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/**
 * Scales a table of logs by some rules. A row that cannot be read, or that no rule takes, is named and counted; the others
 * go on.
 */
final class ScaleCommand implements Subcommand {

    private static final String SCALES = "scales.csv";
    private static final String REFUSED = "refused.csv";

    @Override
    public String name() {
        return "scale";
    }

    @Override
    public CommandSpec spec() {
        return new Usage("Scales logs: mean of the diameters to the nearest inch, a half down; whole feet; up to 40 ft"
                        + " as one (common practice, no source).")
                .argument(
                        "LOGS",
                        "Table of logs: id, small-end, length; optional small-end-across, middle, large-end. Diameters"
                                + " inside bark, values with their unit. Defects, optional: " + DefectColumns.WORDS
                                + "; with any of these columns net scales are given too.")
                .option(
                        "--rules",
                        "RULE,...",
                        "Keys of log rules, cubic rules and volume formulas, with commas; 'rules' lists them. Or "
                                + OwnRule.WORDS + ".")
                .option(
                        "--law",
                        "PLACE,...",
                        "Keys of places whose law or written practice sets rule and convention, with commas; 'rules'"
                                + " lists them.")
                .option(
                        "--least-sound",
                        "SHARE",
                        "Share of the gross scale that must be sound for a log to be merchantable, such as '50 %%';"
                                + " without it a third, as for softwood saw logs (MEMORY).")
                .out(
                        "Write " + SCALES + " and " + REFUSED
                                + " to this folder, which must be new or empty, and print the totals only.",
                        "result")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        List<String> problems = new ArrayList<>();
        List<Scaling> scalings =
                Scalings.of(given.matchedOptionValue("--rules", ""), given.matchedOptionValue("--law", ""), problems);
        if (scalings.isEmpty() && problems.isEmpty()) {
            problems.add("no rule is named; name some by --rules or a law by --law; 'rules' lists them");
        }
        double leastSound = leastSound(given, problems);
        if (!problems.isEmpty()) {
            throw new BadInputException(problems.toArray(String[]::new));
        }
        Optional<PlanFolder> folder = Usage.folder(given, Set.of(SCALES, REFUSED));
        String name = given.matchedPositionalValue(0, "");
        ScaledLogs scaled =
                ScaledLogs.of(Sheets.file(name), Sheets.text(name, "id, small-end, length"), scalings, leastSound);
        scaled.read().tell(terminal, folder.map(target -> REFUSED));
        byte[] table = scaled.table();
        int code = folder.isPresent() ? terminal.print("scale", scaled.totals()) : terminal.print("scale", table);
        terminal.say(scaled.count());
        folder.ifPresent(target -> terminal.say("the scales stand in "
                + target.write(Map.of(SCALES, table, REFUSED, scaled.read().refusedTable()))));
        if (scaled.none()) {
            throw new BadInputException("no row of " + Sheets.file(name) + " can be scaled");
        }
        return code;
    }

    private static double leastSound(ParseResult given, List<String> problems) {
        if (!given.hasMatchedOption("--least-sound")) {
            return NetScale.SOFTWOOD_LEAST_SHARE;
        }
        Problems found = new Problems();
        Optional<Double> percent = new Cell(
                        "--least-sound", 0, "", given.matchedOptionValue("--least-sound", ""), found)
                .quantity(Units.PERCENT, new Domain("", "%", 0, 100, ""));
        found.inOrder().forEach(problem -> problems.add(problem.toString()));
        return percent.orElse(0.0) / 100;
    }
}
