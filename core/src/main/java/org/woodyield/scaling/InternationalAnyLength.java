package org.woodyield.scaling;

import org.woodyield.source.Source;
import org.woodyield.working.Working;

/**
 * The International 1/4-inch rule as one polynomial in D and L: the sum over sections of 4 ft with the constant 0.905, multiplied
 * out and its coefficients rounded. At multiples of 4 ft it is the sum to within those roundings; between them it goes
 * smoothly where the sum goes by sections.
 */
final class InternationalAnyLength extends PublishedRule {

    private static final String FORMULA = "0.049775 * D^2 * L + 0.006222 * D * L^2 - 0.185525 * D * L + 0.000259 * L^3"
            + " - 0.0116 * L^2 + 0.0422 * L";

    InternationalAnyLength(RuleCard card) {
        super(card);
    }

    @Override
    double unrounded(double d, double l) {
        return 0.049775 * (d * d) * l
                + 0.006222 * d * (l * l)
                - 0.185525 * d * l
                + 0.000259 * (l * l * l)
                - 0.0116 * (l * l)
                + 0.0422 * l;
    }

    @Override
    void unrounded(double[] diameters, double[] lengths, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = unrounded(diameters[i], lengths[i]);
        }
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        Source source = card.sources().get(0);
        working.step("V", "by formula", FORMULA, "bf", source);
    }
}
