package org.woodyield.show;

import java.util.List;
import org.woodyield.log.FormulaErrors;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.Rounding;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.Jurisdiction;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;

/**
 * Log rules, cubic rules, formulas for the solid volume and the laws of places as plain text: all in a list, or one with its
 * limits, its sources and what does not hold for it.
 */
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

    /**
     * More to say of a rule, as the lines of its card.
     *
     * @param lines a sentence or more in each
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String points(List<String> lines) {
        StringBuilder text = new StringBuilder();
        lines.forEach(words -> text.append(line(words)));
        return text.toString();
    }

    /**
     * A list of cubic rules and of formulas for the solid volume.
     *
     * @param rules in the order in which they are shown
     * @param formulas in the order in which they are shown
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String cubic(List<CubicRule> rules, List<SolidVolume> formulas) {
        StringBuilder text = new StringBuilder();
        for (CubicRule rule : rules) {
            entry(
                    text,
                    rule.id(),
                    rule.label() + ", " + rule.standing().label()
                            + (rule.byRequestOnly() ? ", answers only when asked for by its key" : "")
                            + "; cubic metres; " + rule.place().label() + " "
                            + rule.domainCentimetres().limits() + ", length "
                            + rule.lengthMetres().limits() + "; "
                            + rule.sources().get(0).citation());
        }
        for (SolidVolume formula : formulas) {
            entry(
                    text,
                    formula.id(),
                    formula.label() + ", " + formula.source().standing().label()
                            + ", a formula for the solid volume; diameters and length above 0; "
                            + formula.source().citation());
        }
        return text.toString();
    }

    /**
     * A list of places with the rule that their law or practice sets.
     *
     * @param places in the order in which they are shown
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String laws(List<Jurisdiction> places) {
        StringBuilder text = new StringBuilder();
        for (Jurisdiction place : places) {
            entry(
                    text,
                    place.id(),
                    place.label() + ": " + place.rule().name() + " ("
                            + place.rule().standing().label() + "); up to "
                            + place.convention().greatestLength().inFeet(1, Rounding.DOWN) + " as one; "
                            + place.source().citation());
        }
        return text.toString();
    }

    /**
     * The firmwood scale of British Columbia.
     *
     * @param key under which it stands
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String firmwood(String key) {
        Source source = Sources.get("bc-firmwood-quoted");
        StringBuilder text = new StringBuilder();
        entry(
                text,
                key,
                "Firmwood, British Columbia, " + source.standing().label()
                        + "; cubic metres; radii of both ends inside bark, top 2 to 150 cm, length 0.5 to 30 m; "
                        + source.citation());
        return text.toString();
    }

    private static void entry(StringBuilder text, String id, String words) {
        text.append(id).append('\n').append(TextTable.paragraph("    ", "    ", words));
    }

    /**
     * One cubic rule.
     *
     * @param rule the rule
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String card(CubicRule rule) {
        StringBuilder text = new StringBuilder(TextTable.paragraph("", "", rule.label() + " (" + rule.id() + ")"));
        text.append(line("Standing: " + rule.standing().label() + standingWords(rule.standing())));
        text.append(line("Gives cubic metres; " + rule.place().label() + ": "
                + rule.domainCentimetres().limits() + "; length: "
                + rule.lengthMetres().limits() + "."));
        text.append(line("Rounding: " + rule.rounding()));
        text.append(line("Readings are taken to classes as stated in: "
                + rule.classSource().citation()));
        for (Source source : rule.sources()) {
            text.append(line("Source, " + source.standing().label() + ": " + source.citation()));
        }
        return text.toString();
    }

    /**
     * The law or the practice of one place.
     *
     * @param place the place
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String card(Jurisdiction place) {
        ScalingConvention convention = place.convention();
        StringBuilder text = new StringBuilder(TextTable.paragraph("", "", place.label() + " (" + place.id() + ")"));
        text.append(line("Rule: " + place.rule().name() + " (" + place.rule().id() + "), "
                + place.rule().standing().label() + standingWords(place.rule().standing())));
        text.append(line("Diameter: to " + convention.diameterStep().inInches(1, Rounding.DOWN) + ", "
                + convention.diameterRounding().label() + ", at the "
                + convention.diameterAt().orElse(place.rule().diameterAt()).label()
                + (convention.eachAxisFirst().isPresent() ? ", each way through the end read first" : "") + "."));
        text.append(line("Length: "
                + (convention.trim().isPositive()
                        ? "less " + convention.trim().inInches(1, Rounding.DOWN) + " of trim, "
                        : "")
                + "to " + convention.lengthStep().inFeet(1, Rounding.DOWN) + ", "
                + convention.lengthRounding().label() + "; up to "
                + convention.greatestLength().inFeet(1, Rounding.DOWN) + " as one; a longer log "
                + (convention.split() == ScalingConvention.Split.NEARLY_EQUAL
                        ? "in nearly equal parts."
                        : "in such parts from the small end, the rest at the butt.")));
        convention.notes().forEach(note -> text.append(line(note)));
        text.append(line("Source, " + place.source().standing().label() + ": "
                + place.source().citation()));
        text.append(line("Source of the rule, "
                + place.rule().sources().get(0).standing().label() + ": "
                + place.rule().sources().get(0).citation()));
        text.append(line("Current law is for the reader to look up; the edition read is named above."));
        return text.toString();
    }

    /**
     * One formula for the solid volume, and on which solids it and the others are exact.
     *
     * @param formula the formula
     * @return lines of no more than 100 characters, each with its line end
     */
    public static String card(SolidVolume formula) {
        return TextTable.paragraph("", "", formula.label() + " (" + formula.id() + ")")
                + line("Standing: " + formula.source().standing().label()
                        + standingWords(formula.source().standing()))
                + line("Gives the solid volume, V = " + formula.formula()
                        + ", of the small end a, the middle m, the large end c and the length L in one unit.")
                + line("Source, " + formula.source().standing().label() + ": "
                        + formula.source().citation())
                + "\n"
                + FormulaErrorsText.plain(FormulaErrors.of(1, 1.25, 16), "ft");
    }

    private static String line(String words) {
        return TextTable.paragraph("- ", "  ", words);
    }

    private static String standingWords(Standing standing) {
        return standing == Standing.PUBLISHED ? "" : "; no figure of it counts as verified";
    }
}
