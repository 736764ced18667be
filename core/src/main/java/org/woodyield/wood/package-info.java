/** Species, moisture, shrinkage, equilibrium moisture, drying, density and weight. */
@NullMarked
package org.woodyield.wood;

import org.jspecify.annotations.NullMarked;
