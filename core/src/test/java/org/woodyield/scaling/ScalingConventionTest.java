package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.log.Log;
import org.woodyield.log.ProfileStation;
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
    @Property
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

    @Test
    void aLowerSegmentTakesItsDiameterFromTheMeasuredProfile() {
        Log straight = log(Length.feet(48), Length.inches(10), Length.inches(10), Length.inches(22));
        ScalingConvention plain = ScalingConvention.plain();
        // 12 in of taper over 48 ft: 6 in at half of it.
        assertThat(plain.segments(straight, DiameterAt.SMALL_END))
                .containsExactly(new ScalingConvention.Segment(10, 24), new ScalingConvention.Segment(16, 24));
        // The flare is all in the last 8 ft: 11 in at 24 ft, 10.5 and 11.75 in half way along the two.
        Log flared = straight.withProfile(List.of(
                new ProfileStation(Length.ZERO, Length.inches(10)),
                new ProfileStation(Length.feet(24), Length.inches(11)),
                new ProfileStation(Length.feet(40), Length.inches(12)),
                new ProfileStation(Length.feet(48), Length.inches(22))));
        assertThat(plain.segments(flared, DiameterAt.SMALL_END))
                .containsExactly(new ScalingConvention.Segment(10, 24), new ScalingConvention.Segment(11, 24));
        assertThat(plain.segments(flared, DiameterAt.MIDDLE))
                .containsExactly(new ScalingConvention.Segment(10, 24), new ScalingConvention.Segment(12, 24));
        // Means of the ends: 10.5, the half down, and 16.5 in.
        assertThat(plain.segments(flared, DiameterAt.MEAN_OF_ENDS))
                .containsExactly(new ScalingConvention.Segment(10, 24), new ScalingConvention.Segment(16, 24));
    }

    /** The segments make up the scaling length, none is longer than allowed, and they grow toward the butt. */
    @Property
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
