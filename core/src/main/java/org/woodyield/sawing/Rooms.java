package org.woodyield.sawing;

import java.util.List;

/**
 * What no row of strips of one thickness can exceed, given the room that each length has; and what rows of one length
 * reach.
 *
 * <p>The bound comes in layers. Lengths stand in falling order; a strip of a length is worth the sum, over that length and
 * all shorter ones, of what each length is worth above the next shorter one. All strips as long as a given length lie in
 * the room of that length, so each layer is at most the best filling of its own room, and the row at most their sum.
 */
final class Rooms {

    private final int layers;
    private final long edge;
    private final long[][] layer;
    private final long[][] oneLength;
    private final long[][] single;
    private final long[][] exactly;
    private final int twoStrips;
    private final int last;

    Rooms(Lattice lattice, Lattice.Thickness thickness, int count, long edge) {
        this.edge = edge;
        layers = lattice.lengths.size();
        last = count - 1;
        layer = new long[layers][];
        oneLength = new long[layers][];
        single = new long[layers][count];
        exactly = new long[layers][count];
        List<Lattice.Entry> entries = thickness.entries();
        int narrowest = entries.stream().mapToInt(Lattice.Entry::width).min().orElse(count);
        twoStrips = 2 * narrowest + lattice.kerf;
        long[] worth = new long[entries.size()];
        long[] shorter = new long[entries.size()];
        for (int i = layers - 1; i >= 0; i--) {
            for (int e = 0; e < worth.length; e++) {
                // A length that is worth less than a shorter one is bounded by that.
                long here = Math.max(shorter[e], entries.get(e).worth(i));
                worth[e] = here - shorter[e] - (i == layers - 1 ? edge : 0);
                shorter[e] = here;
                int w = entries.get(e).width();
                if (w < count) {
                    single[i][w] = Math.max(single[i][w], entries.get(e).worth(i));
                    exactly[i][w] = single[i][w];
                }
            }
            for (int w = 1; w < count; w++) {
                single[i][w] = Math.max(single[i][w], single[i][w - 1]);
            }
            layer[i] = filling(entries, worth, count, lattice.kerf);
            for (int e = 0; e < worth.length; e++) {
                worth[e] = entries.get(e).worth(i) - edge;
            }
            oneLength[i] = filling(entries, worth, count, lattice.kerf);
        }
    }

    /** By room: the greatest sum over strips that stand a kerf apart in it. */
    private static long[] filling(List<Lattice.Entry> entries, long[] worth, int count, int kerf) {
        int[] steps = new int[worth.length];
        long[] gains = new long[worth.length];
        int gaining = 0;
        for (int e = 0; e < worth.length; e++) {
            if (worth[e] > 0) {
                steps[gaining] = entries.get(e).width() + kerf;
                gains[gaining++] = worth[e];
            }
        }
        long[] best = new long[count + kerf];
        for (int w = 1; w < best.length; w++) {
            long top = best[w - 1];
            for (int e = 0; e < gaining; e++) {
                if (steps[e] <= w) {
                    top = Math.max(top, gains[e] + best[w - steps[e]]);
                }
            }
            best[w] = top;
        }
        return java.util.Arrays.copyOfRange(best, kerf, best.length);
    }

    /**
     * The bound of a flitch.
     *
     * @param from from an index on, by length the first index of the room that it and all longer ones lie in
     * @param to by length, the last index
     * @param at the index of the longest length
     * @param clip0 first index inside the cant, or of no wood
     * @param clip1 last index inside the cant, or of no wood
     * @param further how many steps the cant may also stand above that
     */
    long bound(int[] from, int[] to, int at, int clip0, int clip1, int further) {
        int widest = at + layers - 1;
        int hullFrom = from[widest] - further;
        int hullTo = to[widest];
        if (from[widest] > hullTo || hullFrom > clip1 || hullTo < clip0) {
            return Lattice.NONE;
        }
        int sawnSides = (hullFrom <= clip0 ? 1 : 0) + (hullTo >= clip1 ? 1 : 0);
        boolean oneStrip = Math.min(hullTo, clip1) - Math.max(hullFrom, clip0) < twoStrips;
        long sum = 0;
        long full = 0;
        for (int i = 0; i < layers; i++) {
            int room = Math.min(to[at + i], clip1) - Math.max(from[at + i] - further, clip0);
            if (room < 0) {
                continue;
            }
            room = Math.min(room, last);
            sum = oneStrip ? Math.max(sum, single[i][room]) : sum + layer[i][room];
            if (sawnSides == 2 && room == clip1 - clip0) {
                full = Math.max(full, exactly[i][room]);
            }
        }
        return bound(sum, full, oneStrip, sawnSides);
    }

    /** The bound of a flitch that is as wide as its cant at every length. */
    long fullBound(int height) {
        long sum = 0;
        long full = 0;
        boolean oneStrip = height < twoStrips;
        for (int i = 0; i < layers && height <= last; i++) {
            sum = oneStrip ? Math.max(sum, single[i][height]) : sum + layer[i][height];
            full = Math.max(full, exactly[i][height]);
        }
        return bound(sum, full, oneStrip, 2);
    }

    private long bound(long sum, long full, boolean oneStrip, int sawnSides) {
        if (edge >= Search.NO_EDGING) {
            return full;
        }
        if (oneStrip) {
            // A strip has two edges; one can lie on a sawn side, both only if it is as wide as the cant.
            return Math.max(sum - (sawnSides == 0 ? 2 : 1) * edge, full);
        }
        // In the layers each strip has paid one edge; a row of strips has one edge more than strips, less the sawn
        // ones.
        return sawnSides == 0 ? sum - edge : sawnSides == 1 ? sum : Math.max(sum + edge, full);
    }

    /** The best row of one length in a room; an edge pass is saved if it can be pushed against a sawn side. */
    long ofOneLength(int i, int room, boolean besideSawnSide) {
        return room < 0 ? 0 : oneLength[i][Math.min(room, last)] - (besideSawnSide ? 0 : edge);
    }
}
