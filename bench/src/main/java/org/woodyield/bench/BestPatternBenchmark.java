package org.woodyield.bench;

import java.util.ArrayList;
import java.util.List;
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
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Proof;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SearchSpace;

/**
 * How long does the proof of the best pattern of one straight round log take, live alone (the baseline) and with all cants,
 * on a coarse and a fine grid? Eight green sizes, five lengths each, a 16 ft log 20 in thick at its small end.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class BestPatternBenchmark {

    private static final long[][] EIGHTHS = {{9, 33}, {9, 49}, {9, 65}, {14, 33}, {14, 49}, {14, 65}, {14, 82}, {14, 99}
    };

    /** The grid of the first face, one part in so many of an inch. */
    @Param({"8", "32"})
    private int grid;

    private final LogSolid solid = LogSolid.of(
            List.of(new LogSolid.Station(0, 0.254, 0, 0), new LogSolid.Station(4.8768, 0.2794, 0, 0)),
            1,
            Length.inches(1, 2));
    private List<PieceOption> sizes = List.of();
    private Saw saw = saw(8);
    private SearchSpace space = SearchSpace.standard();

    private static Saw saw(int step) {
        return new Saw(
                "bench saw",
                Length.inches(1, 4),
                Length.inches(40),
                Length.inches(1, step),
                Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
    }

    @Setup
    public void verify() {
        List<PieceOption> options = new ArrayList<>();
        for (long[] size : EIGHTHS) {
            List<LengthWorth> lengths = new ArrayList<>();
            for (long feet = 8; feet <= 16; feet += 2) {
                lengths.add(new LengthWorth(Length.feet(feet), size[0] * size[1] * feet * (1 + feet / 100.0)));
            }
            options.add(PieceOption.fixed(
                    size[0] + "x" + size[1], Length.inches(size[0], 8), Length.inches(size[1], 8), lengths));
        }
        sizes = options;
        saw = saw(grid);
        space = SearchSpace.standard().withGrid(Length.inches(1, grid));
        Proof live = live().proof();
        Proof all = liveAndCants().proof();
        if (live.verdict() != Proof.Verdict.PROVEN_OPTIMAL
                || all.verdict() != Proof.Verdict.PROVEN_OPTIMAL
                || all.objective() < live.objective()) {
            throw new IllegalStateException("not proven, or cants made it worse: " + live + ", " + all);
        }
    }

    @Benchmark
    public SawingPlan live() {
        return BestPattern.find(solid, saw, sizes, space.withCants(false), PassCost.each(20));
    }

    @Benchmark
    public SawingPlan liveAndCants() {
        return BestPattern.find(solid, saw, sizes, space, PassCost.each(20));
    }
}
