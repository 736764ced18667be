package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.log.HeartRot;
import org.woodyield.log.Log;
import org.woodyield.measure.Length;

/** Rot, pith and profile go from the tables into the log, and the plan saws beside the rot. */
class MeasuredJobTest {

    @TempDir
    Path folder;

    private EditedDemo job() {
        return EditedDemo.small(folder.resolve("job"))
                .write("logs.csv", """
                        id,species,length,small-end,measured,bark,large-end,rot,rot-to,pith-offset,pith-direction
                        A,eastern white pine,8 ft 4 in,12 in,over bark,1/2 in,,2 in,50 in,1/2 in,90 degrees
                        B,white oak,8 ft 4 in,8 in,inside bark,1/2 in,9 in,,,,
                        """.getBytes(StandardCharsets.UTF_8))
                .write("profiles.csv", """
                        id,distance,diameter
                        A,0 in,12 in
                        A,7 ft,12 1/2 in
                        A,8 ft 4 in,16 in
                        """.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theTablesMakeTheLog() throws IOException {
        Log log = JobReader.read(new JobFiles.Folder(job().folder())).logs().get(0);
        assertThat(log.profile()).hasSize(3);
        assertThat(log.profile().get(1).diameter()).isEqualTo(Length.parse("11 1/2 in"));
        assertThat(log.largeEndMean()).isEqualTo(Length.inches(15));
        assertThat(log.rot()).isEqualTo(new HeartRot(Length.inches(2), Length.ZERO, Length.inches(50)));
        assertThat(log.pith().offset()).isEqualTo(Length.inches(1, 2));
        assertThat(log.pith().directionDegrees()).isEqualTo(90);
    }

    @Test
    void theBalanceOfThePlanNamesTheRot() {
        Run run = job().run();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .containsPattern("(?m)^ +rot +[0-9]")
                .containsPattern("Pieces\\s+lie\\s+beside\\s+the\\s+rot");
    }
}
