package org.woodyield.sawing;

/** Gauss's rule with five points on the stretch from -1 to 1: exact for polynomials up to the ninth degree. */
final class FivePoints {

    static final int COUNT = 5;

    private static final double[] NODE = {
        -0.906179845938664, -0.5384693101056831, 0, 0.5384693101056831, 0.906179845938664
    };
    private static final double[] WEIGHT = {
        0.23692688505618908, 0.47862867049936647, 0.5688888888888889, 0.47862867049936647, 0.23692688505618908
    };

    private FivePoints() {}

    static double node(int index) {
        return NODE[index];
    }

    static double weight(int index) {
        return WEIGHT[index];
    }
}
