package org.woodyield.scaling;

import org.woodyield.working.Working;

/** Rules of the shape (a D^2 - b D - c) L / k. */
final class QuadraticRule extends PublishedRule {

    private final double square;
    private final double slab;
    private final double fixed;
    private final double divisor;
    private final String formula;

    QuadraticRule(RuleCard card, double square, double slab, double fixed, double divisor) {
        super(card);
        this.square = square;
        this.slab = slab;
        this.fixed = fixed;
        this.divisor = divisor;
        formula = "(" + literal(square) + " * D^2 - " + literal(slab) + " * D"
                + (fixed == 0 ? "" : " - " + literal(fixed)) + ") * L / " + literal(divisor);
    }

    @Override
    public double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet) {
        require(scalingDiameterInches, lengthFeet);
        double d = scalingDiameterInches;
        return (square * (d * d) - slab * d - fixed) * lengthFeet / divisor;
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
        working.step("V", "by formula", formula, "bf", card.sources().get(0));
    }
}
