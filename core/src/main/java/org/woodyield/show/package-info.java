/** Workings, patterns and plans as text, HTML and SVG; strings only, no files. */
@NullMarked
package org.woodyield.show;

import org.jspecify.annotations.NullMarked;
