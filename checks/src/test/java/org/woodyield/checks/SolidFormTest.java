package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.woodyield.log.CentroidVolume;
import org.woodyield.log.SolidForm;
import org.woodyield.log.SolidVolume;

/**
 * The closed forms of the solids, and the formulas that are exact on them, against the integral of the section's area by
 * Apache Commons Math. The profile is written down here once more: squared diameter as a power of the distance from the tip.
 */
class SolidFormTest {

    private static final double[][] ENDS = {{0.2, 0.25, 4}, {0.15, 0.5, 12.5}, {0.4, 0.41, 2.5}, {0.1, 0.9, 6}};

    private static double square(int power, double small, double large, double length, double x) {
        double root = Math.pow(small, 2.0 / power);
        double tip = length * root / (Math.pow(large, 2.0 / power) - root);
        return small * small * Math.pow((tip + x) / tip, power);
    }

    private static double integral(UnivariateFunction squared, double to) {
        return Math.PI / 4 * new IterativeLegendreGaussIntegrator(5, 1e-13, 1e-15).integrate(100_000, squared, 0, to);
    }

    @Test
    void theClosedFormsAreTheIntegralOfTheArea() {
        for (SolidForm form : SolidForm.values()) {
            if (form == SolidForm.CYLINDER) {
                continue;
            }
            for (double[] log : ENDS) {
                double expected = integral(x -> square(form.power(), log[0], log[1], log[2], x), log[2]);
                assertThat(form.volume(log[0], log[1], log[2]))
                        .as("%s %s to %s", form, log[0], log[1])
                        .isCloseTo(expected, within(expected * 1e-11));
                double inside = Math.sqrt(square(form.power(), log[0], log[1], log[2], 0.3 * log[2]));
                assertThat(form.diameter(log[0], log[1], 0.3)).isCloseTo(inside, within(1e-12));
            }
        }
    }

    @Test
    void newtonIsTheIntegralOnAllThree() {
        for (int power = 1; power <= 3; power++) {
            int p = power;
            for (double[] log : ENDS) {
                double expected = integral(x -> square(p, log[0], log[1], log[2], x), log[2]);
                double middle = Math.sqrt(square(p, log[0], log[1], log[2], log[2] / 2));
                assertThat(SolidVolume.NEWTON.volume(log[0], middle, log[1], log[2]))
                        .isCloseTo(expected, within(expected * 1e-11));
            }
        }
    }

    @Test
    void theCentroidOfAParaboloidHalvesItsVolume() {
        for (double[] log : ENDS) {
            UnivariateFunction squared = x -> square(1, log[0], log[1], log[2], x);
            double half = integral(squared, log[2]) / 2;
            double expected = new BrentSolver(1e-13).solve(200, x -> integral(squared, x) - half, 1e-6, log[2]);
            assertThat(CentroidVolume.position(log[0], log[1], log[2])).isCloseTo(expected, within(1e-8));
        }
    }

    @Test
    void theCentroidVolumeIsTheIntegralOfAnyAreaOfTheSecondDegree() {
        // Area bulging and hollow between the same ends.
        for (double bend : new double[] {-0.02, 0, 0.03}) {
            for (double[] log : ENDS) {
                double a = log[0] * log[0];
                double c = log[1] * log[1];
                UnivariateFunction squared = x -> {
                    double t = x / log[2];
                    return a + (c - a) * t + bend * c * t * (t - 1);
                };
                double x = CentroidVolume.position(log[0], log[1], log[2]);
                double middle = Math.sqrt(squared.value(x));
                double expected = integral(squared, log[2]);
                if (middle >= log[0]) {
                    assertThat(CentroidVolume.volume(log[0], middle, log[1], log[2]))
                            .isCloseTo(expected, within(expected * 1e-10));
                }
            }
        }
    }
}
