package org.woodyield.job;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.Defect;
import org.woodyield.scaling.DiameterAt;
import org.woodyield.scaling.Firmwood;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.NetScale;
import org.woodyield.scaling.NetVolume;
import org.woodyield.scaling.Scale;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;

/** One way to scale a log that was asked for: a column of the result, in its own unit. */
sealed interface Scaling {

    /** How logs are taken where no law is named. */
    ScalingConvention PLAIN = ScalingConvention.plain();

    private static boolean isPlain(ScalingConvention convention) {
        return convention.id().equals(PLAIN.id());
    }

    /** The key by which it is asked for. */
    String key();

    /** The name as shown. */
    String name();

    /** What follows the key in the names of its columns. */
    String unit();

    /** The unit as shown. */
    String unitName();

    /** How far its figures can be trusted. */
    Standing standing();

    /** What it rests on, with the edition. */
    String citation();

    /**
     * Scales a log.
     *
     * @throws OutOfDomainException if it takes no such log
     */
    Figure figure(Measured log);

    /**
     * What decides whether this rule refuses a log, and in which words; empty where that is not told cheaply.
     *
     * @throws OutOfDomainException if nothing of the log can be scaled
     */
    default Optional<Alike> alike(Measured log) {
        return Optional.empty();
    }

    /** What a rule sees of a log. */
    record Alike(List<ScalingConvention.Segment> segments, boolean largeEndGiven) {}

    /** A log as a row of the table gives it. */
    record Measured(
            Log log,
            boolean largeEndGiven,
            boolean netWanted,
            List<DefectColumns.Found> defects,
            Map<DiameterAt, List<ScalingConvention.Segment>> plain) {

        static Measured of(Log log, boolean largeEndGiven, boolean netWanted, List<DefectColumns.Found> defects) {
            return new Measured(log, largeEndGiven, netWanted, defects, new EnumMap<>(DiameterAt.class));
        }

        /** Rules that take the diameter at one place by one convention share the segments. */
        private List<ScalingConvention.Segment> segments(ScalingConvention convention, DiameterAt where) {
            if (!isPlain(convention)) {
                return convention.segments(log, where);
            }
            List<ScalingConvention.Segment> known = plain.get(where);
            if (known == null) {
                known = convention.segments(log, where);
                plain.put(where, known);
            }
            return known;
        }

        private List<NetScale.Placed> placed() {
            return defects.stream()
                    .map(found -> new NetScale.Placed(found.defect(), found.begins()))
                    .toList();
        }

        /** The defects that bend the log and leave its wood. */
        private String bends() {
            return defects.stream()
                    .map(DefectColumns.Found::defect)
                    .filter(defect -> defect instanceof Defect.Sweep || defect instanceof Defect.Crook)
                    .map(Defect::label)
                    .distinct()
                    .collect(Collectors.joining(" and "));
        }

        private void requireLargeEnd(String why) {
            if (!largeEndGiven) {
                throw new OutOfDomainException("large-end", "not given", "", "the diameter of the large end", why);
            }
        }
    }

    /**
     * A figure; the net and why there is none only where defects are asked about.
     *
     * @param bends the defects of the log that take nothing off, in words; empty where there are none
     */
    record Figure(
            double gross,
            OptionalDouble net,
            OptionalDouble soundShare,
            String notNet,
            String bends,
            Optional<String> caution) {

        static Figure gross(double gross, Optional<String> caution) {
            return new Figure(gross, OptionalDouble.empty(), OptionalDouble.empty(), "", "", caution);
        }

        private Figure without(OutOfDomainException refusal) {
            return new Figure(gross, OptionalDouble.empty(), OptionalDouble.empty(), refusal.getMessage(), "", caution);
        }

        private Figure net(double net) {
            OptionalDouble share = gross > 0 ? OptionalDouble.of(net / gross) : OptionalDouble.empty();
            return new Figure(gross, OptionalDouble.of(net), share, "", "", caution);
        }

        private Figure withBends(String words) {
            return new Figure(gross, net, soundShare, notNet, words, caution);
        }
    }

    /** Board feet by a log rule under a convention. */
    record BoardFeet(String key, String name, LogRule rule, ScalingConvention convention, Source basis)
            implements Scaling {

        @Override
        public String unit() {
            return "bf";
        }

        @Override
        public String unitName() {
            return "bf";
        }

        @Override
        public Standing standing() {
            Standing ofRule = rule.standing();
            return isPlain(convention) || ofRule.compareTo(basis.standing()) > 0 ? ofRule : basis.standing();
        }

        @Override
        public String citation() {
            return basis.citation()
                    + (isPlain(convention)
                            ? ""
                            : "; rule: " + rule.sources().get(0).citation());
        }

        @Override
        public Optional<Alike> alike(Measured one) {
            return isPlain(convention) && rule.diameterAt() == DiameterAt.SMALL_END
                    ? Optional.of(new Alike(one.segments(convention, rule.diameterAt()), one.largeEndGiven()))
                    : Optional.empty();
        }

        @Override
        public Figure figure(Measured one) {
            DiameterAt where = convention.diameterAt().orElse(rule.diameterAt());
            if (where != DiameterAt.SMALL_END) {
                one.requireLargeEnd("the diameter is wanted at the " + where.label());
            }
            Scale scale = new Scale(one.log(), rule, convention, one.segments(convention, rule.diameterAt()));
            if (scale.segments().size() > 1) {
                one.requireLargeEnd("the log is scaled in " + scale.segments().size() + " parts by its taper");
            }
            Figure gross = Figure.gross(scale.boardFeet().value(), scale.caution());
            if (!one.netWanted()) {
                return gross;
            }
            try {
                return gross.net(net(one, scale));
            } catch (OutOfDomainException e) {
                return gross.without(e);
            }
        }

        private static double net(Measured one, Scale scale) {
            int parts = scale.segments().size();
            if (parts > 1
                    && one.defects().stream()
                            .anyMatch(
                                    found -> !found.allAlong() && found.begins().isEmpty())) {
                throw new OutOfDomainException(
                        "defect-from",
                        "not given",
                        "",
                        "how far from the small end the defect begins",
                        "the log is scaled in " + parts + " parts; write 'at 12 ft' behind a defect, or one "
                                + "defect-from for all");
            }
            return NetScale.of(scale, one.placed()).boardFeet().value();
        }
    }

    /** Cubic metres or cubic feet, of which only missing wood is taken off. */
    sealed interface Solid extends Scaling {

        /** The gross volume in the unit of the column. */
        double gross(Measured one);

        /** In the unit of the column. */
        double inUnit(Volume volume);

        /** The other way. */
        Volume volume(double inUnit);

        @Override
        default Figure figure(Measured one) {
            Figure gross = Figure.gross(gross(one), Optional.empty());
            if (!one.netWanted()) {
                return gross;
            }
            if (one.defects().isEmpty()) {
                return gross.net(gross.gross());
            }
            try {
                NetVolume net = NetVolume.of(
                        volume(gross.gross()),
                        one.log().smallEndMean(),
                        one.log().length(),
                        one.placed());
                return gross.net(inUnit(net.volume())).withBends(one.bends());
            } catch (OutOfDomainException e) {
                return gross.without(e);
            }
        }
    }

    /** A volume in cubic metres. */
    sealed interface Metric extends Solid {

        @Override
        default String unit() {
            return "m3";
        }

        @Override
        default String unitName() {
            return "m3";
        }

        @Override
        default double inUnit(Volume volume) {
            return volume.cubicMetres();
        }

        @Override
        default Volume volume(double inUnit) {
            return new Volume(inUnit);
        }
    }

    /** A cubic rule of a country. */
    record Cubic(CubicRule rule) implements Metric {

        @Override
        public String key() {
            return rule.id();
        }

        @Override
        public String name() {
            return rule.label();
        }

        @Override
        public Standing standing() {
            return rule.standing();
        }

        @Override
        public String citation() {
            return rule.sources().get(0).citation();
        }

        @Override
        public double gross(Measured one) {
            if (rule.asksTaper()) {
                one.requireLargeEnd("the rule wants the " + rule.place().label());
            }
            return rule.cubicMetres(one.log());
        }
    }

    /** The firmwood scale of British Columbia. */
    record BritishColumbia() implements Metric {

        static final String KEY = "bc-firmwood";

        @Override
        public String key() {
            return KEY;
        }

        @Override
        public String name() {
            return "Firmwood, British Columbia";
        }

        @Override
        public Standing standing() {
            return Sources.get("bc-firmwood-quoted").standing();
        }

        @Override
        public String citation() {
            return Sources.get("bc-firmwood-quoted").citation();
        }

        @Override
        public double gross(Measured one) {
            one.requireLargeEnd("the rule wants the radii of both ends");
            Log log = one.log();
            return Firmwood.cubicMetres(
                    log.smallEndMean().toMillimetres() / 20,
                    log.largeEndMean().toMillimetres() / 20,
                    log.length().toMetres());
        }
    }

    /** A formula for the solid volume, in cubic feet. */
    record Formula(SolidVolume formula) implements Solid {

        @Override
        public String key() {
            return formula.id();
        }

        @Override
        public String name() {
            return formula.label();
        }

        @Override
        public String unit() {
            return "ft3";
        }

        @Override
        public String unitName() {
            return "ft3";
        }

        @Override
        public Standing standing() {
            return formula.source().standing();
        }

        @Override
        public String citation() {
            return formula.source().citation();
        }

        @Override
        public double gross(Measured one) {
            if (formula.asksLargeEnd() || formula.asksMiddle()) {
                one.requireLargeEnd("the formula wants " + (formula.asksMiddle() ? "the middle" : "both ends"));
            }
            Log log = one.log();
            Length middle = log.meanDiameter(log.length().dividedBy(2, Rounding.DOWN));
            double inches = formula.volume(
                    log.smallEndMean().toInches(),
                    middle.toInches(),
                    log.largeEndMean().toInches(),
                    log.length().toInches());
            return inches / 1728;
        }

        @Override
        public double inUnit(Volume volume) {
            return volume.cubicFeet();
        }

        @Override
        public Volume volume(double inUnit) {
            return Volume.ofCubicFeet(inUnit);
        }
    }
}
