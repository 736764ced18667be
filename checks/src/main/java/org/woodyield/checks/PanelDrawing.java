package org.woodyield.checks;

import java.util.List;
import java.util.Map;
import org.woodyield.show.NumberText;

/**
 * Draws a plot of many series as SVG, one panel for each, told apart by place and name alone. Every panel has the same scale
 * and a broken line at the plot's level of comparison; ink has the colour of the text around it.
 */
final class PanelDrawing {

    private static final int ACROSS = 3;
    private static final double WIDTH = 760;
    private static final double LEFT = 40;
    private static final double PANEL = 200;
    private static final double GAP = 40;
    private static final double NAME = 36;
    private static final double HEIGHT = 110;
    private static final double FOOT = 26;
    private static final double ROW = NAME + HEIGHT + FOOT;

    /** Half the arm of the cross that stands for a point without neighbours. */
    private static final double MARK = 3.5;

    private final Plot plot;
    private final double level;
    private final double most;
    private final double first;
    private final double last;

    private PanelDrawing(Plot plot, double level) {
        this.plot = plot;
        this.level = level;
        most = 2 * level;
        first = Double.parseDouble(plot.x().get(0));
        last = Double.parseDouble(plot.x().get(plot.x().size() - 1));
    }

    /** One {@code svg} element, well-formed XML, whose ids begin with the plot's; values above twice the level stay at the edge. */
    static String svg(Plot plot, double level) {
        return new PanelDrawing(plot, level).svg();
    }

    private String svg() {
        int rows = (plot.series().size() + ACROSS - 1) / ACROSS;
        StringBuilder out = new StringBuilder("<svg role=\"img\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
                + number(WIDTH) + " " + number(rows * ROW) + "\" aria-labelledby=\"" + plot.id() + "-title " + plot.id()
                + "-words\" font-family=\"sans-serif\" font-size=\"11\" color=\"currentColor\">\n");
        out.append("<title id=\"" + plot.id() + "-title\">" + escape(plot.title()) + "</title>\n");
        out.append("<desc id=\"" + plot.id() + "-words\">" + escape(plot.words()) + "</desc>\n");
        int i = 0;
        for (Map.Entry<String, List<Double>> series : plot.series().entrySet()) {
            panel(out, series, LEFT + i % ACROSS * (PANEL + GAP), Math.floorDiv(i, ACROSS) * ROW + NAME);
            i++;
        }
        return out.append("</svg>").toString();
    }

    private void panel(StringBuilder out, Map.Entry<String, List<Double>> series, double x, double y) {
        int standing = series.getKey().lastIndexOf(" [");
        String name = standing < 0 ? series.getKey() : series.getKey().substring(0, standing);
        text(out, x, y - 20, "start", name);
        if (standing >= 0) {
            text(out, x, y - 6, "start", series.getKey().substring(standing + 1));
        }
        out.append("<rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(PANEL) + "\" height=\""
                + number(HEIGHT) + "\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.7\"/>\n");
        for (double quarter : new double[] {0.25, 0.75}) {
            path(out, "M" + number(x) + " " + number(y + HEIGHT * quarter) + "h" + number(PANEL), "0.3", "");
        }
        path(out, "M" + number(x) + " " + number(up(y, level)) + "h" + number(PANEL), "0.9", "5 4");
        path(out, curve(series.getValue(), x, y), "2", "");
        text(out, x - 4, up(y, 0) + 4, "end", "0");
        text(out, x - 4, up(y, level) + 4, "end", number(level));
        text(out, x - 4, up(y, most) + 8, "end", number(most));
        text(out, x, y + HEIGHT + 14, "start", number(first));
        text(out, x + PANEL, y + HEIGHT + 14, "end", number(last));
    }

    private double up(double top, double value) {
        return top + HEIGHT * (1 - Math.min(most, Math.max(0, value)) / most);
    }

    private String curve(List<Double> values, double x, double y) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < values.size(); i++) {
            if (Double.isNaN(values.get(i))) {
                continue;
            }
            double across = x + PANEL * (Double.parseDouble(plot.x().get(i)) - first) / (last - first);
            double height = up(y, values.get(i));
            boolean begins = i == 0 || Double.isNaN(values.get(i - 1));
            boolean ends = i == values.size() - 1 || Double.isNaN(values.get(i + 1));
            if (begins && ends) {
                d.append("M" + number(across - MARK) + " " + number(height) + "h" + number(2 * MARK));
                d.append("M" + number(across) + " " + number(height - MARK) + "v" + number(2 * MARK));
            } else {
                d.append((begins ? "M" : "L") + number(across) + " " + number(height));
            }
        }
        return d.isEmpty() ? "M0 0" : d.toString();
    }

    private static void path(StringBuilder out, String d, String width, String dashes) {
        out.append("<path d=\"" + d + "\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"" + width + "\""
                + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"") + "/>\n");
    }

    private static void text(StringBuilder out, double x, double y, String anchor, String words) {
        out.append("<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" text-anchor=\"" + anchor
                + "\" fill=\"currentColor\">" + escape(words) + "</text>\n");
    }

    private static String number(double value) {
        return NumberText.significant(Math.rint(value * 100) / 100, 7);
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }
}
