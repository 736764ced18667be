package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.OutOfDomainException;

/** Stacks, Swedish measures and firm wood. */
class StackedWoodTest {

    @Property(tries = 200)
    void workingsHaveTheBitsOfTheirValues(
            @ForAll @DoubleRange(min = 0, max = 500) double count,
            @ForAll @DoubleRange(min = 0.2, max = 1) double share) {
        for (StackedWood.Unit unit : StackedWood.Unit.values()) {
            assertThat(StackedWood.solidCubicMetresWorking(count, unit, share).value())
                    .isEqualTo(StackedWood.solidCubicMetres(count, unit, share));
        }
        for (StackedWood.GreenCord wood : StackedWood.GreenCord.values()) {
            assertThat(StackedWood.greenPoundsWorking(count, wood).value())
                    .isEqualTo(StackedWood.greenPounds(count, wood));
        }
        for (SwedishMeasure from : SwedishMeasure.values()) {
            for (SwedishMeasure to : SwedishMeasure.values()) {
                assertThat(from.toWorking(count, to).value()).isEqualTo(from.to(count, to));
            }
        }
    }

    @Test
    void stacksAreTheirSpaceTimesTheShareOfWood() {
        assertThat(StackedWood.Unit.CORD.space().cubicFeet()).isCloseTo(128, within(1e-12));
        assertThat(StackedWood.Unit.STERE.space().cubicMetres()).isEqualTo(1);
        assertThat(StackedWood.solidCubicMetres(2, StackedWood.Unit.STERE, 0.5)).isEqualTo(1);
        assertThat(StackedWood.greenPounds(2.5, StackedWood.GreenCord.PINE_EAST))
                .isEqualTo(13_000);
    }

    @Test
    void aSwedishMeasureIsOneOfItselfAndTheWayBackIsNearly() {
        for (SwedishMeasure from : SwedishMeasure.values()) {
            assertThat(from.factorTo(from)).isEqualTo(1);
            for (SwedishMeasure to : SwedishMeasure.values()) {
                double back = from.factorTo(to) * to.factorTo(from);
                assertThat(back).as("%s to %s and back", from, to).isCloseTo(1, within(0.02));
            }
        }
    }

    @Property(tries = 200)
    void firmwoodIsSmalianByRadii(
            @ForAll @DoubleRange(min = 2, max = 60) double top,
            @ForAll @DoubleRange(min = 1, max = 2) double ratio,
            @ForAll @DoubleRange(min = 0.5, max = 20) double length) {
        double volume = Firmwood.cubicMetres(top, top * ratio, length);
        double smalian = SolidVolume.SMALIAN.volume(top / 50, 1, top * ratio / 50, length);
        assertThat(volume).isCloseTo(smalian, within(smalian * 1e-13));
        assertThat(Firmwood.cubicMetresWorking(top, top * ratio, length).value())
                .isEqualTo(volume);
    }

    @Test
    void whatIsOutOfReasonIsRefused() {
        assertThatThrownBy(() -> StackedWood.solidCubicMetres(-1, StackedWood.Unit.CORD, 0.6))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> StackedWood.solidCubicMetres(1, StackedWood.Unit.CORD, 60))
                .hasMessageContaining("share");
        assertThatThrownBy(() -> StackedWood.greenPounds(Double.NaN, StackedWood.GreenCord.PINE_EAST))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SwedishMeasure.TOP.to(Double.NaN, SwedishMeasure.STEM))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Firmwood.cubicMetres(20, 19, 4)).hasMessageContaining("butt");
        assertThatThrownBy(() -> Firmwood.cubicMetres(20, Double.NaN, 4)).isInstanceOf(OutOfDomainException.class);
    }
}
