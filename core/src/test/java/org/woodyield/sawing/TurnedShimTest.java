package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;

class TurnedShimTest {

    private static final double BARK = 0.5;

    private static SawingPlan plan(double small, double large, boolean cants) {
        SearchSpace space = SearchSpace.standard().withGrid(Length.inches(1, 8)).withCants(cants);
        return BestPattern.find(
                BestPatternTest.cone(small, large, 12),
                BestPatternTest.saw(Saw.Reference.PREVIOUS_FACE),
                BestPatternTest.sizes(),
                space,
                PassCost.each(20));
    }

    /**
     * Within the faces of a turned piece the bark lies lowest at the height nearest the axis: at each end by Pythagoras from that
     * height and the radius over bark.
     */
    @Test
    void theShimIsWhatTheLargeEndReachesFurtherDown() {
        SawingPlan plan = plan(12, 16, true);
        List<TurnedShim> shims = TurnedShim.of(plan);
        assertThat(shims).isNotEmpty();
        for (TurnedShim shim : shims) {
            Rectangle kerf = plan.passes().get(shim.firstPass() - 1).kerf();
            double low = kerf.bottom().toInches();
            double high = kerf.top().toInches();
            double height = Math.min(Math.max(0, low), high);
            double atSmall = Math.sqrt((6 + BARK) * (6 + BARK) - height * height);
            double atLarge = Math.sqrt((8 + BARK) * (8 + BARK) - height * height);
            assertThat(shim.underSmallEnd()).isTrue();
            assertThat(shim.height().toInches()).isCloseTo(atLarge - atSmall, within(0.002));
            for (int number = shim.firstPass(); number <= shim.lastPass(); number++) {
                SawPass pass = plan.passes().get(number - 1);
                assertThat(pass.stage()).isNotEqualTo(Stage.LIVE);
                assertThat(pass.kerf().bottom()).isEqualTo(kerf.bottom());
                assertThat(pass.kerf().top()).isEqualTo(kerf.top());
            }
        }
    }

    /** A cant or flitch through the axis lies on the full radius: half the taper of 4 in. */
    @Test
    void throughTheAxisItIsHalfTheTaper() {
        SawingPlan plan = plan(12, 16, false);
        assertThat(TurnedShim.of(plan)).anySatisfy(shim -> {
            Rectangle kerf = plan.passes().get(shim.firstPass() - 1).kerf();
            assertThat(kerf.bottom().toInches()).isNegative();
            assertThat(kerf.top().toInches()).isPositive();
            assertThat(shim.height().toInches()).isCloseTo(2, within(0.002));
        });
    }

    @Test
    void everyPassAfterATurnHasItsShim() {
        SawingPlan plan = plan(12, 16, false);
        long turned = plan.passes().stream()
                .filter(pass -> pass.stage() != Stage.LIVE)
                .count();
        assertThat(TurnedShim.of(plan).stream()
                        .mapToLong(shim -> shim.lastPass() - shim.firstPass() + 1)
                        .sum())
                .isEqualTo(turned);
    }

    @Test
    void aLogWithoutTaperNeedsNone() {
        assertThat(TurnedShim.of(plan(13, 13, true))).isEmpty();
    }
}
