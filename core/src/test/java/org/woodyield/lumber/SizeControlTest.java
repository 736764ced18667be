package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.woodyield.lumber.SizeControl.Convention;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

class SizeControlTest {

    private static List<Length> board(String... inches) {
        return Stream.of(inches).map(text -> Length.parse(text + " in")).toList();
    }

    private final SizeControl two = SizeControl.of(List.of(board("1", "3"), board("4", "6")));

    @Test
    void deviationsOfASmallCaseFollowByHand() {
        assertThat(two.meanInches()).isEqualTo(3.5);
        assertThat(two.withinInches()).isEqualTo(StrictMath.sqrt(2));
        assertThat(two.betweenInches(Convention.PLAIN)).isEqualTo(StrictMath.sqrt(4.5));
        assertThat(two.betweenInches(Convention.COMPONENTS)).isCloseTo(StrictMath.sqrt(3.5), within(1e-12));
        assertThat(two.totalInches(Convention.PLAIN)).isEqualTo(StrictMath.sqrt(13.0 / 3));
        assertThat(two.totalInches(Convention.COMPONENTS)).isCloseTo(StrictMath.sqrt(5.5), within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Convention.class)
    void workingGivesTheSameBits(Convention convention) {
        assertThat(two.working(convention).value()).isEqualTo(two.totalInches(convention));
        assertThat(two.working(convention).value("SB")).isEqualTo(two.betweenInches(convention));
        assertThat(two.working(convention).value("SW")).isEqualTo(two.withinInches());
        assertThat(two.working(convention).value("mean")).isEqualTo(two.meanInches());
    }

    @Test
    void refusesTooFewReadings() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeControl.of(List.of(board("1", "2"))));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeControl.of(List.of(board("1", "2"), board("1"))));
    }
}
