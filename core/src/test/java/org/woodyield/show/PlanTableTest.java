package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.woodyield.show.PlanTable.Cell;

class PlanTableTest {

    /** Readers need no column of text without a word; a number that is not known is shown as that. */
    @Test
    void aColumnOfTextInWhichNothingStandsIsNotShown() {
        PlanTable table = PlanTable.of("t", "Title")
                .text("Saw", "saw")
                .text("Left out", "left-out")
                .number("Pays from", "pays-from")
                .row(Cell.text("one"), Cell.text(""), Cell.NONE)
                .build();
        assertThat(table.plain("")).contains("Saw", "Pays from").doesNotContain("Left out");
        assertThat(table.html().toString()).contains("Pays from").doesNotContain("Left out");
        assertThat(table.columns()).hasSize(3);
        PlanTable some = PlanTable.of("t", "Title")
                .text("Saw", "saw")
                .text("Left out", "left-out")
                .row(Cell.text("one"), Cell.text(""))
                .row(Cell.text("two"), Cell.text("wage"))
                .build();
        assertThat(some.plain("")).contains("Left out");
    }
}
