package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.measure.Length;
import org.woodyield.sawing.Frame.Lay;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.SearchSpace.Way;

class LesserSpacesTest {

    private static final SearchSpace STANDARD = SearchSpace.standard();
    private static final Length INCH = Length.inches(1);
    private static final Way AXIS = Way.of(Lay.AXIS);
    private static final Way ABOVE = Way.of(Lay.BARK_ABOVE);
    private static final Way BELOW = Way.of(Lay.BARK_BELOW);
    private static final Way ONE = new Way(Lay.OFFSET, INCH);
    private static final Way TWO = new Way(Lay.OFFSET, INCH.times(2));

    private static SearchSpace ways(Way... ways) {
        return STANDARD.withWays(List.of(ways));
    }

    private static SearchSpace turns(Double... degrees) {
        return STANDARD.withTurns(List.of(degrees));
    }

    @Test
    void aSpaceOfOneFrameIsPlannedByItself() {
        assertThat(LesserSpaces.of(STANDARD)).isEmpty();
        assertThat(LesserSpaces.within(STANDARD)).containsExactly(STANDARD);
        assertThat(LesserSpaces.within(ways(ONE))).containsExactly(ways(ONE));
    }

    /** Whoever writes a frame behind others had the job without it before. */
    @Test
    void theLastFrameGoesFirstThoughItBeTheAxis() {
        assertThat(LesserSpaces.within(ways(ABOVE, AXIS)))
                .containsExactlyInAnyOrder(ways(AXIS), ways(ABOVE), ways(ABOVE, AXIS));
        assertThat(LesserSpaces.within(ways(BELOW, ABOVE, AXIS)))
                .containsExactlyInAnyOrder(ways(AXIS), ways(BELOW), ways(BELOW, ABOVE), ways(BELOW, ABOVE, AXIS));
        assertThat(LesserSpaces.within(ways(BELOW, ABOVE))).containsExactly(ways(BELOW), ways(BELOW, ABOVE));
    }

    @Test
    void anOffsetKeepsItsPlaceBehindOtherFrames() {
        assertThat(LesserSpaces.within(ways(AXIS, ONE, ABOVE, TWO)))
                .containsExactly(ways(AXIS), ways(AXIS, ONE), ways(AXIS, ONE, ABOVE), ways(AXIS, ONE, ABOVE, TWO));
    }

    @Test
    void theLastTurnGoesFirstThoughItBeNone() {
        assertThat(LesserSpaces.within(turns(90.0, 0.0)))
                .containsExactlyInAnyOrder(turns(0.0), turns(90.0), turns(90.0, 0.0));
        assertThat(LesserSpaces.within(turns(0.0, 90.0, 45.0)))
                .containsExactly(turns(0.0), turns(0.0, 90.0), turns(0.0, 90.0, 45.0));
    }

    @Test
    void ofManyTurnsTheFirstAndNoneAreTheOnlyOthers() {
        SearchSpace five = turns(30.0, 60.0, 0.0, 90.0, 120.0);
        assertThat(LesserSpaces.within(five)).containsExactlyInAnyOrder(turns(30.0), turns(0.0), five);
        assertThat(LesserSpaces.within(turns(30.0, 60.0, 0.0, 90.0)))
                .hasSize(5)
                .contains(turns(30.0, 60.0, 0.0), turns(30.0, 60.0), turns(30.0), turns(0.0));
    }

    /** Every space comes after all that allow less, so that their choices are known. */
    @Test
    void eachComesOnceAndAfterThoseThatAllowLess() {
        SearchSpace all = ways(AXIS, ABOVE).withTurns(List.of(45.0, 0.0)).withStartStep(Length.feet(1));
        List<SearchSpace> within = new ArrayList<>(LesserSpaces.within(all));
        assertThat(within).hasSize(2 * 3 * 2).doesNotHaveDuplicates().endsWith(all);
        for (int i = 0; i < within.size(); i++) {
            assertThat(within.subList(0, i)).containsAll(LesserSpaces.of(within.get(i)));
        }
        assertThat(LesserSpaces.of(all)).hasSize(4);
    }

    /** What allows less is planned with all that it would be planned with by itself, or its choice could be a poorer one. */
    @Test
    void aSpaceIsPlannedWithAllThatItsLesserOnesArePlannedWith() {
        SearchSpace all = widest(ways(BELOW, ONE, ABOVE, AXIS));
        for (SearchSpace each : LesserSpaces.within(all)) {
            for (SearchSpace lesser : LesserSpaces.of(each)) {
                assertThat(LesserSpaces.within(each)).containsAll(LesserSpaces.within(lesser));
            }
        }
    }

    private static SearchSpace widest(SearchSpace framed) {
        return framed.withTurns(List.of(30.0, 60.0, 90.0, 0.0))
                .withStartStep(Length.feet(1))
                .withOverThick(INCH);
    }

    /** The axis named last gives one list more. With more than sixteen together it goes by one kind at a time. */
    @Test
    void manyKindsTogetherAreLeftOutOneAfterAnother() {
        SearchSpace all = widest(ways(BELOW, ONE, ABOVE, AXIS));
        assertThat(LesserSpaces.of(all)).containsExactly(all.withOverThick(Length.ZERO));
        SearchSpace exact = all.withOverThick(Length.ZERO);
        assertThat(LesserSpaces.of(exact)).containsExactly(exact.withStartStep(Length.ZERO));
        SearchSpace ends = exact.withStartStep(Length.ZERO);
        assertThat(LesserSpaces.of(ends))
                .containsExactlyInAnyOrder(ends.withTurns(List.of(0.0)), ends.withTurns(List.of(30.0, 60.0, 90.0)));
        // Three turns with five lists of frames, no turn with the same, and the three above.
        assertThat(LesserSpaces.within(all)).hasSize(3 * 5 + 5 + 3);
        SearchSpace sixteen = ways(AXIS, ABOVE)
                .withTurns(List.of(0.0, 90.0))
                .withStartStep(INCH)
                .withOverThick(INCH);
        assertThat(LesserSpaces.of(sixteen)).hasSize(4);
        assertThat(LesserSpaces.within(sixteen)).hasSize(LesserSpaces.MOST_TOGETHER);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void noJobTakesMoreThanTwentyThreeSearches(int frames) {
        List<Way> ways = List.of(BELOW, ONE, ABOVE, AXIS, TWO);
        List<Double> turns = List.of(30.0, 60.0, 90.0, 0.0, 120.0);
        for (int first = 0; first < frames; first++) {
            for (int more = 1; more <= turns.size(); more++) {
                SearchSpace space =
                        widest(STANDARD.withWays(ways.subList(first, frames))).withTurns(turns.subList(0, more));
                assertThat(LesserSpaces.within(space)).hasSizeLessThanOrEqualTo(23);
                assertThat(LesserSpaces.within(space.withOverThick(Length.ZERO)))
                        .hasSizeLessThanOrEqualTo(22);
            }
        }
    }
}
