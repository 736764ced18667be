/** One log, one saw: patterns, the best pattern and its proof, the verifier, the cut schedule and the first cut. */
@NullMarked
package org.woodyield.sawing;

import org.jspecify.annotations.NullMarked;
