package org.woodyield.lumber;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * How far a piece may be off its target size by a metric standard, at the moisture that the standard states.
 *
 * @param table the key of the {@link SizeTable} to which it belongs
 * @param rule the standard and its class, for example {@code EN 336 T1}
 * @param dimension {@code section} for thickness and width, or {@code length}
 * @param above the rule holds for target sizes above this
 * @param upTo the greatest target size; empty without limit
 * @param minus how much less it may measure
 * @param plus how much more it may measure
 * @param source who says so
 */
public record MetricTolerance(
        String table,
        String rule,
        String dimension,
        Length above,
        Optional<Length> upTo,
        Length minus,
        Length plus,
        Source source) {

    private static final List<MetricTolerance> ALL =
            PublishedTable.read(MetricTolerance.class, "metric_tolerances.csv").rows().stream()
                    .map(row -> new MetricTolerance(
                            row.text("table"),
                            row.text("rule"),
                            row.text("dimension"),
                            MetricSizes.millimetres(row, "above_mm"),
                            row.text("up_to_mm").isEmpty()
                                    ? Optional.empty()
                                    : Optional.of(MetricSizes.millimetres(row, "up_to_mm")),
                            MetricSizes.millimetres(row, "minus_mm"),
                            MetricSizes.millimetres(row, "plus_mm"),
                            Sources.get(row.text("source"))))
                    .toList();

    /**
     * All tolerances in the order of the table.
     *
     * @return an immutable list
     */
    public static List<MetricTolerance> all() {
        return ALL;
    }

    /**
     * The tolerance of a target size.
     *
     * @param rule for example {@code EN 336 T1}
     * @param dimension {@code section} or {@code length}
     * @param target the target size
     * @return the tolerance
     * @throws OutOfDomainException if there is no such rule, or it does not hold for the size
     */
    public static MetricTolerance of(String rule, String dimension, Length target) {
        List<MetricTolerance> ofRule = ALL.stream()
                .filter(row -> row.rule().equals(rule) && row.dimension().equals(dimension))
                .toList();
        if (ofRule.isEmpty()) {
            throw new OutOfDomainException(
                    "rule",
                    "'" + rule + "' for " + dimension,
                    "",
                    String.join(
                            "; ",
                            ALL.stream()
                                    .map(row -> row.rule() + " for " + row.dimension())
                                    .distinct()
                                    .toList()),
                    "");
        }
        return ofRule.stream()
                .filter(row -> row.isFor(target))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "target size",
                        target.inMillimetres(1),
                        "",
                        "above " + ofRule.get(0).above().inMillimetres(0),
                        ""));
    }

    private boolean isFor(Length target) {
        return target.compareTo(above) > 0
                && upTo.map(most -> target.compareTo(most) <= 0).orElse(true);
    }

    /**
     * Whether a piece is within the tolerance, both ends included.
     *
     * @param target the target size
     * @param measured what it measures at the moisture of the standard
     * @return true if so
     * @throws OutOfDomainException if this tolerance is not for the target size
     */
    public boolean admits(Length target, Length measured) {
        if (!isFor(target)) {
            throw new OutOfDomainException(
                    "target size",
                    target.inMillimetres(1),
                    "",
                    "above " + above.inMillimetres(0)
                            + upTo.map(most -> ", up to " + most.inMillimetres(0))
                                    .orElse(""),
                    "take the tolerance of that size");
        }
        return measured.compareTo(target.minus(minus)) >= 0 && measured.compareTo(target.plus(plus)) <= 0;
    }

    /**
     * Whether a lot keeps to EN 336 on average: the mean of what its pieces measure is not below the target size.
     *
     * @param target the target size
     * @param measured each piece at 20 % moisture, one or more
     * @return true if so; nothing is rounded
     * @throws OutOfDomainException if nothing was measured
     * @see org.woodyield.source.Sources source en-336-trade-page
     */
    public static boolean lotMeanHolds(Length target, List<Length> measured) {
        if (measured.isEmpty()) {
            throw new OutOfDomainException("pieces measured", "none", "", "one or more", "");
        }
        Length excess = Length.ZERO;
        for (Length piece : measured) {
            excess = excess.plus(piece.minus(target));
        }
        return excess.compareTo(Length.ZERO) >= 0;
    }
}
