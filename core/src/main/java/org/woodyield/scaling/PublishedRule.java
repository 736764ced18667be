package org.woodyield.scaling;

import java.math.BigDecimal;
import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;
import org.woodyield.working.Working;

/**
 * What the rules of {@link LogRules} have in common. Each rule writes its own batch loop, so that the loop compiles for
 * its formula however many rules are in use.
 */
abstract class PublishedRule implements LogRule {

    final RuleCard card;
    private final double leastDiameter;
    private final double greatestDiameter;
    private final double leastLength;
    private final double greatestLength;
    private final boolean rounds;
    private final Rounding rounding;
    private final double step;

    PublishedRule(RuleCard card) {
        this.card = card;
        leastDiameter = card.diameter().least();
        greatestDiameter = card.diameter().greatest();
        leastLength = card.length().least();
        greatestLength = card.length().greatest();
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
    final void require(double diameter, double length) {
        if (!(diameter >= leastDiameter
                && diameter <= greatestDiameter
                && length >= leastLength
                && length <= greatestLength)) {
            card.diameter().require(diameter);
            card.length().require(length);
        }
    }

    /** Rounds as the rule does. */
    final double round(double boardFeet) {
        return rounds ? rounding.toStep(boardFeet, step) : boardFeet;
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
        if (card.standing() != Standing.PUBLISHED) {
            working.note("This rule stands as: " + card.standing().label() + ".");
        }
        return working.note(card.rounding()).build();
    }

    /** A number in a formula's text: the shortest that reads back to the same bits. */
    static String literal(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
