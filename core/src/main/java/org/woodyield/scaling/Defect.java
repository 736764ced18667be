package org.woodyield.scaling;

import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * A defect of a log and what it takes off the gross content, before rounding: from a scale in board feet by the proportions
 * of the trade, from a solid volume by geometry.
 *
 * <p>Symbols: G gross content, D diameter of the log in inches, L length in feet, l the length that the defect affects. A
 * deduction is never more than the gross content. The proportions are recalled; no printed example of them was read.
 * Sweep and crook take boards, not wood, so they take nothing off a solid volume; no published deduction was read.
 */
@Calculation("scaling.defect")
public sealed interface Defect {

    /**
     * The name as shown.
     *
     * @return a short phrase
     */
    String label();

    /**
     * What the deduction from a scale rests on.
     *
     * @return the source
     */
    Source source();

    /**
     * The deduction from a scale.
     *
     * @param gross board feet, zero or more
     * @param diameterInches scaling diameter
     * @param lengthFeet scaling length
     * @return board feet, 0 to the gross scale, not rounded
     * @throws OutOfDomainException if the defect does not fit the log, or for NaN
     */
    double boardFeet(double gross, double diameterInches, double lengthFeet);

    /**
     * The deduction from a solid volume.
     *
     * @param gross cubic feet, zero or more
     * @param diameterInches of the log where the defect was measured
     * @param lengthFeet of the log
     * @return cubic feet, 0 to the gross volume
     * @throws OutOfDomainException if the defect does not fit the log, or for NaN
     */
    double cubicFeet(double gross, double diameterInches, double lengthFeet);

    /**
     * What of this defect lies in a part of a log that is scaled in several.
     *
     * @param begins where the defect begins, from the log's small end
     * @param from where the part begins
     * @param to where the part ends
     * @param thicker by how much the part's scaling diameter exceeds that of the small end
     * @param whole the scaling length of the log
     * @return the defect of the part; empty if none of it lies there
     */
    default Optional<Defect> between(Length begins, Length from, Length to, Length thicker, Length whole) {
        // A defect of the whole length says for itself what it is in a part.
        Length start = Length.max(begins, from);
        Length end = Length.min(begins.plus(stretch().orElseThrow()), to);
        return end.compareTo(start) > 0 ? Optional.of(over(end.minus(start))) : Optional.empty();
    }

    /**
     * How much of the length it affects.
     *
     * @return the length; empty for a defect that goes along the whole log
     */
    default Optional<Length> stretch() {
        return Optional.empty();
    }

    /**
     * The same defect over another length.
     *
     * @param affected no more than the log's length
     * @return a defect with that length of its own
     */
    default Defect over(Length affected) {
        return new AlongPart(this, affected);
    }

    /**
     * Adds the lines of the deduction to a working that has G, D and L; the last is the symbol d.
     *
     * @param working the working
     * @param solid whether from a solid volume
     * @return the same working
     */
    Working.Builder deduct(Working.Builder working, boolean solid);

    /**
     * The working of {@link #boardFeet}.
     *
     * @param gross board feet, zero or more
     * @param diameterInches scaling diameter
     * @param lengthFeet scaling length
     * @return a working with the same value
     * @throws OutOfDomainException if the defect does not fit the log, or for NaN
     */
    default Working boardFeetWorking(double gross, double diameterInches, double lengthFeet) {
        boardFeet(gross, diameterInches, lengthFeet);
        return deduct(begin(this, gross, diameterInches, lengthFeet, "bf"), false)
                .build();
    }

    /**
     * The working of {@link #cubicFeet}.
     *
     * @param gross cubic feet, zero or more
     * @param diameterInches of the log where the defect was measured
     * @param lengthFeet of the log
     * @return a working with the same value
     * @throws OutOfDomainException if the defect does not fit the log, or for NaN
     */
    default Working cubicFeetWorking(double gross, double diameterInches, double lengthFeet) {
        cubicFeet(gross, diameterInches, lengthFeet);
        return deduct(begin(this, gross, diameterInches, lengthFeet, "ft3"), true)
                .build();
    }

    private static Working.Builder begin(Defect defect, double gross, double diameter, double length, String unit) {
        return Working.of("Deduction, " + defect.label())
                .given("G", "gross content", gross, unit)
                .given("D", "diameter of the log", diameter, "in")
                .given("L", "length of the log", length, "ft");
    }

    private static Working.Builder given(Working.Builder working, String symbol, String name, Length value) {
        return working.given(symbol, name, value.toInches(), "in");
    }

    private static Working.Builder withAffected(Working.Builder working, Length affected) {
        return working.given("l", "length that the defect affects", affected.toFeet(), "ft");
    }

    private static Working.Builder last(Working.Builder working, String formula, boolean solid, Source source) {
        return working.step("d", "deduction", formula, solid ? "ft3" : "bf", source);
    }

    /** A bend takes no wood. */
    private static Working.Builder keeping(Working.Builder working, Defect bend) {
        return last(
                working.note("Nothing is deducted for " + bend.label()
                        + " from a solid volume: the wood is there, and no deduction was read in print."),
                "0 * G",
                true,
                geometry());
    }

    private static Source geometry() {
        return Sources.get("defect-solid");
    }

    private static void log(double gross, double diameter, double length) {
        Domain.notNegative("gross content", "").require(gross);
        Domain.of("diameter of the log", "in", 2, 120).require(diameter);
        Domain.of("length of the log", "ft", 1, 100).require(length);
    }

    private static double within(Length affected, double lengthFeet) {
        return new Domain(
                        "length that the defect affects",
                        "ft",
                        0,
                        lengthFeet,
                        "a defect ends with its log; give its length in this log")
                .require(affected.toFeet());
    }

    private static double inches(String parameter, Length value, double greatest) {
        return new Domain(parameter, "in", 0, greatest, "measure the defect inside the log").require(value.toInches());
    }

    /**
     * A part of the length is lost: G l/L.
     *
     * @param affected the length that is cut
     */
    record LengthCut(Length affected) implements Defect {
        @Override
        public String label() {
            return "length cut";
        }

        @Override
        public Optional<Length> stretch() {
            return Optional.of(affected);
        }

        @Override
        public Defect over(Length here) {
            return new LengthCut(here);
        }

        @Override
        public Source source() {
            return Sources.get("grosenbaugh-1952-memory");
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            return gross * (within(affected, lengthFeet) / lengthFeet);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            return boardFeet(gross, diameterInches, lengthFeet);
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            return last(withAffected(working, affected), "G * (l / L)", solid, solid ? geometry() : source());
        }
    }

    /**
     * A slice like that of a pie is lost: G l/L times the angle over 360.
     *
     * @param affected the length of the slice
     * @param degrees its angle at the heart, 0 to 360
     */
    record Sector(Length affected, double degrees) implements Defect {
        /**
         * Checks the angle.
         *
         * @throws OutOfDomainException if it is not 0 to 360
         */
        public Sector {
            Domain.of("angle of the sector", "degrees", 0, 360).require(degrees);
        }

        @Override
        public String label() {
            return "sector";
        }

        @Override
        public Optional<Length> stretch() {
            return Optional.of(affected);
        }

        @Override
        public Defect over(Length here) {
            return new Sector(here, degrees);
        }

        @Override
        public Source source() {
            return Sources.get("grosenbaugh-1952-memory");
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            return gross * (within(affected, lengthFeet) / lengthFeet) * (degrees / 360);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            return boardFeet(gross, diameterInches, lengthFeet);
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            withAffected(working, affected).given("A", "angle of the sector", degrees, "degrees");
            return last(working, "G * (l / L) * (A / 360)", solid, solid ? geometry() : source());
        }
    }

    /**
     * A squared timber round the defect is lost: (W + 1)(H + 1) l/15 board feet, with an inch of waste on width and height
     * and a fifth for kerf. Made for the Scribner rules. Of a solid volume W H l alone.
     *
     * @param width of the defect at its larger end
     * @param height of the defect there
     * @param affected its length
     */
    record SquaredDefect(Length width, Length height, Length affected) implements Defect {
        @Override
        public String label() {
            return "squared defect";
        }

        @Override
        public Optional<Length> stretch() {
            return Optional.of(affected);
        }

        @Override
        public Defect over(Length here) {
            return new SquaredDefect(width, height, here);
        }

        @Override
        public Source source() {
            return Sources.get("squared-defect-memory");
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            double w = inches("width of the defect", width, diameterInches);
            double h = inches("height of the defect", height, diameterInches);
            return Math.min(gross, (w + 1) * (h + 1) * within(affected, lengthFeet) / 15);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            double w = inches("width of the defect", width, diameterInches);
            double h = inches("height of the defect", height, diameterInches);
            return Math.min(gross, w * h * within(affected, lengthFeet) / 144);
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            withAffected(working, affected);
            given(working, "W", "width of the defect", width);
            given(working, "H", "height of the defect", height);
            return solid
                    ? last(working, "min(G, W * H * l / 144)", true, geometry())
                    : last(working, "min(G, (W + 1) * (H + 1) * l / 15)", false, source());
        }
    }

    /**
     * A defect inside the log, as a share of the section: G (W + 1)(H + 1)/(D - 1)^2 l/L. Of a solid volume W H l.
     *
     * @param width of the defect
     * @param height of the defect
     * @param affected its length
     */
    record Interior(Length width, Length height, Length affected) implements Defect {
        @Override
        public String label() {
            return "interior defect";
        }

        @Override
        public Optional<Length> stretch() {
            return Optional.of(affected);
        }

        @Override
        public Defect over(Length here) {
            return new Interior(width, height, here);
        }

        @Override
        public Source source() {
            return Sources.get("grosenbaugh-1952-memory");
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            double w = inches("width of the defect", width, diameterInches);
            double h = inches("height of the defect", height, diameterInches);
            double inside = diameterInches - 1;
            return gross
                    * Math.min(1, (w + 1) * (h + 1) / (inside * inside))
                    * (within(affected, lengthFeet) / lengthFeet);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            return new SquaredDefect(width, height, affected).cubicFeet(gross, diameterInches, lengthFeet);
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            if (solid) {
                return new SquaredDefect(width, height, affected).deduct(working, true);
            }
            withAffected(working, affected);
            given(working, "W", "width of the defect", width);
            given(working, "H", "height of the defect", height);
            return last(working, "G * min(1, (W + 1) * (H + 1) / (D - 1)^2) * (l / L)", false, source());
        }
    }

    /**
     * The outside of the log is lost all along: G (1 - ((E - 1)/(D - 1))^2), with E the diameter of the sound core. Of a
     * solid volume G (1 - (E/D)^2).
     *
     * @param soundDiameter E, at the end where D is measured
     */
    record Perimeter(Length soundDiameter) implements Defect {
        @Override
        public String label() {
            return "perimeter defect";
        }

        @Override
        public Optional<Defect> between(Length begins, Length from, Length to, Length thicker, Length whole) {
            return Optional.of(new Perimeter(soundDiameter.plus(thicker)));
        }

        @Override
        public Source source() {
            return Sources.get("grosenbaugh-1952-memory");
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            double ratio = (Math.max(1, sound(diameterInches)) - 1) / (diameterInches - 1);
            return gross * (1 - ratio * ratio);
        }

        private double sound(double diameterInches) {
            return inches("diameter of the sound core", soundDiameter, diameterInches);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            double ratio = sound(diameterInches) / diameterInches;
            return gross * (1 - ratio * ratio);
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            given(working, "E", "diameter of the sound core", soundDiameter);
            return solid
                    ? last(working, "G * (1 - (E / D)^2)", true, geometry())
                    : last(working, "G * (1 - ((max(1, E) - 1) / (D - 1))^2)", false, source());
        }
    }

    /**
     * A curve along the whole log: G (S - L/8)/D, S the greatest distance of the curved side from a straight line between
     * the ends, less an allowance of 1 in at 8 ft, 1.5 in at 12 ft and 2 in at 16 ft, on the line between.
     *
     * @param departure S
     */
    record Sweep(Length departure) implements Defect {
        @Override
        public String label() {
            return "sweep";
        }

        @Override
        public Optional<Defect> between(Length begins, Length from, Length to, Length thicker, Length whole) {
            double share = to.minus(from).toMetres() / whole.toMetres();
            return Optional.of(new Sweep(Length.ofMetres(departure.toMetres() * (share * share), Rounding.HALF_UP)));
        }

        @Override
        public Source source() {
            return Sources.get("sweep-crook-memory");
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            new Domain(
                            "length of a log with sweep",
                            "ft",
                            8,
                            16,
                            "the allowance was recalled at 8, 12 and 16 ft and is taken in between, not beyond; "
                                    + (lengthFeet < 8
                                            ? "of a shorter log give it as a crook over the whole length, which takes off no"
                                                    + " less, or as a length cut"
                                            : "enter the log as logs of 8 to 16 ft, each with its own sweep, or give it as"
                                                    + " a crook over the whole length, which takes off no less"))
                    .require(lengthFeet);
            double s = inches("sweep", departure, 12 * lengthFeet);
            return gross * Math.min(1, Math.max(0, s - lengthFeet / 8) / diameterInches);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            return 0;
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            given(working, "S", "sweep", departure);
            return solid ? keeping(working, this) : last(working, "G * min(1, max(0, S - L / 8) / D)", false, source());
        }
    }

    /**
     * What a defect of the whole length takes off a part of it, evenly.
     *
     * @param whole the defect of the whole length
     * @param affected the length of the part
     */
    record AlongPart(Defect whole, Length affected) implements Defect {
        @Override
        public String label() {
            return whole.label();
        }

        @Override
        public Optional<Length> stretch() {
            return Optional.of(affected);
        }

        @Override
        public Defect over(Length here) {
            return new AlongPart(whole, here);
        }

        @Override
        public Source source() {
            return whole.source();
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            double all = whole.boardFeet(gross, diameterInches, lengthFeet);
            return all * (within(affected, lengthFeet) / lengthFeet);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            double all = whole.cubicFeet(gross, diameterInches, lengthFeet);
            return all * (within(affected, lengthFeet) / lengthFeet);
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            return last(
                    withAffected(whole.deduct(working, solid), affected),
                    "d * (l / L)",
                    solid,
                    solid ? geometry() : source());
        }
    }

    /**
     * A bend in a part of the log: G S/D l/L, S how far the bent part leaves the line of the straight one.
     *
     * @param deflection S
     * @param affected the length of the bent part
     */
    record Crook(Length deflection, Length affected) implements Defect {
        @Override
        public String label() {
            return "crook";
        }

        @Override
        public Optional<Length> stretch() {
            return Optional.of(affected);
        }

        @Override
        public Defect over(Length here) {
            return new Crook(deflection, here);
        }

        @Override
        public Source source() {
            return Sources.get("sweep-crook-memory");
        }

        @Override
        public double boardFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            double s = inches("deflection of the crook", deflection, 12 * lengthFeet);
            return gross * Math.min(1, s / diameterInches) * (within(affected, lengthFeet) / lengthFeet);
        }

        @Override
        public double cubicFeet(double gross, double diameterInches, double lengthFeet) {
            log(gross, diameterInches, lengthFeet);
            within(affected, lengthFeet);
            return 0;
        }

        @Override
        public Working.Builder deduct(Working.Builder working, boolean solid) {
            withAffected(working, affected);
            given(working, "S", "deflection of the crook", deflection);
            return solid ? keeping(working, this) : last(working, "G * min(1, S / D) * (l / L)", false, source());
        }
    }
}
