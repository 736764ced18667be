package org.woodyield.checks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something to look at: values by name over common places on the x-axis.
 *
 * @param id of its files
 * @param title what it shows
 * @param words what a reader should see in it and what it rests on
 * @param xName what runs along the x-axis, with its unit
 * @param yName what runs along the y-axis, with its unit
 * @param x places as text; numbers, unless they are names
 * @param names whether x are names
 * @param series values by name, one for each place; NaN where there is none
 */
record Plot(
        String id,
        String title,
        String words,
        String xName,
        String yName,
        List<String> x,
        boolean names,
        Map<String, List<Double>> series) {

    /** Keeps immutable copies. */
    Plot {
        x = List.copyOf(x);
        series = Collections.unmodifiableMap(new LinkedHashMap<>(series));
        for (List<Double> values : series.values()) {
            if (values.size() != x.size()) {
                throw new IllegalArgumentException(
                        id + " has " + x.size() + " places and " + values.size() + " values");
            }
        }
    }

    /** First the header, then a row for each place; a cell is empty where there is no value. */
    List<List<String>> table() {
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>(List.of(xName));
        header.addAll(series.keySet());
        rows.add(header);
        for (int i = 0; i < x.size(); i++) {
            List<String> row = new ArrayList<>(List.of(x.get(i)));
            for (List<Double> values : series.values()) {
                double value = values.get(i);
                row.add(Double.isNaN(value) ? "" : org.woodyield.show.NumberText.significant(value, 4));
            }
            rows.add(row);
        }
        return rows;
    }
}
