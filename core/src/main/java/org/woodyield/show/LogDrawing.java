package org.woodyield.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.FirstCut;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Rectangle;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.Wane;

/**
 * Drawings of how one log is sawn, as SVG that is legible in black and white and says in words what it shows.
 *
 * <p>The end view looks at the small end along the axis: wood inside bark, bark, the outline of the large end, every
 * piece with its number and the hatching of its size, every kerf as a solid band with its place in the order of sawing.
 * Places are to scale; positions are those of the plan.
 */
public final class LogDrawing {

    private static final double LEAST_SPAN = 400;
    private static final double GREATEST_SPAN = 700;
    private static final double MARGIN = 80;
    /** Large logs are drawn larger, so that an inch board keeps room for its number. */
    private static final double SPAN_PER_METRE = 640;

    private static final double NUMBER_HEIGHT = 10;
    private static final double TOP = 14;
    private static final double LABEL_STEP = 13.5;
    private static final double LABEL_GAP = 34;
    private static final double LEGEND_STEP = 19;
    private static final double TRACK_GAP = 2.4;
    private static final int LEGEND_CHARACTERS = 64;

    private final String log;
    private final String key;
    private final SawingPlan plan;
    private final List<String> sizes;

    private LogDrawing(String log, String key, SawingPlan plan, List<String> sizes) {
        this.log = log;
        this.key = key;
        this.plan = plan;
        this.sizes = sizes;
    }

    /**
     * Drawings of one plan that stand alone.
     *
     * @param log the user's name for the log
     * @param plan how it is sawn
     * @return its drawings
     */
    public static LogDrawing of(String log, SawingPlan plan) {
        return of(
                log,
                1,
                plan,
                plan.options().stream().map(PieceOption::id).distinct().toList());
    }

    /**
     * Drawings of one plan among others on a page.
     *
     * @param log the user's name for the log
     * @param index from 1, different for every log of the page
     * @param plan how the log is sawn
     * @param sizes the ids of all sizes of the page, so that a size has one hatching on all its drawings
     * @return its drawings
     */
    public static LogDrawing of(String log, int index, SawingPlan plan, List<String> sizes) {
        List<String> all = new ArrayList<>(sizes);
        plan.pieces().stream()
                .map(SawnPiece::optionId)
                .filter(id -> !all.contains(id))
                .distinct()
                .forEach(all::add);
        return new LogDrawing(log, "log" + index, plan, List.copyOf(all));
    }

    /** Where metres of the frame fall on the paper. */
    private record Scale(double perMetre, double left, double top, double xOfLeft, double yOfTop) {
        double x(double metres) {
            return left + (metres - xOfLeft) * perMetre;
        }

        double y(double metres) {
            return top + (yOfTop - metres) * perMetre;
        }

        double x(Length length) {
            return x(length.toMetres());
        }

        double y(Length length) {
            return y(length.toMetres());
        }
    }

    /** A box on the paper that holds text. */
    private record Box(double left, double right, double top, double bottom) {}

    /** A number beside the drawing and the kerf that it belongs to. */
    private record Tag(int number, boolean toRight, double x, double y, double track) {}

    /**
     * The end view.
     *
     * @return one {@code svg} element
     */
    public String endView() {
        List<Outline> outlines = outlines();
        double left =
                outlines.stream().mapToDouble(o -> o.x() - o.halfWidth()).min().orElseThrow();
        double right =
                outlines.stream().mapToDouble(o -> o.x() + o.halfWidth()).max().orElseThrow();
        double top = outlines.stream().mapToDouble(Outline::top).max().orElseThrow();
        double bottom = outlines.stream().mapToDouble(Outline::bottom).min().orElseThrow();
        double metres = Math.max(right - left, top - bottom);
        double span = Math.max(LEAST_SPAN, Math.min(GREATEST_SPAN, SPAN_PER_METRE * metres));
        double paper = span + 2 * MARGIN;
        double perMetre = span / metres;
        double width = (right - left) * perMetre;
        double height = (top - bottom) * perMetre;

        // With many passes the numbers need more height than the log.
        Scale first = new Scale(perMetre, (paper - width) / 2, TOP, left, top);
        long rightCount =
                tags(first, numberBoxes(first)).stream().filter(Tag::toRight).count();
        long most = Math.max(rightCount, plan.passes().size() - rightCount);
        double room = Math.max(height, LABEL_STEP * (most - 1));
        double floor = TOP + room;
        Scale scale = new Scale(perMetre, first.left, TOP + (room - height) / 2, left, top);
        List<Box> numbers = numberBoxes(scale);
        List<Tag> tags = tags(scale, numbers);
        List<Tag> leftTags = tags.stream().filter(tag -> !tag.toRight).toList();
        List<Tag> rightTags = tags.stream().filter(Tag::toRight).toList();
        double[] leftPlaces = spread(leftTags, TOP, floor);
        double[] rightPlaces = spread(rightTags, TOP, floor);
        List<String> used = sizes.stream()
                .filter(id -> plan.pieces().stream().anyMatch(p -> p.optionId().equals(id)))
                .toList();
        double legend = floor + 44;
        double whole = legend + LEGEND_STEP * (used.size() + 2);
        Drawing drawing =
                new Drawing(key + "-end", paper, whole, "End view of log " + log + " from its small end", describe());
        define(drawing, scale, outlines, used);
        drawWood(drawing, scale);
        drawPieces(drawing, scale, numbers, paper);
        drawTags(drawing, leftTags, leftPlaces, scale.left - LABEL_GAP, scale.left - 4);
        drawTags(drawing, rightTags, rightPlaces, scale.left + width + LABEL_GAP, scale.left + width + 4);
        drawScaleBar(drawing, scale, paper, floor + 22);
        drawLegend(drawing, used, legend);
        return drawing.finish();
    }

    private List<Outline> outlines() {
        double length = plan.solid().lengthMetres();
        List<Outline> outlines = new ArrayList<>();
        for (double z : new double[] {0, length / 2, length}) {
            outlines.add(Outline.overBark(plan.solid(), plan.frame(), z));
        }
        return outlines;
    }

    private String describe() {
        StringBuilder words = new StringBuilder();
        words.append("Numbers on the wood are pieces, numbers beside it are kerfs in the order of sawing, 1 to ");
        words.append(plan.passes().size()).append(". Pieces: ");
        LengthText text = LengthText.of(plan.saw());
        for (SawnPiece piece : plan.pieces()) {
            words.append(piece.number()).append(" is ").append(piece.optionId()).append(", ");
            words.append(text.size(piece.thickness())).append(" by ").append(text.size(piece.width()));
            words.append(" by ").append(text.longways(piece.length())).append("; ");
        }
        words.append("what is not hatched falls off.");
        if (plan.options().stream().anyMatch(option -> !option.wane().equals(Wane.NONE))) {
            words.append(" A missing corner is wane.");
        }
        if (plan.solid().rot().isPresent()) {
            words.append(" The dotted circle is rot where it begins and where it ends.");
        }
        return words.toString();
    }

    private void define(Drawing drawing, Scale scale, List<Outline> outlines, List<String> used) {
        Markup out = drawing.out().open("defs");
        out.open("clipPath", "id", key + "-wood");
        for (Outline outline : outlines) {
            out.empty("path", "d", ellipse(outline, scale));
        }
        out.close().line();
        for (SawnPiece piece : plan.pieces()) {
            List<Outline> sections = waneSections(piece);
            for (int i = 0; i < sections.size(); i++) {
                out.open("clipPath", "id", waneClip(piece, i))
                        .empty("path", "d", ellipse(sections.get(i), scale))
                        .close()
                        .line();
            }
        }
        used.forEach(id -> Hatching.define(out, hatching(id), sizes.indexOf(id)));
        out.closeLine();
    }

    /** The wood at both ends of a piece and midway, for a piece that may have wane: what is in all of them is drawn. */
    private List<Outline> waneSections(SawnPiece piece) {
        boolean waned = plan.options().stream()
                .anyMatch(option ->
                        option.id().equals(piece.optionId()) && !option.wane().equals(Wane.NONE));
        if (!waned) {
            return List.of();
        }
        double start = piece.start().toMetres();
        double end = Math.min(piece.end().toMetres(), plan.solid().lengthMetres());
        return DoubleStream.of(start, (start + end) / 2, end)
                .mapToObj(z -> Outline.insideBark(plan.solid(), plan.frame(), z))
                .toList();
    }

    private String waneClip(SawnPiece piece, int section) {
        return key + "-wane" + piece.number() + "-" + section;
    }

    private String hatching(String size) {
        return key + "-size" + sizes.indexOf(size);
    }

    private static String ellipse(Outline outline, Scale scale) {
        double turn = StrictMath.toRadians(outline.turnDegrees());
        double dx = outline.halfLong() * StrictMath.cos(turn);
        double dy = outline.halfLong() * StrictMath.sin(turn);
        String arc = "A" + Drawing.number(outline.halfLong() * scale.perMetre) + " "
                + Drawing.number(outline.halfShort() * scale.perMetre) + " "
                + Drawing.number(-outline.turnDegrees()) + " 1 1 ";
        String start = point(scale.x(outline.x() - dx), scale.y(outline.y() - dy));
        String other = point(scale.x(outline.x() + dx), scale.y(outline.y() + dy));
        return "M" + start + arc + other + arc + start + "Z";
    }

    private static String point(double x, double y) {
        return Drawing.number(x) + " " + Drawing.number(y);
    }

    private void drawWood(Drawing drawing, Scale scale) {
        double length = plan.solid().lengthMetres();
        String over = ellipse(Outline.overBark(plan.solid(), plan.frame(), 0), scale);
        String inside = ellipse(Outline.insideBark(plan.solid(), plan.frame(), 0), scale);
        String large = ellipse(Outline.insideBark(plan.solid(), plan.frame(), length), scale);
        drawing.path(large, "fill", "none", "stroke", "currentColor", "stroke-width", "0.9", "stroke-dasharray", "5 3");
        if (plan.solid().barkMetres() > 0) {
            drawing.path(over + inside, "fill", "currentColor", "fill-rule", "evenodd", "fill-opacity", "0.28");
        }
        drawing.path(inside, "fill", "none", "stroke", "currentColor", "stroke-width", "1.2");
        plan.solid().rot().ifPresent(rot -> {
            for (double z : new double[] {rot.fromMetres(), rot.toMetres()}) {
                String circle =
                        ellipse(Outline.rot(plan.solid(), plan.frame(), z).orElseThrow(), scale);
                drawing.path(
                        circle,
                        "fill",
                        "none",
                        "stroke",
                        "currentColor",
                        "stroke-width",
                        "1.6",
                        "stroke-dasharray",
                        "1 3");
            }
        });
    }

    private void drawPieces(Drawing drawing, Scale scale, List<Box> numbers, double paper) {
        drawing.out().open("g", "clip-path", "url(#" + key + "-wood)").line();
        for (SawPass pass : plan.passes()) {
            Rectangle kerf = pass.kerf();
            double x = Math.max(-50, scale.x(kerf.left()));
            double y = Math.max(-50, scale.y(kerf.top()));
            double width = Math.min(paper + 50, scale.x(kerf.right())) - x;
            double height = Math.min(4 * paper, scale.y(kerf.bottom())) - y;
            drawing.rectangle(x, y, width, height, "fill", "currentColor");
        }
        drawing.out().closeLine();
        for (int i = 0; i < numbers.size(); i++) {
            SawnPiece piece = plan.pieces().get(i);
            Rectangle faces = piece.faces();
            // A flitch with bark edges reaches beyond the bark and is drawn as far as there is wood.
            double x = Math.max(-50, scale.x(faces.left()));
            double y = scale.y(faces.top());
            double width = Math.min(paper + 50, scale.x(faces.right())) - x;
            double height = faces.height().toMetres() * scale.perMetre;
            if (piece.unedged()) {
                drawing.out().open("g", "clip-path", "url(#" + key + "-wood)").line();
            }
            int sections = waneSections(piece).size();
            for (int section = 0; section < sections; section++) {
                drawing.out().open("g", "clip-path", "url(#" + waneClip(piece, section) + ")");
            }
            drawing.rectangle(x, y, width, height, "style", Drawing.PAPER);
            String fill = "url(#" + hatching(piece.optionId()) + ")";
            drawing.rectangle(x, y, width, height, "fill", fill, "stroke", "currentColor", "stroke-width", "0.8");
            for (int section = 0; section < sections; section++) {
                drawing.out().close();
            }
            if (piece.unedged()) {
                drawing.out().closeLine();
            }
        }
        for (int i = 0; i < numbers.size(); i++) {
            Box box = numbers.get(i);
            double width = box.right - box.left;
            double height = box.bottom - box.top;
            drawing.rectangle(box.left, box.top, width, height, "style", Drawing.PAPER, "rx", "2");
            String number = Integer.toString(plan.pieces().get(i).number());
            double x = (box.left + box.right) / 2;
            drawing.text(x, (box.top + box.bottom) / 2, "middle", number, "class", "piece", "font-size", "11");
        }
    }

    private List<Box> numberBoxes(Scale scale) {
        return plan.pieces().stream().map(piece -> numberBox(piece, scale)).toList();
    }

    private static Box numberBox(SawnPiece piece, Scale scale) {
        double x = (scale.x(piece.faces().left()) + scale.x(piece.faces().right())) / 2;
        double y = (scale.y(piece.faces().top()) + scale.y(piece.faces().bottom())) / 2;
        double half = Drawing.width(Integer.toString(piece.number())) / 2 + 2;
        double halfHeight = NUMBER_HEIGHT / 2;
        return new Box(x - half, x + half, y - halfHeight, y + halfHeight);
    }

    /** Upright and short bands are numbered on the side that is nearer, level ones on the side with more room. */
    private List<Tag> tags(Scale scale, List<Box> numbers) {
        List<Tag> tags = new ArrayList<>();
        List<SawPass> upright = new ArrayList<>();
        List<SawPass> level = new ArrayList<>();
        for (SawPass pass : plan.passes()) {
            boolean across =
                    isLevel(pass) && end(pass, scale, true) > scale.x(0) && end(pass, scale, false) < scale.x(0);
            (across ? level : upright).add(pass);
        }
        int onRight = 0;
        for (SawPass pass : upright) {
            onRight += centre(pass, scale) >= scale.x(0) ? 1 : 0;
        }
        int onLeft = upright.size() - onRight;
        for (SawPass pass : level) {
            boolean toRight = onRight <= onLeft;
            onRight += toRight ? 1 : 0;
            onLeft += toRight ? 0 : 1;
            double y = (scale.y(pass.kerf().top()) + scale.y(pass.kerf().bottom())) / 2;
            tags.add(new Tag(pass.number(), toRight, end(pass, scale, toRight), y, y));
        }
        // From outside to inside, so that those with the shortest way choose first.
        Comparator<SawPass> outermost = Comparator.comparingDouble(pass -> -Math.abs(centre(pass, scale) - scale.x(0)));
        upright.sort(outermost.thenComparing(SawPass::number));
        for (SawPass pass : upright) {
            boolean toRight = centre(pass, scale) >= scale.x(0);
            tags.add(tag(pass, toRight, scale, numbers, tags));
        }
        tags.sort(Comparator.comparingDouble(Tag::track).thenComparingInt(Tag::number));
        return tags;
    }

    private static double centre(SawPass pass, Scale scale) {
        return (scale.x(pass.kerf().left()) + scale.x(pass.kerf().right())) / 2;
    }

    private static boolean isLevel(SawPass pass) {
        return pass.kerf().width().compareTo(pass.kerf().height()) >= 0;
    }

    private double end(SawPass pass, Scale scale, boolean right) {
        double height = (pass.kerf().top().toMetres() + pass.kerf().bottom().toMetres()) / 2;
        double sign = right ? 1 : -1;
        double farthest = Double.NEGATIVE_INFINITY;
        for (Outline outline : outlines()) {
            double[] chord = outline.chord(height);
            if (!Double.isNaN(chord[0])) {
                farthest = Math.max(farthest, sign * chord[1] + chord[0]);
            }
        }
        double bound = sign * (right ? pass.kerf().right() : pass.kerf().left()).toMetres();
        double end = Math.min(farthest, bound);
        return Double.isInfinite(end) ? scale.x(0) + sign : scale.x(sign * end);
    }

    /** The line from the kerf to its number runs level where it meets no number of a piece and no other line. */
    private static Tag tag(SawPass pass, boolean toRight, Scale scale, List<Box> numbers, List<Tag> taken) {
        double x = centre(pass, scale);
        double top = scale.y(pass.kerf().top());
        double bottom = scale.y(pass.kerf().bottom());
        double middle = (top + bottom) / 2;
        double reach = Math.max(9, (bottom - top) / 2 - 2);
        double track = middle;
        for (double away = 0; away <= reach; away += 0.6) {
            if (isFree(middle - away, x, toRight, numbers, taken)) {
                track = middle - away;
                break;
            }
            if (isFree(middle + away, x, toRight, numbers, taken)) {
                track = middle + away;
                break;
            }
        }
        double y = Math.min(Math.max(track, Math.min(top + 1, middle)), Math.max(bottom - 1, middle));
        return new Tag(pass.number(), toRight, x, y, track);
    }

    private static boolean isFree(double track, double x, boolean toRight, List<Box> numbers, List<Tag> taken) {
        for (Box box : numbers) {
            boolean along = toRight ? box.right > x : box.left < x;
            if (along && track > box.top - 1 && track < box.bottom + 1) {
                return false;
            }
        }
        for (Tag tag : taken) {
            if (tag.toRight == toRight && Math.abs(tag.track - track) < TRACK_GAP) {
                return false;
            }
        }
        return true;
    }

    /** Heights for the numbers, in the order of their lines, none nearer to the next than a line of text. */
    private static double[] spread(List<Tag> tags, double top, double bottom) {
        double[] places = new double[tags.size()];
        double above = top - LABEL_STEP;
        for (int i = 0; i < places.length; i++) {
            places[i] = Math.max(tags.get(i).track, above + LABEL_STEP);
            above = places[i];
        }
        double below = bottom + LABEL_STEP;
        for (int i = places.length - 1; i >= 0 && places[i] > below - LABEL_STEP; i--) {
            places[i] = below - LABEL_STEP;
            below = places[i];
        }
        // More numbers than the height holds: they go on below.
        above = top - LABEL_STEP;
        for (int i = 0; i < places.length; i++) {
            places[i] = Math.max(places[i], above + LABEL_STEP);
            above = places[i];
        }
        return places;
    }

    private void drawTags(Drawing drawing, List<Tag> tags, double[] places, double labelX, double edgeX) {
        for (int i = 0; i < places.length; i++) {
            Tag tag = tags.get(i);
            double out = tag.toRight ? 1 : -1;
            StringBuilder d = new StringBuilder("M").append(point(tag.x, tag.y));
            if (Math.abs(tag.track - tag.y) > 0.1) {
                d.append('L').append(point(tag.x + out * 6, tag.track));
            }
            d.append('L').append(point(edgeX, tag.track)).append('L').append(point(labelX - out * 3, places[i]));
            drawing.leader(d.toString());
        }
        for (int i = 0; i < places.length; i++) {
            Tag tag = tags.get(i);
            drawing.dot(tag.x, tag.y, 2.1);
            drawing.text(
                    labelX, places[i], tag.toRight ? "start" : "end", Integer.toString(tag.number), "class", "kerf");
        }
    }

    private void drawScaleBar(Drawing drawing, Scale scale, double paper, double y) {
        LengthText text = LengthText.of(plan.saw());
        Length bar = text.scaleBar(Length.ofMetres((paper - 2 * MARGIN) / scale.perMetre, Rounding.HALF_UP));
        double width = bar.toMetres() * scale.perMetre;
        double x = (paper - width) / 2;
        drawing.path(
                "M" + point(x, y - 4) + "V" + Drawing.number(y + 4) + "M" + point(x, y) + "H"
                        + Drawing.number(x + width) + "M" + point(x + width, y - 4) + "V" + Drawing.number(y + 4),
                "fill",
                "none",
                "stroke",
                "currentColor");
        drawing.text(x + width + 8, y, "start", text.size(bar));
    }

    private void drawLegend(Drawing drawing, List<String> used, double top) {
        double y = top;
        LengthText text = LengthText.of(plan.saw());
        for (String size : used) {
            drawing.rectangle(40, y - 6, 26, 12, "style", Drawing.PAPER);
            String fill = "url(#" + hatching(size) + ")";
            drawing.rectangle(40, y - 6, 26, 12, "fill", fill, "stroke", "currentColor", "stroke-width", "0.8");
            List<SawnPiece> pieces = plan.pieces().stream()
                    .filter(piece -> piece.optionId().equals(size))
                    .toList();
            String words = size + ": " + pieces.size() + (pieces.size() == 1 ? " piece, " : " pieces, ")
                    + text.size(pieces.get(0).thickness()) + " thick";
            drawing.text(74, y, "start", shortened(words));
            y += LEGEND_STEP;
        }
        drawing.rectangle(40, y - 1.5, 26, 3, "fill", "currentColor");
        drawing.text(74, y, "start", "kerf; its number beside the log is its place in the order of sawing");
        y += LEGEND_STEP;
        drawing.path("M40 " + Drawing.number(y) + "H66", "stroke", "currentColor", "stroke-dasharray", "5 3");
        drawing.text(74, y, "start", "large end, inside bark; grey ring: bark at the small end");
    }

    /**
     * The side view of the first cut: the log lying on two level supports as its frame wants it, the line of the first
     * face, how far that stands from the axis at either end, and the shim. Heights are drawn larger than lengths.
     *
     * @return one {@code svg} element; empty where there is no pass
     */
    public Optional<String> sideView() {
        if (plan.passes().isEmpty()) {
            return Optional.empty();
        }
        FirstCut face = FirstCut.of(plan);
        LengthText text = LengthText.of(plan.saw());
        double length = plan.solid().lengthMetres();
        double left = 130;
        double wide = 420;
        List<Outline> over = new ArrayList<>();
        List<Outline> inside = new ArrayList<>();
        int steps = 24;
        for (int i = 0; i <= steps; i++) {
            over.add(Outline.overBark(plan.solid(), plan.frame(), length * i / steps));
            inside.add(Outline.insideBark(plan.solid(), plan.frame(), length * i / steps));
        }
        double line = face.height().toMetres();
        double top =
                Math.max(line, over.stream().mapToDouble(Outline::top).max().orElseThrow());
        double bottom = over.stream().mapToDouble(Outline::bottom).min().orElseThrow();
        double perMetre = 150 / (top - bottom);
        double taller = perMetre / (wide / length);
        Scale scale = new Scale(perMetre, 0, 26, 0, top);
        double floor = scale.y(bottom);
        double whole = floor + 74;
        String small = text.size(face.aboveAxisSmallEnd());
        String large = text.size(face.aboveAxisLargeEnd());
        String shim = face.shim().isPositive()
                ? "shim " + text.near(face.shim()) + " under the " + FirstCutWords.end(face)
                : "no shim";
        Drawing drawing = new Drawing(
                key + "-side",
                680,
                whole,
                "Side view of log " + log + " with its first cut",
                "The first face stands " + small + " from the axis at the small end, on the left, and " + large
                        + " at the large end, on the right; above it where the figure is not below zero. Supports are level: "
                        + shim + ".");
        drawing.path(profile(over, scale, left, wide), "fill", "currentColor", "fill-opacity", "0.22");
        drawing.path(profile(inside, scale, left, wide), "style", Drawing.PAPER + ";stroke:currentColor");
        String axis = "M" + point(left, scale.y(Outline.axisHeight(plan.frame(), 0))) + "L"
                + point(left + wide, scale.y(Outline.axisHeight(plan.frame(), 1)));
        drawing.path(axis, "fill", "none", "stroke", "currentColor", "stroke-dasharray", "10 3 2 3");
        double y = scale.y(line);
        drawing.path(
                "M" + point(left - 14, y) + "H" + Drawing.number(left + wide + 14),
                "stroke",
                "currentColor",
                "stroke-width",
                "3");
        drawing.text(left + wide / 2, 12, "middle", "first face");
        drawing.leader("M" + point(left + wide / 2, 19) + "V" + Drawing.number(y - 1.5));
        dimension(drawing, left - 9, y, scale.y(Outline.axisHeight(plan.frame(), 0)), small, false);
        dimension(drawing, left + wide + 9, y, scale.y(Outline.axisHeight(plan.frame(), 1)), large, true);
        support(drawing, left + 8, scale.y(over.get(0).bottom()), floor);
        support(drawing, left + wide - 8, scale.y(over.get(steps).bottom()), floor);
        drawing.path(
                "M" + point(left - 20, floor + 16) + "H" + Drawing.number(left + wide + 20), "stroke", "currentColor");
        drawing.text(left, floor + 32, "middle", "small end");
        drawing.text(left + wide, floor + 32, "middle", "large end");
        drawing.text(left + wide / 2, floor + 32, "middle", shim);
        drawing.text(
                left + wide / 2,
                floor + 54,
                "middle",
                "dash and dot: axis; heights drawn " + NumberText.significant(taller, 2)
                        + " times as large as lengths");
        return Optional.of(drawing.finish());
    }

    private static String profile(List<Outline> sections, Scale scale, double left, double wide) {
        StringBuilder d = new StringBuilder();
        int last = sections.size() - 1;
        for (int i = 0; i <= last; i++) {
            d.append(i == 0 ? "M" : "L");
            d.append(point(left + wide * i / last, scale.y(sections.get(i).top())));
        }
        for (int i = last; i >= 0; i--) {
            d.append('L')
                    .append(point(
                            left + wide * i / last, scale.y(sections.get(i).bottom())));
        }
        return d.append('Z').toString();
    }

    private static void dimension(Drawing drawing, double x, double line, double axis, String text, boolean right) {
        String ends = "M" + point(x - 4, axis) + "H" + Drawing.number(x + 4) + "M" + point(x - 4, line) + "H"
                + Drawing.number(x + 4);
        drawing.path(
                "M" + point(x, line) + "V" + Drawing.number(axis) + ends, "fill", "none", "stroke", "currentColor");
        drawing.text(right ? x + 10 : x - 10, (line + axis) / 2, right ? "start" : "end", text);
    }

    /** A support with level top, and between it and the log whatever has to be put there. */
    private static void support(Drawing drawing, double x, double underside, double floor) {
        if (floor - underside > 0.5) {
            drawing.rectangle(x - 7, underside, 14, floor - underside, "fill", "currentColor");
        }
        drawing.rectangle(
                x - 12, floor, 24, 16, "style", Drawing.PAPER + ";stroke:currentColor", "stroke-width", "1.2");
    }

    /** A text that a drawing has room for. */
    private static String shortened(String text) {
        int[] characters = TextTable.oneLine(text).codePoints().toArray();
        return characters.length <= LEGEND_CHARACTERS
                ? new String(characters, 0, characters.length)
                : new String(characters, 0, LEGEND_CHARACTERS - 1) + "…";
    }
}
