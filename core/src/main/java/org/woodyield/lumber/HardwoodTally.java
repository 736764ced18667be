package org.woodyield.lumber;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A bundle of random-width hardwood, counted board by board.
 *
 * <p>By surface measure, each board is rounded to the whole square foot, exact halves up and down alternately; that times the
 * thickness is the board feet, rounded once for the bundle. By its ends, each width is rounded to the inch and the length to
 * whole feet below. The two seldom agree; the surface measure then prevails.
 *
 * <p>The halves alternate within each counted thickness, and in an end tally within each thickness and length, so that no total depends
 * on the order of the boards. What a single board gets does.
 *
 * @param boards in the order of the tally
 * @see org.woodyield.source.Sources sources nhla-tally, nhla-halves-memory, hardwood-glossary and ahec-measure
 */
public record HardwoodTally(List<Board> boards) {

    private static final Length INCH = Length.inches(1);

    /**
     * One board.
     *
     * @param thickness nominal, 3/8 to 6 in; under an inch counts as an inch
     * @param width as measured, fractions counted, above 0, up to 60 in
     * @param length as measured, 1 to 40 ft
     */
    public record Board(Length thickness, Length width, Length length) {
        /**
         * Checks that this can be a board.
         *
         * @throws OutOfDomainException if a dimension is outside
         */
        public Board {
            HardwoodThickness.within(thickness);
            SurfaceMeasure.exact(width, length);
        }

        /**
         * The thickness that counts, by which boards are taken together.
         *
         * @return nominal, an inch at least
         */
        public Length counted() {
            return Length.max(thickness, INCH);
        }
    }

    /** Keeps an immutable copy. */
    public HardwoodTally {
        boards = List.copyOf(boards);
    }

    /**
     * The surface measure of each board.
     *
     * @param firstHalf where the first exact half of each thickness goes; the next goes the other way
     * @return whole square feet, in the order of the boards
     * @throws OutOfDomainException if the rounding is not half up or half down
     */
    public List<Long> surfaceMeasures(Rounding firstHalf) {
        SurfaceMeasure.nearest(firstHalf);
        Map<Length, Rounding> next = new HashMap<>();
        List<Long> measures = new ArrayList<>();
        for (Board board : boards) {
            BoardMeasure.Exact exact = SurfaceMeasure.exact(board.width(), board.length());
            measures.add(alternating(exact, board.counted(), firstHalf, next));
        }
        return List.copyOf(measures);
    }

    /** Rounds to the whole; an exact half as it is the turn of its group, which then changes. */
    private static <K> long alternating(BoardMeasure.Exact exact, K group, Rounding firstHalf, Map<K, Rounding> next) {
        Rounding turn = next.getOrDefault(group, firstHalf);
        // Only an exact half has two as the denominator in lowest terms.
        if (exact.denominator().equals(BigInteger.TWO)) {
            next.put(group, turn == Rounding.HALF_UP ? Rounding.HALF_DOWN : Rounding.HALF_UP);
        }
        return Math.round(exact.rounded(1, turn));
    }

    /**
     * A board as an end tally counts it.
     *
     * @param board the board
     * @param half where an exact half inch of its width goes
     * @return its width to the nearest inch, its length to whole feet below
     * @throws OutOfDomainException if the rounding is not half up or half down, or nothing is left of the width
     */
    public static Board asEndTallied(Board board, Rounding half) {
        SurfaceMeasure.nearest(half);
        return new Board(
                board.thickness(),
                board.width().roundedTo(INCH, half),
                Length.feet(SurfaceMeasure.wholeFeet(board.length())));
    }

    /**
     * The block tally: how many boards there are of each surface measure, thickness by thickness.
     *
     * @param firstHalf where the first exact half of each thickness goes
     * @return by thickness, then by surface measure; an unmodifiable map
     */
    public Map<Length, Map<Long, Integer>> blocks(Rounding firstHalf) {
        List<Long> measures = surfaceMeasures(firstHalf);
        Map<Length, Map<Long, Integer>> blocks = new TreeMap<>();
        for (int i = 0; i < boards.size(); i++) {
            blocks.computeIfAbsent(boards.get(i).thickness(), thickness -> new TreeMap<>())
                    .merge(measures.get(i), 1, Integer::sum);
        }
        blocks.replaceAll((thickness, counts) -> Collections.unmodifiableMap(counts));
        return Collections.unmodifiableMap(blocks);
    }

    /**
     * The board feet of the bundle by surface measure, to the nearest foot: {@code sum of SM * max(T, 1)}, rounded once.
     *
     * @param firstHalf where the first exact half of each thickness goes
     * @param end where an exact half of the sum goes
     * @return whole board feet
     * @throws OutOfDomainException if a rounding is not half up or half down
     */
    @Calculation("lumber.bundle-tally")
    public double boardFeet(Rounding firstHalf, Rounding end) {
        SurfaceMeasure.nearest(end);
        return bundle(firstHalf).rounded(1, end);
    }

    private BoardMeasure.Exact bundle(Rounding firstHalf) {
        BoardMeasure.Exact sum = BoardMeasure.Exact.ZERO;
        for (Map.Entry<Length, Long> entry : byThickness(firstHalf).entrySet()) {
            sum = sum.plus(boardFeet(entry.getValue(), entry.getKey()));
        }
        return sum;
    }

    /**
     * The board feet of boards of one thickness by the sum of their surface measures: {@code SM * max(T, 1)}.
     *
     * @param squareFeet whole square feet
     * @param thickness nominal
     * @return board feet, exactly
     */
    public static BoardMeasure.Exact boardFeet(long squareFeet, Length thickness) {
        return inches(Length.max(thickness, INCH)).times(squareFeet);
    }

    /** Square feet by counted thickness, thinnest first. */
    private Map<Length, Long> byThickness(Rounding firstHalf) {
        List<Long> measures = surfaceMeasures(firstHalf);
        Map<Length, Long> sums = new TreeMap<>();
        for (int i = 0; i < boards.size(); i++) {
            sums.merge(boards.get(i).counted(), measures.get(i), Long::sum);
        }
        return sums;
    }

    private static BoardMeasure.Exact inches(Length length) {
        return new BoardMeasure.Exact(
                BigInteger.valueOf(length.toNanometres()), BigInteger.valueOf(INCH.toNanometres()));
    }

    /**
     * How {@link #boardFeet} came about.
     *
     * @param firstHalf as there
     * @param end as there
     * @return the working
     * @throws OutOfDomainException as there, or if the bundle has no board
     */
    public Working boardFeetWorking(Rounding firstHalf, Rounding end) {
        SurfaceMeasure.nearest(end);
        if (boards.isEmpty()) {
            throw new OutOfDomainException("boards of the bundle", "none", "", "one or more", "");
        }
        Source rule = Sources.get("nhla-tally");
        Source glossary = Sources.get("hardwood-glossary");
        Working.Builder working = Working.of("Board feet of a bundle of hardwood")
                .constant("F_0", "begin", 0, "bf", Sources.get("definition"));
        int row = 0;
        for (Map.Entry<Length, Long> entry : byThickness(firstHalf).entrySet()) {
            row++;
            working.given("S_" + row, "sum of surface measures", (double) entry.getValue(), "ft2")
                    .given("T_" + row, "thickness counted", entry.getKey().toInches(), "in")
                    .step(
                            "F_" + row,
                            "board feet so far",
                            "F_" + (row - 1) + " + S_" + row + " * T_" + row,
                            "bf",
                            rule);
        }
        return working.round("B", "board feet of the bundle", "F_" + row, end, 1, "bf", glossary)
                .note("Each board's surface measure is whole; exact halves go up and down alternately [MEMORY].")
                .build();
    }

    /**
     * The end tally: each width to the nearest inch, exact halves up and down alternately, each length to whole feet below. Not
     * rounded further.
     *
     * @param firstHalf where the first exact half of each thickness and length goes
     * @return board feet, exactly
     * @throws OutOfDomainException if the rounding is not half up or half down
     */
    public BoardMeasure.Exact endTally(Rounding firstHalf) {
        SurfaceMeasure.nearest(firstHalf);
        record Stack(Length thickness, long feet) {}
        Map<Stack, Rounding> next = new HashMap<>();
        Map<Stack, Long> widths = new LinkedHashMap<>();
        for (Board board : boards) {
            Stack stack = new Stack(board.counted(), SurfaceMeasure.wholeFeet(board.length()));
            widths.merge(stack, alternating(inches(board.width()), stack, firstHalf, next), Long::sum);
        }
        BoardMeasure.Exact sum = BoardMeasure.Exact.ZERO;
        for (Map.Entry<Stack, Long> entry : widths.entrySet()) {
            Stack stack = entry.getKey();
            sum = sum.plus(inches(stack.thickness()).times(Math.multiplyExact(entry.getValue(), stack.feet())));
        }
        return new BoardMeasure.Exact(sum.numerator(), sum.denominator().multiply(BigInteger.valueOf(12)));
    }
}
