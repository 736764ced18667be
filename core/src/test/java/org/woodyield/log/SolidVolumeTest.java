package org.woodyield.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;

/** Identities of the solid-volume formulas. */
class SolidVolumeTest {

    @Property(tries = 300)
    void newtonIsSmalianAndTwiceHuberOverThree(
            @ForAll @DoubleRange(min = 0.05, max = 2) double a,
            @ForAll @DoubleRange(min = 0.05, max = 2) double m,
            @ForAll @DoubleRange(min = 0.05, max = 2) double c,
            @ForAll @DoubleRange(min = 0.5, max = 20) double l) {
        double newton = SolidVolume.NEWTON.volume(a, m, c, l);
        double smalian = SolidVolume.SMALIAN.volume(a, m, c, l);
        double huber = SolidVolume.HUBER.volume(a, m, c, l);
        assertThat((smalian + 2 * huber) / 3).isCloseTo(newton, within(newton * 1e-14));
        double cone = SolidVolume.CONE.volume(a, m, c, l);
        double step = Math.PI / 4 * l * (c - a) * (c - a);
        assertThat(smalian - cone).isCloseTo(step / 6, within(smalian * 1e-14));
        assertThat(cone - SolidVolume.SUBNEILOID.volume(a, m, c, l)).isCloseTo(step / 12, within(smalian * 1e-14));
    }

    @Property(tries = 300)
    void theWorkingHasTheBitsOfTheVolume(
            @ForAll @DoubleRange(min = 0.05, max = 2) double a,
            @ForAll @DoubleRange(min = 0.05, max = 2) double m,
            @ForAll @DoubleRange(min = 0.05, max = 2) double c,
            @ForAll @DoubleRange(min = 0.5, max = 20) double l) {
        for (SolidVolume formula : SolidVolume.values()) {
            assertThat(formula.working(a, m, c, l, "m").value()).isEqualTo(formula.volume(a, m, c, l));
        }
        for (GirthVolume formula : GirthVolume.values()) {
            assertThat(formula.working(a, l, "m").value()).isEqualTo(formula.volume(a, l));
        }
    }

    @Test
    void onACylinderAllThatTakeItsDiametersAreEqual() {
        double cylinder = Math.PI / 4 * 0.09 * 4;
        for (SolidVolume formula : SolidVolume.values()) {
            if (formula.asksMiddle() || formula.asksLargeEnd()) {
                assertThat(formula.volume(0.3, 0.3, 0.3, 4)).as(formula.id()).isCloseTo(cylinder, within(1e-15));
            }
        }
    }

    @Test
    void theTaperRulesAreTheirPrintedFormsInInchesAndFeet() {
        // f (d + 0.05 L)^2 L with d in inches and L in feet, f = pi/576.
        double printed = Math.PI / 576 * Math.pow(12 + 0.05 * 16, 2) * 16;
        assertThat(SolidVolume.ONE_IN_TEN.volume(1, 1, 1, 16)).isCloseTo(printed, within(1e-12));
        double eight = Math.PI / 576 * Math.pow(12 + 16 / 16.0, 2) * 16;
        assertThat(SolidVolume.ONE_IN_EIGHT.volume(1, 1, 1, 16)).isCloseTo(eight, within(1e-12));
    }

    @Test
    void aPieceCanHoldMoreByHuberThanTheWholeLog() {
        double whole = SolidVolume.HUBER.volume(0.2, 0.5, 0.8, 12);
        double lower = SolidVolume.HUBER.volume(0.3, 0.55, 0.8, 10);
        assertThat(lower).isGreaterThan(whole);
    }

    @Test
    void theOldGirthRulesLieAsFarFromTheCircleAsTheyAreSaidTo() {
        double circle = GirthVolume.CIRCLE.volume(1, 1);
        assertThat(GirthVolume.QUARTER.volume(1, 1) / circle).isCloseTo(0.785, within(5e-4));
        assertThat(GirthVolume.QUARTER_113.volume(1, 1) / circle).isCloseTo(1.00086, within(5e-6));
        assertThat(GirthVolume.FIFTH.volume(1, 1) / circle).isCloseTo(1.00531, within(5e-6));
        assertThat(GirthVolume.FIFTH_DEDUCTED.volume(1, 1) / circle).isCloseTo(0.503, within(5e-4));
        assertThat(GirthVolume.SIXTH_DEDUCTED.volume(1, 1) / circle).isCloseTo(0.545, within(5e-4));
    }

    @Test
    void whatIsNotAMeasureIsRefused() {
        assertThatThrownBy(() -> SolidVolume.SMALIAN.volume(Double.NaN, 1, 1, 1))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SolidVolume.HUBER.volume(1, 0, 1, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SolidVolume.CONE.volume(1, 1, 1, -1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SolidVolume.byId("smalain")).hasMessageContaining("smalian, huber");
    }
}
