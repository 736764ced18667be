package org.woodyield.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.Saw;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.work.WorkInputs;

/** Words of the job files and what they mean, in the order in which they are shown. */
final class Choices {

    static final Map<String, Boolean> YES_NO = of("yes", true, "no", false);
    static final Map<String, Boolean> OVER_BARK = of("inside bark", false, "over bark", true);
    static final Map<String, Saw.Reference> RIDES =
            of("previous face", Saw.Reference.PREVIOUS_FACE, "bed", Saw.Reference.BED);
    /** How a log may lie; the offset has its lift behind it. */
    static final Map<String, Frame.Lay> FRAMES = frames();

    static final Map<String, WorkInputs> SAW_KIND =
            of("chain", WorkInputs.chainDefaults(), "band", WorkInputs.bandDefaults());

    static final Map<String, Rounding> HALF = of("up", Rounding.HALF_UP, "down", Rounding.HALF_DOWN);

    static final Map<String, ShrinkageModel> SHRINKAGE = of(
            ShrinkageModel.straightLine().id(),
            ShrinkageModel.straightLine(),
            ShrinkageModel.lumberEquation().id(),
            ShrinkageModel.lumberEquation());

    static final Map<String, Surface> SURFACE = surfaces();

    private Choices() {}

    private static Map<String, Frame.Lay> frames() {
        Map<String, Frame.Lay> frames = new LinkedHashMap<>();
        frames.put("axis", Frame.Lay.AXIS);
        frames.put("bark above", Frame.Lay.BARK_ABOVE);
        frames.put("bark below", Frame.Lay.BARK_BELOW);
        frames.put("offset", Frame.Lay.OFFSET);
        return Collections.unmodifiableMap(frames);
    }

    private static Map<String, Surface> surfaces() {
        Map<String, Surface> surfaces = new LinkedHashMap<>();
        for (Surface surface : Surface.values()) {
            surfaces.put(surface.words(), surface);
        }
        return Collections.unmodifiableMap(surfaces);
    }

    private static <T> Map<String, T> of(String first, T meaning, String second, T other) {
        Map<String, T> choices = new LinkedHashMap<>();
        choices.put(first, meaning);
        choices.put(second, other);
        return Collections.unmodifiableMap(choices);
    }
}
