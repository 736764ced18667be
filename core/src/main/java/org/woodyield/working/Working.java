package org.woodyield.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * How a figure came about: what was given, and each step to the result. A reader can follow it by hand.
 *
 * <p>A step computes its value from the formula that it prints, so the two cannot part. The fast kernels of the library
 * carry no recorder and agree with their working bit for bit.
 */
public final class Working {

    /** A line of a working that gives a symbol its value. */
    public sealed interface Line {
        /**
         * The symbol that the line gives a value to.
         *
         * @return letters, digits and underscores
         */
        String symbol();

        /**
         * What the symbol stands for.
         *
         * @return a short phrase
         */
        String name();

        /**
         * The value, not rounded for show.
         *
         * @return the value
         */
        double value();

        /**
         * The unit.
         *
         * @return the unit as written, possibly empty
         */
        String unit();

        /**
         * What the line rests on: for a given value or a table cell its origin, for a formula or a rounding the
         * publication that states it.
         *
         * @return the source
         */
        Source source();
    }

    /**
     * A value that was given, or a constant.
     *
     * @param symbol the symbol
     * @param name what it stands for
     * @param value the value
     * @param unit the unit
     * @param source its origin
     */
    public record Given(String symbol, String name, double value, String unit, Source source) implements Line {}

    /**
     * A value read from a table.
     *
     * @param symbol the symbol
     * @param name what it stands for
     * @param cell the row and column in words
     * @param value the value
     * @param unit the unit
     * @param source the table
     */
    public record Lookup(String symbol, String name, String cell, double value, String unit, Source source)
            implements Line {}

    /**
     * A value computed from a formula.
     *
     * @param symbol the symbol
     * @param name what it stands for
     * @param formula the formula, from which the value was computed
     * @param inputs the value of each symbol of the formula
     * @param value the value
     * @param unit the unit
     * @param source what states the formula
     */
    public record Step(
            String symbol,
            String name,
            Formula formula,
            Map<String, Double> inputs,
            double value,
            String unit,
            Source source)
            implements Line {
        /** Keeps an immutable copy in the formula's order. */
        public Step {
            inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        }
    }

    /**
     * A rounding by name.
     *
     * @param symbol the symbol
     * @param name what it stands for
     * @param from the symbol that is rounded
     * @param before its value
     * @param rounding the rounding
     * @param step to multiples of this
     * @param value the rounded value
     * @param unit the unit
     * @param source what states the rounding
     */
    public record Rounded(
            String symbol,
            String name,
            String from,
            double before,
            Rounding rounding,
            double step,
            double value,
            String unit,
            Source source)
            implements Line {}

    private static final String GIVEN = "given";

    private final String title;
    private final List<Line> lines;
    private final List<String> notes;

    private Working(String title, List<Line> lines, List<String> notes) {
        this.title = title;
        this.lines = List.copyOf(lines);
        this.notes = List.copyOf(notes);
    }

    /**
     * Begins a working.
     *
     * @param title what is computed
     * @return an empty builder
     */
    public static Builder of(String title) {
        return new Builder(title);
    }

    /**
     * What is computed.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * Given values, look-ups, steps and roundings in order; the last is the result.
     *
     * @return an immutable list, never empty
     */
    public List<Line> lines() {
        return lines;
    }

    /**
     * What a reader should know beside the arithmetic, such as the limits of a model.
     *
     * @return an immutable list, possibly empty
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * The result.
     *
     * @return the last line
     */
    public Line result() {
        return lines.get(lines.size() - 1);
    }

    /**
     * This working, with what was given to it said to come from somewhere.
     *
     * @param origin who gave the values, such as a job folder or a command line
     * @return a copy in which this origin stands in place of the one that {@link Builder#given} knows
     */
    public Working givenBy(Source origin) {
        return givenBy(origin, symbol -> true);
    }

    /**
     * This working, with one of the values that were given to it said to come from somewhere.
     *
     * @param symbol the symbol of the value
     * @param origin who gave it
     * @return a copy; the same lines where the symbol is not a given one
     */
    public Working givenBy(String symbol, Source origin) {
        return givenBy(origin, symbol::equals);
    }

    private Working givenBy(Source origin, Predicate<String> which) {
        Source unknown = Sources.get(GIVEN);
        List<Line> told = new ArrayList<>();
        for (Line line : lines) {
            told.add(
                    line instanceof Given given && given.source().equals(unknown) && which.test(given.symbol())
                            ? new Given(given.symbol(), given.name(), given.value(), given.unit(), origin)
                            : line);
        }
        return new Working(title, told, notes);
    }

    /**
     * The value of the result.
     *
     * @return the last line's value
     */
    public double value() {
        return result().value();
    }

    /**
     * The value of a symbol.
     *
     * @param symbol the symbol
     * @return the latest value given to it
     * @throws IllegalArgumentException if no line gives it one
     */
    public double value(String symbol) {
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (lines.get(i).symbol().equals(symbol)) {
                return lines.get(i).value();
            }
        }
        throw new IllegalArgumentException("the working '" + title + "' has no symbol " + symbol);
    }

    /** Puts a working together, line by line. */
    public static final class Builder {
        private final String title;
        private final List<Line> lines = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private final Map<String, Double> values = new LinkedHashMap<>();

        private Builder(String title) {
            this.title = title;
        }

        /**
         * A value given by the caller; {@link Working#givenBy} says who that was.
         *
         * @param symbol its symbol
         * @param name what it stands for
         * @param value the value
         * @param unit the unit
         * @return this
         */
        public Builder given(String symbol, String name, double value, String unit) {
            return constant(symbol, name, value, unit, Sources.get(GIVEN));
        }

        /**
         * A constant, or a given value with an origin of its own.
         *
         * @param symbol its symbol
         * @param name what it stands for
         * @param value the value
         * @param unit the unit
         * @param source its origin
         * @return this
         */
        public Builder constant(String symbol, String name, double value, String unit, Source source) {
            return add(new Given(symbol, name, value, unit, source));
        }

        /**
         * A value read from a table.
         *
         * @param symbol its symbol
         * @param name what it stands for
         * @param cell the row and column in words
         * @param value the value
         * @param unit the unit
         * @param source the table
         * @return this
         */
        public Builder lookup(String symbol, String name, String cell, double value, String unit, Source source) {
            return add(new Lookup(symbol, name, cell, value, unit, source));
        }

        /**
         * Computes a formula with the values so far.
         *
         * @param symbol the symbol of the result
         * @param name what it stands for
         * @param formula its text; see {@link Formula}
         * @param unit the unit
         * @param source what states the formula
         * @return this
         * @throws IllegalArgumentException if the text is not a formula or a symbol has no value yet
         */
        public Builder step(String symbol, String name, String formula, String unit, Source source) {
            Formula parsed = Formula.parse(formula);
            double value = parsed.evaluate(values);
            Map<String, Double> inputs = new LinkedHashMap<>();
            for (String used : parsed.symbols()) {
                inputs.put(used, values.get(used));
            }
            return add(new Step(symbol, name, parsed, inputs, value, unit, source));
        }

        /**
         * Rounds the value of a symbol.
         *
         * @param symbol the symbol of the rounded value
         * @param name what it stands for
         * @param from the symbol that is rounded
         * @param rounding the rounding
         * @param step to multiples of this
         * @param unit the unit
         * @param source what states the rounding
         * @return this
         * @throws IllegalArgumentException if the symbol has no value yet
         */
        public Builder round(
                String symbol, String name, String from, Rounding rounding, double step, String unit, Source source) {
            double before = value(from);
            double after = rounding.toStep(before, step);
            return add(new Rounded(symbol, name, from, before, rounding, step, after, unit, source));
        }

        /**
         * Takes over another working, line by line, so that later steps can use its symbols; a symbol that both have
         * keeps the later value.
         *
         * @param other the working
         * @return this
         */
        public Builder include(Working other) {
            other.lines.forEach(this::add);
            other.notes.stream().filter(note -> !notes.contains(note)).forEach(notes::add);
            return this;
        }

        /**
         * A remark.
         *
         * @param note a sentence
         * @return this
         */
        public Builder note(String note) {
            notes.add(note);
            return this;
        }

        /**
         * The value of a symbol so far.
         *
         * @param symbol the symbol
         * @return its latest value
         * @throws IllegalArgumentException if it has none
         */
        public double value(String symbol) {
            Double value = values.get(symbol);
            if (value == null) {
                throw new IllegalArgumentException("the symbol " + symbol + " has no value yet");
            }
            return value;
        }

        private Builder add(Line line) {
            lines.add(line);
            values.put(line.symbol(), line.value());
            return this;
        }

        /**
         * The working.
         *
         * @return the lines so far
         * @throws IllegalStateException if there are none
         */
        public Working build() {
            if (lines.isEmpty()) {
                throw new IllegalStateException("the working '" + title + "' has no lines");
            }
            return new Working(title, lines, notes);
        }
    }
}
