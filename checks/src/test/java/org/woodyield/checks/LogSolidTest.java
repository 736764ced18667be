package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;

/**
 * The volume of a log's solid against the integral of upright chords by Apache Commons Math. The chords are worked out here
 * from the stations: an ellipse at its own centre, of the mean radius on the straight line between two stations.
 */
class LogSolidTest {

    private static double integral(List<Station> stations, double ratio) {
        IterativeLegendreGaussIntegrator along = new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-14);
        IterativeLegendreGaussIntegrator across = new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-14);
        double sum = 0;
        for (int i = 1; i < stations.size(); i++) {
            Station a = stations.get(i - 1);
            Station b = stations.get(i);
            sum += along.integrate(
                    10_000,
                    z -> {
                        double t = (z - a.zMetres()) / (b.zMetres() - a.zMetres());
                        double r = (1 - t) * a.meanRadiusMetres() + t * b.meanRadiusMetres();
                        double halfLong = 2 * r / (1 + ratio);
                        double x = (1 - t) * a.centreXMetres() + t * b.centreXMetres();
                        // The place across runs as a sine, so that the chord is smooth at both ends.
                        return across.integrate(
                                10_000,
                                angle -> {
                                    double u = x + halfLong * Math.sin(angle);
                                    double share = (u - x) / halfLong;
                                    double chord = 2 * ratio * halfLong * Math.sqrt(Math.max(0, 1 - share * share));
                                    return chord * halfLong * Math.cos(angle);
                                },
                                -Math.PI / 2,
                                Math.PI / 2);
                    },
                    a.zMetres(),
                    b.zMetres());
        }
        return sum;
    }

    @Test
    void taperSweepButtFlareAndEllipse() {
        Random random = new Random(20261127);
        for (int n = 0; n < 40; n++) {
            double ratio = n % 4 == 0 ? 1 : 0.6 + 0.4 * random.nextDouble();
            double small = 0.08 + 0.2 * random.nextDouble();
            double large = small * (1 + 0.4 * random.nextDouble());
            double flare = n % 2 == 0 ? 0 : 0.3 * large * random.nextDouble();
            double sweep = n % 3 == 0 ? 0 : 0.1 * random.nextDouble();
            List<Station> stations = new ArrayList<>();
            for (int i = 0; i <= 5; i++) {
                double t = i / 5.0;
                double bow = 4 * sweep * t * (1 - t);
                stations.add(
                        new Station(4.2 * t, small + (large - small) * t + (i == 5 ? flare : 0), bow * 0.8, bow * 0.6));
            }
            double expected = integral(stations, ratio);
            assertThat(LogSolid.of(stations, ratio, Length.ZERO).volume().cubicMetres())
                    .as("log %s", n)
                    .isCloseTo(expected, within(expected * 1e-8));
        }
    }
}
