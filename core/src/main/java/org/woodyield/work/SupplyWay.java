package org.woodyield.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Money;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A way to come by lumber, and what it costs by the volume of usable lumber: a fixed sum, a sum by the board foot, and a charge
 * by the board foot that has a least amount.
 *
 * <p>Cost of V board feet: {@code fixed + perBoardFoot V + max(least, rate V)}. It is a sum of straight lines, so two ways
 * cross at no more than three volumes, found exactly.
 *
 * @param kind which of the ways
 * @param use how its lumber is used
 * @param otherSaw the name of the saw, for {@link Kind#OTHER_SAW}; empty for all other ways
 * @param name in words
 * @param fixed spent whatever the volume
 * @param perBoardFoot spent for each usable board foot; negative where it earns
 * @param least the least amount of the charge
 * @param rate of the charge by the usable board foot
 * @param costsMissing costs for which nobody gave a price, so that it costs more than is said
 * @param incomeMissing income for which nobody gave a price, so that it costs no more than is said
 * @param taken what was taken about it, in words
 */
public record SupplyWay(
        Kind kind,
        Use use,
        String otherSaw,
        String name,
        Money fixed,
        Money perBoardFoot,
        Money least,
        Money rate,
        Set<WorkInput> costsMissing,
        Set<WorkInput> incomeMissing,
        List<String> taken) {

    private static final Source DEFINITION = Sources.get("definition");
    private static final Domain VOLUME = Domain.positive("usable lumber", "bf");

    /** The ways to come by lumber. */
    public enum Kind {
        /** Buying it. */
        BUY,
        /** Sawing it with the saw of the job. */
        OWN_SAW,
        /** Sawing it with another saw. */
        OTHER_SAW,
        /** Having it sawn by a travelling sawyer. */
        HIRED_SAWYER,
        /** Selling the logs and buying the lumber. */
        SELL_AND_BUY;

        /**
         * Whether it is sawing with a saw that is bought.
         *
         * @return true for the saw of the job and for another
         */
        public boolean isSaw() {
            return this == OWN_SAW || this == OTHER_SAW;
        }
    }

    /** How lumber is used. */
    public enum Use {
        /** As it is bought, or sawn where the authority accepts it. */
        AS_IT_IS(""),
        /** Sawn, and graded by a grader. */
        GRADED(", graded"),
        /** Sawn, and not graded: where no grade is asked for. */
        UNGRADED(", ungraded, where no grade is asked for");

        private final String words;

        Use(String words) {
            this.words = words;
        }

        /**
         * What stands behind the name of a way.
         *
         * @return words with a comma before them, or nothing
         */
        public String words() {
            return words;
        }
    }

    /** Keeps immutable copies. */
    public SupplyWay {
        costsMissing = inOrder(costsMissing);
        incomeMissing = inOrder(incomeMissing);
        taken = List.copyOf(taken);
    }

    private static Set<WorkInput> inOrder(Set<WorkInput> inputs) {
        EnumSet<WorkInput> copy = EnumSet.noneOf(WorkInput.class);
        copy.addAll(inputs);
        return Collections.unmodifiableSet(copy);
    }

    /**
     * Whether all that it costs has a price; only then can it be said to be cheaper than another.
     *
     * @return false where it costs more than is said
     */
    public boolean isWhole() {
        return costsMissing.isEmpty();
    }

    /**
     * What is known of its cost.
     *
     * @return how the cost stands to its amount
     */
    public Bound bound() {
        return Bound.of(costsMissing, incomeMissing);
    }

    /**
     * What a volume costs this way.
     *
     * @param usable lumber, above zero
     * @return {@code fixed + perBoardFoot V + max(least, rate V)}; negative where it earns more than it costs
     * @throws org.woodyield.measure.OutOfDomainException if the volume is not above zero
     */
    @Calculation("work.way-cost")
    public Money cost(BoardFeet usable) {
        return new Money(amount(VOLUME.require(usable.value())), fixed.currency());
    }

    private double amount(double volume) {
        return fixed.amount() + perBoardFoot.amount() * volume + Math.max(least.amount(), rate.amount() * volume);
    }

    /**
     * How {@link #cost} comes about.
     *
     * @param usable lumber, above zero
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if the volume is not above zero
     */
    public Working costWorking(BoardFeet usable) {
        VOLUME.require(usable.value());
        String currency = fixed.currency();
        return Working.of("Cost of lumber: " + name)
                .given("F", "fixed", fixed.amount(), currency)
                .given("p", "by the board foot", perBoardFoot.amount(), currency + "/bf")
                .given("m", "least charge", least.amount(), currency)
                .given("r", "charge by the board foot", rate.amount(), currency + "/bf")
                .given("V", "usable lumber", usable.value(), "bf")
                .step("C", "cost", "F + p * V + max(m, r * V)", currency, DEFINITION)
                .build();
    }

    /**
     * The volumes at which this way and another cost the same and change places.
     *
     * @param other in the same currency
     * @return volumes above zero, rising; empty where one is dearer at every volume
     * @throws IllegalArgumentException if the currencies differ
     */
    public List<BoardFeet> crossings(SupplyWay other) {
        // Refuses a second currency.
        fixed.compareTo(other.fixed);
        List<Double> ends = new ArrayList<>();
        kink(ends);
        other.kink(ends);
        ends.sort(null);
        List<BoardFeet> crossings = new ArrayList<>();
        double last = 0;
        double before = difference(other, 0);
        double sign = Math.signum(before);
        double touched = Double.NaN;
        for (double end : ends) {
            double here = difference(other, end);
            if (here == 0) {
                touched = Double.isNaN(touched) ? end : touched;
            } else {
                if (here * sign < 0) {
                    double between = last + (end - last) * before / (before - here);
                    crossings.add(BoardFeet.usable(Double.isNaN(touched) ? between : touched));
                }
                sign = Math.signum(here);
                touched = Double.NaN;
            }
            last = end;
            before = here;
        }
        double slope = slope(last + 1) - other.slope(last + 1);
        if (slope * sign < 0) {
            crossings.add(BoardFeet.usable(Double.isNaN(touched) ? last - before / slope : touched));
        }
        return List.copyOf(crossings);
    }

    /** Whether the two answer one question: lumber of one use, or one way to come by it with two uses. */
    boolean isComparedWith(SupplyWay other) {
        return (kind == other.kind && otherSaw.equals(other.otherSaw))
                || use == other.use
                || use == Use.AS_IT_IS
                || other.use == Use.AS_IT_IS;
    }

    private double difference(SupplyWay other, double volume) {
        return amount(volume) - other.amount(volume);
    }

    private void kink(List<Double> ends) {
        if (rate.amount() > 0 && least.amount() > 0) {
            ends.add(least.amount() / rate.amount());
        }
    }

    private double slope(double volume) {
        return perBoardFoot.amount() + (rate.amount() * volume > least.amount() ? rate.amount() : 0);
    }
}
