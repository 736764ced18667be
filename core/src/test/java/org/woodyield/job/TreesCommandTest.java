package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What standing trees hold, from the command line. */
class TreesCommandTest {

    @TempDir
    Path folder;

    private String table(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void aTreeIsReadFromTheTableAndComputedByTheEquation() throws IOException {
        Path out = folder.resolve("out");
        String trees = table("trees.csv", """
                id,breast-height,logs,total-height,form-class,bark-ratio
                A,16.4 in,2.5,80 ft,78 %,0.92
                B,15.5 in,3.25,,,
                """);
        Run run = Run.of("trees", trees, "--working", "--out", out.toString());
        assertThat(run.code()).isZero();
        // Printed: 16 in, 2.5 logs 185; 3 logs 211 and 4 logs 247, a quarter of the way 220. 0.92 x 16.4 and 0.78 x
        // 16.4.
        // By hand: exp(-6.63162 + 1.98265 ln 16.4 + 1.11712 ln 80) = 45.136.
        assertThat(Files.readString(out.resolve("trees.csv")))
                .contains("A,16.4000,15.0880,78.0000,12.7920,2.50,185.0000,80.0000,45.1358,\n")
                .contains("B,15.5000,,,,3.25,220.0000,,,\n");
        assertThat(run.out())
                .contains(
                        "c = b rounded nearest, half up", "exp(b0 + b1 * ln(D) + b2 * ln(H))", "a + (b - a) * (n - m)")
                .contains("100 * (1 - k * k)", "Mesavage, C. and Girard");
        assertThat(flat(run.out()))
                .contains("ln V = -6.6316 + 1.983 ln D + 1.117 ln H")
                .contains("31 black cherry trees felled in the Allegheny National Forest", "it is a guess");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void whatIsNotKnownHasItsReason() throws IOException {
        String trees = table(
                "trees.csv",
                "id,breast-height,logs,total-height,form-class\nA,37 in,2.5,90 ft,\nB,14 in,2,,82 %\nC,8 in,1,,\nD,12 in,5,,\n");
        Run run = Run.of("trees", trees);
        assertThat(run.code()).isZero();
        assertThat(flat(run.out()))
                .contains("Tree A: the printed cell is doubtful", "1290.5 bf")
                .contains("no volume by the equation: diameter at breast height is 37 in; allowed: 8.3 to 20.6 in")
                .contains("Tree B: the printed table is of form class 78, this tree of 82.0")
                .contains("Tree C: diameter at breast height is 8 in; allowed: 10 to 40 in")
                .contains("Tree D: tree is 12.0 in, 5.0 logs");
    }

    @Test
    void theEquationIsFittedToOnesOwnTrees() throws IOException {
        // V = D^2 H / 1000 exactly, so that 12 in and 65 ft hold 9.36 ft3.
        StringBuilder felled = new StringBuilder("breast-height,height,volume\n");
        for (int d = 10; d <= 14; d++) {
            for (int h = 60; h <= 70; h += 5) {
                felled.append(d)
                        .append(" in,")
                        .append(h)
                        .append(" ft,")
                        .append(d * d * h / 1000.0)
                        .append(" ft3\n");
            }
        }
        String table = table("felled.csv", felled.toString());
        Run run = Run.of("trees", "--breast-height", "12 in", "--total-height", "65 ft", "--felled", table);
        assertThat(run.code()).isZero();
        assertThat(flat(run.out())).contains("65.0 9.4", "fitted to 15 trees of felled.csv, 10 to 14 in thick");
        String few = table("few.csv", "breast-height,height,volume\n12 in,70 ft,20 ft3\n13 in,70 ft,0.6 m3\n");
        assertThat(Run.of("trees", "--felled", few).err())
                .contains("few.csv", "measured trees: 2", "at least 3", "measure more");
        String alike = table("alike.csv", "breast-height,height,volume\n" + "12 in,70 ft,20 ft3\n".repeat(4));
        assertThat(Run.of("trees", "--felled", alike).err()).contains("alike.csv", "observations that differ");
    }

    @Test
    void theBarkRatioIsFittedToPairs() throws IOException {
        String bark = table("bark.csv", "outside,inside\n10 in,9 in\n20 in,18 in\n");
        Run run = Run.of("trees", "--bark", bark, "--breast-height", "14 in", "--upper-diameter", "10.5 in");
        assertThat(run.code()).isZero();
        // 0.9 x 14; 10.5 / 14; 1 - 0.81; 1 / 0.81 - 1.
        assertThat(flat(run.out())).contains("14.0 12.6 75.0 10.5", "ratio 0.9, fitted", "19.0 % is bark", "23.5 %");
        String wrong = table("wrong.csv", "outside,inside\n10 in,11 in\n");
        assertThat(Run.of("trees", "--bark", wrong).err())
                .contains("wrong.csv, line 2, inside: '11 in'", "check the two");
    }

    @Test
    void badInputIsNamed() throws IOException {
        assertThat(Run.of("trees").err()).contains("a tree is needed");
        assertThat(Run.of("trees", "--logs", "2").err()).contains("--breast-height");
        assertThat(Run.of("trees", "--breast-height", "14 in", "--upper-diameter", "15 in")
                        .err())
                .contains("--upper-diameter: '15 in'", "40 to 100 %");
        assertThat(Run.of("trees", "--breast-height", "14 in", "--upper-diameter", "11 in", "--form-class", "80 %")
                        .err())
                .contains("leave out one of the two");
        String trees = table(
                "trees.csv",
                "id,breast-height,logs,bark-ratio\nA,14,2,\nA,14 in,x,\n,14 in,2,\nB,14 in,2,0.3\nC,0.5 in,2,0.9\n");
        Run run = Run.of("trees", trees);
        // Only the last tree can be used.
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.out()).contains("4 of 5 rows of trees.csv");
        assertThat(run.err())
                .contains("line 2, breast-height: '14'", "line 3, logs: 'x'", "line 3, id: 'A'", "each tree once")
                .contains("line 4, id", "line 5, bark-ratio: '0.3'");
        assertThat(Run.of("trees", trees, "--logs", "2").err()).contains("--logs is for one tree without a table");
    }

    @Test
    void aRowThatCannotBeUsedIsNamedAndCountedAndTheOthersAreTold() throws IOException {
        Run run =
                Run.of("trees", table("some.csv", "id,breast-height,logs\nA,14,2\nB,16 in,2\nB,15 in,2\nC,18 in,3\n"));
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.err()).contains("some.csv, line 2, breast-height: '14'", "some.csv, line 4, id: 'B'");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("2 of 4 rows of some.csv could not be used and are left out; the messages say why.")
                .contains("16.0", "18.0")
                .doesNotContain("15.0");
        assertThat(Run.of("trees", table("none.csv", "id,breast-height,logs\nA,14,2\n"))
                        .code())
                .isEqualTo(Main.INPUT);
    }

    @Test
    void theWorkingSaysWhereTreeAndBarkRatioComeFrom() throws IOException {
        Path trees = Files.writeString(folder.resolve("trees.csv"), "id,breast-height,total-height\na,20 in,80 ft\n");
        Path bark = Files.writeString(folder.resolve("bark.csv"), "outside,inside\n10 in,9 in\n14 in,12.5 in\n");
        String out = Run.of("trees", trees.toString(), "--bark", bark.toString(), "--working")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .contains("Fitted by least squares to the diameters of bark.csv [derived]")
                .contains("From the table trees.csv")
                .doesNotContain("Given on the command line");
    }

    @Test
    void aFelledTreeThatCannotBeUsedIsLeftOutOfTheFitWhichSaysSo() throws IOException {
        String good = "10 in,60 ft,6 ft3\n11 in,62 ft,7.6 ft3\n12 in,64 ft,9.1 ft3\n13 in,60 ft,10.3 ft3\n";
        String table =
                table("felled.csv", "breast-height,height,volume\n" + good + "14 in,65 ft,much\n15,66 ft,14 ft3\n");
        Run run = Run.of("trees", "--felled", table, "--breast-height", "12 in", "--total-height", "62 ft");
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.err()).contains("felled.csv, line 6, volume: 'much'", "felled.csv, line 7, breast-height: '15'");
        assertThat(flat(run.out()))
                .contains("fitted to 4 trees of felled.csv")
                .contains("2 of 6 rows of felled.csv could not be used and are left out; the messages say why. The"
                        + " equation is fitted to the others alone.");
        // The fit that is told is the one of the good rows, number for number.
        Run alone = Run.of(
                "trees",
                "--felled",
                table("felled.csv", "breast-height,height,volume\n" + good),
                "--breast-height",
                "12 in",
                "--total-height",
                "62 ft");
        assertThat(run.out().lines().filter(line -> line.contains("ln V")).toList())
                .isNotEmpty()
                .isEqualTo(alone.out()
                        .lines()
                        .filter(line -> line.contains("ln V"))
                        .toList());
        Run few = Run.of(
                "trees",
                "--felled",
                table(
                        "few.csv",
                        "breast-height,height,volume\n12 in,70 ft,20 ft3\n13 in,70 ft,0.6 m3\n14 in,70 ft,x\n"));
        assertThat(few.code()).isEqualTo(Main.INPUT);
        assertThat(few.err())
                .contains(
                        "few.csv, line 4, volume: 'x'",
                        "at least 3",
                        "mend the rows that are left out, or measure more");
        Run none = Run.of("trees", "--felled", table("none.csv", "breast-height,height,volume\n12,70,20\n"));
        assertThat(none.code()).isEqualTo(Main.INPUT);
        assertThat(none.err()).contains("none.csv, line 2, breast-height", "no row of none.csv can be used");
    }

    @Test
    void aPairThatCannotBeUsedIsLeftOutOfTheBarkRatioWhichSaysSo() throws IOException {
        String bark = table("bark.csv", "outside,inside\n10 in,9 in\n12 in,12.5 in\n20 in,18 in\n14 in\n");
        Run run = Run.of("trees", "--bark", bark, "--breast-height", "14 in");
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.err()).contains("bark.csv, line 3, inside: '12.5 in'", "bark.csv, line 5:");
        assertThat(flat(run.out()))
                .contains("ratio 0.9, fitted by least squares to your 2 pairs", "14.0 12.6")
                .contains(
                        "2 of 4 rows of bark.csv could not be used and are left out; the messages say why. The ratio is"
                                + " fitted to the others alone.");
    }

    /** 21 ft are 1.3125 logs: the limit that is printed is the one that holds. */
    @Test
    void theLimitOfLogsHoldsAsItIsPrinted() {
        for (String logs : List.of("1.31", "1.312")) {
            assertThat(Run.of("trees", "--breast-height", "16 in", "--logs", logs, "--total-height", "21 ft")
                            .err())
                    .contains("--logs: '" + logs + "'", "fewer than 1.31 logs of 16 ft");
        }
        assertThat(Run.of("trees", "--breast-height", "16 in", "--logs", "1.309", "--total-height", "21 ft")
                        .err())
                .doesNotContain("fewer than");
    }

    @Test
    void moreLogsThanStandInTheHeightAreRefused() throws IOException {
        // 20 ft are one log of 16 ft and a quarter of one.
        Run one = Run.of("trees", "--breast-height", "16 in", "--logs", "8", "--total-height", "20 ft");
        assertThat(one.code()).isEqualTo(Main.INPUT);
        assertThat(one.err())
                .contains(
                        "--logs: '8'", "fewer than 1.25 logs of 16 ft", "tip of a tree of 20 ft", "mend total-height");
        String trees = table(
                "trees.csv",
                "id,breast-height,logs,total-height\nA,16 in,8,20 ft\nB,16 in,5,80 ft\nC,16 in,4.5,80 ft\n");
        Run run = Run.of("trees", trees);
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.err()).contains("line 2, logs: '8'", "line 3, logs: '5'").doesNotContain("line 4");
        assertThat(run.out()).contains("2 of 3 rows");
    }
}
