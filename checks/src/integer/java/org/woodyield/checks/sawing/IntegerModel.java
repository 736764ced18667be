package org.woodyield.checks.sawing;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToLongFunction;

/**
 * The best pattern as one integer program: a yes or no for each pass, item, slab and strip in its place, tied by linear
 * constraints. A strip counts only if its flitch does, a flitch only if its cant does.
 */
final class IntegerModel {

    private final StatedSpace space;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder objective = LinearExpr.newBuilder();

    private IntegerModel(StatedSpace space) {
        this.space = space;
    }

    /** The greatest worth less cost over all frames, in millionths; zero if nothing is worth its passes. */
    static long best(Problem problem) {
        long best = 0;
        for (StatedSpace space : problem.frames()) {
            best = Math.max(best, new IntegerModel(space).solve());
        }
        return best;
    }

    private long solve() {
        BoolVar sawn = model.newBoolVar("sawn");
        stack(sawn, space::livePass, true, 0, 0, objective);
        model.maximize(objective);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("not solved: " + status);
        }
        return Math.round(solver.objectiveValue());
    }

    /** Sums of what comes into a face and what goes on from it. */
    private static final class Face {
        final LinearExprBuilder opened = LinearExpr.newBuilder();
        final LinearExprBuilder fromItems = LinearExpr.newBuilder();
        final LinearExprBuilder fromSlabs = LinearExpr.newBuilder();
        final LinearExprBuilder toItems = LinearExpr.newBuilder();
        final LinearExprBuilder toSlabs = LinearExpr.newBuilder();
    }

    /**
     * A stack of the log (level) or of a cant between two heights. Each face is reached once, and left by at most one item or
     * slab; after a slab follows an item. What it is worth less its passes is added to the value.
     */
    private void stack(
            Literal used, IntToLongFunction passCost, boolean level, int bottom, int top, LinearExprBuilder value) {
        Map<Integer, Long> cost = new HashMap<>();
        Map<Integer, Face> faces = new HashMap<>();
        for (int p = -space.reach; p <= space.reach; p++) {
            long pass = passCost.applyAsLong(p);
            if (pass >= 0) {
                cost.put(p, pass);
                faces.put(p, new Face());
            }
        }
        LinearExprBuilder openings = LinearExpr.newBuilder();
        for (int p : cost.keySet()) {
            Face face = faces.get(p);
            if (p % space.grid == 0) {
                BoolVar open = model.newBoolVar("open " + p);
                openings.add(open);
                face.opened.add(open);
                value.addTerm(open, -cost.get(p) - (level ? space.openingOfLog() : space.openingOfCant()));
            }
            for (int thickness : space.thicknesses) {
                item(p, thickness, false, level, bottom, top, cost, faces, value);
            }
            if (level) {
                for (int height : space.heights) {
                    item(p, height, true, true, bottom, top, cost, faces, value);
                }
            }
            for (int next = p - space.leastSlab; next >= -space.reach; next -= space.step) {
                if (cost.containsKey(next)) {
                    BoolVar slab = model.newBoolVar("slab " + p + " " + next);
                    face.toSlabs.add(slab);
                    faces.get(next).fromSlabs.add(slab);
                    value.addTerm(slab, -cost.get(next));
                }
            }
        }
        model.addEquality(openings, used);
        for (Face face : faces.values()) {
            LinearExpr in = LinearExpr.newBuilder()
                    .add(face.opened.build())
                    .add(face.fromItems.build())
                    .build();
            LinearExpr out = LinearExpr.newBuilder()
                    .add(face.toItems.build())
                    .add(face.toSlabs.build())
                    .build();
            LinearExpr all =
                    LinearExpr.newBuilder().add(in).add(face.fromSlabs.build()).build();
            model.addLessOrEqual(all, 1);
            model.addLessOrEqual(out, all);
            model.addLessOrEqual(face.toSlabs.build(), in);
            model.addLessOrEqual(face.fromSlabs.build(), face.toItems.build());
        }
    }

    private void item(
            int face,
            int size,
            boolean cant,
            boolean level,
            int bottom,
            int top,
            Map<Integer, Long> cost,
            Map<Integer, Face> faces,
            LinearExprBuilder value) {
        int low = face - size;
        int next = low - space.kerf;
        if (!cost.containsKey(next)) {
            return;
        }
        LinearExprBuilder own = LinearExpr.newBuilder();
        BoolVar item = model.newBoolVar((cant ? "cant " : "flitch ") + low + " " + size);
        if (cant) {
            stack(item, at -> space.cantPass(at, low, face), false, low, face, own);
        } else {
            flitch(item, size, low, level, bottom, top, own);
        }
        faces.get(face).toItems.add(item);
        faces.get(next).fromItems.add(item);
        value.addTerm(item, -cost.get(next));
        value.add(own.build());
        // An item that is not worth more than the passes within it is none.
        model.addGreaterOrEqual(own.build(), item);
    }

    /**
     * A flitch is one row of strips; or, where rot runs through it, two, on either side of the rot; or it keeps its bark edges.
     */
    private void flitch(
            Literal used, int thickness, int low, boolean level, int bottom, int top, LinearExprBuilder value) {
        int from = level ? -space.reach : Math.max(bottom, -space.reach);
        int to = level ? space.reach : Math.min(top, space.reach);
        List<Literal> ways = new ArrayList<>();
        BoolVar one = model.newBoolVar("one row");
        ways.add(one);
        row(one, thickness, low, level, bottom, top, from, to, value);
        Optional<int[]> rot = space.rot(thickness, low, !level);
        if (rot.isPresent()) {
            int first = rot.get()[0];
            int beyond = Math.max(rot.get()[1], first + 2 * space.kerf);
            BoolVar two = model.newBoolVar("two rows");
            ways.add(two);
            row(two, thickness, low, level, bottom, top, from, Math.min(first, to), value);
            row(two, thickness, low, level, bottom, top, Math.max(beyond, from), to, value);
        }
        long whole = level ? space.withBarkEdges(thickness, low) : -1;
        if (whole >= 0) {
            BoolVar edges = model.newBoolVar("bark edges");
            ways.add(edges);
            value.addTerm(edges, whole);
        }
        model.addEquality(sum(ways), used);
    }

    /** A row of strips between two places; not used if no strip fits. */
    private void row(
            Literal used,
            int thickness,
            int low,
            boolean level,
            int bottom,
            int top,
            int from,
            int to,
            LinearExprBuilder value) {
        long edge = space.edge(thickness);
        Map<Integer, List<Literal>> starting = new HashMap<>();
        Map<Integer, List<Literal>> ending = new HashMap<>();
        for (StatedSpace.Size size : space.sizes) {
            for (int x = from; size.thickness() == thickness && x + size.width() <= to; x++) {
                long worth = space.strip(size, x, low, !level);
                if (worth >= 0) {
                    BoolVar strip = model.newBoolVar("strip " + x);
                    starting.computeIfAbsent(x, at -> new ArrayList<>()).add(strip);
                    ending.computeIfAbsent(x + size.width(), at -> new ArrayList<>())
                            .add(strip);
                    value.addTerm(strip, worth - edge);
                }
            }
        }
        if (starting.isEmpty()) {
            model.addEquality(used, 0);
            return;
        }
        // The row begins and ends once; otherwise a strip begins exactly a kerf beyond the end of another.
        LinearExprBuilder begins = LinearExpr.newBuilder();
        LinearExprBuilder ends = LinearExpr.newBuilder();
        // The guide leads a row that touches no sawn side.
        BoolVar led = model.newBoolVar("led");
        LinearExprBuilder ridden = LinearExpr.newBuilder().add(led);
        value.addTerm(led, -space.guide());
        for (int x = from; x <= to + space.kerf; x++) {
            List<Literal> here = starting.getOrDefault(x, List.of());
            List<Literal> before = ending.getOrDefault(x - space.kerf, List.of());
            if (here.isEmpty() && before.isEmpty()) {
                continue;
            }
            BoolVar begin = model.newBoolVar("begin " + x);
            BoolVar end = model.newBoolVar("end " + x);
            begins.add(begin);
            ends.add(end);
            model.addEquality(
                    LinearExpr.newBuilder().add(sum(here)).add(end).build(),
                    LinearExpr.newBuilder().add(sum(before)).add(begin).build());
            model.addLessOrEqual(begin, sum(here));
            model.addLessOrEqual(end, sum(before));
            boolean onClip0 = !level && x == bottom;
            boolean onClip1 = !level && x - space.kerf == top;
            value.addTerm(begin, onClip0 ? 0 : -edge);
            if (onClip0) {
                ridden.add(begin);
            }
            if (onClip1) {
                ridden.add(end);
                value.addTerm(end, edge);
            }
        }
        model.addGreaterOrEqual(ridden.build(), used);
        model.addEquality(begins, used);
        model.addEquality(ends, used);
    }

    private static LinearExpr sum(List<Literal> literals) {
        return LinearExpr.sum(literals.toArray(Literal[]::new));
    }
}
