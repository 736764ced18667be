package org.woodyield.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;

/** The solids, the centroid method, and which formula is exact on which solid. */
class SolidFormTest {

    @Property(tries = 300)
    void workingsHaveTheBitsOfTheirValues(
            @ForAll @DoubleRange(min = 0.05, max = 1) double a,
            @ForAll @DoubleRange(min = 1, max = 4) double ratio,
            @ForAll @DoubleRange(min = 0, max = 1) double between,
            @ForAll @DoubleRange(min = 0.5, max = 20) double l) {
        double c = a * ratio;
        double m = a + (c - a) * between;
        for (SolidForm form : SolidForm.values()) {
            double end = form == SolidForm.CYLINDER ? a : c;
            assertThat(form.working(a, end, l, "m").value()).isEqualTo(form.volume(a, end, l));
        }
        assertThat(CentroidVolume.positionWorking(a, c, l, "m").value()).isEqualTo(CentroidVolume.position(a, c, l));
        assertThat(CentroidVolume.volumeWorking(a, m, c, l, "m").value()).isEqualTo(CentroidVolume.volume(a, m, c, l));
    }

    @Property(tries = 300)
    void theFullerTheSolidBetweenTwoEndsTheMoreItHolds(
            @ForAll @DoubleRange(min = 0.05, max = 1) double a,
            @ForAll @DoubleRange(min = 1.01, max = 4) double ratio,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        double c = a * ratio;
        assertThat(SolidForm.PARABOLOID.volume(a, c, 3))
                .isGreaterThan(SolidForm.CONE.volume(a, c, 3))
                .isEqualTo(SolidVolume.SMALIAN.volume(a, 1, c, 3));
        assertThat(SolidForm.CONE.volume(a, c, 3)).isGreaterThan(SolidForm.NEILOID.volume(a, c, 3));
        for (SolidForm form : Set.of(SolidForm.PARABOLOID, SolidForm.CONE, SolidForm.NEILOID)) {
            // Two parts of a solid hold what the whole holds.
            double cut = form.diameter(a, c, share);
            double parts = form.volume(a, cut, 3 * share) + form.volume(cut, c, 3 * (1 - share));
            assertThat(parts).isCloseTo(form.volume(a, c, 3), within(parts * 1e-12));
            assertThat(cut).isBetween(a, c);
        }
    }

    @Property(tries = 200)
    void theCentroidLiesBetweenTheMiddleAndTheRootOfAHalf(
            @ForAll @DoubleRange(min = 0.05, max = 1) double a, @ForAll @DoubleRange(min = 1, max = 20) double ratio) {
        assertThat(CentroidVolume.position(a, a * ratio, 1)).isBetween(0.5, Math.sqrt(0.5));
    }

    @Test
    void eachFormulaIsExactOnItsOwnSolidsAndOnNoOther() {
        Map<String, Set<SolidForm>> exact = FormulaErrors.of(0.3, 0.42, 5).rows().stream()
                .collect(Collectors.toMap(FormulaErrors.Row::label, FormulaErrors.Row::exactOn));
        SolidForm cylinder = SolidForm.CYLINDER;
        SolidForm paraboloid = SolidForm.PARABOLOID;
        assertThat(exact)
                .isEqualTo(Map.of(
                        "Smalian", Set.of(cylinder, paraboloid),
                        "Huber", Set.of(cylinder, paraboloid),
                        "Newton (prismoidal)", Set.of(SolidForm.values()),
                        "cone frustum", Set.of(cylinder, SolidForm.CONE),
                        "subneiloid", Set.of(cylinder),
                        "butt log (Bruce)", Set.of(cylinder),
                        "taper one in ten (Sorenson)", Set.of(),
                        "taper one in eight (Rapraeger)", Set.of(),
                        "centroid", Set.of(cylinder, paraboloid, SolidForm.CONE)));
    }

    @Test
    void smalianReadsHighAndHuberHalfAsLowOnAConeAndANeiloid() {
        FormulaErrors.Row smalian = FormulaErrors.of(1, 2, 3).rows().get(0);
        FormulaErrors.Row huber = FormulaErrors.of(1, 2, 3).rows().get(1);
        for (SolidForm form : Set.of(SolidForm.CONE, SolidForm.NEILOID)) {
            // From Newton, which is exact on both: Smalian - V = 2 (V - Huber).
            assertThat(smalian.on(form)).isPositive().isCloseTo(-2 * huber.on(form), within(1e-12));
        }
        // (1 + 4)/2 against (1 + 2 + 4)/3.
        assertThat(smalian.on(SolidForm.CONE)).isCloseTo(1.0 / 14, within(1e-12));
    }

    @Test
    void whatIsNoSuchSolidIsRefused() {
        assertThatThrownBy(() -> SolidForm.CYLINDER.volume(1, 2, 1)).hasMessageContaining("does not taper");
        assertThatThrownBy(() -> SolidForm.CONE.volume(Double.NaN, 2, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SolidForm.CONE.volume(1, 2, 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> SolidForm.CONE.diameter(1, 2, 1.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CentroidVolume.position(2, 1, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CentroidVolume.volume(1, 0.9, 2, 1)).hasMessageContaining("centroid");
        assertThatThrownBy(() -> CentroidVolume.volume(1, Double.NaN, 2, 1)).isInstanceOf(OutOfDomainException.class);
    }
}
