package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/** The best pattern in one frame. */
final class Search implements Stack.Refiner {

    /** What stands in the stack of the log or of a cant; a cant has a first face of its own. */
    record Cut(int top, int bottom, List<Rows.Strip> strips, int opening, List<Cut> inside) {
        boolean cant() {
            return !inside.isEmpty();
        }
    }

    private static final byte BOUND = 0;
    private static final byte TIGHT = 1;
    private static final byte EXACT = 2;

    final Lie lie;
    final Lattice lattice;
    final Chords chords;
    final Lie.Plane[] measuring;
    private final Saw saw;
    private final PassCost passCost;
    private final double widestMetres;
    private final double bedMetres;
    private final long[] edgeCost;
    private final Rows rows;
    private final Stack live;
    private final Stack cant;
    private final byte[][] known;
    private final byte[][] knownInCant;
    private final long[][] rowBound;
    private final int[] uprightHullFrom;
    private final int[] uprightHullTo;
    private final int classes;
    private final long[][] costOfWidth;
    private final Upright[] uprights;
    private final double[] widths;
    private int cantBottom;
    private int cantTop;
    private long objective;
    private long cantsInAll;
    private long cantsOpened;

    Search(Lie lie, Lattice lattice, SearchSpace space, Saw saw, PassCost passCost, Length logLength, double widest) {
        this.lie = lie;
        this.lattice = lattice;
        this.saw = saw;
        this.passCost = passCost;
        this.widestMetres = widest;
        chords = new Chords(lie, lattice, space, logLength);
        measuring = lie.measuringPlanes();
        rows = new Rows(lattice, chords);
        costOfWidth = new long[3][2 * chords.count];
        for (long[] each : costOfWidth) {
            Arrays.fill(each, -1);
        }
        widths = new double[measuring.length];
        uprights = new Upright[measuring.length];
        for (int i = 0; i < uprights.length; i++) {
            uprights[i] = upright(measuring[i]);
        }
        classes = lattice.thicknesses.size();
        int kinds = classes + lattice.cantHeights.length;
        int[] sizes = new int[kinds];
        int[] thicknesses = new int[classes];
        edgeCost = new long[classes];
        for (int c = 0; c < classes; c++) {
            sizes[c] = thicknesses[c] = lattice.thicknesses.get(c).units();
            edgeCost[c] = cost(Stage.EDGE, lattice.metres(sizes[c]));
        }
        System.arraycopy(lattice.cantHeights, 0, sizes, classes, lattice.cantHeights.length);
        live = new Stack(lattice, chords.count, chords.centre, sizes);
        cant = new Stack(lattice, chords.count, chords.centre, thicknesses);
        known = new byte[kinds][chords.count];
        knownInCant = new byte[classes][chords.count];
        rowBound = new long[classes][];
        for (int c = 0; c < classes; c++) {
            rowBound[c] = rowBound(c);
        }
        uprightHullFrom = Chords.hullFrom(chords.uprightFrom);
        uprightHullTo = Chords.hullTo(chords.uprightTo);
        bedMetres = bed(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true);
        levelPasses();
        bounds();
    }

    /** Height (level position) of the bed under the log (under a cant) on the saw's step, from the axis. */
    double bed(double from, double to, boolean level) {
        double lowest = Double.POSITIVE_INFINITY;
        for (Lie.Plane p : measuring) {
            lowest = Math.min(lowest, level ? p.cv - Math.sqrt(p.svv) : leftmost(p, from, to));
        }
        if (!lattice.overBed) {
            return lowest;
        }
        double step = saw.settingStep().toMetres();
        return Math.floor(lowest / step) * step;
    }

    /** The leftmost point of a section within a band of heights. */
    static double leftmost(Lie.Plane p, double from, double to) {
        double v = Math.min(Math.max(p.cv - p.suv / Math.sqrt(p.suu), from), to);
        double half = p.halfLevel(v);
        return half < 0 ? p.midLevel(v) : p.midLevel(v) - half;
    }

    /** What a pass costs; its mean width is taken up to the next step of the lattice, so that each width is priced once. */
    long cost(Stage stage, double meanWidth) {
        int steps = (int) Math.ceil(meanWidth / lattice.metres(1) - 1e-9);
        long[] known = costOfWidth[stage == Stage.LIVE ? 0 : stage == Stage.CANT ? 1 : 2];
        if (steps >= known.length) {
            return priced(stage, lattice.metres(steps));
        }
        if (known[steps] < 0) {
            known[steps] = priced(stage, lattice.metres(steps));
        }
        return known[steps];
    }

    private long priced(Stage stage, double meanWidth) {
        double cost = passCost.of(stage, meanWidth, lie.solid().lengthMetres());
        if (!(cost >= 0)) {
            throw new OutOfDomainException("cost of a pass", Double.toString(cost), "", "0 or more", "");
        }
        return Lattice.millionths(cost);
    }

    private boolean free() {
        return passCost == PassCost.free();
    }

    /** Upright chords of one measuring plane at each place of a pass: in its middle, and where it is widest. */
    private static final class Upright {
        final double[] low;
        final double[] high;
        final double[] widestLow;
        final double[] widestHigh;

        Upright(int count) {
            low = new double[count];
            high = new double[count];
            widestLow = new double[count];
            widestHigh = new double[count];
        }

        static double clipped(double low, double high, double bottom, double top) {
            return Math.max(0, Math.min(high, top) - Math.max(low, bottom));
        }
    }

    private Upright upright(Lie.Plane p) {
        int count = chords.count;
        Upright upright = new Upright(count);
        for (int q = 0; q < count; q++) {
            double left = metres(q);
            double right = metres(q + lattice.kerf);
            double middle = (left + right) / 2;
            double nearest = Math.min(Math.max(p.cu, left), right);
            double half = p.halfUpright(middle);
            double widest = p.halfUpright(nearest);
            upright.low[q] = half < 0 ? 0 : p.midUpright(middle) - half;
            upright.high[q] = half < 0 ? 0 : p.midUpright(middle) + half;
            upright.widestLow[q] = widest < 0 ? 0 : p.midUpright(nearest) - widest;
            upright.widestHigh[q] = widest < 0 ? 0 : p.midUpright(nearest) + widest;
        }
        return upright;
    }

    /** A pass through nothing is no pass: it would only move a face off the grid for nothing. */
    private void levelPasses() {
        double least = saw.leastHeight().toMetres();
        for (int q = 0; q < chords.count; q++) {
            double low = metres(q);
            double high = metres(q + lattice.kerf);
            double widest = 0;
            for (int i = 0; i < widths.length; i++) {
                Lie.Plane p = measuring[i];
                widths[i] = 2 * Math.max(0, p.halfLevel((low + high) / 2));
                widest = Math.max(widest, 2 * p.halfLevel(Math.min(Math.max(p.cv, low), high)));
            }
            boolean possible = widest > 0 && widest <= widestMetres && low - bedMetres >= least - 1e-12;
            live.pass[q] = !possible ? Stack.FORBIDDEN : free() ? 0 : cost(Stage.LIVE, lie.mean(widths));
        }
    }

    /** Width of an upright pass through a cant at a measuring plane. */
    static double clipped(Lie.Plane p, double u, double bottom, double top) {
        double half = p.halfUpright(u);
        if (half < 0) {
            return 0;
        }
        double mid = p.midUpright(u);
        return Math.max(0, Math.min(mid + half, top) - Math.max(mid - half, bottom));
    }

    private void cantPasses(int low, int high) {
        double bottom = metres(low);
        double top = metres(high);
        double least = saw.leastHeight().toMetres();
        double bed = least == 0 ? Double.NEGATIVE_INFINITY : bed(bottom, top, false);
        for (int q = 0; q < chords.count; q++) {
            double widest = 0;
            for (int i = 0; i < widths.length; i++) {
                Upright p = uprights[i];
                widths[i] = Upright.clipped(p.low[q], p.high[q], bottom, top);
                widest = Math.max(widest, Upright.clipped(p.widestLow[q], p.widestHigh[q], bottom, top));
            }
            boolean possible = widest > 0 && widest <= widestMetres && metres(q) - bed >= least - 1e-12;
            cant.pass[q] = !possible ? Stack.FORBIDDEN : free() ? 0 : cost(Stage.CANT, lie.mean(widths));
        }
    }

    private double metres(int index) {
        return lattice.metres(index - chords.centre);
    }

    /** Best strips in a room of a width, each worth what its best trim is worth less one edge pass. */
    private long[] rowBound(int c) {
        int kerf = lattice.kerf;
        long[] filled = new long[chords.count + kerf];
        for (Lattice.Entry entry : lattice.thicknesses.get(c).entries()) {
            if (entry.width() + kerf < filled.length) {
                filled[entry.width() + kerf] = Math.max(filled[entry.width() + kerf], entry.bestWorth() - edgeCost[c]);
            }
        }
        long[] single = filled.clone();
        int[] steps =
                IntStream.range(0, single.length).filter(w -> single[w] > 0).toArray();
        for (int w = 1; w < filled.length; w++) {
            filled[w] = Math.max(filled[w], filled[w - 1]);
            for (int s : steps) {
                if (s <= w) {
                    filled[w] = Math.max(filled[w], single[s] + filled[w - s]);
                }
            }
        }
        return Arrays.copyOfRange(filled, kerf, filled.length);
    }

    /**
     * No row in a room of a width is worth more, its edge passes paid.
     *
     * @param sawnSides how many sides of the room are faces of a cant and need no edge pass
     */
    private long roomBound(int c, int room, int sawnSides) {
        long strips = rowBound[c][Math.min(room, chords.count - 1)];
        if (sawnSides == 0) {
            return strips - edgeCost[c];
        }
        return sawnSides == 1 ? strips : Math.max(strips + edgeCost[c], bestSingle(c, room));
    }

    private void bounds() {
        int[] from = Chords.hullFrom(chords.levelFrom);
        int[] to = Chords.hullTo(chords.levelTo);
        for (int c = 0; c < classes; c++) {
            Lattice.Thickness thickness = lattice.thicknesses.get(c);
            int t = thickness.units();
            int wane = Math.min(thickness.deepestWane(), t / 2);
            for (int p = t; p < from.length; p++) {
                int room = Math.min(to[p - wane], to[p - t + wane]) - Math.max(from[p - wane], from[p - t + wane]);
                live.value[c][p] = room < 0 ? Lattice.NONE : positive(roomBound(c, room, 0));
            }
        }
        Extremes leftmost = new Extremes(from, false);
        Extremes rightmost = new Extremes(to, true);
        for (int k = 0; k < lattice.cantHeights.length; k++) {
            int h = lattice.cantHeights[k];
            long[] bound = cantBound(h);
            for (int p = h; p < from.length; p++) {
                int room = rightmost.over(p - h, p) - leftmost.over(p - h, p);
                long value = room < 0 ? 0 : bound[Math.min(room, chords.count - 1)];
                live.value[classes + k][p] = positive(value);
                cantsInAll += value > 0 ? 1 : 0;
            }
        }
    }

    private static long positive(long value) {
        return value > 0 ? value : Lattice.NONE;
    }

    /** Best filling of a cant whose wood is so wide, as if every flitch of it were as good as the best. */
    private long[] cantBound(int height) {
        int kerf = lattice.kerf;
        long[] bound = new long[chords.count];
        long[] filled = new long[chords.count + kerf];
        long[] rows = new long[classes];
        for (int c = 0; c < classes; c++) {
            rows[c] = roomBound(c, height, 2);
        }
        for (int w = 1; w < filled.length; w++) {
            filled[w] = filled[w - 1];
            for (int c = 0; c < classes; c++) {
                int step = lattice.thicknesses.get(c).units() + kerf;
                if (step <= w) {
                    filled[w] = Math.max(filled[w], filled[w - step] + rows[c]);
                }
            }
        }
        System.arraycopy(filled, kerf, bound, 0, bound.length);
        return bound;
    }

    /** A strip that costs more to edge than it is worth can still pay as a piece as wide as its cant. */
    private long bestSingle(int c, int height) {
        long best = 0;
        for (Lattice.Entry entry : lattice.thicknesses.get(c).entries()) {
            if (entry.width() <= height) {
                best = Math.max(best, entry.bestWorth());
            }
        }
        return best;
    }

    long solve(long incumbent) {
        objective = live.solve(this, incumbent);
        return objective;
    }

    @Override
    public boolean exact(int kind, int top) {
        return known[kind][top] == EXACT;
    }

    @Override
    public long refine(int kind, int top) {
        if (kind < classes) {
            known[kind][top] = EXACT;
            return levelRow(kind, top);
        }
        int height = lattice.cantHeights[kind - classes];
        if (known[kind][top] == BOUND) {
            known[kind][top] = TIGHT;
            openCant(top - height, top);
            long bound = cant.sweep(0);
            if (bound <= 0) {
                known[kind][top] = EXACT;
            }
            return positive(bound);
        }
        known[kind][top] = EXACT;
        return positive(solveCant(top - height, top));
    }

    private long levelRow(int c, int top) {
        Lattice.Thickness thickness = lattice.thicknesses.get(c);
        return rows.best(
                thickness,
                top - thickness.units(),
                top,
                chords.levelFrom,
                chords.levelTo,
                Rows.NO_CLIP,
                0,
                edgeCost[c]);
    }

    private void openCant(int bottom, int top) {
        cantBottom = bottom;
        cantTop = top;
        cantPasses(bottom, top);
        for (int c = 0; c < classes; c++) {
            Lattice.Thickness thickness = lattice.thicknesses.get(c);
            int t = thickness.units();
            int wane = Math.min(thickness.deepestWane(), t / 2);
            Arrays.fill(knownInCant[c], BOUND);
            long[] values = cant.value[c];
            for (int x = 0; x < values.length; x++) {
                if (x < t) {
                    values[x] = Lattice.NONE;
                    continue;
                }
                int a = Math.max(bottom, Math.max(uprightHullFrom[x - wane], uprightHullFrom[x - t + wane]));
                int b = Math.min(top, Math.min(uprightHullTo[x - wane], uprightHullTo[x - t + wane]));
                if (b < a) {
                    values[x] = Lattice.NONE;
                    continue;
                }
                long bound = roomBound(c, b - a, (a == bottom ? 1 : 0) + (b == top ? 1 : 0));
                values[x] = positive(bound);
            }
        }
    }

    private long solveCant(int bottom, int top) {
        cantsOpened++;
        openCant(bottom, top);
        return cant.solve(
                new Stack.Refiner() {
                    @Override
                    public boolean exact(int kind, int at) {
                        return knownInCant[kind][at] == EXACT;
                    }

                    @Override
                    public long refine(int kind, int at) {
                        knownInCant[kind][at] = EXACT;
                        return uprightRow(kind, at);
                    }
                },
                0);
    }

    private long uprightRow(int c, int right) {
        Lattice.Thickness thickness = lattice.thicknesses.get(c);
        return rows.best(
                thickness,
                right - thickness.units(),
                right,
                chords.uprightFrom,
                chords.uprightTo,
                cantBottom,
                cantTop,
                edgeCost[c]);
    }

    /** The best pattern from its first face down, once solved. */
    List<Cut> pattern() {
        List<Cut> cuts = new ArrayList<>();
        for (Stack.Item item : live.path()) {
            if (item.kind() < classes) {
                levelRow(item.kind(), item.top());
                int bottom = item.top() - lattice.thicknesses.get(item.kind()).units();
                cuts.add(new Cut(item.top(), bottom, rows.strips(), -1, List.of()));
            } else {
                int bottom = item.top() - lattice.cantHeights[item.kind() - classes];
                solveCant(bottom, item.top());
                cantsOpened--;
                List<Cut> inside = new ArrayList<>();
                for (Stack.Item flitch : cant.path()) {
                    uprightRow(flitch.kind(), flitch.top());
                    inside.add(new Cut(
                            flitch.top(),
                            flitch.top()
                                    - lattice.thicknesses.get(flitch.kind()).units(),
                            rows.strips(),
                            -1,
                            List.of()));
                }
                cuts.add(new Cut(item.top(), bottom, List.of(), cant.opening(), inside));
            }
        }
        return cuts;
    }

    long objective() {
        return objective;
    }

    int opening() {
        return live.opening();
    }

    long flitchesEdged() {
        return rows.rowsWorkedOut;
    }

    long cantsOpened() {
        return cantsOpened;
    }

    long cantsInAll() {
        return cantsInAll;
    }
}
