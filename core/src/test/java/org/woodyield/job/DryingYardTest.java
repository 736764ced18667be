package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The yard of a job: what its keys add to the plan, and that nothing is added without them. */
class DryingYardTest {

    private static final String JOB = "job.properties";
    private static final String SECTION = "In the drying yard";

    @TempDir
    Path folder;

    private EditedDemo job(String name, String... lines) throws java.io.IOException {
        EditedDemo job = EditedDemo.small(folder.resolve(name));
        Path file = job.folder().resolve(JOB);
        List<String> kept = Files.readAllLines(file).stream()
                .filter(line -> !line.startsWith("drying."))
                .toList();
        Files.writeString(file, String.join("\n", kept) + "\n" + String.join("\n", lines) + "\n");
        return job;
    }

    private static String plan(EditedDemo job) {
        Run run = Run.of(job.folder().toString());
        assertThat(run.err()).doesNotContain("not accepted");
        assertThat(run.code()).isZero();
        return run.out();
    }

    @Test
    void withoutItsKeysThePlanHasNoYard() throws java.io.IOException {
        assertThat(plan(job("none"))).doesNotContain(SECTION, "Stickers");
    }

    @Test
    void aStackIsPlannedForEachSizeThatIsSawn() throws java.io.IOException {
        EditedDemo job = job("stacks", "drying.stack-width = 2 ft", "drying.sticker = 1 in");
        Path page = folder.resolve("stacks-page");
        String out = plan(job);
        assertThat(out).contains(SECTION).doesNotContain("Cup of boards", "Equilibrium moisture by month");
        assertThat(Run.of(job.folder().toString(), "--out", page.toString()).code())
                .isZero();
        // 8 ft 2 in with both end trims are 98 in: over 16 in, up to a whole one, and one more, are 8 stickers in a
        // row.
        assertThat(Files.readAllLines(page.resolve("plan-stacks.csv")))
                .anyMatch(line -> line.matches("\"?stud, 8 ft 2 in\"?,eastern white pine,\\d+,\\d,\\d,8,.*"));
    }

    @Test
    void theAirGivesTheEquilibriumMoistureByBothSets() throws java.io.IOException {
        String out = plan(job("air", "drying.temperature = 70 F", "drying.humidity = 65 %"));
        // Table 4-2 of the Wood Handbook: 12.0 % at 70 °F and 65 %.
        assertThat(out).containsPattern("for °F +70\\.0 +65\\.0 +1[12]\\.\\d+ ").contains("for °C");
        assertThat(plan(job("place", "drying.place = Denver, CO"))).contains("outdoors in Denver, CO");
    }

    @Test
    void flatSawnSizesCupAndThoseThatCannotBeDrawnAreNamed() throws java.io.IOException {
        EditedDemo job = job("cups", "drying.pith-distance = 3 in");
        Path out = folder.resolve("page");
        assertThat(Run.of(job.folder().toString(), "--out", out.toString()).code())
                .isZero();
        assertThat(Files.readString(out.resolve("plan.html"))).contains("cup-1-title", "Cup of boards");
        assertThat(Files.readAllLines(out.resolve("plan-cupping.csv"))).hasSizeGreaterThan(1);
        String far = plan(job("far", "drying.pith-distance = 20 in")).replaceAll("\\s+", " ");
        assertThat(far).contains("left out; no log of its wood has a board 20 in from its pith");
        String near = plan(job("near", "drying.pith-distance = 1/8 in")).replaceAll("\\s+", " ");
        assertThat(near).contains("left out;", "a board that holds the pith splits");
    }

    @Test
    void onlyWhatIsSawnCupsAndThatAtEachDistance() throws java.io.IOException {
        EditedDemo job = job("several", "drying.pith-distance = 3 in; 4 in", "drying.stack-width = 4 ft");
        Path out = folder.resolve("several-page");
        assertThat(Run.of(job.folder().toString(), "--out", out.toString()).code())
                .isZero();
        List<String> stacks = Files.readAllLines(out.resolve("plan-stacks.csv"));
        List<String> cups = Files.readAllLines(out.resolve("plan-cupping.csv"));
        for (String cup : cups.subList(1, cups.size())) {
            String[] words = cup.replace("\"", "").split(", ?", -1);
            assertThat(stacks)
                    .anyMatch(stack -> stack.replace("\"", "").startsWith(words[0] + ", ")
                            && stack.contains("," + words[1] + ","));
        }
        assertThat(cups).filteredOn(cup -> cup.contains(",76.200,")).isNotEmpty();
        assertThat(cups).filteredOn(cup -> cup.contains(",101.600,")).isNotEmpty();
        assertThat(Run.of(job("bad", "drying.pith-distance = 3 in; x").folder().toString())
                        .err())
                .contains("drying.pith-distance: 'x'");
    }

    @Test
    void splitsAndWarpAreBoundedTogether() throws java.io.IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("losses"))
                .with(JOB, "finish.splits = 2 %", "finish.splits = 90 %")
                .with(JOB, "finish.warp = 4 %", "finish.warp = 90 %");
        Run run = Run.of(job.folder().toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("finish.warp: '90 %'", "up to 90 % lost by splits and warp together");
    }

    @Test
    void lossesGivenAsNothingAreNotCalledMissing() {
        EditedDemo job = EditedDemo.small(folder.resolve("nothing"))
                .with(JOB, "finish.end-trim = 1 in", "finish.end-trim = 0 in")
                .with(JOB, "finish.splits = 2 %", "finish.splits = 0 %")
                .with(JOB, "finish.warp = 4 %", "finish.warp = 0 %");
        String out = plan(job).replaceAll("\\s+", " ");
        assertThat(out).contains("No losses of drying are counted: the job gives none", "or gives them as 0");
        assertThat(out).doesNotContain("The job gives no losses");
    }

    @Test
    void whatIsDressedDryIsNotGreen() {
        for (String moisture : new String[] {"green", "30 %"}) {
            EditedDemo job = EditedDemo.small(folder.resolve("wet " + moisture))
                    .with("wanted.csv", "dressed dry,15 %", "dressed dry," + moisture);
            Run run = Run.of(job.folder().toString());
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("moisture: '" + moisture + "'", "less than 30 %", "or dressed green");
            Run asked = Run.of(
                    EditedDemo.small(folder.resolve("asked " + moisture))
                            .folder()
                            .toString(),
                    "--what-if",
                    "A",
                    "--size",
                    "2x4, 8 ft, dressed dry, " + moisture);
            assertThat(asked.code()).isEqualTo(2);
            assertThat(asked.err()).contains("less than 30 %");
        }
        EditedDemo rough = EditedDemo.small(folder.resolve("rough")).with("wanted.csv", "rough,19 %", "rough,green");
        assertThat(Run.of(rough.folder().toString()).code()).isZero();
    }

    @Test
    void whatIsLeftRoughOrDressedGreenIsNotSaidToBePlanedOrDried() {
        String dry = plan(EditedDemo.small(folder.resolve("some rough"))).replaceAll("\\s+", " ");
        assertThat(dry).contains("left after drying ", "bf of it is left rough and not planed");
        EditedDemo green =
                EditedDemo.small(folder.resolve("green")).with("wanted.csv", "dressed dry,15 %", "dressed green,green");
        assertThat(plan(green).replaceAll("\\s+", " ")).contains("bf of it is dressed green and not dried");
    }

    @Test
    void whatCannotBeUsedIsRefusedWithItsLine() throws java.io.IOException {
        Run run = Run.of(job(
                        "bad",
                        "drying.stack-width = 30 ft",
                        "drying.gap = 2 ft",
                        "drying.sticker = 0 in",
                        "drying.sticker-spacing = 3 ft",
                        "drying.temperature = 70",
                        "drying.humidity = 99 %",
                        "drying.pith-distance = 0 in")
                .folder()
                .toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("drying.stack-width: '30 ft'", "drying.gap: '2 ft'", "drying.sticker: '0 in'")
                .contains("drying.sticker-spacing: '3 ft'", "drying.temperature: '70'", "drying.humidity: '99 %'")
                .contains("drying.pith-distance: '0 in'");
        assertThat(Run.of(job("half", "drying.temperature = 70 F").folder().toString())
                        .err())
                .contains("give the humidity as well");
        assertThat(Run.of(job("both", "drying.place = Denver, CO", "drying.humidity = 60 %")
                                .folder()
                                .toString())
                        .err())
                .contains("give one of the two");
    }
}
