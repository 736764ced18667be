package org.woodyield.log;

/** Arrays of which one index means one log, and what is asked of them before a batch. */
final class LogArrays {

    /** Moves the bits of the least double above zero to the least long; those of zero and below end up beyond the greatest. */
    private static final long SHIFT = Long.MIN_VALUE - 1;

    private static final long GREATEST = Double.doubleToRawLongBits(Double.MAX_VALUE) + SHIFT;

    private LogArrays() {}

    /**
     * Logs of a block of a batch: four arrays of it fit the first-level cache, so that a loop that checks and one that
     * computes read the memory once.
     */
    static final int BLOCK = 1024;

    /**
     * The first index between two of which one of three measures is not a number above zero; the second one if there is
     * none. An array may stand for two.
     */
    static int firstNotPositive(double[] one, double[] two, double[] three, int from, int to) {
        for (int i = from; i < to; i++) {
            if (Double.doubleToRawLongBits(one[i]) + SHIFT > GREATEST
                    || Double.doubleToRawLongBits(two[i]) + SHIFT > GREATEST
                    || Double.doubleToRawLongBits(three[i]) + SHIFT > GREATEST) {
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
