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

    static Log log(String length, String longest, String shortest, String large) {
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

    private static List<ScalingConvention.Segment> parts(Jurisdiction place, String length) {
        return place.scale(log(length, "14 in", "14 in", "20 in")).segments();
    }

    private static List<Double> lengths(Jurisdiction place, String length) {
        return parts(place, length).stream()
                .map(ScalingConvention.Segment::lengthFeet)
                .toList();
    }

    @Test
    void georgiaDividesFromEighteenAndFromThirtyFourFeetIntoEvenParts() {
        assertThat(lengths(Jurisdiction.GEORGIA, "17 ft 11 in")).containsExactly(16.0);
        assertThat(lengths(Jurisdiction.GEORGIA, "18 ft")).containsExactly(8.0, 10.0);
        assertThat(lengths(Jurisdiction.GEORGIA, "33 ft")).containsExactly(16.0, 16.0);
        assertThat(lengths(Jurisdiction.GEORGIA, "34 ft")).containsExactly(10.0, 12.0, 12.0);
    }

    @Test
    void minnesotaScalesLessThanTwentyFourFeetAsOne() {
        assertThat(lengths(Jurisdiction.MINNESOTA, "23 ft 11 in")).containsExactly(22.0);
        assertThat(lengths(Jurisdiction.MINNESOTA, "24 ft")).containsExactly(12.0, 12.0);
    }

    @Test
    void vermontTakesWholeSectionsOfTwelveFeetFromTheSmallEnd() {
        assertThat(lengths(Jurisdiction.VERMONT, "30 ft")).containsExactly(12.0, 12.0, 6.0);
        // 6 in of taper over 30 ft: 14, 16.4 and 18.8 in.
        assertThat(parts(Jurisdiction.VERMONT, "30 ft"))
                .extracting(ScalingConvention.Segment::diameterInches)
                .containsExactly(14.0, 16.0, 19.0);
        Scale scale = Jurisdiction.VERMONT.scale(log("30 ft", "14 in", "14 in", "20 in"));
        assertThat(scale.boardFeet().value()).isEqualTo(98 + 128 + 90.25);
        assertThat(scale.working().value()).isEqualTo(98 + 128 + 90.25);
    }

    @Test
    void anExactHalfInchGoesToTheEvenInchInGeorgiaAndUpInIdaho() {
        Log half = log("16 ft", "14 1/2 in", "14 1/2 in", "16 in");
        Log other = log("16 ft", "15 1/2 in", "15 1/2 in", "16 in");
        assertThat(Jurisdiction.GEORGIA.convention().scalingDiameterInches(half))
                .isEqualTo(14);
        assertThat(Jurisdiction.GEORGIA.convention().scalingDiameterInches(other))
                .isEqualTo(16);
        assertThat(Jurisdiction.IDAHO.convention().scalingDiameterInches(half)).isEqualTo(15);
    }

    @Test
    void everyJurisdictionScalesAnOrdinaryLogAndCitesItsSource() {
        for (Jurisdiction place : Jurisdiction.values()) {
            Scale scale = place.scale(log("16 ft 6 in", "14 in", "14 in", "16 in"));
            assertThat(scale.boardFeet().value()).isPositive();
            assertThat(scale.working().notes())
                    .anyMatch(note -> note.contains(place.source().title()));
            assertThat(Jurisdiction.byId(place.id())).isEqualTo(place);
        }
        assertThatThrownBy(() -> Jurisdiction.byId("oz")).hasMessageContaining("georgia");
    }

    @Test
    void whatAPlaceDoesOtherwiseIsDone() {
        Log log = log("16 ft 7 in", "15 3/4 in", "15 3/4 in", "19 3/4 in");
        assertThat(Jurisdiction.NEW_JERSEY_1943.scale(log).segments().get(0).diameterInches())
                .isEqualTo(18);
        assertThat(Jurisdiction.IDAHO_COURSE_EAST.scale(log).segments())
                .containsExactly(new ScalingConvention.Segment(15, 8), new ScalingConvention.Segment(17, 9))
                .hasSize(2);
        assertThat(Jurisdiction.NATIONAL_FOREST
                        .convention()
                        .scalingLengthFeet(log("16 ft 5 in", "9 in", "9 in", "9 in")))
                .isEqualTo(15);
        Log oval = log("16 ft 7 in", "13 in", "8 in", "14 in");
        assertThat(Jurisdiction.IDAHO_CONTEST.convention().scalingDiameterInches(oval))
                .isEqualTo(10);
        assertThat(Jurisdiction.FOREST_SERVICE_WEST_1920
                        .scale(log("35 ft", "15 in", "15 in", "19 in"))
                        .segments())
                .extracting(ScalingConvention.Segment::lengthFeet)
                .containsExactly(16.0, 18.0);
    }

    @Test
    void aLowerSegmentIsReadLikeTheFirst() {
        // 7 7/8 in are read as 8; no taper, so the lower segment is 8 too, though the rest of a mean is dropped.
        assertThat(Jurisdiction.IDAHO_CONTEST
                        .scale(log("22 ft 7 in", "7 7/8 in", "7 7/8 in", "7 7/8 in"))
                        .segments())
                .containsExactly(new ScalingConvention.Segment(8, 10), new ScalingConvention.Segment(8, 12));
    }

    @Test
    void aPlaceWithoutARuleSaysWhy() {
        assertThatThrownBy(() -> Jurisdiction.byId("new-hampshire")).hasMessageContaining("no law of the state");
        assertThatThrownBy(() -> Jurisdiction.byId("newfoundland")).hasMessageContaining("CNLR 987/96");
    }

    @Test
    void theWorkingOfAScalingDiameterHasItsBits() {
        for (Jurisdiction place : Jurisdiction.values()) {
            ScalingConvention convention = place.convention();
            for (int sixteenths = 160; sixteenths < 320; sixteenths++) {
                Log log = log("16 ft 7 in", sixteenths + 7 + "/16 in", sixteenths + "/16 in", "30 in");
                assertThat(convention.scalingDiameterInchesWorking(log).value())
                        .isEqualTo(convention.scalingDiameterInches(log));
            }
        }
    }

    @Test
    void anInchOfDiameterIsAThirdOfADoyleScaleAtTenInches() {
        MeasurementError error = MeasurementError.of(LogRules.byId("doyle"), 10, 16);
        assertThat(error.boardFeet()).isEqualTo(36);
        assertThat(error.percentInchMore()).isCloseTo(100 * (49.0 / 36 - 1), within(1e-12));
        assertThat(error.percentInchLess()).isCloseTo(100 * (25.0 / 36 - 1), within(1e-12));
        MeasurementError table = MeasurementError.of(LogRules.byId("scribner-decimal-c"), 10, 16);
        assertThat(table.percentHalfInchMore()).isEmpty();
        assertThat(table.percentInchMore()).isCloseTo(100 * (70.0 / 60 - 1), within(1e-12));
    }

    @Test
    void aScaleCautionsWhereItsRuleDoesForAnySegment() {
        Scale thin = Scale.of(log("16 ft", "3 in", "3 in", "4 in"), LogRules.byId("doyle"), ScalingConvention.plain());
        assertThat(thin.caution()).hasValueSatisfying(words -> assertThat(words).contains("below 4 in"));
        Scale thick =
                Scale.of(log("16 ft", "12 in", "12 in", "13 in"), LogRules.byId("doyle"), ScalingConvention.plain());
        assertThat(thick.caution()).isEmpty();
    }

    @Test
    void halfAnInchMoreAndLessOfDoyle() {
        MeasurementError error = MeasurementError.of(LogRules.byId("doyle"), 10, 16);
        assertThat(error.percentHalfInchMore()).hasValueCloseTo(100 * (42.25 / 36 - 1), within(1e-12));
        assertThat(error.percentHalfInchLess()).hasValueCloseTo(100 * (30.25 / 36 - 1), within(1e-12));
        assertThat(error.inchMoreWorking().value()).isEqualTo(error.percentInchMore());
        assertThatThrownBy(() -> MeasurementError.of(LogRules.byId("doyle"), 4, 16))
                .hasMessageContaining("gives board feet");
        assertThatThrownBy(() -> MeasurementError.of(LogRules.byId("doyle"), 120, 16))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> MeasurementError.of(LogRules.byId("doyle"), 1, 16))
                .isInstanceOf(OutOfDomainException.class);
    }

    private static ScalingConvention convention(String step, String trim, String lengthStep, String greatest) {
        ScalingConvention plain = ScalingConvention.plain();
        return new ScalingConvention(
                "own",
                "own",
                Length.parse(step),
                plain.diameterRounding(),
                plain.eachAxisFirst(),
                Length.parse(trim),
                Length.parse(lengthStep),
                plain.lengthRounding(),
                Length.parse(greatest),
                plain.split(),
                plain.diameterAt(),
                plain.source(),
                List.of());
    }

    @Test
    void aConventionNeedsStepsAndALengthOfAtLeastAStep() {
        assertThat(convention("1 in", "0 in", "1 ft", "1 ft").greatestLength()).isEqualTo(Length.feet(1));
        for (String[] wrong : new String[][] {
            {"0 in", "0 in", "1 ft", "40 ft"}, {"1 in", "0 in", "0 ft", "40 ft"}, {"1 in", "0 in", "2 ft", "1 ft"}
        }) {
            assertThatThrownBy(() -> convention(wrong[0], wrong[1], wrong[2], wrong[3]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("convention own");
        }
    }

    @Test
    void aLogOfExactlyAStepAndTheTrimHasAScalingLength() {
        ScalingConvention trimmed = convention("1 in", "6 in", "1 ft", "40 ft");
        assertThat(trimmed.scalingLengthFeet(log("1 ft 6 in", "9 in", "9 in", "9 in")))
                .isEqualTo(1);
        assertThatThrownBy(() -> trimmed.scalingLengthFeet(log("1 ft 5 in", "9 in", "9 in", "9 in")))
                .hasMessageContaining("and the trim of 6 in");
        assertThat(ScalingConvention.plain().segments(log("40 ft", "9 in", "9 in", "9 in"), DiameterAt.SMALL_END))
                .hasSize(1);
        assertThat(ScalingConvention.plain().segments(log("41 ft", "9 in", "9 in", "9 in"), DiameterAt.SMALL_END))
                .hasSize(2);
    }

    @Test
    void aJurisdictionNamesItsRuleConventionAndSource() {
        assertThat(Jurisdiction.GEORGIA.label()).isEqualTo("Georgia");
        assertThat(Jurisdiction.GEORGIA.rule().id()).isEqualTo("scribner-decimal-c");
        assertThat(Jurisdiction.GEORGIA.convention().lengthStep()).isEqualTo(Length.feet(2));
        assertThat(Jurisdiction.NATIONAL_FOREST.convention().trim()).isEqualTo(Length.inches(6));
        assertThat(Jurisdiction.VERMONT.convention().split()).isEqualTo(ScalingConvention.Split.WHOLE_FROM_SMALL_END);
        assertThat(Jurisdiction.GEORGIA.convention().notes()).isNotEmpty();
        assertThat(Jurisdiction.IDAHO_COURSE_EAST
                        .convention()
                        .scalingLengthFeet(log("16 ft 6 in", "9 in", "9 in", "9 in")))
                .as("an exact half is dropped")
                .isEqualTo(16);
    }

    @Test
    void recoveryRefusesAnotherKindAndNothing() {
        Volume none = Volume.ZERO;
        assertThatThrownBy(() -> Overrun.lumberRecoveryFactor(BoardFeet.tally(1), none))
                .hasMessageContaining("log volume");
        assertThatThrownBy(() -> Overrun.cubicPercentWorking(Volume.ofCubicFeet(1), none))
                .hasMessageContaining("log volume");
        assertThatThrownBy(() -> Overrun.percentWorking(BoardFeet.usable(1), BoardFeet.scale(1)))
                .hasMessageContaining("usable");
        assertThat(Overrun.percentWorking(BoardFeet.tally(90), BoardFeet.scale(100))
                        .lines())
                .anySatisfy(line -> assertThat(line.source().id()).isEqualTo("plank-1985"));
    }

    @Test
    void aWorkingTellsWhatTheConventionFilledIn() {
        Log log = log("16 ft", "14 in", "14 in", "16 in");
        List<String> notes = Jurisdiction.GEORGIA.convention().notes();
        assertThat(Jurisdiction.GEORGIA.scale(log).working().notes()).containsAll(notes);
        assertThat(Jurisdiction.GEORGIA
                        .convention()
                        .scalingDiameterInchesWorking(log)
                        .notes())
                .containsAll(notes);
    }
}
