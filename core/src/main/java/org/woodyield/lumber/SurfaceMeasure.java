package org.woodyield.lumber;

import java.math.BigInteger;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The square feet in the face of a hardwood board: width in inches, its fraction counted, times length in feet, its fraction
 * dropped, over 12, to the nearest whole foot. Exact halves go up and down alternately within a tally
 * ({@link HardwoodTally}); for one board the caller says which.
 *
 * @see org.woodyield.source.Sources sources nhla-surface-measure and nhla-halves-memory
 */
public final class SurfaceMeasure {

    private static final Domain WIDTH =
            new Domain("width", "in", Double.MIN_VALUE, 60, "the width of the board's narrowest place that counts");
    private static final Domain LENGTH = Domain.of("length", "ft", 1, 40);
    private static final Length FOOT = Length.feet(1);

    private SurfaceMeasure() {}

    /**
     * The surface measure of one board.
     *
     * @param widthInches above 0, up to 60
     * @param lengthFeet 1 to 40; its fraction is dropped
     * @param half where an exact half goes: {@link Rounding#HALF_UP} or {@link Rounding#HALF_DOWN}
     * @return whole square feet: {@code W * floor(L) / 12}, rounded
     * @throws OutOfDomainException if width or length is outside, or the rounding is another
     */
    @Calculation("lumber.surface-measure")
    public static double squareFeet(double widthInches, double lengthFeet, Rounding half) {
        nearest(half);
        return half.toWhole(WIDTH.require(widthInches) * Math.floor(LENGTH.require(lengthFeet)) / 12);
    }

    /**
     * How {@link #squareFeet} came about.
     *
     * @param widthInches as there
     * @param lengthFeet as there
     * @param half as there
     * @return the working; its value equals the surface measure bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working squareFeetWorking(double widthInches, double lengthFeet, Rounding half) {
        nearest(half);
        Source rule = Sources.get("nhla-surface-measure");
        return Working.of("Surface measure of a hardwood board")
                .given("W", "width", WIDTH.require(widthInches), "in")
                .given("L", "length", LENGTH.require(lengthFeet), "ft")
                .round("L_t", "length, fraction dropped", "L", Rounding.DOWN, 1, "ft", rule)
                .step("S", "square feet", "W * L_t / 12", "ft2", rule)
                .round("SM", "surface measure", "S", half, 1, "ft2", Sources.get("nhla-halves-memory"))
                .note("In a tally of many boards exact halves go up and down alternately.")
                .build();
    }

    /**
     * The surface measure before it is rounded.
     *
     * @param width above 0, up to 60 in
     * @param length 1 to 40 ft; its fraction is dropped
     * @return square feet, exactly
     * @throws OutOfDomainException if width or length is outside
     */
    public static BoardMeasure.Exact exact(Length width, Length length) {
        WIDTH.require(width.toInches());
        return new BoardMeasure.Exact(
                BigInteger.valueOf(Math.multiplyExact(width.toNanometres(), wholeFeet(length))),
                BigInteger.valueOf(FOOT.toNanometres()));
    }

    /** The length in feet, its fraction dropped. */
    static long wholeFeet(Length length) {
        LENGTH.require(length.toFeet());
        return length.steps(FOOT, Rounding.DOWN);
    }

    static void nearest(Rounding half) {
        if (half != Rounding.HALF_UP && half != Rounding.HALF_DOWN) {
            throw new OutOfDomainException(
                    "rounding of an exact half",
                    half.label(),
                    "",
                    Rounding.HALF_UP.label() + "; " + Rounding.HALF_DOWN.label(),
                    "");
        }
    }
}
