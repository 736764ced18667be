package org.woodyield.checks.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Frame;

/**
 * A log in a frame, worked out in the log's own directions: a line of the frame is turned back into the log and cut with the
 * ellipse there. Nothing of it is taken from the search.
 */
final class LyingLog {

    /** An open or empty stretch: no number is inside when {@code from > to}. */
    record Stretch(double from, double to) {
        static final Stretch NONE = new Stretch(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

        boolean any() {
            return from <= to;
        }

        double within(double low, double high) {
            return Math.max(0, Math.min(to, high) - Math.max(from, low));
        }
    }

    final LogSolid solid;
    final double lift;
    private final double cos;
    private final double sin;

    LyingLog(LogSolid solid, Frame.Lay lay, double turnDegrees, Length offset) {
        this.solid = solid;
        double turn = StrictMath.toRadians(turnDegrees);
        cos = StrictMath.cos(turn);
        sin = StrictMath.sin(turn);
        LogSolid.Section small = solid.section(0);
        LogSolid.Section large = solid.section(solid.lengthMetres());
        double raised = switch (lay) {
            case AXIS -> 0;
            case OFFSET -> offset.toMetres();
            case BARK_ABOVE -> reach(small, sin, cos) - reach(large, sin, cos);
            case BARK_BELOW -> reach(large, -sin, -cos) - reach(small, -sin, -cos);
        };
        lift = Length.ofMetres(raised, Rounding.HALF_EVEN).toMetres();
    }

    /** How far a section reaches in a direction of the log. */
    private static double reach(LogSolid.Section s, double dx, double dy) {
        double p = s.halfLongMetres() * dx;
        double q = s.halfShortMetres() * dy;
        return s.centreXMetres() * dx + s.centreYMetres() * dy + Math.sqrt(p * p + q * q);
    }

    double liftAt(double z) {
        return lift * (z / solid.lengthMetres() - 0.5);
    }

    /** Whether a place of the frame lies in the wood. */
    boolean inside(double u, double v, double z) {
        double w = v - liftAt(z);
        return solid.section(z).contains(cos * u + sin * w, cos * w - sin * u);
    }

    /** Level line at a height through a section, in the frame. */
    Stretch level(LogSolid.Section s, double z, double v) {
        double w = v - liftAt(z);
        return line(s, sin * w, cos * w, cos, -sin, 0);
    }

    /** Upright line at a level place through a section, in the frame. */
    Stretch upright(LogSolid.Section s, double z, double u) {
        return line(s, cos * u, -sin * u, sin, cos, liftAt(z));
    }

    private static Stretch line(LogSolid.Section s, double x0, double y0, double dx, double dy, double shift) {
        double ex = dx / s.halfLongMetres();
        double ey = dy / s.halfShortMetres();
        double fx = (x0 - s.centreXMetres()) / s.halfLongMetres();
        double fy = (y0 - s.centreYMetres()) / s.halfShortMetres();
        double a = ex * ex + ey * ey;
        double b = ex * fx + ey * fy;
        double root = b * b - a * (fx * fx + fy * fy - 1);
        if (!(root > 0)) {
            return Stretch.NONE;
        }
        double half = Math.sqrt(root) / a;
        return new Stretch(-b / a - half + shift, -b / a + half + shift);
    }

    /** Lowest and highest height of a section. */
    Stretch heights(LogSolid.Section s, double z) {
        return new Stretch(-reach(s, -sin, -cos) + liftAt(z), reach(s, sin, cos) + liftAt(z));
    }

    /** Leftmost and rightmost place of a section within a band of heights. */
    Stretch sides(LogSolid.Section s, double z, double low, double high) {
        Stretch all = heights(s, z);
        if (all.to() < low || all.from() > high) {
            return Stretch.NONE;
        }
        // The extreme places lie where the outline's tangent is upright, or at the edge of the band.
        double p = s.halfLongMetres() * cos;
        double q = -s.halfShortMetres() * sin;
        double far = Math.sqrt(p * p + q * q);
        double heightOfRight = (sin * s.halfLongMetres() * p + cos * s.halfShortMetres() * q) / far;
        double centre = sin * s.centreXMetres() + cos * s.centreYMetres() + liftAt(z);
        double left = level(s, z, between(centre - heightOfRight, Math.max(low, all.from()), Math.min(high, all.to())))
                .from();
        double right = level(s, z, between(centre + heightOfRight, Math.max(low, all.from()), Math.min(high, all.to())))
                .to();
        return new Stretch(left, right);
    }

    /**
     * What the rot covers across within a band, from one place along the log to another; none where it keeps off. Between two
     * stations its pith runs straight, and the distance from the band is convex along it, so that the outermost place closes in.
     */
    Stretch rot(double from, double to, double low, double high, boolean upright) {
        if (solid.rot().isEmpty()) {
            return Stretch.NONE;
        }
        LogSolid.Rot rot = solid.rot().get();
        double first = Math.max(from, rot.fromMetres());
        double last = Math.min(to, rot.toMetres());
        TreeSet<Double> cuts = new TreeSet<>(List.of(first, last));
        for (int i = 0; i < solid.stationCount(); i++) {
            double z = solid.station(i).zMetres();
            if (z > first && z < last) {
                cuts.add(z);
            }
        }
        Stretch all = Stretch.NONE;
        Double before = null;
        for (double z : cuts) {
            if (before != null && first < last) {
                double left = -farthest(rot, before, z, low, high, upright, -1);
                double right = farthest(rot, before, z, low, high, upright, 1);
                all = new Stretch(Math.min(all.from(), left), Math.max(all.to(), right));
            }
            before = z;
        }
        return all;
    }

    /** How far the rot reaches to one side in a band along a straight stretch; minus infinity where it keeps off. */
    private double farthest(
            LogSolid.Rot rot, double z0, double z1, double low, double high, boolean upright, int side) {
        double[] pith0 = pith(rot, z0, upright);
        double[] pith1 = pith(rot, z1, upright);
        double r = rot.radiusMetres();
        double rise = pith1[1] - pith0[1];
        double a = 0;
        double b = 1;
        if (rise == 0) {
            b = pith0[1] >= low - r && pith0[1] <= high + r ? 1 : -1;
        } else {
            double enters = (low - r - pith0[1]) / rise;
            double leaves = (high + r - pith0[1]) / rise;
            a = Math.max(a, Math.min(enters, leaves));
            b = Math.min(b, Math.max(enters, leaves));
        }
        if (a > b) {
            return Double.NEGATIVE_INFINITY;
        }
        DoubleUnaryOperator reach = t -> {
            double through = pith0[1] + t * rise;
            double off = through - between(through, low, high);
            return side * (pith0[0] + t * (pith1[0] - pith0[0])) + Math.sqrt(Math.max(0, r * r - off * off));
        };
        double most = Math.max(reach.applyAsDouble(a), reach.applyAsDouble(b));
        for (int i = 0; i < 80; i++) {
            double third = (b - a) / 3;
            double one = reach.applyAsDouble(a + third);
            double other = reach.applyAsDouble(b - third);
            most = Math.max(most, Math.max(one, other));
            if (one < other) {
                a += third;
            } else {
                b -= third;
            }
        }
        return most;
    }

    /** Where the pith lies across and through; across is the direction in which a row of strips runs. */
    private double[] pith(LogSolid.Rot rot, double z, boolean upright) {
        LogSolid.Section s = solid.section(z);
        double x = s.centreXMetres() + rot.pithXMetres();
        double y = s.centreYMetres() + rot.pithYMetres();
        double u = cos * x - sin * y;
        double v = sin * x + cos * y + liftAt(z);
        return upright ? new double[] {v, u} : new double[] {u, v};
    }

    double centreHeight(LogSolid.Section s, double z) {
        return sin * s.centreXMetres() + cos * s.centreYMetres() + liftAt(z);
    }

    double centrePlace(LogSolid.Section s) {
        return cos * s.centreXMetres() - sin * s.centreYMetres();
    }

    static double between(double value, double low, double high) {
        return Math.min(Math.max(value, low), high);
    }

    /** Widest level cut of a kerf through a section. */
    double widestLevel(LogSolid.Section s, double z, double low, double high) {
        return level(s, z, between(centreHeight(s, z), low, high)).within(-99, 99);
    }

    /**
     * Widest upright cut of a kerf through the part of a section within a band of heights: the width is a concave function
     * of the place, greatest at an end, at a tangent, in the middle or where the outline crosses the band.
     */
    double widestUpright(LogSolid.Section s, double z, double left, double right, double low, double high) {
        Stretch bottom = level(s, z, low);
        Stretch top = level(s, z, high);
        double p = s.halfLongMetres() * sin;
        double q = s.halfShortMetres() * cos;
        double tall = Math.sqrt(p * p + q * q);
        double lean = (cos * s.halfLongMetres() * p - sin * s.halfShortMetres() * q) / tall;
        double centre = centrePlace(s);
        double widest = 0;
        for (double at : new double[] {
            left, right, centre, centre - lean, centre + lean, bottom.from(), bottom.to(), top.from(), top.to()
        }) {
            widest = Math.max(widest, upright(s, z, between(at, left, right)).within(low, high));
        }
        return widest;
    }

    /** Places along the log at which widths are measured: the stations and half-way between. */
    List<Double> measured() {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < solid.stationCount(); i++) {
            double z = solid.station(i).zMetres();
            if (i > 0) {
                places.add((solid.station(i - 1).zMetres() + z) / 2);
            }
            places.add(z);
        }
        return places;
    }

    /** Mean along the log of widths at the places measured, by Simpson's rule from station to station. */
    double mean(List<Double> widths) {
        double sum = 0;
        for (int i = 1; i < solid.stationCount(); i++) {
            double h = solid.station(i).zMetres() - solid.station(i - 1).zMetres();
            sum += h / 6 * (widths.get(2 * i - 2) + 4 * widths.get(2 * i - 1) + widths.get(2 * i));
        }
        return sum / solid.lengthMetres();
    }
}
