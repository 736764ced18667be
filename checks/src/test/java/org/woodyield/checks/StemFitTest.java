package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.woodyield.log.BarkRatio;
import org.woodyield.log.FormClassStem;
import org.woodyield.log.MeasuredTree;
import org.woodyield.log.StemPoint;
import org.woodyield.log.StemVolumeEquation;
import org.woodyield.log.TaperCurve;
import org.woodyield.measure.Draws;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.TreeVolumeTable;

/** The library's own least squares against Apache Commons Math. */
class StemFitTest {

    @Test
    void theRegressionOfTheCherryTreesEqualsCommonsMath() {
        List<MeasuredTree> trees = MeasuredTree.blackCherry();
        double[] y = trees.stream()
                .mapToDouble(tree -> Math.log(tree.volumeCubicFeet()))
                .toArray();
        double[][] x = trees.stream()
                .map(tree -> new double[] {Math.log(tree.breastHeightInches()), Math.log(tree.heightFeet())})
                .toArray(double[][]::new);
        OLSMultipleLinearRegression reference = new OLSMultipleLinearRegression();
        reference.newSampleData(y, x);
        double[] expected = reference.estimateRegressionParameters();
        StemVolumeEquation equation = StemVolumeEquation.fit(trees);
        assertThat(equation.constant()).isCloseTo(expected[0], within(1e-10));
        assertThat(equation.diameterExponent()).isCloseTo(expected[1], within(1e-10));
        assertThat(equation.heightExponent()).isCloseTo(expected[2], within(1e-10));
    }

    @Test
    void aTaperCurveThroughScatteredPlacesEqualsCommonsMath() {
        double a1 = 0.75;
        double a2 = 0.1;
        Draws draws = Draws.seeded(20);
        List<StemPoint> points = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        List<Double> squares = new ArrayList<>();
        for (double h = 0.5; h < 80; h += 3.5) {
            double d = 16 * (1 - h / 90) + draws.nextDouble();
            double z = h / 80;
            points.add(new StemPoint(h, d));
            rows.add(
                    new double[] {z - 1, z * z - 1, z <= a1 ? (a1 - z) * (a1 - z) : 0, z <= a2 ? (a2 - z) * (a2 - z) : 0
                    });
            squares.add(d / 14 * (d / 14));
        }
        OLSMultipleLinearRegression reference = new OLSMultipleLinearRegression();
        reference.setNoIntercept(true);
        reference.newSampleData(
                squares.stream().mapToDouble(Double::doubleValue).toArray(), rows.toArray(double[][]::new));
        double[] expected = reference.estimateRegressionParameters();
        TaperCurve curve = TaperCurve.fit(14, 80, a1, a2, points);
        assertThat(new double[] {curve.b1(), curve.b2(), curve.b3(), curve.b4()})
                .containsExactly(expected, within(1e-8));
    }

    @Test
    void aBarkRatioEqualsCommonsMath() {
        double[] outside = {8.2, 10.4, 12.1, 15.5, 19.9};
        double[] inside = {7.5, 9.4, 11.2, 14.0, 18.4};
        SimpleRegression reference = new SimpleRegression(false);
        for (int i = 0; i < outside.length; i++) {
            reference.addData(outside[i], inside[i]);
        }
        assertThat(BarkRatio.fit(outside, inside).ratio()).isCloseTo(reference.getSlope(), within(1e-14));
    }

    /** Near, but no check of either: to the board foot it meets a third of the cells, as chance would. */
    @Test
    void thePrintedScaleOfAFirstLogIsNearTheFittedFormulaAndDoesNotMeetIt() {
        TreeVolumeTable table = TreeVolumeTable.scribnerFormClass78();
        LogRule fitted = LogRules.byId("scribner-fit");
        int met = 0;
        double widest = 0;
        for (int inches = 10; inches <= 40; inches++) {
            FormClassStem stem =
                    new FormClassStem(inches, table.formClass(), OptionalDouble.empty(), OptionalDouble.empty());
            double apart = Math.abs(fitted.unroundedBoardFeet(stem.diameterInches(17.3), 16)
                    - table.boardFeet(inches, 1).value());
            met += apart <= 0.5 ? 1 : 0;
            widest = Math.max(widest, apart);
        }
        assertThat(met).isEqualTo(11);
        assertThat(widest).isBetween(2.1, 2.2);
    }
}
