package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.woodyield.log.CentroidVolume;
import org.woodyield.log.GirthVolume;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.Firmwood;
import org.woodyield.scaling.KerfRule;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;

/** Every rule and formula for many logs at once: the bits of the single call, and no memory for each log. */
class BatchTest {

    private static final int COUNT = 20_000;

    /** Far less than a byte for each log. */
    private static final long MOST_BYTES = COUNT / 4;

    private interface Single {
        double of(int log);
    }

    private record Batch(String name, Runnable all, Single single) {}

    private final double[] out = new double[COUNT];
    private final double[] whole = new double[COUNT];
    private final double[] even = new double[COUNT];
    private final double[] feet = new double[COUNT];
    private final double[] small = new double[COUNT];
    private final double[] middle = new double[COUNT];
    private final double[] large = new double[COUNT];
    private final double[] metres = new double[COUNT];

    BatchTest() {
        Random random = new Random(20261127);
        for (int i = 0; i < COUNT; i++) {
            whole[i] = 12 + random.nextInt(19);
            even[i] = 14 + 2 * random.nextInt(13);
            feet[i] = 8 + 2 * random.nextInt(3);
            small[i] = 5 + 20 * random.nextDouble();
            middle[i] = small[i] + 3 * random.nextDouble();
            large[i] = middle[i] + 3 * random.nextDouble();
            metres[i] = 2 + 0.5 * random.nextInt(10);
        }
    }

    private List<Batch> batches() {
        List<Batch> all = new ArrayList<>();
        List<LogRule> rules = new ArrayList<>(LogRules.all());
        rules.addAll(LogRules.onRequest());
        rules.add(KerfRule.likeInternational(0.25));
        for (LogRule rule : rules) {
            all.add(new Batch(
                    rule.id(), () -> rule.scale(whole, feet, out), log -> rule.boardFeet(whole[log], feet[log])));
            all.add(new Batch(
                    rule.id() + ", not rounded",
                    () -> rule.unroundedBoardFeet(whole, feet, out),
                    log -> rule.unroundedBoardFeet(whole[log], feet[log])));
        }
        for (CubicRule rule : CubicRule.values()) {
            all.add(new Batch(
                    rule.id(),
                    () -> rule.cubicMetres(even, metres, out),
                    log -> rule.cubicMetres(even[log], metres[log])));
        }
        for (SolidVolume formula : SolidVolume.values()) {
            all.add(new Batch(
                    formula.id(),
                    () -> formula.volume(small, middle, large, metres, out),
                    log -> formula.volume(small[log], middle[log], large[log], metres[log])));
        }
        for (GirthVolume formula : GirthVolume.values()) {
            all.add(new Batch(
                    formula.label(),
                    () -> formula.volume(middle, metres, out),
                    log -> formula.volume(middle[log], metres[log])));
        }
        all.add(new Batch(
                "centroid",
                () -> CentroidVolume.volume(small, middle, large, metres, out),
                log -> CentroidVolume.volume(small[log], middle[log], large[log], metres[log])));
        all.add(new Batch(
                "firmwood",
                () -> Firmwood.cubicMetres(small, large, metres, out),
                log -> Firmwood.cubicMetres(small[log], large[log], metres[log])));
        return all;
    }

    @TestFactory
    Stream<DynamicTest> eachHasTheBitsOfTheSingleCallAndTakesNoMemoryForALog() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        return batches().stream()
                .map(batch -> DynamicTest.dynamicTest(batch.name(), () -> {
                    Arrays.fill(out, Double.NaN);
                    batch.all().run();
                    for (int i = 0; i < COUNT; i++) {
                        assertThat(Double.doubleToRawLongBits(out[i]))
                                .as("log %d", i)
                                .isEqualTo(Double.doubleToRawLongBits(
                                        batch.single().of(i)));
                    }
                    long before = threads.getCurrentThreadAllocatedBytes();
                    batch.all().run();
                    assertThat(threads.getCurrentThreadAllocatedBytes() - before)
                            .isLessThan(MOST_BYTES);
                }));
    }

    @Test
    void arraysOfSeveralLengthsAreRefused() {
        double[] one = {20};
        double[] two = {20, 20};
        assertThatThrownBy(() -> SolidVolume.SMALIAN.volume(one, one, two, one, one))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GirthVolume.QUARTER.volume(one, one, two))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CentroidVolume.volume(one, two, one, one, one))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Firmwood.cubicMetres(one, two, one, one)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatLiesBeforeARefusedLogIsWritten() {
        double[] good = {20, 20, 20};
        double[] bad = {20, Double.NaN, 20};
        double[] got = {-7, -7, -7};
        assertThatThrownBy(() -> Firmwood.cubicMetres(good, bad, good, got)).isInstanceOf(OutOfDomainException.class);
        assertThat(got).startsWith(Firmwood.cubicMetres(20, 20, 20));
        double[] cubic = {-7, -7, -7};
        assertThatThrownBy(() -> SolidVolume.SMALIAN.volume(good, good, bad, good, cubic))
                .isInstanceOf(OutOfDomainException.class);
        assertThat(cubic).containsExactly(SolidVolume.SMALIAN.volume(20, 20, 20, 20), -7, -7);
    }

    /** A measure that a formula does not use may be anything. */
    @Test
    void inALaterBlockTooTheFirstRefusedLogEndsTheBatchWhicheverMeasureIsBad() {
        int refused = 2500;
        for (SolidVolume formula : SolidVolume.values()) {
            for (int measure = 0; measure < 4; measure++) {
                double[][] measures = {small.clone(), middle.clone(), large.clone(), metres.clone()};
                measures[measure][refused] = -1;
                measures[measure][refused + 1] = Double.POSITIVE_INFINITY;
                boolean used = true;
                try {
                    formula.volume(
                            measures[0][refused], measures[1][refused], measures[2][refused], measures[3][refused]);
                    used = false;
                } catch (OutOfDomainException expected) {
                    assertThat(expected.value()).isEqualTo("-1");
                }
                Arrays.fill(out, -7);
                if (used) {
                    assertThatThrownBy(() -> formula.volume(measures[0], measures[1], measures[2], measures[3], out))
                            .as("%s, measure %d", formula, measure)
                            .isInstanceOf(OutOfDomainException.class);
                    assertThat(out[refused - 1]).isPositive();
                    assertThat(out[refused]).isEqualTo(-7);
                } else {
                    formula.volume(measures[0], measures[1], measures[2], measures[3], out);
                    assertThat(out).doesNotContain(-7);
                }
            }
        }
    }
}
