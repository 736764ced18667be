package org.woodyield.checks;

/** What the check tables call in {@code org.woodyield.log}. */
final class LogChecks {

    private LogChecks() {}

    static void list(Catalogue.Builder catalogue) {}
}
