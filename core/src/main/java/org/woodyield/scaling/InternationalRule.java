package org.woodyield.scaling;

import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Working;

/**
 * The International rule: c times the sum, over sections of 4 ft from the small end, of 0.22 d^2 - 0.71 d, where d is the
 * section's own small end and grows by 1/2 in from section to section.
 *
 * <p>No statute says what a rest of less than 4 ft counts. Here it lies at the butt, keeps its own diameter and counts its
 * share of a whole section; taking it at the top instead changes one cell of the 6 to 40 in by 8 to 20 ft table.
 */
final class InternationalRule extends PublishedRule {

    private final double constant;

    InternationalRule(RuleCard card, double constant) {
        super(card);
        this.constant = constant;
    }

    @Override
    double unrounded(double diameter, double length) {
        int whole = (int) (length / 4);
        double sum = 0;
        for (int i = 0; i < whole; i++) {
            double d = diameter + 0.5 * i;
            sum += 0.22 * (d * d) - 0.71 * d;
        }
        double rest = length - 4 * whole;
        if (rest > 0) {
            double d = diameter + 0.5 * whole;
            sum += (0.22 * (d * d) - 0.71 * d) * rest / 4;
        }
        return constant * sum;
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
        int whole = (int) (length / 4);
        StringBuilder sum = new StringBuilder();
        for (int i = 0; i < whole; i++) {
            String n = Integer.toString(i + 1);
            working.step("d" + n, "small end of section " + n, "D + 0.5 * " + i, "in", source);
            working.step("s" + n, "section " + n, "0.22 * d" + n + "^2 - 0.71 * d" + n, "bf", source);
            sum.append(i == 0 ? "s" : " + s").append(n);
        }
        if (length - 4 * whole > 0) {
            String n = Integer.toString(whole + 1);
            Source own = Sources.get("international-part-section");
            working.step("r", "rest at the butt", "L - 4 * " + whole, "ft", own);
            working.step("d" + n, "small end of the rest", "D + 0.5 * " + whole, "in", source);
            working.step(
                    "s" + n,
                    "the rest's share of a section",
                    "(0.22 * d" + n + "^2 - 0.71 * d" + n + ") * r / 4",
                    "bf",
                    own);
            sum.append(whole == 0 ? "s" : " + s").append(n);
        }
        working.step("S", "sum of the sections", sum.toString(), "bf", source);
        working.constant("c", "kerf constant", constant, "", source);
        working.step("V", "by formula", "c * S", "bf", source);
        KerfRule assumed = KerfRule.likeInternational(constant == 1 ? 0.125 : 0.25);
        if (assumed.diameterInches().holds(diameter) && assumed.lengthFeet().holds(length)) {
            working.note("The rule prints 0.22; its assumptions (kerf " + literal(assumed.kerfInches())
                    + " in, shrinkage 1/16 in, inch boards) give 0.22046, and with it this log is "
                    + Rounding.HALF_UP.toStep(assumed.unroundedBoardFeet(diameter, length) * 100, 1) / 100
                    + " bf before rounding.");
        }
    }
}
