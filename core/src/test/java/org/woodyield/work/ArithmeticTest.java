package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.KerfStack;

/** The small published identities: kerf in money, fuel of felling, cost of a unit. */
class ArithmeticTest {

    @Property
    void theWorkingsAgreeBitForBit(
            @ForAll @IntRange(min = 1, max = 40) int boards,
            @ForAll @DoubleRange(min = 0.1, max = 12) double thickness,
            @ForAll @DoubleRange(min = 0, max = 0.5) double kerf,
            @ForAll @DoubleRange(min = 20, max = 60) double diameter) {
        double wood = KerfStack.woodNeededInches(boards, thickness, kerf);
        double saved = KerfWorth.savedPercent(wood + kerf, wood);
        assertThat(KerfWorth.savedPercentWorking(wood + kerf, wood).value()).isEqualTo(saved);
        assertThat(KerfWorth.worthPerThousandWorking(537, saved).value())
                .isEqualTo(KerfWorth.worthPerThousand(537, saved));
        for (FellingFuel plot : FellingFuel.values()) {
            assertThat(plot.fuelMillilitresWorking(diameter).value()).isEqualTo(plot.fuelMillilitres(diameter));
            assertThat(plot.oilMillilitresWorking(diameter).value()).isEqualTo(plot.oilMillilitres(diameter));
        }
        assertThat(MachineRate.unitCostWorking(thickness, diameter).value())
                .isEqualTo(MachineRate.unitCost(thickness, diameter));
        assertThat(MachineRate.fuelLitresPerHourWorking(0.21, diameter, 0.54, 0.72)
                        .value())
                .isEqualTo(MachineRate.fuelLitresPerHour(0.21, diameter, 0.54, 0.72));
    }

    @Test
    void aDiameterBeyondTheStudyIsRefused() {
        assertThatThrownBy(() -> FellingFuel.PLOT_1.fuelMillilitres(80)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FellingFuel.PLOT_1.oilMillilitres(Double.NaN))
                .isInstanceOf(OutOfDomainException.class);
    }
}
