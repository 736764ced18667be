package org.woodyield.lumber;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How thickness and width of softwood change with moisture by EN 1313-1, clause 5: a quarter of a percent for each percent of
 * moisture, from 20 %, up to fibre saturation; lengths do not change. A convention for trade, the same for all species; use a
 * shrinkage model for a species of its own.
 *
 * @see org.woodyield.source.Sources sources en-1313-1, en-1313-1-france and fibre-saturation-memory
 */
public final class MetricSizeChange {

    /** Fibre saturation by convention, percent; from memory. */
    public static final double FIBRE_SATURATION = 30;

    /** Fibre saturation that France takes for green sizes, percent. */
    public static final double FIBRE_SATURATION_IN_FRANCE = 28;

    private static final Domain SIZE = Domain.of("size at 20 %", "mm", 1, 1000);
    private static final Domain MOISTURE = Domain.of("moisture", "%", 0, 200);
    private static final Domain SATURATION = Domain.of("fibre saturation", "%", 20, 40);

    private MetricSizeChange() {}

    /**
     * What a size measures at a moisture: {@code d * (1 + 0.0025 * (min(M, FSP) - 20))}.
     *
     * @param sizeAt20Millimetres thickness or width at 20 % moisture, 1 to 1000 mm
     * @param moisturePercent oven-dry basis, 0 to 200 %
     * @param fibreSaturationPercent 20 to 40 %; {@link #FIBRE_SATURATION} where nothing else is agreed
     * @return millimetres
     * @throws OutOfDomainException if a value is outside
     */
    @Calculation("lumber.en-1313-1-size")
    public static double millimetres(
            double sizeAt20Millimetres, double moisturePercent, double fibreSaturationPercent) {
        SIZE.require(sizeAt20Millimetres);
        MOISTURE.require(moisturePercent);
        SATURATION.require(fibreSaturationPercent);
        return sizeAt20Millimetres * (1 + 0.0025 * (Math.min(moisturePercent, fibreSaturationPercent) - 20));
    }

    /**
     * How {@link #millimetres} came about.
     *
     * @param sizeAt20Millimetres as there
     * @param moisturePercent as there
     * @param fibreSaturationPercent as there
     * @return the working; its value equals the size bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working millimetresWorking(
            double sizeAt20Millimetres, double moisturePercent, double fibreSaturationPercent) {
        return Working.of("Size at a moisture by EN 1313-1")
                .given("d", "size at 20 % moisture", SIZE.require(sizeAt20Millimetres), "mm")
                .given("M", "moisture", MOISTURE.require(moisturePercent), "%")
                .constant(
                        "FSP",
                        "fibre saturation",
                        SATURATION.require(fibreSaturationPercent),
                        "%",
                        Sources.get(
                                fibreSaturationPercent == FIBRE_SATURATION_IN_FRANCE
                                        ? "en-1313-1-france"
                                        : fibreSaturationPercent == FIBRE_SATURATION
                                                ? "fibre-saturation-memory"
                                                : "given"))
                .step("s", "size", "d * (1 + 0.0025 * (min(M, FSP) - 20))", "mm", Sources.get("en-1313-1"))
                .note("Thickness and width only; lengths do not change. The same for all softwoods.")
                .build();
    }
}
