package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The centroid method: besides the two ends one diameter is measured where half the volume of a paraboloid with these ends
 * lies on either side, and the area of the section is taken as a parabola through the three.
 *
 * <p>With r = (c/a)^2, u = (r + 1)/(2 (sqrt((r^2 + 1)/2) + 1)) is the place from the small end as a share of the length; it
 * lies above a half, toward the butt, where a log is irregular. With b = (u (c^2 - a^2) - (m^2 - a^2))/(u (1 - u)) the
 * volume is pi/4 L ((a^2 + c^2)/2 - b/6). Exact on a cylinder, a paraboloid and a cone. All measures in one unit give the
 * volume in its cube; nothing is rounded.
 *
 * <p>Source: recalled; the algebra is held against integration in the tests.
 */
public final class CentroidVolume {

    private static final Domain SMALL = Domain.positive("diameter at the small end", "");
    private static final Domain LENGTH = Domain.positive("length", "");
    private static final String SHARE = "(r + 1) / (2 * (sqrt((r^2 + 1) / 2) + 1))";

    private CentroidVolume() {}

    private static Source source() {
        return Sources.get("centroid-memory");
    }

    /**
     * Where the extra diameter is measured.
     *
     * @param small diameter at the small end, above zero
     * @param large diameter at the large end, no less
     * @param length of the log in the same unit, above zero
     * @return the distance from the small end, 0.5 to 0.7072 of the length
     * @throws OutOfDomainException if a measure is not above zero or the large end is the smaller
     */
    @Calculation("log.centroid-position")
    public static double position(double small, double large, double length) {
        require(small, large, length);
        return length * share(small, large);
    }

    private static double share(double small, double large) {
        double ratio = large / small;
        double r = ratio * ratio;
        return (r + 1) / (2 * (StrictMath.sqrt((r * r + 1) / 2) + 1));
    }

    /**
     * The working of {@link #position}.
     *
     * @param small diameter at the small end, above zero
     * @param large diameter at the large end, no less
     * @param length of the log in the same unit, above zero
     * @param unit of all three, for example {@code m}
     * @return a working with the same value
     * @throws OutOfDomainException if a measure is not above zero or the large end is the smaller
     */
    public static Working positionWorking(double small, double large, double length, String unit) {
        require(small, large, length);
        return toShare(Working.of("Place of the centroid diameter"), small, large, length, unit)
                .step("x", "distance from the small end", "L * u", unit, source())
                .build();
    }

    private static Working.Builder toShare(
            Working.Builder working, double small, double large, double length, String unit) {
        return working.given("a", "diameter at the small end", small, unit)
                .given("c", "diameter at the large end", large, unit)
                .given("L", "length", length, unit)
                .step("r", "large area over small area", "(c / a)^2", "", source())
                .step("u", "place from the small end, share of the length", SHARE, "", source());
    }

    /**
     * The volume.
     *
     * @param small diameter at the small end, above zero
     * @param atCentroid diameter at {@link #position}, no less than the small end
     * @param large diameter at the large end, no less than the small end
     * @param length of the log in the same unit, above zero
     * @return in the cube of that unit
     * @throws OutOfDomainException if a measure is not above zero or a diameter is less than the small end
     */
    @Calculation("log.centroid-volume")
    public static double volume(double small, double atCentroid, double large, double length) {
        require(small, large, length);
        noLess("diameter at the centroid", atCentroid, small);
        double u = share(small, large);
        double a = small * small;
        double c = large * large;
        double b = (u * (c - a) - (atCentroid * atCentroid - a)) / (u * (1 - u));
        return StrictMath.PI / 4 * length * ((a + c) / 2 - b / 6);
    }

    /**
     * The volumes of many logs; each has the bits of {@link #volume(double, double, double, double)}. Nothing is allocated
     * for each log.
     *
     * @param small diameters at the small end, one for each log
     * @param atCentroid diameters at {@link #position}
     * @param large diameters at the large end
     * @param lengths lengths in the same unit
     * @param volumes receives the volumes; may be one of the other arrays
     * @throws IllegalArgumentException if the arrays differ in length
     * @throws OutOfDomainException at the first log that is refused alone; what lies before it is already written
     */
    public static void volume(double[] small, double[] atCentroid, double[] large, double[] lengths, double[] volumes) {
        LogArrays.require(volumes, small, atCentroid, large, lengths);
        for (int i = 0; i < volumes.length; i++) {
            volumes[i] = volume(small[i], atCentroid[i], large[i], lengths[i]);
        }
    }

    /**
     * The working of {@link #volume(double, double, double, double)}.
     *
     * @param small diameter at the small end, above zero
     * @param atCentroid diameter at {@link #position}, no less than the small end
     * @param large diameter at the large end, no less than the small end
     * @param length of the log in the same unit, above zero
     * @param unit of all four, for example {@code m}
     * @return a working with the same value
     * @throws OutOfDomainException if a measure is not above zero or a diameter is less than the small end
     */
    public static Working volumeWorking(double small, double atCentroid, double large, double length, String unit) {
        require(small, large, length);
        noLess("diameter at the centroid", atCentroid, small);
        return toShare(Working.of("Solid volume, centroid"), small, large, length, unit)
                .given("m", "diameter measured there", atCentroid, unit)
                .constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"))
                .step(
                        "b",
                        "bend of the area along the log",
                        "(u * (c^2 - a^2) - (m^2 - a^2)) / (u * (1 - u))",
                        unit + "2",
                        source())
                .step("V", "volume", "pi / 4 * L * ((a^2 + c^2) / 2 - b / 6)", unit + "3", source())
                .build();
    }

    private static void require(double small, double large, double length) {
        SMALL.require(small);
        noLess("diameter at the large end", large, small);
        LENGTH.require(length);
    }

    private static void noLess(String parameter, double value, double small) {
        if (!(value >= small && value <= Double.MAX_VALUE)) {
            Domain.of(parameter, "", small, Double.MAX_VALUE).require(value);
        }
    }
}
