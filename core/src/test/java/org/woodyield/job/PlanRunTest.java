package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanRunTest {

    @TempDir
    Path folder;

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path entry : entries.toList()) {
                files.put(entry.getFileName().toString(), Files.readString(entry));
            }
        }
        return files;
    }

    @Test
    void aShortageIsAResult() {
        Run run = EditedDemo.small(folder.resolve("job")).run();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Tool and wood shed", "stud", "SHORT");
        assertThat(run.err()).isEmpty();
    }

    /** The remedies: another log, or a wider saw. */
    @Test
    void aSawTooNarrowForEveryLogIsRefusedByPassAndLog() {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with("job.properties", "saw.width-of-cut = 26 in", "saw.width-of-cut = 5 in");
        Run refused = job.run("--out", folder.resolve("plan").toString());
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err())
                .hasLineCount(1)
                .contains("width of cut is 5 in", "log A: no less than its pass 1 (", "; log B: no less")
                .contains("; check saw.width-of-cut in job.properties; or ")
                .contains(
                        "flatten the log from two sides first, quarter it, take off the bark, or choose a smaller log");
        assertThat(folder.resolve("plan")).doesNotExist();
        job.with("job.properties", "saw.width-of-cut = 5 in", "saw.width-of-cut = 12 in");
        assertThat(job.run().code()).isZero();
    }

    /** A narrow saw sells the lumber short long before it can saw no log at all; the plan must not keep that to itself. */
    @Test
    void whatTheWidthOfCutKeepsTheSawFromIsSaid() {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(
                        "logs.csv",
                        "9 in,inside bark,10 in",
                        "9 in,inside bark,10 in\nC,eastern white pine,8 ft 4 in,13 in,inside bark,14 in")
                // Log C gives so little to a narrow saw that it must cost nothing to bring it there.
                .with("job.properties", "work.loading = 25 min", "work.loading = 0 min")
                .with("job.properties", "saw.width-of-cut = 26 in", "saw.width-of-cut = 14 in");
        assertThat(job.run().out().replaceAll("\\s+", " "))
                .contains("The saw cuts 14 in wide, and log C is wider over the bark")
                .contains("The saw cuts 14 in wide, and this log is up to")
                .contains("pattern.turns = 0 deg; 90 deg");
        job.with("job.properties", "saw.width-of-cut = 14 in", "saw.width-of-cut = 26 in");
        assertThat(job.run().out()).doesNotContain("The saw cuts");
    }

    /** 12 board feet of full size to a cubic foot, at the price that the summary gives. */
    @Test
    void theKerfIsToldInBoardFeetAndMoney() throws IOException {
        Path out = folder.resolve("plan");
        Run run = EditedDemo.small(folder.resolve("job")).run("--out", out.toString());
        String text = run.out().replaceAll("\\s+", " ");
        assertThat(run.code()).isZero();
        double cubicFeet = Files.readAllLines(out.resolve("plan-balance.csv")).stream()
                .filter(line -> line.startsWith("kerf,"))
                .mapToDouble(line -> Double.parseDouble(line.split(",", 3)[1]))
                .sum();
        assertThat(text)
                .contains("The kerf is as much wood as " + Math.round(12 * cubicFeet) + " board feet of full size, ")
                .contains(" USD at the price of the same lumber bought; ");
    }

    /** Where no face leads the saw, the guide has to be laid somewhere. */
    @Test
    void everyPassByTheGuideSaysWhereItsLineStands() throws IOException {
        Path out = folder.resolve("plan");
        assertThat(EditedDemo.small(folder.resolve("job"))
                        .run("--out", out.toString())
                        .code())
                .isZero();
        List<String> guided = Files.readAllLines(out.resolve("plan-passes.csv")).stream()
                .filter(line -> line.contains(",\"the axis, by the guide\","))
                .toList();
        assertThat(guided).hasSizeGreaterThan(2);
        // Log, pass, turn; the fourth column is the setting.
        assertThat(guided.stream().map(line -> line.split(",", 5)[3]).distinct())
                .hasSizeGreaterThan(2);
    }

    @Test
    void oneLogTooWideForTheSawIsLeftWholeAndSaysWhy() {
        Run run = EditedDemo.small(folder.resolve("job"))
                .with("job.properties", "saw.width-of-cut = 26 in", "saw.width-of-cut = 12 in")
                .with(
                        "logs.csv",
                        "9 in,inside bark,10 in",
                        "9 in,inside bark,10 in\nC,eastern white pine,8 ft 4 in,24 in,inside bark,26 in")
                .run();
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains(
                        "Log C ----- Left whole: width of cut is 12 in; allowed: for this log no less than its pass ");
    }

    @Test
    void withoutAnOutputFolderNothingIsWritten() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Map<String, String> before = files(job.folder());
        job.run();
        assertThat(files(job.folder())).isEqualTo(before);
        assertThat(files(folder.resolve("job"))).hasSize(8);
    }

    @Test
    void thePlanIsOnePageAndItsTables() throws IOException {
        Path out = folder.resolve("plan");
        Run run = EditedDemo.small(folder.resolve("job")).run("--out", out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("the plan stands in " + out);
        Map<String, String> files = files(out);
        assertThat(files).containsKeys("plan.html", "plan-logs.csv", "plan-wanted.csv", "plan-passes.csv");
        assertThat(files.keySet()).allMatch(Outputs.FILES::contains);
        assertThat(files.get("plan.html")).contains("<svg").doesNotContain("<script", "http-equiv", " src=");
        assertThat(files.get("plan-wanted.csv")).hasLineCount(3);
    }

    @Test
    void aPlanReplacesAnEarlierOneOnlyWhenTold() throws IOException {
        String out = folder.resolve("plan").toString();
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        assertThat(job.run("--out", out).code()).isZero();
        Map<String, String> earlier = files(Path.of(out));
        job.with("job.properties", "saw.kerf = 3/8 in", "saw.kerf = 1/4 in");
        Run refused = job.run("--out", out);
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.out())
                .as("nothing is planned for a folder that cannot be written")
                .isEmpty();
        assertThat(files(Path.of(out))).isEqualTo(earlier);
        assertThat(job.run("--out", out, "--replace").code()).isZero();
        assertThat(files(Path.of(out))).isNotEqualTo(earlier);
    }

    @Test
    void textOfTheUserIsEscapedInThePageAndHarmlessInTheTables() throws IOException {
        Path out = folder.resolve("plan");
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with("logs.csv", "\nA,", "\n=HYPERLINK(\"\"x\"\")<script>,".replace("\"\"", "'"))
                .with("wanted.csv", "stud,", "@<b>&amp;,");
        Run run = job.run("--out", out.toString());
        assertThat(run.code()).isZero();
        Map<String, String> files = files(out);
        assertThat(files.get("plan.html"))
                .contains("=HYPERLINK(&#39;x&#39;)&lt;script&gt;", "@&lt;b&gt;&amp;amp;")
                .doesNotContain("<script", "<b>");
        assertThat(files.get("plan-logs.csv")).contains("\n'=HYPERLINK('x')<script>,");
        assertThat(files.get("plan-wanted.csv")).contains("\n'@<b>&amp;,");
        files.forEach((name, text) -> {
            if (name.endsWith(".csv")) {
                assertThat(text).as(name).doesNotContainPattern("(?m)^[=@]|,[=@]");
            }
        });
    }

    @Test
    void aMissingPriceLeavesThePhysicalPlan() {
        Run run = EditedDemo.small(folder.resolve("job")).without("prices.csv").run();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("A price is missing");
    }

    @ParameterizedTest
    @CsvSource({
        "tr-TR, Asia/Kolkata",
        "de-DE, Pacific/Kiritimati",
        "ar-EG-u-nu-arab, America/St_Johns",
        "th-TH-u-ca-buddhist-nu-thai, UTC"
    })
    void languageAndTimeZoneDoNotChangeAByte(String language, String zone) throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Run expected = job.run("--out", folder.resolve("expected").toString());
        Locale locale = Locale.getDefault();
        TimeZone timeZone = TimeZone.getDefault();
        Run actual;
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            actual = job.run("--out", folder.resolve("actual").toString());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(timeZone);
        }
        assertThat(actual.code()).isZero();
        assertThat(actual.out()).isEqualTo(expected.out());
        assertThat(files(folder.resolve("actual"))).isEqualTo(files(folder.resolve("expected")));
    }

    @Test
    void aProgramStartedInAnotherLanguageAndEncodingWritesTheSameBytes() throws IOException, InterruptedException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        Run expected = job.run("--out", folder.resolve("expected").toString());
        Process process = JavaProcess.start(
                List.of(
                        "-Duser.language=ar",
                        "-Duser.country=EG",
                        "-Duser.timezone=Asia/Kathmandu",
                        "-Dfile.encoding=ISO-8859-1",
                        "-Dline.separator=\r\n"),
                job.folder().toString(),
                "--out",
                folder.resolve("actual").toString());
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        assertThat(out).isEqualTo(expected.out());
        assertThat(files(folder.resolve("actual"))).isEqualTo(files(folder.resolve("expected")));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void anInterruptEndsWith130AndLeavesNothing() throws IOException, InterruptedException {
        assumeTrue(interruptsAreHeard(), "this program was started with interrupts switched off");
        EditedDemo job = EditedDemo.in(folder.resolve("job"))
                .with(
                        "job.properties",
                        "pattern.turns = 0 deg",
                        "pattern.turns = 0 deg; 10 deg; 20 deg; 30 deg; 40 deg; 50 deg")
                .with("job.properties", "saw.setting-step = 1/8 in", "saw.setting-step = 1/64 in");
        Process process = JavaProcess.start(
                List.of(),
                job.folder().toString(),
                "--out",
                folder.resolve("plan").toString());
        try {
            assertThat(process.waitFor(2, TimeUnit.SECONDS))
                    .as("it is at work still")
                    .isFalse();
            assertThat(new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                            .start()
                            .waitFor())
                    .isZero();
            assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isEqualTo(130);
        } finally {
            process.destroyForcibly();
        }
        assertThat(folder.resolve("plan")).doesNotExist();
        try (Stream<Path> beside = Files.list(folder)) {
            assertThat(beside.map(path -> path.getFileName().toString())).containsExactly("job");
        }
    }

    /** A shell may start programs in the background with interrupts ignored; they hand that on to those they start. */
    private static boolean interruptsAreHeard() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(line -> line.startsWith("SigIgn:"))
                .noneMatch(line -> (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0);
    }
}
