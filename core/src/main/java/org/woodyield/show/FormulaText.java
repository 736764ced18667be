package org.woodyield.show;

import java.util.Map;
import org.woodyield.working.Formula;
import org.woodyield.working.Formula.Binary;
import org.woodyield.working.Formula.Call;
import org.woodyield.working.Formula.Literal;
import org.woodyield.working.Formula.Negative;
import org.woodyield.working.Formula.Node;
import org.woodyield.working.Formula.Symbol;

/**
 * A formula's tree as text and as MathML, with the brackets that its order of evaluation needs and no others.
 *
 * <p>The text reads back, by {@link Formula#parse}, to the same tree; with numbers put in for symbols it evaluates to the
 * same bits.
 */
final class FormulaText {

    /** How tightly a part holds together: sum, product, sign, power, atom. */
    private static final int SUM = 1;

    private static final int PRODUCT = 2;
    private static final int SIGN = 3;
    private static final int POWER = 4;
    private static final int ATOM = 5;

    private FormulaText() {}

    static String plain(Node node) {
        return plain(node, Map.of());
    }

    /** With each symbol that has a value replaced by it, all digits. */
    static String plain(Node node, Map<String, Double> values) {
        StringBuilder out = new StringBuilder();
        write(node, values, out);
        return out.toString();
    }

    private static void write(Node node, Map<String, Double> values, StringBuilder out) {
        if (node instanceof Literal number) {
            out.append(number.text());
        } else if (node instanceof Symbol symbol) {
            Double value = values.get(symbol.name());
            out.append(value == null ? symbol.name() : NumberText.plain(value));
        } else if (node instanceof Negative negative) {
            out.append('-');
            write(negative.operand(), values, out, rank(negative.operand(), values) < SIGN);
        } else if (node instanceof Binary binary) {
            boolean power = binary.operator() == '^';
            write(binary.left(), values, out, bracketLeft(binary, values));
            out.append(power ? "^" : " " + binary.operator() + " ");
            write(binary.right(), values, out, bracketRight(binary, values));
        } else {
            Call call = (Call) node;
            out.append(call.function()).append('(');
            for (int i = 0; i < call.arguments().size(); i++) {
                out.append(i == 0 ? "" : ", ");
                write(call.arguments().get(i), values, out);
            }
            out.append(')');
        }
    }

    private static void write(Node node, Map<String, Double> values, StringBuilder out, boolean bracket) {
        out.append(bracket ? "(" : "");
        write(node, values, out);
        out.append(bracket ? ")" : "");
    }

    private static boolean bracketLeft(Binary binary, Map<String, Double> values) {
        int left = rank(binary.left(), values);
        return switch (binary.operator()) {
            case '+', '-' -> false;
            case '*', '/' -> left < PRODUCT;
            default -> left <= POWER;
        };
    }

    /** Evaluation runs from the left, so an equal rank on the right is bracketed; a sign there is too, to be seen. */
    private static boolean bracketRight(Binary binary, Map<String, Double> values) {
        int right = rank(binary.right(), values);
        return switch (binary.operator()) {
            case '+', '-' -> right == SUM || right == SIGN;
            default -> right <= SIGN;
        };
    }

    private static int rank(Node node, Map<String, Double> values) {
        if (node instanceof Binary binary) {
            return switch (binary.operator()) {
                case '+', '-' -> SUM;
                case '*', '/' -> PRODUCT;
                default -> POWER;
            };
        }
        if (node instanceof Negative) {
            return SIGN;
        }
        if (node instanceof Symbol symbol) {
            Double value = values.get(symbol.name());
            return value != null && value < 0 ? SIGN : ATOM;
        }
        return ATOM;
    }

    /** A {@code math} element: the symbol, an equals sign, the formula. */
    static Markup equation(String symbol, Formula formula) {
        Markup out = new Markup().open("math", "display", "block").open("mrow");
        symbol(symbol, out);
        out.element("mo", "=");
        math(formula.root(), Map.of(), out);
        return out.close().close();
    }

    /** A {@code math} element: an equals sign and the formula with its numbers put in. */
    static Markup substitution(Formula formula, Map<String, Double> values) {
        Markup out = new Markup().open("math", "display", "block").open("mrow").element("mo", "=");
        math(formula.root(), values, out);
        return out.close().close();
    }

    /** A {@code math} element with one symbol in it. */
    static Markup symbol(String symbol) {
        Markup out = new Markup().open("math");
        symbol(symbol, out);
        return out.close();
    }

    /** What follows an underscore stands below the line. */
    private static void symbol(String name, Markup out) {
        int at = name.indexOf('_');
        if (at <= 0 || at == name.length() - 1) {
            out.element("mi", name);
        } else {
            out.open("msub").element("mi", name.substring(0, at));
            out.element("mtext", name.substring(at + 1).replace('_', ' ')).close();
        }
    }

    private static void math(Node node, Map<String, Double> values, Markup out) {
        if (node instanceof Literal number) {
            out.element("mn", number.text());
        } else if (node instanceof Symbol symbol) {
            Double value = values.get(symbol.name());
            if (value == null) {
                symbol(symbol.name(), out);
            } else if (value < 0) {
                out.open("mrow").element("mo", "-", "form", "prefix");
                out.element("mn", NumberText.plain(-value)).close();
            } else {
                out.element("mn", NumberText.plain(value));
            }
        } else if (node instanceof Negative negative) {
            out.open("mrow").element("mo", "-", "form", "prefix");
            boolean fraction = isFraction(negative.operand());
            math(negative.operand(), values, out, !fraction && rank(negative.operand(), values) < SIGN);
            out.close();
        } else if (node instanceof Binary binary) {
            math(binary, values, out);
        } else {
            call((Call) node, values, out);
        }
    }

    private static void math(Binary binary, Map<String, Double> values, Markup out) {
        if (binary.operator() == '/') {
            out.open("mfrac").open("mrow");
            math(binary.left(), values, out);
            out.close().open("mrow");
            math(binary.right(), values, out);
            out.close().close();
        } else if (binary.operator() == '^') {
            out.open("msup").open("mrow");
            math(binary.left(), values, out, bracketLeft(binary, values));
            out.close().open("mrow");
            math(binary.right(), values, out);
            out.close().close();
        } else {
            out.open("mrow");
            // A fraction is drawn as one thing and needs no brackets beside a multiplication sign.
            math(binary.left(), values, out, !isFraction(binary.left()) && bracketLeft(binary, values));
            out.element("mo", binary.operator() == '*' ? "×" : String.valueOf(binary.operator()), "form", "infix");
            math(binary.right(), values, out, !isFraction(binary.right()) && bracketRight(binary, values));
            out.close();
        }
    }

    private static void math(Node node, Map<String, Double> values, Markup out, boolean bracket) {
        if (bracket) {
            out.open("mrow").element("mo", "(");
            math(node, values, out);
            out.element("mo", ")").close();
        } else {
            math(node, values, out);
        }
    }

    private static void call(Call call, Map<String, Double> values, Markup out) {
        switch (call.function()) {
            case "sqrt" -> {
                out.open("msqrt");
                math(call.arguments().get(0), values, out);
                out.close();
            }
            case "abs" -> fenced("|", "|", call, values, out);
            case "floor" -> fenced("⌊", "⌋", call, values, out);
            case "ceil" -> fenced("⌈", "⌉", call, values, out);
            default -> {
                out.open("mrow").element("mi", call.function()).element("mo", "(");
                for (int i = 0; i < call.arguments().size(); i++) {
                    if (i > 0) {
                        out.element("mo", ",", "separator", "true");
                    }
                    math(call.arguments().get(i), values, out);
                }
                out.element("mo", ")").close();
            }
        }
    }

    private static void fenced(String left, String right, Call call, Map<String, Double> values, Markup out) {
        out.open("mrow").element("mo", left, "form", "prefix");
        math(call.arguments().get(0), values, out);
        out.element("mo", right, "form", "postfix").close();
    }

    private static boolean isFraction(Node node) {
        return node instanceof Binary binary && binary.operator() == '/';
    }
}
