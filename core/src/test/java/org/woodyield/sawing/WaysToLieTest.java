package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.Frame.Lay;
import org.woodyield.sawing.SearchSpace.Way;

class WaysToLieTest {

    private static final Length INCH = Length.inches(1);
    private static final Way AXIS = Way.of(Lay.AXIS);
    private static final Way LIFTED = new Way(Lay.OFFSET, INCH);
    private static final Way LOWERED = new Way(Lay.OFFSET, Length.ZERO.minus(INCH));

    @Test
    void theirOrderIsKept() {
        List<Way> ways = List.of(LIFTED, AXIS, LOWERED, Way.of(Lay.BARK_BELOW));
        SearchSpace space = SearchSpace.standard().withWays(ways);
        assertThat(space.ways()).isEqualTo(ways);
        assertThat(space.words())
                .contains("frames: large end lifted by 1 in; parallel to the axis; large end lowered by 1 in; "
                        + Lay.BARK_BELOW.words());
    }

    @Test
    void anOffsetNamedOnceStandsForAllLifts() {
        SearchSpace space = SearchSpace.standard()
                .withLays(List.of(Lay.OFFSET, Lay.AXIS))
                .withOffsets(List.of(INCH, Length.ZERO.minus(INCH)));
        assertThat(space.ways()).containsExactly(LIFTED, LOWERED, AXIS);
        assertThat(SearchSpace.standard().ways()).containsExactly(AXIS);
    }

    @Test
    void theAxisAloneIsTheStandardAgain() {
        SearchSpace lifted = SearchSpace.standard().withWays(List.of(LIFTED, LOWERED));
        assertThat(lifted.withWays(List.of(AXIS))).isEqualTo(SearchSpace.standard());
    }

    @Test
    void anOffsetNamedMoreOftenThanThereAreLiftsStandsForAllEachTime() {
        SearchSpace three = SearchSpace.standard().withWays(List.of(LIFTED, AXIS, LOWERED));
        assertThat(three.withOffset(INCH).ways()).containsExactly(LIFTED, AXIS, LIFTED);
        assertThatThrownBy(() -> three.withWays(List.of())).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void onlyTheOffsetHasALift() {
        assertThatThrownBy(() -> new Way(Lay.BARK_ABOVE, INCH))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining(Lay.BARK_ABOVE.words());
    }
}
