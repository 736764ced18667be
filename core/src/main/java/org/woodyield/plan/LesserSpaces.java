package org.woodyield.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.woodyield.measure.Length;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.SearchSpace;

/**
 * The spaces within a space in which a job is planned too. Each log's best pattern is no poorer in a wider space, but the
 * exchange between logs goes by prices and is no proof: with more allowed it may end at less. The choice found with less
 * allowed is therefore a candidate.
 *
 * <p>Less is: one frame fewer or one turn fewer, the last that was named first, down to the axis and no turn where they are
 * among them; of more than {@value #MOST} frames or turns the first alone; trims from the ends only; no piece over-thick.
 */
final class LesserSpaces {

    /** Of longer lists not every beginning is tried: the searches would grow with the square of their count. */
    private static final int MOST = 4;

    private LesserSpaces() {}

    /** The spaces that allow one thing less; none for a space of one frame, one turn, trims from the ends and exact thickness. */
    static List<SearchSpace> of(SearchSpace space) {
        List<SearchSpace> lesser = new ArrayList<>();
        List<Way> ways = ways(space);
        if (ways.size() > 1) {
            lesser.add(with(space, fewer(ways, new Way(Frame.Lay.AXIS, Length.ZERO))));
        }
        if (space.turnsDegrees().size() > 1) {
            lesser.add(space.withTurns(fewer(space.turnsDegrees(), 0.0)));
        }
        if (space.startStep().isPositive()) {
            lesser.add(space.withStartStep(Length.ZERO));
        }
        if (space.overThick().isPositive()) {
            lesser.add(space.withOverThick(Length.ZERO));
        }
        return lesser;
    }

    /** The space and all within it, each after those that allow less. */
    static Set<SearchSpace> within(SearchSpace space) {
        Set<SearchSpace> all = new LinkedHashSet<>();
        for (SearchSpace lesser : of(space)) {
            all.addAll(within(lesser));
        }
        all.add(space);
        return all;
    }

    /** How a log may lie: a lay, of the offset with its lift. */
    private record Way(Frame.Lay lay, Length lift) {}

    private static List<Way> ways(SearchSpace space) {
        List<Way> ways = new ArrayList<>();
        for (Frame.Lay lay : space.lays()) {
            if (lay == Frame.Lay.OFFSET) {
                space.offsets().forEach(lift -> ways.add(new Way(lay, lift)));
            } else {
                ways.add(new Way(lay, Length.ZERO));
            }
        }
        return ways;
    }

    private static SearchSpace with(SearchSpace space, List<Way> ways) {
        List<Length> lifts = ways.stream()
                .filter(way -> way.lay() == Frame.Lay.OFFSET)
                .map(Way::lift)
                .toList();
        return space.withLays(ways.stream().map(Way::lay).distinct().toList())
                .withOffsets(lifts.isEmpty() ? List.of(Length.ZERO) : lifts);
    }

    /** One fewer, in the same order: the last, but the usual one stays to the end. */
    private static <T> List<T> fewer(List<T> all, T usual) {
        T first = all.contains(usual) ? usual : all.get(0);
        if (all.size() > MOST) {
            return List.of(first);
        }
        List<T> fewer = new ArrayList<>(all);
        int last = fewer.size() - 1;
        fewer.remove(last > 0 && fewer.get(last).equals(first) ? last - 1 : last);
        return fewer;
    }
}
