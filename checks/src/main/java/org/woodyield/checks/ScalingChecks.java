package org.woodyield.checks;

/** What the check tables call in {@code org.woodyield.scaling}. */
final class ScalingChecks {

    private ScalingChecks() {}

    static void list(Catalogue.Builder catalogue) {}
}
