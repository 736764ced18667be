package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.measure.Length;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.SearchSpace;

/** Reads the ways in which a log may lie, each once, the offset with the lift of the large end behind it. */
final class FramesReader {

    private static final Pattern WORD_AND_LIFT = Pattern.compile("(\\p{L}+)\\s+(([-+]?)([\\d.].*))");
    private static final Length MOST_LIFT = Length.inches(24);
    private static final String LIFT_REMEDY =
            "write how much higher the axis stands at the large end, such as offset 3/4 in, or offset -3/4 in for lower";

    private FramesReader() {}

    /** The space with these frames; what cannot be read has been noted. */
    static Optional<SearchSpace> read(Cell cell, SearchSpace space) {
        List<Cell> parts = cell.list().orElse(List.of());
        List<Frame.Lay> lays = new ArrayList<>();
        SearchSpace framed = space;
        for (Cell part : parts) {
            Matcher split = WORD_AND_LIFT.matcher(part.text());
            boolean lifted = split.matches();
            Cell word = part.part(lifted ? split.group(1) : part.text());
            Optional<Frame.Lay> lay = word.choice(Choices.FRAMES);
            if (lay.isEmpty()) {
                continue;
            }
            if (lays.contains(lay.get())) {
                part.refuse("each frame once, an offset too", "take one of the two out");
                continue;
            }
            boolean offset = lay.get() == Frame.Lay.OFFSET;
            if (offset != lifted) {
                part.refuse(
                        offset ? "offset with a length behind it" : word.text() + " without a length",
                        offset ? LIFT_REMEDY : "take the length out, or write offset " + split.group(2));
                continue;
            }
            if (offset) {
                Optional<Length> lift = part.part(split.group(4)).lengthOrNoneUpTo(MOST_LIFT, LIFT_REMEDY);
                if (lift.isEmpty()) {
                    continue;
                }
                framed = framed.withOffset(split.group(3).equals("-") ? Length.ZERO.minus(lift.get()) : lift.get());
            }
            lays.add(lay.get());
        }
        return parts.isEmpty() || lays.size() < parts.size() ? Optional.empty() : Optional.of(framed.withLays(lays));
    }
}
