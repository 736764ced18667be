package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best stack of items from one side of the wood to the other, each one kerf from the next, by dynamic programming over
 * the place of the last face.
 *
 * <p>Item values may be upper bounds. {@link #solve} works out exactly only those items that the best stack uses, and goes
 * on until that stack holds exact items alone: it is then the best of all, since no stack's bound exceeds it.
 *
 * <p>Ties: the lowest first face; then from there downward, stopping before going on, items in their order, the thinnest
 * slab.
 */
final class Stack {

    static final long FORBIDDEN = Long.MAX_VALUE / 4;

    private static final int STOP = -1;

    /** An item in its place. */
    record Item(int kind, int top) {}

    /** Tightens the value of an item. */
    interface Refiner {
        /**
         * The exact value, and notes that it is.
         *
         * @param need a value of no more than this is of no use, and {@link Lattice#NONE} may be returned for it
         */
        long refine(int kind, int top, long need);

        boolean exact(int kind, int top);
    }

    /** No face is wanted first in particular; places begin at zero, and one below the log is no place. */
    private static final int ANYWHERE = Integer.MIN_VALUE;

    private final int count;
    private final int centre;
    private final int kerf;
    private final int grid;
    private final int step;
    private final int slab;
    private final int[] size;
    /** Beside its pass, of the first face. */
    private final long openingCost;

    /** By kind, by index of the upper face. */
    final long[][] value;
    /** By index of the lower side of the kerf. */
    final long[] pass;

    /** By index of a face: the best stack of what lies below it. */
    private final long[] best;

    /** The same where an item begins at the face, or nothing does. */
    private final long[] bestItem;

    /** The best stack below a face, less the pass that makes it. */
    private final long[] sawn;

    private final long[] afterSlab;
    private long[] above = new long[0];
    private int kinds;
    private int opening;
    private int onlyOpening = ANYWHERE;
    private int changed;
    private long bound;

    Stack(Lattice lattice, int count, int centre, int[] size, long openingCost) {
        this.openingCost = openingCost;
        this.count = count;
        this.centre = centre;
        kerf = lattice.kerf;
        grid = lattice.grid;
        step = lattice.step;
        // Over a bed faces stay on the saw's step; riding a face, the slab itself is a whole number of steps.
        slab = lattice.overBed ? (kerf / step + 1) * step : kerf + step;
        this.size = size.clone();
        value = new long[size.length][count];
        pass = new long[count];
        best = new long[count];
        bestItem = new long[count];
        sawn = new long[count];
        afterSlab = new long[count];
        clear();
    }

    void clear() {
        for (long[] each : value) {
            Arrays.fill(each, Lattice.NONE);
        }
        Arrays.fill(pass, 0);
    }

    /**
     * The value of the best stack by the item values as they stand, those below an index swept already. No value and a
     * forbidden pass are amounts so low that no sum with one of them counts.
     */
    long sweep(int from, int useKinds) {
        kinds = useKinds;
        int thinnest = count;
        for (int kind = 0; kind < useKinds; kind++) {
            thinnest = Math.min(thinnest, size[kind] + kerf);
        }
        // No item of a stretch as long as the thinnest ends within the stretch, so each kind runs through it by itself.
        for (int first = from; first < count; first += thinnest) {
            int end = Math.min(first + thinnest, count);
            Arrays.fill(bestItem, first, end, 0);
            for (int kind = 0; kind < useKinds; kind++) {
                int reach = size[kind] + kerf;
                long[] values = value[kind];
                for (int p = Math.max(first, reach); p < end; p++) {
                    bestItem[p] = Math.max(bestItem[p], values[p] + sawn[p - reach]);
                }
            }
            // The last one is carried along by hand: where the step is one, reading it back would hold up every place.
            long before = step == 1 && first > 0 ? afterSlab[first - 1] : Lattice.NONE;
            for (int p = first; p < end; p++) {
                long item = bestItem[p];
                // What follows a slab is an item: two slabs would be one pass too many, and leave the saw's step.
                long slabbed = p >= slab ? Math.max(item, afterSlab[p - slab]) : item;
                best[p] = slabbed;
                sawn[p] = slabbed - pass[p];
                long here = item - pass[p];
                if (step > 1) {
                    before = p >= step ? afterSlab[p - step] : Lattice.NONE;
                }
                before = Math.max(here, before);
                afterSlab[p] = before;
            }
        }
        return open();
    }

    /** Opens at the best first face, of equals at the lowest. */
    private long open() {
        boolean anywhere = onlyOpening == ANYWHERE;
        int first = anywhere ? centre % grid : Math.max(onlyOpening, 0);
        int end = anywhere ? count : Math.min(onlyOpening + 1, count);
        int every = grid;
        long[] reached = sawn;
        // The value first and its place then: on the way up nearly every face is better than the one before.
        long top = Lattice.NONE;
        for (int p = first; p < end; p += every) {
            top = Math.max(top, reached[p]);
        }
        int place = first;
        while (place < end && reached[place] != top) {
            place += every;
        }
        // A forbidden pass takes off so much that it is the best only where there is no other.
        boolean none = place >= end || pass[place] == FORBIDDEN;
        opening = none ? -1 : place;
        return none ? Lattice.NONE : top - openingCost;
    }

    /**
     * Works out, after a sweep, the best of what stands above each face, for {@link #through}.
     */
    void sweepAbove() {
        above = new long[count];
        long[] slabbed = new long[count];
        for (int p = count - 1; p >= 0; p--) {
            long reached = Math.floorMod(p - centre, grid) == 0 ? -openingCost : Lattice.NONE;
            for (int kind = 0; kind < kinds; kind++) {
                int top = p + kerf + size[kind];
                if (top < count) {
                    reached = Math.max(reached, above[top] + value[kind][top]);
                }
            }
            long face = Math.max(Lattice.NONE, reached - pass[p]);
            long further = p + slab < count ? slabbed[p + slab] : Lattice.NONE;
            above[p] = Math.max(face, further - pass[p]);
            above[p] = Math.max(above[p], Lattice.NONE);
            slabbed[p] = p + step < count ? Math.max(face, slabbed[p + step]) : face;
        }
    }

    /** What no stack with an item exceeds, by the item values at the last sweeps. */
    long through(int kind, int top) {
        int q = top - size[kind] - kerf;
        return q < 0 ? Lattice.NONE : above[top] + value[kind][top] + sawn[q];
    }

    /**
     * The value of the best stack.
     *
     * @param kinds only the first so many kinds of items are used
     * @param incumbent stop as soon as it is known that nothing exceeds this; the bound is then returned
     */
    long solve(Refiner refiner, int kinds, long incumbent) {
        changed = 0;
        while (true) {
            bound = sweep(changed, kinds);
            if (bound <= incumbent) {
                return bound;
            }
            changed = count;
            for (Item item : path()) {
                if (!refiner.exact(item.kind(), item.top())) {
                    long before = value[item.kind()][item.top()];
                    put(item.kind(), item.top(), refiner.refine(item.kind(), item.top(), before - (bound - incumbent)));
                }
            }
            if (changed == count) {
                return bound;
            }
        }
    }

    /** Sets the value of an item while {@link #solve} runs. */
    void put(int kind, int top, long exact) {
        value[kind][top] = exact;
        changed = Math.min(changed, top);
    }

    /** No stack is worth more, by the item values at the last sweep of {@link #solve}. */
    long bound() {
        return bound;
    }

    /** The first face stands there or nowhere. */
    void openOnlyAt(int face) {
        onlyOpening = face;
    }

    int opening() {
        return opening;
    }

    /** The items of the best stack from the first face down. */
    List<Item> path() {
        List<Item> path = new ArrayList<>();
        int p = opening;
        boolean afterSlabOnly = false;
        while (p >= 0) {
            long wanted = afterSlabOnly ? bestItem[p] : best[p];
            int kind = wanted > 0 && bestItem[p] == wanted ? kindAt(p) : STOP;
            if (kind != STOP) {
                path.add(new Item(kind, p));
                p = p - size[kind] - kerf;
                afterSlabOnly = false;
            } else if (wanted > 0) {
                p -= slab;
                while (bestItem[p] - pass[p] != afterSlab[p]) {
                    p -= step;
                }
                afterSlabOnly = true;
            } else {
                break;
            }
        }
        return path;
    }

    /** The first kind of item that reaches the best at a face. */
    private int kindAt(int p) {
        for (int kind = 0; kind < kinds; kind++) {
            int q = p - size[kind] - kerf;
            if (q >= 0 && value[kind][p] + sawn[q] == bestItem[p]) {
                return kind;
            }
        }
        return STOP;
    }
}
