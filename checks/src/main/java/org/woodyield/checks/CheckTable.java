package org.woodyield.checks;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;

/**
 * One published table as check rows.
 *
 * <p>The file begins with comment lines: {@code # source: id}, {@code # calculation: package.name} and {@code # rows: n};
 * where it applies {@code # truncates} (the source drops digits), {@code # kind: transcribed} (for all rows) and {@code
 * # rounded inputs: a, b} (these columns were rounded in print and are tried at both ends). Other comments are prose. The
 * column {@code published} is needed; {@link #RESERVED} lists the columns with a meaning of their own; all others are
 * inputs of the calculation.
 *
 * @param id folder and file name without its ending, for example {@code scaling/doyle-1913}
 * @param truncates whether the source drops digits instead of rounding
 * @param roundedInputs input columns to try at both ends of their last printed digit
 * @param rows in the order of the file
 */
record CheckTable(String id, boolean truncates, List<String> roundedInputs, List<Row> rows) {

    static final String PUBLISHED = "published";
    static final String KIND = "kind";
    static final String REASON = "reason";
    static final String EXPECTED = "expected";
    static final String ALLOWANCE = "allowance";
    static final String SOURCE = "source";
    static final String CALCULATION = "calculation";
    static final String NOTE = "note";

    /** Columns that are not inputs. */
    static final Set<String> RESERVED = Set.of(PUBLISHED, KIND, REASON, EXPECTED, ALLOWANCE, SOURCE, CALCULATION, NOTE);

    /**
     * One row.
     *
     * @param id table and count, for example {@code scaling/doyle-1913#7}
     * @param line in the file
     * @param calculation what is called
     * @param kind what the row shows
     * @param source of the published value
     * @param inputs cells by column, as printed
     * @param published as printed
     * @param expected of a disagreement: the computed value as written down
     * @param allowance wider than the printed digits give, if any
     * @param reason why it is wider, or why it disagrees; possibly empty
     * @param note a remark, possibly empty
     */
    record Row(
            String id,
            int line,
            String calculation,
            Kind kind,
            Source source,
            Map<String, String> inputs,
            String published,
            Optional<String> expected,
            Optional<String> allowance,
            String reason,
            String note) {}

    /** Keeps immutable copies. */
    CheckTable {
        roundedInputs = List.copyOf(roundedInputs);
        rows = List.copyOf(rows);
    }

    static CheckTable parse(String id, String text) {
        List<String> comments = new ArrayList<>();
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .commentStrategy(CommentStrategy.READ)
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                if (!record.isComment()) {
                    records.add(record);
                } else if (records.isEmpty()) {
                    comments.add(record.getField(0).strip());
                } else {
                    throw fault(id, record, "comments stand before the header");
                }
            }
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(id, e);
        }
        if (records.size() < 2) {
            throw new IllegalStateException(id + " has no rows");
        }
        return new Reading(id, comments, records.get(0)).table(records.subList(1, records.size()));
    }

    private static IllegalStateException fault(String id, CsvRecord record, String what) {
        return new IllegalStateException(id + " line " + record.getStartingLineNumber() + ": " + what);
    }

    /** What holds for the whole file while its rows are read. */
    private static final class Reading {
        private final String id;
        private final List<String> comments;
        private final List<String> columns;
        private final String source;
        private final Optional<String> calculation;
        private final Kind kind;

        Reading(String id, List<String> comments, CsvRecord header) {
            this.id = id;
            this.comments = comments;
            this.columns = header.getFields();
            Set<String> once = new LinkedHashSet<>(columns);
            if (once.size() != columns.size() || once.contains("")) {
                throw fault(id, header, "each column needs a name of its own: " + columns);
            }
            if (!columns.contains(PUBLISHED)) {
                throw fault(id, header, "no column 'published'; the columns are " + columns);
            }
            this.source = comment("source:")
                    .orElseThrow(() -> new IllegalStateException(id + " needs one line '# source: id'"));
            this.calculation = comment("calculation:");
            this.kind = comment("kind:").map(label -> kind(header, label)).orElse(Kind.COMPUTED);
        }

        CheckTable table(List<CsvRecord> records) {
            List<Row> rows = new ArrayList<>();
            for (CsvRecord record : records) {
                rows.add(row(record, rows.size() + 1));
            }
            String declared =
                    comment("rows:").orElseThrow(() -> new IllegalStateException(id + " needs one line '# rows: n'"));
            if (!declared.equals(Integer.toString(rows.size()))) {
                throw new IllegalStateException(id + " declares " + declared + " rows and has " + rows.size());
            }
            List<String> rounded = comment("rounded inputs:")
                    .map(names -> List.of(names.split("\\s*,\\s*")))
                    .orElse(List.of());
            for (String name : rounded) {
                if (!columns.contains(name) || RESERVED.contains(name)) {
                    throw new IllegalStateException(id + " has no input column " + name + " to try at both ends");
                }
            }
            return new CheckTable(id, comments.contains("truncates"), rounded, rows);
        }

        private Row row(CsvRecord record, int count) {
            if (record.getFieldCount() != columns.size()) {
                throw fault(
                        id,
                        record,
                        record.getFieldCount() + " cells, " + columns.size() + " columns: " + record.getFields());
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                cells.put(columns.get(i), record.getField(i));
            }
            Map<String, String> inputs = new LinkedHashMap<>(cells);
            inputs.keySet().removeAll(RESERVED);
            String called = cell(cells, CALCULATION)
                    .or(() -> calculation)
                    .orElseThrow(() -> fault(id, record, "no calculation, neither in the header nor in the row"));
            if (!called.startsWith(folder(id) + ".")) {
                throw fault(id, record, called + " belongs into another folder");
            }
            Row row = new Row(
                    id + "#" + count,
                    Math.toIntExact(record.getStartingLineNumber()),
                    called,
                    cell(cells, KIND).map(label -> kind(record, label)).orElse(kind),
                    source(record, cell(cells, SOURCE).orElse(source)),
                    inputs,
                    cells.getOrDefault(PUBLISHED, ""),
                    cell(cells, EXPECTED),
                    cell(cells, ALLOWANCE),
                    cells.getOrDefault(REASON, ""),
                    cells.getOrDefault(NOTE, ""));
            if (row.published.isEmpty()) {
                throw fault(id, record, "no published value");
            }
            boolean disagreement = row.kind == Kind.DISAGREEMENT;
            if (disagreement != row.expected.isPresent()) {
                throw fault(id, record, "a disagreement, and only that, has the expected computed value");
            }
            if ((disagreement || row.allowance.isPresent()) && row.reason.isBlank()) {
                throw fault(id, record, "a disagreement or a wider allowance needs a reason");
            }
            return row;
        }

        private Kind kind(CsvRecord at, String label) {
            try {
                return Kind.of(label);
            } catch (IllegalArgumentException e) {
                throw new IllegalStateException(
                        fault(id, at, String.valueOf(e.getMessage())).getMessage(), e);
            }
        }

        private Source source(CsvRecord at, String key) {
            Source found;
            try {
                found = Sources.get(key);
            } catch (IllegalArgumentException e) {
                throw new IllegalStateException(
                        fault(id, at, String.valueOf(e.getMessage())).getMessage(), e);
            }
            if (found.standing() == Standing.INVENTED) {
                throw fault(id, at, "the source " + key + " is invented: nothing can be checked against it");
            }
            return found;
        }

        private Optional<String> comment(String key) {
            List<String> found = comments.stream()
                    .filter(line -> line.startsWith(key))
                    .map(line -> line.substring(key.length()).strip())
                    .toList();
            if (found.size() > 1) {
                throw new IllegalStateException(id + " has the line '# " + key + " …' " + found.size() + " times");
            }
            return found.stream().findFirst();
        }

        private static Optional<String> cell(Map<String, String> cells, String column) {
            return Optional.of(cells.getOrDefault(column, "")).filter(cell -> !cell.isEmpty());
        }
    }

    /** The package of core that a table belongs to: the folder in which its file lies. */
    static String folder(String id) {
        return id.substring(0, Math.max(0, id.indexOf('/')));
    }
}
