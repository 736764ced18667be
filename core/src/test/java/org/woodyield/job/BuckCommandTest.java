package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bucking a stem from the command line. */
class BuckCommandTest {

    @TempDir
    Path folder;

    private String prices;

    @BeforeEach
    void writePrices() throws IOException {
        prices = table("prices.csv", "least-diameter,price\n14 in,900 per mbf\n8 in,500 per mbf\n");
    }

    private String table(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void gradesOfAStemWithoutGradesInThePricesAreRefusedForThat() throws IOException {
        String stem = table("stem.csv", "from-butt,diameter,grade\n0 ft,14 in,1\n20 ft,10 in,\n");
        String prices = table("prices.csv", "least-diameter,price\n8 in,450 per mbf\n");
        assertThat(Run.of("buck", stem, "--prices", prices, "--rule", "doyle", "--lengths", "8 ft")
                        .err())
                .contains("line 2, grade: '1'", "the table of prices has no column grade");
        String ungraded = table("stem.csv", "from-butt,diameter,grade\n0 ft,14 in,\n20 ft,10 in,\n");
        assertThat(Run.of("buck", ungraded, "--prices", prices, "--rule", "doyle", "--lengths", "8 ft")
                        .code())
                .isZero();
    }

    @Test
    void aStemByItsEndsIsCutForMostWorth() {
        // By hand, no trim or kerf: 20 in at the butt less 1/8 in a foot. Small ends at 8, 16 and 24 ft: 19, 18 and 17
        // in;
        // Doyle 112.5, 98 and 84.5, halves up: 113 + 98 + 85 = 296 bf at 0.90.
        Run run = Run.of(
                "buck",
                "--length",
                "24 ft",
                "--butt",
                "20 in",
                "--top",
                "17 in",
                "--prices",
                prices,
                "--rule",
                "doyle",
                "--lengths",
                "8 ft; 16 ft",
                "--trim",
                "0 in",
                "--kerf",
                "0 in",
                "--working");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("worth 266.40 USD", "19 x 8", "all 3\n", "State of Louisiana", "V = v1 + (v2 + (v3))")
                .contains("v1 = S1 * p1 / 1000");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void aMeasuredStemWithGradesIsWrittenAsTables() throws IOException {
        String graded = table(
                "prices.csv",
                "least-diameter,least-length,grade,price\n10 in,8 ft,clear,900 per mbf\n8 in,8 ft,common,300 per mbf\n"
                        .concat("8 in,16 ft,common,0.40 per bf\n"));
        String stem = table(
                "stem.csv", "from-butt,diameter,grade\n0 ft,20 in,clear\n16 ft 6 in,18 in,common\n34 ft,15 in,\n");
        Path out = folder.resolve("out");
        Run run = Run.of(
                "buck",
                stem,
                "--prices",
                graded,
                "--rule",
                "doyle",
                "--lengths",
                "8 ft; 16 ft",
                "--kerf",
                "0 in",
                "--currency",
                "EUR",
                "--out",
                out.toString());
        assertThat(run.code()).isZero();
        // 18 in x 16 ft is 196 bf at 900; from there to 34 ft, 3 in in 17.5 ft: 15 in at the end of 16 ft
        // 6 in, 121 bf at 400; two of 8 ft would be 85 and 61 bf at 300.
        assertThat(Files.readString(out.resolve("buck-logs.csv")))
                .startsWith("log,from-butt-mm,length-mm,large-end-in,small-end-in,grade,scaled-in-x-ft,scale-bf,")
                .contains(",clear,18 x 16,196", ",common,15 x 16,121", ",400.00,48.40");
        assertThat(Files.readString(out.resolve("working.txt"))).contains("EUR");
        assertThat(Files.readString(out.resolve("buck.txt"))).isEqualTo(run.out());
    }

    @Test
    void theLawOfAPlaceSetsRuleAndConvention() {
        Run run = Run.of(
                "buck",
                "--length",
                "40 ft",
                "--butt",
                "18 in",
                "--top",
                "10 in",
                "--prices",
                prices,
                "--law",
                "georgia",
                "--lengths",
                "8 ft; 16 ft");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("O.C.G.A. 2-14-80", "Scribner Decimal C, MEMORY");
    }

    @Test
    void aStemThatTheBuyerTakesNothingOf() {
        Run run = Run.of(
                "buck",
                "--length",
                "40 ft",
                "--butt",
                "7 in",
                "--top",
                "4 in",
                "--prices",
                prices,
                "--rule",
                "doyle",
                "--lengths",
                "8 ft");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("takes no log", "worth 0.00 USD");
    }

    @Test
    void aSwellingIsTakenAsNoThickerThanBelowAndSaid() throws IOException {
        String bulge = table("bulge.csv", "from-butt,diameter\n0 ft,15 in\n8 ft,14 in\n16 ft,17 in\n24 ft,13 in\n");
        String[] how = {"--rule", "doyle", "--lengths", "16 ft", "--trim", "0 in", "--prices", prices};
        Run run = Run.of(Stream.concat(Stream.of("buck", bulge), Stream.of(how)).toArray(String[]::new));
        assertThat(run.code()).isZero();
        // Doyle of 14 in, not of 17 in.
        assertThat(run.out()).contains("14 x 16", "100", "90.00").contains("17.00 in at 16.00 ft as 14.00 in");
        assertThat(run.err()).contains("The stem swells", "common practice, no source");
        String[] ends = {"buck", "--length", "20 ft", "--butt", "10 in", "--top", "12 in"};
        assertThat(Run.of(Stream.concat(Stream.of(ends), Stream.of(how)).toArray(String[]::new))
                        .err())
                .contains("may be exchanged");
    }

    @Test
    void whatIsSaidOfTheStemStandsBesideEachLogOfTheFile() throws IOException {
        String bulge = table("bulge.csv", "from-butt,diameter\n0 ft,15 in\n8 ft,14 in\n16 ft,17 in\n24 ft,13 in\n");
        Path out = folder.resolve("swollen");
        String[] how = {"--rule", "doyle", "--lengths", "16 ft", "--prices", prices, "--out", out.toString()};
        Run.of(Stream.concat(Stream.of("buck", bulge), Stream.of(how)).toArray(String[]::new));
        assertThat(out.resolve("buck-logs.csv")).content().contains("17.00 in at 16.00 ft as 14.00 in");
    }

    @Test
    void aStemWithoutGradesSaysWhichPriceItGets() throws IOException {
        String graded =
                table("graded.csv", "least-diameter,grade,price\n8 in,prime,600 per mbf\n8 in,saw,300 per mbf\n");
        String[] stem = {"buck", "--length", "16 ft 6 in", "--butt", "18 in", "--top", "16 in", "--lengths", "16 ft"};
        Run run = Run.of(Stream.concat(Stream.of(stem), Stream.of("--rule", "doyle", "--prices", graded))
                .toArray(String[]::new));
        assertThat(run.err()).contains("The stem has no grade and is taken as 'prime', the first of the grades");
        // By hand: (16 - 4)^2 x 16 / 16 = 144, at 600 per mbf.
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("86.40 USD", "the one height that cuts can reach was looked at")
                .contains("The stem has no grade and is taken as 'prime'");
        String some = table("some.csv", "least-diameter,grade,price\n8 in,prime,600 per mbf\n8 in,,300 per mbf\n");
        Run plain = Run.of(Stream.concat(Stream.of(stem), Stream.of("--rule", "doyle", "--prices", some))
                .toArray(String[]::new));
        assertThat(plain.out()).contains("43.20 USD", "is paid by the prices that have none");
        String part = table("part.csv", "from-butt,diameter,grade\n0 ft,18 in,\n4 ft,17.5 in,saw\n16.5 ft,16 in,saw\n");
        assertThat(Run.of("buck", part, "--lengths", "16 ft", "--rule", "doyle", "--prices", graded)
                        .err())
                .contains("Up to 4 ft the stem has no grade and is taken as 'prime'");
        String whole = table("whole.csv", "from-butt,diameter,grade\n0 ft,18 in,saw\n16.5 ft,16 in,saw\n");
        assertThat(Run.of("buck", whole, "--lengths", "16 ft", "--rule", "doyle", "--prices", graded)
                        .err())
                .isEmpty();
    }

    @Test
    void aLogThatDoyleScalesTooHighCarriesItsCaution() throws IOException {
        String thin = table("thin.csv", "least-diameter,price\n1 in,500 per mbf\n");
        Path out = folder.resolve("thin");
        Run run = Run.of(
                "buck",
                "--length",
                "17 ft",
                "--butt",
                "4 in",
                "--top",
                "2 in",
                "--prices",
                thin,
                "--rule",
                "doyle",
                "--lengths",
                "16 ft",
                "--out",
                out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("- Caution: below 4 in the formula of Doyle rises again");
        assertThat(out.resolve("buck-logs.csv")).content().contains("below 4 in the formula of Doyle rises again");
    }

    @Test
    void badInputIsNamed() throws IOException {
        assertThat(Run.of("buck").err()).contains("one of --rule and --law");
        assertThat(Run.of("buck", "--rule", "doyle").err()).contains("a stem is needed");
        assertThat(Run.of("buck", "--rule", "doyel").err()).contains("'doyel'");
        String stem = table("stem.csv", "from-butt,diameter\n0 ft,12 in\n10 ft,x\n");
        Run run = Run.of("buck", stem, "--rule", "doyle", "--lengths", "8;16 ft");
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err()).contains("--prices", "stem.csv, line 3, diameter: 'x'", "--lengths: '8'", "add the unit");
        String down = table("down.csv", "from-butt,diameter\n10 ft,12 in\n0 ft,14 in\n");
        assertThat(Run.of("buck", down, "--rule", "doyle", "--lengths", "8 ft", "--prices", prices)
                        .err())
                .contains("down.csv", "list the places from the ground up");
        assertThat(Run.of("buck", down, "--length", "8 ft", "--rule", "doyle").err())
                .contains("given twice");
        String graded = table("graded.csv", "from-butt,diameter,grade\n0 ft,12 in,veneer\n10 ft,11 in,\n");
        assertThat(Run.of("buck", graded, "--rule", "doyle", "--lengths", "8 ft", "--prices", prices)
                        .err())
                .contains("'veneer'", "the table of prices has no column grade");
        String none = table("none.csv", "from-butt,diameter\n");
        assertThat(Run.of("buck", none, "--rule", "doyle", "--lengths", "8 ft", "--prices", prices)
                        .err())
                .contains("a row for each place");
    }

    private Run doyle(String... stem) {
        return Run.of(Stream.concat(
                        Stream.of("buck", "--prices", prices, "--rule", "doyle", "--kerf", "0 in", "--trim", "0 in"),
                        Stream.of(stem))
                .toArray(String[]::new));
    }

    @Test
    void aStandingTreeIsCutByItsFormClass() {
        // 80 % of 20 in is 16 in at 17.3 ft; straight from there to nothing at 97.3 ft it loses 0.2 in a foot: 13.06 in
        // at 32 ft. From a stump of 0 ft: Doyle of 16 in and of 13 in by 16 ft, 144 and 81 bf.
        Run run = doyle(
                "--breast-height",
                "20 in",
                "--form-class",
                "80 %",
                "--total-height",
                "97.3 ft",
                "--stump",
                "0 ft",
                "--lengths",
                "16 ft",
                "--working");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("16 x 16", "144", "13 x 16", "81", "t = u / (H - 17.3)");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("by the form class, below 17.3 ft taken as no thicker than there")
                .contains("above it straight to the tip");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void aTreeWithoutHeightEndsWhereItsFormClassDoes() {
        Run run =
                doyle("--breast-height", "20 in", "--form-class", "80 %", "--lengths", "12 ft", "--bark-ratio", "0.9");
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("Nothing is known of the stem above 17.3 ft");
        // 18 in inside bark at 4.5 ft, 16 in at 17.3 ft: 16.67 in at 13 ft.
        assertThat(run.out()).contains("17 x 12");
    }

    @Test
    void aCurveIsFittedToTheMeasuredStem() throws IOException {
        // Places of the parabola d^2 = 400 (1 - h / 80), so that d is 20 in at the ground and nothing at 80 ft.
        StringBuilder places = new StringBuilder("from-butt,diameter\n");
        for (int h = 0; h <= 60; h += 12) {
            places.append(h)
                    .append(" ft,")
                    .append(Math.rint(20e4 * Math.sqrt(1 - h / 80.0)) / 1e4)
                    .append(" in\n");
        }
        String stem = table("stem.csv", places.toString());
        Run run = doyle(
                stem, "--curve", "one parabola", "--total-height", "80 ft", "--stump", "0 ft", "--lengths", "16 ft");
        assertThat(run.code()).isZero();
        // 17.889, 15.492 and 12.649 in at 16, 32 and 48 ft.
        assertThat(run.out()).contains("18 x 16", "15 x 16", "13 x 16");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("by a taper curve of one parabola that was fitted to your 6 places: b1 ")
                .contains("Its greatest miss is 0.00 in");
        Run three = doyle(
                stem, "--curve", "three parabolas", "--total-height", "80 ft", "--stump", "0 ft", "--lengths", "16 ft");
        assertThat(three.out()).contains("18 x 16", "15 x 16", "13 x 16", "a1 0.75");
        String joins = "Three parabolas join at 0.75 and 0.1 of the height (common practice, no source).";
        assertThat(three.out().replaceAll("\\s+", " ")).contains(joins);
        assertThat(run.out().replaceAll("\\s+", " ")).doesNotContain(joins);
        assertThat(Run.of("buck", "--help").out().replaceAll("\\s+", " ")).contains(joins);
        assertThat(doyle(stem, "--curve", "one parabola", "--total-height", "50 ft", "--lengths", "16 ft")
                        .err())
                .contains("stem.csv: height of the tip is 50 ft", "no lower than the last place, 61 ft");
        assertThat(doyle(stem, "--curve", "one parabola", "--lengths", "16 ft").err())
                .contains("--total-height: allowed: a length");
        assertThat(doyle(
                                stem,
                                "--curve",
                                "one parabola",
                                "--total-height",
                                "90 ft",
                                "--stump",
                                "5 ft",
                                "--lengths",
                                "16 ft")
                        .err())
                .contains("below and above breast height, 4.5 ft");
    }

    @Test
    void coefficientsOfOnesOwnAreTakenAndNoneAreBuiltIn() {
        // d^2 = D^2 (1 - z): 20 sqrt(1 - 17/81) = 17.778 in at 17 ft, from a stump of 1 ft.
        Run run = doyle(
                "--curve",
                "b1 -1; b2 0",
                "--breast-height",
                "20 in",
                "--total-height",
                "81 ft",
                "--lengths",
                "16 ft",
                "--working");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("18 x 16", "with coefficients", "b1 -1, b2 0", "b1 * (z - 1)");
        assertThat(doyle("--curve", "b1 -1; b7 0", "--breast-height", "20 in", "--total-height", "81 ft")
                        .err())
                .contains("'b7 0'", "'one parabola', 'three parabolas', or coefficients as in b1");
        assertThat(doyle("--curve", "b1 -1", "--breast-height", "20 in", "--total-height", "81 ft")
                        .err())
                .contains("b1 and b2 are needed");
        assertThat(doyle(
                                "--curve",
                                "b1 2; b2 -3",
                                "--breast-height",
                                "20 in",
                                "--total-height",
                                "81 ft",
                                "--lengths",
                                "16 ft")
                        .err())
                .contains("this curve is no stem there");
    }

    @Test
    void diametersOutsideBarkAreTakenInside() throws IOException {
        String stem = table("stem.csv", "from-butt,diameter\n0 ft,20 in\n16 ft,18 in\n");
        Run run = doyle(stem, "--bark-ratio", "0.9", "--lengths", "16 ft");
        // 16.2 in inside bark.
        assertThat(run.out()).contains("16 x 16").contains("bark ratio given, 0.9");
        assertThat(doyle(stem, "--bark-ratio", "0.2", "--lengths", "16 ft").err())
                .contains("--bark-ratio: '0.2'", "0.5 to 1");
    }

    @Test
    void nothingGivenIsWithoutEffect() throws IOException {
        String stem = table("stem.csv", "from-butt,diameter\n0 ft,20 in\n16 ft,18 in\n");
        assertThat(doyle(stem, "--total-height", "80 ft", "--lengths", "16 ft").err())
                .contains("--total-height says nothing of a table; leave it out, or add --curve 'one parabola'");
        assertThat(doyle(stem, "--form-class", "80 %", "--lengths", "16 ft").err())
                .contains("given twice");
        assertThat(doyle("--form-class", "80 %", "--curve", "one parabola", "--lengths", "16 ft")
                        .err())
                .contains("is fitted to a table of places");
        assertThat(doyle("--breast-height", "20 in", "--lengths", "16 ft").err())
                .contains("a stem is needed");
    }

    @Test
    void theWorkingOfAFittedCurveSaysWhatItsValuesAre() throws IOException {
        String stem = table("stem.csv", "from-butt,diameter\n0 ft,20 in\n4 ft,18 in\n20 ft,15 in\n50 ft,9 in\n");
        Run one = doyle(stem, "--curve", "one parabola", "--total-height", "80 ft", "--lengths", "12 ft", "--working");
        assertThat(one.out().replaceAll("\\s+", " "))
                .contains(
                        "to the 4 places of stem.csv; greatest miss is 0.60 in, too thick at 5.00 ft above the ground")
                .contains(
                        "At 4.5 ft, straight between the places of stem.csv",
                        "Where the log ends, by the cuts below it")
                .containsPattern("p1 price of 1000 bf, grade any \\S+ USD From the table prices.csv")
                .contains("From the log, by the convention in the note [derived]")
                .doesNotContain("coefficients are the user's");
        Run straight = doyle(stem, "--lengths", "12 ft", "--working");
        assertThat(straight.out().replaceAll("\\s+", " "))
                .contains("d1 diameter below 15 in From the table stem.csv")
                .doesNotContain("Given on the command line");
        Run outside = doyle(stem, "--lengths", "12 ft", "--bark-ratio", "0.9", "--working");
        assertThat(outside.out().replaceAll("\\s+", " "))
                .contains("From the table stem.csv, times the bark ratio given [derived]");
    }

    @Test
    void aFitWithoutFreedomIsNotSoldAsAGoodOne() throws IOException {
        String four = "from-butt,diameter\n0 ft,20 in\n4 ft,18 in\n20 ft,15 in\n50 ft,9 in\n";
        String[] three = {"--curve", "three parabolas", "--total-height", "80 ft", "--lengths", "12 ft"};
        Run exact = doyle(arguments(table("stem.csv", four), three));
        assertThat(exact.out().replaceAll("\\s+", " "))
                .contains("4 coefficients were fitted to 4 places so that no degree of freedom is left")
                .doesNotContain("greatest miss");
        assertThat(exact.err()).contains("no degree of freedom is left");
        Run five = doyle(arguments(table("stem.csv", four + "65 ft,5 in\n"), three));
        assertThat(five.out().replaceAll("\\s+", " "))
                .contains("fitted to 5 places so that one degree of freedom is left", "greatest miss");
        // The tip lies on every such curve.
        Run tip = doyle(arguments(table("stem.csv", four + "79 ft,0 in\n"), three));
        assertThat(tip.out().replaceAll("\\s+", " "))
                .contains("fitted to 4 places, the tip not counted, so that no degree of freedom is left");
        Run six = doyle(arguments(table("stem.csv", four + "60 ft,6 in\n65 ft,5 in\n"), three));
        assertThat(six.out()).doesNotContain("freedom");
    }

    private static String[] arguments(String stem, String... more) {
        return Stream.concat(Stream.of(stem), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void aCoefficientThatCannotBeReadIsNotCalledMissing() {
        Run run = doyle(
                "--curve",
                "b1 1e400; b2 NaN",
                "--breast-height",
                "20 in",
                "--total-height",
                "81 ft",
                "--lengths",
                "8 ft");
        assertThat(run.err())
                .contains("'1e400' is not accepted", "write the number out, without an exponent", "'NaN'")
                .doesNotContain("b1 and b2 are needed");
        assertThat(doyle(
                                "--curve",
                                "b1 -1; b2 0; b1 -2",
                                "--breast-height",
                                "20 in",
                                "--total-height",
                                "81 ft",
                                "--lengths",
                                "8 ft")
                        .err())
                .contains("each coefficient once");
    }
}
