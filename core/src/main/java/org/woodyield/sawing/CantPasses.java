package org.woodyield.sawing;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * What the upright passes through a cant cost, by the index of the lower side of the kerf. Their widths are cut out of the
 * upright chords of the log, which are the same for all cants.
 */
final class CantPasses {

    private final Search search;
    private final Lattice lattice;
    private final int count;
    private final int planes;
    private final double widestMetres;

    /** Ends of the chords in the middle of a pass: by place of the pass, the measuring planes of each side by side. */
    private final double[] low;

    private final double[] high;
    /** The same where the pass is widest. */
    private final double[] widestLow;

    private final double[] widestHigh;
    /** By place of a pass: heights between which every measuring plane is cut whole, and any at all. */
    private final double[] wholeFrom;

    private final double[] wholeTo;
    private final double[] someFrom;
    private final double[] someTo;
    private final double[] widths;
    private final Map<Integer, Long> leastOfHeight = new HashMap<>();

    CantPasses(Search search, double widestMetres) {
        this.search = search;
        this.lattice = search.lattice;
        this.widestMetres = widestMetres;
        count = search.chords.count;
        planes = search.measuring.length;
        low = new double[count * planes];
        high = new double[count * planes];
        widestLow = new double[count * planes];
        widestHigh = new double[count * planes];
        wholeFrom = new double[count];
        wholeTo = new double[count];
        someFrom = new double[count];
        someTo = new double[count];
        widths = new double[planes];
        for (int q = 0; q < count; q++) {
            double left = search.metres(q);
            double right = search.metres(q + lattice.kerf);
            wholeFrom[q] = someTo[q] = Double.NEGATIVE_INFINITY;
            wholeTo[q] = someFrom[q] = Double.POSITIVE_INFINITY;
            for (int i = 0; i < planes; i++) {
                chords(search.measuring[i], left, right, q, q * planes + i);
            }
        }
    }

    private void chords(Lie.Plane p, double left, double right, int q, int at) {
        double middle = (left + right) / 2;
        double nearest = Math.min(Math.max(p.cu, left), right);
        double half = p.halfUpright(middle);
        double widest = p.halfUpright(nearest);
        low[at] = half < 0 ? 0 : p.midUpright(middle) - half;
        high[at] = half < 0 ? 0 : p.midUpright(middle) + half;
        widestLow[at] = widest < 0 ? 0 : p.midUpright(nearest) - widest;
        widestHigh[at] = widest < 0 ? 0 : p.midUpright(nearest) + widest;
        wholeFrom[q] = Math.max(wholeFrom[q], Math.max(low[at], widestLow[at]));
        wholeTo[q] = Math.min(wholeTo[q], Math.min(high[at], widestHigh[at]));
        someFrom[q] = Math.min(someFrom[q], Math.min(low[at], widestLow[at]));
        someTo[q] = Math.max(someTo[q], Math.max(high[at], widestHigh[at]));
    }

    /** Compared and not by {@link Math#min}: this is the innermost loop of a swept log, and there is no not-a-number in it. */
    private static double clipped(double low, double high, double bottom, double top) {
        double width = (high < top ? high : top) - (low > bottom ? low : bottom);
        return width > 0 ? width : 0;
    }

    /**
     * Fills in the width of a pass at each measuring plane and gives the widest place of the kerf.
     *
     * @param q index of the lower side of the kerf
     */
    double widths(int q, double bottom, double top, double[] into) {
        double widest = 0;
        for (int i = 0; i < planes; i++) {
            int at = q * planes + i;
            into[i] = clipped(low[at], high[at], bottom, top);
            widest = Math.max(widest, clipped(widestLow[at], widestHigh[at], bottom, top));
        }
        return widest;
    }

    /** What each pass through one cant costs. */
    void exactly(int cantLow, int cantHigh, long[] pass) {
        if (lattice.anywhere) {
            withinAStep(cantLow, cantHigh, pass);
            return;
        }
        double bottom = search.metres(cantLow);
        double top = search.metres(cantHigh);
        double bed = search.bed(bottom, top, false);
        double height = top - bottom;
        // No pass is wider than the cant is high: in most cants only a pass that meets no wood is to be kept out.
        boolean anyWidth = height <= widestMetres;
        Arrays.fill(widths, Math.max(0, height));
        long whole = anyWidth ? search.cost(Stage.CANT, search.lie.mean(widths)) : Stack.FORBIDDEN;
        for (int q = 0; q < count; q++) {
            if (!search.overLeastHeight(search.metres(q) - bed)) {
                pass[q] = Stack.FORBIDDEN;
            } else if (wholeFrom[q] <= bottom && wholeTo[q] >= top) {
                pass[q] = whole;
            } else if (someFrom[q] >= top || someTo[q] <= bottom) {
                pass[q] = Stack.FORBIDDEN;
            } else {
                pass[q] = partly(q, bottom, top, anyWidth);
            }
        }
    }

    private long partly(int q, double bottom, double top, boolean anyWidth) {
        boolean possible;
        if (anyWidth) {
            int end = (q + 1) * planes;
            int at = q * planes;
            while (at < end && !(clipped(widestLow[at], widestHigh[at], bottom, top) > 0)) {
                at++;
            }
            possible = at < end;
        } else {
            double widest = widths(q, bottom, top, widths);
            possible = widest > 0 && widest <= widestMetres;
        }
        if (!possible) {
            return Stack.FORBIDDEN;
        }
        if (search.free()) {
            return 0;
        }
        for (int i = 0; i < planes; i++) {
            int at = q * planes + i;
            widths[i] = clipped(low[at], high[at], bottom, top);
        }
        return search.cost(Stage.CANT, search.lie.mean(widths));
    }

    /** What passes cost at least where cant and pass stand anywhere between their steps and the next ones. */
    private void withinAStep(int cantLow, int cantHigh, long[] pass) {
        double unit = lattice.metres(1);
        double bottom = search.metres(cantLow);
        double top = search.metres(cantHigh);
        double bed = search.bed(bottom, top + unit, false);
        Arrays.fill(widths, top - bottom);
        long whole = search.cost(Stage.CANT, search.lie.mean(widths));
        for (int q = 0; q < count; q++) {
            int next = Math.min(q + 1, count - 1);
            double widest = 0;
            boolean cutWhole = Math.max(wholeFrom[q], wholeFrom[next]) <= bottom
                    && Math.min(wholeTo[q], wholeTo[next]) >= top + unit;
            if (cutWhole) {
                widest = top - bottom;
            } else {
                for (int i = 0; i < planes; i++) {
                    int here = q * planes + i;
                    int there = next * planes + i;
                    widths[i] = Math.min(
                            withinAStep(low, high, here, bottom, top, unit),
                            withinAStep(low, high, there, bottom, top, unit));
                    widest = Math.max(
                            widest,
                            Math.min(
                                    withinAStep(widestLow, widestHigh, here, bottom, top, unit),
                                    withinAStep(widestLow, widestHigh, there, bottom, top, unit)));
                }
            }
            pass[q] = !search.allowed(widest, search.metres(q) + unit - bed)
                    ? Stack.FORBIDDEN
                    : cutWhole ? whole : search.cost(Stage.CANT, search.lie.mean(widths));
        }
    }

    /** The least width of a chord in a cant here or anywhere up to a step above. */
    private static double withinAStep(double[] low, double[] high, int at, double bottom, double top, double unit) {
        return Math.min(clipped(low[at], high[at], bottom, top), clipped(low[at], high[at], bottom + unit, top + unit));
    }

    /**
     * What passes cost at least in any of the cants from one that lies between two heights to one so many steps above it.
     */
    void atLeast(int cantLow, int cantHigh, int further, long[] pass) {
        double bottom = search.metres(cantLow);
        double top = search.metres(cantHigh + further + (lattice.anywhere ? 1 : 0));
        double height = search.metres(cantHigh) - bottom;
        long least = leastOfHeight.computeIfAbsent(cantHigh - cantLow, this::least);
        Arrays.fill(widths, height);
        long whole = height > widestMetres + 1e-9
                ? Stack.FORBIDDEN
                : Math.min(search.cost(Stage.CANT, search.lie.mean(widths)), search.cost(Stage.CANT, height - 1e-12));
        for (int q = 0; q < count; q++) {
            int next = lattice.anywhere ? Math.min(q + 1, count - 1) : q;
            boolean cutWhole =
                    Math.max(wholeFrom[q], wholeFrom[next]) <= bottom && Math.min(wholeTo[q], wholeTo[next]) >= top;
            pass[q] = cutWhole ? whole : least;
        }
    }

    private long least(int height) {
        long least = Stack.FORBIDDEN;
        for (int w = 0; w <= height + 1; w++) {
            least = Math.min(least, search.cost(Stage.CANT, lattice.metres(w)));
        }
        return least;
    }
}
