package org.woodyield.job;

/** Entry point of the command line. */
public final class Main {
    private Main() {}

    /**
     * Runs the command line.
     *
     * @param arguments what follows the program's name
     */
    public static void main(String[] arguments) {}
}
