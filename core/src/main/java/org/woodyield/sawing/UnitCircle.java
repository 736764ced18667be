package org.woodyield.sawing;

/**
 * The integral of half the chord of a unit circle, of which every area of a section is made. It is (d sqrt(1 - d^2) + asin d) / 2; the
 * arc sine is summed up here because the one of {@link StrictMath} costs as much as all else of an area on a JDK that calls
 * native code for it, and this one gives the same bits on every JDK too.
 */
final class UnitCircle {

    /** A little over the sines of a sixteenth of a turn, and under that of three sixteenths. */
    private static final double FIRST_FOLD = 0.39;

    private static final double SECOND_FOLD = 0.92;
    private static final double QUARTER_TURN = Math.PI / 2;
    private static final double EIGHTH_TURN = Math.PI / 4;
    private static final double ROOT_HALF = Math.sqrt(0.5);

    private UnitCircle() {}

    /**
     * From the centre to a distance.
     *
     * @param d from -1 to 1
     * @return within 4e-16 of the true value, odd in d
     */
    static double halfChords(double d) {
        double cosine = Math.sqrt((1 - d) * (1 + d));
        return 0.5 * (d * cosine + arcSine(d, cosine));
    }

    /** Brought to about a sixteenth of a turn: with a sine that small a few terms of the series do. */
    private static double arcSine(double sine, double cosine) {
        double size = Math.abs(sine);
        double angle;
        if (size <= FIRST_FOLD) {
            return series(sine);
        } else if (size <= SECOND_FOLD) {
            angle = EIGHTH_TURN - series((cosine - size) * ROOT_HALF);
        } else {
            angle = QUARTER_TURN - series(cosine);
        }
        return sine < 0 ? -angle : angle;
    }

    /**
     * x + 1/2 x^3/3 + 1·3/(2·4) x^5/5 + … to the term with x^31; what is left out of a sine of 0.393 is 3e-16. Even and odd
     * powers of the square are summed by themselves, side by side.
     */
    private static double series(double x) {
        double t = x * x;
        double s = t * t;
        double even = (((((((A14 * s + A12) * s + A10) * s + A8) * s + A6) * s + A4) * s + A2) * s) + 1;
        double odd = ((((((A15 * s + A13) * s + A11) * s + A9) * s + A7) * s + A5) * s + A3) * s + A1;
        return x * (even + t * odd);
    }

    // The share of the powers, each from the one before: (2n - 1) / 2n, and the power it is divided by.
    private static final double C1 = 1.0 / 2;
    private static final double C2 = C1 * 3 / 4;
    private static final double C3 = C2 * 5 / 6;
    private static final double C4 = C3 * 7 / 8;
    private static final double C5 = C4 * 9 / 10;
    private static final double C6 = C5 * 11 / 12;
    private static final double C7 = C6 * 13 / 14;
    private static final double C8 = C7 * 15 / 16;
    private static final double C9 = C8 * 17 / 18;
    private static final double C10 = C9 * 19 / 20;
    private static final double C11 = C10 * 21 / 22;
    private static final double C12 = C11 * 23 / 24;
    private static final double C13 = C12 * 25 / 26;
    private static final double C14 = C13 * 27 / 28;
    private static final double C15 = C14 * 29 / 30;
    private static final double A1 = C1 / 3;
    private static final double A2 = C2 / 5;
    private static final double A3 = C3 / 7;
    private static final double A4 = C4 / 9;
    private static final double A5 = C5 / 11;
    private static final double A6 = C6 / 13;
    private static final double A7 = C7 / 15;
    private static final double A8 = C8 / 17;
    private static final double A9 = C9 / 19;
    private static final double A10 = C10 / 21;
    private static final double A11 = C11 / 23;
    private static final double A12 = C12 / 25;
    private static final double A13 = C13 / 27;
    private static final double A14 = C14 / 29;
    private static final double A15 = C15 / 31;
}
