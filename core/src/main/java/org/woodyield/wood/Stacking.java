package org.woodyield.wood;

import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * How boards are stacked to dry.
 *
 * @param stackWidth how wide a row may be, above 0, up to 20 ft
 * @param gap between the boards of a row, 0 to 12 in
 * @param stickerThickness of a sticker, above 0, up to 4 in
 * @param stickerSpacing along the boards, above 0, up to 24 in
 * @see org.woodyield.source.Sources sources wengert-stickers and trade
 */
public record Stacking(Length stackWidth, Length gap, Length stickerThickness, Length stickerSpacing) {

    /** The widest row. */
    public static final Length WIDEST = Length.feet(20);
    /** The widest gap. */
    public static final Length WIDEST_GAP = Length.inches(12);
    /** The thickest sticker. */
    public static final Length THICKEST_STICKER = Length.inches(4);
    /** The widest spacing that is advised at all. */
    public static final Length WIDEST_SPACING = Length.inches(24);

    private static final Stacking USUAL =
            new Stacking(Length.feet(4), Length.inches(1), Length.inches(3, 4), Length.inches(16));

    /**
     * Checks the measures.
     *
     * @throws OutOfDomainException if one is outside
     */
    public Stacking {
        require("width of the stack", stackWidth, stackWidth.isPositive(), WIDEST, "build more stacks");
        require("gap", gap, gap.compareTo(Length.ZERO) >= 0, WIDEST_GAP, "1 in is usual");
        require(
                "thickness of a sticker",
                stickerThickness,
                stickerThickness.isPositive(),
                THICKEST_STICKER,
                "3/4 in is usual");
        require(
                "spacing of the stickers",
                stickerSpacing,
                stickerSpacing.isPositive(),
                WIDEST_SPACING,
                "12 to 16 in for boards of an inch, 16 to 18 in for framing");
    }

    private static void require(String what, Length given, boolean enough, Length greatest, String remedy) {
        if (!enough || given.compareTo(greatest) > 0) {
            throw new OutOfDomainException(what, given.toString(), "", "up to " + greatest, remedy);
        }
    }

    /**
     * What is taken where nothing is given: rows of 4 ft with gaps of 1 in, both a choice of this library after common
     * practice, on stickers of 3/4 in every 16 in.
     *
     * @return the usual way
     */
    public static Stacking usual() {
        return USUAL;
    }

    /**
     * A stack of boards built so.
     *
     * @param boards how many
     * @param thickness of a board, green
     * @param width of a board, green
     * @param length of a board
     * @return the stack
     * @throws OutOfDomainException as {@link LumberStack}
     */
    public LumberStack of(int boards, Length thickness, Length width, Length length) {
        return new LumberStack(boards, thickness, width, length, stackWidth, gap, stickerThickness, stickerSpacing);
    }
}
