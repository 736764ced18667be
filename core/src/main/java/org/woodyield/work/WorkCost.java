package org.woodyield.work;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.Stage;

/**
 * What a pass costs in money: its minutes at the wage, its fuel and oil, and its share of an edge. The saw's own loss of worth
 * is not in it, since one pass more or less does not change the outlay.
 *
 * <p>A price that is missing leaves its part out, and {@link #leftOut} names it.
 */
public final class WorkCost implements PassCost {

    private final SawingWork work;
    private final CuttingRate rate;
    private final double perHour;
    private final double perFuelLitre;
    private final double perBarOilLitre;
    private final double perMixOilLitre;
    private final double perSharpening;
    private final double guide;
    private final double turning;
    private final double loading;
    private final Set<WorkInput> leftOut;

    private WorkCost(WorkInputs inputs, CuttingRate rate, boolean ownWorkValued) {
        EnumSet<WorkInput> missing = EnumSet.noneOf(WorkInput.class);
        this.work = SawingWork.of(inputs);
        this.rate = rate;
        this.perHour = ownWorkValued ? price(inputs, WorkInput.WAGE, missing) : 0;
        this.perFuelLitre = price(inputs, WorkInput.FUEL_PRICE, missing);
        this.perBarOilLitre = price(inputs, WorkInput.BAR_OIL_PRICE, missing);
        this.perMixOilLitre = price(inputs, WorkInput.MIX_OIL_PRICE, missing);
        double edge = price(inputs, WorkInput.EDGE_PRICE, missing);
        this.perSharpening = edge > 0 ? edge / inputs.get(WorkInput.EDGE_LIFE) : 0;
        // Without a time for it the guide is not laid.
        this.guide = hours(
                        inputs,
                        inputs.find(WorkInput.GUIDE).map(InputValue::value).orElse(0.0))
                * perHour;
        this.turning = hours(inputs, inputs.get(WorkInput.TURNING)) * perHour;
        this.loading = hours(inputs, inputs.get(WorkInput.LOADING)) * perHour;
        this.leftOut = Collections.unmodifiableSet(missing);
    }

    /** Of handling that takes so many minutes, rest included. */
    private static double hours(WorkInputs inputs, double minutes) {
        return new TimeBreakdown(0, 0, 0, 0, 0, 0, minutes, 0, 0, 0, 0)
                .withRest(inputs.get(WorkInput.UTILISATION))
                .hours();
    }

    private static double price(WorkInputs inputs, WorkInput input, Set<WorkInput> missing) {
        return inputs.find(input).map(InputValue::value).orElseGet(() -> {
            missing.add(input);
            return 0.0;
        });
    }

    /**
     * The cost of passes of one saw in one wood.
     *
     * @param inputs power, fuel, habits and prices
     * @param rate how fast the saw rips the wood
     * @param ownWorkValued whether minutes cost the wage
     * @return the cost, in the currency of the prices
     * @throws org.woodyield.measure.OutOfDomainException if an input other than a price is missing
     */
    public static WorkCost of(WorkInputs inputs, CuttingRate rate, boolean ownWorkValued) {
        return new WorkCost(inputs, rate, ownWorkValued);
    }

    /**
     * Prices that nobody gave and whose part is therefore not in the cost.
     *
     * @return an unmodifiable set, empty where the cost is whole
     */
    public Set<WorkInput> leftOut() {
        return leftOut;
    }

    @Override
    public double guide() {
        return guide;
    }

    @Override
    public double turning() {
        return turning;
    }

    @Override
    public double loading() {
        return loading;
    }

    @Override
    public double of(Stage stage, double meanWidthMetres, double lengthMetres) {
        PassWork pass = work.pass(rate, new Cut(meanWidthMetres * 100, meanWidthMetres * 100, lengthMetres * 100));
        return pass.time().hours() * perHour
                + pass.use().fuelLitres() * perFuelLitre
                + pass.use().barOilLitres() * perBarOilLitre
                + pass.use().mixOilLitres() * perMixOilLitre
                + pass.use().sharpenings() * perSharpening;
    }
}
