package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The bodies that a piece of a stem is likened to, cut square at both ends. The squared diameter grows with the power p of
 * the distance from the tip: the cylinder with 0, the paraboloid with 1, the cone with 2, the neiloid with 3. A butt log
 * is near a neiloid, the middle of a stem near a paraboloid, its top near a cone (common practice).
 *
 * <p>The volume between two ends a and c is pi/4 L times the mean of the p + 1 terms a^(2(p-k)/p) c^(2k/p), k from 0 to p.
 * All measures in one unit give the volume in its cube. Geometry; nothing is rounded.
 */
@Calculation("log.solid-form-volume")
public enum SolidForm {
    /** Both ends alike. */
    CYLINDER("cylinder", 0, "pi / 4 * a^2 * L"),
    /** The area grows evenly along the length. */
    PARABOLOID("paraboloid", 1, "pi / 4 * (a^2 + c^2) * L / 2"),
    /** The diameter grows evenly along the length. */
    CONE("cone", 2, "pi / 4 * (a^2 + a * c + c^2) * L / 3"),
    /** The diameter grows faster and faster, as at a flared butt. */
    NEILOID("neiloid", 3, "pi / 4 * (a^2 + a^(4 / 3) * c^(2 / 3) + a^(2 / 3) * c^(4 / 3) + c^2) * L / 4");

    private static final Domain END = Domain.positive("diameter", "");
    private static final Domain LENGTH = Domain.positive("length", "");
    private static final Domain SHARE = Domain.of("share of the length from the small end", "", 0, 1);

    private final String label;
    private final int power;
    private final String formula;

    SolidForm(String label, int power, String formula) {
        this.label = label;
        this.power = power;
        this.formula = formula;
    }

    /**
     * The name as shown.
     *
     * @return one word
     */
    public String label() {
        return label;
    }

    /**
     * The power p of the distance from the tip with which the squared diameter grows.
     *
     * @return 0 to 3
     */
    public int power() {
        return power;
    }

    private static Source source() {
        return Sources.get("solid-form");
    }

    /**
     * The volume between two ends.
     *
     * @param small diameter at one end, above zero
     * @param large diameter at the other end
     * @param length from end to end in the same unit
     * @return the volume in the cube of that unit
     * @throws OutOfDomainException if a measure is not above zero, or the ends of a cylinder differ
     */
    public double volume(double small, double large, double length) {
        require(small, large, length);
        double a = small;
        double c = large;
        return switch (this) {
            case CYLINDER -> StrictMath.PI / 4 * (a * a) * length;
            case PARABOLOID -> StrictMath.PI / 4 * (a * a + c * c) * length / 2;
            case CONE -> StrictMath.PI / 4 * (a * a + a * c + c * c) * length / 3;
            case NEILOID ->
                StrictMath.PI
                        / 4
                        * (a * a
                                + StrictMath.pow(a, 4.0 / 3) * StrictMath.pow(c, 2.0 / 3)
                                + StrictMath.pow(a, 2.0 / 3) * StrictMath.pow(c, 4.0 / 3)
                                + c * c)
                        * length
                        / 4;
        };
    }

    /**
     * The working of {@link #volume}.
     *
     * @param small diameter at one end, above zero
     * @param large diameter at the other end
     * @param length from end to end in the same unit
     * @param unit the unit of all three, for example {@code m}
     * @return a working with the same value
     * @throws OutOfDomainException if a measure is not above zero, or the ends of a cylinder differ
     */
    public Working working(double small, double large, double length, String unit) {
        require(small, large, length);
        Working.Builder working =
                Working.of("Volume of a " + label).given("a", "diameter at the small end", small, unit);
        if (this != CYLINDER) {
            working.given("c", "diameter at the large end", large, unit);
        }
        return working.given("L", "length", length, unit)
                .constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"))
                .step("V", "volume", formula, unit + "3", source())
                .build();
    }

    /**
     * The diameter somewhere between the ends.
     *
     * @param small diameter at the small end, above zero
     * @param large diameter at the large end
     * @param share of the length, 0 at the small end and 1 at the large end
     * @return in the same unit
     * @throws OutOfDomainException if a diameter is not above zero, the share is not 0 to 1, or the ends of a cylinder
     *     differ
     */
    public double diameter(double small, double large, double share) {
        require(small, large, 1);
        SHARE.require(share);
        return switch (this) {
            case CYLINDER -> small;
            case PARABOLOID -> StrictMath.sqrt(small * small + (large * large - small * small) * share);
            case CONE -> small + (large - small) * share;
            case NEILOID -> {
                double root = StrictMath.pow(small, 2.0 / 3);
                yield StrictMath.pow(root + (StrictMath.pow(large, 2.0 / 3) - root) * share, 1.5);
            }
        };
    }

    private void require(double small, double large, double length) {
        END.require(small);
        END.require(large);
        LENGTH.require(length);
        if (this == CYLINDER && small != large) {
            throw new OutOfDomainException(
                    "diameter at the large end",
                    Double.toString(large),
                    "",
                    "that of the small end, " + small,
                    "a cylinder does not taper; take another form");
        }
    }
}
