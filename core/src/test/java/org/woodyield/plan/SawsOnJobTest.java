package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.sawing.Saw;
import org.woodyield.source.Sources;
import org.woodyield.work.Bound;
import org.woodyield.work.InputValue;
import org.woodyield.work.Outlook;
import org.woodyield.work.SawDraws;
import org.woodyield.work.SupplyChoice;
import org.woodyield.work.SupplyWay;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

class SawsOnJobTest {

    private static final InputValue WAGE = InputValue.of(15, Sources.get("user"));
    private static final List<Price> PRICES = List.of(new Price(Optional.empty(), Wood.of(Wood.Kind.SOFTWOOD), 1.2));
    private static final JobPlan FIRST = Planner.plan(PlannerTest.job(PRICES));
    private static final JobPlan OTHER = Planner.plan(withSaw(PlannerTest.job(PRICES), "thin saw"));

    private static JobInput withSaw(JobInput job, String name) {
        Saw saw = job.saw();
        return copy(
                job,
                job.currency(),
                job.logs().size(),
                job.pieces().size(),
                new Saw(
                        name,
                        Length.inches(1, 16),
                        saw.widthOfCut(),
                        saw.settingStep(),
                        saw.reference(),
                        saw.leastHeight(),
                        saw.sawingVariation()));
    }

    private static JobInput copy(JobInput job, String currency, int logs, int pieces, Saw saw) {
        return new JobInput(
                job.title(),
                currency,
                job.logs().subList(0, logs),
                job.pieces().subList(0, pieces),
                job.areas(),
                saw,
                job.space(),
                job.work(),
                job.planing(),
                job.undersizePercent(),
                job.yard(),
                job.prices(),
                job.assumptions());
    }

    private static void refused(List<JobPlan> plans, String... words) {
        assertThatThrownBy(() -> new SawsOnJob(plans))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContainingAll(words);
    }

    @Test
    void twoSawsOnTheSameJobAreCompared() {
        SawsOnJob saws = new SawsOnJob(List.of(FIRST, OTHER));
        assertThat(saws.moreUsableBoardFeet(0)).isZero();
        assertThat(saws.moreKerfCubicMetres(1)).isNegative();
        assertThat(saws.prospects().choices()).as("no price of the saw").isEmpty();
    }

    @Test
    void oneSawIsNoComparison() {
        refused(List.of(FIRST), "saws", "1", "two or more", "name another");
        refused(List.of(), "saws", "0", "two or more");
    }

    @Test
    void aNameStandsForOneSaw() {
        refused(List.of(FIRST, FIRST), "saw", FIRST.input().saw().name(), "each name once", "rename");
    }

    @Test
    void otherLogsWantsOrCurrencyAreAnotherJob() {
        JobInput job = OTHER.input();
        Saw saw = job.saw();
        for (JobInput another : List.of(
                copy(job, "EUR", job.logs().size(), job.pieces().size(), saw),
                copy(job, "USD", 2, job.pieces().size(), saw),
                copy(job, "USD", job.logs().size(), 0, saw))) {
            refused(
                    List.of(FIRST, Planner.plan(another)),
                    "thin saw",
                    "the same logs, wants, prices, yard and currency");
        }
    }

    /** The test job with prices of a saw; the wage may have a range, which both saws share. */
    private static JobPlan priced(JobPlan plan, double purchase, InputValue wage) {
        JobInput job = plan.input();
        WorkInputs work = job.work()
                .with(WorkInput.PURCHASE, purchase)
                .with(WorkInput.OTHER_OUTLAY, 0)
                .with(WorkInput.RESALE, 0)
                .with(WorkInput.BAR_OIL_PRICE, 3)
                .with(WorkInput.MIX_OIL_PRICE, 9)
                .with(WorkInput.EDGE_PRICE, 30)
                .with(WorkInput.LOG_PRICE, 0)
                .with(WorkInput.REPAIRS, 0)
                .with(WorkInput.DRYING_PRICE, 0.05)
                .with(WorkInput.PLANING_PRICE, 0.1)
                .with(WorkInput.BY_PRODUCTS, 0)
                .with(WorkInput.WAGE, wage);
        return withWork(job, work);
    }

    private static JobPlan withWork(JobInput job, WorkInputs work) {
        return Planner.plan(new JobInput(
                job.title(),
                job.currency(),
                job.logs(),
                job.pieces(),
                job.areas(),
                job.saw(),
                job.space(),
                work,
                job.planing(),
                job.undersizePercent(),
                job.yard(),
                job.prices(),
                job.assumptions()));
    }

    /** No input but the wage has a range. */
    private static JobPlan fixed(JobPlan plan, double purchase, InputValue wage) {
        JobPlan priced = priced(plan, purchase, wage);
        JobInput job = priced.input();
        WorkInputs work = job.work();
        for (WorkInput input : work.values().keySet()) {
            work = input == WorkInput.WAGE ? work : work.with(input, work.get(input));
        }
        return withWork(job, work);
    }

    /** The choice at a volume; no grade is priced, so there is one use. */
    private static SupplyChoice choice(SawsOnJob saws, int jobs, boolean ownWorkValued) {
        return choice(saws.prospects(), jobs, ownWorkValued);
    }

    private static SupplyChoice choice(SawProspects prospects, int jobs, boolean ownWorkValued) {
        return prospects.choices().stream()
                .filter(choice -> choice.jobs() == jobs)
                .findFirst()
                .orElseThrow()
                .side(ownWorkValued);
    }

    private static int runsForLess(boolean ownWorkValued) {
        SawsOnJob alike = new SawsOnJob(List.of(priced(FIRST, 500, WAGE), priced(OTHER, 500, WAGE)));
        List<SupplyWay> ways = choice(alike, 1, ownWorkValued).ways().ways();
        return ways.get(0).perBoardFoot().compareTo(ways.get(1).perBoardFoot()) < 0 ? 0 : 1;
    }

    /** The saw that runs for less is dear to buy, so that the two change places. */
    private static SawsOnJob changingPlaces(int dear) {
        return new SawsOnJob(
                List.of(priced(FIRST, dear == 0 ? 2000 : 500, WAGE), priced(OTHER, dear == 1 ? 2000 : 500, WAGE)));
    }

    /** One reckoning for both: the ways, their intervals, their share of the draws and their crossings are those of the plan. */
    @Test
    void theSawsStandAsTheyDoInThePlanThatHoldsTheOtherSaw() {
        JobInput job = priced(FIRST, 500, WAGE).input();
        JobInput other = priced(OTHER, 2000, WAGE).input();
        JobPlan.Ways inPlan = Planner.plan(
                        job.withOtherSaw(Optional.of(new JobInput.OtherSaw(other.saw(), other.work()))))
                .ways()
                .orElseThrow();
        SawsOnJob saws = new SawsOnJob(List.of(Planner.plan(job), Planner.plan(other)));
        for (boolean valued : new boolean[] {false, true}) {
            SupplyChoice planned = valued ? inPlan.valued() : inPlan.free();
            SupplyChoice compared = choice(saws, 1, valued);
            assertThat(compared.ways().ways())
                    .hasSize(2)
                    .isEqualTo(planned.ways()
                            .ofSaws(SupplyWay.Use.AS_IT_IS, planned.ways().usable())
                            .ways());
            for (int i = 0; i < 2; i++) {
                int inAll = planned.ways().ways().indexOf(compared.ways().ways().get(i));
                assertThat(interval(compared.costs().get(i)))
                        .isEqualTo(interval(planned.costs().get(inAll)));
            }
            SupplyWays.Crossing pair = compared.ways().crossings().get(0);
            int inAll = planned.ways().crossings().indexOf(pair);
            assertThat(inAll).isNotNegative();
            assertThat(compared.crossings().get(0))
                    .isEqualTo(planned.crossings().get(inAll));
        }
        assertThat(saws.beside(1)).isEqualTo(inPlan.other().orElseThrow());
    }

    private static MonteCarlo.Interval interval(Outlook cost) {
        return cost.drawn().orElseThrow().interval(SawProspects.COVERAGE);
    }

    /** Whichever saw is the first, the other costs as much more or less for this job, for every use of the lumber. */
    @Test
    void theOrderOfTheSawsDoesNotMoveTheirDifference() {
        List<JobPlan> saws = new ArrayList<>();
        for (JobPlan plan : List.of(FIRST, OTHER)) {
            JobInput job = priced(plan, 900, WAGE).input();
            saws.add(withWork(
                    job,
                    job.work()
                            .with(WorkInput.GRADER_VISIT, 100)
                            .with(WorkInput.GRADER_RATE, 0.07)
                            .with(WorkInput.LESSER_PRICE, 0.9)));
        }
        List<JobPlan> turned = List.of(saws.get(1), saws.get(0));
        List<SawProspects.Choice> there = new SawsOnJob(saws).prospects().choices();
        List<SawProspects.Choice> back = new SawsOnJob(turned).prospects().choices();
        assertThat(saws.get(1).usable()).isNotEqualTo(saws.get(0).usable());
        assertThat(there).hasSize(6).hasSameSizeAs(back);
        for (int i = 0; i < there.size(); i += 3) {
            assertThat(there.get(i).jobs()).isEqualTo(1);
            for (boolean valued : new boolean[] {false, true}) {
                double ahead = ahead(there.get(i).side(valued).ways());
                assertThat(ahead).isNotZero();
                assertThat(ahead(back.get(i).side(valued).ways())).isCloseTo(-ahead, within(1e-9));
            }
        }
    }

    private static double ahead(SupplyWays ways) {
        return ways.ways().get(0).cost(ways.usable()).amount()
                - ways.ways().get(1).cost(ways.usable()).amount();
    }

    @Test
    void theRangeOfTheCrossingHoldsIt() {
        for (boolean valued : new boolean[] {false, true}) {
            SupplyChoice choice = choice(changingPlaces(runsForLess(valued)), 1, valued);
            double volume = choice.ways().crossings().get(0).volumes().get(0).value();
            SupplyChoice.Volumes range = choice.crossings().get(0).orElseThrow();
            assertThat(range.least()).isLessThan(volume);
            assertThat(range.greatest().filter(most -> most <= volume)).isEmpty();
        }
    }

    @Test
    void sharesOfTheSawsAddUpAndTheDearSawGainsByVolume() {
        int dear = runsForLess(false);
        SawProspects prospects = changingPlaces(dear).prospects();
        assertThat(prospects.choices()).extracting(SawProspects.Choice::jobs).containsExactly(1, 3, 10);
        double before = 0;
        for (int jobs : new int[] {1, 3, 10}) {
            SupplyChoice choice = choice(prospects, jobs, false);
            double share = choice.cheapestShare(dear).orElseThrow();
            assertThat(share + choice.cheapestShare(1 - dear).orElseThrow()).isCloseTo(1, within(1e-9));
            assertThat(share).isGreaterThanOrEqualTo(before);
            before = share;
        }
    }

    /** A saw that does not reach through the thick logs leaves lumber that has to be bought, and is charged for it. */
    @Test
    void whatANarrowSawCannotSawIsBought() {
        JobInput job = priced(OTHER, 500, WAGE).input();
        Saw saw = job.saw();
        double widest = FIRST.logs().stream()
                .flatMap(log -> log.sawing().stream())
                .flatMap(sawing -> sawing.passes().stream())
                .mapToDouble(pass -> pass.widest().toMetres())
                .max()
                .orElseThrow();
        JobPlan narrow = Planner.plan(job.withSaw(
                new Saw(
                        "narrow saw",
                        saw.kerf(),
                        Length.millimetres(Math.round(widest * 700)),
                        saw.settingStep(),
                        saw.reference(),
                        saw.leastHeight(),
                        saw.sawingVariation()),
                job.work()));
        SawsOnJob saws = new SawsOnJob(List.of(priced(FIRST, 500, WAGE), narrow));
        JobPlan first = saws.plans().get(0);
        JobPlan.OtherSaw beside = saws.beside(1);
        assertThat(beside.bought()).as("board feet that lack").isPositive();
        double lacking = beside.bought() * beside.price().orElseThrow().amount();
        SupplyWay way = choice(saws, 1, false).ways().ways().get(1);
        double running = narrow.cost().orElseThrow().running(false).amount();
        double counted = 0;
        for (Supply supply : narrow.supply()) {
            double usable = narrow.fallDown().stream()
                    .filter(lot -> lot.wantedId().equals(supply.wantedId()))
                    .mapToDouble(lot -> lot.stages().usable().value())
                    .sum();
            counted += supply.sawn() > 0 ? usable * (supply.sawn() - 0.85 * supply.surplus()) / supply.sawn() : 0;
        }
        // All of it is planed; what is beyond the need is finished at its share.
        double finishing = (0.05 + 0.1) * counted;
        assertThat(way.cost(first.usable()).amount())
                .isCloseTo(
                        500 + running + lacking - beside.worth().orElseThrow().amount() + finishing, within(1e-6));
    }

    @Test
    void anErrorThatBothSawsShareCancelsInTheirDifference() {
        InputValue open = InputValue.within(15, 5, 25, Sources.get("user"));
        SawProspects prospects = new SawsOnJob(List.of(fixed(FIRST, 500, open), fixed(OTHER, 500, open))).prospects();
        double own = spread(prospects.of(SawProspects.Figure.SAVING_VALUED, 0));
        double other = spread(prospects.of(SawProspects.Figure.SAVING_VALUED, 1));
        double difference = spread(prospects.beside(SawProspects.Figure.SAVING_VALUED, 1));
        assertThat(difference).isCloseTo(Math.abs(own - other), withinPercentage(1e-6));
        assertThat(prospects
                        .of(SawProspects.Figure.RUNNING_FREE, 0)
                        .orElseThrow()
                        .drawn())
                .as("the wage is not in it")
                .isEmpty();
        assertThat(prospects.beside(SawProspects.Figure.RUNNING_VALUED, 1))
                .as("each is by the board foot of its own lumber")
                .isEmpty();
        SupplyChoice free = choice(prospects, 1, false);
        assertThat(free.trials()).as("no probability without a range").isEmpty();
        assertThat(free.crossings().get(0)).isEmpty();
    }

    private static double spread(Optional<SawDraws.Spread> figure) {
        return figure.orElseThrow().drawn().orElseThrow().result().standardUncertainty();
    }

    @Test
    void whatLacksAPriceHasNoProbability() {
        SawProspects prospects = new SawsOnJob(List.of(FIRST, OTHER)).prospects();
        assertThat(prospects.of(SawProspects.Figure.DAYS, 1).orElseThrow().drawn())
                .isPresent();
        assertThat(prospects.of(SawProspects.Figure.SAVING_VALUED, 1)).isEmpty();
        assertThat(prospects.beside(SawProspects.Figure.SAVING_VALUED, 1)).isEmpty();
        assertThat(prospects.choices()).isEmpty();
    }

    /** Whatever cost a saw lacks, it is not the cheaper, nor has it a share: it might be dearer than is known. */
    @Test
    void aSawThatLacksACostIsNotRanked() {
        JobPlan whole = priced(FIRST, 5000, WAGE);
        JobPlan cheap = priced(OTHER, 10, WAGE);
        for (WorkInput cost : List.of(
                WorkInput.PURCHASE,
                WorkInput.OTHER_OUTLAY,
                WorkInput.FUEL_PRICE,
                WorkInput.BAR_OIL_PRICE,
                WorkInput.MIX_OIL_PRICE,
                WorkInput.EDGE_PRICE,
                WorkInput.LOG_PRICE,
                WorkInput.REPAIRS,
                WorkInput.WAGE)) {
            JobPlan lacking = withWork(cheap.input(), cheap.input().work().without(cost));
            for (List<JobPlan> plans : List.of(List.of(whole, lacking), List.of(lacking, whole))) {
                SawProspects prospects = new SawsOnJob(plans).prospects();
                for (boolean valued : new boolean[] {false, true}) {
                    boolean counts = valued || cost != WorkInput.WAGE;
                    String which = cost.label() + ", own work counted: " + valued;
                    for (SawProspects.Choice choice : prospects.choices()) {
                        SupplyChoice side = choice.side(valued);
                        assertThat(side.ways().ways()).as(which).hasSize(counts ? 1 : 2);
                        assertThat(side.crossings()).as(which).hasSize(counts ? 0 : 1);
                        assertThat(side.trials().isPresent()).as(which).isEqualTo(!counts);
                    }
                    SupplyWays ways = prospects.ways(valued).orElseThrow();
                    assertThat(ways.bounds().size() + ways.leftOut().size())
                            .as(which)
                            .isPositive();
                }
            }
        }
    }

    /** Of three saws the two that have their prices are ranked. */
    @Test
    void aSawThatLacksACostDoesNotKeepTheOthersFromTheirPlaces() {
        JobPlan first = priced(FIRST, 2000, WAGE);
        JobPlan second = priced(OTHER, 500, WAGE);
        JobInput third = withSaw(second.input(), "third saw");
        JobPlan lacking = withWork(third, third.work().without(WorkInput.OTHER_OUTLAY));
        SupplyChoice two = choice(new SawsOnJob(List.of(first, second)), 1, true);
        SupplyChoice three = choice(new SawsOnJob(List.of(first, second, lacking)), 1, true);
        assertThat(three.ways().ways()).isEqualTo(two.ways().ways());
        assertThat(three.ways().bounds()).extracting(SupplyWay::otherSaw).containsExactly("third saw");
        assertThat(three.cheapestShare(0)).isPresent().isEqualTo(two.cheapestShare(0));
    }

    /** A 0 that is written is a price; it ranks as the sum that leaves it out did. */
    @Test
    void aCostOfNothingIsAPrice() {
        JobPlan first = priced(FIRST, 2000, WAGE);
        SawsOnJob saws = new SawsOnJob(List.of(first, priced(OTHER, 500, WAGE)));
        JobPlan lacking = withWork(first.input(), first.input().work().without(WorkInput.OTHER_OUTLAY));
        SupplyWay bound = choice(new SawsOnJob(List.of(lacking, saws.plans().get(1))), 1, true)
                .ways()
                .bounds()
                .get(0);
        SupplyWay exact = choice(saws, 1, true).ways().ways().get(0);
        assertThat(bound.isWhole()).isFalse();
        assertThat(bound.bound()).isEqualTo(Bound.MORE_THAN);
        assertThat(exact.bound()).isEqualTo(Bound.EXACT);
        assertThat(exact.fixed()).isEqualTo(bound.fixed());
        assertThat(exact.perBoardFoot()).isEqualTo(bound.perBoardFoot());
    }
}
