package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.Planner;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.Verifier;
import org.woodyield.sawing.Wane;

/** Wane from the table of what is wanted to the drawing. */
class WaneOfAJobTest {

    private static final String STUD = "stud,2x4,8 ft,9,softwood,dressed dry,15 %";
    private static final String POST = "post,4x4,8 ft,1,white oak,rough,19 %";

    @TempDir
    Path folder;

    private EditedDemo job(String ofStuds, String ofPosts) {
        return EditedDemo.small(folder.resolve("job"))
                .with("wanted.csv", "surface,moisture", "surface,moisture,wane")
                .with("wanted.csv", STUD, STUD + "," + ofStuds)
                .with("wanted.csv", POST, POST + "," + ofPosts);
    }

    private JobPlan plan(String ofStuds, String ofPosts) throws IOException {
        JobInput input =
                JobReader.read(new JobFiles.Folder(job(ofStuds, ofPosts).folder()));
        return Planner.plan(input);
    }

    @Test
    void wanedStudsAreMoreAndTheVerifierHoldsThemToTheirLimit() throws IOException {
        JobPlan square = plan("none", "");
        JobPlan waned = plan("utility", "25 %");
        assertThat(waned.supply().get(0).sawn())
                .isGreaterThan(square.supply().get(0).sawn());
        assertThat(waned.supply().get(0).label()).endsWith("wane up to Utility [MEMORY]");
        assertThat(waned.supply().get(1).label()).endsWith("wane up to 25 %");
        assertThat(waned.notes())
                .anySatisfy(note -> assertThat(note.text()).contains("Utility", "not graded"))
                .anySatisfy(note -> assertThat(note.text()).contains("25 % of the finished thickness"));
        SawingPlan log = waned.logs().get(0).sawing().orElseThrow();
        assertThat(Verifier.verify(log)).isEmpty();
        PieceOption stud = log.options().stream()
                .filter(option -> option.id().equals("stud"))
                .findFirst()
                .orElseThrow();
        // A half of the finished 1 1/2 in by 3 1/2 in, seen on the green size.
        assertThat(stud.wane().thicknessShare() * stud.thickness().toInches()).isCloseTo(0.75, within(1e-9));
        assertThat(stud.wane().widthShare() * stud.leastWidth().toInches()).isCloseTo(1.75, within(1e-9));
        assertThat(square.logs().get(0).sawing().orElseThrow().options())
                .allSatisfy(option -> assertThat(option.wane()).isEqualTo(Wane.NONE));
    }

    @Test
    void missingCornersAreDrawnAsMissing() throws IOException {
        Path out = folder.resolve("plan");
        job("Utility", "none").run("--out", out.toString());
        assertThat(Files.readString(out.resolve("plan.html"))).contains("-wane1-0", "A missing corner is wane.");
    }

    @Test
    void aSizeThatOnlyFitsWithWaneIsRefusedWithout() {
        EditedDemo small = job("none", "").with("wanted.csv", "post,4x4", "post,6 in x 6 in");
        Run refused = small.run("--check");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("'6 in x 6 in' is not accepted", "wane left out");
        small.with("wanted.csv", "rough,19 %,", "rough,19 %,30 %");
        assertThat(small.run("--check").code()).isZero();
    }

    @Test
    void whatIsNoWaneIsRefused() {
        refused("No.7", "none, a share from 0 % to 50 %, or the limit of a grade: Select Structural");
        refused("60 %", "0 to 50");
        refused("1/4", "none, a share from 0 % to 50 %");
        assertThat(job("Stud", "0 %").run("--check").code()).isZero();
    }

    private void refused(String cell, String allowed) {
        Run run = job(cell, "").run("--check");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("wane: '" + cell + "' is not accepted", allowed);
    }
}
