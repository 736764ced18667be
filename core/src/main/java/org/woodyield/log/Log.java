package org.woodyield.log;

import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.wood.Species;

/**
 * A log as it lies there. Diameters are inside bark. The section is an ellipse with one axis ratio, that of the small
 * end, along the whole log.
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
        boolean butt) {

    private static final Length LARGEST = Length.millimetres(3000);
    private static final Length LONGEST = Length.millimetres(30_000);

    /**
     * Checks that this can be a log.
     *
     * @throws OutOfDomainException if a diameter or the length is not above zero or absurdly large, the axes are crossed,
     *     the small end is larger than the large end, or the sweep is more than a tenth of the length
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
        if (!(Math.abs(sweepDirectionDegrees) <= 360)) {
            throw new OutOfDomainException(
                    "sweep direction", Double.toString(sweepDirectionDegrees), "degrees", "-360 to 360", "");
        }
    }

    /**
     * The mean of the small end's two diameters.
     *
     * @return to the nanometre, down
     */
    public Length smallEndMean() {
        return mean(smallEndLong, smallEndShort);
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
