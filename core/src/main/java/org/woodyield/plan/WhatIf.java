package org.woodyield.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawingSensitivity;
import org.woodyield.sawing.SawingSensitivity.Change;
import org.woodyield.sawing.SearchSpace;

/**
 * How one log of a plan would be sawn with another kerf, another first face or another diameter, at the prices at which it
 * was sawn; the other logs do not answer to it.
 *
 * @param log its id
 * @param unit what worth is counted in
 * @param sensitivity the log as planned and with each change
 */
public record WhatIf(String log, String unit, SawingSensitivity sensitivity) {

    /**
     * Asks for a log of a plan: a kerf a quarter thinner and a quarter thicker, laid out as the plan lays out its own; the
     * first face a step of the grid higher and lower; the log an inch thicker and thinner.
     *
     * @param plan the plan
     * @param log the id of a log from which something is sawn
     * @return the answers
     * @throws OutOfDomainException if no log has that id, or nothing is sawn from it
     */
    public static WhatIf of(JobPlan plan, String log) {
        LogPlan one = plan.logs().stream()
                .filter(each -> each.log().id().equals(log))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "log",
                        log,
                        "",
                        plan.logs().stream().map(each -> each.log().id()).collect(Collectors.joining(", ")),
                        "name one of these"));
        SawingPlan sawing = one.sawing()
                .orElseThrow(() -> new OutOfDomainException(
                        "log", log, "", "one from which something is sawn", "left whole: " + one.leftWhole()));
        JobInput input = plan.input();
        Saw saw = sawing.saw();
        SearchSpace space = Planner.layoutSpace(input);
        boolean priced = plan.choice().unit().equals(input.currency());
        Function<Saw, PassCost> cost =
                other -> priced ? Planner.passCost(input, one.log().species(), other.kerf()) : PassCost.free();
        return new WhatIf(
                log,
                plan.choice().unit(),
                SawingSensitivity.of(sawing.solid(), saw, sawing.options(), space, cost, changes(input, sawing)));
    }

    private static List<Change> changes(JobInput input, SawingPlan sawing) {
        Length kerf = input.saw().kerf();
        Length quarter = kerf.dividedBy(4, Rounding.HALF_UP);
        Length grid = Planner.layoutSpace(input).grid();
        Length inch = Length.inches(1);
        List<Change> changes = new ArrayList<>();
        changes.add(new Change.Kerf(laidOut(input.saw(), kerf.minus(quarter))));
        changes.add(new Change.Kerf(laidOut(input.saw(), kerf.plus(quarter))));
        Optional<Length> first = sawing.passes().stream().findFirst().map(pass -> pass.faceHeight());
        first.ifPresent(face -> {
            changes.add(new Change.FirstHeight(face.plus(grid)));
            changes.add(new Change.FirstHeight(face.minus(grid)));
        });
        changes.add(new Change.Diameter(inch));
        changes.add(new Change.Diameter(Length.ZERO.minus(inch)));
        return changes;
    }

    private static Length laidOut(Saw saw, Length kerf) {
        return Planner.layoutSaw(saw.withKerf(kerf)).kerf();
    }
}
