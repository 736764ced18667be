package org.woodyield.checks;

/** What the check tables call in {@code org.woodyield.work}. */
final class WorkChecks {

    private WorkChecks() {}

    static void list(Catalogue.Builder catalogue) {}
}
