package org.woodyield.wood;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.woodyield.source.PublishedTable;

/** How rows of a table by species are found through the join in {@code species.csv}. */
final class SpeciesTables {

    private SpeciesTables() {}

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
