package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.woodyield.source.PublishedTable;

/** What must hold within core's tables, and the sums that guard their columns against a slip. */
class PrintedRelationTest {

    private static final Path RESOURCES = Path.of("../core/src/main/resources");

    @TestFactory
    Stream<DynamicTest> holds() {
        return PrintedRelation.all().stream()
                .map(relation -> DynamicTest.dynamicTest(
                        relation.file() + ": " + relation.statement(),
                        () -> assertThat(relation.breaches(PrintedRelation.table(relation.file())))
                                .isEmpty()));
    }

    @Test
    void everyColumnOfNumbersAddsUpToItsControlTotal() throws IOException {
        assertThat(ControlTotal.all())
                .allSatisfy(total -> assertThat(total.sum())
                        .as(total.file() + ", " + total.column())
                        .isEqualByComparingTo(total.total()));
        Set<String> columns =
                TableCells.all(RESOURCES).stream().map(Change::group).collect(Collectors.toSet());
        Set<String> guarded = ControlTotal.all().stream()
                .map(total -> total.file() + "," + total.column())
                .collect(Collectors.toSet());
        assertThat(guarded).isEqualTo(columns);
    }

    @Test
    void aNumberIsFoundWhereItStands() throws IOException {
        List<Change> cells = TableCells.all(RESOURCES);
        List<Change> numbers = SourceNumbers.of(Path.of("../core/src/main/java"), "scaling");
        assertThat(cells).hasSizeGreaterThan(3000);
        assertThat(numbers).anyMatch(change -> change.from().equals("0.904762"));
        for (Change change : Stream.concat(cells.stream(), numbers.stream()).toList()) {
            Path root = change.sort() == Change.Sort.TABLE ? RESOURCES : Path.of("../core/src/main/java");
            String text = Files.readString(root.resolve("org/woodyield").resolve(change.file()));
            assertThat(text.startsWith(change.from(), change.start()))
                    .as(change.toString())
                    .isTrue();
            assertThat(text.substring(0, change.start()).lines().count())
                    .as(change.toString())
                    .isIn((long) change.line(), (long) change.line() - 1);
        }
    }

    @Test
    void aNumberIsNudgedByAUnitOfItsLastDigit() {
        assertThat(Change.nudged("0.040")).isEqualTo("0.041");
        assertThat(Change.nudged("9")).isEqualTo("10");
        assertThat(Change.nudged("-0.35")).isEqualTo("-0.36");
        assertThat(Change.nudged("1 15/16")).isEqualTo("1 16/16");
        assertThat(Change.nudged("3/8")).isEqualTo("4/8");
    }

    @Test
    void aChangedTableIsReadAnewAndAMissingOneIsNot() throws ReflectiveOperationException {
        String file = "scaling/sweden_conversion.csv";
        String name = "org/woodyield/" + file;
        String text = "# source: swedish-forest-agency\n# rows: 1\nfrom,m3sk\nm3sk,2\n";
        Class<?> beside = new OverlayLoader(Map.of(name, text.getBytes(StandardCharsets.UTF_8)))
                .loadClass(PrintedRelation.beside(file).getName());
        PublishedTable changed = PublishedTable.read(beside, "sweden_conversion.csv");
        assertThat(changed.rows().get(0).number("m3sk")).isEqualTo(2);
        assertThat(PrintedRelation.of(file))
                .singleElement()
                .satisfies(relation -> assertThat(relation.breaches(changed)).isNotEmpty());
        Class<?> without = new OverlayLoader(Map.of(name, new byte[0]))
                .loadClass(PrintedRelation.beside(file).getName());
        assertThatThrownBy(() -> PublishedTable.read(without, "sweden_conversion.csv"))
                .hasMessageContaining("no table");
    }
}
