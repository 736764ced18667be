package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

/** A log's solid as it lies in a frame: u level, v upright, metres. Serves the search and the schedule. */
final class Lie {

    /** A section at right angles to the travel: the points where d' S^-1 d is at most 1. */
    static final class Plane {
        final double z;
        final double cu;
        final double cv;
        final double suu;
        final double suv;
        final double svv;
        private final double rootDeterminant;
        private final double leanLevel;
        private final double leanUpright;

        private Plane(double z, double cu, double cv, double halfLong, double halfShort, double cos, double sin) {
            this.z = z;
            this.cu = cu;
            this.cv = cv;
            double a = halfLong * halfLong;
            double b = halfShort * halfShort;
            suu = a * cos * cos + b * sin * sin;
            suv = (a - b) * cos * sin;
            svv = a * sin * sin + b * cos * cos;
            rootDeterminant = halfLong * halfShort;
            leanLevel = suv / svv;
            leanUpright = suv / suu;
        }

        /** Half the level chord at a height, below zero where there is none. */
        double halfLevel(double v) {
            double d = v - cv;
            double rest = svv - d * d;
            return rest > 0 ? rootDeterminant * Math.sqrt(rest) / svv : -1;
        }

        double midLevel(double v) {
            return cu + leanLevel * (v - cv);
        }

        /** Half the upright chord at a level position, below zero where there is none. */
        double halfUpright(double u) {
            double d = u - cu;
            double rest = suu - d * d;
            return rest > 0 ? rootDeterminant * Math.sqrt(rest) / suu : -1;
        }

        double midUpright(double u) {
            return cv + leanUpright * (u - cu);
        }

        /** Whether a level chord and the upright one at the same distance from the axis are one and the same, bit for bit. */
        boolean alikeBothWays() {
            return cu == cv && suu == svv;
        }

        /** Whether level chords above and below the axis are mirror images, bit for bit. */
        boolean mirroredLevel() {
            return cv == 0 && suv == 0;
        }

        /** Whether upright chords left and right of the axis are mirror images, bit for bit. */
        boolean mirroredUpright() {
            return cu == 0 && suv == 0;
        }

        /** The leftmost place between two heights; infinite if the section has none there. */
        double leftmost(double from, double to) {
            double v = Math.min(Math.max(cv - suv / Math.sqrt(suu), from), to);
            double half = halfLevel(v);
            return half < 0 ? Double.POSITIVE_INFINITY : midLevel(v) - half;
        }

        /** The rightmost place between two heights; below all if the section has none there. */
        double rightmost(double from, double to) {
            double v = Math.min(Math.max(cv + suv / Math.sqrt(suu), from), to);
            double half = halfLevel(v);
            return half < 0 ? Double.NEGATIVE_INFINITY : midLevel(v) + half;
        }

        /** The lowest place between two level positions; infinite if the section has none there. */
        double lowest(double from, double to) {
            double u = Math.min(Math.max(cu - suv / Math.sqrt(svv), from), to);
            double half = halfUpright(u);
            return half < 0 ? Double.POSITIVE_INFINITY : midUpright(u) - half;
        }

        /** The highest place between two level positions; below all if the section has none there. */
        double highest(double from, double to) {
            double u = Math.min(Math.max(cu + suv / Math.sqrt(svv), from), to);
            double half = halfUpright(u);
            return half < 0 ? Double.NEGATIVE_INFINITY : midUpright(u) + half;
        }
    }

    private final LogSolid solid;
    private final double cos;
    private final double sin;
    private final double lift;
    /** Distances from station to station. */
    private final double[] stretches;

    Lie(LogSolid solid, double turnDegrees, double liftMetres) {
        this.solid = solid;
        this.lift = liftMetres;
        stretches = new double[solid.stationCount() - 1];
        for (int i = 0; i < stretches.length; i++) {
            stretches[i] = solid.station(i + 1).zMetres() - solid.station(i).zMetres();
        }
        double quarters = turnDegrees / 90;
        if (quarters == Math.rint(quarters)) {
            int q = Math.floorMod((int) quarters, 4);
            cos = q == 0 ? 1 : q == 2 ? -1 : 0;
            sin = q == 1 ? 1 : q == 3 ? -1 : 0;
        } else {
            double angle = StrictMath.toRadians(turnDegrees);
            cos = StrictMath.cos(angle);
            sin = StrictMath.sin(angle);
        }
    }

    static Lie of(LogSolid solid, Frame frame) {
        return new Lie(solid, frame.turnDegrees(), frame.largeEndLift().toMetres());
    }

    /** The frame of a lay: the lift that makes the wanted line parallel to the travel. */
    static Frame frame(LogSolid solid, Frame.Lay lay, double turnDegrees, Length offset) {
        Lie plain = new Lie(solid, turnDegrees, 0);
        Plane small = plain.plane(0, 0);
        Plane large = plain.plane(solid.lengthMetres(), 0);
        double lift = switch (lay) {
            case AXIS -> 0;
            case OFFSET -> offset.toMetres();
            case BARK_ABOVE -> (small.cv + Math.sqrt(small.svv)) - (large.cv + Math.sqrt(large.svv));
            case BARK_BELOW -> (small.cv - Math.sqrt(small.svv)) - (large.cv - Math.sqrt(large.svv));
        };
        return new Frame(lay, turnDegrees, Length.ofMetres(lift, Rounding.HALF_EVEN));
    }

    /** The frames of a space: by ways to lie, then by turns. */
    static List<Frame> frames(LogSolid solid, SearchSpace space) {
        List<Frame> frames = new ArrayList<>();
        for (SearchSpace.Way way : space.ways()) {
            space.turnsDegrees().forEach(turn -> frames.add(frame(solid, way.lay(), turn, way.lift())));
        }
        return frames;
    }

    LogSolid solid() {
        return solid;
    }

    Plane inside(double z) {
        return plane(z, 0);
    }

    Plane overBark(double z) {
        return plane(z, 1);
    }

    private Plane plane(double z, int barks) {
        return plane(z, barks == 0 ? solid.section(z) : solid.sectionOverBark(z));
    }

    private Plane plane(double z, LogSolid.Section s) {
        double x = s.centreXMetres();
        double y = s.centreYMetres();
        return new Plane(
                z,
                cos * x - sin * y,
                sin * x + cos * y + lift * (z / solid.lengthMetres() - 0.5),
                s.halfLongMetres(),
                s.halfShortMetres(),
                cos,
                sin);
    }

    /** The rot's circle at a place; empty where there is none. */
    Optional<Plane> rot(double z) {
        return solid.rotSection(z).map(s -> plane(z, s));
    }

    /** Sections over bark at the stations and half-way between: an odd count, by which widths are measured. */
    Plane[] measuringPlanes() {
        int n = solid.stationCount();
        Plane[] planes = new Plane[2 * n - 1];
        for (int i = 0; i < planes.length; i++) {
            planes[i] = overBark(
                    i % 2 == 0
                            ? solid.station(i / 2).zMetres()
                            : (solid.station(i / 2).zMetres()
                                            + solid.station(i / 2 + 1).zMetres())
                                    / 2);
        }
        return planes;
    }

    /** Simpson's mean of values at the measuring planes over the length. */
    double mean(double[] values) {
        double sum = 0;
        for (int i = 0; i < stretches.length; i++) {
            sum += stretches[i] * (values[2 * i] + 4 * values[2 * i + 1] + values[2 * i + 2]) / 6;
        }
        return sum / solid.lengthMetres();
    }
}
