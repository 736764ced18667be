/** Lengths that are exact, volumes, board feet by kind, money, named roundings and values with a spread. */
@NullMarked
package org.woodyield.measure;

import org.jspecify.annotations.NullMarked;
