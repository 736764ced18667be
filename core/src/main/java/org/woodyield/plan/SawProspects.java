package org.woodyield.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.work.BreakEven;
import org.woodyield.work.JobCost;
import org.woodyield.work.LogWork;
import org.woodyield.work.Outlook;
import org.woodyield.work.SawDraws;
import org.woodyield.work.SupplyChoice;
import org.woodyield.work.SupplyWay;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInputs;

/**
 * What the ranges of the inputs do to the comparison of saws on one job. The cuts of each saw stay as planned; all figures share
 * their draws, as all choices share theirs, and what two saws share is the same for both in one draw ({@link SawDraws}).
 */
public final class SawProspects {

    /** Share of the draws that an interval holds. */
    public static final double COVERAGE = 0.95;

    private static final long SEED = 1;

    /** Volumes as multiples of what the first saw makes of the job. */
    private static final List<Integer> JOBS = List.of(1, 3, 10);

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
     * The choice between the saws at one volume of the lumber that the first one makes, reckoned as in its plan: what another saw
     * makes less of a thing is bought, what it makes more is taken off at its worth, and what is sawn is dried, planed and, where
     * that is asked for, graded.
     *
     * @param use how the lumber is used
     * @param jobs volume as a multiple of what the first saw makes of the job
     * @param free own work not counted
     * @param valued own work counted at its wage
     */
    public record Choice(SupplyWay.Use use, int jobs, SupplyChoice free, SupplyChoice valued) {
        /**
         * The choice with own work counted or not.
         *
         * @param ownWorkValued whether own hours count at the wage
         * @return the choice
         */
        public SupplyChoice side(boolean ownWorkValued) {
            return ownWorkValued ? valued : free;
        }
    }

    private final SawDraws draws;
    private final Map<Figure, List<Optional<SawDraws.Spread>>> bySaw;
    private final Map<Figure, List<Optional<SawDraws.Spread>>> beside;
    private final Optional<JobMoney.Sides> ways;
    private final List<Choice> choices;

    private SawProspects(
            SawDraws draws,
            Map<Figure, List<Optional<SawDraws.Spread>>> bySaw,
            Map<Figure, List<Optional<SawDraws.Spread>>> beside,
            Optional<JobMoney.Sides> ways,
            List<Choice> choices) {
        this.draws = draws;
        this.bySaw = bySaw;
        this.beside = beside;
        this.ways = ways;
        this.choices = choices;
    }

    static SawProspects of(SawsOnJob saws) {
        return new Maker(saws).make();
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
     * How much greater a figure is than that of the first saw. Running costs, each of which is by the board foot of another
     * saw's lumber, are set beside each other in {@link #choices} instead.
     *
     * @param figure which
     * @param saw index from 1
     * @return the difference and its spread; empty where a price is missing, and for running costs
     */
    public Optional<SawDraws.Spread> beside(Figure figure, int saw) {
        return in(beside, figure, saw);
    }

    private static Optional<SawDraws.Spread> in(
            Map<Figure, List<Optional<SawDraws.Spread>>> spreads, Figure figure, int saw) {
        return spreads.getOrDefault(figure, List.of()).get(saw);
    }

    /**
     * The choices between the saws, by use and then by volume.
     *
     * @return those at the volume of the job and at multiples of it, for each use that the prices tell; empty where no saw has a
     *     cost that is known
     */
    public List<Choice> choices() {
        return choices;
    }

    /**
     * The ways of the plan of the first saw with all others among them, at the values of the inputs: what lacks a cost stands
     * among the bounds or is left out by name.
     *
     * @param ownWorkValued whether own hours count at the wage
     * @return the ways; empty where nothing is sawn with the first saw
     */
    public Optional<SupplyWays> ways(boolean ownWorkValued) {
        return ways.map(sides -> ownWorkValued ? sides.valued() : sides.free());
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

    /** States the figures first, draws them all at once, and then takes them apart again. */
    private static final class Maker {
        private final SawsOnJob saws;
        private final List<JobPlan> plans;
        private final SawDraws draws;
        private final List<List<LogWork>> works;
        private final List<Drawn> asGiven = new ArrayList<>();
        private final List<ToDoubleFunction<List<Drawn>>> figures = new ArrayList<>();
        private List<SawDraws.Spread> spreads = List.of();

        Maker(SawsOnJob saws) {
            this.saws = saws;
            this.plans = saws.plans();
            this.works = plans.stream().map(SawsOnJob::works).toList();
            this.draws = SawDraws.of(plans.stream().map(Maker::inputs).toList());
            for (int saw = 0; saw < plans.size(); saw++) {
                asGiven.add(drawn(saw, draws.inputs().get(saw)));
            }
        }

        /** With what the lumber costs bought, as in the plan. */
        private static WorkInputs inputs(JobPlan plan) {
            return SawsOnJob.lumber(plan).into(plan.input().work());
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
            spreads = draws.spreads(this::drawn, figures, SEED, JobMoney.TRIALS);
            JobPlan first = plans.get(0);
            Optional<JobMoney.Sides> ways = Optional.empty();
            List<Choice> choices = List.of();
            if (first.usable().value() > 0) {
                List<OtherSawWork> others = saws.others();
                JobMoney money = new JobMoney(
                        inputs(first),
                        first.input().currency(),
                        first.input().saw().kerf(),
                        works.get(0),
                        first.usable());
                // Logs that are sold have no part in the choice between saws, so their scale is not asked for.
                SupplyWays.Lumber lumber = new SupplyWays.Lumber(
                        first.tally(),
                        Optional.empty(),
                        SawsOnJob.lumber(first).things(first.input(), saws.meanPrice()));
                JobMoney.Sides sides = money.sides(lumber, others);
                List<SupplyWay.Use> uses = uses(sides);
                ways = Optional.of(sides);
                choices = uses.isEmpty() ? List.of() : choices(first, money, lumber, others, uses);
            }
            return new SawProspects(draws, found(own), found(differences), ways, choices);
        }

        /** The uses for which a saw has a cost that is known, if only from below. */
        private static List<SupplyWay.Use> uses(JobMoney.Sides sides) {
            return Stream.of(sides.free(), sides.valued())
                    .flatMap(side -> Stream.concat(side.ways().stream(), side.bounds().stream()))
                    .filter(way -> way.kind().isSaw())
                    .map(SupplyWay::use)
                    .distinct()
                    .sorted()
                    .toList();
        }

        private static List<Choice> choices(
                JobPlan first,
                JobMoney money,
                SupplyWays.Lumber lumber,
                List<OtherSawWork> others,
                List<SupplyWay.Use> uses) {
            List<SupplyChoice> all = money.choices(lumber, first.input().saw().name(), others, sides -> {
                List<SupplyWays> among = new ArrayList<>();
                for (SupplyWay.Use use : uses) {
                    for (int jobs : JOBS) {
                        BoardFeet volume =
                                BoardFeet.usable(jobs * first.usable().value());
                        among.add(sides.free().ofSaws(use, volume));
                        among.add(sides.valued().ofSaws(use, volume));
                    }
                }
                return among;
            });
            List<Choice> choices = new ArrayList<>();
            for (int i = 0; i < all.size(); i += 2) {
                int at = i / 2;
                choices.add(
                        new Choice(uses.get(at / JOBS.size()), JOBS.get(at % JOBS.size()), all.get(i), all.get(i + 1)));
            }
            return List.copyOf(choices);
        }

        private int add(ToDoubleFunction<List<Drawn>> figure) {
            figures.add(figure);
            return figures.size() - 1;
        }

        private Optional<Integer> add(Figure figure, int saw) {
            return known(figure, saw) ? Optional.of(add(drawn -> value(figure, drawn, saw))) : Optional.empty();
        }

        private Optional<Integer> addDifference(Figure figure, int saw) {
            return figure != Figure.RUNNING_FREE
                            && figure != Figure.RUNNING_VALUED
                            && known(figure, 0)
                            && known(figure, saw)
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
    }
}
