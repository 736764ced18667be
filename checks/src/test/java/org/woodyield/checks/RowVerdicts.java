package org.woodyield.checks;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Which checks are red. It is made anew by each {@link OverlayLoader} and speaks in types of the JDK alone, which both sides
 * know.
 */
public final class RowVerdicts implements UnaryOperator<Map<String, String>> {

    /** For the loader that makes it by its name. */
    public RowVerdicts() {}

    /**
     * Runs check rows.
     *
     * @param tables the text of each check table by its id
     * @return by the id of what is red the name of its {@link Holder}
     */
    @Override
    public Map<String, String> apply(Map<String, String> tables) {
        Map<String, String> red = new LinkedHashMap<>();
        Catalogue catalogue = Catalogue.all();
        tables.forEach((id, text) -> {
            CheckTable table = CheckTable.parse(id, text);
            for (CheckTable.Row row : table.rows()) {
                Result result = Run.result(catalogue, table, row, new LinkedHashSet<>());
                if (result.fails()) {
                    red.put(row.id(), Holder.of(result).name());
                }
            }
        });
        return red;
    }
}
