package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.woodyield.source.PublishedTable;

/** What must hold within a printed table whoever printed it. */
class PrintedTablesTest {

    /** The table prints a factor beside the five figures that it was made of; moisture is cut to five decimals. */
    @Test
    void theGreenFactorFollowsFromTheOtherCellsOfItsRow() {
        for (PublishedTable.Row row :
                PublishedTable.read(WoodWeight.class, "fia_wood_bark.csv").rows()) {
            double factor = WoodWeight.dryToGreenFactor(
                    row.number("wood_sg_green"),
                    row.number("mc_green_wood_pct"),
                    row.number("bark_sg_green"),
                    row.number("mc_green_bark_pct"),
                    row.number("bark_vol_pct_of_wood"));
            assertThat(factor).as("line " + row.line()).isCloseTo(row.number("drywt_to_greenwt"), within(1e-8));
        }
    }
}
