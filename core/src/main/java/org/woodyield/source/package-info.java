/** What a number rests on: its source, that source's standing, and strictly loaded published tables. */
@NullMarked
package org.woodyield.source;

import org.jspecify.annotations.NullMarked;
