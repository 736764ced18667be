package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

/** Turns the best stack into pieces, passes and offcuts. */
final class PlanWriter {

    private final Search search;
    private final Lattice lattice;
    private final Saw saw;
    private final List<PieceOption> options;
    private final Frame frame;
    private final SearchSpace space;
    private final Length logLength;
    private final int beyond;

    private final List<SawnPiece> pieces = new ArrayList<>();
    private final List<SawPass> passes = new ArrayList<>();
    private final List<Offcut> offcuts = new ArrayList<>();
    /** What the schedule calls each flitch and cant. */
    private final Map<Search.Cut, String> names = new LinkedHashMap<>();
    /** Which pieces a flitch holds. */
    private final Map<Search.Cut, String> holds = new LinkedHashMap<>();
    /** The flitch that is being edged. */
    private String flitch = "";

    PlanWriter(Search search, Saw saw, List<PieceOption> options, Frame frame, SearchSpace space, Length logLength) {
        this.search = search;
        this.lattice = search.lattice;
        this.saw = saw;
        this.options = options;
        this.frame = frame;
        this.space = space;
        this.logLength = logLength;
        double reach = 0;
        for (Lie.Plane p : search.measuring) {
            reach = Math.max(reach, Math.max(Math.abs(p.cu) + Math.sqrt(p.suu), Math.abs(p.cv) + Math.sqrt(p.svv)));
        }
        int bark = (int) Math.ceil(reach * 1e9 / lattice.unitNanometres);
        beyond = Math.max(bark, search.chords.centre) + lattice.kerf + 2;
    }

    SawingPlan plan(BestPattern.Totals totals) {
        write();
        double worth = 0;
        double cost = 0;
        for (SawnPiece piece : pieces) {
            worth += piece.worth();
        }
        for (SawPass pass : passes) {
            cost += pass.cost();
        }
        double objective = Lattice.amount(search.objective());
        Proof proof = new Proof(
                totals.bound() > search.objective() ? Proof.Verdict.BEST_FOUND : Proof.Verdict.PROVEN_OPTIMAL,
                worth,
                cost,
                objective,
                Lattice.amount(totals.bound()),
                OptionalDouble.empty(),
                space.words()
                        + (search.lie.solid().rot().isPresent()
                                ? " Pieces lie beside the rot: a flitch with rot in it gives one row, or one on either side"
                                        + " of all its rot, the second no nearer than two kerfs to where the rot begins."
                                : "")
                        + (options.stream().anyMatch(PieceOption::unedged)
                                ? " A flitch of the live order may keep its bark edges, whole and trimmed to a length."
                                : ""),
                totals.frames(),
                totals.flitchesEdged(),
                totals.cantsOpened(),
                totals.cantsInAll());
        return new SawingPlan(
                search.lie.solid(),
                saw,
                options,
                frame,
                pieces,
                passes,
                offcuts,
                Balance.of(search.lie, pieces, passes, offcuts),
                proof);
    }

    /** The refusal when only a wider saw could saw this log. */
    OutOfDomainException tooNarrow() {
        write();
        SawPass first = passes.stream()
                .filter(pass -> pass.widest().compareTo(saw.widthOfCut()) > 0)
                .findFirst()
                .orElse(passes.get(0));
        return new OutOfDomainException(
                "width of cut",
                saw.widthOfCut().toString(),
                "",
                "for this log no less than its pass " + first.number() + " ("
                        + first.stage().words()
                        + ") is wide over the bark at its widest, "
                        + first.widest().inMillimetres(0) + " ("
                        + first.widest().inInches(8, Rounding.UP) + ")",
                "flatten the log from two sides first, quarter it, take off the bark, or choose a smaller log");
    }

    private void write() {
        List<Search.Cut> cuts = search.pattern();
        name(cuts);
        int opening = search.opening();
        double bed = search.bed(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true);
        int face = opening;
        Rectangle outer = rectangle(-beyond, beyond, -beyond, beyond);
        offcuts.add(new Offcut(Offcut.Kind.SLAB, rectangle(-beyond, beyond, at(face) + lattice.kerf, beyond)));
        live(at(face), Length.ZERO, SawPass.GUIDE, bed, "the top slab", "the log with a sawn upper face", outer);
        for (Search.Cut cut : cuts) {
            if (cut.top() < face) {
                int thick = face - cut.top() - lattice.kerf;
                offcuts.add(new Offcut(
                        Offcut.Kind.SLAB, rectangle(-beyond, beyond, at(cut.top()) + lattice.kerf, at(face))));
                live(at(cut.top()), lattice.length(thick), "the face before", bed, "a slab", "the log below", outer);
            }
            Length thickness = lattice.length(cut.top() - cut.bottom());
            face = cut.bottom() - lattice.kerf;
            live(at(face), thickness, "the face before", bed, freed(cut, thickness), "the log below", outer);
        }
        offcuts.add(new Offcut(Offcut.Kind.SLAB, rectangle(-beyond, beyond, -beyond, at(face))));
        for (Search.Cut cut : cuts) {
            if (cut.cant()) {
                cant(cut);
            } else if (cut.unedged().isPresent()) {
                unedged(cut, cut.unedged().get());
            } else {
                row(cut, false, -beyond, beyond);
            }
        }
    }

    /** Flitches and cants are numbered each for itself, in the order in which they come free. */
    private void name(List<Search.Cut> cuts) {
        int flitches = 0;
        int cants = 0;
        for (Search.Cut cut : cuts) {
            names.put(cut, cut.cant() ? "cant " + ++cants : "flitch " + ++flitches);
        }
        int numbered = 0;
        for (Search.Cut cut : cuts) {
            for (Search.Cut one : cut.cant() ? cut.inside() : List.of(cut)) {
                if (cut.cant()) {
                    names.put(one, "flitch " + ++flitches);
                }
                int strips = one.unedged().isPresent() ? 1 : one.strips().size();
                holds.put(
                        one,
                        strips == 1
                                ? "piece " + (numbered + 1)
                                : "pieces " + (numbered + 1) + " to " + (numbered + strips));
                numbered += strips;
            }
        }
    }

    /** What a pass sets free: a flitch with the pieces that it holds, or a cant. */
    private String freed(Search.Cut cut, Length thickness) {
        return cut.cant()
                ? nameOf(cut) + ", " + thickness + " high"
                : nameOf(cut) + ", " + thickness + " thick, with " + holds.get(cut);
    }

    private String nameOf(Search.Cut cut) {
        String name = names.get(cut);
        if (name == null) {
            throw new IllegalStateException("a cut that is not in the pattern: " + cut);
        }
        return name;
    }

    private void cant(Search.Cut cant) {
        int low = at(cant.bottom());
        int high = at(cant.top());
        double bed = search.bed(lattice.metres(low), lattice.metres(high), false);
        int face = cant.opening();
        offcuts.add(new Offcut(Offcut.Kind.SLAB, rectangle(at(face) + lattice.kerf, beyond, low, high)));
        String name = nameOf(cant);
        upright(at(face), low, high, Length.ZERO, SawPass.GUIDE, bed, "the side slab", name + " with a sawn side");
        for (Search.Cut cut : cant.inside()) {
            if (cut.top() < face) {
                int thick = face - cut.top() - lattice.kerf;
                offcuts.add(new Offcut(Offcut.Kind.SLAB, rectangle(at(cut.top()) + lattice.kerf, at(face), low, high)));
                upright(
                        at(cut.top()),
                        low,
                        high,
                        lattice.length(thick),
                        "the face before",
                        bed,
                        "a slab",
                        "the rest of " + name);
            }
            Length thickness = lattice.length(cut.top() - cut.bottom());
            face = cut.bottom() - lattice.kerf;
            upright(
                    at(face),
                    low,
                    high,
                    thickness,
                    "the face before",
                    bed,
                    freed(cut, thickness),
                    "the rest of " + name);
        }
        offcuts.add(new Offcut(Offcut.Kind.SLAB, rectangle(-beyond, at(face), low, high)));
        for (Search.Cut cut : cant.inside()) {
            row(cut, true, low, high);
        }
    }

    private void unedged(Search.Cut cut, Unedged.Piece piece) {
        Chords.Trim trim = piece.trim();
        pieces.add(new SawnPiece(
                pieces.size() + 1,
                options.isEmpty() ? "" : options.get(piece.option()).id(),
                lattice.length(cut.top() - cut.bottom()),
                piece.width(),
                trim.end().minus(trim.start()),
                rectangle(-beyond, beyond, at(cut.bottom()), at(cut.top())),
                trim.start(),
                trim.end(),
                false,
                Lattice.amount(piece.worth()),
                true));
    }

    /**
     * Edges a flitch from its upper (right) side and takes its pieces. A row that has its only sawn side below is turned over, so that
     * the saw rides that side and no guide is laid.
     */
    private void row(Search.Cut cut, boolean upright, int clipFrom, int clipTo) {
        int low = at(cut.bottom());
        int high = at(cut.top());
        int kerf = lattice.kerf;
        flitch = nameOf(cut);
        List<Rows.Strip> strips = cut.strips();
        Lie.Plane[] planes = search.measuring;
        double lowest = Double.POSITIVE_INFINITY;
        for (Lie.Plane p : planes) {
            for (int side : new int[] {low, high}) {
                double x = lattice.metres(side);
                double half = Math.max(0, upright ? p.halfUpright(x) : p.halfLevel(x));
                lowest = Math.min(lowest, (upright ? p.midUpright(x) : p.midLevel(x)) - half);
            }
        }
        lowest = Math.max(lowest, lattice.metres(clipFrom));
        double underside = lowest;
        int ceiling = clipTo;
        for (int i = strips.size() - 1; i >= 0; i--) {
            if (!lattice.overBed && turnedOver(strips, i, clipFrom, clipTo)) {
                turnedOver(strips.subList(0, i + 1), low, high, upright, ceiling, clipTo);
                return;
            }
            Rows.Strip strip = strips.get(i);
            int from = at(strip.from());
            int to = from + strip.entry().width();
            if (lattice.overBed && (to < ceiling || ceiling == clipTo)) {
                // The flitch is shimmed so that the lines of a row stand on the saw's step.
                int line = to < clipTo ? to : from - kerf;
                double step = saw.settingStep().toMetres();
                lowest = lattice.metres(line) - Math.ceil((lattice.metres(line) - underside) / step - 1e-9) * step;
            }
            if (to < ceiling) {
                // The first edge of a row, by the guide; a second row stands beyond the rot.
                edge(
                        to,
                        to,
                        Math.min(to + kerf, clipTo),
                        low,
                        high,
                        upright,
                        Length.ZERO,
                        SawPass.GUIDE,
                        lowest,
                        "an edging");
                if (to + kerf < ceiling) {
                    offcuts.add(new Offcut(Offcut.Kind.EDGING, place(to + kerf, ceiling, low, high, upright)));
                }
            }
            ceiling = from - kerf;
            Length width = lattice.length(strip.entry().width());
            piece(strip, from, low, high, upright);
            if (lattice.overBed && from > clipFrom && lattice.metres(from - kerf) < underside - 1e-9) {
                // Less than a kerf is left under the piece, and the saw cannot dip into the bed: the flitch is turned
                // over.
                shaving(Math.max(from - kerf, clipFrom), from, low, high, upright, width, "piece " + pieces.size());
            } else if (from > clipFrom) {
                String from1 = to == clipTo ? "the sawn face" : "the face before";
                edge(
                        from - kerf,
                        Math.max(from - kerf, clipFrom),
                        from,
                        low,
                        high,
                        upright,
                        width,
                        from1,
                        lowest,
                        "piece " + pieces.size());
            }
        }
        if (ceiling > clipFrom) {
            offcuts.add(new Offcut(Offcut.Kind.EDGING, place(clipFrom, ceiling, low, high, upright)));
        }
    }

    /** Whether a row that ends with a strip begins at the lower side of the cant and does not reach the upper one. */
    private boolean turnedOver(List<Rows.Strip> strips, int last, int clipFrom, int clipTo) {
        if (at(strips.get(0).from()) != clipFrom || end(strips.get(last)) == clipTo) {
            return false;
        }
        boolean begun = last < strips.size() - 1
                && end(strips.get(last)) + lattice.kerf
                        == at(strips.get(last + 1).from());
        for (int i = 0; i < last; i++) {
            begun |= end(strips.get(i)) + lattice.kerf != at(strips.get(i + 1).from());
        }
        return !begun;
    }

    private int end(Rows.Strip strip) {
        return at(strip.from()) + strip.entry().width();
    }

    /** Takes a row from its sawn lower side on; what is left lies between its last edge and a place above. */
    private void turnedOver(List<Rows.Strip> row, int low, int high, boolean upright, int ceiling, int clipTo) {
        double highest = Double.NEGATIVE_INFINITY;
        for (Lie.Plane p : search.measuring) {
            for (int side : new int[] {low, high}) {
                double x = lattice.metres(side);
                double half = Math.max(0, upright ? p.halfUpright(x) : p.halfLevel(x));
                highest = Math.max(highest, (upright ? p.midUpright(x) : p.midLevel(x)) + half);
            }
        }
        double bed = Math.min(highest, lattice.metres(clipTo));
        double[] widths = new double[search.measuring.length];
        Arrays.fill(widths, lattice.metres(high - low));
        int top = ceiling;
        for (int i = 0; i < row.size(); i++) {
            Rows.Strip strip = row.get(i);
            int to = end(strip);
            piece(strip, at(strip.from()), low, high, upright);
            top = Math.min(to + lattice.kerf, clipTo);
            passes.add(new SawPass(
                    passes.size() + 1,
                    Stage.EDGE,
                    ((frame.turnDegrees() + (upright ? 180 : 270)) % 360 + 360) % 360,
                    lattice.length(strip.entry().width()),
                    i == 0 ? "the sawn face" : "the face before",
                    lattice.length(to),
                    Length.ofMetres(bed - lattice.metres(to + lattice.kerf), Rounding.HALF_EVEN),
                    place(to, top, low, high, upright),
                    SawPass.KerfSide.BELOW,
                    Length.ofMetres(widths[0], Rounding.HALF_EVEN),
                    Length.ofMetres(widths[0], Rounding.HALF_EVEN),
                    Length.ofMetres(widths[0], Rounding.DOWN),
                    logLength,
                    widths[0] * search.lie.solid().lengthMetres(),
                    Lattice.amount(search.cost(Stage.EDGE, widths[0])),
                    "piece " + pieces.size() + " of " + flitch,
                    "the rest of " + flitch));
        }
        if (top < ceiling) {
            offcuts.add(new Offcut(Offcut.Kind.EDGING, place(top, ceiling, low, high, upright)));
        }
    }

    private void piece(Rows.Strip strip, int from, int low, int high, boolean upright) {
        Chords.Trim trim = search.chords.trims[strip.trim()];
        pieces.add(new SawnPiece(
                pieces.size() + 1,
                options.isEmpty() ? "" : options.get(strip.entry().option()).id(),
                lattice.length(high - low),
                lattice.length(strip.entry().width()),
                trim.end().minus(trim.start()),
                place(from, from + strip.entry().width(), low, high, upright),
                trim.start(),
                trim.end(),
                upright,
                Lattice.amount(strip.entry().worth(trim.length()))));
    }

    /** A rectangle along a flitch: across it from, to; through it low, high. */
    private Rectangle place(int from, int to, int low, int high, boolean upright) {
        return upright ? rectangle(low, high, from, to) : rectangle(from, to, low, high);
    }

    private void live(int kerfLow, Length setting, String from, double bed, String off, String rest, Rectangle outer) {
        double[] widths = new double[search.measuring.length];
        double widest = search.levelWidths(lattice.metres(kerfLow), lattice.metres(kerfLow + lattice.kerf), widths);
        Rectangle kerf = new Rectangle(
                outer.left(), outer.right(), lattice.length(kerfLow), lattice.length(kerfLow + lattice.kerf));
        add(Stage.LIVE, frame.turnDegrees(), setting, from, kerfLow, bed, kerf, widths, widest, off, rest);
    }

    private void upright(
            int kerfLow, int bottom, int top, Length setting, String from, double bed, String off, String rest) {
        double[] widths = new double[search.measuring.length];
        double widest =
                search.cantWidths(kerfLow + search.chords.centre, lattice.metres(bottom), lattice.metres(top), widths);
        Rectangle kerf = rectangle(kerfLow, kerfLow + lattice.kerf, bottom, top);
        add(Stage.CANT, frame.turnDegrees() + 90, setting, from, kerfLow, bed, kerf, widths, widest, off, rest);
    }

    private void shaving(int face, int line, int low, int high, boolean upright, Length width, String off) {
        double[] widths = new double[search.measuring.length];
        Arrays.fill(widths, lattice.metres(high - low));
        add(
                Stage.EDGE,
                frame.turnDegrees() + (upright ? 180 : 270),
                width,
                "the bed",
                line,
                lattice.metres(line)
                        - width.roundedTo(saw.settingStep(), Rounding.UP).toMetres(),
                place(face, line, low, high, upright),
                widths,
                widths[0],
                off + " of " + flitch,
                "a shaving less than a kerf");
    }

    /** The kerf may end at a face of the cant; its line stands where the whole kerf would begin. */
    private void edge(
            int line,
            int kerfLow,
            int kerfHigh,
            int low,
            int high,
            boolean upright,
            Length setting,
            String from,
            double bed,
            String off) {
        double[] widths = new double[search.measuring.length];
        Arrays.fill(widths, lattice.metres(high - low));
        add(
                Stage.EDGE,
                frame.turnDegrees() + (upright ? 0 : 90),
                setting,
                from,
                line,
                bed,
                place(kerfLow, kerfHigh, low, high, upright),
                widths,
                widths[0],
                off + " of " + flitch,
                "the rest of " + flitch);
    }

    private void add(
            Stage stage,
            double turn,
            Length ridingSetting,
            String ridingFrom,
            int kerfLow,
            double bed,
            Rectangle kerf,
            double[] widths,
            double widest,
            String off,
            String rest) {
        Length overBed = Length.ofMetres(lattice.metres(kerfLow) - bed, Rounding.HALF_EVEN);
        boolean riding = !lattice.overBed;
        boolean below = riding && ridingSetting.isPositive();
        double mean = stage == Stage.EDGE ? widths[0] : search.lie.mean(widths);
        passes.add(new SawPass(
                passes.size() + 1,
                stage,
                ((turn % 360) + 360) % 360,
                riding ? ridingSetting : overBed,
                riding ? ridingFrom : "the bed",
                lattice.length(below ? kerfLow + lattice.kerf : kerfLow),
                overBed,
                kerf,
                below ? SawPass.KerfSide.BELOW : SawPass.KerfSide.ABOVE,
                Length.ofMetres(widths[0], Rounding.HALF_EVEN),
                Length.ofMetres(widths[widths.length - 1], Rounding.HALF_EVEN),
                Length.ofMetres(Math.max(widest, 0), Rounding.DOWN),
                logLength,
                mean * search.lie.solid().lengthMetres(),
                Lattice.amount(
                        search.cost(stage, mean) + (ridingFrom.equals(SawPass.GUIDE) ? search.opening(stage) : 0)),
                off,
                rest));
    }

    private int at(int index) {
        return index - search.chords.centre;
    }

    private Rectangle rectangle(int left, int right, int bottom, int top) {
        return new Rectangle(lattice.length(left), lattice.length(right), lattice.length(bottom), lattice.length(top));
    }
}
