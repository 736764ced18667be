package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

class ConnectorFitTest {

    private static final ConnectorFit SEAT = new ConnectorFit(Length.parse("1 1/2 in"), Length.parse("1 9/16 in"));

    @ParameterizedTest
    @CsvSource({
        "1 7/16 in, LOOSE, -0.0625",
        "1 1/2 in, FITS, 0",
        "1 9/16 in, FITS, 0",
        "1 11/16 in, TOO_WIDE, 0.125",
        "2 in, TOO_WIDE, 0.4375"
    })
    void tellsByHowMuchABoardIsOff(String board, ConnectorFit.Fit fit, double off) {
        Length width = Length.parse(board);
        assertThat(SEAT.fit(width)).isEqualTo(fit);
        assertThat(SEAT.offInches(width)).isCloseTo(off, within(1e-12));
        assertThat(SEAT.offWorking(width).value()).isEqualTo(SEAT.offInches(width));
    }

    @Test
    void saysThatSizeIsNotStrengthAndRefusesACrossedSeat() {
        assertThat(SEAT.offWorking(Length.inches(2)).notes().get(0)).contains("nothing of strength");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new ConnectorFit(Length.inches(2), Length.inches(1)));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> SEAT.fit(Length.ZERO));
    }

    @Test
    void aSeatMayTakeOneWidthOnlyButNotNone() {
        Length width = Length.parse("1 1/2 in");
        assertThat(new ConnectorFit(width, width).fit(width)).isEqualTo(ConnectorFit.Fit.FITS);
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new ConnectorFit(Length.ZERO, width))
                .withMessageContaining("seat of the connector");
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> SEAT.offInches(Length.ZERO));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> SEAT.offWorking(Length.ZERO));
    }
}
