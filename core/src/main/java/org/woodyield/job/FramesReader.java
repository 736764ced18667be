package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.measure.Length;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.SearchSpace;

/** Reads the ways in which a log may lie, each once; an offset has the lift of the large end behind it, and each lift stands once. */
final class FramesReader {

    private static final Pattern WORD_AND_LIFT = Pattern.compile("(\\p{L}+)\\s+([-+]?[\\d.].*)");
    private static final Length MOST_LIFT = Length.inches(24);
    private static final String LIFT_REMEDY =
            "write how much higher the axis stands at the large end, such as offset 3/4 in, or offset -3/4 in for lower";

    private FramesReader() {}

    /** The space with these frames; what cannot be read has been noted. */
    static Optional<SearchSpace> read(Cell cell, SearchSpace space) {
        List<Cell> parts = cell.list().orElse(List.of());
        List<SearchSpace.Way> ways = new ArrayList<>();
        boolean whole = !parts.isEmpty();
        for (Cell part : parts) {
            Matcher split = WORD_AND_LIFT.matcher(part.text());
            boolean lifted = split.matches();
            Cell word = part.part(lifted ? split.group(1) : part.text());
            Optional<Frame.Lay> lay = word.choice(Choices.FRAMES);
            if (lay.isEmpty()) {
                whole = false;
                continue;
            }
            boolean offset = lay.get() == Frame.Lay.OFFSET;
            if (offset != lifted) {
                part.refuse(
                        offset ? "offset with a length behind it" : word.text() + " without a length",
                        offset ? LIFT_REMEDY : "take the length out, or write offset " + split.group(2));
                whole = false;
                continue;
            }
            SearchSpace.Way way = new SearchSpace.Way(lay.get(), Length.ZERO);
            if (offset) {
                Optional<Length> lift = part.part(split.group(2)).lengthEitherWay(MOST_LIFT, LIFT_REMEDY);
                if (lift.isEmpty()) {
                    whole = false;
                    continue;
                }
                way = new SearchSpace.Way(lay.get(), lift.get());
            }
            if (ways.contains(way)) {
                part.refuse("each frame once, and each offset", "take one of the two out");
                whole = false;
            }
            ways.add(way);
        }
        return whole ? Optional.of(space.withWays(ways)) : Optional.empty();
    }
}
