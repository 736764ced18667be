package org.woodyield.bench;

import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.Rounding;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.Firmwood;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;

/**
 * What do the domain checks of a rule's batch cost, beside a loop without them, a bare table look-up and a copy?
 *
 * <p>Diameters are drawn from a normal law of 14 +- 4 in, cut to 6 to 40 whole inches; lengths are 8 to 20 even feet. For
 * the cubic rules and solid formulas the same numbers stand for centimetres, with lengths of 2 to 8 m in tenths. A time is
 * that of all logs of the batch.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ScalingBenchmark {

    /** Ten thousand logs lie in the second-level cache, where a check costs most beside a formula; a large tally does not. */
    @Param({"10000", "100000"})
    int count;

    private final LogRule doyle = LogRules.byId("doyle");
    private final LogRule international = LogRules.byId("international-quarter");
    private final LogRule decimalC = LogRules.byId("scribner-decimal-c");
    private final LogRule scribnerFit = LogRules.byId("scribner-fit");

    private double[] diameters;
    private double[] lengths;
    private double[] out;
    private double[] table;
    private double[] larges;
    private double[] metres;

    @Setup
    public void draw() {
        Random random = new Random(20261125);
        diameters = new double[count];
        lengths = new double[count];
        out = new double[count];
        table = new double[61 * 41];
        for (int d = 6; d <= 60; d++) {
            for (int l = 4; l <= 40; l++) {
                table[d * 41 + l] = decimalC.boardFeet(d, l);
            }
        }
        for (int i = 0; i < count; i++) {
            diameters[i] = Math.max(6, Math.min(40, Math.rint(14 + 4 * random.nextGaussian())));
            lengths[i] = 8 + 2 * random.nextInt(7);
        }
        larges = new double[count];
        metres = new double[count];
        for (int i = 0; i < count; i++) {
            larges[i] = diameters[i] + 4 * random.nextDouble();
            metres[i] = 2 + 0.1 * random.nextInt(60);
        }
        verify(doyle, doyleUnchecked());
        verify(doyle, doyleVectorised());
        verify(scribnerFit, scribnerFitUnchecked());
        verify(international, internationalUnchecked());
        verify(decimalC, decimalCBareLookup());
        same("smalian", smalianUnchecked(), smalian(new double[count]));
        same("firmwood", firmwoodUnchecked(), firmwood(new double[count]));
        same("japan", japanUnchecked(), japan(new double[count]));
        for (int i = 0; i < count; i++) {
            out[i] = CubicRule.JAPAN.cubicMetres(diameters[i], metres[i]);
        }
        same("japan, one by one", out, japan(new double[count]));
    }

    private void same(String what, double[] baseline, double[] batch) {
        if (!Arrays.equals(baseline, batch)) {
            throw new IllegalStateException(what + ": batch and baseline differ");
        }
    }

    private double[] smalian(double[] volumes) {
        SolidVolume.SMALIAN.volume(diameters, diameters, larges, metres, volumes);
        return volumes;
    }

    private double[] firmwood(double[] volumes) {
        Firmwood.cubicMetres(diameters, larges, metres, volumes);
        return volumes;
    }

    private double[] japan(double[] volumes) {
        CubicRule.JAPAN.cubicMetres(diameters, metres, volumes);
        return volumes;
    }

    private void verify(LogRule rule, double[] baseline) {
        double[] expected = baseline.clone();
        rule.scale(diameters, lengths, out);
        for (int i = 0; i < count; i++) {
            double single = rule.boardFeet(diameters[i], lengths[i]);
            if (out[i] != expected[i] || out[i] != single) {
                throw new IllegalStateException(rule.id() + " of " + diameters[i] + " in x " + lengths[i]
                        + " ft: batch " + out[i] + ", single " + single + ", baseline " + expected[i]);
            }
        }
    }

    @Benchmark
    public double[] doyle() {
        doyle.scale(diameters, lengths, out);
        return out;
    }

    /** The baseline: the same streams and rounding, nothing checked. */
    @Benchmark
    public double[] doyleUnchecked() {
        for (int i = 0; i < count; i++) {
            double side = diameters[i] - 4;
            out[i] = Rounding.HALF_UP.toStep(side * side * lengths[i] / 16, 1);
        }
        return out;
    }

    /** A harder baseline: a rounding that the compiler turns into vector instructions, right only from zero up. */
    @Benchmark
    public double[] doyleVectorised() {
        for (int i = 0; i < count; i++) {
            double side = diameters[i] - 4;
            out[i] = Math.floor(side * side * lengths[i] / 16 + 0.49999999999999994);
        }
        return out;
    }

    @Benchmark
    public double[] scribnerFit() {
        scribnerFit.scale(diameters, lengths, out);
        return out;
    }

    /** The baseline: the same formula, which is not rounded, nothing checked. */
    @Benchmark
    public double[] scribnerFitUnchecked() {
        for (int i = 0; i < count; i++) {
            double d = diameters[i];
            out[i] = (0.79 * (d * d) - 2 * d - 4) * lengths[i] / 16;
        }
        return out;
    }

    @Benchmark
    public double[] international() {
        international.scale(diameters, lengths, out);
        return out;
    }

    /** The baseline: the same sections and rounding, nothing checked. */
    @Benchmark
    public double[] internationalUnchecked() {
        for (int i = 0; i < count; i++) {
            int whole = (int) (lengths[i] / 4);
            double sum = 0;
            for (int section = 0; section < whole; section++) {
                double d = diameters[i] + 0.5 * section;
                sum += 0.22 * (d * d) - 0.71 * d;
            }
            double rest = lengths[i] - 4 * whole;
            if (rest > 0) {
                double d = diameters[i] + 0.5 * whole;
                sum += (0.22 * (d * d) - 0.71 * d) * rest / 4;
            }
            out[i] = Rounding.HALF_UP.toStep(0.904762 * sum, 5);
        }
        return out;
    }

    @Benchmark
    public double[] decimalC() {
        decimalC.scale(diameters, lengths, out);
        return out;
    }

    /** The baseline: an array indexed by diameter and length, nothing checked. */
    @Benchmark
    public double[] decimalCBareLookup() {
        for (int i = 0; i < count; i++) {
            out[i] = table[((int) diameters[i]) * 41 + ((int) lengths[i])];
        }
        return out;
    }

    @Benchmark
    public double[] smalian() {
        return smalian(out);
    }

    /** The baseline: the same formula, which is not rounded, nothing checked. */
    @Benchmark
    public double[] smalianUnchecked() {
        for (int i = 0; i < count; i++) {
            double a = diameters[i];
            double c = larges[i];
            out[i] = StrictMath.PI / 4 * (a * a + c * c) * metres[i] / 2;
        }
        return out;
    }

    @Benchmark
    public double[] firmwood() {
        return firmwood(out);
    }

    /** The baseline: the same formula, which is not rounded, nothing checked. */
    @Benchmark
    public double[] firmwoodUnchecked() {
        for (int i = 0; i < count; i++) {
            double r = diameters[i];
            double b = larges[i];
            out[i] = StrictMath.PI * (r * r + b * b) / 2 * metres[i] / 10000;
        }
        return out;
    }

    @Benchmark
    public double[] japan() {
        return japan(out);
    }

    /** The baseline: the same formula and rounding, nothing checked. */
    @Benchmark
    public double[] japanUnchecked() {
        for (int i = 0; i < count; i++) {
            double d = diameters[i];
            double c = Math.floor(100 * metres[i] + 0.5);
            double allowed = c < 600 ? d : d + (Math.floor(c / 100) - 4) / 2;
            out[i] = Rounding.HALF_UP.toStep(allowed * allowed * c / 1000, 1) / 1000;
        }
        return out;
    }

    /** What moving the numbers costs by itself. */
    @Benchmark
    public double[] copy() {
        System.arraycopy(diameters, 0, out, 0, count);
        return out;
    }
}
