package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;

/** The smallest end for a timber. */
class SquaredTimberTest {

    private static SquaredTimber timber(int width, int height, double share) {
        return new SquaredTimber(Length.inches(width), Length.inches(height), new Wane(share, share));
    }

    @Test
    void eightByEightByHand() {
        assertThat(timber(8, 8, 0).smallestEndInches()).isCloseTo(11.31, within(0.005));
        // A quarter of each side may be missing at each edge: 4 in stay full, sqrt(4^2 + 8^2).
        assertThat(timber(8, 8, 0.25).smallestEndInches()).isCloseTo(8.944, within(0.0005));
        assertThat(timber(8, 8, 0.5).smallestEndInches()).isEqualTo(8);
        assertThat(timber(6, 8, 0).smallestEndInches()).isEqualTo(10);
    }

    @Test
    void noTimberIsRefused() {
        assertThatThrownBy(() -> timber(0, 8, 0)).hasMessageContaining("timber");
        assertThatThrownBy(() -> timber(8, 8, Double.NaN)).hasMessageContaining("wane");
    }

    /** Every point that must be wood lies in the circle, and one lies on it. */
    @Property(tries = 400)
    void theCircleHoldsWhatMustBeFull(
            @ForAll @IntRange(min = 1, max = 24) int width,
            @ForAll @IntRange(min = 1, max = 24) int height,
            @ForAll @DoubleRange(min = 0, max = 0.5) double share) {
        SquaredTimber timber = timber(width, height, share);
        double end = timber.smallestEndInches();
        double onWidth = StrictMath.hypot(width * (1 - 2 * share), height);
        double onHeight = StrictMath.hypot(width, height * (1 - 2 * share));
        assertThat(end).isCloseTo(Math.max(onWidth, onHeight), within(1e-9));
        assertThat(end).isEqualTo(timber.smallestEndInchesWorking().value());
        assertThat(end).isLessThanOrEqualTo(timber(width, height, 0).smallestEndInches());
        assertThat(end).isGreaterThanOrEqualTo(Math.max(width, height));
    }
}
