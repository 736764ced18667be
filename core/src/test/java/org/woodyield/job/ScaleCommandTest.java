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
import org.woodyield.scaling.Jurisdiction;

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
        assertThat(run.out()).isEqualTo("""
                        row,id,doyle-bf-scale,not-scaled,caution
                        log,a,100,,
                        log,b,40,,
                        total,2 logs,140,,
                        source,,"[published] State of Louisiana, Revised Statutes 3:4641 (Acts 1992 No. 55), 1992, Doyle rule",,
                        """);
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
    void logsThatARuleRefusesForOneReasonAllSayIt() throws IOException {
        Run run = Run.of("scale", table("""
                        id,small-end,length
                        a,14 in,16 ft
                        b,14 in,16 ft 3 in
                        c,14 in,13 ft
                        d,14 in,12 ft
                        e,14 in,2 in
                        f,14 in,4 in
                        """), "--rules", "vermont");
        assertThat(run.out().lines().filter(line -> line.startsWith("log,")))
                .satisfiesExactly(
                        a -> assertThat(a).startsWith("log,a,,").contains("vermont: scaling length is 16 ft"),
                        b -> assertThat(b).startsWith("log,b,,").contains("vermont: scaling length is 16 ft"),
                        c -> assertThat(c).startsWith("log,c,,").contains("vermont: scaling length is 13 ft"),
                        d -> assertThat(d).isEqualTo("log,d,98,,"),
                        e -> assertThat(e).contains("length of log e is 2 in"),
                        f -> assertThat(f).contains("length of log f is 4 in"));
        assertThat(run.err()).contains("6 rows: 6 scaled, 5 of them not by every rule; 0 refused");
    }

    @Test
    void whatIsAmissWithADefectIsSaidOnceForAllRules() throws IOException {
        Run run = Run.of(
                "scale",
                table("id,small-end,length,sweep\na,14 in,20 ft,3 in\n"),
                "--rules",
                "doyle,scribner-decimal-c");
        assertThat(run.out()).contains("\"doyle, scribner-decimal-c, net: length of a log with sweep is 20 ft");
        assertThat(run.out().split("length of a log with sweep", -1)).hasSize(2);
    }

    @Test
    void theRemedyForSweepInALogTooLongOrTooShortCanBeFollowed() throws IOException {
        String[] rules = {"--rules", "doyle"};
        Run longLog = Run.of("scale", table("id,small-end,length,sweep\na,14 in,20 ft,3 in\n"), rules[0], rules[1]);
        assertThat(longLog.out()).contains("enter the log as logs of 8 to 16 ft, each with its own sweep");
        assertThat(Run.of(
                                "scale",
                                table("id,small-end,length,sweep\na1,14 in,10 ft,2 in\na2,15 in,10 ft,2 in\n"),
                                rules[0],
                                rules[1])
                        .out())
                .contains("2 of 2");
        Run shortLog = Run.of("scale", table("id,small-end,length,sweep\na,14 in,6 ft,3 in\n"), rules[0], rules[1]);
        assertThat(shortLog.out())
                .contains(
                        "recalled at 8, 12 and 16 ft and is taken in between, not beyond",
                        "of a shorter log give it as a crook over the whole length");
        assertThat(Run.of("scale", table("id,small-end,length,sweep\na,14 in,6 ft,\n"), rules[0], rules[1])
                        .out())
                .contains("1 of 1");
    }

    @Test
    void aWrongSeparatorIsNamed() throws IOException {
        String logs = table("id,small-end,length\na,14 in,16 ft\n");
        assertThat(Run.of("scale", logs, "--rules", "doyle; smalian").err()).contains("commas", "write doyle, smalian");
        assertThat(Run.of("scale", logs, "--rules", "doyle, smalian").code()).isZero();
        assertThat(Run.of("scale", logs, "--law", "michigan;idaho").err()).contains("write michigan, idaho");
        assertThat(Run.of("scale", logs, "--rules", "own kerf 3/16 in, slab 2 in")
                        .err())
                .contains("semicolons", "own kerf 3/16 in; slab 2 in");
    }

    @Test
    void theKeyOfARuleForOnesOwnSawIsTakenBack() throws IOException {
        String logs = table("id,small-end,length\na,14 in,16 ft\n");
        for (String written : new String[] {
            "own kerf 3/16 in; slab 2 in",
            "own kerf 0.25 in; taper 1/2 in per 4 ft; section 4 ft",
            "own kerf 5 mm; board 1 1/16 in; shrinkage 1.5 mm",
            "own kerf 1/4\"; section 4'",
        }) {
            String card = Run.of("rules", written).out().replaceAll("\\s+", " ");
            String key = card.replaceAll(".*\\((own-[a-z0-9.-]+)\\) - Standing.*", "$1");
            assertThat(key).startsWith("own-kerf-");
            assertThat(Run.of("rules", key).out()).contains("(" + key + ")");
            assertThat(Run.of("scale", logs, "--rules", key).out())
                    .isEqualTo(Run.of("scale", logs, "--rules", written).out())
                    .contains(key + "-bf-scale");
        }
        assertThat(Run.of("rules", "own kerf 3/16 in; slab 2 in").out())
                .contains("- Given: kerf 3/16 in; slab 2 in.")
                .contains("taken as in the International rule: board 1 in; shrinkage 0.0625 in; taper 0.125 in")
                .contains("section 4 ft.");
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
        assertThat(run.out()).startsWith("Doyle [published]: 100 bf scale of 1 log\n  State of Louisiana");
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
    void aLawSetsRuleAndConventionAndIsCited() throws IOException {
        // Georgia: 13.5 in goes to the even inch, 20 ft 3 in to 20 ft in two parts of 10 ft. Scribner factors 7.14 and
        // 8.88.
        Run run = Run.of(
                "scale",
                table("id,small-end,length,large-end\na,13.5 in,20 ft 3 in,17 in\n"),
                "--law",
                "georgia",
                "--rules",
                "doyle");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .startsWith("row,id,doyle-bf-scale,law-georgia-bf-scale,not-scaled,caution\n")
                .contains("log,a,101,160,,\n")
                .contains("O.C.G.A. 2-14-80 (Ga. L. 1957 p. 588), 1957; rule: Scribner");
        String logs = table("id,small-end,length\na,13.5 in,20 ft 3 in\n");
        assertThat(Run.of("scale", logs, "--law", "georgia").out())
                .contains("large-end is not given", "scaled in 2 parts");
        Run wrong = Run.of("scale", logs, "--law", "georgja,new-hampshire,georgia,georgia");
        assertThat(wrong.code()).isEqualTo(Main.INPUT);
        assertThat(wrong.err())
                .contains("michigan, massachusetts", "is georgia meant?", "no law of the state", "named twice");
        assertThat(Run.of("scale", logs).err()).contains("--law");
    }

    @Test
    void everyLawAndEveryRuleScalesALog() throws IOException {
        String logs = table("id,small-end,length,large-end\na,20 in,12 ft,22 in\nb,35 cm,4 m,38 cm\n");
        for (Jurisdiction place : Jurisdiction.values()) {
            Run run = Run.of("scale", logs, "--law", place.id());
            assertThat(run.err()).as(place.id()).contains("2 rows: 2 scaled, 0 of them not by every rule");
        }
        Run all = Run.of("scale", logs, "--rules", String.join(",", Scalings.keysOfRules()));
        assertThat(all.code()).isZero();
        assertThat(all.out().lines().findFirst().orElseThrow())
                .contains("japan-m3-scale", "huber-ft3-scale", "bc-firmwood-m3-scale", "tiemann-bf-scale");
    }

    @Test
    void cubicRulesStandBesideTheOthersInTheirOwnUnit() throws IOException {
        // By hand: 24^2 x 4.05 / 10000 = 0.233 28; Huber 0.7854 x 0.28^2 x 4.05 m3 = 0.249 38 m3 = 8.807 ft3.
        Run run = Run.of(
                "scale",
                table("id,small-end,small-end-across,middle,large-end,length\na,25.9 cm,24.1 cm,28 cm,34 cm,4.05 m\n"),
                "--rules",
                "japan,huber,doyle");
        assertThat(run.out())
                .startsWith("row,id,japan-m3-scale,huber-ft3-scale,doyle-bf-scale,not-scaled,caution\n")
                .contains("log,a,0.233,8.807,29,,\n");
        Run noLargeEnd =
                Run.of("scale", table("id,small-end,length\na,25 cm,4 m\n"), "--rules", "germany,brereton,japan");
        assertThat(noLargeEnd.out())
                .contains("germany: large-end is not given", "brereton: large-end is not given")
                .doesNotContain("japan: ");
        assertThat(Run.of("scale", table("id,small-end,middle,length\na,25 cm,26 cm,4 m\n"), "--rules", "huber")
                        .err())
                .contains("give the large end too");
    }

    @Test
    void defectsGiveNetAndMerchantable() throws IOException {
        // Doyle: 144 for 16 in x 16 ft; a quarter of the length off is 36; 5 x 6 x 10 / 15 = 20; 240 of 360 degrees 96.
        String logs = table("""
                id,small-end,length,length-cut,squared-defect,sector
                a,16 in,16 ft,4 ft,,
                b,16 in,16 ft,,4 in x 5 in x 10 ft,
                c,16 in,16 ft,,,16 ft x 240 degrees
                d,16 in,16 ft,,,
                e,16 in,16 ft,,4 in x 5 in,
                f,16 in,16 ft,17 ft,,
                """);
        Run run = Run.of("scale", logs, "--rules", "doyle,japan");
        assertThat(run.out())
                .startsWith(
                        "row,id,doyle-bf-scale,doyle-bf-net,doyle-merchantable,japan-m3-scale,japan-m3-net,japan-merchantable,")
                .contains("log,a,144,108,yes,")
                .contains("log,b,144,124,yes,")
                .contains("log,c,144,48,yes,")
                .contains("log,d,144,144,yes,")
                .contains("log,f,144,,,", "doyle, japan, net: length that the defect affects is 17 ft")
                .contains("total,5 logs,720,424,4 of 4,");
        assertThat(run.err()).contains("line 6, squared-defect", "width x height x length", "1 refused");
        Run half = Run.of("scale", logs, "--rules", "doyle", "--least-sound", "50 %");
        assertThat(half.out()).contains("log,c,144,48,no,", "3 of 4");
        assertThat(Run.of("scale", logs, "--rules", "doyle", "--least-sound", "50")
                        .err())
                .contains("--least-sound", "add the unit");
    }

    @Test
    void everyKindOfDefectIsReadAndALongLogAsksWhereItLies() throws IOException {
        Run run = Run.of("scale", table("""
                        id,small-end,length,interior-defect,sound-core,sweep,crook
                        a,11 in,16 ft,4 in x 4 in x 16 ft,,,
                        b,21 in,16 ft,,11 in,,
                        c,12 in,16 ft,,,4 in,
                        d,20 in,16 ft,,,,5 in x 8 ft
                        """), "--rules", "doyle");
        // 49 x 25/100 = 12.25; 289 x (1 - 100/400) = 216.75; 64 x 2/12 = 10.67; 256 x 5/20 x 8/16 = 32.
        assertThat(run.out()).contains("log,a,49,37,", "log,b,289,72,", "log,c,64,53,", "log,d,256,224,");
        String header = "id,small-end,length,large-end,length-cut,sweep,defect-from\n";
        Run asked = Run.of("scale", table(header + "a,20 in,48 ft,32 in,4 ft,,\n"), "--rules", "doyle");
        assertThat(asked.out()).contains("log,a,1110,,,", "defect-from is not given");
        Run given = Run.of("scale", table(header + "a,20 in,48 ft,32 in,4 ft,,44 ft\n"), "--rules", "doyle");
        assertThat(given.out()).contains("log,a,1110,989,yes,");
        Run bent = Run.of("scale", table(header + "a,20 in,48 ft,32 in,,4 in,\n"), "--rules", "doyle");
        assertThat(bent.out()).contains("8 to 16 ft", "enter the log as logs of 8 to 16 ft");
    }

    @Test
    void aLogMayHaveSeveralDefectsOfAKindEachWithItsPlace() throws IOException {
        // By hand, Doyle 144: sectors 144 x 8/16 x 90/360 = 18 and 144 x 4/16 x 45/360 = 4.5, up to 5; inside 144 x
        // 25/225 x
        // 6/16 = 6 and 144 x 16/225 x 4/16 = 2.56, up to 3; sweep 144 x (3 - 2)/16 = 9.
        String header = "id,small-end,length,large-end,sector,interior-defect,sweep\n";
        Run one = Run.of(
                "scale",
                table(header + "a,16 in,16 ft,18 in,8 ft x 90 degrees; 4 ft x 45 degrees,"
                        + "4 in x 4 in x 6 ft at 2 ft; 3 in x 3 in x 4 ft at 10 ft,3 in\n"),
                "--rules",
                "doyle");
        assertThat(one.out()).contains("log,a,144,103,yes,");
        // Two parts of 24 ft: 16 in, 216 bf, and 20 in, 384 bf. The first sector begins at 20 ft and goes on for 4 ft
        // in
        // each: 9 and 16 bf; the second lies in the butt part: 8 bf.
        Run parts = Run.of(
                "scale",
                table(header + "b,16 in,48 ft,24 in,8 ft x 90 degrees at 20 ft; 4 ft x 45 degrees at 44 ft,,\n"
                        + "c,16 in,48 ft,24 in,8 ft x 90 degrees at 20 ft; 4 ft x 45 degrees,,\n"),
                "--rules",
                "doyle");
        assertThat(parts.out()).contains("log,b,600,567,yes,", "log,c,600,,,", "write 'at 12 ft' behind a defect");
        Run wrong = Run.of(
                "scale",
                table(header + "d,16 in,48 ft,24 in,8 ft x 90 degrees at 50 ft,,\n"
                        + "e,16 in,16 ft,18 in,,,3 in; 4 in\n"
                        + "f,16 in,16 ft,18 in,,,3 in at 4 ft\n"
                        + "g,16 in,16 ft,18 in,8 ft x 90 degrees;,,\n"
                        + "h,16 in,16 ft,18 in,8 ft x 90 degrees at noon,,\n"),
                "--rules",
                "doyle");
        assertThat(wrong.err())
                .contains("line 2, sector: '50 ft'", "no further than the log goes")
                .contains("line 3, sweep", "one for a log")
                .contains("line 4, sweep", "leave out where it begins")
                .contains("line 5, sector", "leave out a ; with nothing behind it")
                .contains("line 6, sector: 'noon'")
                .contains("5 rows: 0 scaled", "5 refused");
    }

    @Test
    void aDefectWrittenAmissIsToldWhatIsAmiss() throws IOException {
        Run run = Run.of("scale", table("""
                        id,small-end,length,length-cut,sector
                        a,14 in,16 ft,,8 ft
                        b,14 in,16 ft,,8 ft x 90 degrees x 3 ft
                        c,14 in,16 ft,4 ft at 17 ft,
                        d,14 in,16 ft,8 ft at 0 ft; 8 ft at 0 ft,
                        """), "--rules", "doyle");
        assertThat(run.err())
                .contains("line 2, sector: '8 ft'", "add what is missing: angle")
                .contains("line 3, sector", "several with ; between them")
                .contains("line 4, length-cut: '17 ft'", "no further than the log goes, 16 ft");
        assertThat(run.out()).contains("log,d,100,50,yes,");
    }

    @Test
    void aRuleForOnesOwnSawStandsInPlaceOfAKey() throws IOException {
        String logs = table("id,small-end,length\na,14 in,16 ft\n");
        // By hand: the circle pi/4 x 196 = 153.938, four fifths of it board, over 12 in and 16 ft: 164.201.
        String whole = "own kerf 1/4 in; board 1 in; shrinkage 0 in; slab 0 in; taper 0 in per ft; section 16 ft";
        Run run = Run.of("scale", logs, "--rules", whole + ",own kerf 1/8 in,doyle");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(",own-kerf-1-8-in-bf-scale,doyle-bf-scale,", "[derived] Rule from assumptions")
                .contains("log,a,164.201,150.243,100,,");
        // The assumptions of the International rule, written out.
        assertThat(Run.of("rules", "own kerf 1/8 in; taper 1/2 in per 4 ft; section 4 ft; board 1 in", "14 in", "16 ft")
                        .out())
                .contains("150.24", "k   kerf ", "0.125");
        assertThat(Run.of("rules", "own kerf 3/16 in").out()).contains("Own saw, kerf 3/16 in", "Standing: derived");
        assertThat(Run.of("compare-rules", "--rules", "own kerf 3/16 in,doyle").out())
                .contains("own-kerf-3-16-in  derived");
        assertThat(Run.of("rules").out()).contains("A rule for your own saw");
        assertThat(Run.of("scale", logs, "--rules", "own kerf 1/8 in,own kerf 1/8 in")
                        .err())
                .contains("named twice");
        assertRefusedRule("own", "kerf, board, shrinkage");
        assertRefusedRule("own slab 2 in", "the kerf at least");
        assertRefusedRule("own kref 1/8 in", "is kerf meant?");
        assertRefusedRule("own kerf 1/8 in; kerf 1 in", "each assumption once");
        assertRefusedRule("own kerf 1/8", "own rule, kerf: '1/8'", "add the unit");
        assertRefusedRule("own kerf 3 in", "kerf 0 to 1 in");
        assertRefusedRule("own kerf 1/8 in; section 6 in", "section 1 to 60 ft");
        assertRefusedRule("own kerf 1/8 in; taper 3 in", "a length for each length");
    }

    private static void assertRefusedRule(String rule, String... words) {
        Run run = Run.of("rules", rule, "14 in", "16 ft");
        assertThat(run.code()).as(rule).isEqualTo(Main.INPUT);
        assertThat(run.err()).as(rule).contains(words);
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
    void aLogTooShortForARuleIsSentToOneThatTakesIt() throws IOException {
        assertThat(Run.of("rules", "scribner-decimal-c", "14 in", "3 ft").err())
                .contains("4 to 40 ft", "one that is too short by a rule or formula that takes it, such as smalian");
        assertThat(Run.of("rules", "smalian", "14 in", "3 ft", "15 in").code()).isZero();
    }

    @Test
    void aDefectThatReachesBeyondItsLogIsCountedToItsEndAndSaidSo() throws IOException {
        String logs = table("""
                id,small-end,length,sector,length-cut
                a,14 in,16 ft 6 in,8 ft x 90 degrees at 12 ft,
                b,14 in,16 ft 6 in,,8 ft at 12 ft
                c,14 in,16 ft 6 in,4 ft 6 in x 90 degrees at 12 ft,
                """);
        Run run = Run.of("scale", logs, "--rules", "doyle,smalian");
        assertThat(run.out())
                .contains(
                        "sector at 12 ft reaches beyond the end of the log: counted for the 4 ft 6 in that are left",
                        "length cut at 12 ft reaches beyond");
        assertThat(run.out().lines().filter(line -> line.startsWith("log,c")))
                .singleElement()
                .asString()
                .doesNotContain("beyond");
        assertThat(run.err()).contains("2 with a defect that reaches beyond the log, counted to its end");
    }

    @Test
    void aVolumeFormulaIsDescribedWithTheSolidsOnWhichEachIsExact() {
        // Of a cone with ends of 1 and 1.25: (1 + 1.5625) / 2 over (1 + 1.25 + 1.5625) / 3 is 1.0082.
        assertThat(Run.of("rules", "smalian").out())
                .containsPattern("Smalian +exact +exact +\\+0\\.82 % ")
                .containsPattern("Newton \\(prismoidal\\) +exact +exact +exact +exact");
    }

    @Test
    void aMiddleDiameterIsTheOneGivenOrIsSaidToBeAssumed() {
        assertThat(Run.of("rules", "huber", "14 in", "16 ft").out())
                .contains("1.1666666666666667^2 * 16", "mid-length")
                .containsPattern("m +diameter at( mid-length)? +1\\.1666666666666667 +ft +Given on the command line")
                .doesNotContain("Assumed");
        for (String formula : new String[] {"huber", "newton"}) {
            assertThat(Run.of("rules", formula, "12 in", "16 ft", "16 in").out())
                    .contains("mid-length")
                    .containsPattern("m +diameter at( mid-length)? +1\\.16\\d+ +ft +Assumed, not measured");
            assertThat(Run.of("rules", formula, "12 in", "16 ft", "16 in", "--middle", "13.5 in")
                            .out())
                    .contains("mid-length")
                    .containsPattern("m +diameter at( mid-length)? +1\\.125 +ft +Given on the command line")
                    .doesNotContain("Assumed");
        }
        assertThat(Run.of("rules", "newton", "12 in", "16 ft", "--middle", "13 in")
                        .err())
                .contains("LARGE is not given", "both ends");
        assertThat(Run.of("rules", "smalian", "12 in", "16 ft", "16 in", "--middle", "13 in")
                        .err())
                .contains("--middle is not used by 'smalian'", "huber or newton");
        assertThat(Run.of("rules", "huber", "--middle", "13 in").err()).contains("without a log");
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
    void cubicRulesAndLawsAreListedDescribedAndWorkedThrough() {
        assertThat(Run.of("rules").out()).contains("japan\n", "huber\n", "bc-firmwood\n", "georgia\n");
        for (Jurisdiction place : Jurisdiction.values()) {
            String out = Run.of("rules", "law-" + place.id()).out();
            assertThat(out).as(place.id()).contains("Rule: ", "Source, ");
            assertThat(out.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
            assertThat(Run.of("rules", "law-" + place.id(), "20 in", "12 ft", "22 in")
                            .out())
                    .as(place.id())
                    .containsPattern("Scaling length 1[012] ft");
        }
        for (String key : Scalings.keysOfRules()) {
            assertThat(Run.of("rules", key).out().lines())
                    .as(key)
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        }
        assertThat(Run.of("rules", "japan", "25.9 cm", "4.05 m").out()).contains("24^2 * 405 / 1000", "0.233 m3");
        assertThat(Run.of("rules", "france-girth", "88.9 cm", "4.05 m").out()).contains("88.9", "88^2");
        assertThat(Run.of("rules", "huber", "13 in", "16 ft").out()).contains("14.748 ft3");
        assertThat(Run.of("rules", "bc-firmwood", "30 cm", "6 m", "40 cm").out())
                .contains("0.58905 m3");
        assertThat(Run.of("rules", "georgia", "13.5 in", "20 ft 3 in", "17 in").out())
                .contains("14 in, from 13.5", "14 in x 10 ft; 15 in x 10 ft", "160 bf");
        assertThat(Run.of("rules", "georgia", "13.5 in", "20 ft 3 in").err()).contains("LARGE is not given", "2 parts");
        assertThat(Run.of("rules", "vermont").out()).contains("rules law-vermont");
        assertThat(Run.of("rules", "georgja").err()).contains("allowed: doyle", "is georgia meant?");
    }

    @Test
    void speciesAreListed() {
        assertThat(Run.of("species").out()).contains("eastern white pine (eastern-white-pine)\n");
    }

    @Test
    void sweepThatASolidVolumeKeepsIsSaidAndCounted() throws IOException {
        // Doyle 8^2 x 16 / 16 = 64, less 64 x (4 - 2) / 12 = 10.67, up to 11. The volume keeps all its wood.
        Run run = Run.of("scale", table("""
                        id,small-end,length,large-end,sweep,crook
                        a,12 in,16 ft,14 in,4 in,
                        b,12 in,16 ft,14 in,,
                        c,12 in,16 ft,14 in,1 in,3 in x 6 ft
                        """), "--rules", "doyle,smalian,huber");
        assertThat(run.out())
                .contains(
                        "log,a,64,53,yes,",
                        "\"smalian, huber, net: sweep is not deducted: a solid volume keeps its wood")
                .contains("smalian, huber, net: sweep and crook is not deducted")
                .contains("sweep or crook of 2 logs is not deducted from solid volumes");
        assertThat(run.out().lines().filter(line -> line.startsWith("log,b")).findFirst())
                .hasValueSatisfying(line -> assertThat(line).endsWith(",,"));
        assertThat(run.err()).contains("2 with sweep or crook that is not deducted from a solid volume");
        Run boardFeet = Run.of("scale", table("id,small-end,length,sweep\na,12 in,16 ft,4 in\n"), "--rules", "doyle");
        assertThat(boardFeet.out() + boardFeet.err()).doesNotContain("not deducted");
    }

    @Test
    void aColumnThatIsMissingIsToldOnceWithItsRows() throws IOException {
        Run run = Run.of("scale", table("id,small-end\na,14 in\nb,3 in\nc\n"), "--rules", "doyle");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems())
                .filteredOn(line -> line.contains("the column is missing"))
                .singleElement()
                .asString()
                .contains("mine.csv, line 1, length: ", "add it; 3 rows want it");
        Run noRow = Run.of("scale", table("id,small-end\n"), "--rules", "doyle");
        assertThat(noRow.err()).contains("mine.csv, line 1, length: ").doesNotContain("want it", "wants it");
    }

    @Test
    void aHeaderThatStandsAgainIsNoLog() throws IOException {
        Run run = Run.of(
                "scale",
                table("id,small-end,length\na,14 in,16 ft\nID, small-end,length\nb,14 in,16 ft\n"),
                "--rules",
                "doyle");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("total,2 logs,200,");
        assertThat(run.problems())
                .filteredOn(line -> line.contains("line 3"))
                .singleElement()
                .asString()
                .contains("the names of the columns once, above the rows; remove this line");
        assertThat(run.err()).contains("3 rows: 2 scaled", "1 refused");
    }

    @Test
    void aTableWithoutOneGoodRowIsNoSuccess() throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of(
                "scale",
                table("id,small-end,length\na,1e400 in,16 ft\nb,3/0 in,16 ft\n"),
                "--rules",
                "doyle",
                "--out",
                out.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("'1e400 in'", "write the number out, without an exponent")
                .contains("'3/0 in'", "the divisor of a fraction is above 0")
                .contains("no row of mine.csv can be scaled");
        assertThat(Files.readAllLines(out.resolve("refused.csv"))).hasSize(3);
    }

    @Test
    void aRuleIsNotAskedWithHalfALog() {
        assertThat(Run.of("rules", "doyle", "", "16 ft").err()).contains("a working needs a diameter and a length");
        assertThat(Run.of("rules", "doyle", "14 in", " ").err()).contains("a working needs a diameter and a length");
    }
}
