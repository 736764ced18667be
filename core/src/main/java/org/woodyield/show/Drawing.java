package org.woodyield.show;

/**
 * An SVG drawing in the making: a named image with its own description, ink in the colour of the text around it, paper
 * in the colour of the page.
 */
final class Drawing {

    static final String PAPER = "fill:var(--paper,#fff)";
    static final double TEXT_HEIGHT = 12;
    private static final double CHARACTER = 0.6 * TEXT_HEIGHT;

    private final Markup out = new Markup();

    /** Begins a drawing; the key makes its ids unique on a page. */
    Drawing(String key, double width, double height, String title, String description) {
        out.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + number(width) + " " + number(height),
                "width",
                number(width),
                "height",
                number(height),
                "role",
                "img",
                "aria-labelledby",
                key + "-title " + key + "-desc",
                "color",
                "var(--ink,#000)",
                "font-family",
                "sans-serif",
                "font-size",
                number(TEXT_HEIGHT));
        out.line();
        out.element("title", title, "id", key + "-title").line();
        out.element("desc", description, "id", key + "-desc").line();
    }

    static String number(double value) {
        return NumberText.significant(Math.rint(value * 100) / 100, 7);
    }

    static double width(String text) {
        return CHARACTER * text.length();
    }

    Markup out() {
        return out;
    }

    Drawing path(String d, String... attributes) {
        shape("path", new String[] {"d", d}, attributes);
        return this;
    }

    Drawing rectangle(double x, double y, double width, double height, String... attributes) {
        String[] place = {"x", number(x), "y", number(y), "width", number(width), "height", number(height)};
        shape("rect", place, attributes);
        return this;
    }

    Drawing dot(double x, double y, double radius) {
        String[] place = {"cx", number(x), "cy", number(y), "r", number(radius)};
        shape("circle", place, "fill", "currentColor", "style", "stroke:var(--paper,#fff)", "stroke-width", "0.8");
        return this;
    }

    /** A thin line with a border of paper, so that it stays visible across hatching. */
    Drawing leader(String d) {
        path(d, "fill", "none", "style", "stroke:var(--paper,#fff)", "stroke-width", "2.6");
        return path(d, "fill", "none", "stroke", "currentColor", "stroke-width", "0.7");
    }

    /** Text whose middle height lies at y; anchor is start, middle or end. */
    Drawing text(double x, double y, String anchor, String text, String... attributes) {
        double baseline = y + 0.36 * TEXT_HEIGHT;
        String[] place = {"x", number(x), "y", number(baseline), "text-anchor", anchor, "fill", "currentColor"};
        out.open("text", joined(place, attributes)).text(text).close().line();
        return this;
    }

    private void shape(String element, String[] place, String... attributes) {
        out.empty(element, joined(place, attributes)).line();
    }

    private static String[] joined(String[] a, String[] b) {
        String[] all = new String[a.length + b.length];
        System.arraycopy(a, 0, all, 0, a.length);
        System.arraycopy(b, 0, all, a.length, b.length);
        return all;
    }

    /** Closes the drawing. */
    String finish() {
        out.closeLine();
        return out.toString();
    }
}
