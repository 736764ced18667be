package org.woodyield.scaling;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A log rule from assumptions, for a person's own saw.
 *
 * <p>Each section of the log counts (pi/4 d^2 - a d) g l/12 board feet, with g = t/(t + k + s): the circle of its small
 * end, less a plank of the thickness a and the width d for slabs and edgings, of which the share g becomes board and the
 * rest sawdust and shrinkage. The small end d grows by the taper from section to section; a rest at the butt counts its
 * own length. The International rule is this rule with its assumptions printed to two digits: 0.22 for 0.22046.
 *
 * @param id the key
 * @param name the name as shown
 * @param boardThicknessInches t, of the board that is counted
 * @param kerfInches k
 * @param shrinkageInches s, what a board is sawn thicker for drying
 * @param slabPlankInches a
 * @param taperInchesPerFoot growth of the diameter toward the butt
 * @param sectionFeet length of a section
 */
@Calculation("scaling.kerf-rule")
public record KerfRule(
        String id,
        String name,
        double boardThicknessInches,
        double kerfInches,
        double shrinkageInches,
        double slabPlankInches,
        double taperInchesPerFoot,
        double sectionFeet)
        implements LogRule {

    private static final Domain DIAMETER = Domain.of("scaling diameter", "in", 1, 120);
    private static final Domain LENGTH = Domain.of("scaling length", "ft", 1, 60);
    private static final Domain KERF = Domain.of("kerf", "in", 0, 1);

    /**
     * Checks the assumptions.
     *
     * @throws org.woodyield.measure.OutOfDomainException if one of them is out of reason
     */
    public KerfRule {
        Domain.of("board thickness", "in", 0.25, 12).require(boardThicknessInches);
        KERF.require(kerfInches);
        Domain.of("shrinkage", "in", 0, 1).require(shrinkageInches);
        Domain.of("slab plank", "in", 0, 12).require(slabPlankInches);
        Domain.of("taper", "in/ft", 0, 1).require(taperInchesPerFoot);
        Domain.of("section", "ft", 1, 60).require(sectionFeet);
    }

    /**
     * The assumptions of the International rule for a kerf: 1-inch boards, 1/16 in shrinkage, 1/2 in taper to 4 ft, and
     * the slab plank that gives 0.71 d at a kerf of 1/8 in.
     *
     * @param kerfInches the kerf of one's own saw
     * @return the rule
     * @throws org.woodyield.measure.OutOfDomainException if the kerf is out of reason
     */
    public static KerfRule likeInternational(double kerfInches) {
        return new KerfRule(
                "international-assumptions",
                "International assumptions, kerf " + PublishedRule.literal(KERF.require(kerfInches)) + " in",
                1,
                kerfInches,
                0.0625,
                0.71 * 3 * 19 / 16,
                0.125,
                4);
    }

    /**
     * What another kerf leaves of a rule: the share of the wood that becomes board here over the share there. From 1/8 in
     * to 1/4 in, with 1/16 in of shrinkage, it is 19/21, which statutes print as 0.904762.
     *
     * @param other the rule that is compared with
     * @return above zero
     */
    @Calculation("scaling.kerf-constant")
    public double kerfConstant(KerfRule other) {
        return boardShare() / other.boardShare();
    }

    /**
     * The working of {@link #kerfConstant}.
     *
     * @param other the rule that is compared with
     * @return a working with the same value
     */
    public Working kerfConstantWorking(KerfRule other) {
        Source source = Sources.get("kerf-rule");
        return Working.of("Kerf constant of " + name)
                .given("t", "board thickness", boardThicknessInches, "in")
                .given("k", "kerf", kerfInches, "in")
                .given("s", "shrinkage", shrinkageInches, "in")
                .given("t0", "board thickness there", other.boardThicknessInches, "in")
                .given("k0", "kerf there", other.kerfInches, "in")
                .given("s0", "shrinkage there", other.shrinkageInches, "in")
                .step("g", "share that becomes board", "t / (t + k + s)", "", source)
                .step("g0", "the share there", "t0 / (t0 + k0 + s0)", "", source)
                .step("c", "kerf constant", "g / g0", "", source)
                .build();
    }

    /**
     * What stands before the square of the diameter in a rule by sections: the circle, the share that becomes board, and the
     * section's length. The International rule prints 0.22 for it; its assumptions give 0.22046.
     *
     * @return board feet per square inch of diameter and section
     */
    @Calculation("scaling.square-coefficient")
    public double squareCoefficient() {
        return StrictMath.PI / 4 * boardShare() * sectionFeet / 12;
    }

    /**
     * The working of {@link #squareCoefficient}.
     *
     * @return a working with the same value
     */
    public Working squareCoefficientWorking() {
        Source source = Sources.get("kerf-rule");
        return Working.of("Coefficient of the square in " + name)
                .given("t", "board thickness", boardThicknessInches, "in")
                .given("k", "kerf", kerfInches, "in")
                .given("s", "shrinkage", shrinkageInches, "in")
                .given("h", "section", sectionFeet, "ft")
                .constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"))
                .step("g", "share that becomes board", "t / (t + k + s)", "", source)
                .step("q", "coefficient of the square", "pi / 4 * g * h / 12", "", source)
                .build();
    }

    private double boardShare() {
        return boardThicknessInches / (boardThicknessInches + kerfInches + shrinkageInches);
    }

    @Override
    public List<Source> sources() {
        return List.of(Sources.get("kerf-rule"));
    }

    @Override
    public Standing standing() {
        return Standing.DERIVED;
    }

    @Override
    public Domain diameterInches() {
        return DIAMETER;
    }

    @Override
    public Domain lengthFeet() {
        return LENGTH;
    }

    @Override
    public String rounding() {
        return "Not rounded. A section thinner than its slab plank allows counts nothing.";
    }

    @Override
    public List<RuleFlag> flags() {
        return List.of();
    }

    @Override
    public double boardFeet(double scalingDiameterInches, double lengthFeet) {
        return unroundedBoardFeet(scalingDiameterInches, lengthFeet);
    }

    @Override
    public double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet) {
        DIAMETER.require(scalingDiameterInches);
        LENGTH.require(lengthFeet);
        return sum(scalingDiameterInches, lengthFeet, boardShare());
    }

    @Override
    public void scale(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        double share = boardShare();
        for (int i = 0; i < boardFeet.length; i++) {
            DIAMETER.require(scalingDiametersInches[i]);
            LENGTH.require(lengthsFeet[i]);
            boardFeet[i] = sum(scalingDiametersInches[i], lengthsFeet[i], share);
        }
    }

    private double sum(double scalingDiameterInches, double lengthFeet, double share) {
        int sections = sections(lengthFeet);
        double sum = 0;
        for (int i = 0; i < sections; i++) {
            double d = scalingDiameterInches + taperInchesPerFoot * (sectionFeet * i);
            double length = Math.min(sectionFeet, lengthFeet - sectionFeet * i);
            sum += Math.max(0, (StrictMath.PI / 4 * (d * d) - slabPlankInches * d) * share * length / 12);
        }
        return sum;
    }

    private int sections(double lengthFeet) {
        return (int) Math.ceil(lengthFeet / sectionFeet);
    }

    @Override
    public Working working(double scalingDiameterInches, double lengthFeet) {
        DIAMETER.require(scalingDiameterInches);
        LENGTH.require(lengthFeet);
        Source source = Sources.get("kerf-rule");
        Working.Builder working = Working.of(name)
                .given("D", "scaling diameter inside bark, small end", scalingDiameterInches, "in")
                .given("L", "scaling length", lengthFeet, "ft")
                .given("t", "board thickness", boardThicknessInches, "in")
                .given("k", "kerf", kerfInches, "in")
                .given("s", "shrinkage", shrinkageInches, "in")
                .given("a", "slab plank", slabPlankInches, "in")
                .given("T", "taper", taperInchesPerFoot, "in/ft")
                .given("h", "section", sectionFeet, "ft")
                .constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"))
                .step("g", "share that becomes board", "t / (t + k + s)", "", source);
        StringBuilder sum = new StringBuilder();
        int sections = sections(lengthFeet);
        for (int i = 0; i < sections; i++) {
            String n = Integer.toString(i + 1);
            working.step("d" + n, "small end of section " + n, "D + T * (h * " + i + ")", "in", source);
            working.step("l" + n, "length of section " + n, "min(h, L - h * " + i + ")", "ft", source);
            working.step(
                    "b" + n,
                    "section " + n,
                    "max(0, (pi / 4 * d" + n + "^2 - a * d" + n + ") * g * l" + n + " / 12)",
                    "bf",
                    source);
            sum.append(i == 0 ? "b" : " + b").append(n);
        }
        return working.step("V", "sum of the sections", sum.toString(), "bf", source)
                .note(rounding())
                .build();
    }
}
