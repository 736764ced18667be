package org.woodyield.job;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.woodyield.show.PlanTable;
import picocli.CommandLine.ParseResult;

/**
 * An answer of text, table and working: the text is printed, the working behind it where that is asked for, and all three are
 * written where a folder is given.
 *
 * @param what the answer in a word
 * @param textFile name of the file of the text
 * @param tableFile name of the file of the table
 * @param stands what the table holds, as in "the logs stand in"
 */
record Answer(String what, String textFile, String tableFile, String stands) {

    private static final String WORKING_FILE = "working.txt";
    private static final String WORKING = "--working";

    /** The options that ask for the working and the folder. */
    Usage options(Usage usage, String working) {
        return usage.flag(WORKING, working)
                .out(
                        "Write " + textFile + ", " + tableFile + " and " + WORKING_FILE
                                + " to this folder too, which must be new or empty.",
                        "result");
    }

    Optional<PlanFolder> folder(ParseResult given) {
        return Usage.folder(given, Set.of(textFile, tableFile, WORKING_FILE));
    }

    /** Gives the answer and the exit code; table and working are made only where they are asked for. */
    int give(
            ParseResult given,
            Terminal terminal,
            Optional<PlanFolder> folder,
            String text,
            Supplier<PlanTable> table,
            Supplier<String> working) {
        boolean asked = given.matchedOptionValue(WORKING, false);
        String worked = asked || folder.isPresent() ? working.get() : "";
        int code = terminal.print(what, text + (asked ? "\n" + worked : ""));
        folder.ifPresent(target -> terminal.say(stands + " "
                + target.write(Map.of(
                        textFile,
                        text.getBytes(StandardCharsets.UTF_8),
                        tableFile,
                        Outputs.csv(table.get()),
                        WORKING_FILE,
                        worked.getBytes(StandardCharsets.UTF_8)))));
        return code;
    }
}
