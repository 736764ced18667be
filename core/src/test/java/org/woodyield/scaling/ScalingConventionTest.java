package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.woodyield.log.Log;
import org.woodyield.measure.Length;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

/** Properties that every convention has. */
class ScalingConventionTest {

    private static final Species ANY =
            SpeciesCatalogue.published().all().iterator().next();

    private static Log log(Length length, Length longest, Length shortest, Length large) {
        return new Log("A", ANY, length, longest, shortest, large, Length.ZERO, Length.ZERO, 0, false);
    }

    /** A log that has its scaling diameter and length (and the trim) already is taken as it is. */
    @Property(tries = 1000)
    void takingTwiceIsTakingOnce(
            @ForAll Jurisdiction place,
            @ForAll @IntRange(min = 200, max = 1500) int longest,
            @ForAll @IntRange(min = 0, max = 60) int oval,
            @ForAll @IntRange(min = 1100, max = 15_000) int length) {
        ScalingConvention convention = place.convention();
        Log measured = log(
                Length.millimetres(length),
                Length.millimetres(longest),
                Length.millimetres(longest - oval),
                Length.millimetres(longest));
        Length diameter = Length.inches((long) convention.scalingDiameterInches(measured));
        Length taken =
                Length.feet((long) convention.scalingLengthFeet(measured)).plus(convention.trim());
        Log again = log(taken, diameter, diameter, diameter);
        assertThat(convention.scalingDiameterInches(again)).isEqualTo(diameter.toInches());
        assertThat(convention.scalingLengthFeet(again)).isEqualTo(convention.scalingLengthFeet(measured));
    }

    /** The segments make up the scaling length, none is longer than allowed, and they grow toward the butt. */
    @Property(tries = 1000)
    void segmentsMakeUpTheScalingLength(
            @ForAll Jurisdiction place,
            @ForAll @IntRange(min = 200, max = 900) int small,
            @ForAll @IntRange(min = 0, max = 300) int taper,
            @ForAll @IntRange(min = 1100, max = 25_000) int length) {
        ScalingConvention convention = place.convention();
        Log log = log(
                Length.millimetres(length),
                Length.millimetres(small),
                Length.millimetres(small),
                Length.millimetres(small + taper));
        double sum = 0;
        double before = 0;
        for (ScalingConvention.Segment segment : convention.segments(log, DiameterAt.SMALL_END)) {
            assertThat(segment.lengthFeet())
                    .isPositive()
                    .isLessThanOrEqualTo(convention.greatestLength().toFeet());
            assertThat(segment.diameterInches()).isGreaterThanOrEqualTo(before);
            before = segment.diameterInches();
            sum += segment.lengthFeet();
        }
        assertThat(sum).isEqualTo(convention.scalingLengthFeet(log));
    }
}
