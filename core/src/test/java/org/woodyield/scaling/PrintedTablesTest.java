package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.source.PublishedTable;

/** What must hold within a table whoever printed it: a thicker or longer log holds more. A lost digit often breaks it. */
class PrintedTablesTest {

    /** The reprint has 1216 bf at 36 in and 1209 bf at 37 in; 1290, the mean of its neighbours, is likely. */
    private static final String FALLS = "tree_scribner_form_class_78.csv line 32, 2.5";

    @ParameterizedTest
    @ValueSource(strings = {"gost_2708_75_table1.csv", "tree_scribner_form_class_78.csv"})
    void cellsRiseAlongEveryRowAndDownEveryColumn(String name) {
        PublishedTable table = PublishedTable.read(LogRule.class, name);
        List<String> columns = table.columns();
        Map<String, Double> above = new LinkedHashMap<>();
        for (PublishedTable.Row row : table.rows()) {
            double left = 0;
            for (String column : columns) {
                if (row.text(column).isEmpty()) {
                    continue;
                }
                double cell = row.number(column);
                String place = name + " line " + row.line() + ", " + column;
                if (!column.equals(columns.get(0))) {
                    assertThat(cell).as(place).isGreaterThan(left);
                    left = cell;
                }
                assertThat(cell > above.getOrDefault(column, 0.0)).as(place).isEqualTo(!FALLS.equals(place));
                above.put(column, cell);
            }
        }
    }

    @Test
    void theScribnerDiagramRisesWithTheDiameter() {
        double above = 0;
        for (PublishedTable.Row row : PublishedTable.read(LogRule.class, "scribner_diagram_16ft_memory.csv")
                .rows()) {
            assertThat(row.number("board_feet")).as("line " + row.line()).isGreaterThan(above);
            above = row.number("board_feet");
        }
    }

    @Test
    void theScribnerFactorsRiseWithTheDiameterInEachLengthClass() {
        Map<Double, Double> above = new LinkedHashMap<>();
        for (PublishedTable.Row row : PublishedTable.read(LogRule.class, "scribner_factors_memory.csv")
                .rows()) {
            double factor = row.number("factor_bf_per_ft");
            assertThat(factor).as("line " + row.line()).isGreaterThan(above.getOrDefault(row.number("from_ft"), 0.0));
            above.put(row.number("from_ft"), factor);
        }
    }

    /** Both factors are rounded to two decimals, so their product may miss one by half a unit of each. */
    @Test
    void aSwedishMeasureThereAndBackIsItself() {
        PublishedTable table = PublishedTable.read(LogRule.class, "sweden_conversion.csv");
        List<String> measures = table.columns().subList(1, table.columns().size());
        for (int i = 0; i < measures.size(); i++) {
            for (int j = 0; j < measures.size(); j++) {
                double there = table.rows().get(i).number(measures.get(j));
                double back = table.rows().get(j).number(measures.get(i));
                assertThat((there - 0.005) * (back - 0.005)).isLessThan(1);
                assertThat((there + 0.005) * (back + 0.005)).isGreaterThan(1);
            }
        }
    }
}
