package org.woodyield.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class DrawsTest {

    /** The platform's generator is another implementation of the same published mixer. */
    @Property
    void theDrawsAreThoseOfThePublishedMixer(@ForAll long seed) {
        Draws draws = Draws.seeded(seed);
        SplittableRandom other = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            assertThat(draws.nextLong()).isEqualTo(other.nextLong());
        }
    }

    @Test
    void everyDistributionDrawsItsOwnMeanAndSpread() {
        for (Distribution distribution : List.of(
                new Distribution.Fixed(3),
                new Distribution.Normal(10, 2),
                new Distribution.Rectangular(-1, 5),
                new Distribution.Triangular(1, 2, 9),
                new Distribution.Triangular(2, 2, 6),
                new Distribution.Triangular(2, 6, 6))) {
            Draws draws = Draws.seeded(20_240_601);
            int n = 200_000;
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < n; i++) {
                double x = distribution.draw(draws);
                sum += x;
                squares += (x - distribution.mean()) * (x - distribution.mean());
            }
            double allowed = 5 * distribution.standardDeviation() / Math.sqrt(n) + 1e-12;
            assertThat(sum / n).isCloseTo(distribution.mean(), within(allowed));
            assertThat(Math.sqrt(squares / n)).isCloseTo(distribution.standardDeviation(), within(4 * allowed));
        }
    }

    @Test
    void crossedEndsAreRefused() {
        assertThatThrownBy(() -> new Distribution.Triangular(1, 0.5, 2)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Distribution.Rectangular(2, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Distribution.Normal(Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
    }

    /** Written down once: another JDK has to give the same bits. */
    @Test
    void theDrawsOfASeedAreTheSameOnEveryJdk() {
        Draws draws = Draws.seeded(1);
        assertThat(Double.toHexString(draws.nextDouble())).isEqualTo("0x1.22145bd91204bp-1");
        assertThat(Double.toHexString(draws.nextNormal())).isEqualTo("0x1.a0acc94d4cebcp0");
        assertThat(Double.toHexString(new Distribution.Triangular(1, 2, 9).draw(draws)))
                .isEqualTo("0x1.b5fecf39ce404p1");
        MonteCarlo run = MonteCarlo.run(some -> some.nextNormal() * some.nextDouble(), 7, 500);
        assertThat(Double.toHexString(run.result().value())).isEqualTo("0x1.0979fa0521203p-6");
        assertThat(Double.toHexString(run.interval(0.95).greatest())).isEqualTo("0x1.4bc71d4725c83p0");
    }

    @Test
    void aDistributionKnowsItsEnds() {
        assertThat(new Distribution.Fixed(3).least()).isEqualTo(3);
        assertThat(new Distribution.Fixed(3).greatest()).isEqualTo(3);
        assertThat(new Distribution.Normal(3, 1).least()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(new Distribution.Normal(3, 1).greatest()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThatThrownBy(() -> new Distribution.Fixed(Double.NaN)).hasMessageContaining("finite numbers");
        assertThatThrownBy(() -> new Distribution.Rectangular(Double.NEGATIVE_INFINITY, 1))
                .hasMessageContaining("finite numbers");
        assertThatThrownBy(() -> new Distribution.Rectangular(1, Double.POSITIVE_INFINITY))
                .hasMessageContaining("finite numbers");
        assertThatThrownBy(() -> new Distribution.Triangular(1, 3, 2)).hasMessageContaining("the lesser end first");
    }
}
