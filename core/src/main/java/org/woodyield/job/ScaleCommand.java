package org.woodyield.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.Domain;
import org.woodyield.scaling.NetScale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * Scales a table of logs by some rules. A row that cannot be read, or that no rule takes, is named and counted; the others
 * go on.
 */
final class ScaleCommand implements Subcommand {

    private static final String SCALES = "scales.csv";
    private static final String REFUSED = "refused.csv";
    private static final int SHOWN = 20;

    @Override
    public String name() {
        return "scale";
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("LOGS")
                .arity("1")
                .type(String.class)
                .description(
                        "Table of logs: id, small-end, length; optional small-end-across, middle, large-end. Diameters inside"
                                + " bark, values with their unit. Defects, optional: " + DefectColumns.WORDS
                                + "; with any of these columns net scales are given too.")
                .build());
        spec.addOption(OptionSpec.builder("--rules")
                .paramLabel("RULE,...")
                .type(String.class)
                .description("Keys of log rules, cubic rules and volume formulas, with commas; 'rules' lists them.")
                .build());
        spec.addOption(OptionSpec.builder("--law")
                .paramLabel("PLACE,...")
                .type(String.class)
                .description("Keys of places whose law or written practice sets rule and convention, with commas;"
                        + " 'rules' lists them.")
                .build());
        spec.addOption(OptionSpec.builder("--least-sound")
                .paramLabel("SHARE")
                .type(String.class)
                .description(
                        "Share of the gross scale that must be sound for a log to be merchantable, such as '50 %%';"
                                + " without it a third, as for softwood saw logs (MEMORY).")
                .build());
        spec.addOption(OptionSpec.builder("--out")
                .paramLabel("FOLDER")
                .type(String.class)
                .description("Write " + SCALES + " and " + REFUSED
                        + " to this folder, which must be new or empty, and print" + " the totals only.")
                .build());
        spec.addOption(OptionSpec.builder("--replace")
                .type(boolean.class)
                .description(
                        "Replace an earlier result in that folder. A folder that holds anything else is left alone.")
                .build());
        spec.usageMessage()
                .description(
                        "Scales logs: mean of the diameters to the nearest inch, a half down; whole feet; up to 40 ft as one"
                                + " (common practice, no source).");
        return spec;
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
        Optional<String> out = Optional.ofNullable(given.matchedOptionValue("--out", null));
        boolean replace = given.matchedOptionValue("--replace", false);
        if (replace && out.isEmpty()) {
            throw new BadInputException("--replace needs --out FOLDER; nothing is written without it");
        }
        Optional<PlanFolder> folder = out.map(name -> PlanFolder.of(name, Set.of(SCALES, REFUSED), replace));
        String name = given.matchedPositionalValue(0, "");
        ScaledLogs scaled = ScaledLogs.of(file(name), text(name, "id, small-end, length"), scalings, leastSound);
        List<Problem> refused = scaled.refused();
        refused.stream().limit(SHOWN).forEach(problem -> terminal.say(problem.toString()));
        if (refused.size() > SHOWN) {
            terminal.say((refused.size() - SHOWN) + " more problems"
                    + (folder.isPresent() ? ", all in " + REFUSED : "; --out FOLDER writes all of them"));
        }
        byte[] table = scaled.table();
        int code = folder.isPresent() ? terminal.print("scale", scaled.totals()) : terminal.print("scale", table);
        terminal.say(scaled.count());
        folder.ifPresent(target -> terminal.say(
                "the scales stand in " + target.write(Map.of(SCALES, table, REFUSED, scaled.refusedTable()))));
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

    static String file(String name) {
        int slash = Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'));
        return name.substring(slash + 1);
    }

    static String text(String name, String columns) throws IOException {
        Path path;
        try {
            path = Path.of(name);
        } catch (InvalidPathException e) {
            throw new BadInputException("table '" + name + "' is not a path; choose another name");
        }
        if (!Files.isRegularFile(path)) {
            throw new BadInputException("table '" + name + "' is " + (Files.exists(path) ? "not a file" : "not there")
                    + "; it has the columns " + columns);
        }
        Problems problems = new Problems();
        Optional<String> text = FileText.decode(file(name), Files.readAllBytes(path), problems);
        problems.stopIfAny();
        return text.orElse("");
    }
}
