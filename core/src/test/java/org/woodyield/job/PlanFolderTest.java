package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanFolderTest {

    private static final Set<String> OWN = Set.of("plan.html", "logs.csv");

    @TempDir
    Path above;

    @Test
    void aNewFolderIsWrittenAndNothingElseStaysBeside() throws IOException {
        Path out = above.resolve("plan");
        write(out, false);
        assertThat(names(out)).containsExactly("logs.csv", "plan.html");
        assertThat(names(above)).containsExactly("plan");
    }

    @Test
    void anEmptyFolderIsFilled() throws IOException {
        Path out = Files.createDirectory(above.resolve("plan"));
        write(out, false);
        assertThat(names(out)).containsExactly("logs.csv", "plan.html");
    }

    @Test
    void aFolderThatIsNotEmptyIsRefusedAndKept() throws IOException {
        Path out = Files.createDirectory(above.resolve("plan"));
        Files.writeString(out.resolve("plan.html"), "mine");
        assertThatThrownBy(() -> write(out, false))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("is not empty")
                .hasMessageContaining("--replace");
        assertThat(out.resolve("plan.html")).hasContent("mine");
    }

    @Test
    void anEarlierPlanIsReplacedWhole() throws IOException {
        Path out = Files.createDirectory(above.resolve("plan"));
        Files.writeString(out.resolve("plan.html"), "earlier");
        write(out, true);
        assertThat(out.resolve("plan.html")).hasContent("page");
        assertThat(names(above)).containsExactly("plan");
    }

    @Test
    void whatIsNotOursIsNeverReplaced() throws IOException {
        Path out = Files.createDirectory(above.resolve("plan"));
        Files.writeString(out.resolve("plan.html"), "earlier");
        Files.writeString(out.resolve("notes.txt"), "mine");
        assertThatThrownBy(() -> write(out, true))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("notes.txt");
        assertThat(out.resolve("plan.html")).hasContent("earlier");
        assertThat(out.resolve("notes.txt")).hasContent("mine");
    }

    @Test
    void aFolderNamedLikeOurFileIsNotOurs() throws IOException {
        Path out = Files.createDirectory(above.resolve("plan"));
        Files.createDirectory(out.resolve("plan.html"));
        assertThatThrownBy(() -> write(out, true)).isInstanceOf(BadInputException.class);
    }

    @Test
    void aFileIsNotAFolder() throws IOException {
        Path out = Files.writeString(above.resolve("plan"), "mine");
        assertThatThrownBy(() -> write(out, true))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("is a file");
        assertThat(out).hasContent("mine");
    }

    @Test
    void foldersAboveThatAreMissingAreMade() throws IOException {
        Path out = above.resolve("no/such/plan");
        PlanFolder checked = PlanFolder.of(out.toString(), OWN, false);
        assertThat(names(above)).isEmpty();
        checked.write(files());
        assertThat(names(out)).containsExactly("logs.csv", "plan.html");
        assertThat(names(above.resolve("no/such"))).containsExactly("plan");
    }

    @Test
    void foldersMadeAboveGoAgainWhereNothingIsWritten() throws IOException {
        Path out = above.resolve("no/such/plan");
        Map<String, byte[]> files = new LinkedHashMap<>(files());
        files.put("no/such/folder.csv", new byte[0]);
        PlanFolder folder = PlanFolder.of(out.toString(), OWN, false);
        assertThatThrownBy(() -> folder.write(files)).hasMessageContaining("nothing was written");
        assertThat(names(above)).isEmpty();
    }

    @Test
    void aFolderBelowAFileIsRefused() throws IOException {
        Path file = Files.writeString(above.resolve("notes"), "mine");
        assertThatThrownBy(() -> write(file.resolve("a/plan"), false))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("below " + file)
                .hasMessageContaining("no folder; choose another");
        assertThat(file).hasContent("mine");
    }

    @Test
    void aNewJobMayStandInAFolderThatIsNotThereYet() throws IOException {
        Path job = above.resolve("sheds/my-shed");
        assertThat(Run.of("new-job", job.toString()).code()).isEqualTo(Main.DONE);
        assertThat(names(job)).contains("job.properties", "logs.csv");
        Files.writeString(job.resolve("logs.csv"), "mine");
        assertThat(Run.of("new-job", job.toString()).code()).isEqualTo(Main.INPUT);
        assertThat(job.resolve("logs.csv")).hasContent("mine");
    }

    @Test
    void aFolderThatCannotBeWrittenIsRefusedInOneLine() throws IOException {
        assumeFalse("root".equals(System.getProperty("user.name")), "the superuser may write anywhere");
        assertThat(above.toFile().setWritable(false)).isTrue();
        try {
            assertThatThrownBy(() -> write(above.resolve("plan"), false))
                    .isInstanceOf(BadInputException.class)
                    .hasMessageContaining("no permission")
                    .hasMessageNotContaining("\n");
        } finally {
            assertThat(above.toFile().setWritable(true)).isTrue();
        }
    }

    @Test
    void whenAFileCannotBeWrittenTheEarlierPlanStays() throws IOException {
        Path out = Files.createDirectory(above.resolve("plan"));
        Files.writeString(out.resolve("plan.html"), "earlier");
        PlanFolder folder = PlanFolder.of(out.toString(), OWN, true);
        Map<String, byte[]> files = new LinkedHashMap<>(files());
        files.put("no/such/folder.csv", new byte[0]);
        assertThatThrownBy(() -> folder.write(files))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("nothing was written");
        assertThat(out.resolve("plan.html")).hasContent("earlier");
        assertThat(names(above)).containsExactly("plan");
    }

    @Test
    void theFolderOneStandsInIsRefused() {
        assertThatThrownBy(() -> PlanFolder.of(".", OWN, true))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("stand in");
    }

    private static void write(Path out, boolean replace) {
        PlanFolder.of(out.toString(), OWN, replace).write(files());
    }

    private static Map<String, byte[]> files() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("plan.html", "page".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        files.put("logs.csv", "id\n".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return files;
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
