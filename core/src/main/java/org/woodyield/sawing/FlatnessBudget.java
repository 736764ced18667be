package org.woodyield.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

/**
 * What an error of the guide or of one pass costs the pieces of a plan: how much of the planing allowance it eats, and how
 * many pieces fall under their target.
 *
 * <p>Two models. Riding the face before, every new face that is opened with the guide is a copy of it, and so is every
 * board down to the next face opened with the guide: all pieces carry the error, each by its own width and length. Over a
 * fixed bed an error stays where it was made: in the pieces on the two sides of the pass. Only where the log lies badly
 * on its bearing face do the passes after it go wrong too, until the log is turned.
 *
 * <p>Edges copy the guide as well, which takes from the width; only thickness is counted here.
 *
 * @param allowance what planing may take off both faces together before the piece is under its target
 * @param pieces the pieces that carry the error, in the order of the plan
 */
public record FlatnessBudget(Length allowance, List<ForPiece> pieces) {

    /**
     * How far a guide is from straight and true.
     *
     * @param over the length over which both were measured
     * @param dip greatest distance from the straight line between its ends
     * @param windDegrees angle between its ends
     */
    public record Guide(Length over, Length dip, double windDegrees) {

        /**
         * Checks the three.
         *
         * @throws OutOfDomainException if the length is not above zero, the dip is below zero or the wind is not from 0 to
         *     10 degrees
         */
        public Guide {
            if (!over.isPositive()) {
                throw new OutOfDomainException("length of the guide", over.toString(), "", "above 0", "");
            }
            if (dip.compareTo(Length.ZERO) < 0) {
                throw new OutOfDomainException("dip of the guide", dip.toString(), "", "0 or more", "");
            }
            Domain.of("wind of the guide", "degrees", 0, 10).require(windDegrees);
        }
    }

    /**
     * What one piece loses of its flat thickness.
     *
     * @param number of the piece in the plan
     * @param lossInches loss of flat thickness
     * @param allowanceShare the loss as a share of the allowance; infinite where there is a loss and no allowance
     * @param underTarget whether the loss exceeds the allowance
     */
    public record ForPiece(int number, double lossInches, double allowanceShare, boolean underTarget) {}

    /** Keeps an immutable copy. */
    public FlatnessBudget {
        pieces = List.copyOf(pieces);
    }

    /**
     * The budget of a plan sawn with a saw that rides the face before.
     *
     * @param plan how the log is sawn
     * @param guide the guide with which every new face is opened
     * @param allowance what planing may take off both faces together, zero or more
     * @return the budget of every piece
     * @throws OutOfDomainException if the saw runs over a bed, the allowance is below zero, or a piece is longer than the
     *     length over which the guide was measured
     */
    public static FlatnessBudget ofGuide(SawingPlan plan, Guide guide, Length allowance) {
        return ofGuide(plan, guide, allowance, piece -> true);
    }

    /**
     * The budget of some pieces of a plan sawn with a saw that rides the face before.
     *
     * @param plan how the log is sawn
     * @param guide the guide with which every new face is opened
     * @param allowance what planing may take off both faces together, zero or more
     * @param planed the pieces that are planed; the others have no allowance and are left out
     * @return the budget of each of them
     * @throws OutOfDomainException as {@link #ofGuide(SawingPlan, Guide, Length)}
     */
    public static FlatnessBudget ofGuide(SawingPlan plan, Guide guide, Length allowance, Predicate<SawnPiece> planed) {
        requireReference(plan, Saw.Reference.PREVIOUS_FACE, "follow a single pass instead");
        double over = guide.over().toInches();
        List<ForPiece> pieces = new ArrayList<>();
        for (SawnPiece piece : chosen(plan, planed)) {
            double length = piece.length().toInches();
            double arc = FlatLoss.arcInches(guide.dip().toInches(), over, length);
            double wind = FlatLoss.windInches(piece.width().toInches(), guide.windDegrees() * (length / over));
            pieces.add(piece(piece, FlatLoss.bothInches(wind, arc), allowance));
        }
        return new FlatnessBudget(required(allowance), pieces);
    }

    /**
     * The budget of one bad pass over a fixed bed.
     *
     * @param plan how the log is sawn
     * @param pass number of the first bad pass
     * @param wander how far the cut leaves its plane from its highest to its lowest place, zero or more
     * @param badBearing whether the passes after it go wrong by as much, until the log is turned
     * @param allowance what planing may take off both faces together, zero or more
     * @return the budget of the pieces beside the bad passes; a piece with two bad faces loses by both
     * @throws OutOfDomainException if the saw rides the face before, there is no such pass, or a length is below zero
     */
    public static FlatnessBudget ofPass(
            SawingPlan plan, int pass, Length wander, boolean badBearing, Length allowance) {
        return ofPass(plan, pass, wander, badBearing, allowance, piece -> true);
    }

    /**
     * The budget of one bad pass over a fixed bed, for some pieces.
     *
     * @param plan how the log is sawn
     * @param pass number of the first bad pass
     * @param wander how far the cut leaves its plane from its highest to its lowest place, zero or more
     * @param badBearing whether the passes after it go wrong by as much, until the log is turned
     * @param allowance what planing may take off both faces together, zero or more
     * @param planed the pieces that are planed; the others have no allowance and are left out
     * @return the budget of those of them that lie beside the bad passes
     * @throws OutOfDomainException as {@link #ofPass(SawingPlan, int, Length, boolean, Length)}
     */
    public static FlatnessBudget ofPass(
            SawingPlan plan,
            int pass,
            Length wander,
            boolean badBearing,
            Length allowance,
            Predicate<SawnPiece> planed) {
        requireReference(plan, Saw.Reference.BED, "it copies its guide into every board");
        Domain.of("number of the pass", "", 1, plan.passes().size()).require(pass);
        if (wander.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("wander of the cut", wander.toString(), "", "0 or more", "");
        }
        Predicate<SawPass> bad = badBearing
                ? one -> one.number() >= pass && sameTurn(plan, pass, one.number())
                : one -> one.number() == pass;
        List<SawPass> passes = plan.passes().stream().filter(bad).toList();
        List<ForPiece> pieces = new ArrayList<>();
        for (SawnPiece piece : chosen(plan, planed)) {
            long faces = passes.stream()
                    .filter(one -> bounds(one.kerf(), piece.faces(), piece.fromCant()))
                    .count();
            if (faces > 0) {
                pieces.add(piece(piece, faces * wander.toInches(), allowance));
            }
        }
        return new FlatnessBudget(required(allowance), pieces);
    }

    private static List<SawnPiece> chosen(SawingPlan plan, Predicate<SawnPiece> planed) {
        return plan.pieces().stream().filter(planed).toList();
    }

    /** Whether the log, cant or flitch lies still from one pass to another. */
    private static boolean sameTurn(SawingPlan plan, int from, int to) {
        SawPass first = plan.passes().get(from - 1);
        return plan.passes().subList(from - 1, to).stream()
                .allMatch(pass -> pass.turnDegrees() == first.turnDegrees() && pass.stage() == first.stage());
    }

    /** Whether a kerf lies along one of the two wide faces of a piece. */
    private static boolean bounds(Rectangle kerf, Rectangle piece, boolean upright) {
        if (upright) {
            return (kerf.right().equals(piece.left()) || kerf.left().equals(piece.right()))
                    && kerf.bottom().compareTo(piece.top()) < 0
                    && kerf.top().compareTo(piece.bottom()) > 0;
        }
        return (kerf.top().equals(piece.bottom()) || kerf.bottom().equals(piece.top()))
                && kerf.left().compareTo(piece.right()) < 0
                && kerf.right().compareTo(piece.left()) > 0;
    }

    private static ForPiece piece(SawnPiece piece, double loss, Length allowance) {
        double room = allowance.toInches();
        double share = loss == 0 ? 0 : room > 0 ? loss / room : Double.POSITIVE_INFINITY;
        return new ForPiece(piece.number(), loss, share, loss > room);
    }

    private static Length required(Length allowance) {
        if (allowance.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException("planing allowance", allowance.toString(), "", "0 or more", "");
        }
        return allowance;
    }

    private static void requireReference(SawingPlan plan, Saw.Reference wanted, String remedy) {
        if (plan.saw().reference() != wanted) {
            throw new OutOfDomainException(
                    "saw's reference", plan.saw().reference().words(), "", wanted.words(), remedy);
        }
    }

    /**
     * How many pieces are under their target.
     *
     * @return zero or more
     */
    public long underTarget() {
        return pieces.stream().filter(ForPiece::underTarget).count();
    }

    /**
     * The greatest share of the allowance that a piece loses.
     *
     * @return zero where no piece carries the error
     */
    public double greatestShare() {
        return pieces.stream().mapToDouble(ForPiece::allowanceShare).max().orElse(0);
    }

    /**
     * How straight and true a guide has to be so that no piece of a plan loses more than a share of its allowance. Each
     * limit holds where the other error is none; with half of each the loss is less than the share still, since the two
     * together cost no more than their sum.
     *
     * @param plan how the log is sawn
     * @param over length over which the guide is measured; no piece is longer
     * @param allowance what planing may take off both faces together, above zero
     * @param share of the allowance that may be lost, above 0, up to 1
     * @return the greatest dip without wind, and the greatest wind without dip, at most 10 degrees; a dip without limit
     *     cannot be, since every plan has a piece
     * @throws OutOfDomainException if an argument is outside its limits or the plan has no piece
     */
    public static Guide limits(SawingPlan plan, Length over, Length allowance, double share) {
        return limits(plan, over, allowance, share, piece -> true);
    }

    /**
     * How straight and true a guide has to be for some pieces of a plan.
     *
     * @param plan how the log is sawn
     * @param over length over which the guide is measured; none of the pieces is longer
     * @param allowance what planing may take off both faces together, above zero
     * @param share of the allowance that may be lost, above 0, up to 1
     * @param planed the pieces that are planed; the others have no allowance and are left out
     * @return the limits for those
     * @throws OutOfDomainException as {@link #limits(SawingPlan, Length, Length, double)}, or if no piece is planed
     */
    public static Guide limits(
            SawingPlan plan, Length over, Length allowance, double share, Predicate<SawnPiece> planed) {
        List<SawnPiece> pieces = chosen(plan, planed);
        Domain.of("share of the allowance", "", Double.MIN_VALUE, 1).require(share);
        if (!allowance.isPositive()) {
            throw new OutOfDomainException("planing allowance", allowance.toString(), "", "above 0", "");
        }
        if (pieces.isEmpty()) {
            throw new OutOfDomainException("pieces of the plan", "none", "", "one or more", "");
        }
        double loss = allowance.toInches() * share;
        double dip = Double.POSITIVE_INFINITY;
        double wind = 10;
        for (SawnPiece piece : pieces) {
            double length = piece.length().toInches();
            dip = Math.min(dip, FlatLoss.greatestDipInches(loss, over.toInches(), length));
            wind = Math.min(
                    wind, FlatLoss.greatestWindDegrees(loss, piece.width().toInches()) * (over.toInches() / length));
        }
        return new Guide(over, Length.ofInches(dip, Rounding.DOWN), wind);
    }
}
