package org.woodyield.checks;

/** What the check tables call in {@code org.woodyield.sawing}. */
final class SawingChecks {

    private SawingChecks() {}

    static void list(Catalogue.Builder catalogue) {}
}
