package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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

    @Test
    void escapeSequencesOfATerminalAreTakenOut() {
        assertThat(TextTable.oneLine("a\u001b[31mred\nb")).isEqualTo("a\uFFFD[31mred b");
    }

    @Test
    void aRowOfAnotherWidthIsRefused() {
        assertThatThrownBy(() -> new TextTable("").left("a").row("1", "2")).hasMessage("2 cells for 1 columns");
    }
}
