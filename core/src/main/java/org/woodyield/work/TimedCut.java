package org.woodyield.work;

import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.source.Sourced;
import org.woodyield.wood.Species;

/**
 * A cut that its sawyer timed: the time in the wood alone, without idling, setting and the way back.
 *
 * @param id its name
 * @param hardwood whether the wood is a hardwood
 * @param gravity its specific gravity; empty where only the kind of wood is known
 * @param width mean width of the cut, bark included where the saw passed it
 * @param length along the log
 * @param seconds in the wood
 */
public record TimedCut(
        String id, boolean hardwood, Optional<Sourced> gravity, Length width, Length length, double seconds) {

    /** Seconds that a cut may have taken. */
    public static final Domain SECONDS = Domain.of("time of a cut", "s", 0.1, 36_000);

    /** Widths that a timed cut may have. */
    public static final Domain WIDTH = Domain.of("width of a timed cut", "cm", 0.1, 400);

    /** Lengths that a timed cut may have. */
    public static final Domain LENGTH = Domain.of("length of a timed cut", "cm", 1, 3000);

    /**
     * Refuses what was no cut.
     *
     * @throws org.woodyield.measure.OutOfDomainException if width, length or time is outside its limits
     */
    public TimedCut {
        WIDTH.require(width.toMillimetres() / 10);
        LENGTH.require(length.toMillimetres() / 10);
        SECONDS.require(seconds);
    }

    /**
     * A cut in a known species.
     *
     * @param id its name
     * @param species the wood
     * @param width mean width of the cut
     * @param length along the log
     * @param seconds in the wood
     * @return the cut
     * @throws org.woodyield.measure.OutOfDomainException if width, length or time is outside its limits
     */
    public static TimedCut of(String id, Species species, Length width, Length length, double seconds) {
        return new TimedCut(id, species.hardwood(), species.specificGravityGreen(), width, length, seconds);
    }

    /** The feed that was held, in cm/s. */
    double feedCentimetresPerSecond() {
        return length.toMillimetres() / 10 / seconds;
    }
}
