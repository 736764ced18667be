package org.woodyield.sawing;

/**
 * How good a plan is, and how that is known.
 *
 * @param verdict whether nothing better exists in the search space
 * @param worth of all pieces
 * @param passCost of all passes
 * @param objective worth less pass cost
 * @param bound no pattern of the search space exceeds this; equals the objective if proven
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
        String searchSpace,
        int framesTried,
        long flitchesEdged,
        long cantsOpened,
        long cantsInAll) {

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
