package org.woodyield.job;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The files of a job folder, in the order in which they are read. */
enum JobFile {
    /** Single values: saw, work, drying, money. */
    JOB("job.properties", true),
    /** The logs as they lie there. */
    LOGS("logs.csv", true),
    /** The pieces wanted. */
    WANTED("wanted.csv", true),
    /** The areas to cover. */
    AREAS("areas.csv", false),
    /** The boards wanted with natural edges. */
    NATURAL_EDGE("natural-edge.csv", false),
    /** What the same lumber costs when bought. */
    PRICES("prices.csv", false),
    /** Measured profiles of logs. */
    PROFILES("profiles.csv", false),
    /** Cuts that the user timed. */
    TIMED_CUTS("timed-cuts.csv", false),
    /** Another saw that could be bought. */
    OTHER_SAW("other-saw.properties", false);

    private final String fileName;
    private final boolean required;

    JobFile(String fileName, boolean required) {
        this.fileName = fileName;
        this.required = required;
    }

    String fileName() {
        return fileName;
    }

    boolean required() {
        return required;
    }

    static List<String> names() {
        return Arrays.stream(values()).map(JobFile::fileName).toList();
    }

    /** The files that a job needs, and those that it may have, in words. */
    static String words() {
        return names(true) + "; if wanted also " + names(false);
    }

    private static String names(boolean required) {
        return Arrays.stream(values())
                .filter(file -> file.required == required)
                .map(JobFile::fileName)
                .collect(Collectors.joining(", "));
    }

    /** Where a file stands among the others; a file that is none of them comes last. */
    static int order(String fileName) {
        int index = names().indexOf(fileName);
        return index < 0 ? values().length : index;
    }
}
