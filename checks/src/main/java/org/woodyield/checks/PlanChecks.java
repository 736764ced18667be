package org.woodyield.checks;

/** What the check tables call in {@code org.woodyield.plan}. */
final class PlanChecks {

    private PlanChecks() {}

    static void list(Catalogue.Builder catalogue) {}
}
