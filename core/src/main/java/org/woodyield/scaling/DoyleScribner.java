package org.woodyield.scaling;

import org.woodyield.working.Working;

/** Doyle up to 28 in, the Scribner diagram table above: the smaller of the two at every diameter. */
final class DoyleScribner extends PublishedRule {

    private static final double LAST_DOYLE_INCHES = 28;

    private final PublishedRule doyle;
    private final PublishedRule scribner;

    DoyleScribner(RuleCard card, PublishedRule doyle, PublishedRule scribner) {
        super(card);
        this.doyle = doyle;
        this.scribner = scribner;
    }

    private PublishedRule part(double diameter) {
        return diameter <= LAST_DOYLE_INCHES ? doyle : scribner;
    }

    @Override
    public double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet) {
        require(scalingDiameterInches, lengthFeet);
        return part(scalingDiameterInches).unroundedBoardFeet(scalingDiameterInches, lengthFeet);
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
        PublishedRule part = part(diameter);
        part.lines(working, diameter, length);
        working.note("At " + literal(diameter) + " in the part that holds is: " + part.name() + ".");
    }
}
