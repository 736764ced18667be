package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.work.EnergyFit;
import org.woodyield.work.TimedCut;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/** The fit of timed cuts and its interval against Commons Math, which shares no code with it. */
class EnergyFitTest {

    @Test
    void energyUncertaintyAndIntervalAgree() {
        // x = 0.5 x 0.8 cm x width x 200 cm / 4000 W, in seconds for each J/cm3.
        WorkInputs inputs = WorkInputs.chainDefaults()
                .with(WorkInput.RATED_POWER, 5)
                .with(WorkInput.SHARE_AT_CUT, 0.8)
                .with(WorkInput.DULLING, 0);
        Random random = new Random(7);
        for (int count = 3; count <= 40; count++) {
            SimpleRegression line = new SimpleRegression(false);
            List<TimedCut> cuts = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int millimetres = 300 + random.nextInt(500);
                double x = 0.5 * 0.8 * (millimetres / 10.0) * 200 / 4000;
                double seconds = x * 150 * (0.8 + 0.4 * random.nextDouble());
                line.addData(x, seconds);
                cuts.add(new TimedCut(
                        "c" + i,
                        true,
                        Optional.of(new Sourced(0.5, "", Sources.get("user"))),
                        Length.millimetres(millimetres),
                        Length.millimetres(2000),
                        seconds));
            }
            EnergyFit fit = EnergyFit.of(inputs, Length.millimetres(8), true, cuts);
            double half = new TDistribution(count - 1).inverseCumulativeProbability(0.975) * line.getSlopeStdErr();
            assertThat(fit.used()).isEqualTo(count);
            assertThat(fit.energy()).isCloseTo(line.getSlope(), within(1e-9 * line.getSlope()));
            assertThat(fit.standardUncertainty()).isCloseTo(line.getSlopeStdErr(), within(1e-6));
            assertThat(fit.greatest() - fit.energy()).isCloseTo(half, within(1e-5));
            assertThat(fit.energy() - fit.least()).isCloseTo(half, within(1e-5));
        }
    }
}
