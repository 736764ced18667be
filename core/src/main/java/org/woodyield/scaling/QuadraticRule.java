package org.woodyield.scaling;

import org.woodyield.working.Working;

/** Rules of the shape (a D^2 - b D - c) L / k. */
final class QuadraticRule extends PublishedRule {

    private final double square;
    private final double slab;
    private final double fixed;
    private final double divisor;
    private final double reciprocal;
    private final String formula;

    QuadraticRule(RuleCard card, double square, double slab, double fixed, double divisor) {
        super(card);
        this.square = square;
        this.slab = slab;
        this.fixed = fixed;
        this.divisor = divisor;
        reciprocal = exactReciprocal(divisor);
        formula = "(" + literal(square) + " * D^2 - " + literal(slab) + " * D"
                + (fixed == 0 ? "" : " - " + literal(fixed)) + ") * L / " + literal(divisor);
    }

    @Override
    double unrounded(double d, double length) {
        return (square * (d * d) - slab * d - fixed) * length / divisor;
    }

    @Override
    void unrounded(double[] diameters, double[] lengths, double[] out, int from, int to) {
        if (reciprocal == 0) {
            for (int i = from; i < to; i++) {
                out[i] = unrounded(diameters[i], lengths[i]);
            }
            return;
        }
        for (int i = from; i < to; i++) {
            double d = diameters[i];
            out[i] = (square * (d * d) - slab * d - fixed) * lengths[i] * reciprocal;
        }
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        working.step("V", "by formula", formula, "bf", card.sources().get(0));
    }
}
