package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Standing;

class DryingTest {

    private static final EquilibriumMoisture F = EquilibriumMoisture.fahrenheit();

    @Test
    void anInchOfRedOakTakesThreeDaysAndTwoInchesNearlyThreeTimesAsLong() {
        double inch = RedOakKiln.timeConstant(Length.inches(1), 150);
        assertThat(inch).isCloseTo(3.031, within(5e-4));
        assertThat(RedOakKiln.timeConstant(Length.inches(2), 150) / inch).isCloseTo(2.87, within(5e-3));
    }

    @ParameterizedTest
    @CsvSource({
        "0.9, 150, 5, 60, 10, 1 to 2 in",
        "2.1, 150, 5, 60, 10, 1 to 2 in",
        "1, 109, 5, 60, 10, 110 to 180",
        "1, 181, 5, 60, 10, 110 to 180",
        "1, 150, 5, 101, 10, 6 to 100 %",
        "1, 150, 5, 60, 5, above the equilibrium",
        "1, 150, 5, 60, 61, up to the start",
        "1, 150, 31, 60, 50, 0 to 30 %",
        "1, NaN, 5, 60, 10, 110 to 180",
        "1, 150, 5, 60, NaN, above the equilibrium"
    })
    void redOakIsRefusedOutsideItsKilnRange(
            String inches, double fahrenheit, double air, double from, double to, String allowed) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> RedOakKiln.days(Length.parse(inches + " in"), fahrenheit, air, from, to))
                .withMessageContaining(allowed);
    }

    @Property(tries = 200)
    void kilnDaysAddUpAndHotterIsQuicker(
            @ForAll @DoubleRange(min = 110, max = 179) double fahrenheit,
            @ForAll @DoubleRange(min = 11, max = 79) double between) {
        Length inch = Length.inches(1);
        double first = RedOakKiln.days(inch, fahrenheit, 6, 80, between);
        double second = RedOakKiln.days(inch, fahrenheit, 6, between, 10);
        double all = RedOakKiln.days(inch, fahrenheit, 6, 80, 10);
        assertThat(first + second).isCloseTo(all, within(1e-9));
        assertThat(RedOakKiln.days(inch, fahrenheit + 1, 6, 80, 10)).isLessThan(all);
        assertThat(RedOakKiln.daysWorking(inch, fahrenheit, 6, 80, 10).value()).isEqualTo(all);
        assertThat(RedOakKiln.timeConstantWorking(inch, fahrenheit).value())
                .isEqualTo(RedOakKiln.timeConstant(inch, fahrenheit));
        assertThat(RedOakKiln.saturationPressureWorking(fahrenheit).value())
                .isEqualTo(RedOakKiln.saturationPressure(fahrenheit));
    }

    private static LumberStack stack(int boards) {
        return new LumberStack(
                boards,
                Length.inches(1),
                Length.inches(6),
                Length.feet(8),
                Length.inches(48),
                Length.inches(1),
                Length.parse("3/4 in"),
                Length.inches(16));
    }

    @Test
    void aStackOfAHundredBoards() {
        LumberStack stack = stack(100);
        assertThat(stack.boardsInARow())
                .as("7 boards of 6 in and their gaps in 48 in")
                .isEqualTo(7);
        assertThat(stack.rows()).isEqualTo(15);
        assertThat(stack.stickersInARow()).as("96 in by 16, both ends").isEqualTo(7);
        assertThat(stack.stickers()).isEqualTo(105);
        assertThat(stack.heightInches()).isEqualTo(26.25);
        assertThat(stack.footprintSquareMetres()).isCloseTo(1.2192 * 2.4384, within(1e-12));
        Species pine = SpeciesCatalogue.published().find("eastern white pine");
        assertThat(stack.kilograms(pine, 0))
                .as("34 % of the mass of 100 boards of water")
                .isCloseTo(0.34 * 100 * 9.43894886, within(1e-6));
        assertThat(stack.kilogramsWorking(pine, 20).value()).isEqualTo(stack.kilograms(pine, 20));
    }

    @Property(tries = 200)
    void everyBoardHasItsPlaceAndNoRowTooMany(@ForAll @IntRange(min = 1, max = 2000) int boards) {
        LumberStack stack = stack(boards);
        assertThat(stack.rows() * stack.boardsInARow()).isGreaterThanOrEqualTo(boards);
        assertThat((stack.rows() - 1) * stack.boardsInARow()).isLessThan(boards);
        assertThat(stack.heightWorking().value()).isEqualTo(stack.heightInches());
        assertThat(stack.heightWorking().value("stickers")).isEqualTo(stack.stickers());
    }

    @Test
    void aStackNarrowerThanItsBoardsIsRefused() {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> stack(0));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new LumberStack(
                        5,
                        Length.inches(1),
                        Length.inches(6),
                        Length.feet(8),
                        Length.inches(5),
                        Length.ZERO,
                        Length.inches(1),
                        Length.inches(16)))
                .withMessageContaining("a board or more");
    }

    @Test
    void aYearOfOneAirHasThatAirsMoisture() {
        List<OutdoorMoisture.Air> year = Collections.nCopies(12, new OutdoorMoisture.Air(70, 65));
        assertThat(OutdoorMoisture.meanPercent(F, year)).isCloseTo(F.percent(70, 65), within(1e-12));
        assertThat(OutdoorMoisture.monthly(F, year)).hasSize(12);
    }

    @Property(tries = 200)
    void theMeanLiesBetweenTheDriestAndTheWettestMonth(
            @ForAll @DoubleRange(min = 30, max = 100) double t, @ForAll @DoubleRange(min = 10, max = 90) double h) {
        List<OutdoorMoisture.Air> year =
                new java.util.ArrayList<>(Collections.nCopies(11, new OutdoorMoisture.Air(50, 50)));
        year.add(new OutdoorMoisture.Air(t, h));
        double mean = OutdoorMoisture.meanPercent(F, year);
        double one = F.percent(50, 50);
        double other = F.percent(t, h);
        assertThat(mean).isBetween(Math.min(one, other) - 1e-12, Math.max(one, other) + 1e-12);
        assertThat(OutdoorMoisture.meanWorking(F, year).value()).isEqualTo(mean);
    }

    @Test
    void frostAndElevenMonthsAreRefused() {
        List<OutdoorMoisture.Air> frost = Collections.nCopies(12, new OutdoorMoisture.Air(20, 70));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> OutdoorMoisture.meanPercent(F, frost))
                .withMessageContaining("month 1")
                .withMessageContaining("30 to 270");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> OutdoorMoisture.meanPercent(F, frost.subList(1, 12)));
    }

    @Test
    void citiesAreFromMemoryAndRangesSecondhand() {
        assertThat(OutdoorMoisture.cities()).hasSize(13).allSatisfy(city -> {
            assertThat(city.months()).hasSize(12);
            assertThat(city.months().get(0).source().standing()).isEqualTo(Standing.MEMORY);
        });
        assertThat(OutdoorMoisture.ranges()).hasSize(7).allSatisfy(range -> {
            assertThat(range.least().value()).isLessThan(range.greatest().value());
            assertThat(range.least().source().standing()).isEqualTo(Standing.SECONDHAND);
        });
    }

    @ParameterizedTest
    @CsvSource({"northern red oak, true", "southern red oak, true", "black oak, false", "white oak, false"})
    void theKilnEquationIsForWhatIsCalledRedOak(String name, boolean made) {
        assertThat(RedOakKiln.isFor(SpeciesCatalogue.published().find(name))).isEqualTo(made);
    }

    @Test
    void woodThatIsAlreadyThereTakesNoTimeAndTheAirsOwnMoistureIsNeverReached() {
        assertThat(RedOakKiln.days(Length.inches(1), 150, 6, 30, 30)).isZero();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> RedOakKiln.days(Length.inches(1), 150, 6, 30, 6))
                .withMessageContaining("above the equilibrium, 6.0");
    }

    @ParameterizedTest
    @CsvSource({
        "0 in, 6 in, 8 ft, 3/4 in, 16 in, thickness of a board",
        "1 in, 0 in, 8 ft, 3/4 in, 16 in, width of a board",
        "1 in, 6 in, 0 ft, 3/4 in, 16 in, length of a board",
        "1 in, 6 in, 8 ft, 0 in, 16 in, thickness of a sticker",
        "1 in, 6 in, 8 ft, 3/4 in, 0 in, spacing of the stickers"
    })
    void aStackOfNothingIsRefusedAndSaysWhatIsNothing(
            Length thickness, Length width, Length length, Length sticker, Length spacing, String what) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new LumberStack(
                        10, thickness, width, length, Length.feet(4), Length.inches(1), sticker, spacing))
                .satisfies(refusal -> assertThat(refusal.parameter()).isEqualTo(what));
    }

    @Test
    void aStackAsWideAsOneBoardIsAPileAndAHundredThousandBoardsAreTheMost() {
        LumberStack pile = new LumberStack(
                5,
                Length.inches(1),
                Length.inches(6),
                Length.feet(8),
                Length.inches(6),
                Length.ZERO,
                Length.inches(1),
                Length.inches(16));
        assertThat(pile.boardsInARow()).isEqualTo(1);
        assertThat(pile.rows()).isEqualTo(5);
        assertThat(stack(100_000).boards()).isEqualTo(100_000);
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> stack(100_001));
    }

    @Test
    void theWidestStackingIsAcceptedAndAStepMoreIsRefused() {
        Stacking widest =
                new Stacking(Stacking.WIDEST, Stacking.WIDEST_GAP, Stacking.THICKEST_STICKER, Stacking.WIDEST_SPACING);
        LumberStack stack = widest.of(40, Length.inches(2), Length.inches(8), Length.feet(16));
        assertThat(stack.boardsInARow()).as("(240 + 12) / (8 + 12)").isEqualTo(12);
        assertThat(stack.stickersInARow()).as("192 / 24 and one").isEqualTo(9);
        assertThat(new Stacking(Length.feet(4), Length.ZERO, Length.inches(1), Length.inches(16)).gap())
                .isEqualTo(Length.ZERO);
    }

    @ParameterizedTest
    @CsvSource({
        "0 ft, 1 in, 3/4 in, 16 in, width of the stack, 20 ft",
        "20.1 ft, 1 in, 3/4 in, 16 in, width of the stack, 20 ft",
        "4 ft, 12.1 in, 3/4 in, 16 in, gap, 12 in",
        "4 ft, 1 in, 0 in, 16 in, thickness of a sticker, 4 in",
        "4 ft, 1 in, 4.1 in, 16 in, thickness of a sticker, 4 in",
        "4 ft, 1 in, 3/4 in, 0 in, spacing of the stickers, 24 in",
        "4 ft, 1 in, 3/4 in, 24.1 in, spacing of the stickers, 24 in"
    })
    void stackingOutsideItsMeasuresIsRefused(
            Length width, Length gap, Length sticker, Length spacing, String what, Length limit) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new Stacking(width, gap, sticker, spacing))
                .satisfies(refusal -> {
                    assertThat(refusal.parameter()).isEqualTo(what);
                    assertThat(Length.parse(refusal.limits().replace("up to ", "")))
                            .isEqualTo(limit);
                    assertThat(refusal.remedy()).isNotEmpty();
                });
    }

    @ParameterizedTest
    @CsvSource({"'Denver, CO'", "denver co", "'  DENVER ,  CO '"})
    void aPlaceIsFoundWhateverItsCaseAndCommas(String name) {
        assertThat(DryingAir.ofPlace(name)).isInstanceOfSatisfying(DryingAir.Place.class, place -> {
            assertThat(place.city().name()).isEqualTo("Denver, CO");
            assertThat(place.city().months().get(0).value()).isEqualTo(10.7);
        });
    }

    @Test
    void aPlaceQuotedBySeasonsHasEachOfThemAndNoOthers() {
        assertThat(DryingAir.ofPlace("Casper, WY"))
                .isInstanceOfSatisfying(
                        DryingAir.Seasons.class,
                        seasons -> assertThat(seasons.ranges())
                                .extracting(OutdoorMoisture.Range::period)
                                .containsExactly("Nov-Jun", "Jul-Oct"));
    }

    @Test
    void anUnknownPlaceIsRefusedWithAllThatAreKnown() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> DryingAir.ofPlace("Atlantis"))
                .satisfies(refusal ->
                        assertThat(refusal.limits().split("; ")).hasSize(13 + 4).contains("Juneau, AK", "Sheridan WY"));
    }

    @Test
    void aYearOfAirHasTwelveMonthsOfPossibleHumidityAndMayFreeze() {
        List<OutdoorMoisture.Air> winter = Collections.nCopies(12, new OutdoorMoisture.Air(-10, 80));
        assertThat(new DryingAir.Year(F, winter).months()).hasSize(12);
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new DryingAir.Year(F, winter.subList(0, 11)))
                .withMessageContaining("months");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new DryingAir.Year(F, Collections.nCopies(12, new OutdoorMoisture.Air(50, 99))))
                .withMessageContaining("humidity");
    }
}
