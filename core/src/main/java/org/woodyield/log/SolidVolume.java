package org.woodyield.log;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Formulas for the solid content of a log from up to three diameters and the length, with the exact pi/4. All measures in
 * one unit give the volume in its cube; a formula ignores the diameters that it does not ask for.
 *
 * <p>{@link FormulaErrors} computes which is exact on which {@link SolidForm}.
 *
 * <p>Source: Briggs, Forest Products Measurements and Conversion Factors (1994), table 2-1, unless the formula has one of
 * its own.
 */
@Calculation("log.solid-volume")
public enum SolidVolume {
    /** Mean of the two end areas, times length. Reads high on a flared butt log. */
    SMALIAN("smalian", "Smalian", "briggs-1994-2-1", "pi / 4 * (a^2 + c^2) * L / 2", false, true),
    /** Area at mid-length, times length. */
    HUBER("huber", "Huber", "briggs-1994-2-1", "pi / 4 * m^2 * L", true, false),
    /** Ends and four times the middle: (Smalian + 2 Huber) / 3. */
    NEWTON("newton", "Newton (prismoidal)", "briggs-1994-2-1", "pi / 4 * (a^2 + 4 * m^2 + c^2) * L / 6", true, true),
    /** Frustum of a cone. */
    CONE("cone-frustum", "cone frustum", "briggs-1994-2-1", "pi / 4 * (a^2 + a * c + c^2) * L / 3", false, true),
    /** Area of the mean diameter, times length. */
    SUBNEILOID("subneiloid", "subneiloid", "briggs-1994-2-1", "pi / 4 * ((a + c) / 2)^2 * L", false, true),
    /**
     * Butt log: three quarters of the small end's area and one of the large end's. Briggs prints a stray division by two;
     * the weights already add up to one. For butt logs only.
     */
    BUTT_LOG(
            "butt-log", "butt log (Bruce)", "bruce-1982-memory", "pi / 4 * (0.75 * a^2 + 0.25 * c^2) * L", false, true),
    /** Middle diameter from the small end and a taper of 1 in to 10 ft. */
    ONE_IN_TEN(
            "one-in-ten",
            "taper one in ten (Sorenson)",
            "briggs-1994-2-1",
            "pi / 4 * (a + L / 240)^2 * L",
            false,
            false),
    /** Middle diameter from the small end and a taper of 1 in to 8 ft. */
    ONE_IN_EIGHT(
            "one-in-eight",
            "taper one in eight (Rapraeger)",
            "one-in-eight-memory",
            "pi / 4 * (a + L / 192)^2 * L",
            false,
            false);

    private static final Domain END = Domain.positive("diameter", "");
    private static final Domain LENGTH = Domain.positive("length", "");

    private final String id;
    private final String label;
    private final String source;
    private final String formula;
    private final boolean asksMiddle;
    private final boolean asksLargeEnd;

    SolidVolume(String id, String label, String source, String formula, boolean asksMiddle, boolean asksLargeEnd) {
        this.id = id;
        this.label = label;
        this.source = source;
        this.formula = formula;
        this.asksMiddle = asksMiddle;
        this.asksLargeEnd = asksLargeEnd;
    }

    /**
     * A formula by its id.
     *
     * @param id for example {@code smalian}
     * @return the formula
     * @throws OutOfDomainException if there is none; names all that there are
     */
    public static SolidVolume byId(String id) {
        return Arrays.stream(values())
                .filter(one -> one.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "solid-volume formula",
                        "'" + id + "'",
                        "",
                        Arrays.stream(values()).map(SolidVolume::id).collect(Collectors.joining(", ")),
                        "take one of these ids"));
    }

    /**
     * The key.
     *
     * @return lower case with hyphens
     */
    public String id() {
        return id;
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
     * What the formula rests on.
     *
     * @return the source
     */
    public Source source() {
        return Sources.get(source);
    }

    /**
     * The formula, with {@code a}, {@code m}, {@code c} for the diameters at the small end, mid-length and large end.
     *
     * @return its text, as {@link org.woodyield.working.Formula} reads it
     */
    public String formula() {
        return formula;
    }

    /**
     * Whether the diameter at mid-length is used.
     *
     * @return false if it is ignored
     */
    public boolean asksMiddle() {
        return asksMiddle;
    }

    /**
     * Whether the diameter at the large end is used.
     *
     * @return false if it is ignored
     */
    public boolean asksLargeEnd() {
        return asksLargeEnd;
    }

    /**
     * The volume.
     *
     * @param small diameter at the small end, above zero
     * @param middle diameter at mid-length
     * @param large diameter at the large end
     * @param length length in the same unit
     * @return the volume in the cube of that unit
     * @throws OutOfDomainException if a measure that is used is not above zero
     */
    public double volume(double small, double middle, double large, double length) {
        require(small, middle, large, length);
        return switch (this) {
            case SMALIAN -> smalian(small, large, length);
            case HUBER -> cylinder(middle, length);
            case NEWTON -> newton(small, middle, large, length);
            case CONE -> cone(small, large, length);
            case SUBNEILOID -> cylinder((small + large) / 2, length);
            case BUTT_LOG -> buttLog(small, large, length);
            case ONE_IN_TEN -> cylinder(small + length / 240, length);
            case ONE_IN_EIGHT -> cylinder(small + length / 192, length);
        };
    }

    /**
     * The volumes of many logs; each has the bits of {@link #volume(double, double, double, double)}. Nothing is allocated
     * for each log.
     *
     * @param small diameters at the small end, one for each log
     * @param middle diameters at mid-length
     * @param large diameters at the large end
     * @param lengths lengths in the same unit
     * @param volumes receives the volumes; may be one of the other arrays
     * @throws IllegalArgumentException if the arrays differ in length
     * @throws OutOfDomainException at the first log of which a measure that is used is not above zero; what lies before it
     *     is already written
     */
    public void volume(double[] small, double[] middle, double[] large, double[] lengths, double[] volumes) {
        LogArrays.require(volumes, small, middle, large, lengths);
        for (int from = 0; from < volumes.length; from += LogArrays.BLOCK) {
            int to = Math.min(from + LogArrays.BLOCK, volumes.length);
            int done = firstRefused(small, middle, large, lengths, from, to);
            fill(small, middle, large, lengths, volumes, from, done);
            if (done < to) {
                volume(small[done], middle[done], large[done], lengths[done]);
                throw new IllegalStateException(label + " refuses in a batch what it takes alone");
            }
        }
    }

    private int firstRefused(double[] small, double[] middle, double[] large, double[] lengths, int from, int to) {
        double[] one = asksSmallEnd() ? small : lengths;
        double[] two = asksLargeEnd ? large : lengths;
        int done = LogArrays.firstNotPositive(one, two, lengths, from, to);
        return asksMiddle ? LogArrays.firstNotPositive(middle, lengths, lengths, from, done) : done;
    }

    /** A loop for each formula, so that it compiles for the formula alone. */
    private void fill(
            double[] small, double[] middle, double[] large, double[] lengths, double[] volumes, int from, int to) {
        switch (this) {
            case SMALIAN -> smalian(small, large, lengths, volumes, from, to);
            case HUBER -> {
                for (int i = from; i < to; i++) {
                    volumes[i] = cylinder(middle[i], lengths[i]);
                }
            }
            case NEWTON -> {
                for (int i = from; i < to; i++) {
                    volumes[i] = newton(small[i], middle[i], large[i], lengths[i]);
                }
            }
            case CONE -> {
                for (int i = from; i < to; i++) {
                    volumes[i] = cone(small[i], large[i], lengths[i]);
                }
            }
            case SUBNEILOID -> {
                for (int i = from; i < to; i++) {
                    volumes[i] = cylinder((small[i] + large[i]) / 2, lengths[i]);
                }
            }
            case BUTT_LOG -> {
                for (int i = from; i < to; i++) {
                    volumes[i] = buttLog(small[i], large[i], lengths[i]);
                }
            }
            case ONE_IN_TEN -> {
                for (int i = from; i < to; i++) {
                    volumes[i] = cylinder(small[i] + lengths[i] / 240, lengths[i]);
                }
            }
            case ONE_IN_EIGHT -> {
                for (int i = from; i < to; i++) {
                    volumes[i] = cylinder(small[i] + lengths[i] / 192, lengths[i]);
                }
            }
        }
    }

    private static double smalian(double a, double c, double length) {
        return StrictMath.PI / 4 * (a * a + c * c) * length / 2;
    }

    private static void smalian(double[] small, double[] large, double[] lengths, double[] volumes, int from, int to) {
        for (int i = from; i < to; i++) {
            volumes[i] = smalian(small[i], large[i], lengths[i]);
        }
    }

    private static double cylinder(double d, double length) {
        return StrictMath.PI / 4 * (d * d) * length;
    }

    private static double newton(double a, double m, double c, double length) {
        return StrictMath.PI / 4 * (a * a + 4 * (m * m) + c * c) * length / 6;
    }

    private static double cone(double a, double c, double length) {
        return StrictMath.PI / 4 * (a * a + a * c + c * c) * length / 3;
    }

    private static double buttLog(double a, double c, double length) {
        return StrictMath.PI / 4 * (0.75 * (a * a) + 0.25 * (c * c)) * length;
    }

    /**
     * The working of {@link #volume(double, double, double, double)}.
     *
     * @param small diameter at the small end, above zero
     * @param middle diameter at mid-length
     * @param large diameter at the large end
     * @param length length in the same unit
     * @param unit the unit of all four, for example {@code m}
     * @return a working with the same value
     * @throws OutOfDomainException if a measure that is used is not above zero
     */
    public Working working(double small, double middle, double large, double length, String unit) {
        require(small, middle, large, length);
        Working.Builder working = Working.of("Solid volume, " + label);
        if (asksSmallEnd()) {
            working.given("a", "diameter at the small end", small, unit);
        }
        if (asksMiddle) {
            working.given("m", "diameter at mid-length", middle, unit);
        }
        if (asksLargeEnd) {
            working.given("c", "diameter at the large end", large, unit);
        }
        return working.given("L", "length", length, unit)
                .constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"))
                .step("V", "volume", formula, unit + "3", source())
                .build();
    }

    private boolean asksSmallEnd() {
        return this != HUBER;
    }

    private void require(double small, double middle, double large, double length) {
        if (asksSmallEnd()) {
            END.require(small);
        }
        if (asksMiddle) {
            END.require(middle);
        }
        if (asksLargeEnd) {
            END.require(large);
        }
        LENGTH.require(length);
    }
}
