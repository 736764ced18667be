package org.woodyield.sawing;

/** What a pass is for. */
public enum Stage {
    /** A level pass through the log as it lies: it opens a face, frees a flitch or frees a cant. */
    LIVE("through the log"),
    /** A pass through a cant that has been turned a quarter. */
    CANT("through the cant"),
    /** A pass along an edge of a flitch. */
    EDGE("along an edge");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    /**
     * The stage in words.
     *
     * @return a short phrase
     */
    public String words() {
        return words;
    }
}
