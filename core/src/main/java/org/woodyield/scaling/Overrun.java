package org.woodyield.scaling;

import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Volume;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What the saw got, beside what was scaled or what the log held. These are three figures with three bases; one does not
 * follow from another.
 *
 * <p>Source: Plank, PNW-328 (1985), definitions.
 */
public final class Overrun {

    private static final Domain SCALE = Domain.positive("scale", "bf");
    private static final Domain LOG_CUBIC_METRES = Domain.positive("log volume", "m3");

    private Overrun() {}

    /**
     * Overrun: 100 (tally/scale - 1). Negative when the saw gets less than was scaled.
     *
     * @param tally lumber by nominal size
     * @param scale of the same logs by a rule
     * @return in percent
     * @throws IllegalArgumentException if the kinds of board feet are others
     * @throws org.woodyield.measure.OutOfDomainException if the scale is zero
     */
    @Calculation("scaling.overrun")
    public static double percent(BoardFeet tally, BoardFeet scale) {
        return 100 * (lumber(tally) / scaled(scale) - 1);
    }

    /**
     * The working of {@link #percent}.
     *
     * @param tally lumber by nominal size
     * @param scale of the same logs by a rule
     * @return a working with the same value
     * @throws IllegalArgumentException if the kinds of board feet are others
     * @throws org.woodyield.measure.OutOfDomainException if the scale is zero
     */
    public static Working percentWorking(BoardFeet tally, BoardFeet scale) {
        return Working.of("Overrun")
                .given("T", "lumber by nominal tally", lumber(tally), "bf")
                .given("S", "scale", scaled(scale), "bf")
                .step("o", "overrun", "100 * (T / S - 1)", "%", source())
                .build();
    }

    /**
     * Lumber recovery factor: board feet of lumber from a cubic foot of log.
     *
     * @param tally lumber by nominal size
     * @param log solid volume of the logs
     * @return in bf/ft3
     * @throws IllegalArgumentException if the board feet are not a tally
     * @throws org.woodyield.measure.OutOfDomainException if the log volume is zero
     */
    @Calculation("scaling.lumber-recovery-factor")
    public static double lumberRecoveryFactor(BoardFeet tally, Volume log) {
        return lumber(tally) / solid(log).cubicFeet();
    }

    /**
     * The working of {@link #lumberRecoveryFactor}.
     *
     * @param tally lumber by nominal size
     * @param log solid volume of the logs
     * @return a working with the same value
     * @throws IllegalArgumentException if the board feet are not a tally
     * @throws org.woodyield.measure.OutOfDomainException if the log volume is zero
     */
    public static Working lumberRecoveryFactorWorking(BoardFeet tally, Volume log) {
        return Working.of("Lumber recovery factor")
                .given("T", "lumber by nominal tally", lumber(tally), "bf")
                .given("V", "solid volume of the logs", solid(log).cubicFeet(), "ft3")
                .step("f", "lumber recovery factor", "T / V", "bf/ft3", source())
                .note(
                        "A nominal board foot of dressed lumber is less than 1/12 cubic foot, so this is no share of wood.")
                .build();
    }

    /**
     * Cubic recovery: the share of the log's wood that is in the lumber.
     *
     * @param lumber solid volume of the lumber, at a stated stage
     * @param log solid volume of the logs
     * @return in percent
     * @throws org.woodyield.measure.OutOfDomainException if the log volume is zero
     */
    @Calculation("scaling.cubic-recovery")
    public static double cubicPercent(Volume lumber, Volume log) {
        return 100 * (lumber.cubicMetres() / solid(log).cubicMetres());
    }

    /**
     * The working of {@link #cubicPercent}.
     *
     * @param lumber solid volume of the lumber, at a stated stage
     * @param log solid volume of the logs
     * @return a working with the same value
     * @throws org.woodyield.measure.OutOfDomainException if the log volume is zero
     */
    public static Working cubicPercentWorking(Volume lumber, Volume log) {
        return Working.of("Cubic recovery")
                .given("W", "solid volume of the lumber", lumber.cubicMetres(), "m3")
                .given("V", "solid volume of the logs", solid(log).cubicMetres(), "m3")
                .step("r", "cubic recovery", "100 * (W / V)", "%", source())
                .build();
    }

    private static Source source() {
        return Sources.get("plank-1985");
    }

    private static double lumber(BoardFeet tally) {
        if (tally.kind() != BoardFeet.Kind.TALLY) {
            throw new IllegalArgumentException(
                    "lumber is counted by tally; these are " + tally.kind().label() + " board feet");
        }
        return tally.value();
    }

    private static double scaled(BoardFeet scale) {
        if (scale.kind() != BoardFeet.Kind.SCALE) {
            throw new IllegalArgumentException(
                    "overrun is over a scale; these are " + scale.kind().label() + " board feet");
        }
        return SCALE.require(scale.value());
    }

    private static Volume solid(Volume log) {
        LOG_CUBIC_METRES.require(log.cubicMetres());
        return log;
    }
}
