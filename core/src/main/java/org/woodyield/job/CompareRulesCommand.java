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
        return new Usage(
                        "Compares the log rules by diameter, and tells what half an inch and an inch of error do to each.")
                .option(
                        "--rules",
                        "RULE,...",
                        "Keys of the rules, with commas; without it all that 'rules' lists"
                                + " but those that answer only when asked for. Or " + OwnRule.WORDS + ".")
                .option("--length", "LENGTH", "Scaling length; without it 16 ft.")
                .option("--from", "DIAMETER", "Least diameter in whole inches; without it 6 in.")
                .option("--to", "DIAMETER", "Greatest diameter in whole inches; without it 30 in.")
                .out(
                        "Write " + PAGE + " with a drawing, and " + TABLE
                                + " with every inch, to this folder, which must be new or empty.",
                        "result")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<PlanFolder> folder = Usage.folder(given, Set.of(PAGE, TABLE));
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
        if (folder.isEmpty()) {
            return terminal.print("comparison", comparison.text());
        }
        terminal.say("the comparison stands in "
                + folder.get()
                        .write(Map.of(
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
