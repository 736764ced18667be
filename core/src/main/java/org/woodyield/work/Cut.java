package org.woodyield.work;

import org.woodyield.measure.Length;
import org.woodyield.sawing.SawPass;

/**
 * One pass of the saw as far as its time goes: a cut whose width changes evenly along it.
 *
 * @param widthAtOneEnd width at one end in cm, bark included where the saw must pass it
 * @param widthAtOther width at the other end in cm
 * @param length along the log in cm
 */
public record Cut(double widthAtOneEnd, double widthAtOther, double length) {

    /**
     * A cut by its end widths.
     *
     * @param widthAtOneEnd width at one end
     * @param widthAtOther width at the other end
     * @param length along the log
     * @return the cut
     */
    public static Cut of(Length widthAtOneEnd, Length widthAtOther, Length length) {
        return new Cut(
                widthAtOneEnd.toMillimetres() / 10, widthAtOther.toMillimetres() / 10, length.toMillimetres() / 10);
    }

    /**
     * A pass of a sawing plan. Where a swept or oval log makes its area differ from the mean of the ends times the length, both
     * ends are moved alike until the area is the pass's own.
     *
     * @param pass a pass
     * @return the cut with the area of the pass
     */
    public static Cut of(SawPass pass) {
        Cut plain = of(pass.widthSmallEnd(), pass.widthLargeEnd(), pass.length());
        double mean = pass.areaSquareMetres() * 10000 / plain.length;
        double shift = mean - (plain.widthAtOneEnd + plain.widthAtOther) / 2;
        double one = plain.widthAtOneEnd + shift;
        double other = plain.widthAtOther + shift;
        if (one < 0 || other < 0) {
            return new Cut(0, 2 * mean, plain.length);
        }
        return new Cut(one, other, plain.length);
    }

    /**
     * The area of one face of the kerf.
     *
     * @return mean width x length, in m2
     */
    public double areaSquareMetres() {
        return (widthAtOneEnd + widthAtOther) / 2 * length / 10000;
    }
}
