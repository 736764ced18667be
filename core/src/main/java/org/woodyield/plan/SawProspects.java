package org.woodyield.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.Money;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.work.BreakEven;
import org.woodyield.work.JobCost;
import org.woodyield.work.LogWork;
import org.woodyield.work.Outlook;
import org.woodyield.work.SawDraws;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInputs;

/**
 * What the ranges of the inputs do to the comparison of saws on one job. The cuts of each saw stay as planned; all figures share
 * their draws, and what two saws share is the same for both in one draw ({@link SawDraws}).
 */
public final class SawProspects {

    /** Share of the draws that an interval holds. */
    public static final double COVERAGE = 0.95;

    private static final long SEED = 1;

    /** Volumes as multiples of what the first saw makes of the job. */
    private static final List<Integer> JOBS = List.of(1, 3, 10);

    /** A volume between nothing and never is drawn as this over the sum of both. */
    private static final double MIDDLE = 1000;

    /** Place of the volume from which on a saw is the cheaper, where that is nothing. */
    private static final double FROM_THE_FIRST = 1;

    /** What is compared. */
    public enum Figure {
        /** Hours on site. */
        HOURS,
        /** Days on site. */
        DAYS,
        /** Fuel in litres. */
        FUEL,
        /** Running cost of a usable board foot, own work not counted. */
        RUNNING_FREE,
        /** Running cost of a usable board foot, own work counted. */
        RUNNING_VALUED,
        /** What the job saves against buying, own work not counted. */
        SAVING_FREE,
        /** What the job saves against buying, own work counted. */
        SAVING_VALUED
    }

    /** Work and money of one saw in one draw. */
    private record Drawn(WorkEstimate work, Optional<BreakEven> money) {}

    /**
     * With own work counted or not.
     *
     * @param best share of the draws in which each saw saves most against buying, or loses least, in this job; empty where a
     *     price is missing or no range moves the choice. Draws in which two are equal count for neither
     * @param cheapest how often each saw is the cheapest, by volume; empty where a price is missing or no range moves the choice
     * @param paysFrom for each saw from the second on, beside the first, from which volume one is cheaper; empty where a price is
     *     missing
     */
    public record Side(Optional<List<Double>> best, List<AtVolume> cheapest, List<PaysFrom> paysFrom) {
        /** Keeps immutable copies. */
        public Side {
            best = best.map(List::copyOf);
            cheapest = List.copyOf(cheapest);
            paysFrom = List.copyOf(paysFrom);
        }
    }

    /**
     * How often each saw is the cheapest.
     *
     * @param jobs volume as a multiple of what the first saw makes of the job
     * @param volume usable lumber
     * @param shares of the draws, by saw
     */
    public record AtVolume(int jobs, BoardFeet volume, List<Double> shares) {
        /** Keeps an immutable copy. */
        public AtVolume {
            shares = List.copyOf(shares);
        }
    }

    /**
     * The volume beyond which one of two saws is the cheaper.
     *
     * @param saw the one whose running cost is the lower, by index
     * @param other the other
     * @param volume usable board feet, zero where it is cheaper from the first; empty where there is none
     * @param spread the interval that holds {@link #COVERAGE} of the draws; empty where no input that moves it has a range
     */
    public record PaysFrom(int saw, int other, Optional<Double> volume, Optional<Ends> spread) {}

    /**
     * A range of volumes of which the upper end may be that there is none.
     *
     * @param least usable board feet; empty where even that is never
     * @param greatest usable board feet; empty where there is no volume beyond which the saw is the cheaper
     * @param always share of the draws in which it is the cheaper at every volume
     * @param never share of the draws in which there is none, those among them in which it is cheaper only up to a volume
     * @param trials how many draws
     */
    public record Ends(Optional<Double> least, Optional<Double> greatest, double always, double never, int trials) {}

    private final SawDraws draws;
    private final Map<Figure, List<Optional<SawDraws.Spread>>> bySaw;
    private final Map<Figure, List<Optional<SawDraws.Spread>>> beside;
    private final Side workFree;
    private final Side workValued;

    private SawProspects(
            SawDraws draws,
            Map<Figure, List<Optional<SawDraws.Spread>>> bySaw,
            Map<Figure, List<Optional<SawDraws.Spread>>> beside,
            Side workFree,
            Side workValued) {
        this.draws = draws;
        this.bySaw = bySaw;
        this.beside = beside;
        this.workFree = workFree;
        this.workValued = workValued;
    }

    static SawProspects of(List<JobPlan> plans) {
        return new Maker(plans).make();
    }

    /**
     * What was drawn once and what apart.
     *
     * @return the inputs of the saws in their order, with the ranges
     */
    public SawDraws draws() {
        return draws;
    }

    /**
     * A figure of a saw.
     *
     * @param figure which
     * @param saw index from 0
     * @return the figure and its spread; empty where a price is missing
     */
    public Optional<SawDraws.Spread> of(Figure figure, int saw) {
        return in(bySaw, figure, saw);
    }

    /**
     * How much greater a figure is than that of the first saw.
     *
     * @param figure which
     * @param saw index from 1
     * @return the difference and its spread; empty where a price is missing
     */
    public Optional<SawDraws.Spread> beside(Figure figure, int saw) {
        return in(beside, figure, saw);
    }

    private static Optional<SawDraws.Spread> in(
            Map<Figure, List<Optional<SawDraws.Spread>>> spreads, Figure figure, int saw) {
        return spreads.getOrDefault(figure, List.of()).get(saw);
    }

    /**
     * Which saw is the cheapest.
     *
     * @param ownWorkValued whether own hours count at the wage
     * @return shares of the draws and volumes
     */
    public Side side(boolean ownWorkValued) {
        return ownWorkValued ? workValued : workFree;
    }

    /** A figure of a saw; empty where a price of it is missing. */
    private static Optional<Double> taken(Figure figure, Drawn drawn) {
        return switch (figure) {
            case HOURS -> Optional.of(drawn.work.time().hours());
            case DAYS -> Optional.of(drawn.work.days());
            case FUEL -> Optional.of(drawn.work.use().fuelLitres());
            case RUNNING_FREE -> running(drawn, false);
            case RUNNING_VALUED -> running(drawn, true);
            case SAVING_FREE -> saving(drawn, false);
            case SAVING_VALUED -> saving(drawn, true);
        };
    }

    private static Optional<BreakEven.Side> side(Drawn drawn, boolean valued) {
        return drawn.money.map(money -> valued ? money.workValued() : money.workFree());
    }

    private static Optional<Double> running(Drawn drawn, boolean valued) {
        return side(drawn, valued)
                .filter(BreakEven.Side::complete)
                .map(side -> side.runningPerBoardFoot().amount());
    }

    private static Optional<Double> saving(Drawn drawn, boolean valued) {
        return side(drawn, valued).flatMap(BreakEven.Side::saving).map(money -> money.amount());
    }

    /** What lacks the price of a cost takes no part in shares and volumes: nobody said that it costs nothing. */
    private static Optional<Double> outlay(Drawn drawn) {
        return drawn.money.flatMap(BreakEven::wholeOutlay).map(Money::amount);
    }

    /** States the figures first, draws them all at once, and then takes them apart again. */
    private static final class Maker {
        private final List<JobPlan> plans;
        private final SawDraws draws;
        private final List<List<LogWork>> works;
        private final List<Drawn> asGiven = new ArrayList<>();
        private final List<ToDoubleFunction<List<Drawn>>> figures = new ArrayList<>();
        private List<SawDraws.Spread> spreads = List.of();

        Maker(List<JobPlan> plans) {
            this.plans = plans;
            this.works = plans.stream().map(Maker::works).toList();
            this.draws = SawDraws.of(plans.stream().map(Maker::inputs).toList());
            for (int saw = 0; saw < plans.size(); saw++) {
                asGiven.add(drawn(saw, draws.inputs().get(saw)));
            }
        }

        private static List<LogWork> works(JobPlan plan) {
            return plan.logs().stream()
                    .flatMap(log ->
                            log
                                    .sawing()
                                    .map(sawing ->
                                            LogWork.of(log.log().id(), log.log().species(), sawing))
                                    .stream())
                    .toList();
        }

        /** With what the lumber costs bought, as in the plan. */
        private static WorkInputs inputs(JobPlan plan) {
            return LumberWorth.of(plan.input(), plan.supply(), plan.fallDown())
                    .into(plan.input().work());
        }

        private Drawn drawn(int saw, WorkInputs inputs) {
            JobPlan plan = plans.get(saw);
            Length kerf = plan.input().saw().kerf();
            String currency = plan.input().currency();
            WorkEstimate work = WorkEstimate.of(inputs, kerf, works.get(saw));
            return new Drawn(
                    work,
                    plan.usable().value() > 0
                            ? Optional.of(
                                    BreakEven.of(inputs, currency, JobCost.of(inputs, currency, work, plan.usable())))
                            : Optional.empty());
        }

        SawProspects make() {
            Map<Figure, List<Optional<Integer>>> own = new EnumMap<>(Figure.class);
            Map<Figure, List<Optional<Integer>>> differences = new EnumMap<>(Figure.class);
            for (Figure figure : Figure.values()) {
                List<Optional<Integer>> ofSaws = new ArrayList<>();
                List<Optional<Integer>> besideFirst = new ArrayList<>();
                for (int saw = 0; saw < plans.size(); saw++) {
                    ofSaws.add(add(figure, saw));
                    besideFirst.add(saw == 0 ? Optional.empty() : addDifference(figure, saw));
                }
                own.put(figure, ofSaws);
                differences.put(figure, besideFirst);
            }
            Places free = places(false);
            Places valued = places(true);
            spreads = draws.spreads(this::drawn, figures, SEED, JobMoney.TRIALS);
            return new SawProspects(draws, found(own), found(differences), side(free), side(valued));
        }

        private int add(ToDoubleFunction<List<Drawn>> figure) {
            figures.add(figure);
            return figures.size() - 1;
        }

        private Optional<Integer> add(Figure figure, int saw) {
            return known(figure, saw) ? Optional.of(add(drawn -> value(figure, drawn, saw))) : Optional.empty();
        }

        private Optional<Integer> addDifference(Figure figure, int saw) {
            return known(figure, 0) && known(figure, saw)
                    ? Optional.of(add(drawn -> Outlook.difference(value(figure, drawn, saw), value(figure, drawn, 0))))
                    : Optional.empty();
        }

        private boolean known(Figure figure, int saw) {
            return taken(figure, asGiven.get(saw)).isPresent();
        }

        private static double value(Figure figure, List<Drawn> drawn, int saw) {
            return taken(figure, drawn.get(saw)).orElseThrow();
        }

        private Map<Figure, List<Optional<SawDraws.Spread>>> found(Map<Figure, List<Optional<Integer>>> places) {
            Map<Figure, List<Optional<SawDraws.Spread>>> found = new EnumMap<>(Figure.class);
            places.forEach((figure, of) -> found.put(
                    figure, of.stream().map(place -> place.map(spreads::get)).toList()));
            return found;
        }

        /** Where the margins of the saws and the volumes stand among the figures; a list is empty where a price is missing. */
        private record Places(
                List<Integer> best, List<List<Integer>> cheapest, List<PaysFrom> pairs, List<Integer> from) {}

        private Places places(boolean valued) {
            Figure saving = valued ? Figure.SAVING_VALUED : Figure.SAVING_FREE;
            Figure running = valued ? Figure.RUNNING_VALUED : Figure.RUNNING_FREE;
            List<Integer> best = new ArrayList<>();
            List<List<Integer>> cheapest = new ArrayList<>();
            List<PaysFrom> pairs = new ArrayList<>();
            List<Integer> from = new ArrayList<>();
            IntStream all = IntStream.range(0, plans.size());
            if (all.allMatch(saw -> known(saving, saw))) {
                best.addAll(margins((drawn, saw) -> value(saving, drawn, saw)));
            }
            if (IntStream.range(0, plans.size()).allMatch(saw -> priced(running, saw))) {
                for (int jobs : JOBS) {
                    double volume = jobs * plans.get(0).usable().value();
                    cheapest.add(margins((drawn, saw) -> -cost(running, drawn, saw, volume)));
                }
            }
            for (int saw = 1; saw < plans.size(); saw++) {
                if (priced(running, 0) && priced(running, saw)) {
                    boolean later = value(running, asGiven, saw) < value(running, asGiven, 0);
                    int one = later ? saw : 0;
                    int other = later ? 0 : saw;
                    double place = place(running, asGiven, one, other);
                    pairs.add(new PaysFrom(one, other, volume(place), Optional.empty()));
                    from.add(add(drawn -> place(running, drawn, one, other)));
                }
            }
            return new Places(best, cheapest, pairs, from);
        }

        private boolean priced(Figure running, int saw) {
            return known(running, saw) && outlay(asGiven.get(saw)).isPresent();
        }

        /** Takes a figure of a saw in one draw. */
        @FunctionalInterface
        private interface OfSaw {
            double in(List<Drawn> drawn, int saw);
        }

        /** By how much each saw is ahead of the best of the others. */
        private List<Integer> margins(OfSaw good) {
            List<Integer> margins = new ArrayList<>();
            for (int saw = 0; saw < plans.size(); saw++) {
                int one = saw;
                margins.add(add(drawn -> Outlook.difference(
                        good.in(drawn, one),
                        IntStream.range(0, plans.size())
                                .filter(other -> other != one)
                                .mapToDouble(other -> good.in(drawn, other))
                                .max()
                                .orElseThrow())));
            }
            return margins;
        }

        private static double cost(Figure running, List<Drawn> drawn, int saw, double volume) {
            return outlay(drawn.get(saw)).orElseThrow() + value(running, drawn, saw) * volume;
        }

        /**
         * Where the volume beyond which a saw is cheaper than another lies between never, 0, and from the first board foot, 1:
         * falling with the volume, so that an interval of it is one of the volume, and finite for all.
         */
        private static double place(Figure running, List<Drawn> drawn, int saw, int other) {
            double outlay = outlay(drawn.get(saw)).orElseThrow()
                    - outlay(drawn.get(other)).orElseThrow();
            double gain = Outlook.difference(value(running, drawn, other), value(running, drawn, saw));
            if (outlay <= 0) {
                return gain > 0 || (gain == 0 && outlay < 0) ? FROM_THE_FIRST : 0;
            }
            return gain > 0 ? MIDDLE / (MIDDLE + outlay / gain) : 0;
        }

        private static Optional<Double> volume(double place) {
            return place > 0 ? Optional.of(MIDDLE / place - MIDDLE) : Optional.empty();
        }

        private Side side(Places places) {
            List<AtVolume> cheapest = new ArrayList<>();
            for (int i = 0; i < places.cheapest.size(); i++) {
                int jobs = JOBS.get(i);
                shares(places.cheapest.get(i))
                        .ifPresent(shares -> cheapest.add(new AtVolume(
                                jobs,
                                BoardFeet.usable(jobs * plans.get(0).usable().value()),
                                shares)));
            }
            List<PaysFrom> pays = new ArrayList<>();
            for (int i = 0; i < places.pairs.size(); i++) {
                PaysFrom pair = places.pairs.get(i);
                Optional<Ends> ends = spreads.get(places.from.get(i)).drawn().map(Maker::ends);
                pays.add(new PaysFrom(pair.saw, pair.other, pair.volume, ends));
            }
            return new Side(shares(places.best), cheapest, pays);
        }

        private static Ends ends(MonteCarlo drawn) {
            MonteCarlo.Interval places = drawn.interval(COVERAGE);
            return new Ends(
                    volume(places.greatest()),
                    volume(places.least()),
                    drawn.shareAbove(Math.nextDown(FROM_THE_FIRST)),
                    1 - drawn.shareAbove(0),
                    drawn.trials());
        }

        /** No share where no margin varies, or where they are missing; one that does not vary is all or none. */
        private Optional<List<Double>> shares(List<Integer> margins) {
            List<SawDraws.Spread> all = margins.stream().map(spreads::get).toList();
            if (all.stream().allMatch(spread -> spread.drawn().isEmpty())) {
                return Optional.empty();
            }
            return Optional.of(all.stream()
                    .map(spread ->
                            spread.drawn().map(drawn -> drawn.shareAbove(0)).orElse(spread.value() > 0 ? 1.0 : 0.0))
                    .toList());
        }
    }
}
