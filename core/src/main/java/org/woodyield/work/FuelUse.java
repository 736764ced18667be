package org.woodyield.work;

/**
 * What is used up.
 *
 * @param cuttingLitres fuel burnt in the cut
 * @param idlingLitres fuel burnt in warm-up and cool-down
 * @param barOilLitres bar oil
 * @param mixOilLitres two-stroke oil
 * @param tanks fillings of the tank, not rounded
 * @param sharpenings sharpenings of the edge, not rounded
 */
public record FuelUse(
        double cuttingLitres,
        double idlingLitres,
        double barOilLitres,
        double mixOilLitres,
        double tanks,
        double sharpenings) {

    /** Nothing used. */
    public static final FuelUse ZERO = new FuelUse(0, 0, 0, 0, 0, 0);

    /**
     * All fuel.
     *
     * @return in litres
     */
    public double fuelLitres() {
        return cuttingLitres + idlingLitres;
    }

    /**
     * The sum, part by part.
     *
     * @param other more use
     * @return both together
     */
    public FuelUse plus(FuelUse other) {
        return new FuelUse(
                cuttingLitres + other.cuttingLitres,
                idlingLitres + other.idlingLitres,
                barOilLitres + other.barOilLitres,
                mixOilLitres + other.mixOilLitres,
                tanks + other.tanks,
                sharpenings + other.sharpenings);
    }
}
