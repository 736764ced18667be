package org.woodyield.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.work.SupplyWay;

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
                    || !other.currency().equals(first.currency())) {
                throw new OutOfDomainException(
                        "job of " + name, other.title(), "", "the same logs, wants and currency for each saw", "");
            }
        }
    }

    /**
     * What lumber costs with a saw by the volume, its outlay among it.
     *
     * @param index of the saw, from 0
     * @param ownWorkValued whether own hours count at the wage
     * @return the way, of which only a lower bound is known where other outlay has no price; empty where nothing is sawn, or the
     *     price of the saw or a running cost is not known
     */
    public Optional<SupplyWay> way(int index, boolean ownWorkValued) {
        JobPlan plan = plans.get(index);
        return plan.breakEven()
                .flatMap(money -> SupplyWay.ofSaw(plan.input().saw().name(), money, ownWorkValued));
    }

    private Optional<SupplyWay> whole(int index, boolean ownWorkValued) {
        return way(index, ownWorkValued).filter(SupplyWay::isWhole);
    }

    /**
     * Which of a saw and the first one is the cheaper of small volumes.
     *
     * @param index of the saw, from 1
     * @param ownWorkValued whether own hours count at the wage
     * @return true where it is the first; empty where one lacks the price of a cost, for what lacks it may be dearer than is known
     */
    public Optional<Boolean> firstIsCheaperOfLittle(int index, boolean ownWorkValued) {
        return crossings(index, ownWorkValued).map(at -> {
            BoardFeet little = BoardFeet.usable(at.isEmpty() ? 1 : at.get(0).value() / 2);
            Money first = whole(0, ownWorkValued).orElseThrow().cost(little);
            return first.compareTo(whole(index, ownWorkValued).orElseThrow().cost(little)) <= 0;
        });
    }

    /**
     * The volumes at which a saw and the first one change places.
     *
     * @param index of the saw, from 1
     * @param ownWorkValued whether own hours count at the wage
     * @return volumes of usable lumber, rising, none where one is dearer throughout; empty where one lacks the price of a cost
     */
    public Optional<List<BoardFeet>> crossings(int index, boolean ownWorkValued) {
        return whole(0, ownWorkValued)
                .flatMap(first -> whole(index, ownWorkValued).map(first::crossings));
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
        return SawProspects.of(plans);
    }
}
