package org.woodyield.checks;

import org.woodyield.measure.Length;
import org.woodyield.measure.Volume;

/** What the check tables call in {@code org.woodyield.measure}. */
final class MeasureChecks {

    private MeasureChecks() {}

    static void list(Catalogue.Builder catalogue) {
        catalogue
                .number(
                        "measure.length",
                        given ->
                                length(Length.parse(given.text("amount") + " " + given.text("from")), given.text("to")))
                .number(
                        "measure.volume",
                        given -> volume(volume(given.number("amount"), given.text("from")), given.text("to")))
                .number(
                        "measure.piece-volume",
                        given -> 12
                                * Volume.ofPiece(
                                                given.length("thickness"),
                                                given.length("width"),
                                                given.length("length"))
                                        .cubicFeet());
    }

    private static double length(Length length, String unit) {
        return switch (unit) {
            case "mm" -> length.toMillimetres();
            case "m" -> length.toMetres();
            case "in" -> length.toInches();
            case "ft" -> length.toFeet();
            default -> throw new IllegalArgumentException("no length in " + unit);
        };
    }

    private static Volume volume(double amount, String unit) {
        return switch (unit) {
            case "m^3" -> new Volume(amount);
            case "ft^3" -> Volume.ofCubicFeet(amount);
            case "in^3" -> Volume.ofCubicInches(amount);
            default -> throw new IllegalArgumentException("no volume from " + unit);
        };
    }

    private static double volume(Volume volume, String unit) {
        return switch (unit) {
            case "m^3" -> volume.cubicMetres();
            case "ft^3" -> volume.cubicFeet();
            default -> throw new IllegalArgumentException("no volume in " + unit);
        };
    }
}
