package org.woodyield.sawing;

import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A timber squared from the round, and the smallest end that holds it. Sharp edged it needs the diagonal; with wane on all
 * four edges the circle need only reach the ends of the corners that may be missing.
 *
 * @param width green width
 * @param height green height
 * @param wane what may be missing at each edge, the share of the width along the width
 */
public record SquaredTimber(Length width, Length height, Wane wane) {

    /**
     * Refuses what is no timber.
     *
     * @throws OutOfDomainException if a side is not above zero
     */
    public SquaredTimber {
        if (!width.isPositive() || !height.isPositive()) {
            throw new OutOfDomainException(
                    "timber", width + " x " + height, "", "sides above 0", "give the green size");
        }
    }

    /**
     * The smallest diameter inside bark of a round end that holds the timber, the pith at its centre.
     *
     * @return in inches
     */
    @Calculation("sawing.timber-end")
    public double smallestEndInches() {
        double w = width.toInches();
        double h = height.toInches();
        double flat = Math.max(0, w - 2 * wane.widthShare() * w);
        double upright = Math.max(0, h - 2 * wane.thicknessShare() * h);
        return Math.max(Math.sqrt(flat * flat + h * h), Math.sqrt(w * w + upright * upright));
    }

    /**
     * The working of {@link #smallestEndInches}.
     *
     * @return a working with the same value
     */
    public Working smallestEndInchesWorking() {
        Source exact = Sources.get("definition");
        return Working.of("Smallest end for a timber")
                .given("w", "width", width.toInches(), "in")
                .given("h", "height", height.toInches(), "in")
                .given("u", "wane, share of the width", wane.widthShare(), "")
                .given("v", "wane, share of the height", wane.thicknessShare(), "")
                .step("f", "width that must be full", "max(0, w - 2 * u * w)", "in", exact)
                .step("g", "height that must be full", "max(0, h - 2 * v * h)", "in", exact)
                .step("d", "smallest end inside bark", "max(sqrt(f * f + h * h), sqrt(w * w + g * g))", "in", exact)
                .note("The centre of the timber lies at the centre of the end; sweep needs more.")
                .build();
    }
}
