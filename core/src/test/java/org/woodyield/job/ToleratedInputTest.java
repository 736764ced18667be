package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Length;
import org.woodyield.plan.JobInput;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/** What editors and spreadsheets do to a file is no fault of its author. */
class ToleratedInputTest {

    @TempDir
    Path folder;

    private EditedDemo demo;

    @BeforeEach
    void copyTheDemo() {
        demo = EditedDemo.in(folder.resolve("job"));
    }

    private static JobInput read(JobFiles files) {
        try {
            return JobReader.read(files);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void expectTheDemo() {
        SameJob.assertSame(read(new JobFiles.Folder(demo.folder())), read(new JobFiles.Demo()));
    }

    @Test
    void lineEndsOfWindows() {
        for (String file : JobFile.names()) {
            demo.write(file, demo.text(file).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
        }
        expectTheDemo();
    }

    @Test
    void aByteOrderMark() {
        for (String file : JobFile.names()) {
            demo.write(file, ("\ufeff" + demo.text(file)).getBytes(StandardCharsets.UTF_8));
        }
        expectTheDemo();
    }

    @Test
    void quotedCells() {
        demo.with("logs.csv", "P1,eastern white pine,12 ft 6 in", "\"P1\", \"Pine, eastern white\" ,\"12 ft 6 in\"");
        expectTheDemo();
    }

    @Test
    void aNameWithACommaAndAQuote() {
        demo.with("logs.csv", "P1,eastern", "\"the big one, \"\"P1\"\"\",eastern");
        assertThat(read(new JobFiles.Folder(demo.folder())).logs().get(0).id()).isEqualTo("the big one, \"P1\"");
    }

    @Test
    void capitalsAndSpacesInTheHeader() {
        demo.with("logs.csv", "id,species,length,small-end,", "ID, Species ,LENGTH,Small-End,");
        expectTheDemo();
    }

    @Test
    void blankRowsAtTheEnd() {
        demo.write("logs.csv", (demo.text("logs.csv") + ",,,,,,,,,,,\n\n").getBytes(StandardCharsets.UTF_8));
        expectTheDemo();
    }

    @Test
    void aTableWithoutItsOptionalColumns() {
        String table = "id,species,length,small-end,measured,large-end\nA,white oak,10 ft,12 in,inside bark,13 in\n";
        demo.write("logs.csv", table.getBytes(StandardCharsets.UTF_8))
                .write(
                        "wanted.csv",
                        "id,size,length,quantity,wood,surface,moisture\nx,4x4,8 ft,1,any,rough,19 %\n"
                                .getBytes(StandardCharsets.UTF_8))
                .without("areas.csv")
                .without("prices.csv");
        JobInput job = read(new JobFiles.Folder(demo.folder()));
        assertThat(job.prices()).isEmpty();
        assertThat(job.logs().get(0).sweep()).isEqualTo(Length.ZERO);
        assertThat(job.assumptions())
                .anySatisfy(taken -> assertThat(taken.what()).isEqualTo("bark of log A"));
    }

    @Test
    void diametersOverBarkLoseTheBark() {
        JobInput job = read(new JobFiles.Demo());
        var hemlock = job.logs().stream()
                .filter(log -> log.id().equals("H1"))
                .findFirst()
                .orElseThrow();
        assertThat(hemlock.smallEndLong()).isEqualTo(Length.parse("13 in"));
        assertThat(hemlock.smallEndShort()).isEqualTo(Length.parse("12 3/4 in"));
        assertThat(hemlock.largeEndMean()).isEqualTo(Length.parse("16 1/4 in"));
    }

    @Test
    void aTaperGivesTheLargeEnd() {
        JobInput job = read(new JobFiles.Demo());
        var log = job.logs().stream()
                .filter(one -> one.id().equals("P3"))
                .findFirst()
                .orElseThrow();
        // 13 7/8 in in the mean, and 1/8 in for each of 12 1/3 ft.
        assertThat(log.largeEndMean().toInches()).isCloseTo(13.875 + 37.0 / 24, within(1e-6));
    }

    @Test
    void rangesAndStandardUncertainties() {
        demo.with("job.properties", "work.warm-up = 45 s", "work.warm-up = 45 s (30 s to 2 min)")
                .with("job.properties", "work.utilisation = 70 %", "work.utilisation = 70 % ± 5 %");
        WorkInputs work = read(new JobFiles.Folder(demo.folder())).work();
        assertThat(work.find(WorkInput.WARM_UP).orElseThrow().spread())
                .isEqualTo(new Distribution.Triangular(0.5, 0.75, 2));
        assertThat(work.find(WorkInput.UTILISATION).orElseThrow().spread())
                .isEqualTo(new Distribution.Normal(0.7, 0.05));
    }

    @Test
    void rangesOfUnitsWithBracketsAndRangesWithoutALikeliestValue() {
        demo.with(
                        "job.properties",
                        "work.sound-level = 108 dB(A)",
                        "work.sound-level = 105 dB(A) (102 dB(A) to 108 dB(A))")
                .with("job.properties", "work.warm-up = 45 s", "work.warm-up = 30 to 60 s")
                .with("job.properties", "work.utilisation = 70 %", "work.utilisation = 60 % to 80 %")
                .with("job.properties", "money.fuel-price = 1.10 per L", "money.fuel-price = 1 to 2 per L")
                .with("job.properties", "money.wage = 14 per h", "money.wage = 14 per h (10 to 20 per h)");
        WorkInputs work = read(new JobFiles.Folder(demo.folder())).work();
        assertThat(work.find(WorkInput.SOUND_LEVEL).orElseThrow().spread())
                .isEqualTo(new Distribution.Triangular(102, 105, 108));
        assertThat(work.find(WorkInput.WARM_UP).orElseThrow().spread()).isEqualTo(new Distribution.Rectangular(0.5, 1));
        assertThat(work.get(WorkInput.WARM_UP)).isEqualTo(0.75);
        assertThat(work.find(WorkInput.UTILISATION).orElseThrow().spread())
                .isEqualTo(new Distribution.Rectangular(0.6, 0.8));
        assertThat(work.find(WorkInput.FUEL_PRICE).orElseThrow().spread())
                .isEqualTo(new Distribution.Rectangular(1, 2));
        assertThat(work.find(WorkInput.WAGE).orElseThrow().spread()).isEqualTo(new Distribution.Triangular(10, 14, 20));
    }
}
