package org.woodyield.show;

import java.util.List;
import org.woodyield.scaling.LogRule;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;

/** Log rules as plain text: all in a list, or one with its limits, its sources and what does not hold for it. */
public final class RuleText {

    private RuleText() {}

    /**
     * A list of rules.
     *
     * @param rules in the order in which they are shown
     * @param onRequest those among them that answer only when asked for by name
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String list(List<LogRule> rules, List<LogRule> onRequest) {
        StringBuilder text = new StringBuilder();
        for (LogRule rule : rules) {
            text.append(rule.id()).append('\n');
            text.append(TextTable.paragraph(
                    "    ",
                    "    ",
                    rule.name() + ", " + rule.standing().label()
                            + (onRequest.contains(rule) ? ", answers only when asked for by its key" : "")
                            + "; diameter "
                            + rule.diameterInches().limits() + ", length "
                            + rule.lengthFeet().limits() + "; "
                            + rule.flags().size() + (rule.flags().size() == 1 ? " thing" : " things")
                            + " one would expect that "
                            + (rule.flags().size() == 1 ? "does" : "do") + " not hold; "
                            + rule.sources().get(0).citation()));
        }
        return text.toString();
    }

    /**
     * One rule.
     *
     * @param rule the rule
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String card(LogRule rule) {
        StringBuilder text = new StringBuilder(TextTable.paragraph("", "", rule.name() + " (" + rule.id() + ")"));
        text.append(line("Standing: " + rule.standing().label() + standingWords(rule.standing())));
        text.append(line("Diameter inside bark: " + rule.diameterInches().limits() + "; length: "
                + rule.lengthFeet().limits() + "."));
        text.append(line("Rounding: " + rule.rounding()));
        rule.flags().forEach(flag -> text.append(line("Does not hold: " + flag.sentence())));
        for (Source source : rule.sources()) {
            text.append(line("Source, " + source.standing().label() + ": " + source.citation()));
        }
        return text.toString();
    }

    private static String line(String words) {
        return TextTable.paragraph("- ", "  ", words);
    }

    private static String standingWords(Standing standing) {
        return standing == Standing.PUBLISHED ? "" : "; no figure of it counts as verified";
    }
}
