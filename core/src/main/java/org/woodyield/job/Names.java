package org.woodyield.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The names that a user gave, each of which may stand once. */
final class Names {

    private final Map<String, Cell> taken = new LinkedHashMap<>();

    Optional<String> read(Cell cell, String allowed) {
        Optional<String> name = cell.words(allowed);
        name.ifPresent(text -> {
            Cell earlier = taken.putIfAbsent(text, cell);
            if (earlier != null) {
                cell.refuse("each name once", "it stands in " + earlier.place() + " already; rename one of the two");
            }
        });
        return name;
    }
}
