package org.woodyield.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Finds every check table that lies in a folder beside this class, so that none can be forgotten. */
final class CheckTables {

    private CheckTables() {}

    /** The text of each table by its id, in the order of the ids. */
    static Map<String, String> all() {
        try {
            URL here = CheckTables.class.getResource("CheckTables.class");
            if (here == null) {
                throw new IllegalStateException("the check tables cannot be found beside their class");
            }
            URI uri = here.toURI();
            if (!uri.getScheme().equals("jar")) {
                return under(Path.of(uri).resolveSibling(""));
            }
            try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                return under(jar.getPath("/org/woodyield/checks"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, String> under(Path folder) throws IOException {
        Map<String, String> tables = new TreeMap<>();
        try (Stream<Path> files = Files.find(
                folder,
                2,
                (file, attributes) ->
                        attributes.isRegularFile() && file.toString().endsWith(".csv"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String id =
                        folder.relativize(file).toString().replace('\\', '/').replaceFirst("\\.csv$", "");
                if (id.contains("/")) {
                    tables.put(id, Files.readString(file));
                }
            }
        }
        return tables;
    }
}
