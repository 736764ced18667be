package org.woodyield.log;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Volume of a stem from its diameter and height, ln V = b0 + b1 ln D + b2 ln H, fitted to measured trees by least squares
 * of ln V. It answers inside the diameters and heights of those trees only. The back-transformed value is the middle one of
 * trees of that size; their mean is a little higher.
 *
 * @param constant b0
 * @param diameterExponent b1
 * @param heightExponent b2
 * @param breastHeight the diameters of the trees it was fitted to
 * @param height their heights
 * @param trees how many there were
 */
@Calculation("log.stem-volume")
public record StemVolumeEquation(
        double constant,
        double diameterExponent,
        double heightExponent,
        Domain breastHeight,
        Domain height,
        int trees) {

    /**
     * Fits the equation.
     *
     * @param trees three or more that differ in diameter and height
     * @return the equation
     * @throws org.woodyield.measure.OutOfDomainException if there are too few, or they are too much alike
     */
    public static StemVolumeEquation fit(List<MeasuredTree> trees) {
        double[][] rows = new double[trees.size()][];
        double[] logarithms = new double[rows.length];
        double thinnest = Double.MAX_VALUE;
        double thickest = 0;
        double lowest = Double.MAX_VALUE;
        double highest = 0;
        for (int i = 0; i < rows.length; i++) {
            MeasuredTree tree = trees.get(i);
            rows[i] = new double[] {1, StrictMath.log(tree.breastHeightInches()), StrictMath.log(tree.heightFeet())};
            logarithms[i] = StrictMath.log(tree.volumeCubicFeet());
            thinnest = Math.min(thinnest, tree.breastHeightInches());
            thickest = Math.max(thickest, tree.breastHeightInches());
            lowest = Math.min(lowest, tree.heightFeet());
            highest = Math.max(highest, tree.heightFeet());
        }
        double[] b = LeastSquares.solve(rows, logarithms, "measured trees");
        String remedy = "the equation holds for trees like those measured; measure some of this size";
        return new StemVolumeEquation(
                b[0],
                b[1],
                b[2],
                new Domain("diameter at breast height", "in", thinnest, thickest, remedy),
                new Domain("height", "ft", lowest, highest, remedy),
                rows.length);
    }

    /**
     * The volume of a stem.
     *
     * @param breastHeightInches diameter at breast height
     * @param heightFeet total height
     * @return in cubic feet
     * @throws org.woodyield.measure.OutOfDomainException outside the trees it was fitted to, or for NaN
     */
    public double cubicFeet(double breastHeightInches, double heightFeet) {
        breastHeight.require(breastHeightInches);
        height.require(heightFeet);
        return StrictMath.exp(constant
                + diameterExponent * StrictMath.log(breastHeightInches)
                + heightExponent * StrictMath.log(heightFeet));
    }

    /**
     * The working of {@link #cubicFeet}.
     *
     * @param breastHeightInches diameter at breast height
     * @param heightFeet total height
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException outside the trees it was fitted to, or for NaN
     */
    public Working working(double breastHeightInches, double heightFeet) {
        breastHeight.require(breastHeightInches);
        height.require(heightFeet);
        Source source = Sources.get("stem-regression");
        return Working.of("Volume of a stem by an equation fitted to " + trees + " trees")
                .given("D", "diameter at breast height", breastHeightInches, "in")
                .given("H", "total height", heightFeet, "ft")
                .constant("b0", "fitted constant", constant, "", source)
                .constant("b1", "fitted exponent of the diameter", diameterExponent, "", source)
                .constant("b2", "fitted exponent of the height", heightExponent, "", source)
                .step("V", "volume", "exp(b0 + b1 * ln(D) + b2 * ln(H))", "ft3", source)
                .note(
                        "The middle one of trees of that size, for the fit is one of logarithms; the mean is a little higher.")
                .build();
    }
}
