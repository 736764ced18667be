package org.woodyield.scaling;

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
    private final String formula;

    InsetRule(RuleCard card, double factor, double inset, double divisor) {
        super(card);
        this.factor = factor;
        this.inset = inset;
        this.divisor = divisor;
        String square = inset == 0 ? "D^2" : "(D - " + literal(inset) + ")^2";
        formula = (factor == 1 ? "" : literal(factor) + " * ") + square + " * L / " + literal(divisor);
    }

    @Override
    public double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet) {
        require(scalingDiameterInches, lengthFeet);
        double side = scalingDiameterInches - inset;
        return factor * (side * side) * lengthFeet / divisor;
    }

    @Override
    public double boardFeet(double scalingDiameterInches, double lengthFeet) {
        return round(unroundedBoardFeet(scalingDiameterInches, lengthFeet));
    }

    @Override
    public void scale(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        for (int i = 0; i < boardFeet.length; i++) {
            boardFeet[i] = boardFeet(scalingDiametersInches[i], lengthsFeet[i]);
        }
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        Source source = card.sources().get(0);
        working.step("V", "by formula", formula, "bf", source);
    }
}
