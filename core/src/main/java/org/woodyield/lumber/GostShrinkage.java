package org.woodyield.lumber;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The size to saw green by GOST 6782.1-75: the nominal size and an allowance for shrinkage from a table, for spruce, pine, cedar
 * pine and fir in mixed sawing. The table allows for shrinkage up to 37 % mean moisture, where models with a fibre saturation of 30 %
 * allow none. Sizes between its rows are refused.
 *
 * @see org.woodyield.source.Sources source gost-6782-1
 */
public final class GostShrinkage {

    private static final PublishedTable TABLE = PublishedTable.read(GostShrinkage.class, "gost_6782_1.csv");
    private static final Domain MOISTURE = Domain.of("final moisture", "%", 5, 37);
    private static final Domain SIZE = Domain.of("size", "mm", 13, 86);

    private GostShrinkage() {}

    /**
     * The sizes of the table.
     *
     * @return lesser first
     */
    public static List<Length> sizes() {
        return TABLE.rows().stream()
                .map(row -> MetricSizes.millimetres(row, "size_mm"))
                .toList();
    }

    /**
     * The size to saw green: {@code s + a}, a from the table at the final moisture to the whole percent, an exact half up.
     *
     * @param sizeMillimetres a size of the table, 13 to 86 mm
     * @param finalMoisturePercent 5 to 37 %
     * @return millimetres
     * @throws OutOfDomainException if the table has no such size, the remedy gives the nearest; or the moisture is outside
     */
    @Calculation("lumber.gost-green-size")
    public static double greenMillimetres(double sizeMillimetres, double finalMoisturePercent) {
        return sizeMillimetres + row(sizeMillimetres).number(column(finalMoisturePercent));
    }

    /**
     * How {@link #greenMillimetres} came about.
     *
     * @param sizeMillimetres as there
     * @param finalMoisturePercent as there
     * @return the working; its value equals the size bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working greenMillimetresWorking(double sizeMillimetres, double finalMoisturePercent) {
        PublishedTable.Row row = row(sizeMillimetres);
        String column = column(finalMoisturePercent);
        return Working.of("Size to saw green by GOST 6782.1-75")
                .given("s", "nominal size", sizeMillimetres, "mm")
                .given("M", "final moisture", finalMoisturePercent, "%")
                .lookup(
                        "a",
                        "allowance for shrinkage",
                        row.text("size_mm") + " mm, " + band(column) + " %",
                        row.number(column),
                        "mm",
                        TABLE.source())
                .step("g", "size to saw", "s + a", "mm", TABLE.source())
                .build();
    }

    private static PublishedTable.Row row(double sizeMillimetres) {
        SIZE.require(sizeMillimetres);
        return TABLE.rows().stream()
                .filter(row -> row.number("size_mm") == sizeMillimetres)
                .findFirst()
                .orElseThrow(() -> MetricSizes.unknown(
                        "size",
                        Length.ofMetres(sizeMillimetres / 1000, Rounding.HALF_UP),
                        "the sizes of GOST 6782.1-75, 13 to 86 mm",
                        sizes()));
    }

    private static String column(double finalMoisturePercent) {
        MOISTURE.require(finalMoisturePercent);
        int whole = (int) Rounding.HALF_UP.toWhole(finalMoisturePercent);
        return TABLE.columns().get(1 + (whole - 5) / 3);
    }

    private static String band(String column) {
        return column.substring(2).replace("_", " to ");
    }
}
