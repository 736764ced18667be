package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

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

    /** Near the bark of the large end a flitch does not reach the small one, whatever the frame. */
    @Property(tries = 40)
    void aFlitchThatRunsOutRestsOnItsPieces(
            @ForAll @IntRange(min = 8, max = 14) int small,
            @ForAll @IntRange(min = 0, max = 8) int taper,
            @ForAll @IntRange(min = -48, max = 48) int halfInches) {
        LogSolid solid = BestPatternTest.cone(small, small + taper, 12);
        Length whole = Length.ofMetres(solid.lengthMetres(), Rounding.HALF_EVEN);
        List<PieceOption> sizes = List.of(PieceOption.fixed(
                "short",
                Length.inches(1),
                Length.inches(3),
                List.of(new LengthWorth(Length.feet(3), 3), new LengthWorth(Length.feet(5), 5))));
        SearchSpace space = SearchSpace.standard()
                .withGrid(Length.inches(1, 4))
                .withCants(false)
                .withLays(List.of(Frame.Lay.OFFSET))
                .withOffset(Length.inches(halfInches, 2));
        Optional<SawingPlan> plan = BestPattern.findAny(
                solid, BestPatternTest.saw(Saw.Reference.PREVIOUS_FACE), sizes, space, PassCost.each(0.01));
        if (plan.isEmpty()) {
            Statistics.collect("nothing fits");
            return;
        }
        List<TurnedShim> shims = TurnedShim.of(plan.get());
        for (TurnedShim shim : shims) {
            assertThat(shim.height()).isBetween(Length.ZERO, Length.inches(12));
            assertThat(shim.supportedFrom()).isBetween(Length.ZERO, whole);
            assertThat(shim.supportedTo()).isBetween(shim.supportedFrom(), whole);
        }
        boolean runsOut = shims.stream()
                .anyMatch(shim -> !shim.supportedFrom().equals(Length.ZERO)
                        || !shim.supportedTo().equals(whole));
        Statistics.collect(runsOut ? "a flitch runs out" : "all reach both ends");
    }

    @Test
    void aLogWithoutTaperNeedsNone() {
        assertThat(TurnedShim.of(plan(13, 13, true))).isEmpty();
    }
}
