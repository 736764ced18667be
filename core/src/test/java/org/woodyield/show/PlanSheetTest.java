package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.woodyield.log.Log;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.plan.DryingYard;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.JobInput.Assumption;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.Planner;
import org.woodyield.plan.Supply;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.work.Outlook;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

class PlanSheetTest {

    private static final String NASTY = SawnLogs.NASTY;

    private static final JobPlan PLAN = Planner.plan(job("1/16 in", Saw.Reference.PREVIOUS_FACE));

    private static Log log(String id, String species) {
        return new Log(
                id,
                SpeciesCatalogue.published().find(species),
                Length.parse("8 ft 4 in"),
                Length.parse("10 in"),
                Length.parse("9 in"),
                Length.parse("11 in"),
                Length.parse("1/2 in"),
                Length.ZERO,
                0,
                false);
    }

    /** One log to saw, named as nobody should name it, and one that nobody wants; figures invented. */
    private static JobInput job(String step, Saw.Reference reference) {
        WorkInputs work = WorkInputs.chainDefaults()
                .with(WorkInput.RATED_POWER, 4)
                .with(WorkInput.TANK, 0.8)
                .with(WorkInput.WARM_UP, 1)
                .with(WorkInput.COOL_DOWN, 1)
                .with(WorkInput.FUEL_PRICE, 1.5);
        return new JobInput(
                "Job " + NASTY,
                "USD",
                List.of(log(NASTY, "eastern white pine"), log("oak", "white oak")),
                List.of(new Product(
                        "stud " + NASTY,
                        new Size(true, Length.inches(2), Length.inches(4)),
                        Length.feet(8),
                        20,
                        Wood.of(Wood.Kind.SOFTWOOD),
                        Surface.DRESSED_DRY,
                        15)),
                List.of(),
                new Saw(
                        "saw " + NASTY,
                        Length.parse("5/16 in"),
                        Length.inches(24),
                        Length.parse(step),
                        reference,
                        Length.ZERO,
                        Length.parse("0.03 in")),
                SearchSpace.standard().withGrid(Length.inches(1, 4)).withCants(false),
                work,
                Length.inches(1, 32),
                5,
                DryingYard.usual(),
                List.of(new Price(Optional.empty(), Wood.of(Wood.Kind.SOFTWOOD), 1.2)),
                List.of(new Assumption(
                        "assumed " + NASTY,
                        "=taken",
                        new Source("recalled", Standing.MEMORY, "", "A figure once known " + NASTY, "", ""))));
    }

    private static PlanSheet sheet() {
        return PlanSheet.of(PLAN, Sources.get("demo"));
    }

    @Test
    void thePageIsWellFormedAndKeepsMarkupOutOfTexts() {
        Document page = Xml.parse(sheet().html());
        assertThat(Xml.all(page, "script")).isEmpty();
        assertThat(Xml.all(page, "h1").get(0).getTextContent()).isEqualTo("Job " + NASTY);
        assertThat(Xml.all(page, "h2"))
                .extracting(Element::getTextContent)
                .contains("Log " + NASTY, "Log oak", "What is wanted", "Cautions", "Sources");
        assertThat(Xml.all(page, "main")).hasSize(1);
    }

    @Test
    void theExponentOfTheDryingTimesIsStated() {
        assertThat(sheet().html()).contains("thickness^1.47", "1.32", "1.52");
    }

    @Test
    void thePageAsksForNothingFromAnywhere() {
        Document page = Xml.parse(sheet().html());
        for (Element element : Xml.all(page, "*")) {
            for (String name : List.of("src", "srcset", "data", "action", "poster", "xlink:href", "background")) {
                assertThat(element.getAttribute(name)).as(name).isEmpty();
            }
            assertThat(element.getAttribute("href")).matches("|#[a-z0-9-]+");
            assertThat(element.getAttribute("style")).doesNotContain("url(").doesNotContain("@import");
            assertThat(element.getTagName()).isNotIn("link", "script", "iframe", "img", "object", "embed", "base");
        }
        String style = Xml.all(page, "style").get(0).getTextContent();
        assertThat(style)
                .doesNotContain("url(")
                .doesNotContain("@import")
                .doesNotContain("<")
                .doesNotContain("&");
    }

    @Test
    void everyIdStandsOnceAndEveryLinkLeadsSomewhere() {
        Document page = Xml.parse(sheet().html());
        Set<String> ids = new LinkedHashSet<>();
        for (Element element : Xml.all(page, "*")) {
            String id = element.getAttribute("id");
            assertThat(id.isEmpty() || ids.add(id)).as("second id %s", id).isTrue();
        }
        for (Element link : Xml.all(page, "a")) {
            assertThat(ids).contains(link.getAttribute("href").substring(1));
        }
    }

    @Test
    void headingsGoDownOneLevelAtATimeAndTablesHaveHeaders() {
        Document page = Xml.parse(sheet().html());
        int level = 0;
        for (Element element : Xml.all(page, "*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int next = element.getTagName().charAt(1) - '0';
                assertThat(next).isLessThanOrEqualTo(level + 1);
                level = next;
            }
            if (element.getTagName().equals("th")) {
                assertThat(element.getAttribute("scope")).isIn("row", "col");
            }
        }
        assertThat(Xml.all(page, "table"))
                .allSatisfy(table ->
                        assertThat(Xml.children(table).get(0).getTagName()).isEqualTo("caption"));
        assertThat(Xml.all(page, "figure"))
                .hasSizeGreaterThanOrEqualTo(4)
                .allSatisfy(figure -> assertThat(Xml.all(figure, "figcaption")).hasSize(1));
    }

    @Test
    void theTextFitsAHundredColumnsAndShowsWhatMatters() {
        String text = sheet().text();
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        Supply studs = PLAN.supply().get(0);
        assertThat(text)
                .contains("Invented demonstration.")
                .contains("[MEMORY]")
                .contains("Left whole: nothing is wanted in white oak.")
                .contains(studs.met() ? "met" : "SHORT")
                .contains("Cut schedule of log " + NASTY)
                .contains("Overrun over Doyle")
                .contains("Solid recovery");
        assertThat(text.chars().filter(c -> c < 0x20 && c != '\n')).isEmpty();
    }

    @Test
    void aUsersOwnJobIsNotCalledInvented() {
        assertThat(PlanSheet.of(PLAN, Sources.get("user")).text()).doesNotContain("Invented demonstration");
    }

    @Test
    void tablesHaveKnownNamesAndTheSameRowsAsThePage() {
        List<PlanTable> tables = sheet().tables();
        // A table that needs a price is not there without it.
        assertThat(PlanSheet.TABLE_NAMES)
                .containsSubsequence(tables.stream().map(PlanTable::name).toList());
        assertThat(tables).extracting(PlanTable::name).contains("wanted", "money", "ways", "sources");
        PlanTable passes = table(tables, "passes");
        int count = PLAN.logs().stream()
                .flatMap(log -> log.sawing().stream())
                .mapToInt(sawing -> sawing.passes().size())
                .sum();
        assertThat(passes.rows())
                .hasSize(count)
                .allSatisfy(row -> assertThat(row).hasSize(10));
        assertThat(passes.columns().get(0).key()).isEqualTo("log");
        for (PlanTable table : tables) {
            assertThat(table.columns()).extracting(PlanTable.Column::key).doesNotHaveDuplicates();
            assertThat(table.columns())
                    .extracting(PlanTable.Column::key)
                    .allSatisfy(key -> assertThat(key).matches("[a-z0-9]+(-[a-z0-9]+)*"));
        }
    }

    @Test
    void theBalanceOfTheTableIsThatOfThePlan() {
        PlanTable balance = table(sheet().tables(), "balance");
        List<Double> cubicMetres = new ArrayList<>();
        balance.rows().forEach(row -> cubicMetres.add(row.get(2).value().orElseThrow()));
        double sum = 0;
        for (int i = 0; i < 5; i++) {
            sum += cubicMetres.get(i);
        }
        assertThat(cubicMetres.get(5)).isEqualTo(sum);
        assertThat(cubicMetres.get(6)).isEqualTo(PLAN.solid().cubicMetres());
    }

    private static String prospect(double least, double greatest) {
        MonteCarlo drawn = MonteCarlo.run(draws -> least + (greatest - least) * draws.nextDouble(), 1, 400);
        return new WorkSections(new PlanWords(PLAN))
                .prospect(new Outlook((least + greatest) / 2, Optional.of(drawn), List.of()));
    }

    /** A saving below zero is a cost: its ends turn round, and the lesser amount is still to stand first. */
    @Test
    void theLesserAmountOfAnIntervalStandsFirst() {
        assertThat(prospect(-280, -230)).containsPattern("lie between 23[0-9.]+ USD more and 27[0-9.]+ USD more;");
        assertThat(prospect(230, 280)).containsPattern("lie between 23[0-9.]+ USD less and 27[0-9.]+ USD less;");
        assertThat(prospect(-50, 20)).containsPattern("lie between 1[0-9.]+ USD less and 4[0-9.]+ USD more;");
        assertThat(prospect(-20, 50)).containsPattern("lie between 1[0-9.]+ USD more and 4[0-9.]+ USD less;");
    }

    /** Every figure of work and money fixed: the verdict stands, without interval and probability. */
    @Test
    void withoutAnyRangeThereIsNoProbability() {
        JobInput job = job("1/16 in", Saw.Reference.PREVIOUS_FACE);
        WorkInputs open = job.work()
                .with(WorkInput.PURCHASE, 800)
                .with(WorkInput.OTHER_OUTLAY, 100)
                .with(WorkInput.BAR_OIL_PRICE, 3)
                .with(WorkInput.MIX_OIL_PRICE, 9)
                .with(WorkInput.EDGE_PRICE, 30)
                .with(WorkInput.LOG_PRICE, 0)
                .with(WorkInput.WAGE, 12);
        WorkInputs fixed = open;
        for (WorkInput input : open.values().keySet()) {
            fixed = fixed.with(input, open.get(input));
        }
        String ranged = words(Planner.plan(job.withSaw(job.saw(), open)));
        String settled = words(Planner.plan(job.withSaw(job.saw(), fixed)));
        assertThat(ranged)
                .contains(
                        "of 2000 draws lie between",
                        "it pays in ",
                        "What moves it most: ",
                        "The spread of the figures");
        assertThat(ranged).containsPattern("days; 95 % of the draws [0-9.]+ to [0-9.]+ days");
        assertThat(settled)
                .contains("no input has a range, so there is no interval and no probability")
                .contains("against buying the lumber this job costs ")
                .doesNotContain(
                        "draws lie",
                        "it pays in ",
                        "What moves it most",
                        "ranges that were assumed",
                        "95 %",
                        "spread of the figures");
    }

    private static String words(JobPlan plan) {
        return PlanSheet.of(plan, Sources.get("user")).text().replaceAll("\\s+", " ");
    }

    @Test
    void everySourceThatIsNamedStandsInTheRegisterOfThePlan() {
        PlanTable sources = table(sheet().tables(), "sources");
        assertThat(sources.rows())
                .extracting(row -> row.get(5).shown())
                .contains("demo", "recalled")
                .doesNotHaveDuplicates();
    }

    @Test
    void aMetricSawIsShownInMillimetres() {
        JobPlan metric = Planner.plan(job("1 mm", Saw.Reference.BED));
        String text = PlanSheet.of(metric, Sources.get("user")).text();
        assertThat(text).contains("Setting,").contains("mm").contains("runs over a fixed bed");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        Xml.parse(PlanSheet.of(metric, Sources.get("user")).html());
    }

    @Test
    void noLocaleChangesTheSheet() {
        String text = sheet().text();
        String html = sheet().html();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(sheet().text()).isEqualTo(text);
            assertThat(sheet().html()).isEqualTo(html);
        } finally {
            Locale.setDefault(before);
        }
    }

    private static PlanTable table(List<PlanTable> tables, String name) {
        return tables.stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
