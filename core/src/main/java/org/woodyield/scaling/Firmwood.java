package org.woodyield.scaling;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The metric scale of British Columbia by firm wood: Smalian from the radii of both ends inside bark, pi (r^2 + R^2)/2
 * L/10000 cubic metres with radii in centimetres and the length in metres. Defects are taken off after it; {@link NetVolume}
 * does so by geometry, not by the Ministry's own deductions, which were not read.
 *
 * <p>In practice diameters are booked in classes of 2 cm as their radius and lengths to 0.1 m (recalled with medium
 * confidence). What a half does was not read, so radii are taken as given and nothing is rounded.
 */
public final class Firmwood {

    private static final Domain SMALL = new Domain(
            "radius of the top end inside bark", "cm", 2, 150, "give the radius in centimetres, not the diameter");
    private static final Domain LENGTH = new Domain("length", "m", 0.5, 30, "give it in metres, of one log");

    private static final double BUTT_MOST = 200;
    private static final DomainCheck CHECK = new DomainCheck(SMALL, LENGTH);

    private Firmwood() {}

    private static Source source() {
        return Sources.get("bc-firmwood-quoted");
    }

    /**
     * The gross volume.
     *
     * @param topRadiusCentimetres inside bark, 2 to 150
     * @param buttRadiusCentimetres inside bark, no less
     * @param lengthMetres 0.5 to 30
     * @return in cubic metres
     * @throws org.woodyield.measure.OutOfDomainException outside these, or for NaN
     */
    @Calculation("scaling.firmwood")
    public static double cubicMetres(double topRadiusCentimetres, double buttRadiusCentimetres, double lengthMetres) {
        double r = topRadiusCentimetres;
        double b = buttRadiusCentimetres;
        require(r, b, lengthMetres);
        return volume(r, b, lengthMetres);
    }

    private static double volume(double r, double b, double lengthMetres) {
        return StrictMath.PI * (r * r + b * b) / 2 * lengthMetres / 10000;
    }

    /**
     * The gross volumes of many logs; each has the bits of {@link #cubicMetres(double, double, double)}. Nothing is
     * allocated for each log.
     *
     * @param topRadiiCentimetres inside bark, one for each log
     * @param buttRadiiCentimetres inside bark
     * @param lengthsMetres one for each log
     * @param cubicMetres receives the volumes; may be one of the other arrays
     * @throws IllegalArgumentException if the arrays differ in length
     * @throws org.woodyield.measure.OutOfDomainException at the first log that is refused alone; what lies before it is
     *     already written
     */
    public static void cubicMetres(
            double[] topRadiiCentimetres, double[] buttRadiiCentimetres, double[] lengthsMetres, double[] cubicMetres) {
        LogRules.requireSameLength(topRadiiCentimetres, lengthsMetres, cubicMetres);
        LogRules.requireSameLength(buttRadiiCentimetres, lengthsMetres, cubicMetres);
        for (int from = 0; from < cubicMetres.length; from += PublishedRule.BLOCK) {
            int to = Math.min(from + PublishedRule.BLOCK, cubicMetres.length);
            int done = CHECK.firstRefused(topRadiiCentimetres, lengthsMetres, from, to);
            done = firstButtRefused(topRadiiCentimetres, buttRadiiCentimetres, from, done);
            fill(topRadiiCentimetres, buttRadiiCentimetres, lengthsMetres, cubicMetres, from, done);
            if (done < to) {
                require(topRadiiCentimetres[done], buttRadiiCentimetres[done], lengthsMetres[done]);
                throw new IllegalStateException("firmwood refuses in a batch what it takes alone");
            }
        }
    }

    /** A loop without a check, which becomes vector instructions. */
    private static void fill(double[] tops, double[] butts, double[] lengths, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = volume(tops[i], butts[i], lengths[i]);
        }
    }

    private static int firstButtRefused(double[] tops, double[] butts, int from, int to) {
        // The bits of doubles from zero up are in their order, not-a-number is beyond all, and negative ones are below
        // zero.
        long greatest = Double.doubleToRawLongBits(BUTT_MOST);
        for (int i = from; i < to; i++) {
            long butt = Double.doubleToRawLongBits(butts[i]);
            if (butt < Double.doubleToRawLongBits(tops[i]) || butt > greatest) {
                return i;
            }
        }
        return to;
    }

    /**
     * The working of {@link #cubicMetres(double, double, double)}.
     *
     * @param topRadiusCentimetres inside bark, 2 to 150
     * @param buttRadiusCentimetres inside bark, no less
     * @param lengthMetres 0.5 to 30
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException outside these, or for NaN
     */
    public static Working cubicMetresWorking(
            double topRadiusCentimetres, double buttRadiusCentimetres, double lengthMetres) {
        require(topRadiusCentimetres, buttRadiusCentimetres, lengthMetres);
        return Working.of("Firmwood, British Columbia")
                .given("r", "radius of the top end inside bark", topRadiusCentimetres, "cm")
                .given("R", "radius of the butt end inside bark", buttRadiusCentimetres, "cm")
                .given("L", "length", lengthMetres, "m")
                .constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"))
                .step("V", "gross volume", "pi * (r^2 + R^2) / 2 * L / 10000", "m3", source())
                .note("Classes of radius and length: "
                        + Sources.get("bc-firmwood-memory").citation() + ".")
                .build();
    }

    private static void require(double top, double butt, double length) {
        SMALL.require(top);
        if (!(butt >= top && butt <= BUTT_MOST)) {
            new Domain("radius of the butt end inside bark", "cm", top, BUTT_MOST, "change the ends, or measure again")
                    .require(butt);
        }
        LENGTH.require(length);
    }
}
