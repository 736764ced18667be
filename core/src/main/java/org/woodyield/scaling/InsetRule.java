package org.woodyield.scaling;

import java.util.Optional;
import org.woodyield.source.Source;
import org.woodyield.working.Working;

/**
 * Rules of the shape f (D - a)^2 L / k: the diameter less a fixed allowance for slabs, squared. Doyle, with a = 4 in and k
 * = 16, is the best known.
 */
final class InsetRule extends PublishedRule {

    private final double factor;
    private final double inset;
    private final double divisor;
    private final double reciprocal;
    private final String formula;

    InsetRule(RuleCard card, double factor, double inset, double divisor) {
        super(card);
        this.factor = factor;
        this.inset = inset;
        this.divisor = divisor;
        reciprocal = exactReciprocal(divisor);
        String square = inset == 0 ? "D^2" : "(D - " + literal(inset) + ")^2";
        formula = (factor == 1 ? "" : literal(factor) + " * ") + square + " * L / " + literal(divisor);
    }

    @Override
    double unrounded(double diameter, double length) {
        double side = diameter - inset;
        return factor * (side * side) * length / divisor;
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
            double side = diameters[i] - inset;
            out[i] = factor * (side * side) * lengths[i] * reciprocal;
        }
    }

    @Override
    public Optional<String> caution(double scalingDiameterInches, double lengthFeet) {
        return scalingDiameterInches < inset
                ? Optional.of("below " + literal(inset) + " in the formula of " + card.name()
                        + " rises again as the log gets thinner; the figure says nothing of what the log gives")
                : Optional.empty();
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        Source source = card.sources().get(0);
        working.step("V", "by formula", formula, "bf", source);
    }
}
