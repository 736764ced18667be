package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.log.Log;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

/** From a measured log to its scale. */
class ScaleTest {

    private static final Species ANY =
            SpeciesCatalogue.published().all().iterator().next();

    private static Log log(String length, String longest, String shortest, String large) {
        return new Log(
                "A",
                ANY,
                Length.parse(length),
                Length.parse(longest),
                Length.parse(shortest),
                Length.parse(large),
                Length.ZERO,
                Length.ZERO,
                0,
                false);
    }

    @Test
    void thePlainConventionDropsAnExactHalfAndTheRestOfAFoot() {
        ScalingConvention plain = ScalingConvention.plain();
        assertThat(plain.scalingDiameterInches(log("16 ft 8 in", "13 in", "8 in", "14 in")))
                .isEqualTo(10);
        assertThat(plain.scalingDiameterInches(log("16 ft 8 in", "13 1/64 in", "8 in", "14 in")))
                .isEqualTo(11);
        assertThat(plain.scalingLengthFeet(log("16 ft 8 in", "13 in", "8 in", "14 in")))
                .isEqualTo(16);
    }

    @Test
    void aLogScalesByItsScalingDiameterAndLength() {
        Scale scale = Scale.of(
                log("10 ft 3 in", "20 1/4 in", "20 in", "22 in"), LogRules.byId("doyle"), ScalingConvention.plain());
        assertThat(scale.boardFeet()).isEqualTo(BoardFeet.scale(160));
        assertThat(scale.working().value()).isEqualTo(160);
    }

    @Test
    void aLongLogIsScaledInPartsWithItsOwnTaper() {
        Scale scale =
                Scale.of(log("50 ft", "12 in", "12 in", "17 in"), LogRules.byId("doyle"), ScalingConvention.plain());
        // Two parts of 25 ft; the lower one begins half way, at 14.5 in, whose half is dropped.
        assertThat(scale.segments())
                .isEqualTo(List.of(new ScalingConvention.Segment(12, 25), new ScalingConvention.Segment(14, 25)));
        assertThat(scale.boardFeet().value()).isEqualTo(100 + 156);
        assertThat(scale.working().value()).isEqualTo(scale.boardFeet().value());
    }

    @Test
    void aRuleThatAsksForTheMeanOfTheEndsGetsIt() {
        Scale scale = Scale.of(
                log("12 ft", "12 in", "12 in", "16 in"), LogRules.byId("two-thirds"), ScalingConvention.plain());
        assertThat(scale.segments().get(0).diameterInches()).isEqualTo(14);
    }

    @Test
    void aLogShorterThanAStepHasNoScale() {
        Log short_ = log("10 in", "12 in", "12 in", "12 in");
        assertThatThrownBy(() -> Scale.of(short_, LogRules.byId("doyle"), ScalingConvention.plain()))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("length of log A");
    }

    @Test
    void oneHundredAndFiftyPercentRecoveryIsFiftyPercentOverrun() {
        BoardFeet tally = BoardFeet.tally(150);
        BoardFeet scale = BoardFeet.scale(100);
        assertThat(Overrun.percent(tally, scale)).isEqualTo(50);
        assertThat(Overrun.percentWorking(tally, scale).value()).isEqualTo(50);
        assertThat(Overrun.percent(BoardFeet.tally(90), scale)).isCloseTo(-10, within(1e-12));
    }

    @Test
    void countsOfAnotherKindAreRefused() {
        assertThatThrownBy(() -> Overrun.percent(BoardFeet.scale(1), BoardFeet.scale(1)))
                .hasMessageContaining("scale board feet");
        assertThatThrownBy(() -> Overrun.percent(BoardFeet.usable(1), BoardFeet.scale(1)))
                .hasMessageContaining("usable");
        assertThatThrownBy(() -> Overrun.percent(BoardFeet.tally(1), BoardFeet.tally(1)))
                .hasMessageContaining("tally");
        assertThatThrownBy(() -> Overrun.percent(BoardFeet.tally(1), BoardFeet.scale(0)))
                .isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void recoveryOfSolidWood() {
        Volume log = Volume.ofCubicFeet(20);
        assertThat(Overrun.lumberRecoveryFactor(BoardFeet.tally(150), log))
                .isCloseTo(7.5, within(1e-12))
                .isEqualTo(Overrun.lumberRecoveryFactorWorking(BoardFeet.tally(150), log)
                        .value());
        Volume lumber = Volume.ofCubicFeet(10.6);
        assertThat(Overrun.cubicPercent(lumber, log))
                .isCloseTo(53, within(1e-12))
                .isEqualTo(Overrun.cubicPercentWorking(lumber, log).value());
    }
}
