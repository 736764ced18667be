package org.woodyield.scaling;

import java.util.OptionalDouble;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How much the scale of a log changes when its diameter is misread. It rests on {@link LogRule#unroundedBoardFeet}:
 * of a formula the value before the rule's rounding, of a table its cells, which are rounded as they stand, so that the
 * change is one from cell to cell and moves in their steps. A comparison of two rules says little where they differ by
 * less than this.
 *
 * @param rule the rule
 * @param diameterInches the scaling diameter
 * @param lengthFeet the scaling length
 */
@Calculation("scaling.measurement-error")
public record MeasurementError(LogRule rule, double diameterInches, double lengthFeet) {

    /**
     * For a log and a rule.
     *
     * @param rule the rule
     * @param diameterInches the scaling diameter; an inch less and more must lie in the rule's domain
     * @param lengthFeet the scaling length
     * @return the effect
     * @throws OutOfDomainException if the rule refuses one of the three diameters or gives nothing at the middle one
     */
    public static MeasurementError of(LogRule rule, double diameterInches, double lengthFeet) {
        MeasurementError error = new MeasurementError(rule, diameterInches, lengthFeet);
        rule.unroundedBoardFeet(diameterInches - 1, lengthFeet);
        rule.unroundedBoardFeet(diameterInches + 1, lengthFeet);
        if (!(error.boardFeet() > 0)) {
            throw new OutOfDomainException(
                    "scaling diameter",
                    Double.toString(diameterInches),
                    "in",
                    "diameters at which " + rule.name() + " gives board feet",
                    "take a thicker log");
        }
        return error;
    }

    /**
     * The value at the diameter itself.
     *
     * @return board feet before rounding; of a table the cell
     */
    public double boardFeet() {
        return rule.unroundedBoardFeet(diameterInches, lengthFeet);
    }

    /**
     * Change when the diameter is read one inch more.
     *
     * @return in percent
     */
    public double percentInchMore() {
        return percent(1);
    }

    /**
     * Change when the diameter is read one inch less.
     *
     * @return in percent, as a rule negative
     */
    public double percentInchLess() {
        return percent(-1);
    }

    /**
     * Change when the diameter is read half an inch more.
     *
     * @return in percent; empty for a table of whole inches
     */
    public OptionalDouble percentHalfInchMore() {
        return half(0.5);
    }

    /**
     * Change when the diameter is read half an inch less.
     *
     * @return in percent; empty for a table of whole inches
     */
    public OptionalDouble percentHalfInchLess() {
        return half(-0.5);
    }

    private OptionalDouble half(double inches) {
        try {
            return OptionalDouble.of(percent(inches));
        } catch (OutOfDomainException wholeInchesOnly) {
            return OptionalDouble.empty();
        }
    }

    private double percent(double inches) {
        return 100 * (rule.unroundedBoardFeet(diameterInches + inches, lengthFeet) / boardFeet() - 1);
    }

    /**
     * The working of {@link #percentInchMore}.
     *
     * @return a working with the same value
     */
    public Working inchMoreWorking() {
        Source source = Sources.get("measurement-error");
        return Working.of("One inch more, by " + rule.name())
                .constant("B", "scale at " + PublishedRule.literal(diameterInches) + " in", boardFeet(), "bf", source)
                .constant(
                        "M",
                        "scale an inch thicker",
                        rule.unroundedBoardFeet(diameterInches + 1, lengthFeet),
                        "bf",
                        source)
                .step("e", "change", "100 * (M / B - 1)", "%", source)
                .note("Before the rule's own rounding; of a table from cell to cell, and cells are rounded.")
                .build();
    }
}
