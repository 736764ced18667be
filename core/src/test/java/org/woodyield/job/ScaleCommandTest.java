package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScaleCommandTest {

    @TempDir
    Path folder;

    private String table(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.csv"), text).toString();
    }

    @Test
    void logsAreScaledByEachRuleWithTheirSum() throws IOException {
        // By hand: Doyle (14 - 4)^2 x 16 / 16 = 100 and (12 - 4)^2 x 10 / 16 = 40.
        Run run = Run.of("scale", table("id,small-end,length\na,14 in,16 ft\nb,305 mm,3.1 m\n"), "--rules", "doyle");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .isEqualTo("row,id,doyle-bf-scale,not-scaled,caution\nlog,a,100,,\nlog,b,40,,\ntotal,2 logs,140,,\n");
        assertThat(run.err()).contains("2 rows: 2 scaled, 0 of them not by every rule; 0 refused");
    }

    @Test
    void aBadRowIsNamedAndCountedAndTheOthersGoOn() throws IOException {
        Run run = Run.of(
                "scale",
                table(
                        "id,small-end,length\na,14 in,16 ft\nb,\"14,5 in\",16 ft\nc,14 in\nd,-3 in,16 ft\ne,12 in,10 ft\n"),
                "--rules",
                "doyle");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("total,2 logs,140,");
        assertThat(run.err())
                .contains("mine.csv, line 3, small-end: '14,5 in'", "decimal point")
                .contains("mine.csv, line 4", "the line has 2")
                .contains("mine.csv, line 5, small-end: '-3 in'")
                .contains("5 rows: 2 scaled, 0 of them not by every rule; 3 refused");
    }

    @Test
    void aLogOutsideARuleIsLeftOutOfItsSumAndSaysWhy() throws IOException {
        Run run = Run.of(
                "scale",
                table("id,small-end,length\na,14 in,16 ft\nwide,100 in,16 ft\n"),
                "--rules",
                "doyle,scribner-decimal-c");
        assertThat(run.out()).contains("scribner-decimal-c: ", "6 to 60 in", "1 log is not in every sum");
        assertThat(run.err()).contains("2 scaled, 1 of them not by every rule");
    }

    @Test
    void cellsThatASpreadsheetWouldRunAreHarmless() throws IOException {
        assertThat(Run.of("scale", table("id,small-end,length\n=1+1,14 in,16 ft\n"), "--rules", "doyle")
                        .out())
                .contains("log,'=1+1,100");
    }

    @Test
    void resultsAreWrittenWholeAndNeverOverUsersFiles() throws IOException {
        String logs = table("id,small-end,length\na,14 in,16 ft\nb,x,16 ft\n");
        Path out = folder.resolve("out");
        Run run = Run.of("scale", logs, "--rules", "doyle", "--out", out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEqualTo("Doyle [published]: 100 bf scale of 1 log\n");
        assertThat(out.resolve("scales.csv")).content().contains("log,a,100,");
        assertThat(out.resolve("refused.csv")).content().contains("3,small-end,x,");
        assertThat(Run.of("scale", logs, "--rules", "doyle", "--out", out.toString())
                        .code())
                .isEqualTo(2);
        assertThat(Run.of("scale", logs, "--rules", "doyle", "--out", out.toString(), "--replace")
                        .code())
                .isZero();
        Files.writeString(out.resolve("notes.txt"), "mine");
        assertThat(Run.of("scale", logs, "--rules", "doyle", "--out", out.toString(), "--replace")
                        .code())
                .isEqualTo(2);
        assertThat(out.resolve("notes.txt")).hasContent("mine");
    }

    @Test
    void aTableThatIsNoneIsRefusedWhole() throws IOException {
        assertRefused("id,small,length\na,14 in,16 ft\n", "small-end");
        assertRefused("", "a first line with the names of the columns");
        assertRefused("id,small-end,length\n\"a,14 in,16 ft\n", "close the quote");
        assertRefused("id;small-end;length\na;14 in;16 ft\n", "commas");
    }

    private void assertRefused(String text, String why) throws IOException {
        Run run = Run.of("scale", table(text), "--rules", "doyle");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(why);
    }

    @Test
    void anIdThatStandsTwiceIsSaidAndCounted() throws IOException {
        Run run = Run.of(
                "scale",
                table("id,small-end,length\na,14 in,16 ft\nb,12 in,10 ft\na,14 in,16 ft\n"),
                "--rules",
                "doyle");
        assertThat(run.out())
                .contains("log,a,100,,\n", "log,a,100,,line 2 has this id too; both count\n")
                .contains("total,3 logs,240,,1 id stands twice\n");
        assertThat(run.err()).contains("3 scaled", "1 with an id that stands before");
    }

    @Test
    void refusalsStandInTheOrderOfTheRows() throws IOException {
        String logs = table("id,small-end,length\na,x,16 ft\nb,14 in\nc,y,16 ft\nd,14 in,16 ft\n");
        assertThat(Run.of("scale", logs, "--rules", "doyle").err())
                .containsSubsequence("line 2", "line 3", "line 4", "4 rows: 1 scaled");
    }

    @Test
    void aTableWithoutALogIsRefused() throws IOException {
        assertRefused("id,small-end,length\n", "a row for each log below the header");
    }

    @Test
    void aFigureOfDoyleBelowFourInchesCarriesACaution() throws IOException {
        Run run = Run.of("scale", table("id,small-end,length\na,2 in,16 ft\n"), "--rules", "doyle");
        // (2 - 4)^2 = 4, as much as a log of 6 in.
        assertThat(run.out()).contains("log,a,4,,below 4 in the formula of Doyle rises again");
        assertThat(Run.of("rules", "doyle", "2 in", "16 ft").out()).contains("Caution: below 4 in");
        assertThat(Run.of("rules", "doyle", "4 in", "16 ft").out()).doesNotContain("Caution");
        assertThat(Run.of("compare-rules", "--rules", "doyle", "--from", "2 in").out())
                .contains("doyle, caution: below 4 in");
        assertThat(Run.of("compare-rules", "--rules", "doyle").out()).doesNotContain("caution");
    }

    @Test
    void aFullDiskIsAnErrorAndAClosedPipeIsNone() {
        Run full = printedTo("No space left on device");
        assertThat(full.code()).isEqualTo(Main.INPUT);
        assertThat(full.err()).contains("standard output: No space left on device");
        Run closed = printedTo("Broken pipe");
        assertThat(closed.code()).isZero();
        assertThat(closed.err()).isEmpty();
    }

    private static Run printedTo(String fault) {
        OutputStream broken = new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException(fault);
            }
        };
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(List.of("rules"), broken, err);
        return new Run(code, "", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void anUnknownRuleATwiceNamedRuleAndAMissingTable() throws IOException {
        String logs = table("id,small-end,length\na,14 in,16 ft\n");
        assertThat(Run.of("scale", logs, "--rules", "doyel,doyle,doyle"))
                .satisfies(run -> assertThat(run.code()).isEqualTo(2))
                .satisfies(run -> assertThat(run.err()).contains("'doyel'", "named twice"));
        assertThat(Run.of("scale", folder.resolve("none.csv").toString(), "--rules", "doyle")
                        .err())
                .contains("is not there");
        assertThat(Run.of("scale", folder.toString(), "--rules", "doyle").err()).contains("is not a file");
        assertThat(Run.of("scale", logs).code()).isEqualTo(2);
    }

    @Test
    void rulesAreListedDescribedAndWorkedThrough() {
        assertThat(Run.of("rules").out()).contains("doyle\n", "international-quarter\n", "[MEMORY]");
        assertThat(Run.of("rules").out().lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(Run.of("rules", "doyle").out()).contains("Diameter inside bark: 1 to 120 in", "Does not hold: ");
        assertThat(Run.of("rules", "doyle", "14 in", "16 ft").out())
                .contains("(14 - 4)^2 * 16 / 16", "100 bf", "Given on the command line")
                .doesNotContain("job folder");
        assertThat(Run.of("rules", "doyle", "14 in").code()).isEqualTo(2);
        assertThat(Run.of("rules", "doyle", "14", "16 ft").err()).contains("DIAMETER");
        assertThat(Run.of("rules", "doyle", "900 in", "16 ft").err()).contains("1 to 120 in");
        assertThat(Run.of("rules", "doyle", "-14 in", "16 ft").err()).contains("'-14 in'", "without the minus");
        assertThat(Run.of("rules", "doyle", "--fast").err()).contains("Unknown option");
        assertThat(Run.of("rules", "none").code()).isEqualTo(2);
    }

    @Test
    void speciesAreListed() {
        assertThat(Run.of("species").out()).contains("eastern white pine (eastern-white-pine)\n");
    }
}
