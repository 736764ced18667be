package org.woodyield.show;

/**
 * Patterns of lines and dots that tell areas apart without colour. After the last the first comes again, drawn coarser.
 */
final class Hatching {

    /** In an order in which neighbours look unlike each other. */
    private static final int KINDS = 10;

    private Hatching() {}

    /** Defines a pattern inside {@code defs}. */
    static void define(Markup out, String id, int index) {
        int kind = index % KINDS;
        int round = index / KINDS;
        double coarse = 1 + 0.7 * round;
        double size = switch (kind) {
            case 0, 2 -> 6;
            case 1 -> 5;
            case 3 -> 5;
            case 4 -> 8;
            case 8 -> 3;
            default -> 9;
        };
        int turn = switch (kind) {
            case 0, 8 -> 45;
            case 2 -> -45;
            case 4 -> 45;
            default -> 0;
        };
        String transform = (turn == 0 ? "" : "rotate(" + turn + ")")
                + (coarse == 1 ? "" : " scale(" + NumberText.significant(coarse, 3) + ")");
        String side = NumberText.significant(size, 3);
        out.open(
                "pattern",
                "id",
                id,
                "width",
                side,
                "height",
                side,
                "patternUnits",
                "userSpaceOnUse",
                "patternTransform",
                transform.strip());
        switch (kind) {
            case 0, 2, 3, 8 -> line(out, "M0 0V" + side);
            case 1 -> out.empty("circle", "cx", "2.5", "cy", "2.5", "r", "0.9", "fill", "currentColor");
            case 4 -> line(out, "M0 0V8M0 0H8");
            case 5 ->
                out.empty("circle", "cx", "4.5", "cy", "4.5", "r", "2.4", "fill", "none", "stroke", "currentColor");
            case 6 -> line(out, "M0 2.2H5M4.5 6.7H9.5M-0.5 6.7H0.5");
            case 7 -> line(out, "M4.5 1.8V7.2M1.8 4.5H7.2");
            default -> line(out, "M0 3L4.5 7.5L9 3");
        }
        out.closeLine();
    }

    private static void line(Markup out, String path) {
        out.empty("path", "d", path, "fill", "none", "stroke", "currentColor", "stroke-width", "0.8");
    }
}
