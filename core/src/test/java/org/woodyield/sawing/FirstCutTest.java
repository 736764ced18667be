package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Frame.Lay;

class FirstCutTest {

    private static final Length TENTH = Length.nanometres(100_000);

    /** 12 in inside bark at the small end, 15 in at the large end. */
    private static final LogSolid CONE = BestPatternTest.cone(12, 15, 12);

    private static FirstCut cut(Lay lay, Length offset) {
        return FirstCut.of(CONE, lay, 0, offset, Length.inches(4));
    }

    @Test
    void parallelToTheAxisTheSmallEndIsShimmedByHalfTheTaper() {
        FirstCut cut = cut(Lay.AXIS, Length.ZERO);
        assertThat(cut.shim()).isEqualTo(Length.parse("38.1 mm"));
        assertThat(cut.shimUnderSmallEnd()).isTrue();
        assertThat(cut.aboveAxisSmallEnd()).isEqualTo(Length.inches(4));
        assertThat(cut.aboveAxisLargeEnd()).isEqualTo(Length.inches(4));
        // Bark of 1/2 in on a radius of 7 1/2 in reaches 4 in over the face.
        assertThat(cut.barkAboveFace()).isEqualTo(Length.inches(4));
        assertThat(cut.leastDepth(Length.inches(1, 4))).isEqualTo(Length.inches(15, 4));
        assertThat(cut.guideLargeEnd(Length.inches(1, 4), Length.inches(15, 4))).isEqualTo(Length.inches(8));
    }

    @Test
    void parallelToTheBarkBelowNothingIsShimmed() {
        FirstCut cut = cut(Lay.BARK_BELOW, Length.ZERO);
        assertThat(cut.shim()).isEqualTo(Length.ZERO);
        // The axis rises by 1 1/2 in to the large end, so the level face falls by as much against it.
        assertThat(cut.aboveAxisSmallEnd()).isEqualTo(Length.inches(19, 4));
        assertThat(cut.aboveAxisLargeEnd()).isEqualTo(Length.inches(13, 4));
    }

    @Test
    void parallelToTheBarkAboveTheShimIsTheWholeTaper() {
        FirstCut cut = cut(Lay.BARK_ABOVE, Length.ZERO);
        assertThat(cut.shim()).isEqualTo(Length.parse("76.2 mm"));
        assertThat(cut.shimUnderSmallEnd()).isTrue();
        // The face lies as deep under the bark at both ends.
        Length small = Length.parse("6 1/2 in").minus(cut.aboveAxisSmallEnd());
        Length large = Length.inches(8).minus(cut.aboveAxisLargeEnd());
        assertThat(small).isEqualTo(large);
    }

    @Test
    void offsetUpwardTheLargeEndMayNeedTheShim() {
        FirstCut cut = cut(Lay.OFFSET, Length.inches(2));
        assertThat(cut.shimUnderSmallEnd()).isFalse();
        assertThat(cut.shim()).isEqualTo(Length.parse("1/2 in").roundedTo(TENTH, Rounding.HALF_UP));
        assertThat(cut.aboveAxisSmallEnd().minus(cut.aboveAxisLargeEnd())).isEqualTo(Length.inches(2));
    }

    @Property(tries = 200)
    void onItsShimTheLogLiesLevelAsPlanned(
            @ForAll @DoubleRange(min = 0.1, max = 0.3) double small,
            @ForAll @DoubleRange(min = 0, max = 0.1) double taper,
            @ForAll @DoubleRange(min = 0.6, max = 1) double ratio,
            @ForAll @DoubleRange(min = 0, max = 180) double turn,
            @ForAll Lay lay) {
        LogSolid solid = LogSolid.of(
                List.of(new Station(0, small, 0, 0), new Station(4, small + taper, 0, 0)),
                ratio,
                Length.millimetres(9));
        FirstCut cut = FirstCut.of(solid, lay, turn, Length.millimetres(25), Length.millimetres(50));
        Lie lie = Lie.of(solid, cut.frame());
        double under = cut.shim().toMetres() * (cut.shimUnderSmallEnd() ? 1 : -1);
        Lie.Plane first = lie.overBark(0);
        Lie.Plane last = lie.overBark(4);
        assertThat((first.cv - Math.sqrt(first.svv)) - under).isCloseTo(last.cv - Math.sqrt(last.svv), within(0.51e-4));
        double lift = cut.frame().largeEndLift().toInches();
        assertThat(cut.aboveAxisSmallEnd().toInches())
                .isCloseTo(FirstCut.heightInches(cut.height().toInches(), lift, 0), within(1e-7));
        assertThat(cut.aboveAxisLargeEnd().toInches())
                .isCloseTo(FirstCut.heightInches(cut.height().toInches(), lift, 1), within(1e-7));
        assertThat(cut.workings()).hasSize(3);
    }

    @Property
    void theWorkingsAgreeBitForBit(
            @ForAll @DoubleRange(min = -20, max = 20) double height,
            @ForAll @DoubleRange(min = -5, max = 5) double lift,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        assertThat(FirstCut.heightInchesWorking(height, lift, share).value())
                .isEqualTo(FirstCut.heightInches(height, lift, share));
        assertThat(FirstCut.shimInchesWorking(6 + share, 7, lift).value())
                .isEqualTo(FirstCut.shimInches(6 + share, 7, lift));
        assertThat(GuideSupport.lengthInchesWorking(100 + height, 20 + lift).value())
                .isEqualTo(GuideSupport.lengthInches(100 + height, 20 + lift));
        double dip = 0.001 + share;
        assertThat(GuideSupport.spacingInchesWorking(96 + height, dip + 1, dip).value())
                .isEqualTo(GuideSupport.spacingInches(96 + height, dip + 1, dip));
        assertThat(GuideSupport.sagInchesWorking(96 + height, dip, 48 + height).value())
                .isEqualTo(GuideSupport.sagInches(96 + height, dip, 48 + height));
        assertThat(GuideSupport.supportsWorking(150 + height, 30 + lift).value())
                .isEqualTo(GuideSupport.supports(150 + height, 30 + lift));
    }

    @Property
    void aGuideOnItsSupportsDipsByWhatIsAllowed(
            @ForAll @DoubleRange(min = 24, max = 200) double span,
            @ForAll @DoubleRange(min = 0.05, max = 2) double dip,
            @ForAll @DoubleRange(min = 0.01, max = 1) double share) {
        double spacing = GuideSupport.spacingInches(span, dip, dip * share);
        double ratio = spacing / span;
        assertThat(dip * ratio * ratio * ratio).isCloseTo(dip * share, within(1e-9));
        assertThat(GuideSupport.sagInches(span, dip, Math.min(span, spacing))).isCloseTo(dip * share, within(1e-9));
        assertThat(spacing).isLessThanOrEqualTo(span * (1 + 1e-12));
        double guide = GuideSupport.lengthInches(120, 20);
        double supports = GuideSupport.supports(guide, Math.max(1, spacing));
        assertThat(guide / (supports - 1)).isLessThanOrEqualTo(Math.max(1, spacing) * (1 + 1e-12));
    }

    @Test
    void aGuideByHand() {
        // An eighth of the dip at half the span.
        assertThat(GuideSupport.spacingInches(96, 0.5, 0.0625)).isCloseTo(48, within(1e-9));
        assertThat(GuideSupport.sagInches(96, 0.5, 48)).isEqualTo(0.0625);
        assertThat(GuideSupport.lengthInches(144, 18)).isEqualTo(180);
        assertThat(GuideSupport.supports(180, 48)).isEqualTo(5);
        assertThat(GuideSupport.supports(180, 60)).isEqualTo(4);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> GuideSupport.spacingInches(96, 0.1, 0.2))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("the tested span serves already");
        assertThatThrownBy(() -> GuideSupport.spacingInches(96, 0.1, Double.NaN))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> GuideSupport.sagInches(96, 0.1, 97))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("test the guide at a longer span");
        assertThatThrownBy(() -> GuideSupport.sagInches(96, 0.1, Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> GuideSupport.lengthInches(144, -1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> GuideSupport.supports(144, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FirstCut.heightInches(4, 0, 1.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> FirstCut.shimInches(Double.NaN, 0, 1)).isInstanceOf(OutOfDomainException.class);
    }
}
