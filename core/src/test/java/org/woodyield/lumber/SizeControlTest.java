package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
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

    @Property(tries = 200)
    void neitherTheOrderNorACommonOffsetChangesTheDeviations(
            @ForAll @Size(min = 4, max = 24) List<@IntRange(min = 100, max = 160) Integer> sixtyFourths,
            @ForAll @IntRange(min = 1, max = 200) int offset,
            @ForAll Convention convention) {
        List<List<Length>> boards = new ArrayList<>();
        List<List<Length>> thicker = new ArrayList<>();
        for (int i = 0; i + 1 < sixtyFourths.size(); i += 2) {
            boards.add(pair(sixtyFourths.get(i), sixtyFourths.get(i + 1)));
            thicker.add(0, pair(sixtyFourths.get(i + 1) + offset, sixtyFourths.get(i) + offset));
        }
        SizeControl one = SizeControl.of(boards);
        SizeControl other = SizeControl.of(thicker);
        assertThat(other.meanInches() - one.meanInches()).isCloseTo(offset / 64.0, within(1e-12));
        assertThat(other.withinInches()).isCloseTo(one.withinInches(), within(1e-9));
        assertThat(other.totalInches(convention)).isCloseTo(one.totalInches(convention), within(1e-9));
        // What lies within the boards is no part of what lies between them: the second convention takes it off.
        assertThat(one.betweenInches(Convention.COMPONENTS))
                .isLessThanOrEqualTo(one.betweenInches(Convention.PLAIN) + 1e-12);
    }

    private static List<Length> pair(int first, int second) {
        return List.of(Length.inches(first, 64), Length.inches(second, 64));
    }

    @Test
    void refusesTooFewReadings() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeControl.of(List.of(board("1", "2"))));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeControl.of(List.of(board("1", "2"), board("1"))));
    }

    @Test
    void refusesUnlikeCountsAndNothingAndSaysHowToMeasure() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeControl.of(List.of(board("1"), board("1"))))
                .withMessageContaining("2 or more");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeControl.of(List.of(board("1", "2"), board("1", "2", "3"))))
                .withMessageContaining("the same count for every board");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeControl.of(List.of(board("1", "2"), board("0", "2"))))
                .withMessageContaining("above 0");
        assertThat(two.working(Convention.PLAIN).title()).contains("plain deviations");
        assertThat(two.working(Convention.COMPONENTS).title()).contains("components of variance");
    }
}
