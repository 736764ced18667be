package org.woodyield.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.woodyield.measure.Length;
import org.woodyield.working.Calculation;

/** Finds the ids of all marked calculations in core's classes. */
final class MarkedCalculations {

    private MarkedCalculations() {}

    static Set<String> ids() {
        Set<String> ids = new TreeSet<>();
        for (String name : classes()) {
            try {
                Class<?> type = Class.forName(name, false, MarkedCalculations.class.getClassLoader());
                add(type.getAnnotation(Calculation.class), ids);
                for (Method method : type.getDeclaredMethods()) {
                    add(method.getAnnotation(Calculation.class), ids);
                }
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException(e);
            }
        }
        return ids;
    }

    private static void add(@org.jspecify.annotations.Nullable Calculation mark, Set<String> ids) {
        if (mark != null) {
            ids.add(mark.value());
        }
    }

    private static List<String> classes() {
        try {
            URI core = Length.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI();
            Path place = Path.of(core);
            if (Files.isDirectory(place)) {
                return classes(place);
            }
            try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
                return classes(jar.getPath("/"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The command line is left out: it has no calculations and needs libraries that are not here. */
    private static List<String> classes(Path root) throws IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root.resolve("org/woodyield"))) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                String name = root.relativize(file).toString().replace('\\', '/');
                if (name.endsWith(".class") && !name.endsWith("-info.class") && !name.contains("/woodyield/job/")) {
                    names.add(
                            name.substring(0, name.length() - ".class".length()).replace('/', '.'));
                }
            }
        }
        return names;
    }
}
