/**
 * Published values beside computed ones: check rows as data, a catalogue of calculations, one runner for both the tests
 * and the report.
 */
@NullMarked
package org.woodyield.checks;

import org.jspecify.annotations.NullMarked;
