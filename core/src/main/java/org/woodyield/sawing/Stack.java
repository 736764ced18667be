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
    private static final int SLAB = -2;

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

    private final int count;
    private final int centre;
    private final int kerf;
    private final int grid;
    private final int step;
    private final int slab;
    private final int[] size;
    /** By kind, by index of the upper face. */
    final long[][] value;
    /** By index of the lower side of the kerf. */
    final long[] pass;

    private final long[] best;
    private final int[] choice;
    private final int[] itemChoice;
    private final long[] afterSlab;
    private final int[] slabTo;
    private int opening;
    private int changed;

    Stack(Lattice lattice, int count, int centre, int[] size) {
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
        choice = new int[count];
        itemChoice = new int[count];
        afterSlab = new long[count];
        slabTo = new int[count];
        clear();
    }

    void clear() {
        for (long[] each : value) {
            Arrays.fill(each, Lattice.NONE);
        }
        Arrays.fill(pass, 0);
    }

    /** The value of the best stack by the item values as they stand, those below an index swept already. */
    long sweep(int from, int kinds) {
        for (int p = from; p < count; p++) {
            long top = 0;
            int how = STOP;
            for (int kind = 0; kind < kinds; kind++) {
                long item = value[kind][p];
                int q = p - size[kind] - kerf;
                if (item == Lattice.NONE || q < 0 || pass[q] == FORBIDDEN) {
                    continue;
                }
                long total = item - pass[q] + best[q];
                if (total > top) {
                    top = total;
                    how = kind;
                }
            }
            // What follows a slab is an item: two slabs would be one pass too many, and leave the saw's step.
            long here = pass[p] == FORBIDDEN ? Lattice.NONE : top - pass[p];
            itemChoice[p] = how;
            if (p >= slab && afterSlab[p - slab] > top) {
                top = afterSlab[p - slab];
                how = SLAB;
            }
            best[p] = top;
            choice[p] = how;
            boolean further = p >= step && afterSlab[p - step] > here;
            afterSlab[p] = further ? afterSlab[p - step] : here;
            slabTo[p] = further ? slabTo[p - step] : p;
        }
        long top = Lattice.NONE;
        opening = -1;
        for (int p = centre % grid; p < count; p += grid) {
            if (pass[p] != FORBIDDEN && best[p] - pass[p] > top) {
                top = best[p] - pass[p];
                opening = p;
            }
        }
        return top;
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
            long bound = sweep(changed, kinds);
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

    int opening() {
        return opening;
    }

    /** The items of the best stack from the first face down. */
    List<Item> path() {
        List<Item> path = new ArrayList<>();
        int p = opening;
        int next = p < 0 ? STOP : choice[p];
        while (next != STOP) {
            if (next == SLAB) {
                p = slabTo[p - slab];
                next = itemChoice[p];
            } else {
                path.add(new Item(next, p));
                p = p - size[next] - kerf;
                next = choice[p];
            }
        }
        return path;
    }
}
