package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Diameter inside bark over diameter outside bark, taken as the same along the stem.
 *
 * @param ratio 0.5 to 1
 */
public record BarkRatio(double ratio) {

    private static final Domain RATIO =
            new Domain("bark ratio", "", 0.5, 1, "diameter inside bark over diameter outside bark");
    private static final Domain OUTSIDE = Domain.positive("diameter outside bark", "");
    private static final Domain WOOD = Domain.of("bark, share of the wood's volume", "%", 0, 300);

    /**
     * Refuses what is no such ratio.
     *
     * @throws org.woodyield.measure.OutOfDomainException outside 0.5 to 1, or for NaN
     */
    public BarkRatio {
        RATIO.require(ratio);
    }

    /**
     * From measured diameters: the ratio that makes the squared misses of the inside diameter least.
     *
     * @param outside diameters outside bark
     * @param inside diameters inside bark at the same places, in the same unit
     * @return the ratio
     * @throws org.woodyield.measure.OutOfDomainException if there are none or the ratio is out of reason
     * @throws IllegalArgumentException if the counts differ
     */
    public static BarkRatio fit(double[] outside, double[] inside) {
        if (outside.length != inside.length) {
            throw new IllegalArgumentException(outside.length + " outside, " + inside.length + " inside bark");
        }
        double[][] rows = new double[outside.length][];
        for (int i = 0; i < outside.length; i++) {
            rows[i] = new double[] {OUTSIDE.require(outside[i])};
        }
        return new BarkRatio(LeastSquares.solve(rows, inside, "measured diameters")[0]);
    }

    /**
     * From the volume of the bark, as tables of species give it.
     *
     * @param percentOfWood bark as a percentage of the wood's volume
     * @return the ratio, 1 / sqrt(1 + p/100)
     * @throws org.woodyield.measure.OutOfDomainException outside 0 to 300
     */
    public static BarkRatio ofWoodPercent(double percentOfWood) {
        return new BarkRatio(1 / Math.sqrt(1 + WOOD.require(percentOfWood) / 100));
    }

    /**
     * The diameter inside bark.
     *
     * @param outside the diameter outside bark, in any unit
     * @return in the same unit
     * @throws org.woodyield.measure.OutOfDomainException if it is not above zero
     */
    @Calculation("log.inside-bark")
    public double inside(double outside) {
        return ratio * OUTSIDE.require(outside);
    }

    /**
     * The working of {@link #inside}.
     *
     * @param outside the diameter outside bark
     * @param unit its unit
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException if it is not above zero
     */
    public Working insideWorking(double outside, String unit) {
        OUTSIDE.require(outside);
        return Working.of("Diameter inside bark")
                .given("k", "bark ratio", ratio, "")
                .given("d", "diameter outside bark", outside, unit)
                .step("i", "diameter inside bark", "k * d", unit, exact())
                .build();
    }

    /**
     * The bark's share of the volume outside bark, 100 (1 - k^2).
     *
     * @return in percent
     */
    @Calculation("log.bark-of-stem")
    public double percentOfStem() {
        return 100 * (1 - ratio * ratio);
    }

    /**
     * The working of {@link #percentOfStem}.
     *
     * @return a working with the same value
     */
    public Working percentOfStemWorking() {
        return Working.of("Bark, of the volume outside bark")
                .given("k", "bark ratio", ratio, "")
                .step("p", "bark", "100 * (1 - k * k)", "%", exact())
                .build();
    }

    /**
     * The bark's volume beside the wood's, 100 (1/k^2 - 1).
     *
     * @return in percent
     */
    @Calculation("log.bark-of-wood")
    public double percentOfWood() {
        return 100 * (1 / (ratio * ratio) - 1);
    }

    /**
     * The working of {@link #percentOfWood}.
     *
     * @return a working with the same value
     */
    public Working percentOfWoodWorking() {
        return Working.of("Bark, beside the volume of the wood")
                .given("k", "bark ratio", ratio, "")
                .step("p", "bark", "100 * (1 / (k * k) - 1)", "%", exact())
                .build();
    }

    private static Source exact() {
        return Sources.get("definition");
    }
}
