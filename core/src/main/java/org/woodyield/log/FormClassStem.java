package org.woodyield.log;

import java.util.OptionalDouble;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A standing tree known by its diameter at breast height and its form class. The stem is straight from breast height to the
 * top of the first log at 17.3 ft, and above it straight by a taper that was measured, or straight to the tip at a height that
 * was measured. Most stems are bowed outward there, so the straight line to the tip promises less.
 *
 * <p>Without the bark the stem below 17.3 ft is taken as no thicker than there, and below breast height as no thicker than
 * at breast height: so nothing is promised that the butt swell may not hold. Without a taper or a height nothing is said above 17.3 ft.
 *
 * @param breastHeightInches at 4.5 ft, outside bark
 * @param formClass inside bark at 17.3 ft over that
 * @param barkInches thickness at breast height on one side, if known
 * @param taperInchesPerFoot above 17.3 ft, if known
 * @param totalHeightFeet of the tip above the ground, if known; not together with a taper
 */
public record FormClassStem(
        double breastHeightInches,
        FormClass formClass,
        OptionalDouble barkInches,
        OptionalDouble taperInchesPerFoot,
        OptionalDouble totalHeightFeet)
        implements StemProfile {

    private static final double BREAST_HEIGHT_FEET = 4.5;
    private static final double UPPER_FEET = 17.3;
    private static final double LEAST_TAPER = 0.01;
    private static final double GREATEST_TAPER = 2;
    private static final double TALLEST_FEET = 400;
    private static final Domain TAPER = new Domain(
            "taper above 17.3 ft",
            "in/ft",
            LEAST_TAPER,
            GREATEST_TAPER,
            "give what the diameter loses in each foot of height");

    /**
     * Refuses what does not fit together.
     *
     * @throws OutOfDomainException if a value is out of reason, or the stem inside bark is thinner at breast height than at
     *     17.3 ft
     */
    public FormClassStem {
        double upper = formClass.upperInches(breastHeightInches);
        if (barkInches.isPresent()) {
            // Down to what can be written.
            double greatest = Math.floor((breastHeightInches - upper) / 2 * 1e6) / 1e6;
            new Domain(
                            "bark on one side at breast height",
                            "in",
                            0,
                            greatest,
                            "inside bark the stem is then no thinner at breast height than at 17.3 ft; measure again")
                    .require(barkInches.getAsDouble());
        }
        if (taperInchesPerFoot.isPresent()) {
            TAPER.require(taperInchesPerFoot.getAsDouble());
        }
        if (totalHeightFeet.isPresent()) {
            if (taperInchesPerFoot.isPresent()) {
                throw new OutOfDomainException(
                        "taper above 17.3 ft",
                        Double.toString(taperInchesPerFoot.getAsDouble()),
                        "in/ft",
                        "a taper or the total height, not both",
                        "leave out one of the two");
            }
            // What the taper may be, to a tenth of a foot inside its limits.
            double least = Math.ceil((UPPER_FEET + upper / GREATEST_TAPER) * 10) / 10;
            double most = Math.floor(Math.min(TALLEST_FEET, UPPER_FEET + upper / LEAST_TAPER) * 10) / 10;
            new Domain(
                            "total height",
                            "ft",
                            least,
                            most,
                            "measure from the ground to the tip, or give the taper instead")
                    .require(totalHeightFeet.getAsDouble());
        }
    }

    /**
     * Of a tree whose total height is not known.
     *
     * @param breastHeightInches at 4.5 ft, outside bark
     * @param formClass inside bark at 17.3 ft over that
     * @param barkInches thickness at breast height on one side, if known
     * @param taperInchesPerFoot above 17.3 ft, if known
     * @throws OutOfDomainException if a value is out of reason, or the stem inside bark is thinner at breast height than at
     *     17.3 ft
     */
    public FormClassStem(
            double breastHeightInches,
            FormClass formClass,
            OptionalDouble barkInches,
            OptionalDouble taperInchesPerFoot) {
        this(breastHeightInches, formClass, barkInches, taperInchesPerFoot, OptionalDouble.empty());
    }

    private double upper() {
        return formClass.upperInches(breastHeightInches);
    }

    private double taper() {
        return totalHeightFeet.isPresent()
                ? upper() / (totalHeightFeet.getAsDouble() - UPPER_FEET)
                : taperInchesPerFoot.orElseThrow();
    }

    @Override
    public Domain heightFeet() {
        if (totalHeightFeet.isPresent()) {
            return Domain.of("height on the stem", "ft", 0, totalHeightFeet.getAsDouble());
        }
        return taperInchesPerFoot.isPresent()
                ? Domain.of("height on the stem", "ft", 0, UPPER_FEET + upper() / taperInchesPerFoot.getAsDouble())
                : new Domain(
                        "height on the stem",
                        "ft",
                        0,
                        UPPER_FEET,
                        "give the taper above 17.3 ft or the total height to know the stem beyond, or ask for a shorter log");
    }

    @Override
    @Calculation("log.form-class-stem")
    public double diameterInches(double heightFeet) {
        heightFeet().require(heightFeet);
        double upper = upper();
        if (heightFeet > UPPER_FEET) {
            return Math.max(0, upper - taper() * (heightFeet - UPPER_FEET));
        }
        if (barkInches.isEmpty()) {
            return upper;
        }
        double inside = breastHeightInches - 2 * barkInches.getAsDouble();
        double along = Math.max(0, heightFeet - BREAST_HEIGHT_FEET) / (UPPER_FEET - BREAST_HEIGHT_FEET);
        return inside - (inside - upper) * along;
    }

    @Override
    public Working working(double heightFeet) {
        heightFeet().require(heightFeet);
        Source exact = Sources.get("definition");
        Working.Builder working = Working.of("Diameter of a stem by its form class")
                .given("h", "height", heightFeet, "ft")
                .include(formClass.upperInchesWorking(breastHeightInches))
                .step("u", "diameter inside bark at 17.3 ft", "d", "in", exact);
        if (heightFeet > UPPER_FEET) {
            if (totalHeightFeet.isPresent()) {
                working.given("H", "total height", totalHeightFeet.getAsDouble(), "ft")
                        .step("t", "taper above 17.3 ft, straight to the tip", "u / (H - 17.3)", "in/ft", exact);
            } else {
                working.given("t", "taper above 17.3 ft", taper(), "in/ft");
            }
            return working.step("s", "stem there", "max(0, u - t * (h - 17.3))", "in", exact)
                    .build();
        }
        if (barkInches.isEmpty()) {
            return working.step("s", "stem there, taken as no thicker than at 17.3 ft", "u", "in", exact)
                    .note("Without the thickness of the bark at breast height no more can be said below 17.3 ft.")
                    .build();
        }
        return working.given("k", "bark on one side at breast height", barkInches.getAsDouble(), "in")
                .step("i", "inside bark at breast height", "B - 2 * k", "in", exact)
                .step("w", "way from breast height to 17.3 ft", "max(0, h - 4.5) / (17.3 - 4.5)", "", exact)
                .step("s", "straight between them", "i - (i - u) * w", "in", exact)
                .build();
    }
}
