package org.woodyield.checks;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * What the check tables call, by calculation id: small functions over core's public API. Each package of core has a class
 * of its own here that lists them.
 */
final class Catalogue {

    /** A calculation as the check tables call it. */
    sealed interface Entry {}

    /** Its result is a number, compared within the allowance. */
    record NumberEntry(ToDoubleFunction<Given> compute) implements Entry {}

    /** Its result is a text, compared letter by letter. */
    record TextEntry(Function<Given, String> compute) implements Entry {}

    private final Map<String, Entry> entries;

    private Catalogue(Map<String, Entry> entries) {
        this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    /** All that core offers to check. */
    static Catalogue all() {
        Builder builder = new Builder();
        MeasureChecks.list(builder);
        WoodChecks.list(builder);
        LogChecks.list(builder);
        ScalingChecks.list(builder);
        LumberChecks.list(builder);
        SawingChecks.list(builder);
        WorkChecks.list(builder);
        PlanChecks.list(builder);
        return builder.build();
    }

    Optional<Entry> find(String calculation) {
        return Optional.ofNullable(entries.get(calculation));
    }

    Set<String> calculations() {
        return entries.keySet();
    }

    /** Takes the entries one by one. */
    static final class Builder {
        private final Map<String, Entry> entries = new LinkedHashMap<>();

        /** A calculation whose result is a number. */
        Builder number(String calculation, ToDoubleFunction<Given> compute) {
            return add(calculation, new NumberEntry(compute));
        }

        /** A calculation whose result is a text. */
        Builder text(String calculation, Function<Given, String> compute) {
            return add(calculation, new TextEntry(compute));
        }

        private Builder add(String calculation, Entry entry) {
            if (entries.putIfAbsent(calculation, entry) != null) {
                throw new IllegalStateException("the catalogue has " + calculation + " twice");
            }
            return this;
        }

        Catalogue build() {
            return new Catalogue(entries);
        }
    }
}
