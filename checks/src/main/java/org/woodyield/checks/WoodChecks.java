package org.woodyield.checks;

/** What the check tables call in {@code org.woodyield.wood}. */
final class WoodChecks {

    private WoodChecks() {}

    static void list(Catalogue.Builder catalogue) {}
}
