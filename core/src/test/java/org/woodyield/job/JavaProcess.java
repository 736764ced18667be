package org.woodyield.job;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;

/** The command line in a program of its own. */
final class JavaProcess {

    private JavaProcess() {}

    static Process start(List<String> javaOptions, String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(javaOptions);
        command.addAll(List.of("-cp", classPath(), Main.class.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).start();
    }

    private static String classPath() {
        return Stream.of(Main.class, CommandLine.class, CsvReader.class)
                .map(JavaProcess::place)
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static String place(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
