package org.woodyield.sawing;

import java.util.OptionalDouble;

/**
 * How good a plan is, and how that is known.
 *
 * @param verdict whether nothing better exists in the search space
 * @param worth of all pieces
 * @param passCost of all passes, with laying the guide, turning, clamping and loading
 * @param objective worth less pass cost
 * @param bound no pattern of the search space exceeds this; equals the objective if proven
 * @param boundOffGrid no pattern exceeds this even if first faces may stand anywhere ({@link BestPattern#boundOffGrid}); the
 *     grid costs no more than this less the objective. Empty unless it was asked for
 * @param searchSpace the space in words
 * @param framesTried turns and frames that were searched
 * @param flitchesEdged flitches whose best row of strips was worked out
 * @param cantsOpened cants whose best inside was worked out
 * @param cantsInAll cants that the space holds
 */
public record Proof(
        Verdict verdict,
        double worth,
        double passCost,
        double objective,
        double bound,
        OptionalDouble boundOffGrid,
        String searchSpace,
        int framesTried,
        long flitchesEdged,
        long cantsOpened,
        long cantsInAll) {

    /**
     * The same with a bound off the grid.
     *
     * @param other no pattern exceeds it wherever its first faces stand
     * @return a new proof
     */
    public Proof withBoundOffGrid(double other) {
        return new Proof(
                verdict,
                worth,
                passCost,
                objective,
                bound,
                OptionalDouble.of(other),
                searchSpace,
                framesTried,
                flitchesEdged,
                cantsOpened,
                cantsInAll);
    }

    /** Whether anything better can exist. */
    public enum Verdict {
        /** Nothing in the search space is better. */
        PROVEN_OPTIMAL("proven: nothing in the search space is better"),
        /** The best that was found; nothing in the space exceeds the bound. */
        BEST_FOUND("the best found; the bound says how much better another could be");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        /**
         * The verdict in words.
         *
         * @return a short phrase
         */
        public String words() {
            return words;
        }
    }
}
