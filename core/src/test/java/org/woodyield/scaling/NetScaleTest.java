package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.woodyield.log.Log;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.wood.SpeciesCatalogue;

/** Defects and what is left of a log without them. */
class NetScaleTest {

    private static Length inches(double inches) {
        return Length.ofInches(inches, Rounding.DOWN);
    }

    private static Length feet(double feet) {
        return Length.ofFeet(feet, Rounding.DOWN);
    }

    /** Any defect that fits a log of 12 in and 8 ft. */
    @Provide
    Arbitrary<Defect> defect() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 6),
                        Arbitraries.doubles().between(0, 12),
                        Arbitraries.doubles().between(0, 12),
                        Arbitraries.doubles().between(0, 8))
                .as((kind, a, b, l) -> switch (kind) {
                    case 0 -> new Defect.LengthCut(feet(l));
                    case 1 -> new Defect.Sector(feet(l), 30 * a);
                    case 2 -> new Defect.SquaredDefect(inches(a), inches(b), feet(l));
                    case 3 -> new Defect.Interior(inches(a), inches(b), feet(l));
                    case 4 -> new Defect.Perimeter(inches(a));
                    case 5 -> new Defect.Sweep(inches(a));
                    default -> new Defect.Crook(inches(a), feet(l));
                });
    }

    /** The mutation profile, which runs these tests thousands of times, thins the tries, never the rules. */
    @Property
    void netLiesBetweenNothingAndGrossForEveryRuleInEveryOrderOfTheDefects(
            @ForAll @IntRange(min = 12, max = 40) int diameter,
            @ForAll @IntRange(min = 8, max = 12) int length,
            @ForAll @Size(max = 5) List<@net.jqwik.api.From("defect") Defect> defects,
            @ForAll long seed) {
        List<Defect> shuffled = new ArrayList<>(defects);
        Collections.shuffle(shuffled, new Random(seed));
        for (LogRule rule : LogRules.all()) {
            NetScale scale = NetScale.of(rule, diameter, length, defects);
            double net = scale.boardFeet().value();
            double gross = scale.gross().value();
            assertThat(net).as(rule.id()).isBetween(0.0, gross);
            assertThat(scale.working().value()).as(rule.id()).isEqualTo(net);
            assertThat(NetScale.of(rule, diameter, length, shuffled).boardFeet().value())
                    .as(rule.id())
                    .isEqualTo(net);
            assertThat(scale.soundShare())
                    .as(rule.id())
                    .isBetween(0.0, 1.0)
                    .isEqualTo(scale.soundShareWorking().value());
            if (!defects.isEmpty()) {
                // A defect less never makes less of a log.
                assertThat(NetScale.of(rule, diameter, length, defects.subList(1, defects.size()))
                                .boardFeet()
                                .value())
                        .as(rule.id())
                        .isGreaterThanOrEqualTo(net);
            } else {
                assertThat(net).as(rule.id()).isEqualTo(gross);
            }
        }
        NetVolume volume = new NetVolume(Volume.ofCubicFeet(9), inches(diameter), feet(length), defects);
        assertThat(volume.cubicFeet()).isBetween(0.0, volume.gross().cubicFeet());
        assertThat(volume.working().value()).isEqualTo(volume.cubicFeet());
        assertThat(new NetVolume(Volume.ofCubicFeet(9), inches(diameter), feet(length), shuffled).cubicFeet())
                .isEqualTo(volume.cubicFeet());
    }

    @Property(tries = 300)
    void aDeductionIsNeverMoreThanTheGrossAndItsWorkingHasItsBits(@ForAll("defect") Defect defect) {
        double bf = defect.boardFeet(64, 12, 8);
        assertThat(bf).as(defect.toString()).isBetween(0.0, 64.0);
        assertThat(defect.boardFeetWorking(64, 12, 8).value()).isEqualTo(bf);
        double solid = defect.cubicFeet(6.3, 12, 8);
        assertThat(solid).as(defect.toString()).isBetween(0.0, 6.3);
        assertThat(defect.cubicFeetWorking(6.3, 12, 8).value()).isEqualTo(solid);
    }

    @Test
    void theProportionsAreThoseRecalled() {
        assertThat(new Defect.LengthCut(feet(4)).boardFeet(160, 20, 16)).isEqualTo(40);
        assertThat(new Defect.Sector(feet(8), 90).boardFeet(160, 20, 16)).isEqualTo(20);
        assertThat(new Defect.SquaredDefect(inches(5), inches(4), feet(10)).boardFeet(160, 20, 16))
                .isEqualTo(20);
        assertThat(new Defect.Interior(inches(4), inches(4), feet(16)).boardFeet(160, 11, 16))
                .isEqualTo(40);
        assertThat(new Defect.Perimeter(inches(11)).boardFeet(160, 21, 16)).isEqualTo(120);
        assertThat(new Defect.Crook(inches(5), feet(8)).boardFeet(160, 20, 16)).isEqualTo(20);
        // Arithmetic on the rule: (4 - 2)/12 at 16 ft; no deduction within the allowance.
        assertThat(new Defect.Sweep(inches(4)).boardFeet(120, 12, 16)).isCloseTo(20, within(1e-12));
        assertThat(new Defect.Sweep(inches(1)).boardFeet(120, 12, 8)).isZero();
    }

    @Test
    void ofASolidVolumeOnlyMissingWoodIsTaken() {
        double gross = 16;
        assertThat(new Defect.SquaredDefect(inches(6), inches(6), feet(8)).cubicFeet(gross, 12, 8))
                .isEqualTo(2);
        assertThat(new Defect.Interior(inches(6), inches(6), feet(8)).cubicFeet(gross, 12, 8))
                .isEqualTo(2);
        assertThat(new Defect.Perimeter(inches(6)).cubicFeet(gross, 12, 8)).isEqualTo(12);
        assertThat(new Defect.Sweep(inches(6)).cubicFeet(gross, 12, 8)).isZero();
        assertThat(new Defect.Crook(inches(6), feet(4)).cubicFeet(gross, 12, 8)).isZero();
    }

    @Test
    void deductionsAreRoundedEachWithAHalfUp() {
        LogRule doyle = LogRules.byId("doyle");
        // Doyle gives 144 for 16 in and 16 ft; a 32nd of it is 4.5, counted as 5.
        Defect half = new Defect.LengthCut(feet(0.5));
        assertThat(NetScale.of(doyle, 16, 16, List.of(half)).boardFeet()).isEqualTo(BoardFeet.scale(139));
        assertThat(NetScale.of(doyle, 16, 16, List.of(half, half)).boardFeet()).isEqualTo(BoardFeet.scale(134));
        // Decimal C counts in tens.
        LogRule decimalC = LogRules.byId("scribner-decimal-c");
        assertThat(NetScale.of(decimalC, 20, 16, List.of(new Defect.LengthCut(feet(2))))
                        .boardFeet())
                .isEqualTo(BoardFeet.scale(280 - 40));
    }

    private static Scale longLog(String rule) {
        Log log = new Log(
                "L",
                SpeciesCatalogue.published().all().iterator().next(),
                feet(48),
                inches(20),
                inches(20),
                inches(32),
                Length.ZERO,
                Length.ZERO,
                0,
                false);
        return Scale.of(log, LogRules.byId(rule), ScalingConvention.plain());
    }

    @Test
    void aDefectCountsInThePartOfALongLogWhereItLies() {
        // Doyle: 20 in x 24 ft is 16^2 x 24/16 = 384, 26 in x 24 ft is 22^2 x 24/16 = 726.
        Scale gross = longLog("doyle");
        assertThat(gross.boardFeet()).isEqualTo(BoardFeet.scale(384 + 726));
        Defect cut = new Defect.LengthCut(feet(4));
        assertThat(NetScale.of(gross, List.of(new NetScale.Placed(cut, Length.ZERO)))
                        .boardFeet())
                .isEqualTo(BoardFeet.scale(1110 - 64));
        assertThat(NetScale.of(gross, List.of(new NetScale.Placed(cut, feet(44))))
                        .boardFeet())
                .isEqualTo(BoardFeet.scale(1110 - 121));
        // Half of it on either side: 32 and 60.5, the half up.
        NetScale across = NetScale.of(gross, List.of(new NetScale.Placed(cut, feet(22))));
        assertThat(across.boardFeet()).isEqualTo(BoardFeet.scale(1110 - 32 - 61));
        assertThat(across.working().value()).isEqualTo(across.boardFeet().value());
        assertThat(across.soundShareWorking().value()).isEqualTo(across.soundShare());
        assertThat(across.gross()).isEqualTo(gross.boardFeet());
        // A ring of 2 in round both: E - 1 over D - 1 is 15/19 and 21/25.
        NetScale ring = NetScale.of(gross, List.of(new NetScale.Placed(new Defect.Perimeter(inches(16)), Length.ZERO)));
        assertThat(ring.boardFeet().value())
                .isEqualTo(1110 - Math.rint(384 * (1 - 225.0 / 361)) - Math.rint(726 * (1 - 441.0 / 625)));
        assertThat(NetScale.of(gross, List.of()).boardFeet()).isEqualTo(gross.boardFeet());
        assertThat(NetScale.of(longLog("scribner-factors"), List.of(new NetScale.Placed(cut, Length.ZERO)))
                        .deductionStepBoardFeet())
                .isEqualTo(10);
    }

    /** Three parts of 16 ft: 9 in over the whole length is 9/9 in over a third, no more than what is allowed; 45 in is 5. */
    @Test
    void sweepOfTheWholeLogIsSharedOutAsAnEvenBend() {
        List<ScalingConvention.Segment> thirds = List.of(
                new ScalingConvention.Segment(10, 16),
                new ScalingConvention.Segment(12, 16),
                new ScalingConvention.Segment(14, 16));
        Scale gross = new Scale(longLog("doyle").log(), LogRules.byId("doyle"), ScalingConvention.plain(), thirds);
        assertThat(NetScale.of(gross, List.of(new NetScale.Placed(new Defect.Sweep(inches(9)), Length.ZERO)))
                        .boardFeet())
                .isEqualTo(gross.boardFeet());
        NetScale bent = NetScale.of(gross, List.of(new NetScale.Placed(new Defect.Sweep(inches(45)), Length.ZERO)));
        assertThat(bent.parts().get(1).defects()).containsExactly(new Defect.Sweep(inches(5)));
        // By hand: 36 x 3/10 = 10.8, 64 x 3/12 = 16, 100 x 3/14 = 21.4, each to the whole.
        assertThat(bent.boardFeet().value()).isEqualTo(36 + 64 + 100 - 11 - 16 - 21);
    }

    @Test
    void whatCannotBeSharedOutIsRefused() {
        Scale gross = longLog("doyle");
        assertThatThrownBy(() ->
                        NetScale.of(gross, List.of(new NetScale.Placed(new Defect.Sweep(inches(4)), Length.ZERO))))
                .hasMessageContaining("8 to 16 ft");
        assertThatThrownBy(() ->
                        NetScale.of(gross, List.of(new NetScale.Placed(new Defect.LengthCut(feet(1)), feet(49)))))
                .hasMessageContaining("beginning of the length cut");
        assertThatThrownBy(() -> new NetScale(LogRules.byId("doyle"), List.of(), 1))
                .hasMessageContaining("one or more");
    }

    /** A log that scales 100 by Doyle: 14 in x 16 ft, with 4 in of trim. */
    private static Scale hundred() {
        Log log = new Log(
                "L",
                SpeciesCatalogue.published().all().iterator().next(),
                feet(16).plus(inches(4)),
                inches(14),
                inches(14),
                inches(14),
                Length.ZERO,
                Length.ZERO,
                0,
                false);
        return Scale.of(log, LogRules.byId("doyle"), ScalingConvention.plain());
    }

    private static double net(NetScale.Placed... defects) {
        NetScale net = NetScale.of(hundred(), List.of(defects));
        assertThat(net.working().value()).isEqualTo(net.boardFeet().value());
        return net.boardFeet().value();
    }

    private static NetScale.Placed at(Defect defect, double feet) {
        return new NetScale.Placed(defect, feet(feet));
    }

    private static NetScale.Placed somewhere(Defect defect) {
        return new NetScale.Placed(defect, Optional.empty());
    }

    @Test
    void whatOverlapsIsCountedOnce() {
        Defect half = new Defect.LengthCut(feet(8));
        Defect wide = new Defect.Sector(feet(8), 300);
        assertThat(net(at(half, 0), at(half, 0))).isEqualTo(50);
        assertThat(net(at(half, 0), at(half, 4))).isEqualTo(25);
        assertThat(net(at(half, 0), at(half, 8))).isZero();
        assertThat(net(somewhere(half), somewhere(new Defect.LengthCut(feet(4)))))
                .isEqualTo(25);
        assertThat(net(somewhere(half), somewhere(half), somewhere(half))).isZero();
        // Two sectors of more than a full turn are all of their 8 ft; where they lie apart 41.67 each, up to 42.
        assertThat(net(at(wide, 0), at(wide, 0))).isEqualTo(50);
        assertThat(net(at(wide, 0), at(wide, 8))).isEqualTo(16);
        assertThat(net(at(half, 0), at(wide, 4))).isEqualTo(50 - 21);
        assertThatThrownBy(() -> net(somewhere(wide), somewhere(wide)))
                .hasMessageContaining("without a place, together is 600 degrees", "0 to 360 degrees", "at 0 ft");
        // A quarter turn along the whole log takes 25, beside a cut of 8 ft half of that.
        Defect quarter = new Defect.Sector(feet(16), 90);
        assertThat(net(somewhere(half), somewhere(quarter))).isEqualTo(50 - 13);
        // A ring: 100 x (1 - (E - 1)^2 / 13^2) with E = 7.5 is 75; half of it beside the cut.
        Defect ring = new Defect.Perimeter(inches(7.5));
        assertThat(net(somewhere(ring))).isEqualTo(25);
        assertThat(net(at(half, 0), somewhere(ring))).isEqualTo(50 - 38);
        // 75 and a third of a full turn are more than there is.
        assertThat(net(somewhere(ring), at(new Defect.Sector(feet(8), 120), 0))).isEqualTo(50 - 38);
        // (13 + 1) squared x 8 / 15 is 105, but the 8 ft scale only 50.
        assertThat(net(somewhere(new Defect.SquaredDefect(inches(13), inches(13), feet(8)))))
                .isEqualTo(50);
    }

    @Test
    void aPlaceHoldsInALogOfOnePartAndTheTrimCountsNothing() {
        Defect half = new Defect.LengthCut(feet(8));
        assertThat(net(at(half, 12))).isEqualTo(75);
        assertThat(net(at(half, 16))).isEqualTo(100);
        assertThat(net(at(half, 16.25))).isEqualTo(100);
        assertThatThrownBy(() -> net(at(half, 17)))
                .hasMessageContaining("beginning of the length cut is 17 ft", "0 to 16 ft 4 in", "measure from");
        assertThatThrownBy(() -> NetScale.of(longLog("doyle"), List.of(somewhere(half))))
                .hasMessageContaining("beginning of the length cut", "not given");
    }

    @Test
    void aSolidVolumeLosesWhatOverlapsOnce() {
        Volume gross = Volume.ofCubicFeet(16);
        Defect half = new Defect.LengthCut(feet(8));
        assertThat(NetVolume.of(gross, inches(14), feet(16), List.of(at(half, 0), at(half, 0)))
                        .cubicFeet())
                .isEqualTo(8);
        NetVolume ring = NetVolume.of(
                gross, inches(14), feet(16), List.of(at(half, 0), somewhere(new Defect.Perimeter(inches(7)))));
        assertThat(ring.cubicFeet()).isEqualTo(2);
        assertThat(ring.working().value()).isEqualTo(2);
    }

    /** All parts of a defect together are the defect, wherever it lies within the log. */
    @Property(tries = 300)
    void theStretchesOfASharedDefectAddUp(
            @ForAll @IntRange(min = 0, max = 480) int tenthsFrom,
            @ForAll @IntRange(min = 1, max = 300) int tenthsLong) {
        Length from = feet(tenthsFrom / 10.0);
        Length affected = feet(Math.min(tenthsLong, 480 - tenthsFrom) / 10.0);
        Defect cut = new Defect.LengthCut(affected);
        NetScale net = NetScale.of(longLog("doyle"), List.of(new NetScale.Placed(cut, from)));
        Length sum = Length.ZERO;
        for (NetScale.Part part : net.parts()) {
            for (Defect one : part.defects()) {
                sum = sum.plus(((Defect.LengthCut) one).affected());
            }
        }
        assertThat(sum).isEqualTo(affected);
        assertThat(net.boardFeet().value()).isBetween(0.0, net.gross().value());
    }

    @Test
    void aThirdOfSoundWoodMakesASoftwoodLogMerchantable() {
        LogRule doyle = LogRules.byId("doyle");
        NetScale third = NetScale.of(doyle, 16, 16, List.of(new Defect.Sector(feet(16), 240)));
        assertThat(third.boardFeet()).isEqualTo(BoardFeet.scale(48));
        assertThat(third.merchantable(NetScale.SOFTWOOD_LEAST_SHARE)).isTrue();
        assertThat(NetScale.of(doyle, 16, 16, List.of(new Defect.Sector(feet(16), 243)))
                        .merchantable(NetScale.SOFTWOOD_LEAST_SHARE))
                .isFalse();
        assertThatThrownBy(() -> third.merchantable(Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> NetScale.of(doyle, 4, 16, List.of()).soundShare())
                .hasMessageContaining("nothing");
    }

    @Test
    void aDefectThatDoesNotFitItsLogIsRefused() {
        LogRule doyle = LogRules.byId("doyle");
        for (Defect defect : List.of(
                new Defect.LengthCut(feet(17)),
                new Defect.Sector(feet(17), 90),
                new Defect.SquaredDefect(inches(21), inches(2), feet(2)),
                new Defect.Interior(inches(2), inches(21), feet(2)),
                new Defect.Perimeter(inches(21)),
                new Defect.Crook(inches(2), feet(17)),
                new Defect.LengthCut(feet(-1)))) {
            assertThatThrownBy(() -> NetScale.of(doyle, 20, 16, List.of(defect)))
                    .as(defect.toString())
                    .isInstanceOf(OutOfDomainException.class);
            assertThatThrownBy(() -> new NetVolume(Volume.ofCubicFeet(20), inches(20), feet(16), List.of(defect)))
                    .as(defect.toString())
                    .isInstanceOf(OutOfDomainException.class);
        }
        assertThatThrownBy(() -> new Defect.Sector(feet(2), Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Defect.Sweep(inches(2)).boardFeet(100, 12, 20))
                .hasMessageContaining("8 to 16");
        assertThatThrownBy(() -> new Defect.Sweep(inches(2)).boardFeet(Double.NaN, 12, 16))
                .isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void aDefectIsAcceptedUpToTheWholeLogAndRefusedBeyond() {
        assertThat(new Defect.LengthCut(feet(16)).boardFeet(160, 20, 16)).isEqualTo(160);
        assertThat(new Defect.Sector(feet(16), 360).boardFeet(160, 20, 16)).isEqualTo(160);
        assertThat(new Defect.Sector(feet(16), 0).boardFeet(160, 20, 16)).isZero();
        assertThat(new Defect.Perimeter(inches(20)).boardFeet(160, 20, 16)).isZero();
        assertThat(new Defect.Perimeter(inches(20)).cubicFeet(16, 20, 16)).isZero();
        assertThat(new Defect.Perimeter(inches(1)).boardFeet(160, 20, 16)).isEqualTo(160);
        for (double[] log :
                new double[][] {{-1, 20, 16}, {160, 1.9, 16}, {160, 121, 16}, {160, 20, 0.9}, {160, 20, 101}}) {
            for (Defect defect : List.of(
                    new Defect.LengthCut(feet(0.5)),
                    new Defect.Sector(feet(0.5), 90),
                    new Defect.SquaredDefect(inches(1), inches(1), feet(0.5)),
                    new Defect.Interior(inches(1), inches(1), feet(0.5)),
                    new Defect.Perimeter(inches(1)),
                    new Defect.Sweep(inches(1)),
                    new Defect.Crook(inches(1), feet(0.5)))) {
                assertThatThrownBy(() -> defect.boardFeet(log[0], log[1], log[2]))
                        .as(defect.toString())
                        .isInstanceOf(OutOfDomainException.class);
                assertThatThrownBy(() -> defect.cubicFeet(log[0], log[1], log[2]))
                        .as(defect.toString())
                        .isInstanceOf(OutOfDomainException.class);
                assertThatThrownBy(() -> defect.boardFeetWorking(log[0], log[1], log[2]))
                        .isInstanceOf(OutOfDomainException.class);
                assertThatThrownBy(() -> defect.cubicFeetWorking(log[0], log[1], log[2]))
                        .isInstanceOf(OutOfDomainException.class);
            }
        }
    }

    /** By hand: (8 + 1)(9 + 1) x 8/15 is 48; (5 - 2)/12 of 96 is 24; 6/12 x 4/16 of 96 is 12. */
    @Test
    void moreProportionsByHand() {
        assertThat(new Defect.SquaredDefect(inches(8), inches(9), feet(8)).boardFeet(160, 20, 16))
                .isEqualTo(48);
        assertThat(new Defect.SquaredDefect(inches(19), inches(19), feet(16)).boardFeet(160, 20, 16))
                .as("no more than there is")
                .isEqualTo(160);
        assertThat(new Defect.Sweep(inches(5)).boardFeet(96, 12, 16)).isEqualTo(24);
        assertThat(new Defect.Sweep(inches(100)).boardFeet(96, 12, 16)).isEqualTo(96);
        assertThat(new Defect.Crook(inches(6), feet(4)).boardFeet(96, 12, 16)).isEqualTo(12);
        assertThat(new Defect.Crook(inches(24), feet(4)).boardFeet(96, 12, 16)).isEqualTo(24);
        assertThat(new Defect.LengthCut(feet(4)).cubicFeet(16, 20, 16)).isEqualTo(4);
        assertThat(new Defect.Sector(feet(8), 90).cubicFeet(16, 20, 16)).isEqualTo(2);
    }

    @Test
    void aDefectSaysItsNameStretchAndSource() {
        Defect crook = new Defect.Crook(inches(6), feet(4));
        assertThat(crook.label()).isEqualTo("crook");
        assertThat(crook.stretch()).contains(feet(4));
        assertThat(crook.over(feet(2))).isEqualTo(new Defect.Crook(inches(6), feet(2)));
        assertThat(crook.source().id()).isEqualTo("sweep-crook-memory");
        Defect ring = new Defect.Perimeter(inches(6));
        assertThat(ring.label()).isEqualTo("perimeter defect");
        assertThat(ring.stretch()).isEmpty();
        assertThat(ring.source().id()).isEqualTo("grosenbaugh-1952-memory");
        Defect part = ring.over(feet(4));
        assertThat(part.label()).isEqualTo(ring.label());
        assertThat(part.source()).isEqualTo(ring.source());
        assertThat(part.stretch()).contains(feet(4));
        assertThat(part.over(feet(2))).isEqualTo(ring.over(feet(2)));
        // A quarter of what the ring takes of the whole log.
        assertThat(part.boardFeet(160, 21, 16)).isCloseTo(ring.boardFeet(160, 21, 16) / 4, within(1e-12));
        assertThat(part.cubicFeet(16, 21, 16)).isCloseTo(ring.cubicFeet(16, 21, 16) / 4, within(1e-12));
        assertThat(part.boardFeetWorking(160, 21, 16).value()).isEqualTo(part.boardFeet(160, 21, 16));
        assertThat(part.cubicFeetWorking(16, 21, 16).value()).isEqualTo(part.cubicFeet(16, 21, 16));
        assertThat(new Defect.LengthCut(feet(1)).source().id()).isEqualTo("grosenbaugh-1952-memory");
        assertThat(new Defect.Sector(feet(1), 9).source().id()).isEqualTo("grosenbaugh-1952-memory");
        assertThat(new Defect.SquaredDefect(inches(1), inches(1), feet(1))
                        .source()
                        .id())
                .isEqualTo("squared-defect-memory");
        assertThat(new Defect.Interior(inches(1), inches(1), feet(1)).source().id())
                .isEqualTo("grosenbaugh-1952-memory");
        assertThat(new Defect.Sweep(inches(1)).label()).isEqualTo("sweep");
        assertThat(new Defect.Interior(inches(1), inches(1), feet(1)).label()).isEqualTo("interior defect");
        assertThat(new Defect.SquaredDefect(inches(1), inches(1), feet(1)).label())
                .isEqualTo("squared defect");
    }

    /** A deduction from a scale rests on the trade's proportion, one from a solid volume on geometry; each in its unit. */
    @Test
    void aWorkingOfADefectIsInTheUnitOfItsLog() {
        for (Defect defect : List.of(
                new Defect.LengthCut(feet(4)),
                new Defect.Sector(feet(4), 90),
                new Defect.SquaredDefect(inches(2), inches(2), feet(4)),
                new Defect.Interior(inches(2), inches(2), feet(4)),
                new Defect.Perimeter(inches(8)),
                new Defect.Perimeter(inches(8)).over(feet(4)),
                new Defect.Sweep(inches(3)),
                new Defect.Crook(inches(3), feet(4)))) {
            org.woodyield.working.Working scale = defect.boardFeetWorking(64, 12, 8);
            org.woodyield.working.Working solid = defect.cubicFeetWorking(6.3, 12, 8);
            assertThat(scale.title()).contains(defect.label());
            assertThat(scale.result().unit()).isEqualTo("bf");
            assertThat(scale.result().source()).isEqualTo(defect.source());
            assertThat(solid.result().unit()).isEqualTo("ft3");
            assertThat(solid.result().source().id()).isEqualTo("defect-solid");
        }
    }

    @Test
    void theWorkingOfALongLogShowsEachPart() {
        NetScale net =
                NetScale.of(longLog("doyle"), List.of(new NetScale.Placed(new Defect.LengthCut(feet(4)), feet(22))));
        assertThat(net.working().value("G1")).isEqualTo(384);
        assertThat(net.working().value("G2")).isEqualTo(726);
        assertThat(net.working().value("N1")).isEqualTo(384 - 32);
        assertThat(net.working().value("N2")).isEqualTo(726 - 61);
        assertThat(net.working().value("G")).isEqualTo(1110);
        assertThatThrownBy(() ->
                        NetScale.of(LogRules.byId("doyle"), 4, 16, List.of()).soundShareWorking())
                .hasMessageContaining("nothing");
        assertThatThrownBy(() -> new NetScale(LogRules.byId("doyle"), net.parts(), 0))
                .hasMessageContaining("step of deductions");
        assertThat(NetScale.of(longLog("scribner-decimal-c"), List.of()).deductionStepBoardFeet())
                .isEqualTo(10);
        assertThat(net.deductionStepBoardFeet()).isEqualTo(1);
    }

    @Test
    void theDeductionsAreNamedInTheOrderInWhichTheyAreAdded() {
        assertThat(NetScale.sumText(new double[] {3, 1, 2})).isEqualTo("d2 + d3 + d1");
        assertThat(NetScale.sumText(new double[0])).isEqualTo("0");
        assertThat(NetScale.sum(new double[] {3, 1, 2})).isEqualTo(6);
    }

    @Test
    void aSolidVolumeIsNetInCubicFeetAndMetres() {
        NetVolume net =
                new NetVolume(Volume.ofCubicFeet(16), inches(14), feet(16), List.of(new Defect.LengthCut(feet(4))));
        assertThat(net.cubicFeet()).isCloseTo(12, within(1e-12));
        assertThat(net.volume().cubicFeet()).isCloseTo(12, within(1e-12));
        assertThatThrownBy(() -> NetVolume.of(
                        Volume.ofCubicFeet(16), inches(14), feet(16), List.of(at(new Defect.LengthCut(feet(1)), 17))))
                .hasMessageContaining("0 to 16 ft");
    }

    /** Three thirds of a turn are the whole of 8 ft, which scale 50; each alone would be 16.67, up to 17. */
    @Test
    void sectorsOfExactlyAFullTurnAreTheirStretch() {
        Defect third = new Defect.Sector(feet(8), 120);
        assertThat(net(at(third, 0), at(third, 0), at(third, 0))).isEqualTo(50);
    }

    @Test
    void sectorsOfASolidVolumeTakeNoMoreThanTheirStretch() {
        Defect wide = new Defect.Sector(feet(8), 300);
        assertThat(NetVolume.of(Volume.ofCubicFeet(16), inches(14), feet(16), List.of(at(wide, 0), at(wide, 0)))
                        .cubicFeet())
                .isCloseTo(8, within(1e-9));
    }

    @Test
    void theWorkingCountsItsDeductions() {
        NetScale net = NetScale.of(
                hundred(), List.of(at(new Defect.Sector(feet(4), 90), 0), at(new Defect.Crook(inches(2), feet(4)), 8)));
        assertThat(net.working().lines())
                .extracting(org.woodyield.working.Working.Line::name)
                .contains("deduction 1, sector", "deduction 2, crook");
        assertThat(net.working().notes()).anyMatch(note -> note.startsWith("Deduction 2, crook: "));
        assertThat(new Defect.Interior(inches(1), inches(1), feet(3)).stretch()).contains(feet(3));
    }

    /** A quarter of 4 ft of the 16 that scale 100 takes 6.25, so does the next: 6 + 6 each by itself, 12.5 and so 13 together. */
    @Test
    void theWorkingSaysWhatTheDeductionsWouldBeIfTheirSumWereRounded() {
        NetScale net = NetScale.of(
                hundred(), List.of(at(new Defect.Sector(feet(4), 90), 0), at(new Defect.Sector(feet(4), 90), 4)));
        assertThat(net.boardFeet().value()).isEqualTo(100 - 12);
        assertThat(net.working().notes())
                .anyMatch(note -> note.contains("Rounded once, the deductions would be 13 bf"));
    }

    /** A crook over the whole length of a log stands in for a sweep where no allowance was read. */
    @Property
    void aCrookOverTheWholeLengthTakesNoLessThanASweep(
            @ForAll @DoubleRange(min = 0, max = 20) double departure,
            @ForAll @DoubleRange(min = 8, max = 16) double lengthFeet,
            @ForAll @DoubleRange(min = 6, max = 40) double diameterInches) {
        Length bend = inches(departure);
        double crook = new Defect.Crook(bend, feet(lengthFeet)).boardFeet(100, diameterInches, lengthFeet);
        double sweep = new Defect.Sweep(bend).boardFeet(100, diameterInches, lengthFeet);
        assertThat(crook).isGreaterThanOrEqualTo(sweep - 1e-6);
    }
}
