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
     * The cost of laying the guide once, for a face that no sawn face leads: the first of the log and of each cant, and the first
     * edge of a row of strips that has no sawn side. Over a bed nothing is laid.
     *
     * @return zero or more, finite; counted to a millionth
     */
    default double guide() {
        return 0;
    }

    /**
     * The cost of turning and clamping once: the log before its first pass, and each cant before its own first.
     *
     * @return zero or more, finite; counted to a millionth
     */
    default double turning() {
        return 0;
    }

    /**
     * The cost of bringing log and saw together, once for a log from which anything is sawn.
     *
     * @return zero or more, finite; counted to a millionth
     */
    default double loading() {
        return 0;
    }

    /**
     * The same passes with a cost of laying the guide.
     *
     * @param cost of laying it once, zero or more
     * @return a new cost
     */
    default PassCost withGuide(double cost) {
        return new HandledPasses(this, cost, turning(), loading());
    }

    /**
     * The same passes with a cost of turning and clamping.
     *
     * @param cost of turning and clamping once, zero or more
     * @return a new cost
     */
    default PassCost withTurning(double cost) {
        return new HandledPasses(this, guide(), cost, loading());
    }

    /**
     * The same passes with a cost of bringing log and saw together.
     *
     * @param cost for a log, zero or more
     * @return a new cost
     */
    default PassCost withLoading(double cost) {
        return new HandledPasses(this, guide(), turning(), cost);
    }

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
