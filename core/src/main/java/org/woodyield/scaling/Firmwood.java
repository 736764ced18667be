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

    private static final double TOP_LEAST = 2;
    private static final double TOP_MOST = 150;
    private static final double BUTT_MOST = 200;
    private static final double LENGTH_LEAST = 0.5;
    private static final double LENGTH_MOST = 30;

    private static final Domain SMALL = new Domain(
            "radius of the top end inside bark",
            "cm",
            TOP_LEAST,
            TOP_MOST,
            "give the radius in centimetres, not the diameter");
    private static final Domain LENGTH =
            new Domain("length", "m", LENGTH_LEAST, LENGTH_MOST, "give it in metres, of one log");

    /** Twice a factor of this takes the least difference of two measures beyond all numbers. */
    private static final double FAR = 1e308;

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
     *     already written, and what stands from it on is not to be used
     */
    public static void cubicMetres(
            double[] topRadiiCentimetres, double[] buttRadiiCentimetres, double[] lengthsMetres, double[] cubicMetres) {
        LogRules.requireSameLength(topRadiiCentimetres, lengthsMetres, cubicMetres);
        LogRules.requireSameLength(buttRadiiCentimetres, lengthsMetres, cubicMetres);
        // Before a volume takes the place of a measure the measure is looked at.
        boolean apart = cubicMetres != topRadiiCentimetres
                && cubicMetres != buttRadiiCentimetres
                && cubicMetres != lengthsMetres;
        for (int from = 0; from < cubicMetres.length; from += PublishedRule.BLOCK) {
            int to = Math.min(from + PublishedRule.BLOCK, cubicMetres.length);
            if (apart) {
                fillAndMark(topRadiiCentimetres, buttRadiiCentimetres, lengthsMetres, cubicMetres, from, to);
                if (Double.isFinite(sum(cubicMetres, from, to))) {
                    continue;
                }
            }
            int done = CHECK.firstRefused(topRadiiCentimetres, lengthsMetres, from, to);
            done = firstButtRefused(topRadiiCentimetres, buttRadiiCentimetres, from, done);
            fill(topRadiiCentimetres, buttRadiiCentimetres, lengthsMetres, cubicMetres, from, done);
            if (done < to) {
                require(topRadiiCentimetres[done], buttRadiiCentimetres[done], lengthsMetres[done]);
                throw new IllegalStateException("firmwood refuses in a batch what it takes alone");
            }
        }
    }

    /**
     * Fills a block and marks what lies outside the domain, at once and without a branch, so that both become vector
     * instructions: a measure within adds zero to its volume, which keeps its bits; one outside adds minus infinity or
     * not-a-number, which no sum loses. A loop of its own for the check took twice as long as the volumes. JDK 17 makes no
     * vector instructions of a body much larger than this one: measure before adding to it.
     */
    private static void fillAndMark(double[] tops, double[] butts, double[] lengths, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double top = tops[i];
            double butt = butts[i];
            double length = lengths[i];
            double inTop = (top - TOP_LEAST) * (TOP_MOST - top);
            // Both factors are below zero only for a top that is itself outside.
            double inButt = (butt - top) * (BUTT_MOST - butt);
            double inLength = (length - LENGTH_LEAST) * (LENGTH_MOST - length);
            double outside = (inTop - Math.abs(inTop)) + (inButt - Math.abs(inButt)) + (inLength - Math.abs(inLength));
            out[i] = volume(top, butt, length) + outside * FAR * FAR;
        }
    }

    /** A sum in eight parts, which do not wait for each other. */
    private static double sum(double[] values, int from, int to) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        double e = 0;
        double f = 0;
        double g = 0;
        double h = 0;
        int i = from;
        for (; i < to - 7; i += 8) {
            a += values[i];
            b += values[i + 1];
            c += values[i + 2];
            d += values[i + 3];
            e += values[i + 4];
            f += values[i + 5];
            g += values[i + 6];
            h += values[i + 7];
        }
        for (; i < to; i++) {
            a += values[i];
        }
        return a + b + c + d + e + f + g + h;
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
