package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.woodyield.source.Standing;

/** The runner on tiny tables: what passes, and above all what must not. */
class RunTest {

    private static final Catalogue TINY = new Catalogue.Builder()
            .number("measure.third", given -> given.number("x") / 3)
            .text("measure.shout", given -> given.text("x") + "!")
            .build();

    private static final String SHOUT = "# source: trade\n# rows: 1\n# calculation: measure.shout\nx,published\na,a!\n";

    private static Run run(String... lines) {
        return Run.of(TINY, Map.of("measure/shout", SHOUT, "measure/third", String.join("\n", lines)));
    }

    private static Run third(String row) {
        return run("# source: trade", "# rows: 1", "# calculation: measure.third", "x,published", row);
    }

    private static Result only(Run run) {
        assertThat(run.problems()).isEmpty();
        return run.results().stream()
                .filter(result -> result.row().id().startsWith("measure/third"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void halfOfTheLastPrintedDigitIsAllowed() {
        assertThat(only(third("1,0.33")).verdict()).isEqualTo(Verdict.AGREES);
        assertThat(only(third("1,0.333")).verdict()).isEqualTo(Verdict.AGREES);
        assertThat(only(third("1,0.334")).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(only(third("1,0.330")).verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void anExactHalfMayBeRoundedEitherWay() {
        assertThat(only(third("7.5,2")).verdict()).isEqualTo(Verdict.AGREES);
        assertThat(only(third("7.5,3")).verdict()).isEqualTo(Verdict.AGREES);
        assertThat(only(third("7.6,2")).verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void aTruncatingSourceIsNeverAboveTheComputedValue() {
        String[] head = {"# source: trade", "# rows: 1", "# calculation: measure.third", "# truncates", "x,published"};
        assertThat(only(run(head[0], head[1], head[2], head[3], head[4], "8,2")).verdict())
                .isEqualTo(Verdict.AGREES);
        assertThat(only(run(head[0], head[1], head[2], head[3], head[4], "8,3")).verdict())
                .isEqualTo(Verdict.FAILS);
        assertThat(only(run(head[0], head[1], head[2], head[3], head[4], "8,1")).verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void aFractionIsExact() {
        assertThat(only(third("1 1/2,1/2")).verdict()).isEqualTo(Verdict.AGREES);
        assertThat(only(third("1.4999,1/2")).verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void aWiderAllowanceNeedsAReason() {
        assertThat(only(run(
                                "# source: trade",
                                "# rows: 1",
                                "# calculation: measure.third",
                                "x,published,allowance,reason",
                                "1,0.35,0.02,read off a graph"))
                        .verdict())
                .isEqualTo(Verdict.AGREES);
        assertThat(run(
                                "# source: trade",
                                "# rows: 1",
                                "# calculation: measure.third",
                                "x,published,allowance,reason",
                                "1,0.35,0.02,")
                        .problems())
                .contains("measure/third line 5: a disagreement or a wider allowance needs a reason");
    }

    private static Run disagreement(String row) {
        return run(
                "# source: trade",
                "# rows: 1",
                "# calculation: measure.third",
                "x,published,kind,expected,reason",
                row);
    }

    @Test
    void aDisagreementIsKnownAsLongAsItStandsAsWrittenDown() {
        assertThat(only(disagreement("1,0.5,disagreement,0.333,misprint")).verdict())
                .isEqualTo(Verdict.KNOWN);
        assertThat(only(disagreement("1,0.5,disagreement,0.34,misprint")).verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void aDisagreementThatVanishesFails() {
        Result result = only(disagreement("1.5,0.5,disagreement,0.5,misprint"));
        assertThat(result.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(result.why()).isEqualTo("the disagreement has vanished");
    }

    @Test
    void aDisagreementNeedsAReasonAndTheExpectedValue() {
        assertThat(disagreement("1,0.5,disagreement,0.333,").problems()).hasSize(2);
        assertThat(disagreement("1,0.5,disagreement,,misprint").problems()).hasSize(2);
        assertThat(disagreement("1,0.33,computed,0.33,").problems()).hasSize(2);
    }

    @Test
    void roundedInputsAreTriedAtBothEnds() {
        String[] table = {
            "# source: trade",
            "# rows: 1",
            "# calculation: measure.third",
            "# rounded inputs: x",
            "x,published",
            "1,0.48"
        };
        assertThat(only(run(table)).verdict()).isEqualTo(Verdict.AGREES);
        table[5] = "1,0.51";
        assertThat(only(run(table)).verdict()).isEqualTo(Verdict.FAILS);
        table[3] = "# rounded inputs: y";
        assertThat(run(table).problems()).contains("measure/third has no input column y to try at both ends");
    }

    @Test
    void aColumnThatNothingReadsIsAProblem() {
        assertThat(run("# source: trade", "# rows: 1", "# calculation: measure.third", "x,width,published", "1,2,0.33")
                        .problems())
                .containsExactly("measure/third: no calculation reads the columns [width]");
    }

    @Test
    void aMissingColumnFailsTheRow() {
        assertThat(only(run("# source: trade", "# rows: 1", "# calculation: measure.third", "published", "0.33"))
                        .why())
                .contains("no column x");
    }

    @Test
    void aLostRowIsAProblem() {
        assertThat(run("# source: trade", "# rows: 2", "# calculation: measure.third", "x,published", "1,0.33")
                        .problems())
                .contains("measure/third declares 2 rows and has 1");
    }

    @Test
    void anEmptyTableIsAProblem() {
        assertThat(run("# source: trade", "# rows: 0", "# calculation: measure.third", "x,published")
                        .problems())
                .contains("measure/third has no rows");
        assertThat(run("").problems()).contains("measure/third has no rows");
    }

    @Test
    void aRaggedRowIsAProblemWithItsLine() {
        assertThat(third("1,2,3").problems().get(0)).startsWith("measure/third line 5: 3 cells, 2 columns");
        assertThat(third("1").problems().get(0)).startsWith("measure/third line 5: 1 cells, 2 columns");
        assertThat(third("\n1,0.33").problems().get(0)).startsWith("measure/third line 5");
    }

    @Test
    void aSourceMustBeInTheRegisterAndNotInvented() {
        assertThat(run("# source: nobody", "# rows: 1", "# calculation: measure.third", "x,published", "1,0.33")
                        .problems())
                .contains("measure/third line 5: no source 'nobody' in the register");
        assertThat(run("# source: demo", "# rows: 1", "# calculation: measure.third", "x,published", "1,0.33")
                        .problems()
                        .get(0))
                .contains("invented");
        assertThat(run("# rows: 1", "# calculation: measure.third", "x,published", "1,0.33")
                        .problems())
                .contains("measure/third needs one line '# source: id'");
    }

    @Test
    void aCalculationWithoutALambdaFailsItsRows() {
        Run run = run("# source: trade", "# rows: 1", "# calculation: measure.fourth", "x,published", "1,0.33");
        assertThat(run.results()).anyMatch(result -> result.why().equals("the catalogue has no measure.fourth"));
        assertThat(run.passes()).isFalse();
    }

    @Test
    void aLambdaWithoutATableIsAProblem() {
        Run run = Run.of(TINY, Map.of("measure/shout", SHOUT));
        assertThat(run.problems()).containsExactly("no table calls measure.third");
        assertThat(run.passes()).isFalse();
    }

    @Test
    void aTableOfAnotherPackageIsAProblem() {
        assertThat(run("# source: trade", "# rows: 1", "# calculation: wood.third", "x,published", "1,0.33")
                        .problems())
                .contains("measure/third line 5: wood.third belongs into another folder");
    }

    @Test
    void notANumberNeverAgrees() {
        Catalogue none = new Catalogue.Builder()
                .number("measure.none", given -> Double.NaN)
                .build();
        Run run = Run.of(
                none,
                Map.of("measure/none", "# source: trade\n# rows: 1\n# calculation: measure.none\npublished\n1\n"));
        assertThat(run.results()).allMatch(Result::fails).isNotEmpty();
    }

    @Test
    void aRefusalFailsTheRowAndNotTheRun() {
        Result result = only(third("one,0.33"));
        assertThat(result.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(result.why()).contains("'one' is not a number");
    }

    @Test
    void textIsComparedLetterByLetter() {
        assertThat(third("1,0.33").passes()).isTrue();
        Run run = Run.of(TINY, Map.of("measure/shout", SHOUT.replace("a!", "A!")));
        assertThat(run.results()).allMatch(Result::fails).isNotEmpty();
    }

    @Test
    void aRowMayNameItsOwnSourceCalculationAndKind() {
        Run run = run(
                "# source: trade",
                "# rows: 2",
                "# kind: transcribed",
                "x,calculation,source,kind,published",
                "1,measure.third,definition,computed,0.33",
                "1,measure.third,,,0.33");
        assertThat(run.problems()).isEmpty();
        assertThat(run.counts())
                .containsEntry(new Run.Sort(Kind.COMPUTED, Standing.DERIVED, Verdict.AGREES), 1)
                .containsEntry(new Run.Sort(Kind.TRANSCRIBED, Standing.COMMON_PRACTICE, Verdict.AGREES), 1);
    }

    @Test
    void aRunWithoutRowsDoesNotPass() {
        assertThat(Run.of(new Catalogue.Builder().build(), Map.of()).passes()).isFalse();
    }
}
