package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan says of moving its logs, and what it leaves out by name. */
class MovingLogsTest {

    private static final String JOB = "job.properties";

    @TempDir
    Path folder;

    private List<String[]> rows(String file) throws IOException {
        return Files.readAllLines(folder.resolve("out").resolve(file)).stream()
                .skip(1)
                .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .toList();
    }

    private Run plan(EditedDemo job) {
        return job.run("--out", folder.resolve("out").toString());
    }

    @Test
    void theLiftsOfTheTwoEndsBearTheLog() throws IOException {
        assertThat(plan(EditedDemo.small(folder.resolve("job"))).code()).isZero();
        List<String[]> weights = rows("plan-weights.csv");
        List<String[]> moving = rows("plan-moving.csv");
        assertThat(moving).hasSameSizeAs(weights);
        for (int i = 0; i < moving.size(); i++) {
            double whole = Double.parseDouble(moving.get(i)[1]);
            assertThat(whole).isEqualTo(Double.parseDouble(weights.get(i)[2]));
            double small = Double.parseDouble(moving.get(i)[4]);
            double large = Double.parseDouble(moving.get(i)[5]);
            assertThat(small + large).isBetween(whole - 0.21, whole + 0.21);
            assertThat(large).isGreaterThan(small);
            assertThat(Double.parseDouble(moving.get(i)[2])).isBetween(whole * 0.45, whole / 2);
            assertThat(Double.parseDouble(moving.get(i)[3])).isBetween(0.1, whole / 2);
            assertThat(Double.parseDouble(moving.get(i)[7])).isBetween(whole * 0.7, whole * 0.8);
        }
        assertThat(rows("plan-hauling.csv")).hasSize(2);
        assertThat(Files.readString(folder.resolve("out/plan.html")))
                .contains("Moving logs", "parbuckle", "How lifts, pulls and trips come about");
    }

    @Test
    void whatIsNotGivenIsNamedAndHasNoFigure() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.skid-angle = 20 deg\n", "")
                .with(JOB, "work.drag-friction = 0.6\n", "")
                .with(JOB, "work.places = 3\n", "");
        Run run = Run.of(job.folder().toString());
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Rolling up skids: left out. Not given: slope of the skids", "(work.skid-angle)")
                .contains(
                        "Dragging along a slope: left out. Not given: friction of a dragged log",
                        "(work.drag-friction)")
                .contains("saw to the logs: left out. Not given: places where the logs lie (work.places)");
        assertThat(plan(job).code()).isZero();
        assertThat(rows("plan-moving.csv")).allSatisfy(row -> {
            assertThat(row[6]).isEmpty();
            assertThat(row[7]).isEmpty();
        });
        assertThat(folder.resolve("out/plan-hauling.csv")).doesNotExist();
    }

    @Test
    void aMissingTripPriceLeavesTheMoneyOut() throws IOException {
        assertThat(plan(EditedDemo.small(folder.resolve("job")).with(JOB, "money.trip-price = 2.50", ""))
                        .code())
                .isZero();
        assertThat(rows("plan-hauling.csv")).hasSize(2).allSatisfy(row -> {
            assertThat(Double.parseDouble(row[2])).isPositive();
            assertThat(row[3]).isEmpty();
        });
    }

    @Test
    void aLogHeavierThanATripStaysAndIsNamed() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.load-limit = 1200 lb", "work.load-limit = 60 kg");
        assertThat(Run.of(job.folder().toString()).out().replaceAll("\\s+", " "))
                .containsPattern(
                        "Logs to the saw: left out. A trip carries up to 132 lb \\(work.load-limit\\); log \\S+ weighs \\d+ lb")
                .contains("Buck shorter");
        assertThat(plan(job).code()).isZero();
        assertThat(rows("plan-hauling.csv")).hasSize(1);
    }

    @Test
    void aLoadBelowAPersonsIsRefusedAndTheLeastPlans() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.load-limit = 1200 lb", "work.load-limit = 0.001 kg");
        Run run = Run.of(job.folder().toString());
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err()).contains("work.load-limit", "20 to 100000 kg", "leave the line out");
        EditedDemo least = EditedDemo.small(folder.resolve("least"))
                .with(JOB, "work.load-limit = 1200 lb", "work.load-limit = 20 kg")
                .with(JOB, "work.kit-weight = 90 lb", "work.kit-weight = 100000 kg")
                .with(JOB, "work.places = 3", "work.places = 10000");
        assertThat(plan(least).code()).isZero();
        assertThat(rows("plan-hauling.csv")).hasSize(1);
    }

    @Test
    void valuesOutsideNameKeyLimitsAndUnits() {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.skid-angle = 20 deg", "work.skid-angle = 70 deg")
                .with(JOB, "work.load-limit = 1200 lb", "work.load-limit = 1200")
                .with(JOB, "work.drag-slope = 8 deg", "work.drag-slope = -61 deg");
        Run run = Run.of(job.folder().toString());
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err())
                .contains("work.skid-angle", "0 to 60")
                .contains("work.load-limit", "add the unit", "lb")
                .contains("work.drag-slope", "-60 to 60");
    }
}
