package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.log.Log;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How the scaling diameter and length are taken from a log that was measured, before any rule is asked.
 *
 * <p>The two diameters of the small end, at right angles, are averaged and taken to the step; the length loses the trim
 * and is taken to its step. A log longer than the greatest scaling length is scaled as two or more segments, either of nearly
 * equal length in steps, longer ones toward the butt, or of the greatest length from the small end with the rest at the
 * butt; the diameter of a lower segment is the log's own where that segment's small end lies, read off its measured profile
 * or, without one, off the straight taper between its ends, and rounded in the same way.
 *
 * @param id the key
 * @param name as shown
 * @param diameterStep the mean diameter goes to multiples of this
 * @param diameterRounding how, and what an exact half does
 * @param eachAxisFirst if present, each of the two diameters is first taken to the step in this way
 * @param trim what a log must be longer than its scaling length
 * @param lengthStep the scaling length goes to multiples of this
 * @param lengthRounding how; down unless the source says otherwise
 * @param greatestLength the longest that is scaled as one
 * @param split how a longer log is divided
 * @param diameterAt where the diameter is taken, if not where the rule itself wants it
 * @param source what states the convention
 * @param notes what the source leaves open and how it is filled here
 */
public record ScalingConvention(
        String id,
        String name,
        Length diameterStep,
        Rounding diameterRounding,
        Optional<Rounding> eachAxisFirst,
        Length trim,
        Length lengthStep,
        Rounding lengthRounding,
        Length greatestLength,
        Split split,
        Optional<DiameterAt> diameterAt,
        Source source,
        List<String> notes) {

    private static final Length INCH = Length.inches(1);
    private static final Length FOOT = Length.feet(1);

    /** How a log longer than the greatest scaling length is divided. */
    public enum Split {
        /** Nearly equal parts in steps of length, longer ones toward the butt. */
        NEARLY_EQUAL,
        /** Parts of the greatest length from the small end, the rest at the butt. */
        WHOLE_FROM_SMALL_END
    }

    /**
     * A part of a log that is scaled as one.
     *
     * @param diameterInches scaling diameter
     * @param lengthFeet scaling length
     */
    public record Segment(double diameterInches, double lengthFeet) {}

    /**
     * Checks the parts and keeps an immutable copy.
     *
     * @throws IllegalArgumentException if a step or the greatest length is not above zero, the trim is below zero, or the
     *     greatest length is shorter than a step
     */
    public ScalingConvention {
        notes = List.copyOf(notes);
        if (!diameterStep.isPositive()
                || !lengthStep.isPositive()
                || greatestLength.compareTo(lengthStep) < 0
                || trim.compareTo(Length.ZERO) < 0) {
            throw new IllegalArgumentException("convention " + id
                    + ": steps above 0, trim 0 or more and a greatest length of at least a step are needed");
        }
    }

    /**
     * The plain convention where nobody asks for another: mean of the two diameters to the nearest inch, an exact half
     * down; whole feet, the rest dropped; up to 40 ft as one.
     *
     * @return common practice, no law
     */
    public static ScalingConvention plain() {
        return new ScalingConvention(
                "plain",
                "nearest inch, whole feet",
                INCH,
                Rounding.HALF_DOWN,
                Optional.empty(),
                Length.ZERO,
                FOOT,
                Rounding.DOWN,
                Length.feet(40),
                Split.NEARLY_EQUAL,
                Optional.empty(),
                Sources.get("trade"),
                List.of());
    }

    /**
     * The diameter where a rule wants it, before rounding: the exact mean of two diameters at right angles.
     *
     * @param log the log
     * @param where the place
     * @param fromSmallEnd for a lower segment, where its small end lies
     * @param segment the segment's length
     * @return to the nanometre, down
     */
    private static Length diameter(Log log, DiameterAt where, Length fromSmallEnd, Length segment) {
        if (where == DiameterAt.SMALL_END) {
            return fromSmallEnd.equals(Length.ZERO) ? log.smallEndMean() : log.meanDiameter(fromSmallEnd);
        }
        if (where == DiameterAt.MEAN_OF_ENDS && !log.profile().isEmpty()) {
            // On straight taper this mean is the diameter half way along.
            return log.meanDiameter(fromSmallEnd)
                    .plus(log.meanDiameter(fromSmallEnd.plus(segment)))
                    .dividedBy(2, Rounding.DOWN);
        }
        return log.meanDiameter(fromSmallEnd.plus(segment.dividedBy(2, Rounding.DOWN)));
    }

    /**
     * The scaling length of the whole log: its length less the trim, taken to the step.
     *
     * @param log the log
     * @return in feet
     * @throws OutOfDomainException if nothing is left
     */
    public double scalingLengthFeet(Log log) {
        return steps(log) * lengthStep.toFeet();
    }

    private long steps(Log log) {
        Length rest = log.length().minus(trim);
        if (rest.compareTo(lengthStep) < 0) {
            throw new OutOfDomainException(
                    "length of log " + log.id(),
                    log.length().toString(),
                    "",
                    "at least " + lengthStep + " and the trim of " + trim,
                    "such a log has no scaling length by the convention '" + name + "'");
        }
        return rest.steps(lengthStep, lengthRounding);
    }

    /**
     * The scaling diameter of the whole log at the small end.
     *
     * @param log the log
     * @return in inches
     */
    @Calculation("scaling.diameter")
    public double scalingDiameterInches(Log log) {
        return inches(read(log.smallEndLong()).plus(read(log.smallEndShort())));
    }

    /**
     * The working of {@link #scalingDiameterInches}.
     *
     * @param log the log
     * @return a working with the same value
     */
    public Working scalingDiameterInchesWorking(Log log) {
        Source exact = Sources.get("definition");
        Working.Builder working = Working.of("Scaling diameter of log " + log.id() + ", " + name)
                .given("a", "longest small-end diameter", log.smallEndLong().toInches(), "in")
                .given("b", "shortest small-end diameter", log.smallEndShort().toInches(), "in");
        if (eachAxisFirst.isPresent()) {
            working.round("A", "longest, as read", "a", eachAxisFirst.get(), diameterStep.toInches(), "in", source)
                    .round("B", "shortest, as read", "b", eachAxisFirst.get(), diameterStep.toInches(), "in", source)
                    .step("m", "mean", "(A + B) / 2", "in", exact);
        } else {
            working.step("m", "mean", "(a + b) / 2", "in", exact);
        }
        working.round("D", "scaling diameter", "m", diameterRounding, diameterStep.toInches(), "in", source);
        notes.forEach(working::note);
        return working.build();
    }

    /** As a diameter is read before the mean is rounded; a computed one is taken as if both ways were read alike. */
    private Length read(Length diameter) {
        return eachAxisFirst.isPresent() ? diameter.roundedTo(diameterStep, eachAxisFirst.get()) : diameter;
    }

    /** From twice a diameter, so that no half is lost in halving. */
    private double inches(Length twice) {
        return diameterRounding.quotient(twice.toNanometres(), Math.multiplyExact(2, diameterStep.toNanometres()))
                * diameterStep.toInches();
    }

    /**
     * The segments in which a log is scaled, from the small end.
     *
     * @param log the log
     * @param ruleWants the rule's place for the diameter
     * @return one or more
     * @throws OutOfDomainException if the log has no scaling length
     */
    public List<Segment> segments(Log log, DiameterAt ruleWants) {
        DiameterAt where = diameterAt.orElse(ruleWants);
        long steps = steps(log);
        long most = greatestLength.steps(lengthStep, Rounding.DOWN);
        long count = Math.floorDiv(steps + most - 1, most);
        List<Segment> segments = new ArrayList<>();
        long done = 0;
        for (long i = 0; i < count; i++) {
            // Of nearly equal parts the lower ones get what does not divide evenly.
            long own =
                    split == Split.NEARLY_EQUAL ? Math.floorDiv(steps - done, count - i) : Math.min(most, steps - done);
            Length from = lengthStep.times(done);
            Length length = lengthStep.times(own);
            double diameter = i == 0 && where == DiameterAt.SMALL_END
                    ? scalingDiameterInches(log)
                    : inches(read(diameter(log, where, from, length)).times(2));
            segments.add(new Segment(diameter, length.toFeet()));
            done += own;
        }
        return List.copyOf(segments);
    }
}
