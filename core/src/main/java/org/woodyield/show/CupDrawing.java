package org.woodyield.show;

import java.util.List;
import org.woodyield.wood.Cupping;

/** The end of a board before and after drying, as an SVG drawing: its rings, the green outline dashed, the dry one full. */
public final class CupDrawing {

    private static final double WIDE = 560;
    private static final double MARGIN = 40;
    private static final int STEPS = 48;
    private static final int RINGS = 29;

    private CupDrawing() {}

    /**
     * Draws a board's end, the bark side up, to scale and without exaggeration.
     *
     * @param key begins the ids of the drawing, unique on its page: letters, digits and hyphens
     * @param board the board
     * @return an SVG element
     */
    public static String svg(String key, Cupping board) {
        double scale = WIDE / board.width().toInches();
        double high = Math.max(board.thickness().toInches() * scale, 40);
        double depth = board.depthInches(Cupping.Side.BARK);
        String words = "Bark side: hollow by " + NumberText.fixed(depth, 3) + " in";
        Drawing drawing = new Drawing(
                key,
                WIDE + 2 * MARGIN,
                high + 2 * MARGIN + 60,
                "Cupping of a board " + board.thickness() + " x " + board.width(),
                "End of the board, bark side up; green outline dashed, dry outline full; rings as they lay green. "
                        + words + ".");
        double middleX = MARGIN + WIDE / 2;
        double middleY = MARGIN + 12 + high / 2;
        Markup out = drawing.out();
        out.open("defs").open("clipPath", "id", key + "-end");
        out.empty("path", "d", path(board.outline(STEPS, true), scale, middleX, middleY));
        out.close().closeLine();
        out.open("g", "clip-path", "url(#" + key + "-end)").line();
        rings(drawing, board, scale, middleX, middleY);
        out.closeLine();
        drawing.path(
                path(board.outline(STEPS, false), scale, middleX, middleY),
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                "1",
                "stroke-dasharray",
                "5 4");
        drawing.path(
                path(board.outline(STEPS, true), scale, middleX, middleY),
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                "2");
        drawing.text(middleX, MARGIN - 14, "middle", "bark side");
        drawing.text(middleX, MARGIN + high + 34, "middle", "pith side");
        drawing.text(MARGIN, MARGIN + high + 62, "start", "dashed: green; full: dry");
        drawing.text(MARGIN + WIDE, MARGIN + high + 62, "end", words);
        return drawing.finish();
    }

    private static void rings(Drawing drawing, Cupping board, double scale, double middleX, double middleY) {
        double turn = board.ringAngleDegrees() * Math.PI / 180;
        double radius = board.ringRadius().toInches();
        double pithX = middleX - radius * StrictMath.sin(turn) * scale;
        double pithY = middleY + radius * StrictMath.cos(turn) * scale;
        double reach = (board.width().toInches() + board.thickness().toInches()) / 2;
        for (int i = 0; i <= RINGS; i++) {
            double r = (Math.max(radius - reach, 0) + 2 * reach * i / RINGS) * scale;
            drawing.out()
                    .empty(
                            "circle",
                            "cx",
                            Drawing.number(pithX),
                            "cy",
                            Drawing.number(pithY),
                            "r",
                            Drawing.number(r),
                            "fill",
                            "none",
                            "stroke",
                            "currentColor",
                            "stroke-width",
                            "0.6")
                    .line();
        }
    }

    private static String path(List<Cupping.Point> points, double scale, double middleX, double middleY) {
        StringBuilder d = new StringBuilder();
        for (Cupping.Point point : points) {
            d.append(d.isEmpty() ? "M" : " L")
                    .append(Drawing.number(middleX + point.along() * scale))
                    .append(' ')
                    .append(Drawing.number(middleY - point.toBark() * scale));
        }
        return d.append(" Z").toString();
    }
}
