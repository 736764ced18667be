package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.working.Formula;
import org.woodyield.working.Working;

class WorkingTextTest {

    static final Source RECALLED = new Source("recalled", Standing.MEMORY, "", "A table once known", "", "");
    private static final Source PRINTED =
            new Source("printed", Standing.PUBLISHED, "An Agency", "On <logs> & \"boards\"", "1950", "p. 7");

    static Working sample() {
        return Working.of("Wood in a <script>alert('&')</script> log")
                .given("D", "diameter inside bark", 16.3, "in")
                .given("L", "length", 12, "ft")
                .lookup("k_s", "share of bark", "row 3, column <b>", 0.1 + 0.2, "", RECALLED)
                .step("A", "area of the end", "3.141592653589793 / 4 * D^2", "in^2", Sources.get("definition"))
                .step("V", "volume", "A * L * (1 - k_s) / 144", "ft^3", PRINTED)
                .round("V_r", "volume as scaled", "V", Rounding.HALF_UP, 0.5, "ft^3", RECALLED)
                .note("A note with <i>marks</i> | and pipes.")
                .build();
    }

    @Test
    void plainTextShowsFormulaSubstitutionAndEveryDigit() {
        String text = WorkingText.plain(sample());
        assertThat(text)
                .contains("V = A * L * (1 - k_s) / 144")
                .contains("  = 208.67243803306803 in^2  (208.67 in^2)")
                .contains("* 12 * (1 - 0.30000000000000004) / 144")
                .contains("V_r = V rounded nearest, half up, to a multiple of 0.5 ft^3\n")
                .contains("       = 12 ft^3, from 12.172558885262301\n")
                .contains("Source: An Agency, On <logs> & \"boards\", 1950, p. 7")
                .contains("A table once known [MEMORY]");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void thePrintedSubstitutionEvaluatesToThePrintedValue() {
        for (String line : WorkingText.plain(sample()).lines().toList()) {
            if (line.contains(" / 144") && line.strip().startsWith("= ")) {
                double value = Formula.parse(line.strip().substring(2)).evaluate(Map.of());
                assertThat(value).isEqualTo(sample().value("V"));
                return;
            }
        }
        throw new AssertionError("no substitution found");
    }

    @Test
    void htmlIsWellFormedAndEscapesWhatItIsGiven() {
        String html = WorkingText.html(sample(), 3);
        Document read = Xml.parse(html);
        assertThat(Xml.all(read, "h3").get(0).getTextContent()).isEqualTo(sample().title());
        assertThat(Xml.all(read, "script")).isEmpty();
        assertThat(Xml.all(read, "math")).hasSizeGreaterThanOrEqualTo(7);
        assertThat(Xml.all(read, "mfrac")).isNotEmpty();
        assertThat(Xml.all(read, "strong"))
                .extracting(Element::getTextContent)
                .containsOnly("A table once known [MEMORY]")
                .hasSize(2);
        assertThat(Xml.all(read, "th"))
                .allSatisfy(cell -> assertThat(cell.getAttribute("scope")).isNotEmpty());
    }

    @Test
    void markdownTakesTheMeaningFromMarks() {
        String text = WorkingText.markdown(sample());
        assertThat(text)
                .startsWith("### Wood in a \\<script\\>alert('\\&')\\</script\\> log\n")
                .contains("| `D` | diameter inside bark | 16.3 in |")
                .contains("Note: A note with \\<i\\>marks\\</i\\> \\| and pipes.")
                .contains("\\[MEMORY\\]");
        assertThat(text.lines().filter(line -> line.startsWith("| `")))
                .allSatisfy(line -> assertThat(line.replace("\\|", "")
                                .chars()
                                .filter(c -> c == '|')
                                .count())
                        .isEqualTo(5));
    }

    @Test
    void valuesGivenBetweenStepsStandBetweenThem() {
        Working working = Working.of("Two stretches")
                .given("r", "first radius", 2, "m")
                .step("a", "square", "r * r", "m2", Sources.get("definition"))
                .given("r", "second radius", 3, "m")
                .step("a", "sum", "a + r * r", "m2", Sources.get("definition"))
                .build();
        assertThat(WorkingText.plain(working))
                .containsSubsequence("first radius", "1. square", "With", "second radius", "2. sum", "= 4 + 3 * 3");
        assertThat(WorkingText.html(working, 2)).contains("<ol class=\"steps\" start=\"2\">");
        assertThat(WorkingText.markdown(working)).containsSubsequence("first radius", "1. square", "second", "2. sum");
    }

    @Test
    void aHeadingLevelThatHtmlLacksIsRefused() {
        assertThatThrownBy(() -> WorkingText.html(sample(), 7)).hasMessage("heading level is 7; allowed: 2 to 6");
    }
}
