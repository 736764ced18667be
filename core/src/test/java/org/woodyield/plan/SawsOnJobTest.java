package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.sawing.Saw;

class SawsOnJobTest {

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
}
