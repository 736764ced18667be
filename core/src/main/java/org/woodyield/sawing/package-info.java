/** One log, one saw: the best pattern and its proof, the cut schedule, and a verifier that shares no code with the search. */
@NullMarked
package org.woodyield.sawing;

import org.jspecify.annotations.NullMarked;
