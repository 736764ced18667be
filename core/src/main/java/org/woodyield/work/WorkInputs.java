package org.woodyield.work;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Working;

/**
 * The inputs of one job: the user's figures over the defaults of a kind of saw. Every value carries its source, so that a
 * default never passes for knowledge; what nobody gave is absent, and what rests on it is left out by name.
 */
public final class WorkInputs {

    private static final WorkInputs CHAIN = read("inputs-chain.csv");
    private static final WorkInputs BAND = read("inputs-band.csv");

    private final Map<WorkInput, InputValue> values;

    private WorkInputs(EnumMap<WorkInput, InputValue> values) {
        this.values = Collections.unmodifiableMap(values);
    }

    /**
     * Defaults of a chain saw with a two-stroke engine on a slabbing guide. Rated power and all prices are absent.
     *
     * @return the defaults, each with its source and range
     */
    public static WorkInputs chainDefaults() {
        return CHAIN;
    }

    /**
     * Defaults of a narrow-band mill with a four-stroke engine. Rated power and all prices are absent.
     *
     * @return the defaults, each with its source and range
     */
    public static WorkInputs bandDefaults() {
        return BAND;
    }

    private static WorkInputs read(String resource) {
        PublishedTable table = PublishedTable.read(WorkInputs.class, resource);
        EnumMap<WorkInput, InputValue> read = new EnumMap<>(WorkInput.class);
        for (PublishedTable.Row row : table.rows()) {
            String key = row.text("key");
            WorkInput input = WorkInput.ofKey(key)
                    .orElseThrow(() ->
                            new IllegalStateException(resource + " line " + row.line() + ": no input '" + key + "'"));
            Source source = Sources.get(row.text("source"));
            double value = input.require(row.number("value"));
            Optional<Double> least = row.numberIfPrinted("least");
            Optional<Double> greatest = row.numberIfPrinted("greatest");
            if (least.isPresent() != greatest.isPresent()) {
                throw new IllegalStateException(resource + " line " + row.line() + ": one end of a range");
            }
            InputValue given = least.isEmpty()
                    ? InputValue.of(value, source)
                    : InputValue.within(value, least.get(), greatest.orElseThrow(), source);
            if (read.put(input, given) != null) {
                throw new IllegalStateException(resource + " line " + row.line() + ": second '" + key + "'");
            }
        }
        return new WorkInputs(read);
    }

    /**
     * These inputs with one value changed.
     *
     * @param input which
     * @param value its value, spread and source
     * @return a copy
     * @throws OutOfDomainException if the value is outside the input's limits, or a range is given for what is counted
     */
    public WorkInputs with(WorkInput input, InputValue value) {
        input.require(value.value());
        if (input.isCount() && value.hasSpread()) {
            throw new OutOfDomainException(
                    input.label(),
                    value.spread().toString(),
                    input.unit(),
                    "a whole number without a range, " + input.domain().limits(),
                    "count them, and plan the job again for another count");
        }
        EnumMap<WorkInput, InputValue> copy = new EnumMap<>(WorkInput.class);
        copy.putAll(values);
        copy.put(input, value);
        return new WorkInputs(copy);
    }

    /**
     * These inputs with a figure of the user's own, taken as fixed.
     *
     * @param input which
     * @param value its value in the input's unit
     * @return a copy
     * @throws OutOfDomainException if the value is outside the input's limits
     */
    public WorkInputs with(WorkInput input, double value) {
        return with(input, InputValue.of(value, Sources.get("given")));
    }

    WorkInputs withAll(Map<WorkInput, InputValue> changed) {
        EnumMap<WorkInput, InputValue> copy = new EnumMap<>(WorkInput.class);
        copy.putAll(values);
        changed.forEach((input, value) -> {
            input.require(value.value());
            copy.put(input, value);
        });
        return new WorkInputs(copy);
    }

    /**
     * These inputs with one value taken away.
     *
     * @param input which
     * @return a copy without it
     */
    public WorkInputs without(WorkInput input) {
        EnumMap<WorkInput, InputValue> copy = new EnumMap<>(WorkInput.class);
        copy.putAll(values);
        copy.remove(input);
        return new WorkInputs(copy);
    }

    /**
     * The value of an input, if there is one.
     *
     * @param input which
     * @return the value with its source
     */
    public Optional<InputValue> find(WorkInput input) {
        return Optional.ofNullable(values.get(input));
    }

    /**
     * Whether all of some inputs have a value.
     *
     * @param inputs which
     * @return true if none is absent
     */
    public boolean has(Set<WorkInput> inputs) {
        return values.keySet().containsAll(inputs);
    }

    /**
     * The number of an input that must be there.
     *
     * @param input which
     * @return its value in the input's unit
     * @throws OutOfDomainException if nobody gave one
     */
    public double get(WorkInput input) {
        return required(input).value();
    }

    InputValue required(WorkInput input) {
        return find(input)
                .orElseThrow(() -> new OutOfDomainException(
                        input.label(), "missing", "", input.domain().limits(), "give " + input.key()));
    }

    /** Writes an input as a line of a working, with its source. */
    void show(Working.Builder working, String symbol, WorkInput input) {
        InputValue value = required(input);
        working.constant(symbol, input.label(), value.value(), input.unit(), value.source());
    }

    /**
     * All inputs that have a value, in the order of {@link WorkInput}.
     *
     * @return an unmodifiable map
     */
    public Map<WorkInput, InputValue> values() {
        return values;
    }
}
