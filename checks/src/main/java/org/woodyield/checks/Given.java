package org.woodyield.checks;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.Length;

/** The inputs of one check row, by column. It notes which columns were read, so that none stands there for nothing. */
final class Given {

    private final Map<String, String> cells;
    private final Map<String, Double> instead;
    private final Set<String> read;

    Given(Map<String, String> cells, Map<String, Double> instead, Set<String> read) {
        this.cells = cells;
        this.instead = instead;
        this.read = read;
    }

    /** The cell as printed. */
    String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalArgumentException("no column " + column + "; the inputs are " + cells.keySet());
        }
        read.add(column);
        return cell;
    }

    /** Whether the table has this column, for a calculation whose tables name its inputs each in their own way. */
    boolean has(String column) {
        return cells.containsKey(column);
    }

    /** The cell as printed, or nothing where it is empty. */
    Optional<String> textIfPrinted(String column) {
        return Optional.of(text(column)).filter(cell -> !cell.isEmpty());
    }

    /** The cell as a number; {@code 3/4} and {@code 1 1/2} are understood. */
    double number(String column) {
        String cell = text(column);
        Double end = instead.get(column);
        return end != null ? end : Printed.of(cell).value().doubleValue();
    }

    /** The cell as a number, or nothing where it is empty. */
    Optional<Double> numberIfPrinted(String column) {
        return text(column).isEmpty() ? Optional.empty() : Optional.of(number(column));
    }

    /** The cell as a whole number. */
    int whole(String column) {
        return Printed.of(text(column)).value().intValueExact();
    }

    /** The cell as a length with its unit, such as {@code 5 1/2 in}. */
    Length length(String column) {
        return Length.parse(text(column));
    }

    @Override
    public String toString() {
        Map<String, String> shown = new LinkedHashMap<>(cells);
        shown.values().removeIf(String::isEmpty);
        StringBuilder line = new StringBuilder();
        shown.forEach((column, cell) -> line.append(line.isEmpty() ? "" : "; ")
                .append(column)
                .append('=')
                .append(cell));
        return line.toString();
    }
}
