package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;

class EnergyFitTest {

    private static final WorkInputs INPUTS = CuttingRateTest.CHAIN;
    private static final Length KERF = Length.millimetres(8);
    private static final Sourced OAK = new Sourced(0.6, "", Sources.get("user"));

    private static List<TimedCut> cuts(WorkInputs truth, int count, double scatter) {
        List<TimedCut> cuts = new ArrayList<>();
        CuttingRate rate = CuttingRate.of(truth, true, OAK, KERF);
        for (int i = 0; i < count; i++) {
            Length width = Length.millimetres(350 + 40 * i);
            Length length = Length.millimetres(2500);
            double seconds =
                    rate.cuttingSeconds(Cut.of(width, width, length)) * (1 + (i % 2 == 0 ? scatter : -scatter));
            cuts.add(new TimedCut("c" + i, true, Optional.of(OAK), width, length, seconds));
        }
        return cuts;
    }

    @Property(tries = 300)
    void cutsByTheModelGiveItsEnergyBack(
            @ForAll @DoubleRange(min = 150, max = 500) double energy, @ForAll @IntRange(min = 3, max = 12) int count) {
        List<TimedCut> cuts = cuts(INPUTS.with(WorkInput.ENERGY_HARDWOOD, energy), count, 0);
        EnergyFit fit = EnergyFit.of(INPUTS, KERF, true, cuts);
        assertThat(fit.energy()).isCloseTo(energy, within(1e-9 * energy));
        assertThat(fit.standardUncertainty()).isLessThan(1e-9 * energy);
        assertThat(fit.used()).isEqualTo(count);
    }

    @Property(tries = 300)
    void theWorkingAgreesBitForBit(
            @ForAll @DoubleRange(min = 150, max = 500) double energy,
            @ForAll @DoubleRange(min = 0, max = 0.3) double scatter,
            @ForAll @IntRange(min = 3, max = 12) int count) {
        List<TimedCut> cuts = cuts(INPUTS.with(WorkInput.ENERGY_HARDWOOD, energy), count, scatter);
        EnergyFit fit = EnergyFit.of(INPUTS, KERF, true, cuts);
        assertThat(EnergyFit.working(INPUTS, KERF, true, cuts).value()).isEqualTo(fit.energy());
        assertThat(fit.energy()).isBetween(fit.least(), fit.greatest());
    }

    @Test
    void threeCutsByHand() {
        WorkInputs inputs = INPUTS.with(WorkInput.RATED_POWER, 5)
                .with(WorkInput.SHARE_AT_CUT, 0.8)
                .with(WorkInput.DULLING, 0);
        // x = 0.5 x 0.8 cm x 50 cm x 200 cm / 4000 W = 1 s for each J/cm3; times 100, 110 and 120 s.
        List<TimedCut> cuts = new ArrayList<>();
        for (int seconds : new int[] {100, 110, 120}) {
            cuts.add(new TimedCut(
                    "t" + seconds,
                    false,
                    Optional.of(new Sourced(0.5, "", Sources.get("user"))),
                    Length.millimetres(500),
                    Length.millimetres(2000),
                    seconds));
        }
        EnergyFit fit = EnergyFit.of(inputs, KERF, false, cuts);
        assertThat(fit.energy()).isCloseTo(110, within(1e-9));
        // sqrt(200 / 2 / 3); Student's factor for 2 degrees of freedom and 95 % is 4.3027.
        assertThat(fit.standardUncertainty()).isCloseTo(5.773502691896, within(1e-9));
        assertThat(fit.greatest() - fit.energy()).isCloseTo(4.3026527 * 5.7735027, within(1e-5));
        WorkInputs fitted = fit.into(inputs);
        assertThat(fitted.find(WorkInput.ENERGY_SOFTWOOD).orElseThrow().spread())
                .isEqualTo(new Distribution.Normal(fit.energy(), fit.standardUncertainty()));
        assertThat(fitted.find(WorkInput.SHARE_AT_CUT).orElseThrow().hasSpread())
                .isFalse();
        assertThat(fitted.get(WorkInput.ENERGY_HARDWOOD)).isEqualTo(inputs.get(WorkInput.ENERGY_HARDWOOD));
    }

    @Test
    void aCutAtTheFeedLimitIsSetAside() {
        List<TimedCut> cuts = new ArrayList<>(cuts(INPUTS, 4, 0.05));
        cuts.add(new TimedCut("fast", true, Optional.empty(), Length.millimetres(80), Length.millimetres(2500), 50));
        EnergyFit fit = EnergyFit.of(INPUTS, KERF, true, cuts);
        assertThat(fit.setAside()).containsExactly("fast");
        assertThat(fit.used()).isEqualTo(4);
        assertThat(EnergyFit.working(INPUTS, KERF, true, cuts).notes()).hasSize(1);
    }

    @Test
    void tooFewCutsAreRefused() {
        assertThatThrownBy(() -> EnergyFit.of(INPUTS, KERF, true, cuts(INPUTS, 2, 0)))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("3 to 500");
        assertThatThrownBy(() -> EnergyFit.of(INPUTS, KERF, false, cuts(INPUTS, 5, 0)))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("softwood");
    }

    @Test
    void aTimeThatIsNoTimeIsRefused() {
        for (double seconds : new double[] {Double.NaN, 0, -3, 1e6}) {
            assertThatThrownBy(() -> new TimedCut(
                            "x", true, Optional.empty(), Length.millimetres(300), Length.millimetres(2000), seconds))
                    .isInstanceOf(OutOfDomainException.class);
        }
        assertThatThrownBy(() -> new TimedCut("x", true, Optional.empty(), Length.ZERO, Length.millimetres(2000), 10))
                .isInstanceOf(OutOfDomainException.class);
    }
}
