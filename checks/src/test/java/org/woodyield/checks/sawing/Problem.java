package org.woodyield.checks.sawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Wane;

/** A log, a saw, sizes and a space. The random ones are so small that all patterns can be listed. */
record Problem(LogSolid solid, Saw saw, List<PieceOption> options, SearchSpace space, PassCost cost) {

    private static final Length STEP = Length.millimetres(4);
    private static final List<Frame.Lay> LAYS = List.of(Frame.Lay.values());
    static final Length WIDE = Length.millimetres(1000);

    static Problem random(long seed, boolean cants) {
        Random random = new Random(seed);
        boolean swept = random.nextInt(3) == 0;
        boolean turned = random.nextInt(3) == 0;
        double length = 3;
        double small = (cants ? 4 + 3 * random.nextDouble() : 5 + 3.5 * random.nextDouble()) * STEP.toMetres();
        double large = small * (1 + 0.35 * random.nextDouble());
        double sweep = swept ? 2 * STEP.toMetres() * random.nextDouble() : 0;
        double toward = turned ? random.nextDouble() : 0;
        List<Station> stations = new ArrayList<>();
        int stretches = swept ? 2 : 1;
        for (int i = 0; i <= stretches; i++) {
            double t = (double) i / stretches;
            double bow = 4 * sweep * t * (1 - t);
            stations.add(new Station(length * t, small + (large - small) * t, bow * (1 - toward), bow * toward));
        }
        double ratio = random.nextBoolean() ? 1 : 0.75 + 0.25 * random.nextDouble();
        LogSolid solid = LogSolid.of(
                stations, ratio, random.nextInt(3) == 0 ? Length.millimetres(1 + random.nextInt(4)) : Length.ZERO);

        Saw saw = new Saw(
                "small saw",
                STEP.times(1 + random.nextInt(2)),
                random.nextInt(3) == 0 ? STEP.times(3 + random.nextInt(11)) : WIDE,
                STEP.times(1 + random.nextInt(2)),
                random.nextBoolean() ? Saw.Reference.BED : Saw.Reference.PREVIOUS_FACE,
                random.nextInt(4) == 0 ? STEP.times(1 + random.nextInt(5)) : Length.ZERO,
                Length.ZERO);

        List<PieceOption> options = new ArrayList<>();
        int sizes = 1 + random.nextInt(3);
        for (int i = 0; i < sizes; i++) {
            options.add(option(random, i));
        }
        SearchSpace space = new SearchSpace(
                turned
                        ? List.of((double) random.nextInt(180), random.nextBoolean() ? 0.0 : 90.0)
                        : List.of(random.nextBoolean() ? 0.0 : 90.0),
                random.nextInt(3) == 0
                        ? List.of(LAYS.get(random.nextInt(4)), LAYS.get(random.nextInt(4)))
                        : List.of(Frame.Lay.AXIS),
                random.nextBoolean()
                        ? List.of(Length.millimetres(random.nextInt(17) - 8))
                        : List.of(
                                Length.millimetres(random.nextInt(17) - 8), Length.millimetres(random.nextInt(17) - 8)),
                cants,
                STEP.times(1 + random.nextInt(3)),
                random.nextInt(3) == 0 ? Length.millimetres(300) : Length.ZERO,
                random.nextInt(4) == 0 ? STEP.times(random.nextInt(4)) : Length.ZERO,
                SearchSpace.NO_LIMIT);
        int each = random.nextInt(12);
        PassCost cost = random.nextInt(3) == 0
                ? PassCost.free()
                : random.nextBoolean() ? PassCost.each(each) : (stage, width, along) -> each / 2.0 + 40 * width * along;
        PassCost handled = random.nextBoolean() ? cost : cost.withGuide(random.nextInt(9));
        return new Problem(
                solid,
                saw,
                options,
                space,
                random.nextBoolean()
                        ? handled
                        : handled.withTurning(random.nextInt(6)).withLoading(random.nextInt(9)));
    }

    private static PieceOption option(Random random, int index) {
        Length thickness = STEP.times(2 + random.nextInt(3));
        Length least = STEP.times(3 + random.nextInt(4));
        Length greatest = random.nextInt(4) == 0 ? least.plus(STEP.times(random.nextInt(4))) : least;
        List<LengthWorth> lengths = new ArrayList<>();
        boolean odd = random.nextInt(3) == 0;
        int perArea = 1 + random.nextInt(3);
        for (int millimetres : new int[] {3000, 2100, 1500}) {
            if (lengths.isEmpty() ? random.nextInt(5) > 0 : random.nextBoolean()) {
                double worth = perArea * thickness.toMetres() * least.toMetres() * millimetres * 40;
                lengths.add(new LengthWorth(Length.millimetres(millimetres), odd ? random.nextInt(60) : worth));
            }
        }
        if (lengths.isEmpty()) {
            lengths.add(new LengthWorth(Length.millimetres(3000), 30));
        }
        Wane wane = random.nextInt(3) == 0 ? new Wane(random.nextInt(11) / 10.0, random.nextInt(11) / 10.0) : Wane.NONE;
        return new PieceOption("size " + index, thickness, least, greatest, STEP, lengths, wane);
    }

    /** The space in each of its frames: every lay, the offset with every lift, at every turn. */
    List<StatedSpace> frames() {
        List<StatedSpace> frames = new ArrayList<>();
        for (Frame.Lay lay : space.lays()) {
            int lifts = lay == Frame.Lay.OFFSET ? space.offsets().size() : 1;
            for (int i = 0; i < lifts; i++) {
                for (double turn : space.turnsDegrees()) {
                    frames.add(new StatedSpace(
                            this, new LyingLog(solid, lay, turn, space.offsets().get(i))));
                }
            }
        }
        return frames;
    }

    Problem withSaw(Saw other) {
        return new Problem(solid, other, options, space, cost);
    }

    Problem withOptions(List<PieceOption> others) {
        return new Problem(solid, saw, others, space, cost);
    }

    /** One size more, in steps of 4 mm, worth its area. */
    Problem withSize(int thickness, int width) {
        List<PieceOption> more = new ArrayList<>(options);
        more.add(PieceOption.fixed(
                thickness + " by " + width,
                STEP.times(thickness),
                STEP.times(width),
                List.of(new LengthWorth(Length.millimetres(3000), (double) thickness * width))));
        return withOptions(more);
    }

    Problem withSpace(SearchSpace other) {
        return new Problem(solid, saw, options, other, cost);
    }

    Problem withSolid(LogSolid other) {
        return new Problem(other, saw, options, space, cost);
    }

    Problem withRandomRot(long seed) {
        Random random = new Random(seed);
        double from = random.nextInt(3);
        return withSolid(solid.withRot(new LogSolid.Rot(
                0.001 + 0.005 * random.nextDouble(),
                from,
                from + (solid.lengthMetres() - from) * random.nextDouble(),
                0.004 * random.nextDouble() - 0.002,
                0.004 * random.nextDouble() - 0.002)));
    }

    /** One thing more that is wanted, a flitch with its bark edges on. */
    Problem withRandomFlitch(long seed) {
        Random random = new Random(seed);
        Length thickness = STEP.times(1 + random.nextInt(4));
        Length least = STEP.times(2 + random.nextInt(5));
        double perArea = 0.5 + random.nextDouble();
        List<LengthWorth> lengths = new ArrayList<>();
        for (int millimetres : new int[] {3000, 2100, 1500}) {
            if (lengths.isEmpty() || random.nextBoolean()) {
                lengths.add(new LengthWorth(
                        Length.millimetres(millimetres),
                        perArea * thickness.toMetres() * least.toMetres() * millimetres * 80));
            }
        }
        List<PieceOption> more = new ArrayList<>(options);
        more.add(
                random.nextInt(more.size() + 1),
                PieceOption.unedged(
                        "slab",
                        thickness,
                        least,
                        least.plus(STEP.times(random.nextInt(6))),
                        Length.millimetres(1 + random.nextInt(4)),
                        random.nextBoolean() ? PieceOption.Edges.BARK_LEAST_WIDTH : PieceOption.Edges.BARK_MEAN_WIDTH,
                        lengths));
        return withOptions(more);
    }

    /** Nothing but what is edged. */
    Problem withoutFlitches() {
        return withOptions(options.stream().filter(option -> !option.unedged()).toList());
    }

    /** The same log without rot. */
    LogSolid sound() {
        return solid.withRot(new LogSolid.Rot(0, 0, 0, 0, 0));
    }

    Problem withCost(PassCost other) {
        return new Problem(solid, saw, options, space, other);
    }

    Problem withoutWane() {
        return withOptions(
                options.stream().map(option -> option.withWane(Wane.NONE)).toList());
    }

    Problem withoutLimits() {
        return withSaw(new Saw(
                saw.name(), saw.kerf(), WIDE, saw.settingStep(), saw.reference(), Length.ZERO, saw.sawingVariation()));
    }

    Optional<SawingPlan> plan() {
        return BestPattern.findAny(solid, saw, options, space, cost);
    }

    double value() {
        return plan().map(plan -> plan.proof().objective()).orElse(0.0);
    }

    /** What binds in the optimum: without it another value would come out, or the plan shows it. */
    Map<String, Boolean> binding(SawingPlan plan, long equals) {
        Map<String, Boolean> binding = new LinkedHashMap<>();
        double value = plan.proof().objective();
        binding.put("wane", withoutWane().value() < value);
        binding.put(
                "trim", plan.pieces().stream().anyMatch(piece -> piece.length().toMetres() < solid.lengthMetres()));
        binding.put(
                "two thicknesses",
                plan.pieces().stream().map(SawnPiece::thickness).distinct().count() > 1);
        binding.put("limit of the saw", withoutLimits().value() > value);
        binding.put("tie", equals > 1);
        binding.put(
                "slab between items",
                plan.passes().stream().anyMatch(pass -> pass.comesOff().equals("a slab")));
        if (space.cants()) {
            binding.put("cant", plan.pieces().stream().anyMatch(SawnPiece::fromCant));
        }
        return binding;
    }
}
