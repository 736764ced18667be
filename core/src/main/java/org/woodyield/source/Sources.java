package org.woodyield.source;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The register of sources, read once from {@code sources.csv} beside this class. */
public final class Sources {

    private static final Map<String, Source> REGISTER = read();

    private Sources() {}

    /**
     * A source by its key.
     *
     * @param id the key
     * @return the source
     * @throws IllegalArgumentException if the register has no such key
     */
    public static Source get(String id) {
        Source source = REGISTER.get(id);
        if (source == null) {
            throw new IllegalArgumentException("no source '" + id + "' in the register");
        }
        return source;
    }

    /**
     * All sources in the register's order.
     *
     * @return an unmodifiable view
     */
    public static Collection<Source> all() {
        return REGISTER.values();
    }

    private static Map<String, Source> read() {
        Map<String, Source> register = new LinkedHashMap<>();
        CsvText csv = CsvText.read(Sources.class, "sources.csv");
        csv.requireHeader("id", "standing", "author", "title", "edition", "place");
        for (CsvText.Row row : csv.rows()) {
            Source source;
            try {
                source = new Source(
                        row.cell(0), Standing.valueOf(row.cell(1)), row.cell(2), row.cell(3), row.cell(4), row.cell(5));
            } catch (IllegalArgumentException e) {
                throw new IllegalStateException("sources.csv line " + row.line() + ": " + e.getMessage(), e);
            }
            if (register.putIfAbsent(source.id(), source) != null) {
                throw new IllegalStateException("sources.csv line " + row.line() + ": second source " + source.id());
            }
        }
        return Collections.unmodifiableMap(register);
    }
}
