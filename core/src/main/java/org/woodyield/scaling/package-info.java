/** Board-foot log rules, and what a scale says beside what was sawn. */
@NullMarked
package org.woodyield.scaling;

import org.jspecify.annotations.NullMarked;
