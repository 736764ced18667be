package org.woodyield.scaling;

import java.math.BigDecimal;
import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;
import org.woodyield.working.Working;

/**
 * What the rules of {@link LogRules} have in common.
 *
 * <p>A batch goes block by block: the domain is checked first, then the rule's own loop runs without a check, then the
 * values are rounded. Loops that can stop or round by name are not turned into vector instructions; split in this way two
 * of the three are. Each rule writes its own loop, so that it compiles for its formula however many rules are in use.
 */
abstract class PublishedRule implements LogRule {

    /** Logs of a block: three arrays of it fit the first-level cache. */
    static final int BLOCK = 1024;

    /** The double below one half. Added to a value that is not negative, it carries to the next whole from the half on. */
    static final double BELOW_HALF = Math.nextDown(0.5);

    final RuleCard card;
    final DomainCheck domain;
    private final boolean rounds;
    private final Rounding rounding;
    private final double step;

    PublishedRule(RuleCard card) {
        this.card = card;
        domain = new DomainCheck(card.diameter(), card.length());
        rounds = card.step().isPresent();
        rounding = card.step().map(RuleCard.Step::rounding).orElse(Rounding.HALF_UP);
        step = card.step().map(RuleCard.Step::boardFeet).orElse(1.0);
    }

    @Override
    public final String id() {
        return card.id();
    }

    @Override
    public final String name() {
        return card.name();
    }

    @Override
    public final List<Source> sources() {
        return card.sources();
    }

    @Override
    public final Standing standing() {
        return card.standing();
    }

    @Override
    public final DiameterAt diameterAt() {
        return card.diameterAt();
    }

    @Override
    public final Domain diameterInches() {
        return card.diameter();
    }

    @Override
    public final Domain lengthFeet() {
        return card.length();
    }

    @Override
    public final String rounding() {
        return card.rounding();
    }

    @Override
    public final List<RuleFlag> flags() {
        return card.flags();
    }

    @Override
    public final String toString() {
        return card.name();
    }

    /** Refuses a log outside the domain. */
    void require(double diameter, double length) {
        domain.require(diameter, length);
    }

    /** The value before rounding, of a log within the domain. */
    abstract double unrounded(double diameter, double length);

    /**
     * The same for the logs from one index up to another; {@code out} may be one of the other two arrays. A rule with a
     * formula writes this loop again, so that it compiles for the formula alone.
     */
    void unrounded(double[] diameters, double[] lengths, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = unrounded(diameters[i], lengths[i]);
        }
    }

    @Override
    public final double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet) {
        require(scalingDiameterInches, lengthFeet);
        return unrounded(scalingDiameterInches, lengthFeet);
    }

    @Override
    public final double boardFeet(double scalingDiameterInches, double lengthFeet) {
        double value = unroundedBoardFeet(scalingDiameterInches, lengthFeet);
        return rounds ? rounding.toStep(value, step) : value;
    }

    @Override
    public final void unroundedBoardFeet(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        for (int from = 0; from < boardFeet.length; from += BLOCK) {
            int to = Math.min(from + BLOCK, boardFeet.length);
            int done = firstRefused(scalingDiametersInches, lengthsFeet, from, to);
            unrounded(scalingDiametersInches, lengthsFeet, boardFeet, from, done);
            if (done < to) {
                unroundedBoardFeet(scalingDiametersInches[done], lengthsFeet[done]);
                throw new IllegalStateException(this + " refuses in a batch what it takes alone");
            }
        }
    }

    /** The first log between two indices that {@link #require} refuses; the second one if there is none. */
    int firstRefused(double[] diameters, double[] lengths, int from, int to) {
        return domain.firstRefused(diameters, lengths, from, to);
    }

    @Override
    public final void scale(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        for (int from = 0; from < boardFeet.length; from += BLOCK) {
            int to = Math.min(from + BLOCK, boardFeet.length);
            int done = scale(scalingDiametersInches, lengthsFeet, boardFeet, from, to);
            if (done < to) {
                boardFeet(scalingDiametersInches[done], lengthsFeet[done]);
                throw new IllegalStateException(this + " refuses in a batch what it scales alone");
            }
        }
    }

    /**
     * Scales the logs from one index up to another, or up to the first that it refuses.
     *
     * @return the index of that log, else {@code to}
     */
    int scale(double[] diameters, double[] lengths, double[] out, int from, int to) {
        int done = domain.firstRefused(diameters, lengths, from, to);
        unrounded(diameters, lengths, out, from, done);
        round(out, from, done);
        return done;
    }

    /** Rounds as the rule does. The values are zero or more. */
    final void round(double[] boardFeet, int from, int to) {
        if (!rounds) {
            return;
        }
        if (rounding != Rounding.HALF_UP) {
            for (int i = from; i < to; i++) {
                boardFeet[i] = rounding.toStep(boardFeet[i], step);
            }
        } else if (step == 1) {
            for (int i = from; i < to; i++) {
                boardFeet[i] = Math.floor(boardFeet[i] + BELOW_HALF);
            }
        } else {
            for (int i = from; i < to; i++) {
                boardFeet[i] = Math.floor(boardFeet[i] / step + BELOW_HALF) * step;
            }
        }
    }

    /** Lines from D and L to the value before rounding; the last is the symbol V. */
    abstract void lines(Working.Builder working, double diameter, double length);

    @Override
    public final Working working(double scalingDiameterInches, double lengthFeet) {
        require(scalingDiameterInches, lengthFeet);
        Working.Builder working = Working.of(card.name())
                .given("D", "scaling diameter inside bark, " + card.diameterAt().label(), scalingDiameterInches, "in")
                .given("L", "scaling length", lengthFeet, "ft");
        lines(working, scalingDiameterInches, lengthFeet);
        card.step().ifPresent(to -> working.round("B", "scale", "V", to.rounding(), to.boardFeet(), "bf", to.source()));
        caution(scalingDiameterInches, lengthFeet).ifPresent(words -> working.note("Caution: " + words));
        if (card.standing() != Standing.PUBLISHED) {
            working.note("This rule stands as: " + card.standing().label() + ".");
        }
        return working.note(card.rounding()).build();
    }

    /** What to multiply by instead of dividing, where that gives the same bits: for a power of two. Otherwise 0. */
    static double exactReciprocal(double divisor) {
        return Math.abs(divisor) == Math.scalb(1.0, Math.getExponent(divisor)) ? 1 / divisor : 0;
    }

    /** A number in a formula's text: the shortest that reads back to the same bits. */
    static String literal(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
