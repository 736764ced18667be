package org.woodyield.job;

/**
 * A key of the properties file.
 *
 * @param text the key as written
 * @param required whether a job must have it
 * @param example a value, for the message that says that it is missing
 */
record Key(String text, boolean required, String example) {
    static Key required(String text, String example) {
        return new Key(text, true, example);
    }

    static Key optional(String text, String example) {
        return new Key(text, false, example);
    }
}
