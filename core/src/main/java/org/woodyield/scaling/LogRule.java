package org.woodyield.scaling;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A log rule: board feet that it estimates for a log from one diameter and the length. Published rules are found in {@link
 * LogRules}; a mill can add its own by implementing this.
 *
 * <p>The value is an estimate of lumber by nominal size before sawing, never a solid volume.
 */
@Calculation("scaling.log-rule")
public interface LogRule {

    /**
     * The key of the rule.
     *
     * @return lower case with hyphens
     */
    String id();

    /**
     * The name as shown to a reader.
     *
     * @return a short phrase
     */
    String name();

    /**
     * What formula, table and rounding rest on.
     *
     * @return one or more, the one that states the rule first
     */
    List<Source> sources();

    /**
     * How far the rule can be trusted: the weakest part that its values rest on.
     *
     * @return the standing, shown wherever the rule's values are shown
     */
    Standing standing();

    /**
     * Where the diameter is taken.
     *
     * @return the small end unless the rule says otherwise
     */
    default DiameterAt diameterAt() {
        return DiameterAt.SMALL_END;
    }

    /**
     * The scaling diameters that the rule accepts, inside bark.
     *
     * @return in inches
     */
    Domain diameterInches();

    /**
     * The scaling lengths that the rule accepts.
     *
     * @return in feet
     */
    Domain lengthFeet();

    /**
     * How the rule rounds, what an exact half does, and what states it.
     *
     * @return a sentence
     */
    String rounding();

    /**
     * What one would expect of a log rule and does not hold for this one.
     *
     * @return possibly empty
     */
    List<RuleFlag> flags();

    /**
     * The scale, rounded as the rule rounds.
     *
     * @param scalingDiameterInches inside bark, as the convention took it
     * @param lengthFeet scaling length
     * @return board feet, zero or more
     * @throws org.woodyield.measure.OutOfDomainException outside the rule's domain, or for NaN
     */
    double boardFeet(double scalingDiameterInches, double lengthFeet);

    /**
     * The value before the rule's rounding; for a rule that is a table, the cell.
     *
     * @param scalingDiameterInches inside bark
     * @param lengthFeet scaling length
     * @return board feet
     * @throws org.woodyield.measure.OutOfDomainException outside the rule's domain, or for NaN
     */
    double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet);

    /**
     * How the scale comes about.
     *
     * @param scalingDiameterInches inside bark, symbol {@code D}
     * @param lengthFeet scaling length, symbol {@code L}
     * @return a working whose value has the bits of {@link #boardFeet}
     * @throws org.woodyield.measure.OutOfDomainException outside the rule's domain, or for NaN
     */
    Working working(double scalingDiameterInches, double lengthFeet);

    /**
     * What a reader should know of this one figure before using it.
     *
     * @param scalingDiameterInches inside bark
     * @param lengthFeet scaling length
     * @return a sentence to show beside the figure; empty for most logs
     */
    default Optional<String> caution(double scalingDiameterInches, double lengthFeet) {
        return Optional.empty();
    }

    /**
     * The values before the rule's rounding of many logs; each has the bits of {@link #unroundedBoardFeet(double, double)}.
     * Nothing is allocated for each log.
     *
     * @param scalingDiametersInches one for each log
     * @param lengthsFeet one for each log
     * @param boardFeet receives the values; may be one of the other two arrays
     * @throws IllegalArgumentException if the arrays differ in length
     * @throws org.woodyield.measure.OutOfDomainException at the first log outside the domain; what lies before it is
     *     already written
     */
    default void unroundedBoardFeet(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        for (int i = 0; i < boardFeet.length; i++) {
            boardFeet[i] = unroundedBoardFeet(scalingDiametersInches[i], lengthsFeet[i]);
        }
    }

    /**
     * Scales many logs; each value has the bits of {@link #boardFeet}. Nothing is allocated for each log.
     *
     * @param scalingDiametersInches one for each log
     * @param lengthsFeet one for each log
     * @param boardFeet receives the scales; may be one of the other two arrays
     * @throws IllegalArgumentException if the arrays differ in length
     * @throws org.woodyield.measure.OutOfDomainException at the first log outside the domain; what lies before it is
     *     already written
     */
    default void scale(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        for (int i = 0; i < boardFeet.length; i++) {
            boardFeet[i] = boardFeet(scalingDiametersInches[i], lengthsFeet[i]);
        }
    }
}
