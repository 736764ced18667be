package org.woodyield.scaling;

import java.util.LinkedHashMap;
import java.util.Map;
import org.woodyield.measure.Domain;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Swedish measures of wood and the printed average factors between them. The factors are rounded to two decimals and hold
 * for averages over forms and sizes of stems, so the way there and back does not always end where it began.
 *
 * <p>Source: Swedish Forest Agency, table of conversions.
 */
public enum SwedishMeasure {
    /** Standing stem above the stump with bark and top. */
    STEM("m3sk", "stem volume with bark and top"),
    /** Solid volume over bark. */
    SOLID_OVER_BARK("m3fpb", "solid volume over bark"),
    /** Solid volume under bark. */
    SOLID_UNDER_BARK("m3fub", "solid volume under bark"),
    /** Cylinder of the top end under bark; see {@link CubicRule#SWEDEN_TOP}. */
    TOP("m3to", "top-measured volume under bark"),
    /** Stacked with bark. */
    STACKED("m3t", "stacked volume over bark");

    private static final Domain VOLUME = Domain.notNegative("volume", "m3");

    /** The printed table; read when it is first asked for. */
    private static final class Factors {
        private static final PublishedTable TABLE = PublishedTable.read(SwedishMeasure.class, "sweden_conversion.csv");
        private static final Map<String, Double> CELLS = cells();

        private static Map<String, Double> cells() {
            Map<String, Double> cells = new LinkedHashMap<>();
            for (PublishedTable.Row row : TABLE.rows()) {
                for (SwedishMeasure to : values()) {
                    cells.put(row.text("from") + " to " + to.symbol, row.number(to.symbol));
                }
            }
            return Map.copyOf(cells);
        }

        private static double factor(SwedishMeasure from, SwedishMeasure to) {
            Double factor = CELLS.get(from.symbol + " to " + to.symbol);
            if (factor == null) {
                throw new IllegalStateException(TABLE.name() + " has no row " + from.symbol);
            }
            return factor;
        }
    }

    private final String symbol;
    private final String label;

    SwedishMeasure(String symbol, String label) {
        this.symbol = symbol;
        this.label = label;
    }

    /**
     * The symbol of the trade.
     *
     * @return for example {@code m3fub}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * The name as shown.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * The printed factor.
     *
     * @param to another measure
     * @return how many of the other make one of this
     */
    public double factorTo(SwedishMeasure to) {
        return Factors.factor(this, to);
    }

    /**
     * An amount in another measure.
     *
     * @param amount in this measure, zero or more
     * @param to another measure
     * @return amount times the printed factor
     * @throws org.woodyield.measure.OutOfDomainException if the amount is below zero, or for NaN
     */
    @Calculation("scaling.swedish-measure")
    public double to(double amount, SwedishMeasure to) {
        return VOLUME.require(amount) * factorTo(to);
    }

    /**
     * The working of {@link #to}.
     *
     * @param amount in this measure, zero or more
     * @param to another measure
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException if the amount is below zero, or for NaN
     */
    public Working toWorking(double amount, SwedishMeasure to) {
        return Working.of(label + " as " + to.label)
                .given("a", label, VOLUME.require(amount), symbol)
                .lookup(
                        "f",
                        "average factor",
                        "from " + symbol + " to " + to.symbol,
                        factorTo(to),
                        "",
                        Factors.TABLE.source())
                .step("b", to.label, "a * f", to.symbol, Sources.get("definition"))
                .build();
    }
}
