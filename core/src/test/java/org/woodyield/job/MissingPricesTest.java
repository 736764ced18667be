package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Without a price the physical plan stays, and each money figure that rests on it is left out by name. */
class MissingPricesTest {

    private static final String JOB = "job.properties";

    @TempDir
    Path folder;

    private String money(EditedDemo job) throws IOException {
        Path out = folder.resolve("out");
        assertThat(job.run("--out", out.toString(), "--replace").code()).isZero();
        assertThat(out.resolve("plan-passes.csv")).isNotEmptyFile();
        return Files.readString(out.resolve("plan-money.csv"));
    }

    private EditedDemo withoutPrices() {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).without("prices.csv");
        StringBuilder physical = new StringBuilder();
        job.text(JOB)
                .lines()
                .filter(line -> !line.startsWith("money."))
                .forEach(line -> physical.append(line).append('\n'));
        return job.write(JOB, physical.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String words(EditedDemo job) {
        return Run.of(job.folder().toString()).out().replaceAll("\\s+", " ");
    }

    /** A pass is then taken for cheaper than it is, and other wood may be sawn than with the price. */
    @Test
    void aPriceOfAPassThatIsMissingIsToldWhereTheCutsAreToldAndInShort() {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        assertThat(words(job)).doesNotContain("The cuts were chosen without counting");
        job.with(JOB, "money.edge-price = 32\n", "").with(JOB, "money.wage = 14 per h\n", "");
        String told = "The cuts were chosen without counting the ";
        String plan = words(job);
        assertThat(plan.split(told, -1)).hasSize(3);
        assertThat(plan.substring(plan.indexOf(told), plan.indexOf("write 0.")))
                .contains("money.wage", "money.edge-price")
                .doesNotContain("money.fuel-price");
        job.with(JOB, "money.fuel-price =", "money.wage = 0 per h\nmoney.edge-price = 0\nmoney.fuel-price =");
        assertThat(words(job)).doesNotContain(told);
    }

    @Test
    void withoutAWageNoSumCountsWork() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.wage = 14 per h\n", "");
        assertThat(money(job))
                .contains("\"running, own work counted\",sum,,,work")
                .contains("\"with owning, own work counted\",sum,,,work")
                .containsPattern("\"running, own work not counted\",sum,[0-9]")
                .containsPattern("\"with owning, own work not counted\",sum,[0-9]");
    }

    @Test
    void withoutThePriceOfTheSawNoSumCountsOwningItAndTheYearsAreLeftOutByName() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.purchase = 1150\n", "");
        job.with(JOB, "money.resale = 450\n", "");
        assertThat(money(job))
                .containsPattern("\"with owning, own work not counted\",sum,,,\"?repairs, depreciation")
                .containsPattern("\"running, own work not counted, known costs only\",sum,[0-9]");
        assertThat(words(job)).contains("the saw year by year is left out, no price of the saw (money.purchase)");
    }

    @Test
    void withoutAnyPriceThereIsNoMoneyAtAllAndNothingIsZero() throws IOException {
        EditedDemo job = withoutPrices();
        assertThat(money(job)).doesNotContain(",0.0");
        assertThat(words(job))
                .contains("Prices are missing: money.purchase, ", "the saw year by year is left out")
                .contains("A travelling sawyer: left out, no price of the logs")
                .contains("not known per usable board foot without own work. With it: not known")
                .doesNotContain(
                        "where they change places",
                        "0.00 USD",
                        "no a ",
                        "known costs only",
                        "cheapest",
                        "What one piece that can be used costs");
    }

    private List<String> missing(EditedDemo job) throws IOException {
        money(job);
        return Files.readAllLines(folder.resolve("out").resolve("plan-missing-prices.csv"));
    }

    @Test
    void aMissingPriceIsNamedWithItsKeyWhatToWriteAndTheFiguresItLeavesOut() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.fuel-price = 1.10 per L\n", "");
        assertThat(missing(job))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("money.fuel-price,price of fuel,money.fuel-price = AMOUNT per L in job.properties,")
                .contains(
                        "cost of fuel",
                        "the whole running cost and the cost of a piece",
                        "the saving and the volume from which it pays",
                        "the choice: this saw",
                        "the saw year by year");
        assertThat(words(job))
                .contains("Prices are missing: money.fuel-price. ")
                .contains("This saw: left out, no price of fuel (money.fuel-price).");
    }

    @Test
    void aPriceOfLumberIsToBeWrittenAsARow() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).without("prices.csv");
        assertThat(missing(job))
                .anySatisfy(row -> assertThat(row)
                        .containsPattern(
                                "any,[a-z ]+,AMOUNT per bf(; any,[a-z ]+,AMOUNT per bf in prices.csv, each| in prices.csv,)"
                                        + " as a row"));
    }

    @Test
    void eachPriceOfGradingThatIsMissingIsNamed() throws IOException {
        EditedDemo noRate = EditedDemo.small(folder.resolve("rate")).with(JOB, "money.grader-rate = 0.05 per bf\n", "");
        assertThat(missing(noRate))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("money.grader-rate,")
                .contains(
                        "the choice: this saw, graded; the choice: another saw, graded; the choice: a travelling sawyer,"
                                + " graded");
        assertThat(words(noRate))
                .contains("This saw, graded: left out, no grading, per usable board foot (money.grader-rate).");
        EditedDemo noVisit = EditedDemo.small(folder.resolve("visit")).with(JOB, "money.grader-visit = 260\n", "");
        assertThat(missing(noVisit)).hasSize(2).last().asString().startsWith("money.grader-visit,");
        EditedDemo noLesser =
                EditedDemo.small(folder.resolve("lesser")).with(JOB, "money.lesser-price = 0.80 per bf\n", "");
        assertThat(missing(noLesser))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("money.lesser-price,")
                .contains("this saw, ungraded, where no grade is asked for");
    }

    /** What nobody said to cost nothing takes no part in the choice, and the page says first which key it is. */
    @Test
    void aWayThatLacksACostIsNotRanked() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"))
                .with(JOB, "money.hire-set-up = 90\n", "")
                .with(JOB, "money.hire-rate = 0.45 per bf", "money.hire-rate = 0.01 per bf")
                .with(JOB, "money.hire-least = 200\n", "money.hire-least = 0\n")
                .with(JOB, "money.hire-damage = 40\n", "money.hire-damage = 0\n")
                .with(JOB, "money.grader-visit = 260\n", "money.grader-visit = 0\n")
                .with(JOB, "money.log-sale = 0.30 (0.20 to 0.45) per bf\n", "money.log-sale = 0\n");
        assertThat(words(job))
                .contains("Prices are missing: money.hire-set-up.")
                .contains(
                        "Not ranked among the others, since a cost of it has no price: a travelling"
                                + " sawyer, no set-up of a travelling sawyer (money.hire-set-up). Write 0 for what costs nothing.")
                .doesNotContain("the cheapest for this job is to have it sawn");
        assertThat(missing(job))
                .last()
                .asString()
                .contains("0 where there is nothing of it", "the rank of the choice: a travelling sawyer");
        List<String> ways = Files.readAllLines(folder.resolve("out").resolve("plan-ways.csv"));
        assertThat(ways)
                .filteredOn(row -> row.contains("travelling"))
                .hasSize(4)
                .allSatisfy(row -> assertThat(row).contains(",more than,").contains("(money.hire-set-up)"));
        assertThat(Files.readString(folder.resolve("out").resolve("plan-crossings.csv")))
                .doesNotContain("travelling");
        job.write(JOB, (job.text(JOB) + "\nmoney.hire-set-up = 0\n").getBytes(StandardCharsets.UTF_8));
        assertThat(words(job))
                .contains("the cheapest for this job is to have it sawn")
                .doesNotContain("Prices are missing");
    }

    @Test
    void aSawWithoutAResaleIsSaidToBeWrittenOffInFull() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.resale = 450\n", "");
        assertThat(money(job).lines().filter(row -> row.contains("(money.resale): the saw is written off in full")))
                .hasSize(3);
        assertThat(missing(job))
                .anySatisfy(row -> assertThat(row)
                        .startsWith("money.resale,")
                        .contains("reckoned as if the saw were written off in full"));
        assertThat(money(EditedDemo.small(folder.resolve("whole")))).doesNotContain("written off");
    }

    @Test
    void incomeWithoutAPriceIsSaidWhereItCouldTurnTheChoice() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.by-products = 0.00 per bf\n", "");
        assertThat(words(job))
                .contains("Income for which no price is given is counted in no way, and another may be cheaper with it:"
                        + " income from slabs and sawdust, per usable board foot (money.by-products).");
        money(job);
        assertThat(Files.readString(folder.resolve("out").resolve("plan-ways.csv")))
                .contains(",no more than,");
    }

    @Test
    void theOutlaySaysWhichWayItIsOpen() {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.other-outlay = 240\n", "");
        assertThat(words(job))
                .contains(
                        "Outlay before the first board, less resale: more than 700.00 USD, for there is no other outlay"
                                + " before the first board (money.other-outlay).");
        job.with(JOB, "money.resale = 450\n", "");
        assertThat(words(job)).contains("less resale: more or less than 1150.00 USD");
        job.write(JOB, (job.text(JOB) + "\nmoney.other-outlay = 240\n").getBytes(StandardCharsets.UTF_8));
        assertThat(words(job))
                .contains("less resale: no more than 1390.00 USD", "costs no more than", "(money.resale)");
    }

    /** A price of nothing is a price: it is said why nothing is sawn, and not that it is not needed. */
    @Test
    void whatCostsNothingBoughtIsSaidToBeThatAndNotUnneeded() {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        assertThat(words(job)).doesNotContain("Nothing is sawn for");
        job.with("prices.csv", "2.60 (2.20 to 3.20) per bf", "0 per bf");
        assertThat(words(job))
                .contains("Nothing is sawn for post: the price in prices.csv is 0")
                .contains("Log B is left whole: all that is wanted in white oak has a price of 0 bought")
                .doesNotContain("not needed");
        job.with("prices.csv", "any,hardwood,0 per bf", "any,hardwood,2.60 per bf");
        assertThat(words(job)).doesNotContain("Nothing is sawn for", "has a price of 0");
    }

    @Test
    void whatIsToBeWrittenMendsEveryGap() throws IOException {
        EditedDemo whole = EditedDemo.small(folder.resolve("whole"));
        assertThat(words(whole)).doesNotContain("Prices are missing");
        EditedDemo job = withoutPrices();
        StringBuilder text = new StringBuilder(job.text(JOB));
        StringBuilder prices = new StringBuilder("size,wood,price\n");
        for (String row : missing(job)) {
            for (String part : row.split("\"", -1)) {
                if (part.contains(" in prices.csv")) {
                    for (String line : part.replaceFirst(" in prices.csv.*", "").split("; ", -1)) {
                        prices.append(line.replace("AMOUNT", "2")).append('\n');
                    }
                }
            }
            String[] cells = row.split(",", -1);
            if (cells[0].startsWith("money.")) {
                String write = row.replaceFirst(".*(" + cells[0] + " = .*?) in job.properties.*", "$1");
                text.append(write.replace("AMOUNT", "2").replace("NUMBER", "3")).append('\n');
            }
        }
        job.write(JOB, text.toString().getBytes(StandardCharsets.UTF_8));
        job.write("prices.csv", prices.toString().getBytes(StandardCharsets.UTF_8));
        assertThat(words(job)).doesNotContain("Prices are missing");
    }

    @Test
    void oneChoiceAloneIsNotCalledTheCheapest() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).without("prices.csv");
        job.with(JOB, "money.hire-rate = 0.45 per bf\n", "")
                .with(JOB, "money.log-sale = 0.30 (0.20 to 0.45) per bf\n", "");
        assertThat(words(job))
                .contains("Own work not counted: this saw is the only choice that could be costed")
                .contains("Own work counted: this saw is the only choice that could be costed")
                .contains(
                        "give what it lacks: buying the lumber prices.csv; ",
                        "a travelling sawyer prices.csv, money.hire-rate; ")
                .contains("These verdicts set the saw alone against buying.")
                .doesNotContain("the cheapest for this job");
    }

    @Test
    void choicesThatNeverChangePlacesAreListedToo() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        String text = words(job);
        money(job);
        List<String> pairs = Files.readAllLines(folder.resolve("out").resolve("plan-crossings.csv"));
        for (String side : List.of("not counted", "counted")) {
            long listed =
                    pairs.stream().filter(row -> row.startsWith(side + ",")).count();
            Matcher never = Pattern.compile("Own work " + side
                            + ", cheaper or as dear at every volume(?: up to 100 times this one)?: ([^.]*)\\.")
                    .matcher(text);
            assertThat(never.find()).isTrue();
            // Buying, selling the logs, and three ways to saw with two uses each: 28 pairs, 6 of them graded beside
            // ungraded.
            long first = 0;
            for (String one : never.group(1).split("; ", -1)) {
                first += one.split(" before ", -1)[1].split(", ", -1).length;
            }
            assertThat(listed + first).isEqualTo(22);
        }
    }

    @Test
    void theCostOfAPieceLiesInItsInterval() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        money(job);
        List<String> pieces = Files.readAllLines(folder.resolve("out").resolve("plan-piece-costs.csv"));
        List<String> head = List.of(pieces.get(0).split(",", -1));
        assertThat(pieces.subList(1, pieces.size())).isNotEmpty().allSatisfy(row -> {
            List<String> cells = List.of(row.split(",", -1));
            for (String work : List.of("work-not-counted", "work-counted")) {
                // The cells before may hold commas of their own, so the place is told from the end.
                int place = cells.size() - head.size() + head.indexOf(work);
                double cost = Double.parseDouble(cells.get(place));
                assertThat(Double.parseDouble(cells.get(place + 1)))
                        .isPositive()
                        .isLessThan(cost);
                assertThat(Double.parseDouble(cells.get(place + 2))).isGreaterThan(cost);
            }
        });
    }

    @Test
    void theVerdictHasItsIntervalItsProbabilityAndTheRangesBesideIt() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        assertThat(words(job))
                .containsPattern(
                        "95 % of 2000 draws lie between [0-9.]+ USD (more|less) and [0-9.]+ USD (more|less); it pays in")
                .containsPattern("What moves it most: .*\\(taken: .*, range .*; .*\\); .*\\(.*\\); .*\\(.*\\)\\.")
                .contains("The ranges that were assumed for interval and probability");
        job.with(JOB, "money.wage = 14 per h", "money.wage = 14 per h (1 to 90 per h)");
        assertThat(words(job))
                .contains("(taken: 14 USD/h, range 1 to 90; given)")
                .doesNotContain(" money/h");
    }

    private List<String> years(EditedDemo job, String ownWork) throws IOException {
        money(job);
        return Files.readAllLines(folder.resolve("out").resolve("plan-years.csv")).stream()
                .filter(row -> row.startsWith(ownWork + ","))
                .map(row -> row.substring(ownWork.length()))
                .toList();
    }

    @Test
    void theYearsAreShownWithOwnWorkCountedAndNot() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job"));
        List<String> free = years(job, "not counted");
        assertThat(years(job, "counted")).hasSameSizeAs(free).isNotEqualTo(free);
        job.with(JOB, "money.wage = 14 per h", "money.wage = 0 per h");
        assertThat(years(job, "counted")).isEqualTo(years(job, "not counted"));
    }

    @Test
    void withoutAWageOnlyTheYearsThatCountWorkAreLeftOut() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.wage = 14 per h\n", "");
        assertThat(years(job, "not counted")).isNotEmpty();
        assertThat(years(job, "counted")).isEmpty();
        assertThat(words(job))
                .contains(
                        "Own work counted: the saw year by year is left out, no wage, or worth of an own hour (money.wage).");
    }

    @Test
    void timeFuelAndCostHaveTheirSpread() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.wage = 14 per h\n", "");
        money(job);
        List<String> rows = Files.readAllLines(folder.resolve("out").resolve("plan-spread.csv"));
        assertThat(rows)
                .extracting(row -> row.substring(0, 4))
                .containsExactly("figu", "hour", "days", "fuel", "\"run");
        for (String row : rows.subList(1, 4)) {
            String[] cells = row.split(",", -1);
            assertThat(Double.parseDouble(cells[2]))
                    .isBetween(Double.parseDouble(cells[3]), Double.parseDouble(cells[4]));
        }
        assertThat(words(job)).containsPattern("95 % of the draws [0-9.]+ to [0-9.]+ L of fuel");
    }
}
