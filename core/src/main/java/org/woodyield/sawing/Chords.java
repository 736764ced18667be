package org.woodyield.sawing;

import java.util.Arrays;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * The room at every face of the lattice: for each trim the widest stretch of the face that lies in the wood along the
 * whole trim, rounded inward to the lattice. Positions are indices; the axis has index {@link #centre}.
 */
final class Chords {

    static final int EMPTY = 1 << 28;
    private static final int MOST_POSITIONS = 60_000;

    /** A trim: index into the lattice's lengths, start and end along the log. */
    record Trim(int length, Length start, Length end) {}

    final int centre;
    final int count;
    final Trim[] trims;
    /** By trim, by position: first and last index inside. */
    final int[][] levelFrom;

    final int[][] levelTo;
    final int[][] uprightFrom;
    final int[][] uprightTo;
    /** Level and upright rooms are then the same arrays. */
    final boolean alikeBothWays;

    /** Upright rooms on the left are then the mirror image of those on the right. */
    final boolean mirroredUpright;

    final Optional<RotShadow> rot;
    /** Those too that are never needed for a straight-edged piece. */
    final Trim[] allTrims;

    final Optional<RotShadow> rotOfAll;

    Chords(Lie lie, Lattice lattice, SearchSpace space, Length logLength) {
        Trim[] all = trims(lattice, space, logLength);
        TreeSet<Double> cuts = new TreeSet<>();
        double whole = lie.solid().lengthMetres();
        for (int i = 0; i < lie.solid().stationCount(); i++) {
            cuts.add(lie.solid().station(i).zMetres());
        }
        for (Trim trim : all) {
            cuts.add(Math.min(trim.start().toMetres(), whole));
            cuts.add(Math.min(trim.end().toMetres(), whole));
        }
        Lie.Plane[] planes = cuts.stream().map(lie::inside).toArray(Lie.Plane[]::new);
        double reach = 0;
        for (Lie.Plane p : planes) {
            reach = Math.max(reach, Math.abs(p.cu) + Math.sqrt(p.suu));
            reach = Math.max(reach, Math.abs(p.cv) + Math.sqrt(p.svv));
        }
        double half = reach * 1e9 / lattice.unitNanometres;
        if (!(half < MOST_POSITIONS)) {
            throw new OutOfDomainException(
                    "common step of kerf, setting step, grid and sizes",
                    Length.nanometres(lattice.unitNanometres).toString(),
                    "",
                    "at most " + 2 * MOST_POSITIONS + " steps across the log",
                    "give the kerf and the grid as multiples of 1/64 in or of 0.5 mm");
        }
        centre = (int) half + lattice.kerf + lattice.step + 2;
        count = 2 * centre + 1;
        int[][][] rooms = new int[4][][];
        alikeBothWays = Arrays.stream(planes).allMatch(Lie.Plane::alikeBothWays);
        // Steps of a bound reach from one place to the next, so that they have no image among themselves.
        mirroredUpright = !lattice.anywhere && Arrays.stream(planes).allMatch(Lie.Plane::mirroredUpright);
        fill(lie, planes, lattice, all, rooms);
        Optional<RotShadow> shadow = RotShadow.of(lie, lattice, all, centre, count);
        int[] kept = IntStream.range(0, all.length)
                .filter(t -> IntStream.range(0, all.length).noneMatch(other -> better(all, rooms, shadow, other, t)))
                .toArray();
        trims = new Trim[kept.length];
        int[][][] few = new int[4][kept.length][];
        for (int i = 0; i < kept.length; i++) {
            trims[i] = all[kept[i]];
            for (int side = 0; side < 4; side++) {
                few[side][i] = rooms[side][kept[i]];
            }
        }
        levelFrom = few[0];
        levelTo = few[1];
        uprightFrom = few[2];
        uprightTo = few[3];
        allTrims = all;
        rotOfAll = shadow;
        rot = shadow.isEmpty() ? shadow : RotShadow.of(lie, lattice, trims, centre, count);
    }

    private Chords(int centre, Trim[] trims, int[][][] rooms) {
        this.centre = centre;
        this.count = 2 * centre + 1;
        this.trims = trims;
        levelFrom = rooms[0];
        levelTo = rooms[1];
        uprightFrom = rooms[2];
        uprightTo = rooms[3];
        alikeBothWays = false;
        mirroredUpright = false;
        rot = Optional.empty();
        allTrims = trims;
        rotOfAll = Optional.empty();
    }

    /** The same places with each trim twice, the second time after all others; whoever asks finds rooms for himself. */
    Chords withTrimsTwice() {
        Trim[] twice = Arrays.copyOf(trims, 2 * trims.length);
        System.arraycopy(trims, 0, twice, trims.length, trims.length);
        return new Chords(centre, twice, new int[4][0][]);
    }

    /** Whether a trim of the same length has no less room anywhere and no more rot, so that the other is never needed; of equals the first. */
    private boolean better(Trim[] all, int[][][] rooms, Optional<RotShadow> shadow, int one, int other) {
        if (one == other || all[one].length() != all[other].length()) {
            return false;
        }
        boolean same = true;
        for (int side = 0; side < (alikeBothWays ? 2 : 4); side++) {
            int[] a = rooms[side][one];
            int[] b = rooms[side][other];
            int sign = side % 2 == 0 ? 1 : -1;
            for (int i = 0; i < a.length; i++) {
                if (sign * a[i] > sign * b[i]) {
                    return false;
                }
                same &= a[i] == b[i];
            }
        }
        return (!same || one < other)
                && shadow.map(rot -> rot.clearer(one, other)).orElse(true);
    }

    private static Trim[] trims(Lattice lattice, SearchSpace space, Length logLength) {
        TreeSet<Length> starts = new TreeSet<>();
        java.util.List<Trim> all = new java.util.ArrayList<>();
        for (int i = 0; i < lattice.lengths.size(); i++) {
            Length length = lattice.lengths.get(i);
            Length last = logLength.minus(length);
            starts.clear();
            starts.add(Length.ZERO);
            starts.add(last);
            if (space.startStep().isPositive()) {
                for (Length at = space.startStep(); at.compareTo(last) < 0; at = at.plus(space.startStep())) {
                    starts.add(at);
                }
            }
            for (Length start : starts) {
                all.add(new Trim(i, start, start.plus(length)));
            }
        }
        return all.toArray(Trim[]::new);
    }

    private void fill(Lie lie, Lie.Plane[] planes, Lattice lattice, Trim[] all, int[][][] rooms) {
        int[][] between = new int[all.length][];
        double whole = planes[planes.length - 1].z;
        boolean[] station = stations(lie, planes);
        for (int t = 0; t < all.length; t++) {
            double start = Math.min(all[t].start().toMetres(), whole);
            double end = Math.min(all[t].end().toMetres(), whole);
            between[t] = IntStream.range(0, planes.length)
                    .filter(p -> planes[p].z == start
                            || planes[p].z == end
                            || (station[p] && planes[p].z > start && planes[p].z < end))
                    .toArray();
        }
        boolean mirroredLevel = !lattice.anywhere && Arrays.stream(planes).allMatch(Lie.Plane::mirroredLevel);
        rooms[0] = new int[all.length][count];
        rooms[1] = new int[all.length][count];
        fill(planes, lattice, false, mirroredLevel, between, rooms[0], rooms[1]);
        if (alikeBothWays) {
            rooms[2] = rooms[0];
            rooms[3] = rooms[1];
        } else {
            rooms[2] = new int[all.length][count];
            rooms[3] = new int[all.length][count];
            fill(planes, lattice, true, mirroredUpright, between, rooms[2], rooms[3]);
        }
    }

    /** Between two stations the log is convex, so that a trim has its least room at its ends or at a station. */
    private static boolean[] stations(Lie lie, Lie.Plane[] planes) {
        boolean[] station = new boolean[planes.length];
        for (int p = 0, s = 0; p < planes.length && s < lie.solid().stationCount(); p++) {
            if (planes[p].z == lie.solid().station(s).zMetres()) {
                station[p] = true;
                s++;
            }
        }
        return station;
    }

    private void fill(
            Lie.Plane[] planes,
            Lattice lattice,
            boolean upright,
            boolean mirrored,
            int[][] between,
            int[][] into,
            int[][] out) {
        double unit = lattice.unitNanometres / 1e9;
        double[] from = new double[planes.length];
        double[] to = new double[planes.length];
        for (int i = 0; i < (mirrored ? centre + 1 : count); i++) {
            double at = (i - centre) * (double) lattice.unitNanometres / 1e9;
            for (int p = 0; p < planes.length; p++) {
                Lie.Plane plane = planes[p];
                if (lattice.anywhere) {
                    double low = at - lattice.margin * unit;
                    double high = at + (1 + lattice.margin) * unit;
                    from[p] = upright ? plane.lowest(low, high) : plane.leftmost(low, high);
                    to[p] = upright ? plane.highest(low, high) : plane.rightmost(low, high);
                    continue;
                }
                double h = upright ? plane.halfUpright(at) : plane.halfLevel(at);
                double m = upright ? plane.midUpright(at) : plane.midLevel(at);
                from[p] = h < 0 ? Double.POSITIVE_INFINITY : m - h;
                to[p] = h < 0 ? Double.NEGATIVE_INFINITY : m + h;
            }
            for (int t = 0; t < into.length; t++) {
                double a = Double.NEGATIVE_INFINITY;
                double b = Double.POSITIVE_INFINITY;
                for (int p : between[t]) {
                    a = Math.max(a, from[p]);
                    b = Math.min(b, to[p]);
                }
                if (a <= b && lattice.anywhere) {
                    // A row of strips that stands between two steps is moved to the lower one.
                    into[t][i] = centre + (int) Math.floor(a / unit + 1e-9);
                    out[t][i] = centre + (int) Math.floor(b / unit + 1e-9);
                } else if (a <= b) {
                    into[t][i] = centre + (int) Math.ceil(a / unit);
                    out[t][i] = centre + (int) Math.floor(b / unit);
                } else {
                    into[t][i] = EMPTY;
                    out[t][i] = -EMPTY;
                }
            }
        }
        for (int i = centre + 1; mirrored && i < count; i++) {
            for (int t = 0; t < into.length; t++) {
                into[t][i] = into[t][2 * centre - i];
                out[t][i] = out[t][2 * centre - i];
            }
        }
    }
}
