package org.woodyield.wood;

/** Which of the two dimensions across the grain of a piece is meant. */
public enum Face {
    /** Along the wide face. */
    WIDTH,
    /** Across the wide face. */
    THICKNESS
}
