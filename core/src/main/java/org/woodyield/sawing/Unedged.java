package org.woodyield.sawing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

/**
 * Flitches that keep their bark edges: what each is worth at each height, whole and trimmed to a length. Where a stretch of
 * the log is convex the width of a face has its least value at an end of the stretch; the mean is taken by Gauss's rule
 * with five points on each stretch, over both faces.
 */
final class Unedged {

    /** A flitch as it is sold. */
    record Piece(int option, Chords.Trim trim, Length width, long worth) {}

    private final Lie lie;
    private final Lattice lattice;
    private final Chords chords;
    private final List<PieceOption> options;
    private final double[][] cuts;
    /** By trim: sections at its cuts, and at the nodes between them in their order. */
    private final Lie.Plane[][] atCuts;

    private final Lie.Plane[][] atNodes;
    /** A bound is taken a hair higher, since a place between steps is worked out otherwise than the same place on one. */
    private final double hair;

    private final long[][] value;

    Unedged(Lie lie, Lattice lattice, Chords chords, List<PieceOption> options) {
        this.lie = lie;
        this.lattice = lattice;
        this.chords = chords;
        this.options = options;
        cuts = new double[chords.allTrims.length][];
        atCuts = new Lie.Plane[cuts.length][];
        atNodes = new Lie.Plane[cuts.length][];
        for (int t = 0; t < cuts.length; t++) {
            cuts[t] = cuts(chords.allTrims[t]);
            atCuts[t] = Arrays.stream(cuts[t]).mapToObj(lie::inside).toArray(Lie.Plane[]::new);
            atNodes[t] = nodes(cuts[t]);
        }
        hair = lattice.anywhere ? 1e-12 : 0;
        value = new long[lattice.thicknesses.size()][chords.count];
        for (int c = 0; c < value.length; c++) {
            for (int top = 0; top < chords.count; top++) {
                value[c][top] = piece(c, top).map(Piece::worth).orElse(Lattice.NONE);
            }
        }
    }

    private double[] cuts(Chords.Trim trim) {
        double whole = lie.solid().lengthMetres();
        double start = Math.min(trim.start().toMetres(), whole);
        double end = Math.min(trim.end().toMetres(), whole);
        TreeSet<Double> places = new TreeSet<>(List.of(start, end));
        for (int i = 0; i < lie.solid().stationCount(); i++) {
            double z = lie.solid().station(i).zMetres();
            if (z > start && z < end) {
                places.add(z);
            }
        }
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private Lie.Plane[] nodes(double[] places) {
        int each = FivePoints.COUNT;
        Lie.Plane[] nodes = new Lie.Plane[(places.length - 1) * each];
        for (int i = 0; i + 1 < places.length; i++) {
            double half = (places[i + 1] - places[i]) / 2;
            double middle = (places[i + 1] + places[i]) / 2;
            for (int node = 0; node < each; node++) {
                nodes[i * each + node] = lie.inside(middle + FivePoints.node(node) * half);
            }
        }
        return nodes;
    }

    /** What the best flitch of a thickness is worth unedged, by its upper face. */
    long value(int c, int top) {
        return value[c][top];
    }

    /** The best flitch of a thickness; of equals the first in the order of options, then of trims. */
    Optional<Piece> piece(int c, int top) {
        Lattice.Thickness thickness = lattice.thicknesses.get(c);
        int low = top - thickness.units();
        if (low < 0) {
            return Optional.empty();
        }
        Optional<Piece> best = Optional.empty();
        for (int o : thickness.unedged()) {
            PieceOption option = options.get(o);
            for (int t = 0; t < cuts.length; t++) {
                Chords.Trim trim = chords.allTrims[t];
                Length length = lattice.lengths.get(trim.length());
                Optional<LengthWorth> paid = option.lengths().stream()
                        .filter(each -> each.length().equals(length))
                        .findFirst();
                if (paid.isEmpty() || !clear(t, low, top)) {
                    continue;
                }
                double bottomFace = lattice.metres(low - chords.centre);
                double topFace = lattice.metres(top - chords.centre);
                double least = least(t, bottomFace, topFace) + hair;
                if (!(least > 0)) {
                    continue;
                }
                double metres = option.edges() == PieceOption.Edges.BARK_LEAST_WIDTH
                        ? least
                        : mean(t, bottomFace, topFace) + hair;
                Length width = Length.min(
                        Length.ofMetres(metres, Rounding.DOWN).roundedTo(option.widthStep(), Rounding.DOWN),
                        option.greatestWidth());
                long worth = Lattice.millionths(paid.get().worth()
                        * (width.toMetres() / option.leastWidth().toMetres()));
                if (width.compareTo(option.leastWidth()) >= 0
                        && worth > best.map(Piece::worth).orElse(0L)) {
                    best = Optional.of(new Piece(o, trim, width, worth));
                }
            }
        }
        return best;
    }

    private boolean clear(int trim, int low, int high) {
        if (chords.rotOfAll.isPresent() && !lattice.anywhere) {
            for (int p = low; p < high; p++) {
                if (chords.rotOfAll.get().levelFrom[trim][p] <= chords.rotOfAll.get().levelTo[trim][p]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Half the level chord at a face; for a bound off the grid the widest up to the next step. */
    private double half(Lie.Plane plane, double face) {
        return plane.halfLevel(lattice.anywhere ? Math.min(Math.max(plane.cv, face), face + lattice.metres(1)) : face);
    }

    private double least(int trim, double bottom, double top) {
        double least = Double.POSITIVE_INFINITY;
        for (Lie.Plane plane : atCuts[trim]) {
            least = Math.min(least, 2 * Math.min(half(plane, bottom), half(plane, top)));
        }
        return least;
    }

    private double mean(int trim, double bottom, double top) {
        double[] places = cuts[trim];
        double sum = 0;
        for (int i = 0; i + 1 < places.length; i++) {
            double half = (places[i + 1] - places[i]) / 2;
            for (int node = 0; node < FivePoints.COUNT; node++) {
                Lie.Plane plane = atNodes[trim][i * FivePoints.COUNT + node];
                sum += FivePoints.weight(node) * half * (half(plane, bottom) + half(plane, top));
            }
        }
        return sum / (places[places.length - 1] - places[0]);
    }
}
