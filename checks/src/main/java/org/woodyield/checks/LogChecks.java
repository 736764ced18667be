package org.woodyield.checks;

import org.woodyield.log.GirthVolume;
import org.woodyield.log.MeasuredTree;
import org.woodyield.log.SolidVolume;
import org.woodyield.log.StemVolumeEquation;

/** What the check tables call in {@code org.woodyield.log}. */
final class LogChecks {

    private LogChecks() {}

    static void list(Catalogue.Builder catalogue) {
        catalogue
                .number("log.stem-regression", given -> {
                    StemVolumeEquation fit = StemVolumeEquation.fit(MeasuredTree.blackCherry());
                    return switch (given.text("coefficient")) {
                        case "constant" -> fit.constant();
                        case "diameter" -> fit.diameterExponent();
                        case "height" -> fit.heightExponent();
                        default -> throw new IllegalArgumentException("no such coefficient");
                    };
                })
                .number(
                        "log.solid-volume",
                        given -> SolidVolume.byId(given.text("formula"))
                                .volume(
                                        given.number("small"),
                                        given.number("middle"),
                                        given.number("large"),
                                        given.number("length")))
                .number(
                        "log.girth-volume",
                        given -> GirthVolume.valueOf(given.text("rule"))
                                .volume(given.number("girth"), given.number("length")));
    }
}
