package org.woodyield.checks;

import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.StackedWood;
import org.woodyield.scaling.SwedishMeasure;

/** What the check tables call of the cubic rules and measures in {@code org.woodyield.scaling}. */
final class CubicChecks {

    private CubicChecks() {}

    static void list(Catalogue.Builder catalogue) {
        catalogue
                .number(
                        "scaling.cubic-rule",
                        given -> CubicRule.byId(given.text("rule"))
                                .unroundedCubicMetres(given.number("centimetres"), given.number("length_m")))
                .number(
                        "scaling.cubic-rule-rounded",
                        given -> CubicRule.byId(given.text("rule"))
                                .cubicMetres(given.number("centimetres"), given.number("length_m")))
                .number(
                        "scaling.cubic-rule-class",
                        given -> CubicRule.byId(given.text("rule")).centimetres(given.length("reading")))
                .number("scaling.japan-whole-metres", given -> wholeMetres(given.number("length_m")))
                .number(
                        "scaling.stacked-wood",
                        given -> StackedWood.solidCubicMetres(
                                given.number("count"),
                                StackedWood.Unit.valueOf(given.text("unit")),
                                given.number("share")))
                .number(
                        "scaling.green-cord-weight",
                        given -> StackedWood.greenPounds(1, StackedWood.GreenCord.valueOf(given.text("wood"))))
                .number("scaling.midsouth-pine-cord", given -> StackedWood.MIDSOUTH_PINE_SHARE * 128)
                .number(
                        "scaling.swedish-measure-back",
                        given -> 1
                                / SwedishMeasure.valueOf(given.text("to"))
                                        .to(1, SwedishMeasure.valueOf(given.text("from"))));
    }

    /** From the diameter with its allowance, 20 cm and half of what lies above 4 m. */
    private static double wholeMetres(double length) {
        return (CubicRule.JAPAN.working(20, length).value("A") - 20) * 2 + 4;
    }
}
