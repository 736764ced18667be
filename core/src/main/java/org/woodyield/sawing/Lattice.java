package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

/**
 * Sizes, kerf and steps as whole multiples of one unit, so that faces add up exactly. Worth and cost are whole millionths.
 */
final class Lattice {

    static final long NONE = Long.MIN_VALUE / 4;
    private static final double MILLION = 1e6;

    /** One width of one option in a class of one thickness. */
    static final class Entry {
        private final int option;
        private final int width;
        private final long[] worthByLength;
        private final int waneDepth;
        private final int waneWidth;

        Entry(int option, int width, long[] worthByLength, int waneDepth, int waneWidth) {
            this.option = option;
            this.width = width;
            this.worthByLength = worthByLength;
            this.waneDepth = waneDepth;
            this.waneWidth = waneWidth;
        }

        int option() {
            return option;
        }

        int width() {
            return width;
        }

        long worth(int length) {
            return worthByLength[length];
        }

        int waneDepth() {
            return waneDepth;
        }

        int waneWidth() {
            return waneWidth;
        }
    }

    /** All widths that are sawn at one thickness, and the options that keep their bark edges at it. */
    record Thickness(int units, List<Entry> entries, int deepestWane, List<Integer> unedged) {}

    final long unitNanometres;
    final int kerf;
    final int grid;
    final int step;
    final boolean overBed;
    final List<Length> lengths;
    final List<Thickness> thicknesses;
    final int[] cantHeights;

    /**
     * Whether faces stand anywhere and each index means the step from it to the next: rooms are then the widest within a
     * step, passes the cheapest, and what is found is a bound.
     */
    final boolean anywhere;

    /**
     * How far beyond its step the room at a face must be looked for. Wane begins at most half a thickness from a face: of an
     * odd thickness that is half a step beyond the last whole one.
     */
    final int margin;

    private Lattice(
            long unitNanometres,
            Saw saw,
            long grid,
            List<Length> lengths,
            List<Thickness> thicknesses,
            int[] cantHeights,
            boolean anywhere,
            int margin) {
        this.unitNanometres = unitNanometres;
        this.kerf = (int) (saw.kerf().toNanometres() / unitNanometres);
        this.grid = (int) (grid / unitNanometres);
        this.step = (int) (saw.settingStep().toNanometres() / unitNanometres);
        this.overBed = saw.reference() == Saw.Reference.BED;
        this.lengths = lengths;
        this.thicknesses = thicknesses;
        this.cantHeights = cantHeights;
        this.anywhere = anywhere;
        this.margin = margin;
    }

    /** Grid of the first face; over a bed every face stands on the saw's own step. */
    static Length grid(Saw saw, SearchSpace space) {
        Length grid = space.grid();
        return saw.reference() == Saw.Reference.BED ? grid.roundedTo(saw.settingStep(), Rounding.UP) : grid;
    }

    /** The saw with so fine a step that every size can be set exactly. */
    static Saw exactlySet(Saw saw, List<PieceOption> options) {
        long beyond = saw.reference() == Saw.Reference.BED ? saw.kerf().toNanometres() : 0;
        long step = saw.settingStep().toNanometres();
        for (PieceOption option : options) {
            step = gcd(step, option.thickness().toNanometres() + beyond);
            for (Length width : widths(option)) {
                step = gcd(step, width.toNanometres() + beyond);
            }
        }
        return new Saw(
                saw.name(),
                saw.kerf(),
                saw.widthOfCut(),
                Length.nanometres(step),
                saw.reference(),
                saw.leastHeight(),
                saw.sawingVariation());
    }

    static Lattice of(Saw saw, List<PieceOption> options, SearchSpace space, Length longest) {
        return of(saw, options, space, longest, false);
    }

    /** The same unit with a first face anywhere; wane is rounded up. */
    static Lattice anywhere(Saw saw, List<PieceOption> options, SearchSpace space, Length longest) {
        return of(saw, options, space, longest, true);
    }

    private static Lattice of(Saw saw, List<PieceOption> options, SearchSpace space, Length longest, boolean anywhere) {
        long step = saw.settingStep().toNanometres();
        long grid = grid(saw, space).toNanometres();
        long unit = gcd(gcd(saw.kerf().toNanometres(), step), grid);
        TreeSet<Length> lengthSet = new TreeSet<>();
        for (PieceOption option : options) {
            unit = gcd(unit, saw.settable(option.thickness()).toNanometres());
            for (Length width : widths(option)) {
                unit = gcd(unit, saw.settable(width).toNanometres());
            }
            option.lengths().stream()
                    .map(LengthWorth::length)
                    .filter(length -> length.compareTo(longest) <= 0)
                    .forEach(lengthSet::add);
        }
        List<Length> lengths = new ArrayList<>(lengthSet.descendingSet());
        long overThick = space.overThick().steps(saw.settingStep(), Rounding.DOWN);
        Map<Integer, List<Entry>> byThickness = new LinkedHashMap<>();
        Map<Integer, List<Integer>> unedged = new LinkedHashMap<>();
        TreeSet<Integer> heights = new TreeSet<>();
        int margin = 0;
        for (int o = 0; o < options.size(); o++) {
            PieceOption option = options.get(o);
            for (long extra = 0; extra <= overThick; extra++) {
                int thickness =
                        Math.toIntExact((saw.settable(option.thickness()).toNanometres() + extra * step) / unit);
                byThickness.computeIfAbsent(thickness, t -> new ArrayList<>());
                if (option.unedged() && extra == 0) {
                    unedged.computeIfAbsent(thickness, t -> new ArrayList<>()).add(o);
                }
                for (Length width : widths(option)) {
                    int w = Math.toIntExact(saw.settable(width).toNanometres() / unit);
                    heights.add(w);
                    long[] worth = new long[lengths.size()];
                    java.util.Arrays.fill(worth, NONE);
                    for (LengthWorth each : option.lengths()) {
                        int index = lengths.indexOf(each.length());
                        if (index >= 0) {
                            worth[index] = millionths(each.worth()
                                    * (width.toMetres() / option.leastWidth().toMetres()));
                        }
                    }
                    // Wane is measured on the size that was asked for, not on what the saw's step adds to it.
                    int depth = whole(
                            option.thickness().toNanometres() * option.wane().thicknessInset() / unit, anywhere);
                    int side = whole(width.toNanometres() * option.wane().widthInset() / unit, anywhere);
                    // Before the depth is cut down to whole steps: a piece of one step has wane, too.
                    if (anywhere && depth > thickness / 2 && side > 0) {
                        margin = 1;
                    }
                    depth = Math.min(depth, thickness / 2);
                    boolean square = depth == 0 || side == 0;
                    byThickness
                            .computeIfAbsent(thickness, t -> new ArrayList<>())
                            .add(new Entry(o, w, worth, square ? 0 : depth, square ? 0 : side));
                }
            }
        }
        List<Thickness> thicknesses = new ArrayList<>();
        byThickness.forEach((units, entries) -> thicknesses.add(new Thickness(
                units,
                List.copyOf(entries),
                entries.stream().mapToInt(Entry::waneDepth).max().orElse(0),
                List.copyOf(unedged.getOrDefault(units, List.of())))));
        int[] cants = space.cants()
                ? heights.descendingSet().stream().mapToInt(Integer::intValue).toArray()
                : new int[0];
        return new Lattice(
                unit, saw, anywhere ? unit : grid, lengths, List.copyOf(thicknesses), cants, anywhere, margin);
    }

    private static int whole(double units, boolean up) {
        return (int) (up ? Math.ceil(units) : Math.floor(units));
    }

    static List<Length> widths(PieceOption option) {
        if (option.unedged()) {
            return List.of();
        }
        if (option.fixedWidth()) {
            return List.of(option.leastWidth());
        }
        List<Length> widths = new ArrayList<>();
        for (Length w = option.leastWidth(); w.compareTo(option.greatestWidth()) <= 0; w = w.plus(option.widthStep())) {
            widths.add(w);
            if (widths.size() > 2000) {
                throw new OutOfDomainException(
                        "width step of " + option.id(),
                        option.widthStep().toString(),
                        "",
                        "at most 2000 widths",
                        "take a wider step");
            }
        }
        return widths;
    }

    static long millionths(double amount) {
        if (!(Math.abs(amount) <= 1e10)) {
            throw new OutOfDomainException("worth or cost", Double.toString(amount), "", "0 to 1e10", "");
        }
        return (long) Math.rint(amount * MILLION);
    }

    static double amount(long millionths) {
        return millionths / MILLION;
    }

    /** A height of the first face in units; over a bed the grid may be wider than the one that was asked for. */
    int onGrid(Length face) {
        long step = grid * unitNanometres;
        if (face.toNanometres() % step != 0) {
            throw new OutOfDomainException(
                    "height of the first face",
                    face.toString(),
                    "",
                    "whole multiples of " + Length.nanometres(step),
                    "over a bed, take one that stands on the saw's step");
        }
        return Math.toIntExact(face.toNanometres() / unitNanometres);
    }

    double metres(int units) {
        return units * (double) unitNanometres / 1e9;
    }

    Length length(int units) {
        return Length.nanometres(units * unitNanometres);
    }

    private static long gcd(long a, long b) {
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return Math.abs(a);
    }
}
