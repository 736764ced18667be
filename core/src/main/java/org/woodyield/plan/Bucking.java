package org.woodyield.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.woodyield.log.Log;
import org.woodyield.log.StemProfile;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.Scale;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.wood.Species;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Cuts a stem into logs so that they are worth most under a log rule and a buyer's prices.
 *
 * <p>From the stump upward each cut takes one of the lengths, with its trim and the kerf of the cut, or one of the offcuts
 * that bring nothing. The best of what lies above a height does not depend on what was cut below it, so the best for every
 * height that cuts can reach gives the best for the stem: within the lengths and offcuts listed the result is the optimum.
 *
 * @param lengths scaling lengths to cut, each above zero
 * @param offcuts lengths that may be cut away for nothing, to get past a bad place; may be empty
 * @param trim what is added to each log
 * @param kerf of the bucking cut
 * @param rule the buyer's rule
 * @param convention how the buyer takes diameter and length
 * @param prices the buyer's prices
 */
@Calculation("plan.bucking")
public record Bucking(
        List<Length> lengths,
        List<Length> offcuts,
        Length trim,
        Length kerf,
        LogRule rule,
        ScalingConvention convention,
        LogPrices prices) {

    /** More heights than this are not searched; real lists of lengths reach some hundreds. */
    private static final int MOST_HEIGHTS = 200_000;

    /**
     * A stretch of a stem that is of one grade.
     *
     * @param from height above ground
     * @param to height above ground
     * @param grade one of the buyer's
     */
    public record Stretch(Length from, Length to, String grade) {}

    /**
     * A stem to be cut.
     *
     * @param id the user's name for it
     * @param species its species
     * @param profile its diameters inside bark
     * @param stump where the first log begins
     * @param top where the last log must end
     * @param stretches its grades; what none covers is of the best grade, and a log has the worst that it touches
     */
    public record Stem(
            String id, Species species, StemProfile profile, Length stump, Length top, List<Stretch> stretches) {

        /**
         * Keeps an immutable copy.
         *
         * @throws OutOfDomainException if the top is not above the stump
         */
        public Stem {
            stretches = List.copyOf(stretches);
            if (top.compareTo(stump) <= 0) {
                throw new OutOfDomainException(
                        "top of stem " + id, top.toString(), "", "above the stump, " + stump, "change the two");
            }
        }
    }

    /**
     * A log of the result.
     *
     * @param log the log
     * @param from height of its lower end
     * @param grade the worst grade that it touches
     * @param scale its scale
     * @param perThousand the price that it gets
     * @param value scale times price
     */
    public record Cut(Log log, Length from, String grade, Scale scale, double perThousand, double value) {}

    /**
     * The best way to cut a stem.
     *
     * @param stem the stem
     * @param cuts the logs from the butt; empty if the buyer takes none
     * @param value what they are worth together
     * @param heights how many heights were looked at
     */
    public record Best(Stem stem, List<Cut> cuts, double value, int heights) {

        /** Keeps an immutable copy. */
        public Best {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * Keeps immutable copies.
     *
     * @throws OutOfDomainException if there is no length, a length or an offcut is not above zero, or trim or kerf are below
     *     zero
     */
    public Bucking {
        lengths = List.copyOf(lengths);
        offcuts = List.copyOf(offcuts);
        boolean positive = lengths.stream().allMatch(Length::isPositive)
                && offcuts.stream().allMatch(Length::isPositive);
        if (lengths.isEmpty() || !positive || trim.compareTo(Length.ZERO) < 0 || kerf.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException(
                    "bucking",
                    lengths + ", offcuts " + offcuts + ", trim " + trim + ", kerf " + kerf,
                    "",
                    "one length or more, all above 0, trim and kerf 0 or more",
                    "");
        }
    }

    /**
     * The log between two heights of a stem and what the buyer pays for it.
     *
     * @param stem the stem
     * @param from height of the lower end
     * @param length scaling length that is cut, to which the trim is added
     * @return the cut; empty if it does not fit, or the buyer takes no such log
     */
    public Optional<Cut> cut(Stem stem, Length from, Length length) {
        Length whole = length.plus(trim);
        Length to = from.plus(whole);
        if (to.compareTo(stem.top()) > 0) {
            return Optional.empty();
        }
        Length large = diameter(stem, from);
        Length small = diameter(stem, to);
        if (!small.isPositive() || small.compareTo(large) > 0) {
            return Optional.empty();
        }
        Log log = new Log(
                stem.id() + " at " + from.inFeet(16, Rounding.HALF_UP),
                stem.species(),
                whole,
                small,
                small,
                large,
                Length.ZERO,
                Length.ZERO,
                0,
                from.equals(stem.stump()));
        if (whole.minus(convention.trim()).compareTo(convention.lengthStep()) < 0) {
            return Optional.empty();
        }
        for (ScalingConvention.Segment segment : convention.segments(log, rule.diameterAt())) {
            if (!rule.diameterInches().holds(segment.diameterInches())
                    || !rule.lengthFeet().holds(segment.lengthFeet())) {
                return Optional.empty();
            }
        }
        String grade = grade(stem, from, to);
        OptionalDouble price =
                prices.perThousand(grade, convention.scalingDiameterInches(log), convention.scalingLengthFeet(log));
        if (price.isEmpty()) {
            return Optional.empty();
        }
        Scale scale = Scale.of(log, rule, convention);
        double value = scale.boardFeet().value() * price.getAsDouble() / 1000;
        return Optional.of(new Cut(log, from, grade, scale, price.getAsDouble(), value));
    }

    private static Length diameter(Stem stem, Length height) {
        return Length.ofInches(stem.profile().diameterInches(height.toFeet()), Rounding.DOWN);
    }

    private String grade(Stem stem, Length from, Length to) {
        int worst = 0;
        for (Stretch stretch : stem.stretches()) {
            int rank = prices.grades().indexOf(stretch.grade());
            if (rank < 0) {
                throw new OutOfDomainException(
                        "grade of stem " + stem.id(),
                        "'" + stretch.grade() + "'",
                        "",
                        String.join(", ", prices.grades()),
                        "take one of the buyer's grades");
            }
            if (stretch.from().compareTo(to) < 0 && stretch.to().compareTo(from) > 0) {
                worst = Math.max(worst, rank);
            }
        }
        return prices.grades().get(worst);
    }

    /** The best from a height upward: the cut to make there, where it goes on, and the worth of all. */
    private record Step(Optional<Cut> cut, Optional<Length> next, double value) {}

    /**
     * Finds the best way to cut a stem. Of ways worth the same the one with the earlier length of the list is taken.
     *
     * @param stem the stem
     * @return the logs and their worth
     * @throws OutOfDomainException if the profile does not reach from stump to top, a grade is not the buyer's, or the
     *     lengths and offcuts reach too many heights
     */
    public Best best(Stem stem) {
        diameter(stem, stem.stump());
        diameter(stem, stem.top());
        List<Length> heights = heights(stem);
        Map<Length, Step> best = new HashMap<>();
        for (int i = heights.size() - 1; i >= 0; i--) {
            Length here = heights.get(i);
            Step step = new Step(Optional.empty(), Optional.empty(), 0);
            for (Length length : lengths) {
                Optional<Cut> cut = cut(stem, here, length);
                if (cut.isPresent()) {
                    Length next = here.plus(length).plus(trim).plus(kerf);
                    double value = cut.get().value() + valueAt(best, next);
                    if (value > step.value) {
                        step = new Step(cut, Optional.of(next), value);
                    }
                }
            }
            for (Length offcut : offcuts) {
                Length next = here.plus(offcut).plus(kerf);
                double value = valueAt(best, next);
                if (value > step.value) {
                    step = new Step(Optional.empty(), Optional.of(next), value);
                }
            }
            best.put(here, step);
        }
        List<Cut> cuts = new ArrayList<>();
        Optional<Step> at = Optional.ofNullable(best.get(stem.stump()));
        double value = at.map(Step::value).orElse(0.0);
        while (at.isPresent()) {
            at.get().cut().ifPresent(cuts::add);
            at = at.get().next().map(best::get);
        }
        return new Best(stem, cuts, value, heights.size());
    }

    private static double valueAt(Map<Length, Step> best, Length height) {
        Step step = best.get(height);
        return step == null ? 0 : step.value();
    }

    /** The heights below the top at which a log can begin, from the stump up. */
    private List<Length> heights(Stem stem) {
        TreeSet<Length> reached = new TreeSet<>();
        Optional<Length> next = Optional.of(stem.stump());
        while (next.isPresent()) {
            Length here = next.get();
            reached.add(here);
            for (Length length : lengths) {
                reach(reached, here.plus(length).plus(trim), stem.top());
            }
            for (Length offcut : offcuts) {
                reach(reached, here.plus(offcut), stem.top());
            }
            if (reached.size() > MOST_HEIGHTS) {
                throw new OutOfDomainException(
                        "lengths and offcuts",
                        "more than " + MOST_HEIGHTS + " heights of a cut",
                        "",
                        "up to " + MOST_HEIGHTS,
                        "list fewer lengths, or lengths in whole steps");
            }
            next = Optional.ofNullable(reached.higher(here));
        }
        return List.copyOf(reached);
    }

    private void reach(TreeSet<Length> reached, Length end, Length top) {
        Length next = end.plus(kerf);
        if (next.compareTo(top) < 0) {
            reached.add(next);
        }
    }

    /**
     * How the worth of a stem comes about.
     *
     * @param best the result of {@link #best}
     * @return a working whose value has the bits of {@link Best#value}
     */
    public Working working(Best best) {
        Source exact = Sources.get("definition");
        Working.Builder working = Working.of("Worth of stem " + best.stem().id() + " by " + rule.name());
        StringBuilder sum = new StringBuilder();
        int count = best.cuts().size();
        for (int i = 0; i < count; i++) {
            Cut cut = best.cuts().get(i);
            String n = Integer.toString(i + 1);
            Working scale = cut.scale().working();
            working.include(scale)
                    .step("S" + n, "scale of log " + n, scale.result().symbol(), "bf", exact)
                    .given("p" + n, "price of 1000 bf, grade " + cut.grade(), cut.perThousand(), prices.currency())
                    .step("v" + n, "worth of log " + n, "S" + n + " * p" + n + " / 1000", prices.currency(), exact);
            sum.append("v").append(n).append(i == count - 1 ? "" : " + (");
        }
        sum.append(")".repeat(Math.max(0, count - 1)));
        if (count == 0) {
            working.given("none", "logs that the buyer takes", 0, "");
        }
        return working.step("V", "worth of the stem", count == 0 ? "none" : sum.toString(), prices.currency(), exact)
                .note("The most that the listed lengths" + (offcuts.isEmpty() ? "" : " and offcuts")
                        + " give, with this trim and kerf, under this rule, convention and these prices: every height that"
                        + " cuts can reach was looked at (" + best.heights() + ").")
                .build();
    }
}
