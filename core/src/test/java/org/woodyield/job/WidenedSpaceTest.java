package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.Planner;
import org.woodyield.plan.WhatIf;

/** Whoever allows more patterns gets no poorer a plan, by the measure by which the plan was chosen. */
class WidenedSpaceTest {

    private static final String GRID = "pattern.grid = 1/8 in";
    private static final String TURNS = "pattern.turns = 0 deg";
    private static final String WANTED = """
            id,size,length,quantity,wood,surface,moisture
            stud,2x4,8 ft,12,softwood,dressed dry,15 %
            joist,2x6,8 ft,4,softwood,dressed dry,15 %
            board,1x6,8 ft,8,softwood,dressed dry,15 %
            shelf,1x4,6 ft,6,softwood,dressed dry,15 %
            """;

    @TempDir
    Path folder;

    private JobPlan plan(String name, long seed, String turns, String lines) throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve(name))
                .without("other-saw.properties")
                .write("logs.csv", logs(seed).getBytes(StandardCharsets.UTF_8))
                .write("wanted.csv", WANTED.getBytes(StandardCharsets.UTF_8));
        return plan(job, turns, lines);
    }

    private static JobPlan plan(EditedDemo job, String turns, String lines) throws IOException {
        job.with("job.properties", TURNS, "pattern.turns = " + turns).with("job.properties", GRID, GRID + "\n" + lines);
        return Planner.plan(JobReader.read(new JobFiles.Folder(job.folder())));
    }

    /** Three to five pines of 8 to 12 in, some swept. */
    private static String logs(long seed) {
        Random random = new Random(seed);
        StringBuilder logs =
                new StringBuilder("id,species,length,small-end,measured,large-end,sweep,sweep-direction\n");
        int count = 3 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            int small = 8 + random.nextInt(5);
            int large = small + random.nextInt(4);
            int feet = 8 + 2 * random.nextInt(3);
            int sweep = random.nextInt(3);
            int direction = 90 * random.nextInt(4);
            logs.append("L" + i + ",eastern white pine," + feet + " ft 4 in," + small + " in,inside bark," + large
                    + " in," + sweep + " in," + direction + " deg\n");
        }
        return logs.toString();
    }

    private static void isNoPoorer(JobPlan more, JobPlan less, int searches) {
        assertThat(more.choice().worth()).isGreaterThanOrEqualTo(less.choice().worth() - 1e-6);
        assertThat(more.choice().worth()).isLessThanOrEqualTo(more.choice().bound() + 1e-6);
        assertThat(more.choice().searches()).isEqualTo(searches);
    }

    /** In each of these, a search of the wider space alone leads to a choice that is poorer by 0.6 to 5 %. */
    @ParameterizedTest
    @CsvSource({
        "21, 0 deg, '', 0 deg, pattern.frames = axis; bark above, 2",
        "32, 0 deg, '', 0 deg, pattern.trim-start = 1 ft, 2",
        "19, 0 deg, '', 0 deg; 90 deg, '', 2",
        "5, 0 deg, pattern.frames = axis; bark above, 0 deg, pattern.frames = axis; bark above; bark below, 3",
        "6, 0 deg, pattern.frames = bark above, 0 deg, pattern.frames = bark above; axis, 3",
        "18, 0 deg, pattern.frames = bark above, 0 deg, pattern.frames = bark above; axis, 3"
    })
    void moreAllowedIsNoPoorer(long seed, String turns, String lines, String moreTurns, String moreLines, int searches)
            throws IOException {
        isNoPoorer(plan("more", seed, moreTurns, moreLines), plan("less", seed, turns, lines), searches);
    }

    /** Here too a search of all alone is poorer than with the turns only. */
    @Test
    void twoThingsMoreAreNoPoorerThanEitherAlone() throws IOException {
        String frames = "pattern.frames = bark below; axis";
        JobPlan both = plan("both", 5, "90 deg; 0 deg", frames);
        isNoPoorer(both, plan("turns", 5, "90 deg; 0 deg", ""), 9);
        isNoPoorer(both, plan("frames", 5, "0 deg", frames), 9);
    }

    /** A log that is sawn by a pattern from a search of less says so, and asks what if in that space. */
    @Test
    void theDemonstrationIsNoPoorerForAnotherTurnAndSaysHowItWasSought() throws IOException {
        EditedDemo job = EditedDemo.in(folder.resolve("demo")).without("other-saw.properties");
        JobPlan more = plan(job, "0 deg; 90 deg", "");
        isNoPoorer(more, Planner.plan(JobReader.read(new JobFiles.Demo())), 2);
        List<LogPlan> lesser = more.logs().stream()
                .filter(log -> log.sawing().isPresent()
                        && !log.space().equals(more.choice().space()))
                .toList();
        assertThat(lesser).isNotEmpty();
        String text = job.run().out().replaceAll("\\s+", " ");
        assertThat(text)
                .contains(
                        "It is the best found by 2 searches: one of all patterns that the job allows, the others of less",
                        " sawn by a pattern from a search of less.",
                        "That is less than the job allows: this pattern was found in a search of less, and goes");
        for (LogPlan log : lesser) {
            assertThat(log.space().turnsDegrees()).containsExactly(0.0);
            assertThat(WhatIf.of(more, log.log().id()).sensitivity().base().objective())
                    .isEqualTo(log.sawing().orElseThrow().proof().objective());
        }
    }

    @Test
    void theCheckTellsHowManySearchesAPlanTakes() {
        EditedDemo job = EditedDemo.small(folder.resolve("small"))
                .with("job.properties", TURNS, "pattern.turns = 0 deg; 45 deg; 90 deg")
                .with("job.properties", GRID, GRID + "\npattern.over-thick = 1/4 in");
        assertThat(job.run("--check").out())
                .contains(" it is planned by 6 searches, 1 of all patterns that the job allows and 5 of less\n");
    }

    @Test
    void whereNothingMoreIsAllowedThereIsOneSearchAndNoWordOfOthers() {
        EditedDemo job = EditedDemo.small(folder.resolve("small"));
        assertThat(job.run("--check").out()).doesNotContain("searches");
        assertThat(job.run().out()).doesNotContain("searches", "search of less", "times, once with all");
    }
}
