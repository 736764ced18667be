package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {

    @TempDir
    Path folder;

    @Test
    void helpNamesWhatCanBeWritten() {
        Run run = Run.of("--help");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("JOB", "--out", "--replace", "--check", "new-job", "Exit codes: 0 done");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void theVersionIsThatOfTheBuild() {
        Run run = Run.of("--version");
        assertThat(run.code()).isZero();
        assertThat(run.out()).matches("woodyield \\d+\\.\\d+\\.\\d+\\S*\\R");
    }

    @Test
    void anUnknownOptionIsOneLineAndCodeTwo() {
        Run run = Run.of("--sideways");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).hasLineCount(1).contains("--sideways", "see --help");
    }

    @Test
    void twoJobsAreOneTooMany() {
        assertThat(Run.of("one", "two").code()).isEqualTo(2);
    }

    @Test
    void aJobFolderThatIsNotThere() {
        Run run = Run.of(folder.resolve("none").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).hasLineCount(1).contains("is not there", "new-job");
    }

    @Test
    void aJobThatIsAFile() throws IOException {
        Run run = Run.of(Files.writeString(folder.resolve("job"), "x").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).hasLineCount(1).contains("is not a folder");
    }

    @Test
    void replaceAloneIsRefused() {
        Run run = Run.of("--replace");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).hasLineCount(1).contains("--replace needs --out");
    }

    @Test
    void whatMustStandBehindACommandIsNamedInOneLine() {
        missing("tally needs PIECES; write tally PIECES; see tally --help", "tally");
        missing("scale needs LOGS", "scale", "--rules", "doyle");
        missing("green-size needs SIZE and WOOD; write green-size SIZE WOOD;", "green-size");
        missing("green-size needs WOOD;", "green-size", "2x4");
        missing("drying needs THICKNESS;", "drying", "white oak");
        missing("timber needs SIZE;", "timber");
        missing("new-job needs FOLDER;", "new-job");
        missing("option '--by'", "tally", "--by");
        assertThat(Run.of("tally", "--help").code()).isZero();
        assertThat(Run.of("sizes").code()).isZero();
    }

    private static void missing(String told, String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).contains(told);
    }

    @Test
    void checkReadsTheDemoWithoutProblem() {
        Run run = Run.of("--check");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "11 logs, 6 kinds of pieces, 1 area, 5 prices",
                        "no problem found in the files; whether the saw can cut each log is seen only in planning");
    }

    @Test
    void theDemoIsWrittenOutAndReadsBackAsTheSameJob() throws IOException {
        Path job = folder.resolve("shed");
        Run run = Run.of("new-job", job.toString());
        assertThat(run.code()).isZero();
        SameJob.assertSame(JobReader.read(new JobFiles.Folder(job)), JobReader.read(new JobFiles.Demo()));
    }

    @Test
    void everyFileOfTheDemoSaysFirstThatItIsInvented() throws IOException {
        for (var file : new JobFiles.Demo().all().entrySet()) {
            assertThat(new String(file.getValue(), StandardCharsets.UTF_8))
                    .as(file.getKey())
                    .startsWith("# INVENTED.");
        }
    }

    @Test
    void theDemoDoesNotOverwriteWhatIsThere() throws IOException {
        Files.writeString(folder.resolve("logs.csv"), "mine");
        Run run = Run.of("new-job", folder.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("is not empty");
        assertThat(folder.resolve("logs.csv")).hasContent("mine");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void anOutputFolderThatCannotBeWrittenIsOneLineAndCodeTwo() {
        Run run = Run.of("new-job", "/proc/woodyield-cannot-write-here");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .hasLineCount(1)
                .contains(
                        "output folder '/proc/woodyield-cannot-write-here' cannot be written", "choose another folder");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aMissingLibraryIsOneClearLine() throws IOException, InterruptedException {
        Path classes = Path.of("target", "classes");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classes.toString(),
                        "org.woodyield.job.Main")
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isEqualTo(1);
        assertThat(said).hasLineCount(1).contains("info.picocli:picocli", "is not on the class path");
    }

    @Test
    void mainNamesNoClassOfTheLibraries() throws IOException {
        Path file = Path.of("target", "classes", "org", "woodyield", "job", "Main.class");
        String constants = Files.readString(file, StandardCharsets.ISO_8859_1);
        assertThat(constants).doesNotContain("picocli/", "de/siegmar/");
        try (Stream<Path> beside = Files.list(file.getParent())) {
            assertThat(beside.map(path -> path.getFileName().toString())).contains("Commands.class");
        }
    }

    @Test
    void whatIfIsAskedForALogOfTheJobOnly() {
        Run run = Run.of("--what-if", "NONE");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("log is NONE", "name one of these");
        assertThat(run.out()).isEmpty();
        Run asked = Run.of("--what-if", "P1");
        assertThat(asked.code()).isZero();
        assertThat(asked.out())
                .contains("What if\n-------", "as planned", "kerf ", "first face at ", "thicker", "thinner");
        Matcher rows = Pattern.compile(" \\d+ +\\d+ +[\\d.]+ +[\\d.]+ +[\\d.]+ +([\\d.]+) +([+-]?\\d+\\.\\d\\d)\n")
                .matcher(asked.out().substring(asked.out().indexOf("What if\n-------")));
        assertThat(rows.find()).isTrue();
        BigDecimal planned = new BigDecimal(rows.group(1));
        int differences = 0;
        while (rows.find()) {
            differences++;
            assertThat(new BigDecimal(rows.group(2)))
                    .as(rows.group())
                    .isEqualByComparingTo(new BigDecimal(rows.group(1)).subtract(planned));
        }
        assertThat(differences).isPositive();
        assertThat(Run.of().out()).doesNotContain("What if");
    }

    @Test
    void whatIfTellsWhatOneSizeMoreWouldGive() {
        Run asked = Run.of("--what-if", "C1", "--size", "1x4, 6 ft, dressed dry, 15 %");
        assertThat(asked.err()).isEmpty();
        assertThat(asked.code()).isZero();
        Matcher line = Pattern.compile(
                        "also 1x4, 6 ft, dressed dry +\\d+ +\\d+ +[\\d.]+ +[\\d.]+ +[\\d.]+ +[\\d.]+ +\\+([\\d.]+)")
                .matcher(asked.out());
        assertThat(line.find()).isTrue();
        assertThat(Double.parseDouble(line.group(1))).isPositive();
        assertThat(Run.of("--what-if", "C1").out()).doesNotContain("also ");
    }

    @Test
    void aSizeMoreMustBeOneThatTheLogCanBeAskedFor() {
        refuses("needs --what-if LOG", "--size", "1x6, 8 ft, rough, 15 %");
        refuses("it has 1 part", "--what-if", "P1", "--size", "1x6");
        refuses("--size: '1z6' is not accepted", "--what-if", "P1", "--size", "1z6, 8 ft, rough, 15 %");
        refuses("'8' is not accepted", "--what-if", "P1", "--size", "1x6, 8, rough, 15 %");
        refuses("rough, dressed dry, dressed green", "--what-if", "P1", "--size", "1x6, 8 ft, smooth, 15 %");
        refuses("add the unit", "--what-if", "P1", "--size", "1x6, 8 ft, rough, 15");
        refuses("--size: '1x4' is not accepted", "--what-if", "P1", "--size", "1x4, 8 ft, rough, 15 %");
        refuses("up to the length of log C1", "--what-if", "C1", "--size", "1x6, 8 ft, dressed dry, 15 %");
        refuses("the kerf or more", "--what-if", "C1", "--size", "1/8 in x 4 in, 6 ft, rough, 15 %");
    }

    /** C1 is 6 ft 6 in long. What is dressed green loses no ends to checks, so all of that can be had. */
    @Test
    void aSizeMoreThatIsDressedGreenIsNotTrimmed() {
        assertThat(Run.of("--what-if", "C1", "--size", "1x4, 6 ft 6 in, dressed green, 15 %")
                        .out())
                .contains("also 1x4");
        refuses("less what is trimmed", "--what-if", "C1", "--size", "1x4, 6 ft 6 in, dressed dry, 15 %");
    }

    @Test
    void aSizeMoreThatIsThickerThanTheLogIsRefusedByItsDiagonal() {
        refuses("from corner to corner", "--what-if", "P1", "--size", "20 in x 20 in, 8 ft, rough, 15 %");
    }

    /** A size more has no name of its own, so the user could not choose another. */
    @Test
    void aSizeMoreThatIsNamedLikeSomethingWantedIsAskedAllTheSame() throws IOException {
        Run asked = EditedDemo.small(folder)
                .with("wanted.csv", "stud,", "\"2x4, 8 ft, dressed dry\",")
                .run("--what-if", "A", "--size", "2x4, 8 ft, dressed dry, 15 %");
        assertThat(asked.err()).isEmpty();
        assertThat(asked.out()).contains("also 2x4");
    }

    @Test
    void checkAlsoChecksWhatIsWrittenBesideIt() throws IOException {
        refuses("name one of these", "--check", "--what-if", "NONE");
        refuses(
                "which is no folder",
                "--check",
                "--out",
                Files.writeString(folder.resolve("notes"), "mine")
                        .resolve("plan")
                        .toString());
        Run run = Run.of("--check", "--out", folder.resolve("plan").toString(), "--what-if", "P1");
        assertThat(run.code()).isZero();
        assertThat(folder.resolve("plan")).doesNotExist();
    }

    /** Taken for an option, it is not told as missing. */
    @Test
    void aMeasureBelowZeroInThePlaceOfAnArgumentIsNamed() {
        refuses("'-1 in' is not accepted; allowed: measures above 0", "drying", "white oak", "-1 in");
        refuses("'-2x4' is not accepted", "green-size", "-2x4", "white oak");
        refuses("'-8x8' is not accepted", "timber", "-8x8");
        refuses("drying needs THICKNESS", "drying", "white oak");
        refuses("drying needs THICKNESS", "drying", "white oak", "--temperature", "-1 C", "--humidity", "65 %");
        refuses("'-1 in' is not accepted", "drying", "white oak", "--temperature", "-1 C", "-1 in");
        refuses("--no-such", "drying", "white oak", "1 in", "--no-such", "-1 C");
    }

    private static void refuses(String said, String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(said);
        assertThat(run.out()).isEmpty();
    }
}
