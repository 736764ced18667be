package org.woodyield.log;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Taper in the form of Max and Burkhart: parabolas that join smoothly at two relative heights,
 * {@code d^2 / D^2 = b1 (z-1) + b2 (z^2-1) + b3 (a1-z)^2 [z<=a1] + b4 (a2-z)^2 [z<=a2]} with z = h/H.
 *
 * <p>The form is published; coefficients are the user's own, from a publication for the species or from {@link #fit} to a
 * measured stem. None are built in, for none that was read could be trusted. Where the curve falls below nothing it is 0.
 *
 * @param breastHeightInches D, the diameter at breast height that the coefficients ask for
 * @param totalHeightFeet H
 * @param b1 coefficient
 * @param b2 coefficient
 * @param b3 coefficient, 0 for one parabola
 * @param b4 coefficient, 0 for no butt swell of its own
 * @param a1 relative height of the upper join
 * @param a2 relative height of the lower join
 */
public record TaperCurve(
        double breastHeightInches,
        double totalHeightFeet,
        double b1,
        double b2,
        double b3,
        double b4,
        double a1,
        double a2)
        implements StemProfile {

    private static final Domain BREAST_HEIGHT = Domain.of("diameter at breast height", "in", 1, 200);
    private static final Domain TOTAL = Domain.of("total height", "ft", 5, 400);
    private static final Domain COEFFICIENT = Domain.of("taper coefficient", "", -1e4, 1e4);
    private static final Domain JOIN = Domain.of("relative height of a join", "", 0, 1);

    /**
     * Checks the parts.
     *
     * @throws OutOfDomainException if one is out of reason or NaN, or the joins are crossed
     */
    public TaperCurve {
        BREAST_HEIGHT.require(breastHeightInches);
        TOTAL.require(totalHeightFeet);
        COEFFICIENT.require(b1);
        COEFFICIENT.require(b2);
        COEFFICIENT.require(b3);
        COEFFICIENT.require(b4);
        JOIN.require(a1);
        JOIN.require(a2);
        if (a2 > a1) {
            throw new OutOfDomainException(
                    "lower join", Double.toString(a2), "", "no higher than the upper, " + a1, "change the two");
        }
    }

    /**
     * Fits the whole form to a measured stem, least squares of d^2/D^2.
     *
     * @param breastHeightInches D
     * @param totalHeightFeet H
     * @param a1 relative height of the upper join; about 0.75 is common practice, no source
     * @param a2 relative height of the lower join; about 0.1 is common practice, no source
     * @param points four or more, above and below both joins
     * @return the curve
     * @throws OutOfDomainException if the places are too few or too much alike
     */
    public static TaperCurve fit(
            double breastHeightInches, double totalHeightFeet, double a1, double a2, List<StemPoint> points) {
        double[] b = solve(breastHeightInches, totalHeightFeet, a1, a2, points, 4);
        return new TaperCurve(breastHeightInches, totalHeightFeet, b[0], b[1], b[2], b[3], a1, a2);
    }

    /**
     * Fits one parabola to a measured stem, least squares of d^2/D^2.
     *
     * @param breastHeightInches D
     * @param totalHeightFeet H
     * @param points two or more
     * @return the curve, without joins
     * @throws OutOfDomainException if the places are too few or too much alike
     */
    public static TaperCurve fitParabola(double breastHeightInches, double totalHeightFeet, List<StemPoint> points) {
        double[] b = solve(breastHeightInches, totalHeightFeet, 0, 0, points, 2);
        return new TaperCurve(breastHeightInches, totalHeightFeet, b[0], b[1], 0, 0, 0, 0);
    }

    private static double[] solve(
            double breastHeight, double total, double a1, double a2, List<StemPoint> points, int terms) {
        BREAST_HEIGHT.require(breastHeight);
        TOTAL.require(total);
        double[][] rows = new double[points.size()][];
        double[] squares = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            StemPoint point = points.get(i);
            double z = Domain.of("height on the stem", "ft", 0, total).require(point.heightFeet()) / total;
            double upper = z <= a1 ? a1 - z : 0;
            double lower = z <= a2 ? a2 - z : 0;
            rows[i] = terms == 2
                    ? new double[] {z - 1, z * z - 1}
                    : new double[] {z - 1, z * z - 1, upper * upper, lower * lower};
            double share = point.diameterInches() / breastHeight;
            squares[i] = share * share;
        }
        return LeastSquares.solve(rows, squares, "places measured on the stem");
    }

    @Override
    public Domain heightFeet() {
        return Domain.of("height on the stem", "ft", 0, totalHeightFeet);
    }

    @Override
    @Calculation("log.taper-curve")
    public double diameterInches(double heightFeet) {
        double z = heightFeet().require(heightFeet) / totalHeightFeet;
        double share = b1 * (z - 1) + b2 * (z * z - 1);
        if (z <= a1) {
            share += b3 * ((a1 - z) * (a1 - z));
        }
        if (z <= a2) {
            share += b4 * ((a2 - z) * (a2 - z));
        }
        return breastHeightInches * Math.sqrt(Math.max(0, share));
    }

    @Override
    public Working working(double heightFeet) {
        double z = heightFeet().require(heightFeet) / totalHeightFeet;
        Source form = Sources.get("max-burkhart-form");
        Working.Builder working = Working.of("Diameter by a taper curve")
                .given("h", "height", heightFeet, "ft")
                .given("H", "total height", totalHeightFeet, "ft")
                .given("B", "diameter at breast height", breastHeightInches, "in")
                .given("b1", "coefficient", b1, "")
                .given("b2", "coefficient", b2, "")
                .step("z", "relative height", "h / H", "", form);
        String sum = "b1 * (z - 1) + b2 * (z * z - 1)";
        if (z <= a1) {
            working.given("b3", "coefficient", b3, "").given("a1", "upper join", a1, "");
            sum += " + b3 * ((a1 - z) * (a1 - z))";
        }
        if (z <= a2) {
            working.given("b4", "coefficient", b4, "").given("a2", "lower join", a2, "");
            sum += " + b4 * ((a2 - z) * (a2 - z))";
        }
        return working.step("q", "squared share of the diameter at breast height", sum, "", form)
                .step("d", "diameter inside bark", "B * sqrt(max(0, q))", "in", form)
                .note("The form is published, the coefficients are not: where they come from stands beside them.")
                .build();
    }
}
