package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.woodyield.measure.Distribution;
import org.woodyield.work.InputValue;
import org.woodyield.work.WorkInput;

/** Figures of work and money with what they may lie between, as people write them. */
class WorkReaderTest {

    private final Problems problems = new Problems();

    private Optional<InputValue> read(WorkInput input, String text) {
        return WorkReader.readWithRange(new Cell("job.properties", 1, input.keyOfJob(), text, problems), input);
    }

    private Problem onlyProblem(WorkInput input, String text) {
        assertThat(read(input, text)).as(text).isEmpty();
        assertThat(problems.inOrder()).hasSize(1);
        return problems.inOrder().get(0);
    }

    /** A bare number behind feet and inches, or behind a percentage, could be either; a share has no unit of its own. */
    @Test
    void aDeviationWhoseUnitIsOpenIsRefusedWithAFormThatWorks() {
        assertThat(onlyProblem(WorkInput.LUMBER_PRICE, "2.60 +- 5 % per bf").remedy())
                .isEqualTo("such as 6 per bf +- 5 %");
        assertThat(read(WorkInput.LUMBER_PRICE, "6 per bf +- 5 %")).isPresent();
        assertThat(read(WorkInput.INTEREST, "8 % +- 2")).isEmpty();
        assertThat(read(WorkInput.ALTITUDE, "12 ft 6 in +- 2")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "SOUND_LEVEL, 100 dB(A) +- 3 dB(A), 100, 3",
        "HOURS_PER_DAY, 6 h +- 20 min, 6, 0.3333333333333333",
        "LOAD_LIMIT, 100 kg ± 5 kg, 100, 5",
        "UTILISATION, 70 % +- 0.5 %, 0.7, 0.005",
        "ALTITUDE, 300 m +- 10 m, 300, 10",
        "BITE, 0.6 mm +- 0.1 mm, 0.6, 0.1",
        "WAGE, 14 per h +- 7 per h, 14, 7",
        "WAGE, 14 +- 2 per h, 14, 2",
        "WAGE, 14 per h +- 10 %, 14, 1.4",
        "WAGE, 14 per h +- 2, 14, 2",
        "LUMBER_PRICE, 2.60 per bf +- 0.20, 2.6, 0.2",
        "LUMBER_PRICE, 780 per mbf +- 40, 0.78, 0.04",
        "SETTING, 3 min +- 0.5, 3, 0.5",
        "SHARPENING_AREA, 5 m2 +- 1, 5, 1",
        "LUMBER_PRICE, 780 per mbf +- 5 %, 0.78, 0.039",
        "PURCHASE, 1000 +- 20 %, 1000, 200",
        "DRAG_SLOPE, -5 deg +- 27 deg, -5, 27"
    })
    void aDeviationIsHeldToTheWidthOfTheLimitsAndNotToTheLimits(
            WorkInput input, String text, double value, double deviation) {
        Distribution spread = read(input, text).orElseThrow().spread();
        assertThat(spread.mean()).isCloseTo(value, within(1e-12));
        assertThat(spread.standardDeviation()).isCloseTo(deviation, within(1e-12));
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "SOUND_LEVEL, 100 dB(A) +- 101 dB(A), 101 dB(A), 'above 0, up to 100 dB(A)'",
        "SOUND_LEVEL, 100 dB(A) +- 0 dB(A), 0 dB(A), 'above 0, up to 100 dB(A)'",
        "FUEL_DENSITY, 0.7 kg/L +- 2 kg/L, 2 kg/L, 'above 0, up to 0.6 kg/L'",
        "ALTITUDE, 300 m +- 0 m, 0 m, 'above 0, up to 5000 m'",
        "UTILISATION, 70 % +- -5 %, -5 %, 'above 0, up to 99 %'"
    })
    void aDeviationOfNothingOrWiderThanTheLimitsIsRefused(
            WorkInput input, String text, String refused, String allowed) {
        Problem problem = onlyProblem(input, text);
        assertThat(problem.value()).isEqualTo(refused);
        assertThat(problem.allowed()).isEqualTo(allowed);
        assertThat(problem.remedy()).contains("one standard deviation");
    }

    /** A normal law that reaches far beyond the limits, below zero for instance, is none of the value: a range is. */
    @ParameterizedTest
    @CsvSource({
        "WAGE, 14 per h +- 20 per h, 0 to 1000000 in the job's currency per h",
        "WAGE, 14 per h +- 7.01 per h, 0 to 1000000 in the job's currency per h",
        "WAGE, 0 per h +- 1 per h, 0 to 1000000 in the job's currency per h",
        "UTILISATION, 95 % +- 5 %, 0.01 to 1",
        "DRAG_SLOPE, -5 deg +- 100 deg, -60 to 60 deg"
    })
    void aDeviationThatReachesBeyondTheLimitsIsRefused(WorkInput input, String text, String limits) {
        Problem problem = onlyProblem(input, text);
        assertThat(problem.value()).isEqualTo(text);
        assertThat(problem.allowed()).contains("half the distance of the value from its limits", limits);
        assertThat(problem.remedy()).endsWith("such as " + WorkReader.exampleOfRange(input));
    }

    @ParameterizedTest
    @CsvSource({
        "WAGE, 14 per h +- 60 %, 60 %, 'above 0, up to 50 %'",
        "WAGE, 14 per h +- 0 %, 0 %, 'above 0, up to 50 %'",
        "SETTING, 3 min +- 5 %, 5 %, min"
    })
    void aShareAsDeviationIsForAmountsAndNotTooGreat(WorkInput input, String text, String refused, String allowed) {
        Problem problem = onlyProblem(input, text);
        assertThat(problem.value()).isEqualTo(refused);
        assertThat(problem.allowed()).contains(allowed);
    }

    @ParameterizedTest
    @CsvSource({
        "WAGE, 14 (10 to 20) per h, 10, 14, 20",
        "SETTING, 2 (1 to 3) min, 1, 2, 3",
        "SETTING, 2(1 to 3)min, 1, 2, 3",
        "SOUND_LEVEL, 100 (95 to 105) dB(A), 95, 100, 105",
        "DRAG_SLOPE, -4 (-5 to 6) deg, -5, -4, 6",
        "ALTITUDE, 300 (200 to 400) m, 200, 300, 400",
        "VIBRATION, 5 (4 to 6) m/s2, 4, 5, 6"
    })
    void aUnitBehindTheBracketsIsThatOfAllThree(
            WorkInput input, String text, double least, double value, double greatest) {
        assertThat(read(input, text).orElseThrow().spread())
                .isEqualTo(new Distribution.Triangular(least, value, greatest));
    }

    /** As with a deviation, the unit may stand at the value alone, or at the range alone. */
    @ParameterizedTest
    @CsvSource({
        "WAGE, 14 per h (12 to 16), 12, 14, 16",
        "WAGE, 14 (12 to 16 per h), 12, 14, 16",
        "WAGE, 14 per h (12 to 16 per h), 12, 14, 16",
        "SETTING, 2 min (1 to 3), 1, 2, 3",
        "SETTING, 120 s (1 min to 3 min), 1, 2, 3",
        "LUMBER_PRICE, 780 per mbf (690 to 880), 0.69, 0.78, 0.88",
        "SOUND_LEVEL, 100 dB(A) (95 to 105), 95, 100, 105",
        "INTEREST, 8 % (6 to 10), 0.06, 0.08, 0.1",
        "UTILISATION, 70 % (60 to 80), 0.6, 0.7, 0.8",
        "UTILISATION, 0.7 (60 % to 80 %), 0.6, 0.7, 0.8",
        "UTILISATION, 0.7 (0.6 to 0.8), 0.6, 0.7, 0.8",
        "UTILISATION, 70 % (60 % to 80 %), 0.6, 0.7, 0.8",
        "PURCHASE, 1000 (900 to 1100), 900, 1000, 1100",
        "ALTITUDE, 300 m (200 to 400), 200, 300, 400"
    })
    void oneUnitHoldsForValueAndRange(WorkInput input, String text, double least, double value, double greatest) {
        Distribution.Triangular read =
                (Distribution.Triangular) read(input, text).orElseThrow().spread();
        assertThat(read.least()).isCloseTo(least, within(1e-12));
        assertThat(read.peak()).isCloseTo(value, within(1e-12));
        assertThat(read.greatest()).isCloseTo(greatest, within(1e-12));
        assertThat(problems.isEmpty()).isTrue();
    }

    /** What a refusal of exchanged ends tells to write is read. */
    @ParameterizedTest
    @CsvSource({
        "WAGE, 14 per h (20 to 10), 14 per h (10 per h to 20 per h)",
        "WAGE, 14 per h (20 to 10 per h), 14 per h (10 per h to 20 per h)",
        "WAGE, 14 (20 to 10) per h, 14 per h (10 per h to 20 per h)",
        "WAGE, 20 to 10 per h, 10 per h to 20 per h",
        "UTILISATION, 70 % (80 % to 60 %), 70 % (60 % to 80 %)",
        "PURCHASE, 1000 (1100 to 900), 1000 (900 to 1100)"
    })
    void exchangedEndsAreNamedWithWhatToWrite(WorkInput input, String text, String mended) {
        Problem problem = onlyProblem(input, text);
        assertThat(problem.value()).isEqualTo(text);
        assertThat(problem.allowed()).isEqualTo("a range with the lesser end first");
        assertThat(problem.remedy()).isEqualTo("the ends are exchanged; write " + mended);
        assertThat(read(input, mended)).isPresent();
    }

    @ParameterizedTest
    @CsvSource({
        "WAGE, 14 per h (15 to 20), 14 per h lies below 15 per h to 20 per h",
        "WAGE, 24 per h (20 to 15), 24 per h lies above 15 per h to 20 per h",
        "SETTING, 2 (3 to 5) min, 2 min lies below 3 min to 5 min"
    })
    void aValueOutsideOfItsRangeIsNamedWithIt(WorkInput input, String text, String says) {
        Problem problem = onlyProblem(input, text);
        assertThat(problem.allowed()).isEqualTo("a range that holds the value");
        assertThat(problem.remedy()).isEqualTo(says + "; mend the value or widen the range");
    }

    @ParameterizedTest
    @EnumSource(WorkInput.class)
    void theRangeThatARefusalShowsIsAccepted(WorkInput input) {
        if (input.isCount()) {
            return;
        }
        String shown = WorkReader.exampleOfRange(input);
        assertThat(read(input, shown))
                .as(shown)
                .hasValueSatisfying(value -> assertThat(value.hasSpread()).isTrue());
    }

    @ParameterizedTest
    @CsvSource({
        "WAGE, 14 (10 per h to 20 per h) per h, 6 per h (5 per h to 7 per h)",
        "ALTITUDE, 12 ft 6 in (10 to 14), 6 m (5 m to 7 m)",
        "SETTING, 2 (1 min to 3) min, 6 min (5 min to 7 min)"
    })
    void aRangeOfAnotherFormIsToldOnceWithOneThatCanBeWritten(WorkInput input, String text, String shown) {
        Problem problem = onlyProblem(input, text);
        assertThat(problem.value()).isEqualTo(text);
        assertThat(problem.remedy()).isEqualTo("such as " + shown);
    }

    @Test
    void unitsAreShownAsTheyAreWrittenAndReadInCapitalsOrNot() {
        assertThat(onlyProblem(WorkInput.SOUND_LEVEL, "100").allowed()).endsWith("written with its unit: dB(A)");
        assertThat(Units.POWER.words()).isEqualTo("kW, W, hp");
        assertThat(read(WorkInput.SOUND_LEVEL, "100 DB(a)").orElseThrow().value())
                .isEqualTo(100);
        assertThat(read(WorkInput.WAGE, "14 PER H").orElseThrow().value()).isEqualTo(14);
    }
}
