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
 * <p>Less is: without the last frame or the last turn, as they stand; the axis or no turn alone, where they are among them; trims
 * from the ends only; no piece over-thick. Of more than {@value #MOST_LISTED} frames or turns the first alone is the only beginning.
 *
 * <p>What is planned within a lesser space is what it would be planned within by itself, so that its choice is the same. Where
 * each kind of less with each other would come to more than {@value #MOST_TOGETHER} spaces, a space is followed by less of one
 * kind only: no piece over-thick, else trims from the ends, else fewer turns.
 */
final class LesserSpaces {

    /** Of longer lists not every beginning is tried: the searches would grow with the square of their count. */
    private static final int MOST_LISTED = 4;

    static final int MOST_TOGETHER = 16;

    private static final SearchSpace.Way AXIS = SearchSpace.Way.of(Frame.Lay.AXIS);
    private static final double NO_TURN = 0;

    private LesserSpaces() {}

    /** The spaces that allow one thing less; none for a space of one frame, one turn, trims from the ends and exact thickness. */
    static List<SearchSpace> of(SearchSpace space) {
        List<List<SearchSpace>> kinds = new ArrayList<>();
        if (space.overThick().isPositive()) {
            kinds.add(List.of(space.withOverThick(Length.ZERO)));
        }
        if (space.startStep().isPositive()) {
            kinds.add(List.of(space.withStartStep(Length.ZERO)));
        }
        kinds.add(less(space.turnsDegrees(), NO_TURN).stream()
                .map(space::withTurns)
                .toList());
        kinds.add(less(space.ways(), AXIS).stream().map(space::withWays).toList());
        kinds.removeIf(List::isEmpty);
        long followed = together(space) > MOST_TOGETHER ? 1 : kinds.size();
        return kinds.stream().limit(followed).flatMap(List::stream).toList();
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

    /** How many spaces there are with each kind of less beside each other. */
    private static int together(SearchSpace space) {
        return (space.overThick().isPositive() ? 2 : 1)
                * (space.startStep().isPositive() ? 2 : 1)
                * lists(space.turnsDegrees(), NO_TURN).size()
                * lists(space.ways(), AXIS).size();
    }

    private static <T> Set<List<T>> lists(List<T> all, T usual) {
        Set<List<T>> lists = new LinkedHashSet<>(List.of(all));
        less(all, usual).forEach(list -> lists.addAll(lists(list, usual)));
        return lists;
    }

    private static <T> List<List<T>> less(List<T> all, T usual) {
        if (all.size() == 1) {
            return List.of();
        }
        List<T> beginning = all.subList(0, all.size() > MOST_LISTED ? 1 : all.size() - 1);
        return all.contains(usual) && !beginning.contains(usual)
                ? List.of(List.of(usual), beginning)
                : List.of(beginning);
    }
}
