package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The net scale of a log: what a rule gives, less its defects.
 *
 * <p>A log is scaled in one part or, where the convention divides it, in several; a defect counts in the part where it
 * lies. Each is reckoned from the gross scale of its part and rounded to the step, an exact half up; the deductions of a part
 * are added, from the least, and are together never more than its gross scale. The source of the rounding says which way a
 * fraction goes, not whether each deduction is rounded or their sum; here it is each, and the working says what the sum
 * would be. So the order in which defects are named does not matter. Where it is known where they lie, what overlaps is
 * counted once: see {@link #of(Scale, List)}.
 *
 * @param rule the rule
 * @param parts the parts that are scaled as one, from the small end, with the defects of each
 * @param deductionStepBoardFeet deductions go to multiples of this
 */
@Calculation("scaling.net-scale")
public record NetScale(LogRule rule, List<Part> parts, double deductionStepBoardFeet) {

    /** The least share of sound wood of a softwood saw log: a third of its gross scale. Recalled with medium confidence. */
    public static final double SOFTWOOD_LEAST_SHARE = 1.0 / 3;

    /**
     * A part that is scaled as one.
     *
     * @param segment its scaling diameter and length
     * @param defects its defects, possibly none
     */
    public record Part(ScalingConvention.Segment segment, List<Defect> defects) {

        /** Keeps an immutable copy. */
        public Part {
            defects = List.copyOf(defects);
        }

        private double deduction(Defect defect, double gross, double step) {
            return Rounding.HALF_UP.toStep(
                    defect.boardFeet(gross, segment.diameterInches(), segment.lengthFeet()), step);
        }
    }

    /**
     * A defect and where it lies on its log.
     *
     * @param defect the defect
     * @param fromSmallEnd where it begins, if that is known; without meaning for a defect of the whole length
     */
    public record Placed(Defect defect, Optional<Length> fromSmallEnd) {

        /**
         * A defect whose place is known.
         *
         * @param defect the defect
         * @param fromSmallEnd where it begins
         */
        public Placed(Defect defect, Length fromSmallEnd) {
            this(defect, Optional.of(fromSmallEnd));
        }
    }

    /**
     * Keeps an immutable copy and scales once.
     *
     * @throws OutOfDomainException if there is no part, the rule refuses one, a defect does not fit its part, or the step is
     *     not above zero
     */
    public NetScale {
        parts = List.copyOf(parts);
        Domain.positive("step of deductions", "bf").require(deductionStepBoardFeet);
        if (parts.isEmpty()) {
            throw new OutOfDomainException(
                    "parts of a log", "none", "", "one or more", "give the log's diameter and length");
        }
        for (Part part : parts) {
            double gross = gross(rule, part);
            for (Defect defect : part.defects()) {
                part.deduction(defect, gross, deductionStepBoardFeet);
            }
        }
    }

    /**
     * A log scaled as one, with deductions in whole board feet, by the Scribner rules whose cells are tens in tens. Every
     * defect counts as it is, as if no two overlapped.
     *
     * @param rule the rule
     * @param scalingDiameterInches the log's scaling diameter
     * @param lengthFeet its scaling length
     * @param defects its defects, possibly none
     * @return the net scale
     * @throws OutOfDomainException if the rule refuses the log or a defect does not fit it
     */
    public static NetScale of(LogRule rule, double scalingDiameterInches, double lengthFeet, List<Defect> defects) {
        Part whole = new Part(new ScalingConvention.Segment(scalingDiameterInches, lengthFeet), defects);
        return new NetScale(rule, List.of(whole), step(rule));
    }

    /**
     * A log scaled in the parts of its scale, with the same steps as {@link #of(LogRule, double, double, List)}.
     *
     * <p>A defect with a length of its own is shared out by where it lies, from the small end; what lies beyond the scaling
     * length, in the trim, counts nothing. A perimeter defect takes as thick a ring off each part. Sweep is that of the whole
     * log, bent evenly: in a part it is less by the square of the part's share of the length. In a log of one part a defect
     * may be without a place.
     *
     * <p>Wood is lost once. Length cuts that overlap count as one, and other defects take nothing where a cut lies. Where
     * several together would take as much as their stretch scales, the stretch counts as cut; so sectors over one stretch
     * take no more than a full turn. Defects without a place are taken to lie apart, but for those that go along the whole
     * part. As each deduction is rounded, a stretch may still lose half a step more for each defect.
     *
     * @param scale the gross scale
     * @param defects its defects, possibly none
     * @return the net scale
     * @throws OutOfDomainException if a defect does not fit the log, has no place in a log of several parts, or sectors
     *     without a place make more than a full turn
     */
    public static NetScale of(Scale scale, List<Placed> defects) {
        List<ScalingConvention.Segment> segments = scale.segments();
        double top = segments.get(0).diameterInches();
        Length whole = Length.ofFeet(
                segments.stream()
                        .mapToDouble(ScalingConvention.Segment::lengthFeet)
                        .sum(),
                Rounding.DOWN);
        requirePlaces(defects, Length.max(whole, scale.log().length()), segments.size());
        List<Part> parts = new ArrayList<>();
        Length from = Length.ZERO;
        for (ScalingConvention.Segment segment : segments) {
            Length to = from.plus(Length.ofFeet(segment.lengthFeet(), Rounding.DOWN));
            Length ring = Length.ofInches(segment.diameterInches() - top, Rounding.DOWN);
            List<DefectStretches.Lying> here = new ArrayList<>();
            for (Placed placed : defects) {
                lying(placed, from, to, ring, whole).ifPresent(here::add);
            }
            double gross = scale.rule().boardFeet(segment.diameterInches(), segment.lengthFeet());
            parts.add(new Part(
                    segment,
                    DefectStretches.countedOnce(
                            to.minus(from),
                            here,
                            defect -> defect.boardFeet(gross, segment.diameterInches(), segment.lengthFeet()))));
            from = to;
        }
        return new NetScale(scale.rule(), parts, step(scale.rule()));
    }

    /** No defect begins beyond its log, and in a log of several parts each says where. */
    static void requirePlaces(List<Placed> defects, Length longest, int parts) {
        for (Placed placed : defects) {
            String beginning = "beginning of the " + placed.defect().label();
            if (parts > 1
                    && placed.fromSmallEnd().isEmpty()
                    && placed.defect().stretch().isPresent()) {
                throw new OutOfDomainException(
                        beginning, "not given", "", "how far from the small end it begins", "give its place");
            }
            Length begins = placed.fromSmallEnd().orElse(Length.ZERO);
            if (begins.compareTo(Length.ZERO) < 0 || begins.compareTo(longest) > 0) {
                throw new OutOfDomainException(
                        beginning, feet(begins), "", "0 to " + feet(longest), "measure from the small end of this log");
            }
        }
    }

    private static String feet(Length length) {
        return length.inFeet(64, Rounding.HALF_UP);
    }

    /** What of a defect lies in a part; empty if nothing. */
    static Optional<DefectStretches.Lying> lying(Placed placed, Length from, Length to, Length ring, Length whole) {
        Optional<Length> begins = placed.defect().stretch().isEmpty() ? Optional.empty() : placed.fromSmallEnd();
        if (begins.isEmpty() && placed.defect().stretch().isPresent()) {
            return Optional.of(new DefectStretches.Lying(placed.defect(), begins));
        }
        return placed.defect()
                .between(begins.orElse(from), from, to, ring, whole)
                .map(here -> new DefectStretches.Lying(
                        here, begins.map(at -> Length.max(at, from).minus(from))));
    }

    private static double step(LogRule rule) {
        return rule.id().equals("scribner-decimal-c") || rule.id().equals("scribner-factors") ? 10 : 1;
    }

    private static double gross(LogRule rule, Part part) {
        return rule.boardFeet(part.segment().diameterInches(), part.segment().lengthFeet());
    }

    /** In the order of the parts, as their scale adds them. */
    private double grossBoardFeet() {
        double sum = 0;
        for (Part part : parts) {
            sum += gross(rule, part);
        }
        return sum;
    }

    /** As the defects of a part stand, rounded. */
    private double[] deductions(Part part) {
        double gross = gross(rule, part);
        return part.defects().stream()
                .mapToDouble(defect -> part.deduction(defect, gross, deductionStepBoardFeet))
                .toArray();
    }

    private double roundedOnce(Part part) {
        double gross = gross(rule, part);
        double[] each = part.defects().stream()
                .mapToDouble(defect -> defect.boardFeet(
                        gross, part.segment().diameterInches(), part.segment().lengthFeet()))
                .toArray();
        return Math.min(gross, Rounding.HALF_UP.toStep(sum(each), deductionStepBoardFeet));
    }

    /** From the least, so that the sum has the same bits in whatever order the defects stand. */
    static double sum(double[] deductions) {
        double[] rising = deductions.clone();
        Arrays.sort(rising);
        double sum = 0;
        for (double deduction : rising) {
            sum += deduction;
        }
        return sum;
    }

    /** The same sum in symbols. */
    static String sumText(double[] deductions) {
        Integer[] order = new Integer[deductions.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(deductions[a], deductions[b]));
        StringBuilder text = new StringBuilder();
        for (int i : order) {
            text.append(text.isEmpty() ? "d" : " + d").append(i + 1);
        }
        return text.isEmpty() ? "0" : text.toString();
    }

    private double net() {
        double sum = 0;
        for (Part part : parts) {
            double gross = gross(rule, part);
            sum += gross - Math.min(gross, sum(deductions(part)));
        }
        return sum;
    }

    /**
     * The scale without regard to defects.
     *
     * @return board feet of a scale
     */
    public BoardFeet gross() {
        return BoardFeet.scale(grossBoardFeet());
    }

    /**
     * The scale less the deductions.
     *
     * @return board feet of a scale, 0 to the gross scale
     */
    public BoardFeet boardFeet() {
        return BoardFeet.scale(net());
    }

    /**
     * The share of the gross scale that is sound.
     *
     * @return 0 to 1
     * @throws OutOfDomainException if the log scales nothing
     */
    @Calculation("scaling.sound-share")
    public double soundShare() {
        return net() / someGross();
    }

    private double someGross() {
        double gross = grossBoardFeet();
        if (!(gross > 0)) {
            throw new OutOfDomainException(
                    "gross scale", "0", "bf", "above 0", "a log that scales nothing has no share of sound wood");
        }
        return gross;
    }

    /**
     * Whether enough of the log is sound.
     *
     * @param leastShare of the gross scale, for example {@link #SOFTWOOD_LEAST_SHARE}
     * @return true if the sound share is no less
     * @throws OutOfDomainException if the share is not 0 to 1, or the log scales nothing
     */
    public boolean merchantable(double leastShare) {
        Domain.of("least share of sound wood", "", 0, 1).require(leastShare);
        return soundShare() >= leastShare;
    }

    /**
     * How the net scale comes about.
     *
     * @return a working whose value has the bits of {@link #boardFeet}
     */
    public Working working() {
        return lines().build();
    }

    /**
     * How the share of sound wood comes about.
     *
     * @return a working whose value has the bits of {@link #soundShare}
     * @throws OutOfDomainException if the log scales nothing
     */
    public Working soundShareWorking() {
        someGross();
        return lines().step("s", "share of sound wood", "N / G", "", Sources.get("definition"))
                .note("A softwood saw log is usually culled with less than a third sound: "
                        + Sources.get("merchantable-third-memory").citation() + ".")
                .build();
    }

    private Working.Builder lines() {
        Working.Builder working = Working.of("Net scale by " + rule.name());
        if (parts.size() == 1) {
            return lines(working, parts.get(0), "");
        }
        StringBuilder gross = new StringBuilder();
        StringBuilder net = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            String n = Integer.toString(i + 1);
            lines(working, parts.get(i), " of part " + n);
            working.step("G" + n, "gross scale of part " + n, "G", "bf", Sources.get("definition"))
                    .step("N" + n, "net scale of part " + n, "N", "bf", Sources.get("definition"));
            gross.append(i == 0 ? "G" : " + G").append(n);
            net.append(i == 0 ? "N" : " + N").append(n);
        }
        return working.step("G", "gross scale of the log", gross.toString(), "bf", Sources.get("definition"))
                .step("N", "net scale of the log", net.toString(), "bf", Sources.get("definition"));
    }

    private Working.Builder lines(Working.Builder working, Part part, String ofPart) {
        Working gross =
                rule.working(part.segment().diameterInches(), part.segment().lengthFeet());
        working.include(gross)
                .step("G", "gross scale" + ofPart, gross.result().symbol(), "bf", Sources.get("definition"))
                .given("D", "scaling diameter", part.segment().diameterInches(), "in")
                .given("L", "scaling length", part.segment().lengthFeet(), "ft");
        for (int i = 0; i < part.defects().size(); i++) {
            Defect defect = part.defects().get(i);
            working.note("Deduction " + (i + 1) + ofPart + ", " + defect.label() + ": "
                    + defect.source().citation() + ".");
            defect.deduct(working, false)
                    .round(
                            "d" + (i + 1),
                            "deduction " + (i + 1) + ", " + defect.label(),
                            "d",
                            Rounding.HALF_UP,
                            deductionStepBoardFeet,
                            "bf",
                            Sources.get("fsh-2409-11-1985"));
        }
        if (part.defects().size() > 1) {
            working.note(
                    "Each deduction is rounded on its own; the source says which way a fraction goes, not whether of"
                            + " each or of the sum. Rounded once, the deductions" + ofPart + " would be "
                            + PublishedRule.literal(roundedOnce(part)) + " bf.");
        }
        return working.step(
                        "T",
                        "all deductions, from the least, no more than the gross scale",
                        "min(G, " + sumText(deductions(part)) + ")",
                        "bf",
                        Sources.get("definition"))
                .step("N", "net scale" + ofPart, "G - T", "bf", Sources.get("definition"));
    }
}
