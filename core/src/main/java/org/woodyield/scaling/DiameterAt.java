package org.woodyield.scaling;

/** Where along the log a rule wants its diameter. */
public enum DiameterAt {
    /** At the small end. */
    SMALL_END("small end"),
    /** Half way along. */
    MIDDLE("middle of the length"),
    /** The mean of the two ends. */
    MEAN_OF_ENDS("mean of the two ends");

    private final String label;

    DiameterAt(String label) {
        this.label = label;
    }

    /**
     * The words in which this is shown.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }
}
