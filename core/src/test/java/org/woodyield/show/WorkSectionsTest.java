package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.woodyield.measure.MonteCarlo;

class WorkSectionsTest {

    /** Years are drawn evenly between two ends, and never in some draws; they come as 1 / (1 + n). */
    private static MonteCarlo paid(double from, double to, double never) {
        return MonteCarlo.run(
                draws -> draws.nextDouble() < never ? 0 : 1 / (1 + from + (to - from) * draws.nextDouble()), 7, 20_000);
    }

    /** Of years between 2 and 10 the middle 95 % lie between 2.2 and 9.8. */
    @Test
    void theYearsOfAnOutlayThatIsAlwaysPaidAreAnInterval() {
        assertThat(WorkSections.paidWithin(paid(2, 10, 0))).isEqualTo(" (95 % of the draws: 2.2 to 9.8)");
    }

    /** A fifth of the draws lie beyond the life, so the later end is there too. */
    @Test
    void yearsThatAreNeverInSomeDrawsEndInNever() {
        assertThat(WorkSections.paidWithin(paid(2, 10, 0.2)))
                .matches(" \\(95 % of the draws: 2\\.[23] to never; never in (19|20)\\.[0-9] % of them\\)");
    }

    @Test
    void anOutlayThatIsHardlyEverPaidIsSaidToBeThat() {
        assertThat(WorkSections.paidWithin(paid(2, 10, 0.99))).matches(" \\(never in 9[89]\\.[0-9] % of the draws\\)");
    }
}
