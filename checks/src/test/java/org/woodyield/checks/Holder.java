package org.woodyield.checks;

import java.util.Locale;
import org.woodyield.source.Standing;

/** What notices that a number was changed, the strongest evidence first. */
enum Holder {
    /** A row computed against a publication. */
    COMPUTED,
    /** A computed row whose own value is no publication. */
    COMPUTED_UNPUBLISHED,
    /** A known disagreement that no longer comes out as written down. */
    DISAGREEMENT,
    /** A row that compares a stored cell with a second copy. */
    TRANSCRIBED,
    /** What holds within a printed table. */
    RELATION,
    /** The table no longer loads. */
    REFUSED,
    /** The sum of a column as it was when the table was written; a guard against a slip, and no evidence. */
    CONTROL_TOTAL,
    /** No check notices. */
    NOTHING;

    static Holder of(Result failure) {
        CheckTable.Row row = failure.row();
        if (failure.why().startsWith("java.lang.ExceptionInInitializerError")
                || failure.why().startsWith("java.lang.NoClassDefFoundError")) {
            return REFUSED;
        }
        return switch (row.kind()) {
            case COMPUTED -> row.source().standing() == Standing.PUBLISHED ? COMPUTED : COMPUTED_UNPUBLISHED;
            case TRANSCRIBED -> TRANSCRIBED;
            case DISAGREEMENT -> DISAGREEMENT;
        };
    }

    /** Whether a check is red that compares with something: the last two are none. */
    boolean holds() {
        return this != CONTROL_TOTAL && this != NOTHING;
    }

    String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
