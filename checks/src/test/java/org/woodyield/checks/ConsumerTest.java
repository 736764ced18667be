package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.measure.Length;
import picocli.CommandLine;

/**
 * Core as another program meets it, in a virtual machine of its own: on the class path with the optional libraries, and on
 * the module path with nothing but core.
 */
class ConsumerTest {

    /** Uses the API, then loads and initialises every class of core outside the command line. */
    private static final String PROGRAM = """
            package consumer;

            import java.io.IOException;
            import java.lang.module.ModuleReader;
            import java.util.List;
            import org.woodyield.measure.Length;
            import org.woodyield.source.Sources;
            import org.woodyield.working.Working;

            public final class Consumer {
                public static void main(String[] arguments) throws IOException, ClassNotFoundException {
                    Length length = Length.parse("12 ft 6 1/2 in");
                    Working working = Working.of("board feet")
                            .given("W", "width", 6, "in")
                            .step("v", "board feet", "W * 12 / 12", "bf", Sources.get("definition"))
                            .build();
                    System.out.println(length.inMillimetres(1) + ", " + working.value() + " bf");
                    Module core = Length.class.getModule();
                    System.out.println(core.isNamed() ? "module " + core.getName() : "class path");
                    if (core.isNamed()) {
                        System.out.println("classes " + load(core));
                    }
                }

                private static boolean load(Module core) throws IOException, ClassNotFoundException {
                    List<String> names;
                    try (ModuleReader reader = core.getLayer().configuration().findModule(core.getName())
                            .orElseThrow().reference().open()) {
                        names = reader.list()
                                .filter(name -> name.endsWith(".class") && !name.endsWith("-info.class"))
                                .filter(name -> !name.startsWith("org/woodyield/job/"))
                                .map(name -> name.replace(".class", "").replace('/', '.'))
                                .toList();
                    }
                    for (String name : names) {
                        Class.forName(name, true, core.getClassLoader());
                    }
                    return names.size() > 20;
                }
            }
            """;

    private static final Path CORE = locationOf(Length.class);
    private static final List<Path> LIBRARIES = Stream.of(CsvReader.class, CommandLine.class, NullMarked.class)
            .map(ConsumerTest::locationOf)
            .toList();

    @TempDir
    private Path folder;

    @Test
    void coreWorksOnTheClassPathWithTheLibraries() throws IOException, InterruptedException {
        String path = join(Stream.concat(Stream.of(CORE), LIBRARIES.stream()).toList());
        Path classes = compile("", "-cp", path);
        Outcome outcome = java("-cp", classes + File.pathSeparator + path, "consumer.Consumer");
        assertThat(outcome).isEqualTo(new Outcome(0, "3822.7 mm, 6.0 bf\nclass path\n", ""));
    }

    @Test
    void coreWorksOnTheModulePathAlone() throws IOException, InterruptedException {
        Path classes = compile("module consumer { requires org.woodyield; }", "--module-path", CORE.toString());
        Outcome outcome = java("--module-path", join(List.of(classes, CORE)), "--module", "consumer/consumer.Consumer");
        assertThat(outcome).isEqualTo(new Outcome(0, "3822.7 mm, 6.0 bf\nmodule org.woodyield\nclasses true\n", ""));
    }

    @Test
    void theCommandLineIsNotPartOfTheModulesApi() throws IOException {
        Files.createDirectories(folder.resolve("source"));
        Path source = Files.writeString(
                folder.resolve("source/Consumer.java"),
                "package consumer; class Consumer { Object main = new org.woodyield.job.Main(); }");
        Path module = Files.writeString(
                folder.resolve("source/module-info.java"), "module consumer { requires org.woodyield; }");
        assertThat(javac(List.of(source, module), "--module-path", CORE.toString()))
                .contains("org.woodyield.job");
    }

    @Test
    void theCommandLineWithoutItsLibrariesSaysSoInOneLine() throws IOException, InterruptedException {
        Outcome alone = java("-cp", CORE.toString(), "org.woodyield.job.Main");
        assertThat(alone.exit()).isEqualTo(1);
        assertThat(alone.out()).isEmpty();
        assertThat(alone.err().lines()).singleElement().asString().contains("info.picocli:picocli");
        String parser = LIBRARIES.get(1).toString();
        Outcome half = java("-cp", CORE + File.pathSeparator + parser, "org.woodyield.job.Main");
        assertThat(half.exit()).isEqualTo(1);
        assertThat(half.err().lines()).singleElement().asString().contains("de.siegmar:fastcsv");
    }

    private Path compile(String moduleInfo, String... options) throws IOException {
        Files.createDirectories(folder.resolve("source"));
        List<Path> sources = new ArrayList<>();
        sources.add(Files.writeString(folder.resolve("source/Consumer.java"), PROGRAM));
        if (!moduleInfo.isEmpty()) {
            sources.add(Files.writeString(folder.resolve("source/module-info.java"), moduleInfo));
        }
        assertThat(javac(sources, options)).isEmpty();
        return folder.resolve("classes");
    }

    /** Compiles, and returns what the compiler had to say. */
    private String javac(List<Path> sources, String... options) {
        List<String> arguments = new ArrayList<>(List.of(options));
        arguments.addAll(List.of(
                "--release", "17", "-proc:none", "-d", folder.resolve("classes").toString()));
        sources.forEach(source -> arguments.add(source.toString()));
        java.io.ByteArrayOutputStream said = new java.io.ByteArrayOutputStream();
        ToolProvider.getSystemJavaCompiler().run(null, said, said, arguments.toArray(String[]::new));
        return said.toString(StandardCharsets.UTF_8);
    }

    private record Outcome(int exit, String out, String err) {}

    private Outcome java(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        return new Outcome(process.waitFor(), text(out), text(err));
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file).replace("\r\n", "\n");
    }

    private static String join(List<Path> paths) {
        return paths.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    private static Path locationOf(Class<?> type) {
        try {
            return Path.of(
                    type.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
