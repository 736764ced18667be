package org.woodyield.work;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The cutting energy of a kind of wood, found from timed cuts.
 *
 * <p>Where power limits it a cut takes {@code t = c x}, with the cutting energy c at specific gravity 1 and {@code x = f q w L /
 * P}: f is what wood and edge make of c, q the kerf, w L the face and P the power at the cut. The line through the origin with
 * the least squares has {@code c = sum(x t) / sum(x^2)} and the standard uncertainty {@code sqrt(sum((t - c x)^2) / (n - 1) /
 * sum(x^2))}; the interval is the one of Student's law with n - 1 degrees of freedom. A cut that was fed as fast as
 * carriage, sawyer or teeth allow tells nothing of the energy and is set aside.
 *
 * <p>Cuts tell the ratio of energy to power only. So {@link #into} takes the share of the rated power that does cutting, the
 * loss with height and the dulling as fixed from then on: what is uncertain in them is in the scatter of the cuts.
 *
 * @param hardwood whether it is the energy of hardwoods
 * @param energy in J/cm3 at specific gravity 1, with a fresh edge in green wood
 * @param standardUncertainty of the energy
 * @param least lower end of the interval that holds the energy with 95 %
 * @param greatest its upper end
 * @param used how many cuts went in
 * @param setAside names of cuts in which the feed limit held
 */
public record EnergyFit(
        boolean hardwood,
        double energy,
        double standardUncertainty,
        double least,
        double greatest,
        int used,
        List<String> setAside) {

    /** Fewer say too little of their own scatter. */
    public static final int FEWEST = 3;

    /** More than anybody times. */
    public static final int MOST = 500;

    private static final double COVERAGE = 0.95;
    private static final Source FIT = Sources.get("timed-cuts");

    /** Keeps an immutable copy. */
    public EnergyFit {
        setAside = List.copyOf(setAside);
    }

    /**
     * Fits the cuts of one kind of wood.
     *
     * @param inputs power, losses and what wood and edge make of the energy
     * @param kerf of the saw
     * @param hardwood whether the hardwoods among the cuts are meant, or the softwoods
     * @param cuts all timed cuts
     * @return the energy with its uncertainty
     * @throws OutOfDomainException if fewer than {@link #FEWEST} or more than {@link #MOST} cuts of that kind were limited by
     *     power, an input is missing, or the energy comes out beyond its limits
     */
    @Calculation("work.energy-fit")
    public static EnergyFit of(WorkInputs inputs, Length kerf, boolean hardwood, List<TimedCut> cuts) {
        List<Point> points = new ArrayList<>();
        List<String> setAside = new ArrayList<>();
        choose(inputs, kerf, hardwood, cuts, points, setAside);
        double xt = 0;
        double xx = 0;
        for (Point point : points) {
            xt += point.x() * point.seconds;
            xx += point.x() * point.x();
        }
        double energy = CuttingRate.energyInput(hardwood).domain().require(xt / xx);
        double squares = 0;
        for (Point point : points) {
            double off = point.seconds - energy * point.x();
            squares += off * off;
        }
        double uncertainty = Math.sqrt(squares / (points.size() - 1) / xx);
        double half = StudentLaw.twoSided(COVERAGE, points.size() - 1) * uncertainty;
        return new EnergyFit(hardwood, energy, uncertainty, energy - half, energy + half, points.size(), setAside);
    }

    /**
     * How the energy of {@link #of} comes about.
     *
     * @param inputs power, losses and what wood and edge make of the energy
     * @param kerf of the saw
     * @param hardwood whether the hardwoods among the cuts are meant, or the softwoods
     * @param cuts all timed cuts
     * @return the working, with the same result
     * @throws OutOfDomainException as {@link #of}
     */
    public static Working working(WorkInputs inputs, Length kerf, boolean hardwood, List<TimedCut> cuts) {
        List<Point> points = new ArrayList<>();
        List<String> setAside = new ArrayList<>();
        choose(inputs, kerf, hardwood, cuts, points, setAside);
        Working.Builder working = Working.of("Cutting energy from timed cuts")
                .given("P", "power at the cut", points.get(0).power, "W")
                .given("q", "kerf", points.get(0).kerf, "cm");
        StringBuilder xt = new StringBuilder();
        StringBuilder xx = new StringBuilder();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            int n = i + 1;
            working.given("f_" + n, point.id + ": what wood and edge make of the energy", point.factor, "")
                    .given("w_" + n, point.id + ": width", point.width, "cm")
                    .given("L_" + n, point.id + ": length", point.length, "cm")
                    .given("t_" + n, point.id + ": time in the wood", point.seconds, "s")
                    .step(
                            "x_" + n,
                            point.id + ": time for each J/cm3",
                            "f_" + n + " * q * w_" + n + " * L_" + n + " / P",
                            "s cm3/J",
                            FIT);
            xt.append(i == 0 ? "" : " + ")
                    .append("x_")
                    .append(n)
                    .append(" * t_")
                    .append(n);
            xx.append(i == 0 ? "" : " + ")
                    .append("x_")
                    .append(n)
                    .append(" * x_")
                    .append(n);
        }
        working.step("S_xt", "sum of x t", xt.toString(), "", FIT).step("S_xx", "sum of x^2", xx.toString(), "", FIT);
        if (!setAside.isEmpty()) {
            working.note("Set aside, the feed limit held: " + String.join(", ", setAside) + ".");
        }
        return working.step("c", "cutting energy at specific gravity 1", "S_xt / S_xx", "J/cm3", FIT)
                .build();
    }

    private static void choose(
            WorkInputs inputs,
            Length kerf,
            boolean hardwood,
            List<TimedCut> cuts,
            List<Point> points,
            List<String> setAside) {
        for (TimedCut cut : cuts) {
            if (cut.hardwood() == hardwood) {
                CuttingRate rate = cut.gravity()
                        .map(gravity -> CuttingRate.of(inputs, hardwood, gravity, kerf))
                        .orElseGet(() -> CuttingRate.of(inputs, hardwood, kerf));
                if (cut.feedCentimetresPerSecond() >= rate.feedCapCentimetresPerSecond()) {
                    setAside.add(cut.id());
                } else {
                    points.add(Point.of(cut, rate));
                }
            }
        }
        if (points.size() < FEWEST || points.size() > MOST) {
            throw new OutOfDomainException(
                    "timed cuts in " + (hardwood ? "hardwood" : "softwood") + " limited by power",
                    Integer.toString(points.size()),
                    "",
                    FEWEST + " to " + MOST,
                    setAside.isEmpty()
                            ? "time more cuts, or leave them out"
                            : "set aside because the feed limit held: " + String.join(", ", setAside)
                                    + "; time wider cuts, or give work.feed-limit");
        }
    }

    /**
     * Inputs with this energy in place of what stood there.
     *
     * @param inputs those that it was fitted with
     * @return a copy
     */
    public WorkInputs into(WorkInputs inputs) {
        Distribution spread = standardUncertainty > 0
                ? new Distribution.Normal(energy, standardUncertainty)
                : new Distribution.Fixed(energy);
        WorkInputs fitted = inputs.with(CuttingRate.energyInput(hardwood), new InputValue(energy, spread, FIT));
        for (WorkInput input : List.of(WorkInput.SHARE_AT_CUT, WorkInput.LOSS_PER_KILOMETRE, WorkInput.DULLING)) {
            InputValue value = inputs.required(input);
            fitted = fitted.with(input, InputValue.of(value.value(), value.source()));
        }
        return fitted;
    }

    /** A timed cut as the fit sees it. */
    private record Point(
            String id, double factor, double kerf, double width, double length, double power, double seconds) {

        static Point of(TimedCut cut, CuttingRate rate) {
            return new Point(
                    cut.id(),
                    rate.energyFactor(),
                    rate.kerfCentimetres(),
                    cut.width().toMillimetres() / 10,
                    cut.length().toMillimetres() / 10,
                    rate.powerAtCutWatts(),
                    cut.seconds());
        }

        double x() {
            return factor * kerf * width * length / power;
        }
    }
}
