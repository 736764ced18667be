package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

/**
 * Checks a sawing plan from its outcome alone; it shares no code with the search. Geometry is worked out again in the
 * log's own directions: a place of the frame is turned back and its lift taken off, and then laid against the section.
 *
 * <p>Shares of the wood are integrated by strips of equal width on slices of equal length. That is coarser than the plan's
 * own balance, so shares may differ by a thousandth of the log; what is laid in the wrong place differs by more.
 */
public final class Verifier {

    private static final int SLICES_PER_STRETCH = 24;
    private static final int STRIPS = 160;
    private static final double SHARE_TOLERANCE = 1e-3;
    /** Places are held to the nanometre, and a corner may lie on the outline. */
    private static final double TOUCH_METRES = 5e-9;

    /** The mean width of a flitch is summed by slices here and by a finer rule in the search. */
    private static final double MEAN_WIDTH_TOLERANCE = 1e-4;

    /** What can be wrong with a plan. */
    public enum Fault {
        /** A corner of a piece lies outside the wood, where no wane is allowed. */
        OUTSIDE_THE_WOOD("a piece reaches out of the wood"),
        /** A piece holds rot. */
        IN_THE_ROT("a piece holds rot"),
        /** More is missing at an edge than the size allows. */
        WANE("more wane than allowed"),
        /** Two pieces, kerfs or offcuts lie on each other. */
        OVERLAP("two parts of the log overlap"),
        /** The parts do not fill the log. */
        GAP("part of the log is no piece, kerf or offcut"),
        /** A pass is wider than the saw can cut. */
        SAW_TOO_NARROW("a pass is wider than the saw can cut"),
        /** A pass through the log or a cant lies lower over the bed or the dogs than the saw can cut. */
        TOO_LOW("a pass lies below the saw's least height"),
        /** A kerf is not as wide as the saw's. */
        WRONG_KERF("a kerf is not as wide as the saw's"),
        /** A piece has not the size that it is said to be. */
        WRONG_SIZE("a piece has not its size"),
        /** A piece is not as long as its trims say, or reaches beyond the log. */
        WRONG_TRIM("a piece is not trimmed to one of its lengths"),
        /** A pass is made with the log turned otherwise than its kerf lies. */
        WRONG_TURN("a pass is turned otherwise than its kerf lies"),
        /** A face of a piece lies along no kerf. */
        NO_PASS("a face of a piece is cut by no pass"),
        /** A share of the wood is not what its parts measure. */
        WRONG_BALANCE("a share of the wood is not what its parts measure");

        private final String words;

        Fault(String words) {
            this.words = words;
        }

        /**
         * The fault in words.
         *
         * @return a clause
         */
        public String words() {
            return words;
        }
    }

    /**
     * A fault in its place.
     *
     * @param fault what is wrong
     * @param where which piece, pass or share
     */
    public record Finding(Fault fault, String where) {}

    private record Part(String name, Rectangle place) {}

    private final SawingPlan plan;
    private final LogSolid solid;
    private final double cos;
    private final double sin;
    private final List<Finding> findings = new ArrayList<>();

    private Verifier(SawingPlan plan) {
        this.plan = plan;
        this.solid = plan.solid();
        double turn = StrictMath.toRadians(plan.frame().turnDegrees());
        this.cos = StrictMath.cos(turn);
        this.sin = StrictMath.sin(turn);
    }

    /**
     * Looks for faults.
     *
     * @param plan how a log is sawn
     * @return every fault found, in the order of the checks; empty for a sound plan
     */
    public static List<Finding> verify(SawingPlan plan) {
        Verifier verifier = new Verifier(plan);
        plan.pieces().forEach(verifier::piece);
        plan.passes().forEach(verifier::pass);
        verifier.tiling();
        verifier.balance();
        return List.copyOf(verifier.findings);
    }

    private void found(Fault fault, String where) {
        findings.add(new Finding(fault, where));
    }

    private void piece(SawnPiece piece) {
        String name = "piece " + piece.number();
        Optional<PieceOption> option = plan.options().stream()
                .filter(one -> one.id().equals(piece.optionId()))
                .findFirst();
        Length across =
                piece.fromCant() ? piece.faces().height() : piece.faces().width();
        Length through =
                piece.fromCant() ? piece.faces().width() : piece.faces().height();
        if (option.isEmpty()
                || option.get().unedged() != piece.unedged()
                || !through.equals(piece.thickness())
                || (!piece.unedged() && !across.equals(piece.width()))) {
            found(Fault.WRONG_SIZE, name);
            return;
        }
        PieceOption size = option.get();
        boolean wide = piece.unedged() ? barkWidthHolds(size, piece) : widthHolds(size, piece.width());
        if (piece.thickness().compareTo(size.thickness()) < 0 || !wide) {
            found(Fault.WRONG_SIZE, name);
        }
        Length length = Length.ofMetres(solid.lengthMetres(), Rounding.HALF_EVEN);
        if (!piece.end().minus(piece.start()).equals(piece.length())
                || piece.start().compareTo(Length.ZERO) < 0
                || piece.end().compareTo(length) > 0
                || size.lengths().stream().noneMatch(one -> one.length().equals(piece.length()))) {
            found(Fault.WRONG_TRIM, name);
        }
        clearOfRot(piece, name);
        if (!piece.unedged()) {
            inTheWood(piece, size.wane(), name);
        }
        Rectangle f = piece.faces();
        boolean level =
                cut(f.bottom(), f.left(), f.right(), true, false) && cut(f.top(), f.left(), f.right(), true, true);
        boolean upright = piece.unedged()
                || (cut(f.left(), f.bottom(), f.top(), false, false)
                        && cut(f.right(), f.bottom(), f.top(), false, true));
        if (!level || !upright) {
            found(Fault.NO_PASS, name);
        }
    }

    /** Whether a width is one of the size's, taken up to what the saw can be set to. */
    private boolean widthHolds(PieceOption size, Length width) {
        if (size.fixedWidth()) {
            return plan.saw().settable(size.leastWidth()).equals(width);
        }
        for (Length one = size.leastWidth();
                one.compareTo(size.greatestWidth()) <= 0;
                one = one.plus(size.widthStep())) {
            if (plan.saw().settable(one).equals(width)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a flitch with bark edges is whole, and as wide as it is said to be: measured again on many sections. */
    private boolean barkWidthHolds(PieceOption size, SawnPiece piece) {
        Rectangle f = piece.faces();
        List<Double> places = new ArrayList<>(places(piece));
        double from = places.get(0);
        double to = places.get(1);
        double least = Double.POSITIVE_INFINITY;
        double sum = 0;
        int slices = SLICES_PER_STRETCH * solid.stationCount();
        for (int i = 0; i < slices; i++) {
            places.add(from + (to - from) * (i + 0.5) / slices);
        }
        double left = f.left().toMetres();
        double right = f.right().toMetres();
        for (int i = 0; i < places.size(); i++) {
            double z = places.get(i);
            LogSolid.Section s = solid.section(Math.min(z, solid.lengthMetres()));
            double both = 0;
            for (Length face : List.of(f.bottom(), f.top())) {
                double w = face.toMetres() - lift(z);
                double width = within(s, sin * w, cos * w, cos, -sin, left, right);
                if (within(s, sin * w, cos * w, cos, -sin, 2 * left, 2 * right) > width) {
                    return false;
                }
                least = Math.min(least, width);
                both += width / 2;
            }
            sum += i >= places.size() - slices ? both / slices : 0;
        }
        boolean byLeast = size.edges() == PieceOption.Edges.BARK_LEAST_WIDTH;
        double measured = byLeast ? least : sum;
        double leeway = byLeast ? TOUCH_METRES : MEAN_WIDTH_TOLERANCE;
        double width = piece.width().toMetres();
        boolean stepped =
                piece.width().roundedTo(size.widthStep(), Rounding.DOWN).equals(piece.width());
        return piece.width().compareTo(size.leastWidth()) >= 0
                && width <= measured + leeway
                && (piece.width().equals(size.greatestWidth())
                        || (stepped && width + size.widthStep().toMetres() > measured - leeway));
    }

    /** Whether a kerf lies along a face, on the side away from the piece. */
    private boolean cut(Length face, Length from, Length to, boolean level, boolean beyond) {
        for (SawPass pass : plan.passes()) {
            Rectangle k = pass.kerf();
            Length side = level ? (beyond ? k.bottom() : k.top()) : (beyond ? k.left() : k.right());
            Length first = level ? k.left() : k.bottom();
            Length last = level ? k.right() : k.top();
            if (isLevel(pass) == level && side.equals(face) && first.compareTo(from) <= 0 && last.compareTo(to) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Along an edge of a flitch as thin as a kerf the slot's shape does not tell; how the flitch is turned does. */
    private boolean isLevel(SawPass pass) {
        if (pass.stage() != Stage.EDGE) {
            return pass.kerf().width().compareTo(pass.kerf().height()) > 0;
        }
        Length kerf = plan.saw().kerf();
        int width = pass.kerf().width().compareTo(kerf);
        int height = pass.kerf().height().compareTo(kerf);
        if (width == 0 || height == 0) {
            if (width > 0 || height > 0) {
                return width > 0;
            }
        }
        return halfTurns(pass.turnDegrees() - plan.frame().turnDegrees());
    }

    private static boolean halfTurns(double degrees) {
        double half = degrees / 180;
        return Math.abs(half - Math.rint(half)) <= 1e-9;
    }

    private void inTheWood(SawnPiece piece, Wane wane, String name) {
        double insetAcross = Math.min(wane.widthShare(), 0.5) * piece.width().toMetres();
        double insetThrough =
                Math.min(wane.thicknessShare(), 0.5) * piece.thickness().toMetres();
        double insetU = piece.fromCant() ? insetThrough : insetAcross;
        double insetV = piece.fromCant() ? insetAcross : insetThrough;
        Rectangle f = piece.faces();
        for (double z : places(piece)) {
            for (int side = -1; side <= 1; side += 2) {
                for (int level = -1; level <= 1; level += 2) {
                    double u = side < 0 ? f.left().toMetres() : f.right().toMetres();
                    double v = level < 0 ? f.bottom().toMetres() : f.top().toMetres();
                    boolean whole = inside(u, v, z);
                    boolean waned = inside(u - side * insetU, v, z) && inside(u, v - level * insetV, z);
                    if (!whole && !waned) {
                        found(wane.equals(Wane.NONE) ? Fault.OUTSIDE_THE_WOOD : Fault.WANE, name);
                        return;
                    }
                }
            }
        }
    }

    /**
     * Whether the rot comes nearer to a piece than its radius. Along a stretch the pith runs straight and the piece is
     * convex, so that their distance has one least value, which is closed in on.
     */
    private void clearOfRot(SawnPiece piece, String name) {
        if (solid.rot().isEmpty()) {
            return;
        }
        LogSolid.Rot rot = solid.rot().get();
        List<Double> places = new ArrayList<>(places(piece));
        places.add(rot.fromMetres());
        places.add(rot.toMetres());
        double from = Math.max(rot.fromMetres(), piece.start().toMetres());
        double to = Math.min(rot.toMetres(), piece.end().toMetres());
        List<Double> inside = places.stream()
                .filter(z -> z >= from && z <= to)
                .distinct()
                .sorted()
                .toList();
        for (int i = 0; i + 1 < inside.size(); i++) {
            double low = inside.get(i);
            double high = inside.get(i + 1);
            for (int step = 0; step < 100; step++) {
                double third = (high - low) / 3;
                if (fromPith(piece.faces(), rot, low + third) > fromPith(piece.faces(), rot, high - third)) {
                    low += third;
                } else {
                    high -= third;
                }
            }
            if (fromPith(piece.faces(), rot, low) < rot.radiusMetres() - TOUCH_METRES) {
                found(Fault.IN_THE_ROT, name);
                return;
            }
        }
    }

    /** How far the pith passes from a rectangle of the frame. */
    private double fromPith(Rectangle faces, LogSolid.Rot rot, double z) {
        LogSolid.Section s = solid.section(z);
        double x = s.centreXMetres() + rot.pithXMetres();
        double y = s.centreYMetres() + rot.pithYMetres();
        double u = cos * x - sin * y;
        double v = sin * x + cos * y + lift(z);
        double du = Math.max(
                0, Math.max(faces.left().toMetres() - u, u - faces.right().toMetres()));
        double dv = Math.max(
                0, Math.max(faces.bottom().toMetres() - v, v - faces.top().toMetres()));
        return Math.sqrt(du * du + dv * dv);
    }

    private List<Double> places(SawnPiece piece) {
        List<Double> places = new ArrayList<>();
        double from = piece.start().toMetres();
        double to = Math.min(piece.end().toMetres(), solid.lengthMetres());
        places.add(from);
        places.add(to);
        for (int i = 0; i < solid.stationCount(); i++) {
            double z = solid.station(i).zMetres();
            if (z > from && z < to) {
                places.add(z);
            }
        }
        return places;
    }

    /** A place of the frame against the section there; a hair outside counts as on the outline. */
    private boolean inside(double u, double v, double z) {
        LogSolid.Section s = solid.section(Math.max(0, Math.min(z, solid.lengthMetres())));
        double w = v - lift(z);
        double p = (cos * u + sin * w - s.centreXMetres()) / (s.halfLongMetres() + TOUCH_METRES);
        double q = (cos * w - sin * u - s.centreYMetres()) / (s.halfShortMetres() + TOUCH_METRES);
        return p * p + q * q <= 1;
    }

    private double lift(double z) {
        return plan.frame().largeEndLift().toMetres() * (z / solid.lengthMetres() - 0.5);
    }

    private void pass(SawPass pass) {
        String name = "pass " + pass.number();
        boolean level = isLevel(pass);
        Length thin = level ? pass.kerf().height() : pass.kerf().width();
        if (!thin.equals(plan.saw().kerf()) && !runsOutOfACant(pass, thin)) {
            found(Fault.WRONG_KERF, name);
        }
        if (!halfTurns(pass.turnDegrees() - plan.frame().turnDegrees() - (level ? 0 : 90))) {
            found(Fault.WRONG_TURN, name);
        }
        double widest = 0;
        for (int i = 0; i < solid.stationCount(); i++) {
            double z = solid.station(i).zMetres();
            for (int line = 0; line <= 4; line++) {
                widest = Math.max(widest, chordWithin(solid.sectionOverBark(z), z, pass.kerf(), level, line / 4.0));
            }
        }
        if (widest > plan.saw().widthOfCut().toMetres() + TOUCH_METRES) {
            found(Fault.SAW_TOO_NARROW, name);
        }
        if (pass.stage() != Stage.EDGE
                && overBed(pass.kerf(), level) < plan.saw().leastHeight().toMetres() - TOUCH_METRES) {
            found(Fault.TOO_LOW, name);
        }
    }

    /**
     * Height of a pass over what carries the log or the cant: its lowest point, looked for at the stations and half-way
     * between them; a bed stands a whole step of the saw from the axis.
     */
    private double overBed(Rectangle kerf, boolean level) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < solid.stationCount(); i++) {
            double z = solid.station(i).zMetres();
            lowest = Math.min(lowest, carried(kerf, level, z));
            if (i > 0) {
                lowest = Math.min(
                        lowest, carried(kerf, level, (solid.station(i - 1).zMetres() + z) / 2));
            }
        }
        if (plan.saw().reference() == Saw.Reference.BED) {
            double step = plan.saw().settingStep().toMetres();
            lowest = Math.floor(lowest / step + 1e-9) * step;
        }
        return (level ? kerf.bottom() : kerf.left()).toMetres() - lowest;
    }

    /** The lowest point of the log over its bark, or of the cant that a kerf passes through as it lies on its side. */
    private double carried(Rectangle kerf, boolean level, double z) {
        LogSolid.Section s = solid.sectionOverBark(z);
        double a = s.halfLongMetres();
        double b = s.halfShortMetres();
        if (level) {
            double centre = sin * s.centreXMetres() + cos * s.centreYMetres();
            return centre - Math.sqrt(a * a * sin * sin + b * b * cos * cos) + lift(z);
        }
        double reach = Math.sqrt(a * a * cos * cos + b * b * sin * sin);
        double height =
                sin * (s.centreXMetres() - a * a * cos / reach) + cos * (s.centreYMetres() + b * b * sin / reach);
        double w = Math.max(
                kerf.bottom().toMetres() - lift(z), Math.min(height, kerf.top().toMetres() - lift(z)));
        double p = (sin * w - s.centreXMetres()) / a;
        double q = (cos * w - s.centreYMetres()) / b;
        double across = cos * cos / (a * a) + sin * sin / (b * b);
        double along = p * cos / a - q * sin / b;
        double root = along * along - across * (p * p + q * q - 1);
        return root > 0 ? (-along - Math.sqrt(root)) / across : Double.POSITIVE_INFINITY;
    }

    /** An edge pass near a sawn face of a cant runs partly beside the wood: its kerf ends where that face is. */
    private boolean runsOutOfACant(SawPass pass, Length thin) {
        Rectangle k = pass.kerf();
        return pass.stage() == Stage.EDGE
                && thin.compareTo(plan.saw().kerf()) < 0
                && plan.passes().stream()
                        .filter(other -> other.stage() == Stage.LIVE)
                        .map(SawPass::kerf)
                        .anyMatch(live ->
                                live.top().equals(k.bottom()) || live.bottom().equals(k.top()));
    }

    /** The part of a chord that lies within a rectangle; share says where between the rectangle's long sides. */
    private double chordWithin(LogSolid.Section s, double z, Rectangle r, boolean level, double share) {
        double left = r.left().toMetres();
        double right = r.right().toMetres();
        double bottom = r.bottom().toMetres();
        double top = r.top().toMetres();
        double lift = lift(z);
        if (level) {
            double w = bottom + share * (top - bottom) - lift;
            return within(s, sin * w, cos * w, cos, -sin, left, right);
        }
        double u = left + share * (right - left);
        return within(s, cos * u, -sin * u, sin, cos, bottom - lift, top - lift);
    }

    /** Length of the line (x0 + t dx, y0 + t dy) inside a section for t between two ends; (dx, dy) is of length one. */
    private static double within(
            LogSolid.Section s, double x0, double y0, double dx, double dy, double from, double to) {
        double a2 = s.halfLongMetres() * s.halfLongMetres();
        double b2 = s.halfShortMetres() * s.halfShortMetres();
        double px = x0 - s.centreXMetres();
        double py = y0 - s.centreYMetres();
        double a = dx * dx / a2 + dy * dy / b2;
        double b = px * dx / a2 + py * dy / b2;
        double c = px * px / a2 + py * py / b2 - 1;
        double root = b * b - a * c;
        if (!(root > 0)) {
            return 0;
        }
        double reach = Math.sqrt(root);
        return Math.max(0, Math.min(to, (reach - b) / a) - Math.max(from, (-b - reach) / a));
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        plan.pieces().forEach(piece -> parts.add(new Part("piece " + piece.number(), piece.faces())));
        plan.passes().forEach(pass -> parts.add(new Part("the kerf of pass " + pass.number(), pass.kerf())));
        plan.offcuts().forEach(offcut -> parts.add(new Part("an offcut", offcut.place())));
        return parts;
    }

    private void tiling() {
        List<Part> parts = parts();
        double sum = 0;
        for (int i = 0; i < parts.size(); i++) {
            Rectangle a = parts.get(i).place();
            sum += wood(a, 0, solid.lengthMetres()) + rot(a);
            for (int j = i + 1; j < parts.size(); j++) {
                Rectangle b = parts.get(j).place();
                if (a.left().compareTo(b.right()) < 0
                        && b.left().compareTo(a.right()) < 0
                        && a.bottom().compareTo(b.top()) < 0
                        && b.bottom().compareTo(a.top()) < 0) {
                    found(
                            Fault.OVERLAP,
                            parts.get(i).name() + " and " + parts.get(j).name());
                }
            }
        }
        double whole = solid.volume().cubicMetres();
        if (whole - sum > SHARE_TOLERANCE * whole) {
            found(Fault.GAP, "all parts together");
        }
    }

    private void balance() {
        double lumber = 0;
        double trim = 0;
        for (SawnPiece piece : plan.pieces()) {
            double from = piece.start().toMetres();
            double to = Math.min(piece.end().toMetres(), solid.lengthMetres());
            lumber += wood(piece.faces(), from, to);
            trim += wood(piece.faces(), 0, from) + wood(piece.faces(), to, solid.lengthMetres());
        }
        double kerf = 0;
        for (SawPass pass : plan.passes()) {
            kerf += wood(pass.kerf(), 0, solid.lengthMetres());
        }
        double slab = 0;
        double edging = 0;
        for (Offcut offcut : plan.offcuts()) {
            double wood = wood(offcut.place(), 0, solid.lengthMetres());
            slab += offcut.kind() == Offcut.Kind.SLAB ? wood : 0;
            edging += offcut.kind() == Offcut.Kind.EDGING ? wood : 0;
        }
        WoodBalance stated = plan.balance();
        share("lumber", stated.lumber().cubicMetres(), lumber);
        share("kerf", stated.kerf().cubicMetres(), kerf);
        share("slab", stated.slab().cubicMetres(), slab);
        share("edging", stated.edging().cubicMetres(), edging);
        share("trim", stated.trim().cubicMetres(), trim);
        double rot = 0;
        for (Part part : parts()) {
            rot += rot(part.place());
        }
        share("rot", stated.rot().cubicMetres(), rot);
    }

    private void share(String name, double stated, double measured) {
        if (!(Math.abs(stated - measured) <= SHARE_TOLERANCE * solid.volume().cubicMetres())) {
            found(Fault.WRONG_BALANCE, name);
        }
    }

    /** Sound wood in a rectangle of the end view between two places along the log. */
    private double wood(Rectangle place, double from, double to) {
        double all = volume(place, from, to, z -> Optional.of(solid.section(z)));
        return solid.rot()
                .map(rot -> all
                        - volume(
                                place,
                                Math.max(from, rot.fromMetres()),
                                Math.min(to, rot.toMetres()),
                                solid::rotSection))
                .orElse(all);
    }

    /** Rot in a rectangle of the end view. */
    private double rot(Rectangle place) {
        return solid.rot()
                .map(rot -> volume(place, rot.fromMetres(), rot.toMetres(), solid::rotSection))
                .orElse(0.0);
    }

    /** What sections hold of a rectangle between two places along the log, by upright strips on slices. */
    private double volume(
            Rectangle place, double from, double to, DoubleFunction<Optional<LogSolid.Section>> sectionAt) {
        if (!(to > from)) {
            return 0;
        }
        int slices = SLICES_PER_STRETCH * Math.max(1, solid.stationCount() - 1);
        double reach = 0;
        for (int i = 0; i < solid.stationCount(); i++) {
            LogSolid.Section s = solid.section(solid.station(i).zMetres());
            reach = Math.max(reach, s.halfLongMetres() + Math.abs(s.centreXMetres()) + Math.abs(s.centreYMetres()));
        }
        // Beyond the log there is nothing to count, however far a rectangle reaches.
        double first = Math.max(place.left().toMetres(), -reach);
        double last = Math.min(place.right().toMetres(), reach);
        if (!(last > first)) {
            return 0;
        }
        double strip = (last - first) / STRIPS;
        double sum = 0;
        double slice = (to - from) / slices;
        for (int i = 0; i < slices; i++) {
            double z = from + (i + 0.5) * slice;
            Optional<LogSolid.Section> section = sectionAt.apply(z);
            if (section.isEmpty()) {
                continue;
            }
            LogSolid.Section s = section.get();
            double lift = lift(z);
            for (int j = 0; j < STRIPS; j++) {
                double u = first + (j + 0.5) * strip;
                sum += within(
                        s,
                        cos * u,
                        -sin * u,
                        sin,
                        cos,
                        place.bottom().toMetres() - lift,
                        place.top().toMetres() - lift);
            }
        }
        return sum * strip * slice;
    }
}
