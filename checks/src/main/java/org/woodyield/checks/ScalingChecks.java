package org.woodyield.checks;

import org.woodyield.log.Log;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.scaling.DiameterAt;
import org.woodyield.scaling.Jurisdiction;
import org.woodyield.scaling.KerfRule;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.Overrun;
import org.woodyield.scaling.TreeVolumeTable;
import org.woodyield.wood.SpeciesCatalogue;

/** What the check tables call in {@code org.woodyield.scaling}. */
final class ScalingChecks {

    private ScalingChecks() {}

    static void list(Catalogue.Builder catalogue) {
        CubicChecks.list(catalogue);
        catalogue
                .number(
                        "scaling.log-rule",
                        given -> LogRules.byId(given.text("rule"))
                                .unroundedBoardFeet(given.number("diameter_in"), given.number("length_ft")))
                .number(
                        "scaling.log-rule-rounded",
                        given -> LogRules.byId(given.text("rule"))
                                .boardFeet(given.number("diameter_in"), given.number("length_ft")))
                .number(
                        "scaling.diameter",
                        given -> Jurisdiction.byId(given.text("place"))
                                .convention()
                                .scalingDiameterInches(
                                        log(Length.feet(16), given.length("longest"), given.length("shortest"))))
                .number("scaling.segment-count", given -> {
                    Length end = Length.inches(16);
                    return Jurisdiction.byId(given.text("place"))
                            .convention()
                            .segments(log(given.length("length"), end, end), DiameterAt.SMALL_END)
                            .size();
                })
                .number(
                        "scaling.kerf-constant",
                        given -> KerfRule.likeInternational(given.number("kerf_in"))
                                .kerfConstant(KerfRule.likeInternational(given.number("other_kerf_in"))))
                .number("scaling.square-coefficient", given -> {
                    given.text("other_kerf_in");
                    return KerfRule.likeInternational(given.number("kerf_in")).squareCoefficient();
                })
                .number(
                        "scaling.tree-volume-between",
                        given -> TreeVolumeTable.scribnerFormClass78()
                                .between(given.number("dbh_in"), given.number("logs")))
                .number(
                        "scaling.crossing",
                        given -> crossing(LogRules.byId(given.text("rule")), LogRules.byId(given.text("other"))))
                .number(
                        "scaling.international-term",
                        given -> Math.abs(term(LogRules.byId(given.text("rule")), given.text("term"))))
                .number("scaling.international-constant", given -> {
                    LogRule eighth = LogRules.byId("international-eighth");
                    return LogRules.byId(given.text("rule")).unroundedBoardFeet(20, 16)
                            / eighth.unroundedBoardFeet(20, 16);
                })
                .number(
                        "scaling.overrun",
                        given -> Overrun.percent(
                                BoardFeet.tally(given.number("tally_bf")), BoardFeet.scale(given.number("scale_bf"))));
    }

    private static Log log(Length length, Length longest, Length shortest) {
        return new Log(
                "A",
                SpeciesCatalogue.published().find("eastern white pine"),
                length,
                longest,
                shortest,
                longest,
                Length.ZERO,
                Length.ZERO,
                0,
                false);
    }

    /** The first whole inch at which a rule scales more than the other, for logs of 16 ft. */
    private static double crossing(LogRule rule, LogRule other) {
        double diameter =
                Math.max(rule.diameterInches().least(), other.diameterInches().least());
        while (rule.boardFeet(diameter, 16) <= other.boardFeet(diameter, 16)) {
            diameter++;
        }
        return diameter;
    }

    /** A coefficient of the International rule multiplied out: divided differences at whole sections. */
    private static double term(LogRule rule, String term) {
        double[] small = inLength(rule, 10);
        double[] middle = inLength(rule, 11);
        double[] large = inLength(rule, 12);
        double second = (large[0] - 2 * middle[0] + small[0]) / 2;
        double first = middle[0] - small[0] - second * (10 + 11);
        double slope = middle[1] - small[1];
        return switch (term) {
            case "D2L" -> second;
            case "DL" -> first;
            case "L" -> small[0] - first * 10 - second * 100;
            case "DL2" -> slope;
            case "L2" -> small[1] - slope * 10;
            case "L3" -> small[2];
            default -> throw new IllegalArgumentException("no term " + term);
        };
    }

    /** Coefficients of L, L^2 and L^3 at a diameter. */
    private static double[] inLength(LogRule rule, double diameter) {
        double four = rule.unroundedBoardFeet(diameter, 4) / 4;
        double eight = rule.unroundedBoardFeet(diameter, 8) / 8;
        double twelve = rule.unroundedBoardFeet(diameter, 12) / 12;
        double cubic = (twelve - 2 * eight + four) / 32;
        double square = (eight - four) / 4 - cubic * 12;
        return new double[] {four - square * 4 - cubic * 16, square, cubic};
    }
}
