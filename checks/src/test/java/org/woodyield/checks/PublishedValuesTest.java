package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every check row as a test of its own; the run is written to {@code target/checks.csv} also when rows fail. */
class PublishedValuesTest {

    private static final Run RUN = Run.of(Catalogue.all(), CheckTables.all());

    @TestFactory
    Stream<DynamicTest> row() {
        return RUN.results().stream()
                .map(result -> DynamicTest.dynamicTest(
                        result.row().id() + " " + result.row().calculation() + " " + result.given(),
                        () -> assertThat(result.fails()).as(result.toString()).isFalse()));
    }

    @Test
    void everyTableIsReadAndEveryCalculationIsCalled() {
        assertThat(RUN.problems()).isEmpty();
        assertThat(RUN.results()).isNotEmpty();
    }

    @AfterAll
    static void writeTheReport() throws IOException {
        Report.write(RUN, Path.of("target"));
        System.out.print(Report.closing(RUN));
    }
}
