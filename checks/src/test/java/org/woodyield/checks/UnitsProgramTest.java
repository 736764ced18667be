package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** The pinned conversions, asked of GNU Units again: does the program still print what the table says? */
@Tag("units")
class UnitsProgramTest {

    private static final String TABLE = "measure/gnu-units";

    @BeforeAll
    static void theProgramIsInstalled() {
        boolean installed;
        try {
            installed = units("--version").startsWith("GNU Units");
        } catch (IOException e) {
            installed = false;
        }
        assumeTrue(installed, "GNU Units is not installed");
    }

    @TestFactory
    Stream<DynamicTest> theProgramPrints() {
        String text = Objects.requireNonNull(CheckTables.all().get(TABLE));
        return CheckTable.parse(TABLE, text).rows().stream().map(row -> {
            Given given = new Given(row.inputs(), Map.of(), new HashSet<>());
            String from = "(" + given.text("amount").replace(' ', '+') + ") " + given.text("from");
            return DynamicTest.dynamicTest(
                    given.toString(),
                    () -> assertThat(units("-t", "-o", "%.12e", from, given.text("to")))
                            .isEqualTo(row.published()));
        });
    }

    private static String units(String... arguments) throws IOException {
        List<String> command =
                Stream.concat(Stream.of("units"), Stream.of(arguments)).toList();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    }
}
