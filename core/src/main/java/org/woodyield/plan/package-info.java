/** Many logs against one list of what is wanted. */
@NullMarked
package org.woodyield.plan;

import org.jspecify.annotations.NullMarked;
