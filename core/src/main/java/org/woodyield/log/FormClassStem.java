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
 * top of the first log at 17.3 ft, and above it straight by a taper that was measured.
 *
 * <p>Without the bark the stem below 17.3 ft is taken as no thicker than there, and below breast height as no thicker than
 * at breast height: so nothing is promised that the butt swell may not hold. Without a taper nothing is said above 17.3 ft.
 *
 * @param breastHeightInches at 4.5 ft, outside bark
 * @param formClass inside bark at 17.3 ft over that
 * @param barkInches thickness at breast height on one side, if known
 * @param taperInchesPerFoot above 17.3 ft, if known
 */
public record FormClassStem(
        double breastHeightInches, FormClass formClass, OptionalDouble barkInches, OptionalDouble taperInchesPerFoot)
        implements StemProfile {

    private static final double BREAST_HEIGHT_FEET = 4.5;
    private static final double UPPER_FEET = 17.3;
    private static final Domain TAPER =
            new Domain("taper above 17.3 ft", "in/ft", 0.01, 2, "give what the diameter loses in each foot of height");

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
    }

    private double upper() {
        return formClass.upperInches(breastHeightInches);
    }

    @Override
    public Domain heightFeet() {
        return taperInchesPerFoot.isPresent()
                ? Domain.of("height on the stem", "ft", 0, UPPER_FEET + upper() / taperInchesPerFoot.getAsDouble())
                : new Domain(
                        "height on the stem",
                        "ft",
                        0,
                        UPPER_FEET,
                        "give the taper above 17.3 ft to know the stem beyond, or ask for a shorter log");
    }

    @Override
    @Calculation("log.form-class-stem")
    public double diameterInches(double heightFeet) {
        heightFeet().require(heightFeet);
        double upper = upper();
        if (heightFeet > UPPER_FEET) {
            return Math.max(0, upper - taperInchesPerFoot.orElseThrow() * (heightFeet - UPPER_FEET));
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
            return working.given("t", "taper above 17.3 ft", taperInchesPerFoot.orElseThrow(), "in/ft")
                    .step("s", "stem there", "max(0, u - t * (h - 17.3))", "in", exact)
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
