package org.woodyield.checks;

import java.util.Arrays;
import java.util.Locale;

/** What a check row shows. The kinds are counted apart and never added up. */
enum Kind {
    /** A formula or algorithm reproduces a printed result that it was not fitted to. */
    COMPUTED,
    /** A stored cell equals a second copy of the same table. */
    TRANSCRIBED,
    /** A known difference with its reason; it fails when it vanishes. */
    DISAGREEMENT;

    String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Kind of(String label) {
        return Arrays.stream(values())
                .filter(kind -> kind.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "kind is '" + label + "'; allowed: computed, transcribed, disagreement"));
    }
}
