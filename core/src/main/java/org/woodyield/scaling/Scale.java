package org.woodyield.scaling;

import java.util.List;
import java.util.Optional;
import org.woodyield.log.Log;
import org.woodyield.measure.BoardFeet;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A log scaled by a rule under a convention.
 *
 * @param log the log
 * @param rule the rule
 * @param convention how diameter and length were taken
 * @param segments the parts that were scaled, from the small end
 */
@Calculation("scaling.scale")
public record Scale(Log log, LogRule rule, ScalingConvention convention, List<ScalingConvention.Segment> segments) {

    /** Keeps an immutable copy. */
    public Scale {
        segments = List.copyOf(segments);
    }

    /**
     * Scales a log.
     *
     * @param log the log
     * @param rule the rule
     * @param convention how diameter and length are taken
     * @return the scale
     * @throws org.woodyield.measure.OutOfDomainException if the log has no scaling length, or the rule refuses a segment
     */
    public static Scale of(Log log, LogRule rule, ScalingConvention convention) {
        Scale scale = new Scale(log, rule, convention, convention.segments(log, rule.diameterAt()));
        scale.sum();
        return scale;
    }

    private double sum() {
        double sum = 0;
        for (ScalingConvention.Segment segment : segments) {
            sum += rule.boardFeet(segment.diameterInches(), segment.lengthFeet());
        }
        return sum;
    }

    /**
     * The scale of the log, the sum over its segments.
     *
     * @return board feet of a scale
     */
    public BoardFeet boardFeet() {
        return BoardFeet.scale(sum());
    }

    /**
     * What a reader should know of this figure before using it.
     *
     * @return the rule's first caution over the segments; empty for most logs
     */
    public Optional<String> caution() {
        for (ScalingConvention.Segment segment : segments) {
            Optional<String> caution = rule.caution(segment.diameterInches(), segment.lengthFeet());
            if (caution.isPresent()) {
                return caution;
            }
        }
        return Optional.empty();
    }

    /**
     * How the scale comes about, from the measured log.
     *
     * @return a working whose value has the bits of {@link #boardFeet}
     */
    public Working working() {
        Working.Builder working = Working.of("Scale of log " + log.id() + " by " + rule.name())
                .given("a", "longest small-end diameter", log.smallEndLong().toInches(), "in")
                .given("b", "shortest small-end diameter", log.smallEndShort().toInches(), "in")
                .step("m", "mean small-end diameter", "(a + b) / 2", "in", Sources.get("definition"))
                .given("M", "mean large-end diameter", log.largeEndMean().toInches(), "in")
                .given("H", "length", log.length().toFeet(), "ft")
                .note("Scaling diameter and length by the convention '" + convention.name() + "': "
                        + convention.source().citation() + ".");
        convention.notes().forEach(working::note);
        if (segments.size() == 1) {
            ScalingConvention.Segment one = segments.get(0);
            return working.include(rule.working(one.diameterInches(), one.lengthFeet()))
                    .build();
        }
        StringBuilder sum = new StringBuilder();
        for (int i = 0; i < segments.size(); i++) {
            ScalingConvention.Segment segment = segments.get(i);
            Working part = rule.working(segment.diameterInches(), segment.lengthFeet());
            String n = Integer.toString(i + 1);
            working.include(part);
            working.step("scale" + n, "scale of segment " + n, part.result().symbol(), "bf", Sources.get("definition"));
            sum.append(i == 0 ? "scale" : " + scale").append(n);
        }
        return working.step("total", "scale of the log", sum.toString(), "bf", Sources.get("definition"))
                .build();
    }
}
