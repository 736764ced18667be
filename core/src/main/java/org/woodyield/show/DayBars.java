package org.woodyield.show;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.woodyield.work.TimeLine;
import org.woodyield.work.TimeLine.Activity;

/** A time line drawn as one hatched bar for each day, with the hours above and the logs below. */
final class DayBars {

    private static final double LEFT = 62;
    private static final double WIDE = 640;
    private static final double HIGH = 20;
    private static final double STEP = 46;
    private static final double TOP = 34;
    private static final double KEY_STEP = 17;
    private static final double LEAST_LABEL = 14;

    /** In the order of the bar that shows where all the hours go, so that both hatch an activity alike. */
    private static final List<Activity> HATCHED = List.of(
            Activity.CUTTING,
            Activity.WARM_UP,
            Activity.SETTING,
            Activity.CARRYING,
            Activity.TURNING,
            Activity.LOADING,
            Activity.REFUELLING,
            Activity.SHARPENING,
            Activity.REST,
            Activity.COOL_DOWN,
            Activity.GUIDE);

    private DayBars() {}

    static String svg(String key, String title, TimeLine line) {
        double longest =
                line.days().stream().mapToDouble(TimeLine.Day::minutes).max().orElse(60);
        double hours = Math.max(1, Math.ceil(longest / 60 - 1e-9));
        double scale = WIDE / (hours * 60);
        Set<Activity> seen = EnumSet.noneOf(Activity.class);
        line.days().forEach(day -> day.stretches().forEach(stretch -> seen.add(stretch.activity())));
        List<Activity> kinds = HATCHED.stream().filter(seen::contains).toList();
        int keyRows = (kinds.size() + 1) / 2;
        Drawing drawing = new Drawing(
                key,
                LEFT + WIDE + 12,
                TOP + STEP * line.days().size() + KEY_STEP * keyRows + 8,
                title,
                line.days().size() + " days, each from its beginning to its end; the table below says the same.");
        Markup defs = drawing.out().open("defs");
        for (int i = 0; i < kinds.size(); i++) {
            Hatching.define(defs, pattern(key, kinds.get(i)), HATCHED.indexOf(kinds.get(i)));
        }
        defs.closeLine();
        for (int hour = 0; hour <= hours; hour++) {
            drawing.text(LEFT + hour * 60 * scale, 12, "middle", hour + " h");
        }
        double y = TOP;
        for (int i = 0; i < line.days().size(); i++) {
            day(drawing, key, line.days().get(i), i + 1, y, scale);
            y += STEP;
        }
        for (int i = 0; i < kinds.size(); i++) {
            double x = i % 2 == 0 ? LEFT : LEFT + WIDE / 2;
            ShareBar.swatch(drawing, x, y - 6, 26, 12, pattern(key, kinds.get(i)));
            drawing.text(x + 34, y, "start", kinds.get(i).label());
            y += i % 2 == 1 ? KEY_STEP : 0;
        }
        return drawing.finish();
    }

    private static String pattern(String key, Activity kind) {
        return key + "-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void day(Drawing drawing, String key, TimeLine.Day day, int number, double y, double scale) {
        drawing.text(LEFT - 8, y + HIGH / 2, "end", "day " + number);
        drawing.rectangle(LEFT, y, day.minutes() * scale, HIGH, "style", Drawing.PAPER);
        Map<Activity, StringBuilder> paths = new EnumMap<>(Activity.class);
        String log = "";
        double from = LEFT;
        for (TimeLine.Stretch stretch : day.stretches()) {
            double x = LEFT + stretch.start() * scale;
            double width = stretch.minutes() * scale;
            paths.computeIfAbsent(stretch.activity(), kind -> new StringBuilder())
                    .append('M')
                    .append(Drawing.number(x))
                    .append(' ')
                    .append(Drawing.number(y))
                    .append('h')
                    .append(Drawing.number(width))
                    .append('v')
                    .append(Drawing.number(HIGH))
                    .append('h')
                    .append(Drawing.number(-width))
                    .append('z');
            if (!stretch.logId().equals(log)) {
                label(drawing, log, from, x, y);
                log = stretch.logId();
                from = x;
            }
        }
        paths.forEach((kind, path) -> drawing.path(
                path.toString(),
                "fill",
                "url(#" + pattern(key, kind) + ")",
                "stroke",
                "currentColor",
                "stroke-width",
                "0.5"));
        label(drawing, log, from, LEFT + day.minutes() * scale, y);
    }

    /** The log's name under its part of the bar, where there is room for it. */
    private static void label(Drawing drawing, String log, double from, double to, double y) {
        if (!log.isEmpty()) {
            double below = y + HIGH + 4;
            drawing.path(
                    "M" + Drawing.number(from + 1) + " " + Drawing.number(below) + "H"
                            + Drawing.number(Math.max(from + 1, to - 1)),
                    "stroke",
                    "currentColor",
                    "stroke-width",
                    "0.8");
            if (to - from > Math.max(LEAST_LABEL, Drawing.width(log))) {
                drawing.text((from + to) / 2, below + 9, "middle", log);
            }
        }
    }
}
