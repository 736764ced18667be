package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A copy of the demonstration job in a folder of its own, to be spoilt in one place or several. */
final class EditedDemo {

    private final Path folder;

    private EditedDemo(Path folder) {
        this.folder = folder;
    }

    static EditedDemo in(Path folder) {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> file : new JobFiles.Demo().all().entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new EditedDemo(folder);
    }

    /** A job of two small logs, quickly planned. */
    static EditedDemo small(Path folder) {
        return in(folder).write("logs.csv", """
                        id,species,length,small-end,measured,large-end
                        A,eastern white pine,8 ft 4 in,9 in,inside bark,10 in
                        B,white oak,8 ft 4 in,8 in,inside bark,9 in
                        """).write("wanted.csv", """
                        id,size,length,quantity,wood,surface,moisture
                        stud,2x4,8 ft,9,softwood,dressed dry,15 %
                        post,4x4,8 ft,1,white oak,rough,19 %
                        """).without("areas.csv");
    }

    private EditedDemo write(String file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Puts one text for another that stands in the file once. */
    EditedDemo with(String file, String old, String changed) {
        String text = text(file);
        assertThat(text.split(java.util.regex.Pattern.quote(old), -1))
                .as("'%s' stands once in %s", old, file)
                .hasSize(2);
        return write(file, text.replace(old, changed).getBytes(StandardCharsets.UTF_8));
    }

    EditedDemo write(String file, byte[] bytes) {
        try {
            Files.write(folder.resolve(file), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    EditedDemo without(String file) {
        try {
            Files.delete(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    String text(String file) {
        try {
            return Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The line, from 1, on which a text stands. */
    int line(String file, String content) {
        int number = 0;
        for (String line : text(file).lines().toList()) {
            number++;
            if (line.startsWith(content)) {
                return number;
            }
        }
        throw new IllegalArgumentException(file + " has no line that begins with " + content);
    }

    Path folder() {
        return folder;
    }

    Run run(String... more) {
        List<String> arguments = new ArrayList<>(List.of(folder.toString()));
        arguments.addAll(List.of(more));
        return Run.of(arguments.toArray(String[]::new));
    }
}
