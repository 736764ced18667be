package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DryingCommandTest {

    @TempDir
    Path folder;

    @Test
    void boardsWithAllThatIsAskedHaveEveryPart() {
        Run run = Run.of(
                "drying",
                "northern red oak",
                "2 in",
                "--width",
                "6 in",
                "--length",
                "6 ft",
                "--boards",
                "24",
                "--from",
                "80 %",
                "--to",
                "10 %",
                "--temperature",
                "120 F",
                "--humidity",
                "40 %",
                "--pith",
                "4 in");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        // By hand, 1 in takes 70 to 200 days: 70 x 2^1.47 = 193.9, 70 x 2^1.32 = 174.8, 70 x 2^1.52 = 200.8.
        assertThat(run.out())
                .containsPattern("1\\.47, used +194 +554 ")
                .containsPattern("1\\.32 +175 +499 ")
                .containsPattern("1\\.52 +201 +574 ");
        assertThat(run.out())
                .contains("for °F", "for °C", "air-drying-memory", "MEMORY")
                // tau = 2^1.52 / (0.0575 + 0.00142 x 87.5 mmHg) = 15.8 days; ln((80 - 6.81) / (10 - 6.81)) = 3.13.
                .containsPattern("Days in a kiln +49\\.[45] ")
                .contains("Cup of boards that nothing holds, from green to dry", "it is no kiln")
                .doesNotContain("left out;");
        // 7 boards of 6 in with gaps of 1 in fit into 48 in; 4 rows of 2 3/4 in; 72 in / 16 in, up to a whole one, and
        // one.
        assertThat(run.out()).containsPattern("these boards +northern +24 +7 +4 +6 +24 +11\\.0 ");
        // Half a cubic foot of red oak, gravity 0.56: 0.0141584 x 560 x 0.7 = 5.55 kg of water.
        assertThat(run.out()).containsPattern("one board .* 5\\.6 +12\\.2 ");
        assertThat(run.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(100);
    }

    @Test
    void whatIsMissingIsNamedWithTheReasonAndNeverZero() {
        Run run = Run.of("drying", "alaska yellow cedar", "28 mm");
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Days to dry in the open: left out; the table has no row for Alaska yellow-cedar")
                .contains("Equilibrium moisture: left out; no temperature")
                .contains("Weight of a board: left out; its width or its length is not given")
                .contains("Days in a kiln: left out; the equation is for northern and southern red oak alone")
                .contains("Cupping: left out")
                .contains("Stack: left out")
                .doesNotContain("Time to dry in the open");
        String dry = Run.of("drying", "white oak", "1 in", "--from", "19 %", "--to", "8 %")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(dry).contains("the range begins with green wood, and these boards start at 19 %");
        assertThat(Run.of("drying", "white oak", "5 in").out()).contains("0.5 to 4 in");
        String open = Run.of("drying", "northern red oak", "1 in", "--temperature", "20 C", "--humidity", "65 %")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(open).contains("it holds for 110 to 180 °F, and the air has 68.0 °F");
        String thick = Run.of("drying", "northern red oak", "3 in", "--temperature", "120 F", "--humidity", "65 %")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(thick).contains("Days in a kiln: left out", "1 to 2 in");
        String pith = Run.of("drying", "white oak", "2 in", "--width", "6 in", "--pith", "1 in", "--to", "12 %")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(pith).contains("Cupping: left out", "a board that holds the pith splits");
    }

    @Test
    void aTemperatureWithoutUnitIsOfferedBoth() {
        assertThat(Run.of("drying", "white oak", "1 in", "--temperature", "70", "--humidity", "65 %")
                        .err())
                .contains("'70'", "°F or °C", "write 70 °F or 70 °C");
        assertThat(Run.of("drying", "white oak", "1 in", "--temperature", "70 °F", "--humidity", "65 %")
                        .code())
                .isZero();
    }

    @Test
    void monthsInFrostHaveNoFigureAndThenTheYearHasNone() {
        String cold = "10 F; 20 F" + "; 50 F".repeat(10);
        String humid = String.join(";", Collections.nCopies(12, "70 %"));
        Run run = Run.of("drying", "white oak", "1 in", "--temperature", cold, "--humidity", humid);
        assertThat(run.code()).isZero();
        assertThat(run.out()).containsPattern("January +10\\.0 +70\\.0 +– +–");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains(
                        "Equilibrium moisture of January, February, and the mean of the year: left out; the equation holds")
                .doesNotContain("Mean of the year");
        Run mild = Run.of(
                "drying",
                "white oak",
                "1 in",
                "--temperature",
                cold.replaceAll("[12]0 F", "30 F"),
                "--humidity",
                humid);
        assertThat(mild.out().replaceAll("\\s+", " ")).contains("Mean of the year 13.");
    }

    @Test
    void aPlaceIsFoundByItsName() {
        assertThat(Run.of("drying", "white oak", "1 in", "--place", "denver co").out())
                .contains("outdoors in Denver, CO", "MEMORY: emc-cities-memory");
        assertThat(Run.of("drying", "white oak", "1 in", "--place", "Casper WY").out())
                .contains("Nov-Jun", "secondhand: fpl-rn-268-quoted");
        Run unknown = Run.of("drying", "white oak", "1 in", "--place", "Atlantis");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("Denver, CO; ", "give its temperature and humidity by month");
    }

    @Test
    void boardFeetBecomeWholeBoards() {
        // 2 x 6 in x 12 ft are 12 bf: 500 bf take 41.7 boards.
        Run run =
                Run.of("drying", "white oak", "2 in", "--width", "6 in", "--length", "12 ft", "--board-feet", "500 bf");
        assertThat(run.out()).contains(", 42 of them");
        Run many =
                Run.of("drying", "white oak", "2 mm", "--width", "6 mm", "--length", "12 mm", "--board-feet", "500 bf");
        assertThat(many.code()).isEqualTo(2);
        assertThat(many.err()).contains("give fewer board feet");
    }

    @Test
    void theWorkingsAreShownWhereTheyAreAskedFor() {
        Run run = Run.of("drying", "white oak", "1 1/2 in", "--working");
        assertThat(run.out()).contains("command line", "f = t^n", "lost = G * water * V * (M_1 - M_2) / 100");
        assertThat(Run.of("drying", "white oak", "1 1/2 in").out()).doesNotContain("t^n");
    }

    @Test
    void thePageHasTheDrawingAndTheTableEachFigureWithItsSource() throws IOException {
        Path out = folder.resolve("out");
        String[] words = {
            "drying",
            "white oak",
            "30 mm",
            "--width",
            "150 mm",
            "--length",
            "2.4 m",
            "--boards",
            "10",
            "--to",
            "12 %",
            "--pith",
            "80 mm",
            "--rings",
            "20 deg",
            "--out",
            out.toString()
        };
        assertThat(Run.of(words).code()).isZero();
        assertThat(Files.readString(out.resolve("drying.html")))
                .contains("<svg", "cup-1-title", "150.0 mm", "<details>")
                .doesNotContain("<script");
        assertThat(Files.readAllLines(out.resolve("drying.csv")))
                .anyMatch(line -> line.matches("stack,stickers,\\d+,,definition"))
                .anyMatch(line -> line.startsWith("cupping,hollow of the bark side,0.0"))
                .anyMatch(line -> line.matches("air-drying,\"least days, exponent 1.47\",.*,days,MEMORY: .*"))
                .noneMatch(line -> line.endsWith(","));
        assertThat(Run.of(words).code()).isEqualTo(2);
    }

    @Test
    void allThatCannotBeUsedIsToldTogether() {
        Run run = Run.of(
                "drying",
                "wood",
                "0 in",
                "--from",
                "6 %",
                "--to",
                "8 %",
                "--boards",
                "3",
                "--board-feet",
                "3 bf",
                "--temperature",
                "70 F; 20 C",
                "--humidity",
                "99 %",
                "--gap",
                "2 ft",
                "--spacing",
                "30 in",
                "--rings",
                "askew");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("WOOD", "THICKNESS", "up to the moisture at the start, 6 %", "leave one of the two out")
                .contains("one value, or twelve", "one unit for all months", "0 to 98 %", "0 to 1 ft", "up to 24 in")
                .contains("--rings");
        assertThat(Run.of("drying", "white oak", "1 in", "--humidity", "60 %").err())
                .contains("give the temperature as well");
        assertThat(Run.of("drying", "white oak", "1 in", "--temperature", "60 F")
                        .err())
                .contains("give the humidity as well");
        assertThat(Run.of("drying", "white oak", "1 in", "--temperature", "10 F", "--humidity", "60 %")
                        .err())
                .contains("30 to 270 °F");
        assertThat(Run.of("drying", "white oak", "1 in", "--to", "200 %").err())
                .contains("give a drier end, or the moisture at the start");
        assertThat(Run.of("drying", "white oak", "1 in", "--replace").code()).isEqualTo(2);
    }

    @Test
    void boardsWiderThanTheStackLeaveTheStackOutAndNothingElse() {
        String[] boards = {
            "drying",
            "white oak",
            "1 in",
            "--width",
            "50 in",
            "--length",
            "8 ft",
            "--boards",
            "2",
            "--stack-width",
            "4 ft"
        };
        Run run = Run.of(boards);
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Weight, and water that leaves")
                .contains("Stack: left out; width of the stack is 48 in; allowed: a board or more, 50 in;")
                .contains("give 50 in or more as stack-width");
        boards[boards.length - 1] = "50 in";
        assertThat(Run.of(boards).out()).contains("Stacks, one size in each").doesNotContain("Stack: left out");
    }

    @Test
    void aPlaceByItsTownAndAListWithCommasAreAskedAbout() {
        assertThat(Run.of("drying", "white oak", "1 in", "--place", "Denver").err())
                .contains("is Denver, CO meant? for another place");
        assertThat(Run.of("drying", "white oak", "1 in", "--pith", "3 in, 4 in").err())
                .contains("write semicolons, not commas: 3 in; 4 in");
        assertThat(Run.of("drying", "white oak", "1 in", "--temperature", "70 F, 71 F", "--humidity", "60 %")
                        .err())
                .contains("write semicolons, not commas: 70 F; 71 F");
        assertThat(Run.of("drying", "softwood", "1 in").err()).contains("'species softwood' lists them");
    }

    @Test
    void severalDistancesFromThePithAreSetBesideEachOther() {
        Run run = Run.of(
                "drying", "white oak", "1 1/8 in", "--width", "6 in", "--to", "10 %", "--pith", "4 in; 8 in; 1/8 in");
        assertThat(run.code()).isZero();
        // Farther from the pith the rings are straighter and the board cups less.
        assertThat(run.out())
                .containsPattern(" 4 +3\\.73 +7\\.00 +0\\.056 ")
                .containsPattern(" 8 +3\\.73 +7\\.00 +0\\.032 ");
        assertThat(run.out()).contains("distance from the pith is 1/8 in; allowed: above 0.562 in");
        assertThat(Run.of("drying", "white oak", "1 in", "--pith", "4 in; x").err())
                .contains("--pith: 'x'");
    }
}
