package org.woodyield.job;

/**
 * One thing that is wrong with the input, shown on one line.
 *
 * @param file the file's name within the job folder
 * @param line from 1; 0 where the file as a whole is meant
 * @param column the column of a table or the key of the properties file; empty where none is meant
 * @param value what stands there; empty where nothing does
 * @param allowed what is allowed instead
 * @param remedy how to mend it, possibly empty
 */
record Problem(String file, int line, String column, String value, String allowed, String remedy) {

    /** What is allowed of a row that has too many or too few cells. */
    static final String CELLS = " cells, one for each column";

    /** What is allowed where the names of the columns stand again. */
    static final String HEADER_ONCE = "the names of the columns once, above the rows";

    private static final int LONGEST_VALUE = 60;

    /** Whether one row has too many or too few cells or is none, and the rest of the table can be read all the same. */
    boolean ofOneRow() {
        return allowed.endsWith(CELLS) || allowed.equals(HEADER_ONCE);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(", line ").append(line);
        }
        if (!column.isEmpty()) {
            text.append(", ").append(column);
        }
        text.append(": ");
        if (!value.isEmpty()) {
            text.append('\'').append(shown(value)).append("' is not accepted; ");
        }
        text.append("allowed: ").append(allowed);
        if (!remedy.isEmpty()) {
            text.append("; ").append(remedy);
        }
        return text.toString();
    }

    /** A value must not break the one line, nor send control codes to a terminal. */
    private static String shown(String value) {
        StringBuilder plain = new StringBuilder();
        value.codePoints().limit(LONGEST_VALUE).forEach(c -> {
            if (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT) {
                plain.append(String.format(java.util.Locale.ROOT, "\\u%04x", c));
            } else {
                plain.appendCodePoint(c);
            }
        });
        return value.codePointCount(0, value.length()) > LONGEST_VALUE
                ? plain.append("...").toString()
                : plain.toString();
    }
}
