package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

/**
 * The patterns among which the best one is sought. A plan is optimal within its space and says so in {@link #words()}.
 *
 * <p>Every pattern is a stack of items from the top of the log to the bottom, each one kerf from the next: flitches, and
 * if wanted cants. A flitch is edged to a row of strips, each one kerf from the next, each trimmed by itself. A cant is
 * as high as a wanted piece is wide; it is turned a quarter and sawn as a stack of flitches again, of which those as wide
 * as the cant need no edging. Where more than a kerf is left between two items, the wood between them is a slab with a pass
 * of its own. An item is used only if it is worth more than the passes inside it.
 *
 * <p>A saw that rides the face before is led by the guide on the first face of the log and of each cant, and on the first edge of
 * a row that has no sawn side of its cant; laying it is part of the cost ({@link PassCost#guide}). So are turning and clamping of
 * the log and of each cant ({@link PassCost#turning}), and what a log costs before anything is sawn ({@link PassCost#loading}).
 *
 * <p>No pass through the log or a cant is wider, over the bark, than the saw cuts, or lies lower over bed or dogs than it can.
 * A flitch to be edged must not be thicker than the saw cuts wide; its edge passes have no least height, since a flitch can
 * be raised on a spacer.
 *
 * <p>No piece touches heart rot: along its own trim it lies left or right of all the rot between its faces. A flitch in
 * which there is rot gives one row of strips, or one on either side of all its rot; the second begins no nearer than two
 * kerfs to where the rot begins.
 *
 * @param turnsDegrees turns of the log that are tried, at least one
 * @param lays frames that are tried, at least one; where {@link Frame.Lay#OFFSET} is among them once for each offset, it stands
 *     for them in their order, else each time for all
 * @param offsets lifts of the large end, each of which is tried for {@link Frame.Lay#OFFSET}, at least one; otherwise not used
 * @param cants whether cants are tried as items
 * @param grid positions of the first face are whole multiples of this from the axis (over a bed, rounded up to the saw's
 *     step); a face after a slab stands a whole number of saw steps on
 * @param startStep trimmed pieces may start at whole multiples of this from the small end, and so as to end at the large
 *     end; zero for the two ends only
 * @param overThick how much thicker than its size a piece may be sawn to save a pass, in steps of the saw; zero for none
 * @param mostCantsOpened how many cants are worked out at most, over all turns and frames; where that stops the search, the
 *     best pattern found is given with a bound
 * @param firstFace the only height above the axis at which the first face may stand, a whole multiple of the grid; empty for
 *     any on the grid
 */
public record SearchSpace(
        List<Double> turnsDegrees,
        List<Frame.Lay> lays,
        List<Length> offsets,
        boolean cants,
        Length grid,
        Length startStep,
        Length overThick,
        long mostCantsOpened,
        Optional<Length> firstFace) {

    /**
     * A way in which a log may lie.
     *
     * @param lay which line of it is parallel to the saw's travel
     * @param lift of the large end for {@link Frame.Lay#OFFSET}, below zero for a lowering; otherwise zero
     */
    public record Way(Frame.Lay lay, Length lift) {
        /**
         * Refuses a lift of another lay.
         *
         * @throws OutOfDomainException if a lay has a lift that is not its own
         */
        public Way {
            if (lay != Frame.Lay.OFFSET && !lift.equals(Length.ZERO)) {
                throw new OutOfDomainException(
                        "lift",
                        lift.toString(),
                        "",
                        "0 for a log that lies " + lay.words(),
                        "take the offset for a lift");
            }
        }

        /**
         * A lay without a lift.
         *
         * @param lay the lay
         * @return the way
         */
        public static Way of(Frame.Lay lay) {
            return new Way(lay, Length.ZERO);
        }

        private String words() {
            if (lay != Frame.Lay.OFFSET) {
                return lay.words();
            }
            return lift.compareTo(Length.ZERO) < 0
                    ? "large end lowered by " + Length.ZERO.minus(lift)
                    : "large end lifted by " + lift;
        }
    }

    /** Every cant that the proof asks for is worked out. */
    public static final long NO_LIMIT = Long.MAX_VALUE;

    private static final Domain TURN = Domain.of("turn", "degrees", -360, 360);

    /**
     * Refuses an empty space and keeps immutable copies.
     *
     * @throws OutOfDomainException if there is no turn, frame or offset, the grid is not above zero or wider than 25.4 mm, or
     *     a length is below zero
     */
    public SearchSpace {
        turnsDegrees = List.copyOf(turnsDegrees);
        lays = List.copyOf(lays);
        offsets = List.copyOf(offsets);
        turnsDegrees.forEach(TURN::require);
        if (turnsDegrees.isEmpty() || lays.isEmpty() || offsets.isEmpty()) {
            throw new OutOfDomainException(
                    "search space", "empty", "", "one turn, one frame and one offset or more", "");
        }
        if (!grid.isPositive() || grid.compareTo(Length.inches(1)) > 0) {
            throw new OutOfDomainException("grid", grid.toString(), "", "above 0, up to 1 in", "1/16 in serves well");
        }
        if (startStep.compareTo(Length.ZERO) < 0 || overThick.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("search space", "a length below zero", "", "0 or more", "");
        }
        if (mostCantsOpened < 0) {
            throw new OutOfDomainException("cants opened at most", Long.toString(mostCantsOpened), "", "0 or more", "");
        }
        if (firstFace
                .map(face -> !face.roundedTo(grid, Rounding.DOWN).equals(face))
                .orElse(false)) {
            throw new OutOfDomainException(
                    "height of the first face",
                    firstFace.get().toString(),
                    "",
                    "whole multiples of the grid, " + grid,
                    "round the height, or take a finer grid");
        }
    }

    /**
     * A space whose first face may stand anywhere on the grid.
     *
     * @param turnsDegrees turns of the log that are tried, at least one
     * @param lays frames that are tried, at least one
     * @param offsets lifts of the large end for {@link Frame.Lay#OFFSET}, at least one; otherwise not used
     * @param cants whether cants are tried as items
     * @param grid positions of the first face
     * @param startStep starts of trimmed pieces
     * @param overThick how much thicker than its size a piece may be sawn
     * @param mostCantsOpened how many cants are worked out at most
     */
    public SearchSpace(
            List<Double> turnsDegrees,
            List<Frame.Lay> lays,
            List<Length> offsets,
            boolean cants,
            Length grid,
            Length startStep,
            Length overThick,
            long mostCantsOpened) {
        this(turnsDegrees, lays, offsets, cants, grid, startStep, overThick, mostCantsOpened, Optional.empty());
    }

    /**
     * One turn (none), parallel to the axis, live and cants, a grid of 1/16 in, trims from either end, no piece over-thick.
     *
     * @return the space
     */
    public static SearchSpace standard() {
        return new SearchSpace(
                List.of(0.0),
                List.of(Frame.Lay.AXIS),
                List.of(Length.ZERO),
                true,
                Length.inches(1, 16),
                Length.ZERO,
                Length.ZERO,
                NO_LIMIT);
    }

    /**
     * The same space with other turns.
     *
     * @param degrees at least one
     * @return a new space
     */
    public SearchSpace withTurns(List<Double> degrees) {
        return new SearchSpace(degrees, lays, offsets, cants, grid, startStep, overThick, mostCantsOpened, firstFace);
    }

    /**
     * The same space with other frames.
     *
     * @param others at least one
     * @return a new space
     */
    public SearchSpace withLays(List<Frame.Lay> others) {
        return new SearchSpace(
                turnsDegrees, others, offsets, cants, grid, startStep, overThick, mostCantsOpened, firstFace);
    }

    /**
     * The ways in which a log may lie, in the order in which they are tried.
     *
     * @return at least one
     */
    public List<Way> ways() {
        boolean inTheirOrder = Collections.frequency(lays, Frame.Lay.OFFSET) == offsets.size();
        List<Way> ways = new ArrayList<>();
        Iterator<Length> lifts = offsets.iterator();
        for (Frame.Lay lay : lays) {
            if (lay != Frame.Lay.OFFSET) {
                ways.add(Way.of(lay));
            } else if (inTheirOrder) {
                ways.add(new Way(lay, lifts.next()));
            } else {
                offsets.forEach(lift -> ways.add(new Way(lay, lift)));
            }
        }
        return List.copyOf(ways);
    }

    /**
     * The same space with other ways in which a log may lie, tried in this order.
     *
     * @param others at least one
     * @return a new space
     * @throws OutOfDomainException if there is none
     */
    public SearchSpace withWays(List<Way> others) {
        List<Length> lifts = others.stream()
                .filter(way -> way.lay() == Frame.Lay.OFFSET)
                .map(Way::lift)
                .toList();
        return new SearchSpace(
                turnsDegrees,
                others.stream().map(Way::lay).toList(),
                lifts.isEmpty() ? List.of(Length.ZERO) : lifts,
                cants,
                grid,
                startStep,
                overThick,
                mostCantsOpened,
                firstFace);
    }

    /**
     * The same space with a lift of the large end for the offset frame.
     *
     * @param lift of the large end, below zero for a lowering
     * @return a new space
     */
    public SearchSpace withOffset(Length lift) {
        return withOffsets(List.of(lift));
    }

    /**
     * The same space with lifts of the large end for the offset frame, each of which is tried.
     *
     * @param lifts of the large end, below zero for a lowering; at least one
     * @return a new space
     */
    public SearchSpace withOffsets(List<Length> lifts) {
        return new SearchSpace(
                turnsDegrees, lays, lifts, cants, grid, startStep, overThick, mostCantsOpened, firstFace);
    }

    /**
     * The same space with or without cants.
     *
     * @param tried whether cants are tried
     * @return a new space
     */
    public SearchSpace withCants(boolean tried) {
        return new SearchSpace(
                turnsDegrees, lays, offsets, tried, grid, startStep, overThick, mostCantsOpened, firstFace);
    }

    /**
     * The same space on another grid.
     *
     * @param step of the first face
     * @return a new space
     */
    public SearchSpace withGrid(Length step) {
        return new SearchSpace(
                turnsDegrees, lays, offsets, cants, step, startStep, overThick, mostCantsOpened, firstFace);
    }

    /**
     * The same space with other starts of trimmed pieces.
     *
     * @param step zero for the two ends only
     * @return a new space
     */
    public SearchSpace withStartStep(Length step) {
        return new SearchSpace(turnsDegrees, lays, offsets, cants, grid, step, overThick, mostCantsOpened, firstFace);
    }

    /**
     * The same space with pieces that may be over-thick.
     *
     * @param most how much at most
     * @return a new space
     */
    public SearchSpace withOverThick(Length most) {
        return new SearchSpace(turnsDegrees, lays, offsets, cants, grid, startStep, most, mostCantsOpened, firstFace);
    }

    /**
     * The same space, of which at most so many cants are worked out.
     *
     * @param most 0 or more, {@link #NO_LIMIT} for all
     * @return a new space
     */
    public SearchSpace withMostCantsOpened(long most) {
        return new SearchSpace(turnsDegrees, lays, offsets, cants, grid, startStep, overThick, most, firstFace);
    }

    /**
     * The same space with the first face at one height only.
     *
     * @param height above the axis at mid-length, a whole multiple of the grid
     * @return a new space
     * @throws OutOfDomainException if it is off the grid
     */
    public SearchSpace withFirstFace(Length height) {
        return new SearchSpace(
                turnsDegrees, lays, offsets, cants, grid, startStep, overThick, mostCantsOpened, Optional.of(height));
    }

    /** The frames in words. */
    String frames() {
        return ways().stream().map(Way::words).collect(Collectors.joining("; "));
    }

    /**
     * The space in words, shown with each result.
     *
     * @return one sentence
     */
    public String words() {
        String turns = turnsDegrees.stream()
                .map(t -> t == Math.rint(t) ? Long.toString(t.longValue()) : Double.toString(t))
                .collect(Collectors.joining(", "));
        return (cants ? "Live sawing, and cants as items of the live order" : "Live sawing")
                + "; turns tried: " + turns + " degrees; frames: " + frames()
                + firstFace
                        .map(face -> "; first face at " + face + " from the axis")
                        .orElse("; first face on a grid of " + grid + " from the axis")
                + ", a face after a slab a whole number of saw steps on"
                + "; strips of a flitch one kerf apart, each trimmed by itself, starting "
                + (startStep.isPositive()
                        ? "at multiples of " + startStep + " from the small end or "
                        : "at the small end or ")
                + "so as to end at the large end; pieces "
                + (overThick.isPositive() ? "up to " + overThick + " over-thick." : "never over-thick on purpose.")
                + (mostCantsOpened == NO_LIMIT ? "" : " At most " + mostCantsOpened + " cants are worked out.");
    }
}
