package org.woodyield.checks;

import org.woodyield.sawing.CentredCant;
import org.woodyield.sawing.KerfStack;

/** What the check tables call in {@code org.woodyield.sawing}. */
final class SawingChecks {

    private SawingChecks() {}

    static void list(Catalogue.Builder catalogue) {
        catalogue
                .number(
                        "sawing.wood-needed",
                        given -> KerfStack.woodNeededInches(
                                given.whole("boards"), given.number("thickness_in"), given.number("kerf_in")))
                .number("sawing.centred-cant", given -> CentredCant.sideInches(given.number("axis_in")))
                .number("sawing.centred-cant-slab", given -> CentredCant.slabInches(given.number("axis_in")));
    }
}
