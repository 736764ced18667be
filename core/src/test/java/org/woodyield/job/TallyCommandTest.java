package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TallyCommandTest {

    @TempDir
    Path folder;

    private String table(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.csv"), text).toString();
    }

    @Test
    void lumberIsCountedExactlyAndSummedBySizeSpeciesAndGrade() throws IOException {
        Run run = Run.of(
                "tally",
                table(
                        "size,length,quantity,species,grade\n2x4,8 ft,24,fir,No. 2\n2x6,12 ft,15,fir,\n1x6,8 ft,1,pine,\n"),
                "--working");
        assertThat(run.code()).isZero();
        // By hand: 24 x 5 1/3 = 128, 15 x 12 = 180, 4.
        assertThat(run.out())
                .contains("In all 312 bf, 312 bf to the whole foot (nearest, half up", "By species", "not named")
                .contains("V_3 / 144");
        assertThat(run.err()).contains("3 rows: 3 counted, 0 refused");
    }

    @Test
    void hardwoodHalvesGoUpAndDownAlternatelyWithinABundle() throws IOException {
        // By hand: 6 in x 9 ft is 4 1/2 ft2 each: 5, 4, 5 in one bundle and 5 in the other.
        String boards =
                table("size,length,quantity,species,grade\n4/4 x 6,9 ft,3,oak,FAS\n4/4 x 6,9 ft,1,oak,No. 1 Common\n");
        Run run = Run.of("tally", boards, "--by", "surface", "--kiln-net", "usual", "--working");
        assertThat(run.out()).contains("In all 19 bf by surface measure", "17.7 bf, 7 % taken off", "[secondhand]");
        assertThat(run.out()).contains("Net tally after kiln drying\n");
        assertThat(Run.of("tally", boards, "--by", "surface", "--half", "down").out())
                .contains("In all 17 bf by surface measure", "the first down");
    }

    @Test
    void measuredLumberIsSolidVolumeAndAsJapanCounts() throws IOException {
        // By hand: 0.105 x 0.105 x 3 = 0.033075, counted 0.033.
        Run run = Run.of("tally", table("size,length,quantity\n105x105 mm,3 m,4\n"), "--by", "measured");
        assertThat(run.out()).contains("In all 0.13230 m3 solid, 0.132 m3 as Japan counts");
    }

    @Test
    void aMeasuredSizeNeedsItsUnit() throws IOException {
        Run run = Run.of("tally", table("""
                        size,length
                        2x4,8 ft
                        2 x 4 in,8 ft
                        1/2 in x 4 in,8 ft
                        47 X 100 MM,3 m
                        47 mm x 100,3 m
                        """), "--by", "measured");
        assertThat(run.err())
                .contains(
                        "mine.csv, line 2, size: '2x4' is not accepted",
                        "write 2x4 mm or 2x4 in; nominal sizes such as 2x4 are counted without --by measured")
                .contains("mine.csv, line 6, size: '100' is not accepted", "add the unit")
                .contains("5 rows: 3 counted, 2 refused");
        assertThat(run.out()).contains("50.8 x 101.6 mm", "12.7 x 101.6 mm", "47 x 100 mm");
    }

    @Test
    void anUnknownColumnNearAKnownOneIsAskedAboutAndAllColumnsAreNamed() throws IOException {
        assertThat(Run.of("tally", table("size,length,qty\n2x4,8 ft,3\n")).err())
                .contains(
                        "line 1, qty: 'qty' is not accepted; allowed: the columns size, length, quantity, species, grade",
                        "is quantity meant? if not, remove the column");
        assertThat(Run.of("tally", table("size,length,colour\n2x4,8 ft,3\n")).err())
                .contains("rename it to one of these, or remove the column");
    }

    @Test
    void aSpeciesThatNoTableHasIsSaidAndSummedAllTheSame() throws IOException {
        Run run = Run.of("tally", table("size,length,species\n2x4,8 ft,white oak\n2x4,8 ft,whit oak\n2x4,8 ft,\n"));
        assertThat(run.code()).isZero();
        assertThat(run.err())
                .contains(
                        "species 'whit oak' is not in the tables and is summed as a name of its own; nearest: white-oak")
                .doesNotContain("species 'white oak'", "species ''");
        assertThat(run.out()).containsPattern("whit oak +1 ");
    }

    @Test
    void eachWorkingSaysWhatItIsOf() throws IOException {
        assertThat(Run.of(
                                "tally",
                                table("size,length\n47 x 100 mm,3 m\n47 x 150 mm,3 m\n"),
                                "--by",
                                "measured",
                                "--working")
                        .out())
                .contains("A piece of 47 x 100 mm, 3000 mm long\nVolume of", "A piece of 47 x 150 mm, 3000 mm long\n");
        assertThat(Run.of(
                                "tally",
                                table("size,length,species\n4/4 x 6,8 ft,oak\n5/4 x 6,8 ft,ash\n"),
                                "--by",
                                "surface",
                                "--kiln-net",
                                "usual",
                                "--working")
                        .out())
                .contains("Bundle 4/4, oak\n", "Bundle 5/4, ash\n", "Net after kiln drying\n");
        assertThat(Run.of("tally", table("size,length\n2x4,8 ft\n"), "--working")
                        .out())
                .contains("All board feet\n");
    }

    @Test
    void aBadRowIsNamedAndCountedAndTheOthersGoOn() throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of(
                "tally",
                table(
                        "size,length,quantity\n2x4,8 ft,24\n2 by 4,8 ft,1\n2x4,8,1\n2x4,8 ft,x\n2x4,8 ft,0\n2x4,8 ft\n,8 ft,1\n"),
                "--out",
                out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.err())
                .contains("mine.csv, line 3, size: '2 by 4'", "--by measured")
                .contains("mine.csv, line 4, length: '8'", "add the unit")
                .contains("mine.csv, line 5, quantity: 'x'", "mine.csv, line 6, quantity: '0'")
                .contains("mine.csv, line 7", "the line has 2")
                .contains("mine.csv, line 8, size: allowed: a nominal size")
                .contains("7 rows: 1 counted, 6 refused");
        assertThat(out.resolve("refused.csv")).content().hasLineCount(7);
        assertThat(out.resolve("tally.csv")).content().contains("2x4,2438.400,,,24,128,128.000,7.000,0.1982");
        assertThat(out.resolve("sums.csv")).content().contains("all,,24,128,128.000,7.000,0.1982");
        Run badBoards = Run.of(
                "tally",
                table("size,length\n9/7 x 6,8 ft\n8/4 x 70,8 ft\n8/4 x 10,50 ft\n8/4,8 ft\n4/4 x 6,8 ft\n"),
                "--by",
                "surface");
        assertThat(badBoards.err())
                .contains("line 2, size: '9/7'", "line 3, size: '70 in'", "0, up to 60 in")
                .contains("line 4, length: '50 ft' is not accepted; allowed: 1 to 40 ft", "line 5, size: '8/4'")
                .contains("5 rows: 1 counted, 4 refused");
    }

    @Test
    void aMeasuredPieceThatJapanDoesNotCountIsABadRow() throws IOException {
        Run run = Run.of(
                "tally",
                table("size,length\n0.9 x 100 mm,3 m\n47 x 0.5 mm,3 m\n47 x 100 mm,0.5 mm\n47 x 100 mm,3 m\n"),
                "--by",
                "measured");
        assertThat(run.code()).isZero();
        assertThat(run.err())
                .contains("mine.csv, line 2, size: '0.9 x 100 mm' is not accepted; allowed: 1 to 1000 mm")
                .contains("mine.csv, line 3, size: '47 x 0.5 mm'", "mine.csv, line 4, length: '0.5 mm'")
                .contains("4 rows: 1 counted, 3 refused");
        // By hand: 0.047 x 0.1 x 3 = 0.0141.
        assertThat(run.out()).contains("In all 0.01410 m3 solid, 0.014 m3 as Japan counts");
    }

    @Test
    void theExactColumnIsNotRounded() throws IOException {
        // By hand: 3 x 8 x (123 1/64) / 144 = 20 193/384, and 8 x (2400 / 25.4) / 144 = 5 95/381; together 25
        // 36671/48768.
        Run feet = Run.of("tally", table("size,length,quantity\n2x4,10 ft 3 1/64 in,3\n2x4,2.4 m,1\n"));
        assertThat(feet.out()).contains("In all 25 36671/48768 bf, 26 bf");
        // By hand: 1 1/2 in x 3 1/2 in x 8 ft = 0.0381 x 0.0889 x 2.4384.
        Run metres = Run.of(
                "tally",
                table("size,length\n1 1/2 in x 3 1/2 in,8 ft\n"),
                "--by",
                "measured",
                "--out",
                folder.resolve("metric").toString());
        assertThat(metres.code()).isZero();
        assertThat(folder.resolve("metric").resolve("sums.csv")).content().contains(",1,0.008259080256,");
    }

    @Test
    void thinHardwoodIsBundledWithInchBoards() throws IOException {
        // By hand: 4 1/2 ft2 each, counted an inch thick: 5 and 4.
        Run run = Run.of("tally", table("size,length\n5/8 x 6,9 ft\n4/4 x 6,9 ft\n"), "--by", "surface");
        assertThat(run.out()).contains("In all 9 bf by surface measure", "4/4 and thinner");
    }

    @Test
    void whatCannotBeCountedIsRefusedWhole() throws IOException {
        refused("no row of mine.csv can be counted", "size,length\nx,8 ft\n");
        refused("a row for each size", "size,length\n");
        refused("is size meant", "sise,length\n2x4,8 ft\n");
        refused("with --by surface", "size,length\n2x4,8 ft\n", "--kiln-net", "usual");
        refused("usual, other seller", "size,length\n4/4 x 6,8 ft\n", "--by", "surface", "--kiln-net", "mine");
        refused("nominal", "size,length\n2x4,8 ft\n", "--by", "weight");
        assertThat(Run.of("tally", "").err())
                .contains("table is not named; name its file; it has the columns size, length");
        refused("up, down", "size,length\n2x4,8 ft\n", "--half", "even");
    }

    private void refused(String why, String text, String... options) throws IOException {
        String[] all = new String[options.length + 2];
        all[0] = "tally";
        all[1] = table(text);
        System.arraycopy(options, 0, all, 2, options.length);
        Run run = Run.of(all);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(why);
    }

    @Test
    void rowsThatCannotBeCountedStandInTheFolderThatWasNamed() throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of("tally", table("size,length\nx,8 ft\ny,8 ft\n"), "--out", out.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("no row of mine.csv can be counted; the rows stand in ");
        assertThat(Files.readAllLines(out.resolve("refused.csv"))).hasSize(3);
    }
}
