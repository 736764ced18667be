package org.woodyield.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuantitiesTest {

    @Test
    void boardFeetOfDifferentKindsDoNotAddUp() {
        assertThat(BoardFeet.scale(3).plus(BoardFeet.scale(4))).isEqualTo(BoardFeet.scale(7));
        assertThat(BoardFeet.tally(3).times(2)).isEqualTo(BoardFeet.tally(6));
        assertThatThrownBy(() -> BoardFeet.scale(3).plus(BoardFeet.tally(4)))
                .hasMessage("scale and tally board feet do not add up");
        assertThatThrownBy(() -> BoardFeet.usable(-1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> BoardFeet.scale(Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> BoardFeet.scale(Double.POSITIVE_INFINITY)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void currenciesDoNotMix() {
        Money five = new Money(5, "USD");
        assertThat(five.plus(new Money(2, "USD")).minus(new Money(10, "USD"))).isEqualTo(new Money(-3, "USD"));
        assertThat(five.times(0.5)).isEqualTo(new Money(2.5, "USD")).isLessThan(five);
        assertThatThrownBy(() -> five.plus(new Money(5, "CAD"))).hasMessage("USD and CAD do not mix");
        assertThatThrownBy(() -> five.minus(new Money(5, "CAD"))).hasMessage("USD and CAD do not mix");
        assertThatThrownBy(() -> five.compareTo(new Money(5, "CAD"))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Money(Double.NaN, "USD")).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Money(5, " ")).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void aPieceHasTheVolumeOfItsEdges() {
        Volume piece = Volume.ofPiece(Length.inches(1), Length.feet(1), Length.feet(12));
        assertThat(piece.cubicFeet()).isCloseTo(1, within(1e-15));
        assertThat(Volume.ZERO.plus(piece).times(2).cubicMetres()).isEqualTo(2 * piece.cubicMetres());
        assertThat(Volume.ofCubicFeet(1)).isGreaterThan(Volume.ofCubicInches(1727));
        assertThat(Volume.ofCubicFeet(1)).isLessThan(Volume.ofCubicInches(1729));
        assertThatThrownBy(() -> new Volume(-1e-9)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void theConstantsAreTheCubesOfTheExactFootAndInch() {
        assertThat(Volume.CUBIC_METRES_PER_CUBIC_FOOT)
                .isEqualTo(new java.math.BigDecimal("0.3048").pow(3).doubleValue());
        assertThat(Volume.CUBIC_METRES_PER_CUBIC_INCH)
                .isEqualTo(new java.math.BigDecimal("0.0254").pow(3).doubleValue());
    }

    /** A range of ±0.5 has the standard uncertainty 0.5/√3 = 0.288675…, worked by hand. */
    @Test
    void aRangeHasHalfItsWidthOverTheRootOfThree() {
        Uncertain range = Uncertain.range(9.5, 10.5);
        assertThat(range.value()).isEqualTo(10);
        assertThat(range.standardUncertainty()).isCloseTo(0.288675134594813, within(1e-15));
        assertThat(Uncertain.exact(3).standardUncertainty()).isZero();
        assertThat(Uncertain.range(3, 3)).isEqualTo(Uncertain.exact(3));
        assertThatThrownBy(() -> Uncertain.range(2, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Uncertain.range(0, Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Uncertain(1, -0.1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new Uncertain(Double.NaN, 0)).isInstanceOf(OutOfDomainException.class);
    }
}
