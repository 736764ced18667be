package org.woodyield.job;

import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.wood.Stacking;

/** Reads how boards are stacked; what is not given is as usual. */
final class StackingReader {

    private StackingReader() {}

    /** The way of stacking; nothing, with a note, where a value cannot be read. */
    static Optional<Stacking> read(
            Optional<Cell> stackWidth, Optional<Cell> gap, Optional<Cell> sticker, Optional<Cell> spacing) {
        Stacking usual = Stacking.usual();
        Optional<Length> wide = read(stackWidth, usual.stackWidth(), Stacking.WIDEST, "build more stacks");
        Optional<Length> between = gap.map(cell -> cell.lengthOrNoneUpTo(Stacking.WIDEST_GAP, "1 in is usual"))
                .orElse(Optional.of(usual.gap()));
        Optional<Length> thick = read(sticker, usual.stickerThickness(), Stacking.THICKEST_STICKER, "3/4 in is usual");
        Optional<Length> apart = read(
                spacing,
                usual.stickerSpacing(),
                Stacking.WIDEST_SPACING,
                "12 to 16 in for boards of an inch, 16 to 18 in for framing");
        if (wide.isEmpty() || between.isEmpty() || thick.isEmpty() || apart.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Stacking(wide.get(), between.get(), thick.get(), apart.get()));
    }

    private static Optional<Length> read(Optional<Cell> cell, Length usual, Length greatest, String remedy) {
        return cell.map(one -> one.lengthUpTo(greatest, remedy)).orElse(Optional.of(usual));
    }
}
