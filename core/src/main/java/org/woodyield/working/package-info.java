/** How a figure came about: formulas that are evaluated from the text that is printed. */
@NullMarked
package org.woodyield.working;

import org.jspecify.annotations.NullMarked;
