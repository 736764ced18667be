package org.woodyield.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.wood.Species;

class MeasuredLogTest {

    private static final Length LONG = Length.millimetres(4000);

    private static Log plain(int sweepMillimetres) {
        Species pine = new Species(
                "pine",
                "some pine",
                "",
                List.of(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new Log(
                "1",
                pine,
                LONG,
                Length.millimetres(320),
                Length.millimetres(280),
                Length.millimetres(400),
                Length.millimetres(10),
                Length.millimetres(sweepMillimetres),
                30,
                true);
    }

    private static ProfileStation at(long distance, long diameter) {
        return new ProfileStation(Length.millimetres(distance), Length.millimetres(diameter));
    }

    private static void refused(List<ProfileStation> profile, String parameter) {
        assertThatThrownBy(() -> plain(0).withProfile(profile))
                .isInstanceOfSatisfying(
                        OutOfDomainException.class,
                        e -> assertThat(e.parameter()).isEqualTo(parameter));
    }

    /** The ends measure 300 and 400 mm: half the one and twice the other still pass, a step beyond is no log's. */
    @Test
    void aNeckOrABulgeThatNoLogHasIsRefused() {
        assertThat(plain(0).withProfile(List.of(at(0, 300), at(2000, 150), at(4000, 400)))
                        .profile())
                .hasSize(3);
        assertThat(plain(0).withProfile(List.of(at(0, 300), at(2000, 800), at(4000, 400)))
                        .profile())
                .hasSize(3);
        refused(List.of(at(0, 300), at(2000, 149), at(4000, 400)), "diameter at station 2");
        refused(List.of(at(0, 300), at(1000, 350), at(2000, 801), at(4000, 400)), "diameter at station 3");
        assertThatThrownBy(() -> plain(0).withProfile(List.of(at(0, 300), at(2000, 149), at(4000, 400))))
                .hasMessageContaining("150 mm to 800 mm, half the lesser end to twice the greater one");
    }

    @Property(tries = 200)
    void aStraightProfileIsStraightTaper(@ForAll @IntRange(min = 1, max = 3999) int millimetres) {
        long nanometres = 300_000_000L + 25_000L * millimetres;
        List<ProfileStation> straight = List.of(
                at(0, 300),
                new ProfileStation(Length.millimetres(millimetres), Length.nanometres(nanometres)),
                at(4000, 400));
        LogSolid tapered = LogSolid.of(plain(60));
        LogSolid measured = LogSolid.of(plain(60).withProfile(straight));
        assertThat(measured.volume().cubicMetres()).isCloseTo(tapered.volume().cubicMetres(), within(1e-12));
        for (double z : new double[] {0, 0.5, 1, 2, 3.75, 4}) {
            assertThat(measured.section(z).halfLongMetres())
                    .isCloseTo(tapered.section(z).halfLongMetres(), within(1e-12));
        }
    }

    @Test
    void aFlareAddsItsOwnWood() {
        LogSolid flared = LogSolid.of(plain(0).withProfile(List.of(at(0, 300), at(3500, 340), at(4000, 500))));
        assertThat(flared.stationCount()).isEqualTo(3);
        // Mean diameters of an ellipse of ratio 7/8: its area is that of the circle times 4 q / (1 + q)^2 = 224/225.
        double shape = 224 / 225.0 * StrictMath.PI / 12;
        double expected = shape * (3.5 * (0.09 + 0.3 * 0.34 + 0.34 * 0.34) + 0.5 * (0.34 * 0.34 + 0.34 * 0.5 + 0.25));
        assertThat(flared.volume().cubicMetres()).isCloseTo(expected, within(1e-12));
        assertThat(plain(0).withProfile(List.of(at(0, 300), at(4000, 500))).largeEndMean())
                .isEqualTo(Length.millimetres(500));
    }

    @Test
    void profilesThatAreNotOfThisLogAreRefused() {
        refused(List.of(at(0, 300), at(3000, 400)), "profile");
        refused(List.of(at(0, 300), at(5000, 400)), "profile");
        refused(List.of(at(10, 300), at(4000, 400)), "profile");
        refused(List.of(at(0, 300)), "profile");
        refused(List.of(at(0, 300), at(3000, 350), at(2000, 360), at(4000, 400)), "station 3");
        refused(List.of(at(0, 300), at(2000, -5), at(4000, 400)), "diameter at station 2");
        refused(List.of(at(0, 300), at(2000, 0), at(4000, 400)), "diameter at station 2");
        refused(List.of(at(0, 300), at(2000, 30_000), at(4000, 400)), "diameter at station 2");
        refused(List.of(at(0, 250), at(4000, 400)), "diameter at station 1");
        refused(List.of(at(0, 300), at(4000, 290)), "large-end diameter");
        refused(List.of(at(0, 300), at(3990, 340), at(4000, 500)), "diameter at station 3");
    }

    @Test
    void rotThatIsNotInThisLogIsRefused() {
        assertThatThrownBy(
                        () -> plain(0).withRot(HeartRot.throughout(Length.millimetres(50), Length.millimetres(4001))))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("end of the rot");
        assertThatThrownBy(() -> new HeartRot(Length.millimetres(-1), Length.ZERO, LONG))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("rot diameter");
        assertThatThrownBy(() -> new HeartRot(Length.millimetres(1), LONG, LONG))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("end of the rot");
        Log hollow = plain(0).withRot(HeartRot.throughout(Length.millimetres(281), LONG));
        assertThatThrownBy(() -> LogSolid.of(hollow))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("rot diameter");
        Log aside = plain(0).withRot(HeartRot.throughout(Length.millimetres(200), LONG))
                .withPith(new Pith(Length.millimetres(60), 90));
        assertThatThrownBy(() -> LogSolid.of(aside)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void rotOfNoDiameterIsNoRot() {
        assertThat(LogSolid.of(plain(0)).rot()).isEmpty();
        assertThat(LogSolid.of(plain(0).withRot(HeartRot.throughout(Length.ZERO, LONG))
                                .withPith(new Pith(LONG, 0)))
                        .rot())
                .isEmpty();
        assertThat(LogSolid.of(plain(0)).rotVolume().cubicMetres()).isZero();
    }

    /** Rot stays in the wood wherever it is allowed: no point of its edge lies outside. */
    @Property(tries = 300)
    void rotThatIsAllowedLiesInTheWood(
            @ForAll @DoubleRange(min = 0.001, max = 0.14) @Scale(4) double radius,
            @ForAll @IntRange(min = 0, max = 100) int offset,
            @ForAll @IntRange(min = -360, max = 360) int direction) {
        Log log = plain(50)
                .withRot(HeartRot.throughout(Length.ofMetres(2 * radius, Rounding.DOWN), LONG))
                .withPith(new Pith(Length.millimetres(offset), direction));
        LogSolid solid;
        try {
            solid = LogSolid.of(log);
        } catch (OutOfDomainException e) {
            assertThat(radius + offset / 1000.0).isGreaterThan(0.13);
            return;
        }
        assertThat(solid.rotVolumeWorking().value()).isEqualTo(solid.rotVolume().cubicMetres());
        for (double z : new double[] {0, 1, 2.2, 4}) {
            LogSolid.Section rot = solid.rotSection(z).orElseThrow();
            for (int degrees = 0; degrees < 360; degrees += 10) {
                double turn = StrictMath.toRadians(degrees);
                double grip = 1 - 1e-9;
                assertThat(solid.contains(
                                rot.centreXMetres() + grip * rot.halfLongMetres() * StrictMath.cos(turn),
                                rot.centreYMetres() + grip * rot.halfLongMetres() * StrictMath.sin(turn),
                                z))
                        .isTrue();
            }
        }
    }

    /** Any profile: the closed form is what slicing comes to. */
    @Property(tries = 100)
    void closedFormIsTheIntegralOfAnyProfile(@ForAll long seed) {
        Random random = new Random(seed);
        List<ProfileStation> profile = new ArrayList<>(List.of(at(0, 300)));
        for (int z = 200 + random.nextInt(600); z < 3900; z += 200 + random.nextInt(600)) {
            profile.add(at(z, 290 + random.nextInt(90)));
        }
        profile.add(at(4000, 350 + random.nextInt(80)));
        LogSolid solid = LogSolid.of(plain(random.nextInt(100)).withProfile(profile));
        double exact = solid.volume().cubicMetres();
        assertThat(solid.volumeBySlices(400).cubicMetres()).isCloseTo(exact, within(exact * 1e-6));
        assertThat(solid.volumeWorking().value()).isEqualTo(exact);
    }
}
