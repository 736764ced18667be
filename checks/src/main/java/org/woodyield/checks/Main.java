package org.woodyield.checks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Runs every check row and writes the check book. */
public final class Main {

    private Main() {}

    /**
     * Runs the checks; the process ends with 1 if a row fails or a table is broken, otherwise with 0.
     *
     * @param arguments the folder for the book with {@code checks.csv} and {@code counts.csv}; {@code book} if there is none
     * @throws IOException if the book cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Run run = Run.of(Catalogue.all(), CheckTables.all());
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "book");
        System.setProperty("java.awt.headless", "true");
        Book.write(run, folder);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.print(Report.closing(run));
        out.println("The book begins at " + folder.resolve("index.html"));
        if (!run.passes()) {
            System.exit(1);
        }
    }
}
