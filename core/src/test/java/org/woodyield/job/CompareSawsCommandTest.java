package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareSawsCommandTest {

    private static final String OTHER = "other-saw.properties";

    @TempDir
    Path folder;

    private Run compared(EditedDemo job, String... more) {
        List<String> arguments =
                new ArrayList<>(List.of("compare-saws", job.folder().toString()));
        arguments.addAll(List.of(more));
        return Run.of(arguments.toArray(String[]::new));
    }

    /** Rows of a table without quotes, by the first cell and, where it has one, the side of own work. */
    private static Map<String, String[]> rows(Path file) throws IOException {
        Map<String, String[]> rows = new LinkedHashMap<>();
        for (String line : Files.readAllLines(file)) {
            String[] cells = line.split(",", -1);
            rows.put(cells[0] + (cells[1].endsWith("counted") ? ", " + cells[1] : ""), cells);
        }
        return rows;
    }

    private static String[] row(Path file, String key) throws IOException {
        String[] row = rows(file).get(key);
        if (row == null) {
            throw new AssertionError("no row " + key + " in " + file);
        }
        return row;
    }

    private static double number(String[] cells, int column) {
        return Double.parseDouble(cells[column]);
    }

    @Test
    void theThinnerKerfOfTheSameLogsIsSetBesideTheJobsOwn() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Path out = folder.resolve("out");
        Run run = compared(job, "--out", out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "chain saw on a slabbing guide", "small band mill beside", "Own work counted, lumber graded,");
        String[] chain = row(out.resolve("saws-lumber.csv"), "chain saw on a slabbing guide");
        String[] band = row(out.resolve("saws-lumber.csv"), "small band mill");
        assertThat(number(chain, 1)).isEqualTo(9.525);
        assertThat(number(band, 1)).isEqualTo(1.588);
        assertThat(number(band, 8)).isLessThan(number(chain, 8));
        assertThat(run.out())
                .contains("How sure this is", "of the draws", "all, drawn once", "The ranges that were assumed");
        assertThat(Files.readString(out.resolve("saws.html")))
                .contains("<svg", "MEMORY")
                .doesNotContain("<script");
        assertThat(compared(job, "--out", out.toString()).code()).isEqualTo(Main.INPUT);
        assertThat(compared(job, "--out", out.toString(), "--replace").code()).isZero();
    }

    @Test
    void theJobsOwnSawIsPlannedAsByItself() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Path plan = folder.resolve("plan");
        Path out = folder.resolve("out");
        assertThat(job.run("--out", plan.toString()).code()).isZero();
        assertThat(compared(job, "--out", out.toString()).code()).isZero();
        String[] all = row(plan.resolve("plan-time.csv"), "all");
        String[] own = row(out.resolve("saws-work.csv"), "chain saw on a slabbing guide");
        assertThat(own[1]).isEqualTo(all[1]);
        assertThat(number(own, 3) * 60).isCloseTo(number(all, 9), within(0.04));
        assertThat(number(own, 5)).isCloseTo(number(all, 10), within(0.0006));
    }

    @Test
    void whereTwoSawsChangePlacesBothCostTheSame() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Path out = folder.resolve("out");
        assertThat(compared(job, "--out", out.toString()).code()).isZero();
        Map<String, double[]> lines = new LinkedHashMap<>();
        for (String line : Files.readAllLines(out.resolve("saws-same-lumber.csv"))) {
            String[] cells = line.split(",", -1);
            if (!cells[0].equals("own-work")) {
                lines.put(
                        cells[0] + ", " + cells[2] + " (" + cells[1] + ")",
                        new double[] {number(cells, 4), number(cells, 5)});
            }
        }
        int compared = 0;
        for (String line : Files.readAllLines(out.resolve("saws-crossings.csv"))) {
            String[] cells = line.split(",", -1);
            if (cells[3].matches("[0-9]+")) {
                double[] one = Objects.requireNonNull(lines.get(cells[0] + ", " + cells[1]));
                double[] other = Objects.requireNonNull(lines.get(cells[0] + ", " + cells[2]));
                // The volume stands in the file as whole board feet.
                double volume = (one[0] - other[0]) / (other[1] - one[1]);
                assertThat(number(cells, 3)).isCloseTo(volume, within(0.5 + 1e-4 * volume));
                compared++;
            }
        }
        assertThat(compared).isPositive();
    }

    /** The job's own plan, which holds the other saw as well, and the comparison tell the same of the two. */
    @Test
    void thePlanAndTheComparisonTellTheSameVolumes() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Path plan = folder.resolve("plan");
        Path out = folder.resolve("out");
        assertThat(job.run("--out", plan.toString()).code()).isZero();
        assertThat(compared(job, "--out", out.toString()).code()).isZero();
        List<String> inPlan = Files.readAllLines(plan.resolve("plan-crossings.csv")).stream()
                .map(line -> line.replace("this saw", "chain saw on a slabbing guide")
                        .replace("another saw", "small band mill"))
                .toList();
        List<String> here = Files.readAllLines(out.resolve("saws-crossings.csv"));
        assertThat(here).hasSizeGreaterThan(1);
        assertThat(inPlan).containsAll(here);
    }

    /** Draws and plan take the same inputs and work: the value without ranges is the one of the other tables. */
    @Test
    void theIntervalsStandAroundTheFiguresOfTheOtherTables() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Path out = folder.resolve("out");
        assertThat(compared(job, "--out", out.toString()).code()).isZero();
        int seen = 0;
        for (String line : Files.readAllLines(out.resolve("saws-spread.csv"))) {
            String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            if (cells[0].equals("days on site") && !cells[1].contains(" less ")) {
                assertThat(number(cells, 3))
                        .isCloseTo(number(row(out.resolve("saws-work.csv"), cells[1]), 4), within(0.0006));
                assertThat(number(cells, 3)).isBetween(number(cells, 4), number(cells, 5));
                seen++;
            }
        }
        assertThat(seen).isEqualTo(2);
        assertThat(Files.readString(out.resolve("saws-ranges.csv"))).contains("work.feed-limit", "MEMORY");
    }

    @Test
    void aSawWithItselfUnderAnotherNameGivesTheSame() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        StringBuilder own = new StringBuilder("format = 1\nsaw.name = its twin\n");
        job.text("job.properties")
                .lines()
                .filter(line -> Keys.ofSaw().stream()
                        .filter(key -> !key.equals(Keys.FORMAT) && !key.equals(Keys.SAW_NAME))
                        .anyMatch(key -> line.startsWith(key.text() + " =")))
                .forEach(line -> own.append(line).append('\n'));
        Path twin = Files.writeString(folder.resolve("twin.properties"), own);
        Path out = folder.resolve("out");
        assertThat(compared(job, "--saw", twin.toString(), "--out", out.toString())
                        .code())
                .isZero();
        for (String table : List.of("saws-lumber.csv", "saws-work.csv", "saws-money.csv")) {
            List<String> lines = Files.readAllLines(out.resolve(table));
            assertThat(lines.stream().map(line -> line.replace("its twin", "chain saw on a slabbing guide")))
                    .as(table)
                    .hasSizeGreaterThan(2);
            String text = String.join("\n", lines);
            for (String line : lines) {
                if (line.startsWith("its twin")) {
                    assertThat(text).contains(line.replace("its twin", "chain saw on a slabbing guide"));
                }
            }
        }
    }

    @Test
    void aMissingPriceIsNamedAndNothingStandsInItsPlace() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(OTHER, "money.purchase = 5200\n", "");
        job.with(OTHER, "money.resale = 2600\n", "");
        Path out = folder.resolve("out");
        Run run = compared(job, "--out", out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("small band mill: not ranked; not given: price of the saw (money.purchase)");
        String[] band = row(out.resolve("saws-money.csv"), "small band mill, counted");
        assertThat(band[3]).isEmpty();
        assertThat(band[7]).contains("price of the saw");
    }

    /** Nobody said that it costs nothing, so it is not set beside the other; a 0 says so. */
    @Test
    void aSawThatLacksACostIsNeitherTheCheaperNorInTheShares() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(OTHER, "money.other-outlay = 350\n", "");
        Path out = folder.resolve("out");
        Run run = compared(job, "--out", out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("small band mill: not ranked; not given: other outlay before the first board"
                        + " (money.other-outlay). What lacks a cost may be dearer than is known. Write 0 for what costs"
                        + " nothing.")
                .doesNotContain("the cheapest by volume", "put the change", "In how many of the draws");
        String[] band = row(out.resolve("saws-money.csv"), "small band mill, counted");
        assertThat(band[2]).isEqualTo("more than");
        assertThat(number(band, 3)).isEqualTo(2600);
        assertThat(band[5] + band[6]).isEmpty();
        assertThat(Files.readAllLines(out.resolve("saws-crossings.csv"))).hasSize(1);
        assertThat(Files.readAllLines(out.resolve("saws-cheapest.csv"))).hasSize(1);
        job.write(OTHER, (job.text(OTHER) + "\nmoney.other-outlay = 0\n").getBytes(StandardCharsets.UTF_8));
        assertThat(compared(job, "--out", out.toString(), "--replace").out())
                .contains("the cheapest by volume", "put the change");
        assertThat(row(out.resolve("saws-money.csv"), "small band mill, counted")[2])
                .isEmpty();
    }

    /** Where the ranges leave open which outlay is the dearer there is no one volume, but there are shares. */
    @Test
    void aSawThatIsCheaperFromTheFirstIsSaidToBeThat() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with("job.properties", "money.purchase = 1150\n", "money.purchase = 1090 (1000 to 1200)\n")
                .with(OTHER, "money.purchase = 5200\n", "money.purchase = 1060\n")
                .with(OTHER, "money.resale = 2600\n", "money.resale = 450\n")
                .with(OTHER, "money.other-outlay = 350\n", "money.other-outlay = 240\n");
        Path out = folder.resolve("out");
        assertThat(compared(job, "--out", out.toString()).out().replaceAll("\\s+", " "))
                .contains(
                        "Own work not counted, lumber graded, the cheapest by volume: small band mill at every volume.")
                .doesNotContain("0 bf and", "put the change");
        List<Double> shares = new ArrayList<>();
        for (String line : Files.readAllLines(out.resolve("saws-cheapest.csv"))) {
            if (line.startsWith("not counted,graded,small band mill,")) {
                shares.add(number(line.split(",", -1), 5));
            }
        }
        assertThat(shares).hasSize(3).isSorted();
        assertThat(shares.get(0)).isBetween(50.0, 99.9);
    }

    /** With no wage the saws stand only where own work is not counted, and only there are they ranked. */
    @Test
    void whatLacksOnOneSideIsToldOfThatSide() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with("job.properties", "money.wage = 14 per h\n", "");
        assertThat(compared(job).out().replaceAll("\\s+", " "))
                .contains(
                        "Own work not counted, lumber graded, the cheapest by volume:",
                        "Own work counted: chain saw on a slabbing guide, small band mill: not ranked; not given: wage",
                        "were chosen without a price that a pass costs, for it is not given: wage")
                .doesNotContain("- chain saw on a slabbing guide, small band mill: not ranked", "by-products");
    }

    /** A wage of nothing that may be something is in one side only. */
    @Test
    void sidesAreOneWhereOwnWorkCostsNothingInEveryDraw() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with("job.properties", "money.wage = 14 per h\n", "money.wage = 0 per h\n");
        assertThat(compared(job).out()).contains("Own work counted or not, lumber");
        job.with("job.properties", "money.wage = 0 per h\n", "money.wage = 0 per h (0 per h to 20 per h)\n");
        assertThat(compared(job).out())
                .contains("Own work not counted, lumber", "Own work counted, lumber")
                .doesNotContain("counted or not");
    }

    /** The small job's saws change places beyond a hundred times its volume: that is not said to be so for ever. */
    @Test
    void beyondAHundredJobsNothingIsSaid() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with("job.properties", "money.wage = 14 per h\n", "money.wage = 0 per h\n");
        assertThat(compared(job).out().replaceAll("\\s+", " "))
                .contains("chain saw on a slabbing guide at every volume up to 100 times this one.");
        assertThat(job.run().out().replaceAll("\\s+", " "))
                .containsPattern(
                        "the cheapest by volume: [^.]*then this saw \\(graded\\) beyond, up to 100 times this volume\\.");
    }

    @Test
    void resaleThatNobodyGaveMakesTheOutlayNoMoreThanIsSaid() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(OTHER, "money.resale = 2600\n", "");
        Path out = folder.resolve("out");
        Run run = compared(job, "--out", out.toString());
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains(
                        "the cheapest by volume",
                        "small band mill: not given: resale at the end of its life (money.resale). That income is not"
                                + " counted");
        String[] band = row(out.resolve("saws-money.csv"), "small band mill, counted");
        assertThat(band[2]).isEqualTo("no more than");
        assertThat(number(band, 3)).isEqualTo(5550);
        job.with(OTHER, "money.other-outlay = 350\n", "");
        compared(job, "--out", out.toString(), "--replace");
        assertThat(row(out.resolve("saws-money.csv"), "small band mill, counted")[2])
                .isEqualTo("more or less than");
    }

    @Test
    void badSawFilesAreRefusedByName() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        assertThat(compared(job, "--saw", "nowhere.properties").err()).contains("nowhere.properties", "not there");
        Path own = Files.writeString(folder.resolve("own.properties"), job.text("job.properties"));
        assertThat(compared(job, "--saw", own.toString()).err())
                .as("keys that are not a saw's")
                .contains("own.properties", "money.wage", "finish.planing");
        Path same = Files.writeString(
                folder.resolve("same.properties"),
                job.text(OTHER).replace("small band mill", "chain saw on a slabbing guide"));
        assertThat(compared(job, "--saw", same.toString()).err()).contains("saw.name", "give another saw.name");
        Path wide = Files.writeString(
                folder.resolve("wide.properties"), job.text(OTHER).replace("saw.kerf = 1/16 in", "saw.kerf = 45 mm"));
        job.with("wanted.csv", "stud,2x4", "stud,1x4");
        assertThat(compared(job, "--saw", wide.toString()).err())
                .as("a kerf wider than a board")
                .contains("wide.properties", "saw.kerf", "45 mm", "stud");
        assertThat(compared(job.without(OTHER)).err()).contains("--saw FILE");
        assertThat(compared(job, "--replace").code()).isEqualTo(Main.INPUT);
    }

    @Test
    void aSawTooNarrowForEveryLogIsRefusedWithItsFileAndKey() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Path narrow = Files.writeString(
                folder.resolve("narrow.properties"),
                job.text(OTHER).replace("saw.width-of-cut = 26 in", "saw.width-of-cut = 2 in"));
        Run run = compared(job, "--saw", narrow.toString());
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err())
                .contains("saw.width-of-cut in " + narrow, "of small band mill")
                .doesNotContain("left out,");
        Path third = Files.writeString(
                folder.resolve("third.properties"), job.text(OTHER).replace("small band mill", "third saw"));
        Run three = compared(job, "--saw", narrow.toString(), "--saw", third.toString());
        assertThat(three.code()).as("two are left to compare").isZero();
        assertThat(three.err()).contains("left out, small band mill: it can saw none of the logs", narrow.toString());
        assertThat(three.out()).contains("third saw beside", "Left out: small band mill");
    }

    /** Rounded up to a step of the layout, 50 mm would be more than a kerf can be. */
    @Test
    void anotherSawThatCannotBePlannedIsLeftOutWithItsFile() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        String widest = job.text(OTHER).replace("saw.kerf = 1/16 in", "saw.kerf = 50 mm");
        Path wide = Files.writeString(folder.resolve("wide.properties"), widest);
        Path third = Files.writeString(
                folder.resolve("third.properties"), job.text(OTHER).replace("small band mill", "third saw"));
        Run three = compared(job, "--saw", wide.toString(), "--saw", third.toString());
        assertThat(three.code()).as("two are left to compare").isZero();
        assertThat(three.err())
                .contains("left out, small band mill, of " + wide + ": it cannot be planned; kerf is 50 mm");
        assertThat(three.out()).contains("third saw beside", "Left out: small band mill");
        Run two = compared(job, "--saw", wide.toString());
        assertThat(two.code()).isEqualTo(Main.INPUT);
        assertThat(two.err())
                .contains("small band mill, of " + wide + ": it cannot be planned; kerf is 50 mm")
                .doesNotContain("left out,");
        Path wider =
                Files.writeString(folder.resolve("wider.properties"), widest.replace("small band mill", "wider saw"));
        Run noneLeft = compared(job, "--saw", wide.toString(), "--saw", wider.toString());
        assertThat(noneLeft.code()).isEqualTo(Main.INPUT);
        assertThat(noneLeft.out()).isEmpty();
        assertThat(noneLeft.err())
                .contains("left out, small band mill, of " + wide, "wider saw, of " + wider + ": it cannot be planned");
    }

    @Test
    void aKerfOfTheJobsOwnSawThatCannotBeLaidOutIsRefusedWhereItIsRead() {
        EditedDemo job =
                EditedDemo.small(folder.resolve("job")).with("job.properties", "saw.kerf = 3/8 in", "saw.kerf = 50 mm");
        Run run = job.run("--check");
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err()).contains("job.properties, line ", "saw.kerf: '50 mm'", "rounded up to whole steps");
    }

    @Test
    void whatIsWrongWithTheOtherSawIsToldWhenTheJobIsRead() {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(OTHER, "saw.kind = band", "saw.kind = bnd");
        Run run = job.run("--check");
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err()).contains(OTHER, "saw.kind", "band");
    }
}
