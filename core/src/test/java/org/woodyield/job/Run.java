package org.woodyield.job;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** One run of the command line within this program: its exit code and what it printed. */
record Run(int code, String out, String err) {

    static Run of(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(List.of(arguments), out, err);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    List<String> problems() {
        return err.lines().toList();
    }
}
