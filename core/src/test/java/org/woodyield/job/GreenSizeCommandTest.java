package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GreenSizeCommandTest {

    /** Half of the shrinkage to oven-dry at 15 %: Douglas-fir 4.8 and 7.6, white oak 5.6 and 10.5, white pine 2.1 and 6.1. */
    @ParameterizedTest
    @CsvSource({
        "douglas-fir, flat, 4.8, 7.6, '1.5625 / (1 - 2.4 / 100)', '3.5625 / (1 - 3.8 / 100)'",
        "douglas-fir, quarter, 4.8, 7.6, '1.5625 / (1 - 3.8 / 100)', '3.5625 / (1 - 2.4 / 100)'",
        "white oak, flat, 5.6, 10.5, '1.5625 / (1 - 2.8 / 100)', '3.5625 / (1 - 5.25 / 100)'",
        "white oak, quarter, 5.6, 10.5, '1.5625 / (1 - 5.25 / 100)', '3.5625 / (1 - 2.8 / 100)'",
        "eastern white pine, flat, 2.1, 6.1, '1.5625 / (1 - 1.05 / 100)', '3.5625 / (1 - 3.05 / 100)'",
        "eastern white pine, quarter, 2.1, 6.1, '1.5625 / (1 - 3.05 / 100)', '3.5625 / (1 - 1.05 / 100)'"
    })
    void aDressedTwoByFourAtFifteenPercentHasItsWholeWorking(
            String wood, String rings, double radial, double tangential, String thickness, String width) {
        Run run = Run.of("green-size", "2x4", wood, "--rings", rings);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("2x4", rings + "-sawn", "dressed 1 1/2 in x 3 1/2 in dry")
                .containsPattern("S_R +radial shrinkage .* " + radial + " +%")
                .containsPattern("S_T +tangential shrinkage .* " + tangential + " +%")
                .contains("S = S_0 * max(M_f - M, 0) / M_f", "C = (F + P) / (1 - S / 100)", "T = C + Z * s")
                .contains("setting = n * step")
                .contains("straight line from 30 % by species and ring angle");
        assertThat(leastGreen(run.out(), "thickness")).isEqualTo(shown(thickness));
        assertThat(leastGreen(run.out(), "width")).isEqualTo(shown(width));
    }

    /** The least green size as the comparison of the models prints it. */
    private static String leastGreen(String out, String face) {
        return out.lines()
                .filter(line -> line.startsWith("  " + face) && line.contains(" dries to "))
                .findFirst()
                .orElseThrow()
                .replaceAll(".*" + face + " (\\S+) in dries.*", "$1");
    }

    private static String shown(String quotient) {
        String[] parts = quotient.replaceAll("[()]", "").split(" ", -1);
        double value = Double.parseDouble(parts[0]) / (1 - Double.parseDouble(parts[4]) / 100);
        return String.format(java.util.Locale.ROOT, "%.3f", value);
    }

    @Test
    void flatAndQuarterSawnAreBothShownWhereNoRingsAreGiven() {
        Run run = Run.of("green-size", "2x4", "white oak");
        assertThat(run.out()).contains("white oak, flat-sawn", "white oak, quarter-sawn");
        assertThat(run.out()).contains("softwoods but redwood and cedars");
        assertThat(run.out()).contains("Given on the command line").doesNotContain("job folder");
    }

    @Test
    void theWayBackTellsWhatIsMeasuredAndHowManyAreScant() {
        Run enough = Run.of("green-size", "2x4", "douglas-fir", "--rings", "flat", "--sawn", "1 11/16 x 3 7/8");
        assertThat(enough.code()).isZero();
        assertThat(enough.out()).contains("to spare", "come out scant", "size = G * (1 - S / 100) - P");
        Run scant = Run.of("green-size", "2x4", "douglas-fir", "--rings", "flat", "--sawn", "1 1/2 in x 3 1/2 in");
        assertThat(scant.out()).contains("too little; 100.0 % come out scant");
    }

    @Test
    void everythingThatCannotBeUsedIsToldTogetherWithWhatIsAllowed() {
        Run run = Run.of(
                "green-size",
                "2x5 1/3",
                "duglas fir",
                "--moisture",
                "3 %",
                "--rings",
                "100 deg",
                "--model",
                "guess",
                "--sawn",
                "2",
                "--step",
                "0",
                "--undersize",
                "60 %");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("nearest: douglas-fir", "4 to 30 %", "0 to 90 degrees", "straight-line, lumber-equation")
                .contains("thickness x width", "--step", "0.1 to 50 %", "SIZE");
    }

    @Test
    void aModelRefusesASpeciesOrMoistureOutsideItsRange() {
        Run oak = Run.of("green-size", "2x4", "white oak", "--model", "lumber-equation");
        assertThat(oak.code()).isEqualTo(2);
        assertThat(oak.err()).contains("softwoods but redwood and cedars");
        Run dry = Run.of("green-size", "2x4", "douglas-fir", "--model", "lumber-equation", "--moisture", "6 %");
        assertThat(dry.code()).isEqualTo(2);
        assertThat(dry.err()).contains("8 to 19 %");
    }

    @Test
    void theSizeItselfIsTakenWhereItsUnitIsWritten() {
        Run refused = Run.of("green-size", "1 3/4x6", "white oak");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("or give the size itself with its unit, such as 1 3/4 in x 6 in");
        Run run = Run.of("green-size", "1 3/4 in x 6 in", "white oak", "--rings", "flat");
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("dressed 1 3/4 in x 6 in dry (as given)");
        // White oak at 15 %, flat: (1 3/4 + 1/16) / (1 - 2.8 / 100).
        assertThat(leastGreen(run.out(), "thickness")).isEqualTo(shown("1.8125 / (1 - 2.8 / 100)"));
        assertThat(Run.of("green-size", "45 mm x 145 mm", "white oak").out()).contains("45 mm x 145 mm dry");
    }

    @Test
    void aSawnSizeInDecimalsOfAnInchIsAnsweredInInches() {
        Run run = Run.of("green-size", "2x4", "white oak", "--sawn", "1.7 x 3.9");
        assertThat(run.out()).contains("sawn 1.7 in it", "sawn 3.9 in it").doesNotContain("sawn 43.18 mm");
        assertThat(Run.of("green-size", "2x4", "white oak", "--sawn", "43 mm x 99 mm")
                        .out())
                .contains("sawn 43 mm it", "sawn 99 mm it");
    }

    @Test
    void aWordThatManySpeciesHoldIsAnsweredWithThose() {
        assertThat(Run.of("green-size", "2x4", "oak").err()).contains("white oak", "northern red oak", "more");
        assertThat(Run.of("green-size", "2x4", "pine").err())
                .contains("eastern white pine", "western white pine")
                .doesNotContain("nearest");
        assertThat(Run.of("green-size", "2x4", "white oka").err()).contains("nearest: white-oak");
        assertThat(Run.of("green-size", "2x4", "--", "-").code()).isEqualTo(2);
    }

    @Test
    void theHelpIsShownWithoutAWord() {
        Run help = Run.of("green-size", "--help");
        assertThat(help.code()).isZero();
        assertThat(help.out()).contains("15 % if not", "5 % if not");
        assertThat(help.err()).isEmpty();
    }

    @Test
    void anUnknownSizeIsRefusedWithAllThatAreKnown() {
        assertThat(Run.of("green-size", "2x13", "white oak").err())
                .contains("the sizes of PS 20: 2 in, 2 1/2 in, 3 in", "nearest: 12 in, 14 in, 10 in");
        assertThat(Run.of("green-size", "2x4", "white oak", "--moisture", "35 %")
                        .err())
                .contains("allowed: 4 to 30 %")
                .doesNotContain("write green");
    }

    @Test
    void measuredBoardsGiveTheVariationByBothConventions(@TempDir Path folder) throws IOException {
        // Eight boards of a printed example: 0.016 within, 0.022 between, 0.025 in all.
        String boards = Files.writeString(folder.resolve("boards.csv"), """
                        id,readings
                        1,1.700 in; 1.730 in; 1.710 in; 1.720 in
                        2,1.670 in; 1.720 in; 1.700 in; 1.710 in
                        3,1.690 in; 1.720 in; 1.700 in; 1.680 in
                        4,1.740 in; 1.730 in; 1.750 in; 1.720 in
                        5,1.700 in; 1.680 in; 1.660 in; 1.670 in
                        6,1.710 in; 1.720 in; 1.720 in; 1.740 in
                        7,1.660 in; 1.690 in; 1.680 in; 1.680 in
                        8,1.710 in; 1.750 in; 1.740 in; 1.720 in
                        """).toString();
        Run run = Run.of("green-size", "2x4", "white oak", "--boards", boards, "--rings", "flat");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "mean 1.7069 in",
                        "plain deviations: within boards 0.0159 in, between 0.0224 in, in all 0.0255 in")
                .contains("components of variance: within boards 0.0159 in, between 0.0209 in, in all 0.0263 in")
                .containsPattern("Q +sum of the boards' variances .*From the table boards\\.csv")
                .containsPattern("s +standard deviation of sawing .*From the table boards\\.csv");
        assertThat(Run.of("green-size", "2x4", "white oak", "--boards", boards, "--variation", "0.02 in")
                        .err())
                .contains("leave one of the two out");
        String twice = Files.writeString(
                        folder.resolve("twice.csv"),
                        "id,readings\na,1.7 in; 1.8 in\nb,1.7 in; 1.71 in\na,1.7 in; 1.72 in\n")
                .toString();
        assertThat(Run.of("green-size", "2x4", "white oak", "--boards", twice).err())
                .contains("twice.csv, line 4, id: 'a' is not accepted", "it stands in twice.csv, line 2 already");
        String few = Files.writeString(folder.resolve("few.csv"), "readings\n1.7 in; x\n")
                .toString();
        assertThat(Run.of("green-size", "2x4", "white oak", "--boards", few).err())
                .contains("few.csv, line 2, readings: 'x'");
        String one = Files.writeString(folder.resolve("one.csv"), "readings\n1.7 in; 1.8 in\n")
                .toString();
        assertThat(Run.of("green-size", "2x4", "white oak", "--boards", one).err())
                .contains("--boards", "boards: 2 or more");
    }

    @Test
    void aConnectorTakesThePlanedThicknessAndNotTheRough() {
        // By hand: 1 11/16 in shrinks 2.8 % flat-sawn to 1.640 in, 0.078 in over 1 9/16 in.
        Run run = Run.of("green-size", "2x4", "white oak", "--rings", "flat", "--connector", "1 1/2 in; 1 9/16 in");
        assertThat(run.out())
                .contains("planed to 1 1/2 in it fits; left rough, 1.640 in dry, it is too wide by 0.078 in")
                .contains("Size alone says nothing of strength");
        assertThat(Run.of("green-size", "2x4", "white oak", "--connector", "1 3/4 in; 1 13/16 in")
                        .out())
                .contains("it stands loose by 0.250 in");
        assertThat(Run.of("green-size", "2x4", "white oak", "--connector", "1 1/2 in")
                        .err())
                .contains("two widths with a semicolon");
        assertThat(Run.of("green-size", "2x4", "white oak", "--connector", "2 in; 1 in")
                        .err())
                .contains("the narrower board first");
    }

    @Test
    void woodThatHadDriedWhenItWasSawnStartsFromThatMoisture() {
        // By hand, Table 13-5: 3.875 (1 - 0.00365 x 4) = 3.818 in wide, 1.6875 (1 - 0.0018 x 4) = 1.675 in thick. By
        // the
        // straight line: 3.875 (1 - 0.105 x 22/30) / (1 - 0.105 x 18/30) = 3.817 in.
        Run run = oak("8 %", "12 %");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "width: sawn 3 7/8 in at 12 % it measures 3.818 in at 8 % and 3.756 in planed, 0.256 in to spare")
                .contains("thickness: sawn 1 11/16 in at 12 % it measures 1.675 in at 8 %")
                .contains("width: sawn 3 7/8 in at 12 % it measures 3.817 in at 8 %", "by the straight line")
                .contains("change = D * (C * (M_2 - M_1))", "Table 13-5", "planed = D_2 - P")
                .contains("width: not by the lumber equation of FPL-RP-489; species is white oak");
        Run one = oak("8 %", "12 %", "--model", "coefficient");
        assertThat(one.out()).contains("measures 3.818 in").doesNotContain("straight line", "3.817 in");
    }

    @Test
    void theScantShareIsThatOfTheSizeAsItWasSawn() {
        Run run = Run.of(
                "green-size",
                "2x4",
                "white oak",
                "--rings",
                "flat",
                "--moisture",
                "12 %",
                "--sawn",
                "1 11/16 x 3.509 in",
                "--sawn-at",
                "8 %",
                "--model",
                "straight-line");
        // 3.5625 x (1 - 0.077) / (1 - 0.063) = 3.5093 in, 0.0003 in above: 0.009 deviations, 50.4 %.
        assertThat(run.out()).containsPattern("width: sawn 3.509 in at 8 % it measures .*; 50\\.4 % come out scant");
        Run exact = Run.of(
                "green-size",
                "2x4",
                "white oak",
                "--rings",
                "flat",
                "--moisture",
                "12 %",
                "--sawn",
                "1 11/16 x 3.509 in",
                "--sawn-at",
                "8 %",
                "--variation",
                "0 in",
                "--model",
                "straight-line");
        assertThat(exact.out()).containsPattern("width: .*; 100(\\.0)? % come out scant");
    }

    @Test
    void coefficientsAreNotTakenBeyondTheirRange() {
        Run nineteen = oak("8 %", "19 %");
        assertThat(nineteen.out())
                .contains("by the straight line")
                .contains("not by the dimensional-change coefficient; moisture is 19 %; allowed: 6 to 14 %");
        Run refused = oak("8 %", "19 %", "--model", "coefficient");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("moisture is 19 %; allowed: 6 to 14 %", "without --model");
        assertThat(oak("5 %", "12 %", "--model", "coefficient").err()).contains("moisture is 5 %; allowed: 6 to 14 %");
        assertThat(oak("8 %", "40 %").err()).contains("--sawn-at: '40 %'", "4 to 30 %", "leave --sawn-at out");
        assertThat(Run.of("green-size", "2x4", "white oak", "--sawn-at", "12 %").err())
                .contains("--sawn-at: '12 %'", "add --sawn SIZE");
        assertThat(Run.of("green-size", "2x4", "white oak", "--model", "coefficient")
                        .err())
                .contains("--model: 'coefficient'", "from green wood: straight-line, lumber-equation", "add --sawn-at");
    }

    private static Run oak(String moisture, String sawnAt, String... more) {
        return Run.of(Stream.concat(
                        Stream.of(
                                "green-size",
                                "2x4",
                                "white oak",
                                "--rings",
                                "flat",
                                "--sawn",
                                "1 11/16 x 3 7/8",
                                "--moisture",
                                moisture,
                                "--sawn-at",
                                sawnAt),
                        Stream.of(more))
                .toArray(String[]::new));
    }
}
