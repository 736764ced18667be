package org.woodyield.sawing;

/**
 * What a pass of the saw costs, in the unit in which pieces are worth something. Implementations are pure functions: the
 * search calls them often and in an order of its own.
 */
@FunctionalInterface
public interface PassCost {

    /**
     * The cost of one pass.
     *
     * @param stage what the pass is for
     * @param meanWidthMetres width of the cut over the bark, mean along the pass; for an edge the thickness of the flitch
     * @param lengthMetres length of the pass
     * @return zero or more, finite; counted to a millionth
     */
    double of(Stage stage, double meanWidthMetres, double lengthMetres);

    /**
     * Passes that cost nothing.
     *
     * @return always the same object
     */
    static PassCost free() {
        return FreePasses.INSTANCE;
    }

    /**
     * The same cost for every pass.
     *
     * @param cost zero or more
     * @return the cost of a pass whatever its width
     */
    static PassCost each(double cost) {
        return (stage, width, length) -> cost;
    }
}
