package org.woodyield.show;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.wood.DryingAir;
import org.woodyield.wood.Species;
import org.woodyield.wood.Stacking;

/**
 * Boards to be dried, as far as they are known; {@link DryingSheet} leaves out what needs more and says so.
 *
 * @param species the wood
 * @param thickness of a board, green as sawn
 * @param width of a board, green as sawn
 * @param length of a board
 * @param amount how many there are
 * @param fromPercent moisture at the start, 0 to 400 %; empty for the green moisture of the species
 * @param toPercent moisture at the end, 0 to 400 %, no more than a start that is given
 * @param ringAngleDegrees angle between the rings and the wide face, 0 to 90
 * @param pithDistances from the pith to the middle of the board, for cupping; none where it is not known
 * @param air in which they dry
 * @param stacking how they are stacked
 * @param inches whether lengths are shown in inches, else in millimetres
 */
public record DryingCase(
        Species species,
        Length thickness,
        Optional<Length> width,
        Optional<Length> length,
        Optional<Amount> amount,
        Optional<Double> fromPercent,
        double toPercent,
        double ringAngleDegrees,
        List<Length> pithDistances,
        Optional<DryingAir> air,
        Stacking stacking,
        boolean inches) {

    private static final Domain MOISTURE = Domain.of("moisture", "%", 0, 400);

    /** Number of boards, or board feet from which it follows. */
    public sealed interface Amount {}

    /**
     * So many boards.
     *
     * @param count 1 to 100000
     */
    public record Boards(int count) implements Amount {}

    /**
     * As many boards as give so much, each 144 cubic inches of green wood a board foot, up to a whole board.
     *
     * @param feet above 0
     */
    public record Feet(double feet) implements Amount {}

    /**
     * Checks the moistures.
     *
     * @throws OutOfDomainException if a moisture is outside or the end is above a start that is given
     */
    public DryingCase {
        pithDistances = List.copyOf(pithDistances);
        MOISTURE.require(toPercent);
        fromPercent.ifPresent(MOISTURE::require);
        if (fromPercent.isPresent() && toPercent > fromPercent.get()) {
            throw new OutOfDomainException(
                    "moisture at the end",
                    NumberText.full(toPercent),
                    "%",
                    "up to that at the start, " + NumberText.full(fromPercent.get()) + " %",
                    "drying goes from the wetter to the drier: change the two about");
        }
    }
}
