package org.woodyield.checks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Runs every check row and writes the report. */
public final class Main {

    private Main() {}

    /**
     * Runs the checks; the process ends with 1 if a row fails or a table is broken, otherwise with 0.
     *
     * @param arguments the folder for {@code checks.csv} and {@code counts.csv}; the working folder if there is none
     * @throws IOException if the report cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Run run = Run.of(Catalogue.all(), CheckTables.all());
        Report.write(run, Path.of(arguments.length > 0 ? arguments[0] : ""));
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.print(Report.closing(run));
        if (!run.passes()) {
            System.exit(1);
        }
    }
}
