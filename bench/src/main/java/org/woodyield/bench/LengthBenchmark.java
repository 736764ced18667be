package org.woodyield.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.woodyield.measure.Length;

/** What does it cost to read a length exactly, beside reading a bare double? */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LengthBenchmark {

    private static final int COUNT = 1000;

    private String[] decimals;
    private String[] lengths;

    @Setup
    public void draw() {
        Random random = new Random(20261125);
        decimals = new String[COUNT];
        lengths = new String[COUNT];
        for (int i = 0; i < COUNT; i++) {
            int sixteenths = 1 + random.nextInt(16 * 240);
            decimals[i] = Double.toString(sixteenths / 16.0);
            lengths[i] = sixteenths / 16 + " " + sixteenths % 16 + "/16 in";
            if (Length.parse(lengths[i]).toInches() != sixteenths / 16.0) {
                throw new IllegalStateException(lengths[i] + " is read wrong");
            }
        }
    }

    /** The baseline: a number without unit or exactness. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double readDoubles() {
        double sum = 0;
        for (String text : decimals) {
            sum += Double.parseDouble(text);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public Length readLengths() {
        Length sum = Length.ZERO;
        for (String text : lengths) {
            sum = sum.plus(Length.parse(text));
        }
        return sum;
    }
}
