package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class UnitCircleTest {

    @Property
    void agreesWithTheArcSineOfTheStandardLibrary(@ForAll @DoubleRange(min = -1, max = 1) double d) {
        double expected = 0.5 * (d * Math.sqrt((1 - d) * (1 + d)) + StrictMath.asin(d));
        assertThat(UnitCircle.halfChords(d)).isCloseTo(expected, within(4e-16));
    }

    /** Both sides of each place at which the arc is folded, and the series at its widest. */
    @Test
    void agreesWhereTheArcIsFolded() {
        for (double fold : new double[] {0.39, 0.92, 1}) {
            for (double d : new double[] {Math.nextDown(fold), fold, Math.min(1, Math.nextUp(fold))}) {
                agreesWithTheArcSineOfTheStandardLibrary(d);
                agreesWithTheArcSineOfTheStandardLibrary(-d);
            }
        }
    }

    @Property
    void isOdd(@ForAll @DoubleRange(min = 0, max = 1) double d) {
        assertThat(UnitCircle.halfChords(-d)).isEqualTo(-UnitCircle.halfChords(d));
    }

    @Test
    void isAQuarterOfTheCircleInTheEnd() {
        assertThat(UnitCircle.halfChords(0)).isZero();
        assertThat(UnitCircle.halfChords(1)).isEqualTo(Math.PI / 4);
    }
}
