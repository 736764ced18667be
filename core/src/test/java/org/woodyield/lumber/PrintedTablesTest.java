package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.woodyield.source.PublishedTable;

/** What must hold within a printed table whoever printed it. A lost digit often breaks it. */
class PrintedTablesTest {

    @Test
    void shrinkageRisesWithTheSizeAndFallsWithTheMoisture() {
        PublishedTable table = PublishedTable.read(GostShrinkage.class, "gost_6782_1.csv");
        List<String> moistures = table.columns().subList(1, table.columns().size());
        Map<String, Double> above = new LinkedHashMap<>();
        for (PublishedTable.Row row : table.rows()) {
            double left = row.number("size_mm");
            for (String moisture : moistures) {
                double cell = row.number(moisture);
                String place = "line " + row.line() + ", " + moisture;
                assertThat(cell).as(place).isLessThanOrEqualTo(left);
                assertThat(cell).as(place).isGreaterThanOrEqualTo(above.getOrDefault(moisture, 0.0));
                left = cell;
                above.put(moisture, cell);
            }
        }
    }

    @Test
    void theFactorFallsAsMoreBoardsMayBeThin() {
        double above = Double.MAX_VALUE;
        for (PublishedTable.Row row :
                PublishedTable.read(UndersizeZ.class, "undersize_z.csv").rows()) {
            assertThat(row.number("z")).as("line " + row.line()).isLessThan(above);
            above = row.number("z");
        }
    }

    /** Dressed dry, dressed green and nominal follow one another, and each rises from row to row of its class and face. */
    @Test
    void dressedSizesStandInOrder() {
        Map<String, PublishedTable.Row> above = new LinkedHashMap<>();
        for (PublishedTable.Row row :
                PublishedTable.read(SoftwoodSizes.class, "ps20_sizes.csv").rows()) {
            String place = "line " + row.line();
            assertThat(row.number("dry_in")).as(place).isLessThan(row.number("green_in"));
            assertThat(row.number("green_in")).as(place).isLessThan(row.number("nominal_in"));
            PublishedTable.Row before = above.put(row.text("class") + row.text("face"), row);
            if (before != null) {
                for (String column : List.of("nominal_in", "dry_in", "green_in")) {
                    assertThat(row.number(column)).as(place).isGreaterThan(before.number(column));
                }
            }
        }
    }
}
