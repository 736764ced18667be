package org.woodyield.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/** Where a job's files come from. */
interface JobFiles {

    /** The bytes of a file, or nothing where there is no such file. */
    Optional<byte[]> bytes(String fileName) throws IOException;

    /** The names of all files there are. */
    List<String> names() throws IOException;

    /** What the values of the job rest on. */
    Source origin();

    /** A folder of the user's. */
    record Folder(Path path) implements JobFiles {
        @Override
        public Source origin() {
            return Sources.get("user");
        }

        @Override
        public Optional<byte[]> bytes(String fileName) throws IOException {
            try {
                return Optional.of(FileText.bytes(path.resolve(fileName)));
            } catch (NoSuchFileException e) {
                return Optional.empty();
            }
        }

        @Override
        public List<String> names() throws IOException {
            try (Stream<Path> entries = Files.list(path)) {
                return entries.map(entry -> entry.getFileName().toString())
                        .sorted()
                        .toList();
            }
        }
    }

    /** The invented job that comes with the library. */
    record Demo() implements JobFiles {
        @Override
        public Source origin() {
            return Sources.get("demo");
        }

        @Override
        public Optional<byte[]> bytes(String fileName) throws IOException {
            try (InputStream in = Demo.class.getResourceAsStream("demo/" + fileName)) {
                return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
            }
        }

        @Override
        public List<String> names() {
            return JobFile.names();
        }

        /** All files, to be written out for editing. */
        Map<String, byte[]> all() throws IOException {
            Map<String, byte[]> all = new LinkedHashMap<>();
            for (String name : names()) {
                all.put(
                        name,
                        bytes(name)
                                .orElseThrow(() -> new IllegalStateException("the demonstration job lacks " + name)));
            }
            return all;
        }
    }
}
