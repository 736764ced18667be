package org.woodyield.work;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What it is worth that boards take less wood, by a thinner kerf or less needless thickness. {@link
 * org.woodyield.sawing.KerfStack} says how much wood a stack of boards takes.
 */
public final class KerfWorth {

    private static final Source STACKING = Sources.get("kerf-wengert-2000");
    private static final Domain WOOD = Domain.positive("wood", "");
    private static final Domain PRICE = Domain.notNegative("price", "money");

    private KerfWorth() {}

    /**
     * What is saved when the same boards take less wood.
     *
     * @param before wood taken before
     * @param after wood taken after, in the same unit
     * @return {@code (before - after) / before x 100}, negative where more is taken
     * @throws org.woodyield.measure.OutOfDomainException if an argument is not above 0
     */
    @Calculation("work.wood-saved")
    public static double savedPercent(double before, double after) {
        WOOD.require(before);
        WOOD.require(after);
        return (before - after) / before * 100;
    }

    /**
     * How {@link #savedPercent} comes about.
     *
     * @param before wood taken before
     * @param after wood taken after
     * @return the working, with the same result
     */
    public static Working savedPercentWorking(double before, double after) {
        WOOD.require(before);
        WOOD.require(after);
        return Working.of("Wood saved")
                .given("W1", "wood before", before, "")
                .given("W2", "wood after", after, "")
                .step("g", "saved", "(W1 - W2) / W1 * 100", "%", STACKING)
                .build();
    }

    /**
     * What a saving of wood is worth.
     *
     * @param pricePerThousand price of a thousand board feet
     * @param savedPercent saving of wood
     * @return {@code price x saved / 100} for a thousand board feet
     * @throws org.woodyield.measure.OutOfDomainException if the price is negative or the saving not -100 to 100 percent
     */
    @Calculation("work.kerf-worth")
    public static double worthPerThousand(double pricePerThousand, double savedPercent) {
        PRICE.require(pricePerThousand);
        Domain.of("saving", "%", -100, 100).require(savedPercent);
        return pricePerThousand * savedPercent / 100;
    }

    /**
     * How {@link #worthPerThousand} comes about.
     *
     * @param pricePerThousand price of a thousand board feet
     * @param savedPercent saving of wood
     * @return the working, with the same result
     */
    public static Working worthPerThousandWorking(double pricePerThousand, double savedPercent) {
        PRICE.require(pricePerThousand);
        Domain.of("saving", "%", -100, 100).require(savedPercent);
        return Working.of("Worth of a saving of wood")
                .given("p", "price of a thousand board feet", pricePerThousand, "money")
                .given("g", "saved", savedPercent, "%")
                .step("m", "worth", "p * g / 100", "money per thousand board feet", STACKING)
                .build();
    }
}
