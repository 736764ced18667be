package org.woodyield.working;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An arithmetic formula, evaluated from the text that is printed.
 *
 * <p>Understood: numbers, symbols of letters, digits and underscores, {@code + - * / ^}, brackets, and the functions
 * {@code sqrt exp ln sin cos atan abs floor ceil min max}. Evaluation is strictly from left to right within one precedence, in
 * double arithmetic with {@link StrictMath}. A whole power of 2 to 9 is repeated multiplication from the left, so that
 * {@code d^2} has the bits of {@code d * d}; other powers are {@link StrictMath#pow}.
 */
public final class Formula {

    /** A part of a formula. */
    public sealed interface Node {}

    /**
     * A literal number.
     *
     * @param text as written
     * @param value its value
     */
    public record Literal(String text, double value) implements Node {}

    /**
     * A symbol that the working gives a value to.
     *
     * @param name the symbol
     */
    public record Symbol(String name) implements Node {}

    /**
     * A sign change.
     *
     * @param operand what is negated
     */
    public record Negative(Node operand) implements Node {}

    /**
     * An operation on two parts.
     *
     * @param operator one of {@code + - * / ^}
     * @param left the left part
     * @param right the right part
     */
    public record Binary(char operator, Node left, Node right) implements Node {}

    /**
     * A function call.
     *
     * @param function the function's name
     * @param arguments one or two parts
     */
    public record Call(String function, List<Node> arguments) implements Node {
        /** Keeps an immutable copy. */
        public Call {
            arguments = List.copyOf(arguments);
        }
    }

    private static final Set<String> ONE = Set.of("sqrt", "exp", "ln", "sin", "cos", "atan", "abs", "floor", "ceil");
    private static final Set<String> TWO = Set.of("min", "max");

    private final String text;
    private final Node root;

    private Formula(String text, Node root) {
        this.text = text;
        this.root = root;
    }

    /**
     * Reads a formula.
     *
     * @param text for example {@code (D - 4)^2 * L / 16}
     * @return the formula
     * @throws IllegalArgumentException if the text is not a formula; the message gives the place
     */
    public static Formula parse(String text) {
        Parser parser = new Parser(text);
        Node root = parser.sum();
        parser.end();
        return new Formula(text, root);
    }

    /**
     * The text as written.
     *
     * @return the text
     */
    public String text() {
        return text;
    }

    /**
     * The tree.
     *
     * @return its root
     */
    public Node root() {
        return root;
    }

    /**
     * The symbols in order of appearance.
     *
     * @return each once
     */
    public Set<String> symbols() {
        Set<String> found = new LinkedHashSet<>();
        collect(root, found);
        return found;
    }

    private static void collect(Node node, Set<String> into) {
        if (node instanceof Symbol symbol) {
            into.add(symbol.name);
        } else if (node instanceof Negative negative) {
            collect(negative.operand, into);
        } else if (node instanceof Binary binary) {
            collect(binary.left, into);
            collect(binary.right, into);
        } else if (node instanceof Call call) {
            call.arguments.forEach(argument -> collect(argument, into));
        }
    }

    /**
     * The value.
     *
     * @param values a value for each symbol
     * @return the result
     * @throws IllegalArgumentException if a symbol has no value
     */
    public double evaluate(Map<String, Double> values) {
        return evaluate(root, values);
    }

    private static double evaluate(Node node, Map<String, Double> values) {
        if (node instanceof Literal number) {
            return number.value;
        }
        if (node instanceof Symbol symbol) {
            Double value = values.get(symbol.name);
            if (value == null) {
                throw new IllegalArgumentException("the symbol " + symbol.name + " has no value");
            }
            return value;
        }
        if (node instanceof Negative negative) {
            return -evaluate(negative.operand, values);
        }
        if (node instanceof Binary binary) {
            double left = evaluate(binary.left, values);
            double right = evaluate(binary.right, values);
            return switch (binary.operator) {
                case '+' -> left + right;
                case '-' -> left - right;
                case '*' -> left * right;
                case '/' -> left / right;
                default -> power(left, right);
            };
        }
        Call call = (Call) node;
        double first = evaluate(call.arguments.get(0), values);
        return switch (call.function) {
            case "sqrt" -> StrictMath.sqrt(first);
            case "exp" -> StrictMath.exp(first);
            case "ln" -> StrictMath.log(first);
            case "sin" -> StrictMath.sin(first);
            case "cos" -> StrictMath.cos(first);
            case "atan" -> StrictMath.atan(first);
            case "abs" -> Math.abs(first);
            case "floor" -> Math.floor(first);
            case "ceil" -> Math.ceil(first);
            case "min" -> Math.min(first, evaluate(call.arguments.get(1), values));
            default -> Math.max(first, evaluate(call.arguments.get(1), values));
        };
    }

    private static double power(double base, double exponent) {
        if (exponent >= 2 && exponent <= 9 && exponent == Math.rint(exponent)) {
            double product = base;
            for (int i = 1; i < (int) exponent; i++) {
                product *= base;
            }
            return product;
        }
        return StrictMath.pow(base, exponent);
    }

    @Override
    public String toString() {
        return text;
    }

    /** Recursive descent over the text. */
    private static final class Parser {
        private final String text;
        private int at;

        Parser(String text) {
            this.text = text;
        }

        private Node sum() {
            Node left = product();
            while (peek() == '+' || peek() == '-') {
                char operator = text.charAt(at++);
                left = new Binary(operator, left, product());
            }
            return left;
        }

        private Node product() {
            Node left = signed();
            while (peek() == '*' || peek() == '/') {
                char operator = text.charAt(at++);
                left = new Binary(operator, left, signed());
            }
            return left;
        }

        private Node signed() {
            if (peek() == '-') {
                at++;
                return new Negative(signed());
            }
            Node base = atom();
            if (peek() == '^') {
                at++;
                return new Binary('^', base, signed());
            }
            return base;
        }

        private Node atom() {
            char c = peek();
            if (c == '(') {
                at++;
                Node inner = sum();
                expect(')');
                return inner;
            }
            int from = at;
            if (Character.isDigit(c) || c == '.') {
                while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
                    at++;
                }
                String digits = text.substring(from, at);
                try {
                    return new Literal(digits, Double.parseDouble(digits));
                } catch (NumberFormatException e) {
                    throw new IllegalArgumentException("'" + text + "': " + digits + " is not a number", e);
                }
            }
            if (!Character.isLetter(c)) {
                throw fault("a number, a symbol or a bracket is expected");
            }
            while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
                at++;
            }
            String name = text.substring(from, at);
            if (peek() != '(') {
                return new Symbol(name);
            }
            at++;
            List<Node> arguments = new ArrayList<>();
            arguments.add(sum());
            while (peek() == ',') {
                at++;
                arguments.add(sum());
            }
            expect(')');
            int wanted = ONE.contains(name) ? 1 : TWO.contains(name) ? 2 : 0;
            if (wanted != arguments.size()) {
                throw new IllegalArgumentException(
                        "'" + text + "': no function " + name + " of " + arguments.size() + " arguments");
            }
            return new Call(name, arguments);
        }

        private char peek() {
            while (at < text.length() && text.charAt(at) == ' ') {
                at++;
            }
            return at < text.length() ? text.charAt(at) : '\0';
        }

        private void expect(char wanted) {
            if (peek() != wanted) {
                throw fault("'" + wanted + "' is expected");
            }
            at++;
        }

        private void end() {
            if (peek() != '\0') {
                throw fault("the end is expected");
            }
        }

        private IllegalArgumentException fault(String what) {
            return new IllegalArgumentException("'" + text + "' at " + (at + 1) + ": " + what);
        }
    }
}
