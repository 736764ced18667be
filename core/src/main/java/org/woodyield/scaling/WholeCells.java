package org.woodyield.scaling;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Cells for whole numbers of 4 to 63, found by the bits of the doubles.
 *
 * <p>The bits of doubles from 4 to below 64 lie in one stretch of 2^54. Of a whole number among them all but the highest 7
 * bits of its place in that stretch are zero. So one mask tells whether a number is within and has no fraction below a
 * thirty-second of its power of two, and the 7 bits are its index; an index that is no whole number, or none of the table, holds an
 * empty cell. A cell is never below zero, therefore -1 in the bits of a cell says that there is none.
 */
final class WholeCells {

    /** What an index has if it is within the stretch and exact. */
    static final long MASK = ~(127L << 47);

    /** Entries for one number. */
    static final int ENTRIES = 128;

    private static final long BASE = Double.doubleToRawLongBits(4);
    private static final int SHIFT = 47;

    private WholeCells() {}

    /** The place of a whole number of a table that is being built; refuses what no look-up would find. */
    static long placeOf(int value) {
        long place = place(value);
        if ((place & MASK) != 0) {
            throw new IllegalStateException("a table by bits holds whole numbers of 4 to 63, not " + value);
        }
        return place;
    }

    /** Where a number lies in the stretch; with bits of {@link #MASK} if it has no index. */
    static long place(double value) {
        return Double.doubleToRawLongBits(value) - BASE;
    }

    /** The index of one number. */
    static int index(long place) {
        return (int) (place >>> SHIFT);
    }

    /** The index of two numbers. The cells of one column, which differ in the row, lie beside each other. */
    static int index(long row, long column) {
        return (int) (column >>> (SHIFT - 7) | row >>> SHIFT);
    }

    /** Cells for the whole numbers from one to another, both included; the others are empty. */
    static long[] column(int least, int greatest, DoubleUnaryOperator cell) {
        long[] cells = new long[ENTRIES];
        Arrays.fill(cells, -1);
        for (int i = least; i <= greatest; i++) {
            cells[index(placeOf(i))] = Double.doubleToRawLongBits(cell.applyAsDouble(i));
        }
        return cells;
    }
}
