package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Standing;

/** The published board-foot log rules by id. */
public final class LogRules {

    /** Diagram tables of the 1840s start at 12 in; the figures above 44 in are not at hand. */
    private static final double LAST_DIAGRAM_INCHES = 44;

    private static final String NO_TAPER = "In proportion to length: two logs of the same small end scale what one of"
            + " both lengths does, but a log cut in two scales more, for the lower piece has a larger small end.";

    private static final Map<String, LogRule> RULES = rules();

    private LogRules() {}

    /**
     * A rule by its id.
     *
     * @param id for example {@code doyle}; rules of low confidence are found here too
     * @return the rule
     * @throws OutOfDomainException if there is none; names all that there are
     */
    public static LogRule byId(String id) {
        LogRule rule = RULES.get(id);
        if (rule == null) {
            throw new OutOfDomainException(
                    "log rule", "'" + id + "'", "", String.join(", ", RULES.keySet()), "take one of these ids");
        }
        return rule;
    }

    /**
     * The rules to offer and to compare, in the order in which they are listed.
     *
     * @return without the rules that rest on a formula recalled with less than high confidence
     */
    public static List<LogRule> all() {
        return RULES.values().stream().filter(rule -> !byRequestOnly(rule)).toList();
    }

    /**
     * The rules that answer only when asked for by id, because their formula was recalled with less than high confidence.
     *
     * @return in the order in which they are listed
     */
    public static List<LogRule> onRequest() {
        return RULES.values().stream().filter(LogRules::byRequestOnly).toList();
    }

    private static boolean byRequestOnly(LogRule rule) {
        String source = rule.sources().get(0).id();
        return source.equals("rules-memory-medium") || source.equals("rules-memory-low");
    }

    static void requireSameLength(double[] diameters, double[] lengths, double[] out) {
        if (diameters.length != out.length || lengths.length != out.length) {
            throw new IllegalArgumentException(diameters.length + " diameters, " + lengths.length
                    + " lengths, room for " + out.length + "; allowed: three arrays of one length");
        }
    }

    private static Map<String, LogRule> rules() {
        String nearest =
                "To the nearest board foot, an exact half up (readings of an old scale stick, secondhand; the table"
                        + " of 1913 prints 20 halves up and 35 down).";
        String five = "To the nearest 5 bf, an exact half up (secondhand; no statute states it).";
        InsetRule doyle = new InsetRule(
                RuleCard.of("doyle", "Doyle", "la-rs-3-4641")
                        .also("fnr-191", "chase-1913", "doyle-stick")
                        .diameter(1, 120, "measure the diameter inside bark again")
                        .rounded(1, "doyle-stick", nearest)
                        .flags(
                                RuleFlag.fallsWithDiameter(
                                        "Below 4 in the formula rises again as the log gets thinner.", 16, 1, 3),
                                RuleFlag.givesNothing("A log of 4 in scales nothing.", 4, 16),
                                RuleFlag.cuttingAdds(NO_TAPER, 12, 16, 8, 13)),
                1,
                4,
                16);
        RuleFlag cutInternational = RuleFlag.cuttingAdds(
                "With rounding to 5 bf, or a taper above 1/2 in to 4 ft, the pieces of a log can scale more than the log.",
                12,
                16,
                8,
                14);
        RuleFlag nothing = RuleFlag.givesNothing("Rounding to 5 bf leaves nothing of a thin short log.", 4, 8);
        InternationalRule quarter = new InternationalRule(
                RuleCard.of("international-quarter", "International 1/4-inch", "mcl-290-401")
                        .also("mass-96-11a", "international-nearest-5", "international-part-section")
                        .rounded(5, "international-nearest-5", five)
                        .flags(nothing, cutInternational),
                0.904762);
        InternationalRule quarterPrinted = new InternationalRule(
                RuleCard.of(
                                "international-quarter-905",
                                "International 1/4-inch with the constant 0.905",
                                "international-0-905")
                        .also("mcl-290-401", "international-nearest-5", "international-part-section")
                        .rounded(5, "international-nearest-5", five)
                        .flags(nothing, cutInternational),
                0.905);
        InternationalRule quarterExact = new InternationalRule(
                RuleCard.of(
                                "international-quarter-19-21",
                                "International 1/4-inch with the constant 19/21",
                                "international-19-21")
                        .also("mcl-290-401", "international-nearest-5", "international-part-section")
                        .rounded(5, "international-nearest-5", five)
                        .flags(nothing, cutInternational),
                19.0 / 21);
        InternationalRule eighth = new InternationalRule(
                RuleCard.of("international-eighth", "International 1/8-inch", "international-eighth")
                        .also("mcl-290-401", "international-nearest-5", "international-part-section")
                        .rounded(5, "international-nearest-5", five)
                        .flags(nothing, cutInternational),
                1);
        ScribnerDecimalC decimalC = new ScribnerDecimalC(
                RuleCard.of("scribner-decimal-c", "Scribner Decimal C", "scribner-factors-memory")
                        .also("bailey-1911")
                        .saying(
                                "To the nearest 10 bf, an exact half up, and 5 bf where the table has 0.5; the cells are"
                                        + " rounded already.")
                        .diameter(6, 60, "the table covers whole inches from 6 to 60")
                        .length(4, 40, RuleCard.OTHER_LENGTH)
                        .flags(
                                RuleFlag.givesNothing("A log of 6 in and 4 ft scales nothing.", 6, 4),
                                RuleFlag.fallsWithLength(
                                        "The printed 5 bf for 6 and 7 in, 6 and 8 ft, lie below the 10 bf of 7 ft.",
                                        6,
                                        7,
                                        8),
                                RuleFlag.cuttingAdds(
                                        "Steps of 10 bf and no taper: the pieces of a log can scale more than the log.",
                                        12,
                                        16,
                                        8,
                                        13)),
                true);
        ScribnerDecimalC factors = new ScribnerDecimalC(
                RuleCard.of("scribner-factors", "Scribner by factors, long logs", "scribner-factors-memory")
                        .saying("To the nearest 10 bf, an exact half up; the cells are rounded already.")
                        .diameter(6, 60, "the factors cover whole inches from 6 to 60")
                        .length(4, 40, RuleCard.OTHER_LENGTH)
                        .flags(
                                RuleFlag.givesNothing("A log of 6 in and 4 ft scales nothing.", 6, 4),
                                RuleFlag.cuttingAdds(
                                        "Steps of 10 bf and no taper: the pieces of a log can scale more than the log.",
                                        12,
                                        16,
                                        8,
                                        13)),
                false);
        InternationalAnyLength anyLength = new InternationalAnyLength(RuleCard.of(
                        "international-quarter-any-length",
                        "International 1/4-inch, one formula for any length",
                        "international-any-length")
                .also("mcl-290-401", "international-nearest-5")
                .rounded(5, "international-nearest-5", five)
                .flags(nothing, cutInternational));
        ScribnerDiagram diagram = new ScribnerDiagram(
                RuleCard.of("scribner-diagram", "Scribner, diagram table", "scribner-diagram-memory")
                        .diameter(12, LAST_DIAGRAM_INCHES, "the table covers whole inches from 12 to 44")
                        .length(4, 40, RuleCard.OTHER_LENGTH)
                        .rounded(1, "trade", "To the nearest board foot, an exact half up (ours; the table is whole).")
                        .flags(RuleFlag.cuttingAdds(NO_TAPER, 12, 16, 8, 13)));
        QuadraticRule fit = new QuadraticRule(
                RuleCard.of("scribner-fit", "Scribner, fitted formula (not the table)", "scribner-fit-memory")
                        .flags(RuleFlag.cuttingAdds(NO_TAPER, 12, 16, 8, 13)),
                0.79,
                2,
                4,
                16);
        DoyleScribner doyleScribner = new DoyleScribner(
                RuleCard.of("doyle-scribner", "Doyle-Scribner", "doyle-scribner-glossary")
                        .also("la-rs-3-4641", "scribner-diagram-memory")
                        .standing(Standing.MEMORY)
                        .diameter(4, LAST_DIAGRAM_INCHES, "above 28 in the Scribner table holds, which ends at 44")
                        .length(4, 40, RuleCard.OTHER_LENGTH)
                        .rounded(1, "trade", "To the nearest board foot, an exact half up (ours).")
                        .flags(
                                RuleFlag.givesNothing("A log of 4 in scales nothing.", 4, 16),
                                RuleFlag.cuttingAdds(NO_TAPER, 12, 16, 8, 13)),
                doyle,
                diagram);
        InsetRule vermont = new InsetRule(
                RuleCard.of("vermont", "Vermont, one section of up to 12 ft", "vt-9-2693")
                        .length(
                                1,
                                12,
                                "scale a longer log in sections of 12 ft from the small end, as the convention does"),
                1,
                0,
                24);
        InsetRule square = new InsetRule(
                RuleCard.of("inscribed-square", "Inscribed square", "inscribed-square")
                        .flags(RuleFlag.cuttingAdds(NO_TAPER, 12, 16, 8, 13)),
                1,
                0,
                24);
        InsetRule twoThirds = new InsetRule(
                RuleCard.of("two-thirds", "Two-thirds (Big Sandy cube)", "two-thirds-bf")
                        .also("bulletin-36-1902")
                        .at(DiameterAt.MEAN_OF_ENDS),
                1,
                0,
                27);
        List<PublishedRule> rules = new ArrayList<>(List.of(
                doyle,
                decimalC,
                quarter,
                quarterPrinted,
                quarterExact,
                eighth,
                diagram,
                fit,
                doyleScribner,
                vermont,
                square,
                twoThirds));
        rules.add(anyLength);
        rules.add(factors);
        rules.add(new InsetRule(
                RuleCard.of("adirondack", "Adirondack market, 200 bf a market", "adirondack-almanack")
                        .flags(RuleFlag.cuttingAdds(NO_TAPER, 12, 16, 8, 13)),
                200,
                0,
                19 * 19 * 13));
        rules.add(new InsetRule(
                RuleCard.of("constantine", "Constantine (solid log)", "rules-memory-high"), 0.7854, 0, 12));
        rules.add(new InsetRule(
                RuleCard.of("brereton", "Brereton", "rules-memory-high").at(DiameterAt.MEAN_OF_ENDS), 0.7854, 0, 12));
        rules.add(new InsetRule(
                RuleCard.of(
                                "british-columbia",
                                "British Columbia, 0.7854 x 8 = 6.2832 over 11 x 12",
                                "rules-memory-high")
                        .length(1, 40, "a log over 40 ft is scaled with its taper"),
                6.2832,
                1.5,
                132));
        rules.add(new QuadraticRule(RuleCard.of("ontario", "Ontario", "rules-memory-high"), 0.55, 1.2, 0, 12));
        rules.add(new InsetRule(RuleCard.of("roy", "Roy (Quebec)", "rules-memory-high"), 1, 1, 20));
        rules.add(new InsetRule(
                RuleCard.of("three-fourths", "Square of three-fourths", "rules-memory-high"), 0.5625, 0, 12));
        rules.add(new InsetRule(
                RuleCard.of("blodgett", "New Hampshire (Blodgett), 10 bf a unit", "rules-memory-medium")
                        .at(DiameterAt.MIDDLE),
                10,
                0,
                256));
        rules.add(new QuadraticRule(
                RuleCard.of("spaulding", "Spaulding, fitted formula", "rules-memory-medium")
                        .diameter(6, 120, "the fitted formula is below nothing under 6 in"),
                0.778,
                1.125,
                13.482,
                16));
        rules.add(new QuadraticRule(
                RuleCard.of("humboldt", "Humboldt, 0.7 x Spaulding", "rules-memory-medium")
                        .diameter(6, 120, "the fitted formula is below nothing under 6 in"),
                0.5446,
                0.7875,
                9.4374,
                16));
        rules.add(new QuadraticRule(RuleCard.of("champlain", "Champlain", "rules-memory-medium"), 0.62832, 1, 0, 12));
        rules.add(new QuadraticRule(RuleCard.of("universal", "Universal", "rules-memory-medium"), 0.62832, 2, 0, 12));
        rules.add(new QuadraticRule(RuleCard.of("tiemann", "Tiemann", "rules-memory-low"), 0.75, 2, 2, 16));
        Map<String, LogRule> byId = new LinkedHashMap<>();
        for (PublishedRule rule : rules) {
            if (byId.put(rule.id(), rule) != null) {
                throw new IllegalStateException("two rules with the id " + rule.id());
            }
        }
        return Collections.unmodifiableMap(byId);
    }
}
