package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.Offcut;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Proof;
import org.woodyield.sawing.Rectangle;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.Stage;
import org.woodyield.sawing.WoodBalance;
import org.woodyield.wood.Species;

/** Plans put together by hand for drawing: boards in their places, not the best ones. Figures are invented. */
final class SawnLogs {

    static final String NASTY = "<script>alert(1)&\"'</script>";

    private SawnLogs() {}

    static Species species() {
        return new Species(
                "pine",
                "Some <pine>",
                "",
                List.of(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Log log(String id, double longInches, double shortInches, double largeInches, double sweepInches) {
        return new Log(
                id,
                species(),
                Length.feet(12),
                Length.ofInches(longInches, Rounding.HALF_UP),
                Length.ofInches(shortInches, Rounding.HALF_UP),
                Length.ofInches(largeInches, Rounding.HALF_UP),
                Length.inches(1, 2),
                Length.ofInches(sweepInches, Rounding.HALF_UP),
                30,
                true);
    }

    static Saw saw(Saw.Reference reference) {
        return new Saw(
                "band",
                Length.inches(1, 16),
                Length.inches(30),
                Length.inches(1, 32),
                reference,
                Length.inches(1),
                Length.inches(1, 32));
    }

    /** Live through the log, or with a cant of half the diameter; edged flitches of up to three strips. */
    static SawingPlan plan(Log log, double turn, boolean cant, Saw saw) {
        return new Sawyer(log, turn, saw).saw(cant);
    }

    private static final class Sawyer {
        private final LogSolid solid;
        private final Saw saw;
        private final Frame frame;
        private final List<SawnPiece> pieces = new ArrayList<>();
        private final List<SawPass> passes = new ArrayList<>();
        private final List<Offcut> offcuts = new ArrayList<>();
        private final Length kerf;
        private final double halfLog;
        private final PieceOption board = option("board " + NASTY, 9, 8);
        private final PieceOption plank = option("plank 2 in", 17, 8);
        private final PieceOption strip = option("strip", 9, 8);

        Sawyer(Log log, double turn, Saw saw) {
            this.solid = LogSolid.of(log);
            this.saw = saw;
            this.kerf = saw.kerf();
            this.frame = new Frame(Frame.Lay.AXIS, turn, Length.ZERO);
            this.halfLog = solid.section(0).halfShortMetres();
        }

        private static PieceOption option(String id, long numerator, long denominator) {
            return PieceOption.fixed(
                    id,
                    Length.inches(numerator, denominator),
                    Length.inches(4),
                    List.of(new LengthWorth(Length.feet(12), 1)));
        }

        SawingPlan saw(boolean cant) {
            Length half = Length.ofMetres(halfLog * 0.5, Rounding.DOWN);
            Length at = Length.ofMetres(halfLog * 0.86, Rounding.DOWN);
            level(at);
            int count = 0;
            boolean cantDone = !cant;
            while (at.minus(board.thickness()).toMetres() > -halfLog * 0.9) {
                if (!cantDone && at.minus(plank.thickness()).compareTo(half) < 0) {
                    Length lower = half.times(-1);
                    level(lower.minus(kerf));
                    cant(lower, at);
                    at = lower.minus(kerf);
                    cantDone = true;
                    continue;
                }
                PieceOption size = count++ % 2 == 0 ? board : plank;
                Length lower = at.minus(size.thickness());
                level(lower.minus(kerf));
                flitch(size, lower, at);
                at = lower.minus(kerf);
            }
            Volume one = new Volume(0.01);
            double all = solid.volume().cubicMetres();
            WoodBalance balance = new WoodBalance(new Volume(all - 0.04), one, one, one, one, Volume.ZERO);
            Proof proof = new Proof(
                    Proof.Verdict.PROVEN_OPTIMAL,
                    10,
                    1,
                    9,
                    9,
                    OptionalDouble.empty(),
                    "nothing was searched",
                    1,
                    1,
                    1,
                    1);
            return new SawingPlan(
                    solid, saw, List.of(board, plank, strip), frame, pieces, passes, offcuts, balance, proof);
        }

        private double halfChord(Length lower, Length upper) {
            double least = Double.MAX_VALUE;
            for (Length height : List.of(lower, upper)) {
                Outline outline = Outline.insideBark(solid, frame, 0);
                least = Math.min(
                        least, outline.chord(height.toMetres())[0] - Math.abs(outline.chord(height.toMetres())[1]));
            }
            return Double.isNaN(least) ? 0 : least;
        }

        private void level(Length bottom) {
            Length far = Length.ofMetres(2, Rounding.DOWN);
            pass(Stage.LIVE, new Rectangle(far.times(-1), far, bottom, bottom.plus(kerf)));
        }

        private void flitch(PieceOption size, Length lower, Length upper) {
            Length half = Length.ofMetres(halfChord(lower, upper), Rounding.DOWN);
            if (half.compareTo(Length.inches(2)) < 0) {
                return;
            }
            int strips = half.compareTo(Length.inches(7)) > 0 ? 3 : half.compareTo(Length.inches(5)) > 0 ? 2 : 1;
            Length left = half.times(-1);
            Length each = half.times(2).minus(kerf.times(strips - 1)).dividedBy(strips, Rounding.DOWN);
            pass(Stage.EDGE, new Rectangle(left.minus(kerf), left, lower, upper));
            for (int i = 0; i < strips; i++) {
                Length right = left.plus(each);
                piece(
                        i == 1 ? strip.id() : size.id(),
                        size.thickness(),
                        each,
                        new Rectangle(left, right, lower, upper),
                        false);
                pass(Stage.EDGE, new Rectangle(right, right.plus(kerf), lower, upper));
                left = right.plus(kerf);
            }
        }

        private void cant(Length lower, Length upper) {
            Length half = Length.ofMetres(halfChord(lower, upper), Rounding.DOWN);
            Length at = half;
            pass(Stage.CANT, new Rectangle(at, at.plus(kerf), lower, upper));
            while (at.minus(plank.thickness()).compareTo(half.times(-1)) > 0) {
                Length left = at.minus(plank.thickness());
                piece(plank.id(), plank.thickness(), upper.minus(lower), new Rectangle(left, at, lower, upper), true);
                pass(Stage.CANT, new Rectangle(left.minus(kerf), left, lower, upper));
                at = left.minus(kerf);
            }
        }

        private void piece(String id, Length thickness, Length width, Rectangle faces, boolean fromCant) {
            Length end = Length.feet(12);
            pieces.add(
                    new SawnPiece(pieces.size() + 1, id, thickness, width, end, faces, Length.ZERO, end, fromCant, 1));
        }

        private void pass(Stage stage, Rectangle kerfPlace) {
            passes.add(new SawPass(
                    passes.size() + 1,
                    stage,
                    frame.turnDegrees() + (stage == Stage.CANT ? 90 : 0),
                    Length.inches(9, 8),
                    "the face cut before",
                    kerfPlace.bottom(),
                    Length.inches(9),
                    kerfPlace,
                    SawPass.KerfSide.ABOVE,
                    Length.inches(61, 8),
                    Length.inches(77, 8),
                    Length.inches(10),
                    Length.feet(12),
                    0.75,
                    0.4,
                    "a slab",
                    "a log with one face"));
        }
    }
}
