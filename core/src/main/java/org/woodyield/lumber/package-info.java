/** Sizes of lumber, board measure, what is wanted, and the size to saw green. */
@NullMarked
package org.woodyield.lumber;

import org.jspecify.annotations.NullMarked;
