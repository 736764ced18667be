package org.woodyield.checks;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler.LegendPosition;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.w3c.dom.Document;

/**
 * Draws a plot as SVG: XChart lays it out, Batik writes what XChart paints. Ink takes the colour of the text around it, so
 * that the drawing reads in light and dark; series differ by marker and dash as well as by colour.
 */
final class PlotDrawing {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 460;
    /** No other part of a drawing has this colour; in the SVG it becomes that of the text around it. */
    private static final Color INK = new Color(1, 2, 3);

    private static final Color NONE = new Color(255, 255, 255, 0);
    /** Each is told from light and from dark paper. */
    private static final Color[] COLOURS = {new Color(0xB3541E), new Color(0x2A7F8F), new Color(0x7A6BB0)};

    private static final Marker[] MARKERS = {SeriesMarkers.CIRCLE, SeriesMarkers.SQUARE, SeriesMarkers.TRIANGLE_UP};
    private static final BasicStroke[] STROKES = {
        new BasicStroke(2f), dashed(8f, 4f), dashed(2f, 4f),
    };

    private PlotDrawing() {}

    private static BasicStroke dashed(float on, float off) {
        return new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, new float[] {on, off}, 0f);
    }

    /** One {@code svg} element, well-formed XML, whose ids begin with the plot's. */
    static String svg(Plot plot) {
        if (plot.id().equals(Plots.EVERY_RULE)) {
            return PanelDrawing.svg(plot, 100);
        }
        Chart<?, ?> chart = plot.names() ? bars(plot) : lines(plot);
        Document document;
        try {
            document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument("http://www.w3.org/2000/svg", "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
        SVGGraphics2D graphics = new SVGGraphics2D(document);
        graphics.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
        chart.paint(graphics, WIDTH, HEIGHT);
        StringWriter out = new StringWriter();
        try {
            graphics.stream(out, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String svg = out.toString();
        String frame =
                "<svg role=\"img\" viewBox=\"0 0 " + WIDTH + " " + HEIGHT + "\" aria-labelledby=\"title words\" ";
        String name = "<title id=\"title\">" + escape(plot.title()) + "</title><desc id=\"words\">"
                + escape(plot.words()) + "</desc><defs id=\"genericDefs\"";
        return svg.substring(svg.indexOf("<svg"))
                .replaceFirst("<svg ", frame)
                .replaceFirst("<defs id=\"genericDefs\"", name)
                .replace("rgb(1,2,3)", "currentColor")
                .replace(
                        "aria-labelledby=\"title words\"",
                        "aria-labelledby=\"" + plot.id() + "-title " + plot.id() + "-words\"")
                .replace("id=\"", "id=\"" + plot.id() + "-")
                .replace("url(#", "url(#" + plot.id() + "-")
                .strip();
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("$", "&#36;");
    }

    private static XYChart lines(Plot plot) {
        XYChart chart = new XYChartBuilder()
                .width(WIDTH)
                .height(HEIGHT)
                .xAxisTitle(plot.xName())
                .yAxisTitle(plot.yName())
                .build();
        style(chart.getStyler());
        int number = 0;
        for (var entry : plot.series().entrySet()) {
            List<Integer> places = java.util.stream.IntStream.range(0, plot.x().size())
                    .filter(i -> !Double.isNaN(entry.getValue().get(i)))
                    .boxed()
                    .toList();
            var series = chart.addSeries(
                    entry.getKey(),
                    places.stream().map(i -> Double.valueOf(plot.x().get(i))).toList(),
                    places.stream().map(i -> entry.getValue().get(i)).toList());
            series.setMarker(MARKERS[number % MARKERS.length]);
            series.setMarkerColor(COLOURS[number % COLOURS.length]);
            series.setLineColor(COLOURS[number % COLOURS.length]);
            series.setLineStyle(STROKES[number % STROKES.length]);
            number++;
        }
        return chart;
    }

    private static CategoryChart bars(Plot plot) {
        CategoryChart chart = new CategoryChartBuilder()
                .width(WIDTH)
                .height(HEIGHT)
                .xAxisTitle(plot.xName())
                .yAxisTitle(plot.yName())
                .build();
        style(chart.getStyler());
        chart.getStyler().setXAxisLabelRotation(60);
        chart.getStyler().setXAxisMaxLabelCount(plot.x().size());
        int number = 0;
        for (var entry : plot.series().entrySet()) {
            chart.addSeries(entry.getKey(), plot.x(), entry.getValue())
                    .setFillColor(COLOURS[number++ % COLOURS.length]);
        }
        return chart;
    }

    private static void style(AxesChartStyler styler) {
        Font plain = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
        styler.setBaseFont(plain);
        styler.setAxisTitleFont(plain);
        styler.setAxisTickLabelsFont(plain);
        styler.setLegendFont(plain);
        styler.setChartBackgroundColor(NONE);
        styler.setPlotBackgroundColor(NONE);
        styler.setLegendBackgroundColor(NONE);
        styler.setLegendBorderColor(NONE);
        styler.setPlotBorderColor(INK);
        styler.setChartFontColor(INK);
        styler.setAxisTickLabelsColor(INK);
        styler.setAxisTickMarksColor(INK);
        styler.setPlotGridLinesColor(new Color(0x80, 0x80, 0x80));
        styler.setLegendPosition(LegendPosition.OutsideS);
        styler.setChartTitleVisible(false);
    }
}
