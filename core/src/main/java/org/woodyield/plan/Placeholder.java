package org.woodyield.plan;

/** Removed with the first real class of the package. */
final class Placeholder {
    private Placeholder() {}
}
