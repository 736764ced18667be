package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void numbersStandUnderEachOther() {
        String text = new TextTable("  ")
                .left("log")
                .right("board feet")
                .row("A1", "8.5")
                .row("longer", "112.5")
                .text();
        assertThat(text)
                .isEqualTo("  log     board feet\n  ------  ----------\n  A1             8.5\n  longer       112.5\n");
    }

    @Test
    void aLongTextIsWrappedAndANumberIsNot() {
        String text = new TextTable("")
                .left("what")
                .right("how much")
                .row("word ".repeat(60).strip(), "123456789.123")
                .text();
        assertThat(text.lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(TextTable.WIDTH))
                .anySatisfy(line -> assertThat(line).endsWith("123456789.123"));
    }

    /** Narrowing the words by a line each costs as many lines as there are rows; a header costs its own. */
    @Test
    void aHeaderIsWrappedBeforeTheTextOfManyRows() {
        String words = "seven words that want sixty columns or a bit more than that";
        TextTable table = new TextTable("")
                .left("what comes off")
                .right("a header of a number")
                .right("another header of a number");
        for (int row = 0; row < 10; row++) {
            table.row(words, "1", "2");
        }
        assertThat(table.text().lines())
                .hasSize(2 + 1 + 10)
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(TextTable.WIDTH))
                .filteredOn(line -> line.startsWith(words))
                .hasSize(10);
    }

    @Property(tries = 200)
    void noWordIsLostAndNoLineIsTooLong(
            @ForAll @Size(min = 1, max = 20) List<@Size(value = 5) List<@From("cells") String>> rows) {
        TextTable table = new TextTable("  ")
                .left("name")
                .left("what it is for")
                .left("how so")
                .left("why")
                .left("");
        rows.forEach(table::row);
        String text = table.text();
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(TextTable.WIDTH));
        for (List<String> row : rows) {
            for (String cell : row) {
                assertThat(text).contains(cell.split(" ", -1));
            }
        }
    }

    @Provide
    Arbitrary<String> cells() {
        return Arbitraries.strings()
                .withCharRange('a', 'z')
                .ofMinLength(1)
                .ofMaxLength(8)
                .list()
                .ofMaxSize(12)
                .map(words -> String.join(" ", words));
    }

    @Test
    void aWordThatIsTooLongIsCutBehindAMarkWhereItHasOne() {
        assertThat(TextTable.wrap("work.share-at-cut", 13)).containsExactly("work.share-", "at-cut");
        assertThat(TextTable.wrap("standardization", 10)).containsExactly("standardiz", "ation");
    }

    @Test
    void escapeSequencesOfATerminalAreTakenOut() {
        assertThat(TextTable.oneLine("a\u001b[31mred\nb")).isEqualTo("a\uFFFD[31mred b");
    }

    @Test
    void aRowOfAnotherWidthIsRefused() {
        assertThatThrownBy(() -> new TextTable("").left("a").row("1", "2")).hasMessage("2 cells for 1 columns");
    }
}
