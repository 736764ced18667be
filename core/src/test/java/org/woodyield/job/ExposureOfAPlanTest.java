package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.work.NoiseLimit;

/** What a plan says of noise, vibration and exhaust. */
class ExposureOfAPlanTest {

    private static final String JOB = "job.properties";

    @TempDir
    Path folder;

    private List<String[]> table(EditedDemo job, String file) throws IOException {
        Path out = folder.resolve("out");
        assertThat(job.run("--out", out.toString()).code()).isZero();
        return Files.readAllLines(out.resolve(file)).stream()
                .skip(1)
                .map(line -> line.split(",", 8))
                .toList();
    }

    @Test
    void theHoursAreThoseOfTheDayInWhichTheEngineRunsLongest() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        List<String[]> exposure = table(job, "plan-exposure.csv");
        double longest = 0;
        for (String line : Files.readAllLines(folder.resolve("out/plan-days.csv")).stream()
                .skip(1)
                .toList()) {
            String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            longest = Math.max(longest, Double.parseDouble(cells[3]) + Double.parseDouble(cells[4]));
        }
        assertThat(exposure).extracting(row -> row[0]).containsExactly("\"noise", "\"noise", "vibration");
        double hours = Double.parseDouble(exposure.get(2)[3]);
        assertThat(hours * 60).isCloseTo(longest, within(0.02));
        double level = 5.5;
        assertThat(Double.parseDouble(exposure.get(2)[4])).isCloseTo(level * Math.sqrt(hours / 8), within(1e-3));
        // The name holds a comma, so its cells lie one further on.
        assertThat(Double.parseDouble(exposure.get(0)[5]))
                .isCloseTo(NoiseLimit.NIOSH.dosePercent(108, hours), within(0.5));
    }

    @Test
    void aLevelThatNeverFillsADaySaysSo() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.sound-level = 108 dB(A)", "work.sound-level = 75 dB(A)");
        assertThat(table(job, "plan-exposure.csv").get(0)[7])
                .contains("100 % is not reached within a day, without ear protection");
    }

    @Test
    void aMeasuredMonoxideGivesItsMean() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.vibration = 5.5 m/s2", "work.carbon-monoxide = 40 ppm");
        List<String[]> exposure = table(job, "plan-exposure.csv");
        String[] monoxide = exposure.get(2);
        assertThat(monoxide[0]).isEqualTo("carbon monoxide");
        assertThat(Double.parseDouble(monoxide[4])).isCloseTo(40 * Double.parseDouble(monoxide[3]) / 8, within(1e-3));
    }

    @Test
    void whatIsNotGivenIsNamedAndTheCautionStays() {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.sound-level = 108 dB(A)\n", "")
                .with(JOB, "work.vibration = 5.5 m/s2\n", "");
        Run run = Run.of(job.folder().toString());
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Noise: left out, no sound level at the ear")
                .contains("Vibration: left out, no vibration total value")
                .contains("Carbon monoxide: no measured value is given")
                .contains("nothing here says that a level is safe")
                .doesNotContain("of a day's dose");
    }

    @Test
    void aRangeOfALevelGivesAnInterval() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.sound-level = 108 dB(A)", "work.sound-level = 102 to 108 dB(A)")
                .with(JOB, "work.vibration = 5.5 m/s2", "work.vibration = 5.5 m/s2 (4 to 7 m/s2)");
        List<String[]> exposure = table(job, "plan-exposure.csv");
        double hours = Double.parseDouble(exposure.get(2)[3]);
        assertThat(exposure.get(0)[2]).isEqualTo("105.00");
        assertThat(exposure.get(0)[7])
                .contains("102 to 108 dB(A): " + Math.round(NoiseLimit.NIOSH.dosePercent(102, hours)) + " %")
                .contains(" to " + Math.round(NoiseLimit.NIOSH.dosePercent(108, hours)) + " %");
        assertThat(exposure.get(2)[7]).contains("4 to 7 m/s2: A(8) ");
    }

    @Test
    void levelsOutsideAreRefusedWithTheirLimits() {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "work.sound-level = 108 dB(A)", "work.sound-level = 30 dB(A)")
                .with(JOB, "work.vibration = 5.5 m/s2", "work.vibration = 5.5");
        Run run = Run.of(job.folder().toString());
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err())
                .contains("work.sound-level", "40 to 140")
                .contains("work.vibration", "add the unit", "m/s2");
    }
}
