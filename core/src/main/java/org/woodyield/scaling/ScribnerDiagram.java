package org.woodyield.scaling;

import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.working.Working;

/**
 * The Scribner diagram table for whole inches: the 16-ft column from memory, other lengths in proportion, since the
 * diagrams are drawn for the small end and allow no taper. To the nearest board foot.
 */
final class ScribnerDiagram extends PublishedRule {

    private static final int LEAST_DIAMETER = 12;

    private final double[] column;

    ScribnerDiagram(RuleCard card) {
        super(card);
        PublishedTable table = PublishedTable.read(ScribnerDiagram.class, "scribner_diagram_16ft_memory.csv");
        column = new double[table.rows().size()];
        for (int i = 0; i < column.length; i++) {
            PublishedTable.Row row = table.rows().get(i);
            if (row.number("diameter_in") != LEAST_DIAMETER + i) {
                throw new IllegalStateException(table.name() + " line " + row.line() + ": diameters are not in order");
            }
            column[i] = row.number("board_feet");
        }
    }

    @Override
    public double unroundedBoardFeet(double scalingDiameterInches, double lengthFeet) {
        require(scalingDiameterInches, lengthFeet);
        int d = (int) scalingDiameterInches;
        if (d != scalingDiameterInches) {
            throw new OutOfDomainException(
                    "scaling diameter",
                    Double.toString(scalingDiameterInches),
                    "in",
                    "whole inches",
                    "take it by a scaling convention first; the table has no cells between");
        }
        return column[d - LEAST_DIAMETER] * lengthFeet / 16;
    }

    @Override
    public double boardFeet(double scalingDiameterInches, double lengthFeet) {
        return round(unroundedBoardFeet(scalingDiameterInches, lengthFeet));
    }

    @Override
    public void scale(double[] scalingDiametersInches, double[] lengthsFeet, double[] boardFeet) {
        LogRules.requireSameLength(scalingDiametersInches, lengthsFeet, boardFeet);
        for (int i = 0; i < boardFeet.length; i++) {
            boardFeet[i] = boardFeet(scalingDiametersInches[i], lengthsFeet[i]);
        }
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
        unroundedBoardFeet(diameter, length);
        int d = (int) diameter;
        working.lookup(
                "T",
                "16-ft log",
                d + " in, 16 ft",
                column[d - LEAST_DIAMETER],
                "bf",
                card.sources().get(0));
        working.step(
                "V",
                "in proportion to length",
                "T * L / 16",
                "bf",
                card.sources().get(0));
    }
}
