package org.woodyield.plan;

import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.FallDown;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;
import org.woodyield.measure.Volume;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.WoodBalance;
import org.woodyield.source.Source;
import org.woodyield.wood.AirDrying;
import org.woodyield.wood.Species;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CashFlow;
import org.woodyield.work.JobCost;
import org.woodyield.work.Outlook;
import org.woodyield.work.SupplyChoice;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.TimeLine;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.working.Working;

/**
 * The plan of a job: how each log is sawn for what is wanted, and what that takes and yields.
 *
 * @param input what it was made from
 * @param greenSizes what to saw green, for each thing wanted in each species that may give it
 * @param logs each log in the order of the input
 * @param supply what is wanted beside what is sawn
 * @param fallDown what is left of each thing wanted, by its wood, sawn, dried, planed and usable
 * @param balance where the wood of the sawn logs goes
 * @param solid the solid of the sawn logs inside bark; equals the balance's sum
 * @param tally board feet sawn, by nominal size and trimmed length
 * @param usable board feet that are left after drying and planing, splits and warp taken off
 * @param choice how the cuts of the logs were chosen
 * @param work time and fuel, by log and in all
 * @param timeLine the work day by day
 * @param drying air-drying times by species and green thickness
 * @param heaviestLog the heaviest log
 * @param heaviestPiece the heaviest piece, green and at its final moisture
 * @param cost what the sawing costs; empty where nothing is sawn
 * @param breakEven sawing against buying; empty where nothing is sawn
 * @param prospects what the ranges of the inputs do to the verdict, own work not counted and counted
 * @param ways the ways to come by the lumber, own work not counted and counted; empty where nothing is sawn
 * @param cashFlow the saw year by year, if it were used so for all the hours of its years
 * @param notes what a reader has to know about the models
 */
public record JobPlan(
        JobInput input,
        List<GreenSize> greenSizes,
        List<LogPlan> logs,
        List<Supply> supply,
        List<Lot> fallDown,
        WoodBalance balance,
        Volume solid,
        BoardFeet tally,
        BoardFeet usable,
        Choice choice,
        WorkEstimate work,
        TimeLine timeLine,
        List<Drying> drying,
        Heavy heaviestLog,
        Optional<Heavy> heaviestPiece,
        Optional<JobCost> cost,
        Optional<BreakEven> breakEven,
        Prospects prospects,
        Optional<Ways> ways,
        Years cashFlow,
        List<Note> notes) {

    /** Board feet so few that they are an error of rounding. */
    private static final double NO_LUMBER = 1e-6;

    /** Keeps immutable copies. */
    public JobPlan {
        greenSizes = List.copyOf(greenSizes);
        logs = List.copyOf(logs);
        supply = List.copyOf(supply);
        fallDown = List.copyOf(fallDown);
        drying = List.copyOf(drying);
        notes = List.copyOf(notes);
    }

    /**
     * What is sawn of one thing wanted in one wood, and what is left of it in the mean.
     *
     * @param wantedId the thing wanted
     * @param species the wood
     * @param unit {@code pieces} or {@code m2}
     * @param sawn how much of it is sawn
     * @param left how much of it is usable in the mean
     * @param tally board feet sawn, by trimmed length
     * @param stages board feet at each stage
     * @param working how the stages came about
     */
    public record Lot(
            String wantedId,
            Species species,
            String unit,
            double sawn,
            double left,
            double tally,
            FallDown.Stages stages,
            Working working) {}

    /**
     * How good the choice of cuts is for the whole list. Each log's pattern is the best for the prices at which it was
     * sawn; the exchange between logs is a search, so the bound says what no choice can exceed.
     *
     * @param unit what worth is counted in: the currency, or board feet where a price is missing
     * @param worth of the chosen cuts, less what their passes cost in the choice
     * @param bound what no choice of patterns of the search space exceeds
     * @param rounds of prices tried
     * @param space the patterns of a log among which the choice was sought
     * @param searches how many searches were made: one of that space, and one of each space within it that allows less and
     *     whose choice was a candidate
     * @param surplusShare what a piece beyond the need is held to be worth, as a share of one that is needed
     * @param uncounted prices that a pass would have cost and that nobody gave, in the order of the inputs: the choice takes
     *     passes to be free of them
     */
    public record Choice(
            String unit,
            double worth,
            double bound,
            int rounds,
            SearchSpace space,
            int searches,
            double surplusShare,
            List<WorkInput> uncounted) {
        /** Keeps an immutable copy. */
        public Choice {
            uncounted = List.copyOf(uncounted);
        }
    }

    /**
     * What the ranges of the inputs of work and money do to the figures of this job; the plan of cuts stays as it is, and all
     * figures share their draws.
     *
     * @param workFree what it saves against buying, own work not counted; empty where a price is missing
     * @param workValued what it saves against buying, own work counted at its wage; empty where a price is missing
     * @param hours on site
     * @param days on site
     * @param fuelLitres fuel
     * @param runningFree running cost of a usable board foot, own work not counted; empty where a price is missing
     * @param runningValued running cost of a usable board foot, own work counted; empty where a price is missing
     * @param worthFree present value of the saw year by year, own work not counted; empty where a price is missing
     * @param worthValued present value of the saw year by year, own work counted; empty where a price is missing
     * @param paidFree {@code 1 / (1 + n)} with the years n until the savings pay the outlay, zero where they never do within its
     *     life, own work not counted; empty where a price is missing
     * @param paidValued the same with own work counted
     */
    public record Prospects(
            Optional<Outlook> workFree,
            Optional<Outlook> workValued,
            Optional<Outlook> hours,
            Optional<Outlook> days,
            Optional<Outlook> fuelLitres,
            Optional<Outlook> runningFree,
            Optional<Outlook> runningValued,
            Optional<Outlook> worthFree,
            Optional<Outlook> worthValued,
            Optional<Outlook> paidFree,
            Optional<Outlook> paidValued) {

        /** Of a job in which nothing is sawn. */
        static Prospects none() {
            Optional<Outlook> none = Optional.empty();
            return new Prospects(none, none, none, none, none, none, none, none, none, none, none);
        }
    }

    /**
     * The ways to come by the lumber, over the ranges of the inputs; both share their draws.
     *
     * @param free own work not counted
     * @param valued own work counted at its wage
     * @param other what another saw makes of the same logs; empty where the job has none
     */
    public record Ways(SupplyChoice free, SupplyChoice valued, Optional<OtherSaw> other) {
        /** With another saw of which nothing is priced. */
        Ways with(OtherSaw saw) {
            return new Ways(free, valued, Optional.of(saw));
        }

        /**
         * The ways at the values of the inputs, own work not counted.
         *
         * @return the ways
         */
        public SupplyWays workFree() {
            return free.ways();
        }

        /**
         * The ways at the values of the inputs, own work counted at its wage.
         *
         * @return the ways
         */
        public SupplyWays workValued() {
            return valued.ways();
        }
    }

    /**
     * Another saw on the same logs.
     *
     * @param name of the saw
     * @param usable its lumber, after drying and planing
     * @param serves that of it which stands in for lumber of this plan, thing by thing
     * @param bought board feet that have to be bought to have as much of everything, those beyond the need at their share
     * @param price of a board foot of these; empty where nothing is bought or a price is missing
     * @param more board feet that it makes more of something, those beyond the need at their share
     * @param worth of these bought; empty where a price is missing
     * @param leftOut why it is not among the ways, in words; empty where it has been planned
     */
    public record OtherSaw(
            String name,
            BoardFeet usable,
            BoardFeet serves,
            double bought,
            Optional<Money> price,
            double more,
            Optional<Money> worth,
            Optional<String> leftOut) {}

    /**
     * The saw year by year.
     *
     * @param workFree own work not counted; empty where a price is missing
     * @param workValued own work counted at its wage; empty where a price is missing
     */
    public record Years(Optional<CashFlow> workFree, Optional<CashFlow> workValued) {}

    /**
     * Something to lift.
     *
     * @param what it is
     * @param greenKilograms weight green
     * @param dryKilograms weight at the final moisture; empty for a log
     */
    public record Heavy(String what, double greenKilograms, Optional<Double> dryKilograms) {}

    /**
     * Air-drying.
     *
     * @param species name of the species
     * @param thickness green thickness, inches
     * @param days range of days to 20 % moisture; empty where no figure is known
     */
    public record Drying(String species, double thickness, Optional<AirDrying.Days> days) {}

    /**
     * A remark on a model or on a value that was taken.
     *
     * @param text a sentence or two
     * @param source what the model or value rests on
     */
    public record Note(String text, Source source) {}

    /**
     * Lumber that is sawn beyond the need.
     *
     * @param usable board feet of it
     * @param share of its price at which it counts
     * @param inFull what a usable board foot of the plan would cost bought, in the mean, if all of it counted in full; empty where
     *     a price is missing
     */
    public record Surplus(BoardFeet usable, double share, Optional<Money> inFull) {}

    /**
     * What is sawn beyond the need.
     *
     * @return it, empty where nothing is
     */
    public Optional<Surplus> surplus() {
        LumberWorth worth = LumberWorth.of(input, supply, fallDown);
        double beyond = worth.beyondNeed();
        return beyond > NO_LUMBER
                ? Optional.of(new Surplus(
                        BoardFeet.usable(beyond),
                        Planner.SURPLUS_SHARE,
                        worth.priceInFull().map(each -> new Money(each, input.currency()))))
                : Optional.empty();
    }

    /**
     * What the usable lumber would cost bought, what is beyond the need at its share of the price, if every price is known.
     *
     * @return the price of buying it
     */
    public Optional<Money> boughtPrice() {
        return breakEven.flatMap(BreakEven::boughtPerBoardFoot).map(each -> each.times(usable.value()));
    }
}
