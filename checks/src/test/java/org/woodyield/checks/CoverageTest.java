package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/** Nothing goes unnoticed: marked calculations, sources, and the publications that were read. */
class CoverageTest {

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("/org/woodyield/checks/"))
            .importPackages("org.woodyield");

    private static final Run RUN = Run.of(Catalogue.all(), CheckTables.all());

    /** Rows that are computed, agree, and rest on a publication, by calculation. */
    private static final Map<String, Long> VERIFIED = RUN.results().stream()
            .filter(result -> result.row().kind() == Kind.COMPUTED
                    && result.row().source().standing() == Standing.PUBLISHED
                    && result.verdict() == Verdict.AGREES)
            .collect(Collectors.groupingBy(result -> result.row().calculation(), Collectors.counting()));

    /** Id and where it is marked. */
    static Map<String, String> marked() {
        Map<String, String> marked = new TreeMap<>();
        List<String> twice = new ArrayList<>();
        for (JavaClass type : CORE) {
            if (type.isAnnotatedWith(Calculation.class)) {
                String id = type.getAnnotationOfType(Calculation.class).value();
                if (marked.put(id, type.getName()) != null) {
                    twice.add(id);
                }
            }
            for (JavaMethod method : type.getMethods()) {
                if (method.isAnnotatedWith(Calculation.class)) {
                    String id = method.getAnnotationOfType(Calculation.class).value();
                    if (marked.put(id, method.getFullName()) != null) {
                        twice.add(id);
                    }
                }
            }
        }
        assertThat(twice).as("calculation ids that are not unique").isEmpty();
        return marked;
    }

    @Test
    void aMarkedCalculationCarriesThePackageInItsId() {
        assertThat(marked()).isNotEmpty().allSatisfy((id, place) -> {
            assertThat(id).matches("[a-z]+\\.[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(place).startsWith("org.woodyield." + id.substring(0, id.indexOf('.')) + ".");
        });
    }

    /**
     * A public method that returns a Working: named after the calculation, or {@code working} for all of its type, or
     * else one for each that takes the same.
     */
    @Test
    void everyMarkedCalculationShowsItsWorking() {
        List<String> without = new ArrayList<>();
        for (JavaClass type : CORE) {
            if (type.isAnnotatedWith(Calculation.class) && workings(type).isEmpty()) {
                without.add(type.getName());
            }
            Map<List<String>, List<JavaMethod>> byInputs = type.getMethods().stream()
                    .filter(method -> method.isAnnotatedWith(Calculation.class))
                    .filter(method -> workings(type).stream()
                            .noneMatch(working -> working.getName().equals("working")
                                    || working.getName().equals(method.getName() + "Working")))
                    .collect(Collectors.groupingBy(CoverageTest::inputs));
            byInputs.forEach((inputs, methods) -> {
                long workings = workings(type).stream()
                        .filter(working -> inputs(working).equals(inputs))
                        .count();
                if (workings < methods.size()) {
                    methods.forEach(method -> without.add(method.getFullName()));
                }
            });
        }
        assertThat(without).as("calculations without a Working").isEmpty();
    }

    private static List<JavaMethod> workings(JavaClass type) {
        return type.getAllMethods().stream()
                .filter(method -> method.getRawReturnType().isEquivalentTo(Working.class))
                .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
                .toList();
    }

    private static List<String> inputs(JavaMethod method) {
        return method.getRawParameterTypes().stream().map(JavaClass::getName).toList();
    }

    @Test
    void everyMarkedCalculationIsCheckedOrListedAsUnverified() {
        Map<String, String> listed = Account.unverified();
        Set<String> open = new TreeSet<>(marked().keySet());
        open.removeAll(VERIFIED.keySet());
        assertThat(listed.keySet())
                .as("unverified.csv must list exactly the marked calculations without a computed row of a publication")
                .containsExactlyInAnyOrderElementsOf(open);
        assertThat(listed.values()).noneMatch(String::isBlank);
    }

    @Test
    void everyMarkedCalculationHasThreePublishedValuesOrIsListedWithItsCount() {
        Map<String, Long> few = new TreeMap<>();
        for (String id : marked().keySet()) {
            long rows = VERIFIED.getOrDefault(id, 0L);
            if (rows == 1 || rows == 2) {
                few.put(id, rows);
            }
        }
        Map<String, Account.Few> listed = Account.fewValues();
        Map<String, Long> counts = new TreeMap<>();
        listed.forEach((id, one) -> counts.put(id, one.rows()));
        assertThat(listed.values()).extracting(Account.Few::reason).noneMatch(String::isBlank);
        assertThat(counts)
                .as("few-values.csv must list exactly the marked calculations with one or two published values;"
                        + " those with none stand in unverified.csv")
                .containsExactlyInAnyOrderEntriesOf(few);
    }

    @Test
    void everyLogRuleHasThreePublishedValuesOrIsListedAsUnverified() {
        Map<String, Long> rows = RUN.results().stream()
                .filter(result -> result.row().kind() == Kind.COMPUTED
                        && result.row().source().standing() == Standing.PUBLISHED
                        && result.verdict() == Verdict.AGREES
                        && result.row().calculation().startsWith("scaling.log-rule"))
                .collect(Collectors.groupingBy(result -> result.row().inputs().get("rule"), Collectors.counting()));
        Map<String, String> listed = Account.unverifiedRules();
        List<String> open = Stream.concat(LogRules.all().stream(), LogRules.onRequest().stream())
                .map(LogRule::id)
                .filter(id -> rows.getOrDefault(id, 0L) < 3)
                .toList();
        assertThat(listed.keySet())
                .as("unverified-rules.csv must list exactly the rules with fewer than three published values")
                .containsExactlyInAnyOrderElementsOf(open);
        assertThat(listed.values()).noneMatch(String::isBlank);
    }

    @Test
    void everySourceInTheRegisterIsUsed() throws IOException {
        String used = String.join("\n", CheckTables.all().values())
                + "\n" + contentsOfCore()
                + "\n" + contents(Path.of("../core/src/main/java"));
        List<String> unused = Sources.all().stream()
                .map(Source::id)
                .filter(id -> !used.contains(id))
                .toList();
        assertThat(unused).isEmpty();
    }

    /** Constants of the classes and text of the tables, the register itself left out; Javadoc may cite a source too. */
    private static String contentsOfCore() throws IOException {
        Path core;
        try {
            core = Path.of(Length.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (java.net.URISyntaxException e) {
            throw new IllegalStateException(e);
        }
        if (Files.isDirectory(core)) {
            return contents(core);
        }
        try (FileSystem jar = FileSystems.newFileSystem(core)) {
            return contents(jar.getPath("/"));
        }
    }

    private static String contents(Path root) throws IOException {
        StringBuilder contents = new StringBuilder();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                if (Files.isRegularFile(file) && !file.endsWith("sources.csv")) {
                    contents.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                }
            }
        }
        return contents.toString();
    }

    @Test
    void everyPublicationThatWasReadIsUsedOrListedWithWhyNot() {
        Set<String> tables = CheckTables.all().keySet();
        assertThat(Account.references()).isNotEmpty().allSatisfy((file, use) -> {
            assertThat(use.tables().isEmpty())
                    .as(file + ": either tables that use it, or why not")
                    .isNotEqualTo(use.reason().isBlank());
            assertThat(tables).as(file).containsAll(use.tables());
        });
    }

    /** Of a table that several files share, a file's part is not known; the bounds are. */
    @Test
    void ofEveryFileThatIsUsedTheRowsThatAreNotAreListedWithWhyNot() {
        Map<String, Account.Use> uses = Account.references();
        Map<String, Long> rows = RUN.results().stream()
                .collect(Collectors.groupingBy(
                        result -> result.row().id().replaceFirst("#.*", ""), Collectors.counting()));
        Map<String, Long> files = uses.values().stream()
                .flatMap(use -> use.tables().stream())
                .collect(Collectors.groupingBy(table -> table, Collectors.counting()));
        Map<String, Account.Extent> extents = Account.extents();
        assertThat(extents.keySet())
                .containsExactlyInAnyOrderElementsOf(uses.entrySet().stream()
                        .filter(use -> !use.getValue().tables().isEmpty())
                        .map(Map.Entry::getKey)
                        .toList());
        extents.forEach((file, extent) -> {
            List<String> tables = Objects.requireNonNull(uses.get(file)).tables();
            long own = tables.stream()
                    .filter(table -> files.getOrDefault(table, 0L) == 1)
                    .mapToLong(table -> rows.getOrDefault(table, 0L))
                    .sum();
            assertThat((long) extent.checkRows())
                    .as(file)
                    .isBetween(
                            own,
                            tables.stream()
                                    .mapToLong(table -> rows.getOrDefault(table, 0L))
                                    .sum());
            assertThat(extent.used()).as(file).isBetween(1, extent.rows());
            assertThat(extent.rest().isBlank()).as(file).isEqualTo(extent.used() == extent.rows());
        });
    }
}
