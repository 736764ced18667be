package org.woodyield.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.NaturalEdge;
import org.woodyield.lumber.Product;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.wood.Cupping;
import org.woodyield.wood.LumberStack;
import org.woodyield.wood.Species;
import org.woodyield.wood.Stacking;

/**
 * How what a plan saws is dried in its yard: a stack for each size and wood, and how the sizes cup if they are flat-sawn. What is
 * finished green is neither stacked nor cupped.
 *
 * @param piles the stacks, in the order in which their first board is sawn
 * @param cups the sizes that are sawn, in the order of the green sizes, each at every distance from the pith that is asked
 * @param leftOut what has no figure, and why, a sentence each
 */
public record YardPlan(List<Pile> piles, List<Cup> cups, List<String> leftOut) {

    private static final Length SIXTEENTH = Length.inches(1, 16);

    /** Keeps immutable copies. */
    public YardPlan {
        piles = List.copyOf(piles);
        cups = List.copyOf(cups);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A stack of boards of one size.
     *
     * @param wantedId the thing wanted
     * @param species the wood
     * @param meanWidth whether the width is the mean of boards of random width, to the nearest sixteenth of an inch
     * @param stack the stack, boards as long as they are sawn
     * @param dryPercent the moisture to which they are dried
     */
    public record Pile(String wantedId, Species species, boolean meanWidth, LumberStack stack, double dryPercent) {}

    /**
     * A flat-sawn board of a size that is wanted.
     *
     * @param wantedId the thing wanted
     * @param species the wood
     * @param board its end
     * @param dryPercent the moisture to which it is dried
     */
    public record Cup(String wantedId, Species species, Cupping board, double dryPercent) {}

    /** Boards that lie in one stack. */
    private record Lot(String wantedId, Species species, Length thickness, Length length) {}

    /** A wood and what is sawn from it. */
    private record Sawn(String wantedId, Species species) {}

    /**
     * The stacks and the cups of a plan, as far as its yard asks for them.
     *
     * @param plan a plan
     * @return both, each possibly empty
     */
    public static YardPlan of(JobPlan plan) {
        List<String> leftOut = new ArrayList<>();
        List<Pile> piles = plan.input()
                .yard()
                .stacking()
                .map(stacking -> piles(plan, stacking, leftOut))
                .orElse(List.of());
        Set<Sawn> sawn = sawn(plan);
        List<Cup> cups = cups(plan, sawn, leftOut);
        DryingYard yard = plan.input().yard();
        boolean asked = yard.stacking().isPresent() || !yard.pithDistances().isEmpty();
        for (NaturalEdge board : plan.input().naturalEdges()) {
            if (asked && sawn.stream().anyMatch(one -> one.wantedId().equals(board.id()))) {
                leftOut.add(
                        "Stack and cup of " + board.id() + ": left out; boards with natural edges have no one width.");
            }
        }
        return new YardPlan(piles, cups, leftOut);
    }

    private static Map<String, Double> dryMoistures(JobInput input) {
        Map<String, Double> moistures = new LinkedHashMap<>();
        Stream.concat(
                        input.pieces().stream()
                                .filter(piece -> piece.surface() != Product.Surface.DRESSED_GREEN)
                                .map(piece -> Map.entry(piece.id(), piece.moisturePercent())),
                        input.areas().stream()
                                .filter(area -> area.surface() != Product.Surface.DRESSED_GREEN)
                                .map(area -> Map.entry(area.id(), area.moisturePercent())))
                .forEach(entry -> moistures.put(entry.getKey(), entry.getValue()));
        return moistures;
    }

    private static List<Pile> piles(JobPlan plan, Stacking stacking, List<String> leftOut) {
        Map<String, Double> moistures = dryMoistures(plan.input());
        List<String> random = plan.input().areas().stream().map(CoverArea::id).toList();
        Map<Lot, List<Length>> widths = new LinkedHashMap<>();
        for (LogPlan log : plan.logs()) {
            for (SawnPiece piece : log.sawing().map(sawing -> sawing.pieces()).orElse(List.of())) {
                if (moistures.containsKey(piece.optionId())) {
                    Lot lot = new Lot(piece.optionId(), log.log().species(), piece.thickness(), piece.length());
                    widths.computeIfAbsent(lot, key -> new ArrayList<>()).add(piece.width());
                }
            }
        }
        List<Pile> piles = new ArrayList<>();
        widths.forEach((lot, all) -> {
            boolean mean = random.contains(lot.wantedId());
            Length sum = all.stream().reduce(Length.ZERO, Length::plus);
            Length width = mean
                    ? sum.dividedBy(all.size(), Rounding.HALF_UP).roundedTo(SIXTEENTH, Rounding.HALF_UP)
                    : all.get(0);
            try {
                piles.add(new Pile(
                        lot.wantedId(),
                        lot.species(),
                        mean,
                        stacking.of(all.size(), lot.thickness(), width, lot.length()),
                        moistures.getOrDefault(lot.wantedId(), 0.0)));
            } catch (OutOfDomainException e) {
                leftOut.add("Stack of " + lot.wantedId() + ": left out; " + e.getMessage() + ".");
            }
        });
        return piles;
    }

    private static List<Cup> cups(JobPlan plan, Set<Sawn> sawn, List<String> leftOut) {
        Map<String, Double> moistures = dryMoistures(plan.input());
        List<Length> distances = plan.input().yard().pithDistances();
        List<Cup> cups = new ArrayList<>();
        for (GreenSize size : plan.greenSizes()) {
            Optional<Double> moisture = Optional.ofNullable(moistures.get(size.wantedId()));
            if (moisture.isEmpty() || distances.isEmpty()) {
                continue;
            }
            String what = "Cup of " + size.wantedId() + " in " + size.species().commonName() + ": left out; ";
            if (!sawn.contains(new Sawn(size.wantedId(), size.species()))) {
                leftOut.add(what + "no log of this wood is sawn into it.");
                continue;
            }
            Length thickest = plan.input().logs().stream()
                    .filter(log -> log.species().equals(size.species()))
                    .map(log -> log.largeEndMean())
                    .max(Length::compareTo)
                    .orElse(Length.ZERO);
            for (Length distance : distances) {
                if (distance.times(2).compareTo(thickest) > 0) {
                    leftOut.add(what + "no log of its wood has a board " + distance
                            + " from its pith; the thickest measures " + thickest + ".");
                    continue;
                }
                try {
                    Cupping board = Cupping.of(
                            size.species(), moisture.get(), size.widthToSaw(), size.thicknessToSaw(), 0, distance);
                    cups.add(new Cup(size.wantedId(), size.species(), board, moisture.get()));
                } catch (OutOfDomainException e) {
                    leftOut.add(what + e.getMessage() + ".");
                }
            }
        }
        return cups;
    }

    private static Set<Sawn> sawn(JobPlan plan) {
        Set<Sawn> sawn = new HashSet<>();
        for (LogPlan log : plan.logs()) {
            log.sawing()
                    .ifPresent(sawing -> sawing.pieces()
                            .forEach(piece -> sawn.add(
                                    new Sawn(piece.optionId(), log.log().species()))));
        }
        return sawn;
    }
}
