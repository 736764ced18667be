package org.woodyield.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.woodyield.work.WorkInput;

/** All keys of the properties file. */
final class Keys {

    static final Key FORMAT = Key.required("format", "1");
    static final Key TITLE = Key.required("title", "Tool shed");
    static final Key CURRENCY = Key.required("currency", "USD");

    static final Key SAW_NAME = Key.optional("saw.name", "rail and chain saw");
    static final Key SAW_KIND = Key.required("saw.kind", "chain");
    static final Key SAW_KERF = Key.required("saw.kerf", "3/8 in");
    static final Key SAW_WIDTH = Key.required("saw.width-of-cut", "24 in");
    static final Key SAW_STEP = Key.required("saw.setting-step", "1/16 in");
    static final Key SAW_RIDES = Key.required("saw.rides", "previous face");
    static final Key SAW_LEAST_HEIGHT = Key.optional("saw.least-height", "0 in");
    static final Key SAW_VARIATION = Key.required("saw.variation", "0.03 in");

    static final Key SAW_GUIDE_LENGTH = Key.optional("saw.guide-length", "14 ft");
    static final Key SAW_GUIDE_DIP = Key.optional("saw.guide-dip", "1/16 in");
    static final Key SAW_GUIDE_WIND = Key.optional("saw.guide-wind", "0.2 deg");
    static final Key SAW_GUIDE_SPAN = Key.optional("saw.guide-tested-span", "8 ft");
    static final Key SAW_GUIDE_SAG = Key.optional("saw.guide-tested-dip", "1/8 in");
    static final Key SAW_CARRIAGE = Key.optional("saw.carriage-base", "14 in");
    static final Key SAW_WANDER = Key.optional("saw.wander", "1/16 in");

    static final Key FINISH_FLAT_SHARE = Key.optional("finish.flatness-share", "25 %");

    static final Key FINISH_PLANING = Key.required("finish.planing", "1/32 in");
    static final Key FINISH_UNDERSIZE = Key.required("finish.undersize", "5 %");

    static final Key FINISH_END_TRIM = Key.optional("finish.end-trim", "1 in");
    static final Key FINISH_SPLITS = Key.optional("finish.splits", "2 %");
    static final Key FINISH_WARP = Key.optional("finish.warp", "4 %");

    static final Key DRYING_STACK_WIDTH = Key.optional("drying.stack-width", "4 ft");
    static final Key DRYING_GAP = Key.optional("drying.gap", "1 in");
    static final Key DRYING_STICKER = Key.optional("drying.sticker", "3/4 in");
    static final Key DRYING_STICKER_SPACING = Key.optional("drying.sticker-spacing", "16 in");
    static final Key DRYING_TEMPERATURE = Key.optional("drying.temperature", "70 F");
    static final Key DRYING_HUMIDITY = Key.optional("drying.humidity", "65 %");
    static final Key DRYING_PLACE = Key.optional("drying.place", "Denver, CO");
    static final Key DRYING_PITH_DISTANCE = Key.optional("drying.pith-distance", "3 in");

    static final Key PATTERN_TURNS = Key.optional("pattern.turns", "0 deg; 45 deg");
    static final Key PATTERN_CANTS = Key.optional("pattern.cants", "yes");
    static final Key PATTERN_GRID = Key.optional("pattern.grid", "1/8 in");
    static final Key PATTERN_FRAMES = Key.optional("pattern.frames", "axis; bark above; bark below; offset 3/4 in");
    static final Key PATTERN_TRIM_START = Key.optional("pattern.trim-start", "1 ft");
    static final Key PATTERN_OVER_THICK = Key.optional("pattern.over-thick", "1/4 in");

    /** The figures of work and money, by key; what lumber costs when bought stands in a table of its own. */
    static final Map<WorkInput, Key> WORK = work();

    private Keys() {}

    static List<Key> all() {
        List<Key> all = new ArrayList<>(List.of(
                FORMAT,
                TITLE,
                CURRENCY,
                SAW_NAME,
                SAW_KIND,
                SAW_KERF,
                SAW_WIDTH,
                SAW_STEP,
                SAW_RIDES,
                SAW_LEAST_HEIGHT,
                SAW_VARIATION,
                SAW_GUIDE_LENGTH,
                SAW_GUIDE_DIP,
                SAW_GUIDE_WIND,
                SAW_GUIDE_SPAN,
                SAW_GUIDE_SAG,
                SAW_CARRIAGE,
                SAW_WANDER,
                FINISH_FLAT_SHARE,
                FINISH_PLANING,
                FINISH_UNDERSIZE,
                FINISH_END_TRIM,
                FINISH_SPLITS,
                FINISH_WARP,
                DRYING_STACK_WIDTH,
                DRYING_GAP,
                DRYING_STICKER,
                DRYING_STICKER_SPACING,
                DRYING_TEMPERATURE,
                DRYING_HUMIDITY,
                DRYING_PLACE,
                DRYING_PITH_DISTANCE,
                PATTERN_TURNS,
                PATTERN_CANTS,
                PATTERN_GRID,
                PATTERN_FRAMES,
                PATTERN_TRIM_START,
                PATTERN_OVER_THICK));
        all.addAll(WORK.values());
        return List.copyOf(all);
    }

    /** What describes a saw by itself. */
    static List<Key> ofSaw() {
        List<Key> keys = new ArrayList<>(List.of(
                FORMAT, SAW_NAME, SAW_KIND, SAW_KERF, SAW_WIDTH, SAW_STEP, SAW_RIDES, SAW_LEAST_HEIGHT, SAW_VARIATION));
        WORK.forEach((input, key) -> {
            if (input.ofSaw()) {
                keys.add(key);
            }
        });
        return List.copyOf(keys);
    }

    static Key work(WorkInput input) {
        Key key = WORK.get(input);
        if (key == null) {
            throw new IllegalArgumentException("no key for " + input);
        }
        return key;
    }

    private static Map<WorkInput, Key> work() {
        Map<WorkInput, Key> keys = new LinkedHashMap<>();
        for (WorkInput input : WorkInput.values()) {
            if (input == WorkInput.LUMBER_PRICE) {
                continue;
            }
            String text = input.keyOfJob();
            keys.put(input, input == WorkInput.RATED_POWER ? Key.required(text, "4.4 kW") : Key.optional(text, ""));
        }
        return Collections.unmodifiableMap(keys);
    }
}
