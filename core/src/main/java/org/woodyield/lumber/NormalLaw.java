package org.woodyield.lumber;

import org.woodyield.measure.Domain;

/**
 * The standard normal law, by its power series near the middle and its continued fraction in the tails, both cut at a fixed
 * count of terms so that every machine gives the same bits. The checks hold it against another library to a
 * relative error of 1e-12 from -8 to 8.
 */
public final class NormalLaw {

    private static final double TAIL = 2;
    private static final double LIMIT = 37;
    private static final int SERIES_TERMS = 60;
    private static final int FRACTION_TERMS = 80;
    private static final Domain SHARE = Domain.of("share", "", 1e-12, 1 - 1e-12);

    private NormalLaw() {}

    /**
     * The share that lies below a deviate.
     *
     * @param z standard deviations from the mean; not NaN
     * @return between 0 and 1
     * @throws IllegalArgumentException for NaN
     */
    public static double shareBelow(double z) {
        if (Double.isNaN(z)) {
            throw new IllegalArgumentException("the deviate is not a number");
        }
        if (z < -LIMIT) {
            return 0;
        }
        if (z < -TAIL) {
            return tail(-z);
        }
        if (z > TAIL) {
            return 1 - tail(Math.min(z, LIMIT));
        }
        // z + z^3/3 + z^5/(3 5) + ...: all terms of one sign.
        double term = z;
        double sum = z;
        for (int i = 1; i <= SERIES_TERMS; i++) {
            term = term * z * z / (2 * i + 1);
            sum += term;
        }
        return 0.5 + density(z) * sum;
    }

    /**
     * The deviate below which a share lies, by halving.
     *
     * @param share 1e-12 to 1 - 1e-12
     * @return standard deviations from the mean
     * @throws org.woodyield.measure.OutOfDomainException if the share is outside
     */
    public static double deviate(double share) {
        SHARE.require(share);
        double low = -8;
        double high = 8;
        while (true) {
            double middle = low + (high - low) / 2;
            if (middle <= low || middle >= high) {
                return high;
            }
            if (shareBelow(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    private static double density(double z) {
        return StrictMath.exp(-z * z / 2) / StrictMath.sqrt(2 * Math.PI);
    }

    private static double tail(double z) {
        double fraction = z;
        for (int i = FRACTION_TERMS; i >= 1; i--) {
            fraction = z + i / fraction;
        }
        return density(z) / fraction;
    }
}
