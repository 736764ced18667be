package org.woodyield.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.woodyield.plan.JobInput;

/**
 * What a plan is shown as.
 *
 * @param text for the terminal
 * @param files name to content, for a folder
 */
record Outputs(String text, Map<String, byte[]> files) {

    /** The names of all files that a plan may be written as. */
    static final Set<String> FILES = Set.of("plan.html");

    static Outputs of(JobInput job) {
        return new Outputs(summary(job), new LinkedHashMap<>());
    }

    /** What was read, in one line. */
    static String summary(JobInput job) {
        return job.title() + ": " + job.logs().size() + " logs, " + job.pieces().size() + " kinds of pieces, "
                + job.areas().size() + " areas, " + job.prices().size() + " prices; no problem found\n";
    }
}
