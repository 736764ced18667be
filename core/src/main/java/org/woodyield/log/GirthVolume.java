package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Volume from a girth taken around the middle of a log, and its length in the same unit. The old trade rules leave out
 * what falls in squaring the log; only the circle gives the whole of it.
 */
@Calculation("log.girth-volume")
public enum GirthVolume {
    /** Square on a quarter of the girth, the Hoppus measure: 78.5 % of the circle. */
    QUARTER("quarter girth (Hoppus)", "griffiths-artillerist", "(G / 4)^2 * L"),
    /**
     * Quarter girth with the divisor 113: 0.09 % above the circle. With the girth in inches and the length in feet a square
     * foot is divided out by 144; 113 in its place is 144 pi/4 = 113.097 to three figures.
     */
    QUARTER_113("quarter girth, divisor 113", "hoppus-dictionary", "(G / 4)^2 * L * 144 / 113"),
    /** Twice the square on a fifth of the girth: 0.5 % above the circle. */
    FIFTH("fifth girth", "fifth-girth", "(G / 5)^2 * 2 * L"),
    /** The circle: G^2 L over 4 pi. */
    CIRCLE("true circle", "definition", "G^2 * L / (4 * pi)"),
    /** French measure with a fifth deducted: 50.3 % of the circle. */
    FIFTH_DEDUCTED("a fifth deducted", "french-girth-memory", "(G / 5)^2 * L"),
    /** French measure with a sixth deducted: 54.5 % of the circle. */
    SIXTH_DEDUCTED("a sixth deducted", "french-girth-memory", "(5 * G / 24)^2 * L");

    private static final Domain GIRTH = Domain.positive("girth", "");
    private static final Domain LENGTH = Domain.positive("length", "");

    private final String label;
    private final String source;
    private final String formula;

    GirthVolume(String label, String source, String formula) {
        this.label = label;
        this.source = source;
        this.formula = formula;
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
     * The volume.
     *
     * @param girth around the middle, above zero
     * @param length in the same unit, above zero
     * @return in the cube of that unit
     * @throws org.woodyield.measure.OutOfDomainException if either is not above zero
     */
    public double volume(double girth, double length) {
        GIRTH.require(girth);
        LENGTH.require(length);
        return switch (this) {
            case QUARTER -> square(girth / 4) * length;
            case QUARTER_113 -> square(girth / 4) * length * 144 / 113;
            case FIFTH -> square(girth / 5) * 2 * length;
            case CIRCLE -> girth * girth * length / (4 * StrictMath.PI);
            case FIFTH_DEDUCTED -> square(girth / 5) * length;
            case SIXTH_DEDUCTED -> square(5 * girth / 24) * length;
        };
    }

    /**
     * The volumes of many logs; each has the bits of {@link #volume(double, double)}. Nothing is allocated for each log.
     *
     * @param girths around the middle, one for each log
     * @param lengths in the same unit
     * @param volumes receives the volumes; may be one of the other arrays
     * @throws IllegalArgumentException if the arrays differ in length
     * @throws org.woodyield.measure.OutOfDomainException at the first log of which either is not above zero; what lies
     *     before it is already written
     */
    public void volume(double[] girths, double[] lengths, double[] volumes) {
        LogArrays.require(volumes, girths, lengths);
        for (int i = 0; i < volumes.length; i++) {
            volumes[i] = volume(girths[i], lengths[i]);
        }
    }

    private static double square(double side) {
        return side * side;
    }

    /**
     * The working of {@link #volume(double, double)}.
     *
     * @param girth around the middle, above zero
     * @param length in the same unit, above zero
     * @param unit of both, for example {@code ft}
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException if either is not above zero
     */
    public Working working(double girth, double length, String unit) {
        GIRTH.require(girth);
        LENGTH.require(length);
        Working.Builder working = Working.of("Volume from girth, " + label)
                .given("G", "girth at mid-length", girth, unit)
                .given("L", "length", length, unit);
        if (this == CIRCLE) {
            working.constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"));
        }
        return working.step("V", "volume", formula, unit + "3", source()).build();
    }
}
