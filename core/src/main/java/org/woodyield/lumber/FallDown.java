package org.woodyield.lumber;

import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What lumber loses between the saw and its use: checked ends are cut off, some pieces split and some warp beyond use. The
 * shares are of pieces and follow one another, the second of what the first leaves. No published share was found, so there
 * is none here: they are the user's own.
 *
 * @param endTrim cut off at each end when the lumber is dry, 0 to 24 in
 * @param splitPercent share of pieces that split or check beyond use in drying, 0 to 90 %
 * @param warpPercent share of the others that bow, crook, cup or twist beyond use, 0 to 90 %
 */
public record FallDown(Length endTrim, double splitPercent, double warpPercent) {

    /** What may be cut off at each end. */
    public static final Domain END_TRIM = new Domain("end trim", "in", 0, 24, "give what one end loses");

    /** Shares of pieces that may be lost. */
    public static final Domain LOSS =
            new Domain("share lost", "%", 0, 90, "with more than that lost, mend the drying rather than saw spares");

    /** Share of pieces that splits and warp may take together. */
    public static final Domain TOGETHER = new Domain(
            "share lost by splits and warp together",
            "%",
            0,
            90,
            "with more than that lost, mend the drying rather than saw spares");

    /** What a share may be over its limit by the rounding of its arithmetic. */
    private static final double LAST_BITS = 1e-9;

    /** Nothing is lost. */
    public static final FallDown NONE = new FallDown(Length.ZERO, 0, 0);

    private static final Domain PIECES = Domain.of("pieces needed", "", 0, 1_000_000);
    private static final Domain AMOUNT = Domain.notNegative("amount needed", "");
    private static final Domain FEET = Domain.notNegative("tally", "bf");
    private static final Domain SCANT = Domain.of("share too thin", "", 0, 1);

    /**
     * Checks the losses.
     *
     * @throws OutOfDomainException if one is outside, or splits and warp together take more than 90 %
     */
    public FallDown {
        END_TRIM.require(endTrim.toInches());
        LOSS.require(splitPercent);
        LOSS.require(warpPercent);
        TOGETHER.require(together(splitPercent, warpPercent));
    }

    /**
     * The share of pieces that splits and warp take together, warp of what the splits leave.
     *
     * @param splitPercent share of pieces that split
     * @param warpPercent share of the others that warp
     * @return 100 (1 - (1 - s/100) (1 - w/100)), to a billionth, in percent
     */
    public static double together(double splitPercent, double warpPercent) {
        double lost = 100 * (1 - (1 - splitPercent / 100) * (1 - warpPercent / 100));
        return Math.rint(lost / LAST_BITS) * LAST_BITS;
    }

    /**
     * What is lost of lumber with a surface: nothing where it is finished green, as it is not dried first.
     *
     * @param surface how it is finished
     * @return these losses, or none
     */
    public FallDown of(Product.Surface surface) {
        return surface == Product.Surface.DRESSED_GREEN ? NONE : this;
    }

    /**
     * Board feet at each stage.
     *
     * @param sawn green, over the whole length sawn
     * @param dried ends cut off, split pieces out
     * @param planed pieces too thin to plane clean out
     * @param usable warped pieces out
     */
    public record Stages(BoardFeet sawn, BoardFeet dried, BoardFeet planed, BoardFeet usable) {

        /**
         * The stages of two lots together.
         *
         * @param other another lot
         * @return the sum of each stage
         */
        public Stages plus(Stages other) {
            return new Stages(
                    sawn.plus(other.sawn),
                    dried.plus(other.dried),
                    planed.plus(other.planed),
                    usable.plus(other.usable));
        }
    }

    /**
     * How long to saw a piece so that it has its length when both ends are cut off.
     *
     * @param trimmed the length wanted
     * @return the length and twice the trim, exact
     */
    public Length lengthToSaw(Length trimmed) {
        return trimmed.plus(endTrim.times(2));
    }

    /**
     * The length that a piece keeps.
     *
     * @param sawn its length as sawn
     * @return the length less twice the trim, exact
     * @throws OutOfDomainException if nothing is left
     */
    public Length lengthKept(Length sawn) {
        Length kept = sawn.minus(endTrim.times(2));
        if (!kept.isPositive()) {
            throw new OutOfDomainException(
                    "length sawn", sawn.toString(), "", "above twice the end trim, " + endTrim, "saw longer");
        }
        return kept;
    }

    /**
     * The board feet in the ends that are cut off.
     *
     * @param trimmedBoardFeet tally of pieces by their length when trimmed
     * @param trimmed that length
     * @return board feet, not rounded
     * @throws OutOfDomainException if the tally is below zero
     */
    public double endBoardFeet(double trimmedBoardFeet, Length trimmed) {
        return FEET.require(trimmedBoardFeet) * (2 * endTrim.toInches()) / trimmed.toInches();
    }

    /**
     * The share of pieces that neither split nor warp: (1 - s/100) (1 - w/100).
     *
     * @return above 0, up to 1
     */
    public double keptShare() {
        return (1 - splitPercent / 100) * (1 - warpPercent / 100);
    }

    /**
     * How many pieces to saw so that in the mean as many as are needed neither split nor warp: N / kept, up to the next whole
     * piece. That is a mean: more or fewer may fall out of any one job.
     *
     * @param needed pieces, 0 to 1 000 000
     * @return pieces, no fewer than needed
     * @throws OutOfDomainException if the number is outside
     */
    @Calculation("lumber.fall-down-spares")
    public int piecesToSaw(int needed) {
        return (int) Math.ceil(PIECES.require(needed) / keptShare() - 0.000001);
    }

    /**
     * How {@link #piecesToSaw} came about.
     *
     * @param needed pieces, 0 to 1 000 000
     * @return the working; its value equals the number
     * @throws OutOfDomainException if the number is outside
     */
    public Working piecesToSawWorking(int needed) {
        PIECES.require(needed);
        return losses(Working.of("Pieces to saw, spares for splits and warp included")
                        .given("N", "pieces needed", needed, ""))
                .step("k", "share that neither splits nor warps", "(1 - s / 100) * (1 - w / 100)", "", definition())
                .step("n", "pieces to saw, up to the next whole one", "ceil(N / k - 0.000001)", "", definition())
                .note("A mean: more or fewer may fall out of any one job. The millionth keeps an exact fit exact.")
                .build();
    }

    /**
     * How much to saw of what is not counted by the piece.
     *
     * @param needed an area or board feet, 0 or more
     * @return the need divided by {@link #keptShare}
     * @throws OutOfDomainException if the need is below zero
     */
    public double amountToSaw(double needed) {
        return AMOUNT.require(needed) / keptShare();
    }

    /**
     * The board feet that are left at each stage, in the mean.
     *
     * @param trimmedBoardFeet tally of what is sawn, by the lengths when trimmed
     * @param endBoardFeet in the ends that are cut off
     * @param scantShare share of pieces that the saw's scatter leaves too thin to plane clean, 0 to 1
     * @return the stages, not rounded
     * @throws OutOfDomainException if an argument is outside
     */
    @Calculation("lumber.fall-down")
    public Stages stages(double trimmedBoardFeet, double endBoardFeet, double scantShare) {
        SCANT.require(scantShare);
        double dried = FEET.require(trimmedBoardFeet) * (1 - splitPercent / 100);
        double planed = dried * (1 - scantShare);
        return new Stages(
                BoardFeet.tally(trimmedBoardFeet + FEET.require(endBoardFeet)),
                BoardFeet.tally(dried),
                BoardFeet.tally(planed),
                BoardFeet.usable(planed * (1 - warpPercent / 100)));
    }

    /**
     * How {@link #stages} came about.
     *
     * @param trimmedBoardFeet tally of what is sawn, by the lengths when trimmed
     * @param endBoardFeet in the ends that are cut off
     * @param scantShare share of pieces that the saw's scatter leaves too thin to plane clean, 0 to 1
     * @return the working; its symbols {@code sawn}, {@code dried}, {@code planed} and {@code usable} equal the stages bit
     *     for bit
     * @throws OutOfDomainException if an argument is outside
     */
    public Working stagesWorking(double trimmedBoardFeet, double endBoardFeet, double scantShare) {
        stages(trimmedBoardFeet, endBoardFeet, scantShare); // refuses what cannot be shown
        return losses(Working.of("Board feet sawn, dried, planed and usable")
                        .given("B", "tally by trimmed length", trimmedBoardFeet, "bf")
                        .given("E", "in the ends that are cut off", endBoardFeet, "bf")
                        .given("q", "share too thin to plane clean", scantShare, ""))
                .step("sawn", "sawn, green, over the whole length", "B + E", "bf", definition())
                .step("dried", "dried, ends cut off, split pieces out", "B * (1 - s / 100)", "bf", definition())
                .step("planed", "planed, pieces too thin out", "dried * (1 - q)", "bf", definition())
                .step("usable", "usable, warped pieces out", "planed * (1 - w / 100)", "bf", definition())
                .note("Shares of pieces, taken as shares of board feet; each is of what the one before it leaves.")
                .build();
    }

    private Working.Builder losses(Working.Builder working) {
        return working.given("s", "pieces that split", splitPercent, "%")
                .given("w", "pieces that warp", warpPercent, "%");
    }

    private static Source definition() {
        return Sources.get("definition");
    }
}
