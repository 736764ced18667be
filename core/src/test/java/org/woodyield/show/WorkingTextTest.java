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
                .contains("  = 208.67243835")
                .contains("* 12 * (1 - 0.30000000000000004) / 144")
                .contains("V_r = V rounded nearest, half up, to a multiple of 0.5 ft^3: 12.17255")
                .contains("becomes 12 ft^3")
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
    void aHeadingLevelThatHtmlLacksIsRefused() {
        assertThatThrownBy(() -> WorkingText.html(sample(), 7)).hasMessage("heading level is 7; allowed: 2 to 6");
    }
}
