package org.woodyield.sawing;

import org.woodyield.measure.Domain;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Boards of one thickness sawn from one block with flat sides: what kerfs take by plain stacking. Real logs give and take
 * with their round sides; {@link BestPattern} finds out for a log.
 *
 * <p>Between n boards that use the block up lie n - 1 kerfs; where the last board is sawn off a rest as well there are n.
 */
public final class KerfStack {

    /** What becomes of the last board. */
    public enum Last {
        /** Its far face is the block's own: n boards and n - 1 kerfs. */
        IS_THE_REST,
        /** It is sawn off a rest: n boards and n kerfs. */
        IS_SAWN_OFF
    }

    private static final Source STACKING = Sources.get("kerf-wengert-2000");
    private static final Source GEOMETRY = Sources.get("definition");
    private static final Domain BOARDS = Domain.of("boards", "", 1, 10_000);
    private static final Domain KERF = Domain.of("kerf", "in", 0, 2);
    private static final Domain THICKNESS = Domain.of("thickness", "in", Double.MIN_VALUE, 40);
    private static final Domain BLOCK = Domain.of("height of the block", "in", 0, 400);

    private KerfStack() {}

    /**
     * The wood that boards and the kerfs between them take.
     *
     * @param boards their count n, 1 to 10 000
     * @param thicknessInches thickness t of each, above 0, up to 40 in
     * @param kerfInches the kerf k, 0 to 2 in
     * @return {@code n t + (n - 1) k} in inches, not rounded
     * @throws org.woodyield.measure.OutOfDomainException if an argument is outside its limits
     */
    @Calculation("sawing.wood-needed")
    public static double woodNeededInches(int boards, double thicknessInches, double kerfInches) {
        BOARDS.require(boards);
        requireBoard(thicknessInches, kerfInches);
        return boards * thicknessInches + (boards - 1) * kerfInches;
    }

    /**
     * How {@link #woodNeededInches} comes about.
     *
     * @param boards their count
     * @param thicknessInches thickness of each
     * @param kerfInches the kerf
     * @return the working, with the same result
     */
    public static Working woodNeededInchesWorking(int boards, double thicknessInches, double kerfInches) {
        BOARDS.require(boards);
        requireBoard(thicknessInches, kerfInches);
        return Working.of("Wood for boards and kerfs")
                .given("n", "boards", boards, "")
                .given("t", "thickness", thicknessInches, "in")
                .given("k", "kerf", kerfInches, "in")
                .step("W", "wood", "n * t + (n - 1) * k", "in", STACKING)
                .build();
    }

    private static void requireBoard(double thickness, double kerf) {
        THICKNESS.require(thickness);
        KERF.require(kerf);
    }

    /**
     * How many boards a block gives.
     *
     * @param blockInches its height H between flat sides, 0 to 400 in
     * @param thicknessInches thickness t of a board, above 0, up to 40 in
     * @param kerfInches the kerf k, 0 to 2 in
     * @param last what becomes of the last board
     * @return {@code floor((H + k) / (t + k))} where it is the rest, {@code floor(H / (t + k))} where it is sawn off; a
     *     billionth of a board short counts as whole, since inches of a decimal are not exact
     * @throws org.woodyield.measure.OutOfDomainException if an argument is outside its limits
     */
    @Calculation("sawing.boards-in-cant")
    public static double boards(double blockInches, double thicknessInches, double kerfInches, Last last) {
        BLOCK.require(blockInches);
        requireBoard(thicknessInches, kerfInches);
        double taken = last == Last.IS_THE_REST ? blockInches + kerfInches : blockInches;
        return Math.floor(taken / (thicknessInches + kerfInches) + 0.000000001);
    }

    /**
     * How {@link #boards} comes about.
     *
     * @param blockInches height of the block
     * @param thicknessInches thickness of a board
     * @param kerfInches the kerf
     * @param last what becomes of the last board
     * @return the working, with the same result
     */
    public static Working boardsWorking(double blockInches, double thicknessInches, double kerfInches, Last last) {
        BLOCK.require(blockInches);
        requireBoard(thicknessInches, kerfInches);
        return Working.of("Boards in a cant")
                .given("H", "height of the cant", blockInches, "in")
                .given("t", "thickness of a board", thicknessInches, "in")
                .given("k", "kerf", kerfInches, "in")
                .step(
                        "n",
                        "boards",
                        last == Last.IS_THE_REST
                                ? "floor((H + k) / (t + k) + 0.000000001)"
                                : "floor(H / (t + k) + 0.000000001)",
                        "",
                        GEOMETRY)
                .note(
                        last == Last.IS_THE_REST
                                ? "The far face of the last board is the cant's own: n boards, n - 1 kerfs."
                                : "The last board is sawn off a rest: n boards, n kerfs.")
                .build();
    }

    /**
     * The share of a stack that is lumber.
     *
     * @param boards their count n, 1 to 10 000
     * @param thicknessInches thickness t of each, above 0, up to 40 in
     * @param kerfInches the kerf k, 0 to 2 in
     * @return {@code n t / (n t + (n - 1) k) 100} in percent
     * @throws org.woodyield.measure.OutOfDomainException if an argument is outside its limits
     */
    @Calculation("sawing.stack-yield")
    public static double yieldPercent(int boards, double thicknessInches, double kerfInches) {
        double wood = woodNeededInches(boards, thicknessInches, kerfInches);
        return boards * thicknessInches / wood * 100;
    }

    /**
     * How {@link #yieldPercent} comes about.
     *
     * @param boards their count
     * @param thicknessInches thickness of each
     * @param kerfInches the kerf
     * @return the working, with the same result
     */
    public static Working yieldPercentWorking(int boards, double thicknessInches, double kerfInches) {
        return Working.of("Lumber of a stack")
                .include(woodNeededInchesWorking(boards, thicknessInches, kerfInches))
                .step("y", "lumber of the wood", "n * t / W * 100", "%", GEOMETRY)
                .build();
    }

    /**
     * The wood that goes into the kerfs of passes.
     *
     * @param areaSquareFeet area that the passes cut, each from one side to the other, zero or more
     * @param kerfInches the kerf, 0 to 2 in
     * @return {@code A k} in board feet of a square foot an inch thick, the wood's own volume and no nominal tally
     * @throws org.woodyield.measure.OutOfDomainException if an argument is outside its limits
     */
    @Calculation("sawing.kerf-wood")
    public static double kerfSolidBoardFeet(double areaSquareFeet, double kerfInches) {
        Domain.notNegative("area cut", "ft2").require(areaSquareFeet);
        KERF.require(kerfInches);
        return areaSquareFeet * kerfInches;
    }

    /**
     * How {@link #kerfSolidBoardFeet} comes about.
     *
     * @param areaSquareFeet area that the passes cut
     * @param kerfInches the kerf
     * @return the working, with the same result
     */
    public static Working kerfSolidBoardFeetWorking(double areaSquareFeet, double kerfInches) {
        Domain.notNegative("area cut", "ft2").require(areaSquareFeet);
        KERF.require(kerfInches);
        return Working.of("Wood in the kerfs")
                .given("A", "area cut", areaSquareFeet, "ft2")
                .given("k", "kerf", kerfInches, "in")
                .step("b", "wood", "A * k", "bf solid", GEOMETRY)
                .note(
                        "A board foot is a square foot an inch thick; this is the wood's own volume, not a nominal tally.")
                .build();
    }
}
