package org.woodyield.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Files that are named on the command line. */
final class Sheets {

    private Sheets() {}

    /** The name without its folders. */
    static String file(String name) {
        int slash = Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'));
        return name.substring(slash + 1);
    }

    /**
     * What stands in a file.
     *
     * @param what the kind of file, in a word
     * @param name as the user wrote it
     * @param remedy what to do where it is not there
     */
    static byte[] bytes(String what, String name, String remedy) throws IOException {
        if (name.isBlank()) {
            throw new BadInputException(what + " is not named; name its file; " + remedy);
        }
        Path path;
        try {
            path = Path.of(name);
        } catch (InvalidPathException e) {
            throw new BadInputException(what + " '" + name + "' is not a path; choose another name");
        }
        if (!Files.isRegularFile(path)) {
            throw new BadInputException(
                    what + " '" + name + "' is " + (Files.exists(path) ? "not a file" : "not there") + "; " + remedy);
        }
        return FileText.bytes(path);
    }

    static String text(String name, String columns) throws IOException {
        Problems problems = new Problems();
        Optional<String> text =
                FileText.decode(file(name), bytes("table", name, "it has the columns " + columns), problems);
        problems.stopIfAny();
        return text.orElse("");
    }

    /** The rows of a table; none but a problem where it has no row. */
    static List<Table.Row> rows(String name, List<Table.Column> columns, String needed, String row, Problems problems)
            throws IOException {
        String file = file(name);
        List<Table.Row> rows = Table.read(file, text(name, needed), columns, problems);
        if (rows.isEmpty() && problems.isEmpty()) {
            problems.add(file, 0, "", "", row + " below the header", "the table has none; add it");
        }
        return rows;
    }
}
