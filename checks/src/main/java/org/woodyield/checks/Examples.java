package org.woodyield.checks;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Sources;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.working.Working;

/**
 * One worked example of each marked calculation, for the book. The figures given are chosen for following by hand; they are
 * no checks. Each package of core has a class of its own here that lists them.
 */
final class Examples {

    /** What is tried in place of a given number to learn what is refused. */
    private static final double[] PROBES = {Double.NaN, -1e6, 1e6};

    /**
     * An example.
     *
     * @param call the calculation's working for given numbers
     * @param given the numbers of the example
     */
    record Example(Function<double[], Working> call, List<Double> given) {

        /** Keeps an immutable copy. */
        Example {
            given = List.copyOf(given);
        }

        Working working() {
            return call.apply(numbers()).givenBy(Sources.get("example"));
        }

        private double[] numbers() {
            return given.stream().mapToDouble(Double::doubleValue).toArray();
        }

        /**
         * What the calculation says of its limits when each number in turn is not one, far too low and far too high; what
         * is only the end of all lengths, or depends on the number that was tried, is left out.
         */
        Set<Limit> limits() {
            Set<Limit> limits = new LinkedHashSet<>();
            for (int i = 0; i < given.size(); i++) {
                for (double probe : PROBES) {
                    double[] instead = numbers();
                    instead[i] = probe;
                    try {
                        Working unused = call.apply(instead);
                    } catch (OutOfDomainException refusal) {
                        if (!refusal.limits().contains("9000 km")
                                && !refusal.limits().contains("1000000")) {
                            limits.add(new Limit(refusal.parameter(), refusal.limits(), refusal.remedy()));
                        }
                    }
                }
            }
            return limits;
        }
    }

    /**
     * What a calculation takes.
     *
     * @param parameter what is limited
     * @param limits in words
     * @param remedy what it advises outside them
     */
    record Limit(String parameter, String limits, String remedy) {}

    private final Map<String, Example> entries;

    private Examples(Map<String, Example> entries) {
        this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    static Examples all() {
        Builder builder = new Builder();
        WoodExamples.list(builder);
        LogExamples.list(builder);
        ScalingExamples.list(builder);
        LumberExamples.list(builder);
        PlanExamples.list(builder);
        WorkExamples.list(builder);
        return new Examples(builder.entries);
    }

    Optional<Example> find(String calculation) {
        return Optional.ofNullable(entries.get(calculation));
    }

    Set<String> calculations() {
        return entries.keySet();
    }

    static Length inches(double inches) {
        return Length.ofInches(inches, Rounding.HALF_UP);
    }

    static Length feet(double feet) {
        return Length.ofFeet(feet, Rounding.HALF_UP);
    }

    static Species pine() {
        return SpeciesCatalogue.published().find("eastern white pine");
    }

    /** Takes the examples one by one. */
    static final class Builder {
        private final Map<String, Example> entries = new LinkedHashMap<>();

        Builder example(String calculation, Function<double[], Working> call, double... given) {
            if (entries.putIfAbsent(
                            calculation,
                            new Example(call, DoubleStream.of(given).boxed().toList()))
                    != null) {
                throw new IllegalStateException("there are two examples of " + calculation);
            }
            return this;
        }
    }
}
