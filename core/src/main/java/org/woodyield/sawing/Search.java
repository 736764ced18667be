package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/** The best pattern in one frame. */
final class Search implements Stack.Refiner {

    /** What stands in the stack of the log or of a cant; a cant has a first face of its own. */
    record Cut(
            int top,
            int bottom,
            List<Rows.Strip> strips,
            Optional<Unedged.Piece> unedged,
            int opening,
            List<Cut> inside) {
        boolean cant() {
            return !inside.isEmpty();
        }
    }

    /** More than anything is worth: a flitch thicker than the saw cuts wide cannot be edged. */
    static final long NO_EDGING = 1L << 55;

    /** Cants are bounded by so many neighbours at once, one size after the other. */
    private static final int[] GROUPS = {8, 2};

    final Lie lie;
    final Lattice lattice;
    final Chords chords;
    final Lie.Plane[] measuring;
    private final Saw saw;
    private final PassCost passCost;
    private final double widestMetres;
    private final double bedMetres;
    private final double leastHeightMetres;
    private final long[] edgeCost;
    /** Of laying the guide once. */
    private final long guideCost;
    /** Of the first face of the log beside its pass: bringing it to the saw, clamping it, laying the guide. */
    private final long logCost;
    /** Of the first face of a cant beside its pass: turning and clamping it, laying the guide. */
    private final long cantCost;

    private final Rows rows;
    private final Optional<RotRows> besideRot;
    /** Off the grid the rot is left out; but it allows two rows in a flitch, which only the bounds of the rooms cover. */
    private final boolean boundsOnly;

    private final Optional<Unedged> unedged;
    private final Stack live;
    private final Stack cant;
    private final boolean[][] known;
    private final boolean[][] knownInCant;
    private final Rooms[] rooms;
    private final Hulls level;
    private final Hulls upright;
    private final boolean mirrored;
    private final int classes;
    private final long[][] costOfWidth;
    /** None where no cants are tried. */
    private final Optional<CantPasses> cantPasses;

    /** By class, the depths below a face at which the room counts: the face, and where wane may begin. */
    private final int[][] depths;

    private final double[] widths;
    private int cantBottom;
    private int cantTop;
    private long objective;
    private long cantsInAll;
    private List<Stack.Item> best = List.of();
    private int opening;
    private long cantsOpened;
    private long flitchesEdged;
    private long cantsAtMost = Long.MAX_VALUE;
    private long unopenedBound;

    Search(
            Lie lie,
            Lattice lattice,
            List<PieceOption> options,
            SearchSpace space,
            Saw saw,
            PassCost passCost,
            Length logLength,
            double widest) {
        this.lie = lie;
        this.lattice = lattice;
        this.saw = saw;
        this.passCost = passCost;
        this.widestMetres = widest;
        leastHeightMetres = saw.leastHeight().toMetres();
        guideCost = saw.reference() == Saw.Reference.BED ? 0 : handling("laying the guide", passCost.guide());
        cantCost = guideCost + handling("turning and clamping", passCost.turning());
        logCost = cantCost + handling("bringing log and saw together", passCost.loading());
        chords = new Chords(lie, lattice, space, logLength);
        measuring = lie.measuringPlanes();
        rows = new Rows(lattice, chords);
        unedged = lattice.thicknesses.stream().allMatch(each -> each.unedged().isEmpty())
                ? Optional.empty()
                : Optional.of(new Unedged(lie, lattice, chords, options));
        besideRot =
                lattice.anywhere ? Optional.empty() : chords.rot.map(shadow -> new RotRows(lattice, chords, shadow));
        boundsOnly = lattice.anywhere && chords.rot.isPresent();
        costOfWidth = new long[3][2 * chords.count];
        for (long[] each : costOfWidth) {
            Arrays.fill(each, -1);
        }
        widths = new double[measuring.length];
        classes = lattice.thicknesses.size();
        int kinds = classes + lattice.cantHeights.length;
        int[] sizes = new int[kinds];
        int[] thicknesses = new int[classes];
        edgeCost = new long[classes];
        for (int c = 0; c < classes; c++) {
            sizes[c] = thicknesses[c] = lattice.thicknesses.get(c).units();
            double thick = lattice.metres(sizes[c]);
            edgeCost[c] = thick > widestMetres ? NO_EDGING : cost(Stage.EDGE, thick);
        }
        System.arraycopy(lattice.cantHeights, 0, sizes, classes, lattice.cantHeights.length);
        live = new Stack(lattice, chords.count, chords.centre, sizes, logCost);
        space.firstFace().ifPresent(face -> live.openOnlyAt(chords.centre + lattice.onGrid(face)));
        cant = new Stack(lattice, chords.count, chords.centre, thicknesses, cantCost);
        known = new boolean[kinds][chords.count];
        knownInCant = new boolean[classes][chords.count];
        rooms = new Rooms[classes];
        for (int c = 0; c < classes; c++) {
            rooms[c] = new Rooms(lattice, lattice.thicknesses.get(c), chords, edgeCost[c], guideCost);
        }
        level = new Hulls(chords.levelFrom, chords.levelTo);
        boolean cants = lattice.cantHeights.length > 0;
        upright = chords.alikeBothWays || !cants ? level : new Hulls(chords.uprightFrom, chords.uprightTo);
        cantPasses = cants ? Optional.of(new CantPasses(this, widest)) : Optional.empty();
        mirrored = mirrored();
        depths = lattice.thicknesses.stream()
                .map(each -> IntStream.concat(
                                IntStream.of(0), each.entries().stream().mapToInt(Lattice.Entry::waneDepth))
                        .distinct()
                        .toArray())
                .toArray(int[][]::new);
        bedMetres = bed(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true);
        levelPasses();
        bounds();
    }

    /** Height (level position) of the bed under the log (under a cant) on the saw's step, from the axis. */
    double bed(double from, double to, boolean level) {
        double lowest = Double.POSITIVE_INFINITY;
        for (Lie.Plane p : measuring) {
            lowest = Math.min(lowest, level ? p.cv - Math.sqrt(p.svv) : p.leftmost(from, to));
        }
        if (!lattice.overBed) {
            return lowest;
        }
        double step = saw.settingStep().toMetres();
        return Math.floor(lowest / step + 1e-9) * step;
    }

    /**
     * What a pass costs; its mean width is taken up to the next step of the lattice, so that each width is priced once. For a
     * bound it is taken down.
     */
    long cost(Stage stage, double meanWidth) {
        double exact = meanWidth / lattice.metres(1);
        int steps = (int) (lattice.anywhere ? Math.floor(exact + 1e-9) : Math.ceil(exact - 1e-9));
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

    private static long handling(String what, double cost) {
        if (!(cost >= 0)) {
            throw new OutOfDomainException("cost of " + what, Double.toString(cost), "", "0 or more", "");
        }
        return Lattice.millionths(cost);
    }

    /** What comes with the first pass of a log, a cant or a row beside the pass. */
    long opening(Stage stage) {
        return stage == Stage.LIVE ? logCost : stage == Stage.CANT ? cantCost : guideCost;
    }

    boolean free() {
        return passCost == PassCost.free();
    }

    /** A pass through nothing is no pass: it would only move a face off the grid for nothing. */
    private void levelPasses() {
        if (lattice.anywhere) {
            levelPassesAtLeast();
            return;
        }
        for (int q = 0; q < chords.count; q++) {
            int image = 2 * chords.centre - q - lattice.kerf;
            if (mirrored && image >= 0 && image < q) {
                live.pass[q] = live.pass[image];
                continue;
            }
            double widest = levelWidths(metres(q), metres(q + lattice.kerf), widths);
            boolean possible = widest > 0 && widest <= widestMetres;
            live.pass[q] = !possible ? Stack.FORBIDDEN : free() ? 0 : cost(Stage.LIVE, lie.mean(widths));
        }
        for (int q = 0; q < chords.count && !overLeastHeight(metres(q) - bedMetres); q++) {
            live.pass[q] = Stack.FORBIDDEN;
        }
    }

    /** Fills in the width of a level pass at each measuring plane and gives the widest place of the kerf. */
    double levelWidths(double low, double high, double[] widths) {
        double widest = 0;
        for (int i = 0; i < widths.length; i++) {
            Lie.Plane p = measuring[i];
            widths[i] = 2 * Math.max(0, p.halfLevel((low + high) / 2));
            widest = Math.max(widest, 2 * p.halfLevel(Math.min(Math.max(p.cv, low), high)));
        }
        return widest;
    }

    /** What a pass costs at least from one place to the next: a chord is least at one end of a stretch. */
    private void levelPassesAtLeast() {
        double unit = lattice.metres(1);
        for (int q = 0; q < chords.count; q++) {
            double low = metres(q);
            double high = metres(q + lattice.kerf);
            double widest = 0;
            for (int i = 0; i < widths.length; i++) {
                Lie.Plane p = measuring[i];
                double middle = (low + high) / 2;
                widths[i] = 2 * Math.max(0, Math.min(p.halfLevel(middle), p.halfLevel(middle + unit)));
                widest = Math.max(
                        widest,
                        2
                                * Math.min(
                                        p.halfLevel(Math.min(Math.max(p.cv, low), high)),
                                        p.halfLevel(Math.min(Math.max(p.cv, low + unit), high + unit))));
            }
            live.pass[q] =
                    allowed(widest, low + unit - bedMetres) ? cost(Stage.LIVE, lie.mean(widths)) : Stack.FORBIDDEN;
        }
    }

    boolean allowed(double widest, double overBed) {
        return widest <= widestMetres + 1e-9 && overBed >= leastHeightMetres - 1e-9;
    }

    boolean overLeastHeight(double overBed) {
        return overBed >= leastHeightMetres - 1e-12;
    }

    /** The widths of an upright pass through a cant, and its widest place. */
    double cantWidths(int q, double bottom, double top, double[] widths) {
        return cantPasses.orElseThrow().widths(q, bottom, top, widths);
    }

    double metres(int index) {
        return lattice.metres(index - chords.centre);
    }

    /** Room of each length at each place: the hull over all trims that are as long or longer. */
    private final class Hulls {
        final int[][] from;
        final int[][] to;
        /** By thickness; by the flitch's upper face, the lengths of each side by side. */
        final int[][] flitchFrom;

        final int[][] flitchTo;

        Hulls(int[][] roomFrom, int[][] roomTo) {
            int layers = lattice.lengths.size();
            from = new int[layers][];
            to = new int[layers][];
            for (int i = 0; i < layers; i++) {
                from[i] = i == 0 ? filled(Chords.EMPTY) : from[i - 1].clone();
                to[i] = i == 0 ? filled(-Chords.EMPTY) : to[i - 1].clone();
                for (int t = 0; t < chords.trims.length; t++) {
                    if (chords.trims[t].length() == i) {
                        for (int p = 0; p < chords.count; p++) {
                            from[i][p] = Math.min(from[i][p], roomFrom[t][p]);
                            to[i][p] = Math.max(to[i][p], roomTo[t][p]);
                        }
                    }
                }
            }
            flitchFrom = new int[classes][chords.count * layers];
            flitchTo = new int[classes][chords.count * layers];
            for (int c = 0; c < classes; c++) {
                int t = lattice.thicknesses.get(c).units();
                int wane = Math.min(lattice.thicknesses.get(c).deepestWane(), t / 2);
                for (int p = t; p < chords.count; p++) {
                    for (int i = 0; i < layers; i++) {
                        flitchFrom[c][p * layers + i] = Math.max(from[i][p - wane], from[i][p - t + wane]);
                        flitchTo[c][p * layers + i] = Math.min(to[i][p - wane], to[i][p - t + wane]);
                    }
                }
            }
        }

        private int[] filled(int value) {
            int[] array = new int[chords.count];
            Arrays.fill(array, value);
            return array;
        }
    }

    private void bounds() {
        int layers = lattice.lengths.size();
        for (int c = 0; c < classes; c++) {
            for (int p = lattice.thicknesses.get(c).units(); p < chords.count; p++) {
                long edged = rooms[c].bound(
                        level.flitchFrom[c], level.flitchTo[c], p * layers, Rows.NO_CLIP, -Rows.NO_CLIP, 0);
                live.value[c][p] = positive(Math.max(edged, unedged(c, p)));
            }
        }
        if (lattice.cantHeights.length == 0) {
            return;
        }
        Extremes[] leftmost = new Extremes[layers];
        Extremes[] rightmost = new Extremes[layers];
        for (int i = 0; i < layers; i++) {
            leftmost[i] = new Extremes(level.from[i], false);
            rightmost[i] = new Extremes(level.to[i], true);
        }
        for (int k = 0; k < lattice.cantHeights.length; k++) {
            int h = lattice.cantHeights[k];
            long[] bound = cantBound(h);
            for (int p = h; p < chords.count; p++) {
                int room = -1;
                for (int i = 0; i < layers; i++) {
                    room = Math.max(room, rightmost[i].over(p - h, p) - leftmost[i].over(p - h, p));
                }
                if (lattice.anywhere && room >= 0) {
                    // Rooms are moved to the lower step, and those of a flitch may be looked for further on.
                    room += 1 + 2 * lattice.margin;
                }
                long value = room < 0 ? 0 : bound[Math.min(room, chords.count - 1)] - cantCost;
                live.value[classes + k][p] = positive(value);
                cantsInAll += value > 0 ? 1 : 0;
            }
        }
    }

    private long unedged(int c, int top) {
        return unedged.isEmpty() ? Lattice.NONE : unedged.get().value(c, top);
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
            rows[c] = rooms[c].fullBound(height);
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

    /** Whether the log is its own mirror image from top to bottom, so that cants come in pairs of one worth. */
    private boolean mirrored() {
        boolean straight = besideRot.isEmpty();
        for (Lie.Plane p : measuring) {
            straight &= p.cv == 0 && p.suv == 0;
        }
        return straight;
    }

    /** Best live pattern first; a cant is taken only if it is worth more. */
    long solve(long incumbent, long openAtMost) {
        cantsAtMost = openAtMost;
        objective = live.solve(this, classes, incumbent);
        long toBeat = incumbent;
        if (objective > incumbent) {
            best = live.path();
            opening = live.opening();
            toBeat = objective;
        }
        if (lattice.cantHeights.length > 0) {
            tighten(toBeat);
            long withCants = live.solve(this, live.value.length, toBeat);
            if (withCants > toBeat) {
                objective = withCants;
                best = live.path();
                opening = live.opening();
            }
        }
        return objective;
    }

    /** The same with every flitch and every cant worked out: slow, and what the quick way is held against. */
    long solveExhaustively(long incumbent) {
        fillExactly(live, true, Rows.NO_CLIP, 0);
        for (int k = 0; k < lattice.cantHeights.length; k++) {
            int height = lattice.cantHeights[k];
            long[] values = live.value[classes + k];
            for (int top = height; top < chords.count; top++) {
                cantsOpened++;
                cantPasses.orElseThrow().exactly(top - height, top, cant.pass);
                fillExactly(cant, false, top - height, top);
                values[top] = positive(cant.sweep(0, classes));
            }
        }
        long toBeat = incumbent;
        for (int kinds : new int[] {classes, live.value.length}) {
            long reached = live.sweep(0, kinds);
            objective = Math.max(objective, reached);
            if (reached > toBeat) {
                toBeat = reached;
                best = live.path();
                opening = live.opening();
            }
        }
        return objective;
    }

    private void fillExactly(Stack stack, boolean ofLog, int clip0, int clip1) {
        for (int c = 0; c < classes; c++) {
            int thickness = lattice.thicknesses.get(c).units();
            for (int p = thickness; p < chords.count; p++) {
                long edged = row(c, p - thickness, p, ofLog, clip0, clip1, Long.MAX_VALUE);
                stack.value[c][p] = ofLog ? Math.max(edged, unedged(c, p)) : edged;
            }
        }
    }

    /**
     * Tightens the bounds of the cants that could stand in a stack worth more than the one to beat: first of many
     * neighbours at once, then of fewer, then of each by itself.
     */
    private void tighten(long toBeat) {
        for (int group : GROUPS) {
            if (live.sweep(0, live.value.length) <= toBeat) {
                return;
            }
            live.sweepAbove();
            for (int k = 0; k < lattice.cantHeights.length; k++) {
                int kind = classes + k;
                int height = lattice.cantHeights[k];
                // Of a mirrored log the upper half stands for both.
                int first = mirrored ? Math.max(height, chords.centre + height / 2) : height;
                for (int p = first; p < chords.count; p += group) {
                    int last = Math.min(p + group, chords.count) - 1;
                    boolean promising = false;
                    for (int top = p; top <= last; top++) {
                        promising |= drop(kind, top, toBeat);
                    }
                    if (promising) {
                        long bound = boundOfCants(kind, p, last - p);
                        for (int top = p; top <= last; top++) {
                            lower(kind, top, bound);
                        }
                    }
                }
            }
        }
    }

    /** Takes a cant from the search if nothing with it is worth more; whether it stays. */
    private boolean drop(int kind, int top, long toBeat) {
        if (live.value[kind][top] == Lattice.NONE) {
            return false;
        }
        if (live.through(kind, top) > toBeat) {
            return !known[kind][top];
        }
        known[kind][top] = true;
        live.value[kind][top] = Lattice.NONE;
        return false;
    }

    private void lower(int kind, int top, long bound) {
        long[] values = live.value[kind];
        long most = positive(bound);
        values[top] = Math.min(values[top], most);
        int image = imageOf(top, lattice.cantHeights[kind - classes]);
        if (mirrored && image >= 0 && image < chords.count) {
            values[image] = Math.min(values[image], most);
        }
    }

    /** What no cant exceeds whose upper face is the given one or one of so many above it. */
    private long boundOfCants(int kind, int top, int further) {
        int bottom = top - lattice.cantHeights[kind - classes];
        cantPasses.orElseThrow().atLeast(bottom, top, further, cant.pass);
        boundCant(bottom, top, further);
        return cant.sweep(0, classes);
    }

    @Override
    public boolean exact(int kind, int top) {
        return known[kind][top] || (boundsOnly && kind < classes);
    }

    @Override
    public long refine(int kind, int top, long need) {
        known[kind][top] = true;
        if (kind < classes) {
            long value = Math.max(levelRow(kind, top), unedged(kind, top));
            image(kind, top, lattice.thicknesses.get(kind).units(), value);
            return value;
        }
        if (cantsOpened >= cantsAtMost) {
            stopOpening();
            return Lattice.NONE;
        }
        int height = lattice.cantHeights[kind - classes];
        long value = solveCant(top - height, top, need);
        if (value <= Math.max(0, need)) {
            value = Lattice.NONE;
        }
        if (value != Lattice.NONE) {
            image(kind, top, height, value);
        }
        return value;
    }

    /** Leaves out all cants that are not worked out; what the best stack with them would be worth at most stays the bound. */
    private void stopOpening() {
        unopenedBound = live.bound();
        for (int kind = classes; kind < known.length; kind++) {
            for (int top = 0; top < chords.count; top++) {
                if (!known[kind][top]) {
                    known[kind][top] = true;
                    live.put(kind, top, Lattice.NONE);
                }
            }
        }
    }

    /** Upper face of the mirror image; that of a step ends where the step begins. */
    private int imageOf(int top, int height) {
        return 2 * chords.centre - (top - height) - (lattice.anywhere ? 1 : 0);
    }

    /** On a log that is its own mirror image an item is worth what its image is. */
    private void image(int kind, int top, int height, long value) {
        int image = imageOf(top, height);
        if (mirrored && image >= 0 && image < chords.count && !known[kind][image]) {
            known[kind][image] = true;
            live.put(kind, image, value);
        }
    }

    private long levelRow(int c, int top) {
        Lattice.Thickness thickness = lattice.thicknesses.get(c);
        int low = top - thickness.units();
        if (besideRot.isPresent()) {
            return levelRowExactly(c, top, live.value[c][top]);
        }
        long exact = rowWorth(c, low, top, true, Rows.NO_CLIP, -Rows.NO_CLIP, live.value[c][top]);
        spread(c, top, exact, 1);
        spread(c, top, exact, -1);
        return exact;
    }

    /** Flitches further on whose room is no wider are worth no more. */
    private void spread(int c, int top, long exact, int step) {
        long[] values = live.value[c];
        int thickness = lattice.thicknesses.get(c).units();
        for (int p = top; ; p += step) {
            int next = p + step;
            if (next < thickness
                    || next >= values.length
                    || values[next] <= Math.max(exact, unedged(c, next))
                    || !narrower(c, p, next, chords.levelFrom, chords.levelTo, true)) {
                return;
            }
            live.put(c, next, Math.max(exact, unedged(c, next)));
        }
    }

    /** Whether a flitch has no more room than another at any trim and depth, where it lies or, if so wanted, moved along. */
    private boolean narrower(int c, int top, int other, int[][] from, int[][] to, boolean moved) {
        int thickness = lattice.thicknesses.get(c).units();
        int least = moved ? -chords.count : 0;
        int most = moved ? chords.count : 0;
        for (int depth : depths[c]) {
            for (int t = 0; t < from.length; t++) {
                int[] f = from[t];
                int[] l = to[t];
                int otherFrom = Math.max(f[other - depth], f[other - thickness + depth]);
                int otherTo = Math.min(l[other - depth], l[other - thickness + depth]);
                if (otherFrom <= otherTo) {
                    least = Math.max(least, Math.max(f[top - depth], f[top - thickness + depth]) - otherFrom);
                    most = Math.min(most, Math.min(l[top - depth], l[top - thickness + depth]) - otherTo);
                    if (least > most) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private long levelRowExactly(int c, int top, long bound) {
        int low = top - lattice.thicknesses.get(c).units();
        return row(c, low, top, true, Rows.NO_CLIP, 0, bound);
    }

    private long row(int c, int low, int high, boolean level, int clip0, int clip1, long bound) {
        if (besideRot.isPresent()) {
            return besideRot.get().best(c, low, high, level, clip0, clip1, edgeCost[c], guideCost);
        }
        int[][] from = level ? chords.levelFrom : chords.uprightFrom;
        int[][] to = level ? chords.levelTo : chords.uprightTo;
        return rows.best(c, low, high, from, to, clip0, clip1, edgeCost[c], guideCost, bound);
    }

    /** The worth of the best row, in the quickest way that gives it. */
    private long rowWorth(int c, int low, int high, boolean level, int clip0, int clip1, long bound) {
        int[][] from = level ? chords.levelFrom : chords.uprightFrom;
        int[][] to = level ? chords.levelTo : chords.uprightTo;
        long reached = reached(c, low, high, from, to, clip0, clip1);
        if (reached == bound) {
            return reached;
        }
        OptionalLong best = rooms[c].best(from, to, low, high, clip0, clip1, reached, bound);
        if (best.isPresent()) {
            flitchesEdged++;
            return positive(best.getAsLong());
        }
        return rows.best(c, low, high, from, to, clip0, clip1, edgeCost[c], guideCost, bound);
    }

    /** What a row of one length reaches: where it meets the bound, nothing more need be worked out. */
    private long reached(int c, int low, int high, int[][] from, int[][] to, int clip0, int clip1) {
        long best = Lattice.NONE;
        for (int t = 0; t < chords.trims.length; t++) {
            int a = Math.max(Math.max(from[t][low], from[t][high]), clip0);
            int b = Math.min(Math.min(to[t][low], to[t][high]), clip1);
            if (a > b) {
                continue;
            }
            int length = chords.trims[t].length();
            boolean beside = a == clip0 || b == clip1;
            best = Math.max(best, rooms[c].ofOneLength(length, b - a, beside));
            if (a == clip0 && b == clip1) {
                for (Lattice.Entry entry : lattice.thicknesses.get(c).entries()) {
                    if (entry.width() == b - a) {
                        best = Math.max(best, entry.worth(length));
                    }
                }
            }
        }
        return positive(best);
    }

    private void openCant(int bottom, int top) {
        cantBottom = bottom;
        cantTop = top;
        cantPasses.orElseThrow().exactly(bottom, top, cant.pass);
        for (boolean[] each : knownInCant) {
            Arrays.fill(each, false);
        }
        boundCant(bottom, top, 0);
    }

    /** Bounds of the flitches of a cant, or of any of the cants up to one so many steps above it. */
    private void boundCant(int bottom, int top, int further) {
        int layers = lattice.lengths.size();
        for (int c = 0; c < classes; c++) {
            int t = lattice.thicknesses.get(c).units();
            long[] values = cant.value[c];
            int[] from = upright.flitchFrom[c];
            int[] to = upright.flitchTo[c];
            long full = positive(rooms[c].fullBound(top - bottom));
            // The image of a flitch of a mirrored log has the same room; its upper face is where the flitch's lower one
            // was.
            int image = 2 * chords.centre + t;
            int last = chords.mirroredUpright ? image / 2 : values.length - 1;
            for (int x = t; x <= last; x++) {
                int longest = x * layers;
                values[x] = from[longest] - further <= bottom && to[longest] >= top
                        ? full
                        : positive(rooms[c].bound(from, to, longest, bottom, top, further));
            }
            for (int x = last + 1; x < values.length; x++) {
                values[x] = values[image - x];
            }
        }
    }

    private long solveCant(int bottom, int top, long need) {
        cantsOpened++;
        openCant(bottom, top);
        return cant.solve(
                new Stack.Refiner() {
                    @Override
                    public boolean exact(int kind, int at) {
                        return boundsOnly || knownInCant[kind][at];
                    }

                    @Override
                    public long refine(int kind, int at, long least) {
                        knownInCant[kind][at] = true;
                        int low = at - lattice.thicknesses.get(kind).units();
                        if (besideRot.isPresent()) {
                            return uprightRow(kind, at, cant.value[kind][at]);
                        }
                        long bound = cant.value[kind][at];
                        long exact = rowWorth(kind, low, at, false, cantBottom, cantTop, bound);
                        if (exact < bound) {
                            spreadInCant(kind, at, exact, 1);
                            spreadInCant(kind, at, exact, -1);
                        }
                        return exact;
                    }
                },
                classes,
                Math.max(0, need));
    }

    private void spreadInCant(int c, int at, long exact, int step) {
        long[] values = cant.value[c];
        int thickness = lattice.thicknesses.get(c).units();
        for (int p = at; ; p += step) {
            int next = p + step;
            if (next < thickness
                    || next >= values.length
                    || values[next] <= exact
                    || !narrower(c, p, next, chords.uprightFrom, chords.uprightTo, false)) {
                return;
            }
            cant.put(c, next, exact);
        }
    }

    private long uprightRow(int c, int right, long bound) {
        int left = right - lattice.thicknesses.get(c).units();
        return row(c, left, right, false, cantBottom, cantTop, bound);
    }

    /** The best pattern from its first face down, once solved. */
    List<Cut> pattern() {
        List<Cut> cuts = new ArrayList<>();
        for (Stack.Item item : best) {
            if (item.kind() < classes) {
                long edged = levelRowExactly(item.kind(), item.top(), live.value[item.kind()][item.top()]);
                int bottom = item.top() - lattice.thicknesses.get(item.kind()).units();
                boolean whole = unedged(item.kind(), item.top()) > edged;
                cuts.add(new Cut(
                        item.top(),
                        bottom,
                        whole ? List.of() : strips(),
                        whole ? unedged.flatMap(each -> each.piece(item.kind(), item.top())) : Optional.empty(),
                        -1,
                        List.of()));
            } else {
                int bottom = item.top() - lattice.cantHeights[item.kind() - classes];
                solveCant(bottom, item.top(), 0);
                cantsOpened--;
                List<Cut> inside = new ArrayList<>();
                for (Stack.Item flitch : cant.path()) {
                    uprightRow(flitch.kind(), flitch.top(), Long.MAX_VALUE);
                    inside.add(new Cut(
                            flitch.top(),
                            flitch.top()
                                    - lattice.thicknesses.get(flitch.kind()).units(),
                            strips(),
                            Optional.empty(),
                            -1,
                            List.of()));
                }
                cuts.add(new Cut(item.top(), bottom, List.of(), Optional.empty(), cant.opening(), inside));
            }
        }
        return cuts;
    }

    private List<Rows.Strip> strips() {
        return besideRot.map(RotRows::strips).orElseGet(rows::strips);
    }

    long objective() {
        return objective;
    }

    /** No pattern of the frame is worth more, nor more than the value that was to be beaten. */
    long bound() {
        return Math.max(objective, unopenedBound);
    }

    int opening() {
        return opening;
    }

    long flitchesEdged() {
        return flitchesEdged
                + rows.rowsWorkedOut
                + besideRot.map(beside -> beside.rowsWorkedOut).orElse(0L);
    }

    long cantsOpened() {
        return cantsOpened;
    }

    long cantsInAll() {
        return cantsInAll;
    }
}
