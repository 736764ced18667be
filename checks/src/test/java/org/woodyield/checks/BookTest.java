package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.xml.sax.InputSource;

/** The check book as its readers get it. */
class BookTest {

    private static final long LARGEST_PAGE = 2_000_000;

    @TempDir
    private static Path folder;

    private static final Map<String, Document> PAGES = new HashMap<>();

    /** Reading each page as XML shows that it is well formed. */
    @BeforeAll
    static void write() throws Exception {
        System.setProperty("java.awt.headless", "true");
        Book.write(Run.of(Catalogue.all(), CheckTables.all()), folder);
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        for (Path file : files()) {
            String name = String.valueOf(file.getFileName());
            if (name.endsWith(".html") || name.endsWith(".svg")) {
                PAGES.put(name, builder.parse(new InputSource(new StringReader(Files.readString(file)))));
            }
        }
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private static Document page(String name) {
        return Objects.requireNonNull(PAGES.get(name), name);
    }

    private static List<Element> elements(Document page, String name) {
        return listed(page.getElementsByTagName(name));
    }

    private static List<Element> inMain(String name, String tag) {
        return listed(elements(page(name), "main").get(0).getElementsByTagName(tag));
    }

    private static List<Element> listed(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static Set<String> ids(Document page) {
        Set<String> ids = new HashSet<>();
        for (Element element : elements(page, "*")) {
            String id = element.getAttribute("id");
            if (!id.isEmpty()) {
                assertThat(ids.add(id)).as("id " + id + " once").isTrue();
            }
        }
        return ids;
    }

    /** Marked calculations but for those that are listed. */
    private static Set<String> shown() {
        Set<String> shown = new HashSet<>(MarkedCalculations.ids());
        shown.removeAll(Account.withoutExample().keySet());
        return shown;
    }

    @Test
    void everyMarkedCalculationHasAPageWithAnExampleUnlessListed() {
        assertThat(MarkedCalculations.ids())
                .hasSizeGreaterThan(90)
                .allSatisfy(id -> assertThat(page(id + ".html")).isNotNull());
        assertThat(shown())
                .allSatisfy(id -> assertThat(elements(page(id + ".html"), "section"))
                        .as("working of " + id)
                        .anyMatch(section -> section.getAttribute("class").equals("working")));
    }

    @Test
    void theBookFindsTheSameCalculationsAsTheBytecode() {
        assertThat(MarkedCalculations.ids()).isEqualTo(CoverageTest.marked().keySet());
    }

    @Test
    void everyMarkedCalculationHasAStatement() {
        assertThat(Account.statements().keySet()).containsExactlyInAnyOrderElementsOf(shown());
        assertThat(Account.statements().values())
                .noneMatch(said -> said.name().isBlank() || said.statement().isBlank());
        assertThat(Account.statements().values().stream().map(Account.Statement::name))
                .doesNotHaveDuplicates();
    }

    @Test
    void theStatementsStandInTheOrderOfTheirCalculations() throws IOException {
        try (InputStream in = Objects.requireNonNull(Account.class.getResourceAsStream("statements.csv"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(text.lines().skip(1).map(line -> line.substring(0, line.indexOf(','))))
                    .isSorted();
        }
    }

    @Test
    void whatAnExampleIsGivenIsSaidToBeChosen() {
        assertThat(shown())
                .allSatisfy(
                        id -> assertThat(page(id + ".html").getDocumentElement().getTextContent())
                                .doesNotContain("Given in the job folder", "Given to the calculation"));
        assertThat(page("scaling.log-rule.html").getDocumentElement().getTextContent())
                .contains("Chosen for this example");
    }

    @Test
    void aSourceTellsWhenItWasReadOrThatNobodyNotedIt() {
        Map<String, String> dates = Account.datesRead();
        Set<String> ids = Sources.all().stream().map(Source::id).collect(Collectors.toSet());
        assertThat(ids).containsAll(dates.keySet());
        assertThat(dates.values()).allMatch(date -> date.matches("20\\d\\d-\\d\\d-\\d\\d"));
        List<Element> entries = inMain("sources.html", "section");
        assertThat(entries).hasSameSizeAs(ids).allSatisfy(entry -> {
            String text = entry.getTextContent();
            assertThat(text).contains("Date read");
            if (text.contains("Standingpublished")) {
                assertThat(text).containsPattern("Date read(not recorded|20\\d\\d-\\d\\d-\\d\\d)");
            }
        });
    }

    @Test
    void everyMarkedCalculationHasAnExample() {
        Examples examples = Examples.all();
        assertThat(examples.calculations()).containsExactlyInAnyOrderElementsOf(shown());
        assertThat(Account.withoutExample().values()).noneMatch(String::isBlank);
        for (String id : examples.calculations()) {
            assertThat(examples.find(id).orElseThrow().working().value()).as(id).isFinite();
        }
    }

    /** Every probe of an example is taken or refused as a value outside its domain, never with another exception. */
    @Test
    void anExampleRefusesWhatLiesOutside() {
        Examples examples = Examples.all();
        long limited = examples.calculations().stream()
                .filter(id -> !examples.find(id).orElseThrow().limits().isEmpty())
                .count();
        assertThat(limited).isGreaterThan(80);
    }

    @Test
    void everyCheckRowIsShownOnThePageOfItsCalculation() {
        Map<String, Long> rows = new HashMap<>();
        Run.of(Catalogue.all(), CheckTables.all())
                .results()
                .forEach(result -> rows.merge(result.row().calculation(), 1L, Long::sum));
        rows.forEach((id, count) -> assertThat(elements(page(id + ".html"), "table").stream()
                        .filter(table -> table.getTextContent().contains("Allowance"))
                        .mapToLong(table -> table.getElementsByTagName("tr").getLength() - 1)
                        .sum())
                .as(id)
                .isEqualTo(count));
    }

    @Test
    void everyLinkLeadsSomewhereInTheBook() {
        Map<String, Set<String>> ids = new HashMap<>();
        PAGES.forEach((name, page) -> ids.put(name, ids(page)));
        int links = 0;
        for (Map.Entry<String, Document> page : PAGES.entrySet()) {
            for (Element element : elements(page.getValue(), "*")) {
                for (String attribute : List.of("href", "src")) {
                    String target = element.getAttribute(attribute);
                    if (target.isEmpty()) {
                        continue;
                    }
                    links++;
                    String file = target.replaceFirst("#.*", "");
                    String place = target.contains("#") ? target.substring(target.indexOf('#') + 1) : "";
                    String name = file.isEmpty() ? page.getKey() : file;
                    assertThat(folder.resolve(name))
                            .as(page.getKey() + " to " + target)
                            .exists();
                    if (!place.isEmpty()) {
                        assertThat(ids.get(name))
                                .as(page.getKey() + " to " + target)
                                .contains(place);
                    }
                }
            }
        }
        assertThat(links).isGreaterThan(1000);
    }

    @Test
    void nothingIsAskedOfAnyOtherPlace() throws IOException {
        for (Path file : files()) {
            String text = Files.readString(file).replaceAll("xmlns(:[a-z]+)?=\"[^\"]*\"", "");
            assertThat(text).as(file.toString()).doesNotContain("http:", "https:", "@import", "url(\"");
        }
    }

    @Test
    void noPageIsOverTwoMegabytes() throws IOException {
        for (Path file : files()) {
            assertThat(Files.size(file)).as(file.toString()).isLessThan(LARGEST_PAGE);
        }
    }

    @Test
    void headingsFollowInOrderAndTablesNameTheirHeaders() {
        PAGES.forEach((name, page) -> {
            int level = 0;
            for (Element element : elements(page, "*")) {
                if (element.getTagName().matches("h[1-6]")) {
                    int next = element.getTagName().charAt(1) - '0';
                    assertThat(next).as(name + ": " + element.getTextContent()).isBetween(1, level + 1);
                    level = next;
                }
            }
            assertThat(elements(page, "th")).as(name).allMatch(cell -> cell.hasAttribute("scope"));
            assertThat(elements(page, "table"))
                    .as(name)
                    .allMatch(table -> table.getElementsByTagName("caption").getLength() == 1);
        });
    }

    @Test
    void everyDrawingHasItsNameAndItsWordsAndItsDataOnThePage() {
        for (Plot plot : Plots.all()) {
            Document page = page("plot-" + plot.id() + ".html");
            Element svg = elements(page, "svg").get(0);
            assertThat(ids(page)).contains(svg.getAttribute("aria-labelledby").split(" "));
            assertThat(elements(page, "tr")).hasSize(plot.x().size() + 1);
            assertThat(folder.resolve("plot-" + plot.id() + ".csv")).exists();
        }
    }

    @Test
    void everyRuleThatIsOfferedHasAPanelAndAColumn() throws java.io.IOException {
        String svg = java.nio.file.Files.readString(folder.resolve("plot-every-rule.svg"));
        String header = java.nio.file.Files.readAllLines(folder.resolve("plot-every-rule.csv"))
                .get(0);
        for (LogRule rule : LogRules.all()) {
            assertThat(svg).contains(">" + rule.id() + "</text>");
            assertThat(header).contains(rule.id() + " [" + rule.standing().label() + "]");
        }
        assertThat(svg).contains("currentColor").doesNotContain("M0 0");
    }

    @Test
    void theCourseSheetIsAPageOfTheBookThatTheContentsLinkTo() {
        assertThat(inMain("index.html", "a").stream().map(link -> link.getAttribute("href")))
                .contains("course.html");
        CourseSheet sheet = CourseSheet.read();
        List<String> items = inMain("course.html", "li").stream()
                .map(Element::getTextContent)
                .toList();
        assertThat(items)
                .hasSize(2 * (sheet.exercises().size() + sheet.variants().size()))
                .containsAll(sheet.exercises().stream()
                        .map(CourseSheet.Exercise::asked)
                        .toList())
                .containsAll(sheet.variants().stream()
                        .map(CourseSheet.Exercise::asked)
                        .toList());
        sheet.exercises()
                .forEach(exercise -> assertThat(items)
                        .anyMatch(item -> item.contains("rounded at the end " + exercise.answer())
                                && item.contains("(" + exercise.calculation() + ")")));
    }

    @Test
    void whatCouldBeMarkupIsEscaped() throws IOException {
        String page = new Pages()
                .page(
                        "plots",
                        Map.of(
                                "title",
                                "<b>&\"'",
                                "plots",
                                List.of(new Book.Link("\"><script>", "</a><i>", "& so on"))));
        assertThat(page).doesNotContain("<b>&", "\"><script>", "</a><i>", "& so");
        assertThat(page).contains("&lt;b&gt;&amp;&quot;&#39;");
    }

    @Test
    void aNameThatNothingGivesAValueToIsAnError() {
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> new Pages().page("plots", Map.of("title", "a")))
                .hasStackTraceContaining("nothing gives a value to plots");
    }
}
