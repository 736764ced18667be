package org.woodyield.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How wide the columns of a table in text may be, so that it has few lines. */
final class ColumnWidth {

    private static final int NARROWEST = 8;

    /** Labels up to this length stay whole as long as something else can give way, and so do words. */
    private static final int LABEL = 12;

    /** The widths of a long table are judged by so many rows, spread evenly. */
    private static final int JUDGED = 200;

    /** A line of the table outweighs any number of lines of cells, and what should stay whole any number of lines. */
    private static final double TABLE_LINE = 1e6;

    private static final double LAST_RESORT = 1e12;

    /** The header first. */
    private final List<String> cells;

    private final int full;
    private final int least;
    private final int whole;

    private ColumnWidth(List<String> cells, int full, int least, int whole) {
        this.cells = cells;
        this.full = full;
        this.least = least;
        this.whole = whole;
    }

    /** A column; its header may be wrapped, its numbers may not. */
    static ColumnWidth of(String header, List<String> cells, boolean numbers) {
        int widest = 0;
        int whole = 0;
        for (String cell : cells) {
            widest = Math.max(widest, cell.length());
            whole = Math.max(whole, cell.length() <= LABEL ? cell.length() : longestWord(cell));
        }
        int full = Math.max(header.length(), widest);
        int least = Math.max(longestWord(header), numbers ? widest : Math.min(NARROWEST, full));
        List<String> judged = new ArrayList<>();
        judged.add(header);
        int count = Math.min(JUDGED, cells.size());
        for (int i = 0; i < count; i++) {
            judged.add(cells.get((int) ((long) i * cells.size() / count)));
        }
        return new ColumnWidth(judged, full, least, whole);
    }

    /**
     * Narrows columns until they fit, each time the column and by as much as adds the fewest lines for each character
     * that is gained; of equals the widest. What cannot be narrowed stays too wide.
     */
    static int[] fit(List<ColumnWidth> columns, int allowed) {
        // What the others leave at the least is the most for each, and spares a long text the widths beyond it.
        int leasts = columns.stream().mapToInt(column -> column.least).sum();
        int[] widths = columns.stream()
                .mapToInt(column -> Math.max(column.least, Math.min(column.full, allowed - leasts + column.least)))
                .toArray();
        int[][] lines = new int[widths.length][];
        int[][][] known = new int[widths.length][][];
        for (int i = 0; i < widths.length; i++) {
            known[i] = new int[widths[i] + 1][];
            lines[i] = columns.get(i).lines(widths[i], known[i]);
        }
        for (int over = Arrays.stream(widths).sum() - allowed; over > 0; ) {
            int narrowed = -1;
            int to = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < widths.length; i++) {
                ColumnWidth column = columns.get(i);
                int[] beside = beside(lines, i);
                for (int width = widths[i] - 1; width >= Math.max(column.least, widths[i] - over); width--) {
                    double each = added(lines[i], column.lines(width, known[i]), beside) / (widths[i] - width)
                            + (width < column.whole ? LAST_RESORT : 0);
                    if (each < least || (each == least && narrowed >= 0 && widths[i] > widths[narrowed])) {
                        least = each;
                        narrowed = i;
                        to = width;
                    }
                }
            }
            if (narrowed < 0) {
                break;
            }
            over -= widths[narrowed] - to;
            widths[narrowed] = to;
            lines[narrowed] = columns.get(narrowed).lines(to, known[narrowed]);
        }
        return widths;
    }

    /** How many lines each cell takes at a width. */
    private int[] lines(int width, int[][] known) {
        if (known[width] == null) {
            known[width] = cells.stream()
                    .mapToInt(cell -> cell.length() <= width
                            ? 1
                            : TextTable.wrap(cell, width).size())
                    .toArray();
        }
        return known[width];
    }

    /** How many lines each row takes for the other columns. */
    private static int[] beside(int[][] lines, int column) {
        int[] most = new int[lines[column].length];
        Arrays.fill(most, 1);
        for (int i = 0; i < lines.length; i++) {
            for (int row = 0; i != column && row < most.length; row++) {
                most[row] = Math.max(most[row], lines[i][row]);
            }
        }
        return most;
    }

    private static double added(int[] before, int[] after, int[] beside) {
        double cost = 0;
        for (int row = 0; row < before.length; row++) {
            int table = Math.max(after[row], beside[row]) - Math.max(before[row], beside[row]);
            cost += table * TABLE_LINE + (after[row] - before[row]);
        }
        return cost;
    }

    private static int longestWord(String text) {
        int longest = 0;
        for (String word : text.split(" ", -1)) {
            longest = Math.max(longest, word.length());
        }
        return longest;
    }
}
