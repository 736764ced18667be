package org.woodyield.lumber;

import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Whether a board goes into a metal connector made for a dressed size. The widths that the seat takes are the maker's; give
 * them. Nothing is said of strength: lumber of another size or grade than the maker names may not be hung from it, and the
 * local authority and licensed practice decide.
 *
 * @param least the narrowest board that the seat holds without play, above 0
 * @param greatest the widest board that goes in, the least or more
 */
public record ConnectorFit(Length least, Length greatest) {

    /** How a board and a seat go together. */
    public enum Fit {
        /** Narrower than the seat holds: it stands loose. */
        LOOSE,
        /** Within what the seat takes. */
        FITS,
        /** Wider than the seat. */
        TOO_WIDE
    }

    /**
     * Checks the seat.
     *
     * @throws OutOfDomainException if the widths are not above zero or are crossed
     */
    public ConnectorFit {
        if (!least.isPositive() || greatest.compareTo(least) < 0) {
            throw new OutOfDomainException(
                    "seat of the connector",
                    least + " to " + greatest,
                    "",
                    "above 0, the narrower board first",
                    "take both from what the maker prints");
        }
    }

    /**
     * How a board goes in.
     *
     * @param board its width at the seat, as it is when it is built in
     * @return loose, fitting or too wide
     */
    public Fit fit(Length board) {
        require(board);
        if (board.compareTo(least) < 0) {
            return Fit.LOOSE;
        }
        return board.compareTo(greatest) > 0 ? Fit.TOO_WIDE : Fit.FITS;
    }

    /**
     * By how much it is off: above zero too wide, below zero loose, zero where it fits.
     *
     * @param board its width at the seat, above 0
     * @return inches
     * @throws OutOfDomainException if the width is not above zero
     */
    @Calculation("lumber.connector-fit")
    public double offInches(Length board) {
        require(board);
        double width = board.toInches();
        return Math.max(width - greatest.toInches(), 0) + Math.min(width - least.toInches(), 0);
    }

    /**
     * How {@link #offInches} came about.
     *
     * @param board its width at the seat, above 0
     * @return the working; its value equals the figure bit for bit
     * @throws OutOfDomainException if the width is not above zero
     */
    public Working offWorking(Length board) {
        require(board);
        return Working.of("A board in a metal connector")
                .given("B", "width of the board", board.toInches(), "in")
                .given("a", "least width that the seat takes", least.toInches(), "in")
                .given("b", "greatest width that the seat takes", greatest.toInches(), "in")
                .step(
                        "off",
                        "too wide above zero, loose below",
                        "max(B - b, 0) + min(B - a, 0)",
                        "in",
                        Sources.get("definition"))
                .note("A connector holds what its maker promises only for the lumber that he names. Size alone says"
                        + " nothing of strength; the local authority and licensed practice decide.")
                .build();
    }

    private static void require(Length board) {
        if (!board.isPositive()) {
            throw new OutOfDomainException("width of the board", board.toString(), "", "above 0", "");
        }
    }
}
