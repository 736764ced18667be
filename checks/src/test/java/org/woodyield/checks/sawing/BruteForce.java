package org.woodyield.checks.sawing;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.woodyield.measure.Length;

/**
 * The best pattern by listing every pattern of the stated space, one after the other, without bound, table or short cut. Only
 * what an item is worth in its place is kept, as it recurs. It shares no code with the search.
 */
final class BruteForce {

    /** The best of a problem: worth less cost in millionths, the heights of its level passes (of the one that comes first by the rule for ties), and how many are as good. */
    record Best(long value, List<Length> heights, long equals) {}

    private record Item(boolean cant, int size, int bottom) {}

    private final StatedSpace space;
    private final Map<Item, Long> values = new HashMap<>();

    private long best;
    private long equals;
    private List<Integer> bestFaces = List.of();

    private BruteForce(StatedSpace space) {
        this.space = space;
    }

    /** The best row of strips of a flitch, its edges paid; clips are the sawn faces of its cant. */
    private long row(int thickness, int low, boolean upright, int clip0, int clip1) {
        long one = row(thickness, low, upright, clip0, clip1, -space.reach, space.reach);
        // Where rot runs through the flitch, a row on either side of it is a choice more.
        Optional<int[]> rot = space.rot(thickness, low, upright);
        if (rot.isEmpty()) {
            return one;
        }
        int first = rot.get()[0];
        int beyond = Math.max(rot.get()[1], first + 2 * space.kerf);
        long left = row(thickness, low, upright, clip0, clip1, -space.reach, Math.min(first, space.reach));
        long right = row(thickness, low, upright, clip0, clip1, Math.max(beyond, -space.reach), space.reach);
        return left > 0 && right > 0 ? Math.max(one, left + right) : one;
    }

    /** The best single row between two places. */
    private long row(int thickness, int low, boolean upright, int clip0, int clip1, int from, int to) {
        long edge = space.edge(thickness);
        long[] most = {Long.MIN_VALUE};
        for (int x = Math.max(from, clip0); x <= Math.min(to, clip1); x++) {
            boolean sawnSide = x == clip0;
            strips(thickness, low, upright, clip1, to, x, sawnSide ? 0 : -edge, edge, sawnSide, most);
        }
        return most[0];
    }

    private void strips(
            int thickness,
            int low,
            boolean upright,
            int clip1,
            int to,
            int x,
            long soFar,
            long edge,
            boolean sawnSide,
            long[] most) {
        for (StatedSpace.Size size : space.sizes) {
            int end = x + size.width();
            if (size.thickness() != thickness || end > Math.min(clip1, to)) {
                continue;
            }
            long worth = space.strip(size, x, low, upright);
            if (worth < 0) {
                continue;
            }
            long value = soFar + worth - (end == clip1 ? 0 : edge);
            // The saw rides a sawn side if the row has one; else the guide leads the first edge.
            most[0] = Math.max(most[0], value - (sawnSide || end == clip1 ? 0 : space.guide()));
            strips(thickness, low, upright, clip1, to, end + space.kerf, value, edge, sawnSide, most);
        }
    }

    private long item(boolean cant, int size, int bottom) {
        Item item = new Item(cant, size, bottom);
        Long known = values.get(item);
        if (known == null) {
            known = cant
                    ? cant(bottom, bottom + size)
                    : Math.max(
                            row(size, bottom, false, Integer.MIN_VALUE / 2, Integer.MAX_VALUE / 2),
                            space.withBarkEdges(size, bottom));
            values.put(item, known);
        }
        return known;
    }

    /** The best stack of flitches in a cant, its passes and edges paid. */
    private long cant(int bottom, int top) {
        Map<Integer, Long> passes = new HashMap<>();
        Map<Item, Long> flitches = new HashMap<>();
        long most = Long.MIN_VALUE;
        for (int x = -space.reach / space.grid * space.grid; x <= space.reach; x += space.grid) {
            long pass = passes.computeIfAbsent(x, at -> space.cantPass(at, bottom, top));
            if (pass >= 0) {
                most = Math.max(
                        most, -pass - space.openingOfCant() + stackInCant(x, false, bottom, top, passes, flitches));
            }
        }
        return most;
    }

    private long stackInCant(
            int face, boolean afterSlab, int bottom, int top, Map<Integer, Long> passes, Map<Item, Long> flitches) {
        long most = afterSlab ? Long.MIN_VALUE / 2 : 0;
        for (int thickness : space.thicknesses) {
            int low = face - thickness;
            if (low - space.kerf < -space.reach) {
                continue;
            }
            long row = flitches.computeIfAbsent(
                    new Item(false, thickness, low), at -> row(thickness, low, true, bottom, top));
            long pass = passes.computeIfAbsent(low - space.kerf, at -> space.cantPass(at, bottom, top));
            if (row > 0 && pass >= 0) {
                most = Math.max(most, row - pass + stackInCant(low - space.kerf, false, bottom, top, passes, flitches));
            }
        }
        for (int next = face - space.leastSlab; !afterSlab && next >= -space.reach; next -= space.step) {
            long pass = passes.computeIfAbsent(next, at -> space.cantPass(at, bottom, top));
            if (pass >= 0) {
                most = Math.max(most, -pass + stackInCant(next, true, bottom, top, passes, flitches));
            }
        }
        return most;
    }

    /** The best of all frames; no space.heights if nothing is worth its passes. */
    static Best best(Problem problem) {
        Best best = new Best(0, List.of(), 0);
        for (StatedSpace space : problem.frames()) {
            BruteForce one = new BruteForce(space);
            one.list();
            if (one.best > best.value()) {
                best = new Best(one.best, one.heights(), one.equals);
            } else if (one.best == best.value() && one.best > 0) {
                best = new Best(best.value(), best.heights(), best.equals() + one.equals);
            }
        }
        return best;
    }

    private List<Length> heights() {
        return bestFaces.stream()
                .map(face -> Length.nanometres(face * space.unit))
                .toList();
    }

    private void list() {
        int[] faces = new int[2 * space.reach + 4];
        for (int p = -space.reach / space.grid * space.grid; p <= space.reach; p += space.grid) {
            long pass = space.livePass(p);
            if (pass >= 0) {
                faces[0] = p;
                stack(faces, 1, -pass - space.openingOfLog(), false);
            }
        }
    }

    /** Lists what can lie below the last face, in the order in which ties are broken. */
    private void stack(int[] faces, int count, long soFar, boolean afterSlab) {
        int face = faces[count - 1];
        if (!afterSlab) {
            if (soFar > best) {
                best = soFar;
                equals = 0;
                bestFaces = Arrays.stream(faces, 0, count).boxed().toList();
            }
            equals += soFar == best ? 1 : 0;
        }
        for (int kind = 0; kind < space.thicknesses.size() + space.heights.size(); kind++) {
            boolean cant = kind >= space.thicknesses.size();
            int size = cant ? space.heights.get(kind - space.thicknesses.size()) : space.thicknesses.get(kind);
            int next = face - size - space.kerf;
            if (next < -space.reach) {
                continue;
            }
            long pass = space.livePass(next);
            if (pass < 0) {
                continue;
            }
            long value = item(cant, size, face - size);
            if (value > 0) {
                faces[count] = next;
                stack(faces, count + 1, soFar + value - pass, false);
            }
        }
        for (int next = face - space.leastSlab; !afterSlab && next >= -space.reach; next -= space.step) {
            long pass = space.livePass(next);
            if (pass >= 0) {
                faces[count] = next;
                stack(faces, count + 1, soFar - pass, true);
            }
        }
    }
}
