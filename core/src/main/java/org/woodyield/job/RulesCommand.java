package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.show.RuleText;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Sources;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Lists the log rules, describes one, or shows how one scales a log. */
final class RulesCommand implements Subcommand {

    @Override
    public String name() {
        return "rules";
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.addPositional(argument(0, "RULE", "Key of a rule; without it all rules are listed."));
        spec.addPositional(argument(
                1, "DIAMETER", "Scaling diameter inside bark, such as '14 in'; the rule's working is then shown."));
        spec.addPositional(argument(2, "LENGTH", "Scaling length, such as '16 ft'."));
        spec.usageMessage()
                .description(
                        "Lists the log rules with their limits, standing and source, or shows the working of one.");
        return spec;
    }

    private static PositionalParamSpec argument(int index, String label, String description) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(index))
                .paramLabel(label)
                .arity("0..1")
                .type(String.class)
                .description(description)
                .build();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) {
        String id = given.matchedPositionalValue(0, "");
        String diameter = given.matchedPositionalValue(1, "");
        String length = given.matchedPositionalValue(2, "");
        if (id.isEmpty()) {
            List<LogRule> all = new ArrayList<>(LogRules.all());
            LogRules.onRequest().stream().filter(rule -> !all.contains(rule)).forEach(all::add);
            return terminal.print("list", RuleText.list(all, LogRules.onRequest()));
        }
        LogRule rule = LogRules.byId(id);
        if (diameter.isEmpty()) {
            return terminal.print("rule", RuleText.card(rule));
        }
        if (length.isEmpty()) {
            throw new BadInputException("a working needs a diameter and a length, such as '14 in' '16 ft'");
        }
        return terminal.print(
                "working",
                WorkingText.plain(rule.working(
                                parsed("DIAMETER", diameter).toInches(),
                                parsed("LENGTH", length).toInches() / 12)
                        .givenBy(Sources.get("command-line"))));
    }

    private static Length parsed(String what, String text) {
        try {
            return Length.parse(text);
        } catch (OutOfDomainException e) {
            throw new BadInputException(what + ": " + e.getMessage());
        }
    }
}
