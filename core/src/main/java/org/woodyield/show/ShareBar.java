package org.woodyield.show;

import java.util.List;

/** A whole drawn as one bar of hatched parts, with a line of words for each part below it. */
final class ShareBar {

    /** A part of the whole and what is said of it. */
    record Part(String name, double value, String words) {}

    private static final double LEFT = 10;
    private static final double WIDE = 620;
    private static final double HIGH = 34;
    private static final double STEP = 19;

    private ShareBar() {}

    static String svg(String key, String title, List<Part> parts) {
        double sum = 0;
        for (Part part : parts) {
            sum += part.value();
        }
        StringBuilder words = new StringBuilder();
        for (Part part : parts) {
            words.append(words.isEmpty() ? "" : "; ")
                    .append(part.name())
                    .append(' ')
                    .append(part.words());
        }
        Drawing drawing = new Drawing(
                key,
                WIDE + 2 * LEFT,
                HIGH + 30 + STEP * parts.size(),
                title,
                words.append('.').toString());
        Markup defs = drawing.out().open("defs");
        for (int i = 0; i < parts.size(); i++) {
            Hatching.define(defs, key + "-part" + i, i);
        }
        defs.closeLine();
        double x = LEFT;
        for (int i = 0; i < parts.size(); i++) {
            double width = sum > 0 ? parts.get(i).value() / sum * WIDE : 0;
            if (width > 0) {
                swatch(drawing, x, 8, width, HIGH, key + "-part" + i);
            }
            x += width;
        }
        double y = HIGH + 28;
        for (int i = 0; i < parts.size(); i++) {
            swatch(drawing, LEFT, y - 6, 26, 12, key + "-part" + i);
            Part part = parts.get(i);
            drawing.text(LEFT + 34, y, "start", part.name());
            drawing.text(LEFT + 250, y, "start", part.words());
            y += STEP;
        }
        return drawing.finish();
    }

    static void swatch(Drawing drawing, double x, double y, double width, double height, String pattern) {
        drawing.rectangle(x, y, width, height, "style", Drawing.PAPER);
        String fill = "url(#" + pattern + ")";
        drawing.rectangle(x, y, width, height, "fill", fill, "stroke", "currentColor", "stroke-width", "0.8");
    }
}
