package org.woodyield.checks;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import org.woodyield.source.PublishedTable;

/**
 * The sum of a column as it was when the table was written. No publication prints it: it shows that a cell was changed by
 * accident, and nothing about whether the cell is right.
 *
 * @param file below {@code org/woodyield}
 * @param column whose numbers are added, also those of lists; text and empty cells are passed over
 * @param total their sum
 */
record ControlTotal(String file, String column, BigDecimal total) {

    /** Enough for every printed decimal; thirds do not end. */
    private static final int PLACES = 10;

    static List<ControlTotal> all() {
        List<ControlTotal> all = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(ControlTotal.class.getResourceAsStream("control-totals.csv"));
                CsvReader<NamedCsvRecord> csv =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (NamedCsvRecord row : csv) {
                all.add(new ControlTotal(
                        row.getField("file"), row.getField("column"), new BigDecimal(row.getField("total"))));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    /** The columns of a table that add up to something else. */
    static List<String> breaches(String file) {
        return all().stream()
                .filter(total -> total.file.equals(file) && total.sum().compareTo(total.total) != 0)
                .map(ControlTotal::column)
                .toList();
    }

    BigDecimal sum() {
        BigDecimal sum = BigDecimal.ZERO;
        for (PublishedTable.Row row : PrintedRelation.table(file).rows()) {
            String cell = row.text(column);
            Matcher number = TableCells.numbers(column, cell).matcher(cell);
            while (number.find()) {
                sum = sum.add(Printed.of(number.group()).value());
            }
        }
        return sum.setScale(PLACES, RoundingMode.HALF_UP);
    }
}
