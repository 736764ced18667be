package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.plan.JobInput;
import org.woodyield.work.InputValue;
import org.woodyield.work.WorkInput;

class TimedCutsTest {

    private static final String HEADER = "id,wood,width,length,time\n";

    @TempDir
    Path folder;

    private JobInput read(String rows) throws IOException {
        EditedDemo demo = EditedDemo.in(folder.resolve("job")).with("timed-cuts.csv", HEADER, HEADER + rows);
        return JobReader.read(new JobFiles.Folder(demo.folder()));
    }

    @Test
    void threeCutsTakeThePlaceOfTheDefault() throws IOException {
        JobInput job = read("""
                a,white oak,14 in,8 ft 6 in,5.5 min
                b,white oak,16 in,8 ft 6 in,7 min
                c,hardwood,18 in,8 ft,400 s
                d,white oak,4 in,8 ft,20 s
                """);
        InputValue energy = job.work().find(WorkInput.ENERGY_HARDWOOD).orElseThrow();
        assertThat(energy.source().id()).isEqualTo("timed-cuts");
        assertThat(energy.hasSpread()).isTrue();
        assertThat(job.work()
                        .find(WorkInput.ENERGY_SOFTWOOD)
                        .orElseThrow()
                        .source()
                        .id())
                .isEqualTo("saws-memory");
        assertThat(job.assumptions()).anySatisfy(one -> assertThat(one.taken()).contains("3 cuts", "held: d"));
    }

    @Test
    void fewerThanThreeCutsAreNotUsedAndSaidSo() throws IOException {
        JobInput job = read("a,white oak,14 in,8 ft 6 in,5.5 min\nb,white oak,13 in,8 ft 6 in,5 min\n");
        assertThat(job.work()
                        .find(WorkInput.ENERGY_HARDWOOD)
                        .orElseThrow()
                        .source()
                        .id())
                .isEqualTo("saws-memory");
        assertThat(job.assumptions()).anySatisfy(one -> {
            assertThat(one.what()).isEqualTo("timed cuts in hardwood");
            assertThat(one.taken()).contains("not used: 2 cuts", "fewer than 3");
        });
    }

    @Test
    void anyWoodIsRefused() {
        assertThatThrownBy(() -> read("a,any,14 in,8 ft 6 in,5.5 min\n"))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("timed-cuts.csv");
    }
}
