package org.woodyield.lumber;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The volume of a sawn piece as Japan counts it: thickness times width times length, in cubic metres to three decimals, the fourth
 * rounded half up.
 *
 * @see org.woodyield.source.Sources source japan-measure
 */
public final class JapaneseMeasure {

    private static final Domain THICKNESS = Domain.of("thickness", "mm", 1, 1000);
    private static final Domain WIDTH = Domain.of("width", "mm", 1, 1000);
    private static final Domain LENGTH = Domain.of("length", "mm", 1, 30_000);

    private JapaneseMeasure() {}

    /**
     * The counted volume of one piece: {@code t * w * L / 1 000 000}, rounded to whole thousandths of a cubic metre.
     *
     * @param thicknessMillimetres 1 to 1000
     * @param widthMillimetres 1 to 1000
     * @param lengthMillimetres 1 to 30 000
     * @return cubic metres
     * @throws OutOfDomainException if one is outside
     */
    @Calculation("lumber.japan-volume")
    public static double cubicMetres(double thicknessMillimetres, double widthMillimetres, double lengthMillimetres) {
        double thousandths = THICKNESS.require(thicknessMillimetres)
                * WIDTH.require(widthMillimetres)
                * LENGTH.require(lengthMillimetres)
                / 1000000;
        return Rounding.HALF_UP.toWhole(thousandths) / 1000;
    }

    /**
     * How {@link #cubicMetres} came about.
     *
     * @param thicknessMillimetres as there
     * @param widthMillimetres as there
     * @param lengthMillimetres as there
     * @return the working; its value equals the volume bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working cubicMetresWorking(
            double thicknessMillimetres, double widthMillimetres, double lengthMillimetres) {
        Source rule = Sources.get("japan-measure");
        return Working.of("Volume of a sawn piece in Japan")
                .given("t", "thickness", THICKNESS.require(thicknessMillimetres), "mm")
                .given("w", "width", WIDTH.require(widthMillimetres), "mm")
                .given("L", "length", LENGTH.require(lengthMillimetres), "mm")
                .step("N", "thousandths of a cubic metre", "t * w * L / 1000000", "dm3", rule)
                .round("N_r", "whole thousandths", "N", Rounding.HALF_UP, 1, "dm3", rule)
                .step("V", "volume", "N_r / 1000", "m3", rule)
                .build();
    }
}
