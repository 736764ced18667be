package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.WaneLimit;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Standing;

class WaneLimitTest {

    @Test
    void everyLimitIsFromMemoryAndIsAWane() {
        assertThat(WaneLimit.all()).hasSize(8).allSatisfy(limit -> {
            assertThat(limit.source().standing()).isEqualTo(Standing.MEMORY);
            assertThat(limit.thicknessShare()).isBetween(0.25, 0.5);
            assertThat(limit.widthShare()).isBetween(limit.thicknessShare(), 0.5);
        });
    }

    @Test
    void aGradeIsFoundByItsName() {
        assertThat(WaneLimit.of(" stud ").widthShare()).isEqualTo(0.5);
        assertThatThrownBy(() -> WaneLimit.of("No.7"))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("No.7")
                .hasMessageContaining("Select Structural, No.1");
    }

    @Test
    void aShareAboveOneIsNoWane() {
        assertThatThrownBy(() -> new Wane(1.01, 0))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("wane, share of the thickness");
        assertThatThrownBy(() -> new Wane(0, Double.NaN))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("wane, share of the width");
    }

    @Test
    void aGreenSizeBelowTheFinishedOneIsRefused() {
        Length inch = Length.inches(1);
        assertThatThrownBy(() -> Wane.within(WaneLimit.of("No.2"), inch.times(2), inch.times(4), inch, inch.times(4)))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("green thickness");
    }

    /** What is missing of the green piece is what the grade allows of the finished one. */
    @Property(tries = 200)
    void missingWoodIsThatOfTheFinishedSize(
            @ForAll @IntRange(min = 1, max = 100) int thick, @ForAll @IntRange(max = 20) int more) {
        Length finished = Length.millimetres(thick);
        Length green = Length.millimetres(thick + more);
        for (WaneLimit limit : WaneLimit.all()) {
            Wane wane = Wane.within(limit, finished, finished, green, green);
            assertThat(wane.thicknessShare() * green.toMetres())
                    .isCloseTo(limit.thicknessShare() * finished.toMetres(), within(1e-12));
            assertThat(wane.widthShare()).isLessThanOrEqualTo(limit.widthShare());
        }
    }
}
