package org.woodyield.sawing;

import java.util.Arrays;
import java.util.Optional;
import java.util.TreeSet;
import org.woodyield.log.LogSolid;

/**
 * What the rot covers in the end view, by trim. Between two stations its circle moves straight, so that it covers a
 * capsule; a piece is clear of the rot exactly when its faces are clear of all capsules along its trim. Held for each cell
 * of the lattice (from one index to the next, level or upright): the hull of what is covered, rounded outward.
 */
final class RotShadow {

    /** By trim, by cell: first and last index of the hull; from above to where the cell is clear. */
    final int[][] levelFrom;

    final int[][] levelTo;
    final int[][] uprightFrom;
    final int[][] uprightTo;

    /** The same over the whole length. */
    final int[] allLevelFrom;

    final int[] allLevelTo;
    final int[] allUprightFrom;
    final int[] allUprightTo;

    private RotShadow(int[][][] byTrim, int[][] all) {
        levelFrom = byTrim[0];
        levelTo = byTrim[1];
        uprightFrom = byTrim[2];
        uprightTo = byTrim[3];
        allLevelFrom = all[0];
        allLevelTo = all[1];
        allUprightFrom = all[2];
        allUprightTo = all[3];
    }

    /** The path of a circle between two places, in the frame; across is the direction of the faces. */
    private record Capsule(double across0, double through0, double across1, double through1, double radius) {

        /** Where the capsule reaches farthest toward plus across. */
        double throughAtFarthest() {
            return across0 >= across1 ? through0 : through1;
        }

        /** How far it reaches toward plus across at a height; minus infinity where it does not. */
        double reach(double through) {
            double far = Math.max(disc(across0, through0, through), disc(across1, through1, through));
            double da = across1 - across0;
            double dt = through1 - through0;
            double length = Math.sqrt(da * da + dt * dt);
            if (dt != 0) {
                // The straight flank: the path moved by a radius toward plus across.
                double side = dt > 0 ? 1 : -1;
                double na = side * dt / length * radius;
                double nt = -side * da / length * radius;
                double share = (through - through0 - nt) / dt;
                if (share >= 0 && share <= 1) {
                    far = Math.max(far, across0 + na + share * da);
                }
            }
            return far;
        }

        private double disc(double across, double at, double through) {
            double rest = radius * radius - (through - at) * (through - at);
            return rest >= 0 ? across + Math.sqrt(rest) : Double.NEGATIVE_INFINITY;
        }

        double low() {
            return Math.min(through0, through1) - radius;
        }

        double high() {
            return Math.max(through0, through1) + radius;
        }

        /** The farthest reach in a band of heights. */
        double farthest(double from, double to) {
            double a = Math.max(from, low());
            double b = Math.min(to, high());
            return a > b ? Double.NEGATIVE_INFINITY : reach(Math.min(Math.max(throughAtFarthest(), a), b));
        }

        Capsule mirrored() {
            return new Capsule(-across0, through0, -across1, through1, radius);
        }

        static Capsule level(Lie.Plane a, Lie.Plane b, double radius) {
            return new Capsule(a.cu, a.cv, b.cu, b.cv, radius);
        }

        static Capsule upright(Lie.Plane a, Lie.Plane b, double radius) {
            return new Capsule(a.cv, a.cu, b.cv, b.cu, radius);
        }
    }

    static Optional<RotShadow> of(Lie lie, Lattice lattice, Chords.Trim[] trims, int centre, int count) {
        return lie.solid().rot().map(rot -> cast(lie, rot, lattice, trims, centre, count));
    }

    private static RotShadow cast(
            Lie lie, LogSolid.Rot rot, Lattice lattice, Chords.Trim[] trims, int centre, int count) {
        double from = rot.fromMetres();
        double to = rot.toMetres();
        TreeSet<Double> cuts = new TreeSet<>();
        cuts.add(from);
        cuts.add(to);
        for (int i = 0; i < lie.solid().stationCount(); i++) {
            cuts.add(lie.solid().station(i).zMetres());
        }
        for (Chords.Trim trim : trims) {
            cuts.add(trim.start().toMetres());
            cuts.add(trim.end().toMetres());
        }
        double[] z = cuts.subSet(from, true, to, true).stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        int[][][] stretches = new int[4][z.length - 1][];
        for (int i = 0; i + 1 < z.length; i++) {
            Lie.Plane a = lie.rot(z[i]).orElseThrow();
            Lie.Plane b = lie.rot(z[i + 1]).orElseThrow();
            for (int upright = 0; upright < 2; upright++) {
                Capsule capsule = upright == 0
                        ? Capsule.level(a, b, rot.radiusMetres())
                        : Capsule.upright(a, b, rot.radiusMetres());
                stretches[2 * upright][i] = negated(far(capsule.mirrored(), lattice, centre, count), centre);
                stretches[2 * upright + 1][i] = far(capsule, lattice, centre, count);
            }
        }
        int[][][] byTrim = new int[4][trims.length][];
        int[][] all = new int[4][];
        for (int side = 0; side < 4; side++) {
            for (int t = 0; t < trims.length; t++) {
                byTrim[side][t] = hull(
                        stretches[side],
                        z,
                        trims[t].start().toMetres(),
                        trims[t].end().toMetres(),
                        side,
                        count);
            }
            all[side] = hull(stretches[side], z, from, to, side, count);
        }
        return new RotShadow(byTrim, all);
    }

    /** By cell the last index that the capsule covers, rounded up; minus EMPTY where it covers none. */
    private static int[] far(Capsule capsule, Lattice lattice, int centre, int count) {
        int[] far = new int[count];
        double unit = lattice.metres(1);
        for (int p = 0; p < count; p++) {
            double reach = capsule.farthest(lattice.metres(p - centre), lattice.metres(p + 1 - centre));
            far[p] = reach == Double.NEGATIVE_INFINITY ? -Chords.EMPTY : centre + (int) Math.ceil(reach / unit);
        }
        return far;
    }

    private static int[] negated(int[] mirrored, int centre) {
        int[] first = new int[mirrored.length];
        for (int p = 0; p < first.length; p++) {
            first[p] = mirrored[p] == -Chords.EMPTY ? Chords.EMPTY : 2 * centre - mirrored[p];
        }
        return first;
    }

    private static int[] hull(int[][] stretches, double[] z, double from, double to, int side, int count) {
        int[] hull = new int[count];
        Arrays.fill(hull, side % 2 == 0 ? Chords.EMPTY : -Chords.EMPTY);
        for (int i = 0; i + 1 < z.length; i++) {
            if (z[i + 1] > from && z[i] < to) {
                for (int p = 0; p < count; p++) {
                    hull[p] = side % 2 == 0 ? Math.min(hull[p], stretches[i][p]) : Math.max(hull[p], stretches[i][p]);
                }
            }
        }
        return hull;
    }

    /** Whether one trim is nowhere nearer to the rot than another. */
    boolean clearer(int one, int other) {
        for (int p = 0; p < allLevelFrom.length; p++) {
            if (levelFrom[one][p] < levelFrom[other][p]
                    || levelTo[one][p] > levelTo[other][p]
                    || uprightFrom[one][p] < uprightFrom[other][p]
                    || uprightTo[one][p] > uprightTo[other][p]) {
                return false;
            }
        }
        return true;
    }
}
