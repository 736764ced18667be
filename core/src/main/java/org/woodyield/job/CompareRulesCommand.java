package org.woodyield.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.Length;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.show.RuleComparison;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Sets log rules beside each other by diameter, with what a misread diameter does to each. */
final class CompareRulesCommand implements Subcommand {

    private static final String PAGE = "rules.html";
    private static final String TABLE = "rules.csv";
    private static final Length WIDEST = Length.inches(200);
    private static final Length LONGEST = Length.feet(1000);

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
        List<String> wrong = new ArrayList<>();
        List<LogRule> rules = Scalings.logRules(given.matchedOptionValue("--rules", ""), wrong);
        Problems problems = new Problems();
        Arguments arguments = new Arguments(name(), given, problems);
        double feet = arguments.length("--length", "16 ft", LONGEST).toFeet();
        int from = wholeInches(arguments.cell("--from", "6 in"));
        int to = wholeInches(arguments.cell("--to", "30 in"));
        problems.inOrder().forEach(problem -> wrong.add(problem.toString()));
        if (!wrong.isEmpty()) {
            throw new BadInputException(wrong.toArray(String[]::new));
        }
        RuleComparison comparison = RuleComparison.of(rules.isEmpty() ? LogRules.all() : rules, feet, from, to);
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

    private static int wholeInches(Cell cell) {
        Optional<Length> length = cell.lengthUpTo(WIDEST, "check the unit");
        double inches = length.orElse(WIDEST).toInches();
        if (inches != Math.rint(inches)) {
            cell.refuse("whole inches, up to " + WIDEST, "round it");
        }
        return (int) inches;
    }
}
