package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.NormalLaw;

/** The library's own normal law against Apache Commons Math. */
class NormalLawTest {

    private static final NormalDistribution REFERENCE = new NormalDistribution();

    @Test
    void shareEqualsCommonsMathToOnePartInTenToTheTwelfth() {
        for (int i = -8000; i <= 8000; i += 7) {
            double z = i / 1000.0;
            double expected = REFERENCE.cumulativeProbability(z);
            assertThat(NormalLaw.shareBelow(z)).as("z %s", z).isCloseTo(expected, within(expected * 1e-12));
        }
    }

    @Test
    void deviateEqualsCommonsMath() {
        for (int i = 1; i < 1000; i++) {
            double share = i / 1000.0;
            assertThat(NormalLaw.deviate(share))
                    .as("share %s", share)
                    .isCloseTo(REFERENCE.inverseCumulativeProbability(share), within(1e-9));
        }
    }
}
