package org.woodyield.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Each benchmark once, so that its own verification of results runs with the tests; nothing is measured here. */
class EveryBenchmarkRunsTest {

    @Test
    void everyBenchmarkRunsOnceWithoutAFault() throws RunnerException {
        Options once = new OptionsBuilder()
                .include("org.woodyield.bench")
                .mode(Mode.SingleShotTime)
                .forks(0)
                .warmupIterations(0)
                .measurementIterations(1)
                .param("logs", "20")
                .shouldFailOnError(true)
                .verbosity(VerboseMode.SILENT)
                .build();
        Collection<RunResult> results = new Runner(once).run();
        assertThat(results).isNotEmpty();
    }

    /** Since JDK 23 a processor on the class path alone is not run, and the list would be empty without a word. */
    @Test
    void everyBenchmarkClassIsInTheList() throws IOException {
        String list = Files.readString(Path.of("target/classes/META-INF/BenchmarkList"));
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
            List<String> benchmarks = sources.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith("Benchmark.java"))
                    .map(name -> name.replace(".java", ""))
                    .toList();
            assertThat(benchmarks)
                    .isNotEmpty()
                    .allSatisfy(name -> assertThat(list).contains("." + name + " "));
        }
    }
}
