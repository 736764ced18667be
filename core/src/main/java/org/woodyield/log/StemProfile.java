package org.woodyield.log;

import org.woodyield.measure.Domain;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/** The diameter inside bark of a standing or felled stem by height above ground. A person can add their own. */
@Calculation("log.stem-profile")
public interface StemProfile {

    /**
     * The heights that are answered; nothing is guessed beyond.
     *
     * @return in feet
     */
    Domain heightFeet();

    /**
     * The diameter inside bark.
     *
     * @param heightFeet above ground
     * @return in inches, zero or more
     * @throws org.woodyield.measure.OutOfDomainException outside the heights that are answered, or for NaN
     */
    double diameterInches(double heightFeet);

    /**
     * How the diameter comes about.
     *
     * @param heightFeet above ground
     * @return a working with the bits of {@link #diameterInches}
     * @throws org.woodyield.measure.OutOfDomainException outside the heights that are answered, or for NaN
     */
    Working working(double heightFeet);
}
