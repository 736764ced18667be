package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/** However a job is spoilt, it is read or refused in plain lines; it never brings the reader down. */
class SpoiltJobTest {

    private record InMemory(Map<String, byte[]> files) implements JobFiles {
        @Override
        public Optional<byte[]> bytes(String fileName) {
            return Optional.ofNullable(files.get(fileName));
        }

        @Override
        public List<String> names() {
            return List.copyOf(files.keySet());
        }

        @Override
        public Source origin() {
            return Sources.get("user");
        }
    }

    @Provide
    Arbitrary<String> splinters() {
        return Arbitraries.oneOf(
                Arbitraries.of(
                        "",
                        ",",
                        "\"",
                        "\n",
                        "\r",
                        "=",
                        "#",
                        ";",
                        "-",
                        "0",
                        "1e999",
                        "NaN",
                        "in",
                        " ft",
                        "4 m",
                        "1/0 in",
                        "999999999999999999999 in",
                        "\u0000",
                        "\ud800",
                        "\ufeff",
                        "x",
                        "per",
                        " per bf",
                        "%",
                        "2x4",
                        "/4"),
                Arbitraries.strings().ofMaxLength(6));
    }

    @Property(tries = 250)
    void anyChangeOfTheTextIsReadOrRefusedInLines(
            @ForAll @IntRange(max = 6) int file,
            @ForAll @IntRange(max = 5000) int at,
            @ForAll @IntRange(max = 12) int away,
            @ForAll("splinters") String splinter)
            throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>(new JobFiles.Demo().all());
        String name = JobFile.names().get(file);
        String text = new String(new JobFiles.Demo().bytes(name).orElseThrow(), StandardCharsets.UTF_8);
        int from = at % text.length();
        String spoilt = text.substring(0, from) + splinter + text.substring(Math.min(text.length(), from + away));
        files.put(name, spoilt.getBytes(StandardCharsets.UTF_8));
        expectLines(files);
    }

    @Property(tries = 100)
    void anyBytesAreReadOrRefusedInLines(@ForAll @IntRange(max = 6) int file, @ForAll byte[] bytes) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>(new JobFiles.Demo().all());
        files.put(JobFile.names().get(file), bytes);
        expectLines(files);
    }

    private static void expectLines(Map<String, byte[]> files) throws IOException {
        try {
            assertThat(JobReader.read(new InMemory(files)).logs()).isNotEmpty();
        } catch (BadInputException e) {
            assertThat(e.lines())
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(line).contains("allowed: ").doesNotContain("\n", "\r"));
        }
    }
}
