package org.woodyield.scaling;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.scaling.ScalingConvention.Split;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * The rule and the convention of a place, by law or by a written practice. What its source leaves open is filled from
 * {@link ScalingConvention#plain()}, and the convention's notes say so. Current law is for the reader to look up; the
 * edition read stands in the source.
 */
public enum Jurisdiction {
    /** Michigan: International 1/4-inch. */
    MICHIGAN("michigan", "Michigan", "international-quarter", "mcl-290-401", Rounding.HALF_DOWN, 1, 40),
    /** Massachusetts: International 1/4-inch unless another method is agreed. */
    MASSACHUSETTS("massachusetts", "Massachusetts", "international-quarter", "mass-96-11a", Rounding.HALF_DOWN, 1, 40),
    /** Louisiana: Doyle on the small end inside bark. */
    LOUISIANA("louisiana", "Louisiana", "doyle", "la-rs-3-4641", Rounding.HALF_DOWN, 1, 40),
    /** Georgia: Scribner Decimal C, two logs from 18 ft, three or more from 34 ft. */
    GEORGIA("georgia", "Georgia", "scribner-decimal-c", "ga-2-14-80", Rounding.HALF_EVEN, 2, 16),
    /** Minnesota: Scribner Decimal C, even feet under 24 ft. */
    MINNESOTA("minnesota", "Minnesota", "scribner-decimal-c", "minn-239-33", Rounding.HALF_DOWN, 2, 22),
    /** Vermont: its own rule in sections of 12 ft from the small end. */
    VERMONT("vermont", "Vermont (Vermont rule)", "vermont", "vt-9-2693", Rounding.HALF_DOWN, 1, 12),
    /** California, timber yield tax: Scribner Decimal C up to 20 ft. */
    CALIFORNIA(
            "california",
            "California, timber yield tax",
            "scribner-decimal-c",
            "ca-18-1022",
            Rounding.HALF_DOWN,
            1,
            20),
    /** Tongass National Forest: Scribner Decimal C up to 40 ft. */
    TONGASS("tongass", "Tongass National Forest", "scribner-decimal-c", "r10-2409-11", Rounding.HALF_DOWN, 1, 40),
    /** Chugach National Forest: Scribner Decimal C up to 20 ft. */
    CHUGACH("chugach", "Chugach National Forest", "scribner-decimal-c", "r10-2409-11", Rounding.HALF_DOWN, 1, 20),
    /** Idaho practice: Scribner Decimal C; a whole-inch class runs from half an inch below, included, to half above. */
    IDAHO("idaho", "Idaho, Board of Scaling Practices", "scribner-decimal-c", "idaho-scaling", Rounding.HALF_UP, 1, 20);

    private final String id;
    private final String label;
    private final String rule;
    private final String source;
    private final Rounding diameter;
    private final int lengthStepFeet;
    private final int greatestFeet;

    Jurisdiction(
            String id,
            String label,
            String rule,
            String source,
            Rounding diameter,
            int lengthStepFeet,
            int greatestFeet) {
        this.id = id;
        this.label = label;
        this.rule = rule;
        this.source = source;
        this.diameter = diameter;
        this.lengthStepFeet = lengthStepFeet;
        this.greatestFeet = greatestFeet;
    }

    /**
     * A jurisdiction by its id.
     *
     * @param id for example {@code georgia}
     * @return the jurisdiction
     * @throws OutOfDomainException if there is none; names all that there are
     */
    public static Jurisdiction byId(String id) {
        return Arrays.stream(values())
                .filter(one -> one.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "jurisdiction",
                        "'" + id + "'",
                        "",
                        Arrays.stream(values()).map(Jurisdiction::id).collect(Collectors.joining(", ")),
                        "take one of these ids, or name rule and convention"));
    }

    /**
     * The key.
     *
     * @return lower case
     */
    public String id() {
        return id;
    }

    /**
     * The place as shown.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * The rule of the place.
     *
     * @return one of {@link LogRules}
     */
    public LogRule rule() {
        return LogRules.byId(rule);
    }

    /**
     * What states rule and convention.
     *
     * @return statute or practice with its edition
     */
    public Source source() {
        return Sources.get(source);
    }

    /**
     * The convention of the place.
     *
     * @return its notes name what the source leaves open
     */
    public ScalingConvention convention() {
        return new ScalingConvention(
                id,
                label,
                Length.inches(1),
                diameter,
                Optional.empty(),
                Length.ZERO,
                Length.feet(lengthStepFeet),
                Length.feet(greatestFeet),
                this == VERMONT ? Split.WHOLE_FROM_SMALL_END : Split.NEARLY_EQUAL,
                source(),
                notes());
    }

    /**
     * Scales a log as this place does.
     *
     * @param log the log
     * @return the scale
     * @throws OutOfDomainException if the log has no scaling length there, or the rule refuses a segment
     */
    public Scale scale(Log log) {
        return Scale.of(log, rule(), convention());
    }

    private List<String> notes() {
        String halves = "The source does not say what an exact half inch does; it is dropped here.";
        String parts = "Which part of a divided log gets the odd step is not stated; the lower one gets it here.";
        return switch (this) {
            case MICHIGAN, MASSACHUSETTS, LOUISIANA ->
                List.of(
                        halves,
                        "The source states neither trim nor the greatest scaling length; the rest of a foot is dropped and"
                                + " up to 40 ft are scaled as one here.");
            case GEORGIA ->
                List.of(
                        "Exact half inches are to go up and down evenly; here they go to the even inch, the same for every"
                                + " log of one size.",
                        parts);
            case MINNESOTA -> List.of(halves, parts);
            case VERMONT ->
                List.of(
                        halves,
                        "The diameter of a lower section comes from the log's own taper, straight from end to end.");
            case CALIFORNIA, TONGASS, CHUGACH -> List.of(halves, "Length is taken to the foot below here.", parts);
            case IDAHO ->
                List.of("The greatest scaling length of 20 ft is not in this source; it is east-side practice.", parts);
        };
    }
}
