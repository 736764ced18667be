package org.woodyield.log;

/** Arrays of which one index means one log, and what is asked of them before a batch. */
final class LogArrays {

    /** Moves the bits of the least double above zero to the least long; those of zero and below end up beyond the greatest. */
    private static final long SHIFT = Long.MIN_VALUE - 1;

    private static final long GREATEST = Double.doubleToRawLongBits(Double.MAX_VALUE) + SHIFT;

    private LogArrays() {}

    /** The first before an index that is not a number above zero; that index if there is none. */
    static int firstNotPositive(double[] values, int to) {
        for (int i = 0; i < to; i++) {
            if (Double.doubleToRawLongBits(values[i]) + SHIFT > GREATEST) {
                return i;
            }
        }
        return to;
    }

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
