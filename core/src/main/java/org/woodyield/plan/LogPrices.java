package org.woodyield.plan;

import java.util.List;
import java.util.OptionalDouble;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;

/**
 * What a buyer pays for logs by grade and diameter class, for each thousand board feet of the buyer's scale.
 *
 * @param currency as the user writes it
 * @param grades the buyer's grades, the best first
 * @param classes prices; of those that fit, the class with the greatest least diameter counts
 */
public record LogPrices(String currency, List<String> grades, List<PriceClass> classes) {

    private static final Domain PRICE = Domain.notNegative("price of 1000 bf", "");
    private static final Domain LEAST = Domain.of("least diameter of a price class", "in", 0, 400);

    /**
     * A price.
     *
     * @param grade one of the grades
     * @param leastDiameterInches scaling diameters from this on
     * @param perThousand for 1000 bf
     */
    public record PriceClass(String grade, double leastDiameterInches, double perThousand) {

        /**
         * Refuses what is no price.
         *
         * @throws OutOfDomainException if a number is below zero, out of reason or NaN
         */
        public PriceClass {
            LEAST.require(leastDiameterInches);
            PRICE.require(perThousand);
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
     * @return for 1000 bf; empty if the buyer takes no such log
     */
    public OptionalDouble perThousand(String grade, double scalingDiameterInches) {
        OptionalDouble price = OptionalDouble.empty();
        double reached = -1;
        for (PriceClass one : classes) {
            if (one.grade().equals(grade)
                    && scalingDiameterInches >= one.leastDiameterInches()
                    && one.leastDiameterInches() > reached) {
                reached = one.leastDiameterInches();
                price = OptionalDouble.of(one.perThousand());
            }
        }
        return price;
    }
}
