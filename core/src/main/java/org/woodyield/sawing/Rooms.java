package org.woodyield.sawing;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;

/**
 * What no row of strips of one thickness can exceed, given the room that each length has; what rows of one length reach;
 * and, where all lengths have nearly the same room, what the best row is worth.
 *
 * <p>The bound comes in layers. Lengths stand in falling order; a strip of a length is worth the sum, over that length and
 * all shorter ones, of what each length is worth above the next shorter one. All strips as long as a given length lie in
 * the room of that length, so each layer is at most the best filling of its own room, and the row at most their sum.
 */
final class Rooms {

    private final int layers;
    private final long edge;
    private final long guide;
    private final long[][] layer;
    private final long[][] oneLength;
    private final long[][] single;
    private final long[][] exactly;
    /** By length: the best filling of a room by strips of that length or a shorter one, whichever is worth more. */
    private final long[][] thatOrShorter;

    /** The same where the strips fill the room to its end. */
    private final long[][] filledBy;

    private final int twoStrips;
    private final int last;
    private final int kerf;
    private final int narrowest;
    private final boolean squareEdged;

    /** By entry. */
    private final int[] width;

    /** By length, by entry. */
    private final long[][] worthOf;

    /** By trim: its length and, of a flitch, its room. */
    private final int[] lengthOf;

    private final int[] begin;
    private final int[] end;
    private final long[][] worths;

    Rooms(Lattice lattice, Lattice.Thickness thickness, Chords chords, long edge, long guide) {
        int count = chords.count;
        this.edge = edge;
        this.guide = guide;
        kerf = lattice.kerf;
        layers = lattice.lengths.size();
        last = count - 1;
        layer = new long[layers][];
        oneLength = new long[layers][];
        single = new long[layers][count];
        exactly = new long[layers][count];
        List<Lattice.Entry> entries = thickness.entries();
        narrowest = entries.stream().mapToInt(Lattice.Entry::width).min().orElse(count);
        squareEdged = entries.stream().allMatch(entry -> entry.waneDepth() == 0);
        width = entries.stream().mapToInt(Lattice.Entry::width).toArray();
        worthOf = new long[layers][width.length];
        thatOrShorter = new long[layers][];
        filledBy = new long[layers][];
        boolean[] offered = new boolean[width.length];
        boolean cants = lattice.cantHeights.length > 0;
        lengthOf = Arrays.stream(chords.trims).mapToInt(Chords.Trim::length).toArray();
        worths = new long[lengthOf.length][];
        begin = new int[lengthOf.length];
        end = new int[lengthOf.length];
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
            layer[i] = filling(worth, count);
            boolean longestIsBest = true;
            for (int e = 0; e < worth.length; e++) {
                worthOf[i][e] = entries.get(e).worth(i);
                worth[e] = worthOf[i][e] - edge;
                longestIsBest &= worthOf[i][e] == shorter[e];
            }
            oneLength[i] = filling(worth, count);
            for (int e = 0; e < worth.length; e++) {
                offered[e] |= worthOf[i][e] >= 0;
                // What is not offered must not fill a room either.
                worth[e] = offered[e] ? shorter[e] - edge : Lattice.NONE;
            }
            thatOrShorter[i] = longestIsBest ? oneLength[i] : filling(worth, count);
            filledBy[i] = cants ? filledBy(worth, count) : new long[0];
        }
    }

    /** By room: the greatest sum over strips that stand a kerf apart in it. */
    private long[] filling(long[] worth, int count) {
        long[] best = new long[count];
        append(best, -kerf, 0, worth);
        long most = 0;
        for (int w = 0; w < count; w++) {
            // A row is only worth going on from where no narrower one is worth as much.
            if (best[w] > most) {
                most = best[w];
                append(best, w, most, worth);
            }
            best[w] = most;
        }
        return best;
    }

    /** By room: the greatest sum over strips that stand a kerf apart in it from end to end. */
    private long[] filledBy(long[] worth, int count) {
        long[] best = new long[count];
        Arrays.fill(best, Lattice.NONE);
        append(best, -kerf, 0, worth);
        for (int w = 0; w < count; w++) {
            if (best[w] != Lattice.NONE) {
                append(best, w, best[w], worth);
            }
        }
        return best;
    }

    /** Adds one strip to a row that is so wide and worth so much. */
    private void append(long[] best, int wide, long soFar, long[] worth) {
        for (int e = 0; e < worth.length; e++) {
            int with = wide + kerf + width[e];
            if (with < best.length && worth[e] != Lattice.NONE) {
                best[with] = Math.max(best[with], soFar + worth[e]);
            }
        }
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
            return Math.max(sawnSides == 0 ? sum - 2 * edge - guide : sum - edge, full);
        }
        // In the layers each strip has paid one edge; a row of strips has one edge more than strips, less the sawn
        // ones.
        return sawnSides == 0 ? sum - edge - guide : sawnSides == 1 ? sum : Math.max(sum + edge, full);
    }

    /** The best row of one length in a room; an edge pass and the guide are saved if it can be pushed against a sawn side. */
    long ofOneLength(int i, int room, boolean besideSawnSide) {
        return room < 0 ? 0 : oneLength[i][Math.min(room, last)] - (besideSawnSide ? 0 : edge + guide);
    }

    /**
     * The worth of the best row, where any strip but the outermost two has the room of every length: a row may then be pushed
     * to the limit of its first strip or of its last, and what stands between them may be of any length.
     *
     * @param from by trim, by position: the first index of the room
     * @param to by trim, by position: the last index
     * @param low index of one face of the flitch
     * @param high index of the other
     * @param clip0 first index inside the cant, or of no wood
     * @param clip1 last index inside the cant, or of no wood
     * @param reached what some row is worth
     * @param bound no row is worth more
     * @return nothing where rooms differ by more than that
     */
    OptionalLong best(int[][] from, int[][] to, int low, int high, int clip0, int clip1, long reached, long bound) {
        if (!squareEdged) {
            return OptionalLong.empty();
        }
        int first = Integer.MAX_VALUE;
        int firstOfAll = Integer.MIN_VALUE;
        int lastOfAll = Integer.MAX_VALUE;
        int furthest = Integer.MIN_VALUE;
        int longest = layers;
        long lengths = 0;
        int count = 0;
        for (int t = 0; t < lengthOf.length; t++) {
            int a = Math.max(Math.max(from[t][low], from[t][high]), clip0);
            int b = Math.min(Math.min(to[t][low], to[t][high]), clip1);
            if (b - a >= narrowest) {
                worths[count] = worthOf[lengthOf[t]];
                begin[count] = a;
                end[count++] = b;
                first = Math.min(first, a);
                firstOfAll = Math.max(firstOfAll, a);
                lastOfAll = Math.min(lastOfAll, b);
                furthest = Math.max(furthest, b);
                longest = Math.min(longest, lengthOf[t]);
                lengths |= 1L << lengthOf[t];
            }
        }
        if (count == 0) {
            return OptionalLong.of(reached);
        }
        boolean alike = firstOfAll - first <= narrowest + kerf && furthest - lastOfAll <= narrowest + kerf;
        if (!alike || layers > Long.SIZE - 1 || lengths >>> longest != (1L << (layers - longest)) - 1) {
            return OptionalLong.empty();
        }
        long[] between = thatOrShorter[longest];
        long best = Math.max(reached, single(count, clip0, clip1));
        for (int i = 0; i < count && best < bound; i++) {
            boolean sawn = begin[i] == clip0;
            long lastEdge = furthest == clip1 ? 0 : edge + (sawn ? 0 : guide);
            for (int e = 0; e < width.length; e++) {
                int next = begin[i] + width[e] + kerf;
                long value = worths[i][e] - (sawn ? 0 : edge);
                if (worths[i][e] >= 0
                        && next - kerf <= end[i]
                        && furthest - next >= narrowest
                        && value - lastEdge + between[Math.min(furthest - next, last)] > best) {
                    best = Math.max(best, value + others(count, next, sawn, clip1, longest, best - value));
                }
            }
        }
        return OptionalLong.of(best);
    }

    /** One strip alone. */
    private long single(int count, int clip0, int clip1) {
        long best = Lattice.NONE;
        for (int i = 0; i < count; i++) {
            int room = end[i] - begin[i];
            int sawn = (begin[i] == clip0 ? 1 : 0) + (end[i] == clip1 ? 1 : 0);
            for (int e = 0; e < width.length; e++) {
                if (worths[i][e] >= 0 && width[e] <= room) {
                    int edges = 2 - (width[e] == room ? sawn : Math.min(sawn, 1));
                    best = Math.max(best, worths[i][e] - edges * edge - (sawn == 0 ? guide : 0));
                }
            }
        }
        return best;
    }

    /**
     * What stands from a place on, the last strip at the end of its room; each strip with the edge before it, and the guide if the
     * row has no sawn side. No more than is
     * needed is of no use, and less may be given for it.
     */
    private long others(int count, int next, boolean sawn, int clip1, int longest, long need) {
        long best = need;
        long[] between = thatOrShorter[longest];
        for (int i = 0; i < count; i++) {
            boolean sawnToo = end[i] == clip1;
            int room = end[i] - begin[i];
            long unsawn = edge + (sawn ? 0 : guide);
            if (end[i] < next || between[Math.min(end[i] - next, last)] - (sawnToo ? 0 : unsawn) <= best) {
                continue;
            }
            for (int e = 0; e < width.length; e++) {
                int gap = end[i] - width[e] - next;
                if (gap >= 0 && worths[i][e] >= 0 && width[e] <= room) {
                    long last = worths[i][e] - edge;
                    int free = Math.min(gap - kerf, this.last);
                    long loose = free > 0 ? between[free] : 0;
                    best = Math.max(best, last + loose - (sawnToo && !sawn ? 0 : unsawn));
                    if (sawnToo && sawn) {
                        // Only a row that reaches from one sawn side to the other saves both edges.
                        best = Math.max(
                                best, last + (gap == 0 ? 0 : free > 0 ? filledBy[longest][free] : Lattice.NONE));
                    }
                }
            }
        }
        return best;
    }
}
