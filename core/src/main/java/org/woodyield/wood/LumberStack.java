package org.woodyield.wood;

import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A stack of boards of one size, in rows with stickers under each: how many rows and stickers it takes, how high it stands,
 * the ground that it covers and what it weighs. A stack can fall or roll: build it on level bearers, lower than it is wide.
 *
 * @param boards how many, 1 or more
 * @param thickness of a board, green
 * @param width of a board, green
 * @param length of a board
 * @param stackWidth how wide a row may be, a board or more
 * @param gap between the boards of a row, 0 or more
 * @param stickerThickness of a sticker; 3/4 in is usual
 * @param stickerSpacing along the boards; 12 to 16 in for boards of an inch, 16 to 18 in for framing, never over 24 in
 * @see org.woodyield.source.Sources source wengert-stickers
 */
public record LumberStack(
        int boards,
        Length thickness,
        Length width,
        Length length,
        Length stackWidth,
        Length gap,
        Length stickerThickness,
        Length stickerSpacing) {

    /**
     * Checks that it can be stacked.
     *
     * @throws OutOfDomainException if there is no board, a size is not above zero or a board is wider than the stack
     */
    public LumberStack {
        if (boards < 1 || boards > 100_000) {
            throw new OutOfDomainException("boards", Integer.toString(boards), "", "1 to 100000", "");
        }
        positive("thickness of a board", thickness);
        positive("width of a board", width);
        positive("length of a board", length);
        positive("thickness of a sticker", stickerThickness);
        positive("spacing of the stickers", stickerSpacing);
        if (gap.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("gap", gap.toString(), "", "0 or more", "");
        }
        if (stackWidth.compareTo(width) < 0) {
            throw new OutOfDomainException(
                    "width of the stack",
                    stackWidth.toString(),
                    "",
                    "a board or more, " + width,
                    "give " + width + " or more as stack-width, or narrower boards");
        }
    }

    private static void positive(String what, Length length) {
        if (!length.isPositive()) {
            throw new OutOfDomainException(what, length.toString(), "", "above 0", "");
        }
    }

    /**
     * Boards side by side in a row.
     *
     * @return whole boards that fit, one or more
     */
    public int boardsInARow() {
        return (int) Math.min(boards, Math.floor(across()));
    }

    /** Boards and gaps that fit, a millionth more so that an exact fit is no error of the last bit. */
    private double across() {
        return (stackWidth.toInches() + gap.toInches()) / (width.toInches() + gap.toInches()) + 0.000001;
    }

    /**
     * Rows, the last one possibly not full.
     *
     * @return one or more
     */
    public int rows() {
        return (boards + boardsInARow() - 1) / boardsInARow();
    }

    /**
     * Stickers under a row: at both ends and no further apart than the spacing.
     *
     * @return two or more
     */
    public int stickersInARow() {
        return (int) Math.ceil(length.toInches() / stickerSpacing.toInches() - 0.000001) + 1;
    }

    /**
     * All stickers, with those under the first row.
     *
     * @return rows times stickers in a row
     */
    public int stickers() {
        return rows() * stickersInARow();
    }

    /**
     * How high it stands on its bearers, green.
     *
     * @return inches: rows times board and sticker
     */
    @Calculation("wood.stack-height")
    public double heightInches() {
        return rows() * (thickness.toInches() + stickerThickness.toInches());
    }

    /**
     * How {@link #heightInches} came about, with rows and stickers.
     *
     * @return the working; its value equals the height bit for bit
     */
    public Working heightWorking() {
        return Working.of("Rows, stickers and height of a stack")
                .given("N", "boards", boards, "")
                .given("T", "thickness of a board", thickness.toInches(), "in")
                .given("W", "width of a board", width.toInches(), "in")
                .given("L", "length of a board", length.toInches(), "in")
                .given("A", "width of the stack", stackWidth.toInches(), "in")
                .given("g", "gap between boards", gap.toInches(), "in")
                .given("s", "thickness of a sticker", stickerThickness.toInches(), "in")
                .given("d", "spacing of the stickers", stickerSpacing.toInches(), "in")
                .step(
                        "n",
                        "boards in a row",
                        "min(N, floor((A + g) / (W + g) + 0.000001))",
                        "",
                        Sources.get("definition"))
                .step("rows", "rows", "ceil(N / n)", "", Sources.get("definition"))
                .step("k", "stickers in a row", "ceil(L / d - 0.000001) + 1", "", Sources.get("definition"))
                .step("stickers", "stickers in all", "rows * k", "", Sources.get("definition"))
                .step("height", "height", "rows * (T + s)", "in", Sources.get("definition"))
                .note(
                        "Stickers stand one above the other; the advice on their spacing is secondhand, after E. M. Wengert.")
                .build();
    }

    /**
     * The ground that it covers.
     *
     * @return square metres: width of the stack times length of the boards
     */
    public double footprintSquareMetres() {
        return stackWidth.toMetres() * length.toMetres();
    }

    /**
     * What the boards weigh, stickers left out.
     *
     * @param species a species with green gravity
     * @param moisturePercent oven-dry basis, 0 to 400 %
     * @return kilograms
     * @throws OutOfDomainException as {@link WoodWeight#kilograms}
     */
    public double kilograms(Species species, double moisturePercent) {
        return WoodWeight.kilograms(species, volume(), moisturePercent);
    }

    /**
     * How {@link #kilograms} came about.
     *
     * @param species a species with green gravity
     * @param moisturePercent oven-dry basis, 0 to 400 %
     * @return the working; its value equals the mass bit for bit
     * @throws OutOfDomainException as {@link WoodWeight#kilograms}
     */
    public Working kilogramsWorking(Species species, double moisturePercent) {
        return WoodWeight.kilogramsWorking(species, volume(), moisturePercent);
    }

    private Volume volume() {
        return new Volume(Volume.ofPiece(thickness, width, length).cubicMetres() * boards);
    }
}
