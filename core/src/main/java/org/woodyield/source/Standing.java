package org.woodyield.source;

/** How far a number can be trusted, by where it was read. */
public enum Standing {
    /** Read in the named publication or a reprint of it. */
    PUBLISHED("published"),
    /** Seen only where somebody quotes the publication, or on a page without review. */
    SECONDHAND("secondhand"),
    /** Recalled, not looked up. */
    MEMORY("MEMORY"),
    /** A fact of the trade with no single source. */
    COMMON_PRACTICE("common practice, no source"),
    /** Arithmetic on other values, or a definition. */
    DERIVED("derived"),
    /** A value that somebody gave to a calculation; it claims nothing. */
    GIVEN("given"),
    /** Made up for the demonstration. */
    INVENTED("invented for the demo");

    private final String label;

    Standing(String label) {
        this.label = label;
    }

    /**
     * The words in which this standing is shown to a reader.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * Whether a check against such a value counts as verified.
     *
     * @return true for {@link #PUBLISHED} alone
     */
    public boolean counts() {
        return this == PUBLISHED;
    }
}
