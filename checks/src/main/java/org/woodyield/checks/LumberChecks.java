package org.woodyield.checks;

/** What the check tables call in {@code org.woodyield.lumber}. */
final class LumberChecks {

    private LumberChecks() {}

    static void list(Catalogue.Builder catalogue) {}
}
