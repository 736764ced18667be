package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each way in which a job folder can be wrong ends with exit code 2 and one line that says where, what, and what to do. */
class BadInputTest {

    private static final String PROPERTIES = "job.properties";
    private static final String LOGS = "logs.csv";
    private static final String WANTED = "wanted.csv";
    private static final String AREAS = "areas.csv";
    private static final String PRICES = "prices.csv";

    @TempDir
    Path folder;

    private EditedDemo demo;

    @BeforeEach
    void copyTheDemo() {
        demo = EditedDemo.in(folder.resolve("job"));
    }

    private void expect(String... parts) {
        Run run = demo.run();
        assertThat(run.err()).as("one problem, one line").hasLineCount(1);
        assertThat(run.err()).contains(parts).doesNotContain("Exception", "\tat ");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }

    private String at(String file, String content, String column) {
        return file + ", line " + demo.line(file, content) + ", " + column + ": ";
    }

    @Test
    void aMissingFile() {
        demo.without(LOGS);
        expect(
                "logs.csv: allowed: a job folder with job.properties, logs.csv, wanted.csv; if wanted also areas.csv",
                "the file is missing");
    }

    @Test
    void aFolderInPlaceOfAFile() throws IOException {
        demo.without(PRICES);
        Files.createDirectory(demo.folder().resolve(PRICES));
        expect("prices.csv' cannot be read: it is a folder; ");
    }

    @Test
    void aRoughSizeThatTheTableLacks() {
        demo.with(WANTED, "sills,4x6,", "sills,6x8,");
        expect(
                at(WANTED, "sills", "size"),
                "'6x8'",
                "it is the nominal thickness that the table lacks; write 6 in x 8 in to give the exact rough size");
        demo.with(WANTED, "sills,6x8,", "sills,6 in x 8 in,");
        assertThat(demo.run("--check").code()).isZero();
    }

    @Test
    void aSizeOfZero() {
        demo.with(WANTED, "sills,4x6,", "sills,0x6,");
        expect(at(WANTED, "sills", "size"), "'0x6'", "a thickness and a width above 0");
    }

    @Test
    void aFileWithAMisspeltName() {
        byte[] bytes = demo.text(PRICES).getBytes(StandardCharsets.UTF_8);
        demo.without(PRICES).write("price.csv", bytes);
        expect("prices.csv: ", "rename price.csv");
    }

    @Test
    void aMissingColumn() {
        demo.with(LOGS, "id,species,length,", "id,species,")
                .write(
                        LOGS,
                        demo.text(LOGS)
                                .replaceAll("(?m)^([A-Z]\\d),([^,]*),[^,]*,", "$1,$2,")
                                .getBytes(StandardCharsets.UTF_8));
        Run run = demo.run();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems().get(0))
                .contains(at(LOGS, "id,", "length"), "allowed: the columns id,species,length", "add it")
                .containsPattern("add it; \\d+ rows want it$");
        assertThat(run.problems())
                .filteredOn(line -> line.startsWith("woodyield: " + LOGS))
                .hasSize(1);
    }

    @Test
    void anUnknownColumn() {
        demo.with(LOGS, ",sweep,sweep-direction", ",sweeep,sweep-direction");
        expect(at(LOGS, "id,", "sweeep"), "'sweeep' is not accepted", "is sweep meant?");
    }

    @Test
    void aColumnTwice() {
        demo.with(LOGS, ",large-end,taper,", ",large-end,large-end,");
        Run run = demo.run();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems().get(0)).contains(at(LOGS, "id,", "large-end"), "each column once");
    }

    @Test
    void anUnknownVersion() {
        demo.with(PROPERTIES, "format = 1", "format = 2");
        expect(at(PROPERTIES, "format", "format"), "'2' is not accepted", "allowed: 1");
    }

    @Test
    void anUnknownKey() {
        demo.with(PROPERTIES, "saw.kerf =", "saw.kurf =");
        Run run = demo.run();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems())
                .anySatisfy(line -> assertThat(line).contains("saw.kerf", "the key is missing; add it"))
                .anySatisfy(line -> assertThat(line).contains("'saw.kurf'", "is saw.kerf meant?"));
    }

    @Test
    void aKeyTwice() {
        demo.with(PROPERTIES, "saw.kind = chain", "saw.kind = chain\nsaw.kind = band");
        expect("job.properties, line ", "saw.kind: 'band'", "each key once");
    }

    @Test
    void aKeyWithNothingBehindItWhetherTheJobNeedsItOrNot() {
        demo.with(PROPERTIES, "work.vibration = 5.5 m/s2", "work.vibration =");
        expect("work.vibration: allowed: a value; nothing stands here; write one, or begin the line with #");
        demo.with(PROPERTIES, "work.vibration =", "#work.vibration =");
        assertThat(demo.run("--check").code()).isZero();
        demo.with(PROPERTIES, "saw.kind = chain", "saw.kind =");
        expect("saw.kind: allowed: a value, such as chain; nothing stands here; write one\n");
    }

    @Test
    void aDayOfMinutes() {
        demo.with(PROPERTIES, "work.hours-per-day = 6 h", "work.hours-per-day = 10 min");
        expect("work.hours-per-day: '10 min'", "30 to 1440 min", "such as 6 h");
    }

    @Test
    void aGroupOfWoodsThatIsMisspelt() {
        demo.with("wanted.csv", "studs,2x4,8 ft,24,softwood", "studs,2x4,8 ft,24,sofwood");
        expect(at("wanted.csv", "studs", "wood"), "allowed: any, softwood, hardwood, or", "is softwood meant?");
    }

    /** So fine a step makes a search of hours; the step that the remedy names is taken. */
    @Test
    void aSettingStepThatNobodySetsASawBy() {
        demo.with(PROPERTIES, "saw.setting-step = 1/8 in", "saw.setting-step = 0.001 in");
        expect("saw.setting-step: '0.001 in'", "allowed: 0.01 in to 1 in", "0.5 mm");
        demo.with(PROPERTIES, "saw.setting-step = 0.001 in", "saw.setting-step = 0.5 mm");
        assertThat(demo.run("--check").code()).isZero();
    }

    @Test
    void aPieceShorterThanAHandIsWide() {
        demo.with("wanted.csv", "studs,2x4,8 ft", "studs,2x4,8 mm");
        expect(at("wanted.csv", "studs", "length"), "'8 mm' is not accepted", "100 mm", "cut shorter ones from it");
    }

    @Test
    void anUnknownSpecies() {
        demo.with(LOGS, "P1,eastern white pine", "P1,eastern wite pine");
        expect(at(LOGS, "P1", "species"), "'eastern wite pine' is not accepted", "nearest: eastern-white-pine");
    }

    @Test
    void anUnknownUnit() {
        demo.with(LOGS, "P1,eastern white pine,12 ft 6 in", "P1,eastern white pine,2 fathoms");
        expect(at(LOGS, "P1", "length"), "'2 fathoms' is not accepted", "the unit 'fathoms' is not known");
    }

    @Test
    void anUnknownUnitOfPower() {
        demo.with(PROPERTIES, "work.rated-power = 4.2 kW", "work.rated-power = 4.2 PS");
        expect(
                at(PROPERTIES, "work.rated-power", "work.rated-power"),
                "'4.2 PS'",
                "kW, W, hp",
                "the unit 'PS' is not known");
    }

    @Test
    void aLengthWithoutUnit() {
        demo.with(PROPERTIES, "saw.kerf = 3/8 in", "saw.kerf = 3/8");
        expect(at(PROPERTIES, "saw.kerf", "saw.kerf"), "'3/8'", "add the unit");
    }

    @Test
    void aDecimalCommaInALength() {
        demo.with(LOGS, "P2,eastern white pine,12 ft 5 in", "P2,eastern white pine,\"3,8 m\"");
        expect(at(LOGS, "P2", "length"), "'3,8 m'", "write a decimal point, not a comma");
    }

    @Test
    void aDecimalCommaInANumber() {
        demo.with(PROPERTIES, "money.fuel-price = 1.10 per L", "money.fuel-price = 1,10 per L");
        expect(
                at(PROPERTIES, "money.fuel-price", "money.fuel-price"),
                "'1,10 per L'",
                "write a decimal point, not a comma");
    }

    @Test
    void aDecimalCommaInAQuantity() {
        demo.with(PROPERTIES, "work.rated-power = 4.2 kW", "work.rated-power = 4,2 kW");
        expect(
                at(PROPERTIES, "work.rated-power", "work.rated-power"),
                "'4,2 kW'",
                "write a decimal point, not a comma");
    }

    @Test
    void aNegativeLength() {
        demo.with(PROPERTIES, "saw.kerf = 3/8 in", "saw.kerf = -3/8 in");
        expect(at(PROPERTIES, "saw.kerf", "saw.kerf"), "'-3/8 in'", "lengths are not negative");
    }

    @Test
    void aNegativeAmount() {
        demo.with(PROPERTIES, "money.purchase = 1150", "money.purchase = -1150");
        expect(
                at(PROPERTIES, "money.purchase", "money.purchase"),
                "'-1150'",
                "allowed: 0 to 1000000000 in the job's currency");
    }

    @Test
    void aZeroDiameter() {
        demo.with(LOGS, "P1,eastern white pine,12 ft 6 in,15 1/2 in", "P1,eastern white pine,12 ft 6 in,0 in");
        expect(at(LOGS, "P1", "small-end"), "'0 in'", "allowed: above 0, up to 118.11 in");
    }

    @Test
    void aZeroPower() {
        demo.with(PROPERTIES, "work.rated-power = 4.2 kW", "work.rated-power = 0 kW");
        expect(at(PROPERTIES, "work.rated-power", "work.rated-power"), "'0 kW'", "above 0, up to 500 kW");
    }

    @Test
    void aNumberThatIsNone() {
        demo.with(PROPERTIES, "money.purchase = 1150", "money.purchase = NaN");
        expect(at(PROPERTIES, "money.purchase", "money.purchase"), "'NaN'", "a number");
    }

    @Test
    void aQuantityThatIsNone() {
        demo.with(PROPERTIES, "work.rated-power = 4.2 kW", "work.rated-power = NaN kW");
        expect(at(PROPERTIES, "work.rated-power", "work.rated-power"), "'NaN kW'", "a number");
    }

    @Test
    void aLengthThatIsNone() {
        demo.with(PROPERTIES, "saw.kerf = 3/8 in", "saw.kerf = NaN in");
        expect(at(PROPERTIES, "saw.kerf", "saw.kerf"), "'NaN in'", "a number and a unit");
    }

    @Test
    void aDiameterOfFourMetres() {
        demo.with(LOGS, "P1,eastern white pine,12 ft 6 in,15 1/2 in", "P1,eastern white pine,12 ft 6 in,4 m");
        expect(at(LOGS, "P1", "small-end"), "'4 m'", "allowed: above 0, up to 3 m", "check the unit");
    }

    @Test
    void aKerfWiderThanALog() {
        demo.with(PROPERTIES, "saw.kerf = 3/8 in", "saw.kerf = 1.9 in")
                .with(LOGS, "10 1/2 in,10 in,inside bark,,11 1/2 in", "1 3/4 in,1 3/4 in,inside bark,,11 1/2 in");
        expect(at(PROPERTIES, "saw.kerf", "saw.kerf"), "'1.9 in'", "less than the thinnest log, C1");
    }

    @Test
    void aKerfWiderThanABoard() {
        demo.with(PROPERTIES, "saw.kerf = 3/8 in", "saw.kerf = 7/8 in");
        expect(at(PROPERTIES, "saw.kerf", "saw.kerf"), "'7/8 in'", "siding is 3/4 in thick", "leave siding out");
    }

    @Test
    void aKerfWiderThanASawCanHave() {
        demo.with(PROPERTIES, "saw.kerf = 3/8 in", "saw.kerf = 20 in");
        expect(at(PROPERTIES, "saw.kerf", "saw.kerf"), "'20 in'", "allowed: above 0, up to 1.968 in");
    }

    @Test
    void aRangeThatDoesNotHoldItsValue() {
        demo.with(PROPERTIES, "work.warm-up = 45 s", "work.warm-up = 45 s (50 s to 90 s)");
        expect(
                at(PROPERTIES, "work.warm-up", "work.warm-up"),
                "a range that holds the value",
                "45 s lies below 50 s to 90 s");
    }

    @Test
    void aCountThatIsNotWhole() {
        for (String wrong : new String[] {"2.5", "3 (2 to 4)", "0", "2 to 4", "-1"}) {
            demo = EditedDemo.in(folder.resolve("places " + wrong.replaceAll("\\W", "-")));
            demo.with(PROPERTIES, "work.places = 3", "work.places = " + wrong);
            expect(at(PROPERTIES, "work.places", "work.places"), "a whole number, 1 to 10", "write a count");
        }
    }

    @Test
    void anEndOfARangeWithoutAUnit() {
        demo.with(PROPERTIES, "work.warm-up = 45 s", "work.warm-up = 45 s (30 s to 90)");
        expect(at(PROPERTIES, "work.warm-up", "work.warm-up"), "'90'", "add the unit");
    }

    @Test
    void aNegativeStandardUncertainty() {
        demo.with(PROPERTIES, "work.utilisation = 70 %", "work.utilisation = 70 % +- -5 %");
        expect(at(PROPERTIES, "work.utilisation", "work.utilisation"), "'-5 %'");
    }

    @Test
    void aResaleThatMayExceedThePrice() {
        demo.with(PROPERTIES, "money.resale = 450", "money.resale = 450 (300 to 1200)");
        expect(
                at(PROPERTIES, "money.resale", "money.resale"),
                "no more than the price of the saw, 1150.00",
                "the resale may be as much as 1200.00 and the price as little as 1",
                "end the resale there or below, or mend money.purchase");
    }

    @Test
    void aResaleOrPriceWithoutEnds() {
        demo.with(PROPERTIES, "money.resale = 450", "money.resale = 450 +- 50");
        expect(
                at(PROPERTIES, "money.resale", "money.resale"),
                "a figure with +- may lie anywhere; write money.resale with the ends of a range, such as 6 (5 to 7)");
    }

    @Test
    void aSmallEndLargerThanTheLargeEnd() {
        demo.with(LOGS, "15 1/2 in,15 in,inside bark,5/8 in,18 3/4 in", "15 1/2 in,15 in,inside bark,5/8 in,12 in");
        expect(at(LOGS, "P1", "large-end"), "'12 in'", "no less than the small end, 15 1/4 in", "change the two ends");
    }

    @Test
    void aLargeEndAndATaper() {
        demo.with(LOGS, "inside bark,5/8 in,18 3/4 in,,", "inside bark,5/8 in,18 3/4 in,1 cm per m,");
        expect(at(LOGS, "P1", "large-end"), "either large-end or taper", "leave one empty");
    }

    @Test
    void aLogIdTwice() {
        demo.with(LOGS, "P2,eastern", "P1,eastern");
        expect(
                "logs.csv, line " + (demo.line(LOGS, "P1") + 1) + ", id: 'P1'",
                "it stands in logs.csv, line " + demo.line(LOGS, "P1"));
    }

    @Test
    void aRowWithACellTooMany() {
        demo.with(LOGS, "P1,eastern white pine", "P1,pine, eastern white");
        expect(
                "logs.csv, line " + demo.line(LOGS, "P1"),
                "12 cells, one for each column",
                "the line has 13; a value with a comma needs quotes");
    }

    @Test
    void aQuoteThatIsNotClosed() {
        demo.with(LOGS, "P1,eastern white pine", "P1,\"eastern white pine");
        expect("logs.csv, line " + demo.line(LOGS, "P1"), "close the quote");
    }

    @Test
    void aTableWithSemicolons() {
        demo.write(LOGS, demo.text(LOGS).replace(',', ';').getBytes(StandardCharsets.UTF_8));
        expect("logs.csv, line " + demo.line(LOGS, "id;"), "cells separated by commas", "save the table with commas");
    }

    @Test
    void aFileThatIsNotUtf8() {
        int line = demo.line(LOGS, "P4");
        demo.write(LOGS, demo.text(LOGS).replace("P4,", "P\u00e4,").getBytes(StandardCharsets.ISO_8859_1));
        expect("logs.csv, line " + line, "byte 0xe4", "save it as UTF-8");
    }

    @Test
    void aFileInUtf16() {
        demo.write(LOGS, ("\ufeff" + demo.text(LOGS)).getBytes(StandardCharsets.UTF_16LE));
        expect("logs.csv: 'UTF-16'", "save it as UTF-8");
    }

    @Test
    void anEmptyTable() {
        demo.write(LOGS, new byte[0]);
        expect("logs.csv: allowed: a first line with the names of the columns");
    }

    @Test
    void aTableWithoutRows() {
        demo.write(LOGS, demo.text(LOGS).replaceAll("(?m)^[A-Z]\\d,.*\\R", "").getBytes(StandardCharsets.UTF_8));
        expect("logs.csv: allowed: one log or more");
    }

    @Test
    void allProblemsAreToldTogetherInTheOrderOfTheFiles() {
        demo.with(WANTED, "id,size", "id,sise")
                .with(LOGS, "P1,eastern white pine", "P1,unicorn")
                .with(LOGS, "P2,eastern white pine,12 ft 5 in", "P2,eastern white pine,0 ft")
                .with(PROPERTIES, "saw.rides = previous face", "saw.rides = thin air");
        Run run = demo.run();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems().get(0)).contains("job.properties", "saw.rides: 'thin air'", "previous face, bed");
        assertThat(run.problems().get(1)).contains("logs.csv", "'unicorn'");
        assertThat(run.problems().get(2)).contains("logs.csv", "'0 ft'");
        assertThat(run.problems().get(3)).contains("wanted.csv", "'sise'");
        assertThat(run.err()).contains("problems; nothing was planned or written");
    }

    @Test
    void aValueCannotSendControlCodesToTheTerminal() {
        demo.with(LOGS, "P1,eastern white pine", "P1,\u001b[31mred");
        expect("'\\u001b[31mred'");
        assertThat(demo.run().err()).doesNotContain("\u001b");
    }

    @Test
    void aPieceLongerThanAnyLogOfItsWood() {
        demo.with(WANTED, "sills,4x6,8 ft,4", "sills,4x6,9 ft,4");
        expect(
                at(WANTED, "sills", "length"),
                "'9 ft'",
                "8 ft 6 in, the longest log of white oak",
                "no log can give it");
    }

    @Test
    void aPieceThatIsTooLongOnlyWithTheTrimOfItsEnds() {
        demo.with(PROPERTIES, "finish.end-trim = 1 in", "finish.end-trim = 4 in");
        Run run = demo.run();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(at(WANTED, "sills", "length"), "the trim of both ends included");
    }

    @Test
    void lossesOfDryingThatCannotBe() {
        demo.with(PROPERTIES, "finish.warp = 4 %", "finish.warp = 95 %");
        expect(at(PROPERTIES, "finish.warp", "finish.warp"), "0 to 90 %", "mend the drying");
    }

    @Test
    void aPieceThickerThanAnyLogOfItsWood() {
        demo.with(WANTED, "joists,2x8,12 ft,7,eastern hemlock", "joists,14x14,12 ft,7,eastern hemlock");
        expect(at(WANTED, "joists", "size"), "'14x14'", "a diagonal up to", "no log can give it");
    }

    @Test
    void aPieceInAWoodOfWhichThereIsNoLog() {
        demo.with(WANTED, "joists,2x8,12 ft,7,eastern hemlock", "joists,2x8,12 ft,7,sugar maple");
        expect(at(WANTED, "joists", "wood"), "'sugar maple'", "the wood of one of the logs", "no log can give it");
    }

    @Test
    void anAreaWithBoardsLongerThanAnyLogOfItsWood() {
        demo.with(AREAS, "8 ft,,eastern white pine", "9 ft; 20 ft,,eastern white pine");
        expect(at(AREAS, "siding", "lengths"), "12 ft 6 in, the longest log of eastern white pine");
    }

    @Test
    void aNominalSizeThatTheTradeDoesNotHave() {
        demo.with(WANTED, "studs,2x4,", "studs,2x4 3/4,");
        expect(at(WANTED, "studs", "size"), "'2x4 3/4'", "the sizes of PS 20", "or give the size itself with its unit");
    }

    @Test
    void aSizeThatIsNone() {
        demo.with(WANTED, "studs,2x4,", "studs,two by four,");
        expect(at(WANTED, "studs", "size"), "'two by four'", "a nominal size such as 2x4");
    }

    @Test
    void aSizeWithThicknessAndWidthChanged() {
        demo.with(WANTED, "studs,2x4,", "studs,4x2,");
        expect(at(WANTED, "studs", "size"), "'4x2'", "the thickness first", "change the two");
    }

    @Test
    void aQuantityOfNone() {
        demo.with(WANTED, "studs,2x4,8 ft,24", "studs,2x4,8 ft,0");
        expect(at(WANTED, "studs", "quantity"), "'0'", "whole numbers, 1 to 100000");
    }

    @Test
    void aQuantityThatIsNotWhole() {
        demo.with(WANTED, "studs,2x4,8 ft,24", "studs,2x4,8 ft,2.5");
        expect(at(WANTED, "studs", "quantity"), "'2.5'", "whole numbers, 1 to 100000");
    }

    @Test
    void anUnknownSurface() {
        demo.with(WANTED, "24,softwood,dressed dry", "24,softwood,dresed dry");
        expect(
                at(WANTED, "studs", "surface"),
                "'dresed dry'",
                "rough, dressed dry, dressed green",
                "is dressed dry meant?");
    }

    @Test
    void aMoistureThatIsOutside() {
        demo.with(
                WANTED, "studs,2x4,8 ft,24,softwood,dressed dry,15 %", "studs,2x4,8 ft,24,softwood,dressed dry,150 %");
        expect(at(WANTED, "studs", "moisture"), "'150 %'", "4 to 30 %", "write green");
    }

    @Test
    void aPieceAndAnAreaOfOneName() {
        demo.with(AREAS, "siding,", "studs,");
        expect(at(AREAS, "studs", "id"), "'studs'", "it stands in wanted.csv, line " + demo.line(WANTED, "studs"));
    }

    @Test
    void anOverlapAsWideAsABoard() {
        demo.with(AREAS, "5 in,8 in,1 in", "5 in,8 in,5 in");
        expect(at(AREAS, "siding", "overlap"), "'5 in'", "less than the least width, 5 in");
    }

    @Test
    void anAreaInAnUnknownUnit() {
        demo.with(AREAS, "80 sq ft", "80 squares");
        expect(at(AREAS, "siding", "area"), "'80 squares'", "the unit 'squares' is not known here");
    }

    @Test
    void aPriceForASizeTwice() {
        demo.with(PRICES, "2x8,softwood,0.98", "2x6,softwood,0.98");
        expect("prices.csv, line ", "size: '2x6'", "each size once for each wood");
    }

    @Test
    void aPriceWithoutUnit() {
        demo.with(PRICES, "softwood,780 (690 to 880) per mbf", "softwood,780");
        expect(at(PRICES, "any", "price"), "'780'", "18 per bf");
    }

    @Test
    void rangesOfPricesOfSeveralKinds() {
        demo.with(PRICES, "0.98 (0.87 to 1.10) per bf", "0.98 per bf +- 5 %");
        expect(
                at(PRICES, "2x8", "price"),
                "'0.98 per bf +- 5 %'",
                "as those of the rows before it",
                "780 per mbf +- 5 %");
        // Nothing but normal laws, and a price without a range between them.
        demo.write(
                PRICES,
                "size,wood,price\nany,softwood,780 per mbf +- 5 %\nany,hardwood,2.60 per bf\n2x6,softwood,0.92 +- 0.05 per bf\n"
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(demo.run("--check").code()).isZero();
    }

    @Test
    void aPriceOutsideItsRange() {
        demo.with(PRICES, "0.92 (0.82 to 1.04) per bf", "0.92 (0.95 to 1.10) per bf");
        expect(at(PRICES, "2x6", "price"), "a range that holds the value", "0.92 per bf lies below");
    }

    @Test
    void wantingNothing() {
        demo.without(AREAS)
                .write(WANTED, "id,size,length,quantity,wood,surface,moisture\n".getBytes(StandardCharsets.UTF_8));
        expect("wanted.csv: allowed: one piece, area or board with natural edges");
    }

    @Test
    void aSpeciesWhoseShrinkageIsNotKnown() {
        demo.with(LOGS, "P1,eastern white pine", "P1,sand pine")
                .with(
                        WANTED,
                        "studs,2x4,8 ft,24,softwood,dressed dry,15 %",
                        "studs,2x4,8 ft,24,softwood,dressed dry,5 %");
        Run run = demo.run();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains(at(LOGS, "P1", "species"), "species whose shrinkage is known")
                .hasLineCount(1);
    }

    @Test
    void aResaleAboveThePrice() {
        demo.with(PROPERTIES, "money.resale = 450", "money.resale = 4500");
        expect(
                at(PROPERTIES, "money.resale", "money.resale"),
                "'4500'",
                "no more than the price of the saw, 1150.00",
                "write what the saw still fetches at the end of its life, or mend money.purchase");
    }

    private static final String PROFILES = "profiles.csv";

    /** The log P1 with cells for rot and pith. */
    private void rot(String cells) {
        demo.write(
                LOGS,
                demo.text(LOGS)
                        .replaceAll("(?m)^(id,.*)$", "$1,rot,rot-from,rot-to,pith-offset,pith-direction")
                        .replaceAll("(?m)^([A-OQ-Z]\\d,.*|P[2-9],.*)$", "$1,,,,,")
                        .replaceAll("(?m)^(P1,.*)$", "$1," + cells)
                        .getBytes(StandardCharsets.UTF_8));
    }

    /** The log P1, 12 ft 6 in long and 15 1/4 in at its small end, by its profile. */
    private void profile(String... stations) {
        demo.with(LOGS, "inside bark,5/8 in,18 3/4 in", "inside bark,5/8 in,");
        StringBuilder text = new StringBuilder(demo.text(PROFILES));
        for (String station : stations) {
            text.append("P1,").append(station).append('\n');
        }
        demo.write(PROFILES, text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private String station(int number, String column) {
        return PROFILES + ", line " + (demo.line(PROFILES, "P1,") + number - 1) + ", " + column + ": ";
    }

    @Test
    void rotOutsideTheWood() {
        rot("16 in,,,,");
        expect(at(LOGS, "P1", "rot"), "'16 in'", "sound wood is all around it", "leave this log out");
    }

    @Test
    void rotAroundAPithTooFarAside() {
        rot("8 in,,,4 in,90 degrees");
        expect(at(LOGS, "P1", "rot"), "'8 in'", "around this pith no more than");
    }

    @Test
    void rotBelowZero() {
        rot("-1 in,,,,");
        expect(at(LOGS, "P1", "rot"), "'-1 in'", "lengths are not negative");
    }

    @Test
    void rotThatEndsBeforeItBegins() {
        rot("2 in,6 ft,4 ft,,");
        expect(at(LOGS, "P1", "rot-to"), "'4 ft'", "beyond its beginning, 72 in");
    }

    @Test
    void rotBeyondTheLog() {
        rot("2 in,6 ft,14 ft,,");
        expect(at(LOGS, "P1", "rot-to"), "'14 ft'", "within the log, 150 in");
    }

    @Test
    void anEndOfRotWithoutRot() {
        rot(",,4 ft,,");
        expect(at(LOGS, "P1", "rot-to"), "'4 ft'", "empty where there is no rot");
    }

    @Test
    void aPithWithoutUnitOfItsDirection() {
        rot("2 in,,,1 in,90");
        expect(at(LOGS, "P1", "pith-direction"), "'90'", "add the unit");
    }

    @Test
    void aProfileOfALogThatIsNotThere() {
        demo.write(PROFILES, (demo.text(PROFILES) + "P9,0 in,12 in\n").getBytes(StandardCharsets.UTF_8));
        expect(at(PROFILES, "P9", "id"), "'P9'", "the id of a log in logs.csv");
    }

    @Test
    void aProfileOutOfOrder() {
        profile("0 in,15 1/4 in", "6 ft,17 in", "5 ft,18 in", "12 ft 6 in,20 in");
        expect(station(3, "distance"), "'5 ft'", "beyond station 2 at 72 in", "in order from the small end");
    }

    @Test
    void aProfileShorterThanItsLog() {
        profile("0 in,15 1/4 in", "6 ft,17 in");
        expect(station(2, "distance"), "'6 ft'", "to the large end, 150 in", "measure both ends too");
    }

    @Test
    void aProfileThatBeginsWithAnotherSmallEnd() {
        profile("0 in,12 in", "12 ft 6 in,17 in");
        expect(station(1, "diameter"), "'12 in'", "the small end's mean, 15 1/4 in", "measure the small end again");
    }

    @Test
    void aProfileThatEndsThinnerThanItBegins() {
        profile("0 in,15 1/4 in", "12 ft 6 in,14 in");
        expect(station(2, "diameter"), "'14 in'", "no less than the small end's mean, 15 1/4 in");
    }

    @Test
    void aProfileWithADiameterBelowZero() {
        profile("0 in,15 1/4 in", "6 ft,-17 in", "12 ft 6 in,20 in");
        expect(station(2, "diameter"), "'-17 in'", "lengths are not negative");
    }

    @Test
    void aProfileWithADiameterOfFourMetres() {
        profile("0 in,15 1/4 in", "6 ft,4 m", "12 ft 6 in,20 in");
        expect(station(2, "diameter"), "'4 m'", "above 0, up to 3 m", "check the unit");
    }

    @Test
    void aProfileWithAStep() {
        profile("0 in,15 1/4 in", "12 ft 5 in,17 in", "12 ft 6 in,25 in");
        expect(station(3, "diameter"), "'25 in'", "a flare of less than 45 degrees");
    }

    @Test
    void aProfileAndALargeEnd() {
        profile("0 in,15 1/4 in", "12 ft 6 in,20 in");
        demo.with(LOGS, "inside bark,5/8 in,,,,,yes", "inside bark,5/8 in,18 3/4 in,,,,yes");
        expect(at(LOGS, "P1", "large-end"), "'18 3/4 in'", "empty where profiles.csv gives the large end");
    }
}
