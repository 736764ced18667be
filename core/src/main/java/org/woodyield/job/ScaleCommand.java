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
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
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
                        "Table of logs: id, small-end, length; optional small-end-across, large-end. Diameters inside"
                                + " bark, values with their unit.")
                .build());
        spec.addOption(OptionSpec.builder("--rules")
                .paramLabel("RULE,...")
                .type(String.class)
                .required(true)
                .description("Keys of the rules, with commas; 'rules' lists them.")
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
        List<LogRule> rules = rules(given.matchedOptionValue("--rules", ""), problems);
        if (rules.isEmpty() && problems.isEmpty()) {
            problems.add("--rules names no rule; 'rules' lists them");
        }
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
        ScaledLogs scaled = ScaledLogs.of(file(name), text(name), rules);
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

    /** The rules of a list with commas, all problems noted; none for an empty text. */
    static List<LogRule> rules(String ids, List<String> problems) {
        List<LogRule> rules = new ArrayList<>();
        if (ids.isBlank()) {
            return rules;
        }
        for (String id : ids.split(",", -1)) {
            try {
                LogRule rule = LogRules.byId(id.strip());
                if (rules.contains(rule)) {
                    problems.add("rule '" + id.strip() + "' is named twice; name each rule once");
                }
                rules.add(rule);
            } catch (OutOfDomainException e) {
                problems.add(e.getMessage());
            }
        }
        return rules;
    }

    private static String file(String name) {
        int slash = Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'));
        return name.substring(slash + 1);
    }

    private static String text(String name) throws IOException {
        Path path;
        try {
            path = Path.of(name);
        } catch (InvalidPathException e) {
            throw new BadInputException("table '" + name + "' is not a path; choose another name");
        }
        if (!Files.isRegularFile(path)) {
            throw new BadInputException("table '" + name + "' is " + (Files.exists(path) ? "not a file" : "not there")
                    + "; it has the columns id, small-end, length");
        }
        Problems problems = new Problems();
        Optional<String> text = FileText.decode(file(name), Files.readAllBytes(path), problems);
        problems.stopIfAny();
        return text.orElse("");
    }
}
