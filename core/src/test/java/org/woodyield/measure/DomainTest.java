package org.woodyield.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;

class DomainTest {

    private static final Domain MOISTURE = new Domain("moisture", "%", 8, 19, "dry it first");

    @Test
    void bothEndsAreInside() {
        assertThat(MOISTURE.require(8)).isEqualTo(8);
        assertThat(MOISTURE.require(19)).isEqualTo(19);
        assertThat(MOISTURE.holds(Math.nextDown(8.0))).isFalse();
        assertThat(MOISTURE.holds(Math.nextUp(19.0))).isFalse();
    }

    @Test
    void aRefusalCarriesAllThatIsNeededToMendIt() {
        OutOfDomainException refusal = catchThrowableOfType(OutOfDomainException.class, () -> MOISTURE.require(19.5));
        assertThat(refusal).hasMessage("moisture is 19.5 %; allowed: 8 to 19 %; dry it first");
        assertThat(refusal.parameter()).isEqualTo("moisture");
        assertThat(refusal.value()).isEqualTo("19.5");
        assertThat(refusal.unit()).isEqualTo("%");
        assertThat(refusal.limits()).isEqualTo("8 to 19 %");
        assertThat(refusal.remedy()).isEqualTo("dry it first");
    }

    @Test
    void notANumberIsOutsideEveryDomain() {
        for (Domain domain : new Domain[] {
            MOISTURE,
            Domain.positive("x", ""),
            Domain.notNegative("x", ""),
            Domain.of("x", "", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
        }) {
            assertThatThrownBy(() -> domain.require(Double.NaN))
                    .isInstanceOf(OutOfDomainException.class)
                    .hasMessageContaining("NaN");
        }
    }

    @Test
    void positiveMeansAboveZeroAndFinite() {
        Domain domain = Domain.positive("diameter", "in");
        assertThat(domain.holds(Double.MIN_VALUE)).isTrue();
        assertThat(domain.holds(0)).isFalse();
        assertThat(domain.holds(Double.POSITIVE_INFINITY)).isFalse();
        assertThat(domain.limits()).isEqualTo("above 0 in");
        assertThat(Domain.of("kerf", "in", Double.MIN_VALUE, 1).limits()).isEqualTo("above 0, up to 1 in");
        assertThat(Domain.notNegative("sweep", "in").limits()).isEqualTo("0 or more in");
        assertThat(Domain.of("turns", "", 1, 4).limits()).isEqualTo("1 to 4");
    }

    @Test
    void absurdValuesAreShownShort() {
        assertThatThrownBy(() -> MOISTURE.require(1e300)).hasMessageStartingWith("moisture is 1.0E300 %;");
        assertThatThrownBy(() -> MOISTURE.require(1e-300)).hasMessageStartingWith("moisture is 1.0E-300 %;");
        assertThatThrownBy(() -> MOISTURE.require(1e15)).hasMessageStartingWith("moisture is 1.0E15 %;");
        assertThatThrownBy(() -> MOISTURE.require(1e-9)).hasMessageStartingWith("moisture is 0.000000001 %;");
        assertThatThrownBy(() -> MOISTURE.require(0)).hasMessageStartingWith("moisture is 0 %;");
        assertThatThrownBy(() -> MOISTURE.require(12_000_000)).hasMessageStartingWith("moisture is 12000000 %;");
    }

    @Test
    void crossedEndsAreNoDomain() {
        assertThatThrownBy(() -> Domain.of("x", "", 2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Domain.of("x", "", Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void limitsWithoutALeastSaySo() {
        assertThat(Domain.of("change", "%", Double.NEGATIVE_INFINITY, 5).limits())
                .isEqualTo("up to 5 %");
        assertThat(Domain.of("change", "%", -Double.MAX_VALUE, Double.MAX_VALUE).limits())
                .isEqualTo("any number %");
    }
}
