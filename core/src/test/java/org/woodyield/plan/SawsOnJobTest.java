package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.sawing.Saw;
import org.woodyield.source.Sources;
import org.woodyield.work.Bound;
import org.woodyield.work.InputValue;
import org.woodyield.work.SawDraws;
import org.woodyield.work.SupplyWay;
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
        assertThat(saws.way(0, false)).as("no price of the saw").isEmpty();
        assertThat(saws.crossings(1, false)).isEmpty();
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
            refused(List.of(FIRST, Planner.plan(another)), "thin saw", "the same logs, wants and currency");
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

    private static int runsForLess(boolean ownWorkValued) {
        SawsOnJob alike = new SawsOnJob(List.of(priced(FIRST, 500, WAGE), priced(OTHER, 500, WAGE)));
        return alike.way(0, ownWorkValued)
                                .orElseThrow()
                                .perBoardFoot()
                                .compareTo(alike.way(1, ownWorkValued)
                                        .orElseThrow()
                                        .perBoardFoot())
                        < 0
                ? 0
                : 1;
    }

    /** The saw that runs for less is dear to buy, so that the two change places. */
    private static SawsOnJob changingPlaces(int dear) {
        return new SawsOnJob(
                List.of(priced(FIRST, dear == 0 ? 2000 : 500, WAGE), priced(OTHER, dear == 1 ? 2000 : 500, WAGE)));
    }

    @Test
    void theVolumeAtItsValueIsTheCrossing() {
        for (boolean valued : new boolean[] {false, true}) {
            int dear = runsForLess(valued);
            SawsOnJob saws = changingPlaces(dear);
            SawProspects.PaysFrom pays =
                    saws.prospects().side(valued).paysFrom().get(0);
            assertThat(pays.saw()).as("runs for less").isEqualTo(dear);
            double volume = pays.volume().orElseThrow();
            assertThat(volume)
                    .isCloseTo(saws.crossings(1, valued).orElseThrow().get(0).value(), withinPercentage(1e-9));
            SawProspects.Ends ends = pays.spread().orElseThrow();
            assertThat(ends.always()).as("its outlay is the greater").isZero();
            assertThat(ends.least().orElseThrow()).isLessThan(volume);
            assertThat(ends.greatest().filter(most -> most <= volume)).isEmpty();
        }
    }

    @Test
    void sharesOfTheSawsAddUpAndTheDearSawGainsByVolume() {
        int dear = runsForLess(false);
        SawProspects prospects = changingPlaces(dear).prospects();
        List<SawProspects.AtVolume> cheapest = prospects.side(false).cheapest();
        assertThat(cheapest).extracting(SawProspects.AtVolume::jobs).containsExactly(1, 3, 10);
        double before = 0;
        for (SawProspects.AtVolume at : cheapest) {
            assertThat(at.shares().get(0) + at.shares().get(1)).isCloseTo(1, within(1e-9));
            assertThat(at.shares().get(dear)).isGreaterThanOrEqualTo(before);
            before = at.shares().get(dear);
        }
        List<Double> best = prospects.side(false).best().orElseThrow();
        assertThat(best.get(0) + best.get(1)).isCloseTo(1, within(1e-9));
    }

    @Test
    void anErrorThatBothSawsShareCancelsInTheirDifference() {
        InputValue open = InputValue.within(15, 5, 25, Sources.get("user"));
        SawProspects prospects = new SawsOnJob(List.of(fixed(FIRST, 500, open), fixed(OTHER, 500, open))).prospects();
        double own = spread(prospects.of(SawProspects.Figure.RUNNING_VALUED, 0));
        double other = spread(prospects.of(SawProspects.Figure.RUNNING_VALUED, 1));
        double difference = spread(prospects.beside(SawProspects.Figure.RUNNING_VALUED, 1));
        assertThat(difference).isCloseTo(Math.abs(own - other), withinPercentage(1e-6));
        assertThat(prospects
                        .of(SawProspects.Figure.RUNNING_FREE, 0)
                        .orElseThrow()
                        .drawn())
                .as("the wage is not in it")
                .isEmpty();
        assertThat(prospects.side(false).best())
                .as("no probability without a range")
                .isEmpty();
        assertThat(prospects.side(false).cheapest()).isEmpty();
        assertThat(prospects.side(false).paysFrom().get(0).spread()).isEmpty();
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
        assertThat(prospects.side(true).best()).isEmpty();
        assertThat(prospects.side(true).cheapest()).isEmpty();
        assertThat(prospects.side(true).paysFrom()).isEmpty();
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
                SawsOnJob saws = new SawsOnJob(plans);
                SawProspects prospects = saws.prospects();
                for (boolean valued : new boolean[] {false, true}) {
                    boolean counts = valued || cost != WorkInput.WAGE;
                    String which = cost.label() + ", own work counted: " + valued;
                    assertThat(saws.firstIsCheaperOfLittle(1, valued).isPresent())
                            .as(which)
                            .isEqualTo(!counts);
                    assertThat(saws.crossings(1, valued).isPresent()).as(which).isEqualTo(!counts);
                    SawProspects.Side side = prospects.side(valued);
                    assertThat(side.paysFrom().isEmpty()).as(which).isEqualTo(counts);
                    assertThat(side.cheapest().isEmpty()).as(which).isEqualTo(counts);
                    assertThat(side.best().isEmpty()).as(which).isEqualTo(counts);
                }
            }
        }
    }

    /** A 0 that is written is a price; it ranks as the sum that leaves it out did. */
    @Test
    void aCostOfNothingIsAPrice() {
        JobPlan first = priced(FIRST, 2000, WAGE);
        SawsOnJob saws = new SawsOnJob(List.of(first, priced(OTHER, 500, WAGE)));
        JobPlan lacking = withWork(first.input(), first.input().work().without(WorkInput.OTHER_OUTLAY));
        SupplyWay bound = new SawsOnJob(List.of(lacking, saws.plans().get(1)))
                .way(0, true)
                .orElseThrow();
        SupplyWay exact = saws.way(0, true).orElseThrow();
        assertThat(bound.isWhole()).isFalse();
        assertThat(bound.bound()).isEqualTo(Bound.MORE_THAN);
        assertThat(exact.bound()).isEqualTo(Bound.EXACT);
        assertThat(exact.fixed()).isEqualTo(bound.fixed());
        assertThat(exact.perBoardFoot()).isEqualTo(bound.perBoardFoot());
        assertThat(saws.firstIsCheaperOfLittle(1, true)).isPresent();
    }
}
