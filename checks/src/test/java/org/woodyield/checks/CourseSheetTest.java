package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.woodyield.source.Standing;
import org.woodyield.working.Formula;

/** Each exercise three ways: by its steps rounded, by its steps unrounded, and by the library. */
class CourseSheetTest {

    private static final CourseSheet SHEET = CourseSheet.read();

    @TestFactory
    Stream<DynamicTest> theStatedAnswersAreThoseOfTheStepsAndOfTheLibrary() {
        return SHEET.exercises().stream()
                .map(exercise -> DynamicTest.dynamicTest(exercise.id(), () -> {
                    Map<String, Double> rounded = new HashMap<>(exercise.values());
                    for (CourseSheet.Step step : exercise.steps()) {
                        double value = Formula.parse(step.formula()).evaluate(rounded);
                        assertThat(Printed.rounded(value, CourseSheet.decimals(step.rounded())))
                                .as(step.symbol() + " = " + step.formula() + " with " + rounded)
                                .isEqualTo(step.rounded());
                        rounded.put(step.symbol(), Double.valueOf(step.rounded()));
                    }
                    int places = CourseSheet.decimals(exercise.answer());
                    assertThat(Printed.rounded(unrounded(exercise), places)).isEqualTo(exercise.answer());
                    assertThat(Printed.rounded(CourseSheet.solved(exercise), places))
                            .isEqualTo(exercise.answer());
                }));
    }

    @TestFactory
    Stream<DynamicTest> theVariantsFollowTheSameSteps() {
        return SHEET.variants().stream()
                .map(variant -> DynamicTest.dynamicTest(variant.id(), () -> {
                    assertThat(variant.asked()).doesNotContain("{");
                    assertThat(Printed.rounded(CourseSheet.solved(variant), variant.places()))
                            .isEqualTo(Printed.rounded(unrounded(variant), variant.places()));
                }));
    }

    @Test
    void variantsAreTheSameEveryTimeAndDifferFromTheirExercise() {
        assertThat(SHEET.variants()).isEqualTo(SHEET.variants());
        assertThat(SHEET.variants().stream().map(CourseSheet.Exercise::asked))
                .doesNotHaveDuplicates()
                .doesNotContainAnyElementsOf(SHEET.exercises().stream()
                        .map(CourseSheet.Exercise::asked)
                        .toList());
    }

    @Test
    void twentyAnswersStandInAPublicationThatWasRead() {
        assertThat(SHEET.exercises().stream()
                        .filter(exercise -> !exercise.printed().isEmpty())
                        .filter(exercise -> exercise.source()
                                .filter(source -> source.standing() == Standing.PUBLISHED
                                        || source.standing() == Standing.SECONDHAND)
                                .isPresent()))
                .hasSizeGreaterThanOrEqualTo(20);
    }

    /** Where print and answer differ, the sheet says why. */
    @Test
    void aPrintedResultThatDiffersHasARemark() {
        assertThat(SHEET.exercises())
                .filteredOn(exercise -> !exercise.printed().isEmpty())
                .allSatisfy(exercise -> {
                    double printed = Printed.of(exercise.printed()).value().doubleValue();
                    String same = Printed.rounded(printed, CourseSheet.decimals(exercise.answer()));
                    assertThat(same.equals(exercise.answer())
                                    || !exercise.remark().isEmpty())
                            .as(exercise.id())
                            .isTrue();
                });
    }

    @Test
    void bothFormsHoldEveryTaskAndEveryStanding() {
        assertThat(SHEET.exercises()).allSatisfy(exercise -> {
            assertThat(SHEET.markdown()).contains(exercise.asked());
            assertThat(SHEET.html()).contains("<li>" + exercise.asked().replace("&", "&amp;") + "</li>");
        });
        assertThat(SHEET.markdown()).contains("[" + Standing.SECONDHAND.label() + "]");
    }

    private static double unrounded(CourseSheet.Exercise exercise) {
        Map<String, Double> values = new HashMap<>(exercise.values());
        double value = 0;
        for (CourseSheet.Step step : exercise.steps()) {
            value = Formula.parse(step.formula()).evaluate(values);
            values.put(step.symbol(), value);
        }
        return value;
    }
}
