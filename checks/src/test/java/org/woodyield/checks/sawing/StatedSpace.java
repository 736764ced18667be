package org.woodyield.checks.sawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.Stage;

/**
 * The search space of a small problem in one frame as plain numbers: which passes can be made and at what cost, and what a
 * strip is worth in its place. Worked out from the rules alone; nothing of it is taken from the search. Faces and places are
 * whole units from the axis, worth and cost millionths.
 */
final class StatedSpace {

    static final long MORE_THAN_ANYTHING = 100_000_000_000L;

    /** One size of one width at one thickness, in units. */
    record Size(int thickness, int width, int waneDepth, int waneSide, Map<Length, Long> worth) {}

    private final Problem problem;
    final LyingLog log;
    final long unit;
    final int kerf;
    final int grid;
    final int step;
    final int leastSlab;
    final int reach;
    final List<Size> sizes = new ArrayList<>();
    final List<Integer> thicknesses = new ArrayList<>();
    final List<Integer> heights = new ArrayList<>();
    private final List<double[]> trims = new ArrayList<>();
    private final List<Length> trimLengths = new ArrayList<>();
    private final Map<Integer, Long> livePasses = new HashMap<>();

    StatedSpace(Problem problem, LyingLog log) {
        this.problem = problem;
        this.log = log;
        Saw saw = problem.saw();
        boolean bed = saw.reference() == Saw.Reference.BED;
        long stepNm = saw.settingStep().toNanometres();
        long kerfNm = saw.kerf().toNanometres();
        long gridNm = problem.space().grid().toNanometres();
        if (bed) {
            gridNm = (gridNm + stepNm - 1) / stepNm * stepNm;
        }
        long common = gcd(gcd(kerfNm, stepNm), gridNm);
        for (PieceOption option : problem.options()) {
            common = gcd(common, sawn(option.thickness()));
            for (Length width : widths(option)) {
                common = gcd(common, sawn(width));
            }
        }
        unit = common;
        kerf = (int) (kerfNm / unit);
        grid = (int) (gridNm / unit);
        step = (int) (stepNm / unit);
        // Riding a face, a slab is a whole number of steps thick; over a bed its two lines are whole steps apart.
        int slab = kerf + step;
        if (bed) {
            slab = step;
            while (slab <= kerf) {
                slab += step;
            }
        }
        leastSlab = slab;
        TreeSet<Integer> cants = new TreeSet<>();
        long thicker = problem.space().overThick().toNanometres() / stepNm;
        for (PieceOption option : problem.options()) {
            for (long extra = 0; extra <= thicker; extra++) {
                int thickness = (int) ((sawn(option.thickness()) + extra * stepNm) / unit);
                if (!thicknesses.contains(thickness)) {
                    thicknesses.add(thickness);
                }
                for (Length width : widths(option)) {
                    sizes.add(size(option, thickness, width));
                    cants.add((int) (sawn(width) / unit));
                }
            }
        }
        if (problem.space().cants()) {
            heights.addAll(cants.descendingSet());
        }
        trims();
        double far = 0;
        for (double z : log.measured()) {
            LogSolid.Section s = log.solid.sectionOverBark(z);
            LyingLog.Stretch v = log.heights(s, z);
            LyingLog.Stretch u = log.sides(s, z, -99, 99);
            far = Math.max(far, Math.max(Math.max(-v.from(), v.to()), Math.max(-u.from(), u.to())));
        }
        reach = (int) (far * 1e9 / unit) + kerf + 2;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** The least size that the saw leaves. */
    private long sawn(Length size) {
        long step = problem.saw().settingStep().toNanometres();
        long kerf = problem.saw().reference() == Saw.Reference.BED
                ? problem.saw().kerf().toNanometres()
                : 0;
        return (size.toNanometres() + kerf + step - 1) / step * step - kerf;
    }

    private static List<Length> widths(PieceOption option) {
        List<Length> widths = new ArrayList<>();
        if (option.unedged()) {
            return widths;
        }
        Length width = option.leastWidth();
        while (width.compareTo(option.greatestWidth()) <= 0) {
            widths.add(width);
            if (option.leastWidth().equals(option.greatestWidth())) {
                break;
            }
            width = width.plus(option.widthStep());
        }
        return widths;
    }

    private Size size(PieceOption option, int thickness, Length width) {
        Map<Length, Long> worth = new HashMap<>();
        for (LengthWorth each : option.lengths()) {
            if (each.length().toMetres() <= log.solid.lengthMetres()) {
                double share = width.toMetres() / option.leastWidth().toMetres();
                worth.put(each.length(), (long) Math.rint(each.worth() * share * 1e6));
            }
        }
        // More than half counts as half: the wane of two corners meets in the middle.
        double depth = Math.min(option.wane().thicknessShare(), 0.5)
                * option.thickness().toNanometres();
        double side = Math.min(option.wane().widthShare(), 0.5) * width.toNanometres();
        return new Size(thickness, (int) (sawn(width) / unit), (int) (depth / unit), (int) (side / unit), worth);
    }

    private void trims() {
        TreeSet<Length> lengths = new TreeSet<>();
        for (PieceOption option : problem.options()) {
            option.lengths().stream()
                    .map(LengthWorth::length)
                    .filter(length -> length.toMetres() <= log.solid.lengthMetres())
                    .forEach(lengths::add);
        }
        Length whole = Length.ofMetres(log.solid.lengthMetres(), Rounding.HALF_EVEN);
        for (Length length : lengths) {
            TreeSet<Length> starts = new TreeSet<>();
            Length last = whole.minus(length);
            Length each = problem.space().startStep();
            for (Length start = Length.ZERO; each.isPositive() && start.compareTo(last) < 0; start = start.plus(each)) {
                starts.add(start);
            }
            starts.add(Length.ZERO);
            starts.add(last);
            for (Length start : starts) {
                TreeSet<Double> places = new TreeSet<>();
                double from = start.toMetres();
                double to = Math.min(start.plus(length).toMetres(), log.solid.lengthMetres());
                places.add(from);
                places.add(to);
                for (int i = 0; i < log.solid.stationCount(); i++) {
                    double z = log.solid.station(i).zMetres();
                    if (z > from && z < to) {
                        places.add(z);
                    }
                }
                trims.add(places.stream().mapToDouble(z -> z).toArray());
                trimLengths.add(length);
            }
        }
    }

    double metres(int units) {
        return units * (double) unit / 1e9;
    }

    long cost(Stage stage, double meanWidth) {
        if (problem.cost() == PassCost.free()) {
            return 0;
        }
        int steps = (int) Math.ceil(meanWidth / metres(1) - 1e-9);
        return (long) Math.rint(problem.cost().of(stage, metres(steps), log.solid.lengthMetres()) * 1e6);
    }

    /** Cost of laying the guide once; over a bed there is none. */
    long guide() {
        return problem.saw().reference() == Saw.Reference.BED
                ? 0
                : (long) Math.rint(problem.cost().guide() * 1e6);
    }

    /** Beside the first pass of a cant: it is turned and clamped, and the guide is laid on it. */
    long openingOfCant() {
        return guide() + (long) Math.rint(problem.cost().turning() * 1e6);
    }

    /** Beside the first pass of the log: it is brought to the saw, clamped as a cant is, and the guide is laid on it. */
    long openingOfLog() {
        return openingOfCant() + (long) Math.rint(problem.cost().loading() * 1e6);
    }

    /** Cost of a level pass with its kerf from here up; below zero if the saw cannot make it. */
    long livePass(int at) {
        return livePasses.computeIfAbsent(at, this::workOutLivePass);
    }

    private long workOutLivePass(int at) {
        double low = metres(at);
        double high = metres(at + kerf);
        double widest = 0;
        double lowest = Double.POSITIVE_INFINITY;
        List<Double> widths = new ArrayList<>();
        for (double z : log.measured()) {
            LogSolid.Section s = log.solid.sectionOverBark(z);
            widest = Math.max(widest, log.widestLevel(s, z, low, high));
            widths.add(log.level(s, z, (low + high) / 2).within(-99, 99));
            lowest = Math.min(lowest, log.heights(s, z).from());
        }
        return possible(widest, low, lowest) ? cost(Stage.LIVE, log.mean(widths)) : -1;
    }

    private boolean possible(double widest, double line, double lowest) {
        double stepMetres = problem.saw().settingStep().toMetres();
        double bed = problem.saw().reference() == Saw.Reference.BED
                ? Math.floor(lowest / stepMetres + 1e-9) * stepMetres
                : lowest;
        return widest > 0
                && widest <= problem.saw().widthOfCut().toMetres()
                && line - bed >= problem.saw().leastHeight().toMetres() - 1e-12;
    }

    /** Cost of an upright pass through a cant with its kerf from here to the right; below zero if it cannot be made. */
    long cantPass(int at, int bottom, int top) {
        double left = metres(at);
        double right = metres(at + kerf);
        double low = metres(bottom);
        double high = metres(top);
        double widest = 0;
        double leftmost = Double.POSITIVE_INFINITY;
        List<Double> widths = new ArrayList<>();
        for (double z : log.measured()) {
            LogSolid.Section s = log.solid.sectionOverBark(z);
            widest = Math.max(widest, log.widestUpright(s, z, left, right, low, high));
            widths.add(log.upright(s, z, (left + right) / 2).within(low, high));
            leftmost = Math.min(leftmost, log.sides(s, z, low, high).from());
        }
        return possible(widest, left, leftmost) ? cost(Stage.CANT, log.mean(widths)) : -1;
    }

    /** Whether a piece lies in the wood, but for its wane, along a trim. */
    private boolean fits(Size size, int from, int low, double[] places, boolean upright) {
        int to = from + size.width();
        int high = low + size.thickness();
        boolean square = size.waneDepth() == 0 || size.waneSide() == 0;
        int side = square ? 0 : size.waneSide();
        int depth = square ? 0 : size.waneDepth();
        for (double z : places) {
            for (int end : new int[] {from, to}) {
                int inset = end == from ? end + side : end - side;
                for (int face : new int[] {low, high}) {
                    int deeper = face == low ? face + depth : face - depth;
                    if (!in(inset, face, z, upright) || !in(end, deeper, z, upright)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private boolean in(int across, int through, double z, boolean upright) {
        return upright
                ? log.inside(metres(through), metres(across), z)
                : log.inside(metres(across), metres(through), z);
    }

    /** The most that one strip is worth in its place; below zero if it lies nowhere in the wood. */
    long strip(Size size, int from, int low, boolean upright) {
        long most = -1;
        for (int t = 0; t < trims.size(); t++) {
            Long worth = size.worth().get(trimLengths.get(t));
            if (worth != null
                    && worth > most
                    && fits(size, from, low, trims.get(t), upright)
                    && besideTheRot(size, from, low, trims.get(t), upright)) {
                most = worth;
            }
        }
        return most;
    }

    /** Along its own trim a strip lies left or right of all the rot between its faces. */
    private boolean besideTheRot(Size size, int from, int low, double[] places, boolean upright) {
        LyingLog.Stretch rot =
                log.rot(places[0], places[places.length - 1], metres(low), metres(low + size.thickness()), upright);
        return !rot.any() || metres(from + size.width()) <= rot.from() || metres(from) >= rot.to();
    }

    /** The rot of a flitch over the whole length, rounded outward to whole units; empty if there is none. */
    Optional<int[]> rot(int thickness, int low, boolean upright) {
        LyingLog.Stretch rot = log.rot(0, log.solid.lengthMetres(), metres(low), metres(low + thickness), upright);
        return rot.any()
                ? Optional.of(
                        new int[] {(int) Math.floor(rot.from() / metres(1)), (int) Math.ceil(rot.to() / metres(1))})
                : Optional.empty();
    }

    /** The most that a flitch of the log is worth with its bark edges on; below zero if it is sold with none. */
    long withBarkEdges(int thickness, int low) {
        long most = -1;
        for (PieceOption option : problem.options()) {
            if (!option.unedged() || sawn(option.thickness()) != thickness * unit) {
                continue;
            }
            for (LengthWorth paid : option.lengths()) {
                for (int t = 0; t < trims.size(); t++) {
                    if (trimLengths.get(t).equals(paid.length())) {
                        most = Math.max(most, withBarkEdges(option, paid.worth(), trims.get(t), low, low + thickness));
                    }
                }
            }
        }
        return most;
    }

    private long withBarkEdges(PieceOption option, double paid, double[] places, int low, int high) {
        double from = places[0];
        double to = places[places.length - 1];
        if (log.rot(from, to, metres(low), metres(high), false).any()) {
            return -1;
        }
        double least = Double.POSITIVE_INFINITY;
        for (double z : places) {
            least = Math.min(least, Math.min(face(z, low), face(z, high)));
        }
        if (!(least > 0)) {
            return -1;
        }
        double measured = least;
        if (option.edges() == PieceOption.Edges.BARK_MEAN_WIDTH) {
            double area = 0;
            for (int i = 1; i < places.length; i++) {
                area += gauss(places[i - 1], places[i], low) + gauss(places[i - 1], places[i], high);
            }
            measured = area / 2 / (to - from);
        }
        long steps = (long) Math.floor(measured * 1e9) / option.widthStep().toNanometres();
        double width = Math.min(
                steps * option.widthStep().toMetres(), option.greatestWidth().toMetres());
        double least1 = option.leastWidth().toMetres();
        long worth = (long) Math.rint(paid * (width / least1) * 1e6);
        return width >= least1 && worth > 0 ? worth : -1;
    }

    /** Width of a face in the wood. */
    private double face(double z, int at) {
        return log.level(log.solid.section(z), z, metres(at)).within(-99, 99);
    }

    /** Area of a face on a stretch by Gauss's rule with five points, which the space lays down for the mean width. */
    private double gauss(double from, double to, int at) {
        double near = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3;
        double far = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3;
        double root = 13 * Math.sqrt(70);
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        return half
                * (128.0 / 225 * face(middle, at)
                        + (322 + root) / 900 * (face(middle - half * near, at) + face(middle + half * near, at))
                        + (322 - root) / 900 * (face(middle - half * far, at) + face(middle + half * far, at)));
    }

    /** Cost of an edge pass; more than anything is worth if the flitch is thicker than the saw cuts wide. */
    long edge(int thickness) {
        return metres(thickness) > problem.saw().widthOfCut().toMetres()
                ? MORE_THAN_ANYTHING
                : cost(Stage.EDGE, metres(thickness));
    }
}
