package org.woodyield.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

class LogSolidEndTest {

    @Test
    void aSumThatMissesTheEndByItsLastBitMeansTheEnd() {
        for (int decimetres = 20; decimetres <= 60; decimetres++) {
            double length = decimetres / 10.0;
            LogSolid solid = LogSolid.of(
                    List.of(new LogSolid.Station(0, 0.15, 0, 0), new LogSolid.Station(length, 0.2, 0, 0)),
                    1,
                    Length.ZERO);
            assertThat(solid.section(Math.nextUp(length))).isEqualTo(solid.section(length));
            assertThatThrownBy(() -> solid.section(length + 1e-6)).isInstanceOf(OutOfDomainException.class);
        }
    }
}
