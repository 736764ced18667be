package org.woodyield.work;

import java.util.List;

/**
 * Whether it pays.
 *
 * @param outcome yes, no, or not to be said
 * @param reasons why, in plain sentences
 */
public record Verdict(Outcome outcome, List<String> reasons) {

    /** What can be said. */
    public enum Outcome {
        /** The sawn lumber is cheaper than bought. */
        PAYS("pays"),
        /** The bought lumber is cheaper. */
        DOES_NOT_PAY("does not pay"),
        /** A figure is missing that could turn it. */
        CANNOT_SAY("cannot be judged");

        private final String label;

        Outcome(String label) {
            this.label = label;
        }

        /**
         * In words.
         *
         * @return a short phrase
         */
        public String label() {
            return label;
        }
    }

    /** Keeps an immutable copy. */
    public Verdict {
        reasons = List.copyOf(reasons);
    }
}
