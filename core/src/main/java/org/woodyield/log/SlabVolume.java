package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.Volume;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What a straight cut parallel to the axis takes off a round, straight log: a slab, or half the log where the cut runs through
 * the axis. Its section is a segment of a circle; three sections, at the ends and at mid-length, are joined by Simpson's
 * rule, which is exact for the half log of straight taper.
 */
public final class SlabVolume {

    private static final Domain DIAMETER = Domain.of("diameter", "m", Double.MIN_VALUE, 3);
    private static final Domain LENGTH = Domain.of("length", "m", Double.MIN_VALUE, 30);
    private static final Domain HEIGHT =
            new Domain("height of the cut above the axis", "m", 0, 3, "measure to the smaller side of the cut");
    private static final Source DEFINITION = Sources.get("definition");
    private static final Source FORM = Sources.get("solid-form");

    private SlabVolume() {}

    /**
     * The volume beyond a cut.
     *
     * @param small diameter at the small end, above 0, up to 3 m
     * @param middle diameter at mid-length
     * @param large diameter at the large end
     * @param length of the log, above 0, up to 30 m
     * @param height of the cut above the axis, 0 to 3 m; 0 gives the half log
     * @return {@code L (A1 + 4 Am + A2) / 6}, with segments {@code A = r^2 acos(h / r) - h sqrt(r^2 - h^2)}, none where the
     *     cut passes outside
     * @throws org.woodyield.measure.OutOfDomainException if a measure is outside
     */
    @Calculation("log.slab-volume")
    public static Volume of(Length small, Length middle, Length large, Length length, Length height) {
        require(small, middle, large, length, height);
        double h = height.toMetres();
        return new Volume(Math.max(
                length.toMetres()
                        * (segment(small.toMetres(), h)
                                + 4 * segment(middle.toMetres(), h)
                                + segment(large.toMetres(), h))
                        / 6,
                0));
    }

    private static double segment(double diameter, double height) {
        double r = diameter / 2;
        double k = Math.min(height, r);
        return r * r * (2 * StrictMath.atan(StrictMath.sqrt((r - k) / (r + k)))) - k * StrictMath.sqrt(r * r - k * k);
    }

    /**
     * How {@link #of} comes about.
     *
     * @param small diameter at the small end
     * @param middle diameter at mid-length
     * @param large diameter at the large end
     * @param length of the log
     * @param height of the cut above the axis
     * @return the working, with the same result in cubic metres
     * @throws org.woodyield.measure.OutOfDomainException if a measure is outside
     */
    public static Working working(Length small, Length middle, Length large, Length length, Length height) {
        require(small, middle, large, length, height);
        Working.Builder working =
                Working.of("Volume beyond a cut along a log").given("h", "cut above the axis", height.toMetres(), "m");
        segment(working, "1", "small end", small);
        segment(working, "m", "mid-length", middle);
        segment(working, "2", "large end", large);
        return working.given("L", "length", length.toMetres(), "m")
                .step("V", "volume", "max(L * (A_1 + 4 * A_m + A_2) / 6, 0)", "m3", FORM)
                .note("Round and straight, the cut parallel to the axis, inside bark.")
                .build();
    }

    private static void segment(Working.Builder working, String at, String place, Length diameter) {
        String r = "r_" + at;
        String k = "k_" + at;
        working.given("d_" + at, "diameter, " + place, diameter.toMetres(), "m")
                .step(r, "radius, " + place, "d_" + at + " / 2", "m", DEFINITION)
                .step(k, "cut above the axis, at most the radius", "min(h, " + r + ")", "m", DEFINITION)
                .step(
                        "A_" + at,
                        "segment, " + place,
                        r + " * " + r + " * (2 * atan(sqrt((" + r + " - " + k + ") / (" + r + " + " + k + ")))) - " + k
                                + " * sqrt(" + r + " * " + r + " - " + k + " * " + k + ")",
                        "m2",
                        DEFINITION);
    }

    private static void require(Length small, Length middle, Length large, Length length, Length height) {
        DIAMETER.require(small.toMetres());
        DIAMETER.require(middle.toMetres());
        DIAMETER.require(large.toMetres());
        LENGTH.require(length.toMetres());
        HEIGHT.require(height.toMetres());
    }
}
