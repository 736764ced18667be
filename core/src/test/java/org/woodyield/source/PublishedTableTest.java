package org.woodyield.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PublishedTableTest {

    private static PublishedTable table(String... lines) {
        return PublishedTable.of("t.csv", CsvText.parse("t.csv", String.join("\n", lines)));
    }

    private static PublishedTable oneCell(String cell) {
        return table("# source: trade", "# rows: 1", "x,y", cell + ",1");
    }

    @Test
    void cellsAreKeptAsPrinted() {
        PublishedTable table =
                table("# prose", "# source: trade", "# rows: 2", "name,size", "\"oak, \"\"red\"\"\",1 1/2", ",3.50");
        assertThat(table.columns()).containsExactly("name", "size");
        assertThat(table.source().id()).isEqualTo("trade");
        assertThat(table.name()).isEqualTo("t.csv");
        assertThat(table.rows()).hasSize(2);
        assertThat(table.rows().get(0).text("name")).isEqualTo("oak, \"red\"");
        assertThat(table.rows().get(0).number("size")).isEqualTo(1.5);
        assertThat(table.rows().get(0).line()).isEqualTo(5);
        assertThat(table.rows().get(1).text("size")).isEqualTo("3.50");
        assertThat(table.rows().get(1).numberIfPrinted("name")).isEmpty();
        assertThat(table.rows().get(1).numberIfPrinted("size")).contains(3.5);
    }

    @ParameterizedTest
    @CsvSource({
        "7,7",
        "-7.25,-7.25",
        ".5,0.5",
        "3/4,0.75",
        "1 9/16,1.5625",
        "1-9/16,1.5625",
        "-1 1/2,-1.5",
        "2.5e-3,0.0025"
    })
    void numbersAndFractionsAreRead(String cell, double value) {
        assertThat(oneCell(cell).rows().get(0).number("x")).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " 7", "7 ", "NaN", "Infinity", "1d", "0x1p3", "1/0", "1 1 /2", "1/-2", "7..5", "abc", "1e999"
            })
    void whatIsNoNumberIsNamedWithFileLineAndColumn(String cell) {
        assertThatThrownBy(() -> oneCell(cell).rows().get(0).number("x"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("t.csv line 4, column x: '" + cell + "' is not a number");
    }

    @Test
    void anUnknownColumnIsNamedWithThoseThereAre() {
        assertThatThrownBy(() -> oneCell("1").rows().get(0).text("z"))
                .hasMessage("t.csv has no column z; it has [x, y]");
    }

    @Test
    void aWrongCountOfRowsIsRefused() {
        assertThatThrownBy(() -> table("# source: trade", "# rows: 2", "x", "1"))
                .hasMessage("t.csv declares 2 rows and has 1");
        assertThatThrownBy(() -> table("# source: trade", "x", "1")).hasMessageContaining("rows:");
        assertThatThrownBy(() -> table("# source: trade", "# rows: 1", "# rows: 1", "x", "1"))
                .hasMessageContaining("has 2");
    }

    @Test
    void aRaggedRowIsRefusedWithItsLine() {
        assertThatThrownBy(() -> table("# source: trade", "# rows: 1", "x,y", "1"))
                .hasMessage("t.csv line 4: 1 cells, 2 columns");
        assertThatThrownBy(() -> table("# source: trade", "# rows: 1", "x,y", "1,2,3"))
                .hasMessage("t.csv line 4: 3 cells, 2 columns");
    }

    @Test
    void anUnknownSourceIsRefused() {
        assertThatThrownBy(() -> table("# source: nobody", "# rows: 1", "x", "1"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("t.csv: no source 'nobody' in the register");
    }

    @Test
    void aMissingFileIsNamed() {
        assertThatThrownBy(() -> PublishedTable.read(PublishedTableTest.class, "none.csv"))
                .hasMessage("no table none.csv beside org.woodyield.source.PublishedTableTest");
    }

    @Test
    void quotesAreClosedAndHoldWholeCells() {
        assertThatThrownBy(() -> oneCell("\"oak")).hasMessage("t.csv line 4: a quote is not closed");
        assertThatThrownBy(() -> oneCell("5\" wide\"")).hasMessageStartingWith("t.csv line 4: a quote stands inside");
        assertThatThrownBy(() -> oneCell("\"5\" wide")).hasMessageStartingWith("t.csv line 4: a quote stands inside");
        assertThat(oneCell("\"\"").rows().get(0).text("x")).isEmpty();
    }

    @Test
    void commentsStandFirstAndNoLineIsBlank() {
        assertThatThrownBy(() -> table("# source: trade", "# rows: 1", "x", "# late", "1"))
                .hasMessageStartingWith("t.csv line 4: comments stand before the header");
        assertThatThrownBy(() -> table("# source: trade", "# rows: 1", "x", "", "1"))
                .hasMessageStartingWith("t.csv line 4");
    }

    @Test
    void anEmptyTableIsRefused() {
        assertThatThrownBy(() -> table("# source: trade", "# rows: 0", "x")).hasMessage("t.csv has no rows");
        assertThatThrownBy(() -> table("")).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void eachColumnHasANameOfItsOwn() {
        assertThatThrownBy(() -> table("# source: trade", "# rows: 1", "x,x", "1,2"))
                .hasMessageContaining("a name of its own");
        assertThatThrownBy(() -> table("# source: trade", "# rows: 1", "x,", "1,2"))
                .hasMessageContaining("a name of its own");
    }
}
