package org.woodyield.lumber;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A tally of lumber by nominal size: its pieces counted, its board feet added up as exact fractions and rounded once, at the
 * end. The order of its lines changes nothing but the order in which they are shown.
 *
 * @param lines what was counted, in the order in which it was
 */
public record Tally(List<Line> lines) {

    private static final Domain COUNT = Domain.of("count of pieces", "", 0, 10_000_000);
    private static final Length LONGEST = Length.millimetres(30_000);

    /**
     * Equal pieces.
     *
     * @param size their nominal size
     * @param length the length of each
     * @param count how many, 0 to 10 000 000
     * @param species as the tally names it, possibly empty
     * @param grade as the tally names it, possibly empty
     */
    public record Line(NominalSize size, Length length, int count, String species, String grade) {
        /**
         * Checks that this can be counted.
         *
         * @throws OutOfDomainException if length or count is outside
         */
        public Line {
            Product.within("length", length, LONGEST);
            COUNT.require(count);
        }

        /**
         * The board feet of all its pieces.
         *
         * @return exactly
         */
        public BoardMeasure.Exact boardFeet() {
            return BoardMeasure.exact(size, length).times(count);
        }
    }

    /** Keeps an immutable copy. */
    public Tally {
        lines = List.copyOf(lines);
    }

    /**
     * How many pieces.
     *
     * @return the sum of the counts
     */
    public long pieces() {
        return lines.stream().mapToLong(Line::count).sum();
    }

    /**
     * All board feet.
     *
     * @return exactly
     */
    public BoardMeasure.Exact total() {
        return lines.stream().map(Line::boardFeet).reduce(BoardMeasure.Exact.ZERO, BoardMeasure.Exact::plus);
    }

    /**
     * All board feet as a measure that does not mix with other kinds.
     *
     * @return the tally, not rounded
     */
    public BoardFeet boardFeet() {
        return BoardFeet.tally(total().value());
    }

    /**
     * Board feet by nominal size, thinnest first.
     *
     * @return an unmodifiable map
     */
    public Map<NominalSize, BoardMeasure.Exact> bySize() {
        Map<NominalSize, BoardMeasure.Exact> sums = new TreeMap<>(NominalSize.THINNEST_FIRST);
        lines.forEach(line -> sums.merge(line.size(), line.boardFeet(), BoardMeasure.Exact::plus));
        return Collections.unmodifiableMap(new LinkedHashMap<>(sums));
    }

    /**
     * Board feet by species, by name.
     *
     * @return an unmodifiable map
     */
    public Map<String, BoardMeasure.Exact> bySpecies() {
        return by(Line::species);
    }

    /**
     * Board feet by grade, by name.
     *
     * @return an unmodifiable map
     */
    public Map<String, BoardMeasure.Exact> byGrade() {
        return by(Line::grade);
    }

    private Map<String, BoardMeasure.Exact> by(Function<Line, String> name) {
        Map<String, BoardMeasure.Exact> sums = new TreeMap<>();
        lines.forEach(line -> sums.merge(name.apply(line), line.boardFeet(), BoardMeasure.Exact::plus));
        return Collections.unmodifiableMap(new LinkedHashMap<>(sums));
    }

    /**
     * The solid volume of the pieces when each measures what its nominal size is dressed to.
     *
     * @param condition dry or green
     * @return the volume
     * @throws OutOfDomainException if PS 20 does not dress one of the sizes
     */
    public Volume dressedVolume(SoftwoodSizes.Condition condition) {
        Volume sum = Volume.ZERO;
        for (Line line : lines) {
            SoftwoodSizes.Size size = SoftwoodSizes.dressed(line.size(), condition);
            sum = sum.plus(Volume.ofPiece(size.thickness(), size.width(), line.length())
                    .times(line.count()));
        }
        return sum;
    }

    /**
     * All board feet to the whole foot, rounded once for the whole tally: {@code sum of n * max(T, 1) * W * L / 144}, in
     * inches.
     *
     * @param rounding how
     * @return whole board feet
     */
    @Calculation("lumber.tally")
    public double wholeBoardFeet(Rounding rounding) {
        return total().rounded(1, rounding);
    }

    /**
     * How {@link #wholeBoardFeet} came about.
     *
     * @param rounding how
     * @return the working
     * @throws OutOfDomainException if the tally has no line
     */
    public Working wholeBoardFeetWorking(Rounding rounding) {
        if (lines.isEmpty()) {
            throw new OutOfDomainException("lines of the tally", "none", "", "one or more", "");
        }
        Source navy = Sources.get("navy-lumber");
        Source definition = Sources.get("definition");
        Working.Builder working = Working.of("Board feet of a tally").constant("V_0", "begin", 0, "in3", definition);
        int row = 0;
        for (Line line : lines) {
            row++;
            working.given("n_" + row, "pieces of " + line.size(), line.count(), "")
                    .given(
                            "T_" + row,
                            "nominal thickness",
                            line.size().thickness().toInches(),
                            "in")
                    .given("W_" + row, "nominal width", line.size().width().toInches(), "in")
                    .given("L_" + row, "length", line.length().toInches(), "in")
                    .step(
                            "V_" + row,
                            "counted volume so far",
                            "V_" + (row - 1) + " + n_" + row + " * max(T_" + row + ", 1) * W_" + row + " * L_" + row,
                            "in3",
                            navy);
        }
        return working.step("F", "board feet", "V_" + row + " / 144", "bf", navy)
                .round("B", "whole board feet", "F", rounding, 1, "bf", definition)
                .note("Only the sum is rounded. The nominal size counts, not what a piece measures.")
                .build();
    }
}
