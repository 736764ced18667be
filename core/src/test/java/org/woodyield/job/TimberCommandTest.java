package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Timbers from standing trees. */
class TimberCommandTest {

    @TempDir
    Path folder;

    private String table(String text) throws IOException {
        return Files.writeString(folder.resolve("trees.csv"), text).toString();
    }

    @Test
    void eightByEightNeedsItsDiagonal() {
        Run run = Run.of("timber", "8x8");
        assertThat(run.code()).isZero();
        // sqrt(128), and with a quarter missing at each edge sqrt(4^2 + 8^2).
        assertThat(run.out()).contains("11.31 in", "8.94 in").doesNotContain("Which trees");
        assertThat(Run.of("timber", "8x8", "--wane", "0 %").out()).contains("every edge it is 11.31 in");
    }

    @Test
    void treesByFormClassAreAsked() throws IOException {
        // 78 % of 16 in is 12.48 in, 80 % of 14 in 11.2 in; from breast height the second loses 1.8 in in 12.8 ft.
        String trees =
                table("id,breast-height,form-class,bark,taper\nA,16 in,78 %,,\nB,14 in,80 %,0.5 in,1 in per 8 ft\n");
        Path out = folder.resolve("out");
        Run run = Run.of("timber", "8x8", trees, "--length", "12 ft", "--working", "--out", out.toString());
        assertThat(run.code()).isZero();
        // At 13 ft: 13 - 1.8 x 8.5 / 12.8 = 11.80 in.
        assertThat(Files.readString(out.resolve("timber-trees.csv")))
                .startsWith("tree,upper-end-in,timbers-square,spare-square-in,timbers-wane,spare-wane-in\n")
                .contains("A,12.4800,1,1.1663,1,", "B,11.8047,1,0.4910,");
        assertThat(run.out())
                .contains("2 of 2 give it with square edges", "d = F * B / 100", "i - (i - u) * w")
                .contains("Given on the command line");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void aTreeThatCannotAnswerIsNamedAndTheOthersGoOn() throws IOException {
        String trees = table("id,breast-height,form-class,taper\nA,16 in,78 %,\nB,20 in,80 %,1 in per 8 ft\n");
        Run run = Run.of("timber", "8x8", trees, "--length", "20 ft");
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("tree A: height on the stem is 21 ft", "give the taper above 17.3 ft");
        assertThat(run.out()).contains("1 of 1 give it with square edges", "1 tree of the table could not be asked");
    }

    @Test
    void measuredStemsAreAsked() throws IOException {
        // 1.3 in thinner at 13 ft than at the ground, as in the tests of the calculation.
        String trees =
                table("id,height,diameter\nthin,0 ft,12 in\nthin,50 ft,7 in\njust,0 ft,12.7 in\njust,50 ft,7.7 in\n");
        Run run = Run.of("timber", "8x8", trees, "--length", "12 ft");
        assertThat(run.out()).contains("1 of 2 give it with square edges, 2 with that wane");
    }

    /** Where the highest place measured is too low, the height of the tree says more. */
    @Test
    void theTipIsAPlace() throws IOException {
        String below = "id,height,diameter\nA,1 ft,20 in\nA,17.3 ft,16 in\n";
        assertThat(Run.of("timber", "8x8", table(below), "--length", "20 ft").err())
                .contains("tree A", "measure the stem there too");
        // From 16 in at 17.3 ft straight to nothing at 97.3 ft: 15.26 in at 21 ft, 11.25 in at 41.03 ft.
        Run run = Run.of("timber", "8x8", table(below + "A,97.3 ft,0 in\n"), "--length", "20 ft", "--wane", "0 %");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("15.26", "1 of 1 give it with square edges");
    }

    @Test
    void badInputIsNamed() throws IOException {
        assertThat(Run.of("timber", "8").err()).contains("SIZE: '8'");
        assertThat(Run.of("timber", "8x8", "--wane", "60 %").err()).contains("--wane", "0 to 50 %");
        String trees = table("id,breast-height,form-class,bark\nA,16 in,78,\nB,16 in,95 %,2 in\nA,16 in,80 %,\n");
        Run run = Run.of("timber", "8x8", trees);
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err())
                .contains("line 2, form-class: '78'", "add the unit")
                .contains("line 3, bark: '2 in'", "0 to 0.4 in")
                .contains("line 4, id: 'A'", "each tree once");
        assertThat(Run.of("timber", "8x8", table("id,breast-height,form-class\n"))
                        .err())
                .contains("a row for each tree");
    }

    @Test
    void theHeightOfATreeStandsInPlaceOfItsTaper() throws IOException {
        // 80 % of 20 in is 16 in at 17.3 ft; to nothing at 97.3 ft it loses 0.2 in a foot: 15.26 in at 21 ft.
        String trees = table("""
                id,breast-height,form-class,total-height,bark-ratio
                A,20 in,80 %,97.3 ft,
                B,20 in,80 %,,0.9
                C,20 in,80 %,97.3 ft,0.7
                """);
        Run run = Run.of("timber", "8x8", trees, "--length", "20 ft");
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.err()).contains("line 4, bark-ratio: '0.7'", "0 to 2 in");
        assertThat(run.out()).contains("1 of 3 rows of trees.csv could not be used and is left out");
        String good = table("""
                id,breast-height,form-class,total-height,bark-ratio
                A,20 in,80 %,97.3 ft,
                B,20 in,80 %,97.3 ft,0.9
                """);
        Run both = Run.of("timber", "8x8", good, "--length", "20 ft", "--working");
        assertThat(both.out()).contains("15.26", "2 of 2 give it with square edges", "t = u / (H - 17.3)");
        String twice = table("id,breast-height,form-class,total-height,taper\nA,20 in,80 %,97.3 ft,1 in per 8 ft\n");
        assertThat(Run.of("timber", "8x8", twice).err()).contains("a taper or the total height, not both");
        String low = table("id,breast-height,form-class,total-height\nA,20 in,80 %,18 ft\n");
        assertThat(Run.of("timber", "8x8", low).err()).contains("total-height: '18 ft'", "25.3 to 400 ft");
    }

    @Test
    void placesMeasuredOverTheBarkAreTakenInside() throws IOException {
        String trees = table("id,height,diameter,bark-ratio\nA,0 ft,20 in,0.9\nA,40 ft,16 in,0.9\n");
        // 19 in at 10 ft over the bark, 17.1 in inside.
        assertThat(Run.of("timber", "8x8", trees, "--length", "9 ft").out()).contains("17.10");
    }

    @Test
    void limitsAreToldInTheUnitThatWasWritten() {
        for (String[] pair : new String[][] {
            {"100 ft", "above 0, up to 98.425 ft;"},
            {"99' 6\"", "above 0, up to 98.425 ft;"},
            {"2000 in", "above 0, up to 1181.102 in;"},
            {"3001 cm", "above 0, up to 3000 cm;"},
            {"30.5 m", "above 0, up to 30 m;"},
            {"0 mm", "above 0, up to 30000 mm;"}
        }) {
            assertThat(Run.of("timber", "8x8", "--length", pair[0]).err())
                    .as(pair[0])
                    .contains("--length: '" + pair[0] + "' is not accepted; allowed: " + pair[1]);
        }
        assertThat(Run.of("timber", "8x8", "--kerf", "51 mm").err()).contains("allowed: 0 to 50.8 mm;");
        // What is allowed is accepted.
        assertThat(Run.of("timber", "8x8", "--length", "98.425 ft").code()).isZero();
        assertThat(Run.of("timber", "8x8", "--length", "1181.102 in").code()).isZero();
        assertThat(Run.of("timber", "8x8", "--kerf", "50.8 mm").code()).isZero();
    }

    @Test
    void aColumnThatEachRowWantsIsToldOnce() throws IOException {
        String trees = table("id,form-class\nA,78 %\nB,80 %\n");
        assertThat(Run.of("timber", "8x8", trees).problems())
                .hasSize(2)
                .anySatisfy(line -> assertThat(line)
                        .contains(
                                "trees.csv, line 1, breast-height: ",
                                "the column is missing; add it",
                                "2 rows want it"))
                .anySatisfy(line -> assertThat(line).endsWith("no row of trees.csv can be used"));
    }

    @Test
    void theWorkingSaysWhatComesFromTheTable() throws IOException {
        String trees = table("id,breast-height,form-class\nA,16 in,78 %\n");
        String out = Run.of("timber", "8x8", trees, "--working").out().replaceAll("\\s+", " ");
        assertThat(out)
                .containsPattern("F form class 78 % From the table trees.csv")
                .contains("Height of the stump and length of the log together [derived]")
                .containsPattern("w width 8 in Given on the command line");
    }

    @Test
    void aRowThatCannotBeUsedIsNamedAndCountedAndTheOthersAreTold() throws IOException {
        String trees =
                table("id,breast-height,form-class\nA,16,78 %\nB,16 in,78 %\nB,30 in,78 %\nC,8 in\nD,20 in,78 %\n");
        Run run = Run.of("timber", "8x8", trees);
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.err())
                .contains("trees.csv, line 2, breast-height: '16'", "trees.csv, line 4, id: 'B'", "trees.csv, line 5:");
        // 78 % of 16 in and of 20 in; a tree is told once.
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("3 of 5 rows of trees.csv could not be used and are left out; the messages say why.")
                .contains("2 of 2 give it with square edges", "12.48", "15.60")
                .doesNotContain("23.40");
    }

    @Test
    void aMeasuredStemThatLacksOneOfItsPlacesIsLeftOutWhole() throws IOException {
        // Without its middle the first stem would be straight, 11.4 in thick at 13 ft, and give a timber.
        String trees = table("""
                id,height,diameter
                neck,0 ft,12 in
                neck,10 ft,nine
                neck,50 ft,10 in
                just,0 ft,12.7 in
                just,50 ft,7.7 in
                gap,0 ft,12.7 in
                gap,,
                gap,50 ft,7.7 in
                """);
        Run run = Run.of("timber", "8x8", trees, "--length", "12 ft");
        assertThat(run.code()).isEqualTo(Main.DONE);
        assertThat(run.err()).contains("line 3, diameter: 'nine'", "line 8, height");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("1 of 1 give it with square edges")
                .contains("Tree neck is left out whole", "Tree gap is left out whole")
                .contains("6 of 8 rows of trees.csv could not be used")
                .doesNotContain("A row whose name cannot be read");
    }

    @Test
    void aRowWithACellTooManyOrTooFewSpoilsTheStemThatItNames() throws IOException {
        String rows = """
                id,height,diameter
                waist,0 ft,12.7 in
                RAGGED
                waist,50 ft,7.7 in
                just,0 ft,12.7 in
                just,50 ft,7.7 in
                """;
        for (String ragged : List.of("waist,10 ft,8 in,9", "waist,10 ft", "10 ft,8 in,9,waist")) {
            Run run = Run.of("timber", "8x8", table(rows.replace("RAGGED", ragged)), "--length", "12 ft");
            assertThat(run.code()).as(ragged).isZero();
            assertThat(run.out().replaceAll("\\s+", " "))
                    .as(ragged)
                    .contains("1 of 1 give it with square edges", "Tree waist is left out whole", "3 of 5 rows")
                    .doesNotContain("Tree just");
        }
        String alone = "id,height,diameter\njust,0 ft,12.7 in\njust,10 ft,8 in,9\njust,50 ft,7.7 in\n";
        Run none = Run.of("timber", "8x8", table(alone), "--length", "12 ft");
        assertThat(none.code()).isEqualTo(Main.INPUT);
        assertThat(none.out()).isEmpty();
        assertThat(none.err())
                .contains(
                        "line 3: 'just,10 ft,8 in,9'",
                        "Tree just is left out whole",
                        "no row of trees.csv can be used");
    }

    @Test
    void aRowOfWhichNobodyCanSayWhoseItIsLeavesOutAllMeasuredStems() throws IOException {
        String rows = """
                id,height,diameter,breast-height,form-class
                just,0 ft,12.7 in,,
                ODD
                just,50 ft,7.7 in,,
                A,,,16 in,78 %
                """;
        for (String nameless : List.of(",10 ft,8 in,,", "10 ft,8 in,,", ",10 ft,8 in", ",,8 in,,")) {
            Run run = Run.of("timber", "8x8", table(rows.replace("ODD", nameless)), "--length", "12 ft");
            assertThat(run.code()).as(nameless).isZero();
            assertThat(run.out().replaceAll("\\s+", " "))
                    .as(nameless)
                    .contains("1 of 1 give it with square edges", "3 of 4 rows")
                    .contains("Tree just is left out whole: a row of which nobody can say whose it is");
        }
        for (String ofAnother : List.of(",,,16 in,78 %", "B,16 in,78 %", "A,,,16 in,78 %,,")) {
            Run run = Run.of("timber", "8x8", table(rows.replace("ODD", ofAnother)), "--length", "12 ft");
            assertThat(run.out()).as(ofAnother).contains("2 of 2 give it with square edges");
        }
    }

    @Test
    void whereNoTreeCanBeAskedTheResultSaysSo() throws IOException {
        Run run = Run.of("timber", "8x8", table("id,breast-height,form-class\nA,16 in,78 %\n"), "--length", "20 ft");
        assertThat(run.out()).contains("No tree could be asked.", "1 tree of the table could not be asked");
    }
}
