package org.woodyield.plan;

import java.util.List;
import java.util.OptionalDouble;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;

/**
 * What a buyer pays for logs by grade and by class of diameter and length, for each thousand board feet of the buyer's scale.
 *
 * @param currency as the user writes it
 * @param grades the buyer's grades, the best first
 * @param classes prices; of those that fit, the class with the greatest least diameter counts, and of these the one with the
 *     greatest least length
 */
public record LogPrices(String currency, List<String> grades, List<PriceClass> classes) {

    private static final Domain PRICE = Domain.notNegative("price of 1000 bf", "");
    private static final Domain LEAST = Domain.of("least diameter of a price class", "in", 0, 400);
    private static final Domain SHORTEST = Domain.of("least length of a price class", "ft", 0, 100);

    /**
     * A price.
     *
     * @param grade one of the grades
     * @param leastDiameterInches scaling diameters from this on
     * @param leastLengthFeet scaling lengths from this on
     * @param perThousand for 1000 bf
     */
    public record PriceClass(String grade, double leastDiameterInches, double leastLengthFeet, double perThousand) {

        /**
         * Refuses what is no price.
         *
         * @throws OutOfDomainException if a number is below zero, out of reason or NaN
         */
        public PriceClass {
            LEAST.require(leastDiameterInches);
            SHORTEST.require(leastLengthFeet);
            PRICE.require(perThousand);
        }

        /**
         * A price for logs of any length.
         *
         * @param grade one of the grades
         * @param leastDiameterInches scaling diameters from this on
         * @param perThousand for 1000 bf
         * @throws OutOfDomainException if a number is below zero, out of reason or NaN
         */
        public PriceClass(String grade, double leastDiameterInches, double perThousand) {
            this(grade, leastDiameterInches, 0, perThousand);
        }
    }

    /**
     * Keeps immutable copies.
     *
     * @throws OutOfDomainException if there is no grade, a grade stands twice, or a price names another
     */
    public LogPrices {
        grades = List.copyOf(grades);
        classes = List.copyOf(classes);
        if (grades.isEmpty() || grades.stream().distinct().count() != grades.size()) {
            throw new OutOfDomainException("grades", grades.toString(), "", "one or more, each once", "");
        }
        for (PriceClass one : classes) {
            if (!grades.contains(one.grade())) {
                throw new OutOfDomainException(
                        "grade of a price",
                        "'" + one.grade() + "'",
                        "",
                        String.join(", ", grades),
                        "take one of these");
            }
        }
    }

    /**
     * The price of a log.
     *
     * @param grade one of the grades
     * @param scalingDiameterInches its scaling diameter
     * @param scalingLengthFeet its scaling length
     * @return for 1000 bf; empty if the buyer takes no such log
     */
    public OptionalDouble perThousand(String grade, double scalingDiameterInches, double scalingLengthFeet) {
        OptionalDouble price = OptionalDouble.empty();
        double thickest = -1;
        double longest = -1;
        for (PriceClass one : classes) {
            boolean nearer = one.leastDiameterInches() > thickest
                    || (one.leastDiameterInches() == thickest && one.leastLengthFeet() > longest);
            if (one.grade().equals(grade)
                    && scalingDiameterInches >= one.leastDiameterInches()
                    && scalingLengthFeet >= one.leastLengthFeet()
                    && nearer) {
                thickest = one.leastDiameterInches();
                longest = one.leastLengthFeet();
                price = OptionalDouble.of(one.perThousand());
            }
        }
        return price;
    }
}
