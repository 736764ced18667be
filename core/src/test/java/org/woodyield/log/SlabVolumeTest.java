package org.woodyield.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

class SlabVolumeTest {

    private static Length mm(int millimetres) {
        return Length.millimetres(millimetres);
    }

    private static double slab(int small, int large, int length, int height) {
        return SlabVolume.of(mm(small), mm((small + large) / 2), mm(large), mm(length), mm(height))
                .cubicMetres();
    }

    @Property
    void throughTheAxisItIsHalfTheCone(
            @ForAll @IntRange(min = 50, max = 1000) int small,
            @ForAll @IntRange(min = 0, max = 500) int half,
            @ForAll @IntRange(min = 500, max = 9000) int length) {
        double whole = SolidForm.CONE.volume(small / 1000.0, (small + 2 * half) / 1000.0, length / 1000.0);
        assertThat(slab(small, small + 2 * half, length, 0)).isCloseTo(whole / 2, within(1e-12 * (1 + whole)));
    }

    /** Added up in thin strips parallel to the cut, which shares nothing with the formula. */
    @Property(tries = 200)
    void ofALogWithoutTaperItIsTheSumOfStrips(
            @ForAll @IntRange(min = 100, max = 1000) int diameter,
            @ForAll @DoubleRange(min = 0, max = 0.98) double share) {
        double r = diameter / 2000.0;
        int height = (int) (share * diameter / 2);
        double h = height / 1000.0;
        int strips = 20_000;
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            double y = h + (r - h) * (i + 0.5) / strips;
            sum += 2 * Math.sqrt(r * r - y * y) * (r - h) / strips;
        }
        assertThat(slab(diameter, diameter, 3000, height)).isCloseTo(3 * sum, within(1e-5 * sum + 1e-9));
    }

    @Property
    void theWorkingAgreesBitForBitAndAHigherCutTakesLess(
            @ForAll @IntRange(min = 50, max = 1000) int small,
            @ForAll @IntRange(min = 0, max = 500) int half,
            @ForAll @IntRange(min = 0, max = 1200) int height) {
        double volume = slab(small, small + 2 * half, 4000, height);
        assertThat(SlabVolume.working(mm(small), mm(small + half), mm(small + 2 * half), mm(4000), mm(height))
                        .value())
                .isEqualTo(volume);
        assertThat(slab(small, small + 2 * half, 4000, height + 10)).isLessThanOrEqualTo(volume);
        assertThat(volume).isGreaterThanOrEqualTo(0);
    }

    @Test
    void aCutOutsideTakesNothing() {
        assertThat(slab(200, 300, 4000, 150)).isZero();
    }

    @Test
    void measuresOutsideAreRefused() {
        assertThatThrownBy(() -> slab(0, 300, 4000, 10)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> slab(200, 300, 0, 10)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> slab(200, 300, 31_000, 10)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> slab(200, 300, 4000, -1))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("smaller side");
    }
}
