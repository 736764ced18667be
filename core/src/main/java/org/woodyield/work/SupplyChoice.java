package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.measure.OutOfDomainException;

/**
 * The choice between the ways to come by the lumber of a job, over the ranges of the inputs. One draw of the inputs prices every
 * way, so that an error which they share cancels between them.
 *
 * @param ways at the values of the inputs
 * @param costs what each way costs for the job, in the order of the ways
 * @param leads how much less each way costs than the cheapest of the others, negative where another is cheaper, in that order;
 *     empty where there are less than two ways. Of two that cost the same the first has the least lead there is
 * @param crossings where each two ways change places over the draws, in the order of {@link SupplyWays#crossings}; empty where
 *     nothing with a range moves the place, or where it is not one volume with the same way below it in every draw
 */
public record SupplyChoice(
        SupplyWays ways, List<Outlook> costs, List<Outlook> leads, List<Optional<Volumes>> crossings) {

    private static final double COVERAGE = 0.95;
    /** Stands for what is not one volume; a volume is drawn as its reciprocal, zero where the two never change places. */
    private static final double SEVERAL = -1;

    /**
     * An interval of volumes, with as many draws below as above it.
     *
     * @param least usable board feet
     * @param greatest usable board feet; empty where the interval reaches draws in which the two never change places
     * @param coverage share of the draws in it
     */
    public record Volumes(double least, Optional<Double> greatest, double coverage) {}

    /** What one draw gives. */
    private record Drawn(List<Double> costs, List<Double> perVolume) {}

    /** Keeps immutable copies. */
    public SupplyChoice {
        costs = List.copyOf(costs);
        leads = List.copyOf(leads);
        crossings = List.copyOf(crossings);
    }

    /**
     * Looks at one choice or more over the ranges of the inputs, with the same draws for all.
     *
     * @param draws values and ranges of each saw that a way saws with
     * @param saws the names of these saws
     * @param model gives the ways of each choice from the inputs of all saws; as many choices, and at least the ways that it
     *     gives at the values
     * @param seed of the draws
     * @param trials how many draws, 100 or more
     * @return the choices, in the order of the model
     * @throws OutOfDomainException as {@link Outlook#of}
     */
    public static List<SupplyChoice> ofAll(
            SawDraws draws,
            List<String> saws,
            Function<List<WorkInputs>, List<SupplyWays>> model,
            long seed,
            int trials) {
        List<SupplyWays> given = model.apply(draws.inputs());
        List<List<SupplyWays.Crossing>> pairs =
                given.stream().map(SupplyWays::crossings).toList();
        List<ToDoubleFunction<List<Drawn>>> figures = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            int choice = i;
            int count = given.get(i).ways().size();
            for (int j = 0; j < count; j++) {
                int way = j;
                figures.add(drawn -> drawn.get(choice).costs().get(way));
            }
            for (int j = 0; j < count && count > 1; j++) {
                int way = j;
                figures.add(drawn -> lead(drawn.get(choice).costs(), way));
            }
            for (int j = 0; j < pairs.get(i).size(); j++) {
                int pair = j;
                figures.add(drawn -> drawn.get(choice).perVolume().get(pair));
            }
        }
        List<Set<String>> names = given.stream()
                .map(side -> side.ways().stream().map(SupplyWay::name).collect(Collectors.toSet()))
                .toList();
        Function<List<WorkInputs>, List<Drawn>> drawing = some -> {
            List<SupplyWays> all = model.apply(some);
            List<Drawn> drawn = new ArrayList<>();
            for (int i = 0; i < given.size(); i++) {
                drawn.add(drawn(given.get(i).usable(), names.get(i), pairs.get(i), all.get(i)));
            }
            return drawn;
        };
        List<Outlook> outlooks = draws.spreads((saw, some) -> some, drawing, figures, seed, trials).stream()
                .map(spread -> outlook(draws, saws, spread))
                .toList();
        List<SupplyChoice> choices = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < given.size(); i++) {
            int count = given.get(i).ways().size();
            int leads = from + count;
            int volumes = count > 1 ? leads + count : leads;
            int end = volumes + pairs.get(i).size();
            choices.add(new SupplyChoice(
                    given.get(i),
                    outlooks.subList(from, leads),
                    outlooks.subList(leads, volumes),
                    outlooks.subList(volumes, end).stream()
                            .map(SupplyChoice::volumes)
                            .toList()));
            from = end;
        }
        return List.copyOf(choices);
    }

    private static Outlook outlook(SawDraws draws, List<String> saws, SawDraws.Spread spread) {
        List<Outlook.Mover> movers = new ArrayList<>();
        for (SawDraws.Mover mover : spread.movers()) {
            SawDraws.Range range = mover.range();
            movers.add(new Outlook.Mover(
                    range.input(),
                    range.saws().size() == saws.size()
                            ? ""
                            : range.saws().stream().map(saws::get).collect(Collectors.joining(", ")),
                    draws.inputs().get(range.saws().get(0)).required(range.input()),
                    mover.lower(),
                    mover.upper()));
        }
        return new Outlook(spread.value(), spread.drawn(), movers);
    }

    private static double lead(List<Double> costs, int way) {
        double lead = Double.POSITIVE_INFINITY;
        for (int other = 0; other < costs.size(); other++) {
            if (other != way) {
                double gap = Outlook.difference(costs.get(other), costs.get(way));
                // The first of equals is the cheapest, as without draws.
                lead = Math.min(lead, gap == 0 && way < other ? Double.MIN_VALUE : gap);
            }
        }
        return lead;
    }

    /** The ways of a draw that stand among those at the values too. */
    private static Drawn drawn(BoardFeet usable, Set<String> names, List<SupplyWays.Crossing> pairs, SupplyWays some) {
        SupplyWays same = new SupplyWays(
                usable,
                some.ways().stream().filter(way -> names.contains(way.name())).toList(),
                List.of(),
                List.of());
        List<Double> costs =
                same.ways().stream().map(way -> way.cost(usable).amount()).toList();
        List<SupplyWays.Crossing> crossings = same.crossings();
        List<Double> perVolume = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            SupplyWays.Crossing crossing = crossings.get(i);
            boolean alike = crossing.volumes().size() <= 1
                    && crossing.one().name().equals(pairs.get(i).one().name());
            double reciprocal = crossing.volumes().isEmpty()
                    ? 0
                    : 1 / crossing.volumes().get(0).value();
            perVolume.add(alike ? reciprocal : SEVERAL);
        }
        return new Drawn(costs, perVolume);
    }

    private static Optional<Volumes> volumes(Outlook perVolume) {
        return perVolume
                .drawn()
                .filter(drawn -> perVolume.value() >= 0 && drawn.shareAbove(SEVERAL / 2) == 1)
                .map(drawn -> drawn.interval(COVERAGE))
                .filter(interval -> interval.greatest() > 0)
                .map(interval -> new Volumes(
                        1 / interval.greatest(),
                        interval.least() > 0 ? Optional.of(1 / interval.least()) : Optional.empty(),
                        COVERAGE));
    }

    /**
     * How many draws were made.
     *
     * @return the count; empty where no input that moves a lead has a range, and then there is no probability
     */
    public Optional<Integer> trials() {
        return leads.stream()
                .flatMap(lead -> lead.drawn().stream())
                .map(MonteCarlo::trials)
                .findFirst();
    }

    /**
     * How often a way is the cheapest for the job.
     *
     * @param index of the way, from 0
     * @return share of the draws; empty where no input that moves a lead has a range
     */
    public Optional<Double> cheapestShare(int index) {
        Outlook lead = leads.isEmpty() ? costs.get(index) : leads.get(index);
        double unmoved = lead.value() > 0 ? 1 : 0;
        return trials().map(any -> lead.probabilityAbove(0).orElse(unmoved));
    }

    /**
     * The place of the way that is the cheapest in most draws, which need not be the one at the values: where ranges lie to one
     * side of them, another may lead.
     *
     * @return index from 0, the first of equals; empty where there is no probability
     */
    public Optional<Integer> leader() {
        Optional<Integer> leader = Optional.empty();
        double most = -1;
        for (int i = 0; i < leads.size(); i++) {
            Optional<Double> share = cheapestShare(i);
            if (share.isPresent() && share.get() > most) {
                most = share.get();
                leader = Optional.of(i);
            }
        }
        return leader;
    }

    /**
     * The place of the way that is the cheapest at the values of the inputs.
     *
     * @return index from 0, the first of equals; empty where there are less than two ways
     */
    public Optional<Integer> cheapest() {
        return leads.isEmpty() ? Optional.empty() : Optional.of(ways.cheapestIndex(ways.usable()));
    }
}
