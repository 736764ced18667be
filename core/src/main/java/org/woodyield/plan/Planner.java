package org.woodyield.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.UndersizeZ;
import org.woodyield.lumber.WaneLimit;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.WoodBalance;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.Overrun;
import org.woodyield.scaling.Scale;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.source.Sources;
import org.woodyield.wood.AirDrying;
import org.woodyield.wood.Species;
import org.woodyield.wood.WoodWeight;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CuttingRate;
import org.woodyield.work.InputValue;
import org.woodyield.work.JobCost;
import org.woodyield.work.LogWork;
import org.woodyield.work.Suitability;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.TimeLine;
import org.woodyield.work.WorkCost;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/**
 * Makes the plan of a job.
 *
 * <p>Each log is sawn by its best pattern at prices for what is wanted; prices fall for what is in surplus and rise for what
 * is short, and the cuts so found are exchanged between the logs. A needed piece is worth its price bought, one beyond the
 * need a set share of it. Where a price is missing, worth is counted in board feet.
 */
public final class Planner {

    /** What a piece beyond the need is held to be worth, as a share of one that is needed. */
    public static final double SURPLUS_SHARE = 0.15;

    /** What an hour of sawing weighs in the choice of patterns, as a share of the wage. */
    public static final double OWN_HOURS_SHARE = 0.25;

    private static final List<String> RULES = List.of("doyle", "scribner-decimal-c", "international-quarter");
    /** The rule by whose board feet logs are sold here. */
    private static final String SALE_RULE = "international-quarter";

    private static final int LEAST_ROUNDS = 5;
    private static final int MOST_ROUNDS = 16;
    /** Jobs of few logs, where a piece more or less tells, are given more rounds of prices. */
    private static final int SEARCHES = 60;

    /** The parameter by which a job is refused of which the saw can saw no log, since each is too wide for it. */
    public static final String WIDTH = "width of cut";

    /** So many logs are named in a refusal of all. */
    private static final int LOGS_NAMED = 3;

    private static final Length FINEST_LAYOUT = Length.millimetres(1).dividedBy(4, Rounding.DOWN);

    private final JobInput input;
    private final List<Item> items;
    private final Map<String, GreenSize> green = new LinkedHashMap<>();
    private final List<LogSolid> solids;
    private final BiConsumer<Integer, Integer> progress;
    private final Executor executor;
    private final Saw saw;
    private final SearchSpace space;

    private Planner(JobInput input, BiConsumer<Integer, Integer> progress, Executor executor) {
        this.input = input;
        this.executor = executor;
        this.progress = progress;
        this.items = items(input);
        this.saw = layoutSaw(input.saw());
        this.space = layoutSpace(input);
        this.solids = input.logs().stream().map(LogSolid::of).toList();
        double z = UndersizeZ.exact(input.undersizePercent());
        Set<Species> species = new LinkedHashSet<>();
        input.logs().forEach(log -> species.add(log.species()));
        for (Item item : items) {
            for (Species one : species) {
                if (item.wood().accepts(one)) {
                    green.put(key(item, one), item.greenSize(one, input, saw, z));
                }
            }
        }
    }

    /**
     * Makes a plan.
     *
     * @param input the job
     * @return the plan
     * @throws OutOfDomainException if a value is outside the limits of a model, such as a species without a known shrinkage,
     *     or nothing is sawn and the saw is too narrow for a log
     */
    public static JobPlan plan(JobInput input) {
        return plan(input, (done, all) -> {}, Runnable::run);
    }

    /**
     * Makes a plan and tells how far it is. The plan is the same for any executor.
     *
     * @param input the job
     * @param progress is told, on the calling thread, how many patterns have been searched and how many there are at most
     * @param executor runs the searches of the logs, which do not depend on each other; not one whose only thread makes
     *     this call
     * @return the plan
     * @throws OutOfDomainException as {@link #plan(JobInput)}
     */
    public static JobPlan plan(JobInput input, BiConsumer<Integer, Integer> progress, Executor executor) {
        Optional<JobInput> withOther = input.otherSaw().map(other -> input.withSaw(other.saw(), other.work()));
        Optional<String> tooWide = input.otherKerfTooWide();
        int before = mostPatterns(input);
        int most = before
                + withOther
                        .filter(job -> tooWide.isEmpty())
                        .map(Planner::mostPatterns)
                        .orElse(0);
        Planner own = new Planner(input, (done, all) -> progress.accept(done, most), executor);
        Cuts cuts = own.cuts();
        Optional<WithOtherSaw> other = withOther.map(job -> tooWide.map(why -> WithOtherSaw.leftOut(job, why))
                .orElseGet(() -> WithOtherSaw.of(job, (done, all) -> progress.accept(before + done, most), executor)));
        return own.plan(cuts, other);
    }

    /** The job sawn with another saw, or why that cannot be. */
    private record WithOtherSaw(JobInput job, Optional<Cuts> cuts, String leftOut) {
        static WithOtherSaw of(JobInput job, BiConsumer<Integer, Integer> progress, Executor executor) {
            try {
                return new WithOtherSaw(job, Optional.of(new Planner(job, progress, executor).cuts()), "");
            } catch (OutOfDomainException e) {
                return leftOut(
                        job,
                        e.parameter().equals(WIDTH)
                                ? "it can saw none of the logs: " + e.limits()
                                : "it cannot be planned: " + e.getMessage());
            }
        }

        /** Trouble of another saw is no trouble of the job. */
        static WithOtherSaw leftOut(JobInput job, String why) {
            return new WithOtherSaw(job, Optional.empty(), why);
        }

        /** What it makes beside the lumber of the saw of the job; empty where it can saw none. */
        Optional<OtherSawWork> beside(LumberWorth own, Optional<Double> mean) {
            return cuts.map(sawn ->
                    OtherSawWork.of(job, sawn.works, LumberWorth.of(job, sawn.supply, sawn.fallDown), own, mean));
        }
    }

    /** A pattern, and the space in which it is the best at its prices. */
    private record Found(SawingPlan plan, SearchSpace space) {}

    /** How the logs are sawn. */
    private record Cuts(
            Allocation.Result<Optional<Found>> shared,
            int searches,
            List<LogPlan> logs,
            List<LogWork> works,
            List<Supply> supply,
            List<JobPlan.Lot> fallDown,
            WoodBalance balance,
            Volume solid,
            BoardFeet tally) {}

    /**
     * The saw with its kerf up to the next quarter of a setting step, or the next step where that is fine. Faces stand whole
     * sums of thickness and kerf apart; a common measure that is not too fine keeps the search quick, and the wood so given
     * away is a sliver of each kerf.
     */
    static Saw layoutSaw(Saw saw) {
        Optional<OutOfDomainException> refused = layoutRefusal(saw);
        if (refused.isPresent()) {
            throw refused.get();
        }
        return saw.withKerf(saw.kerf().roundedTo(layoutStep(saw), Rounding.UP));
    }

    private static Length layoutStep(Saw saw) {
        Length step = saw.settingStep();
        Length quarter = step.dividedBy(4, Rounding.DOWN);
        boolean coarse = quarter.times(4).equals(step) && quarter.compareTo(FINEST_LAYOUT) >= 0;
        return coarse ? quarter : step;
    }

    /**
     * Why no faces can be laid out with a saw: the kerf is rounded up to a step of the layout, and may then be wider than a kerf
     * can be.
     *
     * @param saw a saw
     * @return a refusal with the kerf as it was given; nothing where faces can be laid out
     */
    public static Optional<OutOfDomainException> layoutRefusal(Saw saw) {
        Length step = layoutStep(saw);
        Length greatest = Saw.WIDEST_KERF.roundedTo(step, Rounding.DOWN);
        return saw.kerf().compareTo(greatest) > 0
                ? Optional.of(new OutOfDomainException(
                        "kerf",
                        saw.kerf().toString(),
                        "",
                        "above 0, up to " + greatest + ": it is rounded up to whole steps of " + step
                                + " to lay out the faces, and must not exceed "
                                + Saw.WIDEST_KERF.inMillimetres(0) + " then",
                        "give a narrower kerf, or check its unit"))
                : Optional.empty();
    }

    /** The patterns that are tried, on a grid and by steps of thickness that the saw can be set to. */
    static SearchSpace layoutSpace(JobInput input) {
        Length step = input.saw().settingStep();
        return input.space()
                .withGrid(Length.max(step, input.space().grid().roundedTo(step, Rounding.HALF_UP)))
                .withOverThick(input.space().overThick().roundedTo(step, Rounding.DOWN));
    }

    /** All that is wanted. */
    static List<Item> items(JobInput input) {
        List<Item> all = new ArrayList<>();
        FallDown ofDrying = input.yard().fallDown();
        input.pieces().forEach(piece -> all.add(Item.Pieces.of(piece, ofDrying)));
        input.areas().forEach(area -> all.add(Item.Boards.of(area, ofDrying)));
        input.naturalEdges().forEach(board -> all.add(Item.NaturalEdges.of(board, ofDrying)));
        return List.copyOf(all);
    }

    /** Whether all that is wanted has a price, so that patterns are chosen by money. */
    static boolean isPriced(JobInput input) {
        return input.unpriced().isEmpty();
    }

    private static String key(Item item, Species species) {
        return item.id() + "\n" + species.id();
    }

    private GreenSize green(Item item, Species species) {
        GreenSize size = green.get(key(item, species));
        if (size == null) {
            throw new IllegalArgumentException(item.id() + " is not wanted in " + species.id());
        }
        return size;
    }

    private Cuts cuts() {
        boolean priced = isPriced(input);
        double[] need = items.stream().mapToDouble(Item::toSaw).toArray();
        double[] worth =
                items.stream().mapToDouble(item -> worth(input, item, priced)).toArray();
        Map<String, PassCost> costs = new HashMap<>();
        for (Log log : input.logs()) {
            costs.put(log.species().id(), priced ? passCost(input, log.species(), saw.kerf()) : PassCost.free());
        }
        Map<SearchSpace, Allocation.Result<Optional<Found>>> results = new LinkedHashMap<>();
        int[] done = {0};
        for (SearchSpace each : LesserSpaces.within(space)) {
            List<SearchSpace> lesser = LesserSpaces.of(each);
            List<Allocation.Result<Optional<Found>>> before = results.entrySet().stream()
                    .filter(result -> lesser.contains(result.getKey()))
                    .map(Map.Entry::getValue)
                    .toList();
            Allocation.Sawyer<Optional<Found>> sawyer = sawyer(costs, each, done);
            results.put(
                    each,
                    Allocation.share(input.logs().size(), need, worth, SURPLUS_SHARE, rounds(input), sawyer, before));
        }
        Allocation.Result<Optional<Found>> shared =
                List.copyOf(results.values()).get(results.size() - 1);

        List<CompletableFuture<Optional<SawingPlan>>> bounded = new ArrayList<>();
        for (int i = 0; i < input.logs().size(); i++) {
            Optional<Found> best = shared.cuts().get(i).pattern();
            PassCost cost = cost(costs, i);
            bounded.add(CompletableFuture.supplyAsync(
                    () -> best.map(found -> BestPattern.withBoundOffGrid(found.plan(), found.space(), cost)),
                    executor));
        }
        Map<String, OutOfDomainException> tooNarrow = new LinkedHashMap<>();
        List<LogPlan> logs = new ArrayList<>();
        List<LogWork> works = new ArrayList<>();
        double[] made = new double[items.size()];
        double[] tallies = new double[items.size()];
        Map<String, Sawn> lots = new LinkedHashMap<>();
        int[] pieces = new int[items.size()];
        Volume lumber = Volume.ZERO;
        Volume kerf = Volume.ZERO;
        Volume slab = Volume.ZERO;
        Volume edging = Volume.ZERO;
        Volume trim = Volume.ZERO;
        Volume rot = Volume.ZERO;
        Volume solid = Volume.ZERO;
        double tally = 0;
        for (int i = 0; i < input.logs().size(); i++) {
            Log log = input.logs().get(i);
            Optional<SawingPlan> sawing = joined(bounded.get(i));
            double ofLog = 0;
            double bought = 0;
            if (sawing.isPresent()) {
                works.add(LogWork.of(log.id(), log.species(), sawing.get()));
                WoodBalance balance = sawing.get().balance();
                lumber = lumber.plus(balance.lumber());
                kerf = kerf.plus(balance.kerf());
                slab = slab.plus(balance.slab());
                edging = edging.plus(balance.edging());
                trim = trim.plus(balance.trim());
                rot = rot.plus(balance.rot());
                solid = solid.plus(solids.get(i).volume());
                for (SawnPiece piece : sawing.get().pieces()) {
                    int index = indexOf(piece.optionId());
                    GreenSize size = green(items.get(index), log.species());
                    Item item = items.get(index);
                    double feet = item.tally(piece, size);
                    double amount = item.amount(piece, size);
                    made[index] += amount;
                    bought += amount * worth[index];
                    pieces[index]++;
                    tallies[index] += feet;
                    ofLog += feet;
                    lots.merge(key(item, log.species()), new Sawn(amount, feet, item.endFeet(piece, size)), Sawn::plus);
                }
            }
            tally += ofLog;
            String leftWhole = "";
            if (sawing.isEmpty()) {
                Optional<OutOfDomainException> refused = refusal(i, worth, cost(costs, i));
                leftWhole = refused.map(OutOfDomainException::getMessage).orElseGet(() -> whyNotSawn(log.species()));
                refused.filter(why -> why.parameter().equals(WIDTH)).ifPresent(why -> tooNarrow.put(log.id(), why));
            }
            SearchSpace among = shared.cuts().get(i).pattern().map(Found::space).orElse(space);
            Optional<Double> price = priced && sawing.isPresent() ? Optional.of(bought) : Optional.empty();
            logs.add(logPlan(i, sawing, among, leftWhole, BoardFeet.tally(ofLog), price));
        }
        if (!tooNarrow.isEmpty() && logs.stream().allMatch(log -> log.sawing().isEmpty())) {
            throw tooNarrow(tooNarrow);
        }
        List<JobPlan.Lot> fallDown = new ArrayList<>();
        for (Item item : items) {
            fallDown.addAll(lots(item, lots));
        }
        List<Supply> supply = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            supply.add(new Supply(
                    item.id(),
                    item.label(),
                    item.unit(),
                    item.wanted(),
                    item.toSaw(),
                    made[i],
                    pieces[i],
                    BoardFeet.tally(tallies[i])));
        }
        return new Cuts(
                shared,
                results.size(),
                logs,
                works,
                supply,
                fallDown,
                new WoodBalance(lumber, kerf, slab, edging, trim, rot),
                solid,
                BoardFeet.tally(tally));
    }

    /** The ways to come by the lumber; without another saw, and with the reason, where it cannot be planned or costed. */
    private JobPlan.Ways ways(
            Optional<WithOtherSaw> other,
            LumberWorth own,
            Optional<Double> mean,
            JobMoney money,
            SupplyWays.Lumber lumber) {
        String name = input.saw().name();
        String why = other.map(sawn -> sawn.leftOut).orElse("");
        if (other.isPresent() && other.get().cuts.isPresent()) {
            try {
                return money.ways(lumber, name, other.get().beside(own, mean));
            } catch (OutOfDomainException e) {
                why = "it cannot be costed: " + e.getMessage();
            }
        }
        // What is refused without it too is no trouble of the other saw.
        JobPlan.Ways without = money.ways(lumber, name, Optional.empty());
        return other.isEmpty()
                ? without
                : without.with(OtherSawWork.unable(other.get().job.saw().name(), why));
    }

    private JobPlan plan(Cuts cuts, Optional<WithOtherSaw> other) {
        boolean priced = isPriced(input);
        Length kerfOfSaw = input.saw().kerf();
        WorkEstimate work = WorkEstimate.of(input.work(), kerfOfSaw, cuts.works);
        LumberWorth worthBought = LumberWorth.of(input, cuts.supply, cuts.fallDown);
        double usable = worthBought.usable();
        Optional<JobCost> cost = Optional.empty();
        Optional<BreakEven> breakEven = Optional.empty();
        JobPlan.Prospects prospects = JobPlan.Prospects.none();
        Optional<JobPlan.Ways> ways = Optional.empty();
        JobPlan.Years cashFlow = new JobPlan.Years(Optional.empty(), Optional.empty());
        if (usable > 0) {
            WorkInputs money = worthBought.into(input.work());
            JobCost sum = JobCost.of(money, input.currency(), work, BoardFeet.usable(usable));
            cost = Optional.of(sum);
            breakEven = Optional.of(BreakEven.of(money, input.currency(), sum));
            JobMoney all = new JobMoney(money, input.currency(), kerfOfSaw, cuts.works, BoardFeet.usable(usable));
            prospects = all.prospects();
            Optional<Double> mean = money.find(WorkInput.LUMBER_PRICE).map(InputValue::value);
            SupplyWays.Lumber lumber =
                    new SupplyWays.Lumber(cuts.tally, scaleOfSawn(cuts.logs), worthBought.things(input, mean));
            ways = Optional.of(ways(other, worthBought, mean, all, lumber));
            cashFlow = all.cashFlow(breakEven.get(), work);
        }
        return new JobPlan(
                input,
                List.copyOf(green.values()),
                cuts.logs,
                cuts.supply,
                cuts.fallDown,
                cuts.balance,
                cuts.solid,
                cuts.tally,
                BoardFeet.usable(usable),
                new JobPlan.Choice(
                        priced ? input.currency() : "bf",
                        cuts.shared.worth(),
                        cuts.shared.bound(),
                        cuts.shared.rounds(),
                        space,
                        cuts.searches,
                        SURPLUS_SHARE,
                        priced ? uncounted(input) : List.of()),
                work,
                TimeLine.of(input.work(), kerfOfSaw, cuts.works),
                drying(),
                heaviestLog(cuts.logs),
                heaviestPiece(cuts.logs),
                cost,
                breakEven,
                prospects,
                ways,
                cashFlow,
                notes(priced, cuts.searches));
    }

    /** What is sawn of one thing in one wood: in its unit, in board feet by trimmed length, and in the ends beyond it. */
    private record Sawn(double amount, double tally, double ends) {
        Sawn plus(Sawn other) {
            return new Sawn(amount + other.amount, tally + other.tally, ends + other.ends);
        }
    }

    /** What is left of a thing at each stage, by its wood in the order of the logs. */
    private List<JobPlan.Lot> lots(Item item, Map<String, Sawn> sawn) {
        List<JobPlan.Lot> lots = new ArrayList<>();
        Set<Species> species = new LinkedHashSet<>();
        input.logs().forEach(log -> species.add(log.species()));
        for (Species one : species) {
            Sawn lot = sawn.get(key(item, one));
            if (lot != null) {
                double scant = green(item, one).scantShare();
                lots.add(new JobPlan.Lot(
                        item.id(),
                        one,
                        item.unit(),
                        lot.amount(),
                        lot.amount() * item.fallDown().keptShare() * (1 - scant),
                        lot.tally(),
                        item.fallDown().stages(lot.tally(), lot.ends(), scant),
                        item.fallDown().stagesWorking(lot.tally(), lot.ends(), scant)));
            }
        }
        return lots;
    }

    /** The scale by which logs are sold, where each sawn log has one. */
    private static Optional<BoardFeet> scaleOfSawn(List<LogPlan> logs) {
        double sum = 0;
        for (LogPlan log : logs) {
            if (log.sawing().isPresent()) {
                Optional<BoardFeet> scale = log.scales().stream()
                        .filter(one -> one.ruleId().equals(SALE_RULE))
                        .findFirst()
                        .flatMap(LogPlan.Scaled::scale);
                if (scale.isEmpty()) {
                    return Optional.empty();
                }
                sum += scale.get().value();
            }
        }
        return sum > 0 ? Optional.of(BoardFeet.scale(sum)) : Optional.empty();
    }

    private static int rounds(JobInput input) {
        return Math.max(
                LEAST_ROUNDS, Math.min(MOST_ROUNDS, SEARCHES / input.logs().size()));
    }

    /**
     * How many searches a plan takes: one of all patterns that the job allows, and one of each space of less within it whose
     * choice is a candidate. Those for another saw are not counted.
     *
     * @param input the job
     * @return 1 or more
     */
    public static int searches(JobInput input) {
        return LesserSpaces.within(layoutSpace(input)).size();
    }

    /** How many patterns of logs are sought at most. */
    private static int mostPatterns(JobInput input) {
        return rounds(input) * input.logs().size() * searches(input);
    }

    private int indexOf(String id) {
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("nothing wanted is called " + id);
    }

    /** Worth of one unit of the need: the lowest price among the species that may give it, or its board feet. */
    static double worth(JobInput input, Item item, boolean priced) {
        double perBoardFoot = priced
                ? LumberWorth.lowestPrice(input, item)
                        .map(JobInput.Price::perBoardFoot)
                        .orElse(0.0)
                : 1;
        return item.feetPerUnit() * perBoardFoot;
    }

    /**
     * Saws the logs by the patterns of one space.
     *
     * @param done in its one cell, how many patterns have been sought
     */
    private Allocation.Sawyer<Optional<Found>> sawyer(Map<String, PassCost> costs, SearchSpace within, int[] done) {
        int most = mostPatterns(input);
        return prices -> {
            List<CompletableFuture<Allocation.Cut<Optional<Found>>>> searches = new ArrayList<>();
            for (int i = 0; i < input.logs().size(); i++) {
                int log = i;
                PassCost cost = cost(costs, log);
                searches.add(CompletableFuture.supplyAsync(() -> cut(log, prices, within, cost), executor));
            }
            List<Allocation.Cut<Optional<Found>>> cuts = new ArrayList<>();
            for (CompletableFuture<Allocation.Cut<Optional<Found>>> search : searches) {
                cuts.add(joined(search));
                progress.accept(++done[0], most);
            }
            return cuts;
        };
    }

    /** What a search threw on another thread is thrown here as it was. */
    private static <T> T joined(CompletableFuture<T> search) {
        try {
            return search.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }

    private PassCost cost(Map<String, PassCost> costs, int log) {
        return costs.getOrDefault(input.logs().get(log).species().id(), PassCost.free());
    }

    private List<PieceOption> options(int log, double[] prices) {
        Species species = input.logs().get(log).species();
        List<PieceOption> options = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            if (item.wood().accepts(species) && prices[i] > 0) {
                options.add(item.option(green(item, species), input.saw().settingStep(), prices[i]));
            }
        }
        return options;
    }

    private Allocation.Cut<Optional<Found>> cut(int log, double[] prices, SearchSpace within, PassCost cost) {
        List<PieceOption> options = options(log, prices);
        Optional<SawingPlan> found =
                options.isEmpty() ? Optional.empty() : BestPattern.findAny(solids.get(log), saw, options, within, cost);
        if (found.isEmpty()) {
            return new Allocation.Cut<>(Optional.empty(), Collections.nCopies(items.size(), 0.0), 0, 0);
        }
        Species species = input.logs().get(log).species();
        Double[] made = new Double[items.size()];
        Arrays.fill(made, 0.0);
        for (SawnPiece piece : found.get().pieces()) {
            int index = indexOf(piece.optionId());
            made[index] += items.get(index).amount(piece, green(items.get(index), species));
        }
        return new Allocation.Cut<>(
                found.map(plan -> new Found(plan, within)),
                List.of(made),
                found.get().proof().passCost(),
                found.get().proof().bound());
    }

    /** What forbids to saw anything from a log, asked at the full worth of everything wanted. */
    private Optional<OutOfDomainException> refusal(int log, double[] worth, PassCost cost) {
        List<PieceOption> options = options(log, worth);
        return options.isEmpty()
                        || BestPattern.findAny(solids.get(log), saw, options, space, cost)
                                .isPresent()
                ? Optional.empty()
                : Optional.of(BestPattern.whyNone(solids.get(log), saw, options, space, cost));
    }

    private String whyNotSawn(Species species) {
        List<Item> wanted =
                items.stream().filter(item -> item.wood().accepts(species)).toList();
        if (wanted.isEmpty()) {
            return "nothing is wanted in " + species.commonName();
        }
        List<String> free = input.pricedAtNothing();
        return wanted.stream().allMatch(item -> free.contains(item.id()))
                ? "all that is wanted in " + species.commonName()
                        + " has a price of 0 bought, so sawing it earns nothing"
                : "what it gives is not needed, or not worth its passes beside what the other logs give";
    }

    /** A job of which the saw can saw no log is no job for this saw. */
    private OutOfDomainException tooNarrow(Map<String, OutOfDomainException> refused) {
        OutOfDomainException first = refused.values().iterator().next();
        String each = refused.entrySet().stream()
                .limit(LOGS_NAMED)
                .map(log -> "log " + log.getKey() + ": " + log.getValue().limits())
                .collect(Collectors.joining("; "));
        String others = refused.size() > LOGS_NAMED ? "; and " + (refused.size() - LOGS_NAMED) + " logs more" : "";
        return new OutOfDomainException(
                WIDTH, first.value(), first.unit(), each.replace("for this log ", "") + others, first.remedy());
    }

    /** Running cost of a pass with a share of the own hours, so that a pass is never made for next to nothing. */
    static PassCost passCost(JobInput input, Species species, Length kerf) {
        CuttingRate rate = CuttingRate.of(input.work(), species, kerf);
        PassCost without = WorkCost.of(input.work(), rate, false);
        PassCost with = WorkCost.of(input.work(), rate, true);
        PassCost passes = (stage, width, length) -> {
            double least = without.of(stage, width, length);
            return least + OWN_HOURS_SHARE * (with.of(stage, width, length) - least);
        };
        return passes.withGuide(OWN_HOURS_SHARE * with.guide())
                .withTurning(OWN_HOURS_SHARE * with.turning())
                .withLoading(OWN_HOURS_SHARE * with.loading());
    }

    /** Prices of a pass that nobody gave, in the order of the inputs. */
    private static List<WorkInput> uncounted(JobInput input) {
        Set<WorkInput> missing = EnumSet.noneOf(WorkInput.class);
        for (Log log : input.logs()) {
            CuttingRate rate =
                    CuttingRate.of(input.work(), log.species(), input.saw().kerf());
            missing.addAll(WorkCost.of(input.work(), rate, true).leftOut());
        }
        return List.copyOf(missing);
    }

    private LogPlan logPlan(
            int index,
            Optional<SawingPlan> sawing,
            SearchSpace among,
            String leftWhole,
            BoardFeet tally,
            Optional<Double> bought) {
        Log log = input.logs().get(index);
        List<LogPlan.Scaled> scales = new ArrayList<>();
        for (String id : RULES) {
            scales.add(scaled(log, LogRules.byId(id), tally));
        }
        Volume solid = solids.get(index).volume();
        double bark = 1
                + log.species()
                        .barkPercentOfWood()
                        .map(share -> share.value() / 100)
                        .orElse(0.0);
        return new LogPlan(
                log,
                scales,
                solid,
                sawing,
                among,
                leftWhole,
                tally,
                bought,
                sawing.map(plan -> plan.balance().lumber()).orElse(Volume.ZERO),
                sawing.flatMap(plan -> widestCut(log.species(), plan)),
                WoodWeight.greenKilograms(log.species(), solid) * bark);
    }

    private Optional<Suitability> widestCut(Species species, SawingPlan plan) {
        CuttingRate rate = CuttingRate.of(input.work(), species, input.saw().kerf());
        return plan.passes().stream()
                .map(SawPass::widest)
                .max(Comparator.naturalOrder())
                .map(width -> Suitability.of(rate, width));
    }

    private static LogPlan.Scaled scaled(Log log, LogRule rule, BoardFeet tally) {
        try {
            Scale scale = Scale.of(log, rule, ScalingConvention.plain());
            BoardFeet feet = scale.boardFeet();
            Optional<Double> overrun = feet.value() > 0 && tally.value() > 0
                    ? Optional.of(Overrun.percent(tally, feet))
                    : Optional.empty();
            return new LogPlan.Scaled(
                    rule.id(),
                    rule.name(),
                    rule.standing(),
                    Optional.of(feet),
                    "",
                    scale.caution(),
                    overrun,
                    Optional.of(scale.working()));
        } catch (OutOfDomainException e) {
            return new LogPlan.Scaled(
                    rule.id(),
                    rule.name(),
                    rule.standing(),
                    Optional.empty(),
                    e.getMessage(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
    }

    private List<JobPlan.Drying> drying() {
        List<JobPlan.Drying> list = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (GreenSize size : green.values()) {
            if (size.shrinkageModel().isEmpty()
                    || !seen.add(
                            size.species().id() + " " + size.thicknessToSaw().toNanometres())) {
                continue;
            }
            Optional<AirDrying.Days> days = AirDrying.ofInchLumber(size.species())
                    .filter(inch ->
                            AirDrying.THICKNESS.holds(size.thicknessToSaw().toInches()))
                    .map(inch -> AirDrying.days(
                            size.species(), size.thicknessToSaw(), AirDrying.ThicknessExponent.TENTH_THICKER));
            list.add(new JobPlan.Drying(
                    size.species().commonName(), size.thicknessToSaw().toInches(), days));
        }
        return list;
    }

    private static JobPlan.Heavy heaviestLog(List<LogPlan> logs) {
        LogPlan heaviest = logs.stream()
                .max(Comparator.comparingDouble(LogPlan::greenKilograms))
                .orElseThrow();
        return new JobPlan.Heavy("log " + heaviest.log().id(), heaviest.greenKilograms(), Optional.empty());
    }

    private Optional<JobPlan.Heavy> heaviestPiece(List<LogPlan> logs) {
        Optional<JobPlan.Heavy> heaviest = Optional.empty();
        for (LogPlan log : logs) {
            if (log.sawing().isEmpty()) {
                continue;
            }
            Species species = log.log().species();
            for (SawnPiece piece : log.sawing().get().pieces()) {
                Volume volume = log.sawing().get().wood(piece);
                double kilograms = WoodWeight.greenKilograms(species, volume);
                if (heaviest.map(known -> kilograms > known.greenKilograms()).orElse(true)) {
                    Item item = items.get(indexOf(piece.optionId()));
                    heaviest = Optional.of(new JobPlan.Heavy(
                            item.id() + " (" + item.label() + ") in " + species.commonName(),
                            kilograms,
                            Optional.of(WoodWeight.kilograms(species, volume, item.moisturePercent()))));
                }
            }
        }
        return heaviest;
    }

    private List<JobPlan.Note> notes(boolean priced, int searches) {
        List<JobPlan.Note> notes = new ArrayList<>();
        notes.add(new JobPlan.Note(
                "How the rings will lie in a piece is not known before the log is sawn: both faces are given the tangential"
                        + " shrinkage, the greater one, so quarter-sawn pieces come out a little thick.",
                Sources.get("definition")));
        notes.add(new JobPlan.Note(
                "Each log's pattern is the best of its search space at the prices at which it was sawn. Which log gives what"
                        + " is a search by prices and exchanges; the bound beside its worth says what no choice exceeds. With few logs a"
                        + " piece wanted once or twice may come out short though a log could give it: ask for one more of it, or"
                        + " for less beside it."
                        + (searches == 1
                                ? ""
                                : " More patterns allowed may lead that search to a poorer choice. So the job was planned "
                                        + searches
                                        + " times, once with all that it allows and else without its last frames or turns, with the"
                                        + " axis or no turn alone, with trims from the ends only or no piece over-thick, as far as it"
                                        + " allows more. What was chosen with less is a candidate where more is allowed, and its cuts"
                                        + " are exchanged with those found there. Coarser grids of the first face and live sawing"
                                        + " alone were not tried so."),
                Sources.get("definition")));
        notes.add(new JobPlan.Note(
                priced
                        ? "A piece beyond the need is held to be worth "
                                + Math.round(100 * SURPLUS_SHARE)
                                + " % of one that is needed. In the choice of patterns a pass costs its fuel, oil and wear and "
                                + Math.round(100 * OWN_HOURS_SHARE)
                                + " % of the wage for its hours, with laying the guide, bringing the log to the saw, and turning and clamping the log and each cant: who wants the lumber saws it though the hours be dear, but makes"
                                + " no idle pass. Both shares are a choice of this program."
                        : "A price is missing for something wanted, so patterns are chosen by board feet and money that rests"
                                + " on that price is left out.",
                Sources.get("definition")));
        notes.add(new JobPlan.Note(
                "Lumber beyond the need counts at " + Math.round(100 * SURPLUS_SHARE)
                        + " % of its price where sawing is compared with buying.",
                Sources.get("definition")));
        notes.add(new JobPlan.Note(
                "The weight of a log takes its bark to be as heavy as its wood, by volume.",
                Sources.get("definition")));
        notes.add(new JobPlan.Note(
                "Usable board feet leave out the share of pieces that the saw's scatter makes too thin to plane clean, and what"
                        + " the job gives as lost by splits and warp of drying. Spares are sawn for splits and warp, as many as are"
                        + " lost in the mean: chance may take more. None are sawn for pieces too thin, a share that the job accepts.",
                Sources.get("definition")));
        Set<WaneLimit> wanes = new LinkedHashSet<>();
        input.pieces().forEach(piece -> piece.wane().ifPresent(wanes::add));
        for (WaneLimit limit : wanes) {
            notes.add(new JobPlan.Note(
                    "Wane up to " + limit.grade() + " may take " + Math.round(100 * limit.thicknessShare())
                            + " % of the finished thickness and " + Math.round(100 * limit.widthShare())
                            + " % of the width at once, along the full length of every edge. A piece within it is not graded"
                            + " lumber: knots, slope of grain and all else decide too, and a grader.",
                    limit.source()));
        }
        if (!space.grid().equals(input.space().grid())) {
            notes.add(new JobPlan.Note(
                    "The first face is moved in steps of " + space.grid() + ", not of the "
                            + input.space().grid() + " of the job: steps are whole ones of the saw's scale, "
                            + saw.settingStep() + ".",
                    Sources.get("definition")));
        }
        if (!space.overThick().equals(input.space().overThick())) {
            notes.add(new JobPlan.Note(
                    "Pieces may be over-thick by " + (space.overThick().isPositive() ? space.overThick() : "nothing")
                            + ", not by the " + input.space().overThick()
                            + " of the job: thickness grows by whole steps of the saw's scale, " + saw.settingStep()
                            + ".",
                    Sources.get("definition")));
        }
        if (!saw.kerf().equals(input.saw().kerf())) {
            notes.add(new JobPlan.Note(
                    "Faces are laid out with a kerf of " + saw.kerf()
                            + ", a little more than the "
                            + input.saw().kerf() + " given, so that faces share a measure with the saw's scale.",
                    Sources.get("definition")));
        }
        return notes;
    }
}
