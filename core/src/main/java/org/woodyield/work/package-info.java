/** Time, fuel, wear and money of a sawing plan. */
@NullMarked
package org.woodyield.work;

import org.jspecify.annotations.NullMarked;
