package org.woodyield.lumber;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * What softwood of a nominal size measured in earlier years, as far as it was found: lumber in an old house is not of today's
 * size. The facts are few, some recalled or from forums, and they overlap; each carries its source.
 */
public final class SizeHistory {

    private static final List<Fact> FACTS = PublishedTable.read(SizeHistory.class, "size_history.csv").rows().stream()
            .map(row -> new Fact(
                    year(row, "from"),
                    year(row, "until"),
                    row.text("face"),
                    SoftwoodSizes.cell(row, "nominal_in"),
                    SoftwoodSizes.cell(row, "dressed_in"),
                    Sources.get(row.text("source"))))
            .toList();

    private static final List<Standard> STANDARDS = standards();

    private SizeHistory() {}

    /**
     * What one face measured in some years.
     *
     * @param from first year; empty where the source does not say
     * @param until last year; empty where the source does not say
     * @param face {@code thickness} or {@code width}
     * @param nominal the nominal size of the face
     * @param dressed what it measured dressed
     * @param source who says so
     */
    public record Fact(
            Optional<Integer> from,
            Optional<Integer> until,
            String face,
            Length nominal,
            Length dressed,
            Source source) {

        /**
         * Whether the fact may hold in a year: it does not end before, nor begin after.
         *
         * @param year a year
         * @return true if so
         */
        public boolean mayHoldIn(int year) {
            return from.map(first -> year >= first).orElse(true)
                    && until.map(last -> year <= last).orElse(true);
        }
    }

    /**
     * A national size standard for yard lumber.
     *
     * @param year of the standard
     * @param what the first one, a revision, or a proposal
     * @param source who says so
     */
    public record Standard(int year, String what, Source source) {}

    /**
     * All facts in the order of the table.
     *
     * @return an immutable list
     */
    public static List<Fact> facts() {
        return FACTS;
    }

    /**
     * The national standards, oldest first.
     *
     * @return an immutable list
     */
    public static List<Standard> nationalStandards() {
        return STANDARDS;
    }

    /**
     * What is known of a face in a year.
     *
     * @param face {@code thickness} or {@code width}
     * @param nominal the nominal size of the face
     * @param year a year
     * @return the facts that may hold then, possibly none; where they differ the sources do
     */
    public static List<Fact> in(String face, Length nominal, int year) {
        return FACTS.stream()
                .filter(fact -> fact.face().equals(face) && fact.nominal().equals(nominal) && fact.mayHoldIn(year))
                .toList();
    }

    /**
     * Which nominal sizes were once dressed to a size.
     *
     * @param face {@code thickness} or {@code width}
     * @param dressed what the face measures
     * @return the facts, possibly none
     */
    public static List<Fact> ofDressed(String face, Length dressed) {
        return FACTS.stream()
                .filter(fact -> fact.face().equals(face) && fact.dressed().equals(dressed))
                .toList();
    }

    private static Optional<Integer> year(PublishedTable.Row row, String column) {
        return row.numberIfPrinted(column).map(Double::intValue);
    }

    private static List<Standard> standards() {
        PublishedTable table = PublishedTable.read(SizeHistory.class, "size_standards.csv");
        return table.rows().stream()
                .map(row -> new Standard((int) row.number("year"), row.text("what"), table.source()))
                .toList();
    }
}
