package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How a job says how its logs may lie and where trims may start, and what the plan then says. */
class FramesOfAJobTest {

    private static final String GRID = "pattern.grid = 1/8 in";
    private static final Pattern WORTH = Pattern.compile("In the choice of its cuts it counts ([0-9.]+) points");

    @TempDir
    Path folder;

    private EditedDemo job;

    /** A straight cone of 12 to 16 in inside bark, in which boards shorter than the log are wanted too. */
    @BeforeEach
    void aTaperedLog() {
        job = EditedDemo.small(folder.resolve("job"));
        job.write("logs.csv", """
                id,species,length,small-end,measured,large-end
                A,eastern white pine,12 ft 4 in,12 in,inside bark,16 in
                """.getBytes(StandardCharsets.UTF_8));
        job.write("wanted.csv", """
                id,size,length,quantity,wood,surface,moisture
                stud,2x4,12 ft,30,softwood,dressed dry,15 %
                board,1x4,8 ft,60,softwood,dressed dry,15 %
                """.getBytes(StandardCharsets.UTF_8));
    }

    private EditedDemo with(String lines) {
        return job.with("job.properties", GRID, GRID + "\n" + lines);
    }

    private String planned() {
        Run run = job.run();
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        return run.out().replaceAll("\\s+", " ");
    }

    private static double worth(String plan) {
        Matcher matcher = WORTH.matcher(plan);
        assertThat(matcher.find()).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    private void refused(String frames, String... parts) {
        job = EditedDemo.small(folder.resolve("job"));
        Run run = with("pattern.frames = " + frames).run("--check");
        assertThat(run.err()).hasLineCount(1).contains("pattern.frames: ").contains(parts);
        assertThat(run.code()).isEqualTo(2);
    }

    @Test
    void withoutTheKeysItIsTheAxisAndTheTwoEnds() {
        String plan = planned();
        assertThat(plan)
                .contains("the log lies parallel to the axis", "frames: parallel to the axis;")
                .contains("starting at the small end or so as to end at the large end");
        with("pattern.frames = axis");
        assertThat(planned()).isEqualTo(plan);
    }

    /**
     * On level supports the axis of a cone of 12 to 16 in falls by 2 in toward the small end. Level, it wants 2 in there;
     * falling by 2 in to the large end 4 in, rising by 2 in none; rising by 3/4 in 1 1/4 in, falling by it 2 3/4 in.
     */
    @ParameterizedTest
    @CsvSource({
        "axis, parallel to the axis, 'put 2 in under the small end'",
        "bark above, parallel to the bark on the upper face, 'put 4 in under the small end'",
        "Bark  Below, parallel to the bark on the lower face, 'it lies as planned without a shim'",
        "offset 3/4 in, with its axis 3/4 in higher at the large end, 'put 1 1/4 in under the small end'",
        "offset -3/4 in, with its axis 3/4 in lower at the large end, 'put 2 3/4 in under the small end'",
        "offset 3 in, with its axis 3 in higher at the large end, 'put 1 in under the large end'"
    })
    void thePlanSaysHowTheLogLiesAndOnWhatShim(String frames, String words, String shim) {
        with("pattern.frames = " + frames);
        assertThat(planned()).contains("the log lies " + words, "On level supports at the ends", shim);
    }

    @Test
    void alongTheBarkATaperedLogGivesMoreAndTheBetterFrameIsTaken() {
        double axis = worth(planned());
        with("pattern.frames = axis; bark above; bark below; offset 3/4 in");
        String plan = planned();
        assertThat(worth(plan)).isGreaterThan(axis);
        assertThat(plan)
                .contains("the log lies parallel to the bark on the ")
                .contains("frames: parallel to the axis; parallel to the bark on the upper face; parallel to the bark"
                        + " on the lower face; large end lifted by 3/4 in;");
    }

    /** Where a log bows, a short stud fits in the bow that fits at neither end. */
    @Test
    void trimsThatStartInBetweenAreTriedAndStated() {
        job.write("logs.csv", """
                id,species,length,small-end,measured,large-end,sweep,sweep-direction
                A,eastern white pine,12 ft 4 in,12 in,inside bark,14 in,3 in,90 deg
                """.getBytes(StandardCharsets.UTF_8));
        job.write("wanted.csv", """
                id,size,length,quantity,wood,surface,moisture
                stud,2x4,8 ft,60,softwood,dressed dry,15 %
                """.getBytes(StandardCharsets.UTF_8));
        double ends = worth(planned());
        with("pattern.trim-start = 1 ft");
        String plan = planned();
        assertThat(plan).contains("starting at multiples of 12 in from the small end or so as to end at the large end");
        assertThat(worth(plan)).isGreaterThan(ends);
    }

    @Test
    void aPieceMayBeSawnThickerWhereThatSavesAPass() {
        with("");
        double exact = worth(planned());
        job.with("job.properties", GRID, GRID + "\npattern.over-thick = 3/8 in");
        String plan = planned();
        assertThat(plan).contains("up to 3/8 in over-thick.");
        assertThat(worth(plan)).isGreaterThanOrEqualTo(exact);
        job.with("job.properties", "pattern.over-thick = 3/8 in", "pattern.over-thick = 1/64 in");
        String none = planned();
        assertThat(none)
                .contains("never over-thick on purpose", "Pieces may be over-thick by nothing, not by the 1/64 in");
        assertThat(worth(none)).isEqualTo(exact);
        job.with("job.properties", "pattern.over-thick = 1/64 in", "pattern.over-thick = 2 in");
        assertThat(job.run("--check").err()).contains("pattern.over-thick: '2 in'", "such as 1/4 in");
    }

    @Test
    void whatIsNoFrameIsRefusedWithTheNearest() {
        refused("axis; bark abve", "'bark abve'", "bark above, bark below, offset", "is bark above meant?");
        refused("axis, bark above", "write semicolons, not commas: axis; bark above");
        refused("axis;", "allowed: axis, bark above, bark below, offset; nothing stands here");
    }

    @Test
    void aFrameTwiceIsRefused() {
        refused("axis; bark above; Axis", "'Axis'", "each frame once");
        refused("offset 1 in; axis; offset 25.4 mm", "'offset 25.4 mm'", "each frame once, and each offset");
    }

    @Test
    void severalOffsetsAreTriedAndTheBestIsTaken() {
        double axis = worth(planned());
        with("pattern.frames = offset 3/4 in; axis; offset -3/4 in; offset 9 in");
        String plan = planned();
        assertThat(plan)
                .contains("frames: large end lifted by 3/4 in; parallel to the axis; large end lowered by 3/4 in;"
                        + " large end lifted by 9 in;");
        assertThat(worth(plan)).isGreaterThanOrEqualTo(axis);
    }

    @Test
    void aFlitchThatRunsOutBeforeAnEndIsSupportedWhereItsPiecesEnd() {
        // Where laying the guide costs nothing, flitches are sawn from the taper that would not be worth it otherwise.
        job = EditedDemo.in(folder.resolve("whole"))
                .with("job.properties", "work.guide = 8 min (4 min to 15 min)", "work.guide = 0 min");
        with("pattern.frames = offset 9 in");
        assertThat(planned())
                .contains("with its axis 9 in higher at the large end")
                .containsPattern("\\(supported [^()]{9,60}, where its pieces end\\)");
    }

    @Test
    void aLogThatGivesNothingInAnyFrameIsLeftWholeAndAxisHelps() {
        with("pattern.frames = offset 24 in; offset -24 in");
        assertThat(planned())
                .contains(
                        "left whole: frame is large end lifted by 24 in; large end lowered by 24 in;",
                        "axis among pattern.frames");
        job.with("job.properties", "offset -24 in", "axis");
        assertThat(planned()).contains("the log lies parallel to the axis").doesNotContain("left whole:");
    }

    /** However aslant a log is laid, it is planned, with no length in the plan but those that it has. */
    @ParameterizedTest
    @ValueSource(strings = {"11", "15", "20"})
    void anySlantIsPlanned(String inches) {
        with("pattern.frames = offset -" + inches + " in; offset " + inches + " in");
        assertThat(planned()).doesNotContain("Infinity", "NaN");
    }

    @Test
    void anOffsetHasALengthAndNothingElseHas() {
        refused("axis; offset", "'offset'", "offset with a length behind it", "such as offset 3/4 in");
        refused("offset 3/4", "'3/4'", "such as");
        refused("offset 3 ft", "'3 ft'", "-2 ft to 2 ft");
        refused("offset -40 in", "'-40 in'", "-24 in to 24 in");
        refused("offset +610 mm", "'+610 mm'", "-609.6 mm to 609.6 mm");
        refused("axis 3/4 in", "'axis 3/4 in'", "axis without a length", "or write offset 3/4 in");
    }

    /** Ends of 12 and 16 in: a level line runs from the one into the other while the axis rises by less than 14 in. */
    @Test
    void anOffsetThatLiesOutsideOfEveryLogIsSaid() {
        with("pattern.frames = axis; offset 14 in; offset -14 in; offset 13 7/8 in; offset -1 in");
        assertThat(planned())
                .contains(
                        "Offset 14 in lies outside of every log",
                        "Offset -14 in lies outside",
                        "less than 14 in either way")
                .doesNotContain("Offset 13", "Offset -1 in");
        Run check = job.run("--check");
        assertThat(check.code()).isZero();
        assertThat(check.out()).contains("no problem found", "Offset 14 in lies outside of every log");
        job.with("job.properties", "axis; offset 14 in; offset -14 in; offset 13 7/8 in; offset -1 in", "axis");
        assertThat(job.run("--check").out()).doesNotContain("lies outside");
    }

    @Test
    void aStepOfTrimsIsALength() {
        Run run = with("pattern.trim-start = 1/2 in").run("--check");
        assertThat(run.err())
                .hasLineCount(1)
                .contains("pattern.trim-start: '1/2 in'", "1 in to 720 in", "such as 1 ft");
        assertThat(run.code()).isEqualTo(2);
        job.with("job.properties", "pattern.trim-start = 1/2 in", "pattern.trim-start = 1 ft");
        assertThat(job.run("--check").code()).isZero();
    }
}
