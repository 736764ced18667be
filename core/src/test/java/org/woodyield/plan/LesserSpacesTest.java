package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.sawing.Frame.Lay;
import org.woodyield.sawing.SearchSpace;

class LesserSpacesTest {

    private static final SearchSpace STANDARD = SearchSpace.standard();
    private static final Length INCH = Length.inches(1);

    @Test
    void aSpaceOfOneFrameIsPlannedByItself() {
        assertThat(LesserSpaces.of(STANDARD)).isEmpty();
        assertThat(LesserSpaces.within(STANDARD)).containsExactly(STANDARD);
        SearchSpace lifted = STANDARD.withLays(List.of(Lay.OFFSET)).withOffset(INCH);
        assertThat(LesserSpaces.within(lifted)).containsExactly(lifted);
    }

    @Test
    void framesGoFromTheLastOnAndTheAxisStays() {
        SearchSpace all = STANDARD.withLays(List.of(Lay.BARK_ABOVE, Lay.OFFSET, Lay.AXIS))
                .withOffsets(List.of(INCH, INCH.times(2)));
        assertThat(LesserSpaces.within(all))
                .containsExactly(
                        STANDARD,
                        STANDARD.withLays(List.of(Lay.BARK_ABOVE, Lay.AXIS)),
                        STANDARD.withLays(List.of(Lay.BARK_ABOVE, Lay.OFFSET, Lay.AXIS))
                                .withOffset(INCH),
                        all);
    }

    @Test
    void withoutTheAxisTheFirstFrameStays() {
        SearchSpace two = STANDARD.withLays(List.of(Lay.BARK_BELOW, Lay.BARK_ABOVE));
        assertThat(LesserSpaces.of(two)).containsExactly(STANDARD.withLays(List.of(Lay.BARK_BELOW)));
    }

    @Test
    void ofManyTurnsNoneIsTheOnlyOther() {
        SearchSpace five = STANDARD.withTurns(List.of(30.0, 60.0, 0.0, 90.0, 120.0));
        assertThat(LesserSpaces.within(five)).containsExactly(STANDARD, five);
        SearchSpace four = STANDARD.withTurns(List.of(30.0, 60.0, 0.0, 90.0));
        assertThat(LesserSpaces.within(four)).hasSize(4).contains(STANDARD.withTurns(List.of(30.0, 60.0, 0.0)));
    }

    /** Every space comes after all that allow less, so that their choices are known. */
    @Test
    void eachComesOnceAndAfterThoseThatAllowLess() {
        SearchSpace all = STANDARD.withLays(List.of(Lay.AXIS, Lay.BARK_ABOVE))
                .withTurns(List.of(0.0, 45.0, 90.0))
                .withStartStep(Length.feet(1))
                .withOverThick(INCH);
        List<SearchSpace> within = new ArrayList<>(LesserSpaces.within(all));
        assertThat(within).hasSize(2 * 3 * 2 * 2).doesNotHaveDuplicates().endsWith(all);
        for (int i = 0; i < within.size(); i++) {
            assertThat(within.subList(0, i)).containsAll(LesserSpaces.of(within.get(i)));
        }
    }
}
