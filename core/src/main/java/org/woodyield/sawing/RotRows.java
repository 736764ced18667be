package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.woodyield.sawing.Rows.Strip;

/**
 * Rows of strips beside the rot. A strip lies left or right of all that the rot covers of the flitch along the strip's own
 * trim. A flitch gives one row, or where the rot runs through it two: one left of all the rot in it, one right of it, which
 * begins no nearer than two kerfs to where the rot begins.
 */
final class RotRows {

    private final Lattice lattice;
    private final Chords chords;
    private final RotShadow shadow;
    private final Rows plain;
    private final Rows split;
    private final int[][] from;
    private final int[][] to;
    private List<Strip> strips = List.of();
    private long worth;
    long rowsWorkedOut;

    RotRows(Lattice lattice, Chords chords, RotShadow shadow) {
        this.lattice = lattice;
        this.chords = chords;
        this.shadow = shadow;
        plain = new Rows(lattice, chords);
        // Each trim twice: left of the rot and right of it.
        split = new Rows(lattice, chords.withTrimsTwice());
        from = new int[2 * chords.trims.length][chords.count];
        to = new int[2 * chords.trims.length][chords.count];
    }

    /** As {@link Rows#best}. */
    long best(int c, int low, int high, boolean level, int clip0, int clip1, long edge, long guide) {
        rowsWorkedOut++;
        int[][] roomFrom = level ? chords.levelFrom : chords.uprightFrom;
        int[][] roomTo = level ? chords.levelTo : chords.uprightTo;
        int first = least(level ? shadow.allLevelFrom : shadow.allUprightFrom, low, high);
        int last = greatest(level ? shadow.allLevelTo : shadow.allUprightTo, low, high);
        if (first > last) {
            worth = plain.best(c, low, high, roomFrom, roomTo, clip0, clip1, edge, guide, Long.MAX_VALUE);
            strips = worth > 0 ? plain.strips() : List.of();
            return worth;
        }
        int trims = chords.trims.length;
        for (int t = 0; t < trims; t++) {
            int a = least(level ? shadow.levelFrom[t] : shadow.uprightFrom[t], low, high);
            int b = greatest(level ? shadow.levelTo[t] : shadow.uprightTo[t], low, high);
            room(t, roomFrom[t], roomTo[t], low, high, -Chords.EMPTY, a);
            room(trims + t, roomFrom[t], roomTo[t], low, high, a > b ? Chords.EMPTY : b, Chords.EMPTY);
        }
        worth = split.best(c, low, high, from, to, clip0, clip1, edge, guide, Long.MAX_VALUE);
        strips = worth > 0 ? strips(trims) : List.of();
        for (int t = 0; t < trims; t++) {
            room(t, roomFrom[t], roomTo[t], low, high, -Chords.EMPTY, first);
            room(trims + t, roomFrom[t], roomTo[t], low, high, Chords.EMPTY, -Chords.EMPTY);
        }
        long left = split.best(c, low, high, from, to, clip0, clip1, edge, guide, Long.MAX_VALUE);
        if (left <= 0) {
            return worth;
        }
        List<Strip> both = new ArrayList<>(strips(trims));
        int beyond = Math.max(last, first + 2 * lattice.kerf);
        for (int t = 0; t < trims; t++) {
            room(t, roomFrom[t], roomTo[t], low, high, beyond, Chords.EMPTY);
        }
        long right = split.best(c, low, high, from, to, clip0, clip1, edge, guide, Long.MAX_VALUE);
        if (right > 0 && left + right > worth) {
            both.addAll(strips(trims));
            worth = left + right;
            strips = List.copyOf(both);
        }
        return worth;
    }

    /** The strips that {@link #best} found last, in order of position. */
    List<Strip> strips() {
        return strips;
    }

    private void room(int slot, int[] roomFrom, int[] roomTo, int low, int high, int least, int most) {
        for (int p = low; p <= high; p++) {
            from[slot][p] = Math.max(roomFrom[p], least);
            to[slot][p] = Math.min(roomTo[p], most);
        }
    }

    private List<Strip> strips(int trims) {
        return split.strips().stream()
                .map(strip -> new Strip(strip.from(), strip.entry(), strip.trim() % trims))
                .toList();
    }

    private static int least(int[] values, int from, int to) {
        return Arrays.stream(values, from, to).min().orElse(Chords.EMPTY);
    }

    private static int greatest(int[] values, int from, int to) {
        return Arrays.stream(values, from, to).max().orElse(-Chords.EMPTY);
    }
}
