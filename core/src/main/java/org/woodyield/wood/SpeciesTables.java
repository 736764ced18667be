package org.woodyield.wood;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;

/** How rows of a table by species are found through the join in {@code species.csv}. */
final class SpeciesTables {

    private SpeciesTables() {}

    /**
     * One or more tables of the same columns, reached through one column of the join. A row with a cell for what it rests
     * on names it there; otherwise that is what its table rests on.
     */
    record Joined(String joinColumn, Map<String, PublishedTable.Row> rows, Map<String, Source> sources) {

        static Joined of(String joinColumn, String keyColumn, String... files) {
            Map<String, PublishedTable.Row> rows = new LinkedHashMap<>();
            Map<String, Source> sources = new LinkedHashMap<>();
            for (String file : files) {
                PublishedTable table = PublishedTable.read(SpeciesTables.class, file);
                boolean ownSources = table.columns().contains("source");
                keyed(table, keyColumn).forEach((key, row) -> {
                    if (rows.putIfAbsent(key, row) != null) {
                        throw new IllegalStateException(file + " line " + row.line() + ": second " + key);
                    }
                    sources.put(key, ownSources ? Sources.get(row.text("source")) : table.source());
                });
            }
            return new Joined(joinColumn, rows, sources);
        }

        /** A cell of the row that the join leads to; empty where there is no row or nothing is printed. */
        Optional<Sourced> cell(PublishedTable.Row join, String column, String unit) {
            return joined(join, joinColumn, rows)
                    .flatMap(row -> row.numberIfPrinted(column))
                    .map(value -> new Sourced(value, unit, Objects.requireNonNull(sources.get(join.text(joinColumn)))));
        }
    }

    static Map<String, PublishedTable.Row> keyed(PublishedTable table, String column) {
        Map<String, PublishedTable.Row> rows = new LinkedHashMap<>();
        for (PublishedTable.Row row : table.rows()) {
            if (rows.putIfAbsent(row.text(column), row) != null) {
                throw new IllegalStateException(table.name() + " line " + row.line() + ": second " + row.text(column));
            }
        }
        return rows;
    }

    /** Follows the name in a column of the join; a name that its table does not have is a fault of the join. */
    static Optional<PublishedTable.Row> joined(
            PublishedTable.Row join, String column, Map<String, PublishedTable.Row> rows) {
        String key = join.text(column);
        if (key.isEmpty()) {
            return Optional.empty();
        }
        PublishedTable.Row row = rows.get(key);
        if (row == null) {
            throw new IllegalStateException("species.csv line " + join.line() + ": no row '" + key + "' for " + column);
        }
        return Optional.of(row);
    }

    /** The rows of a table by the id of the species that the join leads to them. */
    static Map<String, PublishedTable.Row> byId(PublishedTable table, String joinColumn) {
        Map<String, PublishedTable.Row> keyed = keyed(table, "species");
        Map<String, PublishedTable.Row> byId = new LinkedHashMap<>();
        for (PublishedTable.Row join :
                PublishedTable.read(SpeciesTables.class, "species.csv").rows()) {
            joined(join, joinColumn, keyed).ifPresent(row -> byId.put(join.text("id"), row));
        }
        return byId;
    }
}
