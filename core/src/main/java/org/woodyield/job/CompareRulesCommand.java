package org.woodyield.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.show.RuleComparison;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Sets log rules beside each other by diameter, with what a misread diameter does to each. */
final class CompareRulesCommand implements Subcommand {

    private static final String PAGE = "rules.html";
    private static final String TABLE = "rules.csv";

    @Override
    public String name() {
        return "compare-rules";
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.addOption(option(
                "--rules",
                "RULE,...",
                "Keys of the rules, with commas; without it all that 'rules' lists"
                        + " but those that answer only when asked for."));
        spec.addOption(option("--length", "LENGTH", "Scaling length; without it 16 ft."));
        spec.addOption(option("--from", "DIAMETER", "Least diameter in whole inches; without it 6 in."));
        spec.addOption(option("--to", "DIAMETER", "Greatest diameter in whole inches; without it 30 in."));
        spec.addOption(option(
                "--out",
                "FOLDER",
                "Write " + PAGE + " with a drawing, and " + TABLE + " with every inch, to"
                        + " this folder, which must be new or empty."));
        spec.addOption(OptionSpec.builder("--replace")
                .type(boolean.class)
                .description(
                        "Replace an earlier result in that folder. A folder that holds anything else is left alone.")
                .build());
        spec.usageMessage()
                .description(
                        "Compares the log rules by diameter, and tells what half an inch and an inch of error do to each.");
        return spec;
    }

    private static OptionSpec option(String name, String label, String description) {
        return OptionSpec.builder(name)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<String> out = Optional.ofNullable(given.matchedOptionValue("--out", null));
        boolean replace = given.matchedOptionValue("--replace", false);
        if (replace && out.isEmpty()) {
            throw new BadInputException("--replace needs --out FOLDER; nothing is written without it");
        }
        List<String> problems = new ArrayList<>();
        List<LogRule> rules = Scalings.logRules(given.matchedOptionValue("--rules", ""), problems);
        double feet = length("--length", given, "16 ft", problems).toFeet();
        double from = length("--from", given, "6 in", problems).toInches();
        double to = length("--to", given, "30 in", problems).toInches();
        for (double diameter : new double[] {from, to}) {
            if (diameter != Math.rint(diameter) || Math.abs(diameter) > 1000) {
                problems.add("diameter " + diameter + " in: allowed: whole inches, 1 to 200; round it");
            }
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(problems.toArray(String[]::new));
        }
        RuleComparison comparison =
                RuleComparison.of(rules.isEmpty() ? LogRules.all() : rules, feet, (int) from, (int) to);
        if (out.isEmpty()) {
            return terminal.print("comparison", comparison.text());
        }
        PlanFolder folder = PlanFolder.of(out.get(), Set.of(PAGE, TABLE), replace);
        terminal.say("the comparison stands in "
                + folder.write(Map.of(
                        PAGE,
                        comparison.page().getBytes(StandardCharsets.UTF_8),
                        TABLE,
                        Outputs.csv(comparison.table()))));
        return Main.DONE;
    }

    private static Length length(String option, ParseResult given, String without, List<String> problems) {
        try {
            return Length.parse(given.matchedOptionValue(option, without));
        } catch (OutOfDomainException e) {
            problems.add(option + ": " + e.getMessage());
            return Length.inches(1);
        }
    }
}
