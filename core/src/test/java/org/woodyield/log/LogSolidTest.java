package org.woodyield.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

final class LogSolidTest {

    private static LogSolid flared() {
        return LogSolid.of(
                List.of(
                        new Station(0, 0.15, 0, 0),
                        new Station(1.5, 0.17, 0.01, -0.004),
                        new Station(4, 0.2, 0.02, 0.01),
                        new Station(4.5, 0.27, 0, 0)),
                0.85,
                Length.millimetres(15));
    }

    @Test
    void volumeOfACylinderIsAreaTimesLength() {
        LogSolid solid = LogSolid.of(List.of(new Station(0, 0.2, 0, 0), new Station(5, 0.2, 0, 0)), 1, Length.ZERO);
        assertThat(solid.volume().cubicMetres()).isCloseTo(StrictMath.PI * 0.04 * 5, within(1e-14));
    }

    @Test
    void closedFormAgreesWithSlicing() {
        double exact = flared().volume().cubicMetres();
        assertThat(flared().volumeBySlices(2000).cubicMetres()).isCloseTo(exact, within(exact * 1e-8));
    }

    @Test
    void workingEqualsTheFastVolumeBitForBit() {
        assertThat(flared().volumeWorking().value()).isEqualTo(flared().volume().cubicMetres());
    }

    @Test
    void barkLengthensBothHalfAxes() {
        LogSolid.Section inside = flared().section(2);
        LogSolid.Section over = flared().sectionOverBark(2);
        assertThat(over.halfLongMetres() - inside.halfLongMetres()).isCloseTo(0.015, within(1e-15));
        assertThat(over.halfShortMetres() - inside.halfShortMetres()).isCloseTo(0.015, within(1e-15));
        assertThat(inside.halfShortMetres()).isCloseTo(0.85 * inside.halfLongMetres(), within(1e-15));
    }

    @Test
    void pointsBeyondTheEndsOrTheBarkLineAreOutside() {
        assertThat(flared().contains(0, 0, 2)).isTrue();
        assertThat(flared().contains(0, 0, 4.6)).isFalse();
        assertThat(flared().contains(0.2, 0, 1)).isFalse();
        assertThat(flared().contains(Double.NaN, 0, 1)).isFalse();
    }

    @Test
    void stationsOutOfOrderAreNoLog() {
        assertThatThrownBy(() -> LogSolid.of(
                        List.of(new Station(0, 0.2, 0, 0), new Station(3, 0.2, 0, 0), new Station(2, 0.2, 0, 0)),
                        1,
                        Length.ZERO))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("station 3")
                .hasMessageContaining("in order");
    }

    @Test
    void profilesThatAreNoLogAreRefused() {
        assertThatThrownBy(() -> LogSolid.of(List.of(new Station(0, 0.2, 0, 0)), 1, Length.ZERO))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> LogSolid.of(
                        List.of(new Station(0, 0.2, 0, 0), new Station(1, Double.NaN, 0, 0)), 1, Length.ZERO))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("radius at station 2");
        assertThatThrownBy(() ->
                        LogSolid.of(List.of(new Station(0, 0.2, 0, 0), new Station(1, 0.2, 2, 0)), 1, Length.ZERO))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("45 degrees");
    }
}
