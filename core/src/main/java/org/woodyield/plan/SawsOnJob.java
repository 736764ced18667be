package org.woodyield.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.work.InputValue;
import org.woodyield.work.LogWork;
import org.woodyield.work.WorkInput;

/**
 * One job planned with two saws or more: the same logs, the same wants, the same prices.
 *
 * @param plans one for each saw; the first is the one that the others are compared with
 */
public record SawsOnJob(List<JobPlan> plans) {

    /**
     * Keeps an immutable copy.
     *
     * @throws OutOfDomainException if there are less than two plans, two saws share a name, or the plans are not of the same
     *     logs and wants
     */
    public SawsOnJob {
        plans = List.copyOf(plans);
        if (plans.size() < 2) {
            throw new OutOfDomainException("saws", Integer.toString(plans.size()), "", "two or more", "name another");
        }
        Set<String> names = new HashSet<>();
        for (JobPlan plan : plans) {
            String name = plan.input().saw().name();
            if (!names.add(name)) {
                throw new OutOfDomainException("saw", name, "", "each name once", "rename one of the two");
            }
            JobInput first = plans.get(0).input();
            JobInput other = plan.input();
            if (!other.logs().equals(first.logs())
                    || !other.pieces().equals(first.pieces())
                    || !other.areas().equals(first.areas())
                    || !other.naturalEdges().equals(first.naturalEdges())
                    || !other.currency().equals(first.currency())
                    || !other.prices().equals(first.prices())
                    || !other.planing().equals(first.planing())
                    || !other.yard().equals(first.yard())) {
                throw new OutOfDomainException(
                        "job of " + name,
                        other.title(),
                        "",
                        "the same logs, wants, prices, yard and currency for each saw",
                        "");
            }
        }
    }

    /**
     * What a saw makes of the lumber that the first one makes.
     *
     * @param index of the saw, from 1
     * @return its lumber thing by thing beside that of the first
     */
    public JobPlan.OtherSaw beside(int index) {
        JobPlan plan = plans.get(index);
        return plan.usable().value() > 0
                ? work(plan).told(plan.input().currency())
                : OtherSawWork.unable(plan.input().saw().name(), "nothing is sawn with it");
    }

    /** The work of a saw, and its lumber beside that of the first. */
    private OtherSawWork work(JobPlan plan) {
        return OtherSawWork.of(plan.input(), works(plan), lumber(plan), lumber(plans.get(0)), meanPrice());
    }

    /** What a usable board foot of the first saw costs bought in the mean, where it is known. */
    Optional<Double> meanPrice() {
        JobPlan first = plans.get(0);
        return lumber(first)
                .into(first.input().work())
                .find(WorkInput.LUMBER_PRICE)
                .map(InputValue::value);
    }

    /** The others that saw anything. */
    List<OtherSawWork> others() {
        return plans.stream()
                .skip(1)
                .filter(plan -> plan.usable().value() > 0)
                .map(this::work)
                .toList();
    }

    static LumberWorth lumber(JobPlan plan) {
        return LumberWorth.of(plan.input(), plan.supply(), plan.fallDown());
    }

    static List<LogWork> works(JobPlan plan) {
        List<LogWork> works = new ArrayList<>();
        for (LogPlan log : plan.logs()) {
            log.sawing()
                    .ifPresent(sawing ->
                            works.add(LogWork.of(log.log().id(), log.log().species(), sawing)));
        }
        return works;
    }

    /**
     * How much more usable lumber a saw makes of the same logs than the first one.
     *
     * @param index of the saw, from 0
     * @return board feet, below zero where it makes less
     */
    public double moreUsableBoardFeet(int index) {
        return plans.get(index).usable().value() - plans.get(0).usable().value();
    }

    /**
     * How much more wood goes into kerfs than with the first saw.
     *
     * @param index of the saw, from 0
     * @return cubic metres, below zero where less does
     */
    public double moreKerfCubicMetres(int index) {
        return plans.get(index).balance().kerf().cubicMetres()
                - plans.get(0).balance().kerf().cubicMetres();
    }

    /**
     * What the ranges of the inputs do to the comparison. It draws thousands of times: ask once and keep it.
     *
     * @return figures with their intervals, and how often each saw is the cheapest
     */
    public SawProspects prospects() {
        return SawProspects.of(this);
    }
}
