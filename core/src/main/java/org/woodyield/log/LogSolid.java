package org.woodyield.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
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
 *
 * <p>Heart rot is a cylinder around the pith: round in every section, its centre at one offset from that of the section. It
 * is part of the solid and of its volume; no piece may touch it.
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

    /**
     * Heart rot.
     *
     * @param radiusMetres above zero
     * @param fromMetres where it begins, from the small end
     * @param toMetres where it ends
     * @param pithXMetres its centre from that of the section, along the long axis
     * @param pithYMetres its centre from that of the section, along the short axis
     */
    public record Rot(
            double radiusMetres, double fromMetres, double toMetres, double pithXMetres, double pithYMetres) {}

    private final double[] z;
    private final double[] radius;
    private final double[] centreX;
    private final double[] centreY;
    private final double axisRatio;
    private final double bark;
    private final Optional<Rot> rot;

    private LogSolid(List<Station> stations, double axisRatio, double bark, Optional<Rot> rot) {
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
        this.rot = rot;
    }

    /**
     * The solid of a measured log: straight taper, or its profile; a sweep is a parabola with its greatest offset at
     * mid-length, taken at 17 stations besides those of the profile.
     *
     * @param log the log
     * @return its solid inside bark
     * @throws OutOfDomainException if the profile leans more than 45 degrees, or rot reaches out of the wood
     */
    public static LogSolid of(Log log) {
        double length = log.length().toMetres();
        double sweep = log.sweep().toMetres();
        double direction = StrictMath.toRadians(log.sweepDirectionDegrees());
        double towardX = StrictMath.cos(direction);
        double towardY = StrictMath.sin(direction);
        TreeSet<Double> places = new TreeSet<>();
        int stretches = sweep > 0 ? STRETCHES_OF_A_SWEPT_LOG : 1;
        for (int i = 0; i <= stretches; i++) {
            places.add(length * ((double) i / stretches));
        }
        log.profile().forEach(station -> places.add(station.distance().toMetres()));
        List<Station> stations = new ArrayList<>();
        for (double z : places) {
            double share = z / length;
            double offset = 4 * sweep * share * (1 - share);
            stations.add(new Station(z, meanRadius(log, z), offset * towardX, offset * towardY));
        }
        double ratio = log.smallEndShort().toMetres() / log.smallEndLong().toMetres();
        return of(stations, ratio, log.barkThickness())
                .withRot(new Rot(
                        log.rot().diameter().toMetres() / 2,
                        log.rot().from().toMetres(),
                        log.rot().to().toMetres(),
                        log.pith().xMetres(),
                        log.pith().yMetres()));
    }

    private static double meanRadius(Log log, double z) {
        List<ProfileStation> profile = log.profile();
        if (profile.isEmpty()) {
            double small = (log.smallEndLong().toMetres() + log.smallEndShort().toMetres()) / 4;
            double large = Math.max(small, log.largeEndMean().toMetres() / 2);
            return small + (large - small) * (z / log.length().toMetres());
        }
        int i = 1;
        while (i < profile.size() - 1 && profile.get(i).distance().toMetres() < z) {
            i++;
        }
        double z0 = profile.get(i - 1).distance().toMetres();
        double z1 = profile.get(i).distance().toMetres();
        double d0 = profile.get(i - 1).diameter().toMetres();
        double d1 = profile.get(i).diameter().toMetres();
        return (d0 + (d1 - d0) * ((z - z0) / (z1 - z0))) / 2;
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
        return new LogSolid(stations, axisRatio, barkThickness.toMetres(), Optional.empty());
    }

    /**
     * The same solid with rot in its heart.
     *
     * @param found the rot; a radius of zero is none
     * @return a new solid
     * @throws OutOfDomainException if the radius is below zero or not finite, the rot begins or ends outside the log, or it
     *     may reach out of the wood: inside are all rots whose centre, measured in half axes from that of the section,
     *     leaves room for the radius measured in half short axes
     */
    public LogSolid withRot(Rot found) {
        Domain.of("radius of the rot", "m", 0, 5).require(found.radiusMetres());
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < z.length; i++) {
            stations.add(station(i));
        }
        if (found.radiusMetres() == 0) {
            return new LogSolid(stations, axisRatio, bark, Optional.empty());
        }
        Domain.of("beginning of the rot", "m", 0, lengthMetres()).require(found.fromMetres());
        Domain along = Domain.of("end of the rot", "m", found.fromMetres(), lengthMetres());
        double to = Math.abs(found.toMetres() - lengthMetres()) < 1e-9 ? lengthMetres() : found.toMetres();
        along.require(to);
        Rot rotten = new Rot(found.radiusMetres(), found.fromMetres(), to, found.pithXMetres(), found.pithYMetres());
        // The room falls with the radius of the log, so that its least stands at a station or at an end of the rot.
        requireInTheWood(rotten, section(rotten.fromMetres()));
        requireInTheWood(rotten, section(to));
        for (Station s : stations) {
            if (s.zMetres() > rotten.fromMetres() && s.zMetres() < to) {
                requireInTheWood(rotten, section(s.zMetres()));
            }
        }
        return new LogSolid(stations, axisRatio, bark, Optional.of(rotten));
    }

    private static void requireInTheWood(Rot found, Section s) {
        double p = found.pithXMetres() / s.halfLongMetres();
        double q = found.pithYMetres() / s.halfShortMetres();
        double room = (1 - Math.sqrt(p * p + q * q)) * s.halfShortMetres();
        if (!(found.radiusMetres() <= room)) {
            throw new OutOfDomainException(
                    "rot diameter",
                    Length.ofMetres(2 * found.radiusMetres(), Rounding.HALF_EVEN)
                            .inMillimetres(0),
                    "",
                    "around this pith no more than "
                            + Length.ofMetres(2 * Math.max(0, room), Rounding.DOWN)
                                    .inMillimetres(0)
                            + ", so that sound wood is all around it",
                    "measure rot and pith again, or leave this log out");
        }
    }

    /**
     * The rot in its heart.
     *
     * @return empty for a sound log
     */
    public Optional<Rot> rot() {
        return rot;
    }

    /**
     * The section of the rot, a circle.
     *
     * @param zMetres from the small end, 0 to the length
     * @return empty where there is none
     * @throws OutOfDomainException beyond an end of the log
     */
    public Optional<Section> rotSection(double zMetres) {
        Section wood = section(zMetres);
        return rot.filter(r -> zMetres >= r.fromMetres() && zMetres <= r.toMetres())
                .map(r -> new Section(
                        wood.centreXMetres() + r.pithXMetres(),
                        wood.centreYMetres() + r.pithYMetres(),
                        r.radiusMetres(),
                        r.radiusMetres()));
    }

    /**
     * The volume of the rot, {@code pi * r^2 * (to - from)} with its radius r: sections of one area hold area times
     * distance, wherever their centres lie.
     *
     * @return zero for a sound log
     */
    @Calculation("log.rot-volume")
    public Volume rotVolume() {
        double r = rot.map(Rot::radiusMetres).orElse(0.0);
        double from = rot.map(Rot::fromMetres).orElse(0.0);
        double to = rot.map(Rot::toMetres).orElse(0.0);
        return new Volume(StrictMath.PI * r * r * (to - from));
    }

    /**
     * The working of {@link #rotVolume()}.
     *
     * @return one step
     */
    public Working rotVolumeWorking() {
        Source geometry = Sources.get("definition");
        return Working.of("Volume of the heart rot")
                .constant("pi", "circle constant", StrictMath.PI, "", geometry)
                .given("r", "radius of the rot", rot.map(Rot::radiusMetres).orElse(0.0), "m")
                .given("from", "where it begins", rot.map(Rot::fromMetres).orElse(0.0), "m")
                .given("to", "where it ends", rot.map(Rot::toMetres).orElse(0.0), "m")
                .step("rot", "volume", "pi * r * r * (to - from)", "m3", geometry)
                .build();
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
