package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Working;

/**
 * Scribner Decimal C for whole inches and whole feet, in board feet (the printed table drops the last zero).
 *
 * <p>A cell is the board feet per foot for the diameter and length class, times the length, to the nearest 10 bf. The
 * factors are from memory and give every cell of the 16-ft column, also from memory. Logs of 6 and 7 in, 6 and 8 ft long,
 * are 5 bf by a published exception. All cells are computed once, so that scaling is a look-up.
 */
final class ScribnerDecimalC extends PublishedRule {

    private static final int LEAST_DIAMETER = 6;
    private static final int LEAST_LENGTH = 4;
    private static final int GREATEST_LENGTH = 40;
    private static final int LENGTHS = GREATEST_LENGTH - LEAST_LENGTH + 1;

    private record Factor(int diameter, int fromFeet, int toFeet, double perFoot) {}

    private final List<Factor> factors;
    private final Source factorSource;
    private final Source exceptionSource = Sources.get("bailey-1911");
    private final boolean exceptions;
    private final double[] cells;
    private final long[] byBits = new long[WholeCells.ENTRIES * WholeCells.ENTRIES];

    /**
     * Computes the cells.
     *
     * @param exceptions whether the printed 5 bf of the smallest logs stand; long-log practice has the factors alone
     */
    ScribnerDecimalC(RuleCard card, boolean exceptions) {
        super(card);
        this.exceptions = exceptions;
        PublishedTable table = PublishedTable.read(ScribnerDecimalC.class, "scribner_factors_memory.csv");
        factorSource = table.source();
        factors = table.rows().stream()
                .map(row -> new Factor(
                        (int) row.number("diameter_in"),
                        (int) row.number("from_ft"),
                        (int) row.number("to_ft"),
                        row.number("factor_bf_per_ft")))
                .toList();
        int diameters = (int) card.diameter().greatest() - LEAST_DIAMETER + 1;
        cells = new double[diameters * LENGTHS];
        Arrays.fill(byBits, -1);
        for (int d = 0; d < diameters; d++) {
            for (int l = 0; l < LENGTHS; l++) {
                double feet = cell(LEAST_DIAMETER + d, LEAST_LENGTH + l);
                cells[d * LENGTHS + l] = feet;
                int index =
                        WholeCells.index(WholeCells.placeOf(LEAST_DIAMETER + d), WholeCells.placeOf(LEAST_LENGTH + l));
                byBits[index] = Double.doubleToRawLongBits(feet);
            }
        }
    }

    private double cell(int diameter, int length) {
        return exception(diameter, length) ? 5 : Rounding.HALF_UP.toStep(factor(diameter, length).perFoot * length, 10);
    }

    private boolean exception(int diameter, int length) {
        return exceptions && diameter <= 7 && (length == 6 || length == 8);
    }

    private Factor factor(int diameter, int length) {
        List<Factor> fitting = new ArrayList<>();
        for (Factor factor : factors) {
            if (factor.diameter == diameter && factor.fromFeet <= length && factor.toFeet >= length) {
                fitting.add(factor);
            }
        }
        if (fitting.size() != 1) {
            throw new IllegalStateException(
                    fitting.size() + " Scribner factors for " + diameter + " in x " + length + " ft");
        }
        return fitting.get(0);
    }

    @Override
    void require(double diameter, double length) {
        super.require(diameter, length);
        WholeNumbers.require("scaling diameter", diameter, "in", "whole inches");
        WholeNumbers.require("scaling length", length, "ft", "whole feet");
    }

    @Override
    double unrounded(double diameter, double length) {
        return cells[((int) diameter - LEAST_DIAMETER) * LENGTHS + ((int) length - LEAST_LENGTH)];
    }

    @Override
    int firstRefused(double[] diameters, double[] lengths, int from, int to) {
        int i = from;
        while (i < to
                && domain.holds(diameters[i], lengths[i])
                && WholeNumbers.isWhole(diameters[i])
                && WholeNumbers.isWhole(lengths[i])) {
            i++;
        }
        return i;
    }

    /** One pass: a log outside the table has no index or an empty cell. */
    @Override
    int scale(double[] diameters, double[] lengths, double[] out, int from, int to) {
        long[] table = byBits;
        for (int i = from; i < to; i++) {
            long row = WholeCells.place(diameters[i]);
            long column = WholeCells.place(lengths[i]);
            if (((row | column) & WholeCells.MASK) != 0) {
                return i;
            }
            long cell = table[WholeCells.index(row, column)];
            if (cell < 0) {
                return i;
            }
            out[i] = Double.longBitsToDouble(cell);
        }
        return to;
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        int d = (int) diameter;
        int l = (int) length;
        if (exception(d, l)) {
            working.lookup("V", "printed exception", d + " in, " + l + " ft", 5, "bf", exceptionSource);
            return;
        }
        Factor factor = factor(d, l);
        working.lookup(
                "f",
                "Scribner factor",
                d + " in, " + factor.fromFeet + " to " + factor.toFeet + " ft",
                factor.perFoot,
                "bf/ft",
                factorSource);
        working.step("F", "factor times length", "f * L", "bf", factorSource);
        working.round("V", "to the nearest 10 bf", "F", Rounding.HALF_UP, 10, "bf", exceptionSource);
    }
}
