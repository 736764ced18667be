package org.woodyield.lumber;

import java.util.List;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;

/**
 * How many standard deviations a target must stand above the critical size for so many boards to be undersize. The published
 * table of Brown's bulletin stands beside the normal law: at 1 and 2.5 % it prints 2.34 and 1.97 where the law gives 2.326
 * and 1.960, and its row for 0 % is the law's 0.1 %.
 *
 * @see org.woodyield.source.Sources source brown-em-8731
 */
public final class UndersizeZ {

    /**
     * One row of the printed table.
     *
     * @param undersizePercent share of boards accepted as undersize, percent
     * @param z the factor as printed
     */
    public record Row(double undersizePercent, double z) {}

    private static final PublishedTable TABLE = PublishedTable.read(UndersizeZ.class, "undersize_z.csv");
    private static final List<Row> ROWS = TABLE.rows().stream()
            .map(row -> new Row(row.number("undersize_percent"), row.number("z")))
            .toList();

    private UndersizeZ() {}

    /**
     * The printed table.
     *
     * @return its rows in order
     */
    public static List<Row> published() {
        return ROWS;
    }

    /**
     * What the printed table rests on.
     *
     * @return its source
     */
    public static Source source() {
        return TABLE.source();
    }

    /**
     * The printed factor.
     *
     * @param undersizePercent a row of the table
     * @return the factor as printed
     * @throws OutOfDomainException if the table has no such row
     */
    public static double published(double undersizePercent) {
        for (Row row : ROWS) {
            if (row.undersizePercent() == undersizePercent) {
                return row.z();
            }
        }
        throw new OutOfDomainException(
                "undersize",
                Double.toString(undersizePercent),
                "%",
                "a row of the printed table: 0, 1, 2, 2.5, 3, 4, 5, 10 or 15 %",
                "use the normal law between the rows");
    }

    /**
     * The factor by the normal law.
     *
     * @param undersizePercent share of boards accepted as undersize, above 0 and below 100
     * @return the factor; negative above 50 %
     * @throws OutOfDomainException if the share is outside
     */
    public static double exact(double undersizePercent) {
        return -NormalLaw.deviate(undersizePercent / 100);
    }
}
