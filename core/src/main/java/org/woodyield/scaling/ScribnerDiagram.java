package org.woodyield.scaling;

import org.woodyield.source.PublishedTable;
import org.woodyield.working.Working;

/**
 * The Scribner diagram table for whole inches: the 16-ft column from memory, other lengths in proportion, since the
 * diagrams are drawn for the small end and allow no taper. To the nearest board foot.
 */
final class ScribnerDiagram extends PublishedRule {

    private static final int LEAST_DIAMETER = 12;

    private final double[] column;
    private final long[] byBits;

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
        byBits = WholeCells.column(
                LEAST_DIAMETER, LEAST_DIAMETER + column.length - 1, d -> column[(int) d - LEAST_DIAMETER]);
    }

    @Override
    void require(double diameter, double length) {
        super.require(diameter, length);
        WholeNumbers.require("scaling diameter", diameter, "in", "whole inches");
    }

    @Override
    double unrounded(double diameter, double length) {
        return column[(int) diameter - LEAST_DIAMETER] * length / 16;
    }

    @Override
    int firstRefused(double[] diameters, double[] lengths, int from, int to) {
        int i = from;
        while (i < to && domain.holds(diameters[i], lengths[i]) && WholeNumbers.isWhole(diameters[i])) {
            i++;
        }
        return i;
    }

    @Override
    int scale(double[] diameters, double[] lengths, double[] out, int from, int to) {
        int done = to;
        long[] cells = byBits;
        for (int i = from; i < to; i++) {
            double length = lengths[i];
            long place = WholeCells.place(diameters[i]);
            long cell = (place & WholeCells.MASK) == 0 ? cells[WholeCells.index(place)] : -1;
            if (cell < 0 || !card.length().holds(length)) {
                done = i;
                break;
            }
            out[i] = Double.longBitsToDouble(cell) * length / 16;
        }
        round(out, from, done);
        return done;
    }

    @Override
    void lines(Working.Builder working, double diameter, double length) {
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
