package org.woodyield.work;

import org.woodyield.measure.Domain;

/** Student's law of the ratio of a mean to its own estimated error, for whole degrees of freedom. */
final class StudentLaw {

    private static final Domain DEGREES = Domain.of("degrees of freedom", "", 1, 1000);
    private static final Domain SHARE = Domain.of("share", "", 0, 0.9999);
    private static final int HALVINGS = 100;

    private StudentLaw() {}

    /** The t of which a share lies within -t and t. */
    static double twoSided(double share, int degrees) {
        SHARE.require(share);
        DEGREES.require(degrees);
        double low = 0;
        double high = StrictMath.PI / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = low + (high - low) / 2;
            if (within(middle, degrees) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return StrictMath.sqrt(degrees) * StrictMath.tan(low);
    }

    /**
     * The share within -t and t, by the angle whose tangent is t over the root of the degrees of freedom: the finite series for
     * odd and for even degrees.
     */
    private static double within(double angle, int degrees) {
        double sine = StrictMath.sin(angle);
        double cosine = StrictMath.cos(angle);
        boolean odd = degrees % 2 == 1;
        double term = odd ? cosine : 1;
        double sum = 0;
        for (int power = odd ? 1 : 0; power <= degrees - 2; power += 2) {
            sum += term;
            term *= cosine * cosine * (power + 1) / (power + 2);
        }
        return odd ? 2 / StrictMath.PI * (angle + sine * sum) : sine * sum;
    }
}
