package org.woodyield.measure;

/**
 * A count of board feet together with what is counted. Counts of different kinds do not add up: a scale estimates a log,
 * a tally counts lumber by its nominal size, and what is usable is counted after drying and planing.
 *
 * @param value zero or more, finite
 * @param kind what is counted
 */
public record BoardFeet(double value, Kind kind) {

    /** What a count of board feet counts. */
    public enum Kind {
        /** What a log rule estimates. */
        SCALE("scale"),
        /** Lumber by nominal size, as sawn. */
        TALLY("tally"),
        /** Lumber by nominal size that is left after drying, planing and falling down. */
        USABLE("usable");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /**
         * The word in which the kind is shown.
         *
         * @return one word
         */
        public String label() {
            return label;
        }
    }

    private static final Domain DOMAIN = Domain.notNegative("board feet", "bf");

    /**
     * Refuses what is not a count.
     *
     * @throws OutOfDomainException if negative or not finite
     */
    public BoardFeet {
        DOMAIN.require(value);
    }

    /**
     * Of a log rule.
     *
     * @param value zero or more
     * @return the count
     */
    public static BoardFeet scale(double value) {
        return new BoardFeet(value, Kind.SCALE);
    }

    /**
     * Of lumber by nominal size.
     *
     * @param value zero or more
     * @return the count
     */
    public static BoardFeet tally(double value) {
        return new BoardFeet(value, Kind.TALLY);
    }

    /**
     * Of lumber that is usable.
     *
     * @param value zero or more
     * @return the count
     */
    public static BoardFeet usable(double value) {
        return new BoardFeet(value, Kind.USABLE);
    }

    /**
     * The sum of two counts of one kind.
     *
     * @param other a count of the same kind
     * @return the sum
     * @throws IllegalArgumentException if the kinds differ
     */
    public BoardFeet plus(BoardFeet other) {
        if (other.kind != kind) {
            throw new IllegalArgumentException(
                    kind.label() + " and " + other.kind.label() + " board feet do not add up");
        }
        return new BoardFeet(value + other.value, kind);
    }

    /**
     * A multiple.
     *
     * @param factor zero or more
     * @return so many times this
     */
    public BoardFeet times(double factor) {
        return new BoardFeet(value * factor, kind);
    }
}
