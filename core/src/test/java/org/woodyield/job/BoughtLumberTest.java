package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.Planner;
import org.woodyield.plan.WhatIf;

/** What a log's lumber would cost bought is money of the reader; what it counts in the choice of its cuts is none. */
class BoughtLumberTest {

    /** A 2x4 of 8 ft holds 5 1/3 bf at 0.78, a 4x4 of 8 ft 10 2/3 bf at 2.60. */
    private static final double STUD = 16 / 3.0 * 0.78;

    private static final double POST = 32 / 3.0 * 2.60;

    @TempDir
    Path folder;

    private EditedDemo job;

    @BeforeEach
    void twoLogs() {
        job = EditedDemo.small(folder.resolve("job")).without("other-saw.properties");
    }

    private String planned(String... more) {
        Run run = job.run(more);
        assertThat(run.err()).isEmpty();
        return run.out().replaceAll("\\s+", " ");
    }

    private static long pieces(LogPlan log, String id) {
        return log.sawing().stream()
                .flatMap(sawing -> sawing.pieces().stream())
                .filter(piece -> piece.optionId().equals(id))
                .count();
    }

    @Test
    void eachLogsLumberIsPricedInFullAndItsPointsAreNoMoney() throws IOException {
        JobPlan plan = Planner.plan(JobReader.read(new JobFiles.Folder(job.folder())));
        String text = planned();
        for (LogPlan log : plan.logs()) {
            double bought = pieces(log, "stud") * STUD + pieces(log, "post") * POST;
            assertThat(bought).isPositive();
            assertThat(log.bought().orElseThrow()).isCloseTo(bought, within(1e-9));
            assertThat(text)
                    .contains(String.format(
                            Locale.ROOT,
                            "Bought, its lumber would cost %.2f USD before what drying loses. In the choice of its cuts it"
                                    + " counts %.2f points; proven",
                            bought,
                            log.sawing().orElseThrow().proof().objective()));
        }
        assertThat(text)
                .contains("Points, below with each log, are the measure by which its cuts were chosen, and no money.")
                .containsPattern("no pattern could count more than [\\d.]+ points: the grid costs");
    }

    @Test
    void whatIfTellsTheSameAndEachChangeByItsOwnPieces() throws IOException {
        JobPlan plan = Planner.plan(JobReader.read(new JobFiles.Folder(job.folder())));
        WhatIf asked = WhatIf.of(plan, "A");
        assertThat(asked.bought()).hasSize(1 + asked.sensitivity().changed().size());
        assertThat(asked.bought().get(0)).isCloseTo(plan.logs().get(0).bought().orElseThrow(), within(1e-9));
        for (int i = 0; i < asked.sensitivity().changed().size(); i++) {
            assertThat(asked.bought().get(i + 1))
                    .isCloseTo(asked.sensitivity().changed().get(i).pieces() * STUD, within(1e-9));
        }
        assertThat(planned("--what-if", "A")).contains("Lumber bought is what this lumber would cost in full");
    }

    @Test
    void withoutAPriceNothingIsSaidToCostAnythingBought() {
        job.without("prices.csv");
        assertThat(planned("--what-if", "A"))
                .contains("A piece counts a point for each board foot", "what is needed counts its board feet")
                .doesNotContain("Bought, its lumber", "Lumber bought");
    }
}
