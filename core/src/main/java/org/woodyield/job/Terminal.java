package org.woodyield.job;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Where a command prints.
 *
 * @param results what was asked for
 * @param messages what is said about it
 */
record Terminal(OutputStream results, PrintStream messages) {

    /**
     * Prints what was asked for.
     *
     * @param what the same in a word, such as {@code plan}
     * @return the exit code; not 0 if it could not be printed to the end
     */
    int print(String what, String text) {
        return print(what, text.getBytes(StandardCharsets.UTF_8));
    }

    /** As {@link #print(String, String)}, for text that is in UTF-8 already. A reader who has seen enough may go. */
    int print(String what, byte[] text) {
        try {
            results.write(text);
            results.flush();
            return Main.DONE;
        } catch (IOException e) {
            String reason = String.valueOf(e.getMessage());
            if (reason.toLowerCase(Locale.ROOT).contains("pipe")) {
                return Main.DONE;
            }
            say("the " + what + " could not be written whole to the standard output: " + reason
                    + "; make room, or send it to another file");
            return Main.INPUT;
        }
    }

    /** Says one line about what is done. */
    void say(String message) {
        messages.println(Commands.NAME + ": " + message);
    }
}
