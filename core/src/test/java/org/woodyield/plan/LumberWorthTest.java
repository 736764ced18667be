package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.plan.LumberWorth.Part;
import org.woodyield.work.InputValue;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

class LumberWorthTest {

    private static final Wood SOFTWOOD = Wood.of(Wood.Kind.SOFTWOOD);

    private static Price price(double value, Distribution spread) {
        return new Price(Optional.empty(), SOFTWOOD, value, spread);
    }

    /** 100 bf that count in full, 100 of which half count, and 40 at a price without a range. */
    private static InputValue mean(Distribution first, Distribution second) {
        LumberWorth worth = new LumberWorth(List.of(
                new Part("a", 100, 100, Optional.of(price(1, first))),
                new Part("b", 100, 50, Optional.of(price(3, second))),
                new Part("c", 40, 40, Optional.of(new Price(Optional.empty(), SOFTWOOD, 2)))));
        return worth.into(WorkInputs.chainDefaults())
                .find(WorkInput.LUMBER_PRICE)
                .orElseThrow();
    }

    @Test
    void theMeanPriceHasTheEndsOfPricesThatMoveTogether() {
        InputValue mean = mean(new Distribution.Triangular(0.8, 1, 1.3), new Distribution.Triangular(2.4, 3, 3.9));
        double value = (100 + 150 + 80) / 240.0;
        assertThat(mean.value()).isCloseTo(value, within(1e-12));
        assertThat(mean.spread().least()).isCloseTo((80 + 120 + 80) / 240.0, within(1e-12));
        assertThat(mean.spread().greatest()).isCloseTo((130 + 195 + 80) / 240.0, within(1e-12));
        // One shape: then the triangle between the sums is the law of the sum, so that deviations add up.
        double one = new Distribution.Triangular(0.8, 1, 1.3).standardDeviation();
        assertThat(mean.spread().standardDeviation()).isCloseTo((100 * one + 50 * 3 * one) / 240, within(1e-12));
    }

    @Test
    void evenAndNormalRangesKeepTheirLaw() {
        InputValue even = mean(new Distribution.Rectangular(0.9, 1.1), new Distribution.Fixed(3));
        assertThat(even.spread()).isInstanceOf(Distribution.Rectangular.class);
        assertThat(even.spread().least()).isCloseTo((90 + 150 + 80) / 240.0, within(1e-12));
        assertThat(even.spread().greatest()).isCloseTo((110 + 150 + 80) / 240.0, within(1e-12));
        InputValue normal = mean(new Distribution.Normal(1, 0.1), new Distribution.Normal(3, 0.2));
        assertThat(normal.spread()).isInstanceOf(Distribution.Normal.class);
        assertThat(normal.spread().mean()).isEqualTo(normal.value());
        assertThat(normal.spread().standardDeviation()).isCloseTo((10 + 10) / 240.0, within(1e-12));
    }

    @Test
    void pricesWithoutRangesGiveAFixedMean() {
        assertThat(mean(new Distribution.Fixed(1), new Distribution.Fixed(3)).hasSpread())
                .isFalse();
    }

    @Test
    void rangesOfSeveralLawsAreRefused() {
        Price even = price(1, new Distribution.Rectangular(0.9, 1.1));
        Price normal = price(1, new Distribution.Normal(1, 0.1));
        assertThat(even.movesWith(normal)).isFalse();
        assertThat(even.movesWith(new Price(Optional.empty(), SOFTWOOD, 2))).isTrue();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> PlannerTest.job(List.of(even, normal)))
                .satisfies(refusal -> assertThat(refusal.parameter()).isEqualTo("ranges of prices"));
    }

    @Test
    void aPriceWithARangeGivesTheMeanPriceOfAPlanOne() {
        JobInput input = PlannerTest.job(List.of(price(1.2, new Distribution.Triangular(1, 1.2, 1.5))));
        JobPlan plan = Planner.plan(input);
        InputValue mean = LumberWorth.of(input, plan.supply(), plan.fallDown())
                .into(input.work())
                .find(WorkInput.LUMBER_PRICE)
                .orElseThrow();
        assertThat(mean.value())
                .isEqualTo(plan.breakEven()
                        .orElseThrow()
                        .boughtPerBoardFoot()
                        .orElseThrow()
                        .amount());
        assertThat(mean.spread().least() / mean.value()).isCloseTo(1 / 1.2, within(1e-12));
        assertThat(mean.spread().greatest() / mean.value()).isCloseTo(1.5 / 1.2, within(1e-12));
    }

    /** Of two things one lacks 30 bf and the other is there twice: the second does not make up for the first. */
    @Test
    void whatAnotherPlanMakesLessIsCountedThingByThing() {
        Optional<Price> first = Optional.of(price(1, new Distribution.Rectangular(0.8, 1.2)));
        Optional<Price> second = Optional.of(price(3, new Distribution.Rectangular(2, 4)));
        LumberWorth own = new LumberWorth(List.of(new Part("a", 100, 100, first), new Part("b", 50, 50, second)));
        LumberWorth its = new LumberWorth(List.of(new Part("a", 200, 115, first), new Part("b", 20, 20, second)));
        LumberWorth.Beside beside = own.beside(its);
        assertThat(beside.usable()).isEqualTo(220);
        assertThat(beside.serves()).isEqualTo(120);
        assertThat(beside.lacking()).isEqualTo(30);
        assertThat(beside.more()).isEqualTo(15);
        assertThat(beside.worth()).contains(15.0);
        InputValue price = beside.price().orElseThrow();
        assertThat(price.value()).isEqualTo(3);
        assertThat(price.spread()).isEqualTo(new Distribution.Rectangular(2, 4));
        assertThat(own.beside(own).lacking()).isZero();
        assertThat(own.beside(own).serves()).isEqualTo(own.usable());
        assertThat(own.beside(own).price()).isEmpty();
    }

    @Test
    void withoutPricesWhatLacksHasNone() {
        LumberWorth own = new LumberWorth(List.of(new Part("a", 100, 100, Optional.empty())));
        LumberWorth its = new LumberWorth(List.of(new Part("a", 60, 60, Optional.empty())));
        assertThat(own.beside(its).lacking()).isEqualTo(40);
        assertThat(own.beside(its).price()).isEmpty();
    }

    /** 40 of 100 bf are beyond the need: 60 + 0.15 x 40 = 66 count. */
    @Test
    void whatIsBeyondTheNeedIsToldByItself() {
        LumberWorth worth = new LumberWorth(List.of(
                new Part("a", 100, 66, Optional.of(new Price(Optional.empty(), SOFTWOOD, 2))),
                new Part("b", 50, 50, Optional.of(new Price(Optional.empty(), SOFTWOOD, 5)))));
        assertThat(worth.beyondNeed()).isCloseTo(40, within(1e-12));
        assertThat(worth.priceInFull().orElseThrow()).isCloseTo((200 + 250) / 150.0, within(1e-12));
        assertThat(worth.into(WorkInputs.chainDefaults()).get(WorkInput.LUMBER_PRICE))
                .isCloseTo((132 + 250) / 150.0, within(1e-12));
    }
}
