package org.woodyield.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaTest {

    private static double value(String formula) {
        return Formula.parse(formula).evaluate(Map.of());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 + 3 * 4         | 14",
                "(2 + 3) * 4       | 20",
                "20 - 8 - 4        | 8",
                "64 / 4 / 2        | 8",
                "64 / 4 * 2        | 32",
                "-3^2              | -9",
                "(-3)^2            | 9",
                "2^3^2             | 512",
                "2^-1              | 0.5",
                "4^0.5             | 2",
                "7^0               | 1",
                "3 - -2            | 5",
                "--3               | 3",
                ".5 * 4            | 2",
                "sqrt(16)          | 4",
                "exp(0)            | 1",
                "ln(1)             | 0",
                "sin(0)            | 0",
                "cos(0)            | 1",
                "abs(-2.5)         | 2.5",
                "floor(-2.5)       | -3",
                "ceil(-2.5)        | -2",
                "min(3, 1 + 1)     | 2",
                "max(3, 1 + 1)     | 3",
                "max(min(1, 2), 0) | 1",
            })
    void formulasHaveTheUsualMeaning(String formula, double value) {
        assertThat(value(formula)).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 +       | at 4: a number, a symbol or a bracket is expected",
                "2 3       | at 3: the end is expected",
                "(2        | at 3: ')' is expected",
                "2)        | at 2: the end is expected",
                "* 2       | at 1",
                "1.2.3     | 1.2.3 is not a number",
                ".         | . is not a number",
                "tan(1)    | no function tan of 1 arguments",
                "sqrt(1, 2)| no function sqrt of 2 arguments",
                "min(1)    | no function min of 1 arguments",
                "2 % 3     | at 3: the end is expected",
                "1e5       | at 2: the end is expected",
            })
    void whatIsNoFormulaIsRefusedWithThePlace(String text, String message) {
        assertThatThrownBy(() -> Formula.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void anEmptyTextIsNoFormula() {
        assertThatThrownBy(() -> Formula.parse("")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void symbolsStandInOrderOfAppearanceEachOnce() {
        Formula formula = Formula.parse("(D - 4)^2 * L / 16 + min(k_1, D)");
        assertThat(formula.symbols()).containsExactly("D", "L", "k_1");
        assertThat(formula.text()).isEqualTo("(D - 4)^2 * L / 16 + min(k_1, D)").isEqualTo(formula.toString());
        assertThatThrownBy(() -> formula.evaluate(Map.of("D", 20.0))).hasMessage("the symbol L has no value");
    }

    @Test
    void theTreeIsThatOfTheText() {
        assertThat(Formula.parse("-a * max(2, b)").root())
                .isEqualTo(new Formula.Binary(
                        '*',
                        new Formula.Negative(new Formula.Symbol("a")),
                        new Formula.Call(
                                "max", java.util.List.of(new Formula.Literal("2", 2), new Formula.Symbol("b")))));
    }

    @Property
    void theBitsAreThoseOfTheSameJavaExpression(@ForAll double a, @ForAll double b, @ForAll double c) {
        Map<String, Double> values = Map.of("a", a, "b", b, "c", c);
        same("a + b + c", values, a + b + c);
        same("a - b * c", values, a - b * c);
        same("a * b / c", values, a * b / c);
        same("a^2 * b", values, a * a * b);
        same("a^3 - b", values, a * a * a - b);
        same("(a - b)^2 / 4", values, (a - b) * (a - b) / 4);
        same("a^9", values, a * a * a * a * a * a * a * a * a);
        same("a^1.5", values, StrictMath.pow(a, 1.5));
        same("a^b", Map.of("a", a, "b", 10.0), StrictMath.pow(a, 10));
        same(
                "exp(a) + ln(abs(b)) + sqrt(c)",
                values,
                StrictMath.exp(a) + StrictMath.log(Math.abs(b)) + StrictMath.sqrt(c));
        same("sin(a) * cos(b)", values, StrictMath.sin(a) * StrictMath.cos(b));
    }

    private static void same(String formula, Map<String, Double> values, double expected) {
        assertThat(Double.doubleToLongBits(Formula.parse(formula).evaluate(values)))
                .as(formula + " with " + values)
                .isEqualTo(Double.doubleToLongBits(expected));
    }
}
