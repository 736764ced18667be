package org.woodyield.work;

import java.util.Set;

/** What is known of a sum of money some terms of which may have no price. */
public enum Bound {
    /** Every term has a price. */
    EXACT(""),
    /** A cost has none, so that the sum is greater than is said. */
    MORE_THAN("more than"),
    /** Income has none, so that the sum is no greater than is said. */
    NO_MORE_THAN("no more than"),
    /** Both a cost and income have none. */
    EITHER_WAY("more or less than");

    private final String words;

    Bound(String words) {
        this.words = words;
    }

    static Bound of(Set<WorkInput> costsMissing, Set<WorkInput> incomeMissing) {
        if (costsMissing.isEmpty()) {
            return incomeMissing.isEmpty() ? EXACT : NO_MORE_THAN;
        }
        return incomeMissing.isEmpty() ? MORE_THAN : EITHER_WAY;
    }

    /**
     * What stands before the sum.
     *
     * @return words without a space behind them; none where it is exact
     */
    public String words() {
        return words;
    }
}
