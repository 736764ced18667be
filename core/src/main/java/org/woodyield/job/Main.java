package org.woodyield.job;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Entry point of the command line. It names no class of the two optional libraries, so that it can say which one is
 * missing.
 */
public final class Main {

    /** The work is done; a shortage of wood is a result. */
    static final int DONE = 0;

    /** We are at fault. */
    static final int OUR_FAULT = 1;

    /** The input or the command cannot be used. */
    static final int INPUT = 2;

    private record Library(String className, String coordinates) {}

    private static final List<Library> NEEDED = List.of(
            new Library("picocli.CommandLine", "info.picocli:picocli"),
            new Library("de.siegmar.fastcsv.reader.CsvReader", "de.siegmar:fastcsv"));

    private Main() {}

    /**
     * Runs the command line and ends the program with its exit code: 0 done, 1 our fault, 2 input; an interrupt ends it
     * with 130.
     *
     * @param arguments what follows the program's name
     */
    public static void main(String[] arguments) {
        // System.out swallows what goes wrong in writing; the file beneath it tells.
        OutputStream out = new BufferedOutputStream(new FileOutputStream(FileDescriptor.out));
        int code = run(List.of(arguments), out, System.err);
        if (code != DONE) {
            System.exit(code);
        }
    }

    static int run(List<String> arguments, OutputStream out, OutputStream err) {
        try (PrintStream messages = utf8(err)) {
            for (Library library : NEEDED) {
                if (!isThere(library.className())) {
                    messages.println("woodyield: the library " + library.coordinates()
                            + " is not on the class path; start with mvn exec:java, or add its jar");
                    return OUR_FAULT;
                }
            }
            return new Commands(out, messages).run(arguments);
        }
    }

    private static boolean isThere(String className) {
        try {
            Class.forName(className, false, Main.class.getClassLoader());
            return true;
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    /** The stream in UTF-8 with line feeds, flushed but left open at the end. */
    private static PrintStream utf8(OutputStream stream) {
        OutputStream kept = new FilterOutputStream(stream) {
            @Override
            public void write(byte[] bytes, int from, int count) throws java.io.IOException {
                out.write(bytes, from, count);
            }

            @Override
            public void close() throws java.io.IOException {
                flush();
            }
        };
        return new PrintStream(kept, false, StandardCharsets.UTF_8);
    }
}
