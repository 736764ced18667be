package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;

/** A batch takes no memory for its logs. */
class BatchMemoryTest {

    private static final int LOGS = 20_000;

    private static long taken(Runnable batch) {
        ThreadMXBean bean = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        // What a class needs at its first use is not the batch's.
        batch.run();
        long before = bean.getCurrentThreadAllocatedBytes();
        batch.run();
        return bean.getCurrentThreadAllocatedBytes() - before;
    }

    private static double[] filled(double value) {
        double[] all = new double[LOGS];
        Arrays.fill(all, value);
        return all;
    }

    @Test
    void cubicRules() {
        double[] out = new double[LOGS];
        for (CubicRule rule : CubicRule.values()) {
            double[] d = filled(rule == CubicRule.FRANCE ? 60 : 20);
            double[] l = filled(4);
            assertThat(taken(() -> rule.cubicMetres(d, l, out))).as(rule.id()).isLessThan(LOGS);
        }
    }

    @Test
    void logRulesBeforeRounding() {
        double[] out = new double[LOGS];
        for (LogRule rule : LogRules.all()) {
            double[] d = filled(20);
            double[] l = filled(12);
            assertThat(taken(() -> rule.unroundedBoardFeet(d, l, out)))
                    .as(rule.id())
                    .isLessThan(LOGS);
        }
    }
}
