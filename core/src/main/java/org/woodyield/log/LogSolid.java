package org.woodyield.log;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The body of a log inside its bark, piecewise linear between stations along its length.
 *
 * <p>Positions along the log are metres from the small end. Each section at right angles to the axis is an ellipse with
 * one axis ratio and one direction along the whole log; mean radius and centre run straight from station to station. The
 * x axis lies along the long axis of the section, y along the short one, counter-clockwise seen from the small end. The
 * axis of the log is the chord between the centres of its ends and stands at x = y = 0 for a log {@link #of(Log)}.
 *
 * <p>Each stretch between two stations is convex, so that a straight-edged piece lies inside exactly when its corners do
 * at every station that it spans and at its own two ends.
 *
 * <p>Bark is a shell of even thickness: the section over bark is the ellipse whose half axes are longer by it.
 */
public final class LogSolid {

    /** Stretches into which a swept log is divided; the bow between two stations then departs by 1/256 of the sweep. */
    private static final int STRETCHES_OF_A_SWEPT_LOG = 16;

    private static final Domain AXIS_RATIO = Domain.of("axis ratio of the section", "", 0.2, 1);

    /**
     * A station along the log.
     *
     * @param zMetres distance from the small end
     * @param meanRadiusMetres mean of the two half axes, inside bark
     * @param centreXMetres centre, along the long axis
     * @param centreYMetres centre, along the short axis
     */
    public record Station(double zMetres, double meanRadiusMetres, double centreXMetres, double centreYMetres) {}

    /**
     * A section at right angles to the axis.
     *
     * @param centreXMetres centre, along the long axis
     * @param centreYMetres centre, along the short axis
     * @param halfLongMetres half the long axis
     * @param halfShortMetres half the short axis
     */
    public record Section(double centreXMetres, double centreYMetres, double halfLongMetres, double halfShortMetres) {
        /**
         * Whether a point lies inside or on the edge.
         *
         * @param xMetres along the long axis
         * @param yMetres along the short axis
         * @return false for NaN
         */
        public boolean contains(double xMetres, double yMetres) {
            double p = (xMetres - centreXMetres) / halfLongMetres;
            double q = (yMetres - centreYMetres) / halfShortMetres;
            return p * p + q * q <= 1;
        }

        /**
         * The area, pi times the product of the half axes.
         *
         * @return in square metres
         */
        public double areaSquareMetres() {
            return StrictMath.PI * halfLongMetres * halfShortMetres;
        }
    }

    private final double[] z;
    private final double[] radius;
    private final double[] centreX;
    private final double[] centreY;
    private final double axisRatio;
    private final double bark;

    private LogSolid(List<Station> stations, double axisRatio, double bark) {
        int n = stations.size();
        z = new double[n];
        radius = new double[n];
        centreX = new double[n];
        centreY = new double[n];
        for (int i = 0; i < n; i++) {
            Station s = stations.get(i);
            z[i] = s.zMetres();
            radius[i] = s.meanRadiusMetres();
            centreX[i] = s.centreXMetres();
            centreY[i] = s.centreYMetres();
        }
        this.axisRatio = axisRatio;
        this.bark = bark;
    }

    /**
     * The solid of a measured log: straight taper; a sweep is a parabola with its greatest offset at mid-length, taken
     * at 17 stations.
     *
     * @param log the log
     * @return its solid inside bark
     */
    public static LogSolid of(Log log) {
        double length = log.length().toMetres();
        double small = (log.smallEndLong().toMetres() + log.smallEndShort().toMetres()) / 4;
        double large = Math.max(small, log.largeEndMean().toMetres() / 2);
        double sweep = log.sweep().toMetres();
        double direction = StrictMath.toRadians(log.sweepDirectionDegrees());
        double towardX = StrictMath.cos(direction);
        double towardY = StrictMath.sin(direction);
        int stretches = sweep > 0 ? STRETCHES_OF_A_SWEPT_LOG : 1;
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= stretches; i++) {
            double share = (double) i / stretches;
            double offset = 4 * sweep * share * (1 - share);
            stations.add(
                    new Station(length * share, small + (large - small) * share, offset * towardX, offset * towardY));
        }
        double ratio = log.smallEndShort().toMetres() / log.smallEndLong().toMetres();
        return of(stations, ratio, log.barkThickness());
    }

    /**
     * A solid from a measured profile, such as a butt flare.
     *
     * @param stations two or more, in order from the small end, the first at 0
     * @param axisRatio short axis over long axis of every section, 0.2 to 1
     * @param barkThickness on one side
     * @return the solid
     * @throws OutOfDomainException if this is not a log: stations out of order, a radius not above zero, a value not
     *     finite, a stretch that leans more than it is long, or an axis ratio out of range
     */
    public static LogSolid of(List<Station> stations, double axisRatio, Length barkThickness) {
        AXIS_RATIO.require(axisRatio);
        if (barkThickness.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("bark thickness", barkThickness.toString(), "", "0 or more", "");
        }
        if (stations.size() < 2 || stations.get(0).zMetres() != 0) {
            throw new OutOfDomainException(
                    "profile",
                    stations.size() + " stations",
                    "",
                    "two or more, the first at the small end, 0 m",
                    "measure both ends");
        }
        for (int i = 0; i < stations.size(); i++) {
            Station s = stations.get(i);
            if (!(s.meanRadiusMetres() > 0 && s.meanRadiusMetres() < 5)) {
                throw new OutOfDomainException(
                        "radius at station " + (i + 1),
                        Double.toString(s.meanRadiusMetres()),
                        "m",
                        "above 0, below 5 m",
                        "check the unit");
            }
            if (i == 0) {
                continue;
            }
            Station before = stations.get(i - 1);
            double dz = s.zMetres() - before.zMetres();
            if (!(dz > 0 && s.zMetres() < 100)) {
                throw new OutOfDomainException(
                        "station " + (i + 1),
                        Double.toString(s.zMetres()),
                        "m",
                        "beyond station " + i + " at " + before.zMetres() + " m, below 100 m",
                        "put the stations in order from the small end");
            }
            double dx = s.centreXMetres() - before.centreXMetres();
            double dy = s.centreYMetres() - before.centreYMetres();
            double dr = s.meanRadiusMetres() - before.meanRadiusMetres();
            if (!(dx * dx + dy * dy <= dz * dz && dr * dr <= dz * dz)) {
                throw new OutOfDomainException(
                        "profile at station " + (i + 1),
                        "off by more than the distance to the one before",
                        "",
                        "a log that leans or flares less than 45 degrees",
                        "measure again");
            }
        }
        return new LogSolid(stations, axisRatio, barkThickness.toMetres());
    }

    /**
     * How many stations there are.
     *
     * @return two or more
     */
    public int stationCount() {
        return z.length;
    }

    /**
     * A station.
     *
     * @param index from 0 at the small end
     * @return the station
     */
    public Station station(int index) {
        return new Station(z[index], radius[index], centreX[index], centreY[index]);
    }

    /**
     * From end to end.
     *
     * @return in metres
     */
    public double lengthMetres() {
        return z[z.length - 1];
    }

    /**
     * Short axis over long axis of every section.
     *
     * @return above 0, at most 1
     */
    public double axisRatio() {
        return axisRatio;
    }

    /**
     * Bark on one side.
     *
     * @return in metres, zero or more
     */
    public double barkMetres() {
        return bark;
    }

    /**
     * The section inside bark.
     *
     * @param zMetres from the small end, 0 to the length
     * @return the section
     * @throws OutOfDomainException beyond an end
     */
    public Section section(double zMetres) {
        return section(zMetres, 0);
    }

    /**
     * The section over bark.
     *
     * @param zMetres from the small end, 0 to the length
     * @return the section
     * @throws OutOfDomainException beyond an end
     */
    public Section sectionOverBark(double zMetres) {
        return section(zMetres, bark);
    }

    private Section section(double zMetres, double shell) {
        // A sum of lengths may miss the end by its last bit; the end is meant.
        double whole = lengthMetres();
        double at = Math.abs(zMetres - whole) < 1e-9 ? whole : zMetres;
        Domain.of("position along the log", "m", 0, whole).require(at);
        int i = 1;
        while (i < z.length - 1 && z[i] < at) {
            i++;
        }
        double share = (at - z[i - 1]) / (z[i] - z[i - 1]);
        double r = radius[i - 1] + (radius[i] - radius[i - 1]) * share;
        double halfLong = 2 * r / (1 + axisRatio);
        return new Section(
                centreX[i - 1] + (centreX[i] - centreX[i - 1]) * share,
                centreY[i - 1] + (centreY[i] - centreY[i - 1]) * share,
                halfLong + shell,
                halfLong * axisRatio + shell);
    }

    /**
     * Whether a point lies in the wood, inside bark.
     *
     * @param xMetres along the long axis
     * @param yMetres along the short axis
     * @param zMetres from the small end
     * @return false beyond the ends
     */
    public boolean contains(double xMetres, double yMetres, double zMetres) {
        return zMetres >= 0 && zMetres <= lengthMetres() && section(zMetres).contains(xMetres, yMetres);
    }

    /**
     * The volume inside bark, closed form: each stretch of length h between mean radii r0 and r1 holds {@code pi / 3 * h
     * * (r0^2 + r0 r1 + r1^2) * 4 q / (1 + q)^2} with the axis ratio q; where its centres lie does not matter.
     *
     * @return the volume
     */
    @Calculation("log.integrated-volume")
    public Volume volume() {
        double q = axisRatio;
        double shape = 4 * q / ((1 + q) * (1 + q));
        double sum = 0;
        for (int i = 1; i < z.length; i++) {
            double r0 = radius[i - 1];
            double r1 = radius[i];
            double h = z[i] - z[i - 1];
            sum = sum + StrictMath.PI * h * shape * (r0 * r0 + r0 * r1 + r1 * r1) / 3;
        }
        return new Volume(sum);
    }

    /**
     * The working of {@link #volume()}.
     *
     * @return one step for each stretch
     */
    public Working volumeWorking() {
        Source geometry = Sources.get("definition");
        Working.Builder working = Working.of("Volume of the log's solid, inside bark")
                .constant("pi", "circle constant", StrictMath.PI, "", geometry)
                .given("q", "short axis over long axis", axisRatio, "")
                .step(
                        "shape",
                        "area over that of a circle of the mean radius",
                        "4 * q / ((1 + q) * (1 + q))",
                        "",
                        geometry)
                .constant("sum", "volume so far", 0, "m3", geometry);
        for (int i = 1; i < z.length; i++) {
            working.given("r0", "mean radius where stretch " + i + " begins", radius[i - 1], "m")
                    .given("r1", "mean radius where it ends", radius[i], "m")
                    .given("z0", "position where it begins", z[i - 1], "m")
                    .given("z1", "position where it ends", z[i], "m")
                    .step("h", "its length", "z1 - z0", "m", geometry)
                    .step(
                            "sum",
                            "volume so far",
                            "sum + pi * h * shape * (r0 * r0 + r0 * r1 + r1 * r1) / 3",
                            "m3",
                            geometry);
        }
        return working.build();
    }

    /**
     * The volume inside bark by slicing: the middle section of each of many equal slices of every stretch. It is there
     * to check {@link #volume()}; its error falls with the square of the count.
     *
     * @param slicesPerStretch 1 or more
     * @return the volume
     * @throws OutOfDomainException if the count is below 1
     */
    public Volume volumeBySlices(int slicesPerStretch) {
        Domain.of("slices", "", 1, 10_000_000).require(slicesPerStretch);
        double sum = 0;
        for (int i = 1; i < z.length; i++) {
            double h = (z[i] - z[i - 1]) / slicesPerStretch;
            for (int j = 0; j < slicesPerStretch; j++) {
                sum += section(z[i - 1] + h * (j + 0.5)).areaSquareMetres() * h;
            }
        }
        return new Volume(sum);
    }
}
