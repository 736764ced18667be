package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best row of strips in one flitch: strips stand one kerf apart, each with a trim of its own, anywhere on the lattice.
 *
 * <p>A row can be pushed toward its first side until some strip meets the limit of its room, or until the row meets the
 * face of the cant. So only rows with a strip that begins at such a limit need be looked at; from there the strips to
 * either side are found one after the other.
 */
final class Rows {

    static final int NO_CLIP = -(1 << 27);

    /** A strip of a row. */
    record Strip(int from, Lattice.Entry entry, int trim) {}

    private final Lattice lattice;
    private final Chords chords;

    private final int[] stampRight;
    private final int[] stampLeft;
    private final long[] right;
    private final long[] left;
    private final int[] rightChoice;
    private final int[] leftChoice;
    private int stamp;

    /** By class, by entry: the trims with the entry's worthiest length first, of equals the first trim. */
    private final int[][][] worthiest;

    private List<Lattice.Entry> entries = List.of();
    private int[] from = new int[0];
    private int[] to = new int[0];
    private int[] anchors = new int[0];
    private int anchorCount;
    /** Of the entries: width, and where the places that fit begin in the lists of places. */
    private final int[] entryWidth;

    /** The stretch from the first to the last index of all places of an entry. */
    private final int[] entryFrom;

    private final int[] entryTo;
    private final int[] firstPlace;
    private final int[] placeFrom;
    private final int[] placeTo;
    private final int[] placeTrim;
    private final long[] placeWorth;
    private int clipFrom;
    private int clipTo;
    private long edge;
    private int bestAnchor;
    private boolean bestAtClipEnd;
    long rowsWorkedOut;

    Rows(Lattice lattice, Chords chords) {
        this.lattice = lattice;
        this.chords = chords;
        stampRight = new int[chords.count];
        stampLeft = new int[chords.count];
        right = new long[chords.count];
        left = new long[chords.count];
        rightChoice = new int[chords.count];
        leftChoice = new int[chords.count];
        worthiest = new int[lattice.thicknesses.size()][][];
        int most = 0;
        for (int c = 0; c < worthiest.length; c++) {
            List<Lattice.Entry> each = lattice.thicknesses.get(c).entries();
            most = Math.max(most, each.size());
            worthiest[c] = new int[each.size()][];
            for (int e = 0; e < each.size(); e++) {
                worthiest[c][e] = worthiest(each.get(e));
            }
        }
        int places = most * chords.trims.length;
        entryWidth = new int[most];
        entryFrom = new int[most];
        entryTo = new int[most];
        firstPlace = new int[most + 1];
        placeFrom = new int[places];
        placeTo = new int[places];
        placeTrim = new int[places];
        placeWorth = new long[places];
    }

    private int[] worthiest(Lattice.Entry entry) {
        int[] order = new int[chords.trims.length];
        for (int t = 0; t < order.length; t++) {
            long worth = entry.worth(chords.trims[t].length());
            int at = t;
            while (at > 0 && entry.worth(chords.trims[order[at - 1]].length()) < worth) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = t;
        }
        return order;
    }

    /**
     * The worth of the best row less its edge passes and, where it touches no sawn side, the guide; {@link Lattice#NONE} if no row is worth more than its passes.
     *
     * @param c class of the flitch's thickness
     * @param low index of one face of the flitch
     * @param high index of the other, above
     * @param clip0 first index inside the cant, or NO_CLIP
     * @param clip1 last index inside the cant
     * @param bound no row is worth more; the search ends where one is worth so much
     */
    long best(
            int c,
            int low,
            int high,
            int[][] roomFrom,
            int[][] roomTo,
            int clip0,
            int clip1,
            long edgeCost,
            long guideCost,
            long bound) {
        rowsWorkedOut++;
        prepare(c, low, high, roomFrom, roomTo, clip0, clip1, edgeCost);
        long best = Lattice.NONE;
        bestAtClipEnd = false;
        for (int i = 0; i < anchorCount && best < bound; i++) {
            int at = anchors[i];
            long value = right(at);
            if (value <= 0) {
                continue;
            }
            if (at != clipFrom) {
                // Of what touches a sawn side no more is missed: it is met at that side.
                value += left(at - lattice.kerf) - edge - guideCost;
            }
            if (value > best) {
                best = value;
                bestAnchor = at;
            }
        }
        if (clip0 != NO_CLIP && best < bound && left(clipTo) > best) {
            best = left(clipTo);
            bestAtClipEnd = true;
        }
        return best > 0 ? best : Lattice.NONE;
    }

    /** The strips of the row that {@link #best} found last, in order of position. */
    List<Strip> strips() {
        List<Strip> strips = new ArrayList<>();
        int trims = chords.trims.length;
        int y = bestAtClipEnd ? clipTo : bestAnchor - lattice.kerf;
        if (bestAtClipEnd || bestAnchor != clipFrom) {
            while (left(y) > 0) {
                int choice = leftChoice[y];
                Lattice.Entry entry = entries.get(choice / trims);
                strips.add(0, new Strip(y - entry.width(), entry, choice % trims));
                y -= entry.width() + lattice.kerf;
            }
        }
        if (!bestAtClipEnd) {
            int x = bestAnchor;
            while (right(x) > 0) {
                int choice = rightChoice[x];
                Lattice.Entry entry = entries.get(choice / trims);
                strips.add(new Strip(x, entry, choice % trims));
                x += entry.width() + lattice.kerf;
            }
        }
        return strips;
    }

    private void prepare(
            int c, int low, int high, int[][] roomFrom, int[][] roomTo, int clip0, int clip1, long edgeCost) {
        if (++stamp == Integer.MAX_VALUE) {
            Arrays.fill(stampLeft, 0);
            Arrays.fill(stampRight, 0);
            stamp = 1;
        }
        entries = lattice.thicknesses.get(c).entries();
        int trims = chords.trims.length;
        if (from.length < entries.size() * trims) {
            from = new int[entries.size() * trims];
            to = new int[entries.size() * trims];
            anchors = new int[entries.size() * trims];
        }
        clipFrom = clip0 == NO_CLIP ? NO_CLIP : clip0;
        clipTo = clip0 == NO_CLIP ? -NO_CLIP : clip1;
        edge = edgeCost;
        anchorCount = 0;
        for (int t = 0; t < trims; t++) {
            int length = chords.trims[t].length();
            int faceFrom = Math.max(roomFrom[t][low], roomFrom[t][high]);
            int faceTo = Math.min(roomTo[t][low], roomTo[t][high]);
            for (int e = 0; e < entries.size(); e++) {
                Lattice.Entry entry = entries.get(e);
                int a = faceFrom;
                int b = faceTo;
                int depth = entry.waneDepth();
                if (depth > 0 && a <= b) {
                    a = Math.max(Math.max(roomFrom[t][low + depth], roomFrom[t][high - depth]), a - entry.waneWidth());
                    b = Math.min(Math.min(roomTo[t][low + depth], roomTo[t][high - depth]), b + entry.waneWidth());
                }
                a = Math.max(a, clipFrom);
                b = Math.min(b, clipTo);
                boolean fits = entry.worth(length) >= 0 && b - a >= entry.width();
                int slot = e * trims + t;
                from[slot] = fits ? a : Integer.MAX_VALUE;
                to[slot] = fits ? b : Integer.MIN_VALUE;
                if (fits) {
                    addAnchor(a);
                }
            }
        }
        int places = 0;
        for (int e = 0; e < entries.size(); e++) {
            Lattice.Entry entry = entries.get(e);
            entryWidth[e] = entry.width();
            firstPlace[e] = places;
            entryFrom[e] = Integer.MAX_VALUE;
            entryTo[e] = Integer.MIN_VALUE;
            for (int t : worthiest[c][e]) {
                int slot = e * trims + t;
                if (from[slot] != Integer.MAX_VALUE) {
                    entryFrom[e] = Math.min(entryFrom[e], from[slot]);
                    entryTo[e] = Math.max(entryTo[e], to[slot]);
                    placeFrom[places] = from[slot];
                    placeTo[places] = to[slot];
                    placeTrim[places] = t;
                    placeWorth[places++] = entry.worth(chords.trims[t].length());
                }
            }
        }
        firstPlace[entries.size()] = places;
    }

    /** The worthiest place of an entry that holds a stretch, -1 if none does. */
    private int place(int e, int begin, int end) {
        if (begin < entryFrom[e] || end > entryTo[e]) {
            return -1;
        }
        for (int i = firstPlace[e]; i < firstPlace[e + 1]; i++) {
            if (placeFrom[i] <= begin && end <= placeTo[i]) {
                return i;
            }
        }
        return -1;
    }

    private void addAnchor(int at) {
        for (int i = 0; i < anchorCount; i++) {
            if (anchors[i] == at) {
                return;
            }
        }
        anchors[anchorCount++] = at;
    }

    /** The best strips from x on, the first beginning at x, the edge before it paid already; 0 for none. */
    private long right(int x) {
        if (x < 0 || x >= stampRight.length) {
            return 0;
        }
        if (stampRight[x] == stamp) {
            return right[x];
        }
        long best = 0;
        int choice = -1;
        int trims = chords.trims.length;
        for (int e = 0; e < entries.size(); e++) {
            int end = x + entryWidth[e];
            int place = place(e, x, end);
            if (place >= 0) {
                long value = placeWorth[place] - (end == clipTo ? 0 : edge) + right(end + lattice.kerf);
                if (value > best) {
                    best = value;
                    choice = e * trims + placeTrim[place];
                }
            }
        }
        stampRight[x] = stamp;
        right[x] = best;
        rightChoice[x] = choice;
        return best;
    }

    /** The best strips up to y, the last ending at y, the edge after it paid already; 0 for none. */
    private long left(int y) {
        if (y < 0 || y >= stampLeft.length) {
            return 0;
        }
        if (stampLeft[y] == stamp) {
            return left[y];
        }
        long best = 0;
        int choice = -1;
        int trims = chords.trims.length;
        for (int e = 0; e < entries.size(); e++) {
            int begin = y - entryWidth[e];
            int place = place(e, begin, y);
            if (place >= 0) {
                long value = placeWorth[place] - (begin == clipFrom ? 0 : edge) + left(begin - lattice.kerf);
                if (value > best) {
                    best = value;
                    choice = e * trims + placeTrim[place];
                }
            }
        }
        stampLeft[y] = stamp;
        left[y] = best;
        leftChoice[y] = choice;
        return best;
    }
}
