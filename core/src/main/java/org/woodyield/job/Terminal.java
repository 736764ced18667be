package org.woodyield.job;

import java.io.PrintStream;

/**
 * Where a command prints.
 *
 * @param results what was asked for
 * @param messages what is said about it
 */
record Terminal(PrintStream results, PrintStream messages) {

    /**
     * Prints what was asked for.
     *
     * @param what the same in a word, such as {@code plan}
     * @return the exit code; not 0 if it could not be printed to the end
     */
    int print(String what, String text) {
        results.print(text);
        if (results.checkError()) {
            say("the " + what + " could not be printed; is the disk full, or the other end closed?");
            return Main.OUR_FAULT;
        }
        return Main.DONE;
    }

    /** Says one line about what is done. */
    void say(String message) {
        messages.println(Commands.NAME + ": " + message);
    }
}
