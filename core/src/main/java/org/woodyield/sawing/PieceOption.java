package org.woodyield.sawing;

import java.util.List;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * A size that may be sawn, as often as wanted. Sizes are green targets: allowances for shrinkage, planing and sawing
 * variation are in them.
 *
 * <p>A piece of a width above the least one is worth more in proportion to its width.
 *
 * @param id the user's name for it
 * @param thickness above zero
 * @param leastWidth above zero
 * @param greatestWidth the least width again for a fixed size, more for random widths
 * @param widthStep step from the least width to the greatest; not used for a fixed size
 * @param lengths trimmed lengths with their worth, at least one, no length twice
 * @param wane what may be missing at an edge
 * @param edges whether it is edged; a piece that keeps its bark edges comes from a live pass, is sold by its width inside
 *     bark, rounded down to the width step, is never less wide than the least width, and is paid up to the greatest
 */
public record PieceOption(
        String id,
        Length thickness,
        Length leastWidth,
        Length greatestWidth,
        Length widthStep,
        List<LengthWorth> lengths,
        Wane wane,
        Edges edges) {

    /** How a piece is finished at its edges, and what then counts as its width. */
    public enum Edges {
        /** Two straight edges. */
        SAWN,
        /** Bark edges; the narrowest place of the narrower face counts. */
        BARK_LEAST_WIDTH,
        /** Bark edges; the mean along the piece of both faces counts. */
        BARK_MEAN_WIDTH
    }

    /**
     * Refuses what cannot be sawn and keeps an immutable copy of the lengths.
     *
     * @throws OutOfDomainException if a measure is not above zero, the widths are crossed, there is no length, or a
     *     length stands there twice
     */
    public PieceOption {
        positive(id, "thickness", thickness);
        positive(id, "width", leastWidth);
        lengths = List.copyOf(lengths);
        if (greatestWidth.compareTo(leastWidth) < 0) {
            throw new OutOfDomainException(
                    "greatest width of " + id, greatestWidth.toString(), "", leastWidth + " or more", "change the two");
        }
        if (edges != Edges.SAWN || !greatestWidth.equals(leastWidth)) {
            positive(id, "width step", widthStep);
        }
        if (lengths.isEmpty()) {
            throw new OutOfDomainException("lengths of " + id, "none", "", "one or more", "name a length");
        }
        if (lengths.stream().map(LengthWorth::length).distinct().count() != lengths.size()) {
            throw new OutOfDomainException("lengths of " + id, lengths.toString(), "", "each length once", "");
        }
    }

    /**
     * A size with sawn edges.
     *
     * @param id the user's name for it
     * @param thickness above zero
     * @param leastWidth above zero
     * @param greatestWidth the least width again for a fixed size, more for random widths
     * @param widthStep step from the least width to the greatest; not used for a fixed size
     * @param lengths trimmed lengths with their worth, at least one, no length twice
     * @param wane what may be missing at an edge
     * @throws OutOfDomainException if this cannot be sawn
     */
    public PieceOption(
            String id,
            Length thickness,
            Length leastWidth,
            Length greatestWidth,
            Length widthStep,
            List<LengthWorth> lengths,
            Wane wane) {
        this(id, thickness, leastWidth, greatestWidth, widthStep, lengths, wane, Edges.SAWN);
    }

    /**
     * A flitch left unedged, for tables and other work with natural edges.
     *
     * @param id the user's name for it
     * @param thickness green target
     * @param leastWidth narrower ones are of no use
     * @param greatestWidth what is wider is worth no more
     * @param widthStep the width that counts is rounded down to it
     * @param measured how its width is measured
     * @param lengths trimmed lengths with what a flitch of the least width is worth
     * @return the option
     * @throws OutOfDomainException if this cannot be sawn, or the measure is that of sawn edges
     */
    public static PieceOption unedged(
            String id,
            Length thickness,
            Length leastWidth,
            Length greatestWidth,
            Length widthStep,
            Edges measured,
            List<LengthWorth> lengths) {
        if (measured == Edges.SAWN) {
            throw new OutOfDomainException("edges of " + id, "sawn", "", "bark edges", "say how its width is measured");
        }
        return new PieceOption(id, thickness, leastWidth, greatestWidth, widthStep, lengths, Wane.NONE, measured);
    }

    /**
     * Whether it keeps its bark edges.
     *
     * @return false for sawn edges
     */
    public boolean unedged() {
        return edges != Edges.SAWN;
    }

    /**
     * A fixed size with square edges.
     *
     * @param id the user's name for it
     * @param thickness green target
     * @param width green target
     * @param lengths trimmed lengths with their worth
     * @return the option
     */
    public static PieceOption fixed(String id, Length thickness, Length width, List<LengthWorth> lengths) {
        return new PieceOption(id, thickness, width, width, Length.ZERO, lengths, Wane.NONE);
    }

    /**
     * Whether there is only one width.
     *
     * @return true for a fixed size
     */
    public boolean fixedWidth() {
        return leastWidth.equals(greatestWidth);
    }

    /**
     * The same size with wane allowed.
     *
     * @param allowed the wane
     * @return a new option
     */
    public PieceOption withWane(Wane allowed) {
        return new PieceOption(id, thickness, leastWidth, greatestWidth, widthStep, lengths, allowed, edges);
    }

    private static void positive(String id, String what, Length value) {
        if (!value.isPositive()) {
            throw new OutOfDomainException(what + " of " + id, value.toString(), "", "above 0", "");
        }
    }
}
