package org.woodyield.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.AuxCounters;
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
 * How long does the proof of the best pattern of one log take? Eight green sizes, five lengths each, 16 ft logs, a grid of
 * 1/32 in. The baseline works out every flitch and cant; it does so on a grid of 1/8 in, since on the fine one it takes
 * minutes.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class BestPatternBenchmark {

    private static final long[][] EIGHTHS = {{9, 33}, {9, 49}, {9, 65}, {14, 33}, {14, 49}, {14, 65}, {14, 82}, {14, 99}
    };
    private static final double FEET_16 = 4.8768;
    private static final PassCost COST = PassCost.each(20);

    private static Saw saw(int step) {
        return new Saw(
                "bench saw",
                Length.inches(1, 4),
                Length.inches(50),
                Length.inches(1, step),
                Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
    }

    private static List<PieceOption> sizes() {
        List<PieceOption> options = new ArrayList<>();
        for (long[] size : EIGHTHS) {
            List<LengthWorth> lengths = new ArrayList<>();
            for (long feet = 8; feet <= 16; feet += 2) {
                lengths.add(new LengthWorth(Length.feet(feet), size[0] * size[1] * feet * (1 + feet / 100.0)));
            }
            options.add(PieceOption.fixed(
                    size[0] + "x" + size[1], Length.inches(size[0], 8), Length.inches(size[1], 8), lengths));
        }
        return options;
    }

    private static SearchSpace space(int grid) {
        return SearchSpace.standard().withGrid(Length.inches(1, grid));
    }

    /** Swept logs bow at an angle to their long axis. */
    private static LogSolid log(double smallEndInches, double taperInches, double sweepInches, double axisRatio) {
        int stretches = sweepInches > 0 ? 16 : 1;
        List<LogSolid.Station> stations = new ArrayList<>();
        for (int i = 0; i <= stretches; i++) {
            double share = (double) i / stretches;
            double bow = 4 * sweepInches * 0.0254 * share * (1 - share);
            stations.add(new LogSolid.Station(
                    FEET_16 * share, (smallEndInches + taperInches * share) * 0.0127, 0.6 * bow, 0.8 * bow));
        }
        return LogSolid.of(stations, axisRatio, Length.inches(1, 2));
    }

    private static SawingPlan proven(SawingPlan plan) {
        if (plan.proof().verdict() != Proof.Verdict.PROVEN_OPTIMAL) {
            throw new IllegalStateException("not proven: " + plan.proof());
        }
        return plan;
    }

    private static void same(SawingPlan one, SawingPlan other) {
        if (!one.pieces().equals(other.pieces())
                || one.proof().objective() != other.proof().objective()) {
            throw new IllegalStateException("not the same: " + one.proof() + ", " + other.proof());
        }
    }

    /** Cants in a hundred that were worked out. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Opened {
        private double percent;

        /**
         * The share of the last proof.
         *
         * @return percent
         */
        public double cantsOpenedPercent() {
            return percent;
        }

        void of(Proof proof) {
            percent = 100.0 * proof.cantsOpened() / Math.max(1, proof.cantsInAll());
        }
    }

    /** One straight round log. */
    @State(Scope.Benchmark)
    public static class Straight {
        @Param({"20", "40"})
        private int inches;

        private LogSolid solid = log(20, 2, 0, 1);
        private final List<PieceOption> sizes = sizes();

        @Setup
        public void verify() {
            solid = log(inches, 2, 0, 1);
            double alone = proven(live(space(32), saw(32))).proof().objective();
            SawingPlan all = proven(BestPattern.find(solid, saw(32), sizes, space(32), COST));
            if (all.proof().objective() < alone) {
                throw new IllegalStateException("cants made it worse: " + all.proof());
            }
        }

        private SawingPlan live(SearchSpace space, Saw saw) {
            return BestPattern.find(solid, saw, sizes, space.withCants(false), COST);
        }
    }

    /** A log small enough to work out all that is in it. */
    @State(Scope.Benchmark)
    public static class Small {
        private final LogSolid solid = log(12, 1, 0, 1);
        private final List<PieceOption> sizes = sizes();

        @Setup
        public void verify() {
            same(
                    proven(BestPattern.find(solid, saw(8), sizes, space(8), COST)),
                    proven(BestPattern.findExhaustively(solid, saw(8), sizes, space(8), COST)
                            .orElseThrow()));
        }
    }

    /** A swept oval log and 36 turns of it. */
    @State(Scope.Benchmark)
    public static class Turned {
        private final LogSolid solid = log(20, 2, 1.5, 0.9);
        private final List<PieceOption> sizes = sizes();
        private final SearchSpace turns = space(32)
                .withTurns(IntStream.range(0, 36).mapToObj(i -> 5.0 * i).toList());
    }

    /** Many logs of 8 to 24 in, every third one swept, every other one oval. */
    @State(Scope.Benchmark)
    public static class Yard {
        @Param("1000")
        private int logs;

        private List<LogSolid> solids = List.of();
        private final List<PieceOption> sizes = sizes();

        @Setup
        public void fell() {
            solids = IntStream.range(0, logs)
                    .mapToObj(i -> log(
                            8 + i * 7 % 129 / 8.0,
                            1 + i % 5 / 2.0,
                            i % 3 == 0 ? 0.5 + i % 7 / 4.0 : 0,
                            i % 2 == 0 ? 1 : 0.9))
                    .toList();
        }
    }

    /** Without cants. */
    @Benchmark
    public SawingPlan live(Straight log) {
        return log.live(space(32), saw(32));
    }

    /** With all cants. */
    @Benchmark
    public SawingPlan liveAndCants(Straight log, Opened opened) {
        SawingPlan plan = BestPattern.find(log.solid, saw(32), log.sizes, space(32), COST);
        opened.of(plan.proof());
        return plan;
    }

    /** The small log, pruned. */
    @Benchmark
    public SawingPlan small(Small log) {
        return BestPattern.find(log.solid, saw(8), log.sizes, space(8), COST);
    }

    /** The small log with pruning off: the baseline. */
    @Benchmark
    public SawingPlan smallExhaustively(Small log) {
        return BestPattern.findExhaustively(log.solid, saw(8), log.sizes, space(8), COST)
                .orElseThrow();
    }

    /** A swept oval log at 36 turns. */
    @Benchmark
    @Warmup(iterations = 2, time = 2)
    public SawingPlan sweptAt36Turns(Turned log, Opened opened) {
        SawingPlan plan = proven(BestPattern.find(log.solid, saw(32), log.sizes, log.turns, COST));
        opened.of(plan.proof());
        return plan;
    }

    /** Many logs on two threads; the sum of what they are worth. */
    @Benchmark
    @Warmup(iterations = 1, time = 2)
    @Measurement(iterations = 3, time = 2)
    public double manyLogs(Yard yard) {
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            return yard.solids.stream()
                    .map(log -> CompletableFuture.supplyAsync(
                            () -> BestPattern.findAny(log, saw(32), yard.sizes, space(32), COST)
                                    .map(plan -> proven(plan).proof().objective())
                                    .orElse(0.0),
                            two))
                    .toList()
                    .stream()
                    .mapToDouble(CompletableFuture::join)
                    .sum();
        } finally {
            two.shutdown();
        }
    }
}
