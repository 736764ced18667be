package org.woodyield.checks;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.log.GirthVolume;
import org.woodyield.log.MeasuredTree;
import org.woodyield.log.SolidVolume;
import org.woodyield.log.StemVolumeEquation;
import org.woodyield.measure.Volume;

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
                .text(
                        "log.solid-volume-formula",
                        given -> asPrinted(
                                SolidVolume.byId(given.text("formula")).formula()))
                .number("log.hoppus-foot", given -> switch (given.text("unit")) {
                    case "ft^3" -> hoppusFoot().cubicFeet();
                    case "m^3" -> hoppusFoot().cubicMetres();
                    case "50 m^3" -> hoppusFoot().times(50).cubicMetres();
                    default -> throw new IllegalArgumentException("no such unit");
                })
                .number(
                        "log.girth-volume",
                        given -> GirthVolume.valueOf(given.text("rule"))
                                .volume(given.number("girth"), given.number("length")));
    }

    /** The circle of a log that holds one cubic foot by quarter girth. */
    private static Volume hoppusFoot() {
        double girth = 4;
        double length = 1 / GirthVolume.QUARTER.volume(girth, 1);
        return Volume.ofCubicFeet(GirthVolume.CIRCLE.volume(girth, length));
    }

    /** In the handbook's letters; a taper over L in one unit becomes one in inches over L in feet. */
    private static String asPrinted(String formula) {
        Matcher taper = Pattern.compile("L / (\\d{3})").matcher(formula);
        String feet = taper.replaceFirst(found -> 12.0 / Integer.parseInt(found.group(1)) + " * L");
        return feet.replace("pi / 4", "f")
                .replaceAll("\\ba\\b", "ds")
                .replaceAll("\\bm\\b", "dm")
                .replaceAll("\\bc\\b", "dl")
                .replace(" ", "");
    }
}
