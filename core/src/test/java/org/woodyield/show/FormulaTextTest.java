package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.woodyield.working.Formula;
import org.woodyield.working.Formula.Binary;
import org.woodyield.working.Formula.Call;
import org.woodyield.working.Formula.Literal;
import org.woodyield.working.Formula.Negative;
import org.woodyield.working.Formula.Node;
import org.woodyield.working.Formula.Symbol;

class FormulaTextTest {

    private static final Map<String, Double> VALUES = Map.of("D", 16.3, "L", -12.75, "k_saw", 0.1 + 0.2, "x", 1e-7);

    @Provide
    Arbitrary<Node> trees() {
        return trees(4);
    }

    private static Arbitrary<Node> trees(int depth) {
        Arbitrary<Node> leaf = Arbitraries.oneOf(
                Arbitraries.of("1", "0.5", "3.14", "12", "2").map(text -> new Literal(text, Double.parseDouble(text))),
                Arbitraries.of("D", "L", "k_saw", "x").map(Symbol::new));
        if (depth == 0) {
            return leaf;
        }
        Arbitrary<Node> inner = trees(depth - 1);
        return Arbitraries.oneOf(
                leaf,
                inner.map(Negative::new),
                Combinators.combine(Arbitraries.of('+', '-', '*', '/', '^'), inner, inner)
                        .as((operator, left, right) -> new Binary(operator, left, right)),
                Combinators.combine(Arbitraries.of("sqrt", "exp", "ln", "sin", "cos", "abs", "floor", "ceil"), inner)
                        .as((name, argument) -> new Call(name, List.of(argument))),
                Combinators.combine(Arbitraries.of("min", "max"), inner, inner)
                        .as((name, a, b) -> new Call(name, List.of(a, b))));
    }

    @Property(tries = 1000)
    void theTextOfATreeReadsBackToThatTree(@ForAll("trees") Node tree) {
        assertThat(Formula.parse(FormulaText.plain(tree)).root()).isEqualTo(tree);
    }

    @Property(tries = 1000)
    void theTextWithNumbersPutInHasTheSameValue(@ForAll("trees") Node tree) {
        double value = Formula.parse(FormulaText.plain(tree)).evaluate(VALUES);
        double put = Formula.parse(FormulaText.plain(tree, VALUES)).evaluate(Map.of());
        assertThat(put == value || (Double.isNaN(put) && Double.isNaN(value)))
                .as("%s is %s, with numbers %s", FormulaText.plain(tree), value, put)
                .isTrue();
    }

    @Property(tries = 1000)
    void theMathMlOfATreeReadsBackToThatTree(@ForAll("trees") Node tree) {
        Formula formula = Formula.parse(FormulaText.plain(tree));
        Element math = Xml.parse(FormulaText.equation("y", formula).toString()).getDocumentElement();
        String read = read(Xml.children(math).get(0));
        assertThat(read).startsWith("y=");
        assertThat(Formula.parse(read.substring(2)).root()).isEqualTo(tree);
    }

    @Test
    void bracketsStandWhereTheOrderNeedsThemAndNowhereElse() {
        assertThat(again("(D - 4)^2 * L / 16")).isEqualTo("(D - 4)^2 * L / 16");
        assertThat(again("((D) - (4)) * (L)")).isEqualTo("(D - 4) * L");
        assertThat(again("D - (L - 1)")).isEqualTo("D - (L - 1)");
        assertThat(again("D * (L / 12)")).isEqualTo("D * (L / 12)");
        assertThat(again("(D * L) / 12")).isEqualTo("D * L / 12");
        assertThat(again("-(D^2)")).isEqualTo("-D^2");
        assertThat(again("(-D)^2")).isEqualTo("(-D)^2");
        assertThat(again("(D^2)^3")).isEqualTo("(D^2)^3");
        assertThat(again("D^2^3")).isEqualTo("D^2^3");
        assertThat(FormulaText.plain(Formula.parse("D - L^2").root(), Map.of("D", -1.0, "L", -2.0)))
                .isEqualTo("-1 - (-2)^2");
    }

    @Test
    void whatFollowsAnUnderscoreIsASubscript() {
        assertThat(FormulaText.symbol("k_saw_head").toString())
                .isEqualTo("<math><msub><mi>k</mi><mtext>saw head</mtext></msub></math>");
        assertThat(FormulaText.symbol("MC").toString()).isEqualTo("<math><mi>MC</mi></math>");
    }

    private static String again(String text) {
        return FormulaText.plain(Formula.parse(text).root());
    }

    /** Writes each MathML element as a person would read it out, every drawn group in brackets of its own. */
    private static String read(Element element) {
        List<Element> inner = Xml.children(element);
        return switch (element.getTagName()) {
            case "mfrac" -> "((" + read(inner.get(0)) + ")/(" + read(inner.get(1)) + "))";
            case "msup" -> "((" + read(inner.get(0)) + ")^(" + read(inner.get(1)) + "))";
            case "msqrt" -> "sqrt(" + row(inner) + ")";
            case "msub" ->
                read(inner.get(0)) + "_" + inner.get(1).getTextContent().replace(' ', '_');
            case "mrow" -> row(inner);
            case "mo" -> element.getTextContent().replace('×', '*');
            default -> element.getTextContent();
        };
    }

    private static String row(List<Element> inner) {
        StringBuilder out = new StringBuilder();
        inner.forEach(part -> out.append(read(part)));
        String text = out.toString();
        if (text.startsWith("|")) {
            return "abs(" + text.substring(1, text.length() - 1) + ")";
        }
        if (text.startsWith("⌊")) {
            return "floor(" + text.substring(1, text.length() - 1) + ")";
        }
        return text.startsWith("⌈") ? "ceil(" + text.substring(1, text.length() - 1) + ")" : text;
    }
}
