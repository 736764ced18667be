package org.woodyield.checks;

import java.util.Locale;

/** How a row came out. */
enum Verdict {
    /** Computed and published agree within the allowance. */
    AGREES,
    /** A known disagreement stands as it was written down. */
    KNOWN,
    /** Anything else. */
    FAILS;

    String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
