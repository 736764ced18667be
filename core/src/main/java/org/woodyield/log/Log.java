package org.woodyield.log;

import java.util.List;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.wood.Species;

/**
 * A log as it lies there. Diameters are inside bark. The section is an ellipse with one axis ratio, that of the small
 * end, along the whole log. Between its ends the mean diameter runs straight unless there is a measured profile.
 *
 * <p>The short constructor makes a sound log of straight taper; {@link #withProfile}, {@link #withRot} and {@link
 * #withPith} add what else is known.
 *
 * @param id the user's name for it
 * @param species its species
 * @param length from end to end, trim allowance included
 * @param smallEndLong longest diameter at the small end
 * @param smallEndShort shortest diameter at the small end
 * @param largeEndMean mean diameter at the large end
 * @param barkThickness on one side
 * @param sweep greatest distance of the axis from the chord between the end centres
 * @param sweepDirectionDegrees direction of the sweep, from the long axis of the section, seen from the small end,
 *     counter-clockwise
 * @param butt whether it is the butt log of its tree
 * @param profile measured stations from the small end to the large one, both included; empty for straight taper
 * @param rot what the heart has lost
 * @param pith where the pith lies
 */
public record Log(
        String id,
        Species species,
        Length length,
        Length smallEndLong,
        Length smallEndShort,
        Length largeEndMean,
        Length barkThickness,
        Length sweep,
        double sweepDirectionDegrees,
        boolean butt,
        List<ProfileStation> profile,
        HeartRot rot,
        Pith pith) {

    private static final Length LARGEST = Length.millimetres(3000);
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Length SAME_END = Length.millimetres(1);

    /**
     * Checks that this can be a log.
     *
     * @throws OutOfDomainException if a diameter or the length is not above zero or absurdly large, the axes are crossed,
     *     the small end is larger than the large end, the sweep is more than a tenth of the length, the profile is not
     *     that of this log or has a neck under half the lesser end or a bulge over twice the greater one, or the rot
     *     reaches beyond the log
     */
    public Log {
        within("length", length, Length.ZERO, LONGEST, "give the length of one log, not of the stem");
        within("small-end diameter", smallEndShort, Length.ZERO, LARGEST, "check the unit");
        within("longest small-end diameter", smallEndLong, Length.ZERO, LARGEST, "check the unit");
        within("large-end diameter", largeEndMean, Length.ZERO, LARGEST, "check the unit");
        if (smallEndShort.compareTo(smallEndLong) > 0) {
            throw new OutOfDomainException(
                    "shortest small-end diameter",
                    smallEndShort.toString(),
                    "",
                    "no more than the longest, " + smallEndLong,
                    "change the two");
        }
        Length mean = mean(smallEndLong, smallEndShort);
        if (largeEndMean.compareTo(mean) < 0) {
            throw new OutOfDomainException(
                    "large-end diameter",
                    largeEndMean.toString(),
                    "",
                    "no less than the small end's mean, " + mean,
                    "measure again, or change the ends");
        }
        atMost("bark thickness", barkThickness, Length.millimetres(300));
        atMost("sweep", sweep, length.dividedBy(10, Rounding.DOWN));
        profile = List.copyOf(profile);
        if (!profile.isEmpty()) {
            checkProfile(profile, length, mean, largeEndMean);
        }
        if (rot.to().compareTo(length) > 0) {
            throw new OutOfDomainException(
                    "end of the rot",
                    rot.to().toString(),
                    "",
                    "within the log, " + length,
                    "measure from the small end");
        }
        if (!(Math.abs(sweepDirectionDegrees) <= 360)) {
            throw new OutOfDomainException(
                    "sweep direction", Double.toString(sweepDirectionDegrees), "degrees", "-360 to 360", "");
        }
    }

    /**
     * A sound log of straight taper with its pith in the middle.
     *
     * @param id the user's name for it
     * @param species its species
     * @param length from end to end, trim allowance included
     * @param smallEndLong longest diameter at the small end
     * @param smallEndShort shortest diameter at the small end
     * @param largeEndMean mean diameter at the large end
     * @param barkThickness on one side
     * @param sweep greatest distance of the axis from the chord between the end centres
     * @param sweepDirectionDegrees direction of the sweep, from the long axis of the section, seen from the small end,
     *     counter-clockwise
     * @param butt whether it is the butt log of its tree
     * @throws OutOfDomainException if this cannot be a log
     */
    public Log(
            String id,
            Species species,
            Length length,
            Length smallEndLong,
            Length smallEndShort,
            Length largeEndMean,
            Length barkThickness,
            Length sweep,
            double sweepDirectionDegrees,
            boolean butt) {
        this(
                id,
                species,
                length,
                smallEndLong,
                smallEndShort,
                largeEndMean,
                barkThickness,
                sweep,
                sweepDirectionDegrees,
                butt,
                List.of(),
                HeartRot.NONE,
                Pith.CENTRED);
    }

    /**
     * The same log with a measured profile; its last station becomes the large end.
     *
     * @param stations from the small end, at 0 and there within 1 mm of the small end's mean, to the log's length
     * @return a new log
     * @throws OutOfDomainException if this is not the profile of this log
     */
    public Log withProfile(List<ProfileStation> stations) {
        Length large = stations.isEmpty()
                ? largeEndMean
                : stations.get(stations.size() - 1).diameter();
        return with(large, stations, rot, pith);
    }

    /**
     * The same log with rot in its heart.
     *
     * @param found the rot
     * @return a new log
     * @throws OutOfDomainException if it reaches beyond the log
     */
    public Log withRot(HeartRot found) {
        return with(largeEndMean, profile, found, pith);
    }

    /**
     * The same log with its pith elsewhere.
     *
     * @param place of the pith
     * @return a new log
     */
    public Log withPith(Pith place) {
        return with(largeEndMean, profile, rot, place);
    }

    private Log with(Length large, List<ProfileStation> stations, HeartRot found, Pith place) {
        return new Log(
                id,
                species,
                length,
                smallEndLong,
                smallEndShort,
                large,
                barkThickness,
                sweep,
                sweepDirectionDegrees,
                butt,
                stations,
                found,
                place);
    }

    /**
     * The mean of the small end's two diameters.
     *
     * @return to the nanometre, down
     */
    public Length smallEndMean() {
        return mean(smallEndLong, smallEndShort);
    }

    /**
     * The longer diameter at the thin end of a piece that ends with the large end: no piece of that length has a longer
     * diagonal, unless the log swells between its ends.
     *
     * @param piece a length up to the log's
     * @return the diameter inside bark
     * @throws OutOfDomainException if the piece is not above zero or longer than the log
     */
    public Length longestDiagonal(Length piece) {
        within("length of the piece", piece, Length.ZERO, length, "name a longer log");
        double small = smallEndMean().toMetres();
        double large = largeEndMean.toMetres();
        double mean = small + (large - small) * (1 - piece.toMetres() / length.toMetres());
        return Length.ofMetres(mean * smallEndLong.toMetres() / small, Rounding.UP);
    }

    /**
     * The mean diameter at a place along the log: of the profile, straight between its stations, or straight between the
     * ends where there is none.
     *
     * @param fromSmallEnd distance from the small end, 0 to the log's length
     * @return to the nanometre, down
     * @throws OutOfDomainException beyond the log
     */
    public Length meanDiameter(Length fromSmallEnd) {
        if (fromSmallEnd.compareTo(Length.ZERO) < 0 || fromSmallEnd.compareTo(length) > 0) {
            throw new OutOfDomainException(
                    "distance from the small end of log " + id,
                    fromSmallEnd.toString(),
                    "",
                    "0 to the log's length, " + length,
                    "measure from the small end");
        }
        if (profile.isEmpty()) {
            return between(smallEndMean(), largeEndMean, fromSmallEnd, length);
        }
        int i = 1;
        while (profile.get(i).distance().compareTo(fromSmallEnd) < 0) {
            i++;
        }
        ProfileStation before = profile.get(i - 1);
        ProfileStation behind = profile.get(i);
        return between(
                before.diameter(),
                behind.diameter(),
                fromSmallEnd.minus(before.distance()),
                behind.distance().minus(before.distance()));
    }

    private static Length between(Length first, Length last, Length along, Length whole) {
        double grown = last.minus(first).toMetres() * (along.toMetres() / whole.toMetres());
        return first.plus(Length.ofMetres(grown, Rounding.DOWN));
    }

    private static void checkProfile(List<ProfileStation> profile, Length length, Length smallMean, Length largeMean) {
        for (int i = 0; i < profile.size(); i++) {
            ProfileStation station = profile.get(i);
            within("diameter at station " + (i + 1), station.diameter(), Length.ZERO, LARGEST, "check the unit");
            if (i > 0 && station.distance().compareTo(profile.get(i - 1).distance()) <= 0) {
                throw new OutOfDomainException(
                        "station " + (i + 1),
                        station.distance().toString(),
                        "",
                        "beyond station " + i + " at " + profile.get(i - 1).distance(),
                        "put the stations in order from the small end");
            }
            if (i > 0) {
                requireNoStep(profile.get(i - 1), station, i + 1);
            }
        }
        ProfileStation first = profile.get(0);
        ProfileStation last = profile.get(profile.size() - 1);
        if (!first.distance().equals(Length.ZERO) || !last.distance().equals(length)) {
            throw new OutOfDomainException(
                    "profile",
                    first.distance() + " to " + last.distance(),
                    "",
                    "from the small end, 0, to the large end, " + length,
                    "measure both ends too");
        }
        if (Length.max(first.diameter(), smallMean)
                        .minus(Length.min(first.diameter(), smallMean))
                        .compareTo(SAME_END)
                > 0) {
            throw new OutOfDomainException(
                    "diameter at station 1",
                    first.diameter().toString(),
                    "",
                    "the small end's mean, " + smallMean + ", within 1 mm",
                    "measure the small end again");
        }
        if (!last.diameter().equals(largeMean)) {
            throw new OutOfDomainException(
                    "diameter at station " + profile.size(),
                    last.diameter().toString(),
                    "",
                    "the large end's mean, " + largeMean,
                    "give the large end by the profile alone");
        }
        requireALogsShape(profile, first.diameter(), last.diameter());
    }

    /** A slip of the tape or of the unit; how thick or thin a log can be between its ends is a choice of this program. */
    private static void requireALogsShape(List<ProfileStation> profile, Length small, Length large) {
        Length least = Length.min(small, large).dividedBy(2, Rounding.DOWN);
        Length greatest = Length.max(small, large).times(2);
        for (int i = 0; i < profile.size(); i++) {
            Length here = profile.get(i).diameter();
            if (here.compareTo(least) < 0 || here.compareTo(greatest) > 0) {
                throw new OutOfDomainException(
                        "diameter at station " + (i + 1),
                        here.toString(),
                        "",
                        least + " to " + greatest + ", half the lesser end to twice the greater one",
                        "measure there again; a log with such a neck or bulge is not one log to saw");
            }
        }
    }

    private static void requireNoStep(ProfileStation before, ProfileStation here, int number) {
        Length step = here.distance().minus(before.distance()).times(2);
        Length least = before.diameter().minus(step);
        Length greatest = before.diameter().plus(step);
        if (here.diameter().compareTo(least) < 0 || here.diameter().compareTo(greatest) > 0) {
            throw new OutOfDomainException(
                    "diameter at station " + number,
                    here.diameter().toString(),
                    "",
                    "a flare of less than 45 degrees from " + before.diameter() + " at the station before",
                    "measure again, or put a station between");
        }
    }

    private static Length mean(Length a, Length b) {
        return a.plus(b).dividedBy(2, Rounding.DOWN);
    }

    private static void within(String parameter, Length value, Length above, Length greatest, String remedy) {
        if (value.compareTo(above) <= 0 || value.compareTo(greatest) > 0) {
            throw new OutOfDomainException(
                    parameter, value.toString(), "", "above 0, up to " + greatest.inMillimetres(0), remedy);
        }
    }

    private static void atMost(String parameter, Length value, Length greatest) {
        if (value.compareTo(Length.ZERO) < 0 || value.compareTo(greatest) > 0) {
            throw new OutOfDomainException(
                    parameter, value.toString(), "", "0 to " + greatest.inMillimetres(0), "check the unit");
        }
    }
}
