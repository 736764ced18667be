package org.woodyield.checks;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;

/** What is said of the calculations beside their numbers: what they state, and what is not checked and why. */
final class Account {

    private Account() {}

    /**
     * What became of one transcription of a publication.
     *
     * @param tables ids of the check tables that use it
     * @param reason why there is none; empty if there are some
     */
    record Use(List<String> tables, String reason) {}

    /** Reasons by marked calculation: those that no row computed against a publication verifies. */
    static Map<String, String> unverified() {
        return read("unverified.csv", "calculation", row -> row.getField("reason"));
    }

    /**
     * How few published values a calculation has.
     *
     * @param rows rows computed against a publication, one or two
     * @param reason why there are not three
     */
    record Few(long rows, String reason) {}

    /** By marked calculation: those with only one or two rows computed against a publication. */
    static Map<String, Few> fewValues() {
        return read(
                "few-values.csv",
                "calculation",
                row -> new Few(Long.parseLong(row.getField("rows")), row.getField("reason")));
    }

    /** When a copy of a source was read, by its id, as year, month and day; those whose day nobody noted are not here. */
    static Map<String, String> datesRead() {
        return read("dates-read.csv", "source", row -> row.getField("date"));
    }

    /** Reasons by log rule: those with fewer than three rows computed against a publication. */
    static Map<String, String> unverifiedRules() {
        return read("unverified-rules.csv", "rule", row -> row.getField("reason"));
    }

    /** Use by name of the transcription's file. */
    static Map<String, Use> references() {
        return read("references.csv", "file", row -> {
            String tables = row.getField("tables");
            return new Use(tables.isEmpty() ? List.of() : List.of(tables.split(" ")), row.getField("why_not"));
        });
    }

    /**
     * What is said of a marked calculation.
     *
     * @param name as a heading
     * @param statement in a sentence or two
     */
    record Statement(String name, String statement) {}

    /** Name and statement by marked calculation. */
    static Map<String, Statement> statements() {
        return read(
                "statements.csv", "calculation", row -> new Statement(row.getField("name"), row.getField("statement")));
    }

    /** Why a marked calculation has no worked example, nor a statement, in the book. */
    static Map<String, String> withoutExample() {
        return read("without-example.csv", "calculation", row -> row.getField("reason"));
    }

    /**
     * A fact of the trade.
     *
     * @param fact in words
     * @param calculation that has rows of it; empty where none can
     * @param why it cannot be computed; empty where it is
     */
    record TradeFact(String fact, String calculation, String why) {
        boolean computed() {
            return !calculation.isEmpty();
        }

        String href() {
            return calculation + ".html";
        }
    }

    /** Facts of the trade, in the order of the page. */
    static List<TradeFact> tradeFacts() {
        return List.copyOf(read(
                        "trade.csv",
                        "fact",
                        row -> new TradeFact(row.getField("fact"), row.getField("calculation"), row.getField("why")))
                .values());
    }

    /** What each package of core holds. */
    static Map<String, String> packages() {
        return read("packages.csv", "package", row -> row.getField("holds"));
    }

    /** Terms that have to be told from their neighbours. */
    static List<Book.Term> terms() {
        return List.copyOf(read(
                        "terms.csv",
                        "term",
                        row -> new Book.Term(row.getField("term"), row.getField("unit"), row.getField("meaning")))
                .values());
    }

    /**
     * How much of a transcription is used.
     *
     * @param rows rows in the file
     * @param used rows of it that check rows rest on
     * @param checkRows how many check rows that are; one row may be many cells
     * @param rest why the others are no checks; empty if there are none
     */
    record Extent(int rows, int used, int checkRows, String rest) {}

    /** How much of each transcription is used that has check tables. */
    static Map<String, Extent> extents() {
        return read(
                "reference-rows.csv",
                "file",
                row -> new Extent(
                        Integer.parseInt(row.getField("rows")),
                        Integer.parseInt(row.getField("used")),
                        Integer.parseInt(row.getField("check_rows")),
                        row.getField("rest")));
    }

    private static <T> Map<String, T> read(String name, String key, Function<NamedCsvRecord, T> value) {
        Map<String, T> values = new TreeMap<>();
        try (InputStream in = Objects.requireNonNull(Account.class.getResourceAsStream(name));
                CsvReader<NamedCsvRecord> csv =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (NamedCsvRecord row : csv) {
                if (values.put(row.getField(key), value.apply(row)) != null) {
                    throw new IllegalStateException(name + " lists " + row.getField(key) + " twice");
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return values;
    }
}
