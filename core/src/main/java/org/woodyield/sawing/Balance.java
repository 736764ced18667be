package org.woodyield.sawing;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.woodyield.measure.Length;
import org.woodyield.measure.Volume;

/**
 * Integrates the wood in each rectangle of the end view. Areas of a section within a rectangle are closed forms (the
 * integral of its chords); along the log Gauss's rule with five points runs on stretches between stations and piece
 * ends, the same ones for every rectangle, so that the shares add up; each lies within two hundred-thousandths of the log of
 * what ever more sections come to. Rot is a share of its own: its circle is taken out of each of the others.
 */
final class Balance {

    /** The longest stretch to which Gauss's rule is put at once, as a share of the log. */
    private static final double LONGEST_SHARE = 0.25;

    private final Lie lie;
    private final double[] bounds;
    private final Lie.Plane[] ends;
    /** Sections at the nodes of each stretch, made when a rectangle first needs them. */
    private final Lie.Plane[][] nodes;

    private Balance(Lie lie, List<SawnPiece> pieces) {
        this.lie = lie;
        double whole = lie.solid().lengthMetres();
        TreeSet<Double> cuts = new TreeSet<>();
        for (int i = 0; i < lie.solid().stationCount(); i++) {
            cuts.add(lie.solid().station(i).zMetres());
        }
        for (SawnPiece piece : pieces) {
            cuts.add(at(piece.start(), whole));
            cuts.add(at(piece.end(), whole));
        }
        lie.solid().rot().ifPresent(rot -> {
            cuts.add(rot.fromMetres());
            cuts.add(rot.toMetres());
        });
        bounds = cuts.stream().mapToDouble(Double::doubleValue).toArray();
        ends = cuts.stream().map(lie::inside).toArray(Lie.Plane[]::new);
        nodes = new Lie.Plane[bounds.length][];
    }

    private static double at(Length z, double whole) {
        double metres = Math.min(z.toMetres(), whole);
        // A length is held to the nanometre; an end that misses the log's own by less is the log's end.
        return whole - metres < 2e-9 ? whole : metres;
    }

    static WoodBalance of(Lie lie, List<SawnPiece> pieces, List<SawPass> passes, List<Offcut> offcuts) {
        Balance balance = new Balance(lie, pieces);
        double whole = lie.solid().lengthMetres();
        double lumber = 0;
        double trim = 0;
        for (SawnPiece piece : pieces) {
            double start = at(piece.start(), whole);
            double end = at(piece.end(), whole);
            lumber += balance.wood(piece.faces(), start, end);
            trim += balance.wood(piece.faces(), 0, start) + balance.wood(piece.faces(), end, whole);
        }
        double kerf = 0;
        for (SawPass pass : passes) {
            kerf += balance.wood(pass.kerf(), 0, whole);
        }
        double slab = 0;
        double edging = 0;
        for (Offcut offcut : offcuts) {
            double wood = balance.wood(offcut.place(), 0, whole);
            if (offcut.kind() == Offcut.Kind.SLAB) {
                slab += wood;
            } else {
                edging += wood;
            }
        }
        return new WoodBalance(
                new Volume(lumber),
                new Volume(kerf),
                new Volume(slab),
                new Volume(edging),
                new Volume(trim),
                lie.solid().rotVolume());
    }

    /** The wood of one offcut, as {@link #of} counts it. */
    static Volume wood(Lie lie, List<SawnPiece> pieces, Offcut offcut) {
        return new Volume(
                new Balance(lie, pieces).wood(offcut.place(), 0, lie.solid().lengthMetres()));
    }

    /** The wood of one piece between its trimmed ends, as {@link #of} counts it. */
    static Volume wood(Lie lie, List<SawnPiece> pieces, SawnPiece piece) {
        double whole = lie.solid().lengthMetres();
        return new Volume(
                new Balance(lie, pieces).wood(piece.faces(), at(piece.start(), whole), at(piece.end(), whole)));
    }

    private double wood(Rectangle place, double from, double to) {
        double u1 = place.left().toMetres();
        double u2 = place.right().toMetres();
        double v1 = place.bottom().toMetres();
        double v2 = place.top().toMetres();
        double sum = 0;
        for (int i = 0; i + 1 < bounds.length; i++) {
            if (bounds[i] < from || bounds[i + 1] > to) {
                continue;
            }
            boolean rotten = lie.solid().rot().isPresent()
                    && lie.rot((bounds[i] + bounds[i + 1]) / 2).isPresent();
            if (!rotten && encloses(ends[i], u1, u2, v1, v2) && encloses(ends[i + 1], u1, u2, v1, v2)) {
                sum += (u2 - u1) * (v2 - v1) * (bounds[i + 1] - bounds[i]);
                continue;
            }
            Lie.Plane[] sections = sections(i);
            double h = (bounds[i + 1] - bounds[i]) * FivePoints.COUNT / sections.length;
            for (int at = 0; at < sections.length; at++) {
                double area = area(sections[at], u1, u2, v1, v2);
                if (rotten) {
                    Lie.Plane rot = lie.rot(sections[at].z).orElseThrow();
                    area -= area(rot, u1, u2, v1, v2);
                }
                sum += FivePoints.weight(at % FivePoints.COUNT) * h / 2 * area;
            }
        }
        return sum;
    }

    private Lie.Plane[] sections(int stretch) {
        Lie.Plane[] known = nodes[stretch];
        if (known == null) {
            double length = bounds[stretch + 1] - bounds[stretch];
            int parts = Math.max(
                    1, (int) Math.ceil(length / (LONGEST_SHARE * lie.solid().lengthMetres()) - 1e-9));
            // Where a log bends or flares its outline leaves a rectangle faster than taper alone would take it out.
            parts *= lie.solid().stationCount() > 2 ? 2 : 1;
            double h = length / parts;
            known = new Lie.Plane[parts * FivePoints.COUNT];
            for (int at = 0; at < known.length; at++) {
                int part = at / FivePoints.COUNT;
                double middle = bounds[stretch] + h * (part + 0.5);
                known[at] = lie.inside(middle + FivePoints.node(at % FivePoints.COUNT) * h / 2);
            }
            nodes[stretch] = known;
        }
        return known;
    }

    private static boolean encloses(Lie.Plane p, double u1, double u2, double v1, double v2) {
        return encloses(p, u1, u2, v1) && encloses(p, u1, u2, v2);
    }

    private static boolean encloses(Lie.Plane p, double u1, double u2, double v) {
        double half = p.halfLevel(v);
        double mid = p.midLevel(v);
        return half >= 0 && mid - half <= u1 && mid + half >= u2;
    }

    /** Area of a section within a rectangle. */
    private static double area(Lie.Plane p, double u1, double u2, double v1, double v2) {
        double reach = Math.sqrt(p.svv);
        double low = Math.max(v1, p.cv - reach);
        double high = Math.min(v2, p.cv + reach);
        if (!(low < high)) {
            return 0;
        }
        // A side that the outline only touches must not count as crossed here and passed there.
        double halfLeft = p.halfUpright(u1);
        double halfRight = p.halfUpright(u2);
        boolean crossesLeft = halfLeft >= 0;
        boolean crossesRight = halfRight >= 0;
        if ((!crossesLeft && u1 > p.cu) || (!crossesRight && u2 < p.cu)) {
            return 0;
        }
        // Heights at which the outline crosses a side of the rectangle: between them each end of the chord is either.
        double[] heights = new double[6];
        int n = 0;
        heights[n++] = low;
        heights[n++] = high;
        for (int side = 0; side < 2; side++) {
            double u = side == 0 ? u1 : u2;
            double half = side == 0 ? halfLeft : halfRight;
            if (half >= 0) {
                for (int sign = -1; sign <= 1; sign += 2) {
                    double v = p.midUpright(u) + sign * half;
                    if (v > low && v < high) {
                        heights[n++] = v;
                    }
                }
            }
        }
        if (n > 2) {
            Arrays.sort(heights, 0, n);
        }
        double sum = 0;
        for (int i = 0; i + 1 < n; i++) {
            double a = heights[i];
            double b = heights[i + 1];
            double middle = (a + b) / 2;
            double half = Math.max(0, p.halfLevel(middle));
            double centre = p.midLevel(middle);
            boolean leftSide = crossesLeft && centre - half < u1;
            boolean rightSide = crossesRight && centre + half > u2;
            if ((leftSide ? u1 : centre - half) >= (rightSide ? u2 : centre + half)) {
                continue;
            }
            double bulge = leftSide && rightSide ? 0 : segment(p, b) - segment(p, a);
            double middles = centre * (b - a);
            sum += (rightSide ? u2 * (b - a) : middles + bulge) - (leftSide ? u1 * (b - a) : middles - bulge);
        }
        return sum;
    }

    private static double segment(Lie.Plane p, double v) {
        double reach = Math.sqrt(p.svv);
        double d = Math.min(Math.max((v - p.cv) / reach, -1), 1);
        double widest = Math.sqrt(Math.max(0, p.suu - p.suv * p.suv / p.svv));
        return widest * reach * UnitCircle.halfChords(d);
    }
}
