package org.woodyield.sawing;

import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * A length to which a piece may be trimmed, with what a piece of the option's least width is then worth.
 *
 * @param length the trimmed length, above zero
 * @param worth zero or more, in the unit of the pass costs; counted to a millionth
 */
public record LengthWorth(Length length, double worth) {

    private static final Domain WORTH = Domain.of("worth of a piece", "", 0, 1e9);

    /**
     * Refuses what cannot be.
     *
     * @throws OutOfDomainException if the length is not above zero or the worth is not from 0 to 1e9
     */
    public LengthWorth {
        if (!length.isPositive()) {
            throw new OutOfDomainException("length of a piece", length.toString(), "", "above 0", "");
        }
        WORTH.require(worth);
    }
}
