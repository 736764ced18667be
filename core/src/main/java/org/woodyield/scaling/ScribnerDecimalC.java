package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.OutOfDomainException;
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
        for (int d = 0; d < diameters; d++) {
            for (int l = 0; l < LENGTHS; l++) {
                cells[d * LENGTHS + l] = cell(LEAST_DIAMETER + d, LEAST_LENGTH + l);
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
    public double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet) {
        return boardFeet(scalingDiameterInches, lengthFeet);
    }

    @Override
    public double boardFeet(double scalingDiameterInches, double lengthFeet) {
        require(scalingDiameterInches, lengthFeet);
        int d = (int) scalingDiameterInches;
        int l = (int) lengthFeet;
        if (d != scalingDiameterInches || l != lengthFeet) {
            throw notWhole(scalingDiameterInches, lengthFeet);
        }
        return cells[(d - LEAST_DIAMETER) * LENGTHS + (l - LEAST_LENGTH)];
    }

    @Override
    public void scale(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        for (int i = 0; i < boardFeet.length; i++) {
            boardFeet[i] = boardFeet(scalingDiametersInches[i], lengthsFeet[i]);
        }
    }

    private static OutOfDomainException notWhole(double diameter, double length) {
        boolean inch = diameter != Math.rint(diameter);
        return new OutOfDomainException(
                inch ? "scaling diameter" : "scaling length",
                Double.toString(inch ? diameter : length),
                inch ? "in" : "ft",
                inch ? "whole inches" : "whole feet",
                "take it by a scaling convention first; the table has no cells between");
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        boardFeet(diameter, length);
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
