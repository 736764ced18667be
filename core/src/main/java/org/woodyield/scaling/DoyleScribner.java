package org.woodyield.scaling;

import org.woodyield.working.Working;

/** Doyle up to 28 in, the Scribner diagram table above: the smaller of the two at every diameter. */
final class DoyleScribner extends PublishedRule {

    private static final double LAST_DOYLE_INCHES = 28;

    private final InsetRule doyle;
    private final ScribnerDiagram scribner;

    DoyleScribner(RuleCard card, InsetRule doyle, ScribnerDiagram scribner) {
        super(card);
        this.doyle = doyle;
        this.scribner = scribner;
    }

    private PublishedRule part(double diameter) {
        return diameter <= LAST_DOYLE_INCHES ? doyle : scribner;
    }

    @Override
    void require(double diameter, double length) {
        super.require(diameter, length);
        part(diameter).require(diameter, length);
    }

    @Override
    double unrounded(double diameter, double length) {
        return part(diameter).unrounded(diameter, length);
    }

    @Override
    int firstRefused(double[] diameters, double[] lengths, int from, int to) {
        int i = from;
        while (i < to && domain.holds(diameters[i], lengths[i]) && isInPart(diameters[i])) {
            i++;
        }
        return i;
    }

    @Override
    int scale(double[] diameters, double[] lengths, double[] out, int from, int to) {
        int i = from;
        while (i < to && domain.holds(diameters[i], lengths[i]) && isInPart(diameters[i])) {
            double diameter = diameters[i];
            // By their own classes, so that the compiler takes both formulas into this loop.
            out[i] = diameter <= LAST_DOYLE_INCHES
                    ? doyle.unrounded(diameter, lengths[i])
                    : scribner.unrounded(diameter, lengths[i]);
            i++;
        }
        round(out, from, i);
        return i;
    }

    private static boolean isInPart(double diameter) {
        return diameter <= LAST_DOYLE_INCHES || WholeNumbers.isWhole(diameter);
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        PublishedRule part = part(diameter);
        part.lines(working, diameter, length);
        working.note("At " + literal(diameter) + " in the part that holds is: " + part.name() + ".");
    }
}
