package org.woodyield.log;

/** Arrays of which one index means one log. */
final class SameLength {

    private SameLength() {}

    /** Refuses arrays of several lengths. */
    static void require(double[] out, double[]... given) {
        for (double[] one : given) {
            if (one.length != out.length) {
                throw new IllegalArgumentException(one.length + " measures, room for " + out.length
                        + "; allowed: one measure of each kind for each log");
            }
        }
    }
}
