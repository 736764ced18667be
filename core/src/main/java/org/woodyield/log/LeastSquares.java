package org.woodyield.log;

import org.woodyield.measure.OutOfDomainException;

/** Linear least squares by Householder reflections, for fits of few coefficients. */
final class LeastSquares {

    /** A diagonal smaller than this share of its column's length is taken for dependence on the columns before it. */
    private static final double DEPENDENT = 1e-10;

    private LeastSquares() {}

    /**
     * The coefficients that make the sum of squared residuals least.
     *
     * @param rows one for each observation, the same count of terms in each; not changed
     * @param observed one for each row; not changed
     * @param subject what the observations are, for a refusal
     * @return one coefficient for each term
     * @throws OutOfDomainException if there are fewer observations than terms, or they do not tell the terms apart
     */
    static double[] solve(double[][] rows, double[] observed, String subject) {
        int n = rows.length;
        int terms = n == 0 ? 0 : rows[0].length;
        if (n < terms || n == 0) {
            throw new OutOfDomainException(
                    subject, Integer.toString(n), "", "at least " + Math.max(1, terms), "measure more");
        }
        double[][] a = new double[n][];
        for (int i = 0; i < n; i++) {
            a[i] = rows[i].clone();
        }
        double[] y = observed.clone();
        double[] diagonal = new double[terms];
        for (int k = 0; k < terms; k++) {
            double whole = 0;
            for (int i = 0; i < n; i++) {
                whole += rows[i][k] * rows[i][k];
            }
            double square = 0;
            for (int i = k; i < n; i++) {
                square += a[i][k] * a[i][k];
            }
            double length = Math.sqrt(square);
            if (!(length > DEPENDENT * Math.sqrt(whole))) {
                throw new OutOfDomainException(
                        subject, "too much alike", "", "observations that differ", "measure others");
            }
            diagonal[k] = a[k][k] > 0 ? -length : length;
            a[k][k] -= diagonal[k];
            double half = square + Math.abs(length * (a[k][k] + diagonal[k]));
            for (int j = k + 1; j < terms; j++) {
                double dot = 0;
                for (int i = k; i < n; i++) {
                    dot += a[i][k] * a[i][j];
                }
                for (int i = k; i < n; i++) {
                    a[i][j] -= dot / half * a[i][k];
                }
            }
            double dot = 0;
            for (int i = k; i < n; i++) {
                dot += a[i][k] * y[i];
            }
            for (int i = k; i < n; i++) {
                y[i] -= dot / half * a[i][k];
            }
        }
        double[] coefficients = new double[terms];
        for (int k = terms - 1; k >= 0; k--) {
            double rest = y[k];
            for (int j = k + 1; j < terms; j++) {
                rest -= a[k][j] * coefficients[j];
            }
            coefficients[k] = rest / diagonal[k];
        }
        return coefficients;
    }
}
