/** The log as it lies there: ends, taper, sweep, bark, its solid and solid-volume formulas. */
@NullMarked
package org.woodyield.log;

import org.jspecify.annotations.NullMarked;
