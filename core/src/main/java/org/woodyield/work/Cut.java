package org.woodyield.work;

import org.woodyield.measure.Length;

/**
 * One pass of the saw as far as its time goes: a cut whose width changes evenly along it.
 *
 * @param widthAtOneEnd width at one end, bark included where the saw must pass it
 * @param widthAtOther width at the other end
 * @param length along the log
 */
public record Cut(Length widthAtOneEnd, Length widthAtOther, Length length) {

    /**
     * The area of one face of the kerf.
     *
     * @return mean width x length, in m2
     */
    public double areaSquareMetres() {
        return (widthAtOneEnd.toMetres() + widthAtOther.toMetres()) / 2 * length.toMetres();
    }
}
