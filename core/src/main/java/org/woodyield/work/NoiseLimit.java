package org.woodyield.work;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A limit for noise: a level that may last eight hours, and the decibels that halve the time. Information only; it says
 * nothing about anybody's hearing.
 *
 * @param name who set it
 * @param levelForEightHours in dB(A)
 * @param exchangeRate decibels that halve the time
 * @param source what states it
 */
public record NoiseLimit(String name, double levelForEightHours, double exchangeRate, Source source) {

    private static final Domain LEVEL = Domain.of("sound level", "dB(A)", 40, 140);
    private static final Domain HOURS = Domain.of("hours", "h", 0, 24);

    /** Recommended by NIOSH. */
    public static final NoiseLimit NIOSH = new NoiseLimit("NIOSH", 85, 3, Sources.get("noise-niosh"));

    /** Permissible by OSHA. */
    public static final NoiseLimit OSHA = new NoiseLimit("OSHA", 90, 5, Sources.get("noise-osha"));

    /**
     * The hours that a level may last.
     *
     * @param level in dB(A), 40 to 140
     * @return {@code 8 / 2^((L - L8) / q)} in hours
     * @throws org.woodyield.measure.OutOfDomainException if the level is outside
     */
    @Calculation("work.noise-time")
    public double allowedHours(double level) {
        LEVEL.require(level);
        return 8 * StrictMath.exp(-(level - levelForEightHours) / exchangeRate * StrictMath.log(2));
    }

    /**
     * How {@link #allowedHours} comes about.
     *
     * @param level in dB(A), 40 to 140
     * @return the working, with the same result
     */
    public Working allowedHoursWorking(double level) {
        LEVEL.require(level);
        return allowed(Working.of("Allowed time at a sound level, " + name), level)
                .note("Level at the ear, before any protection.")
                .build();
    }

    private Working.Builder allowed(Working.Builder working, double level) {
        return working.given("L", "sound level at the ear", level, "dB(A)")
                .constant("L8", "level for eight hours", levelForEightHours, "dB(A)", source)
                .constant("q", "decibels that halve the time", exchangeRate, "dB", source)
                .step("T", "allowed time", "8 * exp(-(L - L8) / q * ln(2))", "h", source);
    }

    /**
     * The dose of some time at a level; doses of a day add up.
     *
     * @param level in dB(A), 40 to 140
     * @param hours 0 to 24
     * @return hours over allowed hours, in percent; 100 is the limit
     * @throws org.woodyield.measure.OutOfDomainException if level or hours are outside
     */
    @Calculation("work.noise-dose")
    public double dosePercent(double level, double hours) {
        HOURS.require(hours);
        return hours / allowedHours(level) * 100;
    }

    /**
     * How {@link #dosePercent} comes about.
     *
     * @param level in dB(A), 40 to 140
     * @param hours 0 to 24
     * @return the working, with the same result
     * @throws org.woodyield.measure.OutOfDomainException if level or hours are outside
     */
    public Working doseWorking(double level, double hours) {
        LEVEL.require(level);
        HOURS.require(hours);
        return allowed(Working.of("Noise dose of some time at a level, " + name), level)
                .given("t", "time at it", hours, "h")
                .step("D", "dose", "t / T * 100", "%", source)
                .note("Level at the ear, before any protection; 100 % is the limit of a day.")
                .build();
    }
}
