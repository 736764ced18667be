package org.woodyield.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * First-order propagation of standard uncertainties through a model whose inputs do not depend on each other. The share of
 * an input is half the change of the model when that input goes up and down by its standard uncertainty (after the GUM,
 * JCGM 100); the shares add up as squares.
 *
 * @param result the model at the estimates, with its standard uncertainty
 * @param shares what each input adds, with its sign, in the unit of the result
 */
public record Propagation(Uncertain result, List<Double> shares) {

    /** Keeps an immutable copy. */
    public Propagation {
        shares = List.copyOf(shares);
    }

    /**
     * Propagates.
     *
     * @param model computes the result from the inputs in their order; it may keep no reference to the array
     * @param inputs estimates with their standard uncertainties
     * @return the result and the share of each input
     * @throws OutOfDomainException if the model gives no finite number
     */
    public static Propagation of(ToDoubleFunction<double[]> model, List<Uncertain> inputs) {
        double[] estimates = inputs.stream().mapToDouble(Uncertain::value).toArray();
        double value = model.applyAsDouble(estimates.clone());
        List<Double> shares = new ArrayList<>();
        double squares = 0;
        for (int i = 0; i < estimates.length; i++) {
            double u = inputs.get(i).standardUncertainty();
            double share = 0;
            if (u > 0) {
                double[] moved = estimates.clone();
                moved[i] = estimates[i] + u;
                double above = model.applyAsDouble(moved.clone());
                moved[i] = estimates[i] - u;
                share = (above - model.applyAsDouble(moved)) / 2;
            }
            shares.add(share);
            squares += share * share;
        }
        return new Propagation(new Uncertain(value, StrictMath.sqrt(squares)), shares);
    }
}
