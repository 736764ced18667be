package org.woodyield.sawing;

/** Least or greatest values over stretches of an array, each asked in constant time. */
final class Extremes {

    private final int[][] doubled;
    private final boolean greatest;

    Extremes(int[] values, boolean greatest) {
        this.greatest = greatest;
        int levels = 32 - Integer.numberOfLeadingZeros(Math.max(1, values.length));
        doubled = new int[levels][];
        doubled[0] = values.clone();
        for (int level = 1; level < levels; level++) {
            int half = 1 << (level - 1);
            int[] before = doubled[level - 1];
            int[] here = new int[Math.max(0, values.length - 2 * half + 1)];
            for (int i = 0; i < here.length; i++) {
                here[i] = pick(before[i], before[i + half]);
            }
            doubled[level] = here;
        }
    }

    private int pick(int a, int b) {
        return greatest ? Math.max(a, b) : Math.min(a, b);
    }

    /** The extreme from one index to another, both included. */
    int over(int from, int to) {
        int level = 31 - Integer.numberOfLeadingZeros(to - from + 1);
        return pick(doubled[level][from], doubled[level][to - (1 << level) + 1]);
    }
}
