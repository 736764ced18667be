package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Girard form class: the diameter inside bark at the top of the first 16-ft log, 17.3 ft above ground (1 ft of stump and 0.3
 * ft of trim), as a percentage of the diameter at breast height outside bark.
 *
 * @param percent 40 to 100
 */
public record FormClass(double percent) {

    private static final Domain PERCENT = new Domain(
            "form class", "%", 40, 100, "inside bark at 17.3 ft, over the diameter at breast height outside bark");
    private static final Domain BREAST_HEIGHT = Domain.of("diameter at breast height", "in", 1, 200);
    private static final Domain UPPER = Domain.of("diameter inside bark at 17.3 ft", "in", 0.5, 200);

    /**
     * Refuses what is no form class.
     *
     * @throws org.woodyield.measure.OutOfDomainException outside 40 to 100, or for NaN
     */
    public FormClass {
        PERCENT.require(percent);
    }

    /**
     * From two diameters.
     *
     * @param breastHeightInches outside bark
     * @param upperInches inside bark, at 17.3 ft
     * @return the form class
     * @throws org.woodyield.measure.OutOfDomainException if a diameter or the result is out of reason
     */
    public static FormClass of(double breastHeightInches, double upperInches) {
        return new FormClass(100 * UPPER.require(upperInches) / BREAST_HEIGHT.require(breastHeightInches));
    }

    /**
     * The diameter inside bark at the top of the first log.
     *
     * @param breastHeightInches outside bark
     * @return in inches
     * @throws org.woodyield.measure.OutOfDomainException if the diameter is out of reason
     */
    @Calculation("log.form-class")
    public double upperInches(double breastHeightInches) {
        return percent * BREAST_HEIGHT.require(breastHeightInches) / 100;
    }

    /**
     * The working of {@link #upperInches}.
     *
     * @param breastHeightInches outside bark
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException if the diameter is out of reason
     */
    public Working upperInchesWorking(double breastHeightInches) {
        BREAST_HEIGHT.require(breastHeightInches);
        Source source = Sources.get("girard-form-class");
        return Working.of("Top of the first log, by form class")
                .given("F", "form class", percent, "%")
                .given("B", "diameter at breast height, outside bark", breastHeightInches, "in")
                .step("d", "diameter inside bark at 17.3 ft", "F * B / 100", "in", source)
                .build();
    }
}
