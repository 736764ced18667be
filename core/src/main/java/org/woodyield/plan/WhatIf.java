package org.woodyield.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.UndersizeZ;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawingSensitivity;
import org.woodyield.sawing.SawingSensitivity.Change;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.wood.Species;

/**
 * How one log of a plan would be sawn with another kerf, another first face or another diameter, or for one size
 * more, at the prices at which it was sawn; the other logs do not answer to it.
 *
 * @param log its id
 * @param unit what worth is counted in
 * @param sensitivity the log as planned and with each change; its worth is the measure by which the cuts of the log were
 *     chosen, at prices of the search, and no money
 * @param bought what the lumber of each outcome would cost bought, as planned first and then in the order of the changes;
 *     empty where a price of the job is missing
 */
public record WhatIf(String log, String unit, SawingSensitivity sensitivity, List<Double> bought) {

    /** Keeps an immutable copy. */
    public WhatIf {
        bought = List.copyOf(bought);
    }

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
        return of(plan, log, Optional.empty());
    }

    /**
     * Asks the same, and for one size more.
     *
     * @param plan the plan
     * @param log the id of a log from which something is sawn
     * @param more a size that is wanted beside the list, as often as the log gives it and each time at its full price, or at
     *     its board feet where the plan counts them; its id stands in the answer
     * @return the answers
     * @throws OutOfDomainException as {@link #of(JobPlan, String)}; or if the size is longer than the log, has another wood,
     *     has the id of something that is wanted, is thinner than the kerf, or has no price though the plan counts money
     */
    public static WhatIf of(JobPlan plan, String log, Product more) {
        return of(plan, log, Optional.of(more));
    }

    /**
     * Refuses what no plan of a job could answer, so that nobody waits for a plan first.
     *
     * @param input the job
     * @param log the id of a log
     * @param more a size that would be wanted beside the list, if one is named
     * @throws OutOfDomainException as {@link #of(JobPlan, String, Product)}, but for a log from which nothing is sawn
     */
    public static void requireAnswerable(JobInput input, String log, Optional<Product> more) {
        Log one = input.logs().stream()
                .filter(each -> each.id().equals(log))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "log",
                        log,
                        "",
                        input.logs().stream().map(Log::id).collect(Collectors.joining(", ")),
                        "name one of these"));
        more.ifPresent(size -> requireOf(one, size, input));
    }

    private static WhatIf of(JobPlan plan, String log, Optional<Product> more) {
        requireAnswerable(plan.input(), log, more);
        LogPlan one = plan.logs().stream()
                .filter(each -> each.log().id().equals(log))
                .findFirst()
                .orElseThrow();
        SawingPlan sawing = one.sawing()
                .orElseThrow(() -> new OutOfDomainException(
                        "log", log, "", "one from which something is sawn", "left whole: " + one.leftWhole()));
        JobInput input = plan.input();
        Saw saw = sawing.saw();
        SearchSpace space = one.space();
        boolean priced = plan.choice().unit().equals(input.currency());
        Function<Saw, PassCost> cost =
                other -> priced ? Planner.passCost(input, one.log().species(), other.kerf()) : PassCost.free();
        List<Change> changes = changes(input, sawing);
        more.ifPresent(size -> changes.add(new Change.OneMoreSize(option(size, one, sawing, input, priced))));
        SawingSensitivity sensitivity =
                SawingSensitivity.of(sawing.solid(), saw, sawing.options(), space, cost, changes);
        List<Double> bought = new ArrayList<>();
        if (priced) {
            Map<String, Function<SawnPiece, Double>> prices =
                    prices(plan, one.log().species(), more);
            bought.add(bought(sensitivity.base(), prices));
            sensitivity.changed().forEach(outcome -> bought.add(bought(outcome, prices)));
        }
        return new WhatIf(log, plan.choice().unit(), sensitivity, bought);
    }

    private static double bought(SawingSensitivity.Outcome outcome, Map<String, Function<SawnPiece, Double>> prices) {
        double sum = 0;
        for (SawnPiece piece : outcome.plan().map(SawingPlan::pieces).orElse(List.of())) {
            sum += prices.getOrDefault(piece.optionId(), none -> 0.0).apply(piece);
        }
        return sum;
    }

    /** By what is wanted, what a piece of it in one wood would cost bought. */
    private static Map<String, Function<SawnPiece, Double>> prices(
            JobPlan plan, Species species, Optional<Product> more) {
        JobInput input = plan.input();
        Map<String, Function<SawnPiece, Double>> prices = new HashMap<>();
        for (Item item : Planner.items(input)) {
            for (GreenSize green : plan.greenSizes()) {
                if (green.wantedId().equals(item.id()) && green.species().equals(species)) {
                    double each = Planner.worth(input, item, true);
                    prices.put(item.id(), piece -> item.amount(piece, green) * each);
                }
            }
        }
        more.ifPresent(size -> {
            double each = Item.Pieces.of(size, input.yard().fallDown()).feetPerUnit()
                    * input.price(size.size(), species).orElseThrow().perBoardFoot();
            prices.put(size.id(), piece -> each);
        });
        return prices;
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

    private static void requireOf(Log log, Product more, JobInput input) {
        Species species = log.species();
        if (!more.wood().accepts(species)) {
            throw refused(
                    "wood of the size more", more.wood().words(), species.commonName(), "ask for it of another log");
        }
        Length sawn = input.yard().fallDown().of(more.surface()).lengthToSaw(more.length());
        if (sawn.compareTo(log.length()) > 0) {
            throw refused(
                    "length of the size more",
                    more.length().toString(),
                    "up to the length of log " + log.id() + ", " + log.length()
                            + ", less what is trimmed from both ends",
                    "shorten it, or name a longer log");
        }
        double diagonal = more.finished().diagonalMillimetres();
        double widest = log.longestDiagonal(sawn).toMillimetres();
        if (diagonal > widest) {
            throw refused(
                    "size more",
                    more.size().words() + ", " + Math.round(diagonal) + " mm from corner to corner",
                    "up to " + (long) widest + " mm in this length of log " + log.id(),
                    "choose a lesser size or length, or name a thicker log");
        }
        if (Planner.items(input).stream().anyMatch(item -> item.id().equals(more.id()))) {
            throw refused("name of the size more", more.id(), "a name that nothing wanted has", "choose another");
        }
        if (more.size().thickness().compareTo(input.saw().kerf()) < 0) {
            throw refused(
                    "thickness of the size more",
                    more.size().thickness().toString(),
                    "the kerf or more, " + input.saw().kerf(),
                    "ask for a thicker one");
        }
        if (Planner.isPriced(input) && input.price(more.size(), species).isEmpty()) {
            throw refused(
                    "size more",
                    more.size().words() + " in " + species.commonName(),
                    "a size with a price",
                    "add a row for it to the prices, or one for any size");
        }
    }

    /** The size as the planner would see it if it stood on the list. */
    private static PieceOption option(Product more, LogPlan log, SawingPlan sawing, JobInput input, boolean priced) {
        Species species = log.log().species();
        double perBoardFoot =
                priced ? input.price(more.size(), species).orElseThrow().perBoardFoot() : 1;
        Item.Pieces pieces = Item.Pieces.of(more, input.yard().fallDown());
        GreenSize green = pieces.greenSize(species, input, sawing.saw(), UndersizeZ.exact(input.undersizePercent()));
        return pieces.option(green, input.saw().settingStep(), pieces.feetPerUnit() * perBoardFoot);
    }

    private static OutOfDomainException refused(String parameter, String value, String limits, String remedy) {
        return new OutOfDomainException(parameter, value, "", limits, remedy);
    }

    private static Length laidOut(Saw saw, Length kerf) {
        return Planner.layoutSaw(saw.withKerf(kerf)).kerf();
    }
}
