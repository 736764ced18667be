package org.woodyield.checks;

import org.woodyield.measure.BoardFeet;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.Overrun;

/** What the check tables call in {@code org.woodyield.scaling}. */
final class ScalingChecks {

    private ScalingChecks() {}

    static void list(Catalogue.Builder catalogue) {
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
                        "scaling.overrun",
                        given -> Overrun.percent(
                                BoardFeet.tally(given.number("tally_bf")), BoardFeet.scale(given.number("scale_bf"))));
    }
}
